using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower;

/// <summary>Asks a run what a load at its far end gets, and how far it can be taken: how long, how small, how much load, from how little
/// voltage, how hot.</summary>
/// <remarks>
/// Every question of how far is the inverse of <see cref="Feed"/>, in closed form: the load line solved for the
/// thing asked for. The answer says what limits it, and holds when it is fed forward. A limit is the lowest voltage
/// accepted at the load, a largest drop, or both; where the run would collapse first, collapse is the limit.
/// Source: <see cref="Sources.Kirchhoff"/>.
/// </remarks>
public static class CableRunQuestions
{
    private const double MostMeters = 1e6, MostWatts = 1e9, LeastVolts = 1e-9, MostVolts = 1e6;
    private const double LeastOperating = 1e-6, MostOperating = 1e7;
    private const int Halvings = 120;
    private const double SquareMillimeters = 1e6, LeastSquareMillimeters = 1e-3, MostSquareMillimeters = 1e6;

    /// <summary>The run at one conductor temperature, ready to be asked about many loads and voltages.</summary>
    /// <param name="run">The run.</param>
    /// <param name="conductorTemperature">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <exception cref="ArgumentNullException"><paramref name="run"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="conductorTemperature"/> is outside a material's range.</exception>
    public static PreparedRun At(this CableRun run, Temperature conductorTemperature) =>
        new(Require.NotNull(run, nameof(run)), run.CelsiusOf(conductorTemperature, nameof(conductorTemperature)));

    /// <summary>Voltage and current of a load at the far end of the run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="load">The load.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The answer, also where the run cannot carry the load.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>250 ft of 18 AWG solid copper at 20 °C, 9 W and 12 V give 8.70 V at the load.</example>
    public static RunResult Feed(this CableRun run, Load load, ElectricPotential from, Temperature conductorAt) =>
        new PreparedRun(Require.NotNull(run, nameof(run)), run.CelsiusOf(conductorAt, nameof(conductorAt))).Feed(load, from);

    /// <summary>How long the run may be, one way.</summary>
    /// <param name="run">The run; its last length of cable is made longer or shorter, everything else in it stays.</param>
    /// <param name="load">The load at its far end.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="accepted">How little voltage is accepted at the load.</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The one-way length of the whole run, up to 1000 km; no value where even without its last length of cable the run would not
    /// do. [m]</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>9 W from 12 V over 18 AWG solid copper at 20 °C may run 157 ft if 10 V are enough.</example>
    public static RunAnswer<Length> LongestLength(
        this CableRun run, Load load, ElectricPotential from, VoltageLimit accepted, Temperature conductorAt)
    {
        RunQuestion question = Ask(run, load, from, accepted, conductorAt);
        double perMeter = new CableSegment(question.Run.LastSegment().Cable, Length.FromMeters(1)).OhmsAt(question.DegreesCelsius);
        double others = question.Run.WithLastSegment(0).OhmsAt(question.DegreesCelsius);
        double meters = RunLimitKernel.Meters(question.MostOhms, others, perMeter), rest = question.Run.WithLastSegment(0).OneWayMeters;
        return question.Largest(
            meters,
            scale: Math.Max(question.MostOhms / perMeter, rest),
            least: 0,
            most: MostMeters,
            question.ResistanceLimit,
            atMost: BindingLimit.CalculatedRange,
            feed: m => question.Feed(question.Run.WithLastSegment(m)),
            read: m => Length.FromMeters(rest + m),
            explain: answer => RunLimitDerivation.OfLength(question, answer));
    }

