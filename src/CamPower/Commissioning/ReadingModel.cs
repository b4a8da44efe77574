using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using CamPower.Sites;
using CamPower.Tolerance;

namespace CamPower.Commissioning;

/// <summary>What a site gives at every point that a meter can reach, at temperatures that hold while it is read. SI doubles.</summary>
/// <remarks>Each circuit is solved when it is first asked for. One thread at a time.</remarks>
internal sealed class ReadingModel
{
    private readonly Condition _running, _infraredForced;
    private readonly Dictionary<(FeedGroup, ReadingState), Solved> _solved = [];
    private readonly Dictionary<ReadingState, SiteAssessment> _alternating = [];

    internal ReadingModel(Site site, SiteTolerance tolerance, Surroundings at)
    {
        Site = site;
        Parts = new UncertainParts(site, tolerance);

        // A charger floats, but for the hours after an outage.
        foreach (DistributionBox box in site.Boxes.Where(b => b.Battery is not null)) Parts.Expected[Parts.SupplyOf(box)] = 0;
        _running = new Condition("running", LoadComponents.None, at);
        _infraredForced = new Condition("infrared forced", LoadComponents.Infrared, at);
    }

    internal Site Site { get; }

    internal UncertainParts Parts { get; }

    /// <summary>What the site gives at a point that it has.</summary>
    internal PointForecast Of(ReadingPoint point) => point.Kind switch
    {
        ReadingKind.SupplyVoltage => OfSupply(point, Site.Index.Box(point.Name)!),
        ReadingKind.PairResistance => new PointForecast(
            point, double.PositiveInfinity, (CommissioningConstants.OpenPair.Value * 1e6, double.PositiveInfinity, true), [], Parts),
        ReadingKind.LoopResistance => OfLoop(point, Site.Index.Device(point.Name)!.At),
        ReadingKind.JunctionLoopResistance => OfLoop(point, point.Name),
        _ when point.State == ReadingState.DeviceUnplugged => OfUnplugged(point),
        ReadingKind.OutputVoltage => OfOutputVoltage(point),
        ReadingKind.OutputCurrent => OfOutputCurrent(point),
        ReadingKind.PlugVoltage => OfPlug(point, SolvedOf(GroupBehind(Site.Index.Device(point.Name)!.At), point.State), point.Name),
        _ => OfJunction(point),
    };

    /// <summary>The box that feeds a point.</summary>
    internal DistributionBox BoxOf(ReadingPoint point) => point.Kind switch
    {
        ReadingKind.SupplyVoltage => Site.Index.Box(point.Name)!,
        ReadingKind.PlugVoltage or ReadingKind.LoopResistance => FeedBehind(Site.Index.Device(point.Name)!.At).Box,
        ReadingKind.JunctionVoltage or ReadingKind.JunctionLoopResistance => FeedBehind(point.Name).Box,
        _ => FeedOf(point)!.Box,
    };

    /// <summary>The output that feeds a point, and all that hangs on it; null of a supply.</summary>
    internal OutputFeed? FeedOf(ReadingPoint point) => point.Kind switch
    {
        ReadingKind.SupplyVoltage => null,
        ReadingKind.PlugVoltage or ReadingKind.LoopResistance => FeedBehind(Site.Index.Device(point.Name)!.At),
        ReadingKind.JunctionVoltage or ReadingKind.JunctionLoopResistance => FeedBehind(point.Name),
        _ => Site.Feeds.SelectMany(g => g.Feeds).FirstOrDefault(point.IsAt),
    };

    private PointForecast OfSupply(ReadingPoint point, DistributionBox box)
    {
        double volts = box.Supply.Output.SetVolts;
        int place = Parts.SupplyOf(box);
        UncertainRange range = Parts.All[place].Range;
        double[] perPart = new double[Parts.All.Length];
        perPart[place] = volts;
        return new PointForecast(
            point, volts * (1 + Parts.Expected[place]), (volts * (1 + range.Low), volts * (1 + range.High), true), perPart, Parts);
    }

