using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The manual, the keys and the look round, in a real browser.</summary>
[Collection(InBrowser.Name)]
public sealed class GuidePagesTests(BenchInBrowser bench)
{
    [Fact]
    public async Task On_a_first_visit_a_look_round_is_asked_for_once_and_left_out_for_good()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone, isFirst: true);
        var page = visit.Page;
        await visit.OpenAsync();
        await Expect(page.Locator(".tour-ask")).ToBeVisibleAsync();
        await Expect(page.Locator(".tour")).ToHaveCountAsync(0);
        await Barriers.NoneAsync(page);
        await page.Button("No, thank you").ClickAsync();
        await Expect(page.Locator(".tour-ask")).ToHaveCountAsync(0);
        await visit.OpenAsync();
        await Expect(page.Locator(".tape")).ToBeVisibleAsync();
        await Expect(page.Locator(".tour-ask")).ToHaveCountAsync(0);
    }

    [Theory, InlineData(true), InlineData(false)]
    public async Task Each_step_of_the_look_round_marks_what_it_speaks_of_in_sight_and_has_the_focus(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, isFirst: true);
        var page = visit.Page;
        await visit.OpenAsync();
        await page.Button("Take a look round").ClickAsync();
        for (var step = 1; step <= 6; step++)
        {
            await Expect(page.Locator(".tour")).ToContainTextAsync($"{step} of 6");
            await Expect(page.Locator("#tour-head")).ToBeFocusedAsync();
            var marked = page.Locator("[data-looked-at]");
            await Expect(marked).ToHaveCountAsync(1);
            await Expect(marked).ToBeInViewportAsync();
            // The top of what is spoken of is not under the words.
            var (at, tour) = ((await marked.BoundingBoxAsync())!, (await page.Locator(".tour").BoundingBoxAsync())!);
            Assert.True(at.Y < tour.Y, $"step {step}: {at.Y} under {tour.Y}");
            if (step is 1 or 4) await Barriers.NoneAsync(page);
            if (step < 6) await page.Button("Next step").ClickAsync();
        }
        await page.Button("Step before").ClickAsync();
        await Expect(page.Locator(".tour")).ToContainTextAsync("5 of 6");
        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator(".tour")).ToHaveCountAsync(0);
        await Expect(page.Locator("[data-looked-at]")).ToHaveCountAsync(0);
        await Expect(page.Locator(".tour-ask")).ToHaveCountAsync(0);
        await Expect(page.Locator("h1")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task The_look_round_is_taken_again_from_the_manual_and_ends_for_good_there_too()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync("/manual");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Take a look round the bench" }).ClickAsync();
        await Expect(page.Locator(".tour")).ToContainTextAsync("1 of 6");
        for (var step = 1; step < 6; step++) await page.Button("Next step").ClickAsync();
        await page.Button("Done").ClickAsync();
        await Expect(page.Locator(".tour")).ToHaveCountAsync(0);
        await Expect(page).Not.ToHaveURLAsync(new System.Text.RegularExpressions.Regex("tour"));
    }

    [Fact]
    public async Task The_manual_is_read_chapter_by_chapter_and_searched()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync();
        await page.Locator(".foot-guides a").First.ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Manual");
        await page.Locator(".manual-contents ol a").First.ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("The first piece");
        await page.Locator(".manual-text").GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "the order as text" }).ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("The order as text");
        await Expect(page.Locator(".manual-text table")).ToBeVisibleAsync();
        await page.GetByLabel("Search the manual").PressSequentiallyAsync("white paper");
        await Expect(page.Locator(".manual-read [role=status]")).ToContainTextAsync("1 place found.");
        await Expect(page.GetByLabel("Search the manual")).ToHaveValueAsync("white paper");
        await Barriers.NoneAsync(page);
        await page.Locator(".manual-found a").ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Looking at it");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("#a-colour-from-your-own-photo$"));
        await Expect(page.Locator("#a-colour-from-your-own-photo")).ToBeInViewportAsync();
        await page.GetByLabel("Search the manual").FillAsync("zeppelin");
        await Expect(page.Locator(".manual-read [role=status]")).ToContainTextAsync("Nothing in the manual has these words.");
        await visit.OpenAsync("/manual/no-such-chapter");
        await Expect(page.Locator("h1")).ToHaveTextAsync("There is nothing here");
    }
}
