using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Heat;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>Solves outputs of a site in every condition and gathers the answers by device, output and box.</summary>
internal sealed class SiteSolver
{
    private const int MostPasses = 20;
    private const double SameVoltage = 1e-7;

    private readonly Site _site;
    private readonly IReadOnlyList<FeedGroup> _groups;
    private readonly IReadOnlyList<DistributionBox> _boxes;
    private readonly RailVolts[] _lowest, _highest;
    private readonly DistributionBox[] _unregulated;
    private readonly Dictionary<string, DeviceInCondition[]> _inputs = new(StringComparer.Ordinal);
    private readonly CancellationToken _cancellationToken;
    private readonly AirOfBoxes[] _air;
    private readonly int _coldest;

    // Boxes of one cabinet share its air; any other box has its own.
    private readonly int[][] _togetherInAir;

    private GroupInCondition[][] _solved = [];
    private Dictionary<DistributionBox, List<GroupInCondition[]>> _groupsOf = [];
    private BoxLoad[] _loads = [];
    private EnclosureBalance?[][] _balances = [];

    /// <param name="site">The site.</param>
    /// <param name="groups">The outputs that are solved.</param>
    /// <param name="boxes">The boxes that are assessed: none of which other outputs are fed.</param>
    /// <param name="lowest">What feeds them where devices go dark.</param>
    /// <param name="highest">What feeds them where they see too much.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    internal SiteSolver(Site site, IReadOnlyList<FeedGroup> groups, IReadOnlyList<DistributionBox> boxes, RailVolts lowest,
        RailVolts highest, CancellationToken cancellationToken)
    {
        _site = site;
        _groups = groups;
        _boxes = boxes;
        _lowest = [.. site.Conditions.Select(_ => lowest)];
        _highest = [.. site.Conditions.Select(_ => highest)];
        foreach (DistributionBox box in boxes)
        {
            for (int c = 0; c < _lowest.Length; c++)
            {
                (_lowest[c], _highest[c]) = TransformerRail.In(box, site.Conditions[c], _lowest[c], _highest[c]);
            }
        }

        _unregulated = UnregulatedRail.Of(boxes);
        _cancellationToken = cancellationToken;
        _air = AirOfBoxes.AroundBoxes(site);
        _togetherInAir = [.. Enumerable.Range(0, boxes.Count).GroupBy(i => (object?)boxes[i].Cabinet ?? boxes[i])
            .Select(together => together.ToArray())];
        for (int c = 1; c < _air.Length; c++)
        {
            if (site.Conditions[c].At.CableCelsius < site.Conditions[_coldest].At.CableCelsius) _coldest = c;
        }
    }

    internal static SiteAssessment Solve(Site site, CancellationToken cancellationToken)
    {
        Site solved = Converters.Solved(site, cancellationToken);
        return new SiteSolver(solved, solved.Feeds, solved.Boxes, RailVolts.Lowest, RailVolts.Highest, cancellationToken).Solve();
    }

    /// <summary>A box that feeds certain outputs, in every condition, with no other box in its enclosure.</summary>
    internal static BoxAssessment AssessBox(Site site, DistributionBox box, IReadOnlyList<SolvedOutput> outputs)
    {
        BoxLoad load = new(site, box, outputs);
        return load.Assess(site, Balances(site, [load]), 0, rails: null, outputsAsItFalls: null);
    }

    /// <summary>A group in each condition of a site.</summary>
    internal static GroupInCondition[] InConditions(
        FeedGroup group, Site site, AirOfBoxes[] air, Func<int, RailVolts> lowest, Func<int, RailVolts> highest)
    {
        var inConditions = new GroupInCondition[air.Length];
        for (int c = 0; c < air.Length; c++)
        {
            inConditions[c] = new GroupInCondition(group, site.Conditions[c], air[c], lowest(c), highest(c));
        }

        return inConditions;
    }

    /// <summary>The outputs and boxes, in the order of the site.</summary>
    internal SiteAssessment Solve()
    {
        // Warm air makes resettable fuses resist more, and what flows through them warms the air. What is drawn from an unregulated supply
        // lowers its voltage.
        for (int pass = 0; pass < MostPasses; pass++)
        {
            SolveInAir();

            // Both are asked: each takes over what it finds.
            bool isOtherAir = TakesOtherAir(), isOtherVoltage = TakesOtherVoltages();
            if (!isOtherAir && !isOtherVoltage) break;
        }

        BoxRail[][] rails = Array.ConvertAll(_loads, RailsOf);
        var railsOf = new Dictionary<DistributionBox, BoxRail[]>();
        for (int box = 0; box < rails.Length; box++) railsOf.Add(_boxes[box], rails[box]);
        var devices = new DeviceAssessment[_site.Devices.Count];
        var shields = new List<ShieldAssessment>();
        RailVolts light = AtLightLoad();
        foreach (GroupInCondition[] group in FromTheMainsOn()) Assess(group, railsOf, light, devices, shields);
        BoxAssessment[] boxes = new BoxAssessment[_loads.Length];
        foreach (int[] together in _togetherInAir)
        {
            for (int place = 0; place < together.Length; place++)
            {
                int box = together[place];
                boxes[box] = _loads[box].Assess(_site, _balances[box], place, rails[box],
                    (c, source) => AsItFalls(_boxes[box], c, source, devices));
            }
        }

        TellOutputs(devices, boxes);
        DeviceAssessment[] solved = _groups.Count == _site.Feeds.Count ? devices : Array.FindAll(devices, d => d is not null);
        return new SiteAssessment(_site, Array.AsReadOnly(solved), Array.AsReadOnly(boxes), shields.AsReadOnly());
    }

    // What its output carries decides whether a device stays up, and behind a converter what feeds that.
    private static void TellOutputs(DeviceAssessment[] devices, BoxAssessment[] boxes)
    {
        var inputs = devices.Where(d => d is not null && Converters.IsInput(d.Device))
            .ToDictionary(d => d.Device.Name, StringComparer.Ordinal);
        foreach (OutputAssessment output in boxes.SelectMany(box => box.Outputs))
        {
            inputs.TryGetValue(output.Box.Name, out DeviceAssessment? input);
            foreach (FedDevice fed in output.Feed.Devices)
            {
                IReadOnlyList<DeviceInCondition> device = devices[fed.IndexInSite].InConditions;
                for (int c = 0; c < device.Count; c++) device[c].Behind(output.InConditions[c], input?.InConditions[c]);
            }
        }
    }

    private void SolveInAir()
    {
        _solved = [.. _groups.Select(group =>
        {
            _cancellationToken.ThrowIfCancellationRequested();
            return InConditions(group, _site, _air, c => _lowest[c], c => _highest[c]);
        })];
        _groupsOf = _boxes.ToDictionary(box => box, _ => new List<GroupInCondition[]>());
        Dictionary<DistributionBox, List<SolvedOutput>> outputs = _boxes.ToDictionary(box => box, _ => new List<SolvedOutput>());
        foreach (GroupInCondition[] group in _solved)
        {
            foreach (DistributionBox box in group[0].Group.Boxes) _groupsOf[box].Add(group);
        }

        foreach (DistributionBox box in _boxes) SolveAlternating(box, _groupsOf[box], _cancellationToken);
        foreach (GroupInCondition[] group in _solved)
        {
            foreach (SolvedOutput output in SolvedOutput.AllOf(group)) outputs[output.Box].Add(output);
        }

        _loads = [.. _boxes.Select(box => new BoxLoad(_site, box, [.. outputs[box].OrderBy(o => o.Output.Number)]))];
        _balances = new EnclosureBalance?[_boxes.Count][];
        foreach (int[] together in _togetherInAir)
        {
            EnclosureBalance?[] balances = Balances(_site, [.. together.Select(i => _loads[i])]);
            foreach (int box in together) _balances[box] = balances;
        }
    }

    /// <summary>Solves groups on one transformer together: their outputs meet in its winding, whatever else they have in common.</summary>
    /// <param name="box">The box of the transformer; any other is left alone.</param>
    /// <param name="fed">The groups that it feeds, each in every condition.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    internal static void SolveAlternating(
        DistributionBox box, IReadOnlyList<GroupInCondition[]> fed, CancellationToken cancellationToken)
    {
        if (box.Supply.Output is not AcOutput || fed.Count == 0) return;
        for (int c = 0; c < fed[0].Length; c++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            List<GroupInCondition> groups = [.. fed.Select(g => g[c])];
            if (AlternatingBank.Of(box, groups) is AlternatingBank bank) groups.ForEach(g => g.Take(bank));
        }
    }

    private bool TakesOtherAir()
    {
        bool isOther = false;
        for (int box = 0; box < _boxes.Count; box++)
        {
            if (!_boxes[box].Outputs.Any(
                o => o.Protection is { GreatestOhms: > 0 } device && !double.IsInfinity(device.ResistanceGrowsUpToCelsius)))
            {
                continue;
            }

            for (int c = 0; c < _air.Length; c++)
            {
                isOther |= _balances[box][c] is EnclosureBalance balance && _air[c].Takes(_boxes[box], balance.Heat.InsideCelsius);
            }
        }

        return isOther;
    }

    private bool TakesOtherVoltages()
    {
        bool isOther = false;
        foreach (DistributionBox box in _unregulated)
        {
            for (int c = 0; c < _air.Length; c++)
            {
                List<GroupInCondition> fed = _groupsOf[box].ConvertAll(g => g[c]);
                isOther |= Takes(_lowest, c, box, UnregulatedRail.Lowest(box, _site.Conditions[c], fed));
                isOther |= Takes(_highest, c, box, UnregulatedRail.Highest(
                    box, [_site.Conditions[c]], fed.ConvertAll(g => (g.Circuit, _highest[c], g.Loads))));
            }
        }

        return isOther;
    }

    // Those behind a converter after those that feed it, as far as they are solved here.
    private IEnumerable<GroupInCondition[]> FromTheMainsOn()
    {
        if (_boxes.All(b => b.FedFrom is null)) return _solved;
        var feeding = new Dictionary<string, DistributionBox>(StringComparer.Ordinal);
        foreach (FedDevice fed in _site.Feeds.SelectMany(g => g.Devices).Where(d => Converters.IsInput(d.Device)))
        {
            if (!feeding.ContainsKey(fed.Device.Name)) feeding.Add(fed.Device.Name, fed.Box);
        }

        return _solved.OrderBy(g => g[0].Group.Boxes.Max(Depth));

        // How many converters one after the other feed a box.
        int Depth(DistributionBox box)
        {
            int depth = 0;
            for (DistributionBox? at = box; at?.FedFrom is not null; depth++) feeding.TryGetValue(at.Name, out at);
            return depth;
        }
    }

    // Where the input of a converter is not up, nothing behind it is.
    private void Follow(FeedGroup group, DeviceInCondition[][] devices)
    {
        for (int i = 0; i < devices.Length; i++)
        {
            if (_inputs.TryGetValue(group.Devices[i].Box.Name, out DeviceInCondition[]? input))
            {
                for (int c = 0; c < input.Length; c++)
                {
                    if (input[c].State != DeviceState.Up) devices[i][c] = devices[i][c].Down(input[c].State);
                }
            }

            if (Converters.IsInput(group.Devices[i].Device)) _inputs[group.Devices[i].Device.Name] = devices[i];
        }
    }

    private static bool Takes(RailVolts[] rails, int condition, DistributionBox box, double volts)
    {
        if (Math.Abs(volts - rails[condition].Of(box)) <= SameVoltage * volts) return false;
        rails[condition] = rails[condition].With(box, volts);
        return true;
    }

    // What devices see at most: an unregulated supply has the voltage that the least loads leave, in the coldest cables.
    private RailVolts AtLightLoad()
    {
        RailVolts rail = _highest[_coldest];
        foreach (DistributionBox box in _unregulated)
        {
            rail = rail.With(box, UnregulatedRail.Highest(box, _site.Conditions, _groupsOf[box].ConvertAll(g =>
                (g[_coldest].Circuit, rail, FeedSolver.LightestLoads(g[_coldest].Group)))));
        }

        foreach (DistributionBox box in _boxes)
        {
            if (TransformerRail.Highest(box, _site.Conditions) is double volts && volts > rail.Of(box)) rail = rail.With(box, volts);
        }

        return rail;
    }

    private BoxRail[] RailsOf(BoxLoad load)
    {
        _cancellationToken.ThrowIfCancellationRequested();
        List<GroupInCondition[]> fed = _groupsOf[load.Box];
        return [.. _air.Select((_, c) => new BoxRail(load.Box, fed.ConvertAll(g => g[c]), load.AmperesIn(c), _cancellationToken))];
    }

    private void Assess(GroupInCondition[] inConditions, Dictionary<DistributionBox, BoxRail[]> rails, RailVolts light,
        DeviceAssessment[] assessed, List<ShieldAssessment> shields)
    {
        FeedGroup group = inConditions[0].Group;
        var devices = new DeviceInCondition[group.Devices.Count][];
        for (int i = 0; i < devices.Length; i++) devices[i] = new DeviceInCondition[inConditions.Length];
        for (int c = 0; c < inConditions.Length; c++) FeedSolver.Solve(inConditions[c], c, rails, devices, _cancellationToken);
        Follow(group, devices);
        double[] lightLoad = FeedSolver.LightLoadVolts(inConditions[_coldest].Circuit, light);
        int place = 0;
        foreach (OutputFeed feed in group.Feeds)
        {
            foreach (FedDevice fed in feed.Devices)
            {
                assessed[fed.IndexInSite] =
                    new DeviceAssessment(fed.Device, feed.Box, feed.Output, fed.Path, lightLoad[place], devices[place]);
                place++;
            }
        }

        if (group.Links.Count == 0) return;
        ShieldInCondition[][] carried = [.. inConditions.Select((g, c) =>
            ShieldSolver.ShieldsIn(g.Condition, (MeshedCircuit)g.Circuit, Array.ConvertAll(devices, d => d[c])))];
        shields.AddRange(group.Links.Select((link, l) => new ShieldAssessment(link, Array.ConvertAll(carried, s => s[l]))));
    }

    // What is up takes its part, each output by its own way out and back.
    private RailLoad AsItFalls(DistributionBox box, int condition, SupplyOutput source, DeviceAssessment[] devices)
    {
        double full = Math.Min(_lowest[condition].Of(box), source.LowestVolts);
        return new RailLoad(v => RailBalance.GivenInFault(source, full, v), full,
            [.. _groupsOf[box].SelectMany(g => g[condition].Group.Feeds, (g, feed) => (Group: g[condition], Feed: feed))
                .Where(x => ReferenceEquals(x.Feed.Box, box)).Select(x => BranchOf(x.Group, x.Feed))]);

        RailBranch BranchOf(GroupInCondition group, OutputFeed feed)
        {
            FeedCircuit circuit = group.Group.SharesReturns
                ? FeedCircuit.WithOwnReturns(feed, group.Condition.At.CableCelsius, group.Air)
                : group.Circuit;
            return new RailBranch(circuit, _lowest[condition], box,
                [.. feed.Devices.Select(d => devices[d.IndexInSite].InConditions[condition])
                .Select(d => d.State == DeviceState.Up ? d.Load : Load.None)], CancellationToken.None);
        }
    }

    private static EnclosureBalance?[] Balances(Site site, BoxLoad[] loads) =>
        [.. site.Conditions.Select((condition, c) => Balance(site, loads, condition, c))];

    // Null where there is no enclosure, or where what one of the boxes loses is not known.
    private static EnclosureBalance? Balance(Site site, BoxLoad[] loads, Condition condition, int index)
    {
        if (loads[0].Box.Enclosure is not Enclosure enclosure || LossesIn(index) is not List<BoxLosses> losses) return null;

        // What is over before the enclosure takes it up finds it as warm as that which lasts and loses most in it.
        if (!EnclosureBalance.IsWarmedIn(condition) && LossesOfWhatLasts() is List<BoxLosses> lasting) losses = lasting;
        double air = loads.Max(l => l.Box.AirIn(condition.At));
        return EnclosureBalance.Of(enclosure, losses, condition.At.WithBoxAt(air), site.AltitudeMeters);

        List<BoxLosses>? LossesIn(int c)
        {
            List<BoxLosses> known = [.. loads.Select(l => l.LossesIn(c)).OfType<BoxLosses>()];
            return known.Count == loads.Length ? known : null;
        }

        List<BoxLosses>? LossesOfWhatLasts() => Enumerable.Range(0, site.Conditions.Count)
            .Where(c => EnclosureBalance.IsWarmedIn(site.Conditions[c])).Select(LossesIn)
            .OfType<List<BoxLosses>>().OrderByDescending(each => each.Sum(l => l.OwnWatts)).FirstOrDefault();
    }
}
