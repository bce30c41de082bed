using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What else would do: beads looked for beside one of the piece, and one strung in its place.</summary>
public sealed class StandInsTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_bead_of_another_piece_is_strung_instead_and_taken_back(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop);
        await visit.OpenAsync();
        var page = visit.Page;
        var kinds = page.Locator(".kinds > ul > li");
        // By its name alone: each line also offers the names of all others.
        ILocator Kind(string called) => kinds.Filter(new LocatorFilterOptions { Has = page.Locator(".kind-name", new PageLocatorOptions { HasText = called }) });
        await Kind("Ebony disc").WaitForAsync();
        var before = await kinds.CountAsync();
        await Kind("Ebony disc").GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "What else would do" }).ClickAsync();
        var panel = page.Locator(".standins");
        await Expect(panel).ToContainTextAsync("For Ebony disc");
        // The nearest first; what it does to the piece is said before it is strung.
        var first = panel.Locator("li").First;
        await first.Locator("summary").ClickAsync();
        await Expect(first.Locator("dl")).ToContainTextAsync("Beads on the wire");
        await Barriers.NoneAsync(page);
        var name = (await first.Locator(".kind-name").InnerTextAsync()).Split(':')[0];
        await first.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(panel).ToHaveCountAsync(0);
        await Expect(Kind(name)).ToHaveCountAsync(1);
        // The old one lies beside the piece, and comes back with the first of the two steps.
        await Expect(kinds).ToHaveCountAsync(before + 1);
        await page.Keyboard.PressAsync("Control+z");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(Kind(name)).ToHaveCountAsync(0);
        await Expect(kinds).ToHaveCountAsync(before);
    }
}
