using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What was made, through its pages. With a bench of its own, as the book changes.</summary>
public sealed class MadePageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static async Task FillAsync(IPage page, string label, string text)
    {
        await page.GetByLabel(label, new PageGetByLabelOptions { Exact = true }).FillAsync(text);
        await page.Keyboard.PressAsync("Tab");
    }

    private static Task ChooseAsync(IPage page, string what) => page.GetByRole(AriaRole.Radio, new PageGetByRoleOptions { Name = what, Exact = true }).CheckAsync();

    private static async Task WriteAsync(IPage page)
    {
        await page.Button("Write it down").ClickAsync();
        await Expect(page.GetByText("Written down.", new PageGetByTextOptions { Exact = true })).ToBeVisibleAsync();
    }

    private static async Task MakeAsync(Visit visit, string name, string count, string from = "")
    {
        await visit.OpenAsync("/made" + from);
        await FillAsync(visit.Page, "Name", name);
        await FillAsync(visit.Page, "How many", count);
        await FillAsync(visit.Page, "Price asked for one", "42.50");
        await FillAsync(visit.Page, "Currency", "eur");
        await FillAsync(visit.Page, "For whom", "Ann");
        await WriteAsync(visit.Page);
    }

    [Fact]
    public async Task A_piece_is_made_from_the_shelf_sold_taken_back_re_sized_made_again_and_its_names_are_erased()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.BringAsync(Examples.Tidewrack);
        await page.Locator(".piece-pages a", new PageLocatorOptions { HasText = "Made" }).ClickAsync();
        await Expect(page.GetByLabel("Name", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync(Examples.Tidewrack.Title);
        await Expect(page.Locator(".made-beads li")).ToHaveCountAsync(Examples.Tidewrack.Order.Kinds.Distinct().Count());
        await FillAsync(page, "Currency", "EUR");
        await FillAsync(page, "Price asked for one", "42.50");
        await WriteAsync(page);
        await page.Locator(".made-list a", new PageLocatorOptions { HasText = Examples.Tidewrack.Title }).ClickAsync();
        await Expect(page.Locator(".made-order")).ToContainTextAsync("tuft");

        await FillAsync(page, "Fees", "50");
        await FillAsync(page, "To whom", "Bea");
        await page.Button("Write it down").ClickAsync();
        // What was typed is still there.
        await Expect(page.Locator(".trouble")).ToContainTextAsync("42.5");
        await Expect(page.GetByLabel("To whom", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("Bea");
        await FillAsync(page, "Fees", "2");
        await WriteAsync(page);
        await Expect(page.Locator(".paper-head")).ToContainTextAsync("1 sold");
        await page.Locator("li", new PageLocatorOptions { HasText = "Sold: 1" }).GetByRole(AriaRole.Button).ClickAsync();
        await Expect(page.Locator(".paper-head")).ToContainTextAsync("1 at home");

        await ChooseAsync(page, "Re-sized");
        await FillAsync(page, "New wrist", "180");
        await page.Button("Show what changes").ClickAsync();
        await Expect(page.GetByText("loops")).ToBeVisibleAsync();
        await Expect(page.GetByLabel("What was done", new PageGetByLabelOptions { Exact = true })).Not.ToHaveValueAsync("");
        await WriteAsync(page);
        await Expect(page.Locator(".paper-head")).ToContainTextAsync("180");

        await page.GetByLabel("Yes, for good").CheckAsync();
        await page.Button("Erase names and notes").ClickAsync();
        await Expect(page.GetByText("Bea", new PageGetByTextOptions { Exact = true })).ToHaveCountAsync(0);

        await FillAsync(page, "Name", "Once more");
        await page.Button("Put it on the shelf").ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Once more" }).First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task What_goes_to_a_show_sells_there_or_comes_home_and_the_takings_are_told()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Tidewrack);
        await MakeAsync(visit, "For the fair", "3", $"?piece={piece[("/piece/".Length)..]}");
        await visit.OpenAsync("/shows");
        await Expect(page.Locator(".show-list li", new PageLocatorOptions { HasText = "For the fair" }).Locator(".show-suits")).ToContainTextAsync("It suits wrists");
        await FillAsync(page, "Name of the show", "Spring fair");
        await page.Button("Take them along").ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Spring fair" })).ToBeVisibleAsync();
        await FillAsync(page, "Sold of For the fair", "2");
        await FillAsync(page, "Received for For the fair", "85");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "All home, write it down" }).ClickAsync();
        await Expect(page.GetByText("Takings: 85.00\u00a0EUR.")).ToBeVisibleAsync();
        await Expect(page.Locator(".show-list li", new PageLocatorOptions { HasText = "For the fair" }).Last.Locator(".show-figures")).ToContainTextAsync("Still there0");
        await visit.OpenAsync("/made");
        await Expect(page.GetByText("85.00\u00a0EUR received in 1 entry")).ToBeVisibleAsync();
        await Expect(page.Locator(".made-list li", new PageLocatorOptions { HasText = "For the fair" })).ToContainTextAsync("1 at home, 2 sold");
    }

    // The words of its choices stand in its label too.
    private static ILocator Select(IPage page, string label) => page.Locator($"label:has(> span:text-is(\"{label}\")) select");

    private static async Task StockAsync(Visit visit, string key, string name, string unit, string oneHolds)
    {
        var page = visit.Page;
        await visit.OpenAsync("/stock");
        await FillAsync(page, "Name", name);
        await FillAsync(page, "Name in orders", key);
        await Select(page, "Counted").SelectOptionAsync(unit);
        await page.Button("Add it").ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync(name);
        if (oneHolds.Length > 0) await FillAsync(page, "How long one is", oneHolds);
        await FillAsync(page, "How many", oneHolds.Length > 0 ? "1" : "10");
        await page.Button("Write it down").ClickAsync();
        await Expect(page.Locator(".stock-form").GetByText("Written down.", new LocatorGetByTextOptions { Exact = true })).ToBeVisibleAsync();
    }

    private static async Task AlsoAsync(IPage page, string name, string label, string quantity)
    {
        var items = Select(page, "From stock");
        var before = await items.CountAsync();
        await page.Button("Add from stock").ClickAsync();
        await Expect(items).ToHaveCountAsync(before + 1);
        await items.Last.SelectOptionAsync(new SelectOptionValue { Label = name });
        var box = page.GetByLabel(label, new PageGetByLabelOptions { Exact = true }).Last;
        await Expect(box).ToBeVisibleAsync();
        await box.FillAsync(quantity);
        await page.Keyboard.PressAsync("Tab");
    }

    [Fact]
    public async Task Wire_and_findings_go_out_of_stock_with_what_is_made_and_repaired_and_come_back_when_that_is_taken_back()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await StockAsync(visit, "spool", "Spool of wire", "Millimetre", "10000");
        await StockAsync(visit, "end-caps", "End caps", "Each", "");
        var piece = await visit.BringAsync(Examples.Tidewrack);
        await visit.OpenAsync($"/made?piece={piece[("/piece/".Length)..]}");
        await FillAsync(page, "Name", "With wire");
        await FillAsync(page, "How many", "2");
        await page.Button("Add from stock").ClickAsync();
        await Select(page, "From stock").SelectOptionAsync(new SelectOptionValue { Label = "Spool of wire" });
        // Tidewrack takes 862 mm for one.
        await Expect(page.GetByLabel("How long in all, mm", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("1724", new LocatorAssertionsToHaveValueOptions { Timeout = 60_000 });
        await AlsoAsync(page, "End caps", "How many in all", "4");
        await WriteAsync(page);
        await LeftAsync("spool", "8276");
        await LeftAsync("end-caps", "6");
        await visit.OpenAsync("/made");
        await page.Locator(".made-list a", new PageLocatorOptions { HasText = "With wire" }).ClickAsync();
        await Expect(page.Locator(".made-lines", new PageLocatorOptions { HasText = "Spool of wire" })).ToContainTextAsync("1724 mm");
        await ChooseAsync(page, "Repaired");
        await FillAsync(page, "What was done", "new caps");
        await AlsoAsync(page, "End caps", "How many in all", "1");
        await WriteAsync(page);
        await Expect(page.Locator(".stock-rows")).ToContainTextAsync("1 End caps");
        var record = page.Url;
        await LeftAsync("end-caps", "5");
        await visit.OpenAsync(new Uri(record).PathAndQuery);
        await page.Locator(".stock-rows li", new PageLocatorOptions { HasText = "new caps" }).GetByRole(AriaRole.Button).ClickAsync();
        await Expect(page.Locator(".stock-rows .is-gone")).ToHaveCountAsync(1);
        await LeftAsync("end-caps", "6");

        async Task LeftAsync(string key, string left)
        {
            await visit.OpenAsync("/stock/" + key);
            await Expect(page.Locator("dl dd").First).ToContainTextAsync(left);
        }
    }

    [Theory]
    [InlineData("en", false)]
    [InlineData("de", true)]
    public async Task The_pages_of_a_record_and_of_shows_have_no_barriers(string language, bool phone)
    {
        await using (var first = await bench.VisitAsync(Screen.Desktop))
        {
            var piece = await first.BringAsync(Examples.Tidewrack);
            await MakeAsync(first, $"Looked at {language}", "2", $"?piece={piece[("/piece/".Length)..]}");
        }
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, Light.Evening, language: language);
        await visit.OpenAsync("/shows");
        await Barriers.NoneAsync(visit.Page);
        await visit.OpenAsync("/made");
        await Barriers.NoneAsync(visit.Page);
        await visit.OpenAsync((await visit.Page.Locator(".made-list a").First.GetAttributeAsync("href"))!);
        await Expect(visit.Page.Locator(".made-order")).ToBeVisibleAsync();
        await Barriers.NoneAsync(visit.Page);
    }
}
