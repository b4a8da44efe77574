using System;
using System.Collections.Concurrent;
using System.IO;
using System.Linq;
using System.Net.Http;
using System.Net.Http.Headers;
using System.Text;
using System.Text.RegularExpressions;
using System.Threading.Tasks;
using CamPower.Tests.Repository;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using PlanService;

namespace Classroom.Browser;

/// <summary>The report of a site as the plan service sends it, on a screen and on paper.</summary>
[Collection(InChromium.Name)]
public sealed partial class ReportTests(Chromium chromium) : IAsyncLifetime
{
    private const int Phone = 360, Desktop = 1280;
    private const double PixelsPerMillimeter = 96 / 25.4, MarginsMillimeters = 26;

    private readonly WebApplication _service = PlanApplication.Create(["--urls", "http://127.0.0.1:0", "--Limits:Timeout", "00:01:00"]);

    public Task InitializeAsync() => _service.StartAsync();

    public async Task DisposeAsync() => await _service.DisposeAsync();

    [Theory]
    [InlineData("PlanService/slip-gate", Phone)]
    [InlineData("PlanService/slip-gate", Desktop)]
    [InlineData("SiteCheck/sites/boatyard-as-found", Phone)]
    [InlineData("SiteCheck/sites/boatyard-as-found", Desktop)]
    public async Task EveryWidth_IsAccessible_AndFitsWithoutScrollingSideways(string site, int width)
    {
        IPage page = await PageAsync(width);
        await page.SetContentAsync((await ReportAsync(site)).Html);
        await Chromium.IsAccessibleAsync(page);
        await Chromium.FitsAsync(page);
        string name = FormattableString.Invariant($"report-{Path.GetFileName(site)}-{width}");
        await page.ScreenshotAsync(new() { Path = Chromium.PicturePath(name + "-top.png") });
        await page.ScreenshotAsync(new() { Path = Chromium.PicturePath(name + ".png"), FullPage = true });
        await page.Context.CloseAsync();
    }

    // Under its policy the page looks as it does without: inline styles and pictures are let through, and nothing is complained about.
    [Fact]
    public async Task PolicyOfTheService_LetsThePageShow()
    {
        (string html, string policy) = await ReportAsync("PlanService/slip-gate");
        byte[] under = await ShownAsync(html, policy), without = await ShownAsync(html, policy: null);
        Assert.Equal(without, under);

        byte[] unstyled = await ShownAsync(html, "default-src 'none'");
        Assert.NotEqual(without, unstyled);
    }

    [Theory]
    // The boatyard takes at most five sheets, with everything wrong that a rule knows at most nine.
    [InlineData("A4", 210, 297)]
    [InlineData("Letter", 215.9, 279.4)]
    public async Task Printed_NothingIsCutOff(string paper, double width, double height)
    {
        foreach ((string site, int mostSheets) in new[] { ("PlanService/slip-gate", 3), ("SiteCheck/sites/boatyard", 5), ("SiteCheck/sites/boatyard-as-found", 9) })
        {
            IPage page = await PageAsync((int)((width - MarginsMillimeters) * PixelsPerMillimeter));
            await page.SetContentAsync((await ReportAsync(site)).Html);
            await page.EmulateMediaAsync(new() { Media = Media.Print });
            Assert.Empty(await page.EvaluateAsync<string[]>(CutOff));

            byte[] printed = await page.PdfAsync(new() { Format = paper, PreferCSSPageSize = false, Path = Chromium.PicturePath($"report-{Path.GetFileName(site)}-{paper}.pdf") });
            double[][] sheets = [.. MediaBox().Matches(Encoding.Latin1.GetString(printed)).Select(m => new[] { Points(m, 1), Points(m, 2) })];
            Assert.InRange(sheets.Length, 1, mostSheets);
            Assert.All(sheets, sheet => Assert.Equal([width * 72 / 25.4, height * 72 / 25.4], sheet, (a, b) => Math.Abs(a - b) < 1.5));

            // A strip of paper would cut something off: the measure sees it.
            await page.SetViewportSizeAsync(200, 900);
            Assert.NotEmpty(await page.EvaluateAsync<string[]>(CutOff));
            await page.Context.CloseAsync();
        }

        static double Points(Match match, int group) => double.Parse(match.Groups[group].Value, System.Globalization.CultureInfo.InvariantCulture);
    }

    // What reaches over the right edge of the sheet, is wider than the box that it scrolls in, or leaves its picture.
    private const string CutOff =
        """
        () => {
          const edge = document.documentElement.clientWidth + 0.5, cut = [];
          for (const e of document.querySelectorAll('main *')) {
            const box = e.getBoundingClientRect(), svg = e.ownerSVGElement?.getBoundingClientRect();
            const inside = !svg || (box.left >= svg.left - 1 && box.right <= svg.right + 1 && box.top >= svg.top - 1 && box.bottom <= svg.bottom + 1);
            const wide = e.classList.contains('scrolled') && e.scrollWidth > e.clientWidth + 1;
            if (box.width > 0 && (box.right > edge || wide || (e.tagName === 'text' && !inside))) cut.push(`${e.tagName} ${e.className} ${e.textContent.slice(0, 40)}`);
          }
          return cut;
        }
        """;

    [GeneratedRegex(@"/MediaBox \[0 0 ([0-9.]+) ([0-9.]+)\]")]
    private static partial Regex MediaBox();

    private async Task<IPage> PageAsync(int width)
    {
        IBrowserContext context = await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = 900 } });
        return await context.NewPageAsync();
    }

    private async Task<byte[]> ShownAsync(string html, string? policy)
    {
        const string Address = "http://report.example/";
        IPage page = await PageAsync(Desktop);
        var complaints = new ConcurrentBag<string>();
        page.Console += (_, message) => complaints.Add(message.Text);
        await page.RouteAsync("**/*", route => route.Request.Url == Address
            ? route.FulfillAsync(new() { Body = html, ContentType = "text/html; charset=utf-8", Headers = policy is null ? [] : [new("Content-Security-Policy", policy)] })
            : route.AbortAsync());
        await page.GotoAsync(Address);
        byte[] shown = await page.ScreenshotAsync(new() { FullPage = true });
        await page.Context.CloseAsync();
        if (policy is null || policy.Contains("style-src", StringComparison.Ordinal)) Assert.Empty(complaints);
        return shown;
    }

    private async Task<(string Html, string Policy)> ReportAsync(string site)
    {
        using var client = new HttpClient { BaseAddress = new Uri(_service.Urls.Single()) };
        using var request = new HttpRequestMessage(HttpMethod.Post, "/assessments")
        {
            Content = new StringContent(await File.ReadAllTextAsync(RepositoryFiles.PathOf($"samples/{site}.json")), MediaTypeHeaderValue.Parse("application/json")),
        };
        request.Headers.Accept.ParseAdd("text/html");
        using HttpResponseMessage response = (await client.SendAsync(request)).EnsureSuccessStatusCode();
        return (await response.Content.ReadAsStringAsync(), response.Headers.GetValues("Content-Security-Policy").Single());
    }
}
