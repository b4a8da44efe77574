using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;
using CamPower.Sites;

namespace CamPower.Files.Building;

/// <summary>The faults of a site's structure, as the core finds them, at their places in the file.</summary>
internal static class StructureCheck
{
    internal static void Note(SiteEntry entry, Place root, IReadOnlyList<Condition> conditions, IReadOnlyList<DistributionBox> boxes,
        IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices, IReadOnlyList<VideoLink> videoLinks, IReadOnlyList<GroundBond> bonds,
        IReadOnlyList<OutputTie> ties)
    {
        Place boxList = root.Member("boxes"), runList = root.Member("runs"), deviceList = root.Member("devices"), linkList = root.Member("videoLinks");
        var boxNames = new KnownNames(boxes.Select(b => b.Name), entry.Boxes is not null && AllSound(boxes.Count, boxList, "name"));
        var junctions = new KnownNames(runs.Select(r => r.To), entry.Runs is not null && AllSound(runs.Count, runList, "to"));
        var deviceNames = new KnownNames(devices.Select(d => d.Name), entry.Devices is not null && AllSound(devices.Count, deviceList, "name"));
        var grounds = new KnownNames(videoLinks.Select(l => l.Ground), AllSound(videoLinks.Count, linkList, "ground"));
        foreach (SiteFault fault in SiteStructure.FindFaults(conditions, boxes, runs, devices, videoLinks, bonds, ties))
        {
            Place part = root.Member(PartName(fault.Part)).Item(fault.Index);
            switch (fault.Part, fault.Member)
            {
                case (SitePart.Runs, "From"):
                    NoteOrigin(fault, runs[fault.Index].From, part.Member("from"), boxNames, junctions);
                    break;
                case (SitePart.Runs, "ReturnAt") when junctions.Has(runs[fault.Index].ReturnAt!) && !AllSound(runs.Count, runList, "from"):
                    // Where a run starts is not known: the return may well come back to its box.
                    break;
                case (SitePart.Runs, "ReturnAt"):
                    NoteReference(fault, runs[fault.Index].ReturnAt!, part.Member("returnAt"), junctions);
                    break;
                case (SitePart.VideoLinks, "Device"):
                    NoteReference(fault, videoLinks[fault.Index].Device, part.Member("device"), deviceNames);
                    break;
                case (SitePart.Bonds, "Ground"):
                    NoteReference(fault, bonds[fault.Index].Ground, part.Member("ground"), grounds);
                    break;
                case (SitePart.Bonds, "Box"):
                    NoteReference(fault, bonds[fault.Index].Box, part.Member("box"), boxNames);
                    break;
                case (SitePart.Ties, "One"):
                    NoteOutput(fault, ties[fault.Index].OneBox, part.Member("one"), boxNames);
                    break;
                case (SitePart.Ties, "Other"):
                    NoteOutput(fault, ties[fault.Index].OtherBox, part.Member("other"), boxNames);
                    break;
                case (SitePart.Devices, "At"):
                    NoteReference(fault, devices[fault.Index].At, part.Member("at"), junctions);
                    break;
                case (SitePart.Conditions, "At"):
                    NoteAt(part.Member("cable"), fault.Message);
                    break;
                default:
                    NoteAt(part.Member(Lower(fault.Member)), fault.Message);
                    break;
            }
        }
    }

    private static void NoteOrigin(SiteFault fault, RunOrigin from, Place at, KnownNames boxes, KnownNames junctions)
    {
        if (from.JunctionName is string junction) NoteReference(fault, junction, at.Member("junction"), junctions);
        else NoteOutput(fault, from.BoxName!, at, boxes);
    }

    private static void NoteOutput(SiteFault fault, string box, Place at, KnownNames boxes)
    {
        if (!boxes.Has(box)) NoteReference(fault, box, at.Member("box"), boxes);
        else NoteAt(at.Member("output"), fault.Message);
    }

    // A reference to nothing may be one to the part whose name could not be read.
    private static void NoteReference(SiteFault fault, string name, Place at, KnownNames known)
    {
        if (at.StandsFor(name)) return;
        if (known.Has(name)) NoteAt(at, fault.Message);
        else if (known.AreComplete) NoteAt(at, fault.Message + Phrase.DidYouMean(name, known.Names));
    }

    private static void NoteAt(Place at, string message)
    {
        if (!at.IsFaulty) at.Fault(message);
    }

    private static bool AllSound(int count, Place list, string member) =>
        Enumerable.Range(0, count).All(i => !list.Item(i).Member(member).IsFaulty);

    private static string PartName(SitePart part) => Lower(part.ToString());

    private static string Lower(string word) => word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..];
}
