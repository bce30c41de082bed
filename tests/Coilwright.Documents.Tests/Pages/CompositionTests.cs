using System.Collections.Immutable;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Pages.Composition;
using Coilwright.Documents.Typefaces;
using CsCheck;

namespace Coilwright.Documents.Tests.Pages;

/// <summary>Given this space, this block lands here. Places in points from the page's left top corner.</summary>
public class CompositionTests
{
    private const double Point = 1 / PageSetup.PointMm;

    // Sums of doubles; nothing on paper is finer than a ten-thousandth of a point.
    private const double Exact = 1e-6;

    private static readonly PageSetup A4 = new();
    private static readonly Area Frame = Composer.Frame(A4, false);
    private static readonly Typesetter Set = new(A4, SampleDocument.Words);

    private static ImmutableArray<ComposedPage> Pages(PageSetup setup, params ReadOnlySpan<Block> blocks) =>
        Composer.Compose(SampleDocument.Of(blocks), setup);

    private static ImmutableArray<ComposedPage> Pages(params ReadOnlySpan<Block> blocks) => Pages(A4, blocks);

    private static IEnumerable<PageMark.Letters> Letters(ComposedPage page) => page.Marks.OfType<PageMark.Letters>().Where(l => !l.Decoration);

    private static PageMark.Letters Find(ComposedPage page, string start) =>
        Letters(page).First(l => l.Text.StartsWith(start, StringComparison.Ordinal));

    private static bool Has(ComposedPage page, string start) => Letters(page).Any(l => l.Text.StartsWith(start, StringComparison.Ordinal));

    /// <summary>A paper on which exactly so many lines of running text stand.</summary>
    private static PageSetup Lines(double lines, double widthMm = 210) => new()
    {
        Paper = new Paper("test", widthMm, lines * Set.Body.Leading * PageSetup.PointMm + A4.TopMm + A4.BottomMm + 0.001),
    };

    /// <summary>A paragraph of exactly so many lines on an A4 page.</summary>
    private static Block.Paragraph Paragraph(int lines, string start = "First")
    {
        var face = HouseFaces.Of(FaceStyle.Regular);
        var perLine = (int)Math.Floor((Frame.Width / Set.Body.Size + face.WidthEm(" ")) / face.WidthEm("mmmmm "));
        return new(start + " " + string.Join(' ', Enumerable.Repeat("mmmmm", (perLine * lines) - 1)));
    }

    [Fact]
    public void A_first_paragraph_starts_in_the_frames_corner()
    {
        var first = Find(Pages(new Block.Paragraph("Words"))[0], "Words");
        Assert.Equal(A4.SideMm * Point, first.X, Exact);
        Assert.Equal(A4.TopMm * Point + Set.Body.Drop, first.Baseline, Exact);
    }

    [Fact]
    public void A_second_paragraph_stands_a_line_and_their_white_lower()
    {
        var page = Pages(new Block.Paragraph("One"), new Block.Paragraph("Two"))[0];
        Assert.Equal(Set.Body.Leading + 0.6 * A4.BasePoints, Find(page, "Two").Baseline - Find(page, "One").Baseline, Exact);
    }

    [Fact]
    public void Of_two_wishes_for_white_the_larger_holds()
    {
        // A part's heading wants 1.7 of the type size above it, the paragraph before it 0.6 below.
        var page = Pages(new Block.Paragraph("One"), new Block.Heading(2, "Part"), new Block.Paragraph("Two"))[0];
        var below = Find(page, "One").Baseline - Set.Body.Drop + Set.Body.Leading;
        Assert.Equal(below + 1.7 * A4.BasePoints + Set.Headings[1].Drop, Find(page, "Part").Baseline, Exact);
    }

    [Fact]
    public void A_page_begins_without_white()
    {
        var page = Pages(new Block.Spacer(3), new Block.Rule(), new Block.Heading(2, "Part"), new Block.Paragraph("Words"))[0];
        Assert.Equal(Frame.Y + Set.Headings[1].Drop, Find(page, "Part").Baseline, Exact);
        Assert.Empty(page.Marks.OfType<PageMark.Stroke>());
    }

