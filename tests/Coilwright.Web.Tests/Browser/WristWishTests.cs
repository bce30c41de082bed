using Coilwright.Core.Pieces;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>On which wrists a piece fails its wish is said under the slider and by the curve.</summary>
public sealed class WristWishTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    [Fact]
    public async Task A_repeat_that_lines_up_on_every_wrist_fails_a_mix_and_meets_columns()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        foreach (var (wish, says, bars) in new[]
        {
            (LiningUpWish.Mix, "On wrists from 138 mm (5 7/16 in) to 198 mm (7 13/16 in) it lines up more than you wish.", 1),
            (LiningUpWish.Columns, "it lies as you wish", 0),
        })
        {
            await visit.OpenAsync("/pieces");
            await page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload
            {
                Name = "own.piece.json",
                MimeType = "application/json",
                Buffer = Storage.PieceFile.Write(Examples.Boardwalk with { Title = $"{wish}", Wishes = Examples.Boardwalk.Wishes with { LiningUp = wish } }),
            });
            await Expect(page.Locator("h1")).ToHaveTextAsync($"{wish}");
            await Expect(page.Locator(".wrist-wish")).ToContainTextAsync(says);
            // The picture's own words, for someone who cannot see its hatched bar.
            await Expect(page.Locator(".wrist-curve desc", new PageLocatorOptions { HasText = "Not as wished from 138 mm" })).ToHaveCountAsync(bars);
        }
    }
}
