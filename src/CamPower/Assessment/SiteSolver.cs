using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Heat;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>Solves every output of a site in every condition and gathers the answers by device, output and box.</summary>
internal static class SiteSolver
{
    internal static SiteAssessment Solve(Site site)
    {
        double coldest = site.Conditions.Min(c => c.At.CableCelsius);
        var devices = new DeviceAssessment[site.Devices.Count];
        var outputs = new List<SolvedOutput>();
        var shields = new List<ShieldAssessment>();
        foreach (FeedGroup group in site.Feeds)
        {
            var solved = new SolvedGroup(group, site.Conditions, coldest);
            for (int i = 0; i < solved.Devices.Length; i++) devices[group.Devices[i].SiteIndex] = solved.Devices[i];
            outputs.AddRange(solved.Outputs);
            shields.AddRange(solved.Shields);
        }

        ILookup<DistributionBox, SolvedOutput> byBox = outputs.OrderBy(o => o.Assessment.Output.Number).ToLookup(o => o.Box);
        BoxAssessment[] boxes = AssessBoxes(site, [.. site.Boxes.Select(box => new BoxLoad(site, box, [.. byBox[box]]))]);
        return new SiteAssessment(site, Array.AsReadOnly(devices), Array.AsReadOnly(boxes), shields.AsReadOnly());
    }

    /// <summary>A box that feeds certain outputs, in every condition, with no other box in its enclosure.</summary>
    internal static BoxAssessment AssessBox(Site site, DistributionBox box, IReadOnlyList<SolvedOutput> outputs) => AssessBoxes(site, [new BoxLoad(site, box, outputs)])[0];

    // Boxes of one cabinet share its air; any other box has its own.
    private static BoxAssessment[] AssessBoxes(Site site, IReadOnlyList<BoxLoad> loads)
    {
        var assessed = new BoxAssessment[loads.Count];
        foreach (var together in loads.Select((load, index) => (load, index)).GroupBy(x => (object?)x.load.Box.Cabinet ?? x.load.Box))
        {
            (BoxLoad Load, int Index)[] members = [.. together];
            EnclosureBalance?[] balances = [.. site.Conditions.Select((condition, c) => Balance(site, [.. members.Select(m => m.Load)], condition, c))];
            for (int place = 0; place < members.Length; place++) assessed[members[place].Index] = members[place].Load.Assess(site, balances, place);
        }

        return assessed;
    }

    // Null where there is no enclosure, or where what one of the boxes loses is not known.
    private static EnclosureBalance? Balance(Site site, BoxLoad[] loads, Condition condition, int index)
    {
        List<BoxLosses> losses = [.. loads.Select(l => l.LossesIn(index)).OfType<BoxLosses>()];
        return losses.Count == loads.Length && loads[0].Box.Enclosure is Enclosure enclosure
            ? EnclosureBalance.Of(enclosure, losses, condition.At, site.AltitudeMeters)
            : null;
    }
}
