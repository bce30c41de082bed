using System.Diagnostics;
using Coilwright.Core.Pieces;
using Coilwright.Storage;
using Microsoft.Playwright;

namespace Coilwright.Benchmarks.Web;

/// <summary>The bench as a maker has it, a process of its own with a shelf of its own, and the machine's chromium.</summary>
internal sealed class BenchAndBrowser : IAsyncDisposable
{
    private readonly Process _bench;
    private readonly string _shelf;
    private readonly string _address;
    private readonly IPlaywright _playwright;
    private readonly IBrowser _browser;

    private BenchAndBrowser(Process bench, string shelf, string address, IPlaywright playwright, IBrowser browser) =>
        (_bench, _shelf, _address, _playwright, _browser) = (bench, shelf, address, playwright, browser);

    public static async Task<BenchAndBrowser> StartAsync(string program, bool inSpace = false)
    {
        var shelf = Directory.CreateTempSubdirectory("coilwright-bench-").FullName;
        var bench = Process.Start(new ProcessStartInfo("dotnet", [program, "--port", "0", "--shelf", shelf]) { RedirectStandardOutput = true })!;
        string? address = null;
        while (address is null && await bench.StandardOutput.ReadLineAsync() is { } line)
            if (line.IndexOf("http://", StringComparison.Ordinal) is var at and >= 0)
                address = line[at..].Trim();
        if (address is null) throw new InvalidOperationException("The bench did not say where it is.");
        var playwright = await Playwright.CreateAsync();
        var browser = await LaunchAsync(playwright, inSpace);
        return new BenchAndBrowser(bench, shelf, address, playwright, browser);
    }

    /// <summary>The machine's chromium without a window.</summary>
    public static Task<IBrowser> LaunchAsync(IPlaywright playwright, bool inSpace = false) => playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
    {
        ExecutablePath = Environment.GetEnvironmentVariable("COILWRIGHT_CHROMIUM") ?? "/usr/bin/chromium",
        // WebGL without a graphics card, for what is measured in space.
        Args = ["--no-sandbox", "--disable-background-networking", .. inSpace ? ["--use-angle=swiftshader", "--enable-unsafe-swiftshader"] : Array.Empty<string>()],
    });

    /// <summary>A window with a piece on the bench.</summary>
    public async Task<BenchWindow> OpenAsync(Piece piece)
    {
        var context = await _browser.NewContextAsync(new BrowserNewContextOptions { BaseURL = _address, ViewportSize = new ViewportSize { Width = 1440, Height = 900 } });
        var page = await context.NewPageAsync();
        await page.GotoAsync("/pieces");
        await page.Locator("html[data-live]").WaitForAsync();
        await page.Locator("input[type=file]").First.SetInputFilesAsync(new FilePayload { Name = "own.piece.json", MimeType = "application/json", Buffer = PieceFile.Write(piece) });
        await page.Locator(".rows-beads").WaitForAsync();
        return new BenchWindow(context, page);
    }

    /// <summary>Has the bench make sheets, many more than the edits take time for.</summary>
    public async Task KeepBusyAsync(BenchWindow window)
    {
        var page = await _browser.NewPageAsync(new BrowserNewPageOptions { BaseURL = _address });
        await page.GotoAsync(new Uri(window.Page.Url).AbsolutePath + "/sheet");
        await page.Locator("html[data-live]").WaitForAsync();
        for (var i = 0; i < 4; i++)
        {
            await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Every paper at once" }).ClickAsync();
            await page.Locator(".job").Nth(i).WaitForAsync();
        }
        await page.CloseAsync();
        await window.Page.Locator(".job progress").First.WaitForAsync();
    }

    /// <summary>Whether a job still runs.</summary>
    public static async Task<bool> StillBusyAsync(BenchWindow window) => await window.Page.Locator(".job progress").CountAsync() > 0;

    /// <summary>Stops all jobs and clears them away.</summary>
    public static async Task StopAsync(BenchWindow window)
    {
        // Told to all at once, and again until all are gone: they change under one's hand.
        while (await window.Page.EvaluateAsync<int>("() => { const all = [...document.querySelectorAll('.job')]; for (const job of all) job.querySelector('.buttons button').click(); return all.length; }") > 0)
            await Task.Delay(300);
    }

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        _playwright.Dispose();
        _bench.Kill(entireProcessTree: true);
        await _bench.WaitForExitAsync();
        _bench.Dispose();
        Directory.Delete(_shelf, recursive: true);
    }
}

