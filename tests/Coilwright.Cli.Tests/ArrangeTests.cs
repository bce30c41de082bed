using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>arrange</c>: what it finds, writes and says.</summary>
public class ArrangeTests
{
    private static readonly AnswerSchema Schema = new("arrange");

    // Clusters of three rounds that stand in columns on this wrist, and a wish that they do not.
    private static readonly string InColumns = Pieces.With("18 (3 round, spacer)", "trio = 3 round\",\n\"14 (trio, 2 spacer)")
        .Replace("\"order\"", "\"wishes\": { \"liningUp\": \"mix\", \"wrists\": [{ \"wristMm\": 152 }] }, \"order\"", StringComparison.Ordinal);

    [Fact]
    public void What_it_writes_lines_up_less()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["columns.piece.json"], InColumns);
        var ran = TheProgram.Run("arrange", folder["columns.piece.json"], "--out", folder["better.piece.json"], "--effort", "1", "--json");
        Assert.Equal(0, ran.Code);
        var answer = Schema.Valid(ran.Out);
        var before = (double)answer["before"]!["againstWish"]!;
        var ideas = answer["ideas"]!.AsArray();
        Assert.NotEmpty(ideas);
        Assert.All(ideas, idea => Assert.True((double)idea!["againstWish"]! < before));
        // The file that it wrote, reckoned anew, does as it said of the best.
        var (was, now) = (CoverOf(folder["columns.piece.json"]), CoverOf(folder["better.piece.json"]));
        Assert.True(now < was, $"{was} to {now}");
        var best = ideas.MinBy(idea => (double)idea!["againstWish"]!)!;
        var reckoned = JsonNode.Parse(TheProgram.Run("reckon", folder["better.piece.json"], "--json").Out)!;
        Assert.Equal((double)best["beadedMm"]!, (double)reckoned["lengths"]!["beadedMm"]!);
        Assert.Equal((double)best["cutMm"]!, (double)reckoned["lengths"]!["cutMm"]!);
    }

    [Fact]
    public void The_same_effort_and_seed_print_the_same_and_a_language_changes_only_words()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["columns.piece.json"], InColumns);
        string Run(params string[] more) => TheProgram.Run(["arrange", folder["columns.piece.json"], "--out", folder["b.piece.json"], "--effort", "1", "--seed", "9", .. more]).Out;
        var first = Run("--json");
        Assert.Equal(first, Run("--json"));
        var (english, german) = (Schema.Valid(first), Schema.Valid(Run("--json", "--language", "de")));
        foreach (var idea in english["ideas"]!.AsArray().Concat(german["ideas"]!.AsArray())) (idea!["says"], idea["why"]) = (null, null);
        Assert.Equal(english.ToJsonString(), german.ToJsonString());
    }

    [Fact]
    public void Groups_that_may_change_places_do_and_the_sentences_say_which()
    {
        using var folder = new OwnFolder();
        // Two kinds of cluster, each four times in a row: over each other on the next turn.
        File.WriteAllText(folder["free.piece.json"], Pieces.With("18 (3 round, spacer)", "trio = 3 round\",\n\"pair = 2 round, 2 spacer\",\n\"3 (trio, spacer, trio, spacer, pair, spacer, pair, spacer)")
            .Replace("\"order\"", "\"wishes\": { \"liningUp\": \"mix\", \"free\": { \"groupOrder\": true, \"lengthWithinMm\": 9 }, \"wrists\": [{ \"wristMm\": 152 }] }, \"order\"", StringComparison.Ordinal));
        string[] call = ["arrange", folder["free.piece.json"], "--out", folder["b.piece.json"], "--effort", "1"];
        var answer = Schema.Valid(TheProgram.Run([.. call, "--json"]).Out);
        Assert.Equal(12, (int)answer["groups"]!);
        var moved = answer["ideas"]!.AsArray().Where(idea => idea!["swaps"]!.AsArray().Count > 0).ToArray();
        Assert.NotEmpty(moved);
        Assert.All(moved, idea => Assert.Contains(idea!["says"]!.AsArray(), s => ((string)s!).Contains("change places", StringComparison.Ordinal)));
        Assert.Contains("tauschen die Plätze", TheProgram.Run([.. call, "--language", "de"]).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_focal_off_the_top_is_brought_there_by_another_start_and_the_file_says_so()
    {
        using var folder = new OwnFolder();
        var piece = JsonNode.Parse(File.ReadAllText(Path.Combine(TheProgram.Root, "examples", "tidewrack.piece.json")))!;
        piece["wearer"]!["startAngleDeg"] = 150;
        piece["wishes"]!["judgedBy"] = "nineteenInTwenty";
        piece["wishes"]!["wrists"] = new JsonArray(new JsonObject { ["wristMm"] = 165 });
        piece["wishes"]!["free"] = JsonNode.Parse("""{ "startAngle": { "fromDeg": -180, "toDeg": 180 } }""");
        File.WriteAllText(folder["off.piece.json"], piece.ToJsonString());
        string[] call = ["arrange", folder["off.piece.json"], "--out", folder["b.piece.json"], "--effort", "1"];
        var answer = Schema.Valid(TheProgram.Run([.. call, "--json"]).Out);
        Assert.Equal("nineteenInTwenty", (string?)answer["judgedBy"]);
        var idea = Assert.Single(answer["ideas"]!.AsArray(), i => (string?)i!["kind"] == "otherStart")!;
        Assert.Equal(0, (int)idea["changed"]!);
        Assert.InRange(Math.Abs((double)idea["focalAngleDeg"]!), 0, 15.5);
        var written = JsonNode.Parse(File.ReadAllText(folder["b.piece.json"]))!;
        Assert.Equal((double)idea["startAngleDeg"]!, (double)written["wearer"]!["startAngleDeg"]!);
        Assert.Contains("The start", TheProgram.Run(call).Out, StringComparison.Ordinal);
        Assert.Contains("Der Anfang", TheProgram.Run([.. call, "--language", "de"]).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Rules_that_contradict_are_named()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["columns.piece.json"], InColumns.Replace("\"wrists\"", "\"apart\": [{ \"name\": \"trio\", \"beside\": \"trio\" }], \"longestRun\": [{ \"name\": \"spacer\", \"most\": 3 }], \"wrists\"", StringComparison.Ordinal));
        var answer = Schema.Valid(TheProgram.Run("arrange", folder["columns.piece.json"], "--out", folder["b.piece.json"], "--json").Out);
        Assert.Equal("noneAllowed", (string?)answer["whyNone"]);
        var conflict = Assert.Single(answer["conflict"]!.AsArray())!;
        Assert.Equal(("rule", "apart", "trio"), ((string?)conflict["rule"], (string?)conflict["of"], (string?)conflict["names"]![0]));
        var text = TheProgram.Run("arrange", folder["columns.piece.json"], "--out", folder["b.piece.json"]).Out.ReplaceLineEndings(" ");
        Assert.Contains("trio apart from trio", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_wish_it_says_so_and_writes_nothing()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["plain.piece.json"], Pieces.Sound);
        var ran = TheProgram.Run("arrange", folder["plain.piece.json"], "--out", folder["better.piece.json"]);
        Assert.Equal(0, ran.Code);
        Assert.Contains("no wish for what lines up", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.False(File.Exists(folder["better.piece.json"]));
        Assert.Equal("noWish", (string?)Schema.Valid(TheProgram.Run("arrange", folder["plain.piece.json"], "--out", folder["better.piece.json"], "--json").Out)["whyNone"]);
    }

    [Fact]
    public void When_the_time_is_up_what_was_found_is_an_answer()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("arrange", TheProgram.Example("boardwalk"), "--out", folder["better.piece.json"], "--seconds", "0.5", "--json");
        Assert.Equal(0, ran.Code);
        Assert.True((bool)Schema.Valid(ran.Out)["wasStopped"]!);
    }

    [Theory]
    [InlineData("--effort", "0", "effort-form")]
    [InlineData("--effort", "1.5", "effort-form")]
    [InlineData("--effort", "100001", "effort-form")]
    [InlineData("--seconds", "0", "seconds-form")]
    [InlineData("--seconds", "soon", "seconds-form")]
    [InlineData("--seed", "-1", "seed-form")]
    public void A_wrong_number_is_told(string option, string value, string code)
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("arrange", TheProgram.Example("boardwalk"), "--out", folder["b.piece.json"], option, value, "--json");
        Assert.Equal(2, ran.Code);
        Assert.Equal("usage." + code, (string)JsonNode.Parse(ran.Out)!["error"]!["code"]!);
        Assert.False(File.Exists(folder["b.piece.json"]));
    }

    [Fact]
    public void An_effort_and_a_time_together_are_refused_and_so_is_no_file()
    {
        var both = TheProgram.Run("arrange", TheProgram.Example("boardwalk"), "--out", "x", "--effort", "3", "--seconds", "3", "--json");
        Assert.Equal("usage.not-both", (string)JsonNode.Parse(both.Out)!["error"]!["code"]!);
        var none = TheProgram.Run("arrange", TheProgram.Example("boardwalk"), "--json");
        Assert.Equal((2, "usage.option-missing"), (none.Code, (string)JsonNode.Parse(none.Out)!["error"]!["code"]!));
    }

    private static double CoverOf(string path) => (double)JsonNode.Parse(TheProgram.Run("reckon", path, "--json").Out)!["alignment"]!["cover"]!;
}
