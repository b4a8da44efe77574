namespace CamPower.Reports.Contents;

/// <summary>A column of a table; numbers stand to the right.</summary>
internal sealed record Column(string Heading, bool IsNumber = false);
