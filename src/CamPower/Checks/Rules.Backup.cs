using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Backup;
using CamPower.Checks;
using CamPower.Supplies;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <content>Rules on batteries.</content>
public static partial class Rules
{
    /// <summary>A battery has no fuse at its terminal.</summary>
    public static Rule BatteryFuseMissing { get; } = new SimpleRule("battery-fuse-missing", Severity.Danger,
        "A battery has no fuse at its terminal. Its resistance alone limits the current of a short.",
        "Fit a fuse at the terminal of the battery, rated for its DC voltage and short-circuit current. Follow the local code.",
        Sources.OvercurrentProtection, (rule, evidence) =>
            from backup in evidence.Backups
            where backup.Box.BatteryProtection is { IsNone: true }
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"Its battery has no fuse at its terminal; a short there draws up to {backup.LargestShortAmperes:0} A."),
                ElectricCurrent.FromAmperes(backup.LargestShortAmperes)));

    /// <summary>The fuse of a battery is not rated for its voltage or for its short-circuit current.</summary>
    /// <remarks>A breaking capacity of less than 1.25 times that current is a Caution: the resistance of a data sheet has no
    /// tolerance.</remarks>
    public static Rule BatteryFuseRatingExceeded { get; } = new SimpleRule("battery-fuse-rating-exceeded",
        "battery fuse rated too low", Severity.Danger,
        "The fuse of a battery is not rated for the battery's DC voltage, or cannot interrupt its short-circuit current.",
        "Fit a battery fuse that is rated for this DC voltage and interrupts a short at the battery.",
        Sources.OvercurrentProtection, (rule, evidence) =>
            from backup in evidence.Backups
            let exceeded = new[] { backup.FuseVoltage, backup.FuseBreaking }.Where(j => j.IsViolated || j.IsThin).ToList()
            where exceeded.Count > 0
            select rule.Find(Subject.Of(backup.Box), RatingOfFuse(backup), exceeded[0].Value, exceeded[0].Limit,
                severity: exceeded.Exists(j => j.IsViolated) ? null : Severity.Caution, remedy: FuseToFit(backup)));

    /// <summary>The fuse of a battery may open though nothing is wrong.</summary>
    public static Rule BatteryFuseMayOpen { get; } = new SimpleRule("battery-fuse-may-open", Severity.Failure,
        "The fuse of a battery carries more than it is certain to carry: what the devices draw, a start of them, or what charges it. " +
        "Or it opens at a short of an output before the protective device of that output. " +
        "Once it is open there is no backup.",
        "Use a larger battery fuse if the battery leads are rated for it. Or lower the charging current, or spread the load.",
        Sources.DeviceCarriesItsRating, (rule, evidence) =>
            FuseOpensFirst(rule, evidence).Concat(
            from backup in evidence.Backups
            from judged in new[] { (Of: backup.FuseLoad, IsStart: false), (Of: backup.FuseStart, IsStart: true) }
            where judged.Of.IsViolated || judged.Of.IsThin
            select rule.Find(Subject.Of(backup.Box), judged.IsStart ? StartOnFuse(backup, judged.Of) : LoadOnFuse(backup, judged.Of),
                judged.Of.Value, judged.Of.IsThin ? judged.Of.PolicyLimit : judged.Of.Limit,
                judged.IsStart ? null : backup.FuseWorst?.Condition, judged.Of.IsThin ? Severity.Caution : null)));

    /// <summary>A battery is discharged further than its chemistry allows.</summary>
    public static Rule BatteryCutOffTooLow { get; } = new SimpleRule("battery-cut-off-too-low", "battery discharged too far",
        Severity.Caution,
        "A battery is cut off at a lower voltage than the end of discharge of its chemistry. One such discharge may ruin it.",
        "Set the cut-off to the end-of-discharge voltage on the data sheet of the battery, or fit a low-voltage disconnect.",
        Sources.CommonPractice, check: (rule, evidence) =>
            from backup in evidence.Backups
            let judged = backup.CutOff
            where judged.IsViolated
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"Its battery is cut off at {NumberOf(judged.Value!):0.##} V; ") +
                Invariant($"its discharge must end at {NumberOf(judged.Limit!):0.##} V."),
                judged.Value, judged.Limit));

    /// <summary>A battery is charged with more voltage or current than it may be.</summary>
    public static Rule BatteryChargedTooHard { get; } = new SimpleRule("battery-charged-too-hard", Severity.Danger,
        "A battery is charged with a higher voltage or a larger current than it may be, or in air that is too hot. " +
        "It gets hot, gives off gas, and may burn.",
        "Lower the voltage or the current of the charger, use a larger battery, or move it to a cooler place. " +
        "Follow the data sheet of the battery.",
        Sources.CommonPractice, (rule, evidence) =>
            from backup in evidence.Backups
            let exceeded = new[] { (Of: backup.ChargingVoltage, What: "Its charger gives up to", Unit: "V"),
                (Of: backup.OfChargingCurrent, What: "Its charger gives up to", Unit: "A"),
                (Of: backup.HottestCharging, What: "It charges at up to", Unit: "°C") }.Where(j => j.Of.IsViolated).ToList()
            where exceeded.Count > 0
            let sentences = exceeded.Select(j => Invariant($"{j.What} {NumberOf(j.Of.Value!):0.##} {j.Unit}; ") +
                Invariant($"the battery allows at most {NumberOf(j.Of.Limit!):0.##} {j.Unit}."))
            select rule.Find(Subject.Of(backup.Box), string.Join(" ", sentences), exceeded[0].Of.Value, exceeded[0].Of.Limit));

    /// <summary>On battery an output carries more than its limit, or than its protective device is certain to carry.</summary>
    /// <remarks>Devices of constant power draw more as the voltage of the battery falls. An output that is overloaded on the supply already
    /// is named by <see cref="OutputOverloaded"/> and <see cref="NuisanceTrip"/>.</remarks>
    public static Rule OutputOverloadedOnBattery { get; } = new SimpleRule("output-overloaded-on-battery", Severity.Failure,
        "As the voltage of the battery falls, an output carries more than its limit, or its protective device may open.",
        "Use a larger battery, or fewer devices on the output. Or use a larger fuse or limit, if output and cable are rated for it.",
        Sources.DeviceCarriesItsRating, yieldsTo: ["output-overloaded", "nuisance-trip"], check: (rule, evidence) =>
            from backup in evidence.Backups
            from output in backup.OutputsAtWorst
            from judged in new[] { output.OfProtection, output.OfLimit }.Where(j => j.IsViolated).Take(1)
            select rule.Find(Subject.Of(backup.Box, output.Output),
                Invariant($"On battery it carries up to {output.MostAmperes:0.00} A in \"{output.Condition}\"; ") +
                (output.OfProtection.IsViolated
                    ? Invariant($"its {output.Output.Protection} carries {NumberOf(judged.Limit!):0.00} A and may open{WhenOpen(output)}.")
                    : Invariant($"its limit is {NumberOf(judged.Limit!):0.00} A.")),
                judged.Value, judged.Limit, output.Condition));

    /// <summary>On battery a device has less voltage than it accepts, long before it drops out.</summary>
    public static Rule UndervoltageOnBattery { get; } = new SimpleRule("undervoltage-on-battery",
        "voltage too low on battery", Severity.Caution,
        "On battery a device still runs, but with less voltage than it accepts, before the backup time is over.",
        "Use a larger conductor to the device, or a larger battery.",
        Sources.MarginPolicy, yieldsTo: ["undervoltage", "battery-backup-too-short"], check: (rule, evidence) =>
            evidence.Backups.SelectMany(backup => Rule.Worst(
                from c in backup.InConditions
                where backup.Box.BackupTime is not null && c.New.BelowAccepted.Count > 0
                let first = c.New.BelowAccepted[0]
                where first.After < backup.Box.BackupTime
                orderby first.Seconds
                select rule.Find(Subject.Of(backup.Box),
                    Invariant($"On battery, {first.Device.Name} gets less than {first.Device.Model.DcInput!.LowestVolts:0.##} V ") +
                    Invariant($"after {first.After.Hours:0.0} h in \"{c.Condition}\"; wanted {backup.Box.BackupTime!.Value.Hours:0.#} h."),
                    first.After, backup.Box.BackupTime, c.Condition))));

    /// <summary>A battery is charged at a temperature at which it must not be.</summary>
    public static Rule BatteryChargedTooCold { get; } = new SimpleRule("battery-charged-too-cold", Severity.Danger,
        "A battery is in a place that is colder than the temperature from which it may be charged.",
        "Move the battery to a warmer place, heat it, or use one that may be charged in the cold. " +
        "A battery management system (BMS) that blocks cold charging protects the battery, but leaves it empty.",
        Sources.LithiumIronPhosphateBattery, (rule, evidence) =>
            from backup in evidence.Backups
            let judged = backup.ChargingTemperature
            where judged.IsViolated
            let coldest = backup.ColdestCharging
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"The air around the box is at {coldest.At.BoxCelsius:0.#} °C in \"{coldest}\"; ") +
                Invariant($"do not charge its battery below {((Temperature)judged.Limit!).DegreesCelsius:0.#} °C."),
                judged.Value, judged.Limit, coldest));

    /// <summary>A supply is not set to the float voltage of its battery.</summary>
    public static Rule FloatVoltageWrong { get; } = new SimpleRule("float-voltage-wrong", Severity.Failure,
        "A supply is not set to the float voltage of its battery. At too low a voltage the battery never fills. " +
        "At too high a voltage it ages and gives off gas.",
        "Set the supply to the float voltage on the data sheet of the battery. Check that every device accepts it.",
        Sources.CommonPractice, (rule, evidence) =>
            from backup in evidence.Backups
            let inCondition = backup.FloatVoltage.IsViolated ? null : backup.FloatWorst
            let judged = inCondition is null ? backup.FloatVoltage : backup.FloatIn(inCondition)
            where judged.IsViolated || judged.IsThin
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"It is set to {backup.Box.Supply.Output.SetVolts:0.00} V, ") +
                Invariant($"{NumberOf(judged.Value!):0.00} V with its tolerance. The float voltage of its battery is ") +
                (inCondition is null ? FloatOf(backup, Battery.Reference) + "." : FloatOf(backup, inCondition)),
                judged.Value, judged.IsThin ? judged.PolicyLimit : judged.Limit, inCondition?.Condition,
                judged.IsThin ? Severity.Caution : null));

    /// <summary>The battery does not last as long as wanted.</summary>
    public static Rule BatteryBackupTooShort { get; } = new SimpleRule("battery-backup-too-short", Severity.Failure,
        "In an outage the first device is off before the backup time is over.",
        "Use a larger battery, fewer devices on it, or a larger conductor to the device that goes off first.",
        Sources.Peukert, (rule, evidence) => evidence.Backups.SelectMany(backup => Rule.Worst(
            from c in backup.InConditions
            where c.Lasts.IsViolated
            orderby c.New.ToFirstDropOut.Seconds
            select Short(rule, backup.Box, c, c.New, c.Lasts, $"its battery ({backup.Battery.Name})"))));

    /// <summary>The battery lasts as long as wanted while it is new, but not at the end of its life.</summary>
    public static Rule ThinBatteryBackup { get; } = new SimpleRule("thin-battery-backup",
        "backup too short with an old battery", Severity.Caution,
        "With 80 % of the battery's capacity left, the first device is off before the backup time is over.",
        "Use a larger battery, or replace this one sooner and test it every year.",
        Sources.Ieee485Aging, yieldsTo: ["battery-backup-too-short"], check: (rule, evidence) => evidence.Backups.SelectMany(
            backup => Rule.Worst(
                from c in backup.InConditions
                where c.LastsAtEndOfLife.IsViolated
                orderby c.Old.ToFirstDropOut.Seconds
                select Short(rule, backup.Box, c, c.Old, c.LastsAtEndOfLife, $"an old battery ({backup.Battery.Name} at 80 %)"))));

    /// <summary>Load and charging current together are above the derated rating of a supply.</summary>
    public static Rule ChargingAboveDeratedRating { get; } = new SimpleRule("charging-above-derated-rating",
        "supply overloaded while it charges", Severity.Caution,
        "After an outage the load and the charging current together are above the derated rating of the supply.",
        "Limit the charging current, or use a larger supply. " +
        "A supply that shuts down in overload may not restart after an outage, while the battery is empty.",
        Sources.GenericDerating, yieldsTo: ["supply-above-derated-rating"], check: (rule, evidence) =>
            from backup in evidence.Backups
            let judged = backup.WhileCharging
            where judged.IsViolated
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"Load and charging current need {NumberOf(judged.Value!):0.00} A; ") +
                Invariant($"its supply can give {NumberOf(judged.Limit!):0.00} A."),
                judged.Value, judged.Limit, severity: backup.IsOffWhileOverloaded ? Severity.Failure : null));

    /// <summary>When the main supply of a box fails, its reserve does not carry all that was up.</summary>
    public static Rule ReserveDoesNotCarryLoad { get; } = new SimpleRule("reserve-does-not-carry-load", Severity.Failure,
        "When the main supply of a box fails, its reserve is above its derated rating, or devices go off or get too little voltage.",
        "Use a larger reserve, set it higher, or use diodes that lose less. Feed fewer devices from the box.",
        Sources.RedundantSupplies, (rule, evidence) =>
            from reserve in evidence.Reserves
            let worst = reserve.Worst
            let load = worst.ReserveLoad
            where load.IsViolated || worst.Lost.Count > 0
            let fails = $"When {reserve.Box.Supply} fails, "
            select rule.Find(Subject.Of(reserve.Box),
                load.IsViolated
                    ? $"{fails}its outputs draw {Digits.Of(NumberOf(load.Value!), NumberOf(load.Limit!))} A in \"{worst.Condition}\"; " +
                        $"{reserve.Box.Reserve} can give {Digits.Of(NumberOf(load.Limit!), NumberOf(load.Value!))} A."
                    : $"{fails}{AllOf(worst.Lost)} off or below the accepted voltage in \"{worst.Condition}\".",
                load.IsViolated ? load.Value : null, load.IsViolated ? load.Limit : null, worst.Condition));

    /// <summary>The reserve of a box may carry its load though the main supply is in order.</summary>
    public static Rule ReserveCarriesInService { get; } = new SimpleRule("reserve-carries-in-service", Severity.Note,
        "Within the tolerances of both supplies of a box the reserve may carry the load while the main supply is in order.",
        "If one is meant to rest, set it lower by both tolerances and the drop of the diode.",
        Sources.RedundantSupplies, (rule, evidence) =>
            from reserve in evidence.Reserves
            from finding in Rule.Worst(
                from c in reserve.InConditions
                where c.ReserveRests.IsViolated && c.Current.Amperes > 0
                orderby c.LargestReserveCurrent.Amperes descending
                let rests = c.ReserveRests
                select rule.Find(Subject.Of(reserve.Box),
                    $"{reserve.Box.Supply} gives at least {Digits.Of(NumberOf(rests.Value!), NumberOf(rests.Limit!))} V " +
                    $"behind its diode; {reserve.Box.Reserve} gives up to {Digits.Of(NumberOf(rests.Limit!), NumberOf(rests.Value!))} V.",
                    rests.Value, rests.Limit, c.Condition))
            select finding);

    // At a short the battery is gone, and the charger alone may not open what is left.
    private static IEnumerable<Finding> FuseOpensFirst(Rule rule, Evidence evidence) =>
        from backup in evidence.Backups
        let outputs = evidence.Faults.Where(output => output.Box == backup.Box)
            .Select(output => (output.Output, Of: backup.MeltsBefore(output))).Where(o => o.Of.IsViolated)
            .OrderByDescending(o => NumberOf(o.Of.Value!)).ToList()
        where outputs.Count > 0
        let worst = outputs[0]
        select rule.Find(Subject.Of(backup.Box),
            Invariant($"At a short of output {worst.Output.Number} its {worst.Output.Protection} lets through up to ") +
            Invariant($"{NumberOf(worst.Of.Value!):G3} A²s. The battery fuse, {backup.Box.BatteryProtection}, may melt at ") +
            Invariant($"{NumberOf(worst.Of.Limit!):G3} A²s, before it."),
            severity: Severity.Caution,
            remedy: "Use a larger battery fuse if the battery leads are rated for it, or smaller protective devices at the outputs.");

    private static string AllOf(IReadOnlyList<SiteDevice> devices) => devices.Count == 1
        ? $"{devices[0]} is"
        : Invariant($"{devices[0]} and {devices.Count - 1} more {(devices.Count == 2 ? "device" : "devices")} are");

    private static string FloatOf(BackupAssessment backup, Temperature at) => Invariant($"{backup.Battery.FloatAt(at).Volts:0.00} V");

    private static string FloatOf(BackupAssessment backup, BoxInCondition condition)
    {
        double celsius = BackupAssessment.BatteryCelsius(condition);
        return FloatOf(backup, Temperature.FromDegreesCelsius(celsius)) + Invariant($" at {celsius:0.#} °C in \"{condition.Condition}\".");
    }

    // In one sentence for each rating that is exceeded; the fuse is named once.
    private static string RatingOfFuse(BackupAssessment backup)
    {
        string name = $"Its battery fuse ({backup.Box.BatteryProtection})";
        Judgment volts = backup.FuseVoltage, amperes = backup.FuseBreaking;
        string ofVolts = Invariant($"{name} is rated for {Shown(volts.Limit):0.#} V DC; it gets up to {Shown(volts.Value):0.#} V.");
        bool isOfVolts = volts.IsViolated || volts.IsThin;
        if (!amperes.IsViolated && !amperes.IsThin) return ofVolts;
        string policy = amperes.IsThin ? Invariant($", policy maximum {Shown(amperes.PolicyLimit):0.#} A") : string.Empty;
        return (isOfVolts ? $"{ofVolts} It" : name) +
            Invariant($" interrupts at most {Shown(amperes.Limit):0.#} A{policy}; a short draws up to {Shown(amperes.Value):0.#} A.");

        static double Shown(IQuantity? quantity) => quantity is null ? 0 : NumberOf(quantity);
    }

    // With the policy's reserve above the largest short.
    private static string FuseToFit(BackupAssessment backup)
    {
        Judgment breaking = backup.FuseBreaking;
        double reserve = breaking is { Limit: ElectricCurrent limit, PolicyLimit: ElectricCurrent policy }
            ? limit.Amperes / policy.Amperes
            : 1;
        double amperes = reserve * (breaking.Value is ElectricCurrent most ? most.Amperes : backup.LargestShortAmperes);
        return Invariant($"Fit a battery fuse rated for at least {Math.Ceiling(backup.Box.HighestVolts * 10) / 10:0.#} V DC ") +
            Invariant($"that interrupts at least {Math.Ceiling(amperes):0} A DC.");
    }

    private static string LoadOnFuse(BackupAssessment backup, Judgment judged)
    {
        string flows = Invariant($"Its battery {(backup.FuseWorst is null ? "takes" : "gives")} up to {NumberOf(judged.Value!):0.00} A");
        string when = backup.FuseWorst is BackupInCondition worst ? $"{flows} in \"{worst.Condition}\"; " : $"{flows}; ";
        string policy = judged.IsThin ? Invariant($"policy maximum {NumberOf(judged.PolicyLimit!):0.00} A: ") : string.Empty;
        return when + policy + Invariant($"its fuse, {backup.Box.BatteryProtection}, carries {NumberOf(judged.Limit!):0.00} A.");
    }

    private static string StartOnFuse(BackupAssessment backup, Judgment judged)
    {
        string policy = judged.IsThin ? Invariant($"; policy maximum {((Ratio)judged.PolicyLimit!).Percent:0} %") : string.Empty;
        return Invariant($"All its devices start at once with {((Ratio)judged.Value!).Percent:0} % of what ") +
            Invariant($"the battery's fuse, {backup.Box.BatteryProtection}, withstands{policy}.");
    }

    private static string WhenOpen(OutputOnBattery output) =>
        output.MayOpenAfter is Duration after ? Invariant($" after {after.Hours:0.0} h") : string.Empty;

    private static Finding Short(
        Rule rule, DistributionBox box, BackupInCondition inCondition, BatteryRun run, Judgment lasts, string battery)
    {
        string first = run.DropOuts.Count > 0 ? run.DropOuts[0].Device.Name : "every device";
        return rule.Find(Subject.Of(box),
            Invariant($"On {battery}, {first} goes off after {run.ToFirstDropOut.Hours:0.0} h in \"{inCondition.Condition}\"; ") +
            Invariant($"wanted {box.BackupTime!.Value.Hours:0.#} h."),
            lasts.Value, lasts.Limit, inCondition.Condition);
    }

    private static double NumberOf(IQuantity quantity) => (double)quantity.Value;
}
