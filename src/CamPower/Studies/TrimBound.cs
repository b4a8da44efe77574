namespace CamPower;

/// <summary>Reason for one end of a <see cref="TrimWindow"/>.</summary>
public enum TrimBound
{
    /// <summary>Below it the device is up, but under the lowest voltage that it accepts.</summary>
    LowestVoltage,

    /// <summary>Below it the device drops out, by itself or because a neighbor comes and goes.</summary>
    DropOut,

    /// <summary>Below it the device does not start: it does not reach its turn-on voltage, or its own draw pulls it down from
    /// there.</summary>
    Starting,

    /// <summary>Below it the cable cannot carry what is asked of it: no operating point.</summary>
    Collapse,

    /// <summary>There the supply is asked for more than is known of it: whether the device is up is not known.</summary>
    SupplyOverloaded,

    /// <summary>Above it the device sees more than it accepts, at the least load and the coldest cable.</summary>
    HighestVoltage,

    /// <summary>Above it the device sees more than it accepts before anything draws.</summary>
    NoLoadVoltage,

    /// <summary>The supply cannot be set beyond it.</summary>
    SupplyRange,
}
