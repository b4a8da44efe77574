using System.Globalization;
using System.IO;
using System.Linq;
using System.Text.Json.Nodes;
using System.Threading;
using System.Threading.Tasks;
using CamPower;
using CamPower.Files;
using CamPower.Reports;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.AspNetCore.Routing;
using Microsoft.OpenApi;
using PlanService.Answers;

namespace PlanService;

/// <summary>What the service answers. It keeps nothing between two requests, and writes no body anywhere.</summary>
internal static class PlanEndpoints
{
    /// <summary>The policy that bounds how many site files are taken in at once.</summary>
    public const string OneOfSeveral = "one of several";

    private const string Json = "application/json", Html = "text/html", SchemaJson = "application/schema+json", ProblemJson = "application/problem+json";

    public static void MapPlans(this IEndpointRouteBuilder app)
    {
        app.MapGet("/", () => Answer.Page(StartPage.Html)).ExcludeFromDescription();
        app.MapHealthChecks("/health");
        RouteGroupBuilder plans = app.MapGroup(string.Empty).WithTags("Plans");
        Describe(plans.MapPost("/assessments", AssessAsync))
            .WithName("AssessSite")
            .WithSummary("Assesses a site in every condition and checks it against every rule.")
            .WithDescription("The body is a site file; GET /schema says how it is written. The answer is JSON, or the report as one HTML page where the Accept header asks for text/html.")
            .Produces<SiteAnswer>(StatusCodes.Status200OK, Json)
            .AddOpenApiOperationTransformer(DescribeHtml);
        Describe(plans.MapPost("/verdicts", JudgeAsync))
            .WithName("JudgeSite")
            .WithSummary("Every verdict on a site with the numbers that were compared, every finding, and what is not stated.")
            .WithDescription("The body is a site file. The answer is the JSON that SiteReport.WriteJson writes; docs/json.md of the library explains each member.")
            .Produces<JsonObject>(StatusCodes.Status200OK, Json);
        Describe(plans.MapPost("/diagnoses", DiagnoseAsync))
            .WithName("DiagnoseSite")
            .WithSummary("What is most probably wrong with a site, from readings of a meter and symptoms, and what to read next.")
            .WithDescription("The body has the members site (a site file), readings (a file of readings as JSON; optional) and symptoms (sentences such as \"gate camera: dark\"; optional). "
                + "The answer is the JSON that DiagnosisReport.WriteJson writes; docs/json.md of the library explains each member. It advises low-voltage readings only.")
            .Produces<JsonObject>(StatusCodes.Status200OK, Json);
        plans.MapGet("/schema", () => Results.Text(SiteFile.Schema, SchemaJson))
            .WithName("GetSchema")
            .WithSummary("The JSON Schema of site files, draft 2020-12.")
            .Produces<JsonObject>(StatusCodes.Status200OK, SchemaJson);
        plans.MapGet("/rules", () => RuleSet.Standard.Rules.Select(RuleAnswer.Of).ToArray())
            .WithName("GetRules")
            .WithSummary("Every rule that a site is checked against, in the order in which they are asked.");
        plans.MapGet("/inspections", () => InspectionList.Standard.Items.Select(InspectionAnswer.Of).ToArray())
            .WithName("GetInspections")
            .WithSummary("What no number tells and a person must look at on site, in the order in which to go through it.");
    }

    // What they have in common: a site file comes in, and what may go wrong with it.
    private static RouteHandlerBuilder Describe(RouteHandlerBuilder endpoint) => endpoint
        .RequireRateLimiting(OneOfSeveral)
        .Accepts<JsonObject>(Json)
        .Produces<SiteFileProblem>(StatusCodes.Status400BadRequest, ProblemJson)
        .ProducesProblem(StatusCodes.Status406NotAcceptable)
        .ProducesProblem(StatusCodes.Status408RequestTimeout)
        .ProducesProblem(StatusCodes.Status413PayloadTooLarge)
        .ProducesProblem(StatusCodes.Status415UnsupportedMediaType)
        .ProducesProblem(StatusCodes.Status503ServiceUnavailable);

    private static Task<IResult> AssessAsync(HttpRequest request, PlanWork work, CancellationToken cancellation) =>
        work.AnswerAsync(request, [PlanWork.Json, PlanWork.Html], (evidence, findings, form) => form == PlanWork.Html
            ? Answer.Page(new SiteReport(evidence, findings).ToHtml())
            : work.Written(SiteAnswer.Of(evidence, findings)), cancellation);

    private static Task<IResult> JudgeAsync(HttpRequest request, PlanWork work, CancellationToken cancellation) =>
        work.AnswerAsync(request, [PlanWork.Json], (evidence, findings, form) =>
        {
            using var json = new MemoryStream();
            new SiteReport(evidence, findings).WriteJson(json);
            return new Answer(json.ToArray(), form.ToString());
        }, cancellation);

    private static Task<IResult> DiagnoseAsync(HttpRequest request, PlanWork work, CancellationToken cancellation) =>
        work.AnswerAsync(request, [PlanWork.Json], (body, form) => DiagnosisWork.Of(body.ToArray(), work, form, cancellation), cancellation);

    // Two answers of one status: the second is not described by itself.
    private static Task DescribeHtml(OpenApiOperation operation, OpenApiOperationTransformerContext context, CancellationToken cancellation)
    {
        operation.Responses![StatusCodes.Status200OK.ToString(CultureInfo.InvariantCulture)].Content![Html] =
            new OpenApiMediaType { Schema = new OpenApiSchema { Type = JsonSchemaType.String, Description = "The report: one page with its pictures in it, no script and nothing from outside." } };
        return Task.CompletedTask;
    }
}
