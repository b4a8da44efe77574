using System.Linq;
using System.Net;
using System.Net.Http;
using System.Threading.Tasks;

namespace PlanService.Tests;

/// <summary>Which form of the answer the Accept header gets, by RFC 9110, 12.5.1.</summary>
public class NegotiationTests(PlanServer server) : IClassFixture<PlanServer>
{
    private const string Json = "application/json", Html = "text/html";

    [Theory]
    [InlineData(Json, Json)]
    [InlineData("APPLICATION/JSON", Json)]
    [InlineData("application/json; charset=utf-8", Json)]
    [InlineData("application/*", Json)]
    [InlineData("*/*", Json)]
    [InlineData(Html, Html)]
    [InlineData("text/html; charset=utf-8", Html)]
    [InlineData("text/*", Html)]
    [InlineData("text/html, application/json", Json)]
    [InlineData("application/json;q=0.5, text/html;q=0.6", Html)]
    [InlineData("application/json;q=0.6, text/html;q=0.5", Json)]
    [InlineData("text/html, */*;q=0.1", Html)]
    [InlineData("*/*, text/html;q=0.9", Json)]
    [InlineData("application/json;q=0, */*", Html)]
    [InlineData("*/*;q=0.8, application/json;q=0.2, text/html;q=0.3", Html)]
    [InlineData("text/*;q=0.9, text/html;q=0.1, application/json;q=0.5", Json)]
    [InlineData("text/csv, */*;q=0.1", Json)]
    [InlineData("text/html,application/xhtml+xml,application/xml;q=0.9,image/avif,*/*;q=0.8", Html)]
    public async Task Accept_GetsTheFormThatIsWantedMost(string accept, string form)
    {
        using HttpResponseMessage response = await server.PostAsync(PlanServer.SiteText("boat-shed.json"), accept);
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal(form, response.Content.Headers.ContentType!.MediaType);
        Assert.Equal("utf-8", response.Content.Headers.ContentType.CharSet);
        Assert.Equal("Accept", Assert.Single(response.Headers.Vary));
    }

    [Theory]
    [InlineData("text/csv")]
    [InlineData("application/json;q=0")]
    [InlineData("*/*;q=0")]
    [InlineData("text/html;q=0, application/json;q=0, */*")]
    [InlineData("text/html; charset=utf-16")]
    public async Task Accept_OfNothingThatThereIs_IsRefused(string accept)
    {
        using HttpResponseMessage response = await server.PostAsync(PlanServer.SiteText("boat-shed.json"), accept);
        await FaultTests.AssertProblemAsync(response, HttpStatusCode.NotAcceptable);
        Assert.Equal("Accept", Assert.Single(response.Headers.Vary));
    }

    [Fact]
    public async Task NoAccept_GetsJson()
    {
        using HttpResponseMessage response = await server.PostAsync(PlanServer.SiteText("boat-shed.json"));
        Assert.Empty(response.RequestMessage!.Headers.Accept);
        Assert.Equal(Json, response.Content.Headers.ContentType!.MediaType);
    }

    // What went wrong has the one form, whatever is asked for.
    [Theory]
    [InlineData("{", HttpStatusCode.BadRequest)]
    [InlineData(null, HttpStatusCode.RequestEntityTooLarge)]
    public async Task Problems_AreToldToWhoAsksForAPage(string? body, HttpStatusCode status)
    {
        using HttpResponseMessage response = await server.PostAsync(body ?? new string(' ', 65 * 1024), Html);
        await FaultTests.AssertProblemAsync(response, status);
    }
}
