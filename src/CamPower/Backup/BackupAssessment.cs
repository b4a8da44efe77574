using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Conductors;
using CamPower.Protection;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Backup;

/// <summary>A box with a battery: how long it runs in each condition, its fuse, and what charging asks of the supply.</summary>
/// <remarks>Immutable. Only conditions that last and in which a device draws count, without a start of everything: the devices run when the
/// mains fails. Each is taken to last for the whole outage.</remarks>
public sealed class BackupAssessment
{
    private const int DiscriminationSteps = 32;

    private const string FollowingNotStated = "whether the charger follows the temperature of the battery";

    private static readonly double ReferenceCelsius = Celsius.Of(Battery.Reference);

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

    /// <summary>The box as it was solved on its supply.</summary>
    internal BoxAssessment OnSupply => _box;

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
    public Judgment FuseVoltage => Box.BatteryProtection?.JudgeVoltage(Box.HighestVolts, isDirect: true) ?? default;

    /// <summary>The largest current of a short behind the fuse at the terminal against its breaking capacity: of the new battery, full and
    /// warm, at its highest charging voltage, with what the supply adds.</summary>
    /// <remarks>The margin is a fifth: the resistance of a data sheet has no tolerance, and is mostly measured at 1 kHz (common practice,
    /// no source). The breaking capacity must be that for direct current. A judgment of nothing of an electronic limit.</remarks>
    public Judgment FuseBreaking
    {
        get
        {
            if (Fuse is not ProtectiveDevice fuse || !double.IsInfinity(fuse.MostAmperes)) return default;
            if (fuse.BreakingCapacity is not ElectricCurrent capacity) return Judgment.Unknown($"breaking capacity of {fuse.Name}");
            double added = Box.Supply.Output.Overload?.Highest.LimitAmperes ?? double.PositiveInfinity,
                amperes = LargestShortAmperes + (double.IsInfinity(added) ? 0 : added);
            return Judgment.AtMost(
                amperes, capacity.Amperes, capacity.Amperes / BatteryConstants.BreakingMargin.Value, a => ElectricCurrent.FromAmperes(a));
        }
    }

    /// <summary>The largest current that the fuse at the terminal carries against what it carries continuously in the air of the box: what
    /// the battery gives as its voltage falls, or what it is charged with.</summary>
    /// <remarks>The margin is 75 % of a fuse whose standard does not have it carry its rating, and what it may carry less in warm air where
    /// its re-rating is not stated.</remarks>
    public Judgment FuseLoad
    {
        get
        {
            IEnumerable<Judgment> loads = InConditions.Select(c => CarriedAt(c.New.MostAmperes, AirIn(c.Condition)));
            if (ChargingCurrent is ElectricCurrent charging) loads = loads.Append(CarriedAt(charging.Amperes, HottestAir));
            return loads.OrderByDescending(ShareOf).FirstOrDefault();
        }
    }

    /// <summary>What all devices of the box draw as they start at once against what the fuse at the terminal withstands, as a share; a
    /// judgment of nothing where none states its inrush.</summary>
    public Judgment FuseStart => Fuse is ProtectiveDevice fuse && fuse.MostFactorIn(HottestAir) is double factor
        && Inrush.AtOnce(_box.Outputs.SelectMany(o => o.Devices).Select(d => d.Model.Inrush).OfType<Inrush>()) is Inrush start
            ? fuse.JudgeInrush(start.PeakAmperes, start.AmpereSquaredSeconds, factor)
            : default;

