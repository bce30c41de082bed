using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Sizes of a design: wrists chosen, made as work of the program, and kept as pieces.</summary>
public sealed class SizesTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    // Work that can wait gives way to everything else, also to other tests.
    private static readonly LocatorAssertionsToContainTextOptions Patient = new() { Timeout = 240_000 };

    // Each its own wrist: sizes that were made before stay on the page till the new ones are there.
    [Theory]
    [InlineData(true, "150")]
    [InlineData(false, "155")]
    public async Task Sizes_are_made_for_the_wrists_that_are_chosen_and_one_is_kept(bool phone, string added)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop);
        await visit.OpenAsync();
        var page = visit.Page;
        await visit.OpenAsync((await page.Locator(".piece-pages a[href$='/sizes']").GetAttributeAsync("href"))!);
        var chips = page.Locator(".wrist-chip");
        await chips.First.WaitForAsync();
        var wrists = await chips.CountAsync();
        Assert.True(wrists > 2);
        while (wrists > 2)
        {
            await chips.First.ClickAsync();
            await Expect(chips).ToHaveCountAsync(--wrists);
        }
        // What is no wrist is said; one that is there already is not there twice.
        var box = page.Locator(".sizes-more input");
        await box.FillAsync("wide");
        await box.PressAsync("Enter");
        await Expect(page.Locator(".sizes-more .wrong")).ToBeVisibleAsync();
        foreach (var wrist in (string[])[added, added + " mm"])
        {
            await box.FillAsync(wrist);
            await box.PressAsync("Enter");
            await Expect(chips).ToHaveCountAsync(3);
            await Expect(box).ToHaveValueAsync("");
        }
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Make the sizes" }).Or(page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Make them again" })).ClickAsync();
        var first = page.Locator(".size").First;
        await Expect(first).ToContainTextAsync(added + " mm", Patient);
        await Expect(page.Locator(".size")).ToHaveCountAsync(3);
        await Barriers.NoneAsync(page);

        await first.GetByRole(AriaRole.Button).ClickAsync();
        await first.GetByRole(AriaRole.Link).ClickAsync();
        await Expect(page.Locator("h1")).ToContainTextAsync(added + " mm");
    }
}
