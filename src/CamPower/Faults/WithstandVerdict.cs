namespace CamPower;

/// <summary>Whether the conductors on the way to a fault stand what the protective device lets through.</summary>
public enum WithstandVerdict
{
    /// <summary>No conductor carries the fault current: the fault is at the terminals.</summary>
    NoConductor,

    /// <summary>The fault ends within 5 s, and before any conductor reaches the limit of its insulation.</summary>
    Stands,

    /// <summary>A conductor may reach the limit of its insulation within 5 s, before the fault has ended.</summary>
    DoesNotStand,

    /// <summary>The fault may outlast 5 s without the limit being reached by then: the adiabatic model says nothing of what follows.</summary>
    OutsideAdiabaticModel,

    /// <summary>Nothing is known of what the insulation stands in a fault.</summary>
    Unknown,
}
