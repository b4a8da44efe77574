using System;
using System.Collections.Generic;
using CamPower.Protection;
using UnitsNet;

namespace CamPower;

/// <summary>A protective device at an output: it interrupts an overcurrent.</summary>
/// <remarks>Immutable. The devices are <see cref="Fuse"/>, <see cref="ResettableFuse"/>, <see cref="ElectronicLimit"/> and
/// <see cref="None"/>; nothing else can be one. Standards and data sheets give limits for all protective devices of a type. A single one is
/// faster or slower within them.</remarks>
public abstract class ProtectiveDevice
{
    private protected ProtectiveDevice(string name, ElectricPotential? voltageRating, ElectricCurrent? breakingCapacity)
    {
        Name = Require.Name(name, nameof(name));
        if (voltageRating is ElectricPotential volts) Require.Positive(volts.Volts, nameof(voltageRating), "V");
        if (breakingCapacity is ElectricCurrent amperes) Require.Positive(amperes.Amperes, nameof(breakingCapacity), "A");
        VoltageRating = voltageRating;
        BreakingCapacity = breakingCapacity;
    }

    /// <summary>No device at all: it never interrupts anything.</summary>
    public static ProtectiveDevice None { get; } = new NoProtectiveDevice();

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>The highest voltage that it interrupts; null where none is stated. [V]</summary>
    public ElectricPotential? VoltageRating { get; }

    /// <summary>The largest current that it interrupts safely; null where none is stated. [A]</summary>
    public ElectricCurrent? BreakingCapacity { get; }

    /// <summary>Its least resistance, cold and new. [Ω]</summary>
    public virtual ElectricResistance MinimumResistance => ElectricResistance.FromOhms(LeastOhms);

    /// <summary>Its greatest resistance while it carries current. [Ω]</summary>
    public virtual ElectricResistance MaximumResistance => ElectricResistance.FromOhms(GreatestOhms);

    /// <summary>The highest voltage of a kind of current that it is stated to interrupt; null where none is stated. [V]</summary>
    private protected virtual ElectricPotential? RatingFor(bool isDirect) => VoltageRating;

    /// <summary>A voltage against its rating: unknown where it is rated for the other kind of current alone.</summary>
    internal Judgment JudgeVoltage(double volts, bool isDirect)
    {
        if ((RatingFor(isDirect) ?? VoltageRating) is not ElectricPotential rating) return default;
        double counted = isDirect ? volts : volts * CrestCounted;
        Judgment judged = Judgment.AtMost(counted, rating.Volts, rating.Volts, v => ElectricPotential.FromVolts(v));
        return RatingFor(isDirect) is null && !judged.IsViolated ? Judgment.Unknown($"DC voltage rating of {Name}") : judged;
    }

    /// <summary>What of an alternating voltage counts against its rating, over the RMS. [1]</summary>
    private protected virtual double CrestCounted => 1;

    /// <summary>Whether its sheet shows that it interrupts a current, or that it does not.</summary>
    internal virtual bool IsShownToInterrupt(double amperes) => true;

    internal abstract double LeastOhms { get; }

    internal abstract double GreatestOhms { get; }

    /// <summary>The hottest air up to which its resistance grows; the coldest that there is where it does not depend on the air.
    /// [°C]</summary>
    internal virtual double ResistanceGrowsUpToCelsius => double.NegativeInfinity;

    /// <summary>How its rated currents change with the air around it, or null where they do not.</summary>
    internal virtual ShareCurve<Temperature>? Ambient => null;

    /// <summary>The largest share of its currents in some air; hotter than its curve goes what it has at the end of it, and null in colder
    /// air than any of it.</summary>
    internal double? MostFactorIn(double airCelsius) => Ambient is ShareCurve<Temperature> curve ? curve.MostFactorAt(airCelsius) : 1;

    /// <summary>The most current that it lets through; infinite where it limits nothing. [A]</summary>
    internal virtual double MostAmperes => double.PositiveInfinity;

    /// <summary>From opening to the next try; infinite where it stays open. [s]</summary>
    internal virtual double PauseSeconds => double.PositiveInfinity;