    /// <summary>The highest voltage of the charger against the highest at which the battery may be charged: in the coldest condition for a
    /// charger that follows the temperature of the battery, in the hottest for one that does not. A judgment of nothing where that voltage
    /// is not stated.</summary>
    /// <remarks>Where it is not stated whether the charger follows the temperature, it is violated only where no condition allows the
    /// voltage, and unknown where the hottest does not.</remarks>
    public Judgment ChargingVoltage
    {
        get
        {
            Judgment hottest = ChargedAt(HottestAir), coldest = ChargedAt(ColdestCharging.At.BoxCelsius);
            return Charger.FollowsTemperature switch
            {
                true => coldest,
                false => hottest,
                null => hottest.IsViolated && !coldest.IsViolated ? Judgment.Unknown(FollowingNotStated) : coldest,
            };
        }
    }

    /// <summary>The charging current against the largest with which the battery may be charged; a judgment of nothing where either is not
    /// stated.</summary>
    public Judgment OfChargingCurrent => ChargingCurrent is ElectricCurrent charging && Battery.MostChargingAmperes is double most
        ? Judgment.AtMost(charging.Amperes, most, most, a => ElectricCurrent.FromAmperes(a))
        : default;

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

    /// <summary>The hottest air at the battery against the highest temperature at which it may be charged; a judgment of nothing where that
    /// is not stated.</summary>
    public Judgment HottestCharging
    {
        get
        {
            double most = Battery.Chemistry.HottestChargingCelsius;
            return double.IsInfinity(most)
                ? default
                : Judgment.AtMost(HottestAir, most, most, t => Temperature.FromDegreesCelsius(t));
        }
    }

    /// <summary>The voltage at which the battery is cut off against the lowest at which its chemistry ends a discharge.</summary>
    internal Judgment CutOff
    {
        get
        {
            double lowest = Battery.Cells * Battery.Chemistry.CutOffVolts;
            return Judgment.AtLeast(Battery.CutOffVolts, lowest, lowest, v => ElectricPotential.FromVolts(v));
        }
    }

    /// <summary>The I²t that the protective device of an output lets through in a short against what may melt the fuse at the terminal, at
    /// the current at which they are nearest; a judgment of nothing where the melting I²t of that fuse is not stated.</summary>
    /// <remarks>Two fuses discriminate where the let-through of the smaller one is below the melting I²t of the larger (IEC 60269-1). From
    /// the least to the largest current of a short at the output, with the device as slow as its coldest air makes it and the fuse as quick
    /// as in its hottest.</remarks>
    internal Judgment MeltsBefore(OutputFaults output)
    {
        if (Fuse is not Fuse { MinimumMeltingIntegral: not null } fuse || output.Output.Protection is not ProtectiveDevice device
            || output.AtTerminals.Largest is not ElectricCurrent largest)
        {
            return default;
        }

        double least = output.Shorts.Min(s => s.Smallest.Amperes), most = largest.Amperes, lets = 0, melts = 1;
        double[] quick = fuse.FactorsIn(HottestAir), slow = device.FactorsIn(_box.InConditions.Min(c => c.SupplyCelsius));
        if (quick.Length == 0 || slow.Length == 0 || !(least > 0)) return default;
        foreach (double amperes in Enumerable.Range(0, DiscriminationSteps + 1)
            .Select(i => least * Math.Pow(most / least, (double)i / DiscriminationSteps)).Concat(slow.SelectMany(device.StepsAt))
            .Where(a => a >= least && a <= most))
        {
            // Beyond that heat leaves an element, and I²t says nothing.
            double latest = Math.Min(
                    ConductorConstants.LongestAdiabatic.Value, slow.Max(factor => device.OpeningAt(amperes, factor).LatestSeconds)),
                earliest = quick.Min(factor => fuse.OpeningAt(amperes, factor).EarliestSeconds);
            if (latest / earliest > lets / melts) (lets, melts) = (latest * amperes * amperes, earliest * amperes * amperes);
        }

        return Judgment.AtMost(lets, melts, melts, i => Scalar.FromAmount(i));
    }

    /// <summary>The set point of the supply, with its tolerance, against the float voltage of the battery at 25 °C, within 2 %: the nearer
    /// limit.</summary>
    public Judgment FloatVoltage => FloatAt(ReferenceCelsius, bands: 1);

