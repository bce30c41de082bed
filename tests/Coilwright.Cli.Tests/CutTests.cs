using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>cut</c>: what it plans, writes and says, and what it refuses.</summary>
public class CutTests
{
    private static readonly AnswerSchema Schema = new("cut");

    // Boardwalk's own wire, 22 AWG on 55 mm inside, as packs and as an offcut; and wire of another coil.
    private const string Drawer = """
        {
          "format": "coilwright.wire/1",
          "wire": [
            { "name": "shop packs", "gauge": "22 AWG", "insideMm": 55, "loops": 12, "howMany": 4, "price": 3.20 },
            { "name": "blue tin", "wireMm": 0.64, "loopMm": 175, "wireLengthMm": 950, "offcut": true },
            { "name": "rings", "wireMm": 0.64, "insideMm": 19, "wireLengthMm": 5000 }
          ]
        }
        """;

    [Fact]
    public void What_is_cut_is_what_each_report_says_and_the_offcut_goes_first()
    {
        using var folder = new OwnFolder();
        var ran = Run(folder, Drawer, TheProgram.Example("boardwalk"), "--count", "boardwalk=3");
        Assert.Equal(0, ran.Code);
        var answer = Schema.Valid(ran.Out);
        var reckoned = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--json").Out)!;
        Assert.Equal((double)reckoned["lengths"]!["cutMm"]!, (double)answer["pieces"]![0]!["cutMm"]!);
        Assert.Equal((1, 1, true), ((int)answer["newCoils"]!, (int)answer["offcutsUsed"]!, (bool)answer["proven"]!));
        Assert.Equal(1, (int)answer["coils"]![0]!["wire"]!);
        Assert.NotEmpty(answer["cautions"]!.AsArray());
    }

    [Fact]
    public void What_is_there_afterwards_is_the_wire_of_the_next_plan()
    {
        using var folder = new OwnFolder();
        var first = Schema.Valid(Run(folder, Drawer, TheProgram.Example("boardwalk"), "--count", "3", "--out", folder["after.wire.json"]).Out);
        Assert.Equal(folder["after.wire.json"], (string?)first["file"]);
        var second = Schema.Valid(TheProgram.Run("cut", TheProgram.Example("boardwalk"), "--stock", folder["after.wire.json"], "--json").Out);
        // One pack and the tin are gone, and nothing else: what is left of the pack is long enough to keep but not to make another.
        Assert.Equal(3, second["wire"]!.AsArray().Where(w => (string)w!["name"]! == "shop packs" && !(bool)w["offcut"]!).Sum(w => (int)w!["howMany"]!));
        Assert.Equal((double)first["keptMm"]!, second["wire"]!.AsArray().Where(w => (bool)w!["offcut"]!).Sum(w => (double)w!["lengthMm"]! * (int)w["howMany"]!));
    }

    [Fact]
    public void Packs_of_the_pieces_own_wire_need_no_file()
    {
        var ran = TheProgram.Run("cut", TheProgram.Example("boardwalk"), "--count", "3", "--loops", "12", "--json");
        Assert.Equal(0, ran.Code);
        var answer = Schema.Valid(ran.Out);
        Assert.Equal((2, 2), ((int)answer["newCoils"]!, (int?)answer["leastNewCoils"]!));
        Assert.Equal("price-unknown", (string)answer["why"]!["cost"]!["code"]!);
    }

