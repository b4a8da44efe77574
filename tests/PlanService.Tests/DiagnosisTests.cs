using System;
using System.IO;
using System.Linq;
using System.Net;
using System.Net.Http;
using System.Text;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using CamPower;
using CamPower.Commissioning;
using CamPower.Files;
using CamPower.Reports;
using CamPower.Tolerance;
using UnitsNet;

namespace PlanService.Tests;

/// <summary>The diagnosis over HTTP is that of the library, and every error has its place in the body.</summary>
public class DiagnosisTests(PlanServer server) : IClassFixture<PlanServer>
{
    private const string Readings = """
        {"formatVersion": 1, "readings": [
        {"what": "plug voltage", "where": "door", "state": "running", "value": "7 V"},
        {"what": "output current", "where": "shed box output 1", "state": "running", "value": "0.2 A"}]}
        """;

    private static string Site => PlanServer.SiteText("boat-shed.json");

    [Fact]
    public async Task Diagnosis_IsTheJsonOfTheLibrary()
    {
        CamPower.Site site = SiteFile.Read(Site).Site!;
        SiteDevice camera = site.Devices[0];
        string readings = Readings.Replace("\"door\"", $"\"{camera.Name}\"", StringComparison.Ordinal)
            .Replace("shed box", site.Boxes[0].Name, StringComparison.Ordinal);
        using HttpResponseMessage response = await PostAsync(
            "{\"site\":" + Site + ",\"readings\":" + readings + ",\"symptoms\":[\"" + camera.Name + ": restarts\"]}");
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/json; charset=utf-8", response.Content.Headers.ContentType!.ToString());

        Temperature at = Temperature.FromDegreesCelsius(20);
        var sheet = new CommissioningSheet(site, SiteTolerance.Standard, Meter.Handheld, new Surroundings(at, at, at));
        var record = new CommissioningRecord(sheet, ReadingsFile.Read(readings, site).Readings);
        Assert.Equal(2, record.Readings.Count);
        using var expected = new MemoryStream();
        new DiagnosisReport(record, sheet.Diagnose(record.Readings, [Symptom.Restarts(camera.Name)])).WriteJson(expected);
        Assert.Equal(Encoding.UTF8.GetString(expected.ToArray()), await response.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task SiteAlone_IsEnough()
    {
        using HttpResponseMessage response = await PostAsync("{\"site\":" + Site + "}");
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        JsonNode json = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
        Assert.Equal("none", (string)json["groups"]![0]!["causes"]![0]!);
    }

    // The place is that in the body: the site file begins on its second line.
    [Fact]
    public async Task ErrorInTheSite_HasItsPlaceInTheBody()
    {
        string wrong = Site.Replace("\"40 m\"", "\"40 kg\"", StringComparison.Ordinal);
        SiteFileError expected = Assert.Single(SiteFile.Read(wrong).Errors);
        JsonNode error = await OnlyErrorAsync("{\"site\":\n" + wrong + "}");
        Assert.Equal("$.site" + expected.Path[1..], (string)error["path"]!);
        Assert.Equal((expected.Line + 1, expected.Column), ((int)error["line"]!, (int)error["column"]!));
    }

    [Theory]
    [InlineData(",\"readings\":{\"formatVersion\":1,\"readings\":[{\"what\":\"plug voltage\",\"where\":\"nowhere\",\"state\":\"running\",\"value\":\"12 V\"}]}}", "$.readings.readings[0].where")]
    [InlineData(",\"symptoms\":[\"nobody: dark\"]}", "$.symptoms[0]")]
    [InlineData(",\"symptoms\":[\"sulks\"]}", "$.symptoms[0]")]
    [InlineData(",\"symptoms\":[7]}", "$.symptoms[0]")]
    [InlineData(",\"readings\":[]}", "$.readings")]
    [InlineData(",\"symptoms\":\"dark\"}", "$.symptoms")]
    [InlineData(",\"site\":{}}", "$.site")]
    [InlineData(",\"reading\":[]}", "$")]
    [InlineData(",}", "$")]
    [InlineData("} 7", "$")]
    public async Task OtherErrors_HaveTheirPath(string rest, string path) =>
        Assert.Equal(path, (string)(await OnlyErrorAsync("{\"site\":" + Site + rest))["path"]!);

    [Theory]
    [InlineData("", "$")]
    [InlineData("[]", "$")]
    [InlineData("{}", "$.site")]
    public async Task BodyWithoutASite_IsRefused(string body, string path) => Assert.Equal(path, (string)(await OnlyErrorAsync(body))["path"]!);

    [Fact]
    public async Task Body_HasTheLimitOfASiteFile()
    {
        using HttpResponseMessage response = await PostAsync("{\"site\":" + Site + new string(' ', 64 * 1024) + "}");
        await FaultTests.AssertProblemAsync(response, HttpStatusCode.RequestEntityTooLarge);
    }

    [Fact]
    public async Task Diagnosis_IsJsonOnly()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/diagnoses") { Content = PlanServer.Body("{\"site\":" + Site + "}") };
        request.Headers.Add("Accept", "text/html");
        using HttpResponseMessage response = await server.Client.SendAsync(request);
        await FaultTests.AssertProblemAsync(response, HttpStatusCode.NotAcceptable);
    }

    private async Task<JsonNode> OnlyErrorAsync(string body)
    {
        using HttpResponseMessage response = await PostAsync(body);
        return Assert.Single((await FaultTests.AssertProblemAsync(response, HttpStatusCode.BadRequest))["errors"]!.AsArray())!;
    }

    private Task<HttpResponseMessage> PostAsync(string body) => server.Client.PostAsync("/diagnoses", PlanServer.Body(body));
}
