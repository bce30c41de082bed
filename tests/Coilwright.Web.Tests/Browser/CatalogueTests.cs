using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Beads taken from the catalogue and from other pieces, and a piece made again in other colours.</summary>
public sealed class CatalogueTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true });

    private async Task<Visit> OwnPieceAsync(Screen screen, Light light = Light.Day)
    {
        var visit = await bench.VisitAsync(screen, light);
        await visit.OpenAsync("/pieces");
        await visit.Page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload
        {
            Name = "own.piece.json",
            MimeType = "application/json",
            Buffer = Storage.PieceFile.Write(Examples.Boardwalk),
        });
        await Expect(visit.Page.Locator(".tape dd").First).ToHaveTextAsync($"{Examples.Boardwalk.Order.Count}");
        return visit;
    }

    [Fact]
    public async Task A_bead_is_found_by_a_word_adapted_given_a_colour_and_added()
    {
        await using var visit = await OwnPieceAsync(Screen.Phone);
        var page = visit.Page;
        await Button(page, "From the catalogue").TapAsync();
        await page.GetByLabel("Look for a bead").FillAsync("zebra");
        await Expect(page.Locator(".catalogue")).ToContainTextAsync("No bead goes by these words.");
        await page.GetByLabel("Look for a bead").FillAsync("rocaille 8/0");
        await Expect(page.Locator(".catalogue-beads li")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Seed bead 8/0 2.1 mm" }).TapAsync();
        await Expect(page.GetByLabel("Along the hole", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("2.1 mm");
        await page.GetByLabel("Colour", new PageGetByLabelOptions { Exact = true }).FillAsync("#3355aa");
        await page.GetByLabel("Across", new PageGetByLabelOptions { Exact = true }).FillAsync("2.9");
        await page.GetByLabel("Across", new PageGetByLabelOptions { Exact = true }).PressAsync("Tab");
        await Button(page, "Add to the piece").TapAsync();
        await Expect(page.Locator(".kinds")).ToContainTextAsync("2.9 mm across");
        await Expect(Button(page, "String Seed bead 8/0")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_bead_of_another_piece_is_taken_as_it_is()
    {
        await using var visit = await OwnPieceAsync(Screen.Desktop);
        var page = visit.Page;
        await Button(page, "From the catalogue").ClickAsync();
        await page.GetByLabel("my other pieces").CheckAsync();
        await page.GetByLabel("Look for a bead").FillAsync("amazonite");
        var taken = page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Amazonite nugget 9.5 mm" });
        await Expect(taken).ToContainTextAsync("in “Tidewrack”");
        await taken.ClickAsync();
        await Button(page, "Add to the piece").ClickAsync();
        await Expect(page.Locator(".kinds")).ToContainTextAsync("Amazonite nugget");
    }

    [Fact]
    public async Task A_piece_is_made_again_in_other_colours_and_the_first_stays_as_it_is()
    {
        await using var visit = await OwnPieceAsync(Screen.Desktop);
        var page = visit.Page;
        var (first, bead) = (page.Url, Examples.Boardwalk.Beads[0]);
        await Button(page, "In other colours").ClickAsync();
        var rows = page.Locator(".colourway-rows");
        await Expect(rows.Locator("svg")).ToBeVisibleAsync();
        await page.GetByLabel($"Colour of {bead.Name}").FillAsync("#aa2244");
        await Expect(rows.Locator("xpath=.//*[@*='#aa2244']").First).ToBeAttachedAsync();
        await page.GetByLabel("Title of the new piece").FillAsync("Boardwalk in <red>");
        await Button(page, "Make the new piece").ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Boardwalk in <red>");
        await Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{Examples.Boardwalk.Order.Count}");
        var made = Storage.PieceFile.Read(await (await page.APIRequest.GetAsync(page.Url + "/file")).BodyAsync(), "made", Examples.Data).Piece!;
        Assert.Equal("#aa2244", made.Beads[0].Colours[0].ToString());
        Assert.Equal(Examples.Boardwalk.Beads[1].Colours, made.Beads[1].Colours);
        var kept = Storage.PieceFile.Read(await (await page.APIRequest.GetAsync(first + "/file")).BodyAsync(), "kept", Examples.Data).Piece!;
        Assert.Equal(bead.Colours[0], kept.Beads[0].Colours[0]);
    }

    [Theory]
    [InlineData(true, Light.Day)]
    [InlineData(true, Light.Evening)]
    [InlineData(false, Light.Day)]
    [InlineData(false, Light.Evening)]
    public async Task Neither_panel_has_barriers(bool phone, Light light)
    {
        var screen = phone ? Screen.Phone : Screen.Desktop;
        await using var visit = await OwnPieceAsync(screen, light);
        await Button(visit.Page, "From the catalogue").ClickAsync();
        await Expect(visit.Page.Locator(".catalogue-beads li").First).ToBeVisibleAsync();
        await Barriers.NoneAsync(visit.Page);
        await Button(visit.Page, "Close the catalogue").ClickAsync();
        await Button(visit.Page, "In other colours").ClickAsync();
        await Expect(visit.Page.Locator(".colourway-rows svg")).ToBeVisibleAsync();
        await Barriers.NoneAsync(visit.Page);
    }
}
