using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Numbers and verdicts as text. No meter in the field shows millivolts.</summary>
internal static class Said
{
    internal const string Nothing = "–";

    internal static string Volts(ElectricPotential volts) => Invariant($"{volts.Volts:0.00}");

    internal static string SignedVolts(ElectricPotential volts) => Invariant($"{volts.Volts:+0.00;−0.00;0.00}");

    internal static string Amperes(ElectricCurrent amperes) => Invariant($"{amperes.Amperes:0.00}");

    internal static string Celsius(Temperature temperature) => Invariant($"{temperature.DegreesCelsius:0.#}").Replace('-', '−');

    internal static string Percent(double share) => Invariant($"{share * 100:0}");

    internal static string Quantity(IQuantity quantity) => quantity.ToString("s4", CultureInfo.InvariantCulture);

    internal static string Range(VoltageRange range) => Invariant($"{range.Lowest.Volts:0.##}–{range.Highest.Volts:0.##}");

    internal static string Count(int count, string singular, string plural) => Invariant($"{count} {(count == 1 ? singular : plural)}");

    internal static string Severity(Severity severity, int count) => severity switch
    {
        CamPower.Severity.Danger => Count(count, "danger", "dangers"),
        CamPower.Severity.Failure => Count(count, "failure", "failures"),
        CamPower.Severity.Caution => Count(count, "caution", "cautions"),
        _ => Count(count, "note", "notes"),
    };

    internal static string State(DeviceState state) => state switch
    {
        DeviceState.Up => "stays up",
        DeviceState.SupplyOverloaded => "not known, supply overloaded",
        DeviceState.Restarting => "keeps restarting",
        DeviceState.NeverUp => "stays off",
        DeviceState.NoOperatingPoint => "no operating point",
        _ => "wrong kind of current",
    };

    internal static string Start(StartVerdict start) => start switch
    {
        StartVerdict.Starts => "yes",
        StartVerdict.Unknown => "not stated",
        _ => "no",
    };

    internal static string Shares(LoadComponents on)
    {
        (LoadComponents On, string Name)[] all = [(LoadComponents.Infrared, "infrared"), (LoadComponents.Motor, "motors"),
            (LoadComponents.Heater, "heaters"), (LoadComponents.StartUp, "start-up")];
        string[] names = [.. all.Where(x => on.HasFlag(x.On)).Select(x => x.Name)];
        return names.Length == 0 ? "base draw alone" : string.Join(", ", names);
    }

    /// <summary>The sizes on the way and its whole length, in the unit of its first length.</summary>
    internal static string Cable(IReadOnlyList<SiteRun> path)
    {
        List<CableSegment> segments = [.. path.SelectMany(run => run.Run.Segments)];
        IEnumerable<string> conductors = segments.Select(s => s.Cable.Outgoing)
            .Select(c => c.Size + (c.Material.IsCopperCladAluminum ? " copper-clad aluminum" : "")).Distinct(StringComparer.Ordinal);
        Length total = segments.Select(s => s.OneWayLength).Aggregate((a, b) => a + b);
        return $"{string.Join(" + ", conductors)}, {total.ToString("s1", CultureInfo.InvariantCulture)}";
    }
}
