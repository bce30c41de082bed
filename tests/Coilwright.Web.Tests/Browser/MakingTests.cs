using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Shopping and wire for several pieces. With a bench of its own: prices, stock and wire are the whole bench's.</summary>
public sealed class MakingTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static readonly byte[] Prices = Encoding.UTF8.GetBytes("""
        {
          "format": "coilwright.prices/1", "currency": "EUR",
          "offers": [
            { "bead": "round", "supplier": "<b>the stall</b>", "unit": "strand", "holds": 100, "price": 4.00 },
            { "bead": "spacer", "supplier": "<b>the stall</b>", "unit": "bag", "holds": 50, "price": 2.00 }
          ]
        }
        """);

    private static ILocator Piece(IPage page, string title) => page.Locator(".making-pieces li").Filter(new LocatorFilterOptions { HasText = title });

    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name });

    private static Task BringAsync(IPage page, string name, byte[] file) =>
        page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/json", Buffer = file });

    [Fact]
    public async Task What_to_buy_follows_what_she_wants_to_make_and_goes_into_stock_when_it_came()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync("/shop");
        var page = visit.Page;
        await Expect(page.Locator(".making-status")).ToContainTextAsync("Choose a piece");
        // 135 rounds in strands of 65 at 3.40 and 45 spacers in bags of 50 at 2.20: the example's own packs.
        await Piece(page, "Boardwalk").GetByRole(AriaRole.Button).Last.ClickAsync();
        await Expect(page.Locator(".shop-sum")).ToContainTextAsync("12.40");

        // A file that cannot be read changes nothing and says where it is wrong.
        await BringAsync(page, "bad.prices.json", Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(Prices).Replace("\"holds\": 100", "\"holds\": 0", StringComparison.Ordinal)));
        await Expect(page.Locator(".making-options .trouble")).ToContainTextAsync("bad.prices.json was not brought in");
        await Expect(page.Locator(".shop-sum")).ToContainTextAsync("12.40");
        await BringAsync(page, "stall.prices.json", Prices);
        // Two strands at 4.00 and a bag at 2.00. What a supplier is called is text.
        await Expect(page.Locator(".shop-sum")).ToContainTextAsync("10.00\u00a0EUR");
        await Expect(page.Locator(".making-answer h3").First).ToContainTextAsync("<b>the stall</b>");
        await Barriers.NoneAsync(page);

        // The list as a file: two lines under their heads.
        var saved = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save as CSV" }).ClickAsync());
        Assert.Equal(["supplier,number,item,name,unit,holds,units,beads,cost,currency", "<b>the stall</b>,,round,Sea-green round,strand,100,2,200,8,EUR", "<b>the stall</b>,,spacer,Brass spacer,bag,50,1,50,2,EUR"],
            await File.ReadAllLinesAsync(await saved.PathAsync()));
        foreach (var wrong in new[] { "", "?pieces=x*1&percent=0&each=0&stock=1", "?pieces=00000000-0000-0000-0000-000000000000*1&percent=-1&each=0&stock=1" })
            Assert.Equal(404, (await page.APIRequest.GetAsync("/shop/list.csv" + wrong)).Status);

        await Button(page, "Look where buying a little more makes more").ClickAsync();
        await Expect(page.Locator(".making-part .idea-changes")).ToContainTextAsync("more of Boardwalk");
        await Button(page, "It has come: put it into stock").ClickAsync();
        await Expect(page.Locator(".making-answer .done")).ToContainTextAsync("2 lots are in stock now.");
        await Expect(page.Locator(".making-answer")).ToContainTextAsync("Everything is at home.");
        // 200 rounds, 135 of them for this one.
        await Expect(page.Locator(".making-part tbody tr").First.Locator("td").Nth(2)).ToHaveTextAsync("200");
        await page.GetByLabel("Use what is in stock first").UncheckAsync();
        await Expect(page.Locator(".shop-sum")).ToContainTextAsync("10.00\u00a0EUR");

        // Prices are there for whoever opens the page next; what one window wants to make is its own.
        await visit.OpenAsync("/shop");
        await Expect(page.Locator(".making-options")).ToContainTextAsync("2 offers of 1 supplier");
        await Expect(page.Locator(".making-status")).ToContainTextAsync("Choose a piece");
    }

    [Fact]
    public async Task Wire_is_noted_planned_cut_and_what_is_left_is_the_wire_at_hand()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        await visit.OpenAsync("/cut");
        var page = visit.Page;
        await page.GetByLabel("The wire of").SelectOptionAsync(new SelectOptionValue { Label = "Boardwalk" });
        await page.GetByLabel("Price of a pack, if known").FillAsync("3.20");
        await page.GetByLabel("Price of a pack, if known").PressAsync("Tab");
        await page.GetByLabel("How many packs; empty for as many as it takes").FillAsync("3");
        await page.GetByLabel("How many packs; empty for as many as it takes").PressAsync("Tab");
        await Button(page, "Note it").ClickAsync();
        var lots = page.Locator(".wire-lots li");
        await Expect(lots).ToHaveCountAsync(1);
        await Expect(lots.First).ToContainTextAsync("3 of it, 3.20 each");

        await page.Locator(".making-options summary").ClickAsync();
        await page.GetByRole(AriaRole.Radio, new PageGetByRoleOptions { Name = "An offcut" }).CheckAsync();
        await page.Locator(".wire-add .length-box input").FillAsync("950");
        await page.Locator(".wire-add .length-box input").PressAsync("Tab");
        await Button(page, "Note it").ClickAsync();
        await Expect(lots).ToHaveCountAsync(2);

        // Two bracelets: the offcut goes first, and one pack is begun.
        await Piece(page, "Boardwalk").GetByRole(AriaRole.Button).Last.ClickAsync();
        await Piece(page, "Boardwalk").GetByRole(AriaRole.Button).Last.ClickAsync();
        await Expect(page.Locator(".making-part")).ToContainTextAsync("1 new coil is begun and 1 offcut is used.");
        await Expect(page.Locator(".making-answer h3").First).ToContainTextAsync("offcut of Boardwalk");
        await Expect(page.Locator(".coil-bar")).ToHaveCountAsync(2);
        await Barriers.NoneAsync(page);

        await Button(page, "It is cut: note what is left").ClickAsync();
        await Expect(page.Locator(".making-status .done")).ToBeVisibleAsync();
        await visit.OpenAsync("/cut");
        await Expect(lots.Filter(new LocatorFilterOptions { HasText = "2 of it" })).ToHaveCountAsync(1);
        await Expect(lots.Filter(new LocatorFilterOptions { HasText = "offcut" })).ToHaveCountAsync(1);
        await lots.First.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(lots).ToHaveCountAsync(1);
    }
}
