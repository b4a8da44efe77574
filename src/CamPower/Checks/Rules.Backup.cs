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
            where backup.Box.BatteryProtection == ProtectiveDevice.None
            select rule.Find(Subject.Of(backup.Box),
                Invariant($"Its battery has no fuse at its terminal; a short there draws up to {ShortOf(backup):0} A."),
                backup.Battery.ShortCircuitCurrent));

    /// <summary>The fuse of a battery is not rated for its voltage or for its short-circuit current.</summary>
    public static Rule BatteryFuseRatingExceeded { get; } = new SimpleRule("battery-fuse-rating-exceeded", Severity.Danger,
        "The fuse of a battery is not rated for the battery's DC voltage, or cannot interrupt its short-circuit current.",
        "Use a fuse at the battery whose DC voltage rating and breaking capacity are above these values.",
        Sources.OvercurrentProtection, (rule, evidence) =>
            from backup in evidence.Backups
            let exceeded = new[] { (Of: backup.FuseVoltage, What: "Battery and charger give up to", Unit: "V"),
                (Of: backup.FuseBreaking, What: "A short at the battery draws up to", Unit: "A") }.Where(j => j.Of.IsViolated).ToList()
            where exceeded.Count > 0
            let fuse = backup.Box.BatteryProtection!.Name
            let sentences = exceeded.Select(j =>
                Invariant($"{j.What} {NumberOf(j.Of.Value!):0.#} {j.Unit}; ") +
                Invariant($"its fuse, {fuse}, is rated for {NumberOf(j.Of.Limit!):0.#} {j.Unit}."))
            select rule.Find(Subject.Of(backup.Box), string.Join(" ", sentences), exceeded[0].Of.Value, exceeded[0].Of.Limit));

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
                Invariant($"It is set to {NumberOf(judged.Value!):0.00} V; the float voltage of its battery is ") +
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

    private static Finding Short(
        Rule rule, DistributionBox box, BackupInCondition inCondition, BatteryRun run, Judgment lasts, string battery)
    {
        string first = run.DropOuts.Count > 0 ? run.DropOuts[0].Device.Name : "every device";
        return rule.Find(Subject.Of(box),
            Invariant($"On {battery}, {first} is off after {run.ToFirstDropOut.Hours:0.0} h in \"{inCondition.Condition}\"; ") +
            Invariant($"backup time {box.BackupTime!.Value.Hours:0.#} h."),
            lasts.Value, lasts.Limit, inCondition.Condition);
    }

    private static double ShortOf(BackupAssessment backup) => backup.Battery.ShortCircuitCurrent.Amperes;

    private static double NumberOf(IQuantity quantity) => (double)quantity.Value;
}