    // Nothing flows: the voltage of the supply, or no current.
    private PointForecast OfUnplugged(ReadingPoint point) => point.Kind == ReadingKind.OutputCurrent
        ? new PointForecast(point, 0, (0, 0, true), new double[Parts.All.Length], Parts)
        : OfSupply(point, BoxOf(point));

    private PointForecast OfLoop(ReadingPoint point, string junction)
    {
        UncertainCircuit circuit = SolvedOf(GroupBehind(junction), ReadingState.Running).Circuit;
        double[] perPart = new double[Parts.All.Length], x = (double[])Parts.Expected.Clone();
        foreach (int place in circuit.Relevant)
        {
            // A product of shares that are each linear: the secant over the range is the slope at its middle.
            UncertainRange range = Parts.All[place].Range;
            x[place] = range.High;
            double most = circuit.LoopOhms(junction, x);
            x[place] = range.Low;
            perPart[place] = (most - circuit.LoopOhms(junction, x)) / (range.High - range.Low);
            x[place] = range.Expected;
        }

        double least = circuit.LoopOhms(junction, WorstCorners.Corner(Parts, isDown: false)),
            greatest = circuit.LoopOhms(junction, WorstCorners.Corner(Parts, isDown: true));
        return new PointForecast(point, circuit.LoopOhms(junction, x), (least, greatest, true), perPart, Parts);
    }

    private PointForecast OfOutputCurrent(ReadingPoint point)
    {
        OutputFeed feed = FeedOf(point)!;
        Solved solved = SolvedOf(GroupOf(feed), point.State);
        int place = solved.PlaceOf(feed);
        double crests = ApparentOverReal(feed, point.State);
        return new PointForecast(point, solved.Sensitivity.HasOperatingPoint ? crests * solved.Sensitivity.FeedAmperes[place] : null,
            (crests * solved.Corners.LowestAmperes[place], crests * solved.Corners.HighestAmperes[place], solved.Corners.IsProven),
            Array.ConvertAll(solved.Sensitivity.AmperesPerPart[place], a => crests * a), Parts);
    }

    // A rectifier charges at the crests: a meter that reads true RMS shows more than power over voltage.
    private double ApparentOverReal(OutputFeed feed, ReadingState state)
    {
        if (feed.Box.Supply.Output is not AcOutput || !feed.Devices.Any(d => d.Device.Model.AcStage is not null)) return 1;
        if (!_alternating.TryGetValue(state, out SiteAssessment? assessed))
        {
            assessed = SiteSolver.Solve(Site.With(conditions: [ConditionOf(state)]), CancellationToken.None);
            _alternating.Add(state, assessed);
        }

        List<AcInCondition> inputs = [.. assessed.Devices.Where(d => feed.Devices.Any(f => ReferenceEquals(f.Device, d.Device)))
            .Select(d => d.InConditions[0].Ac).OfType<AcInCondition>()];
        double watts = inputs.Sum(input => (double)input.Power.Watts);
        return watts > 0 ? inputs.Sum(input => input.ApparentPower.Voltamperes) / watts : 1;
    }

