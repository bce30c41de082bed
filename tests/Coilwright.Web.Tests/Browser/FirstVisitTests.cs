using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

[Collection(InBrowser.Name)]
public sealed class FirstVisitTests(BenchInBrowser bench)
{
    [Fact]
    public async Task The_first_visit_shows_an_example_with_its_readings()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        await Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Tidewrack");
        await Expect(visit.Page.Locator(".tape")).ToContainTextAsync($"{Examples.Tidewrack.Order.Count}");
        await Expect(visit.Page.Locator("[data-reading=fit]")).ToContainTextAsync("Yes, it fits.");
        await Expect(visit.Page.Locator(".kinds li")).ToHaveCountAsync(7);
    }

    [Fact]
    public async Task On_a_phone_the_top_of_the_wrist_is_looked_at_first()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        await visit.OpenAsync();
        await visit.Page.WaitForFunctionAsync("() => { const box = document.querySelector('.rows-scroll'); return box !== null && box.scrollWidth > 2 * box.clientWidth && Math.abs(2 * box.scrollLeft + box.clientWidth - box.scrollWidth) < 4; }");
    }

    [Fact]
    public async Task The_first_visit_transfers_less_than_400_kB()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        using var wire = new CountingProxy(bench.Address);
        visit.Expect("asked elsewhere: " + wire.Address);
        visit.Expect("asked elsewhere: " + wire.Address.Replace("http", "ws", StringComparison.Ordinal));
        await visit.OpenAsync(wire.Address);
        await visit.Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        var bytes = wire.ReceivedBytes;
        TestContext.Current.SendDiagnosticMessage($"First visit: {bytes} bytes.");
        Assert.InRange(bytes, 10_000, 400_000);
    }

    [Fact]
    public async Task Another_wrist_changes_the_readings_and_can_be_taken_back()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        var turns = visit.Page.Locator(".tape dd").Nth(2);
        var before = await turns.TextContentAsync();
        await visit.Page.GetByLabel("Wrist", new PageGetByLabelOptions { Exact = true }).FocusAsync();
        for (var i = 0; i < 20; i++) await visit.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(turns).Not.ToHaveTextAsync(before!);
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Back to" }).ClickAsync();
        await Expect(turns).ToHaveTextAsync(before!);
        await visit.Page.GetByLabel("Wrist, typed").FillAsync("7 1/2 in");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Expect(turns).Not.ToHaveTextAsync(before!);
        await Expect(visit.Page.GetByLabel("Wrist", new PageGetByLabelOptions { Exact = true })).ToHaveAttributeAsync("aria-valuetext", "191 mm (7 1/2 in)");
    }

    [Fact]
    public async Task Settings_are_kept_for_the_next_visit()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Settings" }).ClickAsync();
        await visit.Page.GetByLabel("evening").CheckAsync();
        await visit.Page.GetByLabel("largest").CheckAsync();
        await Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("data-light", "evening");
        await Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("data-text", "largest");
        await visit.OpenAsync("/pieces");
        await Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("data-light", "evening");
        await Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("data-text", "largest");
    }

    [Fact]
    public async Task Settings_are_opened_and_closed_by_keys_and_give_the_focus_back()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        var button = visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Settings" });
        await button.FocusAsync();
        await button.PressAsync("Enter");
        await Expect(visit.Page.GetByLabel("larger", new PageGetByLabelOptions { Exact = true })).ToBeAttachedAsync();
        await Expect(button).ToHaveAttributeAsync("aria-expanded", "true");
        await visit.Page.Keyboard.PressAsync("Tab");
        await visit.Page.Keyboard.PressAsync("Escape");
        await Expect(button).ToHaveAttributeAsync("aria-expanded", "false");
        await Expect(button).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Another_language_is_spoken_at_once_and_kept()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Settings" }).ClickAsync();
        await visit.Page.GetByLabel("Deutsch").CheckAsync();
        await Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("lang", "de");
        await Expect(visit.Page.Locator("[data-reading=fit]")).ToContainTextAsync("Ja, es passt.");
        await Expect(visit.Page.Locator(".tape")).ToContainTextAsync("4,04");
        await visit.OpenAsync();
        await Expect(visit.Page.Locator("html")).ToHaveAttributeAsync("lang", "de");
        // She may type what she reads: with a comma, and with the word for inches.
        var typed = visit.Page.GetByLabel("Handgelenk, eingetippt");
        foreach (var (text, shown) in new[] { ("16,3 cm", "163 mm"), ("6 1/2 Zoll", "165 mm"), ("95,5", "95,5 mm") })
        {
            await typed.FillAsync(text);
            await visit.Page.Keyboard.PressAsync("Enter");
            await Expect(typed).ToHaveValueAsync(shown);
        }
    }

    [Fact]
    public async Task The_page_can_be_worked_in_inches_alone()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync();
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Settings" }).ClickAsync();
        await visit.Page.GetByLabel("inches", new PageGetByLabelOptions { Exact = true }).CheckAsync();
        await Expect(visit.Page.Locator(".piece-head")).ToContainTextAsync("For a wrist of 6 1/2 in.");
        await Expect(visit.Page.GetByLabel("Wrist, typed")).ToHaveValueAsync("6 1/2 in");
        await visit.Page.GetByLabel("Wrist, typed").FillAsync("7");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Expect(visit.Page.GetByLabel("Wrist, typed")).ToHaveValueAsync("7 in");
        await visit.Page.GetByLabel("Wrist, typed").FillAsync("a thumb");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Expect(visit.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Type a length from 1 15/16 in to 15 3/4 in");
    }
}