    /// <summary>How long the run may be, one way, so that a short at its far end still operates its protective device in time.</summary>
    /// <param name="run">The run; its last length of cable is made longer or shorter, everything else in it stays.</param>
    /// <param name="protection">The protective device at its start, at its maximum resistance.</param>
    /// <param name="from">Voltage at the source end, the lowest that it may have, from 1 nV to 1 MV. [V]</param>
    /// <param name="sourceResistance">Resistance of the source and of everything before the run, at least 0. [Ω]</param>
    /// <param name="within">The time in which it must have operated for certain, above 0. [s]</param>
    /// <param name="ambient">Temperature of the air around the protective device, in which it is known.</param>
    /// <param name="conductorAt">Temperature of every conductor as the short begins, inside their materials' ranges.</param>
    /// <returns>The one-way length of the whole run; null where it does not operate in time even without its last length of cable. [m]
    /// </returns>
    /// <remarks>The source is taken to give what the loop asks for: one that limits its current, as most supplies do, may give too
    /// little at any length, which the fault study of a site answers. Breaking capacity is not asked either.</remarks>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>An electronic limit that opens from 2.2 A needs a loop of at most 5.45 Ω at 12 V.</example>
    public static Length? LongestLengthThatOperates(this CableRun run, ProtectiveDevice protection, ElectricPotential from,
        ElectricResistance sourceResistance, Duration within, Temperature ambient, Temperature conductorAt)
    {
        double celsius = Require.NotNull(run, nameof(run)).CelsiusOf(conductorAt, nameof(conductorAt));
        double factor = Require.NotNull(protection, nameof(protection)).CurrentFactorAt(ambient, nameof(ambient));
        double before = Require.NotNegative(sourceResistance.Ohms, nameof(sourceResistance), "Ω")
            + (protection.GreatestOhms * protection.ResistanceGrowthIn(Celsius.Of(ambient)));
        double seconds = Require.Positive(within.Seconds, nameof(within), "s"), volts = Require.SourceVolts(from.Volts, nameof(from));
        if (LeastOperatingAmperes(protection, factor, seconds) is not double amperes) return null;
        double perMeter = new CableSegment(run.LastSegment().Cable, Length.FromMeters(1)).OhmsAt(celsius);
        CableRun rest = run.WithLastSegment(0);
        double meters = ((volts / amperes) - before - rest.OhmsAt(celsius)) / perMeter;
        return meters < 0 ? null : Length.FromMeters(rest.OneWayMeters + meters);
    }

    /// <summary>How much resistance the loop to a load may have, out and back with all joints and protective devices.</summary>
    /// <param name="load">The load.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="accepted">How little voltage is accepted at the load.</param>
    /// <returns>The resistance; null where the source itself is below what is accepted. [Ω]</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">The load draws nothing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is outside its range.</exception>
    /// <example>9 W from 12 V may have 2.22 Ω if 10 V are enough: (12 - 10) / 0.9.</example>
    public static ElectricResistance? LargestLoopResistance(Load load, ElectricPotential from, VoltageLimit accepted)
    {
        double volts = Require.SourceVolts(from.Volts, nameof(from));
        double least = Require.NotNull(accepted, nameof(accepted)).LowestVoltsFrom(volts);
        if (least > volts) return null;
        double ohms = RunLimitKernel.OhmsAt(volts,
            Math.Max(least, RunLimitKernel.CollapseVoltsByResistance(volts, Require.NotNull(load, nameof(load)))), load);
        return double.IsInfinity(ohms)
            ? throw new ArgumentException("A load that draws nothing limits no resistance.", nameof(load))
            : ElectricResistance.FromOhms(ohms);
    }

    /// <summary>How small the cross-section of every conductor of the run may be.</summary>
    /// <param name="run">The run; strandings, materials, lengths and joints stay, the sizes of its conductors do not matter.</param>
    /// <param name="load">The load at its far end.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="accepted">How little voltage is accepted at the load.</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The cross-section, from 0.001 mm² to 1 m²; no value where even that would not do. [mm²]</returns>
    /// <exception cref="ArgumentException">A conductor's resistance comes from a table, which says nothing of other sizes.</exception>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>25 A from 230 V over 2300 ft of copper need 116 035 circular mils if 220 V are wanted (Kuphaldt, DC, ch. 12).</example>
    public static RunAnswer<Area> SmallestArea(
        this CableRun run, Load load, ElectricPotential from, VoltageLimit accepted, Temperature conductorAt) =>
        SmallestArea(Ask(run, load, from, accepted, conductorAt));

