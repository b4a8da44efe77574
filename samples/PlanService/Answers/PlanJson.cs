using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Mvc;

namespace PlanService.Answers;

/// <summary>How the answers are written: generated at build time, so no reflection runs.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(SiteAnswer))]
[JsonSerializable(typeof(RuleAnswer[]))]
[JsonSerializable(typeof(InspectionAnswer[]))]
[JsonSerializable(typeof(SiteFileProblem))]
[JsonSerializable(typeof(ProblemDetails))]
[JsonSerializable(typeof(JsonObject))]
internal sealed partial class PlanJson : JsonSerializerContext;
