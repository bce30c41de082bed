using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Stringing a piece step by step. With a bench of its own: places are kept.</summary>
public sealed class StringingTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static Task AtAsync(IPage page, int step) => Expect(page.Locator(".stringing")).ToHaveAttributeAsync("data-step", $"{step}");

    private static Task ToldAsync(IPage page, string name, string value) => Expect(page.Locator("html")).ToHaveAttributeAsync("data-" + name, value);

    private static Piece OfBeads(int count) => Examples.Boardwalk with
    {
        // No plain repeat, which would be said in a few steps.
        Order = new StringingOrder([.. Enumerable.Range(0, count).Select(i => (31 * i * i + i / 3) % 11 % 2)], []),
        Written = null,
        Wishes = new(),
        Pattern = PatternNotes.None,
    };

    [Fact]
    public async Task Keys_taps_and_buttons_go_on_and_back_and_the_place_is_there_again_on_another_device()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/string");
        await AtAsync(page, 1);
        var at = 1;
        foreach (var key in (string[])["Space", "Enter", "ArrowRight", "ArrowDown", "PageDown"])
        {
            await page.Keyboard.PressAsync(key);
            await AtAsync(page, ++at);
        }
        foreach (var key in (string[])["ArrowLeft", "ArrowUp", "PageUp"])
        {
            await page.Keyboard.PressAsync(key);
            await AtAsync(page, --at);
        }
        await page.Locator(".stringing-do").ClickAsync();
        await AtAsync(page, ++at);
        await page.Button("Next").ClickAsync();
        await AtAsync(page, ++at);
        // A button that was tapped is not pressed once more by the pedal.
        await page.Button("Back").ClickAsync();
        await AtAsync(page, --at);
        await page.Keyboard.PressAsync("Space");
        await AtAsync(page, ++at);
        await Expect(page.Locator(".head")).ToBeHiddenAsync();
        await page.ReloadAsync();
        await page.Locator("html[data-live]").WaitForAsync();
        await AtAsync(page, at);

        await using var phone = await bench.VisitAsync(Screen.Phone, language: "de");
        await phone.OpenAsync(piece + "/string");
        await AtAsync(phone.Page, at);
        await Expect(phone.Page.Locator("h1")).ToContainTextAsync($"Schritt {at} von");
        await Barriers.NoneAsync(phone.Page);
    }

    [Fact]
    public async Task The_place_follows_its_step_when_beads_are_taken_off_before_it()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Tidewrack);
        await visit.OpenAsync(piece + "/string");
        for (var step = 1; step < 8; step++)
        {
            await AtAsync(page, step);
            await page.Keyboard.PressAsync("PageDown");
        }
        await AtAsync(page, 8);
        var says = await page.Locator(".stringing-do").InnerTextAsync();
        var check = await page.Locator(".stringing-check").InnerTextAsync();
        await visit.OpenAsync(piece);
        await page.TakeOffAsync(0, Examples.Tidewrack.Order.Count - 1);
        await visit.OpenAsync(piece + "/string");
        await Expect(page.Locator(".stringing-do")).ToHaveTextAsync(says);
        await Expect(page.Locator(".stringing-check")).Not.ToHaveTextAsync(check);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2000)]
    public async Task A_piece_of_one_bead_and_one_of_two_thousand_are_strung_to_their_end(int beads)
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        var piece = await visit.BringAsync(OfBeads(beads));
        await visit.OpenAsync(piece + "/string");
        await AtAsync(page, 1);
        for (var step = 2; step <= 4; step++)
        {
            await page.Button("Next").ClickAsync();
            await AtAsync(page, step);
        }
        await Expect(page.Locator(".stringing-check")).ToContainTextAsync(beads == 1 ? "1 bead in all" : "beads so far");
        await Barriers.NoneAsync(page);
        if (beads > 1) return;
        await page.Button("Next").ClickAsync();
        await page.Button("Done").ClickAsync();
        // Looked at again and again: an event of a page that has already gone there would be waited for in vain.
        await Expect(page).ToHaveURLAsync(new Uri(visit.Address, piece).ToString());
        await visit.OpenAsync(piece + "/string");
        await AtAsync(page, 1);
    }

    [Fact]
    public async Task The_screen_is_kept_awake_while_she_strings_and_a_browser_without_a_voice_says_so()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await page.AddInitScriptAsync("""
            let held = 0, spoken = 0;
            const tell = (name, value) => { document.documentElement.dataset[name] = value; };
            Object.defineProperty(navigator, 'wakeLock', { value: { request: async () => { tell('held', ++held); return { release: async () => tell('held', --held) }; } } });
            Object.defineProperty(window, 'speechSynthesis', { configurable: true, value: { cancel() {}, speaking: true, getVoices: () => [1], speak(said) { tell('said', said.lang + ': ' + said.text); tell('spoken', ++spoken); said.onstart(); } } });
            """);
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "String it" }).ClickAsync();
        await AtAsync(page, 1);
        await ToldAsync(page, "held", "1");
        await page.Button("Read aloud").ClickAsync();
        await ToldAsync(page, "spoken", "1");
        await page.Keyboard.PressAsync("PageDown");
        await ToldAsync(page, "spoken", "2");
        await page.Keyboard.PressAsync("PageDown");
        await ToldAsync(page, "spoken", "3");
        var says = await page.Locator(".stringing-do").InnerTextAsync();
        Assert.StartsWith("en: " + says, await page.Locator("html").GetAttributeAsync("data-said"), StringComparison.Ordinal);
        await page.EvaluateAsync("Object.defineProperty(window, 'speechSynthesis', { value: undefined })");
        await page.Keyboard.PressAsync("PageDown");
        await Expect(page.Locator(".stringing-told")).ToContainTextAsync("no voice");
        await Expect(page.Button("Read aloud")).ToHaveAttributeAsync("aria-pressed", "false");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Leave" }).ClickAsync();
        await ToldAsync(page, "held", "0");
        Assert.Equal(piece, new Uri(page.Url).AbsolutePath);
    }

    [Fact]
    public async Task A_piece_that_is_not_there_is_said_so()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        visit.Expect("404");
        foreach (var page in (string[])["string", "pattern"])
        {
            var answer = await visit.Page.GotoAsync($"/piece/{Guid.Empty}/{page}");
            Assert.Equal(404, answer!.Status);
        }
    }
}
