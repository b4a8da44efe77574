using System;

namespace CamPower;

/// <summary>Data that a fault study needs and that is not stated.</summary>
[Flags]
public enum FaultData
{
    /// <summary>Nothing is missing.</summary>
    None = 0,

    /// <summary>What protects the output.</summary>
    Protection = 1,

    /// <summary>What the supply does in overload.</summary>
    Overload = 2,

    /// <summary>The resistance behind the supply's terminals, where the supply has no limit of its own.</summary>
    SourceResistance = 4,

    /// <summary>What the protective device does at the temperatures around it: they are outside its ambient curve.</summary>
    DeviceTemperature = 8,

    /// <summary>The limits of the insulation of a conductor on the way.</summary>
    Insulation = 16,

    /// <summary>How a cable on the way lies, and so how it gets rid of its heat.</summary>
    InstallationMethod = 32,

    /// <summary>The capacitance across the supply's terminals: what it discharges is then left out.</summary>
    OutputCapacitance = 64,

    /// <summary>The largest current that the protective device interrupts, where a short may draw more than it is tested with.</summary>
    MaximumCurrent = 128,

    /// <summary>The DC voltage that the protective device interrupts, where it is rated for AC alone.</summary>
    DcVoltageRating = 256,
}
