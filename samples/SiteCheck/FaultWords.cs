using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using UnitsNet;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>What a fault study says, in words short enough for a table.</summary>
internal static class FaultWords
{
    private const int MostNamed = 2;

    /// <summary>What the protective device does; on two lines where there are two times.</summary>
    public static string Opening(Overcurrent fault)
    {
        if (fault.IsWithinBreakingCapacity == false || fault.IsWithinVoltageRating == false) return "over its rating";
        string? notBefore = fault.Opening.Earliest is Duration earliest && earliest.Seconds > 0 ? Time(earliest) : null;
        return fault.Verdict switch
        {
            ClearingVerdict.DoesNotClear => "does not clear",
            ClearingVerdict.MayClear => notBefore is null ? "may clear" : $"may clear, not\nbefore {notBefore}",
            ClearingVerdict.Clears when fault.Opening.Latest is Duration latest => notBefore is null ? $"clears in {Time(latest)}" : $"clears in {notBefore}\nto {Time(latest)}",
            ClearingVerdict.Clears => "clears, untimed",
            _ => "?",
        };
    }

    public static string Wires(params IEnumerable<WithstandVerdict> verdicts)
    {
        HashSet<WithstandVerdict> all = [.. verdicts];
        if (all.Contains(WithstandVerdict.DoesNotStand)) return "may burn";
        if (all.Contains(WithstandVerdict.Unknown)) return "?";
        return all.Contains(WithstandVerdict.HotterThanInService) ? "get hot" : "stand";
    }

    public static string Supply(RailState state) => state switch
    {
        RailState.StaysUp => "up",
        RailState.Dragged => "dragged",
        RailState.Pulses => "pulses",
        RailState.Off => "off",
        _ => "?",
    };

    /// <summary>Who goes dark of the devices at other outputs: by name where they are few.</summary>
    public static string Others(RailDuringFault rail, int others)
    {
        if (others == 0) return "-";
        if (rail.State == RailState.Unknown) return "?";
        if (rail.Dark.Count == others) return "all dark";
        string[] groups = [.. new[] { Group(rail.Dark, "dark"), Group(rail.BelowWindow, "perhaps") }.Where(text => text.Length > 0)];
        return groups.Length == 0 ? "all up" : string.Join(", ", groups);
    }

    /// <summary>What a verdict that is not given would need.</summary>
    public static string NotDeclared(FaultData missing) =>
        string.Join(", ", Enum.GetValues<FaultData>().Where(data => data != FaultData.None && missing.HasFlag(data)).Select(Word));

    private static string Group(IReadOnlyList<SiteDevice> devices, string what) => devices.Count switch
    {
        0 => "",
        <= MostNamed => $"{string.Join(" and ", devices.Select(d => d.Name))} {what}",
        _ => Invariant($"{devices.Count} {what}"),
    };

    private static string Time(Duration time) => time.Seconds switch
    {
        < 0.1 => Invariant($"{time.Milliseconds:0.#} ms"),
        < 120 => Invariant($"{time.Seconds:0.##} s"),
        < 3600 => Invariant($"{time.Minutes:0.#} min"),
        _ => Invariant($"{time.Hours:0.#} h"),
    };

    private static string Word(FaultData data) => data switch
    {
        FaultData.Protection => "protection",
        FaultData.Overload => "overload of the supply",
        FaultData.SourceResistance => "source resistance",
        FaultData.DeviceTemperature => "protection at the temperature of the box",
        FaultData.Insulation => "insulation",
        FaultData.Laying => "laying",
        FaultData.OutputCapacitance => "capacitance",
        _ => throw new ArgumentOutOfRangeException(nameof(data), data, "No word for it."),
    };
}
