using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Mains;

namespace CamPower;

/// <summary>Works out what the boxes of a site take from their outlets.</summary>
public static class SiteOutlets
{
    /// <summary>Every outlet that a box is plugged into, in the order of the boxes, in every condition.</summary>
    /// <param name="assessment">The solved site.</param>
    /// <exception cref="ArgumentNullException"><paramref name="assessment"/> is null.</exception>
    /// <example>
    /// <code>
    /// foreach (OutletAssessment outlet in site.Assess().StudyOutlets()) Console.WriteLine(outlet);
    /// </code>
    /// </example>
    public static IReadOnlyList<OutletAssessment> StudyOutlets(this SiteAssessment assessment)
    {
        IReadOnlyList<Condition> conditions = Require.NotNull(assessment, nameof(assessment)).Site.Conditions;
        return Array.AsReadOnly([.. assessment.Boxes.Where(b => b.Box.Outlet is not null).GroupBy(b => b.Box.Outlet!)
            .Select(plugged => new OutletAssessment(plugged.Key, Array.AsReadOnly([.. conditions.Select((condition, c) => In(condition, c, plugged))])))]);
    }

    private static OutletInCondition In(Condition condition, int index, IGrouping<Outlet, BoxAssessment> plugged)
    {
        double lineVolts = condition.LineVolts ?? plugged.Key.Volts;
        return new OutletInCondition(condition, lineVolts,
            Array.AsReadOnly([.. plugged.Select(box => new LineDraw(box.Box, box.InConditions[index].Amperes, lineVolts))]));
    }
}
