using System.Text;
using Coilwright.Storage;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>With a bench of its own: what is done here to the shelf, other tests would trip over.</summary>
public sealed class PiecesPageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Cards(IPage page) => page.Locator(".piece-cards li");

    [Fact]
    public async Task A_piece_is_copied_put_away_and_taken_out_again()
    {
        await using var visit = await bench.VisitAsync(Screen.Tablet);
        await visit.OpenAsync("/pieces");
        var page = visit.Page;
        var before = await Cards(page).CountAsync();
        await Cards(page).Filter(new LocatorFilterOptions { HasText = "Boardwalk" }).First.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Copy" }).ClickAsync();
        var copy = Cards(page).Filter(new LocatorFilterOptions { HasText = "Boardwalk, copy" });
        await Expect(copy).ToHaveCountAsync(1);
        await copy.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Put away" }).ClickAsync();
        await Expect(copy).ToHaveCountAsync(0);
        await page.GetByLabel("Show what is put away").CheckAsync();
        await copy.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Take out again" }).ClickAsync();
        await Expect(Cards(page)).ToHaveCountAsync(before + 1);
    }

    [Fact]
    public async Task Pieces_are_found_by_a_part_of_their_title()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync("/pieces");
        await visit.Page.GetByLabel("Find by title").FillAsync("PUDDLE");
        await Expect(Cards(visit.Page)).ToHaveCountAsync(1);
        await visit.Page.GetByLabel("Find by title").FillAsync("nothing of the kind");
        await Expect(visit.Page.Locator(".pieces")).ToContainTextAsync("No piece has this in its title.");
    }

    [Fact]
    public async Task A_piece_brought_in_from_a_file_is_opened_and_its_title_is_shown_as_text()
    {
        const string title = "<img src=x onerror=alert(1)> \u202Eevil 🪨";
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync("/pieces");
        await Bring(visit.Page, "mine.piece.json", PieceFile.Write(Examples.Boardwalk with { Title = title }));
        await Expect(visit.Page.Locator("h1")).ToHaveTextAsync(title);
        await Expect(visit.Page.Locator("h1 img")).ToHaveCountAsync(0);
        await visit.OpenAsync("/pieces");
        await Expect(Cards(visit.Page).Filter(new LocatorFilterOptions { HasText = "evil" })).ToHaveCountAsync(1);
    }

    [Theory]
    [InlineData("holiday.jpg", "\u00ff\u00d8\u00ff\u00e0 not a piece at all")]
    [InlineData("broken.piece.json", "{ \"format\": \"coilwright.piece/1\", ")]
    [InlineData("empty.piece.json", "")]
    [InlineData("../../etc/passwd", "root:x:0:0")]
    [InlineData("wrong.piece.json", "{ \"format\": \"coilwright.piece/1\", \"title\": \"x\", \"beads\": [], \"surprise\": 1 }")]
    public async Task A_file_that_is_no_piece_is_refused_in_words_and_changes_nothing(string name, string contents)
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        await visit.OpenAsync("/pieces");
        var before = await Cards(visit.Page).CountAsync();
        await Bring(visit.Page, name, Encoding.Latin1.GetBytes(contents));
        await Expect(visit.Page.Locator(".trouble li").First).ToBeVisibleAsync();
        Assert.DoesNotContain("Exception", await visit.Page.Locator(".trouble").InnerTextAsync(), StringComparison.Ordinal);
        await Expect(Cards(visit.Page)).ToHaveCountAsync(before);
    }

    private static Task Bring(IPage page, string name, byte[] bytes) =>
        page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/json", Buffer = bytes });
}
