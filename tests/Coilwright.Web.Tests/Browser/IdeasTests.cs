using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Ideas for a better order: looked for as work of the program, and one of them strung.</summary>
public sealed class IdeasTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    // Work that can wait gives way to everything else, also to other tests.
    private static readonly LocatorAssertionsToBeEnabledOptions Patient = new() { Timeout = 240_000 };

    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name });

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task An_idea_is_found_strung_and_taken_back(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop);
        await visit.OpenAsync();
        var page = visit.Page;
        var before = await OrderOf(page);
        await visit.OpenAsync((await page.Locator(".piece-pages a[href$='/ideas']").GetAttributeAsync("href"))!);
        var piece = page.Url;
        var best = page.Locator(".idea").Filter(new LocatorFilterOptions { HasText = "The best found" }).GetByRole(AriaRole.Button);
        // The other case may have left its ideas here: of the piece as it was then, so they cannot be strung.
        await page.Locator(".ideas > .buttons button").First.ClickAsync();
        // The work is the program's: the page may be loaded anew meanwhile.
        await visit.OpenAsync(piece);
        await Expect(best).ToBeEnabledAsync(Patient);
        await Expect(page.Locator(".idea")).Not.ToHaveCountAsync(1);
        await Barriers.NoneAsync(page);
        await best.ClickAsync();
        await page.WaitForURLAsync("**/piece/*");
        await Expect(page.Locator(".bench-rows")).ToBeVisibleAsync();
        await Expect(Button(page, "Take back")).ToBeEnabledAsync();
        Assert.NotEqual(before, await OrderOf(page));
        await Button(page, "Take back").ClickAsync();
        await Expect(page.Locator(".rows-beads [role=option]")).ToHaveCountAsync(before.Length);
        Assert.Equal(before, await OrderOf(page));
    }

    // What each bead of the rows is, from the starting end: "1, Amazonite nugget, A, turn 1, ..." without its place.
    private static async Task<string[]> OrderOf(IPage page)
    {
        var beads = page.Locator(".rows-beads [role=option]");
        await Expect(beads.First).ToBeAttachedAsync();
        return [.. (await beads.EvaluateAllAsync<string[]>("all => all.map(b => b.getAttribute('aria-label') ?? b.textContent)")).Select(b => b.Split(',')[1])];
    }
}
