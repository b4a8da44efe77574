using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Loads;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>Converters: what is behind each is solved first, and what its input draws then is a load of the run that feeds it.</summary>
internal static class Converters
{
    /// <summary>The same site, the inputs of its converters drawing what is behind them asks for in each of its conditions.</summary>
    internal static Site Solved(Site site, CancellationToken cancellationToken)
    {
        // Each round solves those that have no other one behind them: a ring is refused where the site is made.
        while (Next(site) is DistributionBox box) site = With(site, box, cancellationToken);
        return site;
    }

    /// <summary>The same site with other conditions, its converters solved in them.</summary>
    internal static Site In(Site site, IReadOnlyList<Condition> conditions)
    {
        if (site.Boxes.All(b => b.FedFrom is null)) return site;
        return Solved(site.With(conditions: conditions.Distinct(), devices: site.Devices.Where(d => !IsInput(d))), CancellationToken.None);
    }

    /// <summary>Whether a device is the input of a converter.</summary>
    internal static bool IsInput(SiteDevice device) => device.Model.Kind == DeviceKind.Converter;

    private static bool IsUnsolved(SiteDevice device) => device.Model.Draw is ConverterDraw { IsSolved: false };

    private static DistributionBox? Next(Site site) => site.Devices.Where(IsUnsolved).Select(d => site.Index.Box(d.Name)!)
        .FirstOrDefault(box => !Fed(site, box).SelectMany(g => g.Devices).Any(d => IsUnsolved(d.Device)));

    private static FeedGroup[] Fed(Site site, DistributionBox box) =>
        [.. site.Feeds.Where(g => g.Boxes.Any(b => ReferenceEquals(b, box)))];

    private static Site With(Site site, DistributionBox box, CancellationToken cancellationToken)
    {
        FeedGroup[] groups = Fed(site, box);
        DistributionBox[] boxes = [.. groups.SelectMany(g => g.Boxes).Append(box).Distinct()];
        SiteAssessment behind =
            new SiteSolver(site, groups, boxes, RailVolts.Lowest, RailVolts.Highest, cancellationToken).Solve();
        BoxAssessment solved = behind.Boxes.First(b => ReferenceEquals(b.Box, box));
        var input = new SiteDevice(box.Name,
            box.InputModel(solved.InConditions.ToDictionary(c => c.Condition, c => box.InputLoadAt(c.Amperes))), box.FedFrom!);
        return site.With(devices: site.Devices.Select(d => IsInput(d) && string.Equals(d.Name, box.Name, System.StringComparison.Ordinal)
            ? input
            : d));
    }
}
