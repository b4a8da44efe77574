using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Tests.Circuits.Ngspice;
using UnitsNet;

namespace CamPower.Simulation;

/// <summary>Makes up the networks to simulate, the same ones every time; their numbers are then committed.</summary>
internal sealed class CaseMaker
{
    private const int Seed = 20_260_101;

    private static readonly ConductorMaterial[] Materials =
        [ConductorMaterial.AnnealedCopper, ConductorMaterial.CopperCladAluminum10, ConductorMaterial.CopperCladAluminum15];

    private static readonly double[] SourceVolts = [5, 12, 12, 13.8, 24, 27.6, 48];

    private readonly Random _random = new(Seed);

    public static IReadOnlyList<SimulatedNetwork> Make()
    {
        var maker = new CaseMaker();
        SimulatedNetwork[] runs =
        [
            .. Times(24, maker.CableRun), .. Times(14, maker.MixedRun), .. Times(14, maker.RunNearItsLimit),
            .. Times(8, maker.RunBeyondItsLimit), .. Times(5, maker.RunWithTooMuchCurrent),
        ];
        SimulatedNetwork[] trees =
        [
            .. Times(18, maker.Tree), .. Times(8, () => maker.TreeAt(0.999)), .. Times(6, () => maker.TreeAt(1.01)),
        ];
        return [.. Numbered("run", runs), .. Numbered("tree", trees)];
    }

    // A real cable under a constant-power camera.
    private SimulatedNetwork CableRun()
    {
        (double ohms, string about) = Cable(10, 150);
        return Run(about, Pick(SourceVolts), ohms, watts: Between(2, 25));
    }

    private SimulatedNetwork MixedRun() => Run("made-up shares of power and current and resistance", Pick(SourceVolts),
        ohms: Between(0.05, 3), watts: Between(0, 4), amperes: Between(0, 0.5), loadOhms: Between(20, 500));

    private SimulatedNetwork RunNearItsLimit() => RunAt([0.9, 0.99, 0.995, 0.998, 0.999]);

    private SimulatedNetwork RunBeyondItsLimit() => RunAt([1.001, 1.01, 1.1, 2]);

    private SimulatedNetwork RunAt(double[] shares)
    {
        (double ohms, string about) = Cable(20, 300);
        double volts = Pick(SourceVolts), share = Pick(shares);
        return Run(FormattableString.Invariant($"{about}; {share:0.0%} of the most power"), volts, ohms, share * volts * volts / (4 * ohms));
    }

    private SimulatedNetwork RunWithTooMuchCurrent()
    {
        double volts = Pick(SourceVolts), ohms = Between(1, 10);
        return Run("the current component alone takes all of the source voltage", volts, ohms, Between(0.5, 2), Between(1.1, 2) * volts / ohms);
    }

    private SimulatedNetwork Tree()
    {
        int count = _random.Next(2, 13);
        return new SimulatedNetwork("", "made-up tree of cable runs with mixed loads", Pick([12.0, 24, 48]),
            [.. Enumerable.Range(0, count).Select(i => NodeUnder(_random.Next(-1, i)))]);
    }

    // The same with its power scaled to a share of the most that it can carry.
    private SimulatedNetwork TreeAt(double share)
    {
        SimulatedNetwork tree = Tree();
        double low = 0, high = 1e6;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            if (LibraryAnswers.ByTree(Scaled(tree, middle)) is null) high = middle;
            else low = middle;
        }

        return Scaled(tree, share * low) with { About = FormattableString.Invariant($"{tree.About}; {share:0.0%} of the most power") };
    }

    // A quarter of the nodes are junctions with no load of their own.
    private SimulatedNode NodeUnder(int parent)
    {
        double ohms = Cable(5, 40).Ohms;
        if (_random.Next(4) == 0) return new SimulatedNode(parent, ohms, 0, 0, null, null);
        double amperes = _random.Next(3) == 0 ? Between(0.01, 0.1) : 0;
        double? loadOhms = _random.Next(3) == 0 ? Between(100, 900) : null;
        return new SimulatedNode(parent, ohms, Between(0.5, 4), amperes, loadOhms, null);
    }

    private (double Ohms, string About) Cable(double leastMeters, double mostMeters)
    {
        WireSize size = WireSize.Awg(Pick([12, 14, 16, 18, 18, 20, 22]));
        Stranding stranding = Pick([Stranding.Solid, Stranding.ClassB]);
        ConductorMaterial material = Pick(Materials);
        double meters = Between(leastMeters, mostMeters), celsius = Pick([-20.0, 20, 40, 60, 75]);
        ElectricResistance loop = new CableRun(CamPower.Cable.Pair(size, stranding, material), oneWayLength: Length.FromMeters(meters))
            .LoopResistanceAt(Temperature.FromDegreesCelsius(celsius));
        return (loop.Ohms, FormattableString.Invariant($"{meters} m of {size} {stranding} {material} at {celsius} °C"));
    }

    private static SimulatedNetwork Run(string about, double volts, double ohms, double watts, double amperes = 0, double? loadOhms = null) =>
        new("", about, volts, [new SimulatedNode(-1, ohms, Rounded(watts), Rounded(amperes), loadOhms, null)]);

    private static SimulatedNetwork Scaled(SimulatedNetwork tree, double factor) =>
        tree with { Nodes = [.. tree.Nodes.Select(n => n with { Watts = Rounded(n.Watts * factor) })] };

    private static IEnumerable<SimulatedNetwork> Times(int count, Func<SimulatedNetwork> make) =>
        Enumerable.Range(0, count).Select(_ => make());

    private static IEnumerable<SimulatedNetwork> Numbered(string kind, SimulatedNetwork[] networks) =>
        networks.Select((n, i) => n with { Name = FormattableString.Invariant($"{kind}-{i + 1:00}") });

    private T Pick<T>(T[] choices) => choices[_random.Next(choices.Length)];

    private double Between(double low, double high) => Math.Round(low + ((high - low) * _random.NextDouble()), 3);

    // Nine digits, so that the decimal power of the unit library holds the number exactly.
    private static double Rounded(double value) =>
        double.Parse(value.ToString("G9", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
