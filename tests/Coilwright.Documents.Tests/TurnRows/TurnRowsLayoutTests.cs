using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Tests;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.TurnRows;
using Coilwright.Documents.Typefaces;
using CsCheck;

namespace Coilwright.Documents.Tests.TurnRows;

public class TurnRowsLayoutTests
{
    private static readonly double[] Scales = [1, 0.4];

    // Positions are sums of a few hundred lengths in double: a millionth of a millimetre is far above their rounding.
    private const double RoundingMm = 1e-6;

    /// <summary>Equal balls, ten to a turn of exactly 100 mm, so that places on the page are known without reckoning.</summary>
    private static Reckoned TenToATurn(int beads, double startDeg = 180, double beadMm = 8)
    {
        var piece = SamplePieces.Piece([SamplePieces.Bead("ball", "round", beadMm, bore: 1)], Enumerable.Repeat(0, beads));
        return DrawnPieces.Reckon(piece) with { Lie = new Lie([.. Enumerable.Repeat(10.0, beads)], 100, 100 / (2 * Math.PI), startDeg) };
    }

    [Fact]
    public void A_bead_on_the_top_of_the_wrist_lies_on_the_dotted_line()
    {
        // The bead whose middle lies half a turn from the underside: the share from 45 to 55 mm of a 100 mm turn does not exist, so the start is
        // turned by half a share.
        var reckoned = TenToATurn(30, startDeg: 180 + 18);
        foreach (var scale in Scales)
        {
            var picture = TurnRowsDrawing.Of(reckoned, new TurnRowsOptions { Scale = scale });
            var onTop = Enumerable.Range(0, 30).Where(i => Math.Abs(reckoned.Lie.AngleDeg(i)) < 1e-9).ToArray();
            Assert.Equal(3, onTop.Length);
            Assert.All(onTop, i => Assert.Equal(picture.LineMm("top-line"), picture.BeadMiddle(i + 1).XMm, RoundingMm));
        }
    }

    [Fact]
    public void A_focal_turned_to_the_top_lies_on_the_dotted_line()
    {
        var reckoned = DrawnPieces.Reckoned("focal");
        var picture = TurnRowsDrawing.Of(reckoned);
        Assert.Equal(0, reckoned.Focal!.AngleDeg, 1e-9);
        // Its neighbours are alike on both sides, so its own middle is the middle of its share.
        Assert.Equal(picture.LineMm("top-line"), picture.BeadMiddle(reckoned.Focal.Index + 1).XMm, RoundingMm);
    }

    [Fact]
    public void Beads_that_lie_over_each_other_on_the_wrist_do_so_on_the_page()
    {
        var picture = TurnRowsDrawing.Of(TenToATurn(45));
        for (var i = 1; i <= 35; i++)
        {
            Point above = picture.BeadMiddle(i), below = picture.BeadMiddle(i + 10);
            Assert.Equal(above.XMm, below.XMm, RoundingMm);
            Assert.True(below.YMm > above.YMm);
        }
    }

    [Fact]
    public void A_millimetre_along_is_a_millimetre_across()
    {
        foreach (var scale in Scales)
        {
            var picture = TurnRowsDrawing.Of(TenToATurn(10), new TurnRowsOptions { Scale = scale });
            Assert.Equal(10 * scale, picture.BeadMiddle(2).XMm - picture.BeadMiddle(1).XMm, RoundingMm);
            var outline = picture.Of("beads").Where(m => m.Mark is Shape { Paint.Pen: not null }).Select(m => ((Shape)m.Mark).Outline.Bounds!.Value).First();
            // Tolerance: what rounding the corners of a many-sided figure takes off it.
            Assert.Equal(8 * scale, outline.WidthMm, 0.02);
            Assert.Equal(8 * scale, outline.HeightMm, 0.02);
        }
    }

