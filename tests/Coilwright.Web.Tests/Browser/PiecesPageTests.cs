using System.Text;
using Coilwright.Storage;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Web.Tests.Components;
using Coilwright.Web.Tests.Hosting;
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
        await Cards(page).First.WaitForAsync();
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
        await Cards(visit.Page).First.WaitForAsync();
        var before = await Cards(visit.Page).CountAsync();
        await Bring(visit.Page, name, Encoding.Latin1.GetBytes(contents));
        await Expect(visit.Page.Locator(".trouble li").First).ToBeVisibleAsync();
        Assert.DoesNotContain("Exception", await visit.Page.Locator(".trouble").InnerTextAsync(), StringComparison.Ordinal);
        await Expect(Cards(visit.Page)).ToHaveCountAsync(before);
    }

    [Fact]
    public async Task Among_two_hundred_pieces_with_any_titles_one_is_found_copied_put_away_and_saved_as_it_is()
    {
        string[] titles = ["<script>alert(1)</script>", "\"><img src=x onerror=alert(1)>", "\u202Egnitlom", "../../etc/passwd", "🪨🐚 {0} {title}", new string('a', 200), "%00%2e%2e", "  spaces  "];
        using var shelf = new OwnShelf();
        if (SqliteShelf.Open(new SqliteShelfOptions { Folder = shelf.Folder }, Examples.Data, TimeProvider.System) is not ShelfOpening.Opened opened) throw new InvalidOperationException();
        using (opened.Shelf)
            for (var i = 0; i < 200; i++)
                await opened.Shelf.AddAsync(Examples.Boardwalk with { Title = i % 25 == 0 ? titles[i / 25] : $"bracelet {i}" });
        await using var own = new RunningBench { Folder = shelf.Folder };
        await own.InitializeAsync();
        await using var visit = await bench.VisitAsync(Screen.Phone, address: own.Address);
        await visit.OpenAsync("/pieces");
        var page = visit.Page;
        await Expect(Cards(page)).ToHaveCountAsync(200);
        Assert.Equal(titles.Order(StringComparer.Ordinal), (await page.Locator(".piece-cards h2").AllTextContentsAsync()).Where(t => !t.StartsWith("bracelet", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        await Expect(page.Locator(".piece-cards script, .piece-cards img[src=x]")).ToHaveCountAsync(0);
        // However long a title, the page stays as wide as the screen.
        Assert.Equal(Screen.Phone.Width, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        foreach (var title in titles)
        {
            await page.GetByLabel("Find by title").FillAsync(title.Trim());
            await Expect(Cards(page)).ToHaveCountAsync(1);
        }
        await page.GetByLabel("Find by title").FillAsync("alert(1)");
        await Expect(Cards(page)).ToHaveCountAsync(2);
        var hostile = Cards(page).Filter(new LocatorFilterOptions { HasText = titles[0] });
        var saved = await page.RunAndWaitForDownloadAsync(() => hostile.GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "Save as a file" }).ClickAsync());
        Assert.Equal("script-alert(1)-script.piece.json", saved.SuggestedFilename);
        Assert.Equal(titles[0], PieceFile.Read(await File.ReadAllBytesAsync(await saved.PathAsync()), null, Examples.Data).Piece!.Title);
        await hostile.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Copy" }).ClickAsync();
        await Expect(Cards(page)).ToHaveCountAsync(3);
        await Cards(page).Filter(new LocatorFilterOptions { HasText = titles[0] + ", copy" }).GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Put away" }).ClickAsync();
        await Expect(Cards(page)).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task A_copy_of_the_longest_title_can_be_saved_and_brought_in_again()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync("/pieces");
        var page = visit.Page;
        await Bring(page, "long.piece.json", PieceFile.Write(Examples.Boardwalk with { Title = new string('w', 200) }));
        await Expect(page.Locator("h1")).ToHaveTextAsync(new string('w', 200));
        await visit.OpenAsync("/pieces");
        var copies = Cards(page).Filter(new LocatorFilterOptions { HasText = "www" });
        await copies.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Copy" }).ClickAsync();
        await Expect(copies).ToHaveCountAsync(2);
        foreach (var card in await copies.AllAsync())
        {
            var saved = await page.RunAndWaitForDownloadAsync(() => card.GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "Save as a file" }).ClickAsync());
            Assert.NotNull(PieceFile.Read(await File.ReadAllBytesAsync(await saved.PathAsync()), null, Examples.Data).Piece);
        }
    }

    private static Task Bring(IPage page, string name, byte[] bytes) =>
        page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/json", Buffer = bytes });
}
