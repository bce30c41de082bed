using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>A custom order and several alike, in the browser.</summary>
[Collection(InBrowser.Name)]
public sealed class QuoteTests(BenchInBrowser bench)
{
    private static async Task<byte[]> FileAsync(IPage page, string link)
    {
        var address = await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = link }).GetAttributeAsync("href");
        var answer = await page.APIRequest.GetAsync(new Uri(new Uri(page.Url), address).AbsoluteUri);
        Assert.Equal(200, answer.Status);
        return await answer.BodyAsync();
    }

    [Fact]
    public async Task An_order_is_answered_for_its_wrist_and_what_hinders_is_told()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await visit.OpenAsync("/quote");
        await page.GetByLabel("Piece").SelectOptionAsync(new SelectOptionValue { Label = "Boardwalk" });
        var size = page.Locator("section[aria-labelledby='size-head']");
        await Expect(size).ToContainTextAsync("The base size.");
        var wrist = page.GetByLabel("The wrist");
        await wrist.FillAsync("172");
        await wrist.PressAsync("Enter");
        await Expect(size).ToContainTextAsync("at each end");
        var why = page.Locator("section[aria-labelledby='when-head']");
        await Expect(why).ToContainTextAsync("when they are here is not known yet");
        var workings = await FileAsync(page, "Save the workings as PDF");
        Assert.Equal("%PDF"u8.ToArray(), workings[..4]);
        // Another bead in place, for this order alone.
        await page.GetByText("Other beads in place").ClickAsync();
        await page.Locator("label:has(> span:text-is('Brass spacer')) select").SelectOptionAsync(new SelectOptionValue { Label = "Sea-green round" });
        await Expect(page.Locator("section[aria-labelledby='when-head']")).Not.ToContainTextAsync("Brass spacer:", new LocatorAssertionsToContainTextOptions { Timeout = 60_000 });
        var swapped = await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save the workings as PDF" }).GetAttributeAsync("href");
        Assert.Contains("&swap=spacer%3Dround", swapped, StringComparison.Ordinal);
        await page.GetByLabel("US letter").CheckAsync();
        await Expect(page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save the workings as PDF" })).ToHaveAttributeAsync("href", new Regex("paper=letter$"));
        // 612 points across are eight and a half inches.
        Assert.Contains("612", System.Text.Encoding.Latin1.GetString(await FileAsync(page, "Save the workings as PDF")), StringComparison.Ordinal);
        Assert.Contains("is strung in place of", System.Text.Encoding.UTF8.GetString(await FileAsync(page, "Save the workings as a web page")), StringComparison.Ordinal);
        // A day that is none is said beside its box, and the quote stays as it was.
        var until = page.GetByLabel("Stands until");
        await until.FillAsync("2026-02-30");
        await until.PressAsync("Enter");
        await Expect(page.Locator("section[aria-labelledby='order-head'] .wrong").First).ToBeVisibleAsync();
        await Expect(size).ToContainTextAsync("at each end");
    }

    [Fact]
    public async Task Several_alike_follow_what_is_asked_and_their_papers_are_saved()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync("/batch");
        await page.GetByLabel("Piece").SelectOptionAsync(new SelectOptionValue { Label = "Boardwalk" });
        var fetch = page.Locator("section[aria-labelledby='fetch-head']");
        // Ten times the 135 rounds and 45 spacers of one.
        await Expect(fetch).ToContainTextAsync(new Regex("1350\\s×\\s*Sea-green round"));
        await Expect(fetch).ToContainTextAsync(new Regex("450\\s×\\s*Brass spacer"));
        var counted = await page.Locator("section.selling table tbody tr td:last-child").AllTextContentsAsync();
        Assert.Equal(180, counted.Sum(c => int.Parse(c, System.Globalization.CultureInfo.InvariantCulture)));
        foreach (var link in new[] { "Save the plan as PDF", "Save the tick sheet as PDF" }) Assert.Equal("%PDF"u8.ToArray(), (await FileAsync(page, link))[..4]);
    }
}
