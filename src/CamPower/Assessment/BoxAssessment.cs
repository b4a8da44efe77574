using System;
using System.Collections.Generic;
using CamPower.Assessment;

namespace CamPower;

/// <summary>One box or adapter in every condition.</summary>
/// <remarks>Immutable.</remarks>
public sealed class BoxAssessment
{
    internal BoxAssessment(DistributionBox box, IReadOnlyList<OutputAssessment> outputs, BoxInCondition[] inConditions,
        JoinedCommons commons)
    {
        Box = box;
        Outputs = outputs;
        Commons = commons;
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

    /// <summary>The RMS current that a transformer drives through the negatives of its devices where video shields join them, against none;
    /// a judgment of nothing where it is no transformer, or no two of them are joined.</summary>
    /// <remarks>The negative of a half-wave input is one of its two wires, that of a full-wave input is neither: joined, a diode shorts
    /// every second half of the period through winding, wires and shields. It is at least this current, at the lowest mains voltage and in
    /// the warmest cables.</remarks>
    public Judgment ThroughJoinedCommons => Commons.Current;

    internal JoinedCommons Commons { get; }

    /// <summary>Box and worst condition in words; never throws.</summary>
    public override string ToString() => $"{Box}: {Worst}";
}
