using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Files.Building;

/// <summary>Harmless values in the place of missing or wrong ones: no check that follows fails because of them.</summary>
internal static class StandIn
{
    /// <summary>A box with every output that a run could ask for.</summary>
    internal const int MostOutputs = 1000;

    internal static IEnumerable<BoxOutput> Outputs => Enumerable.Range(1, MostOutputs).Select(n => new BoxOutput(n, Current));

    /// <summary>Not above any voltage.</summary>
    internal static ElectricPotential LowVoltage { get; } = ElectricPotential.FromVolts(double.Epsilon);

    /// <summary>Not below any voltage.</summary>
    internal static ElectricPotential HighVoltage { get; } = ElectricPotential.FromVolts(double.MaxValue);

    internal static ElectricPotential Voltage { get; } = ElectricPotential.FromVolts(12);

    internal static ElectricCurrent LowCurrent { get; } = ElectricCurrent.FromAmperes(double.Epsilon);

    internal static ElectricCurrent HighCurrent { get; } = ElectricCurrent.FromAmperes(double.MaxValue);

    internal static Duration ShortTime { get; } = Duration.FromSeconds(double.Epsilon);

    internal static Duration LongTime { get; } = Duration.FromSeconds(double.MaxValue);

    internal static Duration Second { get; } = Duration.FromSeconds(1);

    /// <summary>Of an inrush whose peak is the stand-in.</summary>
    internal static JouleIntegral Integral { get; } = JouleIntegral.FromAmpereSquaredSeconds(1);

    internal static ElectricResistance HighResistance { get; } = ElectricResistance.FromOhms(double.MaxValue);

    /// <summary>Of an enclosure that no sunlit area is too large for.</summary>
    internal static Length LongSide { get; } = Length.FromMeters(100);

    internal static Cabinet Cabinet { get; } = new("stand-in", new Enclosure(LongSide, LongSide, LongSide, EnclosureWall.PaintedSteel, EnclosureFaces.FreeInAir));

    internal static Ratio Share { get; } = Ratio.FromPercent(100);

    internal static WireSize ThinWire { get; } = WireSize.SquareMillimeters(1e-300);

    internal static WireSize ThickWire { get; } = WireSize.SquareMillimeters(1e300);

    /// <summary>Of fuses of every rated current.</summary>
    internal static FuseCharacteristic Characteristic { get; } = new("stand-in", LowCurrent, HighCurrent,
        new FuseGate(2, null, LongTime, new Citation("stand-in", CitationKind.Declared)));

    internal static ElectricCurrent Current { get; } = ElectricCurrent.FromAmperes(1);

    internal static Inrush Inrush { get; } = new(Current, Second);

    internal static ElectricResistance Resistance { get; } = ElectricResistance.FromOhms(1);

    internal static Temperature Temperature { get; } = Temperature.FromDegreesCelsius(20);

    internal static Surroundings Surroundings { get; } = new(Temperature, Temperature, Temperature);

    internal static Condition Condition { get; } = Condition.Day(Surroundings);

    internal static VoltageRange Range { get; } = new(LowVoltage, HighVoltage);

    internal static Cable Cable { get; } = Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    internal static Joint Joint { get; } = new("stand-in", ElectricResistance.Zero);

    internal static Connector Connector { get; } = new("stand-in", new Citation("stand-in", CitationKind.Declared));

    internal static Outlet Outlet { get; } = new("stand-in", Voltage, Current);

    internal static Draw Draw { get; } = new ShareDraw(Load.None);

    internal static Device Model { get; } = new("stand-in", DeviceKind.Other, Draw, Range);
}