    [Fact]
    public void Every_bead_stands_on_the_row_of_its_turn_where_the_piece_starts_near_the_underside()
    {
        var reckoned = DrawnPieces.Reckoned("repeat");
        var picture = TurnRowsDrawing.Of(reckoned);
        var rows = picture.Groups("row").Select(r => r.DownMm).ToArray();
        for (var i = 0; i < reckoned.Lie.Count; i++)
            if (reckoned.Lie.Turn(i) == reckoned.Lie.TurnAt(reckoned.Lie.BeadMiddleMm(i)))
                Assert.Equal(rows[reckoned.Lie.Turn(i) - 1], picture.BeadMiddle(i + 1).YMm, RoundingMm);
    }

    [Fact]
    public void Where_the_piece_starts_near_the_top_rows_are_cut_at_the_underside_and_the_beginning_of_turns_is_marked()
    {
        var reckoned = TenToATurn(25, startDeg: 0);
        var model = TurnRowsModel.Of(reckoned);
        Assert.Equal(50, model.StartMm, RoundingMm);
        Assert.Equal(50, model.TopMm, RoundingMm);
        Assert.Equal(0, model.UndersideMm);
        Assert.Equal([[1], [1, 2], [2, 3]], model.Rows.Select(r => r.Turns.ToArray()).ToArray());
        var picture = TurnRowsDrawing.Of(reckoned);
        Assert.Equal(picture.LineMm("top-line"), picture.LineMm("turns-begin-line"), RoundingMm);
    }

    [Fact]
    public void A_bead_over_the_seam_stands_on_both_rows_and_carries_its_letter_once()
    {
        // Shares of 10 mm from 5 mm before the seam: every tenth bead has its middle on it.
        var reckoned = TenToATurn(24) with { Lie = new Lie([5, .. Enumerable.Repeat(10.0, 23)], 100, 16, 180) };
        var model = TurnRowsModel.Of(reckoned);
        var straddling = model.Rows[0].Beads[^1];
        Assert.Equal(straddling.Index, model.Rows[1].Beads[0].Index);
        Assert.NotEqual(straddling.IsHome, model.Rows[1].Beads[0].IsHome);
        var picture = TurnRowsDrawing.Of(reckoned);
        Assert.Equal(24, picture.Texts().Count(t => t.Text.Content == "A" && t.Text.Class == "letter"));
    }

    [Fact]
    public void A_bar_lies_where_like_lies_over_like_and_says_how_far_off_square()
    {
        var reckoned = DrawnPieces.Reckoned("tidewrack");
        var model = TurnRowsModel.Of(reckoned);
        var pair = reckoned.LiningUp.Pairs.Where(p => p.OverlapMm > 10).MinBy(p => p.OverlapFromMm)!;
        var ties = model.Rows.SelectMany(r => r.Ties).Where(t => t.Name == pair.Name).ToArray();
        var along = pair.OverlapFromMm + model.StartMm;
        Assert.Contains(ties, t => Math.Abs(t.Over.FromMm - along % model.RowMm) < RoundingMm && Math.Abs(t.OffSquareMm - Math.Abs(pair.OffSquareMm)) < RoundingMm);
        var picture = TurnRowsDrawing.Of(reckoned);
        Assert.Contains(picture.Texts(), t => t.Text.Class == "tie-words" && t.Text.Content.StartsWith(pair.Name, StringComparison.Ordinal));
        Assert.Equal(ties.Length, picture.Groups("tie").Count(g => g.Group.Title?.StartsWith(pair.Name, StringComparison.Ordinal) == true));
    }

    [Fact]
    public void A_bar_that_a_focal_parts_reaches_as_far_as_what_lies_over_each_other()
    {
        var reckoned = DrawnPieces.Reckoned("tidewrack");
        var whole = reckoned.LiningUp.Pairs.MaxBy(p => p.OverlapMm)!;
        Assert.Equal(whole.OverlapFromMm + whole.OverlapMm, whole.OverlapToMm, RoundingMm);
        // As if half of it were hidden in the middle: less is seen, from the same place to the same place.
        var parted = reckoned with { LiningUp = reckoned.LiningUp with { Pairs = [whole with { OverlapMm = whole.OverlapMm / 2 }] } };
        static (double, double)[] Bars(Reckoned of) => [.. TurnRowsModel.Of(of).Rows.SelectMany(r => r.Ties).Select(t => (t.Over.FromMm, t.Over.ToMm))];
        Assert.Equal(Bars(reckoned with { LiningUp = reckoned.LiningUp with { Pairs = [whole] } }), Bars(parted));
        Assert.NotEmpty(Bars(parted));
    }

