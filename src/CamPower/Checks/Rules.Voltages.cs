using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Supplies;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <content>Rules on the voltage of supplies and at devices.</content>
public static partial class Rules
{
    /// <summary>A supply gives more voltage than extra-low voltage may have.</summary>
    /// <remarks>A direct voltage counts as free of ripple. The rule's <see cref="Rule.Limit"/> is the direct voltage.</remarks>
    /// <param name="direct">Highest direct voltage, above 0; null for 120 V. [V]</param>
    /// <param name="alternating">Highest alternating voltage, RMS, above 0; null for 50 V. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is not above 0, or not finite.</exception>
    public static Rule VoltageAboveExtraLow(ElectricPotential? direct = null, ElectricPotential? alternating = null)
    {
        ElectricPotential dc = direct ?? ElectricPotential.FromVolts(CheckConstants.ExtraLowDirectVoltage.Value);
        ElectricPotential ac = alternating ?? ElectricPotential.FromVolts(CheckConstants.ExtraLowAlternatingVoltage.Value);
        double dcVolts = Require.Positive(dc.Volts, nameof(direct), "V"), acVolts = Require.Positive(ac.Volts, nameof(alternating), "V");
        return new SimpleRule("voltage-above-extra-low", "above extra-low voltage", Severity.Danger,
            "A supply can give more voltage than extra-low voltage may have. Treat its insulation, enclosure and wiring as mains work.",
            "Do not energize. Use a supply of extra-low voltage, or have the circuit wired by the local code for this voltage.",
            CheckConstants.ExtraLowDirectVoltage.Source, limit: dc,
            check: (rule, evidence) =>
                from box in evidence.Assessment.Boxes
                let output = box.Box.Supply.Output
                let limit = output.IsDc ? dcVolts : acVolts
                where Limits.IsAbove(output.HighestVolts, limit)
                select rule.Find(Subject.Of(box.Box),
                    $"It gives up to {Digits.Of(output.HighestVolts, limit, "0.#")} V {(output.IsDc ? "DC" : "AC")}; " +
                    $"extra-low voltage ends at {Digits.Of(limit, output.HighestVolts, "0.#")} V. Above that, wire it like line voltage.",
                    output.HighestVoltage, ElectricPotential.FromVolts(limit)));
    }

