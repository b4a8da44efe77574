using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using CamPower.Sites;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Checks;

/// <summary>The check of <see cref="Rules.ProtectionAboveConductorAmpacity"/>.</summary>
internal sealed class ProtectionAboveConductorAmpacityRule() : Rule("protection-above-conductor-ampacity", Severity.Danger,
    "A protective device carries more than the smallest conductor behind it, or is certain to open only far above that. " +
    "An overload heats the cable and nothing opens.",
    "Use a smaller protective device, or a larger conductor all the way to the camera.", Sources.OverloadCoordination,
    "fuse or limit too large for the cable")
{
    public override IEnumerable<Finding> Check(Evidence evidence)
    {
        Site site = Require.NotNull(evidence, nameof(evidence)).Assessment.Site;
        if (!site.Feeds.Any(group => group.SharesReturns || group.Feeds.Any(feed => feed.Output.Protection is not null))) yield break;
        double air = site.Conditions.Max(c => c.At.CableCelsius);
        Ampacities least = new(new KnownCapacities(ConductorCapacity.Of), air, isAssumed: true),
            most = new(new KnownCapacities(ConductorCapacity.AtMostOf), air, isAssumed: false);
        Dictionary<(DistributionBox, int), double> caps = evidence.Faults
            .ToDictionary(o => (o.Box, o.Output.Number), o => CapOf(site, o));
        foreach (FeedGroup group in site.Feeds)
        {
            foreach (OutputFeed feed in group.Feeds)
            {
                double cap = caps[(feed.Box, feed.Output.Number)];
                if (OfOutput(evidence, feed, least, cap) is Finding possible) yield return OfOutput(evidence, feed, most, cap) ?? possible;
            }

            if (!group.SharesReturns) continue;
            if (CommonReturn(group, least, caps) is Finding shared) yield return CommonReturn(group, most, caps) ?? shared;
        }
    }

    private Finding? OfOutput(Evidence evidence, OutputFeed feed, Ampacities ampacities, double cap) =>
        Judge(feed, ampacities, cap) ?? InCold(evidence, feed, ampacities, cap);

    private Finding? Judge(OutputFeed feed, Ampacities ampacities, double cap)
    {
        if (feed.Output.Protection is not { IsNone: false } device) return null;
        (SiteRun? run, double amperes) = Weakest(feed, ampacities.Of);
        bool isProtectedBySource = !double.IsInfinity(cap) && !Limits.IsAbove(cap, amperes);
        if (isProtectedBySource) return null;
        return Carried(feed, device, ampacities, cap) ?? (run is null ? null : Opening(feed, device, (run, amperes), ampacities, cap));
    }

    // In air that is colder than its reference a thermal element opens only at more, while its cable may be warm: each season by itself.
    private Finding? InCold(Evidence evidence, OutputFeed feed, Ampacities ampacities, double cap)
    {
        if (feed.Output.Protection is not { Ambient: not null } device) return null;
        BoxAssessment box = evidence.Assessment.Boxes.First(b => ReferenceEquals(b.Box, feed.Box));
        return box.InConditions.Select(c => InCold(feed, device, c, ampacities.In(c.Condition.At.CableCelsius), cap))
            .FirstOrDefault(found => found is not null);
    }

    private Finding? InCold(OutputFeed feed, ProtectiveDevice device, BoxInCondition inCondition, Ampacities ampacities, double cap)
    {
        if (device.MostFactorIn(inCondition.SupplyCelsius) is not double factor || factor <= 1) return null;
        (SiteRun? run, double amperes) = Weakest(feed, ampacities.Of);
        return run is null || !Limits.IsAbove(cap, amperes) ? null : Opening(feed, device, (run, amperes), ampacities, cap, inCondition);
    }

    // Its rated current, whatever the air around it: in a cold box it carries still more.
    private Finding? Carried(OutputFeed feed, ProtectiveDevice device, Ampacities ampacities, double cap)
    {
        double rated = Math.Min(device.MostCarriedAmperes(currentFactor: 1), cap);
        bool isCapped = !ConductorCapacity.IsOfClass2(feed);
        (SiteRun? run, double amperes) = Weakest(feed, (run, cable, conductor) =>
            Math.Min(ampacities.Of(run, cable, conductor), isCapped ? CapOf(conductor) : double.PositiveInfinity));
        if (run is null || double.IsInfinity(rated) || !Limits.IsAbove(rated, amperes)) return null;
        string carries = device is ElectronicLimit ? "lets up to" : "carries";
        string through = device is ElectronicLimit ? "through" : "continuously";
        return Find(Subject.Of(feed.Box, feed.Output),
            $"Its {FaultRuleText.KindOf(device)} ({device}) {carries} {Digits.Of(rated, amperes, "0.##")} A {through}. " +
            $"The run from {run.From} to {run.To} may carry {Digits.Of(amperes, rated)} A " +
            Invariant($"at {ampacities.AirCelsius:0.#} °C."),
            ElectricCurrent.FromAmperes(rated), ElectricCurrent.FromAmperes(amperes), severity: SeverityOf(ampacities));
    }

    private Finding? Opening(OutputFeed feed, ProtectiveDevice device, (SiteRun Run, double Amperes) weakest,
        Ampacities ampacities, double cap, BoxInCondition? cold = null)
    {
        double factor = cold is null ? 1 : device.MostFactorIn(cold.SupplyCelsius)!.Value;
        string air = cold is null ? string.Empty : Invariant($" in air of {cold.SupplyCelsius:0.#} °C");
        double certain = Math.Min(device.CertainAmperes(factor), cap), share = CheckConstants.CertainOpening.Value;
        double allowed = share * weakest.Amperes;
        if (double.IsInfinity(certain) || !Limits.IsAbove(certain, allowed)) return null;
        return Find(Subject.Of(feed.Box, feed.Output),
            $"Its {FaultRuleText.KindOf(device)} ({device}){air} may carry " +
            $"almost {Digits.Of(certain, allowed, "0.##")} A and never open. " +
            $"The run from {weakest.Run.From} to {weakest.Run.To} must not carry more than {Digits.Of(allowed, certain)} A: " +
            Invariant($"{share:0.##} × {weakest.Amperes:0.00} A at {ampacities.AirCelsius:0.#} °C."),
            ElectricCurrent.FromAmperes(certain), ElectricCurrent.FromAmperes(allowed), cold?.Condition, SeverityOf(ampacities));
    }

    // What only the least favorable insulation and installation method make too small is not known: they are not stated.
    private static Severity? SeverityOf(Ampacities ampacities) => ampacities.IsAssumed ? Severity.Note : null;

    // What several protective devices carry together returns through one conductor; a supply gives at most its limit to all outputs.
    private Finding? CommonReturn(FeedGroup group, Ampacities ampacities, Dictionary<(DistributionBox, int), double> caps)
    {
        foreach ((SiteRun run, List<OutputFeed> feeds) in CommonReturns(group))
        {
            double amperes = feeds.GroupBy(feed => feed.Box).Sum(CarriedBy);
            double carries = run.Run.Segments.Where(s => s.OneWayLength.Meters > 0)
                .Select(s => ampacities.Of(run, s.Cable, s.Cable.Return)).DefaultIfEmpty(double.PositiveInfinity).Min();
            if (double.IsInfinity(amperes) || !Limits.IsAbove(amperes, carries)) continue;
            return Find(Subject.Of(run),
                $"The protective devices of {feeds.Count} outputs together carry {Digits.Of(amperes, carries, "0.##")} A. " +
                $"Its return conductor may carry {Digits.Of(carries, amperes)} A " +
                Invariant($"at {ampacities.AirCelsius:0.#} °C."),
                ElectricCurrent.FromAmperes(amperes), ElectricCurrent.FromAmperes(carries), severity: SeverityOf(ampacities));
        }

        return null;

        double CarriedBy(IGrouping<DistributionBox, OutputFeed> box) => Math.Min(
            box.Sum(feed => feed.Output.Protection?.MostCarriedAmperes(currentFactor: 1) ?? double.PositiveInfinity),
            caps[(box.Key, box.First().Output.Number)]);
    }

    // Each run through whose return conductor several outputs return.
    private static IEnumerable<(SiteRun Run, List<OutputFeed> Feeds)> CommonReturns(FeedGroup group)
    {
        var runs = group.Feeds.SelectMany(feed => feed.Runs).ToDictionary(run => run.To, StringComparer.Ordinal);
        var returning = new Dictionary<SiteRun, List<OutputFeed>>();
        foreach (OutputFeed feed in group.Feeds)
        {
            var passed = new HashSet<SiteRun>();
            foreach (SiteRun first in feed.Runs)
            {
                for (SiteRun? run = first; run is not null && passed.Add(run);)
                {
                    run = (run.ReturnAt ?? run.From.JunctionName) is string next ? runs[next] : null;
                }
            }

            foreach (SiteRun run in passed.Where(run => run.ReturnAt is null))
            {
                if (!returning.TryGetValue(run, out List<OutputFeed>? feeds)) returning.Add(run, feeds = []);
                feeds.Add(feed);
            }
        }

        return returning.Where(pair => pair.Value.Count > 1).Select(pair => (pair.Key, pair.Value));
    }

    // The code's largest protective device binds the American sizes alone, and not a Class 2 circuit.
    private static double CapOf(Conductor conductor) => conductor.Size.Series == WireSizeSeries.Awg
        ? SmallConductors.ProtectionAmperes(conductor) ?? double.PositiveInfinity
        : double.PositiveInfinity;

    // Outputs that are tied together are fed by more than the one supply.
    private static double CapOf(Site site, OutputFaults output) =>
        site.Ties.Count > 0 ? double.PositiveInfinity : output.GreatestSustainedAmperes;

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

    // What conductors carry in air of a temperature, at most or at least where insulation or installation method are not stated.
    private sealed class Ampacities(KnownCapacities known, double airCelsius, bool isAssumed)
    {
        /// <summary>Whether it is the least of what is not stated.</summary>
        internal bool IsAssumed => isAssumed;

        internal Ampacities In(double celsius) => new(known, celsius, isAssumed);

        internal double AirCelsius => airCelsius;

        internal double Of(SiteRun run, Cable cable, Conductor conductor) =>
            known.Of(run, cable, conductor)?.AmperesIn(airCelsius) ?? double.PositiveInfinity;
    }
}
