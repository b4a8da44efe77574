using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Assessment;

/// <summary>What a transformer gives at the line voltage of a condition. SI doubles.</summary>
/// <remarks>Within the tolerance of its output a line voltage changes nothing: the tolerance has it already. Beyond it the output is as far
/// off as the line. Without a receptacle nothing says what the line is nominally.</remarks>
internal static class TransformerRail
{
    /// <summary>The lowest voltage behind the winding over the nominal one.</summary>
    internal static double LowestShare(DistributionBox box, Condition condition) =>
        Math.Min(1 - box.Supply.Output.Tolerance.DecimalFractions, UnregulatedRail.LineShare(box, condition) ?? 1);

    /// <summary>The highest voltage behind the winding over the nominal one.</summary>
    internal static double HighestShare(DistributionBox box, Condition condition) =>
        Math.Max(1 + box.Supply.Output.Tolerance.DecimalFractions, UnregulatedRail.LineShare(box, condition) ?? 1);

    /// <summary>The highest voltage without load in any of some conditions; null of another supply. [V]</summary>
    internal static double? Highest(DistributionBox box, IEnumerable<Condition> conditions) =>
        box.Supply.Output is AcOutput output ? output.EmfVolts * conditions.Max(c => HighestShare(box, c)) : null;

    /// <summary>The voltages of a box in a condition, or the same where its line is within the tolerance.</summary>
    internal static (RailVolts Lowest, RailVolts Highest) In(DistributionBox box, Condition condition, RailVolts lowest, RailVolts highest)
    {
        if (box.Supply.Output is not AcOutput output) return (lowest, highest);
        if (UnregulatedRail.LineShare(box, condition) is not double line) return (lowest, highest);
        double share = output.Share;
        return (line < 1 - share ? lowest.With(box, output.NominalVolts * line) : lowest,
            line > 1 + share ? highest.With(box, output.EmfVolts * line) : highest);
    }
}
