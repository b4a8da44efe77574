using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Heat;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>Solves every output of a site in every condition and gathers the answers by device, output and box.</summary>
internal static class SiteSolver
{
    internal static SiteAssessment Solve(Site site, CancellationToken cancellationToken)
    {
        double coldest = site.Conditions.Min(c => c.At.CableCelsius);
        var devices = new DeviceAssessment[site.Devices.Count];
        var outputs = new List<SolvedOutput>();
        var shields = new List<ShieldAssessment>();
        foreach (FeedGroup group in site.Feeds)
        {
            var solved = new SolvedGroup(group, site.Conditions, coldest, cancellationToken);
            for (int i = 0; i < solved.Devices.Length; i++) devices[group.Devices[i].SiteIndex] = solved.Devices[i];
            outputs.AddRange(solved.Outputs);
            shields.AddRange(solved.Shields);
        }

        ILookup<DistributionBox, SolvedOutput> byBox = outputs.OrderBy(o => o.Assessment.Output.Number).ToLookup(o => o.Box);
        var boxes = site.Boxes.Select(box => AssessBox(site, box, [.. byBox[box]])).ToList().AsReadOnly();
        return new SiteAssessment(site, Array.AsReadOnly(devices), boxes, shields.AsReadOnly());
    }

    /// <summary>A box that feeds certain outputs, in every condition.</summary>
    internal static BoxAssessment AssessBox(Site site, DistributionBox box, List<SolvedOutput> outputs)
    {
        var inConditions = new BoxInCondition[site.Conditions.Count];
        for (int c = 0; c < inConditions.Length; c++)
        {
            Condition condition = site.Conditions[c];
            int index = c;
            bool isDemandOnly = outputs.Exists(o => o.Assessment.InConditions[index].IsDemandOnly);
            double total = TotalAmperes(condition, c, outputs);
            BoxLosses? losses = box.Enclosure is null ? null : LossesOf(box, total, c, outputs);
            inConditions[c] = new BoxInCondition(box, condition, site.AltitudeMeters, total, losses, isDemandOnly);
        }

        return new BoxAssessment(box, outputs.ConvertAll(o => o.Assessment).AsReadOnly(), inConditions);
    }

    private static BoxLosses? LossesOf(DistributionBox box, double totalAmperes, int index, List<SolvedOutput> outputs) =>
        BoxLosses.Of(box, totalAmperes, outputs.Select(o => (o.Assessment.Output, o.Assessment.InConditions[index].Amperes)));

    // The outputs whose motors add most are those taken as moving, as many as the condition lets move.
    private static double TotalAmperes(Condition condition, int index, List<SolvedOutput> outputs)
    {
        double total = 0;
        foreach (SolvedOutput output in outputs) total += output.Assessment.InConditions[index].Amperes;
        if (condition.MotorsMoving is not int most) return total;

        IEnumerable<double> standing = outputs.Select(o => o.Assessment.InConditions[index].Amperes - o.AmperesAtRest[index])
            .OrderByDescending(added => added).Skip(most);
        return total - standing.Sum();
    }
}
