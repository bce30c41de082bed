using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>batch</c>: several of a piece alike.</summary>
public class BatchTests
{
    private static readonly AnswerSchema Schema = new("batch");

    private static readonly string Costs = Path.Combine(TheProgram.Root, "examples", "studio.costs.json");

    [Fact]
    public void Ten_alike_take_ten_times_the_beads_and_the_wire_and_the_timed_steps()
    {
        var one = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example("tidewrack"), "--json").Out)!;
        var batch = Schema.Valid(TheProgram.Run("batch", TheProgram.Example("tidewrack"), "--costs", Costs, "--json").Out);
        Assert.Equal(10 * (int)one["totals"]!["beads"]!, batch["fetch"]!.AsArray().Sum(f => (int)f!["count"]!));
        Assert.Equal(10 * (double)one["lengths"]!["cutMm"]!, (double)batch["cutAllMm"]!, 2);
        // The example's steps of pieces: 8, 26 and 7 minutes for each, 20 once.
        Assert.Equal((430m, 43m), ((decimal)batch["minutes"]!, (decimal)batch["minutesEach"]!));
        Assert.Equal((int)one["totals"]!["beads"]!, batch["wells"]!.AsArray().Sum(w => (int)w!["count"]!));
    }

    [Theory, InlineData("en"), InlineData("de")]
    public void Without_timed_steps_no_time_is_told(string language)
    {
        var batch = Schema.Valid(TheProgram.Run("batch", TheProgram.Example("boardwalk"), "--count", "3", "--wells", "2", "--rounds", "20", "--language", language, "--json").Out);
        Assert.Null(batch["minutes"]);
        Assert.Contains(Wording.Languages.Find(language)!.Batch.NoTimes, batch["says"]!.AsArray().Select(s => (string)s!));
        Assert.True((int)batch["traysEach"]! > 1);
    }

    // Tidewrack takes 862 mm: by hand, an offcut of 950 gives one length and coils of 12 loops of 188.5 mm, 2262 mm, give two each.
    [Fact]
    public void The_wire_at_hand_is_cut_as_cut_has_it_and_too_little_is_told()
    {
        using var folder = new OwnFolder();
        var piece = JsonNode.Parse(File.ReadAllText(TheProgram.Example("tidewrack")))!["stringingMaterial"]!;
        string Wire(int packs) => folder.Write($"{packs}.wire.json", $$"""{ "format": "coilwright.wire/1", "wire": [{ "name": "packs", "wireMm": {{piece["wireMm"]!.ToJsonString()}}, "loopMm": 188.5, "wireLengthMm": 2262, "howMany": {{packs}} }, { "name": "tin", "wireMm": {{piece["wireMm"]!.ToJsonString()}}, "loopMm": 188.5, "wireLengthMm": 950, "offcut": true }] }""");
        string[] call = ["batch", TheProgram.Example("tidewrack"), "--count", "5", "--json", "--wire"];
        var batch = Schema.Valid(TheProgram.Run([.. call, Wire(3)]).Out);
        Assert.True((bool)batch["wireIsEnough"]!);
        Assert.Equal([("tin", 1, 1), ("packs", 2, 2)], batch["coils"]!.AsArray().Select(c => ((string)c!["name"]!, (int)c["times"]!, (int)c["lengths"]!)));
        var cut = JsonNode.Parse(TheProgram.Run("cut", TheProgram.Example("tidewrack"), "--count", "tidewrack=5", "--stock", Wire(3), "--json").Out)!;
        Assert.True((bool)cut["comesOut"]!);
        var ran = TheProgram.Run([.. call, Wire(1)]);
        Assert.Equal((1, false), (ran.Code, (bool)Schema.Valid(ran.Out)["wireIsEnough"]!));
        Assert.Equal(2, TheProgram.Run([.. call, folder["none.wire.json"]]).Code);
        // The paper has it too.
        Schema.Valid(TheProgram.Run([.. call, Wire(3), "--out", folder["with"]]).Out);
        Schema.Valid(TheProgram.Run(["batch", TheProgram.Example("tidewrack"), "--count", "5", "--json", "--out", folder["without"]]).Out);
        foreach (var name in new[] { "tin", "packs" }) Assert.Contains($"\"{name}\"", System.Net.WebUtility.HtmlDecode(File.ReadAllText(Path.Combine(folder["with"], "batch.html"))), StringComparison.Ordinal);
        Assert.DoesNotContain("packs", File.ReadAllText(Path.Combine(folder["without"], "batch.html")), StringComparison.Ordinal);
    }

    [Theory, InlineData("--count", "0"), InlineData("--count", "ten"), InlineData("--wells", "0"), InlineData("--rounds", "1001"), InlineData("--paper", "a3"), InlineData("--costs", "none.costs.json")]
    public void A_wrong_call_is_refused(string option, string value) => Assert.Equal(2, TheProgram.Run("batch", TheProgram.Example("tidewrack"), option, value).Code);

    [Fact]
    public void The_same_batch_writes_the_same_papers()
    {
        using var folder = new OwnFolder();
        foreach (var name in new[] { "a", "b" }) Assert.Equal(4, Schema.Valid(TheProgram.Run("batch", TheProgram.Example("tidewrack"), "--out", folder[name], "--json").Out)["written"]!.AsArray().Count);
        foreach (var file in Directory.GetFiles(folder["a"])) Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(Path.Combine(folder["b"], Path.GetFileName(file))));
    }
}
