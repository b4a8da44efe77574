using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Planning.Tests;

/// <summary>The cheapest plan by trying them all: boxes are judged one by one by the core, and every division of the cameras is tried.</summary>
/// <remarks>It shares nothing with the planner but the question: prices, outputs and rules are asked of the core here anew.</remarks>
internal sealed class EveryPlan(PlanningQuestion question)
{
    private readonly int _cameras = question.Cameras.Count;

    /// <summary>The least cost, or null where no plan keeps every rule. Boxes are independent: each has its own cheapest content.</summary>
    internal double? LeastCost()
    {
        // For each place and each set of cameras the cheapest box and cables; then every division of the cameras.
        double[][] cheapest = [.. question.Places.Select(place => Enumerable.Range(0, 1 << _cameras).Select(set => CheapestAt(place, set)).ToArray())];
        double[] least = cheapest[0];
        foreach (double[] more in cheapest.Skip(1))
        {
            double[] before = least;
            least = [.. Enumerable.Range(0, 1 << _cameras).Select(set => Subsets(set).Min(part => before[set ^ part] + more[part]))];
        }

        return double.IsPositiveInfinity(least[^1]) ? null : least[^1];
    }

    private static IEnumerable<int> Subsets(int set)
    {
        for (int part = set; ; part = (part - 1) & set)
        {
            yield return part;
            if (part == 0) yield break;
        }
    }

    private double CheapestAt(BoxPlace place, int set)
    {
        if (set == 0) return 0;
        int[] members = [.. Enumerable.Range(0, _cameras).Where(i => (set & (1 << i)) != 0)];
        IEnumerable<(DistributionBox Box, double Cost)> boxes = question.Boxes
            .Where(box => Math.Ceiling(members.Length * (1 + question.Sizing.SpareOutputs.DecimalFractions)) <= box.Outputs.Count)
            .Select(box => (box, question.Prices.Of(box) + question.Prices.Visit + box.Outputs.Sum(o => question.Prices.Of(o.Protection!))));
        var all = from box in boxes
                  from cables in Ways(members.Length)
                  select (box.Box, cables, Cost: box.Cost + cables.Select((c, i) => RunCost(question.Cameras[members[i]], place, question.Cables[c])).Sum());
        foreach (var way in all.OrderBy(way => way.Cost))
        {
            if (Keeps(place, way.Box, members, way.cables)) return way.Cost;
        }

        return double.PositiveInfinity;
    }

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
