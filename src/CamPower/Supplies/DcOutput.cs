using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>The output of a supply of direct current.</summary>
/// <remarks>Immutable. See <see cref="SupplyOutput"/> for what its tolerance covers. Set above its nominal voltage it gives less than its
/// rated current, for its power is rated too: <see cref="Sources.RatedPower"/>.</remarks>
/// <example>
/// <code>
/// var output = new DcOutput(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(20), tolerance: Ratio.FromPercent(2),
///     trim: new VoltageRange(ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(14)),
///     setPoint: ElectricPotential.FromVolts(12.6),
///     sourceResistance: ElectricResistance.FromMilliohms(20),
///     overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(24)));
/// </code>
/// </example>
public sealed class DcOutput : SupplyOutput
{
    // At less than a thousandth the two points are one; no transformer gives ten times its rated voltage without a load.
    private const double LeastOpen = 1.001, MostOpen = 10;
    private const double LeastOhms = 1e-6, MostOhms = 1e8;
    private readonly ElectricPotential? _statedSetPoint;
    private readonly double _ratedWatts;

    /// <summary>Describes an output.</summary>
    /// <param name="nominal">Nominal output voltage, from 1 nV to 1 MV. [V]</param>
    /// <param name="ratedCurrent">Rated output current in a cool room, above 0. [A]</param>
    /// <param name="tolerance">How far the output may be off its set point, line and load regulation included, from 0 to 0.5. [1]</param>
    /// <param name="trim">How far the output can be adjusted; null where it cannot.</param>
    /// <param name="setPoint">The voltage that it is adjusted to, inside <paramref name="trim"/> and, as the nominal voltage, from 1 nV to
    /// 1 MV; null for the nominal voltage.</param>
    /// <param name="ripple">RMS ripple at mains frequency or its double, over the output voltage, from 0 to 1; null where it is not
    /// stated. [1]</param>
    /// <param name="sourceResistance">Resistance behind the terminals in a fault, from 1 µΩ to 100 MΩ; null where the data sheet does not
    /// say. [Ω]</param>
    /// <param name="overload">What it does in overload; null where the data sheet does not say.</param>
    /// <param name="capacitance">Capacitance across the terminals, at least 0; null where the data sheet does not say. [F]</param>
    /// <param name="ratedPower">Rated output power, above 0; null where the data sheet does not say: nominal voltage times rated current
    /// then. [W]</param>
    /// <param name="rise">How long it takes from nothing to its voltage when it is switched on, at least 0; null where the data sheet does
    /// not say. [s]</param>
    /// <exception cref="ArgumentException">A set point is given without a trim range.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public DcOutput(ElectricPotential nominal, ElectricCurrent ratedCurrent, Ratio tolerance, VoltageRange? trim = null,
        ElectricPotential? setPoint = null, Ratio? ripple = null, ElectricResistance? sourceResistance = null,
        OverloadBehavior? overload = null, ElectricCapacitance? capacitance = null, Power? ratedPower = null, Duration? rise = null)
        : base(nominal, ratedCurrent, tolerance, SetVoltsOf(nominal, trim, setPoint), sourceResistance, overload, rise)
    {
        if (ripple is Ratio share) Require.Within(share.DecimalFractions, 0, 1, nameof(ripple), "");
        if (capacitance is ElectricCapacitance size) Require.NotNegative(size.Farads, nameof(capacitance), "F");
        double watts = ratedPower is Power power
            ? Require.Positive((double)power.Watts, nameof(ratedPower), "W")
            : NominalVolts * RatedAmperes;
        SetAmperes = Math.Min(RatedAmperes, watts / SetVolts);
        _ratedWatts = watts;
        RatedPower = ratedPower;
        Trim = trim;
        SetPoint = setPoint ?? nominal;
        _statedSetPoint = setPoint;
        Ripple = ripple;
        Capacitance = capacitance;
    }

    private DcOutput(DcOutput output, ElectricPotential? setPoint, ElectricResistance? sourceResistance, OverloadBehavior? overload)
        : this(output.Nominal, output.RatedCurrent, output.Tolerance, output.Trim, setPoint, output.Ripple, sourceResistance, overload,
            output.Capacitance, output.RatedPower, output.Rise)
    {
        OpenVoltage = output.OpenVoltage;
        Unregulated = output.Unregulated;
        ChargingRise = output.ChargingRise;
        ChargingCurrent = output.ChargingCurrent;
        FollowsTemperature = output.FollowsTemperature;
    }

    /// <inheritdoc/>
    public override CurrentKind Kind => CurrentKind.Dc;

    /// <summary>Range in which the output can be adjusted, or null.</summary>
    public VoltageRange? Trim { get; }

    /// <summary>The voltage that it is set to. [V]</summary>
    public ElectricPotential SetPoint { get; }

    /// <summary>RMS ripple at mains frequency or its double, over the output voltage, or null where it is not stated. [1]</summary>
    /// <remarks>Above 1 % devices are judged on its crest and its valley, √3 times as far from the mean: a sawtooth.</remarks>
    public Ratio? Ripple { get; }

    /// <summary>How far the crest and the valley of a regulated output are from its mean, over that; the curve of an unregulated one has
    /// its own in it. [1]</summary>
    internal double RippleSwing => Unregulated is null && Ripple?.Percent is double percent
        && percent > SupplyConstants.RippleInTolerance.Value
        ? Math.Sqrt(3) * percent / 100
        : 0;

    /// <summary>Capacitance across the terminals; null where the data sheet does not say. [F]</summary>
    public ElectricCapacitance? Capacitance { get; }

    /// <summary>Rated output power as the data sheet states it; null where it does not. [W]</summary>
    /// <remarks>At its set point the output delivers at most this power; where it is null, at most nominal voltage times rated
    /// current.</remarks>
    public Power? RatedPower { get; }

    /// <summary>How far it raises its voltage above the set point while it charges a battery; null where it charges none. [V]</summary>
    public ElectricPotential? ChargingRise { get; private init; }

    /// <summary>The most that it charges a battery with; null where it charges none. [A]</summary>
    public ElectricCurrent? ChargingCurrent { get; private init; }

    /// <summary>Whether it lowers its voltage as its battery warms; null where that is not stated, or it charges none.</summary>
    public bool? FollowsTemperature { get; private init; }

    internal override double SetAmperes { get; }

    /// <summary>The rated current at its risen voltage over that at what it is set to: less than 1 where its power is the limit.
    /// [1]</summary>
    internal double ShareWhileCharging =>
        Math.Min(RatedAmperes, _ratedWatts / (SetVolts + (ChargingRise?.Volts ?? 0))) / SetAmperes;

    internal override double GreatestSourceOhms => BatteryOhmsAtMost ?? SourceOhms;

    internal override double LowestVolts =>
        Math.Min(Unregulated?.LowestAt(RatedAmperes) ?? base.LowestVolts, BatteryAtLeast) - DiodeVolts;

    internal override double HighestVolts => Math.Max(OwnHighestVolts, Math.Max(BatteryAtMost, BesideAtMost));

    /// <summary>The highest that it gives itself, whatever else is on the same terminals. [V]</summary>
    internal double OwnHighestVolts =>
        (Unregulated?.HighestAt(0) ?? base.HighestVolts) + ((ChargingRise?.Volts ?? 0) * (1 + Tolerance.DecimalFractions));

    /// <summary>The most that is lost in a diode behind it, counted in <see cref="LowestVolts"/>; 0 without one. [V]</summary>
    internal double DiodeVolts { get; private init; }

    internal override double HighestVoltsAt(double amperes) => Unregulated?.HighestAt(amperes) ?? HighestVolts;

    /// <summary>The voltage without any load, at the nominal mains voltage; null where the output is regulated. [V]</summary>
    public ElectricPotential? OpenVoltage { get; private init; }

    /// <summary>How its voltage falls with its current; null where it is regulated.</summary>
    internal UnregulatedCurve? Unregulated { get; private init; }

    /// <summary>Whether it feeds a fault with a battery beside it.</summary>
    internal bool IsBesideBattery => BatteryOhmsAtMost is not null;

    private double BatteryAtLeast { get; init; } = double.PositiveInfinity;

    private double BatteryAtMost { get; init; }

    private double BesideAtMost { get; init; }

    private double? BatteryOhmsAtMost { get; init; }

    /// <summary>The output of an unregulated supply: a transformer, a rectifier and a capacitor, by two points of its data sheet.</summary>
    /// <param name="open">The voltage without any load, at the nominal mains voltage, at least 0.1 % above
    /// <paramref name="nominal"/> and at most 10 times it. [V]</param>
    /// <param name="nominal">The voltage at the rated current, from 1 nV and below <paramref name="open"/>. [V]</param>
    /// <param name="ratedCurrent">Rated output current, above 0. [A]</param>
    /// <param name="tolerance">How far the mains, and the voltage with it, may be off, from 0 to 0.5. [1]</param>
    /// <param name="ripple">RMS ripple at the rated current, over the output voltage, from 0 to 0.5; null where it is not stated: it
    /// counts as none for voltages then. [1]</param>
    /// <param name="sourceResistance">Resistance behind the terminals in a fault, from 1 µΩ to 100 MΩ; null where the data sheet does not
    /// say. [Ω]</param>
    /// <param name="overload">What it does in overload; null where the data sheet does not say.</param>
    /// <param name="capacitance">Capacitance across the terminals, at least 0; null where the data sheet does not say. [F]</param>
    /// <param name="rise">How long it takes from nothing to its voltage when it is switched on, at least 0; null where the data sheet does
    /// not say. [s]</param>
    /// <remarks>Its voltage follows the load of the whole box. Between the two points the line through them is the high side, a rectifier
    /// with an endless capacitor the low side.
    /// <see cref="LowestVoltageAt"/> and <see cref="HighestVoltageAt"/> give them.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <example>
    /// <code>
    /// DcOutput plug = DcOutput.OfUnregulated(open: ElectricPotential.FromVolts(16), nominal: ElectricPotential.FromVolts(12),
    ///     ratedCurrent: ElectricCurrent.FromAmperes(1), tolerance: Ratio.FromPercent(10));
    /// </code>
    /// </example>
    public static DcOutput OfUnregulated(ElectricPotential open, ElectricPotential nominal, ElectricCurrent ratedCurrent, Ratio tolerance,
        Ratio? ripple = null, ElectricResistance? sourceResistance = null, OverloadBehavior? overload = null,
        ElectricCapacitance? capacitance = null, Duration? rise = null)
    {
        double ratedVolts = Require.SourceVolts(nominal.Volts, nameof(nominal));
        double openVolts = Require.Positive(open.Volts, nameof(open), "V");
        if (openVolts < ratedVolts * LeastOpen || openVolts > ratedVolts * MostOpen)
        {
            throw Require.OutOfRange(openVolts, nameof(open), "V", FormattableString.Invariant(
                $"at least 0.1 % above the rated {ratedVolts} V, at most {MostOpen * ratedVolts}"));
        }

        double share = ripple is Ratio stated ? Require.Within(stated.DecimalFractions, 0, 0.5, nameof(ripple), "") : 0;
        return new DcOutput(nominal, ratedCurrent, tolerance, ripple: ripple, sourceResistance: sourceResistance, overload: overload,
            capacitance: capacitance, rise: rise)
        {
            OpenVoltage = open,
            Unregulated = new UnregulatedCurve(openVolts, ratedVolts, ratedCurrent.Amperes, tolerance.DecimalFractions, share),
        };
    }

    /// <summary>The lowest voltage that it may have at a current, tolerance and ripple included. [V]</summary>
    /// <param name="current">The current of all its loads together, from 0 to the rated current. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="current"/> is outside its range.</exception>
    /// <remarks>The same at every current where it is regulated.</remarks>
    public ElectricPotential LowestVoltageAt(ElectricCurrent current)
    {
        double amperes = Rated(current);
        return ElectricPotential.FromVolts(Unregulated?.LowestAt(amperes) ?? LowestVolts);
    }

    /// <summary>The highest voltage that it may have at a current, tolerance and ripple included. [V]</summary>
    /// <param name="current">The current of all its loads together, from 0 to the rated current. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="current"/> is outside its range.</exception>
    /// <remarks>The same at every current where it is regulated.</remarks>
    public ElectricPotential HighestVoltageAt(ElectricCurrent current) => ElectricPotential.FromVolts(HighestVoltsAt(Rated(current)));

    /// <summary>How the voltages of an unregulated output at a current are worked out.</summary>
    /// <param name="current">The current of all its loads together, from 0 to the rated current. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="current"/> is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The output is regulated.</exception>
    public Derivation ExplainVoltageAt(ElectricCurrent current)
    {
        double amperes = Rated(current);
        return Unregulated is UnregulatedCurve curve
            ? new Derivation(FormattableString.Invariant($"unregulated output at {amperes:G6} A"), curve.Steps(amperes),
                FormattableString.Invariant($"{curve.LowestAt(amperes):0.00} V to {curve.HighestAt(amperes):0.00} V"))
            : throw new InvalidOperationException("There is nothing to explain: the output is regulated.");
    }

    /// <summary>The same output, set to another voltage.</summary>
    /// <param name="setPoint">The voltage that it is adjusted to, inside <see cref="Trim"/>. [V]</param>
    /// <exception cref="ArgumentException">It has no trim range.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setPoint"/> is outside the trim range.</exception>
    public DcOutput WithSetPoint(ElectricPotential setPoint) => new(this, setPoint, SourceResistance, Overload);

    /// <summary>The same output as that of a charger: its set point is the float voltage of the battery.</summary>
    /// <param name="rise">How far above the set point it goes: to the absorption voltage after an outage, or in the cold where it follows
    /// the temperature of the battery. The larger of the two, at least 0. [V]</param>
    /// <param name="current">The most that it charges with, above 0. [A]</param>
    /// <param name="followsTemperature">Whether it lowers its voltage as the battery warms, by a sensor at the battery; null where the data
    /// sheet does not say.</param>
    /// <remarks>Its devices see the risen voltage: <see cref="SupplyOutput.HighestVoltage"/> includes it, with the tolerance.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The output is unregulated: nothing keeps it at the float voltage.</exception>
    /// <example>
    /// <code>
    /// DcOutput charger = output.WithCharging(rise: ElectricPotential.FromVolts(0.75), current: ElectricCurrent.FromAmperes(2));
    /// </code>
    /// </example>
    public DcOutput WithCharging(ElectricPotential rise, ElectricCurrent current, bool? followsTemperature = null)
    {
        Require.NotNegative(rise.Volts, nameof(rise), "V");
        Require.Positive(current.Amperes, nameof(current), "A");
        if (Unregulated is not null) throw new InvalidOperationException("An unregulated output cannot charge a battery.");
        return new(this, _statedSetPoint, SourceResistance, Overload)
        {
            ChargingRise = rise,
            ChargingCurrent = current,
            FollowsTemperature = followsTemperature,
        };
    }

    /// <summary>What feeds a fault with a battery on the same terminals: only its resistance limits the current.</summary>
    /// <param name="battery">The battery.</param>
    /// <param name="downTo">The lowest voltage that it may have, above 0. [V]</param>
    /// <param name="leastOhms">The least resistance of it, above 0. [Ω]</param>
    /// <param name="mostOhms">The greatest, with that of its fuse. [Ω]</param>
    internal DcOutput InFaultBeside(Battery battery, double downTo, double leastOhms, double mostOhms) => new(
        this, _statedSetPoint, ElectricResistance.FromOhms(Math.Min(MostOhms, Math.Max(LeastOhms, leastOhms))), OverloadBehavior.Unlimited)
    {
        BatteryAtLeast = downTo,
        BatteryAtMost = battery.OpenCircuitVolts(1),
        BatteryOhmsAtMost = mostOhms,
    };

    /// <summary>The same output behind a diode, with another one behind a diode of its own on the same terminals.</summary>
    /// <param name="dropVolts">The most that is lost in the diode, at least 0. [V]</param>
    /// <param name="beside">The other output; null where there is none.</param>
    internal DcOutput BehindDiode(double dropVolts, DcOutput? beside) =>
        new(this, _statedSetPoint, SourceResistance, Overload) { DiodeVolts = dropVolts, BesideAtMost = beside?.OwnHighestVolts ?? 0 };

    /// <summary>What feeds a fault with another output on the same terminals: both currents together.</summary>
    /// <remarks>That one of them alone feeds it counts apart. Of two that do different things in overload the one that goes on giving
    /// current counts.</remarks>
    internal DcOutput InFaultBeside(DcOutput other)
    {
        ElectricResistance? together = SourceResistance is null || other.SourceResistance is null
            ? null
            : ElectricResistance.FromOhms(Math.Max(LeastOhms, SourceOhms * other.SourceOhms / (SourceOhms + other.SourceOhms)));
        return new(Nominal, RatedCurrent, Tolerance, Trim, _statedSetPoint, Ripple, together, Overload?.With(other.Overload),
            Capacitance + other.Capacitance, RatedPower, Rise) { DiodeVolts = DiodeVolts, BesideAtMost = other.OwnHighestVolts };
    }

    private double Rated(ElectricCurrent current) => Require.Within(current.Amperes, 0, RatedAmperes, nameof(current), "A");

    internal override SupplyOutput WithRating(ElectricCurrent rated)
    {
        double factor = rated.Amperes / RatedAmperes;
        if (OpenVoltage is ElectricPotential open)
        {
            return OfUnregulated(open, Nominal, rated, Tolerance, Ripple, SourceResistance / factor, Overload?.Times(factor),
                Capacitance * factor, Rise);
        }

        Power? power = RatedPower is Power watts ? Power.FromWatts((double)watts.Watts * factor) : null;
        var output = new DcOutput(Nominal, rated, Tolerance, Trim, _statedSetPoint, Ripple, SourceResistance / factor,
            Overload?.Times(factor), Capacitance * factor, power, Rise);
        return ChargingRise is ElectricPotential rise && ChargingCurrent is ElectricCurrent current
            ? output.WithCharging(rise, current, FollowsTemperature)
            : output;
    }

    private static double SetVoltsOf(ElectricPotential nominal, VoltageRange? trim, ElectricPotential? setPoint)
    {
        if (setPoint is not ElectricPotential wanted) return nominal.Volts;
        if (trim is null) throw new ArgumentException("A set point needs a trim range.", nameof(setPoint));
        return Require.SourceVolts(
            Require.Within(wanted.Volts, trim.LowestVolts, trim.HighestVolts, nameof(setPoint), "V"), nameof(setPoint));
    }
}
