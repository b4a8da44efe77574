namespace CamPower.Reports.Contents;

/// <summary>A piece of a report, before anyone decides how it looks.</summary>
internal abstract record Block;
