using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Planning.Tests;

/// <summary>The cheapest plan by trying them all: every division of the cameras between two places, every box and every cable,
/// the cheapest first, each box with its runs judged by the core.</summary>
/// <remarks>It shares nothing with the planner but the question: prices, outputs and rules are asked of the core here anew.</remarks>
internal sealed class EveryPlan(PlanningQuestion question)
{
    private readonly int _cameras = question.Cameras.Count;
    private readonly Dictionary<(int Place, int Set), (double Cost, bool IsExact)> _known = [];

    /// <summary>The least cost of all plans of two places that cost no more than a limit; null where none of them keeps every rule.</summary>
    internal double? LeastCost(double limit = double.PositiveInfinity)
    {
        int all = (1 << _cameras) - 1;
        double best = limit;
        bool isFound = false;
        foreach (int set in Enumerable.Range(0, 1 << _cameras).OrderBy(set => Floor(0, set) + Floor(1, all ^ set)))
        {
            if (Floor(0, set) + Floor(1, all ^ set) > best) break;
            double first = CheapestAt(0, set, best - Floor(1, all ^ set));
            double cost = double.IsPositiveInfinity(first) ? first : first + CheapestAt(1, all ^ set, best - first);
            if (double.IsPositiveInfinity(cost) || cost > best) continue;
            best = cost;
            isFound = true;
        }

        return isFound ? best : null;
    }

    // What some cameras cost from a place at least, whatever the rules say of it.
    private double Floor(int place, int set)
    {
        if (set == 0) return 0;
        int[] members = MembersOf(set);
        return BoxesFor(members.Length).Select(box => box.Cost).DefaultIfEmpty(double.PositiveInfinity).Min()
            + members.Sum(i => question.Cables.Min(cable => RunCost(question.Cameras[i], question.Places[place], cable)));
    }

    private double CheapestAt(int place, int set, double limit)
    {
        if (set == 0) return 0;
        if (_known.TryGetValue((place, set), out (double Cost, bool IsExact) known) && (known.IsExact || known.Cost >= limit))
        {
            return known.IsExact ? known.Cost : double.PositiveInfinity;
        }

        int[] members = MembersOf(set);
        var all = from box in BoxesFor(members.Length)
                  from cables in Ways(members.Length)
                  let cost = box.Cost + cables.Select((c, i) => RunCost(question.Cameras[members[i]], question.Places[place], question.Cables[c])).Sum()
                  where cost <= limit + 1e-9
                  orderby cost
                  select (box.Box, cables, cost);
        foreach ((DistributionBox box, int[] cables, double cost) in all)
        {
            if (!Keeps(question.Places[place], box, members, cables)) continue;
            _known[(place, set)] = (cost, true);
            return cost;
        }

        _known[(place, set)] = (limit, false);
        return double.PositiveInfinity;
    }

    private int[] MembersOf(int set) => [.. Enumerable.Range(0, _cameras).Where(i => (set & (1 << i)) != 0)];

    private IEnumerable<(DistributionBox Box, double Cost)> BoxesFor(int cameras) => question.Boxes
        .Where(box => Math.Ceiling(cameras * (1 + question.Sizing.SpareOutputs.DecimalFractions)) <= box.Outputs.Count)
        .Select(box => (box, question.Prices.Of(box) + question.Prices.Visit + box.Outputs.Sum(o => question.Prices.Of(o.Protection!))));

    // A cable for each of some cameras.
    private IEnumerable<int[]> Ways(int cameras) => cameras == 0
        ? [[]]
        : Ways(cameras - 1).SelectMany(way => Enumerable.Range(0, question.Cables.Count).Select(c => way.Append(c).ToArray()));

    private double RunCost(PlannedCamera camera, BoxPlace place, Cable cable)
    {
        double meters = camera.MetersFrom(place)!.Value;
        double cut = (meters * (1 + question.Material.Slack.DecimalFractions)) + (2 * question.Material.Tail.Meters);
        return cut * (question.Prices.OfAMeter(cable) + question.Prices.PullingAMeter);
    }

    private bool Keeps(BoxPlace place, DistributionBox box, int[] members, int[] cables)
    {
        PlannedCamera[] cameras = [.. members.Select(i => question.Cameras[i])];
        DistributionBox placed = place.Enclosure is Enclosure enclosure ? box.WithEnclosure(enclosure) : box;
        var site = new Site("tried", question.Conditions, [placed],
            cameras.Select((camera, i) => new SiteRun(RunOrigin.Output(box.Name, i + 1), camera.Name,
                new CableRun(question.Cables[cables[i]], Length.FromMeters(camera.MetersFrom(place)!.Value)), installationMethod: question.InstallationMethod)),
            cameras.Select(camera => new SiteDevice(camera.Name, camera.Model, camera.Name)));
        RuleSet rules = question.Rules.With(Rules.SupplyAboveHeadroomPolicy(question.Sizing.Loading));
        return rules.Check(site.Assess()).All(f => f.Severity <= question.MostSevere);
    }
}
