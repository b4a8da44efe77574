using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>Solves every output of a site in every condition and gathers the answers by device, output and box.</summary>
internal static class SiteSolver
{
    internal static SiteAssessment Solve(Site site)
    {
        double coldest = site.Conditions.Min(c => c.At.CableCelsius);
        var devices = new DeviceAssessment[site.Devices.Count];
        var outputs = site.Boxes.ToDictionary(box => box.Name, _ => new List<SolvedFeed>(), StringComparer.Ordinal);
        foreach (OutputFeed feed in site.Feeds)
        {
            SolvedFeed solved = SolvedFeed.Of(feed, site.Conditions, coldest);
            outputs[feed.Box.Name].Add(solved);
            for (int i = 0; i < solved.Devices.Length; i++) devices[feed.Devices[i].SiteIndex] = solved.Devices[i];
        }

        var boxes = site.Boxes.Select(box => AssessBox(site, box, outputs[box.Name])).ToList().AsReadOnly();
        return new SiteAssessment(site, Array.AsReadOnly(devices), boxes);
    }

    private static BoxAssessment AssessBox(Site site, DistributionBox box, List<SolvedFeed> feeds)
    {
        var inConditions = new BoxInCondition[site.Conditions.Count];
        for (int c = 0; c < inConditions.Length; c++)
        {
            Condition condition = site.Conditions[c];
            int index = c;
            bool isLowerBound = feeds.Exists(f => f.Output.InConditions[index].IsLowerBound);
            inConditions[c] = new BoxInCondition(condition, TotalAmperes(condition, c, feeds),
                box.Supply.DeratedAmperesAt(condition.At.BoxCelsius), isLowerBound);
        }

        return new BoxAssessment(box, feeds.ConvertAll(f => f.Output).AsReadOnly(), inConditions);
    }

    // The outputs whose motors add most are those taken as moving, as many as the condition lets move.
    private static double TotalAmperes(Condition condition, int index, List<SolvedFeed> feeds)
    {
        double total = 0;
        foreach (SolvedFeed feed in feeds) total += feed.Output.InConditions[index].Amperes;
        if (condition.MotorsMoving is not int most) return total;

        IEnumerable<double> standing = feeds.Select(f => f.Output.InConditions[index].Amperes - f.AmperesAtRest[index])
            .OrderByDescending(added => added).Skip(most);
        return total - standing.Sum();
    }
}
