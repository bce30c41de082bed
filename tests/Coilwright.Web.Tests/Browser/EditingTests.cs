using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Beads strung, moved and taken off: by mouse, by thumb, by keys alone, as text. With a bench of its own, as the pieces change.</summary>
public sealed class EditingTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Rows(IPage page) => page.GetByRole(AriaRole.Listbox);

    private static ILocator Beads(IPage page) => page.Locator(".rows-beads [role=option]");

    private static ILocator Tape(IPage page) => page.Locator(".tape dd").First;

    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true });

    // Each test has a piece of its own, so that none trips over what another strung.
    private async Task<Visit> OwnPieceAsync(Screen screen)
    {
        var visit = await bench.VisitAsync(screen);
        await visit.OpenAsync("/pieces");
        await visit.Page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload
        {
            Name = "own.piece.json",
            MimeType = "application/json",
            Buffer = Storage.PieceFile.Write(Examples.Boardwalk),
        });
        await Expect(Tape(visit.Page)).ToHaveTextAsync($"{Examples.Boardwalk.Order.Count}");
        return visit;
    }

    private static int Strung => Examples.Boardwalk.Order.Count;

    [Fact]
    public async Task By_mouse_beads_are_strung_replaced_doubled_moved_and_taken_off()
    {
        await using var visit = await OwnPieceAsync(Screen.Desktop);
        var page = visit.Page;
        var (first, second) = (Examples.Boardwalk.Beads[0].Name, Examples.Boardwalk.Beads[1].Name);
        await Beads(page).Nth(4).ClickAsync();
        await Button(page, "String " + second).ClickAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung + 1}");
        await Expect(Beads(page).Nth(5)).ToHaveAttributeAsync("aria-selected", "true");
        await page.GetByLabel("in place of each").CheckAsync();
        await Button(page, "String " + first).ClickAsync();
        await Expect(Beads(page).Nth(5)).ToHaveAttributeAsync("aria-label", new System.Text.RegularExpressions.Regex("^6, " + System.Text.RegularExpressions.Regex.Escape(first)));
        await Button(page, "Twice").ClickAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung + 2}");
        // Both of the two stay selected, and go on and off together.
        await Button(page, "Move on").ClickAsync();
        await Expect(Beads(page).Nth(7)).ToHaveAttributeAsync("aria-selected", "true");
        await Button(page, "Take off").ClickAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung}");
        for (var i = 0; i < 5; i++) await Button(page, "Take back").ClickAsync();
        await Expect(Button(page, "Take back")).ToBeDisabledAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung}");
        await Expect(Button(page, "Take back")).ToBeDisabledAsync();
        await Button(page, "Take again").ClickAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung + 1}");
    }

    [Fact]
    public async Task Rows_are_mark_for_mark_as_before_when_edits_at_their_start_middle_and_end_are_taken_back()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.BringAsync(Examples.Tidewrack);
        var strung = Examples.Tidewrack.Order.Count;
        var before = await MarksAsync(page);
        // Pebbles and dots, which all look alike: a chip that is strung again may be another one.
        var steps = 0;
        foreach (var (at, keys, after) in ((int, string[], int)[])[(1, ["c"], 1), (60, ["e", "2"], 3), (strung, ["Delete", "c", "Alt+ArrowLeft"], 3)])
        {
            await Beads(page).Nth(at).ClickAsync();
            foreach (var key in keys) await page.Keyboard.PressAsync(key);
            steps += keys.Length;
            await Expect(Tape(page)).ToHaveTextAsync($"{strung + after}");
        }
        Assert.NotEqual(before, await MarksAsync(page));
        var ids = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('[id]')].map(e => e.id)");
        Assert.Equal(ids.Distinct(), ids);
        for (var i = 0; i < steps; i++) await Button(page, "Take back").ClickAsync();
        await Expect(Button(page, "Take back")).ToBeDisabledAsync();
        await Expect(Beads(page)).ToHaveCountAsync(strung);
        Assert.Equal(before, await MarksAsync(page));
    }

    // What the browser has of the rows after all that was sent to it one by one, without the names by which beads and their clips are known.
    private static async Task<string[]> MarksAsync(IPage page)
    {
        await Rows(page).FocusAsync();
        // An edit under way selects its bead when it is done, after the key if need be.
        var selected = page.Locator(".rows-beads [aria-selected=true]");
        for (var tries = 0; tries < 20 && (tries == 0 || await selected.CountAsync() > 0); tries++)
        {
            await page.Keyboard.PressAsync("Escape");
            await page.WaitForTimeoutAsync(250);
        }
        await Expect(selected).ToHaveCountAsync(0);
        return await page.EvaluateAsync<string[]>("""
            [...document.querySelectorAll('.rows-picture svg *')].map(e => e.tagName + ' '
              + [...e.attributes].map(a => `${a.name}="${a.value}"`).filter(a => !/^id=|clip-/.test(a)).sort().join(' ')
              + (e.children.length ? '' : ' ' + e.textContent))
            """);
    }

    [Fact]
    public async Task By_keys_alone_beads_are_strung_repeated_moved_taken_off_and_brought_back()
    {
        await using var visit = await OwnPieceAsync(Screen.Desktop);
        var page = visit.Page;
        await Rows(page).FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await page.Keyboard.PressAsync("b");
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung + 1}");
        await page.Keyboard.PressAsync("3");
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung + 3}");
        await page.Keyboard.PressAsync("Alt+ArrowRight");
        await page.Keyboard.PressAsync("Delete");
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung}");
        await page.Keyboard.PressAsync("Control+z");
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung + 3}");
        await page.Keyboard.PressAsync("Control+Shift+Z");
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung}");
        await Expect(Rows(page)).ToBeFocusedAsync();
    }

    [Theory]
    [InlineData(360)]
    [InlineData(820)]
    public async Task By_thumb_a_card_is_strung_twice_and_named(int width)
    {
        await using var visit = await OwnPieceAsync(width < 500 ? Screen.Phone : Screen.Tablet);
        var page = visit.Page;
        await Beads(page).Nth(2).TapAsync();
        await Button(page, "Select several").TapAsync();
        await Beads(page).Nth(3).TapAsync();
        await page.GetByLabel("Name", new PageGetByLabelOptions { Exact = true }).FillAsync("pair");
        await Button(page, "Make a group").TapAsync();
        var card = page.Locator(".card", new PageLocatorOptions { HasText = "pair" });
        await Expect(card).ToHaveCountAsync(1);
        await Button(page, "Twice").TapAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung + 2}");
        await Expect(Button(page, "String pair")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_step_is_taken_back_after_the_page_was_loaded_anew()
    {
        await using var visit = await OwnPieceAsync(Screen.Desktop);
        var page = visit.Page;
        await Beads(page).First.ClickAsync();
        await Button(page, "Take off").ClickAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung - 1}");
        await visit.OpenAsync(new Uri(page.Url).AbsolutePath);
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung - 1}");
        await Button(page, "Take back").ClickAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung}");
    }

    [Fact]
    public async Task What_one_window_does_the_other_is_told_and_shows()
    {
        await using var visit = await OwnPieceAsync(Screen.Desktop);
        await using var other = await bench.VisitAsync(Screen.Desktop);
        await other.OpenAsync(new Uri(visit.Page.Url).AbsolutePath);
        await Beads(visit.Page).First.ClickAsync();
        await Button(visit.Page, "Twice").ClickAsync();
        await Expect(other.Page.Locator(".bench-note")).ToContainTextAsync("changed in another window");
        await Expect(Tape(other.Page)).ToHaveTextAsync($"{Strung + 1}");
        await Button(other.Page, "Understood").ClickAsync();
        await Expect(other.Page.Locator(".bench-note")).ToBeEmptyAsync();
        await Button(other.Page, "Take back").ClickAsync();
        await Expect(Tape(visit.Page)).ToHaveTextAsync($"{Strung}");
    }

    [Fact]
    public async Task As_text_a_slip_is_said_while_it_is_typed_and_nothing_is_strung_before_it_is_mended()
    {
        await using var visit = await OwnPieceAsync(Screen.Desktop);
        var page = visit.Page;
        await page.GetByLabel("as text").CheckAsync();
        var box = page.GetByLabel("The stringing order as text");
        var written = await box.InputValueAsync();
        await box.FillAsync(written + "\n3 pebbel");
        await Expect(page.Locator(".order-written .trouble")).ToContainTextAsync("pebbel");
        await Expect(Button(page, "String it like this")).ToBeDisabledAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung}");
        await box.FillAsync(written.TrimEnd() + $", 3 {Examples.Boardwalk.Beads[0].Id}");
        await Button(page, "String it like this").ClickAsync();
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung + 3}");
        await Expect(box).ToHaveValueAsync(written.TrimEnd() + $", 3 {Examples.Boardwalk.Beads[0].Id}");
    }

    [Fact]
    public async Task What_cannot_be_done_is_said_and_changes_nothing()
    {
        await using var visit = await OwnPieceAsync(Screen.Desktop);
        var page = visit.Page;
        await Rows(page).FocusAsync();
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.PressAsync("Delete");
        await Expect(page.Locator(".bench-note")).ToContainTextAsync("That cannot be done:");
        await Expect(Tape(page)).ToHaveTextAsync($"{Strung}");
    }
}
