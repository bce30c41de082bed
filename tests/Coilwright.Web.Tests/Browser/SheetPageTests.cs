using System.Net;
using System.Text;
using Coilwright.Web.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The page of a piece's pattern sheet: looked at, chosen, saved.</summary>
[Collection(InBrowser.Name)]
public sealed class SheetPageTests(BenchInBrowser bench)
{
    private static async Task OpenAsync(Visit visit)
    {
        await visit.OpenAsync();
        await visit.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Pattern sheet" }).ClickAsync();
        await Expect(visit.Page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = "Pattern sheet", Level = 1 })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_sheet_is_shown_and_saved_as_the_paper_that_was_chosen()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await OpenAsync(visit);
        var page = visit.Page;
        await Expect(page.FrameLocator(".paper-look").GetByRole(AriaRole.Heading, new FrameLocatorGetByRoleOptions { Level = 1 })).ToHaveTextAsync("Tidewrack");
        await page.GetByLabel("US letter").CheckAsync();
        var save = page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save the PDF to print" });
        await Expect(save).ToHaveAttributeAsync("href", new System.Text.RegularExpressions.Regex("paper=letter"));
        var download = await page.RunAndWaitForDownloadAsync(() => save.ClickAsync());
        Assert.Equal("Tidewrack-sheet.pdf", download.SuggestedFilename);
        var pdf = Encoding.Latin1.GetString(await File.ReadAllBytesAsync(await download.PathAsync()));
        Assert.StartsWith("%PDF-", pdf, StringComparison.Ordinal);
        Assert.Contains("/MediaBox[0 0 612 792]", pdf, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_is_made_for_the_wrist_that_the_bench_shows()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        await visit.Page.GetByLabel("Wrist, typed").FillAsync("180 mm");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Expect(visit.Page.GetByLabel("Wrist", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("180");
        await visit.Page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Pattern sheet" }).ClickAsync();
        await Expect(visit.Page.FrameLocator(".paper-look").Locator("body")).ToContainTextAsync("180 mm");
    }

    [Fact]
    public async Task The_sheet_to_look_at_may_run_nothing_and_be_framed_by_nobody_else()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await OpenAsync(visit);
        var look = await visit.Page.Locator(".paper-look").GetAttributeAsync("src");
        using var client = new HttpClient();
        using var answer = await client.GetAsync(new Uri(bench.Address, look));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Equal(PaperFiles.PreviewPolicy, policy);
        Assert.DoesNotContain("script", policy, StringComparison.Ordinal);
        Assert.Equal("SAMEORIGIN", Assert.Single(answer.Headers.GetValues("X-Frame-Options")));
        Assert.DoesNotContain("<script", await answer.Content.ReadAsStringAsync(), StringComparison.OrdinalIgnoreCase);
    }
}