    /// <summary>The smallest standard size that every conductor of the run may have.</summary>
    /// <param name="run">The run; strandings, materials, lengths and joints stay, the sizes of its conductors do not matter.</param>
    /// <param name="series">The series to choose from: any but <see cref="WireSizeSeries.None"/>.</param>
    /// <param name="load">The load at its far end.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="accepted">How little voltage is accepted at the load.</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The size, by voltage alone: what it may carry and how it is protected is another question. No value where
    /// no size of the series will do. <see cref="BindingLimit.SeriesEnd"/> where its smallest does, or its largest does not.</returns>
    /// <exception cref="ArgumentException">A conductor's resistance comes from a table, which says nothing of other sizes.</exception>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the series has no sizes.</exception>
    public static RunAnswer<WireSize> SmallestSize(this CableRun run, WireSizeSeries series, Load load, ElectricPotential from,
        VoltageLimit accepted, Temperature conductorAt)
    {
        IReadOnlyList<WireSize> sizes = WireSize.Standard(series);
        return sizes.Count > 0
            ? run.SmallestSize(sizes, load, from, accepted, conductorAt)
            : throw new ArgumentOutOfRangeException(nameof(series), series, "The series has no standard sizes.");
    }

    /// <summary>The smallest of some sizes, those that the wholesaler has, that every conductor of the run may have.</summary>
    /// <param name="run">The run; strandings, materials, lengths and joints stay, the sizes of its conductors do not matter.</param>
    /// <param name="sizes">The sizes to choose from, in any order and of any series; at least one.</param>
    /// <param name="load">The load at its far end.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="accepted">How little voltage is accepted at the load.</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The size, by voltage alone: what it may carry and how it is protected is another question. No value where
    /// none of them will do. <see cref="BindingLimit.SeriesEnd"/> where the smallest does, or the largest does not.</returns>
    /// <exception cref="ArgumentException">There is no size, or a conductor's resistance comes from a table, which says nothing of other
    /// sizes.</exception>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or a size is the default value.</exception>
    /// <example>
    /// Odd gauges are standard and rarely sold:
    /// <code>
    /// int[] sold = [22, 20, 18, 16, 14, 12];
    /// RunAnswer&lt;WireSize&gt; size = run.SmallestSize(sold.Select(WireSize.Awg), camera, from, accepted, conductorAt);
    /// </code>
    /// </example>
    public static RunAnswer<WireSize> SmallestSize(this CableRun run, IEnumerable<WireSize> sizes, Load load, ElectricPotential from,
        VoltageLimit accepted, Temperature conductorAt)
    {
        RunQuestion question = Ask(run, load, from, accepted, conductorAt);
        WireSize[] thinnestFirst = [.. Require.NotNull(sizes, nameof(sizes)).OrderBy(s => s)];
        if (thinnestFirst.Length == 0) throw new ArgumentException("There is no size to choose from.", nameof(sizes));
        Require.Positive(thinnestFirst[0].SquareMeters, nameof(sizes), "m²");

        RunAnswer<Area> area = SmallestArea(question);
        for (int i = 0; i < thinnestFirst.Length; i++)
        {
            RunResult result = question.Feed(question.Run.WithSize(thinnestFirst[i]));
            if (question.Accepted.IsMetBy(result))
            {
                return new RunAnswer<WireSize>(thinnestFirst[i], i == 0 ? BindingLimit.SeriesEnd : area.LimitedBy, result, Explain);
            }
        }

        return new RunAnswer<WireSize>(null, area.HasValue ? BindingLimit.SeriesEnd : area.LimitedBy, default, Explain);

        Derivation Explain(RunAnswer<WireSize> answer) => RunLimitDerivation.OfSize(question, area, answer);
    }

