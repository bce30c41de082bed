using System.Text.Json.Nodes;
using Coilwright.Core.Stock;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Storage.Stock;

namespace Coilwright.Cli.Tests;

/// <summary><c>shop</c>: what it plans and says, and what it refuses.</summary>
public class ShopTests
{
    private static readonly AnswerSchema Schema = new("shop");

    private static readonly string Prices = Path.Combine(TheProgram.Root, "examples", "two-suppliers.prices.json");

    private static readonly string[] Both = ["shop", TheProgram.Example("tidewrack"), TheProgram.Example("boardwalk"), "--count", "tidewrack=2", "--count", "boardwalk=3"];

    [Fact]
    public void What_is_used_is_what_each_report_counts_and_the_sums_add_up()
    {
        var ran = TheProgram.Run([.. Both, "--spares", "5%", "--prices", Prices, "--more", "3", "--json"]);
        Assert.Equal(0, ran.Code);
        var answer = Schema.Valid(ran.Out);
        var items = answer["items"]!.AsArray().ToDictionary(i => (string)i!["item"]!, i => i!);
        foreach (var (piece, count) in new[] { ("tidewrack", 2), ("boardwalk", 3) })
            foreach (var (bead, n) in JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example(piece), "--json").Out)!["counts"]!.AsObject())
                Assert.Equal((int)n! * count, (int)items[bead]["use"]!);
        foreach (var item in items.Values)
        {
            Assert.Equal((int)Math.Ceiling((int)item["use"]! * 0.05m), (int)item["spare"]!);
            Assert.Equal((int)item["home"]! + (int)item["buy"]!, (int)item["use"]! + (int)item["spare"]! + (int)item["left"]!);
        }
        var orders = answer["orders"]!.AsArray();
        Assert.Equal((decimal)answer["total"]!, orders.Sum(o => (decimal)o!["goods"]! + (decimal)o["freight"]!));
        Assert.All(orders, o => Assert.Equal((decimal)o!["goods"]!, o["lines"]!.AsArray().Sum(l => (decimal)l!["cost"]!)));
        foreach (var bought in orders.SelectMany(o => o!["lines"]!.AsArray()).GroupBy(l => (string)l!["item"]!))
            Assert.Equal(bought.Sum(l => (int)l!["units"]! * (int)l["holds"]!), (int)items[bought.Key]["buy"]!);
        Assert.Equal(((bool)answer["proven"]!, "EUR"), (true, (string)answer["currency"]!));
        Assert.Equal(["moon"], answer["unpriced"]!.AsArray().Select(u => (string)u!));
        Assert.NotEmpty(answer["breakPoints"]!.AsArray());
    }

    [Fact]
    public void Without_prices_each_beads_own_pack_and_price_count()
    {
        var answer = Schema.Valid(TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--json").Out);
        var order = Assert.Single(answer["orders"]!.AsArray());
        Assert.Equal("", (string)order!["supplier"]!);
        // 135 rounds in strands of 65 at 3.40, 45 spacers in bags of 50 at 2.20.
        Assert.Equal(3 * 3.40m + 2.20m, (decimal)answer["total"]!);
    }

    [Fact]
    public void What_is_at_home_is_used_first_and_names_are_known_or_told()
    {
        var answer = Schema.Valid(TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--home", "round=200", "--home", "spacer=20", "--json").Out);
        Assert.Equal(2.20m, (decimal)answer["total"]!);
        Assert.Equal([65, 25], answer["items"]!.AsArray().Select(i => (int)i!["left"]!));
        var slip = TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--home", "ruond=200");
        Assert.Equal(2, slip.Code);
        Assert.Contains("round", slip.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--spares", "5 %")]
    [InlineData("--spares", "=5%")]
    [InlineData("--spares", "round=1001%")]
    [InlineData("--spares", "-2")]
    [InlineData("--home", "200")]
    [InlineData("--home", "round=some")]
    [InlineData("--more", "0")]
    [InlineData("--more", "101")]
    [InlineData("--effort", "0")]
    public void A_slip_of_an_option_is_told(string option, string value)
    {
        var ran = TheProgram.Run("shop", TheProgram.Example("boardwalk"), option, value);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(option, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_said_twice_is_told()
    {
        foreach (var twice in new[] { new[] { "--spares", "5%", "--spares", "4%" }, ["--home", "round=1", "--home", "round=2"] })
            Assert.Equal(2, TheProgram.Run(["shop", TheProgram.Example("boardwalk"), .. twice]).Code);
        // A share and some with each piece are two things.
        Assert.Equal(0, TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--spares", "5%", "--spares", "2").Code);
    }

    [Fact]
    public void A_file_of_prices_that_cannot_be_read_is_told_by_its_line()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["p.prices.json"], File.ReadAllText(Prices).Replace("\"from\": 5", "\"from\": 1", StringComparison.Ordinal));
        var ran = TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--prices", folder["p.prices.json"], "--json");
        Assert.Equal(2, ran.Code);
        var error = JsonNode.Parse(ran.Out)!["error"]!;
        Assert.Equal(("buying.steps-overlap", "offers[1].prices[1].from", 10), ((string)error["code"]!, (string)error["field"]!, (int)error["line"]!));
    }

    [Fact]
    public void Too_few_to_be_had_ends_with_1_and_says_how_many_are_missing()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["p.prices.json"], """{ "format": "coilwright.prices/1", "offers": [{ "bead": "round", "supplier": "stall", "unit": "strand", "holds": 65, "price": 3, "has": 1 }] }""");
        var ran = TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--prices", folder["p.prices.json"]);
        Assert.Equal(1, ran.Code);
        Assert.Contains("70 of Sea-green round cannot be had", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(-70, (int)Schema.Valid(TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--prices", folder["p.prices.json"], "--json").Out)["items"]![0]!["left"]!);
    }

    [Fact]
    public void The_wire_is_bought_as_the_cutting_plan_begins_it()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["d.wire.json"], """{ "format": "coilwright.wire/1", "wire": [{ "name": "shop packs", "gauge": "22 AWG", "insideMm": 55, "loops": 12, "price": 3.20 }] }""");
        var cut = JsonNode.Parse(TheProgram.Run("cut", TheProgram.Example("boardwalk"), "--count", "5", "--stock", folder["d.wire.json"], "--json").Out)!;
        var answer = Schema.Valid(TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--count", "5", "--wire", folder["d.wire.json"], "--json").Out);
        Assert.Equal(((int)cut["newCoils"]!, (decimal)cut["cost"]!), ((int)answer["wire"]![0]!["buy"]!, (decimal)answer["wire"]![0]!["cost"]!));
    }

    [Fact]
    public void The_page_is_no_wider_than_a_page_and_has_no_gap_in_either_language()
    {
        foreach (var language in new[] { "en", "de" })
        {
            var ran = TheProgram.Run([.. Both, "--prices", Prices, "--more", "4", "--language", language]);
            Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.DoesNotContain("(?)", ran.Out, StringComparison.Ordinal);
            Assert.DoesNotContain(" ,", ran.Out, StringComparison.Ordinal);
            Assert.Contains(language == "en" ? "[ ] 1 bag of 250: Brass spacer, no. S-118" : "[ ] 1 Beutel zu 250: Brass spacer, Nr. S-118", ran.Out.Replace('\u00a0', ' '), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void As_JSON_a_language_changes_only_sentences()
    {
        static string Bare(string text)
        {
            var node = Schema.Valid(text);
            (node["says"], node["why"]) = (null, null);
            foreach (var item in node["items"]!.AsArray()) item!["why"] = null;
            return node.ToJsonString();
        }
        Assert.Equal(Bare(TheProgram.Run([.. Both, "--json"]).Out), Bare(TheProgram.Run([.. Both, "--json", "--language", "de"]).Out));
    }

    [Fact]
    public void What_to_buy_is_written_as_a_table_that_adds_up()
    {
        using var folder = new OwnFolder();
        var answer = Schema.Valid(TheProgram.Run([.. Both, "--prices", Prices, "--out", folder["list.csv"], "--json"]).Out);
        Assert.Equal(folder["list.csv"], (string?)answer["file"]);
        string[][] rows = [.. File.ReadAllLines(folder["list.csv"]).Select(l => l.Split(','))];
        Assert.Equal(["supplier", "number", "item", "name", "unit", "holds", "units", "beads", "cost", "currency"], rows[0]);
        Assert.Equal(answer["orders"]!.AsArray().Sum(o => (decimal)o!["goods"]!), rows.Skip(1).Where(r => r.Length == 10 && r[8].Length > 0).Sum(r => decimal.Parse(r[8], System.Globalization.CultureInfo.InvariantCulture)));
        // The focal is the maker's own and has no price; its name has a comma in it.
        Assert.StartsWith(",,moon,\"Drilled stone, my own\",", File.ReadAllLines(folder["list.csv"])[^1], StringComparison.Ordinal);
        Assert.Equal(0, TheProgram.Run([.. Both, "--prices", Prices, "--out", folder["list.xlsx"]]).Code);
        // A workbook is a zip (ECMA-376).
        Assert.Equal("PK", System.Text.Encoding.ASCII.GetString(File.ReadAllBytes(folder["list.xlsx"]), 0, 2));
        var slip = TheProgram.Run([.. Both, "--out", folder["list.ods"]]);
        Assert.Equal((2, false), (slip.Code, File.Exists(folder["list.ods"])));
    }

    [Fact]
    public async Task What_is_free_in_the_benchs_stock_is_at_home()
    {
        using var folder = new OwnFolder();
        var data = Storage.DataFiles.LoadDefault().Data!;
        using (var shelf = ((ShelfOpening.Opened)SqliteShelf.Open(new SqliteShelfOptions { Folder = folder[""] }, data, TimeProvider.System)).Shelf)
        {
            IStockLedger ledger = shelf;
            Assert.IsType<StockAnswer.Kept>(await ledger.BookAsync(new StockChange
            {
                Items = [new ItemChange(new StockItem("round", "Rounds", StockUnit.Each), 0)],
                Movements = [new Movement.Receive(Guid.CreateVersion7(), "round", new StockLot(Quantity.Of(200))), new Movement.Reserve(Guid.CreateVersion7(), "round", Quantity.Of(20))],
            }));
        }
        var answer = Schema.Valid(TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--shelf", folder[""], "--json").Out);
        Assert.Equal((180, 0), ((int)answer["items"]![0]!["home"]!, (int)answer["items"]![0]!["missing"]!));
        Assert.Equal(2, TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--shelf", folder["nowhere"]).Code);
        Assert.False(Directory.Exists(folder["nowhere"]));
        Assert.Equal(2, TheProgram.Run("shop", TheProgram.Example("boardwalk"), "--shelf", folder[""], "--home", "round=3").Code);
    }

    [Fact]
    public void Each_order_has_the_day_on_which_it_is_here()
    {
        string[] call = [.. Both, "--prices", Prices, "--on", "2026-12-28"];
        var shop = Schema.Valid(TheProgram.Run([.. call, "--json"]).Out);
        var told = JsonNode.Parse(File.ReadAllText(Prices))!["suppliers"]!.AsArray().ToDictionary(s => (string)s!["name"]!, s => (int)s!["leadDays"]!);
        var named = shop["orders"]!.AsArray().Where(o => (string)o!["supplier"]! != "").ToArray();
        Assert.NotEmpty(named);
        foreach (var order in named)
        {
            Assert.Equal(told[(string)order!["supplier"]!], (int)order["leadDays"]!);
            // Nine days after the 28th of December are into the next year.
            Assert.Equal((int)order["leadDays"]! switch { 0 => "2026-12-28", 9 => "2027-01-06", _ => "" }, (string)order["there"]!);
        }
        Assert.All(shop["orders"]!.AsArray().Where(o => (string)o!["supplier"]! == ""), o => Assert.Null(o!["leadDays"]));
        foreach (var (language, said) in new[] { ("en", "Here "), ("de", "Da ") }) Assert.Contains(said, TheProgram.Run([.. call, "--language", language]).Out, StringComparison.Ordinal);
        var undated = Schema.Valid(TheProgram.Run([.. Both, "--prices", Prices, "--json"]).Out);
        Assert.Null(undated["on"]);
        Assert.All(undated["orders"]!.AsArray(), o => Assert.Null(o!["there"]));
        Assert.Equal(2, TheProgram.Run([.. Both, "--on", "28.12.2026"]).Code);
    }
}
