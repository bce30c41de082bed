using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Coilwright.Web.Tests.Browser.Chromium))]

namespace Coilwright.Web.Tests.Browser;

/// <summary>The machine's chromium, started when first asked for and kept to the end: starting a browser is dear, and each visit has its own cookies and stores.</summary>
public sealed class Chromium : IAsyncDisposable
{
    /// <summary>How long is waited, ms, for what should come: a wait ends when it is there, so this is for what never comes. A busy machine may need more than Playwright's five seconds.</summary>
    public const int PatienceMs = 60_000;

    private readonly SemaphoreSlim _one = new(1, 1);
    private IPlaywright? _playwright;
    private IBrowser? _flat, _inSpace;

    /// <summary>The browser of the pages that draw in the plane.</summary>
    public async Task<IBrowser> FlatAsync() => _flat ?? await OnceAsync(async () => _flat ??= await LaunchAsync());

    /// <summary>The browser that draws in space without a graphics card. That takes both cores of a small machine, so it is only for who asks for it.</summary>
    public async Task<IBrowser> InSpaceAsync() => _inSpace ?? await OnceAsync(async () => _inSpace ??= await LaunchAsync("--use-angle=swiftshader", "--enable-unsafe-swiftshader"));

    public async ValueTask DisposeAsync()
    {
        if (_inSpace is not null) await _inSpace.DisposeAsync();
        if (_flat is not null) await _flat.DisposeAsync();
        _playwright?.Dispose();
        _one.Dispose();
    }

    private async Task<IBrowser> OnceAsync(Func<Task<IBrowser>> launch)
    {
        await _one.WaitAsync();
        try
        {
            return await launch();
        }
        finally
        {
            _one.Release();
        }
    }

    private async Task<IBrowser> LaunchAsync(params string[] more)
    {
        Assertions.SetDefaultExpectTimeout(PatienceMs);
        _playwright ??= await Playwright.CreateAsync();
        return await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Environment.GetEnvironmentVariable("COILWRIGHT_CHROMIUM") ?? "/usr/bin/chromium",
            Args = ["--no-sandbox", "--disable-background-networking", .. more],
        });
    }
}
