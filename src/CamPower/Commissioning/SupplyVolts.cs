namespace CamPower.Commissioning;

/// <summary>The voltage at the terminals of a supply in the three states of the sheet. [V]</summary>
internal readonly struct SupplyVolts(double unloaded, double day, double night, bool isUnsteady)
{
    /// <summary>Without load. [V]</summary>
    internal double Unloaded { get; } = unloaded;

    /// <summary>With every device, without infrared. [V]</summary>
    internal double Day { get; } = day;

    /// <summary>With every device and infrared. [V]</summary>
    internal double Night { get; } = night;

    /// <summary>Whether it pulses under load, so that a meter shows anything around it.</summary>
    internal bool IsUnsteady { get; } = isUnsteady;

    internal SupplyVolts Plus(double volts) => new(Unloaded + volts, Day + volts, Night + volts, IsUnsteady);
}
