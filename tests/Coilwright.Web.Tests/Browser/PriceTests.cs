using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Prices. With a bench of its own: costs are the whole bench's.</summary>
public sealed class PriceTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static readonly byte[] Costs = """
        {
          "format": "coilwright.costs/1", "currency": "EUR", "wagePerHour": 16.50,
          "steps": [{ "name": "string", "minutes": 26 }],
          "fees": [{ "name": "<b>card</b>", "percent": 1.9, "fixed": 0.15 }],
          "rules": [{ "name": "wholesale", "sells": "piece", "formula": "cost * 1.3" }, { "name": "retail", "sells": "piece", "formula": "wholesale * 1.9", "fees": ["<b>card</b>"] }]
        }
        """u8.ToArray();

    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name });

    private static ILocator More(IPage page, string list) => page.Locator(".cost-list").Filter(new LocatorFilterOptions { HasText = list }).Locator("> .buttons button");

    private static ILocator Line(IPage page, string name) => page.Locator(".price-grid .cost-line").Filter(new LocatorFilterOptions { HasText = name });

    private static async Task WriteAsync(ILocator box, string text)
    {
        await box.FillAsync(text);
        await box.PressAsync("Tab");
    }

    [Fact]
    public async Task A_price_opens_to_its_lines_and_follows_every_figure_that_is_written()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync("/price");
        var page = visit.Page;
        await page.Locator(".price-ask select").SelectOptionAsync(new SelectOptionValue { Label = "Boardwalk" });
        // 135 rounds in strands of 65 at 3.40 and 45 spacers in bags of 50 at 2.20, and nothing else is told.
        await Expect(page.Locator(".price-grid .cost-line").First).ToContainTextAsync("9.04");
        await Expect(page.Locator(".price-mind").First).ToContainTextAsync("No wage is told");
        Assert.Equal(404, (await page.APIRequest.GetAsync("/price/my.costs.json")).Status);

        // A wage and a step, written by hand: an hour at 20.00 of thirty minutes is 10.00 more.
        await page.Locator(".cost-list summary").Filter(new LocatorFilterOptions { HasText = "In general" }).ClickAsync();
        await WriteAsync(page.GetByLabel("An hour of work"), "20");
        await page.Locator(".cost-list summary").Filter(new LocatorFilterOptions { HasText = "Work, step by step" }).ClickAsync();
        await More(page, "Work, step by step").ClickAsync();
        // A line that is not filled in is told, and what is kept stays.
        await Expect(page.Locator(".price-tools")).ToContainTextAsync("Not kept yet");
        await WriteAsync(page.Locator(".cost-name input"), "string");
        await WriteAsync(page.GetByLabel("Minutes"), "30");
        await Expect(page.Locator(".price-grid .cost-line").First).ToContainTextAsync("19.04");
        await Expect(page.Locator(".price-tools")).ToContainTextAsync("Kept ");
        await Line(page, "labour").Last.Locator("summary").ClickAsync();
        await Expect(Line(page, "string").Last).ToContainTextAsync("30 minutes at 20.00 an hour");

        // A rule with a slip is told at its box with the character; mended it asks; taken back it is gone.
        await More(page, "Rules for prices").ClickAsync();
        await WriteAsync(page.Locator(".is-rule .cost-name input"), "shop");
        await page.GetByLabel("Sells").SelectOptionAsync("piece");
        await WriteAsync(page.GetByLabel("Formula"), "cost * 2 )");
        await Expect(page.Locator(".cost-formula .wrong")).ToContainTextAsync("at character 10");
        await WriteAsync(page.GetByLabel("Formula"), "cost * 2");
        var rules = page.Locator(".sizes-table").First;
        await Expect(rules).ToContainTextAsync("38.09");
        await Expect(page.Locator(".price-picture svg:visible")).ToHaveCountAsync(2);
        await WriteAsync(page.GetByLabel("Another price"), "15");
        await Expect(page.Locator(".sizes-table").Nth(1)).ToContainTextAsync("-4.04");
        await Barriers.NoneAsync(page);

        // A division by nought can be read, so it is kept; that it cannot be worked out is told above and at its box.
        await WriteAsync(page.GetByLabel("Formula"), "cost / packaging");
        await Expect(page.Locator(".price-what .trouble")).ToContainTextAsync("divides by 0");
        await Expect(page.Locator(".cost-formula .wrong")).ToContainTextAsync("divides by 0");
        await Button(page, "Take the last change back").ClickAsync();
        await Expect(rules).ToContainTextAsync("38.09");

        // As a file, and there for whoever opens the page next.
        var saved = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save as a file" }).ClickAsync());
        Assert.Contains("\"formula\": \"cost * 2\"", await File.ReadAllTextAsync(await saved.PathAsync()), StringComparison.Ordinal);
        await visit.OpenAsync("/price");
        await Expect(page.GetByLabel("Formula")).ToHaveValueAsync("cost * 2");

        // A file in its place; one that cannot be read changes nothing.
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "bad.costs.json", MimeType = "application/json", Buffer = "{}"u8.ToArray() });
        await Expect(page.Locator(".trouble").Last).ToContainTextAsync("bad.costs.json was not brought in");
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "my.costs.json", MimeType = "application/json", Buffer = Costs });
        await Expect(page.Locator(".is-rule")).ToHaveCountAsync(2);
        await Expect(rules).ToContainTextAsync("retail");
        await Expect(page.Locator(".is-rule .cost-words").First).ToContainTextAsync("<b>card</b>");
        await Barriers.NoneAsync(page);
    }
}
