using System;
using System.Collections.Generic;
using CamPower.Protection;
using UnitsNet;

namespace CamPower;

/// <summary>A polymeric resettable fuse (PTC): it trips when it is hot, and stays tripped while it is hot.</summary>
/// <remarks>
/// Immutable. At an ambient temperature all its currents change by the factor of <see cref="Thermal"/>. Up to the hold current it does not
/// trip; from the trip current on it does; between them it may. The data sheet states one time: by then it has tripped at
/// <see cref="TestCurrent"/>, and at a larger current I by t2·(I2/I)² (<see cref="Sources.AdiabaticOperatingTime"/>); below that current no
/// time is known. The factor of the ambient comes first, so that cold air asks for more. Definitions: <see cref="Sources.ResettableFuse"/>.
/// It is no fuse for limited-power sources and Class 2: it resets by itself. The milliseconds of output capacitors do not count for it: its
/// times are seconds. An inrush may trip it when its I²t is as large as the I²t that trips it at its hold current. Data sheets do not state
/// this I²t. It is estimated from the time to trip, with one thermal time constant and the whole trip current
/// (<see cref="Sources.ResettableInrush"/>).
/// </remarks>
/// <example>
/// <code>
/// ResettableFuse ptc = ResettableFuse.Generic16Volt.Single(f => f.HoldCurrent.Amperes > 1 &amp;&amp; f.HoldCurrent.Amperes &lt; 1.2);
/// ElectricCurrent inAWarmBox = ptc.HoldCurrentAt(Temperature.FromDegreesCelsius(52));   // 0.748 A of 1.10 A
/// </code>
/// </example>
public sealed class ResettableFuse : ProtectiveDevice
{
    /// <summary>Temperature of the air in which its sheet states it. [°C]</summary>
    internal const double SheetCelsius = 20;

    // Typical of radial types, from memory, no source: many interrupt more.
    private const double GenericMaximumAmperes = 40;

    private readonly double _holdAmperes, _tripAmperes, _testAmperes, _timedSeconds, _maximumAmperes;

