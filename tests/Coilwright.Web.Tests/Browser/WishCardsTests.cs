using System.Text.Json;
using System.Text.Json.Nodes;
using Coilwright.Core.Pieces;
using Coilwright.Web.Tests.Components;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Coilwright.Web.Tests.Browser;

/// <summary>What may change and what must hold is set by hand; the piece file then says it, and it can be taken back.</summary>
public sealed class WishCardsTests(BenchInBrowser bench) : IClassFixture<BenchInBrowser>
{
    private static readonly HttpClient Client = new();

    // Beads of Tidewrack by their names on the page.
    private const string Disc = "Ebony disc", Dot = "Silver round 3 mm", Tube = "Curved silver tube", Chip = "Jasper chip", Pebble = "Frosted pebble";

    public static TheoryData<bool> Screens => [true, false];

    [Theory, MemberData(nameof(Screens))]
    public async Task What_may_change_is_set_by_hand_and_stands_in_the_piece_file(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop);
        var hand = await Hand.AtAsync(visit, Examples.Tidewrack with
        {
            Wishes = Wishes.None,
            Wearer = Examples.Tidewrack.Wearer with { FocalOnTop = false },
        });

        await hand.OpenAsync("Spacers and connectors in a run");
        await hand.ChooseAsync("Bead", Tube);
        await hand.TypeAsync("At least", "1");
        await hand.TypeAsync("At most", "3");
        await hand.AddAsync();
        await hand.SaysAsync("free.runs", """[{"bead":"tube","least":1,"most":3}]""");

        await hand.OpenAsync("The length");
        await hand.TypeAsync("May change by", "12 mm");
        await hand.SaysAsync("free.lengthWithinMm", "12");

        await hand.OpenAsync("Turns");
        await hand.TypeAsync("At least", "3");
        await hand.TypeAsync("At most", "4.5");
        await hand.AddAsync();
        await hand.SaysAsync("free.turns", """{"least":3,"most":4.5}""");

        await hand.OpenAsync("Where the wire starts");
        await hand.TypeAsync("From, degrees", "160");
        await hand.TypeAsync("To, degrees", "-160");
        await hand.AddAsync();
        await hand.SaysAsync("free.startAngle", """{"fromDeg":160,"toDeg":-160,"stepDeg":5}""");

        await hand.OpenAsync("Groups");
        await hand.TickAsync("Groups may change places, each whole");
        await hand.SaysAsync("free.groupOrder", "true");
        await hand.TickAsync("Mirrored halves keep equal counts");
        await hand.SaysAsync("free.mirroredHalves", "true");

        await hand.OpenAsync("Beads that may stand in");
        await hand.ChooseAsync("In place of", Chip);
        await hand.ChooseAsync("may come", Pebble);
        await hand.TickAsync("everywhere or nowhere");
        await hand.AddAsync();
        await hand.SaysAsync("free.standIns", """[{"bead":"shard","with":"pebble","everywhere":true}]""");

        await hand.OpenAsync("Other coils");
        await hand.TypeAsync("Diameter", "60 mm");
        await hand.AddAsync();
        await hand.SaysAsync("free.coils", """[{"insideMm":60}]""");

