namespace Classroom.Bench;

/// <summary>What a load keeps constant when its voltage changes.</summary>
public enum LoadKind
{
    /// <summary>The same power at every voltage, as a switching input draws.</summary>
    ConstantPower,

    /// <summary>The same current at every voltage, as a linear regulator draws.</summary>
    ConstantCurrent,

    /// <summary>The same resistance, as a heater has.</summary>
    ConstantResistance,
}
