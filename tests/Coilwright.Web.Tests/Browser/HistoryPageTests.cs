using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The history of a piece, and two of its versions beside each other. With a bench of its own, as the pieces change.</summary>
public sealed class HistoryPageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private const string Hostile = "<b onclick=x>liked</b> \u202Eevil 🪨";

    private static int Strung => Examples.Boardwalk.Order.Count;

    private static ILocator Steps(IPage page) => page.Locator("section:has(> #steps-head) .steps > li");

    private static ILocator Versions(IPage page) => page.Locator("section:has(> #versions-head) .steps > li");

    private static ILocator In(ILocator step, string button) => step.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = button });

    [Fact]
    public async Task Steps_are_told_in_words_and_any_state_can_be_gone_back_to_and_that_be_taken_back()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await page.TakeOffAsync(4, Strung - 1);
        await page.TakeOffAsync(4, Strung - 2);
        await page.Button("Take back").ClickAsync();
        await Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{Strung - 1}");
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "History" }).ClickAsync();
        await Expect(page.Locator(".step-done")).ToHaveTextAsync(["Took a step back, to state 2", "Took off bead 5", "Took off bead 5", "Put on the shelf"]);
        await In(Steps(page).Last, "Go back to this").ClickAsync();
        await Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{Strung}");
        await page.Button("Take back").ClickAsync();
        await Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{Strung - 1}");
        await visit.OpenAsync(piece + "/history");
        await Expect(Steps(page)).ToHaveCountAsync(6);
    }

    [Fact]
    public async Task A_version_is_named_renamed_and_its_name_taken_away_whatever_the_name_is()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await page.TakeOffAsync(0, Strung - 1);
        await visit.OpenAsync(piece + "/history");
        await In(Steps(page).Last, "Give it a name").ClickAsync();
        await page.GetByLabel("Name of this version").FillAsync("first");
        await page.Keyboard.PressAsync("Enter");
        await Expect(Versions(page).Locator("h3")).ToHaveTextAsync("first");
        await In(Versions(page), "Another name").ClickAsync();
        await page.GetByLabel("Name of this version").FillAsync(Hostile);
        await page.Button("Keep the name").ClickAsync();
        await Expect(Versions(page).Locator("h3")).ToHaveTextAsync(Hostile);
        await Expect(page.Locator("h3 b")).ToHaveCountAsync(0);
        await visit.OpenAsync(piece + "/history");
        await Expect(Versions(page).Locator("h3")).ToHaveTextAsync(Hostile);
        await In(Versions(page), "Another name").ClickAsync();
        await page.Button("Take the name away").ClickAsync();
        await Expect(Versions(page)).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Two_versions_stand_beside_each_other_and_on_a_phone_under_each_other_with_what_differs(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await page.TakeOffAsync(0, Strung - 1);
        await page.TakeOffAsync(0, Strung - 2);
        // As asked for nothing else: the beginning and now.
        await visit.OpenAsync(piece + "/compare");
        var inAll = page.Locator(".differences dl > div").Filter(new LocatorFilterOptions { HasText = "Beads in all" }).Locator("dd");
        await Expect(inAll.First).ToContainTextAsync($"{Strung}");
        await Expect(inAll.Last).ToContainTextAsync($"{Strung - 2}");
        await page.GetByLabel("The other version").SelectOptionAsync("2");
        await Expect(inAll.Last).ToContainTextAsync($"{Strung - 1}");
        var (one, other) = ((await page.Locator(".side").First.BoundingBoxAsync())!, (await page.Locator(".side").Last.BoundingBoxAsync())!);
        Assert.True(phone ? other.Y >= one.Y + one.Height : other.X >= one.X + one.Width, "The versions do not stand where they should.");
        // One scale: the rows' own millimetres are as long in both pictures.
        var boxes = await page.Locator(".side-rows svg").EvaluateAllAsync<double[]>("all => all.map(s => s.getBoundingClientRect().width / s.viewBox.baseVal.width)");
        Assert.Equal(boxes[0], boxes[1], 0.01);
        await page.GetByLabel("One version").SelectOptionAsync("2");
        await Expect(page.Locator(".differences")).ToContainTextAsync("Both come to the same.");
        // A name makes a version the one that is looked for first.
        await visit.OpenAsync(piece + "/history");
        await In(Steps(page).Nth(1), "Give it a name").ClickAsync();
        await page.GetByLabel("Name of this version").FillAsync("one less");
        await page.Button("Keep the name").ClickAsync();
        await Expect(Versions(page)).ToHaveCountAsync(1);
        await visit.OpenAsync(piece + "/compare");
        await Expect(page.GetByLabel("One version")).ToHaveValueAsync("2");
    }

    [Theory]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/history")]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/compare")]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/trials")]
    public async Task What_belongs_to_no_piece_is_not_there(string path)
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        visit.Expect("404");
        await visit.OpenAsync(path);
        await Expect(visit.Page.Locator("h1")).ToHaveTextAsync("There is nothing here");
    }
}
