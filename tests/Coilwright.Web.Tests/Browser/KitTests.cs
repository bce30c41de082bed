using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Kits, and the head that leads to them. With a bench of its own: stock, labels and the piece that is edited are the whole bench's.</summary>
public sealed class KitTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name });

    private static async Task WriteAsync(ILocator box, string text)
    {
        await box.FillAsync(text);
        await box.PressAsync("Tab");
    }

    [Fact]
    public async Task Kits_are_counted_from_the_stock_and_their_labels_say_which_version_they_are_of()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        await visit.OpenAsync("/kit");
        var page = visit.Page;
        var piece = page.Locator(".making-pieces li").Filter(new LocatorFilterOptions { HasText = "Boardwalk" });
        await piece.GetByRole(AriaRole.Button).Last.ClickAsync();
        await Expect(page.Locator(".making-part")).ToContainTextAsync("0 kits of Boardwalk");
        await Expect(page.Locator(".making-answer .ticks")).ToContainTextAsync("missing 135");
        await Expect(page.Locator(".kit-bags tbody tr").First).ToContainTextAsync("135");
        await page.Locator(".stepper").Filter(new LocatorFilterOptions { Has = page.GetByLabel("In each bag", new PageGetByLabelOptions { Exact = true }) }).GetByRole(AriaRole.Button).Last.ClickAsync();
        await Expect(page.Locator(".kit-bags tbody tr").First).ToContainTextAsync("136");
        await Barriers.NoneAsync(page);

        // A sheet wider than the paper is refused with the reason, and there is nothing to save.
        await WriteAsync(page.GetByLabel("Width of one, mm"), "90");
        await Expect(page.Locator(".making-options .trouble")).ToContainTextAsync("270");
        var labels = page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save the labels (PDF)" });
        await Expect(labels).ToHaveCountAsync(0);
        await WriteAsync(page.GetByLabel("Width of one, mm"), "64");
        await Expect(page.Locator(".making-options")).ToContainTextAsync("3 labels on 1 sheet.");
        foreach (var link in new[] { labels, page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save the pick list (PDF)" }) })
        {
            var saved = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
            Assert.Equal("%PDF-"u8.ToArray(), (await File.ReadAllBytesAsync(await saved.PathAsync()))[..5]);
        }
        foreach (var wrong in new[] { "", "?pieces=x*1&percent=0&each=0&stock=1&labels=3x7,64x36&paper=A4" })
            Assert.Equal(404, (await page.APIRequest.GetAsync("/kit/labels.pdf" + wrong)).Status);

        // The sheet is kept, and an edit after the labels is told with both versions.
        await visit.OpenAsync("/pieces");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Boardwalk" }).First.ClickAsync();
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/piece/"));
        await page.Locator(".rows-beads [role=option]").Nth(4).ClickAsync();
        await Button(page, "Take off").ClickAsync();
        await Expect(Button(page, "Take back")).ToBeEnabledAsync();
        await visit.OpenAsync("/kit");
        await piece.GetByRole(AriaRole.Button).Last.ClickAsync();
        await Expect(page.Locator(".making-options")).ToContainTextAsync("Boardwalk was edited since its labels were last made: they are of version 1, it is at version 2.");
    }

    [Fact]
    public async Task Pages_of_the_head_open_by_key_and_by_touch_and_close_by_Escape_by_another_and_by_a_tap_elsewhere()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        await visit.OpenAsync("/stock");
        var page = visit.Page;
        ILocator workshop = page.Locator(".nav-group").First, selling = page.Locator(".nav-group").Last;
        var kits = workshop.GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "Kits" });
        await Expect(kits).ToBeHiddenAsync();
        await workshop.Locator("summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(kits).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Escape");
        await Expect(kits).ToBeHiddenAsync();
        await Expect(workshop.Locator("summary")).ToBeFocusedAsync();
        await workshop.Locator("summary").ClickAsync();
        await selling.Locator("summary").ClickAsync();
        await Expect(kits).ToBeHiddenAsync();
        await Expect(selling.GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "Prices" })).ToBeVisibleAsync();
        await page.Locator(".foot").ClickAsync();
        await Expect(selling.GetByRole(AriaRole.Link)).ToHaveCountAsync(0);
        await workshop.Locator("summary").ClickAsync();
        await kits.ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Kits");
        await Expect(kits).ToBeHiddenAsync();
    }
}
