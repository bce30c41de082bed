using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Ideas for a better order: looked for as work of the program, and shown with their rows.</summary>
public sealed class IdeasTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    // Work that can wait gives way to everything else, also to other tests.
    private static readonly LocatorAssertionsToBeEnabledOptions Patient = new() { Timeout = 240_000 };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Ideas_are_found_while_the_page_is_loaded_anew(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop);
        await visit.OpenAsync();
        var page = visit.Page;
        await visit.OpenAsync((await page.Locator(".piece-pages a[href$='/ideas']").GetAttributeAsync("href"))!);
        var piece = page.Url;
        var best = page.Locator(".idea").Filter(new LocatorFilterOptions { HasText = "The best found" }).GetByRole(AriaRole.Button);
        var find = page.Locator(".ideas > .buttons button").First;
        await find.WaitForAsync();
        var jobs = await page.Locator(".job").CountAsync();
        await find.ClickAsync();
        await Expect(page.Locator(".job")).ToHaveCountAsync(jobs + 1);
        // The work is the program's: the page may be loaded anew meanwhile.
        await visit.OpenAsync(piece);
        await Expect(best).ToBeEnabledAsync(Patient);
        await Expect(page.Locator(".idea")).Not.ToHaveCountAsync(1);
        await Barriers.NoneAsync(page);
    }

    [Fact]
    public async Task An_order_without_a_repeat_is_shown_another_at_each_press_and_strung()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var piece = await visit.BringAsync(Examples.Tidewrack);
        await visit.OpenAsync(piece + "/ideas");
        var page = visit.Page;
        var scatter = page.Locator(".scatter");
        await Expect(scatter.Locator("svg")).ToHaveCountAsync(0);
        await page.Button("Scatter").ClickAsync();
        await Expect(scatter.GetByText("No repeat shows")).ToBeVisibleAsync();
        await Expect(scatter.Locator("svg")).ToHaveCountAsync(1);
        var first = await scatter.Locator("svg").InnerHTMLAsync();
        await page.Button("Scatter otherwise").ClickAsync();
        await Expect(page.Button("Scatter otherwise")).ToBeEnabledAsync();
        await Expect(scatter.Locator("svg")).Not.ToHaveJSPropertyAsync("innerHTML", first);
        await Barriers.NoneAsync(page);
        await scatter.GetByRole(AriaRole.Button).First.ClickAsync();
        await Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{Examples.Tidewrack.Order.Count}");
        // It is a step like any other.
        await visit.OpenAsync(piece + "/history");
        await Expect(page.GetByText("Wrote the order")).Not.ToHaveCountAsync(0);
    }
}
