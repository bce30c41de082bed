using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What is told to buyers: copied by keyboard, and asked about with a wrist.</summary>
[Collection(InBrowser.Name)]
public sealed class SellingTests(BenchInBrowser bench)
{
    private static ILocator Button(IPage page, string name) => page.Locator("button", new PageLocatorOptions { HasText = name });

    [Fact]
    public async Task A_text_is_copied_by_keyboard_as_it_stands_and_saved_the_same()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        await page.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        await visit.OpenAsync("/selling");
        await page.GetByLabel("Piece").SelectOptionAsync(new SelectOptionValue { Label = "Boardwalk" });
        var text = page.Locator(".copy-text").Nth(2);
        await Expect(text).ToContainTextAsync("135 × Sea-green round");
        await Button(page, "Copy: The text").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByText("Copied.", new PageGetByTextOptions { Exact = true })).ToBeVisibleAsync();
        var copied = await page.EvaluateAsync<string>("navigator.clipboard.readText()");
        Assert.Equal(await text.TextContentAsync(), copied);
        var file = await page.APIRequest.GetAsync(new Uri(new Uri(page.Url), await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Save as a text file" }).GetAttributeAsync("href")).AbsoluteUri);
        Assert.Equal(copied + "\n", await file.TextAsync());
    }

    [Fact]
    public async Task Where_the_browser_has_no_clipboard_for_pages_it_is_copied_all_the_same_or_said_that_it_was_not()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await page.AddInitScriptAsync("Object.defineProperty(navigator, 'clipboard', { value: undefined }); document.execCommand = () => window.lets ?? false;");
        await visit.OpenAsync("/selling");
        await Expect(page.Locator(".copy-text").First).ToContainTextAsync("memory-wire bracelet");
        await Button(page, "Copy: Title").ClickAsync();
        await Expect(page.Locator(".selling .wrong")).ToContainTextAsync("did not let it be copied");
        await page.EvaluateAsync("window.lets = true");
        await Button(page, "Copy: Title").ClickAsync();
        await Expect(page.GetByText("Copied.", new PageGetByTextOptions { Exact = true })).ToBeVisibleAsync();
        await Expect(Button(page, "Copy: Title")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task A_wrist_is_typed_as_the_buyer_tells_it_and_answered()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var page = visit.Page;
        await visit.OpenAsync("/selling");
        await page.GetByLabel("Piece").SelectOptionAsync(new SelectOptionValue { Label = "Tidewrack" });
        var wrist = page.GetByLabel("Her wrist");
        await wrist.FillAsync("6 1/2 in");
        await wrist.PressAsync("Enter");
        await Expect(page.Locator(".fit-says")).ToContainTextAsync("165.1 mm (6 1/2 in): Yes, it fits");
        await wrist.FillAsync("13 cm");
        await wrist.PressAsync("Enter");
        await Expect(page.Locator(".fit-says")).ToContainTextAsync("hang loose");
        await wrist.FillAsync("a little");
        await wrist.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Alert)).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);
    }
}
