using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>A job is stopped, while it waits and while it runs. With a bench of its own, as every window sees every job.</summary>
public sealed class StoppedJobsTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = name, Exact = true });

    private async Task<Visit> OnSheetAsync(Screen screen, Light light)
    {
        var visit = await bench.VisitAsync(screen, light);
        await visit.OpenAsync();
        await visit.OpenAsync((await visit.Page.Locator(".piece-pages a[href$='/sheet']").GetAttributeAsync("href"))!);
        return visit;
    }

    [Fact]
    public async Task A_job_that_runs_and_one_that_waits_are_stopped_and_keep_nobody_out()
    {
        await using var visit = await OnSheetAsync(Screen.Phone, Light.Evening);
        var page = visit.Page;
        await Button(page, "Every paper at once").ClickAsync();
        await Button(page, "All my pieces, like this").ClickAsync();
        var waiting = page.Locator(".job", new PageLocatorOptions { HasText = "The sheets of" });
        await Expect(waiting).ToContainTextAsync("waits its turn");
        await waiting.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(waiting).ToContainTextAsync("Stopped.");
        await page.Locator(".job", new PageLocatorOptions { HasText = "Every sheet of" }).GetByRole(AriaRole.Button).ClickAsync();
        await Expect(page.Locator(".job", new PageLocatorOptions { HasText = "Every sheet of" })).ToContainTextAsync("Stopped.");
        await Barriers.NoneAsync(visit.Page, frames: false);
        while (await page.Locator(".job").CountAsync() is var left and > 0)
        {
            await page.Locator(".job").First.GetByRole(AriaRole.Button).ClickAsync();
            await Expect(page.Locator(".job")).ToHaveCountAsync(left - 1);
        }
    }
}
