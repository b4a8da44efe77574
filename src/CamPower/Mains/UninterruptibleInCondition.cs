using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Mains;

/// <summary>An uninterruptible supply in a condition: what its boxes take, and how long it carries them.</summary>
/// <remarks>Immutable. The runtime is at least that of the next larger load that is stated. It is at most on the line between two
/// points, for the curve of a runtime is convex.</remarks>
public sealed class UninterruptibleInCondition
{
    private readonly UninterruptibleSupply _supply;
    private readonly double? _watts, _voltamperes, _peakAmperes;
    private readonly double _ratedPeakAmperes;

    internal UninterruptibleInCondition(
        UninterruptibleSupply supply, Condition condition, double lineVolts, IReadOnlyList<LineDraw> draws)
    {
        _supply = supply;
        Condition = condition;
        Draws = draws;
        if (draws.All(d => d.Power is not null)) _watts = draws.Sum(d => (double)d.Power!.Value.Watts);
        if (draws.All(d => d.ApparentPower is not null)) _voltamperes = draws.Sum(d => d.ApparentPower!.Value.Voltamperes);
        if (draws.All(d => d.Amperes is not null && d.Box.Supply.Input?.CrestFactor is not null))
        {
            _peakAmperes = draws.Sum(d => d.Amperes!.Value * d.Box.Supply.Input!.CrestFactor!.Value);
        }

        _ratedPeakAmperes = supply.Voltamperes / lineVolts * (supply.CrestFactor ?? 1);
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>What each box takes, in the site's order.</summary>
    public IReadOnlyList<LineDraw> Draws { get; }

    /// <summary>Power that its boxes take; null where that of one is not known. [W]</summary>
    public Power? Power => _watts is double watts ? UnitsNet.Power.FromWatts(watts) : null;

    /// <summary>Apparent power that its boxes take; null where that of one is not known. [VA]</summary>
    public ElectricApparentPower? ApparentPower =>
        _voltamperes is double apparent ? ElectricApparentPower.FromVoltamperes(apparent) : null;

    /// <summary>How long it carries them at least, with a new battery; null where their power is not known. [s]</summary>
    public Duration? Runtime => _watts is double watts ? Duration.FromSeconds(_supply.LeastSecondsAt(watts)) : null;

    /// <summary>The power against the rated one.</summary>
    public Judgment OfPower => _watts is double watts
        ? Judgment.AtMost(watts, _supply.Watts, _supply.Watts, w => UnitsNet.Power.FromWatts(w))
        : Judgment.Unknown("efficiency of the supply");

    /// <summary>The apparent power against the rated one.</summary>
    public Judgment OfApparentPower => _voltamperes is double apparent
        ? Judgment.AtMost(apparent, _supply.Voltamperes, _supply.Voltamperes, s => ElectricApparentPower.FromVoltamperes(s))
        : Judgment.Unknown("power factor of the supply");

    /// <summary>The peaks of the input currents against what its crest factor lets at its rating.</summary>
    public Judgment OfPeak => _supply.CrestFactor is null ? Judgment.Unknown("crest factor of the uninterruptible supply")
        : _peakAmperes is double peak
            ? Judgment.AtMost(peak, _ratedPeakAmperes, _ratedPeakAmperes, a => ElectricCurrent.FromAmperes(a))
            : Judgment.Unknown("crest factor of the supply");

    /// <summary>The runtime against the time wanted; policy: with 80 % of the battery left. A judgment of nothing where no time is
    /// wanted.</summary>
    /// <remarks>Unknown where only a point nearer to the load would decide. Source of the policy:
    /// <see cref="Sources.Ieee485Aging"/>.</remarks>
    public Judgment Lasts
    {
        get
        {
            if (_supply.BackupTime is not Duration wanted) return default;
            if (_watts is not double watts) return Judgment.Unknown("efficiency of the supply");
            double least = _supply.LeastSecondsAt(watts), most = _supply.MostSecondsAt(watts),
                aged = BatteryConstants.EndOfLife.Value / 100;
            if (Limits.IsBelow(least, wanted.Seconds) && !Limits.IsBelow(most, wanted.Seconds))
            {
                return Judgment.Unknown("runtime of the uninterruptible supply nearer to its load");
            }

            double value = Limits.IsBelow(least, wanted.Seconds) ? most : least;
            return Judgment.AtLeast(value, wanted.Seconds, wanted.Seconds / aged, s => Duration.FromSeconds(s));
        }
    }

    /// <summary>Whether its power, apparent power or peak is above its rating.</summary>
    internal bool IsOverloaded => OfPower.IsViolated || OfApparentPower.IsViolated || OfPeak.IsViolated;

    internal double KnownWatts => _watts ?? 0;

    /// <summary>Power, apparent power and runtime in the invariant culture; never throws.</summary>
    public override string ToString() => _watts is double watts
        ? FormattableString.Invariant($"{Condition}: {watts:0.0} W, ")
            + (_voltamperes is double apparent ? FormattableString.Invariant($"{apparent:0.0} VA, ") : "VA not known, ")
            + FormattableString.Invariant($"at least {_supply.LeastSecondsAt(watts) / 60:0.#} min")
        : $"{Condition}: power not known";
}
