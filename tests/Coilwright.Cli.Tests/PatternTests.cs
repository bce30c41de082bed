using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>pattern</c>: what it writes, and what it says.</summary>
public class PatternTests
{
    private static readonly AnswerSchema Schema = new("pattern");

    // An example with more written in it, as a maker would have it.
    private static string Written(OwnFolder folder, string file, Action<JsonObject> change)
    {
        var piece = JsonNode.Parse(File.ReadAllText(Path.Combine(TheProgram.Root, TheProgram.Example("tidewrack"))))!.AsObject();
        change(piece);
        return folder.Write(file, piece.ToJsonString());
    }

    [Fact]
    public void It_writes_a_pdf_and_a_page_and_its_steps_string_what_reckon_counts()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("pattern", TheProgram.Example("tidewrack"), "--out", folder["made"], "--paper", "letter", "--ink-saving", "--json");
        Assert.Equal(0, ran.Code);
        var answer = Schema.Valid(ran.Out);
        Assert.Equal(("letter", true, false), ((string)answer["paper"]!, (bool)answer["inkSaving"]!, (bool)answer["largePrint"]!));
        Assert.Equal(["tidewrack-pattern.html", "tidewrack-pattern.pdf"], Directory.GetFiles(folder["made"]).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal("%PDF-"u8.ToArray(), File.ReadAllBytes(folder["made/tidewrack-pattern.pdf"])[..5]);
        Assert.Empty(answer["proof"]!.AsArray());
        var reckoned = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example("tidewrack"), "--json").Out)!;
        var strung = answer["steps"]!.AsArray().Where(s => s!["strings"] is not null).SelectMany(s => s!["strings"]!.AsArray().Select(b => (string)b!)).ToArray();
        Assert.Equal(reckoned["order"]!.AsArray().Select(b => (string)b!["bead"]!), strung);
    }

    [Fact]
    public void Her_own_words_stand_in_it_and_what_does_not_agree_is_told()
    {
        using var folder = new OwnFolder();
        var piece = Written(folder, "own.piece.json", p => p["pattern"] = new JsonObject
        {
            ["care"] = "It weighs 99 g.",
            ["words"] = new JsonArray(new JsonObject { ["step"] = "tuft.1", ["strings"] = "5 shard", ["before"] = "tube", ["text"] = "Now 6 B." }, new JsonObject { ["step"] = "surf.1", ["strings"] = "2 dot", ["text"] = "Gone." }),
        });
        var answer = Schema.Valid(TheProgram.Run("pattern", piece, "--out", folder["made"], "--json").Out);
        Assert.Equal(["care mass-unknown 99 g", "tuft.1 count-differs 6 B", "surf.1 step-gone 2 dot"], answer["proof"]!.AsArray().Select(m => $"{m!["where"]} {m["code"]} {m["said"]}"));
        Assert.Equal(("Now 6 B.", true), answer["steps"]!.AsArray().Where(s => (string)s!["step"]! == "tuft.1").Select(s => ((string)s!["text"]!, (bool)s["ownWords"]!)).Single());
        var ran = TheProgram.Run("pattern", piece, "--out", folder["made"]);
        Assert.Contains("tuft.1: “6 B”: the piece has 5 B", ran.Out, StringComparison.Ordinal);
        Assert.Equal(0, ran.Code);
    }

    [Fact]
    public void Colourways_stand_in_it_and_another_order_is_none()
    {
        using var folder = new OwnFolder();
        var dusk = Written(folder, "dusk.piece.json", p =>
        {
            p["title"] = "Tidewrack at dusk";
            p["beads"]![0]!["colours"] = new JsonArray("#553355");
        });
        var other = Written(folder, "other.piece.json", p =>
        {
            p.Remove("wishes");
            p["order"] = new JsonObject { ["text"] = new JsonArray("3 nugget") };
        });
        Assert.Equal(0, TheProgram.Run("pattern", TheProgram.Example("tidewrack"), "--out", folder["made"], "--colourway", dusk).Code);
        Assert.Contains("Tidewrack at dusk", File.ReadAllText(folder["made/tidewrack-pattern.html"]), StringComparison.Ordinal);
        var ran = TheProgram.Run("pattern", TheProgram.Example("tidewrack"), "--out", folder["none"], "--colourway", other, "--json");
        Assert.Equal(2, ran.Code);
        Assert.Equal("colourway.other-order", (string)JsonNode.Parse(ran.Out)!["error"]!["code"]!);
        Assert.False(Directory.Exists(folder["none"]));
    }

    [Theory]
    [InlineData("usage.option-missing", "pattern", "x")]
    [InlineData("word.unknown", "pattern", "x", "--out", "y", "--paper", "a5")]
    [InlineData("file.unreadable", "pattern", "nowhere.piece.json", "--out", "y")]
    [InlineData("file.unreadable", "pattern", "nowhere.piece.json", "--out", "y", "--colourway", "neither.piece.json")]
    public void What_it_cannot_read_it_says(string code, params string[] call)
    {
        var ran = TheProgram.Run([.. call, "--json"]);
        Assert.Equal(2, ran.Code);
        Assert.Equal(code, (string)JsonNode.Parse(ran.Out)!["error"]!["code"]!);
    }
}
