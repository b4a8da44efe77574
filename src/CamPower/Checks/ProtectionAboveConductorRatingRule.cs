using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using CamPower.Sites;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>A protective device that carries more for good than a conductor behind it does: the conductor would burn first.</summary>
/// <remarks>
/// A fuse counts by its rated current, a resettable one by what it holds, an electronic limit by what it lets pass for good. The conductor counts by what its insulation stands
/// where the cable is warmest, and by the largest device that a code allows its size (<see cref="SmallConductors"/>), whichever
/// is less. What nobody declares is taken as in <see cref="ConductorOverAmpacityRule"/>.
/// </remarks>
public sealed class ProtectionAboveConductorRatingRule() : Rule("protection-above-conductor-rating", Severity.Danger,
    "The protective device of an output carries more than the thinnest conductor behind it: an overload heats the cable and nothing opens.",
    "Use a smaller protective device, or a thicker conductor all the way to the device.", Sources.OverloadCoordination)
{
    /// <inheritdoc/>
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Site site = Require.NotNull(evidence, nameof(evidence)).Assessment.Site;
        double warmest = site.Conditions.Max(c => c.At.CableCelsius);
        foreach (OutputFeed feed in site.Feeds.SelectMany(group => group.Feeds))
        {
            // Its rated current, whatever the air around it: in a cold box it carries still more.
            double rated = feed.Output.Protection?.CarriedAmperes(currentFactor: 1) ?? double.PositiveInfinity;
            if (double.IsInfinity(rated)) continue;
            (SiteRun? run, double amperes) = Weakest(feed, warmest);
            if (run is null || !Limits.IsAbove(rated, amperes)) continue;
            yield return Find(Subject.Of(feed.Box, feed.Output),
                Invariant($"Its {feed.Output.Protection} carries {rated:0.##} A for good, and the run from {run.From} to {run.To} is good for {amperes:0.00} A where it is {warmest:0.#} °C."),
                ElectricCurrent.FromAmperes(rated), ElectricCurrent.FromAmperes(amperes));
        }
    }

    private static (SiteRun? Run, double Amperes) Weakest(OutputFeed feed, double warmest)
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
                    double amperes = Rating(run, segment.Cable, conductor, warmest);
                    if (amperes < least) (weakest, least) = (run, amperes);
                }
            }
        }

        return (weakest, least);
    }

    private static double Rating(SiteRun run, Cable cable, Conductor conductor, double warmest)
    {
        double stands = ConductorCapacity.Of(run, cable, conductor)?.AmperesIn(warmest) ?? double.PositiveInfinity;
        double allowed = SmallConductors.ProtectionAmperes(conductor) ?? double.PositiveInfinity;
        return Math.Min(stands, allowed);
    }
}
