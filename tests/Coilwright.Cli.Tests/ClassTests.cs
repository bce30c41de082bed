using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Coilwright.Wording;

namespace Coilwright.Cli.Tests;

/// <summary><c>class</c>: a class on a piece.</summary>
public class ClassTests
{
    private static readonly AnswerSchema Schema = new("class");

    private static readonly string Costs = Path.Combine(TheProgram.Root, "examples", "studio.costs.json");

    private static readonly string Prices = Path.Combine(TheProgram.Root, "examples", "two-suppliers.prices.json");

    private static readonly string[] Whole =
    [
        "class", TheProgram.Example("boardwalk"), "--participants", "8", "--spare-kits", "2", "--spares", "1", "--factor", "2.5", "--start", "10:00", "--end", "13:00", "--break", "11:15+15", "--share", "shears=4",
        "--minutes", "cutWire=2", "--minutes", "tryOn=3", "--costs", Costs, "--prices", Prices, "--room", "40", "--around", "45", "--places", "8",
    ];

    [Fact]
    public void It_packs_what_kit_packs_and_takes_as_long_as_the_timed_steps_say()
    {
        var ran = TheProgram.Run([.. Whole, "--json"]);
        Assert.Equal(0, ran.Code);
        var made = Schema.Valid(ran.Out);
        var kit = JsonNode.Parse(TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--count", "10", "--spares", "1", "--json").Out)!;
        Assert.Equal(kit["kits"]![0]!["bags"]!.AsArray().Select(b => ((string)b!["item"]!, (int)b["use"]!, (int)b["spare"]!)), made["kits"]!["bags"]!.AsArray().Select(b => ((string)b!["item"]!, (int)b["use"]!, (int)b["spare"]!)));
        // By 2.5: cutting 2 minutes, 26 of stringing, 3.5 for each end, 3 to try on; four take turns where shears are used. A break of 15.
        var table = made["timetable"]!;
        Assert.Equal(2.5m * (4 * 2 + 3.5m + 26 + 4 * 3.5m + 3) + 15, (decimal)table["minutes"]!);
        Assert.Equal(180m, (decimal)table["available"]!);
        Assert.Null(table["overMinutes"]);
        Assert.Equal("10:00", (string)table["stretches"]![0]!["clock"]!);
        var pause = Assert.Single(table["stretches"]!.AsArray(), s => (string)s!["kind"]! == "break")!;
        Assert.Equal(("11:15", 75m, 90m), ((string)pause["clock"]!, (decimal)pause["from"]!, (decimal)pause["to"]!));
        // 8 participants, one pair of shears for 4; eye protection for each.
        Assert.Equal([8, 2], made["tools"]!.AsArray().Take(2).Select(t => (int)t!["count"]!));
        Assert.Equal(["cutters", "flyingPieces", "springs", "sharpEnds", "adultCuts", "smallParts"], made["cautions"]!.AsArray().Select(c => (string)c!));
    }

    [Fact]
    public void A_place_costs_a_share_of_kits_priced_as_price_prices_them_of_teaching_and_of_the_room()
    {
        var made = Schema.Valid(TheProgram.Run([.. Whole, "--json"]).Out);
        var price = JsonNode.Parse(TheProgram.Run("price", TheProgram.Example("boardwalk"), "--costs", Costs, "--prices", Prices, "--count", "10", "--json").Out)!;
        var kit = price["products"]!.AsArray().First(p => (string)p!["sells"]! == "kit")!["cost"]!;
        Assert.Equal(kit.ToJsonString(), made["cost"]!["kit"]!.ToJsonString());
        var each = ((decimal)kit["amount"]! * 10 + (180 + 45) * 16.50m / 60 + 40) / 8;
        // Amounts are written to four decimals: ten kits make five ten-thousandths of it.
        Assert.InRange((decimal)made["cost"]!["each"]! - each, -0.0005m, 0.0005m);
        Assert.True((int)made["breakEven"]! is >= 1 and <= 8);
        Assert.Equal("kit", (string)made["price"]!["rule"]!);
    }

    [Fact]
    public void Too_little_time_ends_with_1_and_says_what_is_not_done_and_what_would_help()
    {
        string[] call = [.. Whole.Select(w => w == "13:00" ? "12:30" : w)];
        var ran = TheProgram.Run(call);
        Assert.Equal(1, ran.Code);
        var text = Regex.Replace(ran.Out, @"\s+", " ");
        Assert.Contains("1.3 min longer than the 150 min", text, StringComparison.Ordinal);
        Assert.Contains("Not done by then: trying it on.", text, StringComparison.Ordinal);
        Assert.Contains("and fits: cutting the wire, the first end.", text, StringComparison.Ordinal);
        Assert.Equal(0, TheProgram.Run([.. call, "--beforehand", "cutWire"]).Code);
    }

    [Fact]
    public async Task Beads_of_the_benchs_stock_cost_what_they_cost_where_asked_for()
    {
        using var folder = new OwnFolder();
        await StockedShelf.WithTwoLotsOfRoundsAsync(folder[""]);
        string[] call = ["class", TheProgram.Example("boardwalk"), "--participants", "1", "--costs", Costs, "--shelf", folder[""]];
        // Boardwalk takes 135 rounds; spacers and all else cost the same however stock is valued.
        var costs = new Dictionary<string, decimal>(StringComparer.Ordinal);
        foreach (var way in new[] { "average", "first-in" })
        {
            var kit = Schema.Valid(TheProgram.Run([.. call, "--lots", way, "--json"]).Out)["cost"]!["kit"]!;
            var price = JsonNode.Parse(TheProgram.Run("price", TheProgram.Example("boardwalk"), "--costs", Costs, "--shelf", folder[""], "--lots", way, "--json").Out)!;
            Assert.Equal(price["products"]!.AsArray().First(p => (string)p!["sells"]! == "kit")!["cost"]!.ToJsonString(), kit.ToJsonString());
            costs[way] = (decimal)kit["amount"]!;
        }
        // 40 at 0.02 and 100 at 0.06 are 6.8 for 140. What is bought or is waste comes on top in both ways alike.
        Assert.True(costs["first-in"] - costs["average"] >= 135 * (6.8m / 140 - 0.04m) - 0.0001m, $"{costs["first-in"]} {costs["average"]}");
        Assert.Equal(2, TheProgram.Run([.. call, "--lots", "averge"]).Code);
        Assert.Equal(2, TheProgram.Run("class", TheProgram.Example("boardwalk"), "--participants", "1", "--lots", "average").Code);
    }

    [Theory, InlineData("en", "How long it takes is not known"), InlineData("de", "Wie lange er dauert, ist nicht bekannt")]
    public void Without_times_it_says_so_and_guesses_none(string language, string said)
    {
        string[] call = ["class", TheProgram.Example("tidewrack"), "--participants", "6", "--language", language];
        var ran = TheProgram.Run(call);
        Assert.Equal(0, ran.Code);
        Assert.Contains(said, ran.Out, StringComparison.Ordinal);
        var made = Schema.Valid(TheProgram.Run([.. call, "--json"]).Out);
        Assert.All(made["steps"]!.AsArray(), s => Assert.Null(s!["ownMinutes"]));
        Assert.True((bool)made["timetable"]!["isAtLeast"]!);
        Assert.Null(made["cost"]!["total"]);
        Assert.Null(made["price"]);
        Assert.Equal(["notTimed", "factorNotTold", "endNotTold", "noRule", "noWage", "beadsUnpriced"], made["reasons"]!.AsArray().Select(r => (string)r!));
    }

    [Fact]
    public void Two_sheets_are_written_and_the_participants_tells_nothing_of_money()
    {
        using var folder = new OwnFolder();
        var made = Schema.Valid(TheProgram.Run([.. Whole, "--out", folder["a"], "--json"]).Out);
        Assert.Equal(["class.pdf", "class.html", "participant.pdf", "participant.html"], made["written"]!.AsArray().Select(w => Path.GetFileName((string)w!)));
        var teacher = File.ReadAllText(Path.Combine(folder["a"], "class.html"));
        Assert.Contains("11:15", teacher, StringComparison.Ordinal);
        Assert.Contains("EUR", teacher, StringComparison.Ordinal);
        var place = File.ReadAllText(Path.Combine(folder["a"], "participant.html"));
        foreach (var secret in new[] { "EUR", "materials", "labour", "gallery" }) Assert.DoesNotContain(secret, place, StringComparison.Ordinal);
        foreach (var word in new[] { "eye protection", "small part", "Cut memory wire only with shears" }) Assert.Contains(word, place, StringComparison.Ordinal);
        // The same question, the same bytes.
        TheProgram.Run([.. Whole, "--out", folder["b"], "--json"]);
        foreach (var file in Directory.GetFiles(folder["a"])) Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(Path.Combine(folder["b"], Path.GetFileName(file))));
    }

