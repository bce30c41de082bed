using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>settle</c>: how a piece lies when it is worn, and reckoning with that.</summary>
public class SettleTests
{
    private static readonly AnswerSchema Schema = new("settle"), ReckonSchema = new("reckon");

    [Theory]
    [InlineData("boardwalk")]
    [InlineData("tidewrack")]
    [InlineData("puddle-hop")]
    public void An_example_settles(string name)
    {
        var ran = TheProgram.Run("settle", TheProgram.Example(name), "--json");
        var answer = Schema.Valid(ran.Out);
        Assert.Equal("settled", (string?)answer["outcome"]);
        Assert.Equal(0, ran.Code);
        Assert.NotEmpty(answer["order"]!.AsArray());
        Assert.NotEmpty(answer["pushes"]!.AsArray());
        Assert.Equal(0, (double)answer["solved"]!["worstOverlapMm"]!);
    }

    // A steel spring is at rest where no force over 1e-6 N is left (Settling): what did not come to rest tells that more was left, and the way it went.
    [Theory]
    [InlineData("165", true)]
    [InlineData("300", false)]
    public void The_path_of_the_search_is_told_whether_or_not_it_found_a_rest(string wrist, bool rests)
    {
        var answer = Schema.Valid(TheProgram.Run("settle", TheProgram.Example("puddle-hop"), "--wrist", wrist, "--json").Out);
        Assert.Equal(rests ? ("settled", null) : ("didNotSettle", "fallsOff"), ((string?)answer["outcome"], (string?)answer["reason"]));
        var solved = answer["solved"]!;
        Assert.Equal(4, solved["stageSteps"]!.AsArray().Count);
        Assert.Equal((int)solved["steps"]!, solved["stageSteps"]!.AsArray().Sum(s => (int)s!));
        Assert.True((int)solved["steps"]! > 0);
        Assert.Equal(rests, (double)solved["residualN"]! <= 1e-6);
        // It starts as a round coil that goes round the oval wrist, whose half width is over that of a round one.
        Assert.True((double)solved["startRadiusMm"]! > double.Parse(wrist, System.Globalization.CultureInfo.InvariantCulture) / (2 * Math.PI));
        Assert.True((double)solved["startPitchMm"]! > 0);
        Assert.Equal(rests, solved["onEdge"] is not null);
        Assert.Equal(rests, solved["worstOverlapMm"] is not null);
    }

