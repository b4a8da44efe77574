using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json.Nodes;
using System.Threading;
using System.Threading.Tasks;
using CamPower;
using CamPower.Files;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Net.Http.Headers;
using PlanService.Answers;

namespace PlanService;

/// <summary>What the service answers. It keeps nothing between two requests, and writes no body anywhere.</summary>
internal static class PlanEndpoints
{
    /// <summary>The policy under which a site file waits its turn.</summary>
    public const string OneOfSeveral = "one of several";

    private const string Json = "application/json", SchemaJson = "application/schema+json", ProblemJson = "application/problem+json";

    public static void MapPlans(this IEndpointRouteBuilder app)
    {
        RouteGroupBuilder plans = app.MapGroup(string.Empty).WithTags("Plans");
        plans.MapPost("/assessments", AssessAsync)
            .RequireRateLimiting(OneOfSeveral)
            .WithName("AssessSite")
            .WithSummary("Assesses a site in every condition and checks it against every rule.")
            .WithDescription("The body is a site file; GET /schema says how it is written.")
            .Accepts<JsonObject>(Json)
            .Produces<SiteAnswer>(StatusCodes.Status200OK, Json)
            .Produces<SiteFileProblem>(StatusCodes.Status400BadRequest, ProblemJson)
            .ProducesProblem(StatusCodes.Status406NotAcceptable)
            .ProducesProblem(StatusCodes.Status408RequestTimeout)
            .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
            .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
            .ProducesProblem(StatusCodes.Status503ServiceUnavailable);
        plans.MapGet("/schema", () => Results.Text(SiteFile.Schema, SchemaJson))
            .WithName("GetSchema")
            .WithSummary("The JSON Schema of site files, draft 2020-12.")
            .Produces<JsonObject>(StatusCodes.Status200OK, SchemaJson);
        plans.MapGet("/rules", () => RuleSet.Standard.Rules.Select(RuleAnswer.Of).ToArray())
            .WithName("GetRules")
            .WithSummary("Every rule that a site is checked against, in the order in which they are asked.");
    }

    private static async Task<IResult> AssessAsync(HttpRequest request, PlanLimits limits, CancellationToken cancellation)
    {
        if (!IsUtf8Json(request)) return Problem(StatusCodes.Status415UnsupportedMediaType, "A site file is application/json in UTF-8.");
        if (!AcceptsJson(request)) return Problem(StatusCodes.Status406NotAcceptable, $"The answer is {Json}.");

        using var body = new MemoryStream();
        await request.Body.CopyToAsync(body, cancellation);
        body.Position = 0;
        SiteFileResult file = SiteFile.Read(body, new SiteFileOptions { MaxBytes = limits.MaxBytes });
        if (!file.TryGetSite(out Site? site)) return TypedResults.Json(SiteFileProblem.Of(file.Faults), PlanJson.Default.SiteFileProblem, ProblemJson, StatusCodes.Status400BadRequest);

        cancellation.ThrowIfCancellationRequested();
        SiteAssessment assessment = site.Assess();
        cancellation.ThrowIfCancellationRequested();
        return TypedResults.Ok(SiteAnswer.Of(assessment, RuleSet.Standard.Check(assessment)));
    }

    private static bool IsUtf8Json(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out MediaTypeHeaderValue? type)
        && type.MediaType.Equals(Json, StringComparison.OrdinalIgnoreCase)
        && (!type.Charset.HasValue || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase));

    // No Accept header accepts anything.
    private static bool AcceptsJson(HttpRequest request)
    {
        IList<MediaTypeHeaderValue> accepted = request.GetTypedHeaders().Accept;
        var json = new MediaTypeHeaderValue(Json);
        return accepted.Count == 0 || accepted.Any(a => a.Quality is not 0 && json.IsSubsetOf(a));
    }

    private static IResult Problem(int status, string detail) => Results.Problem(detail, statusCode: status);
}
