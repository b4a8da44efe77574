using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Sites;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Studies;

/// <summary>The changes to the cables that a finding depends on.</summary>
internal sealed class CableChanges(ChangeScope scope, PriceList prices)
{
    /// <summary>Rows of changes, each from the least to the most.</summary>
    internal IEnumerable<IEnumerable<SiteChange>> All()
    {
        foreach (SiteRun run in scope.Runs)
        {
            yield return Larger([run]);
            if (MayBeDoubled(run)) yield return [Doubled(run)];
            if (!LargerCable.IsNotOfCopper(run.Run)) continue;
            yield return [Replacing([run], LargerCable.InCopper, $"Use copper of the same size for {In([run])}")];
        }

        if (scope.Runs.Count > 1) yield return Larger(scope.Runs);
        if (scope.Device is null || scope.Feeds[0].Devices.Count < 2) yield break;
        foreach (FedDevice device in scope.Feeds[0].Devices)
        {
            if (OwnRun(device) is SiteChange own) yield return [own];
        }
    }

    /// <summary>A run that starts at an output with others goes to a free output of the box.</summary>
    internal IEnumerable<SiteChange> ToOtherOutputs()
    {
        foreach (OutputFeed feed in scope.Feeds)
        {
            SiteRun[] first = [.. feed.Runs.Where((_, i) => feed.Parents[i] < 0)];
            foreach (BoxOutput free in FreeOutputs(feed.Box).GroupBy(o => (o.LimitAmperes, o.Protection)).Select(alike => alike.First()))
            {
                bool isAlike = free.LimitAmperes.Equals(feed.Output.LimitAmperes)
                    && ReferenceEquals(free.Protection, feed.Output.Protection);
                if (first.Length == 1 && !isAlike) yield return Moved(first[0], feed, free);
                if (first.Length < 2) continue;
                foreach (SiteRun run in first) yield return Moved(run, feed, free);
            }
        }
    }

    // Two small conductors in parallel lower a drop. Against heat they are no remedy: where one breaks, the other carries all.
    private bool MayBeDoubled(SiteRun run) =>
        scope.Device is not null && run.Run.Segments.SelectMany(s => s.Cable.Conductors).All(c => c.Count == 1);

    private IEnumerable<SiteChange> Larger(IReadOnlyList<SiteRun> runs) => runs
        .SelectMany(run => LargerCable.SizesFor(run.Run, prices.Sizes)).Distinct().OrderBy(size => size)
        .Select(size => Replacing(runs, run => LargerCable.InSize(run, size), $"Use {size} for {In(runs)}"));

    private SiteChange Doubled(SiteRun run) =>
        Replacing([run], LargerCable.Doubled, $"Pull a second cable in parallel with {In([run])}", isAdded: true);

    private SiteChange Replacing(IReadOnlyList<SiteRun> runs, Func<CableRun, CableRun> change, string what, bool isAdded = false)
    {
        // A second cable is as much as the first one again.
        CableSegment[] pulled = [.. runs.SelectMany(run => isAdded ? run.Run.Segments : LargerCable.NewIn(change(run.Run), run.Run))];
        double cable = pulled.Sum(s => s.OneWayLength.Meters * prices.OfAMeter(s.Cable));
        var names = new HashSet<string>(runs.Select(run => run.To), StringComparer.Ordinal);
        return new SiteChange($"{what} ({Text(Sum(pulled))}).", prices.Visit + cable + (Meters(pulled) * prices.PullingAMeter),
            [.. names.Select(PartOf)],
            site => site.With(runs: site.Runs.Select(run => names.Contains(run.To) ? run.Of(change(run.Run)) : run)));
    }

    private SiteChange Moved(SiteRun run, OutputFeed feed, BoxOutput free) => new(
        Invariant($"Move {In([run])} to output {free.Number} of {feed.Box}."), prices.Visit, [PartOf(run.To), PartOf(feed.Box, free)],
        site => site.With(runs: site.Runs.Select(r =>
            Same(r.To, run.To) ? r.StartingAt(RunOrigin.Output(feed.Box.Name, free.Number)) : r)));

    // A device that shares its way with others gets a cable of its own, from a free output.
    private SiteChange? OwnRun(FedDevice device)
    {
        if (FreeOutputs(device.Box).FirstOrDefault() is not BoxOutput free) return null;
        Cable cable = device.Path[0].Run.Segments.First().Cable;
        CableSegment segment = new(cable, Sum(device.Path.SelectMany(run => run.Run.Segments)));
        string place = FreeName(device.Device.At);
        var run = new SiteRun(RunOrigin.Output(device.Box.Name, free.Number), place, new CableRun(segment),
            installationMethod: device.Path[0].InstallationMethod);
        return new SiteChange(
            Invariant($"Give {device.Device} a cable of its own from output {free.Number} of {device.Box}: ") +
            $"{Text(segment.OneWayLength)} of {cable}.",
            prices.Visit + (segment.OneWayLength.Meters * (prices.OfAMeter(cable) + prices.PullingAMeter)),
            [$"place of {device.Device}", PartOf(device.Box, free)],
            site => site.With(runs: [.. site.Runs, run],
                devices: site.Devices.Select(d => Same(d.Name, device.Device.Name) ? d.MovedTo(place) : d)));
    }

    private IEnumerable<BoxOutput> FreeOutputs(DistributionBox box) => box.Outputs
        .Where(output => !scope.Site.Index.RunsFrom(box, output).Any() && !scope.Site.Ties.Any(tie => IsTied(tie, box, output)));

    private static bool IsTied(OutputTie tie, DistributionBox box, BoxOutput output) =>
        (Same(tie.OneBox, box.Name) && tie.OneOutput == output.Number)
        || (Same(tie.OtherBox, box.Name) && tie.OtherOutput == output.Number);

    private string FreeName(string place)
    {
        int number = 2;
        while (scope.Site.Index.RunTo(Invariant($"{place} {number}")) != SiteIndex.None) number++;
        return Invariant($"{place} {number}");
    }

    private static string In(IReadOnlyList<SiteRun> runs) => runs.Count == 1
        ? $"the run from {runs[0]}"
        : Invariant($"all {runs.Count} runs from {runs[0].From} to {runs[runs.Count - 1].To}");

    private static string PartOf(string place) => $"run to {place}";

    private static string PartOf(DistributionBox box, BoxOutput output) => RunOrigin.NameOf(box.Name, output.Number);

    private static Length Sum(IEnumerable<CableSegment> segments)
    {
        CableSegment[] all = [.. segments];
        return all.Length == 0
            ? Length.Zero
            : all.Aggregate(Length.Zero.ToUnit(all[0].OneWayLength.Unit), (sum, s) => sum + s.OneWayLength);
    }

    private static double Meters(IEnumerable<CableSegment> segments) => segments.Sum(s => s.OneWayLength.Meters);

    private static string Text(Length length) => length.ToString("s4", CultureInfo.InvariantCulture);

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
