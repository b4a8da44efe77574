using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Verdicts;

/// <summary>A box of outputs, or an adapter, of which everything is declared: 12 V, 10 A, an electronic limit at each output.</summary>
internal sealed record PowerBox
{
    internal string Name { get; init; } = "box";

    internal CurrentKind Kind { get; init; } = CurrentKind.Dc;

    internal double Volts { get; init; } = 12;

    internal double Rated { get; init; } = 10;

    internal double TolerancePercent { get; init; } = 2;

    internal (double Lowest, double Highest)? Trim { get; init; }

    internal double? SetTo { get; init; }

    internal OverloadBehavior? Overload { get; init; } = OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(11));

    internal double? RiseMilliseconds { get; init; }

    internal double? SourceOhms { get; init; } = 0.01;

    internal double? Microfarads { get; init; } = 2200;

    internal double? RipplePercent { get; init; } = 0.5;

    internal (double Lowest, double Highest) Input { get; init; } = (90, 264);

    internal double Efficiency { get; init; } = 0.88;

    internal bool IsAdapter { get; init; }

    internal int Outputs { get; init; } = 8;

    /// <summary>What an output may carry; null for 1.3 A, or what its fuse is rated for. [A]</summary>
    internal double? OutputLimit { get; init; }

    /// <summary>What the second output may carry where it is not that of the others. [A]</summary>
    internal double? SecondOutputLimit { get; init; }

    internal ProtectiveDevice? Protection { get; init; } = Parts.Electronic(1.5);

    internal PowerLimitClass? Claims { get; init; }

    internal TerminalRange? Terminals { get; init; }

    internal Enclosure? Enclosure { get; init; }

    internal Cabinet? Cabinet { get; init; }

    internal Receptacle? Receptacle { get; init; }

    internal DistributionBox ToBox()
    {
        DistributionBox box = IsAdapter
            ? DistributionBox.Adapter(Name, Supply(), Protection, Claims)
            : new DistributionBox(Name, Supply(),
                Enumerable.Range(1, Outputs).Select(n => new BoxOutput(n, ElectricCurrent.FromAmperes((n == 2 ? SecondOutputLimit : null) ?? OutputLimit ?? UsualLimit()), Protection, Claims)),
                    Terminals);
        if (Enclosure is not null) box = box.WithEnclosure(Enclosure);
        if (Cabinet is not null) box = box.WithCabinet(Cabinet);
        return Receptacle is null ? box : box.WithReceptacle(Receptacle);
    }

    private double UsualLimit() => System.Math.Max(1.3, Protection switch
    {
        Fuse fuse => fuse.RatedCurrent.Amperes,
        ResettableFuse resettable => resettable.HoldCurrent.Amperes,
        _ => 0,
    });

    private Supply Supply() =>
        new($"{Volts} V {Rated} A", Kind == CurrentKind.Dc ? Dc() : Ac(), Derating.GenericEnclosed, new SupplyInput(
        new VoltageRange(V(Input.Lowest), V(Input.Highest)), efficiency: Flat(Efficiency), powerFactor: Flat(0.95)));

    private DcOutput Dc() => new(V(Volts), ElectricCurrent.FromAmperes(Rated), Ratio.FromPercent(TolerancePercent),
        trim: Trim is { } trim ? new VoltageRange(V(trim.Lowest), V(trim.Highest)) : null,
        setPoint: SetTo is double set ? V(set) : null,
        ripple: RipplePercent is double ripple ? Ratio.FromPercent(ripple) : null,
        sourceResistance: Resistance(), overload: Overload,
        capacitance: Microfarads is double micro ? ElectricCapacitance.FromMicrofarads(micro) : null,
        rise: RiseMilliseconds is double rise ? Duration.FromMilliseconds(rise) : null);

    private AcOutput Ac() =>
        new(V(Volts), ElectricCurrent.FromAmperes(Rated), Ratio.FromPercent(TolerancePercent), Resistance(), Overload);

    private ElectricResistance? Resistance() => SourceOhms is double ohms ? ElectricResistance.FromOhms(ohms) : null;

    private static ElectricPotential V(double volts) => ElectricPotential.FromVolts(volts);

    private static ShareCurve<Ratio> Flat(double share) => new(
        new(Ratio.Zero, Ratio.FromDecimalFractions(share)), new(Ratio.FromPercent(100), Ratio.FromDecimalFractions(share)));
}
