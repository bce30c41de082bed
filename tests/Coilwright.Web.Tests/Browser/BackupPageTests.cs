using System.Text;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Everything to one file and back, through the page. With a bench of its own, as everything on its shelf is replaced.</summary>
public sealed class BackupPageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static int Strung => Examples.Boardwalk.Order.Count;

    private static async Task<byte[]> SavedAsync(IPage page)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save to one file" }).ClickAsync());
        Assert.Matches(@"^coilwright-\d{4}-\d\d-\d\d-\d{4}\.pieces\.db$", download.SuggestedFilename);
        return await File.ReadAllBytesAsync(await download.PathAsync());
    }

    private static Task ChooseAsync(IPage page, string name, byte[] bytes) =>
        page.GetByLabel("Choose a file that was saved here").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/octet-stream", Buffer = bytes });

    [Fact]
    public async Task What_was_saved_comes_back_after_asking_once_and_what_was_there_is_kept_and_an_open_bench_shows_it()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk with { Title = "to be restored" });
        await visit.OpenAsync("/backup");
        var saved = await SavedAsync(page);
        // It goes on: one step in this piece and one piece more.
        await visit.OpenAsync(piece);
        await page.TakeOffAsync(2, Strung - 1);
        await visit.BringAsync(Examples.Tidewrack with { Title = "only here" });
        await using var other = await bench.VisitAsync(Screen.Desktop);
        await other.OpenAsync(piece);

        await visit.OpenAsync("/backup");
        await ChooseAsync(page, "<b>mine</b>.db", saved);
        await Expect(page.Locator("#sure")).ToContainTextAsync("<b>mine</b>.db");
        await page.Button("Leave everything as it is").ClickAsync();
        await Expect(page.Locator("#sure")).ToHaveCountAsync(0);
        await ChooseAsync(page, "mine.db", saved);
        await page.Button("Replace them").ClickAsync();
        var told = page.Locator(".restored");
        await Expect(told).ToContainTextAsync("Brought back:");
        var before = (await told.Locator(".path").InnerTextAsync()).Split(" is kept in ")[1].Trim();

        // The other window is told and shows the piece as it came back.
        await Expect(other.Page.Locator(".tape dd").First).ToHaveTextAsync($"{Strung}");
        await Expect(other.Page.Locator(".bench-note")).ToContainTextAsync("changed in another window");
        await visit.OpenAsync("/pieces");
        await Expect(page.Locator(".piece-cards h2", new PageLocatorOptions { HasText = "only here" })).ToHaveCountAsync(0);

        // And what was there comes back from where the page said.
        await visit.OpenAsync("/backup");
        await ChooseAsync(page, Path.GetFileName(before), await File.ReadAllBytesAsync(before));
        await page.Button("Replace them").ClickAsync();
        await Expect(told).ToContainTextAsync("Brought back:");
        await Expect(other.Page.Locator(".tape dd").First).ToHaveTextAsync($"{Strung - 1}");
        await visit.OpenAsync("/pieces");
        await Expect(page.Locator(".piece-cards h2", new PageLocatorOptions { HasText = "only here" })).ToHaveCountAsync(1);
    }

    public static TheoryData<string, string> NoBackups => new()
    {
        { "empty", "This is not a shelf of pieces" },
        { "a photo", "This is not a shelf of pieces" },
        { "cut short", "damaged" },
        { "spoilt", "damaged" },
    };

    [Theory, MemberData(nameof(NoBackups))]
    public async Task What_is_no_sound_backup_is_refused_in_one_message_and_nothing_is_lost(string what, string told)
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await visit.OpenAsync("/backup");
        var saved = await SavedAsync(page);
        var bytes = what switch
        {
            "empty" => [],
            "a photo" => [0xFF, 0xD8, 0xFF, .. Encoding.UTF8.GetBytes(new string('x', 9000))],
            "cut short" => saved[..(saved.Length / 2)],
            _ => saved.Select((b, i) => i > saved.Length - 9000 ? (byte)0xA5 : b).ToArray(),
        };
        await visit.OpenAsync("/pieces");
        await page.Locator(".piece-cards li").First.WaitForAsync();
        var before = await page.Locator(".piece-cards li").CountAsync();
        await visit.OpenAsync("/backup");
        await ChooseAsync(page, what + ".db", bytes);
        await page.Button("Replace them").ClickAsync();
        await Expect(page.Locator(".trouble li")).ToContainTextAsync(told);
        await Expect(page.Locator(".trouble .wrong")).ToContainTextAsync($"{what}.db was not brought back");
        await Expect(page.Locator(".backup")).ToContainTextAsync("Everything here is as it was.");
        Assert.DoesNotContain("/tmp", await page.Locator(".trouble li").InnerTextAsync(), StringComparison.Ordinal);
        await visit.OpenAsync("/pieces");
        await Expect(page.Locator(".piece-cards li")).ToHaveCountAsync(before);
    }
}
