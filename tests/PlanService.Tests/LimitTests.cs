using System;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Net;
using System.Net.Http;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using System.Text.Json.Nodes;
using System.Threading;
using System.Threading.Tasks;
using Microsoft.Extensions.Configuration;

namespace PlanService.Tests;

public class LimitTests(PlanServer server) : IClassFixture<PlanServer>
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task FileBeyondTheLimit_IsRefused(bool isChunked)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/assessments") { Content = PlanServer.Body(new string(' ', (64 * 1024) + 1)) };
        request.Headers.TransferEncodingChunked = isChunked;
        using HttpResponseMessage response = await server.Client.SendAsync(request);
        JsonNode problem = await FaultTests.AssertProblemAsync(response, HttpStatusCode.RequestEntityTooLarge);
        Assert.Contains("65536 bytes", (string)problem["detail"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task FileAtTheLimit_IsRead()
    {
        string site = PlanServer.SiteText("boat-shed.json");
        using HttpResponseMessage response = await server.PostAsync(site + new string(' ', (64 * 1024) - Encoding.UTF8.GetByteCount(site)));
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task Limit_IsASetting()
    {
        PlanServer small = await PlanServer.StartAsync("--Limits:MaxBytes", "100");
        using HttpResponseMessage response = await small.PostAsync(PlanServer.SiteText("boat-shed.json"));
        await FaultTests.AssertProblemAsync(response, HttpStatusCode.RequestEntityTooLarge);
        await small.DisposeAsync();
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/xml")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData(null)]
    public async Task OtherMediaType_IsRefused(string? type)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(PlanServer.SiteText("boat-shed.json")));
        if (type is not null) content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
        using HttpResponseMessage response = await server.Client.PostAsync("/assessments", content);
        await FaultTests.AssertProblemAsync(response, HttpStatusCode.UnsupportedMediaType);
    }

    [Theory]
    [InlineData("gzip")]
    [InlineData("br")]
    [InlineData("identity, deflate")]
    public async Task CompressedBody_IsRefused(string encoding)
    {
        using StringContent content = PlanServer.Body(PlanServer.SiteText("boat-shed.json"));
        content.Headers.TryAddWithoutValidation("Content-Encoding", encoding);
        using HttpResponseMessage response = await server.Client.PostAsync("/assessments", content);
        await FaultTests.AssertProblemAsync(response, HttpStatusCode.UnsupportedMediaType);
        Assert.Equal("identity", Assert.Single(response.Headers.GetValues("Accept-Encoding")));
    }

    // The head of a request is held to the same limit as its body; the server looks once a second.
    [Fact]
    public async Task HeadThatNeverEnds_IsCutOff()
    {
        PlanServer impatient = await PlanServer.StartAsync("--Limits:Timeout", "00:00:00.5");
        using var client = new TcpClient();
        await client.ConnectAsync(impatient.Client.BaseAddress!.Host, impatient.Client.BaseAddress.Port);
        await client.GetStream().WriteAsync("POST /assessments HTTP/1.1\r\nHost: here\r\n"u8.ToArray());
        using var reader = new StreamReader(client.GetStream());
        Assert.Equal("HTTP/1.1 408 Request Timeout", await reader.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(10)));
        await impatient.DisposeAsync();
    }

    [Theory]
    [InlineData("MaxBytes", "0")]
    [InlineData("Timeout", "00:00:00")]
    [InlineData("Working", "0")]
    [InlineData("Waiting", "-1")]
    [InlineData("AtOnce", "0")]
    public void SettingOutOfItsRange_IsNamed(string setting, string value) =>
        Assert.Contains("Limits:" + setting, Assert.Throws<InvalidOperationException>(() => PlanApplication.Create(["--Limits:" + setting, value])).Message, StringComparison.Ordinal);

    // Fast enough for the server's own least rate, which would end a stall, and never done: the answer comes when the time is over.
    [Fact]
    public async Task ClientThatSendsSlowly_IsAnsweredInTime()
    {
        PlanServer impatient = await PlanServer.StartAsync("--Limits:Timeout", "00:00:00.5");
        var watch = Stopwatch.StartNew();
        using TcpClient client = await BeginAsync(impatient, contentLength: 60_000);
        NetworkStream stream = client.GetStream();
        using var reader = new StreamReader(stream);
        Task<string?> status = reader.ReadLineAsync();
        while (!status.IsCompleted && watch.Elapsed < TimeSpan.FromSeconds(30))
        {
            await stream.WriteAsync(new byte[300]);
            await Task.WhenAny(status, Task.Delay(50));
        }

        Assert.True(status.IsCompleted);
        Assert.Equal("HTTP/1.1 408 Request Timeout", await status);
        Assert.True(watch.Elapsed >= TimeSpan.FromSeconds(0.4));
        await impatient.DisposeAsync();
    }

    // Cameras that restart on shared returns, as many as fit: let run, it takes seconds at best. The bound is wide, for a busy machine.
    [Theory]
    [InlineData("application/json")]
    [InlineData("text/html")]
    public async Task SiteThatTakesTooLong_IsBrokenOffInTime_AndTheNextIsServed(string accept)
    {
        PlanServer impatient = await PlanServer.StartAsync("--Limits:Timeout", "00:00:00.4", "--Limits:Working", "1");
        await AssertServedAsync(impatient, accept);

        var watch = Stopwatch.StartNew();
        using (HttpResponseMessage response = await impatient.PostAsync(HeavySite.Text, accept))
        {
            await FaultTests.AssertProblemAsync(response, HttpStatusCode.RequestTimeout);
            Assert.InRange(watch.Elapsed, TimeSpan.FromSeconds(0.35), TimeSpan.FromSeconds(8));
        }

        await AssertServedAsync(impatient, accept);
        await impatient.DisposeAsync();
    }

    // A sound site is answered within the limit, once the service is warm; on a busy machine that takes some tries.
    private static async Task AssertServedAsync(PlanServer server, string accept)
    {
        HttpStatusCode status;
        var watch = Stopwatch.StartNew();
        do
        {
            using HttpResponseMessage response = await server.PostAsync(PlanServer.SiteText("boat-shed.json"), accept);
            status = response.StatusCode;
        }
        while (status == HttpStatusCode.RequestTimeout && watch.Elapsed < TimeSpan.FromSeconds(30));
        Assert.Equal(HttpStatusCode.OK, status);
    }

    // Nobody waits for the answer: the only working place is free again at once.
    [Fact]
    public async Task ClientThatHangsUpWhileItsSiteIsWorkedOut_FreesItsWorkingPlace()
    {
        PlanServer single = await PlanServer.StartAsync("--Limits:Working", "1", "--Limits:Timeout", "00:05:00");
        using (var hangUp = new CancellationTokenSource())
        {
            Task<HttpResponseMessage> heavy = single.Client.PostAsync("/assessments", PlanServer.Body(HeavySite.Text), hangUp.Token);
            Assert.NotSame(heavy, await Task.WhenAny(heavy, Task.Delay(300)));
            await hangUp.CancelAsync();
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => heavy);
        }

        using HttpResponseMessage response = await single.PostAsync(PlanServer.SiteText("boat-shed.json")).WaitAsync(TimeSpan.FromSeconds(30));
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        await single.DisposeAsync();
    }

    // A client that hangs up holds no place: with one place only, the next is served.
    [Fact]
    public async Task ClientThatHangsUp_FreesItsPlace()
    {
        PlanServer single = await PlanServer.StartAsync("--Limits:AtOnce", "1", "--Limits:Timeout", "00:01:00");
        using (TcpClient gone = await BeginAsync(single))
        {
            await Task.Delay(100);
        }

        HttpStatusCode status;
        var watch = Stopwatch.StartNew();
        do
        {
            using HttpResponseMessage response = await single.PostAsync(PlanServer.SiteText("boat-shed.json"));
            status = response.StatusCode;
        }
        while (status == HttpStatusCode.ServiceUnavailable && watch.Elapsed < TimeSpan.FromSeconds(30));
        Assert.Equal(HttpStatusCode.OK, status);
        await single.DisposeAsync();
    }

    [Fact]
    public async Task MoreThanMayWait_AreToldToComeAgain()
    {
        PlanServer single = await PlanServer.StartAsync("--Limits:AtOnce", "1", "--Limits:Timeout", "00:01:00");
        using (TcpClient stalled = await BeginAsync(single))
        {
            HttpStatusCode status;
            var watch = Stopwatch.StartNew();
            do
            {
                using HttpResponseMessage response = await single.PostAsync(PlanServer.SiteText("boat-shed.json"));
                status = response.StatusCode;
                if (status != HttpStatusCode.ServiceUnavailable) continue;
                await FaultTests.AssertProblemAsync(response, status);
                Assert.True(response.Headers.RetryAfter!.Delta > TimeSpan.Zero);
            }
            while (status != HttpStatusCode.ServiceUnavailable && watch.Elapsed < TimeSpan.FromSeconds(20));
            Assert.Equal(HttpStatusCode.ServiceUnavailable, status);
        }

        await single.DisposeAsync();
    }

    [Fact]
    public void ByDefault_OnlyThisMachineIsServed()
    {
        string urls = PlanApplication.Create([]).Configuration["urls"]!;
        Assert.All(urls.Split(';').Select(u => new Uri(u)), u => Assert.True(u.IsLoopback, u.ToString()));
    }

    // The head of a request and the first byte of its body.
    private static async Task<TcpClient> BeginAsync(PlanServer at, int contentLength = 1000)
    {
        var client = new TcpClient();
        await client.ConnectAsync(at.Client.BaseAddress!.Host, at.Client.BaseAddress.Port);
        await client.GetStream().WriteAsync(Encoding.ASCII.GetBytes(FormattableString.Invariant(
            $"POST /assessments HTTP/1.1\r\nHost: here\r\nContent-Type: application/json\r\nContent-Length: {contentLength}\r\n\r\n{{")));
        return client;
    }
}