    [Fact]
    public void A_rule_does_not_end_a_page()
    {
        var pages = Pages(Lines(6), Paragraph(4), new Block.Rule(), Paragraph(4, "After"));
        Assert.All(pages, p => Assert.Empty(p.Marks.OfType<PageMark.Stroke>()));
        Assert.Single(Pages(Lines(12), Paragraph(4), new Block.Rule(), Paragraph(4, "After"))[0].Marks.OfType<PageMark.Stroke>());
    }

    [Fact]
    public void A_spacer_is_so_many_lines()
    {
        var page = Pages(new Block.Paragraph("One"), new Block.Spacer(2), new Block.Paragraph("Two"))[0];
        Assert.Equal((3 * Set.Body.Leading) + (2 * 0.6 * A4.BasePoints), Find(page, "Two").Baseline - Find(page, "One").Baseline, Exact);
    }

    [Fact]
    public void A_paragraph_runs_on_and_leaves_two_lines_at_least_on_either_page()
    {
        var long10 = Paragraph(10);
        Assert.Equal(10, Letters(Pages(long10)[0]).Count());
        var pages = Pages(Lines(9), long10);
        Assert.Equal([8, 2], pages.Select(p => Letters(p).Count()));
        // One line of room is no room for a paragraph of several lines.
        var pushed = Pages(Lines(5), Paragraph(4, "Before"), Paragraph(4, "After"));
        Assert.Equal([4, 4], pushed.Select(p => Letters(p).Count()));
    }

    [Fact]
    public void Pages_of_one_line_take_one_line_each()
    {
        var pages = Pages(Lines(1), Paragraph(5));
        Assert.Equal([1, 1, 1, 1, 1], pages.Select(p => Letters(p).Count()));
    }

    [Fact]
    public void Pages_lower_than_a_line_still_take_one() =>
        Assert.Equal([1, 1, 1], Pages(Lines(0.2), Paragraph(3)).Select(p => Letters(p).Count()));

    [Fact]
    public void No_blocks_are_one_page_with_its_foot()
    {
        var page = Assert.Single(Pages());
        Assert.Empty(Letters(page));
        Assert.Contains(page.Marks.OfType<PageMark.Letters>(), l => l.Decoration && l.Text == "Page 1 of 1");
    }

    [Fact]
    public void A_heading_goes_on_with_what_follows_it()
    {
        var setup = Lines(6);
        // 4 lines, then a heading that would fit alone but not with two lines more.
        var pages = Pages(setup, Paragraph(4), new Block.Heading(3, "Part"), Paragraph(3, "After"));
        Assert.False(Has(pages[0], "Part"));
        Assert.True(Has(pages[1], "Part"));
        Assert.True(Has(pages[1], "After"));
        // Two headings in a row go together.
        pages = Pages(Lines(8), Paragraph(5), new Block.Heading(2, "Part"), new Block.Heading(3, "Piece"), Paragraph(4, "After"));
        Assert.False(Has(pages[0], "Part") || Has(pages[0], "Piece"));
    }

    [Fact]
    public void A_list_is_parted_between_its_points_and_its_end_goes_on_with_what_follows_it()
    {
        // Papers that hold the list and what follows it, and less than all that stands before them too.
        var papers = Enumerable.Range(20, 20).Select(half => Lines(half / 2.0)).ToArray();
        ImmutableArray<ComposedPage>[] On(bool stays) =>
        [
            .. papers.Select(paper => Pages(paper, Paragraph(4), new Block.List(ListKind.Ticked, [.. Enumerable.Range(1, 6).Select(i => (RichText)("p" + i))]) { StaysWithNext = stays },
                new Block.Paragraph("After"))),
        ];
        bool EndsWithNext(ImmutableArray<ComposedPage> pages) => pages.Single(p => Has(p, "After")) == pages.Single(p => Has(p, "p6"));
        var staying = On(true);
        Assert.All(staying, pages => Assert.True(EndsWithNext(pages)));
        Assert.Contains(staying, pages => pages.Single(p => Has(p, "p1")) != pages.Single(p => Has(p, "p6")));
        Assert.Contains(On(false), pages => !EndsWithNext(pages));
    }

