using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Mains;

/// <summary>A receptacle in every condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class ReceptacleAssessment
{
    internal ReceptacleAssessment(Receptacle receptacle, IReadOnlyList<ReceptacleInCondition> inConditions)
    {
        Receptacle = receptacle;
        InConditions = inConditions;
        Worst = ReceptacleInCondition.WorstOf(inConditions);
    }

    /// <summary>The receptacle.</summary>
    public Receptacle Receptacle { get; }

    /// <summary>The receptacle in each condition, in the site's order.</summary>
    public IReadOnlyList<ReceptacleInCondition> InConditions { get; }

    /// <summary>The condition of the largest known current.</summary>
    public ReceptacleInCondition Worst { get; }

    /// <summary>The receptacle and its worst condition in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Receptacle}: {Worst} of {Receptacle.MostAmperes:0.00} A");
}