    /// <summary>Describes a resettable fuse as its data sheet does, in still air of 20 °C.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="holdCurrent">The largest current that it carries without tripping, above 0. [A]</param>
    /// <param name="tripCurrent">The smallest current that trips it for certain, above <paramref name="holdCurrent"/>. [A]</param>
    /// <param name="testCurrent">The current at which its time to trip is stated, at least <paramref name="tripCurrent"/>. [A]</param>
    /// <param name="longestTimeToTrip">It has tripped by then at <paramref name="testCurrent"/>, above 0. [s]</param>
    /// <param name="minimumResistance">Its resistance new, at least 0. [Ω]</param>
    /// <param name="maximumResistance">Its resistance an hour after a trip, at least <paramref name="minimumResistance"/>. [Ω]</param>
    /// <param name="thermal">How its currents change with ambient: a share above 0 of each at each temperature, such as
    /// <see cref="GenericThermal"/>.</param>
    /// <param name="maximumVoltage">The highest voltage that it withstands when tripped, above 0. [V]</param>
    /// <param name="maximumCurrent">The largest current that it interrupts, above 0; null where none is stated. [A]</param>
    /// <param name="trippedPower">The power that keeps it tripped, above 0; null where none is stated. [W]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public ResettableFuse(string name, ElectricCurrent holdCurrent, ElectricCurrent tripCurrent, ElectricCurrent testCurrent,
        Duration longestTimeToTrip, ElectricResistance minimumResistance, ElectricResistance maximumResistance,
        ShareCurve<Temperature> thermal, ElectricPotential maximumVoltage, ElectricCurrent? maximumCurrent = null,
        Power? trippedPower = null)
        : base(name, maximumVoltage, maximumCurrent)
    {
        _holdAmperes = Require.Positive(holdCurrent.Amperes, nameof(holdCurrent), "A");
        _tripAmperes = Require.Positive(tripCurrent.Amperes, nameof(tripCurrent), "A");
        _testAmperes = Require.Positive(testCurrent.Amperes, nameof(testCurrent), "A");
        _timedSeconds = Require.Positive(longestTimeToTrip.Seconds, nameof(longestTimeToTrip), "s");
        _maximumAmperes = maximumCurrent?.Amperes ?? double.PositiveInfinity;
        LeastOhms = Require.NotNegative(minimumResistance.Ohms, nameof(minimumResistance), "Ω");
        GreatestOhms = Require.NotNegative(maximumResistance.Ohms, nameof(maximumResistance), "Ω");
        Thermal = Require.NotNull(thermal, nameof(thermal)).AboveZero(nameof(thermal));
        if (_tripAmperes <= _holdAmperes)
        {
            throw Require.OutOfRange(_tripAmperes, nameof(tripCurrent), "A", FormattableString.Invariant($"above {_holdAmperes}"));
        }

        if (_testAmperes < _tripAmperes)
        {
            throw Require.OutOfRange(_testAmperes, nameof(testCurrent), "A", FormattableString.Invariant($"at least {_tripAmperes}"));
        }

        if (GreatestOhms < LeastOhms)
        {
            throw Require.OutOfRange(GreatestOhms, nameof(maximumResistance), "Ω", FormattableString.Invariant($"at least {LeastOhms}"));
        }

        if (trippedPower is Power power) Require.Positive((double)power.Watts, nameof(trippedPower), "W");
        MinimumResistance = minimumResistance;
        MaximumResistance = maximumResistance;
        HoldCurrent = holdCurrent;
        TripCurrent = tripCurrent;
        TestCurrent = testCurrent;
        LongestTimeToTrip = longestTimeToTrip;
        TrippedPower = trippedPower;
    }

    /// <summary>The thermal curve of a generic polymeric resettable fuse, from -40 °C to 85 °C: about 1 % less for every kelvin.</summary>
    /// <remarks>Common practice, written down from memory; families differ by 0.05. If a data sheet says something else, use the data
    /// sheet.</remarks>
    /// <example><code>Ratio? share = ResettableFuse.GenericThermal.ShareAt(Temperature.FromDegreesCelsius(55));   // 65 %</code></example>
    public static ShareCurve<Temperature> GenericThermal { get; } = new ShareCurve<Temperature>(
        Point(-40, 1.56), Point(-20, 1.37), Point(0, 1.18), Point(20, 1), Point(30, 0.90), Point(40, 0.80), Point(50, 0.70),
        Point(60, 0.60), Point(70, 0.50), Point(85, 0.35)).WithSource(Sources.GenericResettableCurve, band: 0.05);

    /// <summary>Typical resettable fuses of the 16 V class, hold currents 0.90 A to 2.50 A, with the generic thermal curve.</summary>
    /// <remarks>
    /// Rounded, careful figures, from memory, no source: replace them by those of the data sheet. The trip current is twice the hold
    /// current. It has tripped within 5 s to 20 s at 5 times the hold current. The minimum resistance is low and the maximum
    /// resistance high for its size. The largest current that they interrupt is 40 A. A tripped power is not stated.
    /// See <see cref="Sources.TypicalResettable"/>.
    /// </remarks>
    public static IReadOnlyList<ResettableFuse> Generic16Volt { get; } = Array.AsReadOnly<ResettableFuse>(
    [
        Generic(0.90, seconds: 5, minimumOhms: 0.040, maximumOhms: 0.25),
        Generic(1.10, seconds: 5, minimumOhms: 0.035, maximumOhms: 0.20),
        Generic(1.35, seconds: 8, minimumOhms: 0.030, maximumOhms: 0.15),
        Generic(1.60, seconds: 10, minimumOhms: 0.025, maximumOhms: 0.15),
        Generic(1.85, seconds: 10, minimumOhms: 0.020, maximumOhms: 0.12),
        Generic(2.50, seconds: 20, minimumOhms: 0.015, maximumOhms: 0.08),
    ]);

    /// <summary>The largest current that it carries without tripping at 20 °C. [A]</summary>
    public ElectricCurrent HoldCurrent { get; }

    /// <summary>The smallest current that trips it for certain at 20 °C. [A]</summary>
    public ElectricCurrent TripCurrent { get; }

    /// <summary>The current at which its time to trip is stated. [A]</summary>
    public ElectricCurrent TestCurrent { get; }

    /// <summary>It has tripped by then at <see cref="TestCurrent"/> and 20 °C. [s]</summary>
    public Duration LongestTimeToTrip { get; }

    /// <summary>Change of its currents with the air temperature.</summary>
    public ShareCurve<Temperature> Thermal { get; }

    /// <summary>The power that keeps it tripped, or null where none is stated. [W]</summary>
    public Power? TrippedPower { get; }

    /// <summary>Where no largest current is stated, the one of its test is the largest that it is known to interrupt.</summary>
    internal override bool IsShownToInterrupt(double amperes) => BreakingCapacity is not null || !Limits.IsAbove(amperes, _testAmperes);

    internal override ShareCurve<Temperature>? Ambient => Thermal;

    /// <inheritdoc/>
    public override ElectricResistance MinimumResistance { get; }

    /// <inheritdoc/>
    public override ElectricResistance MaximumResistance { get; }

    internal static double GrowthPerKelvin => ProtectionConstants.ResettableResistanceGrowth.Value / 100;

    internal override double ResistanceGrowsUpToCelsius => Thermal.Highest;

    internal override double LeastOhms { get; }

    internal override double GreatestOhms { get; }

    /// <summary>The largest current that it carries without tripping at an ambient temperature. [A]</summary>
    /// <param name="ambient">Temperature of the air around it, inside its thermal curve.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ambient"/> is outside the curve.</exception>
    public ElectricCurrent HoldCurrentAt(Temperature ambient) =>
        ElectricCurrent.FromAmperes(_holdAmperes * CurrentFactorAt(ambient, nameof(ambient)));

    /// <summary>The smallest current that trips it for certain at an ambient temperature. [A]</summary>
    /// <param name="ambient">Temperature of the air around it, inside its thermal curve.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ambient"/> is outside the curve.</exception>
    public ElectricCurrent TripCurrentAt(Temperature ambient) =>
        ElectricCurrent.FromAmperes(_tripAmperes * CurrentFactorAt(ambient, nameof(ambient)));

    /// <summary>Its greatest resistance in warm air, while it is well below its trip. [Ω]</summary>
    /// <param name="ambient">Temperature of the air around it, inside its thermal curve.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ambient"/> is outside the curve.</exception>
    /// <remarks>
    /// <see cref="MaximumResistance"/> up to 20 °C, and 1 % more for every kelvin above (<see cref="Sources.GenericResettableResistance"/>,
    /// common practice, from memory). What its own current adds near the hold current is not in it.
    /// </remarks>
    /// <example>0.14 Ω at 20 °C are 0.21 Ω in air of 70 °C.</example>
    public ElectricResistance MaximumResistanceIn(Temperature ambient)
    {
        CurrentFactorAt(ambient, nameof(ambient));
        return ElectricResistance.FromOhms(GreatestOhms * ResistanceGrowthIn(Celsius.Of(ambient)));
    }

    /// <summary>Whether it stays tripped once it has tripped: null where its data sheet states no tripped power.</summary>
    /// <param name="source">Voltage behind it, from 1 nV to 1 MV. [V]</param>
    /// <param name="restOfLoop">Resistance of everything else in the loop, load included, at least 0. [Ω]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>
    /// Tripped it is a load of nearly constant power. The rest of the loop can deliver at most Vs²/4R to it, and keeps it
    /// hot while that is not less than the tripped power, which is stated at 20 °C: warmer air needs less. Source of the
    /// maximum power: <see cref="Sources.MaximumPower"/>.
    /// </remarks>
    /// <example>12 V behind 100 Ω can deliver 0.36 W: a device that needs 1 W resets, one behind 20 Ω (1.8 W) does not.</example>
    public bool? StaysTripped(ElectricPotential source, ElectricResistance restOfLoop)
    {
        double volts = Require.SourceVolts(source.Volts, nameof(source));
        double ohms = Require.NotNegative(restOfLoop.Ohms, nameof(restOfLoop), "Ω");
        return TrippedPower is Power needed ? volts * volts >= 4 * ohms * (double)needed.Watts : null;
    }

    /// <summary>The current that it still lets through while it stays tripped; null where it does not, or its data sheet states no tripped
    /// power. [A]</summary>
    /// <param name="source">Voltage behind it, from 1 nV to 1 MV. [V]</param>
    /// <param name="restOfLoop">Resistance of everything else in the loop, load included, at least 0. [Ω]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>The smaller root of R·I² − Vs·I + P = 0: tripped it has far more resistance than the rest of the loop.
    /// Source: <see cref="Sources.ConstantPowerRoot"/>.</remarks>
    /// <example>1 W behind 12 V and 20 Ω: 0.1 A, 10 V of the 12 V across it.</example>
    public ElectricCurrent? TrippedCurrent(ElectricPotential source, ElectricResistance restOfLoop)
    {
        if (StaysTripped(source, restOfLoop) != true) return null;
        double volts = source.Volts, watts = (double)TrippedPower!.Value.Watts;
        double discriminant = Math.Max(0, (volts * volts) - (4 * restOfLoop.Ohms * watts));
        return ElectricCurrent.FromAmperes(2 * watts / (volts + Math.Sqrt(discriminant)));
    }

    internal override double CurrentFactorAt(Temperature ambient, string parameter) =>
        Thermal.FactorAtCelsius(Celsius.Of(ambient), parameter);

    // Beyond the end of its thermal curve nothing is known: what is known there counts.
    internal override double ResistanceGrowthIn(double airCelsius) =>
        1 + (GrowthPerKelvin * Math.Max(0, Math.Min(airCelsius, ResistanceGrowsUpToCelsius) - SheetCelsius));

    internal override double CarriedAmperes(double currentFactor) => _holdAmperes * currentFactor;

    internal override double CertainAmperes(double currentFactor) => _tripAmperes * currentFactor;

    internal override Judgment JudgeInrush(double peakAmperes, double ampereSquaredSeconds, double currentFactor)
    {
        double hold = _holdAmperes * currentFactor;
        if (!Limits.IsAbove(peakAmperes, hold)) return OfWithstand(0);
        double share = _tripAmperes / _testAmperes;
        double timeConstant = -_timedSeconds / Math.Log(1 - (share * share));
        return OfWithstand(ampereSquaredSeconds / (hold * hold * timeConstant));
    }

    internal override OpeningTimes OpeningAt(double amperes, double currentFactor)
    {
        double at20C = amperes / currentFactor;
        if (at20C <= _holdAmperes) return OpeningTimes.Never;
        double bounded = Math.Max(_testAmperes, Math.Min(amperes, _maximumAmperes) / currentFactor);
        double latest = at20C >= _testAmperes ? AdiabaticSeconds(_timedSeconds, _testAmperes, bounded) : double.PositiveInfinity;
        return new OpeningTimes(at20C >= _tripAmperes ? OperatingVerdict.Operates : OperatingVerdict.MayOperate, 0, latest);
    }

    internal override IEnumerable<double> StepsAt(double currentFactor) => [_testAmperes * currentFactor];

    private static ResettableFuse Generic(double hold, double seconds, double minimumOhms, double maximumOhms) => new(
        FormattableString.Invariant($"generic 16 V resettable fuse, {hold:0.00} A"),
        ElectricCurrent.FromAmperes(hold), ElectricCurrent.FromAmperes(2 * hold), ElectricCurrent.FromAmperes(5 * hold),
        Duration.FromSeconds(seconds), ElectricResistance.FromOhms(minimumOhms), ElectricResistance.FromOhms(maximumOhms),
        GenericThermal, ElectricPotential.FromVolts(16), ElectricCurrent.FromAmperes(GenericMaximumAmperes));

    private static SharePoint<Temperature> Point(double celsius, double share) =>
        new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(share));
}
