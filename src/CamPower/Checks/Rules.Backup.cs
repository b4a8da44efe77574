using System;
using System.Linq;
using CamPower.Backup;
using CamPower.Checks;
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
    public static Rule BatteryFuseRatingExceeded { get; } = new SimpleRule("battery-fuse-rating-exceeded", Severity.Danger,
        "The fuse of a battery is not rated for the battery's DC voltage, or cannot interrupt its short-circuit current.",
        "Use a fuse at the battery whose DC voltage rating and breaking capacity for DC are above these values.",
        Sources.OvercurrentProtection, (rule, evidence) =>
            from backup in evidence.Backups
            let exceeded = new[] { (Of: backup.FuseVoltage, What: "Battery and charger give up to", Unit: "V"),
                (Of: backup.FuseBreaking, What: "A short at the battery draws up to", Unit: "A") }
                .Where(j => j.Of.IsViolated || j.Of.IsThin).ToList()
            where exceeded.Count > 0
            let fuse = backup.Box.BatteryProtection!.Name
            let sentences = exceeded.Select(j =>
                Invariant($"{j.What} {NumberOf(j.Of.Value!):0.#} {j.Unit}; ") +
                Invariant($"its fuse, {fuse}, is rated for {NumberOf(j.Of.Limit!):0.#} {j.Unit}."))
            select rule.Find(Subject.Of(backup.Box), string.Join(" ", sentences), exceeded[0].Of.Value, exceeded[0].Of.Limit,
                severity: exceeded.Exists(j => j.Of.IsViolated) ? null : Severity.Caution));

    /// <summary>The fuse of a battery may open though nothing is wrong.</summary>
    public static Rule BatteryFuseMayOpen { get; } = new SimpleRule("battery-fuse-may-open", Severity.Failure,
        "The fuse of a battery carries more than it is certain to carry: what the devices draw, a start of them, or what charges it. " +
        "Once it is open there is no backup.",
        "Use a larger fuse at the battery that its leads allow, charge it with less, or spread the load.",
        Sources.DeviceCarriesItsRating, (rule, evidence) =>
            from backup in evidence.Backups
            from judged in new[] { (Of: backup.FuseLoad, IsStart: false), (Of: backup.FuseStart, IsStart: true) }
            where judged.Of.IsViolated || judged.Of.IsThin
            select rule.Find(Subject.Of(backup.Box), judged.IsStart ? StartOnFuse(backup, judged.Of) : LoadOnFuse(backup, judged.Of),
                judged.Of.Value, judged.Of.IsThin ? judged.Of.PolicyLimit : judged.Of.Limit,
                judged.IsStart ? null : backup.FuseWorst?.Condition, judged.Of.IsThin ? Severity.Caution : null));

    /// <summary>A battery is charged with more voltage or current than it may be.</summary>
    public static Rule BatteryChargedTooHard { get; } = new SimpleRule("battery-charged-too-hard", Severity.Danger,
        "A battery is charged with a higher voltage or a larger current than it may be. It gets hot, gives off gas, and may burn.",
        "Lower the voltage of the charger, limit its charging current, or use a larger battery. Follow the data sheet of the battery.",
        Sources.CommonPractice, (rule, evidence) =>
            from backup in evidence.Backups
            let exceeded = new[] { (Of: backup.ChargingVoltage, What: "It charges with up to", Unit: "V"),
                (Of: backup.OfChargingCurrent, What: "It charges with up to", Unit: "A") }.Where(j => j.Of.IsViolated).ToList()
            where exceeded.Count > 0
            let sentences = exceeded.Select(j => Invariant($"{j.What} {NumberOf(j.Of.Value!):0.##} {j.Unit}; ") +
                Invariant($"its battery may have {NumberOf(j.Of.Limit!):0.##} {j.Unit}."))
            select rule.Find(Subject.Of(backup.Box), string.Join(" ", sentences), exceeded[0].Of.Value, exceeded[0].Of.Limit));

    /// <summary>On battery an output carries more than its limit, or than its protective device is certain to carry.</summary>
    /// <remarks>Devices of constant power draw more as the voltage of the battery falls. An output that is overloaded on the supply already
    /// is named by <see cref="OutputOverloaded"/> and <see cref="NuisanceTrip"/>.</remarks>
    public static Rule OutputOverloadedOnBattery { get; } = new SimpleRule("output-overloaded-on-battery", Severity.Failure,
        "As the voltage of the battery falls, an output carries more than its limit, or its protective device may open.",
        "Use a larger protective device, if output and cable allow it, a larger battery, or fewer devices on the output.",
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
    public static Rule UndervoltageOnBattery { get; } = new SimpleRule("undervoltage-on-battery", Severity.Caution,
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
                    Invariant($"On battery, {first.Device.Name} has less than it accepts after {first.After.Hours:0.0} h ") +
                    Invariant($"in \"{c.Condition}\"; backup time {backup.Box.BackupTime!.Value.Hours:0.#} h."),
                    first.After, backup.Box.BackupTime, c.Condition))));

    /// <summary>A battery is charged at a temperature at which it must not be.</summary>
    public static Rule BatteryChargedTooCold { get; } = new SimpleRule("battery-charged-too-cold", Severity.Danger,
        "A battery is in a place that is colder than the temperature from which it may be charged.",
        "Move the battery to a warmer place, heat it, or use one that may be charged in the cold. " +
        "A battery management that stops charging leaves it empty.",
        Sources.LithiumIronPhosphateBattery, (rule, evidence) =>
            from backup in evidence.Backups
            let judged = backup.ChargingTemperature
            where judged.IsViolated
            let coldest = backup.ColdestCharging
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"The air around the box is at {coldest.At.BoxCelsius:0.#} °C in \"{coldest}\"; ") +
                Invariant($"its battery may be charged from {((Temperature)judged.Limit!).DegreesCelsius:0.#} °C."),
                judged.Value, judged.Limit, coldest));

    /// <summary>A supply is not set to the float voltage of its battery.</summary>
    public static Rule FloatVoltageWrong { get; } = new SimpleRule("float-voltage-wrong", Severity.Failure,
        "A supply is not set to the float voltage of its battery. Too low never fills it; too high ages it, and it gives off gas.",
        "Set the supply to the float voltage on the data sheet of the battery. Check that every device accepts it.",
        Sources.CommonPractice, (rule, evidence) =>
            from backup in evidence.Backups
            let judged = backup.FloatVoltage
            where judged.IsViolated
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"It gives {NumberOf(judged.Value!):0.00} V with its tolerance; the float voltage of its battery is ") +
                Invariant($"{backup.Battery.FloatAt(Battery.Reference).Volts:0.00} V."),
                judged.Value, judged.Limit));

    /// <summary>The battery does not last as long as wanted.</summary>
    public static Rule BatteryBackupTooShort { get; } = new SimpleRule("battery-backup-too-short", Severity.Failure,
        "In an outage the first device is off before the backup time is over.",
        "Use a larger battery, feed fewer devices from it, or bring the farthest device nearer with a larger conductor.",
        Sources.Peukert, (rule, evidence) => evidence.Backups.SelectMany(backup => Rule.Worst(
            from c in backup.InConditions
            where c.Lasts.IsViolated
            orderby c.New.ToFirstDropOut.Seconds
            select Short(rule, backup.Box, c, c.New, c.Lasts, backup.Battery.Name))));

    /// <summary>The battery lasts as long as wanted while it is new, but not at the end of its life.</summary>
    public static Rule ThinBatteryBackup { get; } = new SimpleRule("thin-battery-backup", Severity.Caution,
        "With 80 % of the battery's capacity left, the first device is off before the backup time is over.",
        "Use a larger battery, or replace this one sooner and test it every year.",
        Sources.Ieee485Aging, yieldsTo: ["battery-backup-too-short"], check: (rule, evidence) => evidence.Backups.SelectMany(
            backup => Rule.Worst(
                from c in backup.InConditions
                where c.LastsAtEndOfLife.IsViolated
                orderby c.Old.ToFirstDropOut.Seconds
                select Short(rule, backup.Box, c, c.Old, c.LastsAtEndOfLife, $"{backup.Battery.Name} with 80 % of its capacity"))));

    /// <summary>Load and charging current together are above the derated rating of a supply.</summary>
    public static Rule ChargingAboveDeratedRating { get; } = new SimpleRule("charging-above-derated-rating", Severity.Caution,
        "After an outage the load and the charging current together are above the derated rating of the supply.",
        "Limit the charging current, or use a larger supply. A supply that shuts down does not come back after an outage.",
        Sources.GenericDerating, yieldsTo: ["supply-above-derated-rating"], check: (rule, evidence) =>
            from backup in evidence.Backups
            let judged = backup.WhileCharging
            where judged.IsViolated
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"Load and charging current need {NumberOf(judged.Value!):0.00} A; ") +
                Invariant($"its supply can give {NumberOf(judged.Limit!):0.00} A."),
                judged.Value, judged.Limit, severity: backup.IsOffWhileOverloaded ? Severity.Failure : null));

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
            Invariant($"On {battery}, {first} is off after {run.ToFirstDropOut.Hours:0.0} h in \"{inCondition.Condition}\"; ") +
            Invariant($"backup time {box.BackupTime!.Value.Hours:0.#} h."),
            lasts.Value, lasts.Limit, inCondition.Condition);
    }

    private static double NumberOf(IQuantity quantity) => (double)quantity.Value;
}
