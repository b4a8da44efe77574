using System.Collections.Generic;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>The currents of one output in every condition.</summary>
internal sealed class SolvedOutput(OutputFeed feed, double[] amperes, double[] amperesAtRest, bool[] areDemandOnly)
{
    internal DistributionBox Box => feed.Box;

    internal BoxOutput Output => feed.Output;

    /// <summary>For each condition the current with everything on. [A]</summary>
    internal double[] Amperes => amperes;

    /// <summary>For each condition the current with every motor at rest. [A]</summary>
    internal double[] AmperesAtRest => amperesAtRest;

    /// <summary>For each condition whether its circuit has no operating point.</summary>
    internal bool[] AreDemandOnly => areDemandOnly;

    /// <summary>The output in a box that was solved.</summary>
    internal OutputAssessment In(IReadOnlyList<BoxInCondition> box)
    {
        var inConditions = new OutputInCondition[box.Count];
        for (int c = 0; c < inConditions.Length; c++) inConditions[c] = new OutputInCondition(Output, box[c], amperes[c], areDemandOnly[c]);
        return new OutputAssessment(Box, Output, feed.DevicesFed, inConditions);
    }
}
