using System.Diagnostics;
using Coilwright.Web.Tests.Components;
using Coilwright.Web.Tests.Hosting;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>A shelf that cannot be written or read, brought about for real: held by another program, on a full disk, marked as read-only, damaged.
/// Each with a bench of its own.</summary>
[Collection(InBrowser.Name)]
public sealed class ShelfTroubleTests(BenchInBrowser browser)
{
    private static int Strung => Examples.Boardwalk.Order.Count;

    private static ILocator Tape(IPage page) => page.Locator(".tape dd").First;

    private static ILocator Note(IPage page) => page.Locator(".bench-note");

    [Fact]
    public async Task While_another_program_holds_the_shelf_what_is_done_stays_on_the_page_and_is_written_when_she_asks()
    {
        await using var bench = new RunningBench { Opening = usual => usual with { Patience = TimeSpan.FromMilliseconds(200) } };
        await bench.InitializeAsync();
        await using var visit = await browser.VisitAsync(Screen.Desktop, address: bench.Address);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await using (var other = new SqliteConnection($"Data Source={bench.ShelfFile};Pooling=false"))
        {
            await other.OpenAsync();
            Ask(other, "BEGIN IMMEDIATE");
            await page.TakeOffAsync(4, Strung - 1);
            await Expect(Note(page)).ToContainTextAsync("Another program is using your pieces");
            await page.TakeOffAsync(4, Strung - 2);
            await Expect(Note(page)).ToContainTextAsync("2 steps");
            await page.Button("Try again to write it down").ClickAsync();
            await Expect(Note(page)).ToContainTextAsync("2 steps");
            // What only the page has goes with her to other pages and back.
            await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Pieces" }).ClickAsync();
            await page.Locator($".piece-cards a[href='{piece}']").ClickAsync();
            await Expect(Tape(page)).ToHaveTextAsync($"{Strung - 2}");
            await Expect(Note(page)).ToContainTextAsync("2 steps");
            // Closing the page would lose it, so the browser asks first.
            var asked = new TaskCompletionSource<string>();
            page.Dialog += async (_, dialog) =>
            {
                // She stays when she is asked. Once all is written the question goes a moment after the note does: whoever leaves in between is asked for nothing.
                if (asked.Task.IsCompleted) await dialog.AcceptAsync();
                else await dialog.DismissAsync();
                asked.TrySetResult(dialog.Type);
            };
            await page.CloseAsync(new PageCloseOptions { RunBeforeUnload = true });
            Assert.Equal("beforeunload", await asked.Task.WaitAsync(TimeSpan.FromSeconds(20)));
            // Not yet written, a step is taken back on the page alone.
            await page.Button("Take back").ClickAsync();
            await Expect(Tape(page)).ToHaveTextAsync($"{Strung - 1}");
            Ask(other, "ROLLBACK");
        }
        await page.Button("Try again to write it down").ClickAsync();
        await Expect(Note(page)).ToBeEmptyAsync();
        await visit.OpenAsync(piece);
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung - 1}");
    }

    [Fact]
    public async Task On_a_full_disk_what_is_done_stays_on_the_page_and_is_written_once_there_is_room()
    {
        using var shelf = new OwnShelf();
        var disk = Directory.CreateDirectory(Path.Combine(shelf.Folder, "small disk")).FullName;
        // A disk of its own where one may be mounted. Elsewhere a limit on the file's pages, to which SQLite answers as to a full disk.
        var mounted = Run("mount", "-t", "tmpfs", "-o", "size=3m", "tmpfs", disk);
        var pages = 1_000_000L;
        try
        {
            await using var bench = new RunningBench
            {
                Folder = Path.Combine(disk, "shelf"),
                Opening = usual => usual with { Prepare = connection => Ask(connection, $"PRAGMA max_page_count = {(mounted ? 1_000_000 : pages)}") },
            };
            await bench.InitializeAsync();
            await using var visit = await browser.VisitAsync(Screen.Desktop, address: bench.Address);
            var page = visit.Page;
            var piece = await visit.BringAsync(Examples.Boardwalk);
            var filler = Path.Combine(disk, "photos of the holidays");
            if (mounted) Fill(filler);
            else pages = 1;
            for (var left = Strung - 1; await Note(page).Locator(".wrong").CountAsync() == 0; left--)
            {
                Assert.True(left > Strung - 60, "The disk never was full.");
                await page.TakeOffAsync(0, left);
            }
            await Expect(Note(page)).ToContainTextAsync("The disk is full");
            var shown = await Tape(page).InnerTextAsync();
            File.Delete(filler);
            pages = 1_000_000;
            await page.Button("Try again to write it down").ClickAsync();
            await Expect(Note(page)).ToBeEmptyAsync();
            await visit.OpenAsync(piece);
            await Expect(Tape(page)).ToHaveTextAsync(shown);
        }
        finally
        {
            if (mounted) Run("umount", disk);
        }
    }

    [Fact]
    public async Task A_shelf_marked_as_read_only_is_looked_at_and_what_is_done_is_told_as_not_written()
    {
        using var shelf = new OwnShelf();
        await using (var first = new RunningBench { Folder = shelf.Folder })
        {
            await first.InitializeAsync();
            await using var visit = await browser.VisitAsync(Screen.Desktop, address: first.Address);
            await visit.BringAsync(Examples.Boardwalk);
        }
        await using var bench = new RunningBench { Folder = shelf.Folder };
        File.SetAttributes(bench.ShelfFile, FileAttributes.ReadOnly);
        try
        {
            await bench.InitializeAsync();
            await using var visit = await browser.VisitAsync(Screen.Phone, address: bench.Address);
            await visit.OpenAsync();
            await visit.Page.TakeOffAsync(4, Strung - 1);
            await Expect(Note(visit.Page)).ToContainTextAsync("may not be written to");
            await Expect(visit.Page.Button("Try again to write it down")).ToBeVisibleAsync();
        }
        finally
        {
            File.SetAttributes(bench.ShelfFile, FileAttributes.Normal);
        }
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/pieces")]
    [InlineData("/backup")]
    public async Task A_damaged_shelf_is_told_on_the_page_with_where_it_lies_and_read_again_once_it_is_sound(string path)
    {
        using var shelf = new OwnShelf();
        string file;
        await using (var first = new RunningBench { Folder = shelf.Folder })
        {
            await first.InitializeAsync();
            file = first.ShelfFile;
            await using var visit = await browser.VisitAsync(Screen.Desktop, address: first.Address);
            await visit.BringAsync(Examples.Boardwalk);
        }
        var sound = await File.ReadAllBytesAsync(file);
        var spoilt = Spoilt(file, sound);
        await File.WriteAllBytesAsync(file, spoilt);
        await using var bench = new RunningBench { Folder = shelf.Folder };
        await bench.InitializeAsync();
        await using (var visit = await browser.VisitAsync(Screen.Phone, address: bench.Address))
        {
            visit.Expect("503");
            await visit.OpenAsync(path);
            var page = visit.Page;
            await Expect(page.Locator("h1")).ToHaveTextAsync("Your pieces cannot be read just now");
            await Expect(page.Locator(".shelf-trouble")).ToContainTextAsync(file);
            Assert.DoesNotContain("Exception", await page.ContentAsync(), StringComparison.Ordinal);
            Assert.Equal(spoilt, await File.ReadAllBytesAsync(file));
            await Barriers.NoneAsync(page);
            await File.WriteAllBytesAsync(file, sound);
            await page.Button("Try again").ClickAsync();
            await Expect(page.Locator(".bench, .piece-cards li, .backup").First).ToBeVisibleAsync();
        }
    }

    [Fact]
    public async Task Where_a_file_was_asked_for_a_damaged_shelf_answers_with_the_page_and_not_with_a_broken_file()
    {
        using var shelf = new OwnShelf();
        string file;
        await using (var first = new RunningBench { Folder = shelf.Folder })
        {
            await first.InitializeAsync();
            file = first.ShelfFile;
            using var client = new HttpClient();
            await client.GetStringAsync(new Uri(first.Address, "/pieces"));
        }
        await File.WriteAllBytesAsync(file, Spoilt(file, await File.ReadAllBytesAsync(file)));
        await using var bench = new RunningBench { Folder = shelf.Folder };
        await bench.InitializeAsync();
        using var asks = new HttpClient();
        foreach (var path in (string[])["/backup/everything", $"/piece/{Guid.NewGuid()}/file", $"/trial/{Guid.NewGuid()}/photo"])
        {
            using var answer = await asks.GetAsync(new Uri(bench.Address, path));
            Assert.Equal(System.Net.HttpStatusCode.ServiceUnavailable, answer.StatusCode);
            Assert.Null(answer.Content.Headers.ContentDisposition);
            var html = await answer.Content.ReadAsStringAsync();
            Assert.Contains("Your pieces cannot be read just now", html, StringComparison.Ordinal);
            Assert.Contains(file, html, StringComparison.Ordinal);
        }
    }

    // The first page of every table and index; how they are made is left, so that the file opens and is found out when it is read.
    private static byte[] Spoilt(string file, byte[] sound)
    {
        var spoilt = (byte[])sound.Clone();
        using var connection = new SqliteConnection($"Data Source={file};Mode=ReadOnly;Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT rootpage, (SELECT page_size FROM pragma_page_size) FROM sqlite_schema WHERE rootpage > 0";
        using var rows = command.ExecuteReader();
        while (rows.Read()) spoilt.AsSpan((rows.GetInt32(0) - 1) * rows.GetInt32(1), rows.GetInt32(1)).Fill(0xA5);
        return spoilt;
    }

    private static void Ask(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private static void Fill(string file)
    {
        try
        {
            using var stream = new FileStream(file, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1);
            while (true) stream.Write(new byte[4096]);
        }
        catch (IOException)
        {
            // Full.
        }
    }

    private static bool Run(string program, params string[] args)
    {
        if (!OperatingSystem.IsLinux()) return false;
        using var run = Process.Start(new ProcessStartInfo(program, args) { RedirectStandardError = true })!;
        run.StandardError.ReadToEnd();
        run.WaitForExit();
        return run.ExitCode == 0;
    }
}
