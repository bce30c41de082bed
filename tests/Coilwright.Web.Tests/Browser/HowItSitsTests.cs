using Coilwright.Web.Tests.Components;
using Coilwright.Wording;
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

    private static ILocator Arm(IPage page) => page.Locator("details.arm");

    private static async Task TypeAsync(IPage page, string label, string text)
    {
        var box = page.GetByLabel(label, new() { Exact = true });
        await box.FillAsync(text);
        await box.PressAsync("Tab");
    }

    // What an arm is taken as stands in the open; what she tells of it, the answers follow, and they say so.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task The_arm_is_taken_as_she_tells_and_the_answers_follow(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, phone ? Light.Evening : Light.Day);
        var page = visit.Page;
        var path = await visit.BringAsync(Examples.PuddleHop with { Title = "On another arm" });
        await visit.OpenAsync(path);
        var sits = page.Locator(".sits");
        await Expect(Arm(page).Locator("summary")).ToContainTextAsync("The arm level, top of the wrist up; the wrist 75 % as thick as wide, as large all along.");
        await Expect(page.GetByLabel("How it is held")).ToBeHiddenAsync();
        await page.Button("See how it sits").ClickAsync();
        await Expect(sits.GetByText("of its beads touch the wrist")).ToBeVisibleAsync(Patient);
        await Expect(sits.GetByText("Worked out with")).ToHaveCountAsync(0);

        // By keys alone: the summary opens it, the choice is the next stop.
        await Arm(page).Locator("summary").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.GetByLabel("How it is held")).ToBeFocusedAsync();
        await page.GetByLabel("How it is held").SelectOptionAsync("hanging");
        await Expect(sits.GetByText("Worked out with the arm upright, the finishing end down.")).ToBeVisibleAsync(Patient);

        // Of the two the first alone changes nothing.
        await TypeAsync(page, "Width of the wrist", "60");
        await Expect(Arm(page).Locator("summary")).ToContainTextAsync("75 % as thick as wide");
        await TypeAsync(page, "Thickness of the wrist", "48");
        await Expect(sits.GetByText("The wrist is taken 80 % as thick as wide.")).ToBeVisibleAsync(Patient);
        var wrist = Examples.PuddleHop.Wearer.WristMm;
        await TypeAsync(page, "Girth 50 mm up the arm", (wrist + 5).ToString(System.Globalization.CultureInfo.InvariantCulture));
        await Expect(sits.GetByText("and 5 mm more round it 50 mm up the arm.")).ToBeVisibleAsync(Patient);
        await Expect(page.GetByText("is another since this was worked out")).ToHaveCountAsync(0);
        await Barriers.NoneAsync(page);

        // It was told, so it is there when she comes again, and what was found with it.
        await visit.OpenAsync(path);
        await Expect(Arm(page).Locator("summary")).ToContainTextAsync("The arm upright, the finishing end down; the wrist 80 % as thick as wide, 5 mm more round it 50 mm up the arm.");
        await Expect(sits.GetByText("and 5 mm more round it 50 mm up the arm.")).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData("en", "Width of the wrist", "Thickness of the wrist", "Girth 50 mm up the arm", "For this width, from 18 mm", "On this wrist, from", "First put right what is marked under The arm.")]
    [InlineData("de", "Breite des Handgelenks", "Dicke des Handgelenks", "Umfang 50 mm den Arm hinauf", "Bei dieser Breite von 18 mm", "Bei diesem Handgelenk von", "Zuerst berichtigen, was unter Der Arm markiert ist.")]
    public async Task What_does_not_go_together_is_said_at_its_box_and_nothing_is_lost(string language, string width, string thickness, string girth, string thick, string round, string first)
    {
        await using var visit = await bench.VisitAsync(language == "de" ? Screen.Phone : Screen.Desktop);
        var page = visit.Page;
        var path = await visit.BringAsync(Examples.PuddleHop with { Title = "On an arm that cannot be, " + language });
        await visit.KeepAsync(Light.Day, Languages.Find(language)!);
        await visit.OpenAsync(path);
        var sits = page.Locator(".sits");
        var wrong = Arm(page).GetByRole(AriaRole.Alert);
        await Arm(page).Locator("summary").ClickAsync();

        // What is no length is said at its box, and stays there as it was typed.
        await TypeAsync(page, width, "wide");
        await Expect(wrong).ToHaveCountAsync(1);
        await Expect(page.GetByLabel(width, new() { Exact = true })).ToHaveValueAsync("wide");

        // Two lengths that do not go together are both kept; one message, at the box that is asked to change.
        await TypeAsync(page, width, "60");
        await TypeAsync(page, thickness, "70");
        await Expect(wrong).ToHaveCountAsync(1);
        await Expect(wrong).ToContainTextAsync(thick);
        await Expect(page.GetByLabel(thickness, new() { Exact = true })).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(Arm(page).Locator("summary")).ToContainTextAsync(first);
        await sits.Locator(".buttons button").ClickAsync();
        await Expect(sits.GetByRole(AriaRole.Status).GetByText(first)).ToBeVisibleAsync();
        await Expect(page.GetByLabel(width, new() { Exact = true })).ToHaveValueAsync("60 mm");
        await Expect(page.GetByLabel(thickness, new() { Exact = true })).ToHaveValueAsync("70 mm");
        await Barriers.NoneAsync(page);

        await TypeAsync(page, thickness, "45");
        await Expect(wrong).ToHaveCountAsync(0);
        await Expect(sits.GetByRole(AriaRole.Status).GetByText(first)).ToHaveCountAsync(0);
        await TypeAsync(page, girth, "300");
        await Expect(wrong).ToContainTextAsync(round);
        await TypeAsync(page, girth, "");
        await Expect(wrong).ToHaveCountAsync(0);
        await Expect(Arm(page).Locator("summary")).ToContainTextAsync("75 %");
    }
}
