using System.Collections.Generic;
using System.Text.Json.Nodes;
using CamPower.Files.Formats;
using CamPower.Files.Reading;
using CamPower.Files.Writing;

namespace CamPower.Files.Parts;

/// <summary>The whole file. Lists that others refer to stand before those that refer to them: that is the order of reading.</summary>
internal static class SiteFormat
{
    private static readonly ObjectFormat<SiteContent> File = new(o =>
    {
        var version = o.Required("formatVersion", "Version of the format: 1.", NumberFormat.Version, _ => NumberFormat.Version.Only!.Value);
        var name = o.Name(c => c.Site.Name, "How the site is called.");
        var altitude = o.Optional("altitude", "Its height above the sea; left out where it does not matter.", Quantities.Length, c => c.Site.Altitude);
        o.Required("cables", "The kinds of cable that the runs are made of.", CableFormats.Cables, c => c.Cables);
        o.Required("models", "The models of camera and other device.", DeviceFormats.Models, c => c.Models);
        o.Optional("protectiveDevices", "The protective devices of the outputs, beside those of the library.",
            ProtectionFormats.Devices, c => IfAny(c.ProtectiveDevices));
        o.Optional("cabinets", "The cabinets in which several boxes stand together and share the air.",
            EnclosureFormats.Cabinets, c => IfAny(c.Cabinets));
        var conditions = o.Required("conditions", "The conditions that the site must survive; at least one.",
            new ListFormat<Condition>(ConditionFormats.Condition, "a site needs at least one condition"), c => c.Site.Conditions);
        o.Optional("outlets", "The outlets that boxes are plugged into.", BoxFormats.Outlets, c => IfAny(c.Outlets));
        var boxes = o.Required("boxes", "The distribution boxes and adapters.", ListOf(BoxFormats.Box), c => c.Site.Boxes);
        var runs = o.Required("runs", "The runs, each from an output or a junction to a junction.", ListOf(RunFormats.Run), c => c.Site.Runs);
        var devices = o.Required("devices", "The devices, each at a junction.", ListOf(DeviceFormats.Device), c => c.Site.Devices);
        var links = o.Optional("videoLinks", "The shields of video cables, where a device's power negative and its video ground are one.",
            ListOf(LinkFormats.VideoLink), c => IfAny(c.Site.VideoLinks));
        var bonds = o.Optional("bonds", "The connections from grounds where shields meet to the negatives of boxes.",
            ListOf(LinkFormats.Bond), c => IfAny(c.Site.Bonds));
        var ties = o.Optional("ties", "The outputs that somebody joined.", ListOf(LinkFormats.Tie), c => IfAny(c.Site.Ties));
        return at =>
        {
            // Of a site that is a list of sound parts, nothing but its altitude and its structure can be wrong.
            var empty = new Site("stand-in", [Condition.Day(StandIn.Surroundings)], [], [], [], altitude: altitude[at]);
            StructureCheck.Note(at, conditions[at], boxes[at], runs[at], devices[at], links[at] ?? [], bonds[at] ?? [], ties[at] ?? []);
            Site site = at.IsFaulty
                ? empty
                : new Site(name[at], conditions[at], boxes[at], runs[at], devices[at], links[at], bonds[at], altitude[at], ties[at]);
            return new SiteContent { Site = site };
        };
    });

    /// <summary>The schema of the file.</summary>
    internal static JsonObject Schema => File.Schema();

    /// <summary>Reads a site; null where the file has a fault, which is noted.</summary>
    internal static Site? Read(Place root) => File.Read(root) is SiteContent content && !root.IsFaulty ? content.Site : null;

    /// <summary>The text of a site.</summary>
    internal static string Text(Site site)
    {
        var names = new PartNames();
        return SiteWriter.Text(File, SiteContent.Of(site, names), names);
    }

    private static ListFormat<T> ListOf<T>(ObjectFormat<T> item)
        where T : class => new(item);

    private static IReadOnlyList<T>? IfAny<T>(IReadOnlyList<T> list) => list.Count == 0 ? null : list;
}
