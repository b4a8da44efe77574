using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using UnitsNet;

namespace CamPower;

/// <summary>A fuse: a characteristic of time limits at a rated current, and what it can interrupt.</summary>
/// <remarks>
/// Immutable. The fuse carries its rated current continuously and does not operate at or below it. Above it the time limits of
/// <see cref="FuseCharacteristic"/> decide. Its resistance counts cold throughout; a hot element has more, and limits the current further.
/// Source of the first rule: <see cref="Sources.FuseRatedCurrent"/>.
/// </remarks>
/// <example>
/// <code>
/// var amperes = ElectricCurrent.FromAmperes(2);
/// var fuse = new Fuse("F2AL", amperes, FuseCharacteristic.IecQuickActing, ElectricPotential.FromVolts(250),
///     Fuse.IecLowBreakingCapacity(amperes), coldResistance: ElectricResistance.FromMilliohms(50),
///     dcVoltageRating: ElectricPotential.FromVolts(63));
/// OpeningTimes opening = fuse.OpeningAt(ElectricCurrent.FromAmperes(9), Temperature.FromDegreesCelsius(25));
/// </code>
/// </example>
public sealed class Fuse : ProtectiveDevice
{
    private readonly double _ratedAmperes, _coldOhms, _breakingAmperes;
    private readonly ElectricResistance _coldResistance;

