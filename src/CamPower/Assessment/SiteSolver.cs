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

    private readonly Site _site;
    private readonly IReadOnlyList<FeedGroup> _groups;
    private readonly IReadOnlyList<DistributionBox> _boxes;
    private readonly RailVolts _lowest, _highest;
    private readonly CancellationToken _cancellationToken;
    private readonly AirOfBoxes[] _air;
    private GroupInCondition[][] _solved = [];
    private ILookup<DistributionBox, GroupInCondition[]>? _groupsOf;
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
        _lowest = lowest;
        _highest = highest;
        _cancellationToken = cancellationToken;
        _air = AirOfBoxes.AroundBoxes(site);
    }

    internal static SiteAssessment Solve(Site site, CancellationToken cancellationToken) =>
        new SiteSolver(site, site.Feeds, site.Boxes, RailVolts.Lowest, RailVolts.Highest, cancellationToken).Solve();

    /// <summary>A box that feeds certain outputs, in every condition, with no other box in its enclosure.</summary>
    internal static BoxAssessment AssessBox(Site site, DistributionBox box, IReadOnlyList<SolvedOutput> outputs)
    {
        BoxLoad load = new(site, box, outputs);
        return load.Assess(site, Balances(site, [load]), 0, rails: null, outputsAsItFalls: null);
    }

    /// <summary>A group in each condition of a site.</summary>
    internal static GroupInCondition[] InConditions(FeedGroup group, Site site, AirOfBoxes[] air, RailVolts lowest, RailVolts highest) =>
        [.. site.Conditions.Select((condition, c) => new GroupInCondition(group, condition, air[c], lowest, highest))];

    /// <summary>The outputs and boxes, in the order of the site.</summary>
    internal SiteAssessment Solve()
    {
        // Warm air makes resettable fuses resist more, and what flows through them warms the air.
        for (int pass = 0; pass < MostPasses; pass++)
        {
            SolveInAir();
            if (!HasOtherAir()) break;
        }

        BoxRail[][] rails = Array.ConvertAll(_loads, RailsOf);
        var railsOf = new Dictionary<DistributionBox, BoxRail[]>();
        for (int box = 0; box < rails.Length; box++) railsOf.Add(_boxes[box], rails[box]);
        var devices = new SortedDictionary<int, DeviceAssessment>();
        var shields = new List<ShieldAssessment>();
        foreach (GroupInCondition[] group in _solved) Assess(group, railsOf, devices, shields);
        BoxAssessment[] boxes = new BoxAssessment[_loads.Length];
        foreach (int[] together in TogetherInAir())
        {
            for (int place = 0; place < together.Length; place++)
            {
                int box = together[place];
                boxes[box] = _loads[box].Assess(_site, _balances[box], place, rails[box], c => AsItFalls(_boxes[box], c, devices));
            }
        }

        return new SiteAssessment(_site, Array.AsReadOnly([.. devices.Values]), Array.AsReadOnly(boxes), shields.AsReadOnly());
    }

    private void SolveInAir()
    {
        _solved = [.. _groups.Select(group =>
        {
            _cancellationToken.ThrowIfCancellationRequested();
            return InConditions(group, _site, _air, _lowest, _highest);
        })];
        _groupsOf = _solved.SelectMany(g => g[0].Group.Feeds.Select(f => f.Box).Distinct(), (group, box) => (group, box))
            .ToLookup(x => x.box, x => x.group);
        ILookup<DistributionBox, SolvedOutput> outputs = _solved.SelectMany(GroupInCondition.Outputs).OrderBy(o => o.Output.Number)
            .ToLookup(o => o.Box);
        _loads = [.. _boxes.Select(box => new BoxLoad(_site, box, [.. outputs[box]]))];
        _balances = new EnclosureBalance?[_boxes.Count][];
        foreach (int[] together in TogetherInAir())
        {
            EnclosureBalance?[] balances = Balances(_site, [.. together.Select(i => _loads[i])]);
            foreach (int box in together) _balances[box] = balances;
        }
    }

    private bool HasOtherAir()
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

    // Boxes of one cabinet share its air; any other box has its own.
    private IEnumerable<int[]> TogetherInAir() =>
        Enumerable.Range(0, _boxes.Count).GroupBy(i => (object?)_boxes[i].Cabinet ?? _boxes[i]).Select(together => together.ToArray());

    private BoxRail[] RailsOf(BoxLoad load)
    {
        _cancellationToken.ThrowIfCancellationRequested();
        GroupInCondition[][] fed = [.. _groupsOf![load.Box]];
        return [.. _air.Select((_, c) => new BoxRail(load.Box, [.. fed.Select(g => g[c])], load.AmperesIn(c), _cancellationToken))];
    }

    private void Assess(GroupInCondition[] inConditions, Dictionary<DistributionBox, BoxRail[]> rails,
        SortedDictionary<int, DeviceAssessment> assessed, List<ShieldAssessment> shields)
    {
        FeedGroup group = inConditions[0].Group;
        DeviceInCondition[][] devices =
            [.. inConditions.Select((g, c) => FeedSolver.DevicesIn(g, d => rails[d.Box][c], _cancellationToken))];
        double[] lightLoad = FeedSolver.LightLoadVolts(
            FeedCircuit.Of(group, _site.Conditions.Min(c => c.At.CableCelsius), inConditions[0].Air), _highest);
        int i = 0;
        foreach ((OutputFeed feed, FedDevice fed) in group.Feeds.SelectMany(f => f.Devices, (feed, fed) => (feed, fed)))
        {
            int index = i++;
            assessed.Add(fed.IndexInSite,
                new DeviceAssessment(fed.Device, feed.Box, feed.Output, fed.Path, lightLoad[index],
                Array.ConvertAll(devices, d => d[index])));
        }

        ShieldInCondition[][] carried =
            [.. inConditions.Select((g, c) => g.Circuit is MeshedCircuit meshed
            ? ShieldSolver.ShieldsIn(g.Condition, meshed, devices[c])
            : [])];
        shields.AddRange(group.Links.Select((link, l) => new ShieldAssessment(link, Array.ConvertAll(carried, s => s[l]))));
    }

    // What is up takes its part, each output by its own way out and back.
    private RailLoad AsItFalls(DistributionBox box, int condition, SortedDictionary<int, DeviceAssessment> devices) =>
        new(v => RailBalance.GivenInFault(box.FaultSource, _lowest.Of(box), v), _lowest.Of(box),
            [.. _groupsOf![box].SelectMany(g => g[condition].Group.Feeds).Where(f => ReferenceEquals(f.Box, box)).Select(feed =>
        {
            var circuit = FeedCircuit.WithOwnReturns(feed, _site.Conditions[condition].At.CableCelsius, _air[condition]);
            return new RailBranch(circuit, _lowest, box,
                [.. feed.Devices.Select(d => devices[d.IndexInSite].InConditions[condition])
                .Select(d => d.State == DeviceState.Up ? d.Load : Load.None)], CancellationToken.None);
        })]);

    private static EnclosureBalance?[] Balances(Site site, BoxLoad[] loads) =>
        [.. site.Conditions.Select((condition, c) => Balance(site, loads, condition, c))];

    // Null where there is no enclosure, or where what one of the boxes loses is not known.
    private static EnclosureBalance? Balance(Site site, BoxLoad[] loads, Condition condition, int index)
    {
        if (loads[0].Box.Enclosure is not Enclosure enclosure || LossesIn(index) is not List<BoxLosses> losses) return null;

        // What is over before the enclosure takes it up finds it as warm as that which lasts and loses most in it.
        if (!EnclosureBalance.IsWarmedIn(condition) && LossesOfWhatLasts() is List<BoxLosses> lasting) losses = lasting;
        return EnclosureBalance.Of(enclosure, losses, condition.At, site.AltitudeMeters);

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
