using System;
using UnitsNet;

namespace CamPower;

/// <summary>The output of a supply, as its data sheet describes it: a <see cref="DcOutput"/> or an <see cref="AcOutput"/>.</summary>
/// <remarks>
/// Immutable. Ideal up to its rating: its voltage lies within a tolerance of its set point whatever the load, because the
/// tolerance of a data sheet covers line and load regulation. The source resistance is for faults alone, beyond the rating,
/// and is never subtracted a second time.
/// </remarks>
public abstract class SupplyOutput
{
    private protected SupplyOutput(ElectricPotential nominal, ElectricCurrent ratedCurrent, Ratio tolerance, double setVolts,
        ElectricResistance? sourceResistance, OverloadBehavior? overload, Duration? rise)
    {
        NominalVolts = Require.SourceVolts(nominal.Volts, nameof(nominal));
        RatedAmperes = Require.Positive(ratedCurrent.Amperes, nameof(ratedCurrent), "A");
        double share = Require.Within(tolerance.DecimalFractions, 0, 0.5, nameof(tolerance), "");
        SourceOhms = sourceResistance is ElectricResistance resistance
            ? Require.Within(resistance.Ohms, 1e-6, 1e8, nameof(sourceResistance), "Ω")
            : 0;
        SetVolts = setVolts;
        LowestVolts = setVolts * (1 - share);
        HighestVolts = setVolts * (1 + share);
        Nominal = nominal;
        RatedCurrent = ratedCurrent;
        Tolerance = tolerance;
        SourceResistance = sourceResistance;
        Overload = overload;
        RiseSeconds = rise is Duration time ? Require.NotNegative(time.Seconds, nameof(rise), "s") : null;
        Rise = rise;
    }

    /// <summary>Direct or alternating.</summary>
    public abstract CurrentKind Kind { get; }

    /// <summary>Nominal output voltage; RMS if alternating. [V]</summary>
    public ElectricPotential Nominal { get; }

    /// <summary>Rated output current in a cool room; RMS if alternating. [A]</summary>
    public ElectricCurrent RatedCurrent { get; }

    /// <summary>Tolerance of the set voltage, line and load regulation included. [1]</summary>
    public Ratio Tolerance { get; }

    /// <summary>Resistance behind the terminals in a fault; null where the data sheet does not say. [Ω]</summary>
    public ElectricResistance? SourceResistance { get; }

    /// <summary>What it does in overload; null where the data sheet does not say.</summary>
    public OverloadBehavior? Overload { get; }

    /// <summary>How long it takes from nothing to its voltage when it is switched on; null where the data sheet does not say. [s]</summary>
    public Duration? Rise { get; }

    /// <summary>The lowest output voltage within the tolerance. [V]</summary>
    public ElectricPotential LowestVoltage => ElectricPotential.FromVolts(LowestVolts);

    /// <summary>The highest output voltage within the tolerance. [V]</summary>
    public ElectricPotential HighestVoltage => ElectricPotential.FromVolts(HighestVolts);

    /// <summary>An output like this one with another rating: its other currents and its capacitance grow with it, its source resistance
    /// falls.</summary>
    internal abstract SupplyOutput WithRating(ElectricCurrent rated);

    /// <summary>Whether it gives direct current.</summary>
    internal bool IsDc => Kind == CurrentKind.Dc;

    internal double? RiseSeconds { get; }

    /// <summary>The resistance behind its terminals; 0 where it is not stated. [Ω]</summary>
    internal double SourceOhms { get; }

    /// <summary>The most that this resistance may be: of a battery, when it is old, empty and cold. [Ω]</summary>
    internal virtual double GreatestSourceOhms => SourceOhms;

    internal double NominalVolts { get; }

    internal double RatedAmperes { get; }

    /// <summary>The rated current at what it is set to: less where its power is the limit. [A]</summary>
    internal virtual double SetAmperes => RatedAmperes;

    internal virtual double LowestVolts { get; }

    internal virtual double HighestVolts { get; }

    /// <summary>The highest that it gives at a current: less than <see cref="HighestVolts"/> where it is unregulated. [V]</summary>
    internal virtual double HighestVoltsAt(double amperes) => HighestVolts;

    /// <summary>What it is set to; the nominal voltage where it cannot be adjusted. [V]</summary>
    internal double SetVolts { get; }

    /// <summary>Voltage, kind and rated current in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{SetVolts:G6} V {(IsDc ? "DC" : "AC")}, {RatedAmperes:G6} A");
}
