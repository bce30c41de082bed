using System.Collections.Concurrent;
using Coilwright.Web.Tests.Hosting;
using Coilwright.Wording;
using Microsoft.Playwright;

namespace Coilwright.Web.Tests.Browser;

/// <summary>A running bench, seen in the machine's chromium. Classes that change what all see have one of their own.</summary>
public sealed class BenchInBrowser(Chromium chromium) : IAsyncLifetime
{
    private readonly RunningBench _bench = new();
    private string? _ofPiece;

    public Uri Address => _bench.Address;

    public ValueTask InitializeAsync() => _bench.InitializeAsync();

    /// <summary>A visitor who was never here before.</summary>
    public async Task<Visit> VisitAsync(Screen screen, Light light = Light.Day, Uri? address = null, string language = "en", bool inSpace = false, bool isFirst = false)
    {
        address ??= Address;
        var browser = inSpace ? await chromium.InSpaceAsync() : await chromium.FlatAsync();
        var context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = address.ToString(),
            ViewportSize = new ViewportSize { Width = screen.Width, Height = screen.Height },
            HasTouch = screen.Touch,
            ReducedMotion = ReducedMotion.Reduce,
        });
        context.SetDefaultTimeout(Chromium.PatienceMs);
        await context.AddCookiesAsync([Visit.Look(light, Languages.Find(language)!, address)]);
        // Who is there for the first time is asked for a look round; the others have been asked.
        if (!isFirst) await context.AddCookiesAsync([new Cookie { Name = PreferencesKeeper.WayCookie, Value = "known", Url = address.ToString() }]);
        return new Visit(context, await context.NewPageAsync(), address);
    }

    /// <summary>Where a page of the bench's first piece is, told by the last part of its address. The bench is looked at once for it: pieces stay where they are.</summary>
    public async Task<string> PageOfPieceAsync(Visit visit, string page)
    {
        if (_ofPiece is null)
        {
            const string one = "history";
            await visit.OpenAsync();
            _ofPiece = (await visit.Page.Locator($".piece-pages a[href$='/{one}']").GetAttributeAsync("href"))![..^one.Length];
        }
        return _ofPiece + page;
    }

    public ValueTask DisposeAsync() => _bench.DisposeAsync();
}

/// <summary>A screen to look at the bench on.</summary>
public sealed record Screen(int Width, int Height, bool Touch)
{
    public static Screen Phone { get; } = new(360, 740, true);

    public static Screen Tablet { get; } = new(820, 1180, true);

    public static Screen Desktop { get; } = new(1440, 900, false);
}

/// <summary>One visit. At its end nothing may have been asked of another machine, and the browser may not have complained.</summary>
public sealed class Visit : IAsyncDisposable
{
    // What a machine without a graphics card remarks on itself; it is not about the page.
    private static readonly string[] OfTheDriver = ["GL Driver Message", "software WebGL"];

    private readonly IBrowserContext _context;
    private readonly ConcurrentQueue<string> _complaints = new();
    private readonly List<string> _expected = [];

    internal Visit(IBrowserContext context, IPage page, Uri address)
    {
        (_context, Page, Address) = (context, page, address);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning" && !OfTheDriver.Any(d => message.Text.Contains(d, StringComparison.Ordinal))) _complaints.Enqueue(message.Text);
        };
        page.PageError += (_, error) => _complaints.Enqueue(error);
        page.Request += (_, request) =>
        {
            if (new Uri(request.Url) is { Scheme: "http" or "https" or "ws" or "wss" } to && to.Authority != address.Authority)
                _complaints.Enqueue("asked elsewhere: " + request.Url);
        };
    }

    public IPage Page { get; }

    /// <summary>The bench that is visited.</summary>
    public Uri Address { get; }

    /// <summary>Opens a page and waits until it answers to her hand, not only to her eye.</summary>
    public async Task OpenAsync(string path = "/")
    {
        await Page.GotoAsync(path);
        await Page.Locator("html[data-live]").WaitForAsync();
    }

    /// <summary>Keeps another light and language for the pages that are opened from now on.</summary>
    public Task KeepAsync(Light light, Language language) => _context.AddCookiesAsync([Look(light, language, Address)]);

    /// <summary>Takes another light while the page is open, as she does, and waits until the page has it.</summary>
    public async Task TurnAsync(Light light)
    {
        var settings = Page.Locator(".settings > button");
        await settings.ClickAsync();
        await Page.Locator("#settings-panel input[name=light]").Nth((int)light).CheckAsync();
        await Page.Locator($"html[data-light={light.Word()}]").WaitForAsync();
        await settings.ClickAsync();
        await Assertions.Expect(Page.Locator("#settings-panel")).ToBeHiddenAsync();
    }

    /// <summary>The browser will complain of something with these words, and is meant to.</summary>
    public void Expect(string words) => _expected.Add(words);

    internal static Cookie Look(Light light, Language language, Uri address) =>
        new() { Name = Preferences.CookieName, Value = new Preferences { Light = light, Language = language }.Text, Url = address.ToString() };

    public async ValueTask DisposeAsync()
    {
        await _context.DisposeAsync();
        Assert.DoesNotContain(_complaints, c => !_expected.Exists(e => c.Contains(e, StringComparison.Ordinal)));
    }
}

[CollectionDefinition(Name)]
public sealed class InBrowser : ICollectionFixture<BenchInBrowser>
{
    public const string Name = "in the browser";
}
