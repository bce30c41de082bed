using System.Globalization;
using System.Text.Json.Nodes;
using Coilwright.Core.Palettes;
using Coilwright.Wording;

namespace Coilwright.Cli.Tests;

/// <summary><c>palette</c>: what it finds and says, and what it refuses.</summary>
public class PaletteTests
{
    private static readonly AnswerSchema Schema = new("palette");

    [Theory, InlineData("en"), InlineData("de")]
    public void Every_example_has_its_palette_in_both_forms(string language)
    {
        foreach (var example in TheProgram.Examples)
        {
            var ran = TheProgram.Run("palette", example, "--language", language, "--json");
            Assert.Equal(0, ran.Code);
            var answer = Schema.Valid(ran.Out);
            var text = TheProgram.Run("palette", example, "--language", language);
            Assert.Equal(0, text.Code);
            Assert.DoesNotContain(Template.Missing, text.Out, StringComparison.Ordinal);
            Assert.All(text.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
            foreach (var sight in Languages.Find(language)!.Palette.Sights.Values) Assert.Contains(sight, text.Out, StringComparison.Ordinal);
            // The piece's own count of neighbours, a second time: each place where the kind changes, of kinds with a colour.
            var order = JsonNode.Parse(TheProgram.Run("reckon", example, "--json").Out)!["order"]!.AsArray().Select(b => (string)b!["bead"]!).ToArray();
            HashSet<string> coloured = [.. answer["kinds"]!.AsArray().Select(k => (string)k!["bead"]!)];
            Assert.Equal(order.Zip(order.Skip(1)).Count(p => p.First != p.Second && coloured.Contains(p.First) && coloured.Contains(p.Second)), answer["pairs"]!.AsArray().Sum(p => (int)p!["places"]!));
            Assert.Equal(order.Distinct().Count(), coloured.Count + answer["withoutColour"]!.AsArray().Count);
        }
    }

    [Fact]
    public void What_vanishes_is_said_with_its_letters_and_where()
    {
        using var folder = new OwnFolder();
        var same = folder.Write("same.piece.json", Pieces.With("\"material\": \"brass\"", "\"colours\": [\"#418f85\"], \"material\": \"brass\""));
        var ran = TheProgram.Run("palette", same);
        Assert.Equal(0, ran.Code);
        Assert.Contains("! A Green round and B Brass spacer vanish beside each other: in 35 places along", ran.Out, StringComparison.Ordinal);
        Assert.Contains("To keep them apart", ran.Out, StringComparison.Ordinal);
        var pair = Assert.Single(Schema.Valid(TheProgram.Run("palette", same, "--json").Out)["pairs"]!.AsArray())!;
        Assert.Equal(("vanishes", true, 35), ((string)pair["seen"]!["full"]!["told"]!, (bool)pair["beside"]!, (int)pair["places"]!));
    }

    [Fact]
    public void A_piece_of_one_colour_has_nothing_to_compare_and_says_so()
    {
        using var folder = new OwnFolder();
        var path = folder.Write("one.piece.json", Pieces.Sound);
        var answer = Schema.Valid(TheProgram.Run("palette", path, "--json").Out);
        Assert.Null(answer["alongMean"]);
        Assert.Equal("no-colours-beside", (string)answer["why"]!["alongMean"]!["code"]!);
        Assert.Equal("spacer", (string)Assert.Single(answer["withoutColour"]!.AsArray())!);
        Assert.Contains("B Brass spacer has no colour written down", TheProgram.Run("palette", path).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void On_another_wrist_other_beads_lie_over_each_other()
    {
        string Over(params string[] more) => string.Join(' ', JsonNode.Parse(TheProgram.Run(["palette", TheProgram.Example("tidewrack"), "--json", .. more]).Out)!["pairs"]!.AsArray()
            .Select(p => ((double)p!["overMm"]!).ToString(CultureInfo.InvariantCulture)));
        Assert.NotEqual(Over(), Over("--wrist", "185"));
    }

    [Fact]
    public void What_cannot_be_read_ends_with_2()
    {
        Assert.Equal(2, TheProgram.Run("palette", "no-such.piece.json").Code);
        Assert.Equal(2, TheProgram.Run("palette", TheProgram.Example("tidewrack"), "--wrist", "900").Code);
        Assert.All(Languages.All, l => Assert.Equal(Enum.GetValues<Sight>(), l.Palette.Sights.Keys.Order()));
        Assert.All(Languages.All, l => Assert.Equal(Enum.GetValues<Sight>(), l.Palette.Explained.Keys.Order()));
    }
}
