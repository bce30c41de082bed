using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What a machine can find of barriers on a page as it is.</summary>
internal static class Barriers
{
    /// <summary>Asserts that axe finds none, and that nothing sticks out of the page sideways.</summary>
    /// <param name="page">The page.</param>
    /// <param name="frames">Whether what stands in frames is looked at too. One that runs no script axe could only wait for.</param>
    /// <param name="within">The only part that axe looks at; null for all of the page.</param>
    public static async Task NoneAsync(IPage page, bool frames = true, string? within = null)
    {
        // What is out of sight is left undrawn by the page, and would be passed over by axe.
        await page.EvaluateAsync("() => { const all = new CSSStyleSheet(); all.replaceSync('* { content-visibility: visible !important; }'); document.adoptedStyleSheets = [all]; }");
        // The groups of the head lie over the page while they are open, as a menu does: what is beneath them is then not to be tapped.
        foreach (var details in await page.Locator("details:not(.head *)").AllAsync()) await details.EvaluateAsync("d => d.open = true");
        var options = new AxeRunOptions { Iframes = frames, Rules = new Dictionary<string, RuleOptions> { ["target-size"] = new() { Enabled = true } } };
        var found = within is null ? await page.RunAxe(options) : await page.Locator(within).RunAxe(options);
        // A part has fewer things that rules are about, but letters and something to tap.
        if (within is null) Assert.True(found.Passes.Length > 20, "axe looked at next to nothing.");
        else Assert.All(["color-contrast", "target-size"], rule => Assert.Contains(found.Passes, p => p.Id == rule));
        Assert.Empty(found.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}")));
        var wide = page.ViewportSize!.Width;
        var width = await page.EvaluateAsync<int>("document.documentElement.scrollWidth");
        if (width <= wide) return;
        var sticksOut = await page.EvaluateAsync<string[]>(
            "w => [...document.querySelectorAll('body *')].filter(e => !e.closest('svg, .rows-scroll') && e.getBoundingClientRect().right > w).map(e => `${e.tagName}.${e.className} to ${e.getBoundingClientRect().right}`)", wide);
        Assert.Fail($"The page is {width} wide: {string.Join(", ", sticksOut)}");
    }
}
