using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using static System.FormattableString;

namespace CamPower.Studies;

/// <summary>What the things that findings are about are part of: a device of its output, an output of its box, a box of its
/// cabinet.</summary>
/// <remarks>A run is known by its far end, so that it stays the same run where it starts elsewhere.</remarks>
internal sealed class FindingPlaces
{
    private const string WholeSite = "site";

    private readonly Dictionary<(SubjectKind, string), string[]> _places = [];

    /// <param name="site">The site.</param>
    /// <param name="twins">The boxes that were added, and which each is like: what was found of that one is no news of it.</param>
    internal FindingPlaces(Site site, IEnumerable<(string Added, string Like)> twins)
    {
        var like = twins.ToDictionary(twin => twin.Added, twin => twin.Like, StringComparer.Ordinal);
        foreach (DistributionBox box in site.Boxes)
        {
            string[] ofBox = OfBox(box, like);
            _places[(SubjectKind.Box, box.Name)] = ofBox;
            foreach (BoxOutput output in box.Outputs)
            {
                _places[(SubjectKind.Output, Subject.Of(box, output).Name)] =
                    [Output(box.Name, output), .. OutputOfTwin(box, output), .. ofBox];
            }
        }

        foreach (OutputFeed feed in site.Feeds.SelectMany(group => group.Feeds)) Add(feed);

        IEnumerable<string> OutputOfTwin(DistributionBox box, BoxOutput output) =>
            like.TryGetValue(box.Name, out string? twin) ? [Output(twin, output)] : [];
    }

    /// <summary>The thing itself, and what it is part of.</summary>
    internal IReadOnlyList<string> Of(Subject about) =>
        _places.TryGetValue((about.Kind, about.Name), out string[]? places) ? places
        : about.Kind == SubjectKind.Site ? [WholeSite] : [$"{about.Kind} {about.Name}", WholeSite];

    private static string[] OfBox(DistributionBox box, Dictionary<string, string> like)
    {
        List<string> places = [Box(box.Name)];
        if (like.TryGetValue(box.Name, out string? twin)) places.Add(Box(twin));
        if (box.Cabinet is Cabinet cabinet) places.Add($"{SubjectKind.Cabinet} {cabinet.Name}");
        return [.. places, WholeSite];
    }

    private void Add(OutputFeed feed)
    {
        string[] ofOutput = _places[(SubjectKind.Output, Subject.Of(feed.Box, feed.Output).Name)];
        foreach (SiteRun run in feed.Runs) _places[(SubjectKind.Run, Subject.Of(run).Name)] = [$"run to {run.To}", .. ofOutput];
        foreach (SiteDevice device in feed.DevicesFed) _places[(SubjectKind.Device, device.Name)] = [$"device {device.Name}", .. ofOutput];
    }

    private static string Box(string name) => $"box {name}";

    private static string Output(string box, BoxOutput output) => Invariant($"output {output.Number} of {box}");
}
