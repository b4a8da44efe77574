namespace CamPower.Tolerance;

/// <summary>What of a site may differ from what the site states.</summary>
public enum UncertainQuantity
{
    /// <summary>The voltage of a box or adapter, as a share of what it is set to; one for each box.</summary>
    SupplyVoltage,

    /// <summary>The temperature of the conductors, in kelvins above that of the condition; one for all cables of a site.</summary>
    CableTemperature,

    /// <summary>The resistance of a length of conductor at a temperature, as a share of what its size gives; one for each cable
    /// type, as from one reel.</summary>
    ConductorResistance,

    /// <summary>The length of a run, as a share of the drawn one; one for each run.</summary>
    RunLength,

    /// <summary>The resistance of the joints of a run, as a share of the stated one; one for each run with joints.</summary>
    JointResistance,

    /// <summary>The resistance of a protective device: 0 is its least and 1 its greatest; one for each output that has one.</summary>
    ProtectionResistance,

    /// <summary>What a device draws, as a share of what its data sheet states; one for each device.</summary>
    DeviceDraw,
}
