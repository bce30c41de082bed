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
}
