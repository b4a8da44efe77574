namespace CamPower;

/// <summary>Whether a protective device interrupts a current.</summary>
public enum OperatingVerdict
{
    /// <summary>No verdict: the default value of <see cref="OpeningTimes"/>.</summary>
    None,

    /// <summary>The device carries the current continuously.</summary>
    DoesNotOperate,

    /// <summary>A device that meets its standard or data sheet may interrupt the current, or never do so.</summary>
    MayOperate,

    /// <summary>Every device that meets its standard or data sheet interrupts the current.</summary>
    Operates,
}
