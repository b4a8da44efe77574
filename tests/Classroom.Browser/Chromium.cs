using System;
using System.IO;
using System.Linq;
using System.Threading.Tasks;
using CamPower.Tests.Repository;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Classroom.Browser;

/// <summary>One Chromium for all that is looked at.</summary>
public sealed class Chromium : IAsyncLifetime
{
    /// <summary>An environment variable that names the browser where it is not Debian's.</summary>
    private const string BrowserVariable = "CHROMIUM";

    private IPlaywright? _playwright;

    public IBrowser Browser { get; private set; } = null!;

    /// <summary>Where the pictures go that the tests take.</summary>
    public static string Pictures { get; } = Directory.CreateDirectory(RepositoryFiles.PathOf("artifacts/pictures")).FullName;

    /// <summary>A file among the pictures.</summary>
    public static string PicturePath(string name) => Path.Combine(Pictures, name);

    /// <summary>Holds a page to what an automated check sees of accessibility.</summary>
    public static async Task IsAccessibleAsync(IPage page)
    {
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Select(n => n.Html))}")));
        Assert.True(result.Passes.Length > 10);
    }

    /// <summary>Holds a page to its window: nothing is scrolled sideways.</summary>
    public static async Task FitsAsync(IPage page) =>
        Assert.Equal(0, await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));

    public async Task InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Environment.GetEnvironmentVariable(BrowserVariable) ?? "/usr/bin/chromium",
            Args = ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
        });
    }

    public async Task DisposeAsync()
    {
        await Browser.CloseAsync();
        _playwright?.Dispose();
    }
}
