using System;
using System.Collections.Generic;
using CamPower.Assessment;

namespace CamPower;

/// <summary>One box or adapter in every condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxAssessment
{
    internal BoxAssessment(DistributionBox box, IReadOnlyList<OutputAssessment> outputs, BoxInCondition[] inConditions)
    {
        Box = box;
        Outputs = outputs;
        InConditions = Array.AsReadOnly(inConditions);
        Worst = WorstCase.Of(inConditions, (a, b) => a.IsWorseThan(b));
    }

    /// <summary>The box.</summary>
    public DistributionBox Box { get; }

    /// <summary>Its used outputs, in their order.</summary>
    public IReadOnlyList<OutputAssessment> Outputs { get; }

    /// <summary>Its total in each condition, in the site's order.</summary>
    public IReadOnlyList<BoxInCondition> InConditions { get; }

    /// <summary>The condition that leaves the least of the rating.</summary>
    public BoxInCondition Worst { get; }

    /// <summary>Box and worst condition in words; never throws.</summary>
    public override string ToString() => $"{Box}: {Worst}";
}
