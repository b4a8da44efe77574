using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Formats;
using CamPower.Sites;

namespace CamPower.Files.Parts;

/// <summary>The faults of a site's structure, as the core finds them, at their places in the file.</summary>
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
        foreach (SiteError fault in SiteStructure.FindFaults(conditions, boxes, runs, devices, links, bonds, ties))
        {
            int i = fault.Index;
            Place part = root.Member(Lower(fault.Part.ToString())).Children[i], at = part.Member(Lower(fault.Member));
            (KnownNames? known, string name, Place place) = (fault.Part, fault.Member) switch
            {
                (SitePart.Runs, "From") when runs[i].From.JunctionName is string junction => (junctions, junction, at.Member("junction")),
                (SitePart.Runs, "From") => Output(runs[i].From.BoxName!, at),
                (SitePart.Runs, "ReturnAt") => (junctions, runs[i].ReturnAt!, at),
                (SitePart.Devices, "At") => (junctions, devices[i].At, at),
                (SitePart.VideoLinks, "Device") => (deviceNames, links[i].Device, at),
                (SitePart.Bonds, "Ground") => (grounds, bonds[i].Ground, at),
                (SitePart.Bonds, "Box") => (boxNames, bonds[i].Box, at),
                (SitePart.Ties, "One") => Output(ties[i].OneBox, at),
                (SitePart.Ties, "Other") => Output(ties[i].OtherBox, at),
                (SitePart.Conditions, "At") => (null, string.Empty, part.Member("cable")),
                _ => (null, string.Empty, at),
            };

            // Where runs start is not known: a return may well come back to its box.
            bool mayReturn = (fault.Part, fault.Member) is (SitePart.Runs, "ReturnAt") && junctions.Has(name)
                && !KnownNames.AreSound(runList, "from");
            if (known is null) place.FaultOnce(fault.Message);
            else if (!mayReturn) known.NoteReference(name, place, fault.Message);
        }

        (KnownNames?, string, Place) Output(string box, Place at) =>
            boxNames.Has(box) ? (null, box, at.Member("output")) : (boxNames, box, at.Member("box"));
    }

    private static string Lower(string word) => word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..];
}
