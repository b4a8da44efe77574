using System;
using System.Collections.Concurrent;
using System.Threading.Tasks;
using Microsoft.Playwright;

namespace Classroom.Browser;

/// <summary>The page in a window of its own, with everything that it asked for and complained about.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    // Marks the moment at which the first answer stands on the page and the frame with it is about to be drawn.
    private const string MarkFirstAnswer =
        """
        new MutationObserver((_, observer) => {
          if (!document.getElementById('load-volts')) return;
          observer.disconnect();
          requestAnimationFrame(() => performance.mark('first answer'));
        }).observe(document, { childList: true, subtree: true });
        """;

    private readonly IBrowserContext _context;

    private OpenPage(IBrowserContext context, IPage page)
    {
        _context = context;
        Page = page;
        page.Request += (_, request) => Requests.Add(request.Url);
        page.Console += (_, message) => { if (message.Type is "error" or "warning") Complaints.Add(message.Text); };
        page.PageError += (_, error) => Complaints.Add(error);
    }

    public IPage Page { get; }

    public ConcurrentBag<string> Requests { get; } = [];

    public ConcurrentBag<string> Complaints { get; } = [];

    public ILocator this[string id] => Page.Locator("#" + id);

    public static async Task<OpenPage> OfAsync(PublishedClassroom classroom, int width = 1280, int height = 900)
    {
        IBrowserContext context = await classroom.Browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height } });
        var open = new OpenPage(context, await context.NewPageAsync());
        await open.Page.AddInitScriptAsync(MarkFirstAnswer);
        await open.Page.GotoAsync(classroom.Address.ToString());
        await open["exercise-question"].WaitForAsync();
        return open;
    }

    public Task<string> TextAsync(string id) => this[id].InnerTextAsync();

    public async ValueTask DisposeAsync() => await _context.CloseAsync();
}
