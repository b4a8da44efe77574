using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using CamPower.Files.Formats;
using CamPower.Files.Schedules;

namespace CamPower.Files.Parts;

/// <summary>The whole file. Lists that others refer to come before those that refer to them: that is the order of reading.</summary>
internal static class SiteFormat
{
    private const int Version = 1;

    private static readonly ObjectFormat<RunOrigin> Output = new(o =>
    {
        var box = o.Required("box", "Name of the box.", Words.Name, output => output.BoxName!);
        var number = o.Required("output", "Number of the output, from 1.", Quantities.Count, output => output.OutputNumber)
            .Parameter("number");
        return at => RunOrigin.Output(box[at], number[at]);
    });

    private static readonly ObjectFormat<VideoLink> VideoLink = new(o =>
    {
        var device = o.Required("device", "Name of the device whose power negative and video ground are one.", Words.Name, l => l.Device);
        var ground = o.Required("ground", "Name of the ground where its shield meets others: the recorder's, say.", Words.Name,
            l => l.Ground);
        var resistance = o.Required("shieldResistance", "Resistance of the shield from end to end, connectors included.",
            Quantities.Resistance, l => l.ShieldResistance);
        return at => new VideoLink(device[at], ground[at], resistance[at]);
    });

    private static readonly ObjectFormat<GroundBond> Bond = new(o =>
    {
        var ground = o.Required("ground", "Name of a ground where shields meet.", Words.Name, b => b.Ground);
        var box = o.Required("box", "Name of the box to whose negative it is connected.", Words.Name, b => b.Box);
        var resistance = o.Required("resistance", "Resistance between the two.", Quantities.Resistance, b => b.Resistance);
        return at => new GroundBond(ground[at], box[at], resistance[at]);
    });

    private static readonly ObjectFormat<OutputTie> Tie = new(o =>
    {
        var one = o.Required("one", "One of the outputs.", Output, t => RunOrigin.Output(t.OneBox, t.OneOutput));
        var other = o.Required("other", "The output that it is joined to.", Output, t => RunOrigin.Output(t.OtherBox, t.OtherOutput));
        return at =>
        {
            RunOrigin from = one[at], to = other[at];
            bool isItself = string.Equals(from.BoxName, to.BoxName, StringComparison.Ordinal) && from.OutputNumber == to.OutputNumber;
            if (isItself && !at.HasError) at[other].Error("an output is not joined to itself");
            return new OutputTie(from.BoxName!, from.OutputNumber, to.BoxName!, isItself ? to.OutputNumber + 1 : to.OutputNumber);
        };
    });

    private static readonly ObjectFormat<EnergyPrice> Price = new(o =>
    {
        var perKilowattHour = o.Required("perKilowattHour", "Its price, in the currency.", Quantities.Plain, p => p.PerKilowattHour);
        var currency = o.Required("currency", "The currency as it is printed.", Words.Name, p => p.Currency);
        return at => new EnergyPrice(perKilowattHour[at], currency[at]);
    });

    private static readonly ObjectFormat<Content> File = new(o =>
    {
        o.Required("formatVersion", "Version of the format: 1.", new NumberFormat(Version), _ => Version);
        var name = o.Required("name", "Name of the site.", Words.Name, c => c.Site.Name);
        var altitude = o.Optional("altitude", "Its height above sea level; left out where it does not matter.", Quantities.Length,
            c => c.Site.Altitude);
        var price = o.Optional("energyPrice", "What a kilowatt-hour from the mains costs.", Price, c => c.Site.EnergyPrice);
        o.Required("cables", "The kinds of cable that the runs are made of.", CableFormats.Cables, c => c.Cables);
        o.Required("models", "The models of camera and other device.", DeviceFormats.Models, c => c.Models);
        o.Optional("protectiveDevices", "The protective devices of outputs and batteries, beside those of the library.",
            ProtectionFormats.Devices, c => IfAny(c.ProtectiveDevices));
        o.Optional("cabinets", "The cabinets, each with several boxes that share its air.", EnclosureFormats.Cabinets,
            c => IfAny(c.Cabinets));
        var conditions = o.Required("conditions", "The conditions that the site must survive; at least one.",
            new ListFormat<Condition>(ConditionFormats.Condition, "a site needs at least one condition"), c => c.Site.Conditions);
        o.Optional("breakers", "The breakers of the circuits of receptacles.", BoxFormats.Breakers, c => IfAny(c.Breakers));
        o.Optional("uninterruptibleSupplies", "The uninterruptible supplies before receptacles.", BoxFormats.Uninterruptibles,
            c => IfAny(c.Uninterruptibles));
        o.Optional("receptacles", "The receptacles that boxes are plugged into.", BoxFormats.Receptacles, c => IfAny(c.Receptacles));
        var boxes = o.Required("boxes", "The distribution boxes and adapters.", new ListFormat<DistributionBox>(BoxFormats.Box),
            c => c.Site.Boxes);
        var runs = o.Required("runs", "The runs, each from an output or a junction to a junction.", new ListFormat<SiteRun>(RunFormats.Run),
            c => c.Runs);
        var devices = o.Required("devices", "The devices, each at a junction.", new ListFormat<SiteDevice>(DeviceFormats.Device),
            c => c.Devices);
        var links = o.Optional("videoLinks", "The shields of video cables, where power negative and video ground of a device are one.",
            new ListFormat<VideoLink>(VideoLink), c => IfAny(c.Site.VideoLinks));
        var bonds = o.Optional("bonds", "The connections from grounds where shields meet to the negatives of boxes.",
            new ListFormat<GroundBond>(Bond), c => IfAny(c.Site.Bonds));
        var ties = o.Optional("ties", "The outputs that somebody joined.", new ListFormat<OutputTie>(Tie), c => IfAny(c.Site.Ties));
        return at =>
        {
            // Beside its parts nothing but the altitude and the structure of a site can be wrong: the altitude shows in any site.
            var other = new Site("stand-in", [Condition.Day(StandIn.Surroundings)], [], [], [], altitude: altitude[at]);
            StructureCheck.Note(at, conditions[at], boxes[at], runs[at], devices[at], links[at] ?? [], bonds[at] ?? [], ties[at] ?? []);
            Site site = at.HasError
                ? other
                : new Site(name[at], conditions[at], boxes[at], runs[at], devices[at], links[at], bonds[at], altitude[at], ties[at],
                    price[at]);
            return new Content(site);
        };
    });

