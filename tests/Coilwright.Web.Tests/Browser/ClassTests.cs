using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>A class on a piece, in the browser.</summary>
[Collection(InBrowser.Name)]
public sealed class ClassTests(BenchInBrowser bench)
{
    // Reckoned away from the page, behind whatever else the machine does.
    private static readonly LocatorAssertionsToContainTextOptions Patient = new() { Timeout = 60_000 };

    private static async Task TypeAsync(IPage page, string label, string text)
    {
        var box = page.GetByRole(AriaRole.Textbox, new PageGetByRoleOptions { Name = label, Exact = true });
        await box.FillAsync(text);
        await box.PressAsync("Enter");
    }

    [Fact]
    public async Task A_class_is_laid_out_by_the_clock_and_its_papers_are_saved()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await visit.OpenAsync("/class");
        await page.GetByLabel("Piece").SelectOptionAsync(new SelectOptionValue { Label = "Boardwalk" });
        var clock = page.Locator(".class-clock");
        await Expect(clock).ToContainTextAsync("String 9 times", Patient);
        await TypeAsync(page, "Begins at", "10.00");
        await TypeAsync(page, "Ends at", "11:00");
        await page.GetByText("Your own minutes", new PageGetByTextOptions { Exact = true }).ClickAsync();
        // Ten minutes for the wire, fifty to string, ten to try on: the ends are not told.
        await TypeAsync(page, "Cutting the wire", "10");
        await TypeAsync(page, "Stringing", "50");
        await TypeAsync(page, "Trying it on", "10");
        var mind = page.Locator("section[aria-labelledby='mind-head']");
        await Expect(mind).ToContainTextAsync("It takes 10 min longer than the 60 min there are", Patient);
        await Expect(mind).ToContainTextAsync("no time is told for the first end, the last end");
        await Expect(clock.Locator("tbody tr").First).ToContainTextAsync("10:00");
        await Expect(clock.Locator("tbody tr").Nth(2)).ToContainTextAsync("from 10:10");
        await page.GetByRole(AriaRole.Checkbox, new PageGetByRoleOptions { Name = "Cutting the wire" }).CheckAsync();
        await Expect(mind).Not.ToContainTextAsync("longer than", new LocatorAssertionsToContainTextOptions { Timeout = 60_000 });
        await Expect(clock.Locator("tbody tr").Nth(1)).ToContainTextAsync("from 10:00");
        // What is no time is said beside its box, and the class stays as it was.
        await TypeAsync(page, "Ends at", "half past");
        await Expect(page.Locator("section[aria-labelledby='class-head'] .wrong").First).ToBeVisibleAsync();
        await Expect(clock).ToContainTextAsync("from 10:00");
        foreach (var (link, begin) in new[] { ("Save your sheet as PDF", "%PDF"), ("Save the participants' sheet as PDF", "%PDF"), ("Save your sheet as a web page", "<!DO"), ("Save the participants' sheet as a web page", "<!DO") })
        {
            var address = await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = link, Exact = true }).GetAttributeAsync("href");
            var answer = await page.APIRequest.GetAsync(new Uri(new Uri(page.Url), address).AbsoluteUri);
            Assert.Equal(200, answer.Status);
            Assert.Equal(begin, System.Text.Encoding.ASCII.GetString((await answer.BodyAsync())[..4]), ignoreCase: true);
        }
        await page.GetByLabel("US letter").CheckAsync();
        await Expect(page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save your sheet as PDF" })).ToHaveAttributeAsync("href", new Regex("paper=letter$"));
        var wrong = await page.APIRequest.GetAsync(new Uri(new Uri(page.Url), "/class/class.pdf?piece=x&n=0").AbsoluteUri);
        Assert.Equal(404, wrong.Status);
    }

    [Fact]
    public async Task A_break_counts_when_both_of_its_boxes_are_filled_and_can_be_taken_out()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync("/class");
        await page.GetByLabel("Piece").SelectOptionAsync(new SelectOptionValue { Label = "Boardwalk" });
        await TypeAsync(page, "Begins at", "10:00");
        await page.GetByText("Your own minutes", new PageGetByTextOptions { Exact = true }).ClickAsync();
        await TypeAsync(page, "Stringing", "50");
        await page.GetByText("Breaks", new PageGetByTextOptions { Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Add a break" }).ClickAsync();
        await TypeAsync(page, "Break at", "10:25");
        await TypeAsync(page, "Its minutes", "15");
        var clock = page.Locator(".class-clock");
        await Expect(clock.Locator("tr.class-pause")).ToContainTextAsync(new Regex("10:25\\s*15\\s*Break"), Patient);
        await Expect(clock).ToContainTextAsync("(goes on)");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Take out the break at 10:25" }).ClickAsync();
        await Expect(clock.Locator("tr.class-pause")).ToHaveCountAsync(0, new LocatorAssertionsToHaveCountOptions { Timeout = 60_000 });
    }
}
