namespace CamPower.Reports.Contents;

/// <summary>Some sentences; those that decide are strong.</summary>
internal sealed record Paragraph(string Text, bool IsStrong = false) : Block;
