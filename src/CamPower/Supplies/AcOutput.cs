using System;
using UnitsNet;

namespace CamPower;

/// <summary>The output of a supply of alternating current: a transformer.</summary>
/// <remarks>Immutable. Voltages and currents are RMS. It cannot be adjusted. See <see cref="SupplyOutput"/> for what its tolerance
/// covers.</remarks>
/// <example>
/// <code>
/// var output = new AcOutput(ElectricPotential.FromVolts(24), ElectricCurrent.FromAmperes(4), tolerance: Ratio.FromPercent(10));
/// ElectricApparentPower rated = output.RatedApparentPower;   // 96 VA
/// </code>
/// </example>
public sealed class AcOutput : SupplyOutput
{
    /// <summary>Describes an output.</summary>
    /// <param name="nominal">Nominal output voltage, RMS, from 1 nV to 1 MV. [V]</param>
    /// <param name="ratedCurrent">Rated output current in a cool room, RMS, above 0. [A]</param>
    /// <param name="tolerance">How far the output may be off its nominal voltage, line and load regulation included, from 0 to 0.5.
    /// [1]</param>
    /// <param name="sourceResistance">Resistance behind the terminals in a fault, from 1 µΩ to 100 MΩ; null where the data sheet does not
    /// say. [Ω]</param>
    /// <param name="overload">What it does in overload; null where the data sheet does not say.</param>
    /// <param name="rise">How long it takes to its voltage when it is switched on, at least 0; null where the data sheet does not say.
    /// [s]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public AcOutput(ElectricPotential nominal, ElectricCurrent ratedCurrent, Ratio tolerance,
        ElectricResistance? sourceResistance = null, OverloadBehavior? overload = null, Duration? rise = null)
        : base(nominal, ratedCurrent, tolerance, nominal.Volts, sourceResistance, overload, rise)
    {
    }

    /// <inheritdoc/>
    public override CurrentKind Kind => CurrentKind.Ac;

    /// <summary>Nominal voltage times rated current: the size of the transformer. [VA]</summary>
    public ElectricApparentPower RatedApparentPower => ElectricApparentPower.FromVoltamperes(NominalVolts * RatedAmperes);

    internal override SupplyOutput WithRating(ElectricCurrent rated)
    {
        double factor = rated.Amperes / RatedAmperes;
        return new AcOutput(Nominal, rated, Tolerance, SourceResistance / factor, Overload?.Times(factor), Rise);
    }
}