    [Fact]
    public void What_goes_on_over_an_edge_is_no_bar_where_it_is_no_longer_than_high()
    {
        var reckoned = DrawnPieces.Reckoned("boardwalk");
        var ties = TurnRowsModel.Of(reckoned).Rows.SelectMany(r => r.Ties).ToArray();
        var specks = ties.Count(t => !t.IsHome && t.Over.LengthMm <= TieBar.HeightMm);
        Assert.NotEqual(0, specks);
        Assert.Equal(ties.Length - specks, TurnRowsDrawing.Of(reckoned, new TurnRowsOptions { Scale = 1, RowsAlone = true }).Groups("tie").Count());
    }

    [Fact]
    public void Wished_columns_are_marked_calmly_without_hatching()
    {
        var wished = TurnRowsDrawing.Of(DrawnPieces.Reckoned("seeds"));
        Assert.NotEmpty(wished.Groups("wished"));
        Assert.Equal(wished.Groups("wished").Count(), wished.Groups("tie").Count());
        var unwished = TurnRowsDrawing.Of(DrawnPieces.Reckon(DrawnPieces.Seeds() with { Wishes = Wishes.None }));
        Assert.Empty(unwished.Groups("wished"));
        Assert.NotEmpty(unwished.Groups("tie"));
    }

