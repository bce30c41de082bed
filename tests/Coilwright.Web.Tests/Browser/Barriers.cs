using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What a machine can find on a page that keeps someone out.</summary>
internal static class Barriers
{
    /// <summary>Nothing that axe-core finds by its rules for WCAG 2.2 A and AA and its best practices, and nothing that sticks out of the page sideways.</summary>
    /// <param name="visit">The visit, on the page.</param>
    /// <param name="screen">The screen it is on.</param>
    /// <param name="frames">Whether what stands in frames is looked at too.</param>
    public static async Task AssertNoneAsync(Visit visit, Screen screen, bool frames = true)
    {
        // What is out of sight is left undrawn by the page, and would be passed over by axe.
        await visit.Page.EvaluateAsync("() => { const all = new CSSStyleSheet(); all.replaceSync('* { content-visibility: visible !important; }'); document.adoptedStyleSheets = [all]; }");
        foreach (var details in await visit.Page.Locator("details").AllAsync()) await details.EvaluateAsync("d => d.open = true");
        var found = await visit.Page.RunAxe(new AxeRunOptions { Iframes = frames, Rules = new Dictionary<string, RuleOptions> { ["target-size"] = new() { Enabled = true } } });
        Assert.True(found.Passes.Length > 20, "axe looked at next to nothing.");
        Assert.Empty(found.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}")));
        var width = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
        Assert.InRange(width, 1, screen.Width);
    }
}
