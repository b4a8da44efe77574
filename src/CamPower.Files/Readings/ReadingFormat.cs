using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Commissioning;
using CamPower.Files.Formats;

namespace CamPower.Files.Readings;

/// <summary>A file of readings, stated once: for JSON as it is, for a table with a reading in each row.</summary>
internal static class ReadingFormat
{
    internal const string List = "readings", What = "what", Where = "where", State = "state", Value = "value", Meter = "meter",
        Time = "time", Remark = "remark";

    private const int Version = 1;
    private const string BeforeOutput = " output ";

    private static readonly WordFormat<ReadingKind> Kinds = new("what was read", Worded<ReadingKind>());

    private static readonly WordFormat<ReadingState> States = new("a state", Worded<ReadingState>());

    private static readonly ObjectFormat<RawReading> Reading = new(o =>
    {
        var what = o.Required(What, "What was read.", Kinds, r => r.Kind);
        var where = o.Required(Where, "Where: a box, \"yard box output 3\", a device, or a junction.", Words.Name, r => r.Where);
        var state = o.Required(State, "The state in which it was read.", States, r => r.State);
        var value = o.Required(Value, "What the meter showed.", new ReadValueFormat(), r => new ReadValue(r.Value));
        var meter = o.Optional(Meter, "Which meter it was.", Words.Name, r => r.Meter);
        var time = o.Optional(Time, "When, in any form.", Words.Name, r => r.Time);
        var remark = o.Optional(Remark, "What else was seen.", Words.Name, r => r.Remark);
        return at => new RawReading(what[at], where[at], state[at], value[at].Quantity, meter[at], time[at], remark[at]);
    });

    private static readonly ObjectFormat<Surroundings> Temperatures = new(o =>
    {
        var cable = o.Required("cable", "Temperature of the conductors.", Quantities.Temperature, s => s.Cable);
        var box = o.Required("box", "Temperature of the air around the boxes.", Quantities.Temperature, s => s.Box);
        var camera = o.Required("camera", "Temperature of the air around the devices.", Quantities.Temperature, s => s.Camera);
        return at => new Surroundings(cable[at], box[at], camera[at]);
    });

    private static readonly ObjectFormat<RawRecord> Record = new(o =>
    {
        o.Required("formatVersion", "Version of the format: 1.", new NumberFormat(Version), _ => Version);
        var site = o.Optional("site", "Name of the site.", Words.Name, r => r.Site);
        var at = o.Optional("at", "The temperatures while it was read.", Temperatures, r => r.At);
        var by = o.Optional("by", "Who read it.", Words.Name, r => r.By);
        var on = o.Optional("on", "When, in any form.", Words.Name, r => r.On);
        var readings = o.Required(List, "The readings, in their order.", new ListFormat<RawReading>(Reading), r => r.Readings);
        return place => new RawRecord(site[place], at[place], by[place], on[place], readings[place]);
    });

    /// <summary>The columns of a table that are read.</summary>
    internal static string[] Columns { get; } = [What, Where, State, Value, Meter, Time, Remark];

    /// <summary>Those that every table has.</summary>
    internal static string[] Required { get; } = [What, Where, State, Value];

    /// <summary>Reads a file, and looks up the place of each reading on the site; whatever is wrong is noted.</summary>
    internal static (RawRecord? Record, IReadOnlyList<MeterReading> Readings) Read(Place root, Site site)
    {
        if (Record.Read(root) is not RawRecord record) return (null, []);
        if (record.Site is string named && !string.Equals(named, site.Name, StringComparison.Ordinal))
        {
            root.Member("site").Error($"these are readings of {Phrase.Quoted(named)}, and the site is {Phrase.Quoted(site.Name)}");
        }

        var readings = new List<MeterReading>();
        foreach (Place place in root.Member(List).Children)
        {
            if (!place.HasError && place.Value is RawReading raw && Made(place, raw, site) is MeterReading reading) readings.Add(reading);
        }

        return (record, readings);
    }

    /// <summary>The text of a record.</summary>
    internal static string Text(CommissioningRecord record) => SiteWriter.Text(Record,
        new RawRecord(record.Sheet.Site.Name, record.Sheet.At, record.By, record.On, [.. record.Readings.Select(Raw)]), new PartNames());

    /// <summary>A value as it is written.</summary>
    internal static string TextOf(MeterReading reading) => new ReadValueFormat().Text(new ReadValue(reading.Value));

    /// <summary>A state as it is written.</summary>
    internal static string TextOf(ReadingState state) => States.Text(state);

    private static RawReading Raw(MeterReading reading) => new(
        reading.Point.Kind, reading.Point.Where, reading.Point.State, reading.Value, reading.Meter, reading.Time, reading.Remark);

    private static MeterReading? Made(Place at, RawReading raw, Site site)
    {
        if (Point(at, raw) is not ReadingPoint point) return null;
        if (!point.IsOn(site))
        {
            // The next output that is in use is another one, and no slip of the pen.
            at.Member(Where).Error(IsAtOutput(raw.Kind)
                ? $"{Phrase.Quoted(raw.Where)} is not in use on this site"
                : $"the site has no {Noun(raw.Kind)} {Phrase.Quoted(raw.Where)} to read"
                    + Phrase.DidYouMean(raw.Where, Places(raw.Kind, site)));
            return null;
        }

        return at.Member(Value).Try(() => new MeterReading(point, raw.Value, raw.Meter, raw.Time, raw.Remark));
    }

    private static ReadingPoint? Point(Place at, RawReading raw)
    {
        if (!IsAtOutput(raw.Kind))
        {
            return at.Member(State).Try(() => raw.Kind switch
            {
                ReadingKind.SupplyVoltage => ReadingPoint.AtSupply(raw.Where, raw.State),
                ReadingKind.PlugVoltage or ReadingKind.LoopResistance => ReadingPoint.AtDevice(raw.Kind, raw.Where, raw.State),
                _ => ReadingPoint.AtJunction(raw.Kind, raw.Where, raw.State),
            });
        }

        int before = raw.Where.LastIndexOf(BeforeOutput, StringComparison.Ordinal);
        string after = before > 0 ? raw.Where[(before + BeforeOutput.Length)..] : string.Empty;
        if (int.TryParse(after, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number > 0)
        {
            return at.Member(State).Try(() => ReadingPoint.AtOutput(raw.Kind, raw.Where[..before], number, raw.State));
        }

        at.Member(Where).Error($"{Phrase.Quoted(raw.Where)} is no output: write the box and the number, as in 'yard box output 3'");
        return null;
    }

    private static bool IsAtOutput(ReadingKind kind) =>
        kind is ReadingKind.OutputVoltage or ReadingKind.OutputCurrent or ReadingKind.PairResistance;

    private static string Noun(ReadingKind kind) => kind switch
    {
        ReadingKind.SupplyVoltage => "box",
        ReadingKind.PlugVoltage or ReadingKind.LoopResistance => "device",
        _ => "junction",
    };

    private static IEnumerable<string> Places(ReadingKind kind, Site site) => kind switch
    {
        ReadingKind.SupplyVoltage => site.Boxes.Select(b => b.Name),
        ReadingKind.PlugVoltage or ReadingKind.LoopResistance => site.Devices.Select(d => d.Name),
        _ => site.Runs.Select(r => r.To),
    };

    // "PlugVoltage" is written "plug voltage".
    private static (string, T)[] Worded<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(value => (Spaced(value.ToString()), value))];

    private static string Spaced(string name) => string.Concat(
        name.Select((c, i) => (char.IsAsciiLetterUpper(c) && i > 0 ? " " : string.Empty) + char.ToLowerInvariant(c)));
}
