using System;
using System.Linq;
using System.Net.Http;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace PlanService.Tests;

public class OpenApiTests(PlanServer server) : IClassFixture<PlanServer>
{
    [Fact]
    public async Task Document_HoldsEveryRouteAndMethod()
    {
        JsonNode paths = (await DocumentAsync())["paths"]!;
        string[] documented = [.. paths.AsObject().SelectMany(p => p.Value!.AsObject().Select(m => $"{m.Key.ToUpperInvariant()} {p.Key}")).Order()];
        string[] mapped = [.. server.App.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
            .Where(e => e.RoutePattern.RawText is not ("/openapi.json" or "/health" or "/"))
            .SelectMany(e => e.Metadata.GetMetadata<HttpMethodMetadata>()!.HttpMethods.Select(m => $"{m} {e.RoutePattern.RawText}")).Order()];
        Assert.Equal(["GET /inspections", "GET /rules", "GET /schema", "POST /assessments", "POST /diagnoses", "POST /verdicts"], mapped);
        Assert.Equal(mapped, documented);
    }

    [Fact]
    public async Task EveryReference_PointsToSomething()
    {
        JsonNode document = await DocumentAsync();
        string[] references = [.. Everything(document).OfType<JsonObject>().Select(o => (string?)o["$ref"]).OfType<string>()];
        Assert.NotEmpty(references);
        Assert.All(references, r => Assert.NotNull(r.TrimStart('#', '/').Split('/').Aggregate((JsonNode?)document, (at, name) => at?[name])));
    }

    [Fact]
    public async Task Assessment_IsDescribedInBothForms()
    {
        JsonNode content = (await DocumentAsync())["paths"]!["/assessments"]!["post"]!["responses"]!["200"]!["content"]!;
        Assert.Equal("#/components/schemas/SiteAnswer", (string)content["application/json"]!["schema"]!["$ref"]!);
        Assert.Equal("string", (string)content["text/html"]!["schema"]!["type"]!);
        Assert.Equal(2, content.AsObject().Count);
    }

    // A typed client is only as good as what the document says of each member.
    [Fact]
    public async Task EveryMemberOfAnAnswer_IsDescribed()
    {
        JsonNode schemas = (await DocumentAsync())["components"]!["schemas"]!;
        string[] undescribed = [.. schemas.AsObject().Where(s => s.Key.EndsWith("Answer", StringComparison.Ordinal))
            .SelectMany(s => s.Value!["properties"]!.AsObject().Where(p => p.Value!["description"] is null && p.Value["$ref"] is null && p.Value["oneOf"] is null).Select(p => $"{s.Key}.{p.Key}"))];
        Assert.Empty(undescribed);
        Assert.Contains("errors", schemas["SiteFileProblem"]!["properties"]!.AsObject().Select(p => p.Key));
    }

    private async Task<JsonNode> DocumentAsync()
    {
        using HttpResponseMessage response = await server.Client.GetAsync("/openapi.json");
        return JsonNode.Parse(await response.EnsureSuccessStatusCode().Content.ReadAsStringAsync())!;
    }

    private static System.Collections.Generic.IEnumerable<JsonNode> Everything(JsonNode node) => node switch
    {
        JsonObject o => o.Where(p => p.Value is not null).SelectMany(p => Everything(p.Value!)).Prepend(node),
        JsonArray a => a.Where(i => i is not null).SelectMany(i => Everything(i!)).Prepend(node),
        _ => [node],
    };
}
