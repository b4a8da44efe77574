using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>One output solved in every condition.</summary>
internal sealed class SolvedOutput(OutputFeed feed, OutputInCondition[] inConditions, double[] amperesAtRest)
{
    internal DistributionBox Box => feed.Box;

    internal OutputAssessment Assessment { get; } = new(feed.Box, feed.Output, feed.DevicesFed, inConditions);

    /// <summary>For each condition the current with every motor at rest. [A]</summary>
    internal double[] AmperesAtRest { get; } = amperesAtRest;
}
