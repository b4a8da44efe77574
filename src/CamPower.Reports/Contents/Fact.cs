namespace CamPower.Reports.Contents;

/// <summary>What one thing is called and what it is.</summary>
internal sealed record Fact(string Name, string Value);
