using System;
using System.Linq;
using System.Net;
using System.Net.Http;
using System.Threading.Tasks;
using System.Xml.Linq;
using CamPower;
using CamPower.Files;
using CamPower.Reports;
using CamPower.Tests.Repository;

namespace PlanService.Tests;

public class PageTests(PlanServer server) : IClassFixture<PlanServer>
{
    public static TheoryData<string> Sites => ["boat-shed.json", "slip-gate.json", "boatyard.json", "boatyard-as-found.json"];

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Page_IsTheReportOfTheLibrary(string name)
    {
        string site = PlanServer.SiteText(name);
        using HttpResponseMessage response = await server.PostAsync(site, "text/html");
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        SiteAssessment expected = SiteFile.Read(site).Site!.Assess();
        Assert.Equal(new SiteReport(expected, RuleSet.Standard.Check(expected)).ToHtml(), await response.Content.ReadAsStringAsync());
    }

    // What a report looks like, for whoever reads the docs.
    [Theory]
    [InlineData("slip-gate")]
    public async Task PageOfTheDocs_IsWhatTheServiceGives(string name)
    {
        using HttpResponseMessage response = await server.PostAsync(PlanServer.SiteText(name + ".json"), "text/html");
        GeneratedPage.AssertCurrent($"docs/pages/{name}.html", await response.EnsureSuccessStatusCode().Content.ReadAsStringAsync());
    }

    // Nothing that a name in a file might smuggle in runs or loads; that the styles and pictures show is seen in a browser.
    [Fact]
    public async Task Policy_AllowsInlineStylesAndNothingElse()
    {
        using HttpResponseMessage response = await server.PostAsync(PlanServer.SiteText("boat-shed.json"), "text/html");
        string[] policy = [.. Assert.Single(response.Headers.GetValues("Content-Security-Policy")).Split(';', StringSplitOptions.TrimEntries)];
        Assert.Equal(["base-uri 'none'", "default-src 'none'", "form-action 'none'", "frame-ancestors 'none'", "sandbox", "style-src 'unsafe-inline'"], policy.Order(StringComparer.Ordinal));
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
    }

    [Fact]
    public async Task NameOfASite_IsText_NotMarkup()
    {
        const string Name = "<script>alert(1)</script>";
        string site = PlanServer.SiteText("boat-shed.json").Replace("Boat shed", Name, StringComparison.Ordinal);
        using HttpResponseMessage response = await server.PostAsync(site, "text/html");
        XDocument page = XDocument.Parse(await response.EnsureSuccessStatusCode().Content.ReadAsStringAsync());
        Assert.Contains(Name, page.Descendants().Single(e => e.Name.LocalName == "h1").Value, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName == "script");
    }
}
