using System.Globalization;
using Coilwright.Core.Kits;
using Coilwright.Core.Shopping;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Kits;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Wording;
using ZXing;
using Box = Coilwright.Documents.Drawing.Box;

namespace Coilwright.Documents.Tests.Kits;

/// <summary>Labels and pick list as a printer prints them: measured, read and scanned.</summary>
public sealed class LabelSheetTests : IDisposable
{
    private const int Dpi = 300;

    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    private static KitPlan Plan(string piece, int count, int spare = 2, string name = "boardwalk-2")
    {
        var reckoned = DrawnPieces.Reckoned(piece);
        Assert.True(KitPlan.TryMake([new KitPiece(new ShoppingPiece(name, reckoned.Piece, count), reckoned)], new Spares(new SparesRule(0, spare), Spares.None.ByBead), null, out var plan, out _));
        return plan!;
    }

    private string File(KitPlan plan, LabelGrid grid, Paper paper, Language? language = null)
    {
        var drawn = LabelSheet.Pdf(plan, grid, new PageSetup { Paper = paper }, language ?? Languages.English);
        Assert.Empty(drawn.Faults);
        return _place.File("labels.pdf", drawn.Bytes.ToArray());
    }

    public static TheoryData<string, LabelGrid> Grids => new()
    {
        { "usual", LabelGrid.Usual },
        { "margins", new LabelGrid(3, 8, 63.5, 33.9) { Margins = (7.2, 12.9), AcrossGapMm = 2.5 } },
        { "small", new LabelGrid(4, 11, 46, 22) { Margins = (9, 20), AcrossGapMm = 3, DownGapMm = 1.5 } },
    };

    // Every code is found on the page as pixels, read by another library, and lies in its own label: right of the label's middle and in the middle of its height.
    [Theory, MemberData(nameof(Grids))]
    public void Each_label_lies_where_the_sheet_has_it_and_its_code_says_what_is_in_the_bag(string _, LabelGrid grid)
    {
        var plan = Plan("boardwalk", 3);
        // The sheet with margins is longer than letter paper.
        Paper[] papers = [.. new[] { Paper.A4, Paper.Letter }.Where(p => grid.Check(p) is null)];
        Assert.Contains(Paper.A4, papers);
        foreach (var paper in papers)
        {
            var page = Poppler.Draw(File(plan, grid, paper), 1, Dpi);
            Assert.Equal(paper.WidthMm, page.Width * 25.4 / Dpi, 0.1);
            string?[] expected = [.. plan.Kits[0].Bags.SelectMany(b => Enumerable.Repeat($"coilwright:kit:boardwalk-2:{b.Letter}:{b.Use + 2}", 3)).Prepend(null).Prepend(null).Prepend(null)];
            for (var n = 0; n < grid.OnSheet; n++)
            {
                double left = (grid.Margins?.LeftMm ?? (paper.WidthMm - 3 * 64) / 2) + n % grid.Columns * (grid.WidthMm + grid.AcrossGapMm), top = (grid.Margins?.TopMm ?? (paper.HeightMm - 7 * 36) / 2) + n / grid.Columns * (grid.HeightMm + grid.DownGapMm);
                var ink = Ink(page, left, top, left + grid.WidthMm, top + grid.HeightMm);
                if (n >= expected.Length)
                {
                    Assert.Null(ink);
                    continue;
                }
                Assert.NotNull(ink);
                // The white inside a label is 2 mm; a pixel is 0.085 mm.
                Assert.InRange(ink.Value.Left - left, 1.9, 3.5);
                Assert.InRange(left + grid.WidthMm - ink.Value.Right, 1.9, grid.WidthMm);
                Assert.InRange(ink.Value.Top - top, 1.9, grid.HeightMm);
                Assert.InRange(top + grid.HeightMm - ink.Value.Bottom, 1.9, grid.HeightMm);
                Assert.Equal(expected[n], Scan(page, left, top, grid.WidthMm, grid.HeightMm));
            }
            // Nothing is printed between labels or beside them.
            Assert.Equal(Enumerable.Range(0, Math.Min(expected.Length, grid.OnSheet)).Sum(n => Dark(page, grid.Place(n, paper))), Dark(page, new Box(0, 0, paper.WidthMm, paper.HeightMm)));
        }
    }

