using System;
using System.IO;
using System.Net.Http;
using System.Net.Http.Headers;
using System.Threading.Tasks;
using CamPower.Tests.Repository;
using Microsoft.AspNetCore.Builder;

namespace PlanService.Tests;

/// <summary>The service itself on a free port of this machine, and a client that talks to it over HTTP.</summary>
public sealed class PlanServer : IAsyncLifetime
{
    private PlanServer(WebApplication app) => App = app;

    public PlanServer()
        : this(PlanApplication.Create(["--urls", "http://127.0.0.1:0"]))
    {
    }

    public WebApplication App { get; }

    public HttpClient Client { get; private set; } = null!;

    public static async Task<PlanServer> StartAsync(params string[] settings)
    {
        var server = new PlanServer(PlanApplication.Create(["--urls", "http://127.0.0.1:0", .. settings]));
        await server.InitializeAsync();
        return server;
    }

    public async Task InitializeAsync()
    {
        await App.StartAsync();
        Client = new HttpClient { BaseAddress = new Uri(System.Linq.Enumerable.Single(App.Urls)) };
    }

    public async Task DisposeAsync()
    {
        Client.Dispose();
        await App.DisposeAsync();
    }

    /// <summary>Posts a text as a site file.</summary>
    public Task<HttpResponseMessage> PostAsync(string json) => Client.PostAsync("/assessments", Body(json));

    /// <summary>Posts a text as a site file and asks for the verdicts.</summary>
    public Task<HttpResponseMessage> PostForVerdictsAsync(string json) => Client.PostAsync("/verdicts", Body(json));

    /// <summary>Posts a text as a site file and asks for a form of the answer.</summary>
    public async Task<HttpResponseMessage> PostAsync(string json, string accept)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/assessments") { Content = Body(json) };
        request.Headers.TryAddWithoutValidation("Accept", accept);
        return await Client.SendAsync(request);
    }

    public static StringContent Body(string json) => new(json, MediaTypeHeaderValue.Parse("application/json"));

    /// <summary>A committed site file of the site check, or of the service itself.</summary>
    public static string SiteText(string name) =>
        File.ReadAllText(RepositoryFiles.PathOf((name == "slip-gate.json" ? "samples/PlanService/" : "samples/SiteCheck/sites/") + name));
}
