using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Names that were meant to do harm, typed into the page: each is shown as the text that it is, or refused in words, and the page stays whole.</summary>
public sealed class HostileNamesTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true });

    [Theory]
    [InlineData("<script>document.title='taken'</script>")]
    [InlineData("\"><img src=x onerror=document.title='taken'>")]
    [InlineData("\u202Eegnitlom \u05D0\u05D1\u05D2")]
    [InlineData("🪨🐚 \u0000tide")]
    [InlineData("../../etc/passwd")]
    public async Task A_title_and_a_bead_of_any_name_are_shown_as_they_are_and_harm_nothing(string name)
    {
        // What no text may hold is dropped by the browser itself before it comes to the page.
        var shown = name.Replace("\0", "", StringComparison.Ordinal);
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await visit.OpenAsync("/pieces");
        await page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload
        {
            Name = "own.piece.json",
            MimeType = "application/json",
            Buffer = Storage.PieceFile.Write(Examples.Boardwalk with { Title = shown }),
        });
        await Expect(page.Locator("h1")).ToHaveTextAsync(shown);
        await Button(page, "Another bead").ClickAsync();
        await Expect(Button(page, "Add to the piece")).ToBeVisibleAsync();
        await page.GetByLabel("Name", new PageGetByLabelOptions { Exact = true }).Last.FillAsync(shown);
        await page.GetByLabel("Along the hole", new PageGetByLabelOptions { Exact = true }).FillAsync("7");
        await page.GetByLabel("Along the hole", new PageGetByLabelOptions { Exact = true }).PressAsync("Tab");
        await Button(page, "Add to the piece").ClickAsync();
        await Expect(page.Locator(".kinds .kind-name bdi", new PageLocatorOptions { HasText = shown })).ToHaveCountAsync(1);
        await page.Locator(".tray-bead", new PageLocatorOptions { HasText = shown }).First.ClickAsync();
        await Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{Examples.Boardwalk.Order.Count + 1}");
        Assert.Equal(shown, await page.TitleAsync());
        await Barriers.NoneAsync(visit.Page);
        // The list of pieces, and the file that the piece is saved as.
        var file = await page.APIRequest.GetAsync(page.Url + "/file");
        Assert.Matches("filename=[^/\\\\<>]*\\.piece\\.json", file.Headers["content-disposition"].Split(';')[1]);
        await visit.OpenAsync("/pieces");
        await Expect(page.GetByRole(AriaRole.Heading, new PageGetByRoleOptions { Name = shown, Exact = true })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_name_of_10_kB_is_not_taken_whole_and_one_that_is_too_long_is_refused_in_words()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await visit.OpenAsync();
        await Button(page, "Another bead").ClickAsync();
        await Expect(Button(page, "Add to the piece")).ToBeVisibleAsync();
        var box = page.GetByLabel("Name", new PageGetByLabelOptions { Exact = true }).Last;
        // A box takes what a label has room for, pasted or typed.
        await box.FocusAsync();
        await page.Keyboard.InsertTextAsync(new string('x', 10_000));
        Assert.Equal(80, (await box.InputValueAsync()).Length);
        // A page that was tampered with sends all of it: it is the core that says no.
        await box.EvaluateAsync("b => { b.removeAttribute('maxlength'); b.value = 'x'.repeat(10000); b.dispatchEvent(new Event('change', { bubbles: true })); }");
        await page.GetByLabel("Along the hole", new PageGetByLabelOptions { Exact = true }).FillAsync("7");
        await page.GetByLabel("Along the hole", new PageGetByLabelOptions { Exact = true }).PressAsync("Tab");
        await Button(page, "Add to the piece").ClickAsync();
        await Expect(page.Locator(".bench-note .trouble, .bead-form .trouble").First).ToContainTextAsync("200");
        await Expect(page.Locator(".bead-form")).ToBeVisibleAsync();
    }
}
