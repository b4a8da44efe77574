using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Mains;

/// <summary>Works out what the boxes of a site take from their receptacles.</summary>
internal static class ReceptacleStudy
{
    /// <summary>Every receptacle that a box is plugged into, in the order of the boxes, in every condition.</summary>
    internal static IReadOnlyList<ReceptacleAssessment> Of(SiteAssessment assessment)
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
}
