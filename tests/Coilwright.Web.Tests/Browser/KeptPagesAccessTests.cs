using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The pages of what the shelf keeps, with something on them and everything open that she can open: no barriers, in both lights.</summary>
public sealed class KeptPagesAccessTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    [Theory]
    [InlineData(Light.Day, true)]
    [InlineData(Light.Evening, false)]
    public async Task History_versions_trials_photos_and_backups_have_no_barriers_when_they_are_in_use(Light light, bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, light);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await page.TakeOffAsync(2, Examples.Boardwalk.Order.Count - 1);

        await visit.OpenAsync(piece + "/history");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Give it a name" }).First.ClickAsync();
        await page.GetByLabel("Name of this version").FillAsync(new string('n', 200));
        await page.Button("Keep the name").ClickAsync();
        await Expect(page.Locator(".steps h3")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Another name" }).First.ClickAsync();
        await Expect(page.GetByLabel("Name of this version")).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);

        await visit.OpenAsync(piece + "/compare?one=1&other=2");
        await Expect(page.Locator(".differences dt").First).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);

        await visit.OpenAsync(piece + "/trials");
        await page.GetByLabel("What you tried, in a line").FillAsync(new string('t', 200));
        await page.GetByLabel("Choose a photo").SetInputFilesAsync(new FilePayload { Name = new string('p', 90) + ".png", MimeType = "image/png", Buffer = TrialsPageTests.Png });
        await Expect(page.Locator(".photo-chosen")).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);
        await page.Button("Write it down").ClickAsync();
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Take out of the log" }).ClickAsync();
        await Expect(page.Button("Leave it in")).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);
        await page.Button("Leave it in").ClickAsync();
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Lay the photo beside the rows" }).ClickAsync();
        await Expect(page.Locator(".mat-photo img")).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);

        await visit.OpenAsync("/backup");
        await page.GetByLabel("Choose a file that was saved here").SetInputFilesAsync(new FilePayload { Name = new string('b', 90) + ".db", MimeType = "application/octet-stream", Buffer = [1, 2, 3] });
        await Expect(page.Button("Replace them")).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);
        await page.Button("Replace them").ClickAsync();
        await Expect(page.Locator(".trouble li")).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);
    }
}
