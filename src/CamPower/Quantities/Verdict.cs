namespace CamPower;

/// <summary>Verdict on one value against one limit.</summary>
public enum Verdict
{
    /// <summary>Not known, because something is not stated.</summary>
    Unknown,

    /// <summary>The value keeps the limit, with the margin that the policy asks.</summary>
    Holds,

    /// <summary>The value keeps the limit, with less margin than the policy asks.</summary>
    ThinMargin,

    /// <summary>The value breaks the limit.</summary>
    Violated,
}
