using System;
using System.Collections.Concurrent;
using System.Linq;
using System.Net.Http;
using System.Threading.Tasks;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using PlanService.Load;

namespace PlanService.Tests;

public class LoggingTests
{
    private const string Secret = "quay of the secret boat";

    [Fact]
    public async Task BodiesAreNotLogged_WhateverTheLevel()
    {
        PlanServer server = await PlanServer.StartAsync("--Logging:LogLevel:Default", "Trace", "--Logging:LogLevel:PlanService", "Trace");
        using var log = new Collected();
        server.App.Services.GetRequiredService<ILoggerFactory>().AddProvider(log);
        server.App.Logger.Log(LogLevel.Information, default, "The log is heard.", null, (text, _) => text);
        string site = PlanServer.SiteText("boat-shed.json").Replace("Boat shed", Secret, StringComparison.Ordinal);
        using HttpResponseMessage good = await server.PostAsync(site);
        using HttpResponseMessage bad = await server.PostAsync(site[..^20]);
        Assert.Contains(Secret, await good.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        await server.DisposeAsync();
        Assert.Contains(log.Lines, l => l.Contains("The log is heard.", StringComparison.Ordinal));
        Assert.DoesNotContain(log.Lines, l => l.Contains(Secret, StringComparison.Ordinal));
    }

    // Slow, too large, cut short, compressed, malformed, unknown: each has its answer, and the operator no page of code to read.
    [Fact]
    public async Task WhatClientsDo_LeavesNoStackTraceInTheLog()
    {
        PlanServer server = await PlanServer.StartAsync("--Limits:Timeout", "00:00:01");
        using var log = new Collected();
        server.App.Services.GetRequiredService<ILoggerFactory>().AddProvider(log);
        server.App.Logger.Log(LogLevel.Error, default, "The log is heard.", null, (text, _) => text);
        var storm = new Storm(server.Client.BaseAddress!, 5);
        await storm.SendSlowlyAsync();
        await storm.SendHalfAsync();
        await storm.AskAsync(HeavySite.Text, "application/json");
        await storm.AskAsync("{", "text/html");
        await storm.AskAsync(new string(' ', 70_000), "text/html");
        using (await server.Client.GetAsync(new Uri("/nothing", UriKind.Relative)))
        {
        }

        await server.DisposeAsync();
        Assert.Contains(log.Lines, l => l.Contains("The log is heard.", StringComparison.Ordinal));
        Assert.DoesNotContain(log.Lines, l => l.Contains("   at ", StringComparison.Ordinal));
    }

    private sealed class Collected : ILoggerProvider, ILogger
    {
        public ConcurrentQueue<string> Lines { get; } = new();

        public ILogger CreateLogger(string categoryName) => this;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
            Lines.Enqueue(formatter(state, exception) + exception);

        public void Dispose()
        {
        }
    }
}