/// <summary>A window with a piece on the bench, and the time from a key to the rows painted.</summary>
internal sealed class BenchWindow(IBrowserContext context, IPage page) : IAsyncDisposable
{
    // From the key until list and drawing of the rows have a bead more or less, and then until the frame that shows them is painted: what is posted in a frame's own
    // callback comes after it. The readings are there when the count in the list of kinds, the last of the page, has been painted too.
    private const string Edit = """
        key => new Promise(done => {
          const beads = document.querySelector('.rows-beads');
          const drawn = document.querySelector('.rows-picture > svg:not(.rows-beads)');
          const kinds = document.querySelector('.kinds ul');
          const count = () => [beads.querySelectorAll('rect').length, drawn.querySelectorAll('use').length];
          const [listed, used] = count();
          const read = kinds.textContent;
          const began = performance.now();
          const painted = then => requestAnimationFrame(() => {
            const after = new MessageChannel();
            after.port1.onmessage = () => then(performance.now() - began);
            after.port2.postMessage(0);
          });
          const until = (of, there, then) => {
            const observer = new MutationObserver(() => {
              if (!there()) return;
              observer.disconnect();
              painted(then);
            });
            observer.observe(of, { childList: true, characterData: true, subtree: true });
          };
          let ms = {};
          const tell = (what, at) => {
            ms[what] = at;
            if ('rows' in ms && 'readings' in ms) done([ms.rows, ms.readings]);
          };
          until(document.querySelector('.rows-picture'), () => { const [l, u] = count(); return l !== listed && u !== used; }, at => tell('rows', at));
          until(kinds, () => kinds.textContent !== read, at => tell('readings', at));
          beads.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
        })
        """;

    // The bead that the next one is strung after, and the keys are on the rows.
    private const string Pick = """
        bead => new Promise(done => {
          const beads = document.querySelector('.rows-beads');
          const all = beads.querySelectorAll('rect');
          const one = all[Math.round(bead * (all.length - 1))];
          beads.focus();
          const observer = new MutationObserver(() => {
            if (one.getAttribute('aria-selected') !== 'true') return;
            observer.disconnect();
            done();
          });
          if (one.getAttribute('aria-selected') === 'true' && beads.querySelectorAll('[aria-selected="true"]').length === 1) return done();
          observer.observe(beads, { attributes: true, subtree: true });
          one.dispatchEvent(new MouseEvent('click', { bubbles: true }));
        })
        """;

    public IPage Page => page;

    /// <summary>Strings a bead and takes it off, in turn, at the start of the piece, in its middle and at its end by turns; for each edit the milliseconds until the
    /// rows were to be seen, and until the readings were. An even number leaves the piece as it was.</summary>
    public async Task<List<(double Rows, double Readings)>> EditAsync(int edits)
    {
        await page.BringToFrontAsync();
        var times = new List<(double, double)>();
        double[] places = [0, 0.5, 1];
        for (var i = 0; i < edits; i++)
        {
            if (i % 2 == 0) await page.EvaluateAsync(Pick, places[i / 2 % places.Length]);
            var took = await page.EvaluateAsync<double[]>(Edit, i % 2 == 0 ? "a" : "Delete");
            times.Add((took[0], took[1]));
            // As fast as someone types who knows what she wants, not faster than it is shown.
            await Task.Delay(60);
        }
        return times;
    }

    public async ValueTask DisposeAsync() => await context.DisposeAsync();
}
