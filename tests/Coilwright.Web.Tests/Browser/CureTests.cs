using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What ends a notice is said before it is tried, and can be taken back.</summary>
public sealed class CureTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    [Theory]
    [InlineData(360)]
    [InlineData(1440)]
    public async Task A_wire_that_is_too_short_is_cut_anew_at_a_tap_and_the_old_one_comes_back(int width)
    {
        await using var visit = await bench.VisitAsync(width < 500 ? Screen.Phone : Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync("/pieces");
        await page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload
        {
            Name = "short.piece.json",
            MimeType = "application/json",
            Buffer = Storage.PieceFile.Write(Examples.Boardwalk with { Title = "Short", Wire = Examples.Boardwalk.Wire with { CutMm = 500 } }),
        });
        var notice = page.Locator(".notice", new PageLocatorOptions { HasText = "too short" });
        await Expect(notice).ToBeVisibleAsync();
        var tryIt = notice.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Try it: cut" });
        await Expect(tryIt).ToContainTextAsync("loops of wire instead");
        await tryIt.ClickAsync();
        await Expect(notice).ToHaveCountAsync(0);
        await Expect(page.Locator(".tried")).ToContainTextAsync("Tried: cut");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Back to how it was" }).ClickAsync();
        await Expect(notice).ToBeVisibleAsync();
        await Expect(page.Locator(".tried")).ToHaveCountAsync(0);
    }
}
