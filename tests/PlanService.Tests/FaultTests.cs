using System.Collections.Generic;
using System.Linq;
using System.Net;
using System.Net.Http;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using CamPower.Files;

namespace PlanService.Tests;

public class FaultTests(PlanServer server) : IClassFixture<PlanServer>
{
    // Two quantities, a reference to nothing and a word, in one file.
    private static string FourFaults => PlanServer.SiteText("boat-shed.json")
        .Replace("\"3.6 W\"", "\"3.6 V\"", System.StringComparison.Ordinal)
        .Replace("\"40 m\"", "\"-40 m\"", System.StringComparison.Ordinal)
        .Replace("\"at\": \"door\"", "\"at\": \"dor\"", System.StringComparison.Ordinal)
        .Replace("\"annealed copper\"", "\"annealed coper\"", System.StringComparison.Ordinal);

    [Fact]
    public async Task EveryFault_IsListedWithItsPlace()
    {
        JsonNode problem = await ProblemAsync(FourFaults);
        string[] paths = [.. problem["errors"]!.AsArray().Select(f => (string)f!["path"]!)];
        Assert.Equal(["$.cables[0].material", "$.models[0].draw.base", "$.runs[0].parts[0].length", "$.devices[0].at"], paths);
        Assert.Equal("It has 4 errors.", (string)problem["detail"]!);
    }

    [Fact]
    public async Task Faults_AreThoseOfTheLibrary()
    {
        IReadOnlyList<SiteFileError> expected = SiteFile.Read(FourFaults).Errors;
        JsonNode problem = await ProblemAsync(FourFaults);
        Assert.Equal(
            expected.Select(f => (f.Path, f.Line, f.Column, f.Message)),
            problem["errors"]!.AsArray().Select(f => ((string)f!["path"]!, (int)f["line"]!, (int)f["column"]!, (string)f["message"]!)));
    }

    [Theory]
    [InlineData("{\"formatVersion\": 1,\n \"name\": }", 2, 10)]
    [InlineData("", 1, 1)]
    [InlineData("[1, 2", 1, 6)]
    public async Task MalformedJson_IsRefusedWithItsPlace(string text, int line, int column)
    {
        JsonNode fault = Assert.Single((await ProblemAsync(text))["errors"]!.AsArray())!;
        Assert.Equal((line, column), ((int)fault["line"]!, (int)fault["column"]!));
    }

    // RFC 9457: what is not the site file has the same form.
    [Theory]
    [InlineData("/nothing", HttpStatusCode.NotFound)]
    [InlineData("/assessments", HttpStatusCode.MethodNotAllowed)]
    public async Task OtherMistakes_AreProblemsToo(string path, HttpStatusCode status)
    {
        using HttpResponseMessage response = await server.Client.GetAsync(path);
        await AssertProblemAsync(response, status);
    }

    // A name that steers a terminal or reads backwards: the service passes on what it was given to whoever reads.
    [Theory]
    [InlineData("\\u001b[2J")]
    [InlineData("\u202E")]
    [InlineData("\u2066")]
    public async Task NameWithAControlOrDirectionCharacter_IsRefused(string inName)
    {
        JsonNode fault = Assert.Single((await ProblemAsync(PlanServer.SiteText("boat-shed.json").Replace("Boat shed", "Boat" + inName, System.StringComparison.Ordinal)))["errors"]!.AsArray())!;
        Assert.Equal("$.name", (string)fault["path"]!);
    }

    private async Task<JsonNode> ProblemAsync(string text)
    {
        using HttpResponseMessage response = await server.PostAsync(text);
        return await AssertProblemAsync(response, HttpStatusCode.BadRequest);
    }

    internal static async Task<JsonNode> AssertProblemAsync(HttpResponseMessage response, HttpStatusCode status)
    {
        Assert.Equal(status, response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType!.MediaType);
        JsonNode problem = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
        Assert.Equal((int)status, (int)problem["status"]!);
        Assert.False(string.IsNullOrEmpty((string?)problem["title"]));
        Assert.False(string.IsNullOrEmpty((string?)problem["detail"]));
        return problem;
    }
}
