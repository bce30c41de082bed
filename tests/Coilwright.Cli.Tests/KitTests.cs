using System.Text.Json.Nodes;
using Coilwright.Core.Stock;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Storage.Stock;

namespace Coilwright.Cli.Tests;

/// <summary><c>kit</c>: what it packs and says, and what it refuses.</summary>
public class KitTests
{
    private static readonly AnswerSchema Schema = new("kit");

    private static readonly string[] Both = ["kit", TheProgram.Example("tidewrack"), TheProgram.Example("boardwalk"), "--count", "tidewrack=2", "--count", "boardwalk=3"];

    [Fact]
    public void Bags_and_what_is_laid_aside_are_what_shop_has_and_letters_and_wire_are_each_reports()
    {
        string[] spares = ["--spares", "5%", "--spares", "2"];
        var answer = Schema.Valid(TheProgram.Run([.. Both, .. spares, "--json"]).Out);
        var shop = JsonNode.Parse(TheProgram.Run(["shop", .. Both[1..], .. spares, "--json"]).Out)!["items"]!.AsArray();
        Assert.Equal(shop.Select(i => ((string)i!["item"]!, (int)i["use"]! + (int)i["spare"]!)).Order(), answer["picks"]!.AsArray().Select(p => ((string)p!["item"]!, (int)p["take"]!)).Order());
        foreach (var kit in answer["kits"]!.AsArray())
        {
            var sheet = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example((string)kit!["name"]!), "--json").Out)!;
            Assert.Equal((double)sheet["lengths"]!["cutMm"]!, (double)kit["cutMm"]!);
            foreach (var bag in kit["bags"]!.AsArray()) Assert.Equal((int)sheet["counts"]![(string)bag!["item"]!]!, (int)bag["use"]!);
        }
        foreach (var pick in answer["picks"]!.AsArray())
            Assert.Equal((int)pick!["take"]! - (int)pick["aside"]!, answer["kits"]!.AsArray().Sum(k => (int)k!["count"]! * k["bags"]!.AsArray().Where(b => (string)b!["item"]! == (string)pick["item"]!).Sum(b => (int)b!["count"]!)));
    }

    // Boardwalk takes 135 rounds and 45 spacers: by hand, 300 and 200 make 2 kits, a strand of 65 more 2 as well.
    [Fact]
    public void What_is_at_home_makes_so_many_kits_and_one_more_pack_so_many()
    {
        var answer = Schema.Valid(TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--home", "round=300", "--home", "spacer=200", "--json").Out);
        var now = Assert.Single(answer["now"]!.AsArray())!;
        Assert.Equal((2, 2), ((int)now["count"]!, (int)now["withOneMorePack"]!));
        Assert.Equal(["round"], now["runOutFirst"]!.AsArray().Select(i => (string)i!));
        now = Schema.Valid(TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--home", "round=345", "--home", "spacer=140", "--json").Out)["now"]![0]!;
        Assert.Equal((2, 3), ((int)now["count"]!, (int)now["withOneMorePack"]!));
        Assert.Equal(["round", "spacer"], now["runOutThen"]!.AsArray().Select(i => (string)i!));
        // By hand: 345 rounds are enough for 2 of 135, 140 spacers for 3 of 45.
        Assert.Equal([("round", 345, 2), ("spacer", 140, 3)], now["each"]!.AsArray().Select(e => ((string)e!["item"]!, (int)e["home"]!, (int)e["count"]!)));
        Assert.False((bool)Schema.Valid(TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--json").Out)["homeKnown"]!);
    }

    // 180 rounds make 1 kit; a strand of 65 more is 245 and still 1, the bag of 100 of the prices makes 280, which are 2.
    [Fact]
    public void One_more_pack_is_that_of_the_prices_where_they_are_given()
    {
        using var folder = new OwnFolder();
        var prices = folder.Write("b.prices.json", """{ "format": "coilwright.prices/1", "offers": [{ "bead": "round", "supplier": "the post order", "unit": "bag", "holds": 100, "price": 3.90 }] }""");
        string[] call = ["kit", TheProgram.Example("boardwalk"), "--home", "round=180", "--home", "spacer=200", "--json"];
        Assert.Equal(1, (int)Schema.Valid(TheProgram.Run(call).Out)["now"]![0]!["withOneMorePack"]!);
        Assert.Equal(2, (int)Schema.Valid(TheProgram.Run([.. call, "--prices", prices]).Out)["now"]![0]!["withOneMorePack"]!);
        Assert.Equal(2, TheProgram.Run([.. call, "--prices", folder["none.prices.json"]]).Code);
    }

    [Fact]
    public void A_piece_whose_report_says_stop_is_told_and_packed_all_the_same()
    {
        using var folder = new OwnFolder();
        // The wire is thicker than its holes.
        var stop = folder.Write("stop.piece.json", File.ReadAllText(TheProgram.Example("boardwalk")).Replace("\"boreMm\": 1.0", "\"boreMm\": 0.4", StringComparison.Ordinal));
        Assert.Equal(1, TheProgram.Run("reckon", stop).Code);
        var ran = TheProgram.Run("kit", stop, "--json");
        Assert.Equal((1, true), (ran.Code, (bool)Schema.Valid(ran.Out)["kits"]![0]!["reportSaysStop"]!));
        Assert.Contains("The report of stop says stop.", TheProgram.Run("kit", stop).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Labels_and_pick_list_are_written_or_nothing_is()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run([.. Both, "--out", folder["kits"], "--json"]);
        Assert.Equal(0, ran.Code);
        Assert.Equal([Path.Combine(folder["kits"], "labels.pdf"), Path.Combine(folder["kits"], "pick-list.pdf")], Schema.Valid(ran.Out)["files"]!.AsArray().Select(f => (string)f!));
        Assert.All(Directory.GetFiles(folder["kits"]), f => Assert.StartsWith("%PDF", File.ReadAllText(f)[..8], StringComparison.Ordinal));
        var slip = TheProgram.Run([.. Both, "--out", folder["none"], "--labels", "4x8,63.5x33.9"]);
        Assert.Equal((2, "", false), (slip.Code, slip.Out, Directory.Exists(folder["none"])));
        Assert.Contains("254 by 271.2 mm", slip.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(2, TheProgram.Run([.. Both, "--out", folder["none"], "--labels", "9x20,20x12"]).Code);
    }

    [Theory]
    [InlineData("3x8")]
    [InlineData("3x8,63,5x33,9")]
    [InlineData("0x8,63x33")]
    [InlineData("3x8,63x0")]
    [InlineData("3x8,63x33,-1x2")]
    [InlineData("3x8,63x33,1x2,3")]
    [InlineData("3x8,63x33,1x2,3x4,5x6")]
    public void A_slip_in_the_sheet_of_labels_is_told(string value)
    {
        var ran = TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--labels", value);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains("3x7,64x36", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_known_of_home_is_told()
    {
        using var folder = new OwnFolder();
        Assert.Equal(2, TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--shelf", folder["none"]).Code);
        Assert.Equal(2, TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--shelf", folder.Path, "--home", "round=1").Code);
        var slip = TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--home", "ruond=200");
        Assert.Equal(2, slip.Code);
        Assert.Contains("round", slip.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_free_in_the_benchs_stock_is_fetched_drawer_by_drawer()
    {
        using var folder = new OwnFolder();
        var data = Storage.DataFiles.LoadDefault().Data!;
        using (var shelf = ((ShelfOpening.Opened)SqliteShelf.Open(new SqliteShelfOptions { Folder = folder[""] }, data, TimeProvider.System)).Shelf)
        {
            IStockLedger ledger = shelf;
            Assert.IsType<StockAnswer.Kept>(await ledger.BookAsync(new StockChange
            {
                Items = [new ItemChange(new StockItem("round", "Rounds", StockUnit.Each), 0), new ItemChange(new StockItem("spacer", "Spacers", StockUnit.Each), 0)],
                Movements =
                [
                    new Movement.Receive(Guid.CreateVersion7(), "round", new StockLot(Quantity.Of(300)) { Drawer = "10" }), new Movement.Reserve(Guid.CreateVersion7(), "round", Quantity.Of(20)),
                    new Movement.Receive(Guid.CreateVersion7(), "spacer", new StockLot(Quantity.Of(500)) { Drawer = "9" }),
                ],
            }));
        }
        var answer = Schema.Valid(TheProgram.Run("kit", TheProgram.Example("boardwalk"), "--count", "3", "--shelf", folder[""], "--json").Out);
        Assert.Equal([("spacer", "9", 500), ("round", "10", 280)], answer["picks"]!.AsArray().Select(p => ((string)p!["item"]!, (string)p["drawers"]![0]!, (int)p["home"]!)));
        Assert.Equal(2, (int)answer["now"]![0]!["count"]!);
    }

    [Fact]
    public void The_page_is_no_wider_than_a_page_and_has_no_gap_in_either_language()
    {
        foreach (var language in new[] { "en", "de" })
        {
            var ran = TheProgram.Run([.. Both, "--spares", "2", "--spares", "3%", "--home", "round=400", "--language", language]);
            Assert.Equal(0, ran.Code);
            Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.DoesNotContain("(?)", ran.Out, StringComparison.Ordinal);
            Assert.Contains(language == "en" ? "not for children under three" : "nicht für Kinder unter drei", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void As_JSON_a_language_changes_only_sentences()
    {
        static string Bare(string text)
        {
            var node = Schema.Valid(text);
            (node["says"], node["cautions"]) = (null, null);
            foreach (var now in node["now"]!.AsArray()) now!["why"] = null;
            return node.ToJsonString();
        }
        string[] call = [.. Both, "--home", "round=400", "--json"];
        Assert.Equal(Bare(TheProgram.Run(call).Out), Bare(TheProgram.Run([.. call, "--language", "de"]).Out));
    }
}