        await Barriers.NoneAsync(visit.Page);
        // Each was a step: one after the other is taken back.
        for (var steps = 8; steps > 0; steps--) await hand.TakeBackAsync();
        await Expect(visit.Page.Button("Take back")).ToBeDisabledAsync();
        await hand.SaysAsync("free", null);
    }

    [Theory, MemberData(nameof(Screens))]
    public async Task What_must_hold_is_set_by_hand_and_stands_in_the_piece_file(bool phone)
    {
        await using var visit = await bench.VisitAsync(phone ? Screen.Phone : Screen.Desktop);
        var hand = await Hand.AtAsync(visit, Examples.Tidewrack with { Wishes = Wishes.None });

        await hand.OpenAsync("Like over like");
        await hand.PickAsync("mixed");
        await hand.SaysAsync("liningUp", "\"mix\"");

        await hand.OpenAsync("Like over like, by group");
        await hand.ChooseAsync("Group", "tuft");
        await hand.PickAsync("in columns");
        await hand.AddAsync();
        await hand.SaysAsync("groups", """{"tuft":"columns"}""");

        await hand.OpenAsync("Like over like, at a place");
        await hand.TypeAsync("From, degrees", "-30");
        await hand.TypeAsync("To, degrees", "30");
        await hand.PickAsync("no wish");
        await hand.AddAsync();
        await hand.SaysAsync("places", """[{"fromDeg":-30,"toDeg":30,"liningUp":"any"}]""");

        await hand.OpenAsync("Rules of the order");
        await hand.ChooseAsync("Which", Disc);
        await hand.TypeAsync("At most", "2");
        await hand.AddAsync();
        await hand.SaysAsync("longestRun", """[{"name":"disc","most":2}]""");
        await hand.ChooseAsync("Rule", "at most so many close together");
        await hand.TickAsync(Dot);
        await hand.TickAsync(Tube);
        await hand.TypeAsync("Among how many neighbours", "4");
        await hand.TypeAsync("At most", "3");
        await hand.AddAsync();
        await hand.SaysAsync("inAnyRow", """[{"names":["dot","tube"],"upTo":3,"ofAny":4}]""");
        await hand.ChooseAsync("Rule", "never beside each other");
        await hand.PickAsync("groups");
        await hand.ChooseAsync("Which", "tuft");
        await hand.ChooseAsync("Beside it", "star");
        await hand.AddAsync();
        await hand.SaysAsync("apart", """[{"name":"tuft","beside":"star"}]""");
        await hand.ChooseAsync("Rule", "always with another beside it");
        await hand.ChooseAsync("Which", "star");
        await hand.ChooseAsync("Beside it", "wrack");
        await hand.AddAsync();
        await hand.SaysAsync("together", """[{"name":"star","beside":"wrack"}]""");
        foreach (var (rule, field) in ((string, string)[])[("at the start", "startsWith"), ("at the finish", "endsWith")])
        {
            await hand.ChooseAsync("Rule", rule);
            await hand.ChooseAsync("Which", "wrack");
            await hand.AddAsync();
            await hand.SaysAsync(field, "\"wrack\"");
        }

        await hand.OpenAsync("The focal on top");
        await hand.TypeAsync("Within, degrees", "12");
        await hand.SaysAsync("focalWithinDeg", "12");

        await hand.OpenAsync("Beads you have");
        await hand.ChooseAsync("Bead", Dot);
        await hand.TypeAsync("How many", "40");
        await hand.AddAsync();
        await hand.SaysAsync("free.onHand", """[{"bead":"dot","beads":40}]""");

        await hand.OpenAsync("Wrists it must be good on");
        await hand.TypeAsync("Round the wrist", "165 mm");
        await hand.TypeAsync("Counts", "2");
        await hand.AddAsync();
        await hand.SaysAsync("wrists", """[{"wristMm":165,"weight":2}]""");

        await hand.OpenAsync("How sure it must be");
        await hand.PickAsync("good in 19 of 20");
        await hand.SaysAsync("judgedBy", "\"nineteenInTwenty\"");

        await Barriers.NoneAsync(visit.Page);
        // What is said can be taken out by itself, and taking out is a step too.
        await hand.OpenAsync("Beads you have");
        await hand.Part.GetByRole(AriaRole.Button, new LocatorGetByRoleOptions { Name = "Take out" }).ClickAsync();
        await hand.SaysAsync("free", null);
        await hand.TakeBackAsync();
        await hand.SaysAsync("free.onHand", """[{"bead":"dot","beads":40}]""");
    }

    [Fact]
    public async Task What_cannot_be_is_told_and_nothing_is_lost()
    {
        await using var visit = await bench.VisitAsync(Screen.Phone);
        var hand = await Hand.AtAsync(visit, Examples.Tidewrack with { Wishes = Wishes.None });
        await hand.OpenAsync("Spacers and connectors in a run");
        await hand.TypeAsync("At least", "4");
        await hand.TypeAsync("At most", "2");
        await hand.AddAsync();
        await Expect(visit.Page.Locator(".wish-cards .trouble")).ToContainTextAsync("That could not be kept.");
        await Expect(hand.Part.GetByLabel("At least", new LocatorGetByLabelOptions { Exact = true })).ToHaveValueAsync("4");
        await hand.SaysAsync("free", null);
        await hand.TypeAsync("At most", "5");
        await hand.AddAsync();
        await hand.SaysAsync("free.runs", """[{"bead":"disc","least":4,"most":5}]""");
        await Expect(visit.Page.Locator(".wish-cards .trouble")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task By_keys_alone_a_rule_is_set_and_ideas_keep_it()
    {
        await using var visit = await bench.VisitAsync(Screen.Desktop);
        var page = visit.Page;
        // Three wrists, so that looking takes little.
        var hand = await Hand.AtAsync(visit, Examples.Tidewrack with
        {
            Wishes = Wishes.None with { LiningUp = LiningUpWish.Mix, Wrists = [new(155, 1), new(165, 1), new(175, 1)] },
        });
        await page.Locator(".wish-part summary", new PageLocatorOptions { HasText = "Rules of the order" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Tab");
        // The last rule of the list, "at the finish".
        await page.Keyboard.PressAsync("End");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("Tab");
        // Groups to choose from come with the answer to the key before; a letter typed finds its word, as in any list.
        await Expect(page.Locator("select:focus option", new PageLocatorOptions { HasText = "star" })).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("s");
        await Expect(page.Locator("select:focus option:checked")).ToHaveTextAsync("star");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        // The star is in the middle, and runs alone may change.
        await hand.SaysAsync("endsWith", "\"star\"");
        await page.Locator(".ideas > .buttons button").First.ClickAsync();
        await Expect(page.GetByText("No order is allowed.")).ToBeVisibleAsync(new LocatorAssertionsToBeVisibleOptions { Timeout = 240_000 });
        await Expect(page.GetByText("star at the finish").First).ToBeVisibleAsync();
    }

    // Her hand on the cards of the ideas page. A part is opened, and what is done next is done in it.
    private sealed class Hand(IPage page, Uri file)
    {
        public ILocator Part { get; private set; } = page.Locator("body");

        public static async Task<Hand> AtAsync(Visit visit, Piece piece)
        {
            var address = await visit.BringAsync(piece);
            await visit.OpenAsync(address + "/ideas");
            return new Hand(visit.Page, new Uri(new Uri(visit.Page.Url), address + "/file"));
        }

        public async Task OpenAsync(string part)
        {
            Part = page.Locator("details.wish-part").Filter(new LocatorFilterOptions { Has = page.Locator($".wish-head:text-is('{part}')") });
            if (await Part.GetAttributeAsync("open") is null) await Part.Locator("summary").ClickAsync();
        }

        public async Task ChooseAsync(string label, string what) =>
            await Part.GetByRole(AriaRole.Combobox, new LocatorGetByRoleOptions { Name = label, Exact = true }).SelectOptionAsync(new SelectOptionValue { Label = what });

        public async Task TypeAsync(string label, string text)
        {
            var box = Part.GetByLabel(label, new LocatorGetByLabelOptions { Exact = true });
            await box.FillAsync(text);
            await box.BlurAsync();
        }

        // The input of a pill lies over its words, as large as they are.
        public Task PickAsync(string what) => Part.GetByRole(AriaRole.Radio, new LocatorGetByRoleOptions { Name = what, Exact = true }).ClickAsync();

        public Task TickAsync(string what) => Part.GetByLabel(what, new LocatorGetByLabelOptions { Exact = true }).ClickAsync();

        public Task AddAsync() => Part.Locator(".fields > button").ClickAsync();

        public async Task TakeBackAsync()
        {
            var before = await Client.GetStringAsync(file);
            await page.Button("Take back").ClickAsync();
            await UntilAsync(text => text != before, "nothing was taken back");
        }

        // Until the piece file says so: a field of the wishes, or that it is not there.
        public Task SaysAsync(string field, string? json) => UntilAsync(text =>
        {
            JsonNode? at = JsonNode.Parse(text)!["wishes"];
            foreach (var name in field.Split('.')) at = at?[name];
            return json is null ? at is null : at is not null && at.ToJsonString(Plain) == JsonNode.Parse(json)!.ToJsonString(Plain);
        }, $"{field} is not {json}");

        private async Task UntilAsync(Func<string, bool> holds, string what)
        {
            var text = "";
            for (var times = 0; times < 200; times++)
            {
                text = await Client.GetStringAsync(file);
                if (holds(text)) return;
                await Task.Delay(50, TestContext.Current.CancellationToken);
            }
            Assert.Fail($"{what}: {text[text.IndexOf("\"order\"", StringComparison.Ordinal)..]}");
        }

        private static readonly JsonSerializerOptions Plain = new();
    }
}
