using Coilwright.Wording;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Every page, in both lights, on a phone and on a desk: no barrier that a machine can find (axe-core, all its rules for WCAG 2.2 A and AA
/// and its best practices), and nothing that sticks out of the page sideways.</summary>
[Collection(InBrowser.Name)]
public sealed class AccessibilityTests(BenchInBrowser bench)
{
    // The addresses of a piece's own pages have its name in them, which is another on every shelf: they are come to from the bench.
    private const string OfPiece = "/piece/.../", Sheet = OfPiece + "sheet", Pattern = OfPiece + "pattern/paper", Errata = OfPiece + "pattern/errata", String = OfPiece + "string";

    private static readonly string[] Pages =
        ["/", "/pieces", "/shop", "/cut", "/kit", "/price", "/stock", "/tray", "/selling", "/quote", "/batch", "/made", "/shows", "/backup", Sheet, OfPiece + "ideas", OfPiece + "sizes", OfPiece + "history", OfPiece + "compare", OfPiece + "trials", String, OfPiece + "pattern", Pattern, Errata, OfPiece + "coil", OfPiece + "palette", "/manual", "/manual/first-piece", "/keys", OfPiece + "photo-colour", "/class", "/no-such-page"];

    public static TheoryData<string, bool> Views()
    {
        var views = new TheoryData<string, bool>();
        foreach (var page in Pages)
        {
            views.Add(page, true);
            views.Add(page, false);
        }
        return views;
    }

    [Theory, MemberData(nameof(Views))]
    public async Task A_page_has_no_barriers_and_no_sideways_scrolling(string path, bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, Light.Day);
        // The answer for a missing page is an error to the browser, which says so on its console; that is meant.
        var missing = path == "/no-such-page";
        if (missing) visit.Expect("404");
        var address = path.StartsWith(OfPiece, StringComparison.Ordinal) ? await bench.PageOfPieceAsync(visit, path[OfPiece.Length..]) : path;
        await LookAsync(Light.Day, Languages.English);
        // While she strings there is nothing else on the screen, and no settings.
        if (path is String)
        {
            await LookAsync(Light.Evening, Languages.English);
        }
        else
        {
            await visit.TurnAsync(Light.Evening);
            await NoneAsync();
        }
        // Longer words find other edges to stick out of.
        foreach (var language in Languages.All.Where(l => l != Languages.English)) await LookAsync(Light.Day, language);

        async Task LookAsync(Light light, Language language)
        {
            await visit.KeepAsync(light, language);
            await visit.OpenAsync(address);
            if (path is Sheet or Pattern) await visit.Page.FrameLocator(".paper-look").Locator("h1").WaitForAsync();
            await NoneAsync();
        }

        // What stands in the frame runs no script, so axe could only wait for it; it is looked at as a document of its own.
        Task NoneAsync() => Barriers.NoneAsync(visit.Page, frames: path is not (Sheet or Pattern or Errata));
    }

    [Theory]
    [InlineData(true, Light.Day, "en"), InlineData(true, Light.Evening, "de"), InlineData(false, Light.Day, "de"), InlineData(false, Light.Evening, "en")]
    public async Task What_a_word_of_the_head_or_of_a_piece_opens_has_no_barriers(bool phone, Light light, string language)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, light, language: language);
        var page = visit.Page;
        await visit.OpenAsync();
        var (groups, open) = (page.Locator(".head summary"), page.Locator(".nav-group[open]"));
        for (var i = 0; i < await groups.CountAsync(); i++)
        {
            await groups.Nth(i).FocusAsync();
            await page.Keyboard.PressAsync("Enter");
            await Expect(open).ToHaveCountAsync(1);
            // What lies beneath an open group is not to be tapped meanwhile: the group alone is looked at.
            await Barriers.NoneAsync(page, within: ".nav-group[open]");
            await page.Keyboard.PressAsync("Escape");
            await Expect(open).ToHaveCountAsync(0);
        }
        var taps = page.Locator(".piece-tap");
        await Expect(taps).ToHaveCountAsync(3);
        for (var i = 0; i < 3; i++)
        {
            var links = page.Locator(".piece-links").Nth(i);
            if (phone)
            {
                await Expect(links).ToBeHiddenAsync();
                await taps.Nth(i).FocusAsync();
                await page.Keyboard.PressAsync("Enter");
                await Expect(page.Locator(".piece-groups .is-open")).ToHaveCountAsync(1);
            }
            else
            {
                await Expect(taps.Nth(i)).ToBeHiddenAsync();
            }
            await Expect(links).ToBeVisibleAsync();
            await Barriers.NoneAsync(page);
        }
        if (!phone) return;
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".piece-groups .is-open")).ToHaveCountAsync(0);
        // On a page of the piece its own group is open.
        await visit.OpenAsync((await page.Locator(".piece-pages a[href$='/history']").GetAttributeAsync("href"))!);
        await Expect(page.Locator(".piece-groups .is-open a[aria-current='page']")).ToBeVisibleAsync();
    }
}
