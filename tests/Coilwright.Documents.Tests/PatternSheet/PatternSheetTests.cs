using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Tests;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Pages.Composition;
using Coilwright.Documents.PatternSheet;
using Coilwright.Documents.Strips;
using Coilwright.Documents.Tests.Patterns;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.Tests.TurnRows;
using Coilwright.Wording;
using CsCheck;

namespace Coilwright.Documents.Tests.PatternSheet;

public sealed partial class PatternSheetTests : IDisposable
{
    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    public static TheoryData<string> Names => DrawnPieces.Names;

    private static PageDocument Sheet(Reckoned reckoned, PageSetup? setup = null) => PatternSheetDocument.Of(reckoned, null, setup ?? new(), Languages.English);

    private static byte[] File(Reckoned reckoned, string name, PageSetup? setup = null)
    {
        var file = DocumentFiles.Of(DocumentKinds.PatternSheet, reckoned, setup ?? new(), Languages.English).Single(f => f.Name == name);
        Assert.Empty(file.Faults);
        return file.Bytes.ToArray();
    }

    private static IEnumerable<Block> Flat(IEnumerable<Block> blocks) => blocks.SelectMany(b => Flat(b switch
    {
        Block.InColumns columns => columns.Blocks,
        Block.KeepTogether together => together.Blocks,
        Block.Note note => note.Blocks,
        Block.Beside beside => beside.Cells.SelectMany(c => c.Blocks),
        _ => [],
    }).Prepend(b));

    private static string Words(Reckoned reckoned) => string.Join('\n', DocumentTexts.Of(Sheet(reckoned)).Select(t => t.Text));

    /// <summary>Beads by key letter, added up from the steps as a maker reads them: "String 2 A, 3 times (1 B, 1 A)." Shares no code with the sheet.</summary>
    private static Dictionary<string, int> CountedFromSteps(IEnumerable<string> steps) =>
        steps.SelectMany(StepReader.Strung).CountBy(letter => letter).ToDictionary(StringComparer.Ordinal);

    private static Dictionary<string, int> CountedFromMaterials(PageDocument sheet) => Flat(sheet.Blocks).OfType<Block.Table>().Single(t => t.Name == "Materials").Rows
        .Where(r => !r[0].Text.IsEmpty).ToDictionary(r => r[0].Text.PlainText, r => int.Parse(r[4].Text.PlainText, CultureInfo.InvariantCulture));

    private static string[] Steps(PageDocument sheet) => [.. Flat(sheet.Blocks).OfType<Block.List>().Where(l => l.Kind == ListKind.Ticked).SelectMany(l => l.Items)
        .Select(i => i.PlainText).Where(t => IsStringing().IsMatch(t))];

    [Theory, MemberData(nameof(Names))]
    public void Counts_in_the_steps_add_up_to_the_materials_list(string name)
    {
        var sheet = Sheet(DrawnPieces.Reckoned(name));
        var materials = CountedFromMaterials(sheet);
        Assert.Equal(materials.OrderBy(m => m.Key, StringComparer.Ordinal), CountedFromSteps(Steps(sheet)).OrderBy(m => m.Key, StringComparer.Ordinal));
        Assert.Equal(DrawnPieces.Reckoned(name).Piece.Order.Count, materials.Values.Sum());
    }

    [Fact]
    public void Counts_add_up_for_any_piece() => RandomPieces.Pieces.Sample(piece =>
    {
        var sheet = Sheet(DrawnPieces.Reckon(piece));
        Assert.Equal(CountedFromMaterials(sheet).OrderBy(m => m.Key, StringComparer.Ordinal),
            CountedFromSteps(Steps(sheet)).OrderBy(m => m.Key, StringComparer.Ordinal));
    }, iter: 60);

    [Theory, MemberData(nameof(Names))]
    public void Every_bead_stands_on_exactly_one_strip(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var strips = TurnStrip.Of(reckoned, Languages.English);
        Assert.Equal(reckoned.Lie.Count, strips.Sum(s => s.Beads));
        Assert.Equal(reckoned.Lie.BeadedMm, strips.Sum(s => s.WireMm), 1e-6);
    }

