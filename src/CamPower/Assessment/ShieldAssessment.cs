using System;
using System.Collections.Generic;
using CamPower.Assessment;

namespace CamPower;

/// <summary>One video shield in every condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class ShieldAssessment
{
    internal ShieldAssessment(VideoLink link, ShieldInCondition[] inConditions)
    {
        Link = link;
        InConditions = Array.AsReadOnly(inConditions);
        Worst = WorstCase.Of(inConditions, (a, b) => a.LargestVolts > b.LargestVolts);
    }

    /// <summary>The shield.</summary>
    public VideoLink Link { get; }

    /// <summary>The shield in each condition, in the site's order.</summary>
    public IReadOnlyList<ShieldInCondition> InConditions { get; }

    /// <summary>The condition with the largest voltage along the shield, be it the DC shift or that at mains frequency.</summary>
    public ShieldInCondition Worst { get; }

    /// <summary>The worst condition in words; never throws.</summary>
    public override string ToString() => Worst.ToString();
}
