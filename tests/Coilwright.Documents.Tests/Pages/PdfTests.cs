using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Coilwright.Core.Faults;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Tests.Rasters;
using Coilwright.Documents.Tests.Rendering;
using UglyToad.PdfPig.Content;

namespace Coilwright.Documents.Tests.Pages;

/// <summary>What we write is read back by a library and by programs that share no code with it.</summary>
public sealed partial class PdfTests : IDisposable
{
    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    public static TheoryData<string> Setups => [.. All.Keys];

    private static readonly Dictionary<string, PageSetup> All = new()
    {
        ["A4"] = new(),
        ["Letter"] = new() { Paper = Paper.Letter },
        ["large print"] = new() { LargePrint = true },
        ["greyscale"] = new() { Greyscale = true },
        ["Letter, large print, greyscale"] = new() { Paper = Paper.Letter, LargePrint = true, Greyscale = true },
    };

    private static byte[] Bytes(PageDocument document, PageSetup? setup = null)
    {
        var drawn = new PdfCanvas().Draw(document, setup ?? new());
        Assert.Empty(drawn.Faults);
        return drawn.Bytes.ToArray();
    }

    private string Written(PageDocument document, PageSetup? setup = null) => _place.File("page.pdf", Bytes(document, setup));

    private string Written(PageSetup? setup, params ReadOnlySpan<Block> blocks) => Written(SampleDocument.Of(blocks), setup);

    private static string Collapsed(string text) => Spaces().Replace(text, " ").Trim();