    [Theory, MemberData(nameof(Names))]
    public void Two_beads_on_a_strip_are_as_far_apart_as_on_the_wire(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var first = 0;
        foreach (var strip in TurnStrip.Of(reckoned, Languages.English))
        {
            var stamps = strip.Picture.Marks.OfType<Documents.Drawing.Group>().First().Marks.OfType<Documents.Drawing.Stamp>().Select(s => s.At.XMm).Order().ToArray();
            var wire = Enumerable.Range(first, strip.Beads).Select(reckoned.Lie.BeadMiddleMm).Order().ToArray();
            Assert.Equal(strip.Beads, stamps.Length);
            // Sums of doubles.
            for (var i = 1; i < stamps.Length; i++) Assert.Equal(wire[i] - wire[0], stamps[i] - stamps[0], 1e-6);
            first += strip.Beads;
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void A_sheet_is_the_same_file_every_time_in_any_locale(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var first = DocumentFiles.Of(DocumentKinds.PatternSheet, reckoned, new(), Languages.English).ToArray();
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var second = DocumentFiles.Of(DocumentKinds.PatternSheet, reckoned, new(), Languages.English).ToArray();
            Assert.Equal(first.Select(f => f.Name), second.Select(f => f.Name));
            foreach (var (one, other) in first.Zip(second)) Assert.Equal(one.Bytes.ToArray(), other.Bytes.ToArray());
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_sheet_is_sound_and_has_its_parts_in_order(string name)
    {
        foreach (var setup in new[] { new PageSetup(), new PageSetup { Paper = Paper.Letter, LargePrint = true, Greyscale = true } })
        {
            var pdf = _place.File("sheet.pdf", File(DrawnPieces.Reckoned(name), "sheet.pdf", setup));
            Assert.Contains("No syntax", Programs.Output("qpdf", "--check", pdf), StringComparison.Ordinal);
            var told = Programs.Output("pdfinfo", "-struct-text", pdf);
            var at = -1;
            foreach (var part in new[] { "Finished size", "Tools", "Cautions", "Materials", "Steps", "To begin", "To finish", "Other sizes", "Strips at true size" })
            {
                var found = told.IndexOf($"\"{part}", StringComparison.Ordinal);
                Assert.True(found > at, $"{part} is not where it should be");
                at = found;
            }
            Assert.Equal([], Programs.Output("pdffonts", pdf).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..].Where(f => !EmbeddedFace().IsMatch(f)));
        }
    }

    // Pixels at 300 dots to the inch; a pixel at either end.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_check_ruler_measures_what_it_says_on_paper(bool large)
    {
        var pdf = _place.File("sheet.pdf", File(DrawnPieces.Reckoned("single"), "sheet.pdf", new PageSetup { LargePrint = large }));
        var pages = int.Parse(PagesLine().Match(Programs.Output("pdfinfo", pdf)).Groups[1].Value, CultureInfo.InvariantCulture);
        var number = Enumerable.Range(1, pages).Single(n => Programs.Output("pdftotext", "-f", $"{n}", "-l", $"{n}", pdf, "-").Contains("Measure this ruler", StringComparison.Ordinal));
        var page = Poppler.Draw(pdf, number, 300);
        var lines = new List<double>();
        for (var y = 0; y < page.Height; y++)
        {
            var longest = 0;
            for (int x = 0, run = 0; x < page.Width; x++) longest = Math.Max(longest, run = page.Dark(x, y) ? run + 1 : 0);
            lines.Add(longest / 300.0 * 25.4);
        }
        // Its line ends at the outer edges of its last ticks' middles. Lines under table heads are longer, a strip's own ruler is shorter.
        Assert.Contains(lines, mm => mm is >= 100 - 0.17 and <= 100 + 0.4);
    }

    [Fact]
    public void Html_of_every_example_is_valid()
    {
        var files = DrawnPieces.Names.Select(n => _place.File(n.Data + ".html", File(DrawnPieces.Reckoned(n.Data), "sheet.html"))).ToArray();
        var (_, output, complaint) = Programs.Run("java", ["-jar", Path.Combine(Programs.NodeModules, "vnu-jar/build/dist/vnu.jar"), "--format", "json", "--stdout", .. files]);
        using var told = System.Text.Json.JsonDocument.Parse(output.Length > 0 ? output : complaint);
        Assert.Equal("", string.Join("\n", told.RootElement.GetProperty("messages").EnumerateArray().Select(m => m.GetProperty("message").GetString())));
    }

    [Fact]
    public void Cautions_stand_where_they_apply()
    {
        var cautions = Languages.English.Cautions;
        string child = Words(DrawnPieces.Reckoned("child")), tidewrack = Words(DrawnPieces.Reckoned("tidewrack"));
        foreach (var words in new[] { child, tidewrack })
            foreach (var caution in cautions.OfMemoryWire.Append(cautions.SmallParts)) Assert.Contains(caution, words, StringComparison.Ordinal);
        // Tidewrack has silver in it; the child's piece has no material of metal.
        Assert.Contains(cautions.Metals, tidewrack, StringComparison.Ordinal);
        Assert.DoesNotContain(cautions.Metals, child, StringComparison.Ordinal);
    }

    [Fact]
    public void What_stops_the_piece_is_said_before_the_wire_is_cut()
    {
        var piece = DrawnPieces.Repeat() with { Beads = [.. DrawnPieces.Repeat().Beads.Select((b, i) => i == 0 ? DrawnPieces.With(b, d => d with { BoreMm = 0.3 }) : b)] };
        var blocks = Sheet(DrawnPieces.Reckon(piece)).Blocks;
        var note = Assert.IsType<Block.Note>(blocks[2]);
        Assert.Contains("will not go on", string.Join(' ', Flat([note]).OfType<Block.List>().SelectMany(l => l.Items).Select(i => i.PlainText)), StringComparison.Ordinal);
    }

    [Fact]
    public void Wire_to_cut_is_told_in_loops_millimetres_and_inches()
    {
        var reckoned = DrawnPieces.Reckoned("boardwalk");
        var words = Words(reckoned);
        Assert.Contains("Cut " + Languages.English.Number(reckoned.Wire.LoopsToCut, 1) + " loops of wire: " + Languages.English.LengthUp(reckoned.Wire.CutMm) + ".", words, StringComparison.Ordinal);
        Assert.Matches(@"loops of wire: \d+ mm \(\d+( \d+/\d+)? in\)\.", words);
    }

    [Fact]
    public void Ends_in_caps_are_glued_and_need_no_pliers()
    {
        var piece = DrawnPieces.Single();
        var words = Words(DrawnPieces.Reckon(piece with
        {
            Ends = piece.Ends with { Start = new WireEnd(EndFinish.GluedCap, 4), Finish = new WireEnd(EndFinish.GluedCap, 4) },
        }));
        Assert.Contains("Glue the starting end into its cap, 4 mm deep", words, StringComparison.Ordinal);
        Assert.Contains("glue for metal", words, StringComparison.Ordinal);
        Assert.DoesNotContain("pliers\n", words, StringComparison.Ordinal);
    }

    [Theory, InlineData(false), InlineData(true)]
    public void A_dangle_is_hung_in_its_loop_and_stands_among_the_materials(bool large)
    {
        var piece = DrawnPieces.Single();
        var reckoned = DrawnPieces.Reckon(piece with
        {
            Ends = piece.Ends with { Start = new WireEnd(EndFinish.Dangle, 3) { Dangle = "silver leaf", DangleMm = 14.5 }, Finish = new WireEnd(EndFinish.GluedCap, 4) },
        });
        var sheet = PatternSheetDocument.Of(reckoned, null, new PageSetup { LargePrint = large }, Languages.English);
        var words = string.Join('\n', DocumentTexts.Of(sheet).Select(t => t.Text));
        Assert.Contains("hang the dangle (silver leaf) in it and close it", words, StringComparison.Ordinal);
        var rows = Flat(sheet.Blocks).OfType<Block.Table>().Single(t => t.Name == "Materials").Rows;
        Assert.All(rows, row => Assert.Equal(rows[0].Length, row.Length));
        Assert.Equal(large ? ["dangle: silver leaf, hangs 14.5 mm 1", "cap to glue on, 4 mm deep 1"] : ["dangle: silver leaf hangs 14.5 mm 1", "cap to glue on 4 mm deep 1"],
            rows[^2..].Select(row => string.Join(' ', row.Select(c => c.Text.PlainText).Where(t => t.Length > 0)).Replace('\u00a0', ' ')));
    }

    [Fact]
    public void Buy_quantities_and_cost_follow_the_pack()
    {
        // Boardwalk: 45 times (3 rounds, 1 spacer); rounds 65 to the strand at 3.40, spacers 50 to the bag at 2.20.
        var rows = Flat(Sheet(DrawnPieces.Reckoned("boardwalk")).Blocks).OfType<Block.Table>().Single(t => t.Name == "Materials").Rows;
        Assert.Equal(["135", "3\u00a0strands of\u00a065", "10.20"], rows[0].Skip(4).Select(c => c.Text.PlainText));
        Assert.Equal(["45", "1\u00a0bag of\u00a050", "2.20"], rows[1].Skip(4).Select(c => c.Text.PlainText));
        Assert.Contains("The packs cost 12.40 in all", Words(DrawnPieces.Reckoned("boardwalk")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_unit_of_sale_of_her_own_is_told_in_her_own_words()
    {
        var jar = SamplePieces.Bead("pip", "round", 6, with: d => d with { Pack = new Pack("jam jar", 4), Price = 2 });
        Assert.Contains("2 × jam jar of\u00a04", Words(DrawnPieces.Reckon(SamplePieces.Piece([jar], Enumerable.Repeat(0, 7)))), StringComparison.Ordinal);
    }

    private static Piece Kinds(int kinds, int beads) => SamplePieces.Piece(
        [.. Enumerable.Range(0, kinds).Select(i => SamplePieces.Bead("b" + i.ToString(CultureInfo.InvariantCulture), "round", 3 + i % 5))],
        Enumerable.Range(0, beads).Select(i => i * 7 % kinds));

    [Fact]
    public void More_kinds_than_letters_go_on_with_two()
    {
        var sheet = Sheet(DrawnPieces.Reckon(Kinds(30, 60)));
        var letters = CountedFromMaterials(sheet);
        Assert.Contains("AA", letters.Keys);
        Assert.Contains("AD", letters.Keys);
        Assert.Equal(letters.OrderBy(l => l.Key, StringComparer.Ordinal), CountedFromSteps(Steps(sheet)).OrderBy(l => l.Key, StringComparer.Ordinal));
    }

    [Fact]
    public void Two_thousand_beads_are_a_sheet_like_any_other()
    {
        var reckoned = DrawnPieces.Reckon(Kinds(12, 2000));
        Assert.Equal(2000, CountedFromMaterials(Sheet(reckoned)).Values.Sum());
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", _place.File("sheet.pdf", File(reckoned, "sheet.pdf"))), StringComparison.Ordinal);
    }

    // Rows of many turns go on from page to page; none is shrunk until its letters cannot be read.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void However_many_turns_there_are_no_picture_is_made_smaller_than_it_was_drawn(bool large)
    {
        var setup = new PageSetup { LargePrint = large };
        var pages = Composer.Compose(Sheet(DrawnPieces.Reckon(Kinds(3, 2000)), setup), setup);
        var drawn = pages.SelectMany(p => p.Marks).OfType<PageMark.Drawing>().ToArray();
        Assert.True(drawn.Count(d => d.Picture.Marks.OfType<Documents.Drawing.Group>().Any(g => g.Class == "row")) > 3, "The rows are meant to need several pages.");
        // A part whose rows are taller than most may give way a little.
        Assert.All(drawn, d => Assert.InRange(d.PointsPerMm * PageSetup.PointMm, 0.9, 1.5 + 1e-9));
    }

    [Fact]
    public void Every_row_is_drawn_once_over_all_parts()
    {
        var sheet = Sheet(DrawnPieces.Reckon(Kinds(3, 2000)));
        var rows = Flat(sheet.Blocks).OfType<Block.Figure>().SelectMany(f => f.Picture.Marks.OfType<Documents.Drawing.Group>()).Where(g => g.Class == "row").Select(g => g.Id).ToArray();
        Assert.Equal(Enumerable.Range(1, rows.Length).Select(r => "row-" + r.ToString(CultureInfo.InvariantCulture)), rows);
    }

    [Fact]
    public void A_single_bead_and_very_many_turns_have_no_coil_at_the_head()
    {
        bool HasCoil(Piece piece) => Flat(Sheet(DrawnPieces.Reckon(piece)).Blocks).OfType<Block.Figure>().Any(f => f.Picture.Marks.OfType<Documents.Drawing.Group>().Any(g => g.Class == "coil"));
        Assert.True(HasCoil(DrawnPieces.Repeat()));
        Assert.False(HasCoil(Kinds(1, 1)));
        Assert.False(HasCoil(Kinds(3, 2000)));
    }

    [Fact]
    public void Names_of_any_length_stay_on_the_page()
    {
        var word = new string('W', 300);
        var piece = SamplePieces.Piece([DrawnPieces.Named(word, SamplePieces.Bead("a", "round", 6, with: d => d with { Pack = new Pack(word, 40), Coating = word }))], Enumerable.Repeat(0, 40)) with { Title = word };
        var reckoned = DrawnPieces.Reckon(piece);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(File(reckoned, "sheet.pdf"));
        foreach (var page in pdf.GetPages()) Assert.All(page.Letters.Where(l => l.Value != " "), l => Assert.InRange(l.BoundingBox.Right, 0, page.Width - 20));
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(4.0)]
    public void Any_spread_of_the_beads_can_be_printed(double halfMm)
    {
        var bead = SamplePieces.Bead("a", "chip", 6, 6, 6, with: d => d with { Length = halfMm == 0 ? new BeadLength.Nominal(6) : new BeadLength.Range(6 - halfMm, 6 + halfMm) });
        Assert.NotEmpty(File(DrawnPieces.Reckon(SamplePieces.Piece([bead], Enumerable.Repeat(0, 60))), "sheet.pdf"));
    }

    [Theory]
    [InlineData("שלום", "ש (U+05E9)")]
    [InlineData("珠", "珠 (U+73E0)")]
    [InlineData("🧿 eye", "🧿 (U+1F9FF)")]
    public void A_script_that_the_typeface_lacks_is_named_and_the_web_page_has_it(string name, string named)
    {
        var piece = SamplePieces.Piece([DrawnPieces.Named(name, SamplePieces.Bead("a", "round", 6))], [0, 0]);
        var files = DocumentFiles.Of(DocumentKinds.PatternSheet, DrawnPieces.Reckon(piece), new(), Languages.English).ToDictionary(f => f.Name);
        Assert.True(files["sheet.pdf"].Bytes.IsEmpty);
        var fault = files["sheet.pdf"].Faults[0];
        Assert.Equal(FaultCodes.DocumentGlyphsMissing, fault.Code);
        Assert.StartsWith(named, fault.Values["characters"], StringComparison.Ordinal);
        Assert.Contains(name, Encoding.UTF8.GetString(files["sheet.html"].Bytes.Span), StringComparison.Ordinal);
        Assert.Contains(named, Languages.English.Say(fault).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Marks_of_ours_in_a_makers_words_do_no_harm()
    {
        var piece = DrawnPieces.Single() with { Title = "One \ue000A\ue001 two" };
        Assert.Equal("One A two", Sheet(DrawnPieces.Reckon(piece)).Title);
    }

    [GeneratedRegex(@"^String |: (?:each time )?\d+\s(?:[A-Z]+\b|times \()")]
    private static partial Regex IsStringing();

    [GeneratedRegex(@"\byes +yes +yes +\d+ +\d+\s*$")]
    private static partial Regex EmbeddedFace();

    [GeneratedRegex(@"Pages:\s+(\d+)")]
    private static partial Regex PagesLine();
}
