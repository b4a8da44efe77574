using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using CamPower.Sites;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A protective device that carries more continuously than a conductor behind it does: the conductor would burn first.</summary>
/// <remarks>
/// A source that cannot exceed what a conductor carries protects it (IEC 60364-4-43, 436): the greatest current that the supply keeps up in an overload caps
/// that of the device. A nameplate caps nothing. A fuse counts by its rated current, a resettable one by what it holds, an electronic limit by the most that its tolerance lets pass for good. The conductor counts by what its
/// insulation stands where the cable is warmest, and by the largest device that a code allows its size (<see cref="SmallConductors"/>), whichever
/// is less. Besides, the current at which the device opens for certain may be 1.45 times what the insulation stands (<see cref="CheckConstants.CertainOpening"/>, from memory): that of a
/// fuse to IEC 60127 is 2.1 times its rating. What nobody declares is taken as in <see cref="ConductorOverAmpacityRule"/>.
/// </remarks>
public sealed class ProtectionAboveConductorRatingRule() : Rule("protection-above-conductor-rating", Severity.Danger,
    "The protective device of an output carries more than the thinnest conductor behind it, or opens for certain far above that only: an overload heats the cable and nothing opens.",
    "Use a smaller protective device, or a larger conductor all the way to the camera.", Sources.OverloadCoordination)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Site site = Require.NotNull(evidence, nameof(evidence)).Assessment.Site;
        Dictionary<(DistributionBox, int), double> caps = evidence.Faults.Outputs.ToDictionary(o => (o.Box, o.Output.Number), o => CapOf(site, o));
        double warmest = site.Conditions.Max(c => c.At.CableCelsius);
        foreach (OutputFeed feed in site.Feeds.SelectMany(group => group.Feeds))
        {
            if (feed.Output.Protection is ProtectiveDevice device && !ReferenceEquals(device, ProtectiveDevice.None) && Judge(feed, device, warmest, caps[(feed.Box, feed.Output.Number)]) is Finding finding) yield return finding;
        }
    }

    private Finding? Judge(OutputFeed feed, ProtectiveDevice device, double warmest, double cap)
    {
        bool isProtectedBySource = !Limits.IsAbove(cap, Weakest(feed, (run, cable, conductor) => Stands(run, cable, conductor, warmest)).Amperes);
        return isProtectedBySource ? null : Carried(feed, device, warmest, cap) ?? Opening(feed, device, warmest, cap);
    }

    // Its rated current, whatever the air around it: in a cold box it carries still more.
    private Finding? Carried(OutputFeed feed, ProtectiveDevice device, double warmest, double cap)
    {
        double rated = Math.Min(device.MostCarriedAmperes(currentFactor: 1), cap);
        (SiteRun? run, double amperes) = Weakest(feed, (run, cable, conductor) => Math.Min(Stands(run, cable, conductor, warmest), SmallConductors.ProtectionAmperes(conductor) ?? double.PositiveInfinity));
        if (run is null || double.IsInfinity(rated) || !Limits.IsAbove(rated, amperes)) return null;
        return Find(Subject.Of(feed.Box, feed.Output),
            Invariant($"Its {device} lets {rated:0.##} A flow continuously. The run from {run.From} to {run.To} carries {amperes:0.00} A at {warmest:0.#} °C."),
            ElectricCurrent.FromAmperes(rated), ElectricCurrent.FromAmperes(amperes));
    }

    private Finding? Opening(OutputFeed feed, ProtectiveDevice device, double warmest, double cap)
    {
        double certain = Math.Min(device.CertainAmperes(currentFactor: 1), cap), share = CheckConstants.CertainOpening.Value;
        (SiteRun? run, double amperes) = Weakest(feed, (run, cable, conductor) => Stands(run, cable, conductor, warmest));
        if (run is null || double.IsInfinity(certain) || !Limits.IsAbove(certain, share * amperes)) return null;
        return Find(Subject.Of(feed.Box, feed.Output),
            Invariant($"Its {device} is certain to open from {certain:0.##} A on: more than {share:0.##} times the {amperes:0.00} A that the run from {run.From} to {run.To} carries at {warmest:0.#} °C."),
            ElectricCurrent.FromAmperes(certain), ElectricCurrent.FromAmperes(share * amperes));
    }

    // Outputs that are tied together are fed by more than the one supply.
    private static double CapOf(Site site, OutputFaults output) => site.Ties.Count > 0 ? double.PositiveInfinity : output.GreatestSustainedAmperes;

    private static (SiteRun? Run, double Amperes) Weakest(OutputFeed feed, Func<SiteRun, Cable, Conductor, double> rating)
    {
        SiteRun? weakest = null;
        double least = double.PositiveInfinity;
        foreach (SiteRun run in feed.Runs)
        {
            foreach (CableSegment segment in run.Run.Segments)
            {
                if (!(segment.OneWayLength.Meters > 0)) continue;
                foreach (Conductor conductor in segment.Cable.Conductors)
                {
                    double amperes = rating(run, segment.Cable, conductor);
                    if (amperes < least) (weakest, least) = (run, amperes);
                }
            }
        }

        return (weakest, least);
    }

    private static double Stands(SiteRun run, Cable cable, Conductor conductor, double warmest) =>
        ConductorCapacity.Of(run, cable, conductor)?.AmperesIn(warmest) ?? double.PositiveInfinity;
}
