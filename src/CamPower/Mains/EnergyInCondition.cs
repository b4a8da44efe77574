using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Mains;

/// <summary>What all boxes of a site take from the mains in a condition: power, and energy over its time.</summary>
/// <remarks>Immutable. An upper figure: every supply gives its highest voltage, and every output its larger current.</remarks>
public sealed class EnergyInCondition
{
    internal EnergyInCondition(Condition condition, IReadOnlyList<LineDraw> draws)
    {
        Condition = condition;
        KnownWatts = draws.Sum(d => d.MeanWatts ?? 0);
        NotKnown = Array.AsReadOnly([.. draws.Where(d => d.MeanWatts is null).Select(d => d.Box)]);
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>The boxes whose power from the line is not known: the efficiency of the supply is not stated at its load.</summary>
    public IReadOnlyList<DistributionBox> NotKnown { get; }

    /// <summary>Power from the line, standby included; null where that of a box is not known. [W]</summary>
    public Power? Power => IsKnown ? UnitsNet.Power.FromWatts(KnownWatts) : null;

    /// <summary>Energy of once through the condition; null where its power or its duration is not known. [kWh]</summary>
    public Energy? Energy => Over(Condition.Duration);

    /// <summary>Energy of the condition's hours in a year; null where its power or its hours are not known. [kWh]</summary>
    public Energy? EnergyAYear => Over(Condition.HoursAYear);

    internal bool IsKnown => NotKnown.Count == 0;

    internal double KnownWatts { get; }

    /// <summary>The condition and its power in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Condition}: {(IsKnown ? "" : "at least ")}{KnownWatts:0.0} W");

    private Energy? Over(Duration? time) =>
        IsKnown && time is Duration lasts ? UnitsNet.Energy.FromKilowattHours(KnownWatts * lasts.Hours / 1000) : null;
}
