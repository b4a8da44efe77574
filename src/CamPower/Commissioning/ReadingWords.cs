namespace CamPower.Commissioning;

/// <summary>The words for kinds and states of readings, as sheets and files have them.</summary>
internal static class ReadingWords
{
    internal static string Of(ReadingKind kind) => kind switch
    {
        ReadingKind.SupplyVoltage => "supply voltage",
        ReadingKind.OutputVoltage => "output voltage",
        ReadingKind.OutputCurrent => "output current",
        ReadingKind.PlugVoltage => "plug voltage",
        ReadingKind.JunctionVoltage => "junction voltage",
        ReadingKind.PairResistance => "pair resistance",
        ReadingKind.LoopResistance => "loop resistance",
        _ => "junction loop resistance",
    };

    internal static string Of(ReadingState state) => state switch
    {
        ReadingState.Dead => "dead",
        ReadingState.FarEndJumpered => "far end jumpered",
        ReadingState.JumperRemoved => "jumper removed",
        ReadingState.Unloaded => "unloaded",
        ReadingState.DeviceUnplugged => "device unplugged",
        ReadingState.Running => "running",
        _ => "infrared forced",
    };

    internal static string Of(ReadingVerdict verdict) => verdict switch
    {
        ReadingVerdict.NotRead => "not read",
        ReadingVerdict.Inside => "inside",
        ReadingVerdict.Outside => "outside",
        _ => "impossible",
    };

    internal static string UnitOf(ReadingKind kind) => kind switch
    {
        ReadingKind.OutputCurrent => "A",
        ReadingKind.PairResistance or ReadingKind.LoopResistance or ReadingKind.JunctionLoopResistance => "Ω",
        _ => "V",
    };

    /// <summary>Whether a kind is read in a state.</summary>
    internal static bool Suits(ReadingKind kind, ReadingState state) => kind switch
    {
        ReadingKind.PairResistance => state is ReadingState.Dead or ReadingState.JumperRemoved,
        ReadingKind.LoopResistance or ReadingKind.JunctionLoopResistance => state == ReadingState.FarEndJumpered,
        ReadingKind.SupplyVoltage => state is ReadingState.Unloaded or ReadingState.Running or ReadingState.InfraredForced,
        _ => state is ReadingState.DeviceUnplugged or ReadingState.Running or ReadingState.InfraredForced,
    };
}
