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