    [Fact]
    public void A_figure_in_the_middle_leaves_as_much_at_either_side()
    {
        var picture = SampleDocument.Beads(24);
        var drawn = Pages(new Block.Figure(picture, "Three beads") { IsCentred = true })[0].Marks.OfType<PageMark.Drawing>().Single();
        Assert.Equal(Frame.X + Frame.Width - drawn.X - picture.WidthMm * Point, drawn.X - Frame.X, Exact);
        Assert.True(drawn.X > Frame.X + 1);
    }

    [Fact]
    public void A_caption_on_the_pictures_foot_ends_with_the_picture_and_takes_no_height_of_its_own()
    {
        var figure = new Block.Figure(SampleDocument.Beads(80), "Beads") { Caption = "Figure 1" };
        var (inside, beneath) = (Pages(figure with { CaptionIsInside = true }, new Block.Paragraph("Next"))[0], Pages(figure, new Block.Paragraph("Next"))[0]);
        var drawn = inside.Marks.OfType<PageMark.Drawing>().Single();
        var foot = drawn.Y + drawn.Picture.HeightMm * drawn.PointsPerMm;
        Assert.Equal(foot - Set.Small.Leading + Set.Small.Drop, Find(inside, "Figure").Baseline, Exact);
        Assert.Equal(Frame.X, Find(inside, "Figure").X, Exact);
        Assert.Equal(Set.Small.Leading + 0.5 * A4.BasePoints, Find(beneath, "Next").Baseline - Find(inside, "Next").Baseline, Exact);
    }

    [Fact]
    public void Things_kept_together_move_to_the_next_page()
    {
        Block[] pair = [Paragraph(3, "Left"), Paragraph(3, "Right")];
        var loose = Pages(Lines(9), [Paragraph(4), .. pair]);
        Assert.True(Has(loose[0], "Left"));
        var kept = Pages(Lines(9), Paragraph(4), new Block.KeepTogether([.. pair]));
        Assert.Equal(2, kept.Length);
        Assert.False(Has(kept[0], "Left"));
        Assert.True(Has(kept[1], "Left") && Has(kept[1], "Right"));
    }

    [Fact]
    public void Things_kept_together_are_parted_when_no_page_holds_them()
    {
        var pages = Pages(Lines(4), new Block.KeepTogether([Paragraph(3, "Left"), Paragraph(3, "Right")]));
        Assert.Equal(6, pages.Sum(p => Letters(p).Count()));
        Assert.True(Has(pages[0], "Left"));
    }

    [Fact]
    public void Columns_are_of_one_width_and_end_about_level()
    {
        var page = Pages(new Block.InColumns(3, [.. Enumerable.Range(1, 9).Select(i => Paragraph(3, "p" + i))]))[0];
        var lefts = Letters(page).Select(l => l.X).Distinct().Order().ToArray();
        var width = (Frame.Width - 2 * 2 * A4.BasePoints) / 3;
        Assert.Equal(3, lefts.Length);
        Assert.Equal(width + 2 * A4.BasePoints, lefts[1] - lefts[0], Exact);
        Assert.Equal(width + 2 * A4.BasePoints, lefts[2] - lefts[1], Exact);
        var ends = lefts.Select(x => Letters(page).Where(l => l.X == x).Max(l => l.Baseline)).ToArray();
        // Two lines cannot be parted from a paragraph of three, nor the white between paragraphs cut: level to three lines.
        Assert.InRange(ends.Max() - ends.Min(), 0, 3 * Set.Body.Leading);
        // Read down one column before the next.
        Assert.Equal(Letters(page).Select(l => l.X).Order(), Letters(page).Select(l => l.X));
    }

    [Fact]
    public void Columns_of_equal_things_end_level()
    {
        var page = Pages(new Block.InColumns(2, [.. Enumerable.Range(1, 6).Select(i => new Block.Paragraph("p" + i))]))[0];
        var ends = Letters(page).GroupBy(l => l.X).Select(g => g.Max(l => l.Baseline)).ToArray();
        Assert.Equal(2, ends.Length);
        Assert.Equal(ends[0], ends[1], Exact);
    }

    [Fact]
    public void Columns_fill_a_page_and_run_on()
    {
        var pages = Pages(Lines(4), new Block.InColumns(2, [.. Enumerable.Range(1, 12).Select(i => new Block.Paragraph("p" + i))]));
        Assert.Equal(Enumerable.Range(1, 12).Select(i => "p" + i), pages.SelectMany(Letters).Select(l => l.Text));
        Assert.True(pages.Length > 1);
    }

