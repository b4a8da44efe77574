using System;
using System.Linq;
using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Writing;

/// <summary>From models of device to entries.</summary>
internal static class ModelWriting
{
    internal static ModelEntry Entry(Device model) => new()
    {
        Name = model.Name,
        Kind = new(model.Kind),
        Dc = Entry(model.DcInput),
        Ac = Entry(model.AcInput),
        Draw = model.Draw is ShareDraw shares ? DrawWriting.Entry(shares) : null,
        Label = model.Draw is LabelDraw label ? Entry(label) : null,
        Starting = model.Starting is Starting starting ? Entry(starting) : null,
        Connector = model.Connector is Connector connector ? Entry(connector) : null,
        Inrush = model.Inrush is Inrush inrush ? Entry(inrush) : null,
    };

    internal static VoltageRangeEntry? Entry(VoltageRange? range) => range is null ? null : new VoltageRangeEntry
    {
        Lowest = new(range.Lowest),
        Highest = new(range.Highest),
    };

    private static LabelEntry Entry(LabelDraw label) => new()
    {
        Voltage = new(label.Voltage),
        Current = new(label.Current),
        Stage = new(label.Stage),
    };

    private static InrushEntry Entry(Inrush inrush) => new()
    {
        Peak = new(inrush.Peak),
        Duration = inrush.Duration is Duration duration ? new(duration) : null,
        Integral = inrush.Duration is null ? new(inrush.Integral) : null,
    };

    private static StartingEntry Entry(Starting starting) => new()
    {
        TurnOn = new(starting.TurnOn),
        DropOut = new(starting.DropOut),
        SoftStart = new(starting.SoftStart),
    };

    private static ConnectorEntry Entry(Connector connector)
    {
        Connector? usual = Connector.Usual.FirstOrDefault(u => IsOfOneKind(u, connector));
        if (usual is null && (connector.RatedCurrent is null || connector.Source != Sources.ConnectorRating))
        {
            throw new NotSupportedException($"A site file cannot express the connector '{connector}': it knows the usual ones, and those whose sheet states a rated current.");
        }

        return new ConnectorEntry
        {
            Usual = usual is null ? null : new(usual),
            Name = usual is null ? connector.Name : null,
            RatedCurrent = usual is null ? new(connector.RatedCurrent!.Value) : null,
            VoltageClass = usual is null ? Entry(connector.VoltageClass) : null,
            Wires = connector.Wires is TerminalRange wires && !ReferenceEquals(wires, usual?.Wires) ? BoxWriting.Entry(wires) : null,
        };
    }

    // Of a usual one everything is as the catalogue says, but perhaps the wire that it takes.
    private static bool IsOfOneKind(Connector usual, Connector connector) => string.Equals(usual.Name, connector.Name, StringComparison.Ordinal) && usual.Source == connector.Source
        && usual.RatedCurrent.Equals(connector.RatedCurrent) && usual.VoltageClass == connector.VoltageClass && (connector.Wires is not null || usual.Wires is null);
}
