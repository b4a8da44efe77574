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
    /// <param name="videoLinks">The shields of video cables.</param>
    /// <param name="bonds">The bonds between grounds and boxes.</param>
    /// <param name="ties">The outputs that somebody joined; null for none.</param>
    /// <exception cref="ArgumentNullException">A list or one of its items is null.</exception>
    public static IReadOnlyList<SiteError> FindFaults(IReadOnlyList<Condition> conditions, IReadOnlyList<DistributionBox> boxes,
        IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices, IReadOnlyList<VideoLink> videoLinks, IReadOnlyList<GroundBond> bonds,
        IReadOnlyList<OutputTie>? ties = null)
    {
        conditions = Require.Items(conditions, nameof(conditions));
        boxes = Require.Items(boxes, nameof(boxes));
        runs = Require.Items(runs, nameof(runs));
        devices = Require.Items(devices, nameof(devices));
        videoLinks = Require.Items(videoLinks, nameof(videoLinks));
        bonds = Require.Items(bonds, nameof(bonds));
        ties = Require.Items(ties ?? [], nameof(ties));

        var faults = new List<SiteError>();
        faults.AddRange(Repeated(SitePart.Conditions, "Name", conditions.Select(c => c.Name)));
        faults.AddRange(Repeated(SitePart.Boxes, "Name", boxes.Select(b => b.Name)));
        faults.AddRange(SharedFaults(boxes, nameof(DistributionBox.Cabinet), b => b.Cabinet, c => c.Name));
        faults.AddRange(Repeated(SitePart.Devices, "Name", devices.Select(d => d.Name)));
        faults.AddRange(Repeated(SitePart.Runs, "To", runs.Select(r => r.To), to => $"a junction can be fed by one run only, and {to} is fed already"));
        faults.AddRange(Repeated(SitePart.VideoLinks, "Device", videoLinks.Select(l => l.Device), device => $"{device} has a video link already"));
        faults.AddRange(Repeated(SitePart.Bonds, "Ground", bonds.Select(b => b.ToString()), bond => $"the {bond} is there already"));
        faults.AddRange(SharedFaults(boxes, nameof(DistributionBox.Receptacle), b => b.Receptacle, o => o.Name));
        faults.AddRange(RunFaults(boxes, runs));
        faults.AddRange(ReturnFaults(runs));
        faults.AddRange(DeviceFaults(runs, devices));
        faults.AddRange(LinkFaults(devices, videoLinks));
        faults.AddRange(BondFaults(boxes, videoLinks, bonds));
        faults.AddRange(TieFaults(boxes, ties));
        faults.AddRange(TemperatureFaults(conditions, runs));
        return faults.AsReadOnly();
    }

    private static IEnumerable<SiteError> Repeated(SitePart part, string member, IEnumerable<string> names, Func<string, string>? message = null)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        int index = 0;
        foreach (string name in names)
        {
            if (!seen.Add(name))
            {
                yield return new SiteError(part, index, member, message?.Invoke(name) ?? $"the name {name} is used twice");
            }

            index++;
        }
    }

    // A cabinet or a receptacle is one thing: boxes that name it must mean the same.
    private static IEnumerable<SiteError> SharedFaults<T>(IReadOnlyList<DistributionBox> boxes, string member, Func<DistributionBox, T?> shared, Func<T, string> nameOf)
        where T : class
    {
        var byName = FirstBy(boxes.Select(shared).OfType<T>(), nameOf);
        for (int i = 0; i < boxes.Count; i++)
        {
            if (shared(boxes[i]) is T one && !ReferenceEquals(byName[nameOf(one)], one))
            {
                yield return new SiteError(SitePart.Boxes, i, member, $"another {member.ToLowerInvariant()} is named {nameOf(one)} already");
            }
        }
    }

    private static IEnumerable<SiteError> RunFaults(IReadOnlyList<DistributionBox> boxes, IReadOnlyList<SiteRun> runs)
    {
        var byJunction = FirstBy(runs, r => r.To);
        var byName = FirstBy(boxes, b => b.Name);
        for (int i = 0; i < runs.Count; i++)
        {
            string? fault = OriginFault(runs[i].From, byName, byJunction) ?? LoopFault(runs[i], byJunction);
            if (fault is not null) yield return new SiteError(SitePart.Runs, i, "From", fault);
        }
    }

    private static string? OriginFault(RunOrigin from, Dictionary<string, DistributionBox> boxes, Dictionary<string, SiteRun> junctions)
    {
        if (from.JunctionName is string junction)
        {
            return junctions.ContainsKey(junction) ? null : $"no run ends at a junction named {junction}";
        }

        return OutputFault(from.BoxName!, from.OutputNumber, boxes);
    }

    private static string? OutputFault(string name, int number, Dictionary<string, DistributionBox> boxes)
    {
        if (!boxes.TryGetValue(name, out DistributionBox? box)) return $"there is no box named {name}";
        return number <= box.Outputs.Count
            ? null
            : FormattableString.Invariant($"{box.Name} has {box.Outputs.Count} outputs, there is no output {number}");
    }

    // A junction that nothing ends at is another fault, of the run that names it.
    private static string? LoopFault(SiteRun run, Dictionary<string, SiteRun> junctions) =>
        BoxBehind(run, junctions, _ => null, out bool goesRound) is null && goesRound
            ? $"no box feeds the run to {run.To}: it, or what feeds it, goes round in a ring"
            : null;

    private static IEnumerable<SiteError> DeviceFaults(IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices)
    {
        var junctions = new HashSet<string>(runs.Select(r => r.To), StringComparer.Ordinal);
        for (int i = 0; i < devices.Count; i++)
        {
            if (!junctions.Contains(devices[i].At))
            {
                yield return new SiteError(SitePart.Devices, i, "At", $"no run ends at a junction named {devices[i].At}");
            }
        }
    }

    // A shared return ends at the box that feeds the run: otherwise nothing brings its current back.
    private static IEnumerable<SiteError> ReturnFaults(IReadOnlyList<SiteRun> runs)
    {
        var byJunction = FirstBy(runs, r => r.To);
        for (int i = 0; i < runs.Count; i++)
        {
            if (runs[i].ReturnAt is not string junction) continue;
            string? fault = !byJunction.ContainsKey(junction)
                ? $"no run ends at a junction named {junction}"
                : ReturnBox(runs[i], byJunction) is not string box
                    ? $"the return of the run to {runs[i].To} comes back to itself: it reaches no box"
                    : FeedingBox(runs[i], byJunction) is string feeding && !string.Equals(box, feeding, StringComparison.Ordinal)
                        ? $"the run to {runs[i].To} is fed by {feeding}, and its return comes back to {box}"
                        : null;
            if (fault is not null) yield return new SiteError(SitePart.Runs, i, "ReturnAt", fault);
        }
    }

    private static string? FeedingBox(SiteRun run, Dictionary<string, SiteRun> junctions) => BoxBehind(run, junctions, _ => null, out bool _);

    private static string? ReturnBox(SiteRun run, Dictionary<string, SiteRun> junctions) => BoxBehind(run, junctions, at => at.ReturnAt, out bool _);

    // Follows one pole back to a box, or finds that it goes round or ends in nothing.
    private static string? BoxBehind(SiteRun run, Dictionary<string, SiteRun> junctions, Func<SiteRun, string?> elsewhere, out bool goesRound)
    {
        SiteRun at = run;
        goesRound = false;
        for (int step = 0; step <= junctions.Count; step++)
        {
            if ((elsewhere(at) ?? at.From.JunctionName) is not string junction) return at.From.BoxName;
            if (!junctions.TryGetValue(junction, out SiteRun? before)) return null;
            at = before;
        }

        goesRound = true;
        return null;
    }

    private static IEnumerable<SiteError> LinkFaults(IReadOnlyList<SiteDevice> devices, IReadOnlyList<VideoLink> videoLinks)
    {
        var names = new HashSet<string>(devices.Select(d => d.Name), StringComparer.Ordinal);
        for (int i = 0; i < videoLinks.Count; i++)
        {
            if (!names.Contains(videoLinks[i].Device)) yield return new SiteError(SitePart.VideoLinks, i, "Device", $"there is no device named {videoLinks[i].Device}");
        }
    }

    private static IEnumerable<SiteError> BondFaults(IReadOnlyList<DistributionBox> boxes, IReadOnlyList<VideoLink> videoLinks, IReadOnlyList<GroundBond> bonds)
    {
        var boxNames = new HashSet<string>(boxes.Select(b => b.Name), StringComparer.Ordinal);
        var grounds = new HashSet<string>(videoLinks.Select(l => l.Ground), StringComparer.Ordinal);
        for (int i = 0; i < bonds.Count; i++)
        {
            if (!boxNames.Contains(bonds[i].Box)) yield return new SiteError(SitePart.Bonds, i, "Box", $"there is no box named {bonds[i].Box}");
            if (!grounds.Contains(bonds[i].Ground)) yield return new SiteError(SitePart.Bonds, i, "Ground", $"no video link ends at a ground named {bonds[i].Ground}");
        }
    }

    private static IEnumerable<SiteError> TieFaults(IReadOnlyList<DistributionBox> boxes, IReadOnlyList<OutputTie> ties)
    {
        var byName = FirstBy(boxes, b => b.Name);
        for (int i = 0; i < ties.Count; i++)
        {
            if (OutputFault(ties[i].OneBox, ties[i].OneOutput, byName) is string one) yield return new SiteError(SitePart.Ties, i, "One", one);
            if (OutputFault(ties[i].OtherBox, ties[i].OtherOutput, byName) is string other) yield return new SiteError(SitePart.Ties, i, "Other", other);
        }
    }

    private static IEnumerable<SiteError> TemperatureFaults(IReadOnlyList<Condition> conditions, IReadOnlyList<SiteRun> runs)
    {
        for (int i = 0; i < conditions.Count; i++)
        {
            double celsius = conditions[i].At.CableCelsius;
            CableRun? outside = runs.Select(r => r.Run).FirstOrDefault(r => celsius < r.ValidFromCelsius || celsius > r.ValidToCelsius);
            if (outside is not null)
            {
                yield return new SiteError(SitePart.Conditions, i, "At", FormattableString.Invariant(
                    $"the cable temperature of {celsius:G6} °C is outside the range of its conductors, {outside.ValidFromCelsius:G6} °C to {outside.ValidToCelsius:G6} °C"));
            }
        }
    }

    private static Dictionary<string, T> FirstBy<T>(IEnumerable<T> items, Func<T, string> key) => items
        .GroupBy(key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
}