    /// <summary>A supply of extra-low voltage gives more than an accessible bare part may have.</summary>
    /// <remarks>The rule's <see cref="Rule.Limit"/> is the direct voltage; the crest of an alternating voltage has its own limit.</remarks>
    public static Rule VoltageAboveAccessible { get; } = new SimpleRule("voltage-above-accessible",
        "too much voltage for bare parts", Severity.Caution,
        "A supply of extra-low voltage can give more voltage than accessible bare parts may have. Many codes set a limit here too.",
        "Cover terminals and bare ends, and keep them dry. Work on them with the supply off. " +
        "Check what the local code requires at this voltage.",
        CheckConstants.AccessibleDirectVoltage.Source,
        limit: ElectricPotential.FromVolts(CheckConstants.AccessibleDirectVoltage.Value),
        yieldsTo: ["voltage-above-extra-low"],
        check: (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            let output = box.Box.Supply.Output
            let isAlternating = !output.IsDc
            let volts = output.HighestVolts * (isAlternating ? Math.Sqrt(2) : 1)
            let limit = (isAlternating ? CheckConstants.AccessibleCrestVoltage : CheckConstants.AccessibleDirectVoltage).Value
            where Limits.IsAbove(volts, limit)
            select rule.Find(Subject.Of(box.Box),
                $"It gives up to {Digits.Of(volts, limit, "0.#")} V{(isAlternating ? " at the crest" : " DC")}; " +
                $"an accessible bare part may have at most {Digits.Of(limit, volts, "0.#")} V.",
                ElectricPotential.FromVolts(volts), ElectricPotential.FromVolts(limit)));

    /// <summary>The voltage of a supply, as marked and as set, is above the highest that a device accepts.</summary>
    /// <remarks>It is the wrong supply. One that is only set too high is not: it can be set lower.</remarks>
    public static Rule SupplyVoltageTooHigh { get; } = new SimpleRule("supply-voltage-too-high", Severity.Danger,
        "The voltage of a supply, as marked and as set, is above the highest that a device accepts.",
        "Do not energize. Connect the device to a supply of its rated voltage.",
        Sources.CommonPractice, (rule, evidence) =>
            from device in evidence.Assessment.Devices
            where device.OfSupply.IsViolated
            let volts = (ElectricPotential)device.OfSupply.Value!
            select rule.Find(Subject.Of(device.Device),
                $"{device.Box} gives {Digits.Of(volts.Volts, device.Worst.Accepted!.HighestVolts, "0.##")} V; " +
                $"this device accepts at most {Digits.Of(device.Worst.Accepted.HighestVolts, volts.Volts, "0.##")} V.",
                volts, device.OfSupply.Limit));

    /// <summary>A cable run cannot carry the power that its devices need, at any voltage.</summary>
    public static Rule NoOperatingPoint { get; } = new SimpleRule("no-operating-point", "cable cannot deliver the power", Severity.Failure,
        "A cable run cannot deliver the power that its devices need, at any voltage.",
        "Use a larger conductor or a shorter route, a higher supply voltage, or less load on the run.",
        Sources.MaximumPower, (rule, evidence) => Rule.WorstOf(evidence.Assessment.Devices, device => device.InConditions,
            c => c.State != DeviceState.WrongCurrent && !(c.SolvedVolts > 0), c => -SpareWatts(c),
            (device, c) => rule.Find(Subject.Of(device.Device), WithoutOperatingPoint(c),
                c.MaximumPower is null ? null : c.Load.PowerComponent, c.MaximumPower, c.Condition,
                remedy: IsDrained(c) ? "Use a DC supply for the device, or ask its maker for the voltage that its input needs." : null)));

    /// <summary>A device is up, but gets less than the lowest voltage that it accepts.</summary>
    public static Rule Undervoltage { get; } = new SimpleRule("undervoltage", "voltage too low", Severity.Failure,
        "In some condition a device gets less than the lowest voltage that it accepts.",
        "Use a larger conductor or a shorter route. If the supply can be trimmed, set it higher, within the range of every device.",
        Sources.Kirchhoff, (rule, evidence) =>
            from device in evidence.Assessment.Devices
            let lowest = LowestUp(device)
            where lowest?.LowestVoltage(Ratio.Zero).IsViolated == true
            select rule.Find(Subject.Of(device.Device),
                $"{Gets(lowest, lowest.Accepted!.LowestVolts)} V in \"{lowest.Condition}\"; " +
                $"it needs at least {Digits.Of(lowest.Accepted.LowestVolts, lowest.ValleyVolts, "0.##")} V.{OfWrongSupply(device)}",
                ElectricPotential.FromVolts(lowest.ValleyVolts), lowest.Accepted.Lowest, lowest.Condition,
                remedy: RemedyOfWrongSupply(device) ?? RemedyOfTrim(rule, device)));

    /// <summary>A device gets its lowest accepted voltage, but not the margin above it that a policy asks for; or at light load it gets
    /// nearly more than it accepts.</summary>
    /// <remarks>The margin below the highest voltage is the uncertainty of a set point that is trimmed by hand
    /// (<see cref="DeviceAssessment.AtLightLoad"/>). A supply that cannot be trimmed has its tolerance alone.</remarks>
    /// <param name="margin">Margin in percent of the lowest accepted voltage, from 0 to 100 %; null for 2 %.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="margin"/> is outside that range.</exception>
    public static Rule ThinVoltageMargin(Ratio? margin = null)
    {
        Ratio policy = margin ?? Ratio.FromPercent(CheckConstants.VoltageMargin.Value);
        double percent = 100 * Require.Within(policy.DecimalFractions, 0, 1, nameof(margin), "");
        return new SimpleRule("thin-voltage-margin", "voltage close to its limit", Severity.Caution,
            "The voltage at a device is within its range, but close to the lowest or the highest that it accepts.",
            "Use the next larger conductor, or measure the voltage in its worst condition at commissioning.",
            CheckConstants.VoltageMargin.Source, limit: policy, yieldsTo: ["undervoltage"],
            check: (rule, evidence) => evidence.Assessment.Devices.SelectMany(device => new[]
                { NearlyTooLow(rule, device, policy, percent), NearlyTooHigh(rule, device) }.OfType<Finding>()));
    }

    private static Finding? NearlyTooLow(Rule rule, DeviceAssessment device, Ratio policy, double percent)
    {
        if (LowestUp(device) is not DeviceInCondition lowest) return null;
        Judgment judged = lowest.LowestVoltage(policy);
        if (!judged.IsThin && !judged.IsViolated) return null;
        double minimum = ((ElectricPotential)judged.PolicyLimit!).Volts;
        return rule.Find(Subject.Of(device.Device),
            $"{Gets(lowest, minimum)} V in \"{lowest.Condition}\"; " +
            $"policy minimum {Digits.Of(minimum, lowest.ValleyVolts)} V: " +
            Invariant($"{lowest.Accepted!.LowestVolts:0.##} V + {percent:0.##} %."),
            judged.Value, judged.PolicyLimit, lowest.Condition);
    }

    // Where it gets too much before it draws, it has a finding already.
    private static Finding? NearlyTooHigh(Rule rule, DeviceAssessment device)
    {
        Judgment judged = device.AtLightLoad;
        if (!judged.IsThin || device.BeforeItDraws.IsViolated) return null;
        double maximum = ((ElectricPotential)judged.PolicyLimit!).Volts;
        return rule.Find(Subject.Of(device.Device),
            $"It gets up to {Digits.Of(device.CrestVolts, maximum)} V at light load; " +
            $"policy maximum {Digits.Of(maximum, device.CrestVolts)} V: " +
            Invariant($"{device.Worst.Accepted!.HighestVolts:0.##} V − ") +
            Invariant($"{SupplyConstants.SetPointUncertainty.Value:0.##} %, the uncertainty of a set point."),
            judged.Value, judged.PolicyLimit, remedy: "Set the supply lower, as far as the farthest device allows.");
    }

    /// <summary>A device gets more voltage than it accepts when the load is light and the cable is cold.</summary>
    public static Rule OvervoltageAtLightLoad { get; } = new SimpleRule("overvoltage-at-light-load",
        "too much voltage at light load", Severity.Danger,
        "At the highest supply voltage and the lightest load, a device gets more voltage than it accepts.",
        "Do not energize. Set the supply lower. If far devices then get too little, give them larger conductors or their own supply.",
        Sources.Kirchhoff, yieldsTo: ["supply-voltage-too-high"],
        check: (rule, evidence) =>
            from device in evidence.Assessment.Devices
            where device.AtLightLoad.IsViolated
            select rule.Find(Subject.Of(device.Device),
                $"It gets up to {Digits.Of(device.CrestVolts, device.Worst.Accepted!.HighestVolts)} V at light load; " +
                $"it accepts at most {Digits.Of(device.Worst.Accepted.HighestVolts, device.CrestVolts, "0.##")} V.",
                device.AtLightLoad.Value, device.AtLightLoad.Limit, remedy: RemedyOf(device) ?? RemedyOnTransformer(device)));

    /// <summary>A device gets more voltage than it accepts until it draws current: at power-up, or while it is off.</summary>
    /// <remarks>Behind an unregulated supply it is a Danger.</remarks>
    public static Rule OvervoltageAtNoLoad { get; } = new SimpleRule("overvoltage-at-no-load",
        "too much voltage at power-up", Severity.Caution,
        "Before a device draws current, it gets more voltage than it accepts: for a moment at power-up, or while it is off. " +
        "The cable drops the excess while the device runs.",
        "Set the supply lower and use a larger conductor. Otherwise ask the maker whether the device withstands this voltage while off.",
        Sources.Kirchhoff, yieldsTo: ["supply-voltage-too-high", "overvoltage-at-light-load"],
        check: (rule, evidence) =>
            from device in evidence.Assessment.Devices
            where device.BeforeItDraws.IsViolated
            select rule.Find(Subject.Of(device.Device),
                $"It gets up to {Digits.Of(BeforeItDraws(device), device.Worst.Accepted!.HighestVolts)} V " +
                "at power-up, before it draws current; " +
                $"it accepts at most {Digits.Of(device.Worst.Accepted.HighestVolts, BeforeItDraws(device), "0.##")} V.",
                device.BeforeItDraws.Value, device.BeforeItDraws.Limit, severity: RemedyOf(device) is null ? null : Severity.Danger,
                remedy: RemedyOf(device)));

    private static double BeforeItDraws(DeviceAssessment device) => ((ElectricPotential)device.BeforeItDraws.Value!).Volts;

    // Nothing of an unregulated supply can be set, and its excess is volts, not the last percent.
    private static string? RemedyOf(DeviceAssessment device) => device.Box.Supply.Output is DcOutput { OpenVoltage: not null }
        ? "Do not energize. Use a regulated supply, or a device that accepts " +
            Invariant($"{device.Box.HighestVolts:0.#} V, the highest no-load voltage of this supply.")
        : null;

    private static string? RemedyOnTransformer(DeviceAssessment device) => device.Box.Supply.Output is AcOutput
        ? "Do not energize. Use a transformer of a lower voltage, or a device that accepts the voltage of this one without load."
        : null;

    // What is left once it has the power that it needs: negative. A run that carries the other devices at no power has nothing for it.
    private static double SpareWatts(DeviceInCondition device) =>
        (double)((device.MaximumPower ?? Power.Zero) - device.Load.PowerComponent).Watts;

    // Its capacitor does not hold its load from crest to crest: no cable is the cause.
    private static bool IsDrained(DeviceInCondition device) => device.Ac is { HasSteadyState: false, Stage.IsRectifier: true };

    private static string WithoutOperatingPoint(DeviceInCondition device) =>
        Invariant($"It needs {Needed(device.Load)} in \"{device.Condition}\"; ") + (IsDrained(device)
        ? "the capacitor of its AC input runs empty between two crests."
        : device.MaximumPower is Power maximum
        ? Invariant($"its cable can deliver at most {(double)maximum.Watts:0.##} W.")
        : "its cable cannot deliver that together with the other devices.");

    // What a converter draws is calculated, and has more digits than anybody needs.
    private static string Needed(Load load) =>
        load.Amperes == 0 && load.Siemens == 0 && load.Watts > 0 ? Invariant($"{load.Watts:0.##} W") : load.ToString();

    // A supply of another voltage class: no set point and no conductor gives the device what it needs.
    private static bool IsOnWrongSupply(DeviceAssessment device) => device.Worst.Accepted is VoltageRange accepted
        && Limits.IsBelow(Math.Max((device.Box.Supply.Output as DcOutput)?.Trim?.HighestVolts ?? 0, device.Box.HighestVolts),
            accepted.LowestVolts);

    private static string OfWrongSupply(DeviceAssessment device) => IsOnWrongSupply(device)
        ? Invariant($" {device.Box} gives {device.Box.Supply.Output.NominalVolts:0.##} V: it is the wrong supply for this device.")
        : string.Empty;

    private static string? RemedyOfWrongSupply(DeviceAssessment device) =>
        IsOnWrongSupply(device) ? "Connect the device to a supply of its rated voltage." : null;

    // The last sentence of such a rule is about a supply that can be trimmed. How far is said where it can, and nothing where it cannot: a
    // supply at the top of its range, one with a battery, whose voltage the battery sets, and one without a range.
    private static string? RemedyOfTrim(Rule rule, DeviceAssessment device)
    {
        const string trimmed = "If the supply can be trimmed, set it higher, within the range of every device.";
        if (!rule.Remedy.EndsWith(trimmed, StringComparison.Ordinal)) return null;
        bool hasRoom = device.Box.Battery is null && device.Box.Supply.Output is DcOutput { Trim: VoltageRange trim } output
            && Limits.IsBelow(output.SetVolts, trim.HighestVolts);
        string otherwise = rule.Remedy.Substring(0, rule.Remedy.Length - trimmed.Length);
        return hasRoom
            ? Invariant($"{otherwise}Or set the supply higher, up to {HighestTrim(device):0.##} V, within the range of every device.")
            : otherwise.TrimEnd();
    }

    private static double HighestTrim(DeviceAssessment device) => ((DcOutput)device.Box.Supply.Output).Trim!.HighestVolts;

    // A rectifier charges to the crest: the sine of that crest counts against the range.
    private static string Gets(DeviceInCondition device, double limit) =>
        (device.Ac?.Stage?.IsRectifier == true ? "Its crest is that of " : device.RippleSwing > 0 ? "In the valley of the ripple it gets "
            : "It gets ") + Digits.Of(device.ValleyVolts, limit);

    // The condition with the lowest voltage among those in which the device is up, or null.
    private static DeviceInCondition? LowestUp(DeviceAssessment device)
    {
        DeviceInCondition? lowest = null;
        for (int c = 0; c < device.InConditions.Count; c++)
        {
            DeviceInCondition candidate = device.InConditions[c];
            if (candidate.State == DeviceState.Up && (lowest is null || candidate.IsWorseThan(lowest))) lowest = candidate;
        }

        return lowest;
    }
}
