using System.IO;
using System.Net;
using System.Net.Http;
using System.Text;
using System.Threading.Tasks;
using CamPower;
using CamPower.Files;
using CamPower.Reports;

namespace PlanService.Tests;

/// <summary>The verdicts over HTTP are those of the library, to the byte.</summary>
public class VerdictTests(PlanServer server) : IClassFixture<PlanServer>
{
    public static TheoryData<string> Sites => ["boat-shed.json", "slip-gate.json", "boatyard-as-found.json"];

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Verdicts_AreTheJsonOfTheLibrary(string name)
    {
        string site = PlanServer.SiteText(name);
        using HttpResponseMessage response = await server.PostForVerdictsAsync(site);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/json; charset=utf-8", response.Content.Headers.ContentType!.ToString());

        SiteAssessment assessment = SiteFile.Read(site).Site!.Assess();
        using var expected = new MemoryStream();
        new SiteReport(assessment, RuleSet.Standard.Check(assessment)).WriteJson(expected);
        Assert.Equal(Encoding.UTF8.GetString(expected.ToArray()), await response.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Verdicts_OnAFileWithErrors_AreRefusedWithItsErrors()
    {
        using HttpResponseMessage response = await server.PostForVerdictsAsync(PlanServer.SiteText("boat-shed.json").Replace("40 m", "40 kg", System.StringComparison.Ordinal));
        await FaultTests.AssertProblemAsync(response, HttpStatusCode.BadRequest);
    }

    [Fact]
    public async Task Verdicts_AreJsonOnly()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/verdicts") { Content = PlanServer.Body(PlanServer.SiteText("boat-shed.json")) };
        request.Headers.Add("Accept", "text/html");
        using HttpResponseMessage response = await server.Client.SendAsync(request);
        await FaultTests.AssertProblemAsync(response, HttpStatusCode.NotAcceptable);
    }
}
