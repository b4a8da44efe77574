using System.Collections.Generic;

namespace CamPower.Reports.Contents;

/// <summary>A part of a report under a heading.</summary>
internal sealed record Section(string Heading, IReadOnlyList<Block> Blocks);
