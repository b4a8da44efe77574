using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Mains;

namespace CamPower;

/// <summary>Works out what the boxes of a site take from their receptacles.</summary>
public static class SiteReceptacles
{
    /// <summary>Every receptacle that a box is plugged into, in the order of the boxes, in every condition.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <example>
    /// <code>
    /// foreach (ReceptacleAssessment receptacle in site.Assess().StudyReceptacles()) Console.WriteLine(receptacle);
    /// </code>
    /// </example>
    public static IReadOnlyList<ReceptacleAssessment> StudyReceptacles(this SiteAssessment assessment)
    {
        IReadOnlyList<Condition> conditions = Require.NotNull(assessment, nameof(assessment)).Site.Conditions;
        return Array.AsReadOnly([.. assessment.Boxes.Where(b => b.Box.Receptacle is not null).GroupBy(b => b.Box.Receptacle!)
            .Select(plugged => new ReceptacleAssessment(plugged.Key, Array.AsReadOnly([.. conditions.Select((condition, c) => In(condition, c, plugged))])))]);
    }

    private static ReceptacleInCondition In(Condition condition, int index, IGrouping<Receptacle, BoxAssessment> plugged)
    {
        double lineVolts = condition.LineVolts ?? plugged.Key.Volts;
        return new ReceptacleInCondition(condition, lineVolts,
            Array.AsReadOnly([.. plugged.Select(box => new LineDraw(box.Box, box.InConditions[index].Amperes, lineVolts))]));
    }
}
