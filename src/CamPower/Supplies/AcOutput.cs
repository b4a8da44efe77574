using System;
using UnitsNet;
using CamPower.Supplies;
using static System.FormattableString;

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
        EmfVolts = nominal.Volts;
    }

    private AcOutput(AcOutput output, ElectricPotential open, Frequency? frequency)
        : base(output.Nominal, output.RatedCurrent, output.Tolerance, output.NominalVolts,
            output.SourceResistance ?? ElectricResistance.FromOhms((open.Volts - output.NominalVolts) / output.RatedAmperes),
            output.Overload ?? OverloadBehavior.Unlimited, output.Rise)
    {
        OpenVoltage = open;
        EmfVolts = open.Volts;
        WindingOhms = (open.Volts - NominalVolts) / RatedAmperes;
        Frequency = frequency;
    }

    /// <inheritdoc/>
    public override CurrentKind Kind => CurrentKind.Ac;

    /// <summary>The voltage of an unloaded transformer, RMS, as its plate or its regulation states it; null where it does not.
    /// [V]</summary>
    public ElectricPotential? OpenVoltage { get; }

    /// <summary>How far the voltage falls from no load to the rated load, over the rated voltage; null where it is not stated.
    /// [1]</summary>
    public Ratio? Regulation => OpenVoltage is null ? null : Ratio.FromDecimalFractions((EmfVolts - NominalVolts) / NominalVolts);

    /// <summary>Resistance of the windings as the regulation gives it; null where that is not stated. [Ω]</summary>
    public ElectricResistance? WindingResistance => OpenVoltage is null ? null : ElectricResistance.FromOhms(WindingOhms);

    /// <summary>Frequency of the mains; null where it is not stated: 50 Hz counts then, at which capacitors discharge for longer.
    /// [Hz]</summary>
    public Frequency? Frequency { get; }

    /// <summary>Nominal voltage times rated current: the size of the transformer. [VA]</summary>
    public ElectricApparentPower RatedApparentPower => ElectricApparentPower.FromVoltamperes(NominalVolts * RatedAmperes);

    internal override double HighestVolts => OpenVoltage is null ? base.HighestVolts : EmfVolts * (1 + Share);

    /// <summary>The voltage behind the winding at the nominal mains voltage, RMS. [V]</summary>
    internal double EmfVolts { get; }

    internal double WindingOhms { get; }

    internal double Hertz => Frequency?.Hertz ?? SupplyConstants.LowerMainsFrequency.Value;

    internal double Share => Tolerance.DecimalFractions;

    /// <summary>A transformer, as its plate states it.</summary>
    /// <param name="size">Rated apparent power, above 0. [VA]</param>
    /// <param name="rated">Voltage at the rated load, RMS, from 1 nV to 1 MV. [V]</param>
    /// <param name="open">Voltage without a load, RMS, above <paramref name="rated"/> and at most twice as much. [V]</param>
    /// <param name="primaryTolerance">How far the mains may be off the nominal voltage of the primary, from 0 to 0.5. [1]</param>
    /// <param name="frequency">Frequency of the mains, from 10 Hz to 1 kHz; null where it is not stated. [Hz]</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <example>
    /// <code>
    /// AcOutput output = AcOutput.Transformer(ElectricApparentPower.FromVoltamperes(40), rated: ElectricPotential.FromVolts(24),
    ///     open: ElectricPotential.FromVolts(27.5), primaryTolerance: Ratio.FromPercent(10), Frequency.FromHertz(60));
    /// Ratio regulation = output.Regulation!.Value;   // 14.6 %
    /// </code>
    /// </example>
    public static AcOutput Transformer(ElectricApparentPower size, ElectricPotential rated, ElectricPotential open, Ratio primaryTolerance,
        Frequency? frequency = null)
    {
        double volts = Require.SourceVolts(rated.Volts, nameof(rated));
        double amperes = Require.Positive((double)size.Voltamperes, nameof(size), "VA") / volts;
        Require.Within(primaryTolerance.DecimalFractions, 0, 0.5, nameof(primaryTolerance), "");
        return new AcOutput(rated, ElectricCurrent.FromAmperes(amperes), primaryTolerance).WithOpenVoltage(open, frequency);
    }

    /// <summary>The same output as that of a transformer whose voltage without a load is stated: its nominal voltage is then that at the
    /// rated load, and its tolerance that of the mains alone.</summary>
    /// <param name="open">Voltage without a load, RMS, above the nominal one and at most twice as much. [V]</param>
    /// <param name="frequency">Frequency of the mains, from 10 Hz to 1 kHz; null where it is not stated. [Hz]</param>
    /// <remarks>What it loses from no load to the rated load is taken as the resistance of its windings: <see cref="Sources.Regulation"/>.
    /// It is that of a fault too, and without a limit, unless other data is stated. More than the rated current heats it: that, and no
    /// sudden limit, is its overload. Class 2 is a listing, to be claimed of the outputs of a box.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <example><code>AcOutput stated = output.WithOpenVoltage(ElectricPotential.FromVolts(27.5),
    /// Frequency.FromHertz(60));</code></example>
    public AcOutput WithOpenVoltage(ElectricPotential open, Frequency? frequency = null)
    {
        double volts = Require.Within(open.Volts, NominalVolts, 2 * NominalVolts, nameof(open), "V");
        if (!(volts > NominalVolts)) throw Require.OutOfRange(volts, nameof(open), "V", Invariant($"above the rated {NominalVolts}"));
        if (frequency is Frequency given) Require.Within(given.Hertz, 10, 1000, nameof(frequency), "Hz");
        return new AcOutput(this, open, frequency);
    }

    internal override SupplyOutput WithRating(ElectricCurrent rated)
    {
        double factor = rated.Amperes / RatedAmperes;
        var larger = new AcOutput(Nominal, rated, Tolerance, SourceResistance / factor, Overload?.Times(factor), Rise);
        return OpenVoltage is ElectricPotential open ? larger.WithOpenVoltage(open, Frequency) : larger;
    }
}