    [Theory]
    [InlineData("--participants", "0")]
    [InlineData("--participants", "201")]
    [InlineData("--factor", "0.5")]
    [InlineData("--factor", "2,5")]
    [InlineData("--start", "25:00")]
    [InlineData("--end", "09:30")]
    [InlineData("--end", "ten")]
    [InlineData("--break", "11:30")]
    [InlineData("--break", "09:00+10")]
    [InlineData("--break", "11:30+0")]
    [InlineData("--share", "shears=1")]
    [InlineData("--share", "hammer=2")]
    [InlineData("--minutes", "cutWire=0")]
    [InlineData("--minutes", "knotting=4")]
    [InlineData("--beforehand", "lastEnd")]
    [InlineData("--rule", "seat")]
    [InlineData("--room", "40 EUR")]
    [InlineData("--around", "-1")]
    [InlineData("--home", "rund=4")]
    public void A_slip_of_an_option_is_told_with_its_value(string option, string value)
    {
        string[] told = [.. new[] { "--participants", "8", "--start", "10:00", "--costs", Costs }.Chunk(2).Where(o => o[0] != option).SelectMany(o => o)];
        foreach (var language in new[] { "en", "de" })
        {
            var ran = TheProgram.Run(["class", TheProgram.Example("boardwalk"), .. told, option, value, "--language", language]);
            Assert.Equal((2, ""), (ran.Code, ran.Out));
            Assert.Contains(option == "--home" ? "rund" : value == "09:00+10" ? "09:00" : value, ran.Error, StringComparison.Ordinal);
            Assert.DoesNotContain(Template.Missing, ran.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Eye_protection_is_never_shared_a_clock_needs_a_beginning_and_a_class_somebody()
    {
        string[] call = ["class", TheProgram.Example("boardwalk"), "--participants", "8", "--json"];
        Assert.Equal("class.never-shared", Code([.. call, "--share", "eyeProtection=2"]));
        Assert.Equal("field.missing", Code([.. call, "--end", "12:00"]));
        Assert.Equal("usage.option-missing", Code(["class", TheProgram.Example("boardwalk"), "--json"]));

        static string Code(string[] call)
        {
            var ran = TheProgram.Run(call);
            Assert.Equal(2, ran.Code);
            return (string)JsonNode.Parse(ran.Out)!["error"]!["code"]!;
        }
    }

    [Fact]
    public void The_page_is_no_wider_than_a_page_and_has_no_gap_in_either_language()
    {
        foreach (var language in new[] { "en", "de" })
        {
            var ran = TheProgram.Run([.. Whole, "--language", language]);
            Assert.Equal(0, ran.Code);
            Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.DoesNotContain(Template.Missing, ran.Out, StringComparison.Ordinal);
            Assert.DoesNotContain(" ,", ran.Out, StringComparison.Ordinal);
        }
    }
}
