using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>Harmless values in the place of missing or wrong ones: no check that follows fails because of them.</summary>
internal static class StandIn
{
    /// <summary>A box with every output that a run could ask for.</summary>
    internal const int MostOutputs = 1000;

    internal static IReadOnlyList<BoxOutput> Outputs =>
        [.. Enumerable.Range(1, MostOutputs).Select(n => new BoxOutput(n, ElectricCurrent.FromAmperes(1)))];

    /// <summary>Not above any voltage.</summary>
    internal static ElectricPotential LowVoltage { get; } = ElectricPotential.FromVolts(double.Epsilon);

    /// <summary>Not below any voltage.</summary>
    internal static ElectricPotential HighVoltage { get; } = ElectricPotential.FromVolts(double.MaxValue);
    internal static ElectricCurrent LowCurrent { get; } = ElectricCurrent.FromAmperes(double.Epsilon);
    internal static ElectricCurrent HighCurrent { get; } = ElectricCurrent.FromAmperes(double.MaxValue);
    internal static Duration ShortTime { get; } = Duration.FromSeconds(double.Epsilon);
    internal static Duration LongTime { get; } = Duration.FromSeconds(double.MaxValue);
    internal static ElectricResistance HighResistance { get; } = ElectricResistance.FromOhms(double.MaxValue);

    /// <summary>Of an enclosure that no sunlit area is too large for.</summary>
    internal static Length LongSide { get; } = Length.FromMeters(100);
    internal static WireSize ThinWire { get; } = WireSize.SquareMillimeters(1e-300);
    internal static WireSize ThickWire { get; } = WireSize.SquareMillimeters(1e300);

    /// <summary>Of fuses of every rated current.</summary>
    internal static FuseCharacteristic Characteristic { get; } = new("stand-in", LowCurrent, HighCurrent,
        new FuseTimeLimit(2, null, LongTime, new Citation("stand-in", CitationKind.Declared)));

    internal static Inrush Inrush { get; } = new(ElectricCurrent.FromAmperes(1), Duration.FromSeconds(1));
    internal static Temperature Mild { get; } = Temperature.FromDegreesCelsius(20);
    internal static Surroundings Surroundings { get; } = new(Mild, Mild, Mild);
    internal static VoltageRange Range { get; } = new(LowVoltage, HighVoltage);

    internal static DcOutput Output { get; } = new(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(1), Ratio.Zero);

    internal static DistributionBox Box { get; } =
        DistributionBox.Adapter("stand-in", new Supply("stand-in", Output, Derating.GenericEnclosed));

    /// <summary>Less than any supply gives.</summary>
    internal static ElectricPotential DiodeDrop { get; } = ElectricPotential.FromMillivolts(1);

    /// <summary>A box that can have a reserve.</summary>
    internal static DistributionBox OfOneOutput(Supply supply) =>
        DistributionBox.OfEqualOutputs("stand-in", supply, 1, ElectricCurrent.FromAmperes(1));

    /// <summary>A box that can be fed from a run.</summary>
    internal static DistributionBox Converter { get; } = DistributionBox.Adapter("stand-in", new Supply("stand-in", Output,
        Derating.GenericEnclosed, new SupplyInput(Range, efficiency: new ShareCurve<Ratio>(new(Ratio.Zero, Ratio.FromPercent(90)),
            new(Ratio.FromPercent(100), Ratio.FromPercent(90))))));

    internal static IReadOnlyList<RuntimePoint> Runtimes { get; } = [new RuntimePoint(Power.FromWatts(1), LongTime)];

    internal static CableRun Run { get; } = new(
        Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper), Length.Zero);
}
