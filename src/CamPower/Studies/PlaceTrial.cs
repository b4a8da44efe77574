using System;
using System.Collections.Generic;
using System.Linq;
using static System.FormattableString;

namespace CamPower.Studies;

/// <summary>A site with one more device at a place.</summary>
internal sealed class PlaceTrial
{
    private readonly Trial _before;
    private readonly Device _model;
    private readonly CableRun _lead;
    private readonly Trial _with;

    internal PlaceTrial(Trial before, Trial from, RunOrigin origin, Device model, CableRun lead)
    {
        _before = before;
        _model = model;
        _lead = lead;
        Origin = origin;
        string name = FreeName(from.Site, model.Name);
        _with = from.With(new SiteChange($"Connect {name}.", 0, [name], site => site.With(
            runs: [.. site.Runs, new SiteRun(origin, name, lead)], devices: [.. site.Devices, new SiteDevice(name, model, name)])));
        Gained = _with.AddedSince(before);
        LeastMargin = LeastOf(_with.Assessment);
    }

    internal RunOrigin Origin { get; }

    internal Site Site => _with.Site;

    internal IReadOnlyList<Finding> Gained { get; }

    internal double? LeastMargin { get; }

    internal static IReadOnlyList<DevicePlace> All(Site site, Device model, CableRun lead, RuleSet rules,
        System.Threading.CancellationToken cancellationToken)
    {
        var before = new Trial(site, rules, [], cancellationToken);
        IEnumerable<RunOrigin> origins = site.Boxes
            .SelectMany(box => box.Outputs, (box, output) => RunOrigin.Output(box.Name, output.Number))
            .Concat(site.Runs.Select(run => RunOrigin.Junction(run.To)));
        return Array.AsReadOnly([.. origins.Select(origin => new DevicePlace(new PlaceTrial(before, before, origin, model, lead)))
            .OrderBy(place => place.IsAllowed ? 0 : 1).ThenBy(place => place.HasCaution ? 1 : 0)
            .ThenByDescending(place => place.LeastMargin?.Percent ?? double.NegativeInfinity)]);
    }

    internal PlaceTrial OneMore() => new(_before, _with, Origin, _model, _lead);

    private static double? LeastOf(SiteAssessment solved)
    {
        double[] shares = [.. solved.Devices.Where(d => d.Worst.State == DeviceState.Up && d.Worst.Accepted is not null)
            .Select(d => d.Worst.MarginVolts / d.Worst.Accepted!.LowestVolts)];
        return shares.Length == 0 ? null : shares.Min();
    }

    private static string FreeName(Site site, string model)
    {
        string name = $"new {model}";
        for (int number = 2; IsTaken(name); number++) name = Invariant($"new {model} {number}");
        return name;

        bool IsTaken(string taken) => site.Index.Device(taken) is not null || site.Index.RunTo(taken) != Sites.SiteIndex.None
            || site.Index.Box(taken) is not null;
    }
}
