using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Backup;

/// <summary>A box with a battery: how long it runs in each condition, its fuse, and what charging asks of the supply.</summary>
/// <remarks>Immutable. Only conditions that last and in which a device draws count, without a start of everything: the devices run when the
/// mains fails. Each is taken to last for the whole outage.</remarks>
public sealed class BackupAssessment
{
    private readonly BoxAssessment _box;

    internal BackupAssessment(Site site, BoxAssessment box)
    {
        _box = box;
        Condition[] lasting = [.. site.Conditions.Where(c => c.IsContinuous && !c.On.HasFlag(LoadComponents.StartUp)
            && new BatteryLoad(site, Box, c).IsAnyOn)];
        Condition[] covered = [.. lasting.Where(c => BackupStudy.IsCovered(Battery, c))];
        WithoutCurve = Array.AsReadOnly([.. lasting.Except(covered)]);
        InConditions = Array.AsReadOnly([.. covered.Select(c => new BackupInCondition(site, Box, c))]);
        Worst = InConditions.OrderBy(c => c.New.ToFirstDropOut.Seconds).FirstOrDefault();
        ColdestCharging = site.Conditions.OrderBy(c => c.At.BoxCelsius).First();
    }

    /// <summary>The box.</summary>
    public DistributionBox Box => _box.Box;

    /// <summary>Its battery.</summary>
    public Battery Battery => Box.Battery!;

    /// <summary>The box on its battery in each condition that lasts, in the site's order.</summary>
    public IReadOnlyList<BackupInCondition> InConditions { get; }

    /// <summary>Conditions at whose temperature the battery states no capacity or resistance.</summary>
    public IReadOnlyList<Condition> WithoutCurve { get; }

    /// <summary>The condition in which the first device is off soonest; null where none lasts.</summary>
    public BackupInCondition? Worst { get; }

    /// <summary>The condition with the coldest box.</summary>
    public Condition ColdestCharging { get; }

    /// <summary>The highest voltage of the battery and its charger against the rating of the fuse at the terminal.</summary>
    public Judgment FuseVoltage =>
        Box.BatteryProtection?.JudgeVoltage(Box.FaultSource.HighestVolts, isDirect: true) ?? default;

    /// <summary>The short-circuit current of the battery against the breaking capacity of the fuse at the terminal.</summary>
    public Judgment FuseBreaking
    {
        get
        {
            if (Box.BatteryProtection is not ProtectiveDevice device || device == ProtectiveDevice.None) return default;
            if (device.BreakingCapacity is not ElectricCurrent capacity) return Judgment.Unknown($"breaking capacity of {device.Name}");
            double amperes = Math.Min(Battery.ShortCircuitCurrent.Amperes, device.MostAmperes);
            return Judgment.AtMost(amperes, capacity.Amperes, capacity.Amperes, a => ElectricCurrent.FromAmperes(a));
        }
    }

    /// <summary>The temperature around the box against the lowest at which the battery may be charged.</summary>
    public Judgment ChargingTemperature
    {
        get
        {
            double coldest = Battery.Chemistry.ColdestChargingCelsius;
            return double.IsInfinity(coldest)
                ? default
                : Judgment.AtLeast(ColdestCharging.At.BoxCelsius, coldest, coldest, t => Temperature.FromDegreesCelsius(t));
        }
    }

    /// <summary>The set point of the supply against the float voltage of the battery at 25 °C, within 2 %: the nearer limit.</summary>
    public Judgment FloatVoltage
    {
        get
        {
            double set = Box.Supply.Output.SetVolts, right = Battery.FloatAt(Battery.Reference).Volts;
            double band = BatteryConstants.FloatBand.Value / 100, low = right * (1 - band), high = right * (1 + band);
            return set < right
                ? Judgment.AtLeast(set, low, low, v => ElectricPotential.FromVolts(v))
                : Judgment.AtMost(set, high, high, v => ElectricPotential.FromVolts(v));
        }
    }

    /// <summary>Load and charging current together against the derated rating of the supply, in the worst condition that lasts.</summary>
    public Judgment WhileCharging
    {
        get
        {
            if (ChargingCurrent is not ElectricCurrent charging) return Judgment.Unknown("charging current of the supply");
            BoxInCondition? worst = _box.InConditions.Where(c => c.Condition.IsContinuous)
                .OrderByDescending(c => (c.Amperes + charging.Amperes) / c.DeratedAmperes).FirstOrDefault();
            return worst is null
                ? default
                : Judgment.AtMost(worst.Amperes + charging.Amperes, worst.DeratedAmperes, worst.DeratedAmperes,
                    a => ElectricCurrent.FromAmperes(a));
        }
    }

    /// <summary>The shortest time from empty to full at the charging current; null where that is not stated. [h]</summary>
    public Duration? Recharge => ChargingCurrent is ElectricCurrent charging
        ? Battery.RechargeTime(Ratio.FromPercent(100), charging)
        : null;

    /// <summary>Whether the supply is off, or off again and again, while more is drawn than its limit.</summary>
    internal bool IsOffWhileOverloaded =>
        Box.Supply.Output.Overload is OverloadBehavior overload && (overload.ShutsDown || overload.Pulses);

    private ElectricCurrent? ChargingCurrent => (Box.Supply.Output as DcOutput)?.ChargingCurrent;

    /// <summary>Battery and shortest run in words, in the invariant culture; never throws.</summary>
    public override string ToString() => Worst is null
        ? $"{Battery.Name}: no condition lasts"
        : FormattableString.Invariant($"{Battery.Name}, shortest in \"{Worst.Condition}\": {FirstOff(Worst.New)} ") +
            FormattableString.Invariant($"({Worst.Old.ToFirstDropOut.Hours:0.0} h with 80 % of its capacity), ") +
            FormattableString.Invariant($"all off after {Worst.New.Length.Hours:0.0} h");

    private static string FirstOff(BatteryRun run) => FormattableString.Invariant(
        $"{(run.DropOuts.Count > 0 ? run.DropOuts[0].Device.Name : "every device")} off after {run.ToFirstDropOut.Hours:0.0} h");
}
