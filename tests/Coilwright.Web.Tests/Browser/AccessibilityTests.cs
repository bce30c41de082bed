using Coilwright.Wording;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Every page, in both lights, on a phone and on a desk: no barrier that a machine can find (axe-core, all its rules for WCAG 2.2 A and AA
/// and its best practices), and nothing that sticks out of the page sideways.</summary>
[Collection(InBrowser.Name)]
public sealed class AccessibilityTests(BenchInBrowser bench)
{
    // The addresses of a piece's own pages have its name in them, which is another on every shelf: they are come to from the bench.
    private const string OfPiece = "/piece/.../", Sheet = OfPiece + "sheet";

    private static readonly string[] Pages =
        ["/", "/pieces", "/shop", "/cut", "/kit", "/price", "/stock", "/tray", "/selling", "/quote", "/batch", "/made", "/shows", "/backup", Sheet, OfPiece + "ideas", OfPiece + "sizes", OfPiece + "history", OfPiece + "compare", OfPiece + "trials", OfPiece + "string", OfPiece + "pattern", OfPiece + "coil", "/no-such-page"];

    public static TheoryData<string, Light, bool, string> Views()
    {
        var views = new TheoryData<string, Light, bool, string>();
        foreach (var page in Pages)
            foreach (var phone in (bool[])[true, false])
            {
                foreach (var light in (Light[])[Light.Day, Light.Evening]) views.Add(page, light, phone, "en");
                // Longer words find other edges to stick out of.
                foreach (var language in Languages.All.Where(l => l != Languages.English)) views.Add(page, Light.Day, phone, language.Code);
            }
        return views;
    }

    [Theory, MemberData(nameof(Views))]
    public async Task A_page_has_no_barriers_and_no_sideways_scrolling(string path, Light light, bool phone, string language)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, light, language: language);
        // The answer for a missing page is an error to the browser, which says so on its console; that is meant.
        var missing = path == "/no-such-page";
        if (missing) visit.Expect("404");
        await visit.OpenAsync(path.StartsWith(OfPiece, StringComparison.Ordinal) ? await bench.PageOfPieceAsync(visit, path[OfPiece.Length..]) : path);
        if (path == Sheet) await visit.Page.FrameLocator(".paper-look").Locator("h1").WaitForAsync();
        // What stands in the frame runs no script, so axe could only wait for it; it is looked at as a document of its own.
        await Barriers.NoneAsync(visit.Page, frames: path != Sheet);
    }
}
