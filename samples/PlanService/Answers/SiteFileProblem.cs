using System.Collections.Generic;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc;
using static System.FormattableString;

namespace PlanService.Answers;

/// <summary>A site file that cannot be read, with everything that is wrong in it.</summary>
public sealed class SiteFileProblem : ProblemDetails
{
    /// <summary>Every error of the file, in the order of the file.</summary>
    public required IReadOnlyList<ErrorAnswer> Errors { get; init; }

    internal static SiteFileProblem Of(IReadOnlyList<ErrorAnswer> errors) => new()
    {
        Type = "/openapi.json#/components/schemas/SiteFileProblem",
        Title = "The site file cannot be read.",
        Status = StatusCodes.Status400BadRequest,
        Detail = errors.Count == 1 ? "It has 1 error." : Invariant($"It has {errors.Count} errors."),
        Errors = errors,
    };
}