    /// <summary>How much constant power the run may carry.</summary>
    /// <param name="run">The run.</param>
    /// <param name="beside">What the load draws beside that power; its own power component does not matter. Of a larger-of
    /// load the power component is what is asked for, its current component stays.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="accepted">How little voltage is accepted at the load.</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The power, up to 1 GW; no value where the other components alone bring the voltage below what is accepted. [W]</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>Over 2 Ω from 12 V a camera may draw 10 W if 10 V are enough, and never more than 18 W.</example>
    public static RunAnswer<Power> LargestPower(
        this CableRun run, Load beside, ElectricPotential from, VoltageLimit accepted, Temperature conductorAt)
    {
        RunQuestion question = Ask(run, Require.NotNull(beside, nameof(beside)), from, accepted, conductorAt);
        double ohms = question.Run.OhmsAt(question.DegreesCelsius),
            collapse = RunLimitKernel.CollapseVoltsByPower(question.SourceVolts, ohms, beside);
        BindingLimit limit = collapse > question.AcceptedVolts
            ? BindingLimit.Collapse
            : question.Accepted.StricterFrom(question.SourceVolts);
        return question.Largest(
            MostWattsOf(question, ohms),
            scale: question.SourceVolts * question.SourceVolts / ohms,
            least: 0,
            most: MostWatts,
            limit,
            atMost: BindingLimit.CalculatedRange,
            feed: w => (question with { Load = beside.WithPower(w) }).Feed(question.Run),
            read: w => Power.FromWatts(w),
            explain: answer => RunLimitDerivation.OfPower(question, answer));
    }

    /// <summary>How much voltage the source must have.</summary>
    /// <param name="run">The run.</param>
    /// <param name="load">The load at its far end.</param>
    /// <param name="accepted">How little voltage is accepted at the load.</param>
    /// <param name="conductorAt">Temperature of every conductor of the run, inside their materials' ranges.</param>
    /// <returns>The lowest source voltage, from 1 nV; no value where 1 MV is not enough, as for a resistance component whose drop is too
    /// large at every voltage. [V]</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>9 W over 2 Ω need 11.8 V at the source if 10 V are wanted: 10 + 2·0.9.</example>
    public static RunAnswer<ElectricPotential> NeededSourceVoltage(
        this CableRun run, Load load, VoltageLimit accepted, Temperature conductorAt)
    {
        RunQuestion question = Ask(
            Require.NotNull(run, nameof(run)), Require.NotNull(load, nameof(load)), LeastVolts, Require.NotNull(accepted, nameof(accepted)),
            conductorAt);
        var needed = NeededSource.Of(question);
        return question.Smallest(
            needed.SourceVolts,
            scale: needed.SourceVolts,
            least: LeastVolts,
            most: MostVolts,
            needed.Limit,
            feed: v => (question with { SourceVolts = v }).Feed(run),
            read: v => ElectricPotential.FromVolts(v),
            explain: answer => RunLimitDerivation.OfSource(question, answer));
    }

