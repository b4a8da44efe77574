namespace CamPower;

/// <summary>State of the voltage of a supply in an overload or a fault.</summary>
public enum SupplyState
{
    /// <summary>The overload behavior of the supply is not stated, or its source resistance where it has no limit.</summary>
    Unknown,

    /// <summary>The supply gives the fault and the other outputs what they take, within its tolerance.</summary>
    StaysUp,

    /// <summary>The supply cannot give all of it: its voltage falls to a lower one.</summary>
    Dips,

    /// <summary>The supply pulses: between its tries there is no voltage.</summary>
    Pulses,

    /// <summary>The supply shuts down until it is restarted.</summary>
    Off,
}