    [Fact]
    public void The_key_has_every_kind_with_its_count_and_the_counts_add_up()
    {
        var reckoned = DrawnPieces.Reckoned("repeat");
        var entries = TurnRowsDrawing.Of(reckoned).Groups("key-entry").Select(g => g.Group).ToArray();
        Assert.Equal(reckoned.Counts.Select(k => k.Bead.Id), entries.Select(e => e.Data["bead"]));
        Assert.Equal(reckoned.Lie.Count, entries.Sum(e => int.Parse(e.Data["count"], CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void A_width_that_is_asked_for_is_kept()
    {
        foreach (var (name, _) in DrawnPieces.All())
            foreach (var width in new[] { 103.0, 180, 277 })
                Assert.True(Math.Abs(TurnRowsDrawing.Of(DrawnPieces.Reckoned(name), new TurnRowsOptions { WidthMm = width }).WidthMm - width) < RoundingMm, $"{name} at {width}");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(20)]
    public void From_one_turn_to_twenty_nothing_collides(int turns) => AssertSound(DrawnPieces.Reckon(DrawnPieces.Seeds(turns)), new TurnRowsOptions());

    [Fact]
    public void Two_thousand_beads_stay_legible_because_letters_give_way()
    {
        var beads = ImmutableArray.Create(SamplePieces.Bead("one", "seed-bead", 1.0, 1.6, bore: 0.7, colour: "#223344"), SamplePieces.Bead("two", "seed-bead", 1.0, 1.6, bore: 0.7, colour: "#eeddcc"));
        var reckoned = DrawnPieces.Reckon(SamplePieces.Piece(beads, Enumerable.Range(0, 2000).Select(i => i % 2)));
        var picture = AssertSound(reckoned, new TurnRowsOptions());
        Assert.InRange(picture.Texts().Count(t => t.Text.Class == "letter"), 20, 1999);
        Assert.Contains(picture.Texts(), t => t.Text.Class == "note");
        Assert.All(picture.Texts(), t => Assert.True(t.Text.SizeMm >= 2.2, $"{t.Text.Content} is {t.Text.SizeMm} mm: smaller than 6 points."));
    }

    [Fact]
    public void Forty_kinds_with_very_long_names_find_room()
    {
        var name = string.Concat(Enumerable.Repeat("Unpronounceablylongbeadname with a story ", 6));
        var beads = Enumerable.Range(0, 40).Select(i => DrawnPieces.Named(i + name, SamplePieces.Bead($"kind-{i}", "round", 3 + i % 7, bore: null, colour: "#88aa99"))).ToImmutableArray();
        var piece = SamplePieces.Piece(beads, Enumerable.Range(0, 120).Select(i => i % 40)) with { Title = name + name };
        foreach (var width in new[] { 103.0, 210 }) AssertSound(DrawnPieces.Reckon(piece), new TurnRowsOptions { WidthMm = width });
    }

    [Fact]
    public void In_any_piece_no_label_covers_another_and_nothing_leaves_the_sheet() =>
        Gen.Select(RandomPieces.Pieces, RandomPieces.Options).Sample((piece, options) => AssertSound(DrawnPieces.Reckon(piece), options), iter: 40);

    [Fact]
    public void Without_colour_two_kinds_of_one_shape_and_size_differ_by_pattern_and_letter()
    {
        var beads = ImmutableArray.Create(SamplePieces.Bead("red", "round", 8, colour: "#b04040"), SamplePieces.Bead("green", "round", 8, colour: "#3f7a3f"));
        Assert.True(Math.Abs(beads[0].Colours[0].Grey().Red - beads[1].Colours[0].Grey().Red) < 20);
        var picture = TurnRowsDrawing.Of(DrawnPieces.Reckon(SamplePieces.Piece(beads, [0, 1])), new TurnRowsOptions { Greyscale = true });
        var drawn = picture.Groups("bead").Select(g => g.Group.Marks.OfType<Stamp>().Single().Symbol).ToArray();
        // The same parts, and on one of them the lines of a pattern.
        Assert.Equal(drawn[0].Marks.Length + 1, drawn[1].Marks.Length);
        Assert.Equal(["A", "B"], picture.Texts().Where(t => t.Text.Class == "letter").Select(t => t.Text.Content));
    }

    [Fact]
    public void In_greyscale_every_ink_is_grey()
    {
        var picture = TurnRowsDrawing.Of(DrawnPieces.Reckoned("focal"), new TurnRowsOptions { Greyscale = true });
        foreach (var mark in picture.Inked())
            foreach (var ink in new[] { (mark.Mark as Text)?.Ink, (mark.Mark as Shape)?.Paint.Fill, (mark.Mark as Shape)?.Paint.Pen?.Ink })
                Assert.True(ink is null || ink.Value.Red == ink.Value.Green && ink.Value.Green == ink.Value.Blue, $"{mark.Class}: {ink}");
    }

    [Fact]
    public void Letters_read_on_every_bead()
    {
        // WCAG 2.2 asks 4.5:1 of text and 3:1 of large bold letters. Pure black or white reaches 4.58:1 on any ground; ours are a shade warmer: 4:1.
        foreach (var (name, _) in DrawnPieces.All())
        {
            var reckoned = DrawnPieces.Reckoned(name);
            foreach (var grey in new[] { false, true })
            {
                var inks = grey ? Palette.Grey : Palette.Colour;
                foreach (var colour in reckoned.Counts.SelectMany(k => k.Bead.Colours).Select(inks.Of))
                    Assert.True(colour.Contrast(colour.Readable(inks.Dark, inks.Light)) >= 4, $"{colour}");
            }
        }
    }

    internal static Picture AssertSound(Reckoned reckoned, TurnRowsOptions options)
    {
        var picture = TurnRowsDrawing.Of(reckoned, options);
        Assert.True(picture.Collision() is null, picture.Collision());
        Assert.True(picture.OffSheet() is null, picture.OffSheet());
        // The rows keep between the head and the key.
        var rows = picture.Inked().Where(m => m.IsOf("row") || m.IsOf("row-above")).Select(m => m.SeenBox()).Where(b => b is not null).Select(b => b!.Value).ToArray();
        var head = picture.Of("value").Select(m => m.Box(CautiousSans.Instance)!.Value.BottomMm).Max();
        var key = picture.Of("key-heading").Single().Box(CautiousSans.Instance)!.Value.TopMm;
        Assert.True(rows.Min(b => b.TopMm) > head);
        Assert.True(rows.Max(b => b.BottomMm) < key);
        return picture;
    }
}