    /// <summary>The same in a condition, of a charger that does not follow the temperature of the battery: policy within 2 % of the float
    /// voltage there, and violated beyond 4 %. Unknown where a charger that does not follow it would be off by more, and it is not stated
    /// whether it does.</summary>
    internal Judgment FloatIn(BoxInCondition condition)
    {
        if (Charger.FollowsTemperature == true) return default;
        Judgment judged = FloatAt(BatteryCelsius(condition), bands: 2);
        return Charger.FollowsTemperature is null && (judged.IsViolated || judged.IsThin)
            ? Judgment.Unknown(FollowingNotStated)
            : judged;
    }

    /// <summary>The condition in which a charger that does not follow the temperature of the battery is farthest from its float
    /// voltage.</summary>
    internal BoxInCondition FloatWorst =>
        _box.InConditions.OrderByDescending(c => Math.Abs(BatteryCelsius(c) - ReferenceCelsius)).First();

    /// <summary>How warm the battery is, careful at both ends: as warm as its supply makes the air inside, or as cold as around the box.
    /// [°C]</summary>
    internal static double BatteryCelsius(BoxInCondition condition) =>
        condition.SupplyCelsius > ReferenceCelsius ? condition.SupplyCelsius : condition.Condition.At.BoxCelsius;

    private Judgment FloatAt(double celsius, int bands)
    {
        SupplyOutput output = Box.Supply.Output;
        double right = Battery.FloatAt(Temperature.FromDegreesCelsius(celsius)).Volts, tolerance = output.Tolerance.DecimalFractions;
        double band = BatteryConstants.FloatBand.Value / 100, most = bands * band;
        return output.SetVolts < right
            ? Judgment.AtLeast(
                output.SetVolts * (1 - tolerance), right * (1 - most), right * (1 - band), v => ElectricPotential.FromVolts(v))
            : Judgment.AtMost(
                output.SetVolts * (1 + tolerance), right * (1 + most), right * (1 + band), v => ElectricPotential.FromVolts(v));
    }

    private Judgment ChargedAt(double celsius) => Battery.Chemistry.HighestChargingVolts(celsius) is double cell
        ? Judgment.AtMost(Charger.HighestVolts, Battery.Cells * cell, Battery.Cells * cell, v => ElectricPotential.FromVolts(v))
        : default;

    /// <summary>Load and charging current together against the derated rating of the supply at its highest voltage, in the worst condition
    /// that lasts.</summary>
    public Judgment WhileCharging
    {
        get
        {
            if (ChargingCurrent is not ElectricCurrent charging) return Judgment.Unknown("charging current of the supply");
            BoxInCondition? worst = Lasting.OrderByDescending(c => (c.Amperes + charging.Amperes) / RatedIn(c)).FirstOrDefault();
            return worst is null
                ? default
                : Judgment.AtMost(worst.Amperes + charging.Amperes, RatedIn(worst), RatedIn(worst), a => ElectricCurrent.FromAmperes(a));
        }
    }

    /// <summary>What is left of the charging current beside the load, in the worst condition that lasts, at most 0 where nothing is; null
    /// where the charging current is not stated. [A]</summary>
    public ElectricCurrent? ChargingCurrentLeft => ChargingCurrent is ElectricCurrent charging
        ? ElectricCurrent.FromAmperes(
            Lasting.Select(c => Math.Min(charging.Amperes, RatedIn(c) - c.Amperes)).Append(charging.Amperes).Min())
        : null;

    /// <summary>The shortest time from empty to full with what is left of the charging current; null where that is not stated, or nothing
    /// is left. [h]</summary>
    public Duration? Recharge => ChargingCurrentLeft is ElectricCurrent left && left.Amperes > 0
        ? Battery.RechargeTime(Ratio.FromPercent(100), left)
        : null;

