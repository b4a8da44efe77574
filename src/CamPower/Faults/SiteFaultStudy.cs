using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Faults;

/// <summary>Studies the faults of a site.</summary>
internal static class SiteFaultStudy
{
    /// <summary>A short at every place of every used output: terminals, joints, junctions and cameras.</summary>
    internal static IReadOnlyList<OutputFaults> Of(SiteAssessment assessment, CancellationToken cancellationToken)
    {
        Site site = assessment.Site;
        var feeds = site.Feeds.SelectMany(group => group.Feeds, (group, feed) => (group, feed))
            .ToDictionary(x => (x.feed.Box, x.feed.Output.Number));
        return Array.AsReadOnly([.. assessment.Boxes.SelectMany(box =>
        {
            FaultAir[] air = AirOf(box);
            return box.Outputs.Select(output =>
            {
                (FeedGroup group, OutputFeed feed) = feeds[(box.Box, output.Output.Number)];
                return Study(box, output, air, group, feed, cancellationToken);
            });
        })]);
    }

    private static OutputFaults Study(BoxAssessment box, OutputAssessment output, FaultAir[] air, FeedGroup group, OutputFeed feed,
        CancellationToken cancellationToken)
    {
        ProtectiveDevice? device = output.Output.Protection;
        Lazy<RailStudy>[] rails = Array.ConvertAll(air, a => new Lazy<RailStudy>(() => RailIn(a)));
        var setting = new FaultSetting(box.Box.FaultSourceAtCutOff, device, air, rails);
        return new OutputFaults(output, setting, Shorts, Everything, () => ProtectionInCondition.AllOf(output, box));

        IReadOnlyList<ShortCircuit> Shorts() =>
            Array.AsReadOnly([.. new FeedPlaces(group, air).Of(feed).Select(place => new ShortCircuit(place.Loop, setting, place.Run,
                Array.AsReadOnly([.. output.Devices.Where(
                    d => place.IsEnd && string.Equals(d.At, place.Run!.To, StringComparison.Ordinal))]),
                () => setting.RailDuring(place.Loop)))]);

        // Of the conditions of one air that in which the other outputs take most.
        RailStudy RailIn(FaultAir a) => Enumerable.Range(0, box.InConditions.Count).Where(c => AirOf(box.InConditions[c]) == a)
            .Select(c => new RailStudy(box, output.Output, c, cancellationToken)).OrderByDescending(rail => rail.OtherAmperes).First();

        FaultLoop Everything()
        {
            IReadOnlyList<LaidConductor> conductors = new FeedPlaces(group, air).Of(feed).Where(place => place.IsEnd)
                .Aggregate((IReadOnlyList<LaidConductor>)[], (all, place) => LaidConductor.Joined(all, place.Loop.Conductors));
            return new FaultLoop("everything", 0, new FaultPole(new double[air.Length], conductors), FaultPole.AtTerminals(air.Length), []);
        }
    }

    private static FaultAir[] AirOf(BoxAssessment box) => [.. box.InConditions.Select(AirOf).Distinct()];

    // Losses on paper may warm a box beyond all measure: no device says anything of such air. A fault belongs to one condition.
    private static FaultAir AirOf(BoxInCondition box) =>
        new(box.Condition.At.CableCelsius, box.IsInsideUnknown ? null : Math.Min(box.SupplyCelsius, Surroundings.Hottest));
}
