using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>scatter</c>: an order without a visible repeat, written as a piece.</summary>
public class ScatterTests
{
    private static readonly AnswerSchema Schema = new("scatter");

    [Fact]
    public void What_it_writes_has_the_same_beads_and_every_seed_gives_another()
    {
        using var folder = new OwnFolder();
        var orders = new List<string>();
        foreach (var seed in (string[])["1", "2", "2"])
        {
            var ran = TheProgram.Run("scatter", TheProgram.Example("tidewrack"), "--out", folder[$"{seed}.piece.json"], "--seed", seed, "--json");
            var answer = Schema.Valid(ran.Out);
            Assert.Null(answer["whyNone"]);
            Assert.Equal(folder[$"{seed}.piece.json"], (string?)answer["file"]);
            orders.Add((string)answer["order"]!);
            var (was, now) = (Counts(TheProgram.Example("tidewrack")), Counts(folder[$"{seed}.piece.json"]));
            Assert.Equal(was, now);
        }
        Assert.NotEqual(orders[0], orders[1]);
        Assert.Equal(orders[1], orders[2]);
    }

    [Fact]
    public void It_says_in_words_what_shows()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("scatter", TheProgram.Example("tidewrack"), "--out", folder["s.piece.json"]);
        Assert.Equal(0, ran.Code);
        Assert.Contains("No repeat shows", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Keine Wiederholung", TheProgram.Run("scatter", TheProgram.Example("tidewrack"), "--out", folder["s.piece.json"], "--language", "de").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void With_one_kind_alone_it_says_so_and_writes_nothing()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["plain.piece.json"], Pieces.Sound);
        var ran = TheProgram.Run("scatter", folder["plain.piece.json"], "--out", folder["s.piece.json"], "--json");
        Assert.Equal("oneKind", (string?)Schema.Valid(ran.Out)["whyNone"]);
        Assert.False(File.Exists(folder["s.piece.json"]));
        Assert.Contains("not two kinds", TheProgram.Run("scatter", folder["plain.piece.json"], "--out", folder["s.piece.json"]).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--seed", "-1", "usage.seed-form")]
    [InlineData("--language", "xx", "word.unknown")]
    public void A_wrong_option_is_refused(string option, string value, string code)
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("scatter", TheProgram.Example("tidewrack"), "--out", folder["s.piece.json"], option, value, "--json");
        Assert.Equal(2, ran.Code);
        Assert.Equal(code, (string?)JsonNode.Parse(ran.Out)!["error"]!["code"]);
    }

    private static string Counts(string file) =>
        JsonNode.Parse(TheProgram.Run("reckon", file, "--json").Out)!["counts"]!.ToJsonString();
}
