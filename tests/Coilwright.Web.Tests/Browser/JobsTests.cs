using System.IO.Compression;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Many sheets at once: the work goes on when the page is loaded anew or left, and every window sees it.</summary>
public sealed class JobsTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true });

    private async Task<Visit> OnSheetAsync(Screen screen)
    {
        var visit = await bench.VisitAsync(screen);
        await visit.OpenAsync();
        await visit.OpenAsync((await visit.Page.Locator(".piece-pages a[href$='/sheet']").GetAttributeAsync("href"))!);
        return visit;
    }

    [Fact]
    public async Task Every_paper_is_made_while_the_page_is_loaded_anew_and_saved_as_one_file()
    {
        await using var visit = await OnSheetAsync(Screen.Desktop);
        var page = visit.Page;
        await Button(page, "Every paper at once").ClickAsync();
        await Expect(page.Locator(".job")).ToHaveCountAsync(1);
        // Another page and another window see the same job.
        await visit.OpenAsync("/pieces");
        await using var other = await bench.VisitAsync(Screen.Phone);
        await other.OpenAsync("/pieces");
        foreach (var window in new[] { page, other.Page })
            await Expect(window.Locator(".job")).ToContainTextAsync("Done in", new LocatorAssertionsToContainTextOptions { Timeout = 240_000 });
        var saved = await page.RunAndWaitForDownloadAsync(() => page.GetByText("Save 8 sheets as one file").ClickAsync());
        Assert.EndsWith("-sheets.zip", saved.SuggestedFilename, StringComparison.Ordinal);
        using var zip = ZipFile.OpenRead(await saved.PathAsync());
        Assert.Equal(8, zip.Entries.Count);
        Assert.Equal(4, zip.Entries.Count(e => e.Name.Contains("-letter", StringComparison.Ordinal)));
        foreach (var entry in zip.Entries)
        {
            Assert.EndsWith(".pdf", entry.Name, StringComparison.Ordinal);
            using var pdf = new StreamReader(entry.Open());
            var head = new char[5];
            await pdf.ReadBlockAsync(head);
            Assert.Equal("%PDF-", new string(head));
        }
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Clear away" }).ClickAsync();
        await Expect(page.Locator(".job")).ToHaveCountAsync(0);
        await Expect(other.Page.Locator(".job")).ToHaveCountAsync(0);
    }
}
