namespace CamPower.Consumers.Tests;

/// <summary>What a command left behind.</summary>
internal sealed record CommandResult(int ExitStatus, string Output, string Errors);
