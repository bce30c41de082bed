using System.Text.Json;
using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary>The JSON that outsiders were promised: docs/reckon.schema.json and docs/error.schema.json.</summary>
public class ReckonJsonTests
{
    private static readonly AnswerSchema ReckonSchema = new("reckon");
    private static readonly AnswerSchema ErrorSchema = new("error");

    public static TheoryData<string> Examples => [.. TheProgram.Examples.Select(p => Path.GetRelativePath(TheProgram.Root, p))];

    // The keys of the command line's contract, path by path; [] is any item of a list.
    private static readonly string[] Promised =
    [
        "schema", "totals.beads", "counts", "lengths.ruledMm", "lengths.beadedMm", "lengths.cutMm", "fit.wornCircumferenceMm", "fit.wirePerTurnMm",
        "fit.turnsWorn", "fit.fits", "alignment.cover", "alignment.coverExact", "alignment.share", "alignment.chance", "alignment.relative",
        "alignment.rank", "alignment.strictRelative", "alignment.pairs", "alignment.curve", "mass.totalG", "order[].index", "order[].bead",
        "order[].turn", "order[].startMm", "order[].lengthMm", "order[].shareMm", "order[].angleDeg", "notices",
    ];

    [Theory, MemberData(nameof(Examples))]
    public void Every_example_answers_as_the_schema_says_with_every_key_that_was_promised(string example)
    {
        var ran = TheProgram.Run("reckon", example, "--json");
        Assert.True(ran.Code is 0 or 1, ran.Error);
        Assert.Empty(ran.Error);
        var answer = ReckonSchema.Valid(ran.Out);
        foreach (var path in Promised) Assert.True(Has(answer, path), $"{path} is not there");
        AssertEveryNullSaysWhy(answer, "");
    }

    [Theory, MemberData(nameof(Examples))]
    public void Every_examples_numbers_agree_with_one_another(string example)
    {
        var answer = JsonNode.Parse(TheProgram.Run("reckon", example, "--json").Out)!;
        var order = answer["order"]!.AsArray();
        Assert.Equal((int)answer["totals"]!["beads"]!, order.Count);
        foreach (var (bead, count) in answer["counts"]!.AsObject()) Assert.Equal((int)count!, order.Count(b => (string)b!["bead"]! == bead));
        // Each number is rounded to 4 decimals, so a sum of n may be off by n halves of the last digit.
        var tolerance = order.Count * 0.5e-4;
        Assert.Equal((double)answer["lengths"]!["beadedMm"]!, order.Sum(b => (double)b!["shareMm"]!), tolerance);
        Assert.Equal((double)answer["lengths"]!["ruledMm"]!, order.Sum(b => (double)b!["lengthMm"]!), tolerance);
        var stops = answer["notices"]!.AsArray().Any(n => (string)n!["severity"]! == "stop");
        Assert.Equal(!stops, (bool)answer["fit"]!["fits"]!);
    }