    // Behind the protective device: V = Vs − R·I.
    private PointForecast OfOutputVoltage(ReadingPoint point)
    {
        OutputFeed feed = FeedOf(point)!;
        Solved solved = SolvedOf(GroupOf(feed), point.State);
        int place = solved.PlaceOf(feed);
        UncertainCircuit circuit = solved.Circuit;
        double[] expected = Parts.Expected, down = WorstCorners.Corner(Parts, isDown: true), up = WorstCorners.Corner(Parts, isDown: false);
        double amperes = solved.Sensitivity.FeedAmperes[place], ohms = circuit.ProtectionOhms(place, expected);
        double[] perPart = Array.ConvertAll(solved.Sensitivity.AmperesPerPart[place], perUnit => -ohms * perUnit);
        perPart[Parts.SupplyOf(feed.Box)] += feed.Box.Supply.Output.SetVolts;
        int protection = Parts.ProtectionOf(feed.Box, feed.Output);
        if (protection != UncertainParts.None)
        {
            perPart[protection] -= amperes * (circuit.ProtectionOhms(place, down) - circuit.ProtectionOhms(place, up))
                / Math.Max(double.Epsilon, Parts.All[protection].Range.High - Parts.All[protection].Range.Low);
        }

        double lowest = circuit.SourceVolts(place, down)
            - LostAt(circuit.ProtectionOhms(place, down), solved.Corners.HighestAmperes[place]);
        double highest = circuit.SourceVolts(place, up)
            - LostAt(circuit.ProtectionOhms(place, up), solved.Corners.LowestAmperes[place]);
        double? at = solved.Sensitivity.HasOperatingPoint ? circuit.SourceVolts(place, expected) - (ohms * amperes) : null;
        return new PointForecast(point, at, (Math.Max(0, lowest), highest, solved.Corners.IsProven), perPart, Parts);
    }

    private static double LostAt(double ohms, double amperes) => ohms > 0 ? ohms * amperes : 0;

    private PointForecast OfPlug(ReadingPoint point, Solved solved, string device)
    {
        int place = 0;
        while (!string.Equals(solved.Circuit.Group.Devices[place].Device.Name, device, StringComparison.Ordinal)) place++;
        return new PointForecast(point, solved.Sensitivity.HasOperatingPoint ? solved.Sensitivity.DeviceVolts[place] : null,
            (solved.Corners.LowestVolts[place], solved.Corners.HighestVolts[place], solved.Corners.IsProven),
            solved.Sensitivity.VoltsPerPart[place], Parts);
    }

    // A device that draws nothing reads the voltage of a junction.
    private PointForecast OfJunction(ReadingPoint point)
    {
        string name = $"meter at {point.Name}";
        var input = new VoltageRange(UnitsNet.ElectricPotential.FromVolts(1), UnitsNet.ElectricPotential.FromVolts(2));
        var meter = new SiteDevice(name, new Device(name, DeviceKind.Other, new ComponentDraw(Load.None), input, input), point.Name);
        Site site = Site.With(devices: [.. Site.Devices, meter]);
        FeedGroup group = site.Feeds.First(g => g.Devices.Any(d => ReferenceEquals(d.Device, meter)));
        return OfPlug(point, new Solved(UncertainCircuit.Of(group, Parts, ConditionOf(point.State))), name);
    }

    private Solved SolvedOf(FeedGroup group, ReadingState state)
    {
        if (_solved.TryGetValue((group, state), out Solved? known)) return known;
        var solved = new Solved(UncertainCircuit.Of(group, Parts, ConditionOf(state)));
        _solved.Add((group, state), solved);
        return solved;
    }

    private Condition ConditionOf(ReadingState state) => state == ReadingState.InfraredForced ? _infraredForced : _running;

    private FeedGroup GroupOf(OutputFeed feed) => Site.Feeds.First(g => g.Feeds.Contains(feed));

    private FeedGroup GroupBehind(string junction) => GroupOf(FeedBehind(junction));

    private OutputFeed FeedBehind(string junction) => Site.Feeds.SelectMany(g => g.Feeds)
        .First(f => f.Runs.Any(r => string.Equals(r.To, junction, StringComparison.Ordinal)));

    // A circuit with its sensitivities and its worst cases.
    private sealed class Solved(UncertainCircuit circuit)
    {
        private WorstCorners? _corners;
        private CircuitSensitivity? _sensitivity;

        internal UncertainCircuit Circuit { get; } = circuit;

        internal WorstCorners Corners => _corners ??= WorstCorners.Of(Circuit);

        internal CircuitSensitivity Sensitivity => _sensitivity ??= CircuitSensitivity.Of(Circuit, Circuit.Parts.Expected);

        internal int PlaceOf(OutputFeed feed)
        {
            int place = 0;
            while (!ReferenceEquals(Circuit.Group.Feeds[place], feed)) place++;
            return place;
        }
    }
}
