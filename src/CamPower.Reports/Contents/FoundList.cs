using System.Collections.Generic;

namespace CamPower.Reports.Contents;

/// <summary>Findings, each with what to do.</summary>
internal sealed record FoundList(IReadOnlyList<Finding> Findings) : Block;
