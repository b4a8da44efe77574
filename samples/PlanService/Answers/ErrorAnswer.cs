using CamPower.Files;

namespace PlanService.Answers;

/// <summary>One thing that is wrong in a site file, and where.</summary>
public sealed record ErrorAnswer
{
    /// <summary>JSON path of the value, as RFC 9535 writes it.</summary>
    public required string Path { get; init; }

    /// <summary>The line, from 1.</summary>
    public required int Line { get; init; }

    /// <summary>The column in that line, from 1.</summary>
    public required int Column { get; init; }

    /// <summary>What is wrong.</summary>
    public required string Message { get; init; }

    internal static ErrorAnswer Of(SiteFileError error) => new()
    {
        Path = error.Path,
        Line = error.Line,
        Column = error.Column,
        Message = error.Message,
    };
}