    [Fact]
    public void Things_side_by_side_share_the_width_and_begin_on_one_line()
    {
        var page = Pages(new Block.Beside([new BesideCell(2, [new Block.Paragraph("Left")]), new BesideCell(1, [new Block.Paragraph("Right")])]))[0];
        Assert.Equal(Find(page, "Left").Baseline, Find(page, "Right").Baseline, Exact);
        var gutter = 2 * A4.BasePoints;
        Assert.Equal(Frame.X + (Frame.Width - gutter) * 2 / 3 + gutter, Find(page, "Right").X, Exact);
    }

    [Fact]
    public void Things_side_by_side_too_tall_for_a_page_follow_one_another()
    {
        var pages = Pages(Lines(5), new Block.Beside([new BesideCell(1, [Paragraph(3, "Left")]), new BesideCell(1, [Paragraph(3, "Right")])]));
        Assert.True(pages.Length > 1);
        Assert.Equal(Frame.X, Find(pages[^1], "mmmmm").X, Exact);
        Assert.All(pages, p => Assert.All(Letters(p), l => Assert.Equal(Frame.X, l.X, Exact)));
    }

    [Fact]
    public void A_note_is_inset_on_its_ground()
    {
        var page = Pages(new Block.Note("Mind", [new Block.Paragraph("Words")]))[0];
        var grounds = page.Marks.OfType<PageMark.Fill>().ToArray();
        Assert.Equal(2, grounds.Length);
        Assert.Equal(Frame.Width, grounds[0].Area.Width, Exact);
        var words = Find(page, "Words");
        Assert.InRange(words.X, grounds[1].Area.Right, grounds[1].Area.Right + 2 * A4.BasePoints);
        Assert.InRange(words.Baseline, grounds[0].Area.Y, grounds[0].Area.Bottom);
    }

    [Fact]
    public void Where_ink_is_spared_a_note_stands_at_the_same_place_without_its_ground()
    {
        var note = new Block.Note("Mind", [new Block.Paragraph("Words")]);
        ComposedPage usual = Pages(note)[0], spared = Pages(new PageSetup { InkSaving = true }, note)[0];
        Assert.Equal(usual.Marks.OfType<PageMark.Fill>().Skip(1), spared.Marks.OfType<PageMark.Fill>());
        Assert.Equal(Letters(usual), Letters(spared));
    }

    [Fact]
    public void Numbers_of_a_list_end_on_one_line_and_its_words_begin_on_one()
    {
        var page = Pages(new Block.List(ListKind.Numbered, ["a", "b"]) { First = 9 })[0];
        PageMark.Letters nine = Find(page, "9."), ten = Find(page, "10.");
        var bold = HouseFaces.Of(FaceStyle.Bold);
        Assert.Equal(nine.X + bold.WidthEm("9.") * nine.Size, ten.X + bold.WidthEm("10.") * ten.Size, Exact);
        Assert.Equal(Find(page, "a").X, Find(page, "b").X, Exact);
    }

    [Fact]
    public void A_new_page_can_lie_on_its_long_side()
    {
        var pages = Pages(new Block.Paragraph("One"), new Block.NewPage(Turned: true), new Block.Paragraph("Two"), new Block.NewPage(), new Block.Paragraph("Three"));
        Assert.Equal([210 * Point, 297 * Point, 210 * Point], pages.Select(p => p.Width));
        Assert.Equal(A4.TurnedMarginMm * Point, Find(pages[1], "Two").X, Exact);
    }

    [Fact]
    public void New_pages_in_a_row_are_one() => Assert.Equal(2, Pages(new Block.Paragraph("One"), new Block.NewPage(), new Block.NewPage(), new Block.Paragraph("Two")).Length);