    // Rubbing keeps it from rolling where its coefficient is M / sum(F d) or more; one lies still on the other on a slope of which that is the tangent (C.-A. Coulomb's law, from memory).
    [Fact]
    public void Of_a_focal_that_tips_it_says_what_would_keep_it_straight()
    {
        var answer = Schema.Valid(TheProgram.Run("settle", TheProgram.Example("tidewrack"), "--json").Out);
        var kept = answer["focalKept"]!;
        var most = answer["focal"]!.AsArray().MaxBy(f => Math.Abs((double)f!["tipsDeg"]!))!;
        Assert.Equal((string?)most["arm"], (string?)kept["arm"]);
        var friction = (double)kept["leastFriction"]!;
        Assert.Equal((double)kept["holdNmm"]! / (double)kept["pressesNmm"]!, friction, 3);
        var slope = Math.Round(Math.Atan(friction) * 180 / Math.PI).ToString(System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains($"at a slope of {slope}°", answer["says"]!.AsArray().Select(s => (string)s!).Single(s => s.Contains("set straight", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Null(Schema.Valid(TheProgram.Run("settle", TheProgram.Example("boardwalk"), "--json").Out)["focalKept"]);
    }

    [Fact]
    public void It_says_in_words_how_it_sits()
    {
        var english = TheProgram.Run("settle", TheProgram.Example("puddle-hop")).Out;
        Assert.Contains("of its beads touch the wrist.", english, StringComparison.Ordinal);
        Assert.Contains("Off the wrist it goes", english, StringComparison.Ordinal);
        Assert.All(english.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("Abgelegt geht es", TheProgram.Run("settle", TheProgram.Example("puddle-hop"), "--language", "de").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Reckoned_as_it_sits_the_turn_is_the_settled_one()
    {
        var settled = Schema.Valid(TheProgram.Run("settle", TheProgram.Example("puddle-hop"), "--wrist", "170", "--json").Out);
        var reckoned = ReckonSchema.Valid(TheProgram.Run("reckon", TheProgram.Example("puddle-hop"), "--wrist", "170", "--settled", "--json").Out);
        var circumference = (double)settled["worn"]!["circumferenceMm"]!;
        Assert.Equal(circumference, (double)reckoned["fit"]!["wornCircumferenceMm"]!);
        Assert.Equal(circumference, (double)reckoned["settled"]!["wornCircumferenceMm"]!);
        Assert.NotEqual(circumference, (double)reckoned["settled"]!["quickCircumferenceMm"]!);
        Assert.Contains("Reckoned as it sits", TheProgram.Run("reckon", TheProgram.Example("puddle-hop"), "--settled").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_settled_says_why_and_stops()
    {
        using var folder = new OwnFolder();
        // No steel is named in it.
        File.WriteAllText(folder["plain.piece.json"], Pieces.Sound);
        var ran = TheProgram.Run("settle", folder["plain.piece.json"], "--json");
        Assert.Equal(1, ran.Code);
        var answer = Schema.Valid(ran.Out);
        Assert.Equal("didNotSettle", (string?)answer["outcome"]);
        Assert.Equal("steelUnknown", (string?)answer["reason"]);
        // The search was never begun.
        Assert.Equal("""{"steps":0,"stageSteps":[],"residualN":null,"worstOverlapMm":null,"onEdge":null,"startRadiusMm":null,"startPitchMm":null}""", answer["solved"]!.ToJsonString());
        Assert.Contains("steel is not known", TheProgram.Run("settle", folder["plain.piece.json"]).Out, StringComparison.Ordinal);
        var reckoned = ReckonSchema.Valid(TheProgram.Run("reckon", folder["plain.piece.json"], "--settled", "--json").Out);
        Assert.Null(reckoned["settled"]!["wornCircumferenceMm"]);
        Assert.Contains("Reckoned quickly after all", TheProgram.Run("reckon", folder["plain.piece.json"], "--settled").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--wrist", "20", "usage.length-bounds")]
    [InlineData("--aspect", "0.1", "usage.share-form")]
    [InlineData("--aspect", "0,7", "usage.share-form")]
    [InlineData("--taper", "1", "usage.share-form")]
    [InlineData("--arm", "hangng", "word.unknown")]
    [InlineData("--language", "xx", "word.unknown")]
    public void A_wrong_option_is_refused(string option, string value, string code)
    {
        var ran = TheProgram.Run("settle", TheProgram.Example("puddle-hop"), option, value, "--json");
        Assert.Equal(2, ran.Code);
        Assert.Equal(code, (string?)JsonNode.Parse(ran.Out)!["error"]!["code"]);
    }

    // Hanging or held up, what holds it from sliding pulls the other way.
    [Fact]
    public void The_arm_is_held_as_asked()
    {
        double Sliding(string arm, string told)
        {
            var answer = Schema.Valid(TheProgram.Run("settle", TheProgram.Example("puddle-hop"), "--arm", arm, "--json").Out);
            Assert.Equal(told, (string?)answer["wrist"]!["arm"]);
            return (double)answer["held"]!["slidingN"]!;
        }
        var (hanging, heldUp) = (Sliding("hanging", "hanging"), Sliding("held-up", "heldUp"));
        Assert.True(hanging * heldUp < 0, $"{hanging} {heldUp}");
        Assert.Contains("Worked out with the arm upright, the finishing end down.", TheProgram.Run("settle", TheProgram.Example("puddle-hop"), "--arm", "hanging").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_model_is_written_as_it_sits_and_not_where_it_does_not()
    {
        using var folder = new OwnFolder();
        Assert.Equal(0, TheProgram.Run("settle", TheProgram.Example("puddle-hop"), "--glb", folder["sits.glb"]).Code);
        var bytes = File.ReadAllBytes(folder["sits.glb"]);
        // Magic and version of the format, then its JSON, which says how it is posed.
        Assert.Equal("glTF"u8.ToArray(), bytes[..4]);
        Assert.Contains("\"pose\":\"settled\"", System.Text.Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        // No steel is named in it.
        File.WriteAllText(folder["plain.piece.json"], Pieces.Sound);
        Assert.Equal(1, TheProgram.Run("settle", folder["plain.piece.json"], "--glb", folder["none.glb"]).Code);
        Assert.False(File.Exists(folder["none.glb"]));
        Assert.Equal(2, TheProgram.Run("settle", TheProgram.Example("puddle-hop"), "--glb", Path.Combine(folder.Path, "no", "such", "sits.glb")).Code);
    }

    [Fact]
    public void What_settling_found_stands_among_the_notices()
    {
        var path = TheProgram.Example("tidewrack");
        string[] Codes(params string[] more) => [.. ReckonSchema.Valid(TheProgram.Run(["reckon", path, "--json", .. more]).Out)["notices"]!.AsArray().Select(n => (string)n!["code"]!)];
        // Its focal is drilled under its back, on a wire that lets it roll.
        Assert.DoesNotContain("focal-tips", Codes());
        Assert.Contains("focal-tips", Codes("--settled"));
    }

    [Fact]
    public void A_turn_is_given_or_settled_not_both()
    {
        var ran = TheProgram.Run("reckon", TheProgram.Example("puddle-hop"), "--settled", "--worn-circumference", "190", "--json");
        Assert.Equal(2, ran.Code);
        Assert.Equal("usage.not-both", (string?)JsonNode.Parse(ran.Out)!["error"]!["code"]);
    }
}
