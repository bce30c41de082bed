using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What a machine can find of barriers on a page as it is.</summary>
internal static class Barriers
{
    private const string Groups = "[...document.querySelectorAll('details')].filter(d => !d.closest('.head'))";

    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    /// <summary>Asserts that axe finds none, and that nothing sticks out of the page sideways.</summary>
    /// <param name="page">The page.</param>
    /// <param name="frames">Whether what stands in frames is looked at too. One that runs no script axe could only wait for.</param>
    /// <param name="within">The only part that axe looks at; null for all of the page.</param>
    public static async Task NoneAsync(IPage page, bool frames = true, string? within = null)
    {
        // What is out of sight is left undrawn by the page, and would be passed over by axe.
        await page.EvaluateAsync("() => { const all = new CSSStyleSheet(); all.replaceSync('* { content-visibility: visible !important; }'); document.adoptedStyleSheets = [all]; }");
        // The groups of the head lie over the page while they are open, as a menu does: what is beneath them is then not to be tapped.
        await page.EvaluateAsync($"async () => {{ {Groups}.forEach(d => d.open = true); await new Promise(seen => requestAnimationFrame(() => requestAnimationFrame(seen))); }}");
        // What a group puts into itself only once it is opened is waited for, and what is about to be drawn anew, as there is another width for it.
        await page.WaitForFunctionAsync("() => !document.querySelector('div.measured:not([data-fits])') && ![...document.querySelectorAll('.tray-photo')].some(d => d.childElementCount < 2)");
        var (passes, violations) = within is null && frames && page.Frames.Count > 1 ? await WithFramesAsync(page) : await OnPageAsync(page, within);
        // A part has fewer things that rules are about, but letters and something to tap.
        if (within is null) Assert.True(passes.Length > 20, "axe looked at next to nothing.");
        else Assert.All(["color-contrast", "target-size"], rule => Assert.Contains(rule, passes));
        var seen = await page.EvaluateAsync<string>("`${document.documentElement.lang}, ${document.documentElement.dataset.light}: `");
        if (violations.Length > 0) Assert.Fail(seen + string.Join('\n', violations));
        var wide = page.ViewportSize!.Width;
        var width = await page.EvaluateAsync<int>("document.documentElement.scrollWidth");
        if (width <= wide) return;
        var sticksOut = await page.EvaluateAsync<string[]>(
            "w => [...document.querySelectorAll('body *')].filter(e => !e.closest('svg, .rows-scroll') && e.getBoundingClientRect().right > w).map(e => `${e.tagName}.${e.className} to ${e.getBoundingClientRect().right}`)", wide);
        Assert.Fail($"{seen}the page is {width} wide: {string.Join(", ", sticksOut)}");
    }

    // axe is asked in the page itself, and tells what it passed by name alone: every mark that it looked at, carried out of the browser, takes many times as long as the looking.
    private static async Task<(string[] Passes, string[] Violations)> OnPageAsync(IPage page, string? within)
    {
        if (!await page.EvaluateAsync<bool>("() => 'axe' in window")) await page.EvaluateAsync($"() => {{ {Axe} }}");
        var found = await page.EvaluateAsync<string[][]>(
            """
            async within => {
                const found = await axe.run(within ?? document, { iframes: false, resultTypes: ['violations'], rules: { 'target-size': { enabled: true } } });
                return [found.passes.map(p => p.id), found.violations.flatMap(v => v.nodes.map(n => `${v.id}: ${n.html}`))];
            }
            """, within);
        return (found[0], found[1]);
    }

    private static async Task<(string[] Passes, string[] Violations)> WithFramesAsync(IPage page)
    {
        var found = await page.RunAxe(new AxeRunOptions { Iframes = true, Rules = new Dictionary<string, RuleOptions> { ["target-size"] = new() { Enabled = true } } });
        return ([.. found.Passes.Select(p => p.Id)], [.. found.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}"))]);
    }
}
