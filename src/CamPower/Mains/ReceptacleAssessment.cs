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

    /// <summary>Every receptacle that a box is plugged into, in the order of the boxes, in every condition.</summary>
    internal static IReadOnlyList<ReceptacleAssessment> AllOf(SiteAssessment assessment)
    {
        IReadOnlyList<Condition> conditions = assessment.Site.Conditions;
        return Array.AsReadOnly([.. assessment.Boxes.Where(b => b.Box.Receptacle is not null).GroupBy(b => b.Box.Receptacle!)
            .Select(plugged => new ReceptacleAssessment(
                plugged.Key, Array.AsReadOnly([.. conditions.Select((condition, c) => In(condition, c, plugged))])))]);
    }

    private static ReceptacleInCondition In(Condition condition, int index, IGrouping<Receptacle, BoxAssessment> plugged)
    {
        double lineVolts = condition.LineVolts ?? plugged.Key.Volts;
        return new ReceptacleInCondition(condition, lineVolts,
            Array.AsReadOnly([.. plugged.Select(box => new LineDraw(
                box.Box, box.Box.AmperesWhileCharging(box.InConditions[index].Amperes), lineVolts))]));
    }

    /// <summary>The receptacle and its worst condition in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Receptacle}: {Worst} of {Receptacle.MostAmperes:0.00} A");
}