    /// <summary>Of a short at the battery, new, full and warm, at the highest charging voltage. [A]</summary>
    internal double LargestShortAmperes => Box.HighestVolts / Battery.LeastOhms(_box.InConditions.Max(c => c.Condition.At.BoxCelsius));

    /// <summary>The condition in which most flows through the fuse at the terminal, or null where that is what charges it.</summary>
    internal BackupInCondition? FuseWorst => InConditions.OrderByDescending(c => ShareOf(CarriedAt(c.New.MostAmperes, AirIn(c.Condition))))
        .FirstOrDefault(c => CarriedAt(c.New.MostAmperes, AirIn(c.Condition)).Equals(FuseLoad));

    /// <summary>Each output in the condition in which it carries most of what it may.</summary>
    internal IEnumerable<OutputOnBattery> OutputsAtWorst => InConditions.SelectMany(c => c.New.Outputs).GroupBy(o => o.Output.Number)
        .Select(alike => alike.OrderByDescending(o => o.ShareOfMost).First());

    /// <summary>Whether the supply is off, or off again and again, while more is drawn than its limit.</summary>
    internal bool IsOffWhileOverloaded =>
        Box.Supply.Output.Overload is OverloadBehavior overload && (overload.ShutsDown || overload.Pulses);

    private DcOutput Charger => (DcOutput)Box.Supply.Output;

    private ElectricCurrent? ChargingCurrent => Charger.ChargingCurrent;

    private ProtectiveDevice? Fuse => Box.BatteryProtection is { IsNone: false } fuse ? fuse : null;

    private IEnumerable<BoxInCondition> Lasting => _box.InConditions.Where(c => c.Condition.IsContinuous);

    private double HottestAir => _box.InConditions.Max(c => c.SupplyCelsius);

    private double RatedIn(BoxInCondition condition) => condition.DeratedAmperes * Charger.ShareWhileCharging;

    // Before the mains fails the box is as warm as its supply makes it.
    private double AirIn(Condition condition) => _box.InConditions.First(c => c.Condition == condition).SupplyCelsius;

    private Judgment CarriedAt(double amperes, double airCelsius)
    {
        if (Fuse is not ProtectiveDevice fuse) return default;
        if (fuse.MostFactorIn(airCelsius) is not double most) return Judgment.Unknown($"what {fuse} carries at the temperature of the box");
        double share = fuse is Fuse { Characteristic.CarriesItsRating: false } ? ProtectionConstants.FuseContinuousShare.Value / 100 : 1;
        double carried = fuse.CarriedAmperes(most), surely = fuse.CarriedAmperes(fuse.FactorsIn(airCelsius).Append(most).Min());
        return double.IsInfinity(carried)
            ? default
            : Judgment.AtMost(amperes, carried, surely * share, a => ElectricCurrent.FromAmperes(a));
    }

    private static double ShareOf(Judgment judged) => judged.Value is ElectricCurrent amperes && judged.PolicyLimit is ElectricCurrent limit
        ? amperes.Amperes / limit.Amperes
        : double.NegativeInfinity;

    /// <summary>Battery and shortest run in words, in the invariant culture; never throws.</summary>
    public override string ToString() => Worst is null
        ? $"{Battery.Name}: no condition lasts"
        : FormattableString.Invariant($"{Battery.Name}, shortest in \"{Worst.Condition}\": {FirstOff(Worst.New)} ") +
            FormattableString.Invariant($"({Worst.Old.ToFirstDropOut.Hours:0.0} h with an old battery at 80 %)") +
            (Worst.New.DropOuts.Count > 0 ? $", all off {Worst.New.LengthInWords}" : string.Empty);

    private static string FirstOff(BatteryRun run) => FormattableString.Invariant(
        $"{(run.DropOuts.Count > 0 ? run.DropOuts[0].Device.Name : "every device")} off after {run.ToFirstDropOut.Hours:0.0} h");
}
