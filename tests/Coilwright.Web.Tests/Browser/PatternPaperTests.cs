using System.Text;
using System.Text.RegularExpressions;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The written pattern on paper, and the corrections to a version that people have. With a bench of its own, as the pieces change.</summary>
public sealed partial class PatternPaperTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    // A whole pattern is set meanwhile, with a figure for every step: longer than a page takes that is only drawn anew.
    private const int MadeMs = 30_000;

    private static ILocator Shown(IPage page) => page.FrameLocator(".paper-look").Locator("body");

    private static ILocator Link(IPage page, string name) => page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = name, Exact = true });

    private static Task ShowsAsync(IPage page, string words) => Expect(Shown(page)).ToContainTextAsync(words, new LocatorAssertionsToContainTextOptions { Timeout = MadeMs });

    private static Task LeadsToAsync(ILocator link, Regex address) => Expect(link).ToHaveAttributeAsync("href", address, new LocatorAssertionsToHaveAttributeOptions { Timeout = MadeMs });

    private static async Task<string> SavedAsync(IPage page, ILocator link, string name)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        Assert.Equal(name, download.SuggestedFilename);
        return Encoding.Latin1.GetString(await File.ReadAllBytesAsync(await download.PathAsync()));
    }

    [Fact]
    public async Task It_is_shown_and_saved_on_the_paper_and_in_the_language_that_were_chosen()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Examples.Boardwalk) + "/pattern");
        await Link(page, "Pattern on paper").ClickAsync();
        await ShowsAsync(page, "At a glance");
        await page.GetByLabel("US letter").CheckAsync();
        await page.GetByLabel("large print").CheckAsync();
        await page.GetByLabel("greys").CheckAsync();
        await page.GetByLabel("sparing").CheckAsync();
        await page.GetByRole(AriaRole.Group, new PageGetByRoleOptions { Name = "Language of the pattern" }).GetByLabel("Deutsch").CheckAsync();
        await LeadsToAsync(Link(page, "Save the PDF to print"), Chosen());
        await LeadsToAsync(Link(page, "Save as a web page"), Chosen());
        await LeadsToAsync(Link(page, "Save the publish pack"), Chosen());
        await ShowsAsync(page, "Auf einen Blick");
        Assert.Contains("/MediaBox[0 0 612 792]", await SavedAsync(page, Link(page, "Save the PDF to print"), "Boardwalk-pattern.pdf"), StringComparison.Ordinal);
        await Barriers.NoneAsync(page, frames: false);
    }

    [Fact]
    public async Task Pieces_of_the_same_order_are_offered_as_colourways_and_others_are_not()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone, Light.Evening);
        var page = visit.Page;
        await visit.BringAsync(Examples.Boardwalk with { Title = "Boardwalk at dusk" });
        await visit.OpenAsync(await visit.BringAsync(Examples.Boardwalk with { Title = "Boardwalk at dawn" }) + "/pattern/paper");
        await ShowsAsync(page, "At a glance");
        await Expect(page.GetByLabel("Tidewrack")).ToHaveCountAsync(0);
        await page.GetByLabel("Boardwalk at dusk").CheckAsync();
        await ShowsAsync(page, "Boardwalk at dusk");
        await LeadsToAsync(Link(page, "Save the publish pack"), With());
        await Barriers.NoneAsync(page, frames: false);
        await page.GetByLabel("Boardwalk at dusk").UncheckAsync();
        await Expect(Shown(page)).Not.ToContainTextAsync("Boardwalk at dusk", new LocatorAssertionsToContainTextOptions { Timeout = MadeMs });
    }

    // Offered once it is known that the piece rests: then the pack's model is the one that was looked at.
    [Fact]
    public async Task The_pack_has_its_model_as_the_piece_sits_where_that_was_looked_at()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.PuddleHop with { Title = "Packed as it sits" });
        await visit.OpenAsync(piece + "/pattern/paper");
        var pack = Link(page, "Save the publish pack");
        await LeadsToAsync(pack, new Regex("&revision=1$"));
        await Expect(page.GetByLabel("The model as it sits")).ToHaveCountAsync(0);

        await visit.OpenAsync(piece);
        await page.Locator("details.arm summary").ClickAsync();
        await page.GetByLabel("How it is held").SelectOptionAsync("held-up");
        await page.Button("See how it sits").ClickAsync();
        await Expect(page.Locator(".sits").GetByText("of its beads touch the wrist")).ToBeVisibleAsync(new() { Timeout = 120_000 });
        await visit.OpenAsync(piece + "/pattern/paper");
        await LeadsToAsync(pack, new Regex("&revision=1$"));
        await page.GetByLabel("The model as it sits").CheckAsync();
        await LeadsToAsync(pack, new Regex("&revision=1&model=sits&arm=held-up&aspect=0.75&taper=0$"));
        await Barriers.NoneAsync(page, frames: false);

        // Drawing a whole pack takes longer than a browser's own patience with a request.
        var api = page.Context.APIRequest;
        var kept = await api.GetAsync(new Uri(bench.Address, await pack.GetAttributeAsync("href")).ToString(), new() { Timeout = 180_000 });
        Assert.True(kept.Ok, kept.StatusText);
        using var zip = new System.IO.Compression.ZipArchive(new MemoryStream(await kept.BodyAsync()));
        using var model = new StreamReader(zip.GetEntry("coil.glb")!.Open());
        Assert.Contains("\"pose\":\"settled\"", await model.ReadToEndAsync(), StringComparison.Ordinal);
        Assert.Equal(404, (await api.GetAsync(new Uri(bench.Address, piece + "/pattern/publish.zip?model=sits&arm=hangng").ToString())).Status);
    }

    [Fact]
    public async Task Two_versions_are_chosen_and_what_differs_is_shown_and_saved()
    {
        await using var visit = await bench.VisitAsync(Screen.Tablet);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/pattern/errata");
        await Expect(page.GetByText("There is only one version so far.")).ToBeVisibleAsync();
        await visit.OpenAsync(piece + "/pattern");
        var step = page.Locator(".pattern-step[data-step='3']");
        await step.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Say it in your own words" }).ClickAsync();
        await step.Locator("textarea").FillAsync("Begin with the dark ones.");
        await step.Locator("textarea").PressAsync("Tab");
        await Expect(page.Button("Take back")).ToBeEnabledAsync();
        await Link(page, "Corrections").ClickAsync();
        await ShowsAsync(page, "Begin with the dark ones.");
        var save = Link(page, "Save the PDF to print");
        await LeadsToAsync(save, FirstToSecond());
        Assert.StartsWith("%PDF-", await SavedAsync(page, save, "Boardwalk-errata.pdf"), StringComparison.Ordinal);
        await page.GetByLabel("The version that people have").SelectOptionAsync("2");
        await Expect(page).ToHaveURLAsync(new Regex("old=2&new=2$"));
        await ShowsAsync(page, "There is nothing to correct");
        await Barriers.NoneAsync(page, frames: false);
    }

    [GeneratedRegex("paper=letter&large=True&grey=True&spare=True&language=de")]
    private static partial Regex Chosen();

    [GeneratedRegex("&with=[0-9a-f-]{36}\\.1&")]
    private static partial Regex With();

    [GeneratedRegex("old=1&new=2$")]
    private static partial Regex FirstToSecond();
}
