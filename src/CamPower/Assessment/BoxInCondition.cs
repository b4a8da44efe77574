using System;
using System.Linq;
using CamPower.Assessment;
using CamPower.Heat;
using UnitsNet;

namespace CamPower;

/// <summary>The total current of a box in one condition against what its supply may deliver there.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxInCondition
{
    private readonly bool _hasEnclosure;
    private readonly double _hotterAmperes, _coldestCelsius;
    private readonly Lazy<RailLoad> _outputsAsItFalls, _outputsOnSupplyAlone;

    /// <param name="box">The box.</param>
    /// <param name="condition">The condition.</param>
    /// <param name="altitudeMeters">Height above the sea. [m]</param>
    /// <param name="amperes">What all its outputs take. [A]</param>
    /// <param name="areOwnLossesKnown">Whether it is known what the box itself loses in its enclosure.</param>
    /// <param name="losses">What is lost in its enclosure, or null.</param>
    /// <param name="heat">How warm its enclosure gets, or null.</param>
    /// <param name="isDemandOnly">Whether some output has no operating point.</param>
    /// <param name="rail">What its voltage does; null where it is not asked for.</param>
    /// <param name="outputsAsItFalls">What its outputs take as the voltage of a source falls.</param>
    internal BoxInCondition(DistributionBox box, Condition condition, double altitudeMeters, double amperes, bool areOwnLossesKnown,
        BoxLosses? losses, HeatedEnclosure? heat, bool isDemandOnly, BoxRail? rail, Func<SupplyOutput, RailLoad> outputsAsItFalls)
    {
        Condition = condition;
        Amperes = amperes;
        Losses = losses;
        Heat = heat;
        _hasEnclosure = box.Enclosure is not null;
        AreOwnLossesUnknown = _hasEnclosure && !areOwnLossesKnown;
        SupplyCelsius = Heat?.InsideCelsius ?? box.AirIn(condition.At);
        _coldestCelsius = box.FedFrom is null
            ? condition.At.BoxCelsius
            : Math.Min(condition.At.BoxCelsius, condition.At.CameraCelsius);
        LowestCelsius = box.Supply.Derating.LowestCelsius;
        HighestCelsius = box.Supply.Derating.HighestCelsiusAt(altitudeMeters);
        double? lineVolts = box.FedFrom is null ? condition.LineVolts : null;
        DeratedAmperes = box.Supply.DeratedAmperesAt(SupplyCelsius, lineVolts, altitudeMeters);
        _hotterAmperes = Heat is null
            ? DeratedAmperes
            : box.Supply.DeratedAmperesAt(SupplyCelsius + UncertainKelvins, lineVolts, altitudeMeters);
        if (Heat is { Breaches.Count: > 0, UncertainKelvins: double quarter })
        {
            double twice = SupplyCelsius + (4 * quarter);
            TakesTwiceTheRise = !Limits.IsAbove(twice, HighestCelsius)
                && !Limits.IsAbove(amperes, box.Supply.DeratedAmperesAt(twice, lineVolts, altitudeMeters));
        }

        IsDemandOnly = isDemandOnly;
        SupplyState = rail?.State ?? SupplyState.StaysUp;
        RailVolts = rail?.Volts ?? box.Supply.Output.LowestVolts;
        StartingCurrent = rail?.StartingCurrent ?? default;
        StartingInrush = rail?.StartingInrush ?? default;
        ReturningCurrent = rail?.ReturningCurrent ?? default;
        _outputsAsItFalls = new Lazy<RailLoad>(() => outputsAsItFalls(box.RailSourceIn(condition.At.BoxCelsius)));
        _outputsOnSupplyAlone = new Lazy<RailLoad>(() => outputsAsItFalls(box.Supply.Output));
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>Total current of all outputs. [A]</summary>
    public ElectricCurrent TotalCurrent => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>
    /// Temperature of the air around the supply and the protective devices: in the enclosure, or that of the surroundings where the box
    /// declares none; null where it is not known, because the efficiency of the supply, or of another one in its cabinet, is not declared.
    /// [°C]
    /// </summary>
    /// <remarks>It is a lower bound where <see cref="IsInsideAtLeast"/> says so.</remarks>
    public Temperature? InsideTemperature => IsInsideUnknown ? null : Temperature.FromDegreesCelsius(SupplyCelsius);

    /// <summary>Whether it is at least so warm inside: the supply, or another one in its cabinet, is loaded beyond the end of its declared
    /// efficiency, and counts with what it loses there.</summary>
    public bool IsInsideAtLeast => Losses?.IsAtLeast == true;

    /// <summary>Temperature in the enclosure. A condition shorter than 5 min uses the losses of the lasting conditions. Null if no
    /// enclosure is stated, or the losses are unknown.</summary>
    public HeatedEnclosure? Heat { get; }

    /// <summary>Losses that warm the enclosure; null where no enclosure is stated, or the efficiency of a supply in it is not
    /// stated.</summary>
    public BoxLosses? Losses { get; }

    /// <summary>What the supply may deliver at the temperature inside, the input voltage of the condition and the altitude of the site; 0
    /// where it is not rated to run. [A]</summary>
    /// <remarks>If <see cref="InsideTemperature"/> is unknown, this rating uses the air around the box and is too high. If that is a lower
    /// bound, the true rating is this or less.</remarks>
    public ElectricCurrent DeratedRating => ElectricCurrent.FromAmperes(DeratedAmperes);

    /// <summary>Whether some output has no operating point: its part of the total is then what its loads ask for at the supply's
    /// voltage.</summary>
    public bool IsDemandOnly { get; }

    /// <summary>Total current against the derated rating. Unknown where the result "holds" depends on an unknown temperature
    /// inside.</summary>
    /// <param name="headroom">The share of the rating that a policy allows, above 0 and at most 1; 1 for all of it. [1]</param>
    /// <remarks>Where the temperature inside was calculated the margin is no less than what the rating loses if the rise is a quarter
    /// larger. A condition that is stated to be shorter than 3 h may have all of the rating: headroom is for what lasts.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="headroom"/> is outside its range.</exception>
    /// <example>
    /// <code>
    /// Judgment judged = assessment.Boxes[0].Worst.Load(headroom: Ratio.FromPercent(80));
    /// </code>
    /// </example>
    public Judgment Load(Ratio headroom)
    {
        double share = Require.Positive(Require.Within(headroom.DecimalFractions, 0, 1, nameof(headroom), ""), nameof(headroom), "");
        double policy = Condition.IsContinuous ? DeratedAmperes * share : DeratedAmperes,
            allowed = Amperes > 0 ? Math.Min(policy, _hotterAmperes) : DeratedAmperes;
        return IfKnown(Judgment.AtMost(Amperes, DeratedAmperes, allowed, a => ElectricCurrent.FromAmperes(a)));
    }

    /// <summary>The air around the supply against the hottest in which it is rated to run.</summary>
    /// <remarks>A calculated temperature has a quarter of its rise as its margin (<see cref="Sources.EnclosureHeatBalance"/>), a stated one
    /// none. A supply that gives nothing is energized all the same, and ages in the heat.</remarks>
    public Judgment HottestAir =>
        IfKnown(Judgment.AtMost(SupplyCelsius, HighestCelsius, HighestCelsius - UncertainKelvins, t => Temperature.FromDegreesCelsius(t)));

    /// <summary>The air around the supply against the coldest in which it is rated to run; a judgment of nothing where it has to give
    /// nothing.</summary>
    /// <remarks>The margin is that of <see cref="HottestAir"/>. Losses that are not known only warm the air.</remarks>
    public Judgment ColdestAir
    {
        get
        {
            if (!(Amperes > 0)) return default;
            Judgment judged = Judgment.AtLeast(
                SupplyCelsius, LowestCelsius, LowestCelsius + UncertainKelvins, t => Temperature.FromDegreesCelsius(t));
            return judged.IsViolated && IsWarmerThanKnown ? Judgment.Unknown(InsideNotStated) : judged;
        }
    }

    /// <summary>The air around the box against the coldest in which its supply is rated to run: after an outage it starts before its own
    /// losses warm it. A judgment of nothing where it has to give nothing.</summary>
    internal Judgment ColdestStart => Amperes > 0
        ? Judgment.AtLeast(_coldestCelsius, LowestCelsius, LowestCelsius, t => Temperature.FromDegreesCelsius(t))
        : default;

    /// <summary>What its voltage does with everything on: a supply that is asked for more than its limit does what it is declared to do in
    /// overload.</summary>
    /// <remarks>If the supply has no current limit, or its overload behavior is not stated, the state is unknown above its rated
    /// current.</remarks>
    public SupplyState SupplyState { get; }

    /// <summary>The lowest voltage at its terminals with everything on; 0 where it pulses, is off or finds no balance, null where it is not
    /// known. [V]</summary>
    public ElectricPotential? SupplyVoltage => SupplyState switch
    {
        SupplyState.Unknown => null,
        SupplyState.StaysUp or SupplyState.Dips => ElectricPotential.FromVolts(RailVolts),
        _ => ElectricPotential.Zero,
    };

    /// <summary>Current of the devices from their turn-on voltages up, as the voltage of the supply rises, against what the supply gives in
    /// its limit. The voltage with the smallest margin counts.</summary>
    /// <remarks>A device that is declared to wait longer than the supply takes to rise is not in it. A judgment of nothing where no limit
    /// is declared, or no turn-on voltage.</remarks>
    public Judgment StartingCurrent { get; }

    /// <summary>Current of the devices that stay on during a dip of the voltage, at their drop-out voltages, against the current that the
    /// supply gives at the same voltages.</summary>
    /// <remarks>They draw at once; the others restart, which <see cref="StartingCurrent"/> judges. A judgment of nothing where no limit is
    /// declared, or no drop-out voltage.</remarks>
    public Judgment ReturningCurrent { get; }

    /// <summary>What the inputs of its devices take together as they charge, against the limit of a supply that pulses or shuts down before
    /// they have.</summary>
    internal Judgment StartingInrush { get; }

    internal double RailVolts { get; }

    /// <summary>What its outputs take as its voltage falls: of the devices that are up, each output by its own way out and back.</summary>
    internal RailLoad OutputsAsItFalls => _outputsAsItFalls.Value;

    /// <summary>The same of its supply alone: its battery is dead, or the fuse of it open.</summary>
    internal RailLoad OutputsOnSupplyAlone => _outputsOnSupplyAlone.Value;

    internal double Amperes { get; }

    /// <summary>By how much the calculated air inside may be off: a quarter of its rise; 0 where it is stated. [K]</summary>
    internal double UncertainKelvins => Heat?.UncertainKelvins ?? 0;

    /// <summary>Whether its supply would still be in order if the calculated rise were twice as large. Asked only where the calculation is
    /// outside its validated range; otherwise false.</summary>
    internal bool TakesTwiceTheRise { get; }

    /// <summary>Whether it may be warmer inside than <see cref="SupplyCelsius"/>, by an unknown amount.</summary>
    internal bool IsWarmerThanKnown => IsInsideUnknown || IsInsideAtLeast;

    /// <summary>What would have to be stated for the temperature inside.</summary>
    internal const string InsideNotStated = "the efficiency of every supply in the enclosure up to its load";

    internal double DeratedAmperes { get; }

    internal bool IsInsideUnknown => _hasEnclosure && Heat is null;

    /// <summary>Whether it is in an enclosure, and what it loses there is not known.</summary>
    internal bool AreOwnLossesUnknown { get; }

    /// <summary>Whether it is in an enclosure, and it is only known what it loses there at least.</summary>
    internal bool AreOwnLossesAtLeast => Losses?.AreOwnAtLeast == true;

    /// <summary>The temperature that derates the supply: inside, or around the box where the inside is not known. [°C]</summary>
    internal double SupplyCelsius { get; }

    /// <summary>The coldest air in which the supply is rated to run. [°C]</summary>
    internal double LowestCelsius { get; }

    /// <summary>The hottest air in which the supply is rated to run. [°C]</summary>
    internal double HighestCelsius { get; }

    /// <summary>Whether this is worse than another condition of the same box: less of the rating left.</summary>
    internal bool IsWorseThan(BoxInCondition other) =>
        Loading > other.Loading || (Loading.Equals(other.Loading) && Amperes > other.Amperes);

    // What warmer air would only make worse is known only once it is broken, or thin.
    private Judgment IfKnown(Judgment judged) =>
        judged.Verdict == Verdict.Holds && IsWarmerThanKnown ? Judgment.Unknown(InsideNotStated) : judged;

    // Nothing is no load, also of a supply that may not run.
    private double Loading => Amperes > 0 ? Amperes / DeratedAmperes : 0;

    /// <summary>How the temperature inside was worked out, from the losses on.</summary>
    /// <exception cref="InvalidOperationException">The box has no enclosure, or its losses are not known.</exception>
    public Derivation Explain() => Heat is null || Losses is null
        ? throw new InvalidOperationException(
            "There is nothing to explain: the box has no enclosure, or the efficiency of a supply in it is not declared.")
        : new($"{Heat.Enclosure}, {Condition}", Losses.Steps().Concat(HeatDerivation.Steps(Heat)), Heat.ToString());

    /// <summary>Condition, total and rating in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Condition}: {(IsDemandOnly ? "asked for " : "")}{Amperes:0.###} A of {DeratedAmperes:0.###} A");
}
