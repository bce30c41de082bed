using System.Text;
using Coilwright.Core.Pieces;
using Coilwright.Web.Tests.Components;
using Coilwright.Web.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What was tried on the mat, with photos. With a bench of its own, as the pieces change.</summary>
public sealed class TrialsPageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    // The smallest whole picture there is room for here: 2 by 1 pixels (PNG, checked by the browser itself, which draws it).
    internal static readonly byte[] Png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAIAAAABCAIAAAB7QOjdAAAAD0lEQVQI12Nc4aXMwMAAAAX8ARfq0I2fAAAAAElFTkSuQmCC");

    private static int Strung => Examples.Boardwalk.Order.Count;

    private static ILocator Entries(IPage page) => page.Locator(".trial-list > li");

    private static async Task TryAsync(IPage page, string tried, FilePayload? photo)
    {
        await page.GetByLabel("What you tried, in a line").FillAsync(tried);
        if (photo is not null)
        {
            await page.GetByLabel("Choose a photo").SetInputFilesAsync(photo);
            await Expect(page.Locator(".photo-chosen")).ToBeVisibleAsync();
        }
        await page.Button("Write it down").ClickAsync();
        await Expect(Entries(page).Filter(new LocatorFilterOptions { HasText = tried })).ToHaveCountAsync(1);
        await Expect(page.GetByLabel("What you tried, in a line")).ToHaveValueAsync("");
    }

    private static FilePayload Photo(string name, byte[] bytes) => new() { Name = name, MimeType = "image/jpeg", Buffer = bytes };

    private static Task<int> DrawnWidth(ILocator image) => image.EvaluateAsync<int>("i => i.decode().then(() => i.naturalWidth)");

    [Fact]
    public async Task A_trial_is_written_down_with_its_photo_and_gone_back_to_and_its_reason_is_changed_later()
    {
        const string tried = "tubes <script>alert(1)</script> closer";
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/trials");
        await TryAsync(page, tried, Photo("../../<img src=x onerror=alert(1)>.jpg", Png));
        await Expect(Entries(page).Locator("h3")).ToHaveTextAsync(tried);
        Assert.Equal(2, await DrawnWidth(Entries(page).Locator("img")));
        await page.GetByLabel("Dropped because").FillAsync("too stiff");
        await page.Keyboard.PressAsync("Enter");
        await Expect(Entries(page)).ToContainTextAsync("Kept.");
        await visit.OpenAsync(piece);
        await page.TakeOffAsync(3, Strung - 1);
        await visit.OpenAsync(piece + "/trials");
        await Expect(page.GetByLabel("Dropped because")).ToHaveValueAsync("too stiff");
        await page.GetByLabel("Dropped because").FillAsync("");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Keep the reason" }).ClickAsync();
        await Expect(Entries(page)).ToContainTextAsync("Kept.");
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Go back to this" }).ClickAsync();
        await Expect(page.Locator(".tape dd").First).ToHaveTextAsync($"{Strung}");
    }

    [Fact]
    public async Task A_photo_lies_beside_the_rows_until_it_is_put_away_and_is_there_after_the_page_was_loaded_anew()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await Expect(page.GetByLabel("Photo beside the rows")).ToHaveCountAsync(0);
        await visit.OpenAsync(piece + "/trials");
        await TryAsync(page, "without a photo", null);
        await TryAsync(page, "on the mat", Photo("mat.jpg", Png));
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Lay the photo beside the rows" }).ClickAsync();
        var photo = page.GetByRole(AriaRole.Img, new PageGetByRoleOptions { Name = "Photo: on the mat" });
        await Expect(photo).ToBeVisibleAsync();
        Assert.Equal(2, await DrawnWidth(photo));
        var (rows, beside) = ((await page.Locator(".rows-sheet").BoundingBoxAsync())!, (await photo.BoundingBoxAsync())!);
        Assert.True(beside.X >= rows.X + rows.Width, "The photo does not lie beside the rows.");
        // The bench goes on as ever beside it.
        await page.TakeOffAsync(3, Strung - 1);
        await Expect(photo).ToBeVisibleAsync();
        await page.ReloadAsync();
        await page.Locator("html[data-live]").WaitForAsync();
        await Expect(photo).ToBeVisibleAsync();
        await page.Button("Put the photo away").ClickAsync();
        await Expect(photo).ToHaveCountAsync(0);
        await page.Locator(".rows-beads [role=option]").Nth(5).ClickAsync();
        await page.GetByLabel("Photo beside the rows").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await Expect(photo).ToBeVisibleAsync();
        // What was selected stays so.
        await Expect(page.Locator(".rows-beads [role=option]").Nth(5)).ToHaveAttributeAsync("aria-selected", "true");
    }

    [Theory]
    [InlineData("photo.png", "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>", "JPEG, PNG, WebP")]
    [InlineData("photo.jpg", "<!doctype html><script>alert(1)</script>", "JPEG, PNG, WebP")]
    [InlineData("photo.webp", "", "JPEG, PNG, WebP")]
    public async Task What_is_no_photo_is_refused_in_one_message_and_the_line_stays(string name, string contents, string told)
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/trials");
        await page.GetByLabel("What you tried, in a line").FillAsync("a line");
        await page.GetByLabel("Choose a photo").SetInputFilesAsync(Photo(name, Encoding.UTF8.GetBytes(contents)));
        await Expect(page.Locator(".trial-form .trouble li")).ToContainTextAsync(told);
        await Expect(page.GetByLabel("What you tried, in a line")).ToHaveValueAsync("a line");
        await Expect(page.Locator(".photo-chosen")).ToHaveCountAsync(0);
        // Without it the line can be kept.
        await page.Button("Write it down").ClickAsync();
        await Expect(Entries(page)).ToHaveCountAsync(1);
    }

    // Someone who goes by keys alone has chosen a file and is put back into its field by the browser; from there it goes on.
    [Fact]
    public async Task The_field_in_which_a_photo_was_chosen_keeps_the_focus_and_gets_it_when_the_photo_is_left_out()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Examples.Boardwalk) + "/trials");
        var field = page.GetByLabel("Choose a photo");
        await field.FocusAsync();
        await field.SetInputFilesAsync(Photo("mat.jpg", Png));
        await Expect(page.Locator(".photo-chosen")).ToContainTextAsync("mat.jpg");
        await Expect(field).ToBeFocusedAsync();
        // Another in its place, and one that is none.
        await field.SetInputFilesAsync(Photo("again.jpg", Png));
        await Expect(page.Locator(".photo-chosen")).ToContainTextAsync("again.jpg");
        await Expect(field).ToBeFocusedAsync();
        await field.SetInputFilesAsync(Photo("none.jpg", "Dear customer"u8.ToArray()));
        await Expect(page.Locator(".trial-form .trouble li")).ToContainTextAsync("JPEG, PNG, WebP");
        await Expect(page.Locator(".photo-chosen")).ToHaveCountAsync(0);
        await Expect(field).ToBeFocusedAsync();
        await field.SetInputFilesAsync(Photo("mat.jpg", Png));
        await Expect(page.Locator(".photo-chosen")).ToBeVisibleAsync();
        await Expect(page.Locator(".trial-form .trouble li")).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".photo-chosen")).ToHaveCountAsync(0);
        await Expect(field).ToBeFocusedAsync();
        // It names no photo that is not there.
        await Expect(field).ToHaveValueAsync("");
    }

    [Fact]
    public async Task A_photo_over_the_limit_is_told_by_its_limit_before_it_is_read()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/trials");
        // Chosen where it lies: handed to the browser byte by byte it takes most of a minute.
        using var folder = new OwnShelf();
        var large = Path.Combine(folder.Folder, "large.png");
        await using (var file = File.Create(large))
        {
            await file.WriteAsync(Png);
            file.SetLength(PhotoSize.MostBytes + 1);
        }
        await page.GetByLabel("Choose a photo").SetInputFilesAsync(large);
        await Expect(page.Locator(".trial-form .trouble li")).ToContainTextAsync("16 MB");
    }

    [Fact]
    public async Task An_entry_is_taken_out_only_when_that_was_meant()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/trials");
        await TryAsync(page, "by mistake", Photo("mat.jpg", Png));
        var photo = new Uri(bench.Address, await Entries(page).Locator("a.trial-photo").GetAttributeAsync("href"));
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Take out of the log" }).ClickAsync();
        await page.Button("Leave it in").ClickAsync();
        await Expect(Entries(page)).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Take out of the log" }).ClickAsync();
        await page.Button("Take it out").ClickAsync();
        await Expect(Entries(page)).ToHaveCountAsync(0);
        using var client = new HttpClient();
        using var answer = await client.GetAsync(photo);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task A_photo_is_sent_as_what_it_is_whatever_it_was_called()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/trials");
        await TryAsync(page, "called a page", new FilePayload { Name = "page.html", MimeType = "text/html", Buffer = Png });
        using var client = new HttpClient();
        using var answer = await client.GetAsync(new Uri(bench.Address, await Entries(page).Locator("a.trial-photo").GetAttributeAsync("href")));
        Assert.Equal("image/png", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal(Png, await answer.Content.ReadAsByteArrayAsync());
    }
}
