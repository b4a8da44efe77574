using CamPower.Files.Entries;

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

    private static StartingEntry Entry(Starting starting) => new()
    {
        TurnOn = new(starting.TurnOn),
        DropOut = new(starting.DropOut),
        SoftStart = new(starting.SoftStart),
    };
}
