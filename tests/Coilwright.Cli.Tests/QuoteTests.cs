using System.Globalization;
using System.Text.Json.Nodes;
using Coilwright.Wording;

namespace Coilwright.Cli.Tests;

/// <summary><c>quote</c>: the answer to a custom order.</summary>
public class QuoteTests
{
    private static readonly AnswerSchema Schema = new("quote");

    private static readonly string Costs = Path.Combine(TheProgram.Root, "examples", "studio.costs.json");

    private static readonly string Prices = Path.Combine(TheProgram.Root, "examples", "two-suppliers.prices.json");

    private static readonly string[] Whole =
        ["quote", TheProgram.Example("boardwalk"), "--wrist", "172", "--costs", Costs, "--prices", Prices, "--rule", "retail", "--deposit", "30", "--on", "2026-03-31", "--until", "2026-04-30", "--for", "Oda from the choir", "--count", "2"];

    [Fact]
    public void It_says_of_the_size_what_sizes_says_and_of_the_price_what_price_says_of_it()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run([.. Whole, "--json"]);
        Assert.Equal(0, ran.Code);
        var quote = Schema.Valid(ran.Out);
        var sizes = JsonNode.Parse(TheProgram.Run("sizes", TheProgram.Example("boardwalk"), "--wrists", "172", "--out", folder[""], "--json").Out)!;
        var written = (string)sizes["sizes"]![0]!["file"]!;
        var one = JsonNode.Parse(TheProgram.Run("reckon", written, "--json").Out)!;
        Assert.Equal((int)one["totals"]!["beads"]!, (int)quote["size"]!["beads"]!);
        Assert.Equal(2 * (int)one["totals"]!["beads"]!, quote["beads"]!.AsArray().Sum(b => (int)b!["use"]!));
        Assert.Equal((double)one["lengths"]!["cutMm"]!, (double)quote["wire"]!["cutMm"]!, 3);
        var price = JsonNode.Parse(TheProgram.Run("price", written, "--costs", Costs, "--prices", Prices, "--count", "2", "--json").Out)!;
        Assert.Equal(price["products"]![0]!["cost"]!.ToJsonString(), quote["cost"]!.ToJsonString());
        Assert.Equal(price["prices"]!.AsArray().First(p => (string)p!["rule"]! == "retail")!.ToJsonString(), quote["price"]!.ToJsonString());
        var asked = (decimal)quote["price"]!["asked"]!["price"]!;
        Assert.Equal((2 * asked, decimal.Ceiling(60 * asked) / 100, 2 * asked), ((decimal)quote["total"]!, (decimal)quote["deposit"]!, (decimal)quote["deposit"]! + (decimal)quote["rest"]!));
        // The example's steps of pieces: 8, 26 and 7 minutes for each, 20 once.
        Assert.Equal(102m, (decimal)quote["minutes"]!);
    }

    [Fact]
    public void Days_are_those_of_the_file_of_prices_and_never_guessed()
    {
        using var folder = new OwnFolder();
        var text = File.ReadAllText(Prices);
        var told = text.Replace("\"leadDays\": 0", "\"leadDays\": 3", StringComparison.Ordinal).Replace("\"leadDays\": 9", "\"leadDays\": 40", StringComparison.Ordinal);
        Assert.NotEqual(text, told);
        File.WriteAllText(folder["a.prices.json"], told);
        string[] Call(string file) => [.. Whole.Select(w => w == Prices ? folder[file] : w), "--json"];
        var quote = Schema.Valid(TheProgram.Run(Call("a.prices.json")).Out);
        var days = quote["beads"]!.AsArray().SelectMany(b => b!["from"]!.AsArray()).Max(f => (int)f!["leadDays"]!);
        Assert.Equal(days, (int)quote["beadsThere"]!["days"]!);
        Assert.Equal(new DateOnly(2026, 3, 31).AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), (string)quote["beadsThere"]!["on"]!);
        Assert.Contains((string)quote["beadsThere"]!["on"]!, (string)quote["text"]!, StringComparison.Ordinal);
        foreach (var (value, code) in new[] { ("-1", "value.at-least"), ("1001", "value.at-most"), ("2.5", null), ("\"3\"", null) })
        {
            File.WriteAllText(folder["c.prices.json"], told.Replace("\"leadDays\": 3", $"\"leadDays\": {value}", StringComparison.Ordinal));
            var ran = TheProgram.Run(Call("c.prices.json"));
            Assert.Equal(2, ran.Code);
            if (code is not null) Assert.Equal((code, "suppliers[0].leadDays"), ((string)JsonNode.Parse(ran.Out)!["error"]!["code"]!, (string)JsonNode.Parse(ran.Out)!["error"]!["field"]!));
        }
    }

    [Theory, InlineData("en", "When the beads are here is not told."), InlineData("de", "Wann die Perlen da sind, steht nicht da.")]
    public void Without_days_the_quote_says_so(string language, string said)
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["x.prices.json"], File.ReadAllText(Prices).Replace(", \"leadDays\": 0", "", StringComparison.Ordinal).Replace(", \"leadDays\": 9", "", StringComparison.Ordinal));
        string[] call = [.. Whole.Select(w => w == Prices ? folder["x.prices.json"] : w), "--language", language];
        var ran = TheProgram.Run(call);
        Assert.Equal(0, ran.Code);
        Assert.Contains(said, ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        var quote = Schema.Valid(TheProgram.Run([.. call, "--json"]).Out);
        Assert.Null(quote["beadsThere"]!["days"]);
        Assert.Contains("dayNotTold", quote["reasons"]!.AsArray().Select(r => (string)r!));
        Assert.True((bool)quote["canBePromised"]!);
    }

    [Fact]
    public void What_goes_to_the_customer_tells_nothing_of_what_it_costs()
    {
        using var folder = new OwnFolder();
        var quote = Schema.Valid(TheProgram.Run([.. Whole, "--out", folder["a"], "--json"]).Out);
        Assert.Equal(["quote.pdf", "quote.html", "workings.pdf", "workings.html", "quote.txt"], quote["written"]!.AsArray().Select(w => Path.GetFileName((string)w!)));
        var text = File.ReadAllText(Path.Combine(folder["a"], "quote.txt"));
        Assert.Equal((string)quote["text"]! + "\n", text);
        foreach (var word in new[] { "Oda from the choir", "2026-03-31", "2026-04-30", "172 mm" }) Assert.Contains(word, text, StringComparison.Ordinal);
        foreach (var file in new[] { "quote.txt", "quote.html" })
        {
            var page = File.ReadAllText(Path.Combine(folder["a"], file));
            foreach (var secret in new[] { "gallery", "retail", "stall", "cost *", "labour" }) Assert.DoesNotContain(secret, page, StringComparison.Ordinal);
        }
        // The same question, the same bytes.
        TheProgram.Run([.. Whole, "--out", folder["b"], "--json"]);
        foreach (var file in Directory.GetFiles(folder["a"])) Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(Path.Combine(folder["b"], Path.GetFileName(file))));
    }

    [Fact]
    public void What_cannot_be_promised_ends_with_1_gives_its_reasons_and_makes_no_paper_for_the_customer()
    {
        using var folder = new OwnFolder();
        string[] call = ["quote", TheProgram.Example("boardwalk"), "--on", "2026-03-31", "--out", folder["a"]];
        var ran = TheProgram.Run([.. call, "--json"]);
        Assert.Equal(1, ran.Code);
        var quote = Schema.Valid(ran.Out);
        Assert.Equal(["noRule", "dayNotTold", "notTimed"], quote["reasons"]!.AsArray().Select(r => (string)r!));
        Assert.Equal(["workings.html", "workings.pdf"], Directory.GetFiles(folder["a"]).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Null(quote["text"]);
        Assert.Contains("! There is no price", TheProgram.Run(call).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Beads_at_home_stand_in_and_are_strung_when_swapped()
    {
        string[] call = ["quote", TheProgram.Example("boardwalk"), "--on", "2026-03-31", "--costs", Costs, "--among", TheProgram.Example("tidewrack"), "--home", "pebble=500"];
        var quote = Schema.Valid(TheProgram.Run([.. call, "--json"]).Out);
        Assert.Contains(quote["beads"]!.AsArray(), b => b!["standIns"]!.AsArray().Any(s => (string)s!["bead"]! == "pebble"));
        var swapped = Schema.Valid(TheProgram.Run([.. call, "--swap", "round=pebble", "--json"]).Out);
        Assert.DoesNotContain(swapped["beads"]!.AsArray(), b => (string)b!["item"]! == "round");
        Assert.Equal(0, (int)swapped["beads"]!.AsArray().First(b => (string)b!["item"]! == "pebble")!["missing"]!);
        Assert.Equal(2, TheProgram.Run([.. call, "--swap", "rund=pebble"]).Code);
        Assert.Equal(2, TheProgram.Run([.. call, "--swap", "round=peble"]).Code);
    }

    [Theory]
    [InlineData("--on", "31.3.2026")]
    [InlineData("--on", "2026-02-30")]
    [InlineData("--until", "1850-01-01")]
    [InlineData("--until", "2026-03-30")]
    [InlineData("--deposit", "101")]
    [InlineData("--deposit", "30%")]
    [InlineData("--rule", "kit")]
    [InlineData("--count", "0")]
    [InlineData("--wrist", "20")]
    [InlineData("--swap", "round")]
    [InlineData("--home", "round=x")]
    [InlineData("--wire", "none.wire.json")]
    public void A_slip_of_an_option_is_told_with_its_value(string option, string value)
    {
        string[] call = ["quote", TheProgram.Example("boardwalk"), "--costs", Costs, .. option == "--on" ? Array.Empty<string>() : ["--on", "2026-03-31"], option, value];
        foreach (var language in new[] { "en", "de" })
        {
            var ran = TheProgram.Run([.. call, "--language", language]);
            Assert.Equal((2, ""), (ran.Code, ran.Out));
            Assert.Contains(value, ran.Error, StringComparison.Ordinal);
            Assert.DoesNotContain(Template.Missing, ran.Error, StringComparison.Ordinal);
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
