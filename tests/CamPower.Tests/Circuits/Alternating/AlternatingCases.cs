using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace CamPower.Tests.Circuits.Alternating;

/// <summary>Transformers with what they feed, the same ones every time: real cables, rectifiers with capacitors, loads that lag.</summary>
internal sealed class AlternatingCases
{
    private const int Seed = 20_260_412;

    private static readonly int[] Sizes = [12, 14, 16, 18, 18, 20];

    private static readonly double[] Frequencies = [50, 60];

    // Open and rated voltage and apparent power of a transformer. [V, V, VA]
    private static readonly (double Open, double Rated, double Size)[] Plates =
        [(28, 24, 20), (27.5, 24, 40), (26.5, 24, 50), (26, 24, 100), (31, 28, 75), (14, 12, 20)];

    private readonly Random _random = new(Seed);

    internal static IReadOnlyList<AlternatingCase> All { get; } = Make();

    private static IReadOnlyList<AlternatingCase> Make()
    {
        var maker = new AlternatingCases();
        return
        [
            .. Times("full", 16, () => maker.Single("one full-wave input at the end of a run", d => maker.FullWave(d))),
            .. Times("half", 10, () => maker.Single("one half-wave input at the end of a run", d => maker.HalfWave(d, isReversed: false))),
            .. Times("heated", 4, () => maker.Single("a full-wave input beside a heater", d => maker.FullWave(d) with { Siemens = 1 / maker.Between(60, 200) })),
            .. Times("several", 12, () => maker.Star("several full-wave inputs on one transformer", maker.FullWave)),
            .. Times("tree", 6, () => maker.Tree("full-wave inputs along a tree of runs", maker.FullWave)),
            .. Times("mixed", 6, () => maker.Star("half-wave inputs of both polarities, isolated, beside full-wave ones", maker.Any)),
            .. Times("lagging", 6, () => maker.Star("loads that lag, none with a rectifier", maker.Lagging)),
            .. Times("beside", 6, () => maker.Star("loads that lag beside full-wave inputs", d => d == 0 ? maker.FullWave(d) : maker.Lagging(d))),
            .. Times("inductive", 4, () => maker.Inductive()),
        ];
    }

    // Made at once: each takes its random numbers in its turn.
    private static List<AlternatingCase> Times(string name, int count, Func<AlternatingCase> make) =>
        [.. Enumerable.Range(1, count).Select(i => make() with { Name = string.Create(CultureInfo.InvariantCulture, $"{name}-{i:00}") })];

    private AlternatingCase Single(string about, Func<int, AlternatingDevice> device) => On(about, [Run(-1)], [device(0)]);

    private AlternatingCase Star(string about, Func<int, AlternatingDevice> device)
    {
        int count = _random.Next(2, 5);
        return On(about, [.. Enumerable.Range(0, count).Select(_ => Run(-1))], [.. Enumerable.Range(0, count).Select(i => device(i) with { Run = i })]);
    }

    private AlternatingCase Tree(string about, Func<int, AlternatingDevice> device)
    {
        int count = _random.Next(3, 5);
        return On(about, [.. Enumerable.Range(0, count).Select(i => Run(i == 0 ? -1 : _random.Next(0, i)))],
            [.. Enumerable.Range(0, count).Select(i => device(i) with { Run = i })]);
    }

    // The pair's own inductance, 0.7 µH a meter, which the package leaves out.
    private AlternatingCase Inductive()
    {
        AlternatingCase made = Single("the inductance of the cable counted by the simulator alone", FullWave);
        return made with { Runs = [.. made.Runs.Select(r => r with { Henries = 0.7e-6 * 120 })] };
    }

    // Nobody puts three times its size on a transformer: what is taken is scaled to at most 1.3 of it.
    private AlternatingCase On(string about, AlternatingRun[] runs, AlternatingDevice[] devices)
    {
        double watts = devices.Sum(d => d.Watts * (d.Diodes == 1 ? 2.5 : 1.6));
        (double Open, double Rated, double Size)[] enough = Plates.Where(p => p.Rated > 20 && watts < 1.3 * p.Size).ToArray();
        (double open, double rated, double size) = enough.Length > 0 ? enough[_random.Next(enough.Length)] : Plates[3];
        double hertz = Frequencies[_random.Next(2)];
        return new AlternatingCase("", about, open, Math.Round((open - rated) * rated / size, 4), hertz, runs, devices);
    }

    private AlternatingDevice FullWave(int run)
    {
        double watts = Between(2, 9);
        return new AlternatingDevice(run, 2, watts, Farads: Rounded(watts * Between(25, 200) * 1e-6));
    }

    private AlternatingDevice HalfWave(int run, bool isReversed)
    {
        double watts = Between(1.5, 5);
        return new AlternatingDevice(run, 1, watts, Farads: Rounded(watts * Between(80, 400) * 1e-6), IsReversed: isReversed);
    }

    private AlternatingDevice Any(int run) => _random.Next(3) == 0 ? FullWave(run) : HalfWave(run, isReversed: _random.Next(2) == 0);

    private AlternatingDevice Lagging(int run) => new(run, 0, Between(2, 12), PowerFactor: Between(0.55, 0.95));

    private AlternatingRun Run(int parent)
    {
        var cable = Cable.Pair(WireSize.Awg(Sizes[_random.Next(Sizes.Length)]), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
        double ohms = new CableRun(cable, oneWayLength: Length.FromMeters(Between(10, 90)))
            .LoopResistanceAt(Temperature.FromDegreesCelsius(Between(-10, 60))).Ohms;
        return new AlternatingRun(parent, Rounded(ohms));
    }

    private double Between(double low, double high) => Math.Round(low + ((high - low) * _random.NextDouble()), 3);

    private static double Rounded(double value) => double.Parse(value.ToString("G5", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
