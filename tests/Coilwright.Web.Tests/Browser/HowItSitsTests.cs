using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>How a piece sits, worked out on the bench when she asks.</summary>
public sealed class HowItSitsTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    // A spring let down onto a wrist takes its time on a loaded machine.
    private static readonly LocatorAssertionsToBeVisibleOptions Patient = new() { Timeout = 120_000 };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task It_is_said_plainly_with_forces_behind_details(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop);
        await visit.OpenAsync(await visit.BringAsync(Examples.PuddleHop));
        var page = visit.Page;
        var sits = page.Locator(".sits");
        await page.Button("See how it sits").ClickAsync();
        await Expect(sits.GetByText("of its beads touch the wrist")).ToBeVisibleAsync(Patient);
        await Expect(sits.GetByText("Off the wrist it goes")).ToBeVisibleAsync();
        await Expect(sits.GetByText("press on the wrist with")).ToBeHiddenAsync();
        await sits.Locator("details.engine summary").ClickAsync();
        await Expect(sits.GetByText("press on the wrist with")).ToBeVisibleAsync();
        await Expect(page.Button("See how it sits now")).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);
    }

    // Its focal is drilled off its middle, on a wire that lets it roll: that stands among the notices once it was asked how it sits, with a way to the bead.
    [Fact]
    public async Task What_there_is_to_mind_of_it_stands_among_the_notices()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Examples.Tidewrack with { Title = "A focal that tips" }));
        var tips = page.Locator(".notices").GetByText("tips by more than");
        await Expect(tips).ToHaveCountAsync(0);
        await page.Button("See how it sits").ClickAsync();
        await Expect(tips).ToBeVisibleAsync(Patient);
        await page.Locator(".notice").Filter(new() { HasText = "tips by more than" }).GetByRole(AriaRole.Button).ClickAsync();
        await Expect(page.Locator(".selection-bar")).ToContainTextAsync("Drilled stone");
    }

    [Fact]
    public async Task It_can_be_stopped_and_asked_again()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Examples.Tidewrack with { Title = "Stopped while it settles" }));
        await page.Button("See how it sits").ClickAsync();
        await page.Button("Stop").ClickAsync();
        await Expect(page.Locator(".sits").GetByText("Stopped.")).ToBeVisibleAsync();
        await Expect(page.Button("See how it sits")).ToBeVisibleAsync();
        await Expect(page.Locator(".sits").GetByText("of its beads touch the wrist")).ToHaveCountAsync(0);
    }
}
