using System.Text;
using System.Text.Json.Nodes;
using Coilwright.Storage;
using Coilwright.Wording;
using CsCheck;

namespace Coilwright.Cli.Tests;

/// <summary>Whatever is wrong with a piece is said in whole sentences, and every field of a piece has a maker's words.</summary>
public class EveryFaultIsSaidTests
{
    private static readonly Core.Pieces.ReckoningData Data = DataFiles.LoadDefault().Data!;

    private static readonly string[] Texts = [.. TheProgram.Examples.Select(File.ReadAllText), Pieces.Sound];

    // What a slip of the pen leaves: a word gone or replaced by another, a figure of the wrong kind or size, a sign missing.
    private static readonly string[] Slips =
        ["", "0", "-1", "1e9", "1e999", "\"\"", "\"abc\"", "null", "true", "[]", "{}", "[1, 2]", "\"id\"", "\"round\"", "\"mirror\"", ",", "\"A B\"", "0.001", "7 1/2"];

    [Fact]
    public void Any_slip_in_any_place_is_said_without_a_gap()
    {
        var seen = new System.Collections.Concurrent.ConcurrentDictionary<string, int>();
        Gen.Select(Gen.Int[0, Texts.Length - 1], Gen.Int[0, int.MaxValue], Gen.Int[0, Slips.Length - 1], Gen.Int[0, int.MaxValue]).Sample((which, place, slip, second) =>
        {
            var text = Texts[which];
            var tokens = Tokens(text);
            var (from, to) = tokens[place % tokens.Count];
            var wrong = text[..from] + Slips[slip] + text[to..];
            var read = PieceFile.Read(Encoding.UTF8.GetBytes(wrong), "x.piece.json", Data);
            foreach (var fault in read.Faults)
            {
                seen.AddOrUpdate(fault.Code, 1, (_, n) => n + 1);
                foreach (var language in Languages.All)
                {
                    var words = language.Say(fault);
                    var all = $"{words.Message} {words.Mend}";
                    Assert.DoesNotContain(Template.Missing, all, StringComparison.Ordinal);
                    Assert.DoesNotContain("{", all, StringComparison.Ordinal);
                    Assert.NotEmpty(words.Rule);
                    Assert.NotEqual(fault.Code, words.Message);
                }
            }
        }, iter: 4000, threads: 1);
        // The slips must reach far into the codes, or this test says little.
        Assert.True(seen.Count >= 20, $"Only {seen.Count} codes were met: {string.Join(", ", seen.Keys.Order(StringComparer.Ordinal))}");
    }

    [Fact]
    public void Every_field_of_a_piece_has_words_of_the_trade()
    {
        var schema = JsonNode.Parse(File.ReadAllText(Path.Combine(TheProgram.Root, "docs", "piece.schema.json")))!;
        var names = new SortedSet<string>(StringComparer.Ordinal);
        Collect(schema, names);
        Assert.Contains("boreMm", names);
        Assert.All(Languages.All, language => Assert.Equal([], names.Except(language.Fields.Keys)));
    }

    private static void Collect(JsonNode? node, SortedSet<string> names)
    {
        if (node is JsonArray items)
            foreach (var item in items) Collect(item, names);
        if (node is not JsonObject fields) return;
        foreach (var (name, value) in fields)
        {
            if (name == "properties" && value is JsonObject properties)
                foreach (var (property, _) in properties) names.Add(property);
            Collect(value, names);
        }
    }

    /// <summary>Where the words, figures and signs of a JSON text stand.</summary>
    private static List<(int From, int To)> Tokens(string text)
    {
        var tokens = new List<(int, int)>();
        for (var i = 0; i < text.Length;)
        {
            if (char.IsWhiteSpace(text[i]))
            {
                i++;
                continue;
            }
            var from = i;
            if (text[i] == '"')
            {
                do i += text[i] == '\\' ? 2 : 1; while (text[i] != '"');
                i++;
            }
            else if (char.IsLetterOrDigit(text[i]) || text[i] == '-')
                while (i < text.Length && (char.IsLetterOrDigit(text[i]) || text[i] is '.' or '-' or '+')) i++;
            else i++;
            tokens.Add((from, i));
        }
        return tokens;
    }
}
