using Coilwright.OwnDatabase;
using Coilwright.Web.Tests.Components;
using Coilwright.Web.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>A bench whose database goes away and comes back, with a server of its own that is stopped and started.</summary>
[Collection(InBrowser.Name)]
public sealed class DatabaseTroubleTests(BenchInBrowser browser)
{
    private static int Strung => Examples.Boardwalk.Order.Count;

    private static ILocator Tape(IPage page) => page.Locator(".tape dd").First;

    private static ILocator Note(IPage page) => page.Locator(".bench-note");

    [Fact]
    public async Task While_the_database_is_gone_what_is_done_stays_on_the_page_and_is_written_once_it_is_back()
    {
        await using var server = await PostgresServer.StartNewAsync();
        await using var bench = new RunningBench { Database = DatabaseBenchTests.Read(await server.NewDatabaseAsync()), Patience = TimeSpan.FromMilliseconds(300) };
        await bench.InitializeAsync();
        await using var visit = await browser.VisitAsync(Screen.Desktop, address: bench.Address);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        server.Stop();
        await page.TakeOffAsync(4, Strung - 1);
        await Expect(Note(page)).ToContainTextAsync("No database server answers");
        await page.TakeOffAsync(4, Strung - 2);
        await Expect(Note(page)).ToContainTextAsync("2 steps");
        // Pages that cannot be read say so, and what waits is not lost by looking.
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Pieces", Exact = true }).ClickAsync();
        await Expect(page.Locator(".shelf-trouble")).ToContainTextAsync("They are in this database: beads1");
        await Expect(page.Locator(".shelf-trouble")).Not.ToContainTextAsync("Move");
        await Barriers.NoneAsync(page);
        server.Start();
        await page.Button("Try again").ClickAsync();
        await page.Locator($".piece-cards a[href='{piece}']").ClickAsync();
        // Written by the way.
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung - 2}");
        await Expect(Note(page)).ToBeEmptyAsync();
        // And on as if nothing had been, also after a crash of the server.
        server.Stop("immediate");
        server.Start();
        await page.TakeOffAsync(4, Strung - 3);
        await Expect(Note(page)).ToBeEmptyAsync();
        await visit.OpenAsync(piece);
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung - 3}");
        await page.Button("Take back").ClickAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung - 2}");
    }

    [Theory]
    [InlineData(Light.Day, "en")]
    [InlineData(Light.Evening, "de")]
    public async Task How_a_database_is_backed_up_is_told_without_barriers(Light light, string language)
    {
        var server = await PostgresServer.SharedAsync();
        await using var bench = new RunningBench { Database = DatabaseBenchTests.Read(await server.NewDatabaseAsync()) };
        await bench.InitializeAsync();
        await using var visit = await browser.VisitAsync(Screen.Phone, light, address: bench.Address, language: language);
        await visit.OpenAsync("/backup");
        await Expect(visit.Page.Locator(".command")).ToHaveCountAsync(2);
        await Barriers.NoneAsync(visit.Page);
    }
}
