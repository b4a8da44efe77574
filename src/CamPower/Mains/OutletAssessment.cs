using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Mains;

/// <summary>An outlet in every condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class OutletAssessment
{
    internal OutletAssessment(Outlet outlet, IReadOnlyList<OutletInCondition> inConditions)
    {
        Outlet = outlet;
        InConditions = inConditions;
        Worst = inConditions.Aggregate((worst, other) => other.KnownAmperes > worst.KnownAmperes ? other : worst);
    }

    /// <summary>The outlet.</summary>
    public Outlet Outlet { get; }

    /// <summary>The outlet in each condition, in the site's order.</summary>
    public IReadOnlyList<OutletInCondition> InConditions { get; }

    /// <summary>The condition of the largest known current.</summary>
    public OutletInCondition Worst { get; }

    /// <summary>The outlet and its worst condition in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Outlet}: {Worst} of {Outlet.MostAmperes:0.00} A");
}
