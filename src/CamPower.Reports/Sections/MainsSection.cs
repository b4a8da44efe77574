using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Mains;
using CamPower.Reports.Contents;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Reports.Sections;

/// <summary>Section of what the site takes from the mains: breakers of its receptacles, energy and cost.</summary>
internal static class MainsSection
{
    private static readonly Column[] BreakerColumns =
        [new("Breaker"), new("Start"), new("Peak, A", true), new("I²t, A²s", true), new("Holds up to, A", true), new("Verdict"),
            new("May start at once"), new("Leakage, mA", true)];

    private static readonly Column[] EnergyColumns =
        [new("Condition"), new("From the line, W", true), new("One pass, kWh", true), new("Hours a year", true),
            new("In a year, kWh", true)];

    private static readonly Column[] UninterruptibleColumns =
        [new("UPS"), new("Condition"), new("Load, W", true), new("Load, VA", true), new("Runs at least, min", true),
            new("Wanted, min", true)];

    /// <summary>The section, or none where nothing of the mains is stated.</summary>
    internal static IEnumerable<Section> Of(Evidence evidence)
    {
        List<Block> blocks = [];
        if (evidence.Breakers.Count > 0)
        {
            blocks.Add(new DataTable("All supplies on one breaker switched on at once", BreakerColumns,
                [.. evidence.Breakers.SelectMany(b => new[] { Row(b, b.Cold, "cold"), Row(b, b.Warm, "warm") })]));
        }

        if (evidence.Uninterruptible.Count > 0)
        {
            blocks.Add(new DataTable("UPS (uninterruptible supplies), with a new battery", UninterruptibleColumns,
                [.. evidence.Uninterruptible.SelectMany(u => u.InConditions.Select(c => Row(u.Supply, c)))]));
        }

        if (evidence.Assessment.Site.Conditions.Any(c => c.HoursAYear is not null))
        {
            blocks.Add(new DataTable("Energy from the mains, standby included", EnergyColumns,
                [.. evidence.Energy.InConditions.Select(Row)]));
            blocks.Add(new Paragraph(Capitalized(evidence.Energy.ToString()) + ".", IsStrong: true));
        }

        if (blocks.Count == 0) yield break;
        blocks.Add(new Paragraph(
            "Mains kills. These are sums of stated data: the circuit, its breaker, its residual-current device and its protective "
            + "conductor are for a licensed electrician and the local code. What else is on the circuit is not known here."));
        yield return new Section("Mains", blocks);
    }

    private static IReadOnlyList<string> Row(BreakerAssessment breaker, StartTogether start, string how) =>
    [
        breaker.Breaker.Name,
        how,
        start.Peak is ElectricCurrent peak ? Invariant($"{peak.Amperes:0.#}") : "not stated",
        start.Integral is JouleIntegral integral ? Invariant($"{integral.AmpereSquaredSeconds:0.###}") : Said.Nothing,
        Invariant($"{breaker.Breaker.Rating.Amperes * breaker.Breaker.InstantaneousFrom:0.#}"),
        start.Holds.Verdict switch
        {
            Verdict.Holds => "holds",
            Verdict.Violated => "trips",
            _ => start.Peak is null ? "not known" : "may trip",
        },
        start.MostAtOnce is int most ? Invariant($"{(most == 0 ? "none" : Invariant($"{most}"))} of {breaker.Boxes.Count}") : "not known",
        Invariant($"{breaker.KnownLeakage.Milliamperes:0.##}"),
    ];

    private static IReadOnlyList<string> Row(UninterruptibleSupply supply, UninterruptibleInCondition at) =>
    [
        supply.Name,
        at.Condition.Name,
        at.Power is Power power ? Invariant($"{(double)power.Watts:0.0} of {(double)supply.Power.Watts:0.#}") : "not known",
        at.ApparentPower is ElectricApparentPower apparent
            ? Invariant($"{apparent.Voltamperes:0.0} of {supply.ApparentPower.Voltamperes:0.#}")
            : "not known",
        at.Runtime is Duration runtime ? Invariant($"{runtime.Minutes:0.#}") : "not known",
        supply.BackupTime is Duration wanted ? Invariant($"{wanted.Minutes:0.#}") : Said.Nothing,
    ];

    private static IReadOnlyList<string> Row(EnergyInCondition energy) =>
    [
        energy.Condition.Name,
        energy.Power is Power power ? Invariant($"{(double)power.Watts:0.0}") : "not known",
        energy.Energy is Energy once ? Invariant($"{once.KilowattHours:0.00}") : Said.Nothing,
        energy.Condition.HoursAYear is Duration hours ? Invariant($"{hours.Hours:0.#}") : Said.Nothing,
        energy.EnergyAYear is Energy year ? Invariant($"{year.KilowattHours:0.0}") : Said.Nothing,
    ];

    private static string Capitalized(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
