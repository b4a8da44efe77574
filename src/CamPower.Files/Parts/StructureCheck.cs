using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Formats;
using CamPower.Files.Reading;
using CamPower.Sites;

namespace CamPower.Files.Parts;

/// <summary>The faults of a site's structure, as the core finds them, at their places in the file.</summary>
internal static class StructureCheck
{
    internal static void Note(Place root, IReadOnlyList<Condition> conditions, IReadOnlyList<DistributionBox> boxes,
        IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices, IReadOnlyList<VideoLink> videoLinks, IReadOnlyList<GroundBond> bonds,
        IReadOnlyList<OutputTie> ties)
    {
        KnownNames boxNames = Names(root.Member("boxes"), "name", boxes.Select(b => b.Name));
        KnownNames junctions = Names(root.Member("runs"), "to", runs.Select(r => r.To));
        KnownNames deviceNames = Names(root.Member("devices"), "name", devices.Select(d => d.Name));
        KnownNames grounds = Names(root.Member("videoLinks"), "ground", videoLinks.Select(l => l.Ground), mayBeLeftOut: true);
        foreach (SiteFault fault in SiteStructure.FindFaults(conditions, boxes, runs, devices, videoLinks, bonds, ties))
        {
            Place part = root.Member(Lower(fault.Part.ToString())).Children[fault.Index];
            switch (fault.Part, fault.Member)
            {
                case (SitePart.Runs, "From"):
                    NoteOrigin(fault, runs[fault.Index].From, part.Member("from"), boxNames, junctions);
                    break;
                case (SitePart.Runs, "ReturnAt") when junctions.Has(runs[fault.Index].ReturnAt!) && !AreSound(root.Member("runs"), "from"):
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
                    part.Member("cable").FaultOnce(fault.Message);
                    break;
                default:
                    part.Member(Lower(fault.Member)).FaultOnce(fault.Message);
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
        else at.Member("output").FaultOnce(fault.Message);
    }

    // A reference to nothing may be one to the part whose name could not be read.
    private static void NoteReference(SiteFault fault, string name, Place at, KnownNames known)
    {
        if (at.StandsFor(name)) return;
        if (known.Has(name)) at.FaultOnce(fault.Message);
        else if (known.AreComplete) at.FaultOnce(fault.Message + Phrase.DidYouMean(name, known.Names));
    }

    private static KnownNames Names(Place list, string member, IEnumerable<string> names, bool mayBeLeftOut = false) =>
        new(names, areComplete: list.IsMissing ? mayBeLeftOut : list.Value is not null && AreSound(list, member));

    private static bool AreSound(Place list, string member) => list.Children.All(item => !item.Member(member).IsFaulty);

    private static string Lower(string word) => word.Length == 0 ? word : char.ToLowerInvariant(word[0]) + word[1..];
}
