using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>Writing the pattern of a piece. With a bench of its own, as the pieces change.</summary>
public sealed class PatternPageTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static ILocator Step(IPage page, int step) => page.Locator($".pattern-step[data-step='{step}']");

    private static ILocator In(ILocator part, string button) => part.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = button });

    private static async Task WriteAsync(ILocator box, string text)
    {
        await box.FillAsync(text);
        await box.PressAsync("Tab");
    }

    [Fact]
    public async Task Her_own_words_stand_for_a_step_are_read_against_the_piece_and_are_taken_back()
    {
        const string wrong = "Now 99 A, <b>slowly</b>. Nickel-free!";
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await page.GetByRole(AriaRole.Link, new PageGetByRoleOptions { Name = "Write the pattern" }).ClickAsync();
        await Expect(page.Locator(".pattern-found [role=status]")).ToHaveTextAsync("Nothing of your own to read yet.");
        var said = await Step(page, 3).Locator(".pattern-says").InnerTextAsync();
        await In(Step(page, 3), "Say it in your own words").ClickAsync();
        // What the language says is where she begins from.
        await Expect(Step(page, 3).Locator("textarea")).ToHaveValueAsync(said);
        await WriteAsync(Step(page, 3).Locator("textarea"), wrong);
        await Expect(Step(page, 3).Locator("mark").First).ToContainTextAsync("99");
        await Expect(Step(page, 3).Locator(".proof li").Filter(new LocatorFilterOptions { HasText = "laboratory" })).ToHaveCountAsync(1);
        await Expect(page.Locator(".pattern-found [role=status]")).ToContainTextAsync("not agree with the piece");
        await Expect(page.Locator(".proof b")).ToHaveCountAsync(0);
        await Barriers.NoneAsync(page);

        await visit.OpenAsync(piece + "/string");
        await page.Keyboard.PressAsync("PageDown");
        await Expect(page.Locator(".stringing")).ToHaveAttributeAsync("data-step", "2");
        await page.Keyboard.PressAsync("PageDown");
        await Expect(page.Locator(".stringing-do")).ToHaveTextAsync(wrong);

        await visit.OpenAsync(piece + "/pattern");
        await Expect(Step(page, 3).Locator("textarea")).ToHaveValueAsync(wrong);
        await WriteAsync(Step(page, 3).Locator("textarea"), said + " Slowly.");
        await Expect(page.Locator(".proof")).ToHaveCountAsync(0);
        await Expect(page.Locator(".pattern-found [role=status]")).ToHaveTextAsync("Nothing that you wrote contradicts the piece.");
        await In(Step(page, 3), "Take your words away").ClickAsync();
        await Expect(Step(page, 3).Locator(".pattern-says")).ToHaveTextAsync(said);
        await page.Button("Take back").ClickAsync();
        await Expect(Step(page, 3).Locator("textarea")).ToHaveValueAsync(said + " Slowly.");
    }

    [Fact]
    public async Task What_stands_about_the_piece_is_kept_and_read_in_german_too()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone, language: "de");
        var page = visit.Page;
        await visit.OpenAsync("/");
        await visit.OpenAsync((await page.Locator(".piece-pages a[href$='/pattern']").GetAttributeAsync("href"))!);
        await WriteAsync(page.GetByLabel("Ein paar Worte am Anfang"), "Das Armband wiegt 999 g.");
        await Expect(page.Locator(".proof mark")).ToContainTextAsync("999");
        await WriteAsync(page.GetByLabel("Techniken, je eine auf einer Zeile"), "Draht schneiden\n\n Schlaufen biegen ");
        await WriteAsync(page.GetByLabel("Dauer in Minuten"), "90");
        await page.GetByLabel("Schwierigkeit").SelectOptionAsync(new SelectOptionValue { Label = "für geübte Hände" });
        await page.ReloadAsync();
        await page.Locator("html[data-live]").WaitForAsync();
        await Expect(page.GetByLabel("Techniken, je eine auf einer Zeile")).ToHaveValueAsync("Draht schneiden\nSchlaufen biegen");
        await Expect(page.GetByLabel("Dauer in Minuten")).ToHaveValueAsync("90");
        await Expect(page.GetByLabel("Schwierigkeit")).ToHaveValueAsync("Advanced");
        await Expect(page.Locator(".proof mark")).ToContainTextAsync("999");
        await WriteAsync(page.GetByLabel("Ein paar Worte am Anfang"), "");
        await Expect(page.Locator(".proof")).ToHaveCountAsync(0);
        await Barriers.NoneAsync(page);
    }

    [Fact]
    public async Task Testers_notes_are_tied_to_a_step_settled_and_taken_out()
    {
        await using var visit = await bench.VisitAsync(Screen.Tablet);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.Boardwalk);
        await visit.OpenAsync(piece + "/pattern");
        await page.GetByLabel("What was noted").FillAsync("the letter is hard to see");
        await page.GetByLabel("It is about").SelectOptionAsync(new SelectOptionValue { Label = "Step 3" });
        await page.GetByLabel("Who tried it").FillAsync("a friend");
        await page.GetByLabel("Version that was tried").FillAsync("2");
        await page.Button("Write it down").ClickAsync();
        var note = page.Locator(".tester-notes li");
        await Expect(note).ToContainTextAsync("Step 3");
        await Expect(note).ToContainTextAsync("a friend, version 2");
        await Expect(page.GetByLabel("What was noted")).ToHaveValueAsync("");
        await note.GetByRole(AriaRole.Checkbox).CheckAsync();
        await Expect(note).ToHaveClassAsync("is-settled");
        await page.ReloadAsync();
        await page.Locator("html[data-live]").WaitForAsync();
        await Expect(note.GetByRole(AriaRole.Checkbox)).ToBeCheckedAsync();
        await In(note, "Take it out").ClickAsync();
        await Expect(note).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Words_whose_step_is_gone_are_listed_and_put_to_another_step()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        var piece = Examples.Boardwalk;
        var gone = new Core.Pieces.StepText(new("nowhere.1", "7 nothing", "", ""), "Mind the knot.");
        var address = await visit.BringAsync(piece with { Pattern = piece.Pattern with { Words = [gone] } });
        await visit.OpenAsync(address + "/pattern");
        await Expect(page.Locator(".homeless")).ToContainTextAsync("Mind the knot.");
        await page.Locator(".homeless select").SelectOptionAsync(new SelectOptionValue { Value = "try-on" });
        await In(page.Locator(".homeless"), "Put them there").ClickAsync();
        await Expect(page.Locator(".homeless")).ToHaveCountAsync(0);
        await Expect(page.Locator(".pattern-step").Last.Locator("textarea")).ToHaveValueAsync("Mind the knot.");
        await page.Button("Take back").ClickAsync();
        await In(page.Locator(".homeless"), "Throw them away").ClickAsync();
        await Expect(page.Locator(".homeless")).ToHaveCountAsync(0);
        await Expect(page.Locator(".pattern-step textarea")).ToHaveCountAsync(0);
    }
}
