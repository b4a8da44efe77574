using System.Linq;
using System.Net;
using System.Net.Http;
using System.Threading.Tasks;
using System.Xml.Linq;

namespace PlanService.Tests;

/// <summary>What somebody sees who has the address alone.</summary>
public class StartTests(PlanServer server) : IClassFixture<PlanServer>
{
    [Fact]
    public async Task Health_IsTold()
    {
        using HttpResponseMessage response = await server.Client.GetAsync("/health");
        Assert.Equal((HttpStatusCode.OK, "Healthy"), (response.StatusCode, await response.Content.ReadAsStringAsync()));
    }

    [Fact]
    public async Task StartPage_LinksToWhatAnswers()
    {
        using HttpResponseMessage response = await server.Client.GetAsync("/");
        Assert.Equal("text/html", response.EnsureSuccessStatusCode().Content.Headers.ContentType!.MediaType);
        string html = (await response.Content.ReadAsStringAsync()).Replace("<!DOCTYPE html>", "", System.StringComparison.Ordinal)
            .Replace("<meta charset=\"utf-8\">", "", System.StringComparison.Ordinal)
            .Replace("initial-scale=1\">", "initial-scale=1\"/>", System.StringComparison.Ordinal);
        string[] links = [.. XElement.Parse(html).Descendants("a").Select(a => (string)a.Attribute("href")!)];
        Assert.NotEmpty(links);
        foreach (string link in links)
        {
            using HttpResponseMessage linked = await server.Client.GetAsync(link);
            Assert.True(linked.IsSuccessStatusCode, link);
        }
    }
}
