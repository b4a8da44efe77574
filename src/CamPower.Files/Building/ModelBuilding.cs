using CamPower.Files.Entries;

namespace CamPower.Files.Building;

/// <summary>From entries to models of device.</summary>
internal static class ModelBuilding
{
    internal static Device Build(ModelEntry entry, Place at)
    {
        Draw draw = DrawOf(entry, at);
        VoltageRange? dc = Range(entry.Dc, at.Member("dc"));
        VoltageRange? ac = Range(entry.Ac, at.Member("ac"));
        Starting? starting = entry.Starting is null ? null : Build(entry.Starting, at.Member("starting"));
        Connector? connector = entry.Connector is null ? null : Build(entry.Connector, at.Member("connector"));
        Inrush? inrush = entry.Inrush is null ? null : Build(entry.Inrush, at.Member("inrush"));
        return at.Build(() => new Device(
            at.Name("name", entry.Name), at.Value("kind", entry.Kind, DeviceKind.Other), draw,
            at.Member("dc").IsFaulty ? StandIn.Range : dc, ac, starting, connector, inrush));
    }

    internal static VoltageRange? Range(VoltageRangeEntry? entry, Place at) => entry is null ? null : at.Build(() => new VoltageRange(
        at.Value("lowest", entry.Lowest, StandIn.LowVoltage),
        at.Value("highest", entry.Highest, StandIn.HighVoltage)), StandIn.Range);

    // What the entry states itself stands in place of what the catalogue says.
    private static Connector Build(ConnectorEntry entry, Place at)
    {
        TerminalRange? wires = entry.Wires is null ? null : BoxBuilding.Build(entry.Wires, at.Member("wires"));
        if (entry.Usual is not null)
        {
            Connector usual = at.Value("usual", entry.Usual, StandIn.Connector);
            return wires is null ? usual : new Connector(usual.Name, usual.Source, usual.RatedCurrent, usual.VoltageClass, wires);
        }

        VoltageRange? promised = Range(entry.VoltageClass, at.Member("voltageClass"));
        return at.Build(() => new Connector(at.Name("name", entry.Name), Sources.ConnectorRating,
            at.Value("ratedCurrent", entry.RatedCurrent, StandIn.Current), promised, wires));
    }

    private static Draw DrawOf(ModelEntry entry, Place at)
    {
        if (entry.Draw is not null) return DrawBuilding.Build(entry.Draw, at.Member("draw"));
        return entry.Label is null ? StandIn.Draw : DrawBuilding.Build(entry.Label, at.Member("label"));
    }

    // Where the file gives both forms the reader has noted it.
    private static Inrush Build(InrushEntry entry, Place at) => at.Build(() => entry.Integral is null
        ? new Inrush(at.Value("peak", entry.Peak, StandIn.Current), at.Value("duration", entry.Duration, StandIn.Second))
        : new Inrush(at.Value("peak", entry.Peak, StandIn.Current), at.Value("integral", entry.Integral, StandIn.Integral)), StandIn.Inrush);

    private static Starting Build(StartingEntry entry, Place at) => at.Build(() => new Starting(
        at.Value("turnOn", entry.TurnOn, StandIn.HighVoltage),
        at.Value("dropOut", entry.DropOut, StandIn.LowVoltage),
        at.Value("softStart", entry.SoftStart, SoftStart.Unknown)));
}
