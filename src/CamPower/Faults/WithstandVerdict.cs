namespace CamPower;

/// <summary>Whether the conductors on the way to a fault withstand what the protective device lets through.</summary>
public enum WithstandVerdict
{
    /// <summary>No conductor carries the fault current: the fault is at the terminals.</summary>
    NoConductor,

    /// <summary>The fault ends within 5 s before any conductor reaches the limit of its insulation, or none gets hotter than it may be in
    /// service, however long it lasts.</summary>
    Withstands,

    /// <summary>
    /// For longer than 5 s a conductor may be hotter than it may be in service, without reaching the limit of its insulation in a
    /// fault: the insulation ages, and the fault must be ended by hand.
    /// </summary>
    HotterThanInService,

    /// <summary>A conductor may reach the limit of its insulation before the fault has ended.</summary>
    DoesNotWithstand,

    /// <summary>Data is not stated: see <see cref="Overcurrent.Missing"/>.</summary>
    Unknown,
}
