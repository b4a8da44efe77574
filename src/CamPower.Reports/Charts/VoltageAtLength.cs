using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Reports.Charts;

/// <summary>The voltage at a load for any length of one cable.</summary>
internal sealed class VoltageAtLength(Cable cable, Load load, ElectricPotential from, Temperature conductorAt, LengthUnit unit)
{
    /// <summary>Volts after a length, one way; null where the cable cannot carry the load so far.</summary>
    internal double? Volts(double length) =>
        new CableRun(cable, Length.From(length, unit)).Feed(load, from, conductorAt).TryGetOperatingPoint(out OperatingPoint point)
            ? point.Voltage.Volts
            : null;
}