    /// <summary>Describes a fuse as its data sheet does.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="ratedCurrent">Its rated current, inside the characteristic's range. [A]</param>
    /// <param name="characteristic">Its time limits.</param>
    /// <param name="voltageRating">AC voltage rating, above 0; for a fuse rated for DC only, its DC voltage rating. [V]</param>
    /// <param name="breakingCapacity">The largest current that it interrupts, above 0. [A]</param>
    /// <param name="coldResistance">Its resistance cold, at least 0. [Ω]</param>
    /// <param name="minimumMeltingIntegral">Minimum melting I²t, above 0; null where it is not stated. Do not give a typical value here.
    /// [A²·s]</param>
    /// <param name="rerating">How its rated current changes with ambient, its shares above 0; null where the data sheet says nothing: what
    /// it carries is then known at the reference temperature of its standard alone.</param>
    /// <param name="dcVoltageRating">The highest DC voltage that it interrupts, above 0; null where the data sheet states none. [V]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Fuse(string name, ElectricCurrent ratedCurrent, FuseCharacteristic characteristic, ElectricPotential voltageRating,
        ElectricCurrent breakingCapacity, ElectricResistance coldResistance, JouleIntegral? minimumMeltingIntegral = null,
        ShareCurve<Temperature>? rerating = null, ElectricPotential? dcVoltageRating = null)
        : base(name, voltageRating, breakingCapacity)
    {
        Characteristic = Require.NotNull(characteristic, nameof(characteristic));
        _ratedAmperes = Require.Within(
            ratedCurrent.Amperes, characteristic.RatedFromAmperes, characteristic.RatedToAmperes, nameof(ratedCurrent), "A");
        _coldOhms = Require.NotNegative(coldResistance.Ohms, nameof(coldResistance), "Ω");
        if (minimumMeltingIntegral is JouleIntegral given)
        {
            Require.Positive(given.AmpereSquaredSeconds, nameof(minimumMeltingIntegral), "A²·s");
        }

        if (dcVoltageRating is ElectricPotential volts) Require.Positive(volts.Volts, nameof(dcVoltageRating), "V");
        _coldResistance = coldResistance;
        _breakingAmperes = breakingCapacity.Amperes;
        RatedCurrent = ratedCurrent;
        MinimumMeltingIntegral = minimumMeltingIntegral;
        Rerating = rerating?.AboveZero(nameof(rerating));
        DcVoltageRating = dcVoltageRating;
    }

    /// <summary>The highest DC voltage that it interrupts; null where none is stated. [V]</summary>
    /// <remarks>A direct current has no zero at which its arc goes out: a rating for AC says nothing of DC below it
    /// (<see cref="Sources.DeviceVoltageRating"/>).</remarks>
    public ElectricPotential? DcVoltageRating { get; }

    /// <summary>Its rated current. [A]</summary>
    public ElectricCurrent RatedCurrent { get; }

    /// <summary>Its time limits.</summary>
    public FuseCharacteristic Characteristic { get; }

    /// <summary>The least I²t that melts it, or null where none is stated. [A²·s]</summary>
    /// <remarks>It opens no sooner than I²t/I²: heat that leaves the element only adds to the time.</remarks>
    public JouleIntegral? MinimumMeltingIntegral { get; }

    /// <summary>Change of its rated current with the air temperature, or null where it is not stated.</summary>
    public ShareCurve<Temperature>? Rerating { get; }

    private protected override ElectricPotential? RatingFor(bool isDirect) => isDirect ? DcVoltageRating : VoltageRating;

    internal override ShareCurve<Temperature>? Ambient => Rerating;

    /// <inheritdoc/>
    public override ElectricResistance MinimumResistance => _coldResistance;

    /// <inheritdoc/>
    public override ElectricResistance MaximumResistance => _coldResistance;

    internal override double LeastOhms => _coldOhms;

    internal override double GreatestOhms => _coldOhms;

    /// <summary>What a miniature fuse of low breaking capacity, marked L, interrupts: 35 A or ten times its rated current. [A]</summary>
    /// <param name="ratedCurrent">Its rated current, above 0. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ratedCurrent"/> is not above 0, or not finite.</exception>
    /// <remarks>The larger of the two. Source: <see cref="Sources.Iec60127BreakingCapacity"/>.</remarks>
    /// <example><code>Fuse.IecLowBreakingCapacity(ElectricCurrent.FromAmperes(5));   // 50 A</code></example>
    public static ElectricCurrent IecLowBreakingCapacity(ElectricCurrent ratedCurrent) => ElectricCurrent.FromAmperes(Math.Max(
        ProtectionConstants.LowBreakingCapacity.Value,
        ProtectionConstants.LowBreakingMultiple.Value * Require.Positive(ratedCurrent.Amperes, nameof(ratedCurrent), "A")));

    /// <summary>Whether its re-rating is stated, or the air is as warm as in the tests of its standard.</summary>
    internal bool IsRatedIn(double? airCelsius) => Rerating is not null
        || (airCelsius is double celsius && Math.Abs(celsius - Characteristic.ReferenceCelsius) <= ProtectionConstants.ReferenceBand.Value);

    /// <summary>Where its re-rating is not stated, 1 in the air of its standard's tests, and up to a fifth less in warmer and more in
    /// colder air.</summary>
    internal override double[] FactorsIn(double? airCelsius)
    {
        if (Rerating is not null) return base.FactorsIn(airCelsius);
        if (IsRatedIn(airCelsius)) return [1];
        double most = ProtectionConstants.UnstatedRerating.Value / 100;
        return [airCelsius < Characteristic.ReferenceCelsius ? 1 : 1 - most, airCelsius > Characteristic.ReferenceCelsius ? 1 : 1 + most];
    }

    internal override double CurrentFactorAt(Temperature ambient, string parameter) =>
        Rerating?.FactorAtCelsius(Celsius.Of(ambient), parameter) ?? 1;

    internal override double CarriedAmperes(double currentFactor) => _ratedAmperes * currentFactor;

    internal override double CertainAmperes(double currentFactor) => _ratedAmperes * currentFactor * Characteristic.CertainMultiple;

    /// <summary>Never for certain: what the capacitors' own resistance takes of the heat is not stated, nor how much less than stated they
    /// may hold.</summary>
    internal override OpeningTimes OpeningBySurge(CurrentSurge surge, double currentFactor)
    {
        double rated = _ratedAmperes * currentFactor;
        double melting = MinimumMeltingIntegral?.AmpereSquaredSeconds ?? (Characteristic.LeastMeltingSeconds * rated * rated);
        return surge.PeakAmperes > rated && surge.Integral >= melting
            ? new OpeningTimes(OperatingVerdict.MayOperate, 0, double.PositiveInfinity)
            : OpeningTimes.Never;
    }

    /// <summary>Judges an inrush by the melting I²t; pulses age a fuse, so a share of it is the policy.</summary>
    /// <remarks>Where it is not stated, the pre-arcing time limits say of some I²t that it does not melt the fuse: what keeps the policy
    /// against that holds. Of more nothing is known, up to the I²t that opens it for certain. Source:
    /// <see cref="Sources.InrushPractice"/>.</remarks>
    internal override Judgment JudgeInrush(double peakAmperes, double ampereSquaredSeconds, double currentFactor)
    {
        double rated = _ratedAmperes * currentFactor, policy = ProtectionConstants.InrushShare.Value / 100;
        if (!Limits.IsAbove(peakAmperes, rated)) return OfWithstand(0, policy);
        double withstood = Characteristic.WithstoodSeconds(peakAmperes / rated) * rated * rated;
        if (MinimumMeltingIntegral is JouleIntegral stated)
        {
            return OfWithstand(ampereSquaredSeconds / Math.Max(stated.AmpereSquaredSeconds, withstood), policy);
        }

        double opens = Characteristic.OpeningSeconds(peakAmperes / rated) * rated * rated;
        if (Limits.IsAbove(ampereSquaredSeconds, opens)) return OfWithstand(ampereSquaredSeconds / opens, policy);
        return withstood > 0 && !Limits.IsAbove(ampereSquaredSeconds, policy * withstood)
            ? OfWithstand(ampereSquaredSeconds / withstood, policy)
            : Judgment.Unknown($"melting I²t of {Name}");
    }

    internal override OpeningTimes OpeningAt(double amperes, double currentFactor)
    {
        double multiple = amperes / (_ratedAmperes * currentFactor);
        if (multiple <= 1) return OpeningTimes.Never;
        double closed = Characteristic.EarliestSeconds(multiple);
        double latest = Math.Max(closed, LatestSeconds(Math.Min(amperes, _breakingAmperes) / (_ratedAmperes * currentFactor), multiple));
        double melting = (MinimumMeltingIntegral?.AmpereSquaredSeconds ?? 0) / amperes / amperes;
        double earliest = Math.Min(latest, Math.Max(closed, melting));
        return new OpeningTimes(double.IsInfinity(latest) ? OperatingVerdict.MayOperate : OperatingVerdict.Operates, earliest, latest);
    }

    // Of every limit below, the adiabatic bound: up to the breaking capacity. A time before which it stays closed is stated, and holds.
    private double LatestSeconds(double boundedMultiple, double multiple)
    {
        double latest = double.PositiveInfinity;
        for (int i = Characteristic.CountUpTo(multiple) - 1; i >= 0; i--)
        {
            FuseTimeLimit limit = Characteristic.TimeLimits[i];
            double bound = AdiabaticSeconds(limit.NotAfterSeconds, limit.Multiple, Math.Max(limit.Multiple, boundedMultiple));
            latest = Math.Min(latest, bound);
        }

        return latest;
    }

    internal override IEnumerable<double> StepsAt(double currentFactor) =>
        Characteristic.TimeLimits.Where(g => g.NotAfter is not null).Select(g => g.Multiple * _ratedAmperes * currentFactor);
}
