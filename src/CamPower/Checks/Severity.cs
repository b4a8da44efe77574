namespace CamPower;

/// <summary>What a person should do about a finding, from least to most pressing.</summary>
public enum Severity
{
    /// <summary>Know it.</summary>
    Note,

    /// <summary>Think again: it works, but with less in hand than it should have.</summary>
    Caution,

    /// <summary>Change it: it will not work.</summary>
    Failure,

    /// <summary>Do not energise.</summary>
    Danger,
}
