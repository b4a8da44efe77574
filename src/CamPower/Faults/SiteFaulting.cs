using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Faults;
using CamPower.Sites;
using UnitsNet;

namespace CamPower;

/// <summary>Studies the faults of a site.</summary>
public static class SiteFaulting
{
    /// <summary>A short at every place of every used output: terminals, joints, junctions and cameras.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <param name="cancellationToken">Breaks off the study of a short, which starts when it is first asked for and then throws <see cref="OperationCanceledException"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <remarks>
    /// Over the real way of runs. A run that shares another's negative counts by its own outgoing pole and that other way back, and is
    /// shorted at its end alone; what video shields carry back is left out, so that the least current is not overstated.
    /// The least current is what a supply in overload leaves while its other outputs take the most that they do in any condition; for the largest they take nothing.
    /// </remarks>
    /// <example>
    /// <code>
    /// SiteFaults faults = site.Assess().StudyFaults();
    /// foreach (OutputFaults output in faults.Outputs) Console.WriteLine(output);
    /// </code>
    /// </example>
    public static SiteFaults StudyFaults(this SiteAssessment assessment, CancellationToken cancellationToken = default)
    {
        Site site = Require.NotNull(assessment, nameof(assessment)).Site;
        var feeds = site.Feeds.SelectMany(group => group.Feeds, (group, feed) => (group, feed)).ToDictionary(x => (x.feed.Box, x.feed.Output.Number));
        return new SiteFaults(assessment, Array.AsReadOnly([.. assessment.Boxes.SelectMany(box =>
        {
            FaultConditions conditions = ConditionsOf(site, box);
            return box.Outputs.Select(output =>
            {
                (FeedGroup group, OutputFeed feed) = feeds[(box.Box, output.Output.Number)];
                return Study(assessment, box, output, conditions, group, feed, cancellationToken);
            });
        })]));
    }

    private static OutputFaults Study(SiteAssessment assessment, BoxAssessment box, OutputAssessment output, FaultConditions conditions, FeedGroup group, OutputFeed feed,
        CancellationToken cancellationToken)
    {
        ProtectiveDevice? device = output.Output.Protection;
        bool isInsideUnknown = device?.Ambient is not null && box.InConditions.All(c => c.IsInsideUnknown);
        var rail = new Lazy<RailStudy>(() => new RailStudy(assessment, box, output.Output, cancellationToken));
        var setting = new FaultSetting(box.Box.Supply.Output, device, conditions, isInsideUnknown, rail);
        return new OutputFaults(output, conditions, setting, Shorts, Everything, () => ProtectionInCondition.AllOf(output, box));

        IReadOnlyList<SiteShort> Shorts() =>
            Array.AsReadOnly([.. new FeedPlaces(group, conditions).Of(feed).Select(place => new SiteShort(new ShortCircuit(place.Loop, setting), place.Run,
                Array.AsReadOnly([.. output.Devices.Where(d => place.IsEnd && string.Equals(d.At, place.Run!.To, StringComparison.Ordinal))]),
                rail.Value.During(setting.Device.LeastOhms + place.Loop.ColdOhms, setting.Device.MostAmperes)))]);

        FaultLoop Everything()
        {
            IEnumerable<LaidConductor> conductors = new FeedPlaces(group, conditions).Of(feed).Where(place => place.IsEnd).SelectMany(place => place.Loop.Conductors);
            return new FaultLoop("everything", 0, new FaultPole(0, 0, [.. conductors.Distinct()]), FaultPole.None);
        }
    }

    // Losses on paper may warm a box beyond all measure: no device says anything of such air.
    private static FaultConditions ConditionsOf(Site site, BoxAssessment box) => new(
        Temperature.FromDegreesCelsius(site.Conditions.Min(c => c.At.CableCelsius)), Temperature.FromDegreesCelsius(site.Conditions.Max(c => c.At.CableCelsius)),
        Temperature.FromDegreesCelsius(box.InConditions.Min(c => Math.Min(c.SupplyCelsius, Surroundings.Hottest))),
        Temperature.FromDegreesCelsius(box.InConditions.Max(c => Math.Min(c.SupplyCelsius, Surroundings.Hottest))));
}