    /// <summary>The JSON Schema of the file.</summary>
    internal static Lazy<string> Schema { get; } = new(SchemaText);

    /// <summary>Reads a site; null where the file has an error, which is noted.</summary>
    internal static Site? Read(Place root) => File.Read(root) is Content content && !root.HasError ? content.Site : null;

    /// <summary>The text of a site.</summary>
    internal static string Text(Site site) => Texts(site, []).Json;

    /// <summary>The text of a site without some runs and devices, and the schedule with these.</summary>
    internal static (string Json, string Csv) Texts(Site site, IReadOnlyList<(SiteDevice Device, SiteRun Run)> rows)
    {
        var names = new PartNames();
        Content all = Content.Of(site, names), small = all with
        {
            Runs = [.. site.Runs.Except(rows.Select(row => row.Run))],
            Devices = [.. all.Devices.Except(rows.Select(row => row.Device))],
            Models = [.. all.Models.Where(
                m => WattsModel.CellsOf(m) is null || all.Devices.Except(rows.Select(r => r.Device)).Any(d => d.Model == m))],
        };
        return (SiteWriter.Text(File, small, names), ScheduleWriter.Text(rows, names));
    }

    private static string SchemaText()
    {
        JsonObject schema = File.Schema();
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", $"CamPower site file, version {Version}");
        schema["description"] = "An installation: its cables, device models, conditions, boxes, runs and devices.";
        return SiteWriter.Text(json => schema.WriteTo(json));
    }

    // The inputs of converters are in no list: their boxes say where they are.
    private static IReadOnlyList<SiteDevice> Placed(Site site) => [.. site.Devices.Where(d => d.Model.Kind != DeviceKind.Converter)];

    private static IReadOnlyList<T>? IfAny<T>(IReadOnlyList<T> list) => list.Count == 0 ? null : list;

    /// <summary>The format of a site file: a site, and beside it the parts that others refer to by name.</summary>
    private sealed record Content(Site Site)
    {
        internal IReadOnlyList<SiteRun> Runs { get; init; } = [];
        internal IReadOnlyList<SiteDevice> Devices { get; init; } = [];
        internal IReadOnlyList<Cable> Cables { get; private init; } = [];
        internal IReadOnlyList<Device> Models { get; init; } = [];
        internal IReadOnlyList<ProtectiveDevice> ProtectiveDevices { get; private init; } = [];
        internal IReadOnlyList<Cabinet> Cabinets { get; private init; } = [];
        internal IReadOnlyList<CircuitBreaker> Breakers { get; private init; } = [];
        internal IReadOnlyList<UninterruptibleSupply> Uninterruptibles { get; private init; } = [];
        internal IReadOnlyList<Receptacle> Receptacles { get; private init; } = [];

        /// <summary>The content of a site file, with a name for each part.</summary>
        /// <exception cref="ArgumentException">Two parts that differ have the same name.</exception>
        internal static Content Of(Site site, PartNames names)
        {
            IReadOnlyList<SiteDevice> placed = Placed(site);
            List<Receptacle> receptacles = [.. site.Boxes.Select(b => b.Receptacle).OfType<Receptacle>()];
            return new Content(site)
            {
                Runs = site.Runs,
                Devices = placed,
                Cables = names.Add(CableFormats.Cables, site.Runs.SelectMany(r => r.Run.Segments).Select(s => s.Cable)),
                Models = names.Add(DeviceFormats.Models, placed.Select(d => d.Model)),
                ProtectiveDevices = names.Add(ProtectionFormats.Devices,
                    site.Boxes.SelectMany(b => b.Outputs.Select(o => o.Protection).Append(b.BatteryProtection)).OfType<ProtectiveDevice>()),
                Cabinets = names.Add(EnclosureFormats.Cabinets, site.Cabinets),
                Breakers = names.Add(BoxFormats.Breakers, receptacles.Select(r => r.Breaker).OfType<CircuitBreaker>()),
                Uninterruptibles = names.Add(BoxFormats.Uninterruptibles,
                    receptacles.Select(r => r.Uninterruptible).OfType<UninterruptibleSupply>()),
                Receptacles = names.Add(BoxFormats.Receptacles, receptacles),
            };
        }
    }
}
