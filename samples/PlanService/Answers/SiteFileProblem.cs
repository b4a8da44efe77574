using System.Collections.Generic;
using System.Linq;
using CamPower.Files;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc;
using static System.FormattableString;

namespace PlanService.Answers;

/// <summary>A site file that cannot be read, with everything that is wrong in it.</summary>
public sealed class SiteFileProblem : ProblemDetails
{
    /// <summary>Every fault of the file, in the order of the file.</summary>
    public required IReadOnlyList<FaultAnswer> Faults { get; init; }

    internal static SiteFileProblem Of(IReadOnlyList<SiteFileError> faults) => new()
    {
        Type = "/openapi.json#/components/schemas/SiteFileProblem",
        Title = "The site file cannot be read.",
        Status = StatusCodes.Status400BadRequest,
        Detail = faults.Count == 1 ? "It has 1 fault." : Invariant($"It has {faults.Count} faults."),
        Faults = [.. faults.Select(FaultAnswer.Of)],
    };
}