    [Fact]
    public void The_bead_on_a_label_has_its_own_colour()
    {
        var page = Poppler.Draw(File(Plan("boardwalk", 1), LabelGrid.Usual, Paper.A4), 1, Dpi);
        var bead = DrawnPieces.Reckoned("boardwalk").Counts[0].Bead.Colours[0];
        var found = 0;
        // The second label: the first is the whole kit's.
        var box = LabelGrid.Usual.Place(1, Paper.A4);
        for (var y = Px(box.TopMm); y < Px(box.BottomMm); y++)
            for (var x = Px(box.LeftMm); x < Px(box.RightMm); x++)
                if (page[x, y] == (bead.Red, bead.Green, bead.Blue)) found++;
        // A third of a square millimetre and more in plain colour.
        Assert.True(found > 50, $"{found} pixels");
    }

    [Fact]
    public void Every_label_is_a_figure_that_says_what_it_is_and_the_file_is_sound_and_repeatable()
    {
        var plan = Plan("tidewrack", 2);
        foreach (var language in Languages.All)
        {
            var file = File(plan, LabelGrid.Usual, Paper.A4, language);
            Assert.Contains("No syntax", Programs.Output("qpdf", "--check", file), StringComparison.Ordinal);
            var told = Programs.Output("pdfinfo", "-struct-text", file);
            Assert.Equal(LabelSheet.Count(plan), told.Split('\n').Count(l => l.Trim().StartsWith("Figure", StringComparison.Ordinal)));
            var text = Programs.Output("pdftotext", file, "-").ReplaceLineEndings(" ");
            foreach (var bag in plan.Kits[0].Bags) Assert.Contains(bag.Kind!.Bead.Name.Split(' ')[0], text, StringComparison.Ordinal);
            // The caution stands whole on the label of each kit.
            Assert.Equal(2, text.Split(language.Cautions.SmallParts).Length - 1);
            Assert.Equal(System.IO.File.ReadAllBytes(file), LabelSheet.Pdf(plan, LabelGrid.Usual, new PageSetup(), language).Bytes.ToArray());
        }
    }

    [Fact]
    public void Words_on_a_label_never_leave_it_or_reach_into_the_code()
    {
        foreach (var name in DrawnPieces.All().Select(p => p.Name))
            foreach (var language in Languages.All)
                foreach (var grid in new[] { LabelGrid.Usual, new LabelGrid(4, 11, 46, 22), new LabelGrid(2, 4, 99, 67) })
                {
                    var plan = Plan(name, 1);
                    if (LabelSheet.Check(plan, grid, Paper.A4, language) is { } small)
                    {
                        Assert.Equal(Core.Faults.FaultCodes.LabelsTooSmall, small.Code);
                        continue;
                    }
                    var drawing = new LabelDrawing(plan, 0, grid, language, false);
                    foreach (var label in plan.Kits[0].Bags.Select(drawing.OfBag).Prepend(drawing.OfKit()))
                    {
                        var inked = label.Inked().Select(m => (m.Mark, Box: m.Box(Documents.Typefaces.HouseSans.Instance))).Where(m => m.Box is not null).ToArray();
                        Assert.All(inked, m => Assert.True(label.Sheet.Grown(-1.2).Contains(m.Box!.Value), $"{name}: {m.Mark}"));
                        var code = inked.Where(m => m.Mark.Class == "code").Select(m => m.Box!.Value).ToArray();
                        foreach (var (mark, box) in inked.Where(m => m.Mark.Class != "code"))
                            Assert.All(code, c => Assert.False(c.Overlaps(box!.Value), $"{name}: {mark}"));
                    }
                }
    }

    [Fact]
    public void Labels_that_do_not_go_on_the_paper_are_told_with_both_sizes()
    {
        var plan = Plan("boardwalk", 1);
        var fault = LabelSheet.Check(plan, new LabelGrid(3, 8, 63.5, 33.9) { Margins = (7.2, 12.9), AcrossGapMm = 9 }, Paper.A4, Languages.English);
        Assert.Equal((Core.Faults.FaultCodes.LabelsDoNotFit, "215.7", "284.1", "210", "297"), (fault!.Code, fault.Values["acrossMm"], fault.Values["downMm"], fault.Values["paperAcrossMm"], fault.Values["paperDownMm"]));
        // Letter is wide enough, and too short.
        Assert.Equal(Core.Faults.FaultCodes.LabelsDoNotFit, LabelSheet.Check(plan, new LabelGrid(1, 8, 63.5, 35), Paper.Letter, Languages.English)?.Code);
        Assert.Null(LabelSheet.Check(plan, new LabelGrid(1, 8, 63.5, 35), Paper.A4, Languages.English));
        Assert.Empty(LabelSheet.Pdf(plan, new LabelGrid(1, 8, 63.5, 35), new PageSetup { Paper = Paper.Letter }, Languages.English).Bytes.ToArray());
    }

