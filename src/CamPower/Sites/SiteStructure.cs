using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Sites;

/// <summary>Whether parts make up a site: every name once, every reference to something, every run fed from one side.</summary>
public static class SiteStructure
{
    /// <summary>All reasons why the parts do not make up a site; empty where they do.</summary>
    /// <param name="conditions">The conditions.</param>
    /// <param name="boxes">The boxes and adapters.</param>
    /// <param name="runs">The runs.</param>
    /// <param name="devices">The devices.</param>
    /// <exception cref="ArgumentNullException">A list or one of its items is null.</exception>
    public static IReadOnlyList<SiteFault> FindFaults(IReadOnlyList<Condition> conditions, IReadOnlyList<DistributionBox> boxes,
        IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices)
    {
        conditions = Require.Items(conditions, nameof(conditions));
        boxes = Require.Items(boxes, nameof(boxes));
        runs = Require.Items(runs, nameof(runs));
        devices = Require.Items(devices, nameof(devices));

        var faults = new List<SiteFault>();
        faults.AddRange(Repeated(SitePart.Conditions, "Name", conditions.Select(c => c.Name)));
        faults.AddRange(Repeated(SitePart.Boxes, "Name", boxes.Select(b => b.Name)));
        faults.AddRange(Repeated(SitePart.Devices, "Name", devices.Select(d => d.Name)));
        faults.AddRange(Repeated(SitePart.Runs, "To", runs.Select(r => r.To), to => $"a junction can be fed by one run only, and {to} is fed already"));
        faults.AddRange(RunFaults(boxes, runs));
        faults.AddRange(DeviceFaults(runs, devices));
        faults.AddRange(TemperatureFaults(conditions, runs));
        return faults.AsReadOnly();
    }

    private static IEnumerable<SiteFault> Repeated(SitePart part, string member, IEnumerable<string> names, Func<string, string>? message = null)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        int index = 0;
        foreach (string name in names)
        {
            if (!seen.Add(name))
            {
                yield return new SiteFault(part, index, member, message?.Invoke(name) ?? $"the name {name} is used twice");
            }

            index++;
        }
    }

    private static IEnumerable<SiteFault> RunFaults(IReadOnlyList<DistributionBox> boxes, IReadOnlyList<SiteRun> runs)
    {
        var byJunction = FirstBy(runs, r => r.To);
        var byName = FirstBy(boxes, b => b.Name);
        for (int i = 0; i < runs.Count; i++)
        {
            string? fault = OriginFault(runs[i].From, byName, byJunction) ?? LoopFault(runs[i], byJunction);
            if (fault is not null) yield return new SiteFault(SitePart.Runs, i, "From", fault);
        }
    }

    private static string? OriginFault(RunOrigin from, Dictionary<string, DistributionBox> boxes, Dictionary<string, SiteRun> junctions)
    {
        if (from.JunctionName is string junction)
        {
            return junctions.ContainsKey(junction) ? null : $"no run ends at a junction named {junction}";
        }

        if (!boxes.TryGetValue(from.BoxName!, out DistributionBox? box)) return $"there is no box named {from.BoxName}";
        return from.OutputNumber <= box.Outputs.Count
            ? null
            : FormattableString.Invariant($"{box.Name} has {box.Outputs.Count} outputs, there is no output {from.OutputNumber}");
    }

    // Follows the run back to its output; more steps than runs means that it goes round.
    private static string? LoopFault(SiteRun run, Dictionary<string, SiteRun> junctions)
    {
        SiteRun at = run;
        for (int step = 0; step <= junctions.Count; step++)
        {
            if (at.From.JunctionName is not string junction || !junctions.TryGetValue(junction, out SiteRun? before)) return null;
            at = before;
        }

        return $"the run to {run.To} comes from itself: no box feeds it";
    }

    private static IEnumerable<SiteFault> DeviceFaults(IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices)
    {
        var junctions = new HashSet<string>(runs.Select(r => r.To), StringComparer.Ordinal);
        for (int i = 0; i < devices.Count; i++)
        {
            if (!junctions.Contains(devices[i].At))
            {
                yield return new SiteFault(SitePart.Devices, i, "At", $"no run ends at a junction named {devices[i].At}");
            }
        }
    }

    private static IEnumerable<SiteFault> TemperatureFaults(IReadOnlyList<Condition> conditions, IReadOnlyList<SiteRun> runs)
    {
        for (int i = 0; i < conditions.Count; i++)
        {
            double celsius = conditions[i].At.CableCelsius;
            CableRun? outside = runs.Select(r => r.Run).FirstOrDefault(r => celsius < r.ValidFromCelsius || celsius > r.ValidToCelsius);
            if (outside is not null)
            {
                yield return new SiteFault(SitePart.Conditions, i, "At", FormattableString.Invariant(
                    $"the cable temperature of {celsius:G6} °C is outside the range of its conductors, {outside.ValidFromCelsius:G6} °C to {outside.ValidToCelsius:G6} °C"));
            }
        }
    }

    private static Dictionary<string, T> FirstBy<T>(IEnumerable<T> items, Func<T, string> key) => items
        .GroupBy(key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
}
