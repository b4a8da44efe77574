using System;
using System.Linq;
using System.Threading.Tasks;
using PlanService.Load;

namespace PlanService.Tests;

/// <summary>More clients than the service can serve: each gets a whole answer or a refusal, and in time.</summary>
public class OverloadTests
{
    private const int Clients = 300;

    // With one place to work and four to wait, most are refused; what is accepted is answered.
    [Theory]
    [InlineData("application/json")]
    [InlineData("text/html")]
    public async Task EveryClient_GetsAWholeAnswerOrIsToldWhenToComeAgain(string accept)
    {
        PlanServer server = await PlanServer.StartAsync("--Limits:Working", "1", "--Limits:Waiting", "4", "--Limits:Timeout", "00:00:30");
        Tally tally = await StormOn(server).AskAsync(PlanServer.SiteText("boatyard.json"), accept);
        await server.DisposeAsync();
        Assert.Equal(["200", "503"], tally.Counts.Keys.Order(StringComparer.Ordinal));
        Assert.True(tally.Counts["200"] >= 5, tally.ToString());
        Assert.True(tally.Slowest < TimeSpan.FromSeconds(30), tally.ToString());
    }

    // Whose turn does not come in time is told so, never 200 and nothing.
    [Fact]
    public async Task ClientsThatWaitForTheirTurnTooLong_GetA408()
    {
        PlanServer server = await PlanServer.StartAsync("--Limits:Working", "1", "--Limits:Waiting", "1000", "--Limits:Timeout", "00:00:01");
        Tally tally = await StormOn(server).AskAsync(HeavySite.Text, "application/json");
        await server.DisposeAsync();
        Assert.Equal(["408"], tally.Counts.Keys);
    }

    [Fact]
    public async Task ClientsThatSendSlowly_AreTimedOutOrRefused()
    {
        PlanServer server = await PlanServer.StartAsync("--Limits:AtOnce", "200", "--Limits:Timeout", "00:00:02");
        Tally tally = await StormOn(server).SendSlowlyAsync();
        await server.DisposeAsync();
        Assert.Equal(["408", "503"], tally.Counts.Keys.Order(StringComparer.Ordinal));
        Assert.True(tally.Slowest < TimeSpan.FromSeconds(30), tally.ToString());
    }

    // Bodies that arrive slowly take no working place.
    [Fact]
    public async Task ClientsThatSendSlowly_DelayNobodyElse()
    {
        PlanServer server = await PlanServer.StartAsync("--Limits:Timeout", "00:00:05");
        Task<Tally> slow = StormOn(server).SendSlowlyAsync();
        Tally others = await new Storm(server.Client.BaseAddress!, 5).AskAsync(PlanServer.SiteText("boat-shed.json"), "application/json");
        Assert.False(slow.IsCompleted);
        Assert.Equal(["200"], others.Counts.Keys);
        Assert.Equal(["408"], (await slow).Counts.Keys);
        await server.DisposeAsync();
    }

    [Fact]
    public async Task ClientsThatHangUpAfterAPartOfTheBody_AreNeverTold200()
    {
        PlanServer server = await PlanServer.StartAsync();
        Tally tally = await StormOn(server).SendHalfAsync();
        await server.DisposeAsync();
        Assert.DoesNotContain(tally.Counts.Keys, k => k.StartsWith("200", StringComparison.Ordinal));
    }

    private static Storm StormOn(PlanServer server) => new(server.Client.BaseAddress!, Clients);
}
