using System;
using UnitsNet;

namespace CamPower;

/// <summary>A power supply, as its data sheet describes it, and the voltage that it is set to.</summary>
/// <remarks>Immutable. Ideal up to its rating: its voltage lies within a tolerance of the set point whatever the load.</remarks>
/// <example>
/// <code>
/// var supply = new Supply("12 V, 20 A", CurrentKind.Dc, ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(20),
///     Ratio.FromPercent(2), DeratingCurve.GenericEnclosed,
///     trim: new VoltageRange(ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(14)),
///     setPoint: ElectricPotential.FromVolts(12.6));
/// ElectricCurrent inAWarmBox = supply.DeratedCurrentAt(Temperature.FromDegreesCelsius(60));   // 15 A
/// </code>
/// </example>
public sealed class Supply
{
    /// <summary>Describes a supply.</summary>
    /// <param name="name">How it is called. Not empty.</param>
    /// <param name="output">Direct or alternating.</param>
    /// <param name="nominal">Nominal output voltage, from 1 nV to 1 MV; RMS if alternating. [V]</param>
    /// <param name="ratedCurrent">Rated output current in a cool room, above 0. [A]</param>
    /// <param name="tolerance">How far the output may be off its set point, from 0 to 0.5. [1]</param>
    /// <param name="derating">What is left of the rating as it warms.</param>
    /// <param name="trim">How far the output can be adjusted; null where it cannot.</param>
    /// <param name="setPoint">The voltage that it is adjusted to, inside <paramref name="trim"/> and, as the nominal voltage, from 1 nV to 1 MV; null for the nominal voltage.</param>
    /// <param name="ripple">RMS ripple at mains frequency or its double, over the output voltage, from 0 to 1; null where nobody declares it. [1]</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="derating"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, or a set point is given without a trim range.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or <paramref name="output"/> is none of those there are.</exception>
    public Supply(string name, CurrentKind output, ElectricPotential nominal, ElectricCurrent ratedCurrent, Ratio tolerance,
        DeratingCurve derating, VoltageRange? trim = null, ElectricPotential? setPoint = null, Ratio? ripple = null)
    {
        Name = Require.Name(name, nameof(name));
        Output = Require.Known(output, nameof(output));
        NominalVolts = Require.SourceVolts(nominal.Volts, nameof(nominal));
        RatedAmperes = Require.Positive(ratedCurrent.Amperes, nameof(ratedCurrent), "A");
        double share = Require.Within(tolerance.DecimalFractions, 0, 0.5, nameof(tolerance), "");
        Derating = Require.NotNull(derating, nameof(derating));
        double set = SetVolts(NominalVolts, trim, setPoint);
        LowestVolts = set * (1 - share);
        HighestVolts = set * (1 + share);
        Nominal = nominal;
        RatedCurrent = ratedCurrent;
        Tolerance = tolerance;
        if (ripple is Ratio given) Require.Within(given.DecimalFractions, 0, 1, nameof(ripple), "");
        Ripple = ripple;
        Trim = trim;
        SetPoint = setPoint ?? nominal;
    }

    /// <summary>How it is called.</summary>
    public string Name { get; }

    /// <summary>Direct or alternating.</summary>
    public CurrentKind Output { get; }

    /// <summary>Nominal output voltage.</summary>
    public ElectricPotential Nominal { get; }

    /// <summary>Rated output current in a cool room.</summary>
    public ElectricCurrent RatedCurrent { get; }

    /// <summary>How far the output may be off its set point.</summary>
    public Ratio Tolerance { get; }

    /// <summary>What is left of the rating as it warms.</summary>
    public DeratingCurve Derating { get; }

    /// <summary>How far the output can be adjusted, or null.</summary>
    public VoltageRange? Trim { get; }

    /// <summary>The voltage that it is set to.</summary>
    public ElectricPotential SetPoint { get; }

    /// <summary>RMS ripple at mains frequency or its double, over the output voltage, or null where nobody declares it.</summary>
    public Ratio? Ripple { get; }

    /// <summary>The lowest output voltage within the tolerance. [V]</summary>
    public ElectricPotential LowestVoltage => ElectricPotential.FromVolts(LowestVolts);

    /// <summary>The highest output voltage within the tolerance. [V]</summary>
    public ElectricPotential HighestVoltage => ElectricPotential.FromVolts(HighestVolts);

    internal double NominalVolts { get; }

    internal double RatedAmperes { get; }

    internal double LowestVolts { get; }

    internal double HighestVolts { get; }

    /// <summary>The current that it may deliver at an ambient temperature; 0 where it is not rated to run. [A]</summary>
    /// <param name="ambient">Temperature of the air around the supply, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ambient"/> is infinite.</exception>
    public ElectricCurrent DeratedCurrentAt(Temperature ambient) => ElectricCurrent.FromAmperes(
        DeratedAmperesAt(Require.Finite(Celsius.Of(ambient), nameof(ambient), "°C")));

    /// <summary>The same supply, set to another voltage.</summary>
    /// <param name="setPoint">The voltage that it is adjusted to, inside <see cref="Trim"/>. [V]</param>
    /// <exception cref="ArgumentException">It has no trim range.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setPoint"/> is outside the trim range.</exception>
    /// <example><code>Supply raised = supply.SetTo(ElectricPotential.FromVolts(13.2));</code></example>
    public Supply SetTo(ElectricPotential setPoint) => new(Name, Output, Nominal, RatedCurrent, Tolerance, Derating, Trim, setPoint, Ripple);

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>A supply like it that gives another voltage, whether or not this one can be trimmed to it. [V]</summary>
    internal Supply Giving(double volts) => new(Name, Output, ElectricPotential.FromVolts(volts), RatedCurrent, Tolerance, Derating, ripple: Ripple);

    internal double DeratedAmperesAt(double celsius) => RatedAmperes * Derating.ShareAtCelsius(celsius);

    private static double SetVolts(double nominalVolts, VoltageRange? trim, ElectricPotential? setPoint)
    {
        if (setPoint is not ElectricPotential wanted) return nominalVolts;
        if (trim is null) throw new ArgumentException("A set point needs a trim range.", nameof(setPoint));
        return Require.SourceVolts(Require.Within(wanted.Volts, trim.LowestVolts, trim.HighestVolts, nameof(setPoint), "V"), nameof(setPoint));
    }
}