    /// <summary>How hot the conductors of the run may become.</summary>
    /// <param name="run">The run.</param>
    /// <param name="load">The load at its far end.</param>
    /// <param name="from">Voltage at the source end, from 1 nV to 1 MV. [V]</param>
    /// <param name="accepted">How little voltage is accepted at the load.</param>
    /// <returns>The temperature, by voltage alone: what the insulation withstands is another question. The end of the
    /// materials' range where that would do; no value where even its start would not. [°C]</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="from"/> is outside its range.</exception>
    public static RunAnswer<Temperature> HighestTemperature(this CableRun run, Load load, ElectricPotential from, VoltageLimit accepted)
    {
        RunQuestion question = new RunQuestion(Require.NotNull(run, nameof(run)), Require.NotNull(load, nameof(load)),
            Require.SourceVolts(from.Volts, nameof(from)), run.ValidToCelsius, Require.NotNull(accepted, nameof(accepted)));
        bool anyTemperature = run.OhmsAt(run.ValidToCelsius) <= question.MostOhms;
        double celsius = anyTemperature ? double.PositiveInfinity
            : run.OhmsPerKelvin > 0 ? RunLimitKernel.DegreesCelsius(question.MostOhms, run.OhmsAt20C, run.OhmsPerKelvin)
            : double.NegativeInfinity;
        return question.Largest(
            celsius,
            scale: question.MostOhms / run.OhmsPerKelvin,
            least: run.ValidFromCelsius,
            most: run.ValidToCelsius,
            question.ResistanceLimit,
            atMost: BindingLimit.TemperatureRange,
            feed: t => (question with { DegreesCelsius = t }).Feed(run),
            read: t => Temperature.FromDegreesCelsius(t),
            explain: answer => RunLimitDerivation.OfTemperature(question, answer));
    }

    /// <summary>The closed form of the largest power, before rounding and the ends of the range; NaN where no power is left. [W]</summary>
    internal static double MostWattsOf(RunQuestion question, double ohms)
    {
        if (question.SourceIsTooLow) return double.NaN;
        if (ohms == 0) return double.PositiveInfinity;
        double volts = Math.Max(question.AcceptedVolts, RunLimitKernel.CollapseVoltsByPower(question.SourceVolts, ohms, question.Load));
        bool currentLeavesTooLittle = Exact.MinusProduct(question.SourceVolts, ohms, question.Load.Amperes) < volts;
        return currentLeavesTooLittle ? double.NaN : RunLimitKernel.WattsAt(question.SourceVolts, ohms, volts, question.Load);
    }

    private static RunAnswer<Area> SmallestArea(RunQuestion question)
    {
        double most = question.MostOhms, joints = question.Run.JointOhms();
        double area = most > joints
            ? RunLimitKernel.SquareMeters(most, joints, question.Run.OhmSquareMeters(question.DegreesCelsius))
            : double.PositiveInfinity;
        return question.Smallest(
            area * SquareMillimeters,
            scale: area * SquareMillimeters,
            least: LeastSquareMillimeters,
            most: MostSquareMillimeters,
            question.ResistanceLimit,
            feed: a => question.Feed(question.Run.WithSize(WireSize.SquareMillimeters(a))),
            read: a => Area.FromSquareMillimeters(a),
            explain: answer => RunLimitDerivation.OfArea(question, answer));
    }

    // The smallest current from which it has opened for certain in a time: a larger one opens it no later.
    private static double? LeastOperatingAmperes(ProtectiveDevice protection, double factor, double seconds)
    {
        double no = LeastOperating, yes = MostOperating;
        if (!Operates(yes)) return null;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = Math.Sqrt(no * yes);
            if (Operates(middle)) yes = middle;
            else no = middle;
        }

        return yes;

        bool Operates(double amperes) => !Limits.IsAbove(protection.OpeningAt(amperes, factor).LatestSeconds, seconds);
    }

    // The parameters of every question, checked.
    private static RunQuestion Ask(CableRun run, Load load, ElectricPotential from, VoltageLimit accepted, Temperature conductorAt)
    {
        Require.NotNull(run, nameof(run));
        Require.NotNull(load, nameof(load));
        return Ask(run, load, Require.SourceVolts(from.Volts, nameof(from)), Require.NotNull(accepted, nameof(accepted)), conductorAt);
    }

    private static RunQuestion Ask(CableRun run, Load load, double sourceVolts, VoltageLimit accepted, Temperature conductorAt) =>
        new(run, load, sourceVolts, run.CelsiusOf(conductorAt, nameof(conductorAt)), accepted);
}