    [Fact]
    public void A_label_with_no_room_is_told_and_what_it_says_would_do_does()
    {
        var plan = Plan("tidewrack", 1);
        var fault = LabelSheet.Check(plan, new LabelGrid(5, 10, 20, 12), Paper.A4, Languages.English);
        Assert.Equal(Core.Faults.FaultCodes.LabelsTooSmall, fault!.Code);
        double across = double.Parse(fault.Values["leastAcrossMm"], CultureInfo.InvariantCulture), down = double.Parse(fault.Values["leastDownMm"], CultureInfo.InvariantCulture);
        Assert.Null(LabelSheet.Check(plan, new LabelGrid(1, 1, across, down), Paper.A4, Languages.English));
        Assert.NotNull(LabelSheet.Check(plan, new LabelGrid(1, 1, across - 0.2, down), Paper.A4, Languages.English));
        Assert.Equal(Core.Faults.FaultCodes.LabelsTooMany, LabelSheet.Check(Plan("tidewrack", 2_999), LabelGrid.Usual, Paper.A4, Languages.English)?.Code);
    }

    [Fact]
    public void A_name_with_signs_of_its_own_is_read_back_as_it_is()
    {
        var plan = Plan("boardwalk", 1, name: "Küste: 2/3");
        var page = Poppler.Draw(File(plan, LabelGrid.Usual, Paper.A4), 1, Dpi);
        var box = LabelGrid.Usual.Place(1, Paper.A4);
        var parts = Scan(page, box.LeftMm, box.TopMm, box.WidthMm, box.HeightMm)!.Split(':');
        Assert.Equal(["coilwright", "kit", "Küste: 2/3", "A"], parts[..4].Select(Uri.UnescapeDataString));
    }

    [Fact]
    public void The_pick_list_is_sound_and_has_every_bead_with_its_count()
    {
        foreach (var language in Languages.All)
        {
            var plan = Plan("tidewrack", 4);
            var drawn = new PdfCanvas().Draw(PickListDocument.Of(plan, language), new PageSetup());
            Assert.Empty(drawn.Faults);
            var file = _place.File("pick-list.pdf", drawn.Bytes.ToArray());
            Assert.Contains("No syntax", Programs.Output("qpdf", "--check", file), StringComparison.Ordinal);
            var text = Programs.Output("pdftotext", "-layout", file, "-");
            foreach (var pick in plan.Picks) Assert.Matches($@"\b{pick.All}\b", text);
            Assert.Contains(language.Cautions.SmallParts.Split(':')[0], text, StringComparison.Ordinal);
        }
    }

    private static int Px(double mm) => (int)Math.Round(mm * Dpi / 25.4);

    private static bool Inked(Pixels page, int x, int y) => page[x, y] is { Red: < 200 } or { Green: < 200 } or { Blue: < 200 };

    private static int Dark(Pixels page, Box box)
    {
        var count = 0;
        for (var y = Px(box.TopMm); y < Math.Min(Px(box.BottomMm), page.Height); y++)
            for (var x = Px(box.LeftMm); x < Math.Min(Px(box.RightMm), page.Width); x++)
                if (Inked(page, x, y)) count++;
        return count;
    }

    private static (double Left, double Top, double Right, double Bottom)? Ink(Pixels page, double leftMm, double topMm, double rightMm, double bottomMm)
    {
        int left = int.MaxValue, top = int.MaxValue, right = -1, bottom = -1;
        for (var y = Px(topMm); y < Math.Min(Px(bottomMm), page.Height); y++)
            for (var x = Px(leftMm); x < Math.Min(Px(rightMm), page.Width); x++)
                if (Inked(page, x, y)) (left, top, right, bottom) = (Math.Min(left, x), Math.Min(top, y), Math.Max(right, x + 1), Math.Max(bottom, y + 1));
        return right < 0 ? null : (left * 25.4 / Dpi, top * 25.4 / Dpi, right * 25.4 / Dpi, bottom * 25.4 / Dpi);
    }

    // What another library reads in that part of the page; null when there is no code.
    private static string? Scan(Pixels page, double leftMm, double topMm, double widthMm, double heightMm)
    {
        int width = Px(widthMm), height = Px(heightMm), left = Px(leftMm), top = Px(topMm);
        var rgb = new byte[3 * width * height];
        for (var y = 0; y < height; y++)
            for (var x = 0; x < width; x++)
            {
                var (red, green, blue) = page[left + x, top + y];
                (rgb[3 * (y * width + x)], rgb[3 * (y * width + x) + 1], rgb[3 * (y * width + x) + 2]) = (red, green, blue);
            }
        var reader = new BarcodeReaderGeneric { Options = { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true } };
        return reader.Decode(new RGBLuminanceSource(rgb, width, height, RGBLuminanceSource.BitmapFormat.RGB24))?.Text;
    }
}
