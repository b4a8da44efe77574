using System;
using UnitsNet;

namespace CamPower;

/// <summary>A power supply, as its data sheet describes it, and the voltage that it is set to.</summary>
/// <remarks>Immutable.</remarks>
/// <example>
/// <code>
/// var output = new DcOutput(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(20), tolerance: Ratio.FromPercent(2));
/// var supply = new Supply("12 V, 20 A", output, Derating.GenericEnclosed);
/// ElectricCurrent inAWarmBox = supply.DeratedCurrentAt(Temperature.FromDegreesCelsius(60));   // 15 A
/// </code>
/// </example>
public sealed class Supply
{
    /// <summary>Describes a supply.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="output">Its output: a <see cref="DcOutput"/> or an <see cref="AcOutput"/>.</param>
    /// <param name="derating">What is left of the rating as it warms, at another input voltage, or high above the sea.</param>
    /// <param name="input">The side that takes power in; null where the data sheet says nothing of it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/>, <paramref name="output"/> or <paramref name="derating"/> is
    /// null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public Supply(string name, SupplyOutput output, Derating derating, SupplyInput? input = null)
    {
        Name = Require.Name(name, nameof(name));
        Output = Require.NotNull(output, nameof(output));
        Derating = Require.NotNull(derating, nameof(derating));
        Input = input;
    }

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Its output.</summary>
    public SupplyOutput Output { get; }

    /// <summary>Derating by air temperature, input voltage and altitude.</summary>
    public Derating Derating { get; }

    /// <summary>The side that takes power in, or null where the data sheet says nothing of it.</summary>
    public SupplyInput? Input { get; }

    /// <summary>The current that it may deliver; 0 where it is not rated to run. [A]</summary>
    /// <param name="ambient">Temperature of the air around the supply, finite.</param>
    /// <param name="lineVoltage">Voltage at the input, from 1 nV to 1 MV; null for the nominal one, at which nothing is derated.
    /// [V]</param>
    /// <param name="altitude">Height above the sea, from -500 m to 9000 m; null for sea level. [m]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <remarks>Set above its nominal voltage it may deliver less: its rated power; and never more than the limit of its
    /// <see cref="SupplyOutput.Overload"/>, whatever it is rated for. It is not rated to run outside the curves of its
    /// <see cref="Derating"/> and outside the voltage that its <see cref="Input"/> accepts.</remarks>
    public ElectricCurrent DeratedCurrentAt(Temperature ambient, ElectricPotential? lineVoltage = null, Length? altitude = null) =>
        ElectricCurrent.FromAmperes(Delivered(Derating.ShareAt(ambient, lineVoltage, altitude).DecimalFractions, lineVoltage?.Volts));

    /// <summary>The same supply, set to another voltage.</summary>
    /// <param name="setPoint">The voltage that it is adjusted to, inside the trim range of its output. [V]</param>
    /// <exception cref="ArgumentException">Its output has no trim range.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setPoint"/> is outside the trim range.</exception>
    /// <example><code>Supply raised = supply.WithSetPoint(ElectricPotential.FromVolts(13.2));</code></example>
    public Supply WithSetPoint(ElectricPotential setPoint) => With(Output is DcOutput dc
        ? dc.WithSetPoint(setPoint)
        : throw new ArgumentException("A supply of alternating current cannot be set to a voltage.", nameof(setPoint)));

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <inheritdoc cref="DeratedCurrentAt"/>
    internal double DeratedAmperesAt(double celsius, double? lineVolts, double altitudeMeters) =>
        Delivered(Derating.ShareAt(celsius, lineVolts, altitudeMeters), lineVolts);

    /// <summary>The most that it may deliver in air of a temperature or any warmer. [A]</summary>
    internal double MostAmperesFrom(double celsius, double? lineVolts, double altitudeMeters) =>
        Delivered(Derating.LargestShareFrom(celsius, lineVolts, altitudeMeters), lineVolts);

    /// <summary>Power in at an output current, for a supply whose efficiency is stated: below the first point of the curve its losses are
    /// those of that point, or fall to its standby power; beyond the last point the efficiency is that of the last. [W]</summary>
    internal double InputWattsAt(double amperes)
    {
        ShareCurve<Ratio> curve = Input!.Efficiency!;
        double lowest = curve.Lowest * Output.RatedAmperes, volts = Output.HighestVoltsAt(amperes), given = volts * amperes;
        if (amperes >= lowest) return given / curve.ShareAt(Math.Min(amperes / Output.RatedAmperes, curve.Highest))!.Value;
        double lost = volts * lowest * ((1 / curve.ShareAt(curve.Lowest)!.Value) - 1);
        return given + (Input.StandbyWatts is double standby ? standby + ((lost - standby) * amperes / lowest) : lost);
    }

    /// <summary>A supply like this one with another rating; what its input draws grows with it.</summary>
    internal Supply WithRating(ElectricCurrent rated) => new(
        FormattableString.Invariant($"{Output.NominalVolts:G6} V {rated.Amperes:G6} A supply"), Output.WithRating(rated), Derating,
        Input?.Times(rated.Amperes / Output.RatedAmperes));

    private double Delivered(double share, double? lineVolts) =>
        Accepts(lineVolts) ? Math.Min(Output.SetAmperes * share, Output.Overload?.Lowest.LimitAmperes ?? double.PositiveInfinity) : 0;

    /// <summary>The same supply of direct current behind a diode.</summary>
    internal Supply BehindDiode(double dropVolts, Supply? beside) =>
        With(((DcOutput)Output).BehindDiode(dropVolts, (DcOutput?)beside?.Output));

    private bool Accepts(double? lineVolts) => lineVolts is not double volts || Input?.Voltage?.Contains(volts) != false;

    private Supply With(SupplyOutput output) => new(Name, output, Derating, Input);
}
