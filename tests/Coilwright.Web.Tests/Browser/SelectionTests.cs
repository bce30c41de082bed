using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

[Collection(InBrowser.Name)]
public sealed class SelectionTests(BenchInBrowser bench)
{
    private static int Beads => Examples.Tidewrack.Order.Count;

    private static ILocator Selected(IPage page) => page.Locator(".rows-beads [aria-selected=true]");

    private static async Task ExpectOnly(IPage page, int bead)
    {
        await Expect(Selected(page)).ToHaveCountAsync(1);
        await Expect(Selected(page)).ToHaveAttributeAsync("data-index", $"{bead}");
    }

    [Fact]
    public async Task Beads_are_selected_by_keys_alone()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        var rows = visit.Page.GetByRole(AriaRole.Listbox);
        await rows.FocusAsync();
        await rows.PressAsync("ArrowRight");
        await ExpectOnly(visit.Page, 0);
        await Expect(rows).ToHaveAttributeAsync("aria-activedescendant", "bead-1");
        await rows.PressAsync("ArrowRight");
        await rows.PressAsync("Shift+ArrowRight");
        await rows.PressAsync("Shift+ArrowRight");
        await Expect(Selected(visit.Page)).ToHaveCountAsync(3);
        await rows.PressAsync("End");
        await ExpectOnly(visit.Page, Beads - 1);
        await rows.PressAsync("ArrowUp");
        await Expect(visit.Page.Locator($"#bead-{Beads}")).ToHaveAttributeAsync("aria-selected", "false");
        await Expect(Selected(visit.Page)).ToHaveCountAsync(1);
        await rows.PressAsync("Control+a");
        await Expect(Selected(visit.Page)).ToHaveCountAsync(Beads);
        await rows.PressAsync("Escape");
        await Expect(Selected(visit.Page)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_tap_selects_a_bead_everywhere_and_several_are_gathered_on_a_phone()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        await visit.OpenAsync();
        var page = visit.Page;
        await page.Locator(".rows-beads [data-index='10']").TapAsync();
        await Expect(page.Locator(".selection-bar p")).ToContainTextAsync("Bead 11:");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Bead after" }).TapAsync();
        await ExpectOnly(page, 11);
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Select several" }).TapAsync();
        await page.Locator(".rows-beads [data-index='13']").TapAsync();
        await Expect(Selected(page)).ToHaveCountAsync(2);
        await Expect(page.Locator(".selection-bar p")).ToContainTextAsync("2 beads");
    }

    [Fact]
    public async Task A_card_of_the_order_selects_its_group_on_the_rows()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        var card = visit.Page.Locator(".card", new PageLocatorOptions { HasText = "star" });
        await card.ClickAsync();
        await Expect(card).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(Selected(visit.Page)).ToHaveCountAsync(Examples.Tidewrack.Order.ReadingGroups.First(g => g.Name == "star").Count);
    }
}
