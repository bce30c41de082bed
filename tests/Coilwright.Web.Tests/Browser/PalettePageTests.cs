using Coilwright.Core.Colour;
using Coilwright.Core.Palettes;
using Coilwright.Core.Pieces;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>How the colours of a piece go together, in a real browser.</summary>
[Collection(InBrowser.Name)]
public sealed class PalettePageTests(BenchInBrowser bench)
{
    private static Piece Coloured(params string[] colours) => Examples.Boardwalk with
    {
        Title = "Two colours",
        Beads = [.. Examples.Boardwalk.Beads.Select((b, i) => b.WithColours(Srgb.TryParse(colours[i], out var colour) ? [colour] : []))],
    };

    [Fact]
    public async Task Each_eye_sees_the_rows_in_its_own_colours_and_what_it_loses_is_said()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Coloured("#b35a2e", "#7d7a1e")) + "/palette");
        await Expect(page.Locator(".palette-sight")).ToHaveCountAsync(5);
        await Expect(page.Locator(".palette-sight").First).ToContainTextAsync("Every bead stands out from its neighbours.");
        var deutan = page.Locator(".palette-sight", new PageLocatorOptions { HasText = "blind to green" });
        await Expect(deutan).ToContainTextAsync("vanish beside each other");
        await Expect(page.GetByText("To keep them apart")).ToBeVisibleAsync();
        // The drawn colours are those that the core gives for each sight.
        foreach (var (sight, at) in Enum.GetValues<Sight>().Select((s, i) => (s, i)))
        {
            var drawn = await page.Locator(".palette-sight").Nth(at).Locator(".side-rows svg").InnerHTMLAsync();
            foreach (var colour in new[] { new Srgb(0xb3, 0x5a, 0x2e), new Srgb(0x7d, 0x7a, 0x1e) })
                Assert.Contains(PaletteReport.Seen(colour, sight).ToString(), drawn, StringComparison.OrdinalIgnoreCase);
        }
        await Expect(page.Locator(".palette-kinds tbody tr")).ToHaveCountAsync(2);
        await Barriers.NoneAsync(page);
    }

    [Fact]
    public async Task It_is_come_to_from_the_bench_and_says_what_vanishes_to_everyone()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Coloured("#2ab5b0", "#2eb2b2"));
        await visit.OpenAsync(piece);
        await page.Locator(".piece-pages").GetByRole(AriaRole.Link, new LocatorGetByRoleOptions { Name = "Palette" }).ClickAsync();
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/palette$"));
        await Expect(page.Locator(".palette-sight").First).ToContainTextAsync("vanish beside each other");
    }
}
