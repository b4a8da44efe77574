using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Sites;

/// <summary>Whether parts make up a site: every name once, every reference to something, every run fed from one side.</summary>
internal sealed class SiteStructure(Site site)
{
    private const string Conditions = "conditions", Boxes = "boxes", Runs = "runs", Devices = "devices", VideoLinks = "videoLinks",
        Bonds = "bonds", Ties = "ties";

    /// <summary>All reasons why the parts do not make up a site; none where they do.</summary>
    internal IEnumerable<SiteError> Errors() =>
    [
        .. Repeated(Conditions, "Name", site.Conditions.Select(c => c.Name)),
        .. Repeated(Boxes, "Name", site.Boxes.Select(b => b.Name)),
        .. SharedErrors(nameof(DistributionBox.Cabinet), b => b.Cabinet, c => c.Name),
        .. Repeated(Devices, "Name", Placed.Select(d => d.Name)),
        .. Repeated(Runs, "To", site.Runs.Select(r => r.To), to => $"a junction can be fed by one run only, and {to} is fed already"),
        .. Repeated(VideoLinks, "Device", site.VideoLinks.Select(l => l.Device), device => $"{device} has a video link already"),
        .. Repeated(Bonds, "Ground", site.Bonds.Select(b => b.ToString()), bond => $"the {bond} is there already"),
        .. SharedErrors(nameof(DistributionBox.Receptacle), b => b.Receptacle, o => o.Name),
        .. SharedErrors(nameof(Receptacle.Breaker), b => b.Receptacle?.Breaker, o => o.Name),
        .. YearErrors(),
        .. Each(Boxes, nameof(DistributionBox.FedFrom), site.Boxes, (_, box) => box.FedFrom is string junction
            ? JunctionError(junction) ?? FeedRingError(box)
            : null),
        .. Each(Boxes, "Name", site.Boxes, (_, box) => box.FedFrom is not null && Placed.Any(d => string.Equals(d.Name, box.Name,
            StringComparison.Ordinal)) ? $"the converter {box.Name} has the name of a device" : null),
        .. Each(Runs, "From", site.Runs, (i, run) => OriginError(run.From) ?? RingError(i, run)),
        .. Each(Runs, "ReturnAt", site.Runs, ReturnError),
        .. Each(Devices, "At", Placed, (_, device) => JunctionError(device.At)),
        .. Each(VideoLinks, "Device", site.VideoLinks, (_, link) => site.Index.Device(link.Device) is null
            ? $"there is no device named {link.Device}"
            : null),
        .. BondErrors(),
        .. TieErrors(),
        .. Each(Conditions, "At", site.Conditions, (_, condition) => TemperatureError(condition.At.CableCelsius)),
    ];

    // What is added up over a year must fit into one.
    private IEnumerable<SiteError> YearErrors()
    {
        double hours = 0;
        return Each(Conditions, nameof(Condition.HoursAYear), site.Conditions, (_, condition) =>
            condition.HoursAYear is not null && Limits.IsAbove(hours += condition.HoursAYear.Value.Hours, Condition.HoursOfAYear)
                ? FormattableString.Invariant($"with it the conditions hold for {hours:G6} h, and a year has {Condition.HoursOfAYear} h")
                : null);
    }

    // The devices that somebody placed: not the inputs of converters.
    private IReadOnlyList<SiteDevice> Placed => [.. site.Devices.Where(d => d.Model.Kind != DeviceKind.Converter)];

    private static IEnumerable<SiteError> Each<T>(string list, string member, IReadOnlyList<T> parts, Func<int, T, string?> errorOf)
    {
        for (int i = 0; i < parts.Count; i++)
        {
            if (errorOf(i, parts[i]) is string error) yield return new SiteError(list, i, member, error);
        }
    }