    [Fact]
    public void What_does_not_come_out_ends_with_1_and_says_how_much_is_missing_and_what_would_do()
    {
        var ran = TheProgram.Run("cut", TheProgram.Example("boardwalk"), "--count", "5", "--loops", "12", "--packs", "2");
        Assert.Equal(1, ran.Code);
        Assert.Contains("1 of boardwalk, 943 mm (37 1/8 in) each: too little wire.", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("With 1 more of \"packs of 12 loops\" everything comes out.", ran.Out.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        var answer = Schema.Valid(TheProgram.Run("cut", TheProgram.Example("boardwalk"), "--count", "5", "--loops", "12", "--packs", "2", "--json").Out);
        Assert.Equal((false, 943, true), ((bool)answer["comesOut"]!, (double)answer["leastMissingMm"]!, (bool)answer["proven"]!));
    }

    [Fact]
    public void A_length_longer_than_any_pack_and_a_kind_of_wire_that_is_not_there_are_told_apart()
    {
        using var folder = new OwnFolder();
        var short_ = Schema.Valid(TheProgram.Run("cut", TheProgram.Example("boardwalk"), "--loops", "3", "--json").Out);
        Assert.Equal("longerThanAny", (string)short_["notCut"]![0]!["why"]!);
        var ran = Run(folder, Drawer, TheProgram.Example("boardwalk"), TheProgram.Example("tidewrack"));
        Assert.Equal(1, ran.Code);
        var answer = Schema.Valid(ran.Out);
        var not = Assert.Single(answer["notCut"]!.AsArray());
        Assert.Equal((1, "noSuchWire"), ((int)not!["piece"]!, (string)not["why"]!));
        Assert.Equal(1, (int)answer["offcutsUsed"]!);
    }

    [Fact]
    public void A_piece_that_cannot_be_worn_is_told_before_its_wire_is_cut()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["stub.piece.json"], Pieces.With("\"boreMm\": 1.0", "\"boreMm\": 0.5"));
        var ran = TheProgram.Run("cut", folder["stub.piece.json"], "--loops", "12");
        Assert.Equal(1, ran.Code);
        Assert.Contains("! The report of stub says stop.", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_says_where_to_cut_in_loops_and_what_to_mind_and_is_no_wider_than_a_page()
    {
        foreach (var language in new[] { "en", "de" })
        {
            using var folder = new OwnFolder();
            File.WriteAllText(folder["d.wire.json"], Drawer);
            var ran = TheProgram.Run("cut", TheProgram.Example("boardwalk"), TheProgram.Example("tidewrack"), "--count", "2", "--stock", folder["d.wire.json"], "--out", folder["after.wire.json"], "--language", language);
            Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.DoesNotContain("(?)", ran.Out, StringComparison.Ordinal);
            Assert.Contains(language == "en" ? "[ ] A boardwalk: 5 loops and 69 mm" : "[ ] A boardwalk: 5 Ringe und 69 mm", ran.Out, StringComparison.Ordinal);
            Assert.Contains(language == "en" ? "wear eye protection" : "eine Schutzbrille", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void As_JSON_a_language_changes_only_sentences()
    {
        using var folder = new OwnFolder();
        static JsonNode Bare(JsonNode node)
        {
            (node["says"], node["cautions"], node["why"]) = (null, null, null);
            return node;
        }
        var english = Bare(Schema.Valid(Run(folder, Drawer, TheProgram.Example("boardwalk")).Out));
        var german = Bare(Schema.Valid(Run(folder, Drawer, TheProgram.Example("boardwalk"), "--language", "de").Out));
        Assert.Equal(english.ToJsonString(), german.ToJsonString());
    }

    [Theory]
    [InlineData("usage.option-missing")]
    [InlineData("usage.whole-form", "--loops", "0")]
    [InlineData("usage.whole-form", "--loops", "NaN")]
    [InlineData("usage.whole-form", "--loops", "12", "--packs", "-1")]
    [InlineData("usage.count-form", "--loops", "12", "--count", "boardwalk=0")]
    [InlineData("usage.count-form", "--loops", "12", "--count", "=3")]
    [InlineData("usage.count-form", "--loops", "12", "--count", "many")]
    [InlineData("word.unknown", "--loops", "12", "--count", "bordwalk=3")]
    [InlineData("usage.option-twice", "--loops", "12", "--count", "boardwalk=3", "--count", "boardwalk=4")]
    [InlineData("usage.too-many-pieces", "--loops", "12", "--count", "3000", "--count", "boardwalk=2001", "examples/tidewrack.piece.json")]
    [InlineData("usage.wires-differ", "--loops", "12", "examples/tidewrack.piece.json")]
    [InlineData("usage.not-both", "--loops", "12", "--stock", "x")]
    [InlineData("usage.length-form", "--loops", "12", "--keep", "soon")]
    [InlineData("usage.length-bounds", "--loops", "12", "--loss", "21")]
    [InlineData("usage.length-form", "--loops", "12", "--loss", "NaN")]
    [InlineData("file.unreadable", "--stock", "no-such.wire.json")]
    [InlineData("file.unreadable", "--loops", "12", "no-such.piece.json")]
    [InlineData("file.unwritable", "--loops", "12", "--out", "no/such/folder/x.wire.json")]
    public void A_wrong_call_is_told(string code, params string[] more)
    {
        var ran = TheProgram.Run(["cut", "examples/boardwalk.piece.json", .. more, "--json"]);
        Assert.Equal(2, ran.Code);
        Assert.Equal(code, (string)JsonNode.Parse(ran.Out)!["error"]!["code"]!);
    }

    [Theory]
    [InlineData("value.at-least", "[]")]
    [InlineData("value.above", """[{ "wireMm": 0.64, "insideMm": 55, "loops": -12 }]""")]
    [InlineData("value.not-finite", """[{ "wireMm": 0.64, "insideMm": 55, "loops": 1e999 }]""")]
    [InlineData("value.not-finite", """[{ "wireMm": 0.64, "insideMm": 55, "loops": NaN }]""")]
    [InlineData("value.at-least", """[{ "wireMm": 0.64, "insideMm": 55, "loops": 12, "howMany": -1 }]""")]
    [InlineData("field.type", """[{ "wireMm": 0.64, "insideMm": 55, "loops": 12, "howMany": 1.5 }]""")]
    [InlineData("field.one-of", """[{ "wireMm": 0.64, "insideMm": 55 }]""")]
    [InlineData("field.one-of", """[{ "wireMm": 0.64, "insideMm": 55, "loops": 12, "massG": 30 }]""")]
    [InlineData("field.missing", """[{ "wireMm": 0.64, "insideMm": 55, "massG": 30 }]""")]
    [InlineData("field.not-with", """[{ "wireMm": 0.64, "insideMm": 55, "loops": 2, "offcut": true, "price": 1 }]""")]
    [InlineData("field.unknown", """[{ "wireMm": 0.64, "insideMm": 55, "loop": 12 }]""")]
    [InlineData("value.at-most", """[{ "wireMm": 0.2, "insideMm": 55, "massG": 9000, "steel": "music-wire" }]""")]
    public void Wire_that_cannot_be_read_is_told_with_its_line(string code, string wire)
    {
        using var folder = new OwnFolder();
        var ran = Run(folder, "{ \"format\": \"coilwright.wire/1\",\n\"wire\": " + wire + "}", TheProgram.Example("boardwalk"));
        Assert.Equal(2, ran.Code);
        var error = JsonNode.Parse(ran.Out)!["error"]!;
        Assert.Equal((code, 2), ((string)error["code"]!, (int)error["line"]!));
        Assert.DoesNotContain("(?)", (string)error["message"]!, StringComparison.Ordinal);
    }

    private static Ran Run(OwnFolder folder, string drawer, params string[] more) => TheProgram.Run(["cut", .. more, "--stock", folder.Write("d.wire.json", drawer), "--json"]);
}