    [Theory, MemberData(nameof(Setups))]
    public void The_structure_of_the_file_is_sound(string setup)
    {
        var said = Programs.Output("qpdf", "--check", Written(SampleDocument.Everything, All[setup]));
        Assert.DoesNotContain("WARNING", said, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("No syntax or stream encoding errors found", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_face_is_embedded_in_part_and_tells_its_letters()
    {
        var faces = Programs.Output("pdffonts", Written(SampleDocument.Everything)).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];
        Assert.Equal(3, faces.Length);
        // Columns at the end: embedded, subset, with a map back to Unicode, then the object's number and generation.
        Assert.All(faces, f => Assert.Matches(@"Atkinson Hyperlegible Next.*\byes +yes +yes +\d+ +\d+\s*$", f));
    }

    [Fact]
    public void Words_are_whole_and_in_order()
    {
        var file = Written(null,
            new Block.Heading(1, "Heron"),
            new Block.Paragraph("Cut " + RichText.Strong("3 1/4 loops") + " of wire, which is 612 mm; String 12 " + RichText.Key("A") + " then " + RichText.Emphasis("one") + "."),
            new Block.List(ListKind.Numbered, ["First of all.", "Then the other."]),
            new Block.Table([new("Bead"), new("Use", CellAlign.Right)], [["Sea glass round", "48"], ["Łódź œuvre", "6"]]) { Name = "Materials" });
        Assert.Equal(
            "Heron Cut 3 1/4 loops of wire, which is 612 mm; String 12 A then one. 1. First of all. 2. Then the other. "
            + "Bead Use Sea glass round 48 Łódź œuvre 6 Heron, a sample Page 1 of 1",
            Collapsed(Programs.Output("pdftotext", file, "-")));
    }

    [Fact]
    public void Columns_are_read_one_after_the_other_by_tag()
    {
        var words = Enumerable.Range(1, 60).Select(i => "w" + i.ToString(CultureInfo.InvariantCulture)).ToArray();
        var file = Written(null, new Block.InColumns(2, [new Block.Paragraph(string.Join(' ', words[..30])), new Block.Paragraph(string.Join(' ', words[30..]))]));
        var told = Collapsed(Programs.Output("pdfinfo", "-struct-text", file).Replace("\"", "", StringComparison.Ordinal));
        Assert.Contains(string.Join(' ', words[..30]), told, StringComparison.Ordinal);
        Assert.True(told.IndexOf("w30", StringComparison.Ordinal) < told.IndexOf("w31", StringComparison.Ordinal));
    }

    [Fact]
    public void Headings_lists_tables_and_figures_are_tagged()
    {
        var file = Written(SampleDocument.Everything);
        var told = Programs.Output("pdfinfo", "-struct-text", file);
        var tags = told.Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0 && l[0] is not ('"' or '/'))
            .Select(l => l.Split(' ', ':')[0]).ToArray();
        Assert.Equal("Document", tags[0]);
        Assert.Equal(["H1", "H2", "H2", "H2", "H3", "H3", "H2"], tags.Where(t => t[0] == 'H'));
        Assert.Equal(1, tags.Count(t => t == "Table"));
        Assert.Equal(4, tags.Count(t => t == "TH"));
        Assert.Equal(12, tags.Count(t => t == "TD"));
        Assert.Equal(9, tags.Count(t => t == "LI"));
        Assert.Equal(4, tags.Count(t => t == "Figure"));
        Assert.Equal(4, Scope().Count(told));
        // Decoration is not read: the foot is in the text and not among the tags.
        Assert.Contains("Page 1 of", Programs.Output("pdftotext", file, "-"), StringComparison.Ordinal);
        Assert.DoesNotContain("Page 1 of", told, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_say_what_they_show_and_where_they_lie()
    {
        var bytes = Bytes(SampleDocument.Of(new Block.Figure(SampleDocument.Beads(80), "Ten beads, A and B by turns")));
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(bytes);
        var text = Encoding.Latin1.GetString(bytes);
        Assert.Contains("/Alt(Ten beads, A and B by turns)", text, StringComparison.Ordinal);
        var box = BBox().Match(text);
        var numbers = box.Groups[1].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture) * PageSetup.PointMm).ToArray();
        // From the page's left bottom corner: 21 mm in, 17 mm down from 297 mm; 80 by 16 mm. Tolerance: three decimals of a point are printed.
        double[] expected = [21, 297 - 17 - 16, 101, 297 - 17];
        for (var i = 0; i < 4; i++) Assert.Equal(expected[i], numbers[i], 0.001);
    }

    [Fact]
    public void Marked_content_and_text_objects_nest_on_every_page()
    {
        // PDF 32000-1, 14.6: a marked-content sequence lies wholly within a text object or wholly contains it.
        PageDocument Twice(Block block) => SampleDocument.Of(block, new Block.NewPage(), block);
        var files = new List<byte[]>
        {
            Bytes(Twice(new Block.Figure(SampleDocument.Beads(80), "Beads"))), Bytes(Twice(new Block.Paragraph("Words"))),
            Bytes(Twice(new Block.Figure(new Picture(60, 45, "t", "d", [new LaidRaster(SampleRasters.Read(SampleRasters.Png(400, 300)), new Box(0, 0, 60, 45))]), "Pixels"))), Bytes(Twice(SampleDocument.Everything.Blocks[5])),
        };
        files.AddRange(All.Values.Select(setup => Bytes(SampleDocument.Everything, setup)));
        var streams = 0;
        foreach (Match stream in files.SelectMany(f => Content().Matches(Encoding.Latin1.GetString(f))))
        {
            streams++;
            var open = new Stack<string>();
            foreach (var word in stream.Groups[1].Value.Replace(">>", ">> ", StringComparison.Ordinal).Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries))
                if (word is "BT" or "BDC" or "BMC") open.Push(word);
                else if (word is "ET") Assert.Equal("BT", open.Pop());
                else if (word is "EMC") Assert.NotEqual("BT", open.Pop());
            Assert.Empty(open);
        }
        Assert.True(streams >= 8 + 3 * All.Count);
    }

