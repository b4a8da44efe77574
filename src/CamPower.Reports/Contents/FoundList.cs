using System.Collections.Generic;

namespace CamPower.Reports.Contents;

/// <summary>Findings by rule, each rule with what to do.</summary>
internal sealed record FoundList(IReadOnlyList<FindingGroup> Groups) : Block;