    [Theory, MemberData(nameof(Examples))]
    public void The_same_piece_and_seed_give_the_same_bytes(string example)
    {
        var first = TheProgram.Run("reckon", example, "--json", "--seed", "7");
        var second = TheProgram.Run("reckon", example, "--json", "--seed", "7");
        Assert.Equal(first.OutBytes, second.OutBytes);
        Assert.Contains("\"seed\": 7", first.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_wrist_is_reckoned_on_that_wrist()
    {
        var here = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--wrist", "190.5", "--json").Out)!;
        var inches = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--wrist", "7 1/2in", "--json").Out)!;
        Assert.Equal(190.5, (double)here["wristMm"]!);
        Assert.True(JsonNode.DeepEquals(here, inches));
    }

    [Fact]
    public void A_measured_circumference_overrules_the_reckoning()
    {
        var answer = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--worn-circumference", "201.25", "--json").Out)!;
        Assert.Equal(201.25, (double)answer["fit"]!["wornCircumferenceMm"]!);
        Assert.Equal("given", (string)answer["fit"]!["wornBy"]!);
    }

    [Fact]
    public void Numbers_have_no_more_decimals_than_promised()
    {
        var answer = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--wrist", "163.3", "--json").Out)!;
        var seen = 0;
        Walk(answer, "", (name, value) =>
        {
            if (value.GetValueKind() != JsonValueKind.Number) return;
            seen++;
            var most = name.EndsWith("Deg", StringComparison.Ordinal) ? 3
                : name.EndsWith("Mm", StringComparison.Ordinal) || name.EndsWith('G') || name.EndsWith("MPa", StringComparison.Ordinal)
                    || name.EndsWith("Nmm", StringComparison.Ordinal) ? 4 : 6;
            var text = value.ToJsonString();
            Assert.DoesNotContain("E", text, StringComparison.OrdinalIgnoreCase);
            Assert.True(text.Length - 1 - text.IndexOf('.', StringComparison.Ordinal) <= most || !text.Contains('.', StringComparison.Ordinal), $"{name}: {text}");
        });
        Assert.True(seen > 500, "The test saw too few numbers to mean anything.");
    }

    [Fact]
    public void A_wrong_piece_answers_as_the_schema_of_errors_says_and_names_them_all()
    {
        using var folder = new OwnFolder();
        var path = folder.Write("bad.piece.json", Pieces.With("\"boreMm\": 1.0", "\"boreMm\": -0.2").Replace("3 round", "3 rund", StringComparison.Ordinal));
        var ran = TheProgram.Run("reckon", path, "--json");
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Error);
        var error = ErrorSchema.Valid(ran.Out)["error"]!;
        Assert.Equal("value.above", (string)error["code"]!);
        Assert.Equal(path, (string)error["file"]!);
        Assert.Equal(5, (int)error["line"]!);
        Assert.True((int)error["column"]! > 1);
        Assert.Equal("beads[0].boreMm", (string)error["field"]!);
        Assert.Equal("-0.2", (string)error["value"]!);
        Assert.Equal("It must be more than 0 mm.", (string)error["rule"]!);
        Assert.Equal("The hole (\"boreMm\") is -0.2 mm. It must be more than 0 mm.", (string)error["message"]!);
        var more = Assert.Single(error["more"]!.AsArray());
        Assert.Equal("order.unknown-name", (string)more!["code"]!);
    }

    [Theory]
    [InlineData("usage.verb-unknown", "rekon", "x")]
    [InlineData("usage.option-unknown", "reckon", "x", "--wrost", "5")]
    [InlineData("usage.option-empty", "reckon", "x", "--wrist")]
    [InlineData("usage.option-twice", "reckon", "x", "--wrist", "150", "--wrist", "160")]
    [InlineData("usage.word-too-many", "reckon", "x", "y")]
    [InlineData("usage.piece-missing", "reckon")]
    [InlineData("usage.length-comma", "reckon", "x", "--wrist", "160,5")]
    [InlineData("usage.length-form", "reckon", "x", "--wrist", "wide")]
    [InlineData("usage.length-bounds", "reckon", "x", "--wrist", "9999")]
    [InlineData("usage.seed-form", "reckon", "x", "--seed", "-1")]
    [InlineData("file.unreadable", "reckon", "nowhere.piece.json")]
    [InlineData("file.unreadable", "reckon", "src")]
    public void A_wrong_call_answers_as_json_too(string code, params string[] args)
    {
        var ran = TheProgram.Run([.. args, "--json"]);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Error);
        var error = ErrorSchema.Valid(ran.Out)["error"]!;
        Assert.Equal(code, (string)error["code"]!);
        Assert.DoesNotContain("(?)", (string)error["message"]!, StringComparison.Ordinal);
    }

    private static bool Has(JsonNode? node, string path)
    {
        foreach (var step in path.Replace("[]", ".[]", StringComparison.Ordinal).Split('.'))
        {
            if (step == "[]")
            {
                node = node!.AsArray()[0];
                continue;
            }
            if (node is not JsonObject fields || !fields.ContainsKey(step)) return false;
            node = fields[step];
        }
        return true;
    }

    private static void AssertEveryNullSaysWhy(JsonNode? node, string path)
    {
        if (node is JsonArray items)
            for (var i = 0; i < items.Count; i++) AssertEveryNullSaysWhy(items[i], $"{path}[{i}]");
        if (node is not JsonObject fields) return;
        foreach (var (name, value) in fields)
        {
            // A notice about no one bead is not a reading that is missing.
            if (value is null && !(name == "bead" && path.StartsWith(".notices", StringComparison.Ordinal)))
            {
                var message = (string?)fields["why"]?[name]?["message"];
                Assert.False(string.IsNullOrEmpty(message), $"{path}.{name} is null and does not say why");
                Assert.NotEqual(message, (string?)fields["why"]![name]!["code"]);
            }
            AssertEveryNullSaysWhy(value, $"{path}.{name}");
        }
    }

    private static void Walk(JsonNode? node, string name, Action<string, JsonValue> visit)
    {
        switch (node)
        {
            case JsonObject fields:
                foreach (var (inner, value) in fields) Walk(value, inner is "from" or "to" ? name : inner, visit);
                break;
            case JsonArray items:
                foreach (var item in items) Walk(item, name, visit);
                break;
            case JsonValue value:
                visit(name, value);
                break;
        }
    }
}
