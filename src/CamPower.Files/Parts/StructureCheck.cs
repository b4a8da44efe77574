using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Files.Formats;

namespace CamPower.Files.Parts;

/// <summary>The errors of a site's structure, as the core finds them, at their places in the file.</summary>
internal static class StructureCheck
{
    internal static void Note(Place root, IReadOnlyList<Condition> conditions, IReadOnlyList<DistributionBox> boxes,
        IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices, IReadOnlyList<VideoLink> links, IReadOnlyList<GroundBond> bonds,
        IReadOnlyList<OutputTie> ties)
    {
        Place runList = root.Member("runs"), linkList = root.Member("videoLinks");
        var boxNames = new KnownNames(boxes.Select(b => b.Name), root.Member("boxes"), "name");
        var junctions = new KnownNames(runs.Select(r => r.To), runList, "to");
        var deviceNames = new KnownNames(devices.Select(d => d.Name), root.Member("devices"), "name");
        var grounds = new KnownNames(links.Select(l => l.Ground), linkList, "ground", mayBeLeftOut: true);
        foreach (ArgumentException error in ErrorsOf(conditions, boxes, runs, devices, links, bonds, ties))
        {
            // The core names the place like "runs[3].From".
            string[] named = error.ParamName!.Split('[', ']', '.');
            (string list, int i, string member) = (named[0], int.Parse(named[1], CultureInfo.InvariantCulture), Lower(named[^1]));
            Place part = root.Member(list).Children[i], at = part.Member(member);
            (KnownNames? known, string name, Place place) = (list, member) switch
            {
                ("runs", "from") when runs[i].From.JunctionName is string junction => (junctions, junction, at.Member("junction")),
                ("runs", "from") => Output(runs[i].From.BoxName!, at),
                ("runs", "returnAt") => (junctions, runs[i].ReturnAt!, at),
                ("boxes", "fedFrom") => (junctions, boxes[i].FedFrom!, part.Member("feed").Member("junction")),
                ("devices", "at") => (junctions, devices[i].At, at),
                ("videoLinks", "device") => (deviceNames, links[i].Device, at),
                ("bonds", "ground") => (grounds, bonds[i].Ground, at),
                ("bonds", "box") => (boxNames, bonds[i].Box, at),
                ("ties", "one") => Output(ties[i].OneBox, at),
                ("ties", "other") => Output(ties[i].OtherBox, at),
                ("conditions", "at") => (null, string.Empty, part.Member("cable")),
                _ => (null, string.Empty, at),
            };

            // Where runs start is not known: a return may well come back to its box.
            bool mayReturn = (list, member) is ("runs", "returnAt") && junctions.Has(name) && !KnownNames.AreSound(runList, "from");
            string message = Phrase.MessageOf(error);
            if (known is null) place.ErrorOnce(message);
            else if (!mayReturn) known.NoteReference(name, place, message);
        }

        (KnownNames?, string, Place) Output(string box, Place at) =>
            boxNames.Has(box) ? (null, box, at.Member("output")) : (boxNames, box, at.Member("box"));
    }

    private static IEnumerable<ArgumentException> ErrorsOf(IReadOnlyList<Condition> conditions, IReadOnlyList<DistributionBox> boxes,
        IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices, IReadOnlyList<VideoLink> links, IReadOnlyList<GroundBond> bonds,
        IReadOnlyList<OutputTie> ties)
    {
        try
        {
            _ = new Site("stand-in", conditions.Count > 0
                ? conditions
                : [Condition.Day(StandIn.Surroundings)], boxes, runs, devices, links, bonds, ties: ties);
            return [];
        }
        catch (ArgumentException e) when (e.InnerException is AggregateException errors)
        {
            return errors.InnerExceptions.OfType<ArgumentException>();
        }
    }

    private static string Lower(string word) => word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..];
}
