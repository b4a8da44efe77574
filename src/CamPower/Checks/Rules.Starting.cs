using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <content>Rules on whether devices start and stay on.</content>
public static partial class Rules
{
    /// <summary>A device never gets its turn-on voltage, not even before it draws current.</summary>
    public static Rule UnloadedVoltageBelowTurnOn { get; } = NotStarting("unloaded-voltage-below-turn-on",
        "does not start", StartVerdict.UnloadedBelowTurnOn,
        "The voltage at a device is below its turn-on voltage even before the device draws current.",
        "Set the supply higher if it can be trimmed, or use a higher supply voltage within the device's range. " +
        "Otherwise move other devices off this run.",
        (device, starting) => (device.UnloadedVolts, starting.TurnOnVolts),
        (condition, volts, limit) =>
            $"It gets {Digits.Of(volts, limit, "0.##")} V before it draws current in \"{condition}\"; " +
            $"it turns on at {Digits.Of(limit, volts, "0.##")} V and does not start.");

    /// <summary>A device turns on, pulls its voltage below its drop-out voltage, and restarts again and again.</summary>
    public static Rule SettlesBelowDropOut { get; } = NotStarting("settles-below-drop-out",
        "keeps restarting", StartVerdict.SettlesBelowDropOut,
        "With a device on, its voltage settles below its drop-out voltage. The device restarts again and again.",
        "Use a larger conductor or a shorter route, or move other devices off this run. " +
        "If the supply can be trimmed, set it higher, within the range of every device.",
        (device, starting) => (device.SolvedVolts, starting.DropOutVolts),
        (condition, volts, limit) => volts > 0
            ? $"Its voltage settles at {Digits.Of(volts, limit, "0.##")} V in \"{condition}\"; " +
                $"it drops out at {Digits.Of(limit, volts, "0.##")} V and cannot stay on."
            : Invariant($"Its voltage does not settle in \"{condition}\"; it drops out at {limit:0.##} V and cannot stay on."));

    /// <summary>A device pulls its own voltage down at the moment it turns on.</summary>
    public static Rule TurnOnBelowUnstableVoltage { get; } =
        NotStarting("turn-on-below-unstable-voltage", "may not start", StartVerdict.TurnOnBelowUnstableVoltage,
            "A device turns on at a voltage from which its own load pulls the voltage down. It has no stated soft start.",
            "Use a larger conductor or a shorter route. If the data sheet of the device states a soft start, state it in the site file.",
            (device, starting) => (starting.TurnOnVolts, device.UnstableVoltage!.Value.Volts),
            (condition, volts, limit) =>
                $"It may not start in \"{condition}\". It turns on at {Digits.Of(volts, limit, "0.##")} V; " +
                $"on this cable it stays up only from {Digits.Of(limit, volts, "0.##")} V.");

    /// <summary>The limit of a supply holds down the devices that start on it, as it comes up or after a dip of its voltage.</summary>
    public static Rule StartBeyondSupplyLimit { get; } = new SimpleRule("start-beyond-supply-limit",
        "start draws more than the supply gives", Severity.Failure,
        "As a supply comes up, or after a dip of its voltage, its devices draw more than its current limit. " +
        "They do not start, or are off for seconds.",
        "Use a supply with a higher current limit, or spread the devices over two supplies.",
        Sources.Kirchhoff, yieldsInConditionsOf: ["supply-above-derated-rating", "split-adapter-beyond-rating"],
        check: (rule, evidence) => evidence.Assessment.Boxes.SelectMany(box =>
        {
            List<Finding> starting = [.. BeyondLimit(rule, box, c => c.StartingCurrent, "as they start", severity: null)];
            if (starting.Count > 0) return starting;
            starting = [.. BeyondLimit(rule, box, c => c.StartingInrush, "as their inputs charge", severity: null)];
            return starting.Count > 0 ? starting : BeyondLimit(rule, box, c => c.ReturningCurrent, "after a dip", Severity.Caution);
        }));

    /// <summary>An inrush pulls the voltage of a running device below its drop-out voltage, for longer than its hold-up time.</summary>
    /// <remarks>The inrush of another device that starts, or of illuminators or motors that are switched on, its own too. Those are
    /// switched on again and again in service: then it is a Failure. A start is rare, and the device is back within seconds: then it is a
    /// Caution. Without a stated hold-up time it is unknown, and <see cref="FaultsUnknown"/> names it.</remarks>
    public static Rule InrushBelowDropOut { get; } = new SimpleRule("inrush-below-drop-out", "restarts at an inrush", Severity.Caution,
        "An inrush pulls the voltage of a running device below its drop-out voltage, for longer than its hold-up time. " +
        "The device restarts.",
        "Use a larger conductor on the shared part of the run, or give the device an output of its own.",
        Sources.Kirchhoff, (rule, evidence) =>
            from box in evidence.Assessment.Devices.GroupBy(device => device.Box)
            let dark = box.Select(WorstRestart).OfType<DeviceInCondition>()
                .OrderByDescending(c => c.DuringSwitching.IsViolated).ThenByDescending(Excess).ToList()
            where dark.Count > 0
            let worst = dark[0]
            let isInService = worst.DuringSwitching.IsViolated
            let judged = isInService ? worst.DuringSwitching : worst.DuringInrush
            let lasts = judged.Value as Duration?
            let held = (Duration)judged.Limit!
            let span = lasts is Duration known
                ? $"for {Digits.Of(known.Milliseconds, held.Milliseconds, "0.#")} ms"
                : "until the inrush ends, which this supply prolongs"
            let when = isInService ? "motors or illuminators are switched on" : "another device starts"
            let others = dark.Count > 1 ? Invariant($" Restarting: {string.Join(", ", dark.Select(d => d.Device.Name))}.") : string.Empty
            select rule.Find(dark.Count > 1 ? Subject.Of(box.Key) : Subject.Of(worst.Device),
                $"{(dark.Count > 1 ? worst.Device : "It")} restarts in \"{worst.Condition}\" when {when}. " +
                Invariant($"It is below its drop-out voltage {span}; its hold-up time is {HoldUp(held, lasts)} ms.{others}"),
                lasts, held, worst.Condition, isInService ? Severity.Failure : Severity.Caution));

    // Where it restarts again and again in service, that is worse than at a start, however long either lasts.
    private static DeviceInCondition? WorstRestart(DeviceAssessment device) =>
        Rule.WorstOf(device.InConditions, c => c.DuringInrush.IsViolated && c.DuringSwitching.IsViolated, Excess)
        ?? Rule.WorstOf(device.InConditions, c => c.DuringInrush.IsViolated, Excess);

    private static string HoldUp(Duration held, Duration? lasts) =>
        Digits.Of(held.Milliseconds, lasts?.Milliseconds ?? double.PositiveInfinity, "0.#");

    // How many times its hold-up time an inrush takes it below its drop-out voltage; without end where the supply has no balance with it.
    private static double Excess(DeviceInCondition dark) =>
        dark.DuringInrush.Value is Duration lasts ? lasts.Seconds / ((Duration)dark.DuringInrush.Limit!).Seconds : double.PositiveInfinity;

    // The voltage found is 0 where there is none.
    private static SimpleRule NotStarting(string id, string title, StartVerdict reason, string purpose, string remedy,
        Func<DeviceInCondition, Starting, (double Volts, double Limit)> compared, Func<Condition, double, double, string> message) =>
        new(id, title, Severity.Failure, purpose, remedy, Sources.Kirchhoff, yieldsInConditionsOf: ["no-operating-point"],
            check: (rule, evidence) => Rule.WorstOf(
                evidence.Assessment.Devices, device => device.InConditions, c => c.Start == reason, _ => 0, (device, c) =>
            {
                (double volts, double limit) = compared(c, device.Device.Model.Starting!);
                return rule.Find(Subject.Of(device.Device), message(c.Condition, volts, limit) + OfWrongSupply(device),
                    volts > 0 ? ElectricPotential.FromVolts(volts) : null, ElectricPotential.FromVolts(limit), c.Condition,
                    remedy: RemedyOfWrongSupply(device) ?? RemedyOfTrim(rule, device));
            }));

    // After a dip alone they are off for seconds: once they have dropped out the voltage comes back, and they start.
    private static IEnumerable<Finding> BeyondLimit(Rule rule, BoxAssessment box, Func<BoxInCondition, Judgment> judged, string when,
        Severity? severity) => Rule.Worst(
            from inCondition in box.InConditions
            let judgment = judged(inCondition)
            where judgment.IsViolated
            let drawn = (ElectricCurrent)judgment.Value!
            let given = (ElectricCurrent)judgment.Limit!
            orderby drawn.Amperes - given.Amperes descending
            select rule.Find(Subject.Of(box.Box),
                $"Its devices ask for {Digits.Of(drawn.Amperes, given.Amperes)} A {when} in \"{inCondition.Condition}\". " +
                $"Its supply gives at most {Digits.Of(given.Amperes, drawn.Amperes)} A; " +
                $"they {(severity is null ? "may not start" : "restart")}.",
                drawn, given, inCondition.Condition, severity));
}
