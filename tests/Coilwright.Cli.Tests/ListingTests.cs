using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Coilwright.Core.Measures;
using Coilwright.Storage;
using Coilwright.Wording;

namespace Coilwright.Cli.Tests;

/// <summary><c>listing</c>: what a buyer is told, and no figure of it typed twice.</summary>
public partial class ListingTests
{
    private static readonly AnswerSchema Schema = new("listing");

    [Theory]
    [InlineData("tidewrack", "en"), InlineData("tidewrack", "de"), InlineData("boardwalk", "en"), InlineData("boardwalk", "de")]
    public void Every_figure_of_the_text_is_one_that_was_reckoned(string example, string language)
    {
        var reckon = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example(example), "--json").Out)!;
        var listing = Schema.Valid(TheProgram.Run("listing", TheProgram.Example(example), "--language", language, "--json").Out);
        // What the report of the piece says, written a second time here: mm as the house rounds them, inches to the sixteenth.
        var data = DataFiles.LoadDefault().Data!;
        var piece = PieceFile.ReadFrom(TheProgram.Example(example), data).Piece!;
        List<double> mm = [.. new[] { "lengthMm", "widthMm", "thicknessMm", "insideMm", "insideAcrossMm", "suitsFromMm", "suitsToMm", "suitsBandMm" }.Select(n => (double)listing[n]!)];
        Assert.Equal((double)reckon["fit"]!["insideRelaxedMm"]!, (double)listing["insideMm"]!, 4);
        Assert.Equal((double)reckon["mass"]!["totalG"]!, (double)listing["massG"]!, 4);
        Assert.Equal((double)reckon["fit"]!["turnsWorn"]!, (double)listing["turns"]!, 6);
        foreach (var bead in piece.Beads) mm.AddRange([bead.LengthMm, bead.WidthMm]);
        mm.AddRange(JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example(example), "--json").Out)!["order"]!.AsArray().Select(b => (double)b!["lengthMm"]!));
        HashSet<string> known = [.. mm.Select(v => Number(v, v >= 100 ? 0 : 1)), .. mm.SelectMany(v => InchFraction.FromMm(v).ToString().Split(' ', '/'))];
        known.UnionWith(piece.Order.Kinds.GroupBy(k => k).Select(g => g.Count().ToString(CultureInfo.InvariantCulture)));
        known.UnionWith([Number(piece.Order.Count, 0), Number((double)listing["turns"]!, 1), Number((double)listing["massG"]!, 1), Number((double)listing["massG"]! / 28.349523125, 2), Number(piece.Wire.WireMm, 2)]);
        // A bead's own name may have a size in it, as its maker wrote it.
        var text = piece.Beads.Aggregate((string)listing["text"]!, (t, bead) => t.Replace(bead.Name, "", StringComparison.Ordinal));
        var figures = Figures().Matches(text).Select(m => m.Value.Replace(',', '.')).ToArray();
        Assert.True(figures.Length > 30);
        Assert.All(figures, f => Assert.Contains(f, known));

        static string Number(double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Inches_and_ounces_are_the_millimetres_and_grams()
    {
        var listing = Schema.Valid(TheProgram.Run("listing", TheProgram.Example("tidewrack"), "--json").Out);
        foreach (var name in new[] { "length", "width", "thickness", "inside", "insideAcross" }) Assert.Equal((double)listing[name + "Mm"]! / 25.4, (double)listing[name + "In"]!, 5);
        Assert.Equal((double)listing["massG"]! / (453.59237 / 16), (double)listing["massOz"]!, 5);
        Assert.Equal(109, listing["materials"]!.AsArray().Sum(m => (int)m!["beads"]!));
    }

    [Theory, InlineData("en"), InlineData("de")]
    public void The_short_form_keeps_to_its_length_and_begins_with_the_name(string language)
    {
        using var folder = new OwnFolder();
        foreach (var title in new[] { "x", "Tidewrack", new string('t', 158), string.Concat(Enumerable.Repeat("𝄞", 90)) })
        {
            var path = folder["p.piece.json"];
            File.WriteAllText(path, File.ReadAllText(TheProgram.Example("tidewrack")).Replace("\"title\": \"Tidewrack\"", $"\"title\": \"{title}\"", StringComparison.Ordinal));
            var summary = (string)Schema.Valid(TheProgram.Run("listing", path, "--language", language, "--json").Out)["summary"]!;
            Assert.True(summary.Length <= ListingSentences.MostInShort);
            Assert.StartsWith(title[..1], summary, StringComparison.Ordinal);
            Assert.False(char.IsHighSurrogate(summary[^2]));
        }
    }

    [Fact]
    public void It_answers_will_it_fit_me_and_ends_with_1_when_it_does_not()
    {
        var yes = TheProgram.Run("listing", TheProgram.Example("tidewrack"), "--wrist", "6 1/2in", "--json");
        Assert.Equal((0, "yes"), (yes.Code, (string)Schema.Valid(yes.Out)["fit"]!["answer"]!));
        Assert.Equal(165.1, (double)Schema.Valid(yes.Out)["fit"]!["wristMm"]!, 4);
        var loose = TheProgram.Run("listing", TheProgram.Example("tidewrack"), "--wrist", "13 cm");
        Assert.Equal(1, loose.Code);
        Assert.Contains("No: it would hang loose", loose.Out.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Null(Schema.Valid(TheProgram.Run("listing", TheProgram.Example("tidewrack"), "--json").Out)["fit"]);
    }

    [Theory, InlineData("16,5 cm"), InlineData("twelve"), InlineData("10"), InlineData("900 mm")]
    public void A_wrist_that_is_none_is_refused(string wrist)
    {
        var ran = TheProgram.Run("listing", TheProgram.Example("tidewrack"), "--wrist", wrist);
        Assert.Equal(2, ran.Code);
        Assert.Contains("--wrist", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_text_is_written_as_it_is_copied()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("listing", TheProgram.Example("boardwalk"), "--out", folder["l.txt"], "--json");
        Assert.Equal(0, ran.Code);
        Assert.Equal((string)Schema.Valid(ran.Out)["text"]! + "\n", File.ReadAllText(folder["l.txt"]));
        Assert.Equal(2, TheProgram.Run("listing", TheProgram.Example("boardwalk"), "--out", Path.Combine(folder["none"], "l.txt")).Code);
    }

    [Theory, InlineData("en"), InlineData("de")]
    public void Cautions_stand_in_every_text_and_nothing_claims_to_comply(string language)
    {
        var words = Languages.Find(language)!;
        foreach (var example in new[] { "tidewrack", "boardwalk" })
        {
            var text = (string)Schema.Valid(TheProgram.Run("listing", TheProgram.Example(example), "--language", language, "--json").Out)["text"]!;
            Assert.Contains(words.Cautions.SmallParts, text, StringComparison.Ordinal);
            Assert.Contains(words.Listing.MetalsNote, text, StringComparison.Ordinal);
            Assert.DoesNotMatch("(?i)nickel-?free|lead-?free|compliant|complies|certified|hypoallergenic|nickelfrei|bleifrei|zertifiziert|antiallergisch", text);
        }
    }

    [Fact]
    public void The_figures_behind_the_cautions_are_those_of_the_rules_and_every_language_has_words_for_them()
    {
        var rules = File.ReadLines(Path.Combine(TheProgram.Root, "tests", "Coilwright.Core.Tests", "Reference", "jewellery-limits.csv")).Where(l => !l.StartsWith('#')).Skip(1)
            .Select(l => l.Split(',')).ToDictionary(c => c[0], c => (Value: double.Parse(c[1], CultureInfo.InvariantCulture), Unit: c[2]));
        var cautions = DataFiles.LoadCautions(DataFiles.DefaultFolder).Cautions!;
        Assert.Equal((rules["inside"].Value, rules["shallow"].Value, rules["deep"].Value), (cautions.SmallParts.InsideMm, cautions.SmallParts.ShallowMm, cautions.SmallParts.DeepMm));
        Assert.All(cautions.Metals, m => Assert.Equal(rules[m.Key], (m.Value, m.Unit)));
        var data = DataFiles.LoadDefault().Data!;
        foreach (var language in Languages.All)
        {
            Assert.Equal(cautions.Metals.Select(m => m.Key).Order(StringComparer.Ordinal), language.Listing.Limits.Keys.Order(StringComparer.Ordinal));
            Assert.Equal(data.Materials.Keys, language.Listing.Materials.Keys.Order(StringComparer.Ordinal));
            Assert.Equal(data.Steels.Keys, language.Listing.Steels.Keys.Order(StringComparer.Ordinal));
        }
    }

    [GeneratedRegex(@"\d+([.,]\d+)?")]
    private static partial Regex Figures();
}
