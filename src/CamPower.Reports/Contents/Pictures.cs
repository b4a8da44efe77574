using System.Collections.Generic;

namespace CamPower.Reports.Contents;

/// <summary>Charts side by side, as many as fit; wide ones below each other, with or without a place on paper.</summary>
internal sealed record Pictures(IReadOnlyList<Chart> Charts, bool AreWide = false, bool ArePrinted = true) : Block;
