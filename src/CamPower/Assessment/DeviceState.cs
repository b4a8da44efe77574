namespace CamPower;

/// <summary>State of a device in a condition, from best to worst.</summary>
public enum DeviceState
{
    /// <summary>Once it runs it stays up; whether it would start is another question, and another answer.</summary>
    Up,

    /// <summary>Its supply is asked for more than it gives. What it does then is not known: the overload behavior of the supply, or the
    /// drop-out voltage of the device, is not stated.</summary>
    SupplyOverloaded,

    /// <summary>It comes up and drops out again and again: by itself, with its neighbors, or with a supply that pulses or is pulled
    /// down.</summary>
    Restarting,

    /// <summary>It never comes up, or is off until its supply is restarted: the supply shuts down, or has no voltage left for it.</summary>
    NeverUp,

    /// <summary>The cable cannot carry what is asked of it, and no drop-out voltage is declared that would say what happens then.</summary>
    NoOperatingPoint,

    /// <summary>The supply gives the wrong kind of current, or direct current reaches it reversed; nothing was worked out.</summary>
    WrongCurrent,
}
