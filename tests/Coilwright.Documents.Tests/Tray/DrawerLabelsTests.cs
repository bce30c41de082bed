using System.Globalization;
using System.Text.RegularExpressions;
using Coilwright.Core.Tests.Tray;
using Coilwright.Core.Tray;
using Coilwright.Documents.Kits;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.Tray;
using Coilwright.Wording;
using Box = Coilwright.Documents.Drawing.Box;

namespace Coilwright.Documents.Tests.Tray;

/// <summary>Labels for drawers as a printer prints them: every word in its own label, read back by another program.</summary>
public sealed partial class DrawerLabelsTests : IDisposable
{
    private const double PointMm = 25.4 / 72;

    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    public static TheoryData<string, LabelGrid> Grids => new()
    {
        { "usual", LabelGrid.Usual },
        { "margins", new LabelGrid(3, 8, 63.5, 33.9) { Margins = (7.2, 12.9), AcrossGapMm = 2.5 } },
        { "small", new LabelGrid(4, 11, 46, 22) { Margins = (9, 20), AcrossGapMm = 3, DownGapMm = 1.5 } },
    };

    private static TrayKind[] Kinds(int count) => [.. GeneratedTray.Of(count, seed: 11)];

    private string File(IEnumerable<TrayKind> kinds, LabelGrid grid, Paper paper, Language? language = null)
    {
        var drawn = DrawerLabels.Pdf(kinds, grid, new PageSetup { Paper = paper }, language ?? Languages.English);
        Assert.Empty(drawn.Faults);
        return _place.File("drawers.pdf", drawn.Bytes.ToArray());
    }

    /// <summary>Each word of the file with its page from 0 and its box, mm from the upper left corner.</summary>
    private static List<(string Word, int Page, double Left, double Top, double Right, double Bottom)> WordsOf(string file)
    {
        var words = new List<(string, int, double, double, double, double)>();
        var page = -1;
        foreach (var line in Programs.Output("pdftotext", "-bbox", file, "-").Split('\n'))
        {
            if (line.Contains("<page ", StringComparison.Ordinal)) page++;
            if (Word().Match(line) is not { Success: true } match) continue;
            double Mm(int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) * PointMm;
            words.Add((System.Net.WebUtility.HtmlDecode(match.Groups[5].Value), page, Mm(1), Mm(2), Mm(3), Mm(4)));
        }
        return words;
    }

    [Theory, MemberData(nameof(Grids))]
    public void Every_drawer_has_its_label_in_its_order_with_its_name_and_its_beads_and_nothing_stands_between(string _, LabelGrid grid)
    {
        var kinds = Kinds(300);
        var drawers = DrawerLabels.DrawersOf(kinds);
        Assert.True(drawers.Length > 10);
        foreach (var paper in new[] { Paper.A4, Paper.Letter }.Where(p => grid.Check(p) is null))
        {
            var words = WordsOf(File(kinds, grid, paper));
            var read = drawers.Select(__ => new List<string>()).ToArray();
            foreach (var word in words)
            {
                var n = Enumerable.Range(0, grid.OnSheet).FirstOrDefault(i => Inside(word, grid.Place(i, paper)), -1);
                Assert.True(n >= 0, $"{word.Word} stands in no label");
                read[word.Page * grid.OnSheet + n].Add(word.Word);
            }
            for (var d = 0; d < drawers.Length; d++)
            {
                var text = string.Join(' ', read[d]);
                // A long name breaks over two lines, between words or within one.
                Assert.StartsWith(Bare(drawers[d].Drawer)[..Math.Min(4, Bare(drawers[d].Drawer).Length)], Bare(text), StringComparison.Ordinal);
                // What has no room is counted.
                var more = More().Match(text) is { Success: true } rest ? int.Parse(rest.Groups[1].Value, CultureInfo.InvariantCulture) : 0;
                Assert.InRange(more, 0, drawers[d].Kinds.Length);
                foreach (var kind in drawers[d].Kinds.Take(drawers[d].Kinds.Length - more))
                    Assert.Contains(Bare(kind.Bead.Name)[..Math.Min(3, Bare(kind.Bead.Name).Length)], Bare(text), StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void The_name_of_a_drawer_is_the_largest_on_its_label_and_the_file_is_sound_repeatable_and_told_aloud()
    {
        var kinds = Kinds(60);
        var drawers = DrawerLabels.DrawersOf(kinds);
        foreach (var language in Languages.All)
        {
            var file = File(kinds, LabelGrid.Usual, Paper.A4, language);
            Assert.Contains("No syntax", Programs.Output("qpdf", "--check", file), StringComparison.Ordinal);
            Assert.Equal(System.IO.File.ReadAllBytes(file), DrawerLabels.Pdf(kinds, LabelGrid.Usual, new PageSetup { Paper = Paper.A4 }, language).Bytes.ToArray());
            Assert.Equal(drawers.Length, Programs.Output("pdfinfo", "-struct-text", file).Split('\n').Count(l => l.Trim().StartsWith("Figure", StringComparison.Ordinal)));
            var words = WordsOf(file);
            var first = words.Where(w => w.Page == 0 && Inside(w, LabelGrid.Usual.Place(0, Paper.A4))).ToArray();
            Assert.Equal(first.Max(w => w.Bottom - w.Top), first[0].Bottom - first[0].Top, 0.01);
        }
    }

    [Fact]
    public void Kinds_without_a_drawer_have_no_label_and_too_small_a_label_is_told()
    {
        Assert.Empty(DrawerLabels.DrawersOf(Kinds(40).Select(k => k with { Drawer = null })));
        var small = DrawerLabels.Pdf(Kinds(40), new LabelGrid(10, 20, 18, 9), new PageSetup { Paper = Paper.A4 }, Languages.English);
        Assert.Equal(Core.Faults.FaultCodes.LabelsTooSmall, Assert.Single(small.Faults).Code);
    }

    // The type's own room above and below a word may reach a little over the white inside a label, never beyond the label.
    private static bool Inside((string Word, int Page, double Left, double Top, double Right, double Bottom) word, Box box) =>
        word.Left >= box.LeftMm && word.Right <= box.RightMm + 0.01 && (word.Top + word.Bottom) / 2 >= box.TopMm && (word.Top + word.Bottom) / 2 <= box.BottomMm;

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    [GeneratedRegex("<word xMin=\"([\\d.]+)\" yMin=\"([\\d.]+)\" xMax=\"([\\d.]+)\" yMax=\"([\\d.]+)\">(.*)</word>")]
    private static partial Regex Word();

    [GeneratedRegex(@"and (\d+) more")]
    private static partial Regex More();
}