    /// <summary>When it opens, or trips, at a steady current.</summary>
    /// <param name="current">The current, at least 0; RMS where it alternates or pulses. [A]</param>
    /// <param name="ambient">Temperature of the air around the device, inside its ambient curve.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>More current never opens it later: above a current with a stated time t2·(I2/I)² bounds the time of a thermal element, up
    /// to its breaking capacity and never below 10 ms (<see cref="Sources.AdiabaticOperatingTime"/>). Whether the device can interrupt so
    /// much is not asked here: see <see cref="BreakingCapacity"/> and <see cref="VoltageRating"/>.</remarks>
    public OpeningTimes OpeningAt(ElectricCurrent current, Temperature ambient) => OpeningAt(
        Require.NotNegative(current.Amperes, nameof(current), "A"), CurrentFactorAt(ambient, nameof(ambient)));

    /// <summary>The largest current that it carries continuously; null where nothing limits it. [A]</summary>
    /// <param name="ambient">Temperature of the air around the device, inside its ambient curve.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ambient"/> is outside the curve.</exception>
    public ElectricCurrent? CarriedCurrentAt(Temperature ambient)
    {
        double amperes = CarriedAmperes(CurrentFactorAt(ambient, nameof(ambient)));
        return double.IsInfinity(amperes) ? null : ElectricCurrent.FromAmperes(amperes);
    }

    /// <summary>Whether it is <see cref="None"/>.</summary>
    internal bool IsNone => this is NoProtectiveDevice;

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>Factor of the surroundings on every rated current of the device. [1]</summary>
    internal abstract double CurrentFactorAt(Temperature ambient, string parameter);

    /// <summary>The ends of what the factor may be in air of a temperature, null where that is not known; none where nothing is known of
    /// it. [1]</summary>
    internal virtual double[] FactorsIn(double? airCelsius)
    {
        if (Ambient is not ShareCurve<Temperature> curve) return [1];
        return airCelsius is double celsius && curve.Covers(celsius) ? [curve.FactorAtCelsius(celsius, nameof(airCelsius))] : [];
    }

    /// <summary>The largest current that it carries continuously, its rated currents being multiplied by a factor. [A]</summary>
    internal abstract double CarriedAmperes(double currentFactor);

    /// <summary>The most that it may carry continuously, within the tolerance of what it is set to. [A]</summary>
    internal virtual double MostCarriedAmperes(double currentFactor) => CarriedAmperes(currentFactor);

    /// <summary>The smallest current that opens it for certain, if only in hours; infinite where none does. [A]</summary>
    internal abstract double CertainAmperes(double currentFactor);

    /// <summary>Its resistance in air of a temperature over that of its data sheet; never less than 1, never falling. [1]</summary>
    internal virtual double ResistanceGrowthIn(double airCelsius) => 1;

    /// <summary>Whether a surge alone opens it; never for what is slower than any surge, or limits it.</summary>
    internal virtual OpeningTimes OpeningBySurge(CurrentSurge surge, double currentFactor) => OpeningTimes.Never;

    /// <summary>Judges an inrush that never passes a peak and is over after an I²t: the share that it takes of what the device
    /// withstands.</summary>
    /// <remarks>More of either never makes the verdict better.</remarks>
    internal abstract Judgment JudgeInrush(double peakAmperes, double ampereSquaredSeconds, double currentFactor);

    /// <summary>When it opens at a steady current, its rated currents being multiplied by a factor.</summary>
    internal abstract OpeningTimes OpeningAt(double amperes, double currentFactor);

    /// <summary>The currents at which its latest time drops. [A]</summary>
    internal abstract IEnumerable<double> StepsAt(double currentFactor);

    /// <summary>By when a thermal element has opened at a current, if it has by a stated time at a smaller one. [s]</summary>
    /// <remarks>More current needs no more I²t, for less heat leaves the element: t2·(I2/I)². Below 10 ms arcing decides, and no
    /// limit of a standard bounds it. Source: <see cref="Sources.AdiabaticOperatingTime"/>.</remarks>
    private protected static double AdiabaticSeconds(double statedSeconds, double statedAmperes, double amperes)
    {
        double scaled = statedSeconds * (statedAmperes / amperes) * (statedAmperes / amperes);
        return Math.Min(statedSeconds, Math.Max(ProtectionConstants.ShortestBoundedTime.Value / 1000, scaled));
    }

    /// <summary>An inrush that is over after a share of what the device withstands; the policy is a share as well.</summary>
    private protected static Judgment OfWithstand(double share, double policyShare = 1) =>
        Judgment.AtMost(share, 1, policyShare, value => Ratio.FromDecimalFractions(value));
}