    [Fact]
    public void Language_and_title_are_told_and_the_window_shows_the_title()
    {
        var bytes = Bytes(SampleDocument.Of() with { Title = "Łódź & <Söhne>", Language = "de" });
        Assert.Contains("Łódź & <Söhne>", Programs.Output("pdfinfo", _place.File("title.pdf", bytes)), StringComparison.Ordinal);
        var text = Encoding.Latin1.GetString(bytes);
        Assert.Matches(@"/Lang\s*\(de\)", text);
        Assert.Matches(@"/DisplayDocTitle\s+true", text);
        Assert.Matches(@"/Marked\s+true", text);
        var metadata = XDocument.Parse(Programs.Output("pdfinfo", "-meta", _place.File("title.pdf")).Trim());
        Assert.Contains("Łódź & <Söhne>", metadata.Root!.Value, StringComparison.Ordinal);
    }

    // Reference: ISO 216 A4 210 x 297 mm; ANSI/ASME Y14.1 size A (Letter) 8 1/2 x 11 in. Tolerance: three decimals of a point are printed.
    [Theory]
    [InlineData("A4", 210, 297)]
    [InlineData("Letter", 8.5 * 25.4, 11 * 25.4)]
    public void Pages_are_of_the_papers_size(string setup, double widthMm, double heightMm)
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(Bytes(SampleDocument.Everything, All[setup]));
        Page first = pdf.GetPage(1), last = pdf.GetPage(pdf.NumberOfPages);
        Assert.Equal((widthMm, heightMm), (first.Width * PageSetup.PointMm, first.Height * PageSetup.PointMm), new Near(0.001));
        Assert.Equal((heightMm, widthMm), (last.Width * PageSetup.PointMm, last.Height * PageSetup.PointMm), new Near(0.001));
    }

    [Theory, MemberData(nameof(Setups))]
    public void Everything_on_a_page_lies_within_its_margins(string setup)
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(Bytes(SampleDocument.Everything, All[setup]));
        foreach (var page in pdf.GetPages())
        {
            var side = (page.Width > page.Height ? 13 : 21) / PageSetup.PointMm;
            // A letter's ink may reach a little beyond its width, and a strip is cut through a letter: half an em of the largest small print.
            Assert.All(page.Letters.Where(l => l.Value != " "), l => Assert.InRange(l.BoundingBox.Left, side - 8, page.Width - side));
            Assert.All(page.Letters.Where(l => l.Value != " "), l => Assert.InRange(l.BoundingBox.Right, side, page.Width - side + 8));
        }
    }

    // Found by eye: rulers were saw teeth and lines ran through words, because the figures of an outline were joined.
    [Fact]
    public void An_outline_of_several_figures_is_drawn_as_an_independent_renderer_draws_it()
    {
        Coilwright.Documents.Drawing.Point At(double x, double y) => new(x, y);
        var pen = new Pen(default, 1);
        var apart = Outline.Together([Outline.Line(At(5, 5), At(35, 5)), Outline.Line(At(65, 5), At(95, 5)), Outline.Line(At(50, 10), At(50, 20))]);
        var mixed = Outline.Together([Outline.Rectangle(Box.At(5, 30, 30, 20)), Outline.Rectangle(Box.At(12, 35, 16, 10)), Outline.Line(At(60, 30), At(90, 50)), Outline.Arc(At(75, 40), 14, 200, 250)]);
        var picture = new Picture(100, 60, "Figures", "Figures",
        [
            new Drawn(apart, Paint.Lined(pen)), new Drawn(mixed, new Paint(PageInks.Accent, pen)),
            new Drawn(Outline.Together([Outline.Line(At(5, 55), At(45, 55)), Outline.Line(At(55, 55), At(95, 55))]), Paint.Lined(pen with { DashesMm = [3, 2] })),
        ]);
        // The same 100 by 60 mm at 127 dots to the inch, 5 to the millimetre; the page's frame begins at 21 and 17 mm.
        var page = Poppler.Draw(Written(null, new Block.Figure(picture, "Figures")), 1, 127);
        var drawn = Rsvg.Draw(SvgCanvas.Write(picture), 500);
        var differ = 0;
        for (var y = 0; y < 300; y++)
            for (var x = 0; x < 500; x++)
            {
                var (red, _, _, opacity) = drawn[x, y];
                var seen = red * opacity / 255 + (255 - opacity);
                if (Math.Abs(page[105 + x, 85 + y].Red - seen) > 128) differ++;
            }
        // Of 150,000 pixels some 9,000 are inked; edges may fall on either side of a pixel, which at this size is a few in a hundred of the ink.
        Assert.InRange(differ, 0, 300);
    }

    // Pixels at 300 dots to the inch: 11.811 to the millimetre. Tolerance: a pixel at either end, 0.17 mm together, where the edge falls between two.
    [Theory, MemberData(nameof(Setups))]
    public void A_strip_printed_is_as_long_as_it_says(string setup)
    {
        var file = Written(All[setup], new Block.NewPage(true), new Block.Strip(SampleDocument.CheckBar(150), "Bar"));
        Assert.InRange(Inked(Poppler.Draw(file, 1, 300)).Sum() / 300.0 * 25.4, 150 - 0.17, 150 + 0.17);
    }

    [Theory, MemberData(nameof(Setups))]
    public void The_lengths_of_a_cut_strip_make_up_the_whole(string setup)
    {
        var file = Written(All[setup], new Block.NewPage(true), new Block.Strip(SampleDocument.CheckBar(600), "Bar"));
        var lengths = Inked(Poppler.Draw(file, 1, 300)).ToArray();
        Assert.Equal(3, lengths.Length);
        Assert.InRange(lengths.Sum() / 300.0 * 25.4, 600 - 3 * 0.17, 600 + 3 * 0.17);
    }

    /// <summary>Lengths of the long dark bars on a page, pixels: one for each bar.</summary>
    private static IEnumerable<int> Inked(Pixels page)
    {
        var within = false;
        for (var y = 0; y < page.Height; y++)
        {
            int run = 0, longest = 0;
            for (var x = 0; x < page.Width; x++)
            {
                run = page.Dark(x, y) ? run + 1 : 0;
                longest = Math.Max(longest, run);
            }
            var bar = longest > 300; // No letter is an inch wide.
            if (bar && !within) yield return longest;
            within = bar;
        }
    }

    [Fact]
    public void A_greyscale_page_has_no_colour_and_a_colour_page_has()
    {
        static bool Coloured(Pixels page)
        {
            for (var y = 0; y < page.Height; y++)
                for (var x = 0; x < page.Width; x++)
                    if (page[x, y] is var (r, g, b) && (r != g || g != b)) return true;
            return false;
        }
        Assert.True(Coloured(Poppler.Draw(Written(SampleDocument.Everything), 1, 50)));
        Assert.False(Coloured(Poppler.Draw(Written(SampleDocument.Everything, All["greyscale"]), 1, 50)));
    }

    [Fact]
    public void The_same_document_is_the_same_file()
    {
        var first = Bytes(SampleDocument.Everything);
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(first, Bytes(SampleDocument.Everything));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
        Assert.All(Enumerable.Range(0, 8).AsParallel().Select(_ => Bytes(SampleDocument.Everything)).ToArray(), b => Assert.Equal(first, b));
    }

    [Fact]
    public void Another_document_is_another_file_with_another_id_and_face_tags()
    {
        string one = Encoding.Latin1.GetString(Bytes(SampleDocument.Of(new Block.Paragraph("One")))),
            two = Encoding.Latin1.GetString(Bytes(SampleDocument.Of(new Block.Paragraph("Two"))));
        Assert.NotEqual(Id().Match(one).Value, Id().Match(two).Value);
        Assert.NotEqual(FaceTag().Match(one).Value, FaceTag().Match(two).Value);
    }

    [Fact]
    public void A_date_is_the_documents_own_or_none()
    {
        Assert.DoesNotContain("Date", Encoding.Latin1.GetString(Bytes(SampleDocument.Of())), StringComparison.Ordinal);
        var dated = Written(SampleDocument.Of() with { Created = new DateTimeOffset(2024, 2, 29, 12, 30, 15, TimeSpan.FromHours(2)) });
        Assert.Contains("2024-02-29T10:30:15Z", Programs.Output("pdfinfo", "-isodates", dated), StringComparison.Ordinal);
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", dated), StringComparison.Ordinal);
    }

    [Fact]
    public void Letters_that_the_face_lacks_are_named_and_nothing_is_written()
    {
        var drawn = new PdfCanvas().Draw(SampleDocument.Of(
            new Block.Heading(2, "שלום"),
            new Block.Table([new("Bead")], [["珠"]]) { Name = "T" },
            new Block.Note("Plain", [new Block.List(ListKind.Ticked, ["fine", "🧿"])])) with
        { Title = "Plain" }, new());
        Assert.True(drawn.Bytes.IsEmpty);
        Assert.Equal(["blocks[0]", "blocks[1].rows[0][0]", "blocks[2].blocks[0].items[1]"], drawn.Faults.Select(f => f.Field));
        Assert.All(drawn.Faults, f => Assert.Equal(FaultCodes.DocumentGlyphsMissing, f.Code));
    }

    [Fact]
    public void Letters_in_pictures_are_checked_too()
    {
        var picture = SampleDocument.Beads(40) with { Marks = [new Text("珠", new(1, 5), 3, PageInks.Ink)] };
        Assert.Equal("blocks[0].picture", Assert.Single(new PdfCanvas().Draw(SampleDocument.Of(new Block.Figure(picture, "Bead")), new()).Faults).Field);
    }

    [Fact]
    public void Faults_are_not_without_end() =>
        Assert.Equal(PdfCanvas.MostFaults, new PdfCanvas().Draw(SampleDocument.Of([.. Enumerable.Repeat(new Block.Paragraph("珠"), 100)]), new()).Faults.Length);

    [Fact]
    public void A_document_of_no_blocks_and_one_of_2000_rows_are_sound()
    {
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", Written((PageSetup?)null)), StringComparison.Ordinal);
        var rows = Enumerable.Range(1, 2000).Select(r => (ImmutableArray<TableCell>)["bead", r.ToString(CultureInfo.InvariantCulture), ""]);
        var file = Written(null, new Block.Table([new("Bead"), new("Use", CellAlign.Right), new("Note")], [.. rows]) { Name = "Materials" });
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", file), StringComparison.Ordinal);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(file);
        foreach (var page in pdf.GetPages())
            Assert.StartsWith("Bead Use Note bead", Collapsed(Programs.Output("pdftotext", "-layout", "-f", N(page.Number), "-l", N(page.Number), file, "-")), StringComparison.Ordinal);
        Assert.Equal(2000, Words().Count(Programs.Output("pdftotext", file, "-")));

        static string N(int number) => number.ToString(CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Documents_of_several_pages_have_bookmarks_at_their_headings()
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(Bytes(SampleDocument.Everything));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["Heron", "Before you begin", "Materials", "Steps", "Strips at true size"], bookmarks.GetNodes().Select(n => n.Title));
    }

    private sealed class Near(double tolerance) : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) => Math.Abs(x.Item1 - y.Item1) <= tolerance && Math.Abs(x.Item2 - y.Item2) <= tolerance;

        public int GetHashCode((double, double) obj) => 0;
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"/Scope /Column")]
    private static partial Regex Scope();

    [GeneratedRegex(@"/BBox\s*\[([^\]]*)\]")]
    private static partial Regex BBox();

    [GeneratedRegex(@"stream\n(q[ \n].*?)\nendstream", RegexOptions.Singleline)]
    private static partial Regex Content();

    [GeneratedRegex(@"/ID\s*\[[^\]]*\]")]
    private static partial Regex Id();

    [GeneratedRegex(@"/[A-Z]{6}\+")]
    private static partial Regex FaceTag();

    [GeneratedRegex(@"\bbead\b")]
    private static partial Regex Words();
}
