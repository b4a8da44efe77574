using System.Collections.Generic;

namespace CamPower.Reports.Contents;

/// <summary>Charts side by side, as many as fit.</summary>
internal sealed record Pictures(IReadOnlyList<Chart> Charts, bool AreWide = false) : Block;