    private static IEnumerable<SiteError> Repeated(
        string list, string member, IEnumerable<string> names, Func<string, string>? message = null)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return Each(list, member, [.. names], (_, name) => seen.Add(name)
            ? null
            : message?.Invoke(name) ?? $"the name {name} is used twice");
    }

    // A cabinet or a receptacle is one thing: boxes that name it must mean the same.
    private IEnumerable<SiteError> SharedErrors<T>(string member, Func<DistributionBox, T?> shared, Func<T, string> nameOf)
        where T : class
    {
        var first = new Dictionary<string, T>(StringComparer.Ordinal);
        return Each(Boxes, member, site.Boxes, (_, box) =>
        {
            if (shared(box) is not T one) return null;
            if (first.TryGetValue(nameOf(one), out T? known))
            {
                return ReferenceEquals(known, one) ? null : $"another {member.ToLowerInvariant()} is named {nameOf(one)} already";
            }

            first.Add(nameOf(one), one);
            return null;
        });
    }

    private string? JunctionError(string junction) =>
        site.Index.RunTo(junction) == SiteIndex.None ? $"no run ends at a junction named {junction}" : null;

    private string? OriginError(RunOrigin from) =>
        from.JunctionName is string junction ? JunctionError(junction) : OutputError(from.BoxName!, from.OutputNumber);

    private string? OutputError(string name, int number)
    {
        if (site.Index.Box(name) is not DistributionBox box) return $"there is no box named {name}";
        return number <= box.Outputs.Count
            ? null
            : FormattableString.Invariant($"{box.Name} has {box.Outputs.Count} outputs, there is no output {number}");
    }

    // A junction that nothing ends at is another error, of the run that names it.
    private string? RingError(int run, SiteRun named) => BoxBehind(run, alongReturn: false, out bool goesRound) is null && goesRound
        ? $"no box feeds the run to {named.To}: it, or what feeds it, goes round in a ring"
        : null;

    // Follows the feeds of converters back to a box on the mains.
    private string? FeedRingError(DistributionBox converter)
    {
        DistributionBox box = converter;
        for (int step = 0; step <= site.Boxes.Count; step++)
        {
            if (box.FedFrom is not string junction || site.Index.RunTo(junction) == SiteIndex.None) return null;
            if (BoxBehind(site.Index.RunTo(junction), alongReturn: false, out _) is not string name
                || site.Index.Box(name) is not DistributionBox feeding)
            {
                return null;
            }

            box = feeding;
        }

        return $"{converter.Name} feeds itself: its feed goes round in a ring";
    }

    // A shared return ends at the box that feeds the run: otherwise nothing brings its current back.
    private string? ReturnError(int index, SiteRun run)
    {
        if (run.ReturnAt is not string junction) return null;
        if (JunctionError(junction) is string unknown) return unknown;
        if (BoxBehind(index, alongReturn: true, out _) is not string box)
        {
            return $"the return of the run to {run.To} comes back to itself: it reaches no box";
        }

        return BoxBehind(index, alongReturn: false, out _) is string feeding && !string.Equals(box, feeding, StringComparison.Ordinal)
            ? $"the run to {run.To} is fed by {feeding}, and its return comes back to {box}"
            : null;
    }

    // Follows one pole back to a box, or finds that it goes round or ends in nothing.
    private string? BoxBehind(int run, bool alongReturn, out bool goesRound)
    {
        goesRound = false;
        for (int step = 0; step <= site.Runs.Count; step++)
        {
            SiteRun at = site.Runs[run];
            if (((alongReturn ? at.ReturnAt : null) ?? at.From.JunctionName) is not string junction) return at.From.BoxName;
            run = site.Index.RunTo(junction);
            if (run == SiteIndex.None) return null;
        }

        goesRound = true;
        return null;
    }

    private IEnumerable<SiteError> BondErrors()
    {
        for (int i = 0; i < site.Bonds.Count; i++)
        {
            GroundBond bond = site.Bonds[i];
            if (site.Index.Box(bond.Box) is null) yield return new SiteError(Bonds, i, "Box", $"there is no box named {bond.Box}");
            if (!site.Index.HasGround(bond.Ground))
            {
                yield return new SiteError(Bonds, i, "Ground", $"no video link ends at a ground named {bond.Ground}");
            }
        }
    }

    private IEnumerable<SiteError> TieErrors()
    {
        for (int i = 0; i < site.Ties.Count; i++)
        {
            OutputTie tie = site.Ties[i];
            if (OutputError(tie.OneBox, tie.OneOutput) is string one) yield return new SiteError(Ties, i, "One", one);
            if (OutputError(tie.OtherBox, tie.OtherOutput) is string other) yield return new SiteError(Ties, i, "Other", other);
        }
    }

    private string? TemperatureError(double celsius) =>
        site.Runs.Select(r => r.Run).FirstOrDefault(r => celsius < r.ValidFromCelsius || celsius > r.ValidToCelsius) is CableRun outside
            ? FormattableString.Invariant(
                $"the cable temperature of {celsius:G6} °C is outside the range of its conductors, ")
                    + FormattableString.Invariant($"{outside.ValidFromCelsius:G6} °C to {outside.ValidToCelsius:G6} °C")
            : null;
}
