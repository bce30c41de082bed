using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Beads described on the bench, and what she measures there. With a bench of its own, as the pieces change.</summary>
public sealed class BeadFormTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true });

    private static ILocator Box(IPage page, string label) => page.GetByLabel(label, new PageGetByLabelOptions { Exact = true });

    private async Task<Visit> OwnPieceAsync()
    {
        var visit = await bench.VisitAsync(Screen.Desktop);
        await visit.OpenAsync("/pieces");
        await visit.Page.GetByLabel("Bring in a piece from a file").SetInputFilesAsync(new FilePayload
        {
            Name = "own.piece.json",
            MimeType = "application/json",
            Buffer = Storage.PieceFile.Write(Examples.Boardwalk),
        });
        await Expect(visit.Page.Locator(".tape dd").First).ToHaveTextAsync($"{Examples.Boardwalk.Order.Count}");
        return visit;
    }

    [Fact]
    public async Task A_label_is_read_asked_about_drawn_and_the_bead_strung()
    {
        await using var visit = await OwnPieceAsync();
        var page = visit.Page;
        await Button(page, "Another bead").ClickAsync();
        await Expect(Button(page, "Add to the piece")).ToBeVisibleAsync();
        await Box(page, "Name").Last.FillAsync("Moon <b>disc</b>");
        await page.GetByLabel("Shape").SelectOptionAsync("rondelle");
        await page.GetByLabel("Size on the label").FillAsync("6 x 4");
        await page.GetByLabel("Size on the label").PressAsync("Tab");
        // The usual way of a rondelle is proposed, and she may say otherwise.
        await Expect(page.GetByLabel("4 mm", new PageGetByLabelOptions { Exact = true })).ToBeCheckedAsync();
        await Expect(Box(page, "Along the hole")).ToHaveValueAsync("4 mm");
        await page.GetByLabel("6 mm", new PageGetByLabelOptions { Exact = true }).CheckAsync();
        await Expect(Box(page, "Along the hole")).ToHaveValueAsync("6 mm");
        await Expect(page.Locator(".bead-look svg")).ToHaveCountAsync(2);
        await Button(page, "Add to the piece").ClickAsync();
        await Expect(page.Locator(".kinds")).ToContainTextAsync("Moon <b>disc</b>");
        await page.Locator(".rows-beads [role=option]").First.ClickAsync();
        await Button(page, "String Moon <b>disc</b>").ClickAsync();
        await Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{Examples.Boardwalk.Order.Count + 1}");
    }

    [Fact]
    public async Task A_bead_without_a_size_is_refused_in_words_and_nothing_is_lost()
    {
        await using var visit = await OwnPieceAsync();
        var page = visit.Page;
        await Button(page, "Another bead").ClickAsync();
        await Expect(Button(page, "Add to the piece")).ToBeVisibleAsync();
        await Box(page, "Name").Last.FillAsync("Moon");
        await Button(page, "Add to the piece").ClickAsync();
        await Expect(page.Locator(".bead-form .trouble")).ToBeVisibleAsync();
        await Expect(Box(page, "Name").Last).ToHaveValueAsync("Moon");
        await Box(page, "Along the hole").FillAsync("0.3 in");
        await Box(page, "Across").FillAsync("thick");
        await Box(page, "Across").PressAsync("Tab");
        await Expect(page.Locator(".bead-form .wrong")).ToContainTextAsync("Type a length");
        await Box(page, "Across").FillAsync("8");
        await Box(page, "Across").PressAsync("Tab");
        await Button(page, "Add to the piece").ClickAsync();
        await Expect(page.Locator(".bead-form")).ToHaveCountAsync(0);
        await Expect(page.Locator(".kinds")).ToContainTextAsync("7.6 mm");
    }

    [Fact]
    public async Task A_row_measured_on_the_wire_is_typed_and_everything_is_reckoned_from_it()
    {
        await using var visit = await OwnPieceAsync();
        var page = visit.Page;
        var wire = page.Locator(".tape dd").Nth(1);
        var before = await wire.TextContentAsync();
        await page.Locator("summary", new PageLocatorOptions { HasText = "From the bench" }).ClickAsync();
        await page.Locator(".rows-beads [data-index='0']").ClickAsync();
        await page.Locator(".rows-beads [data-index='11']").ClickAsync(new LocatorClickOptions { Modifiers = [KeyboardModifier.Shift] });
        await Box(page, "Beads 1 to 12 take").FillAsync("64");
        await Box(page, "Beads 1 to 12 take").PressAsync("Tab");
        await Expect(page.Locator(".measured li")).ToContainTextAsync("Beads 1 to 12 take 64 mm");
        await Expect(wire).Not.ToHaveTextAsync(before!);
        await Button(page, "Forget this").ClickAsync();
        await Expect(wire).ToHaveTextAsync(before!);
    }

    [Fact]
    public async Task A_kind_is_replaced_everywhere_in_one_step()
    {
        await using var visit = await OwnPieceAsync();
        var page = visit.Page;
        var (one, other) = (Examples.Boardwalk.Beads[0], Examples.Boardwalk.Beads[1]);
        await page.GetByLabel($"Replace {other.Name} everywhere by").SelectOptionAsync(one.Id);
        await Expect(page.Locator(".kinds")).ToContainTextAsync($"use {Examples.Boardwalk.Order.Count}");
        await Button(page, "Take back").ClickAsync();
        await Expect(page.Locator(".kinds")).Not.ToContainTextAsync($"use {Examples.Boardwalk.Order.Count}");
    }

    [Fact]
    public async Task Ten_beads_measured_in_a_row_give_the_length_of_one()
    {
        await using var visit = await OwnPieceAsync();
        var page = visit.Page;
        await Button(page, "Another bead").ClickAsync();
        await Expect(Button(page, "Add to the piece")).ToBeVisibleAsync();
        await Box(page, "Name").Last.FillAsync("Ten in a row");
        await page.GetByLabel("a row, measured").CheckAsync();
        await Expect(page.GetByLabel("Beads in the row")).ToHaveValueAsync("10");
        await page.GetByLabel("The row takes").FillAsync("6.3 cm");
        await page.GetByLabel("The row takes").PressAsync("Tab");
        await Button(page, "Add to the piece").ClickAsync();
        await Expect(page.Locator(".kinds")).ToContainTextAsync("6.3 mm");
    }
}
