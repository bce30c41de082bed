using Coilwright.Core.Pieces;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>The piece in space as it settles on the wrist, worked out when she asks for it.</summary>
public sealed class CoilAsItSitsTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    // A spring let down onto a wrist takes its time on a loaded machine.
    private static readonly LocatorAssertionsToHaveAttributeOptions Patient = new() { Timeout = 120_000 };

    private static Task ShownAsync(IPage page, string pose) => Expect(page.Locator(".coil-view")).ToHaveAttributeAsync("data-shown", pose, Patient);

    private static Task<double[]> SeenAsync(IPage page, int bead) => page.EvaluateAsync<double[]>("bead => document.querySelector('.coil-view').coil.seen(bead)", bead);

    private static ILocator Choice(IPage page, string name) => page.GetByRole(AriaRole.Radio, new() { Name = name });

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task It_is_shown_as_it_sits_when_she_chooses_that_and_as_reckoned_again(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop, phone ? Light.Evening : Light.Day, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Examples.PuddleHop) + "/coil");
        await ShownAsync(page, "worn");
        var quick = await SeenAsync(page, 10);
        var model = page.GetByRole(AriaRole.Link, new() { Name = "Save it as it sits" });
        await Expect(model).ToHaveCountAsync(0);

        await Choice(page, "On the wrist, as it sits").CheckAsync();
        await ShownAsync(page, "sits");
        // Said aloud, and seen: an oval wrist is wider than a round one.
        await Expect(page.GetByRole(AriaRole.Status).Filter(new() { HasText = "You see it as it sits" })).ToBeVisibleAsync();
        var sits = await SeenAsync(page, 10);
        Assert.True(Math.Abs(sits[0] - quick[0]) + Math.Abs(sits[1] - quick[1]) > 2, $"{sits[0]}, {sits[1]} for {quick[0]}, {quick[1]}");
        await Expect(model).ToBeVisibleAsync();
        await Barriers.NoneAsync(page);

        await Choice(page, "On the wrist, as reckoned").CheckAsync();
        await ShownAsync(page, "worn");
        await Expect(page.GetByText("You see it as it sits")).ToHaveCountAsync(0);
        var again = await SeenAsync(page, 10);
        Assert.Equal(quick[0], again[0], 0.01);
        Assert.Equal(quick[1], again[1], 0.01);
    }

    // Its stones hold the wire off an oval wrist, so a turn takes more of it than by the formula and fewer beads: the list tells the turns of what is seen, as the model that is saved tells them.
    [Fact]
    public async Task The_list_counts_turns_and_places_as_it_is_shown()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Examples.Tidewrack with { Title = "Counted as it sits" }) + "/coil");
        await ShownAsync(page, "worn");
        var reckoned = await ListedAsync(page);
        var last = reckoned.Length;
        await page.Locator($"#coil-option-{last}").ClickAsync();
        await Expect(page.Locator(".coil-told")).ToHaveTextAsync(reckoned[^1]);

        await Choice(page, "On the wrist, as it sits").CheckAsync();
        await ShownAsync(page, "sits");
        await Expect(page.Locator(".coil-told")).Not.ToHaveTextAsync(reckoned[^1]);
        var sits = await ListedAsync(page);
        Assert.Equal(last, sits.Length);
        Assert.NotEqual(reckoned, sits);
        // What was selected still is, alone, and is told as it is now.
        await Expect(page.Locator(".coil-told")).ToHaveTextAsync(sits[^1]);
        await Expect(page.Locator(".coil-beads [aria-selected=true]")).ToHaveCountAsync(1);
        await Expect(page.Locator($"#coil-option-{last}")).ToHaveAttributeAsync("aria-selected", "true");
        var address = await page.GetByRole(AriaRole.Link, new() { Name = "Save it as it sits" }).GetAttributeAsync("href");
        var turns = TurnsIn(await (await page.Context.APIRequest.GetAsync(new Uri(bench.Address, address!).ToString())).BodyAsync());
        Assert.Equal(turns, sits.Select(s => Turn(s)));
        Assert.NotEqual(turns, reckoned.Select(s => Turn(s)));
        // Each stands under its own turn's number.
        Assert.Equal(turns.Distinct().Select(t => $"Turn {t}"), await page.Locator(".coil-turn").EvaluateAllAsync<string[]>("all => all.map(t => t.getAttribute('aria-label'))"));
        // Its focal is on top, and is said to be.
        Assert.Contains(sits, s => s.Contains("Drilled stone", StringComparison.Ordinal) && s.EndsWith(", on top", StringComparison.Ordinal));

        await Choice(page, "On the wrist, as reckoned").CheckAsync();
        await Expect(page.Locator(".coil-told")).ToHaveTextAsync(reckoned[^1]);
        Assert.Equal(reckoned, await ListedAsync(page));
        await Expect(page.Locator(".coil-beads [aria-selected=true]")).ToHaveCountAsync(1);
        await Barriers.NoneAsync(page);
    }

    private static Task<string[]> ListedAsync(IPage page) => page.Locator(".coil-bead").EvaluateAllAsync<string[]>("all => all.map(b => b.getAttribute('aria-label'))");

    // As "Bead 12: A, Amazonite nugget, turn 1, on top".
    private static int Turn(string said) => int.Parse(System.Text.RegularExpressions.Regex.Match(said, ", turn ([0-9]+), ").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);

    // The JSON of a binary glTF begins at byte 20, its length stands at byte 12 (Khronos, glTF 2.0, section 4.4).
    private static int[] TurnsIn(byte[] glb) =>
        [.. System.Text.Json.Nodes.JsonNode.Parse(glb.AsSpan(20, BitConverter.ToInt32(glb, 12)))!["nodes"]!.AsArray().Select(n => n!["extras"]).Where(e => e?["bead"] is not null).OrderBy(e => (int)e!["bead"]!).Select(e => (int)e!["turn"]!)];

    // A piece that was settled here stands settled on the bench when that is opened.
    [Fact]
    public async Task What_was_settled_here_is_known_on_the_bench()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.PuddleHop with { Title = "Settled once" });
        await visit.OpenAsync(piece + "/coil");
        await ShownAsync(page, "worn");
        await Choice(page, "On the wrist, as it sits").CheckAsync();
        await ShownAsync(page, "sits");
        await visit.OpenAsync(piece);
        await Expect(page.Locator(".sits").GetByText("of its beads touch the wrist")).ToBeVisibleAsync();
        await Expect(page.Button("See how it sits now")).ToBeVisibleAsync();
    }

    // The picture follows the arm while it is shown as it sits, and so does the model that can be kept.
    [Fact]
    public async Task It_sits_as_the_arm_is_held()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        var piece = await visit.BringAsync(Examples.PuddleHop with { Title = "Held another way" });
        await visit.OpenAsync(piece + "/coil");
        await ShownAsync(page, "worn");
        await page.Locator("details.arm summary").ClickAsync();
        // While it is shown as reckoned nothing is worked out.
        await page.GetByLabel("How it is held").SelectOptionAsync("underside-up");
        await Expect(page.Locator("details.arm summary")).ToContainTextAsync("underside up");
        await Expect(page.Button("Stop")).ToHaveCountAsync(0);

        await Choice(page, "On the wrist, as it sits").CheckAsync();
        await Expect(page.Locator(".coil-sits").GetByText("Worked out with the arm level, underside up.")).ToBeVisibleAsync(new() { Timeout = 120_000 });
        var under = await SeenAsync(page, 10);
        await page.GetByLabel("How it is held").SelectOptionAsync("hanging");
        await Expect(page.Locator(".coil-sits").GetByText("Worked out with the arm upright, the finishing end down.")).ToBeVisibleAsync(new() { Timeout = 120_000 });
        await ShownAsync(page, "sits");
        var hanging = await SeenAsync(page, 10);
        Assert.True(Math.Abs(under[0] - hanging[0]) + Math.Abs(under[1] - hanging[1]) > 0.5, $"{under[0]}, {under[1]} for {hanging[0]}, {hanging[1]}");

        var address = await page.GetByRole(AriaRole.Link, new() { Name = "Save it as it sits" }).GetAttributeAsync("href");
        Assert.Contains("arm=hanging&aspect=0.75&taper=0", address, StringComparison.Ordinal);
        var api = page.Context.APIRequest;
        var kept = await api.GetAsync(new Uri(bench.Address, address).ToString());
        Assert.True(kept.Ok, kept.StatusText);
        Assert.NotEqual(await kept.BodyAsync(), await (await api.GetAsync(new Uri(bench.Address, $"{piece}/coil/as-it-sits.glb").ToString())).BodyAsync());
        foreach (var wrong in (string[])["arm=hangng", "aspect=0.1", "taper=1", "aspect=NaN", "aspect=wide"])
            Assert.Equal(404, (await api.GetAsync(new Uri(bench.Address, $"{piece}/coil/as-it-sits.glb?{wrong}").ToString())).Status);
        await Barriers.NoneAsync(page);
    }

    [Fact]
    public async Task What_finds_no_rest_leaves_the_picture_and_says_why()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        var hop = Examples.PuddleHop;
        await visit.OpenAsync(await visit.BringAsync(hop with { Title = "Unknown steel", Wire = hop.Wire with { Steel = null } }) + "/coil");
        await ShownAsync(page, "worn");
        // Tapped, since by the time it is looked at the choice is back where it was.
        await Choice(page, "On the wrist, as it sits").ClickAsync();
        await Expect(page.Locator(".coil-sits").GetByText("steel is not known")).ToBeVisibleAsync();
        await Expect(page.Locator(".coil-sits").GetByText("What you see stays as it was.")).ToBeVisibleAsync();
        await Expect(Choice(page, "On the wrist, as reckoned")).ToBeCheckedAsync();
        await ShownAsync(page, "worn");
    }

    // A long piece, so that there is time to stop it: when it is stopped, one line is said and the picture is as it was.
    [Fact]
    public async Task It_can_be_stopped()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop, inSpace: true);
        var page = visit.Page;
        await visit.OpenAsync(await visit.BringAsync(Long("Stopped in the round")) + "/coil");
        await ShownAsync(page, "worn");
        await Choice(page, "On the wrist, as it sits").CheckAsync();
        await page.Button("Stop").ClickAsync();
        await Expect(page.Locator(".coil-sits").GetByText("Stopped. What you see stays as it was.")).ToBeVisibleAsync();
        await Expect(page.Button("Stop")).ToHaveCountAsync(0);
        await Expect(Choice(page, "On the wrist, as reckoned")).ToBeCheckedAsync();
        await ShownAsync(page, "worn");
    }

    // As many beads as are settled in minutes, not in moments.
    private static Piece Long(string title) => Examples.PuddleHop is var hop ? hop with
    {
        Title = title,
        Order = new([.. Enumerable.Repeat(hop.Order.Kinds, 30).SelectMany(k => k)], []),
        Written = null,
        MeasuredRows = [],
        Wishes = new(),
        Pattern = PatternNotes.None,
    } : null!;
}
