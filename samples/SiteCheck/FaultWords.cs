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

    /// <summary>What the protective device does, and when.</summary>
    public static string Opening(Overcurrent fault)
    {
        if (fault.IsWithinBreakingCapacity == false || fault.IsWithinVoltageRating == false) return "over its rating";
        string? notBefore = fault.Opening.Earliest is Duration earliest && earliest.Seconds > 0 ? Time(earliest) : null;
        return fault.Verdict switch
        {
            OperatingVerdict.DoesNotOperate => "does not open",
            OperatingVerdict.MayOperate => notBefore is null ? "may open" : $"may open, not before {notBefore}",
            OperatingVerdict.Operates when fault.Opening.Latest is Duration latest => notBefore is null ? $"opens in {Time(latest)}" : $"opens in {notBefore} to {Time(latest)}",
            OperatingVerdict.Operates => "opens, time not stated",
            _ => "not known",
        };
    }

    public static string Conductors(params IEnumerable<WithstandVerdict> verdicts)
    {
        HashSet<WithstandVerdict> all = [.. verdicts];
        if (all.Contains(WithstandVerdict.DoesNotWithstand)) return "may burn";
        if (all.Contains(WithstandVerdict.Unknown)) return "not known";
        return all.Contains(WithstandVerdict.HotterThanInService) ? "withstand, get hot" : "withstand";
    }

    public static string Supply(SupplyState state) => state switch
    {
        SupplyState.StaysUp => "up",
        SupplyState.Dips => "dips",
        SupplyState.Pulses => "pulses",
        SupplyState.Off => "off",
        _ => "not known",
    };

    /// <summary>Who goes dark of the devices at other outputs: by name where they are few.</summary>
    public static string Others(SupplyDuringFault rail, int others)
    {
        if (others == 0) return "-";
        if (rail.State == SupplyState.Unknown) return "not known";
        if (rail.Dark.Count == others) return "all dark";
        string[] groups = [.. new[] { Group(rail.Dark, "dark"), Group(rail.BelowWindow, "may go dark") }.Where(text => text.Length > 0)];
        return groups.Length == 0 ? "all up" : string.Join(", ", groups);
    }

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
}
