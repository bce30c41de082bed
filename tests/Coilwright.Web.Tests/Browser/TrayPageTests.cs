using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The bead tray through its pages. With a bench of its own, as the tray changes.</summary>
public sealed class TrayPageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static Task ChooseAsync(IPage page, string text) => page.GetByLabel("Choose a list").SetInputFilesAsync(new FilePayload { Name = "my list.csv", MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes(text) });

    [Fact]
    public async Task A_list_is_looked_through_taken_in_found_again_and_its_bead_taken_into_a_piece()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, Light.Day);
        var page = visit.Page;
        await visit.OpenAsync("/tray");
        await ChooseAsync(page, "Bezeichnung;Form;Länge;Fach\nMondperle;Kugel;4,5;B 2\nSternperle;roond;vier;B 3\nMondperle;Kugel;5;B 4\n");
        await Expect(page.Locator(".tray-bring")).ToContainTextAsync("1 new, 0 changed, 0 as they are, 2 wrong.");
        await Expect(page.Locator(".tray-rows")).ToContainTextAsync("Line 3");
        await Expect(page.Locator(".tray-rows .wrong")).ToHaveCountAsync(3);
        Assert.Equal(0, await page.Button("Take all of it in").CountAsync());
        await ChooseAsync(page, "Bezeichnung;Form;Länge;Fach\nMondperle;Kugel;4,5;B 2\nSternperle;Kugel;6;B 3\n");
        await page.Button("Take all of it in").ClickAsync();
        await Expect(page.Locator(".tray-bring")).ToContainTextAsync("Taken in: 2 new, 0 changed.");
        await page.GetByLabel("Search the tray").FillAsync("mond 4.5");
        await Expect(page.Locator(".tray-told")).ToContainTextAsync("1 kind");
        await Expect(page.Locator(".tray-kinds li")).ToHaveCountAsync(1);
        await Barriers.NoneAsync(page, frames: false);

        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Mondperle" }).ClickAsync();
        await page.GetByLabel("Drawer", new PageGetByLabelOptions { Exact = true }).FillAsync("C 9");
        await page.Button("Keep").ClickAsync();
        await Expect(page.GetByText("Kept.", new PageGetByTextOptions { Exact = true })).ToBeVisibleAsync();
        await Barriers.NoneAsync(page, frames: false);

        await visit.OpenAsync("/");
        await page.Button("From the catalogue").ClickAsync();
        await page.GetByRole(AriaRole.Radio, new PageGetByRoleOptions { Name = "my tray" }).CheckAsync();
        await Expect(page.Locator(".catalogue-beads li")).ToHaveCountAsync(2);
        await page.Locator(".catalogue-beads button").Filter(new LocatorFilterOptions { HasText = "Mondperle" }).ClickAsync();
        await Expect(page.GetByLabel("Along the hole", new PageGetByLabelOptions { Exact = true })).ToHaveValueAsync("4.5 mm");
    }
}
