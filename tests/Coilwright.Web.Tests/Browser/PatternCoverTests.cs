using System.Text;
using System.Text.RegularExpressions;
using Coilwright.Documents.Tests.Rasters;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>A picture on the cover of the written pattern: from the stage, or a photo of hers. With a bench of its own, as the covers change.</summary>
public sealed partial class PatternCoverTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    // A picture of three million pixels is drawn without a graphics card, or a whole pattern is set meanwhile.
    private const int MadeMs = 60_000;

    private const string DrawnInSpace = "drawn in space from its stringing order", Finished = "the finished piece";

    private static ILocator Paper(IPage page) => page.FrameLocator(".paper-look").Locator("body");

    private static ILocator Thumbnail(IPage page) => page.Locator(".pattern-cover img");

    private static Task ShowsAsync(IPage page, string words) => Expect(Paper(page)).ToContainTextAsync(words, new LocatorAssertionsToContainTextOptions { Timeout = MadeMs });

    private static async Task<string> PdfAsync(IPage page)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save the PDF to print", Exact = true }).ClickAsync());
        return Encoding.Latin1.GetString(await File.ReadAllBytesAsync(await download.PathAsync()));
    }

    private static Task ChooseAsync(IPage page, string name, string type, byte[] file) =>
        page.GetByLabel("A photo of the finished piece").SetInputFilesAsync(new FilePayload { Name = name, MimeType = type, Buffer = file });

    [Fact]
    public async Task The_view_on_the_stage_becomes_the_cover_and_is_in_the_pdf_that_is_saved()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Examples.Boardwalk) + "/coil");
        await Expect(page.Locator(".coil-view")).ToHaveAttributeAsync("data-coil-state", "turning");
        await page.Button("Make this view the cover of the pattern").ClickAsync();
        var look = page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "See the pattern on paper" });
        await Expect(look).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = MadeMs });
        await Barriers.NoneAsync(page);
        await look.ClickAsync();
        await ShowsAsync(page, DrawnInSpace);
        await Barriers.NoneAsync(page, frames: false);

        // What is kept is the piece on white: paper at the corners, beads about the middle of each side that the coil goes through.
        var told = await page.EvaluateAsync<int[]>("""
            async () => {
              const picture = document.querySelector('.pattern-cover img');
              await picture.decode();
              const paper = new OffscreenCanvas(picture.naturalWidth, picture.naturalHeight).getContext('2d');
              paper.drawImage(picture, 0, 0);
              const dots = paper.getImageData(0, 0, picture.naturalWidth, picture.naturalHeight).data;
              let inked = 0;
              for (let at = 0; at < dots.length; at += 4) if (Math.min(dots[at], dots[at + 1], dots[at + 2]) < 200) inked++;
              return [picture.naturalWidth, picture.naturalHeight, dots[0], dots[1], dots[2], Math.round(100 * inked / (dots.length / 4))];
            }
            """);
        Assert.Equal([2000, 1500, 255, 255, 255], told[..5]);
        Assert.InRange(told[5], 5, 80);
        var pdf = await PdfAsync(page);
        Assert.Equal(1, Pictures().Count(pdf));
        Assert.Matches(@"/Width 2000\b", pdf);
        Assert.Matches(@"/Height 1500\b", pdf);

        // The coil again for this print, and then the picture off, and back.
        await page.GetByLabel("The drawn coil").CheckAsync();
        await ShowsAsync(page, "the top of the wrist in front");
        Assert.Equal(0, Pictures().Count(await PdfAsync(page)));
        await page.Button("Take the picture off").ClickAsync();
        await Expect(Thumbnail(page)).ToHaveCountAsync(0);
        await page.Button("Put it back").ClickAsync();
        await ShowsAsync(page, DrawnInSpace);
        await Expect(Thumbnail(page)).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_photo_of_hers_is_taken_without_where_it_was_taken_and_one_that_cannot_be_printed_is_told_and_changes_nothing()
    {
        const string secret = "47.3769N 8.5417E";
        await using var visit = await bench.VisitAsync(Screen.Phone, Light.Evening);
        var page = visit.Page;
        var at = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(at + "/pattern/paper");
        await ShowsAsync(page, "At a glance");
        var jpeg = SampleRasters.Jpeg(800, 600);
        // Chosen by keys alone: where she is, she stays, whatever comes of it.
        var field = page.GetByLabel("A photo of the finished piece");
        await field.FocusAsync();
        byte[] exif = [.. "Exif\0\0"u8, .. Encoding.ASCII.GetBytes(secret)];
        await ChooseAsync(page, "worn.jpg", "image/jpeg", [.. jpeg[..2], 0xFF, 0xE1, 0, (byte)(exif.Length + 2), .. exif, .. jpeg[2..]]);
        await ShowsAsync(page, Finished);
        await Expect(Thumbnail(page)).ToHaveAttributeAsync("alt", "The picture for the cover of Boardwalk");
        var kept = await page.EvaluateAsync<string>("async () => { const b = new Uint8Array(await (await fetch(document.querySelector('.pattern-cover img').src)).arrayBuffer()); let t = ''; for (const c of b) t += String.fromCharCode(c); return btoa(t); }");
        Assert.Equal(jpeg, Convert.FromBase64String(kept));
        await Expect(field).ToBeFocusedAsync();
        Assert.DoesNotContain(secret, await PdfAsync(page), StringComparison.Ordinal);
        await Barriers.NoneAsync(page, frames: false);

        var before = await Thumbnail(page).GetAttributeAsync("src");
        await field.FocusAsync();
        await ChooseAsync(page, "cut.png", "image/png", SampleRasters.Png(400, 300)[..400]);
        await Expect(page.GetByText("cannot be read to its end")).ToBeVisibleAsync();
        await ChooseAsync(page, "note.png", "image/png", "Dear customer"u8.ToArray());
        await Expect(page.GetByText("This is not a photo of that kind.")).ToBeVisibleAsync();
        await Expect(Thumbnail(page)).ToHaveAttributeAsync("src", before!);
        await Expect(field).ToBeFocusedAsync();
        // It is still there for whoever comes next.
        await visit.OpenAsync(at + "/pattern/paper");
        await Expect(Thumbnail(page)).ToHaveAttributeAsync("src", before!);
    }

    [Fact]
    public async Task Where_the_browser_draws_nothing_in_space_it_is_told_and_the_cover_stays()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await page.AddInitScriptAsync("const own = HTMLCanvasElement.prototype.getContext; HTMLCanvasElement.prototype.getContext = function (kind, ...more) { return kind.startsWith('webgl') ? null : own.call(this, kind, ...more); };");
        await visit.OpenAsync(await visit.BringAsync(Examples.Boardwalk) + "/coil");
        await Expect(page.Locator(".coil-view")).ToHaveAttributeAsync("data-coil-state", "drawn");
        await page.Button("Make this view the cover of the pattern").ClickAsync();
        await Expect(page.GetByText("This browser gives no picture of the piece in space.")).ToBeVisibleAsync();
    }

    [GeneratedRegex(@"/Subtype\s*/Image\b")]
    private static partial Regex Pictures();
}
