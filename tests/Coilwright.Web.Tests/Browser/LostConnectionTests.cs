using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

[Collection(InBrowser.Name)]
public sealed class LostConnectionTests(BenchInBrowser bench)
{
    [Fact]
    public async Task A_page_says_that_the_program_is_gone_and_comes_back_with_it()
    {
        await using var program = new BenchProcess();
        await program.StartAsync();
        await using var visit = await bench.VisitAsync(Screen.Desktop, address: program.Address);
        // The browser tells of every failed try on its console.
        visit.Expect("WebSocket");
        visit.Expect("Failed to load resource");
        visit.Expect("Connection disconnected");
        visit.Expect("ERR_CONNECTION_REFUSED");
        visit.Expect("Failed to fetch");
        visit.Expect("Failed to complete negotiation");
        visit.Expect("Failed to start the connection");
        visit.Expect("Cannot send data if the connection is not");
        visit.Expect("circuit");
        await visit.OpenAsync();
        await visit.Page.Locator(".rows-beads [role=option]").First.ClickAsync();
        await visit.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Twice", Exact = true }).ClickAsync();
        await Expect(visit.Page.Locator(".tape dd").First).ToHaveTextAsync($"{Examples.Tidewrack.Order.Count + 1}");
        await visit.Page.EvaluateAsync("document.documentElement.dataset.before = 'the kill'");

        await program.KillAsync();
        await Expect(visit.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await Expect(visit.Page.Locator("#lost-words")).ToBeVisibleAsync();

        await program.StartAsync();
        var anew = visit.Page.Locator("html[data-live]:not([data-before])");
        await anew.WaitForAsync(new LocatorWaitForOptions { Timeout = 60_000 });
        await Expect(visit.Page.Locator("h1")).ToHaveTextAsync("Tidewrack");
        // The last edit that was shown as done was kept before the kill.
        await Expect(visit.Page.Locator(".tape dd").First).ToHaveTextAsync($"{Examples.Tidewrack.Order.Count + 1}");
        await Expect(visit.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync();
    }
}
