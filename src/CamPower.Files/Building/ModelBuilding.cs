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
        return at.Build(() => new Device(
            at.Name("name", entry.Name), at.Value("kind", entry.Kind, DeviceKind.Other), draw,
            at.Member("dc").IsFaulty ? StandIn.Range : dc, ac, starting));
    }

    internal static VoltageRange? Range(VoltageRangeEntry? entry, Place at) => entry is null ? null : at.Build(() => new VoltageRange(
        at.Value("lowest", entry.Lowest, StandIn.LowVoltage),
        at.Value("highest", entry.Highest, StandIn.HighVoltage)), StandIn.Range);

    private static Draw DrawOf(ModelEntry entry, Place at)
    {
        if (entry.Draw is not null) return DrawBuilding.Build(entry.Draw, at.Member("draw"));
        return entry.Label is null ? StandIn.Draw : DrawBuilding.Build(entry.Label, at.Member("label"));
    }

    private static Starting Build(StartingEntry entry, Place at) => at.Build(() => new Starting(
        at.Value("turnOn", entry.TurnOn, StandIn.HighVoltage),
        at.Value("dropOut", entry.DropOut, StandIn.LowVoltage),
        at.Value("softStart", entry.SoftStart, SoftStart.Unknown)));
}
