using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What is in the drawers, through its pages. With a bench of its own, as the stock changes.</summary>
public sealed class StockPageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static int Kinds => Examples.Tidewrack.Beads.Length;

    private static ILocator Figure(IPage page, string what) => page.Locator(".stock-figures-large > div").Filter(new LocatorFilterOptions { HasText = what }).Locator("dd");

    private static Task ChooseAsync(IPage page, string what) => page.GetByRole(AriaRole.Radio, new PageGetByRoleOptions { Name = what, Exact = true }).CheckAsync();

    private static async Task FillAsync(IPage page, string label, string text)
    {
        await page.GetByLabel(label, new PageGetByLabelOptions { Exact = true }).FillAsync(text);
        await page.Keyboard.PressAsync("Tab");
    }

    /// <summary>An item of its own for each test, with nothing on hand.</summary>
    private static async Task AddAsync(Visit visit, string key, string name)
    {
        await visit.OpenAsync("/stock");
        await FillAsync(visit.Page, "Name", name);
        await FillAsync(visit.Page, "Name in orders", key);
        await visit.Page.Button("Add it").ClickAsync();
        await Expect(visit.Page.Locator("h1")).ToHaveTextAsync(name);
    }

    private static async Task WriteDownAsync(IPage page)
    {
        await page.Button("Write it down").ClickAsync();
        await Expect(page.Locator(".stock-form").GetByText("Written down.", new LocatorGetByTextOptions { Exact = true })).ToBeVisibleAsync();
    }

    private static async Task ReceiveAsync(IPage page, string howMany)
    {
        await FillAsync(page, "How many", howMany);
        await WriteDownAsync(page);
    }

    [Fact]
    public async Task The_beads_of_a_piece_become_items_once_with_their_drawings()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Tidewrack);
        await page.Locator(".piece-pages a", new PageLocatorOptions { HasText = "Stock" }).ClickAsync();
        await page.Button("Add its beads").ClickAsync();
        await Expect(page.GetByText($"Added: {Kinds}. There already: 0.")).ToBeVisibleAsync();
        await Expect(page.Locator(".stock-list .swatch svg")).ToHaveCountAsync(Kinds);
        await page.Button("Add its beads").ClickAsync();
        await Expect(page.GetByText($"Added: 0. There already: {Kinds}.")).ToBeVisibleAsync();
        Assert.StartsWith("/piece/", piece, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_delivery_is_taken_in_used_kept_back_counted_and_brought_back_and_all_of_it_is_told()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await AddAsync(visit, "round-4", "Round <b>4</b> mm");
        await page.GetByLabel("Sold by").SelectOptionAsync("Strand");
        await FillAsync(page, "How long one is", "16 in");
        await FillAsync(page, "Length of a bead", "4");
        await FillAsync(page, "How many", "2");
        await Expect(page.GetByText("That is 202.")).ToBeVisibleAsync();
        await FillAsync(page, "What all of it cost", "20.20");
        await FillAsync(page, "Currency", "eur");
        await FillAsync(page, "Drawer", "B 3");
        // The Enter key in a box writes nothing down.
        await page.GetByLabel("Drawer", new PageGetByLabelOptions { Exact = true }).PressAsync("Enter");
        await Expect(page.GetByText("None came yet.")).ToBeVisibleAsync();
        await WriteDownAsync(page);
        await Expect(Figure(page, "On hand")).ToHaveTextAsync("202");
        await Expect(Figure(page, "At cost")).ToHaveTextAsync("20.20\u00a0EUR");

        await ChooseAsync(page, "Some were taken");
        await FillAsync(page, "How much", "40");
        await FillAsync(page, "What for", "a bracelet");
        await WriteDownAsync(page);
        await ChooseAsync(page, "Keep some back");
        await FillAsync(page, "How much", "100");
        await WriteDownAsync(page);
        await Expect(Figure(page, "Free")).ToHaveTextAsync("62");
        await ChooseAsync(page, "Some came back");
        await FillAsync(page, "How much", "8");
        await WriteDownAsync(page);
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Take it" }).ClickAsync();
        await Expect(Figure(page, "On hand")).ToHaveTextAsync("70");
        await ChooseAsync(page, "Counted again");
        await page.Locator("main summary").ClickAsync();
        await FillAsync(page, "What the sample weighs, g", "6");
        await FillAsync(page, "What all of them weigh, g", "8.2");
        await Expect(page.GetByText("About 68: between 68 and 69.")).ToBeVisibleAsync();
        await page.Button("Take this count").ClickAsync();
        await WriteDownAsync(page);
        await Expect(Figure(page, "On hand")).ToHaveTextAsync("68");
        await Expect(page.Locator("ol.stock-rows li > div > p:first-child")).ToHaveTextAsync(
            ["Counted: 68 (\u22122)", "Taken of what was kept back: 100", "Came back: 8", "Kept back: 100", "Taken: 40", "Came: 202, for 20.20\u00a0EUR"]);

        // Below the least to have it is marked in the list, in words.
        await FillAsync(page, "Least to have", "80");
        await page.Button("Keep it so").ClickAsync();
        await Expect(page.GetByText("Runs low: 12 missing")).ToBeVisibleAsync();
        await visit.OpenAsync("/stock");
        await page.GetByLabel("Only what runs low").CheckAsync();
        await page.GetByLabel("Search by name, number, drawer or supplier").FillAsync("b 3");
        await Expect(page.Locator(".stock-list li")).ToHaveCountAsync(1);
        await Expect(page.Locator(".stock-list .low")).ToContainTextAsync("Runs low: 12 missing");
        var csv = await page.RunAndWaitForDownloadAsync(() => page.GetByText("Save as CSV").ClickAsync());
        Assert.Contains("round-4,Round <b>4</b> mm,each,68,0,68,80,12,B 3", await File.ReadAllTextAsync(await csv.PathAsync()), StringComparison.Ordinal);
        var xlsx = await page.RunAndWaitForDownloadAsync(() => page.GetByText("Save as XLSX").ClickAsync());
        Assert.Equal("stock.xlsx", xlsx.SuggestedFilename);
        Assert.Equal("PK"u8.ToArray(), (await File.ReadAllBytesAsync(await xlsx.PathAsync()))[..2]);
    }

    [Fact]
    public async Task Of_two_windows_that_want_the_last_beads_one_is_told_what_is_left()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await AddAsync(visit, "last-ones", "Last ones");
        await ReceiveAsync(visit.Page, "10");
        await using var other = await bench.VisitAsync(Screen.Desktop);
        await other.OpenAsync("/stock/last-ones");
        foreach (var page in (IPage[])[visit.Page, other.Page])
        {
            await ChooseAsync(page, "Some were taken");
            await FillAsync(page, "How much", "8");
        }
        await WriteDownAsync(visit.Page);
        await other.Page.Button("Write it down").ClickAsync();
        await Expect(other.Page.Locator(".trouble li")).ToContainTextAsync("8 of Last ones asked for, and 2 free");
        // What she typed is still there, and the figures are those of now.
        await Expect(other.Page.GetByLabel("How much", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("8");
        await Expect(Figure(other.Page, "Free")).ToHaveTextAsync("2");
    }

    [Fact]
    public async Task What_is_wrong_is_said_and_nothing_is_written()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await AddAsync(visit, "odd", "Odd");
        await page.GetByLabel("Sold by").SelectOptionAsync("Strand");
        await page.Button("Write it down").ClickAsync();
        await Expect(page.Locator(".trouble li")).ToContainTextAsync("What is in one (strand) is not known.");
        await FillAsync(page, "How many", "many");
        await Expect(page.Locator(".number-box [role=alert]")).ToBeVisibleAsync();
        await FillAsync(page, "How many", "1");
        await FillAsync(page, "How much is in one", "65");
        await FillAsync(page, "What all of it cost", "3");
        await FillAsync(page, "Currency", "e1");
        await page.Button("Write it down").ClickAsync();
        await Expect(page.Locator(".trouble li")).ToContainTextAsync("has a currency of three capitals");
        await ChooseAsync(page, "Counted again");
        await page.Button("Write it down").ClickAsync();
        await Expect(page.Locator(".trouble li")).ToBeVisibleAsync();
        await Expect(page.GetByText("None came yet.")).ToBeVisibleAsync();
        // A name that is there, and none that an order could use.
        await visit.OpenAsync("/stock");
        foreach (var key in (string[])["odd", "Not a key"])
        {
            await FillAsync(page, "Name", "x");
            await FillAsync(page, "Name in orders", key);
            await page.Button("Add it").ClickAsync();
            await Expect(page.Locator(".trouble li")).ToContainTextAsync(key);
        }
    }

    [Fact]
    public async Task Deliveries_from_a_file_are_looked_through_and_taken_in_all_or_none()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await visit.OpenAsync("/stock");
        Task ChooseFileAsync(string text) => page.GetByLabel("A CSV file").SetInputFilesAsync(
            new FilePayload { Name = "bill<b>.csv", MimeType = "text/csv", Buffer = System.Text.Encoding.UTF8.GetBytes(text) });

        await ChooseFileAsync("item,unit,howMany\nfile-one,dozen,2\nfile-two,GR,5\n");
        await Expect(page.GetByText("1 of 2 lines in bill<b>.csv cannot be taken in")).ToBeVisibleAsync();
        await Expect(page.Locator(".bring-in-rows .wrong")).ToContainTextAsync("\"GR\" may be gram or gross (144).");
        await Expect(page.Button("Take them all in")).ToHaveCountAsync(0);
        await Barriers.NoneAsync(page);

        await ChooseFileAsync("item,unit,howMany\nfile-one,dozen,2\nfile-two,gross,5\n");
        await Expect(page.GetByText("2 lines in bill<b>.csv. Nothing is written yet.")).ToBeVisibleAsync();
        await Expect(page.Locator(".stock-list a[href='/stock/file-one']")).ToHaveCountAsync(0);
        await Barriers.NoneAsync(page);
        await page.Button("Take them all in").ClickAsync();
        await Expect(page.GetByText("Taken in: 2 lines.")).ToBeVisibleAsync();
        await Expect(page.Locator(".stock-list li", new PageLocatorOptions { HasText = "file-two" }).Locator("dd").First).ToHaveTextAsync("720");

        await ChooseFileAsync("what is this");
        await Expect(page.Locator(".trouble")).ToContainTextAsync("bill<b>.csv cannot be read:");
    }

    [Theory]
    [InlineData(Light.Day, true, "en")]
    [InlineData(Light.Evening, false, "en")]
    [InlineData(Light.Day, true, "de")]
    public async Task The_pages_have_no_barriers_when_they_are_in_use(Light light, bool phone, string language)
    {
        var key = $"in-use-{light}-{language}".ToLowerInvariant();
        await using (var first = await bench.VisitAsync(Screen.Desktop))
        {
            await AddAsync(first, key, "An item of a very long name, as one would never give it, " + new string('n', 100));
            await first.Page.GetByLabel("Sold by").SelectOptionAsync("Gross");
            await FillAsync(first.Page, "Supplier", new string('s', 120));
            await FillAsync(first.Page, "What all of it cost", "1234567.8912");
            await FillAsync(first.Page, "Currency", "EUR");
            await ReceiveAsync(first.Page, "69000");
            await ReceiveAsync(first.Page, "3");
            await ChooseAsync(first.Page, "Keep some back");
            await FillAsync(first.Page, "How much", "9000001");
            await WriteDownAsync(first.Page);
            await FillAsync(first.Page, "Least to have", "9999999");
            await first.Page.Button("Keep it so").ClickAsync();
            await Expect(first.Page.Locator(".low")).ToBeVisibleAsync();
        }
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, light, language: language);
        var page = visit.Page;
        await visit.OpenAsync("/stock");
        await Expect(page.Locator($".stock-list a[href='/stock/{key}']")).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);
        await visit.OpenAsync("/stock/" + key);
        await Barriers.NoneAsync(page);
        for (var what = 1; what < 5; what++)
        {
            await page.Locator(".stock-form input[type=radio]").Nth(what).CheckAsync();
            if (what == 2) await page.Locator("main summary").ClickAsync();
            await page.Locator(".stock-form button.first").ClickAsync();
            await Expect(page.Locator(".stock-form .trouble")).ToBeVisibleAsync();
            await Barriers.NoneAsync(page);
        }
    }
}
