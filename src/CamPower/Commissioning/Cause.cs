namespace CamPower.Commissioning;

/// <summary>What may be wrong where readings differ from what the site file lets expect.</summary>
public enum Cause
{
    /// <summary>Nothing: the site is as designed.</summary>
    None,

    /// <summary>The conductor of a run is smaller than stated, copper-clad, or single where a pair is meant.</summary>
    WrongConductor,

    /// <summary>A run is longer than drawn.</summary>
    LongerRun,

    /// <summary>A joint or terminal has too much resistance.</summary>
    PoorJoint,

    /// <summary>Water in a joint or cable lets current through between the conductors.</summary>
    WaterInJoint,

    /// <summary>A conductor of a run is interrupted.</summary>
    OpenConductor,

    /// <summary>The conductors of a run touch.</summary>
    ShortCircuit,

    /// <summary>The leads at a device are reversed.</summary>
    ReversedLeads,

    /// <summary>A run is at another output than its label says.</summary>
    WrongOutput,

    /// <summary>The protective device of an output has opened, or is missing.</summary>
    ProtectiveDeviceOpen,

    /// <summary>The protective device of an output has tripped because it is hot.</summary>
    ProtectiveDeviceHot,

    /// <summary>The supply is set to another voltage than stated.</summary>
    SupplySetWrong,

    /// <summary>The voltage of the supply falls too far under load.</summary>
    SupplySags,

    /// <summary>The supply is in its current limit, pulses, or is off.</summary>
    SupplyInLimit,

    /// <summary>A device draws more than its data sheet states.</summary>
    LoadTooLarge,

    /// <summary>Another device is connected than the site file says.</summary>
    WrongDevice,

    /// <summary>The battery that feeds a box is low.</summary>
    BatteryLow,

    /// <summary>A video shield or another ground carries part of the return current.</summary>
    ShieldCarriesReturn,

    /// <summary>The meter is on the wrong range, or its leads are in the wrong jack or poor.</summary>
    MeterWrong,
}