    [Fact]
    public void A_figure_is_as_large_as_it_says_and_never_wider_than_the_frame()
    {
        PageMark.Drawing Drawn(Block.Figure figure, PageSetup? setup = null) => Pages(setup ?? A4, figure)[0].Marks.OfType<PageMark.Drawing>().Single();
        Assert.Equal(Point, Drawn(new Block.Figure(SampleDocument.Beads(80), "Beads")).PointsPerMm, Exact);
        Assert.Equal(1.5 * Point, Drawn(new Block.Figure(SampleDocument.Beads(80), "Beads"), new() { LargePrint = true }).PointsPerMm, Exact);
        Assert.Equal(Frame.Width / 240, Drawn(new Block.Figure(SampleDocument.Beads(240), "Beads")).PointsPerMm, Exact);
        Assert.Equal(Frame.Width / 80, Drawn(new Block.Figure(SampleDocument.Beads(80), "Beads") { FullWidth = true }).PointsPerMm, Exact);
    }

    [Fact]
    public void A_figure_goes_to_the_next_page_whole_and_shrinks_only_alone_on_one()
    {
        var tall = SampleDocument.Beads(80) with { HeightMm = 60 };
        var pages = Pages(Lines(14), Paragraph(6), new Block.Figure(tall, "Tall"));
        Assert.Empty(pages[0].Marks.OfType<PageMark.Drawing>());
        Assert.Equal(Point, pages[1].Marks.OfType<PageMark.Drawing>().Single().PointsPerMm, Exact);
        var alone = Assert.Single(Pages(Lines(5), new Block.Figure(tall, "Tall"))).Marks.OfType<PageMark.Drawing>().Single();
        Assert.Equal(5 * Set.Body.Leading / 60, alone.PointsPerMm, 0.001);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_strip_is_at_true_size_however_large_the_print_is(bool large)
    {
        var setup = new PageSetup { LargePrint = large };
        var strip = Pages(setup, new Block.NewPage(true), new Block.Strip(SampleDocument.Beads(240), "Turn") { Caption = "Turn 1" })[0];
        var drawn = Assert.Single(strip.Marks.OfType<PageMark.Drawing>());
        Assert.Equal((Point, 0, 240), (drawn.PointsPerMm, drawn.FromMm, drawn.ToMm));
    }

    [Fact]
    public void A_strip_longer_than_the_paper_is_cut_with_a_letter_at_each_joint()
    {
        var page = Assert.Single(Pages(new Block.Strip(SampleDocument.Beads(400), "Turn")));
        var room = 210 - 2 * A4.SideMm;
        var lengths = page.Marks.OfType<PageMark.Drawing>().ToArray();
        Assert.Equal(3, lengths.Length);
        Assert.Equal([0, room, 2 * room], lengths.Select(d => Math.Round(d.FromMm, 6)));
        Assert.Equal([room, 2 * room, 400], lengths.Select(d => Math.Round(d.ToMm, 6)));
        Assert.Equal(["joins at a ", "joins at a ", "joins at b ", "joins at b "], Letters(page).Select(l => l.Text));
    }

    [Fact]
    public void Joints_are_lettered_beyond_z() =>
        Assert.Equal(["a", "z", "aa", "ab"], new[] { 1, 26, 27, 28 }.Select(StripFlow.JointLetter));

    [Fact]
    public void A_long_foot_is_cut_and_leaves_the_page_number_its_room()
    {
        var document = SampleDocument.Of() with { Title = new string('W', 300) };
        var foot = Composer.Compose(document, A4)[0].Marks.OfType<PageMark.Letters>().Where(l => l.Decoration).ToArray();
        var words = foot.Single(l => l.Text.StartsWith('W'));
        Assert.EndsWith("…", words.Text, StringComparison.Ordinal);
        var end = words.X + HouseFaces.Of(FaceStyle.Regular).WidthEm(words.Text) * words.Size;
        Assert.True(end < foot.Single(l => l.Text.StartsWith("Page", StringComparison.Ordinal)).X);
    }

    [Fact]
    public void Large_print_is_half_as_large_again()
    {
        double Size(bool large) => Find(Pages(new PageSetup { LargePrint = large }, new Block.Paragraph("Words"))[0], "Words").Size;
        Assert.Equal(12, Size(false));
        Assert.Equal(18, Size(true));
    }

    private static readonly Gen<Block> Leaf = Gen.OneOf<Block>(
        Gen.Int[1, 60].Select(Block (n) => new Block.Paragraph(string.Join(' ', Enumerable.Repeat("word", n)))),
        Gen.Int[1, 3].Select(Block (n) => new Block.Heading(n, "Heading")),
        Gen.Select(Gen.Enum<ListKind>(), Gen.Int[0, 6]).Select(Block (kind, n) => new Block.List(kind, [.. Enumerable.Repeat((RichText)"An item of some words, that may need two lines", n)])),
        Gen.Select(Gen.Int[1, 4], Gen.Int[0, 30]).Select(Block (columns, rows) => Table(columns, rows)),
        Gen.Double[5, 300].Select(Block (mm) => new Block.Figure(SampleDocument.Beads(mm), "Beads")),
        Gen.Double[5, 500].Select(Block (mm) => new Block.Strip(SampleDocument.Beads(mm), "Beads")),
        Gen.Double[0, 5].Select(Block (n) => new Block.Spacer(n)),
        Gen.Const<Block>(new Block.Rule()));

    private static readonly Gen<Block> Nested = Gen.OneOf(Leaf,
        Gen.Select(Gen.Int[1, 3], Leaf.Array[0, 5]).Select(Block (n, b) => new Block.InColumns(n, [.. b])),
        Leaf.Array[0, 4].Select(Block (b) => new Block.KeepTogether([.. b])),
        Leaf.Array[0, 4].Select(Block (b) => new Block.Note("Note", [.. b])),
        Leaf.Array[0, 3].Array[0, 3].Select(Block (cells) => new Block.Beside([.. cells.Select(b => new BesideCell(1, [.. b]))])),
        Gen.Bool.Select(Block (turned) => new Block.NewPage(turned)));

    private static Block.Table Table(int columns, int rows) => new(
        [.. Enumerable.Range(0, columns).Select(i => new TableColumn("Column"))],
        [.. Enumerable.Range(0, rows).Select(r => (ImmutableArray<TableCell>)[.. Enumerable.Range(0, columns).Select(c => (TableCell)(c % 2 == 1 ? "" : "some words"))])])
    { Name = "Table" };

    // Letters, not words: a word too wide for its column is parted.
    private static int Inked(string text) => text.Count(c => c != ' ');

    [Fact]
    public void Whatever_the_blocks_every_letter_is_set_once_every_part_is_closed_and_nothing_leaves_the_frame() =>
        Gen.Select(Nested.Array[0, 8], Gen.Double[60, 300], Gen.Bool).Sample((blocks, height, large) =>
        {
            var setup = new PageSetup { Paper = new Paper("test", 210, height), LargePrint = large };
            var document = SampleDocument.Of(blocks);
            var pages = Composer.Compose(document, setup);
            var marks = pages.SelectMany(p => p.Marks).ToArray();
            var open = 0;
            foreach (var mark in marks)
            {
                if (mark is PageMark.Open) open++;
                if (mark is PageMark.Close) open--;
                Assert.True(open >= 0);
            }
            // Pictures bring their own words; joints and list numbers are the pages'.
            var expected = DocumentTexts.Of(document).Where(t => t.Place is not ("title" or "words.pageOf") && !t.Place.EndsWith(".picture", StringComparison.Ordinal))
                .Sum(t => Inked(t.Text));
            var labels = false;
            var found = 0;
            foreach (var mark in marks)
            {
                if (mark is PageMark.Open { Tag: Tag.Lbl }) labels = true;
                else if (mark is PageMark.Close) labels = false;
                else if (mark is PageMark.Letters { Decoration: false } l && !labels && !l.Text.StartsWith("joins", StringComparison.Ordinal)) found += Inked(l.Text);
            }
            Assert.Equal((0, expected), (open, found));
            Assert.All(pages, p => Assert.All(p.Marks, m => Assert.True(Inside(p, m))));
        }, iter: 400);

    // A page can be too small for a single letter in each of its columns, or lower than a line: only pages of half an A4 and more are asked.
    private static bool Inside(ComposedPage page, PageMark mark) => page.Width < 140 * Point || page.Height < 140 * Point || mark switch
    {
        PageMark.Letters l => l.X >= 0 && l.X + HouseFaces.Of(l.Face).WidthEm(l.Text.TrimEnd()) * l.Size <= page.Width + Exact && l.Baseline <= (l.Decoration ? page.Height : page.Height - A4.BottomMm * Point),
        PageMark.Drawing d => d.X >= 0 && d.X + (d.ToMm - d.FromMm) * d.PointsPerMm <= page.Width + Exact,
        _ => true,
    };
}
