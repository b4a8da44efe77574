using System.Collections.Generic;

namespace CamPower.Reports.Contents;

/// <summary>What things are called and what they are.</summary>
internal sealed record Facts(IReadOnlyList<Fact> Items) : Block;
