using System.Globalization;
using Coilwright.Core.Findings;
using Coilwright.Core.Tests;
using Coilwright.Documents.BeadCards;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.EndStages;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Documents.WristCurve;

namespace Coilwright.Documents.Tests.Pictures;

public class SmallPicturesTests
{
    private static double LengthMm(Outline outline) => outline.Flattened().Sum(f => Enumerable.Range(1, f.Length - 1).Sum(i => f[i - 1].DistanceMm(f[i])));

    // What is rolled up is no longer straight: the wire is as long in every stage until the loop is closed.
    // Tolerance: a curve flattened to straight pieces is a little short, 0.1 % here.
    [Fact]
    public void The_wire_of_an_end_loop_is_as_long_in_each_stage_as_the_loop_uses()
    {
        var picture = EndStagesDrawing.Of(DrawnPieces.Reckoned("tidewrack"));
        var wires = picture.Of("stage-wire").Select(m => LengthMm(((Shape)m.Mark).Outline)).ToArray();
        Assert.Equal(4, wires.Length);
        Assert.Equal(wires[0], wires[1], wires[0] * 1e-3);
        Assert.Equal(wires[0], wires[2], wires[0] * 1e-3);
        // The measure beneath it says the same length as the drawing shows, at the drawing's own scale.
        var end = DrawnPieces.Reckoned("tidewrack").Piece.Ends.Start;
        var words = picture.Texts().First(t => t.Text.Class == "measure-words").Text.Content;
        Assert.Equal(end.WireUsedMm(DrawnPieces.Reckoned("tidewrack").Piece.Wire.WireMm), double.Parse(words.Split('\u00a0')[0], CultureInfo.InvariantCulture), 0.05);
    }

    [Fact]
    public void Ends_that_differ_are_shown_apart()
    {
        var piece = DrawnPieces.Child() with { Ends = new WireEnds(new WireEnd(EndFinish.TurnedLoop, 3), new WireEnd(EndFinish.GluedCap, 5), 20, 0) };
        var picture = EndStagesDrawing.Of(DrawnPieces.Reckon(piece));
        Assert.Equal(2, picture.Texts().Count(t => t.Text.Class == "heading"));
        Assert.Equal(4 + 3, picture.Texts().Count(t => t.Text.Class == "stage-number"));
        Assert.Equal(1, EndStagesDrawing.Of(DrawnPieces.Reckoned("child")).Texts().Count(t => t.Text.Class == "heading"));
    }

    [Fact]
    public void A_dangle_is_hung_in_before_its_loop_is_closed_and_stays_in_its_figure()
    {
        var piece = DrawnPieces.Child() with { Ends = new WireEnds(new WireEnd(EndFinish.Dangle, 3) { DangleMm = 200 }, new WireEnd(EndFinish.Dangle, 3) { DangleMm = 200 }, 20, 0) };
        var picture = EndStagesDrawing.Of(DrawnPieces.Reckon(piece));
        Assert.Equal(4, picture.Texts().Count(t => t.Text.Class == "stage-number"));
        var dangle = picture.Of("dangle").Single().Box(CautiousSans.Instance)!.Value;
        Assert.True(dangle.BottomMm < picture.Texts().Where(t => t.Text.Class == "stage-words").Min(t => t.Box.TopMm));
        // The loop of the last stage goes through it: their middles stand over each other.
        var closed = picture.Of("stage-wire").Last().Box(CautiousSans.Instance)!.Value;
        Assert.InRange(dangle.Middle.XMm, closed.LeftMm, closed.RightMm);
    }

    [Fact]
    public void The_wearers_wrist_stands_on_the_curve_where_its_reading_is()
    {
        var reckoned = DrawnPieces.Reckoned("repeat");
        var picture = WristCurveSheet.Of(reckoned);
        var curve = ((Shape)picture.Of("curve").Single().Mark).Outline.Steps.Select(s => s.To).ToArray();
        var here = (Circle)picture.Of("here").Single().Mark;
        Assert.Equal(here.Middle.XMm, picture.LineMm("wrist-line"), 1e-9);
        // A wrist of whole millimetres is one of the curve's own points.
        var index = Enumerable.Range(0, reckoned.Curve.Length).Single(i => reckoned.Curve[i].WristMm == reckoned.WristMm);
        Assert.Equal(curve[index].XMm, here.Middle.XMm, 1e-9);
        Assert.Equal(curve[index].YMm, here.Middle.YMm, 1e-6);
        Assert.Equal(curve.Select(p => p.XMm), curve.Select(p => p.XMm).Order());
    }

    [Fact]
    public void Twice_the_cover_stands_twice_as_high()
    {
        var given = DrawnPieces.Reckoned("repeat");
        var reckoned = given with
        {
            Curve = [.. Enumerable.Range(0, 5).Select(i => given.Curve[0] with { WristMm = 150 + 10 * i, Cover = 0.1 * i, CoverExact = 0.1 * i })],
            WristMm = 170,
            LiningUp = given.LiningUp with { Cover = 0.2 },
        };
        var curve = ((Shape)WristCurveSheet.Of(reckoned).Of("curve").Single().Mark).Outline.Steps.Select(s => s.To).ToArray();
        for (var i = 1; i < 5; i++)
        {
            Assert.Equal((curve[0].YMm - curve[1].YMm) * i, curve[0].YMm - curve[i].YMm, 1e-9);
            Assert.Equal((curve[1].XMm - curve[0].XMm) * i, curve[i].XMm - curve[0].XMm, 1e-9);
        }
    }

    [Fact]
    public void Wrists_on_which_the_wish_fails_are_hatched_and_no_others()
    {
        var given = DrawnPieces.Reckoned("repeat");
        var none = given with { Wrists = given.Wrists with { WishFails = [] } };
        Assert.Empty(WristCurveSheet.Of(none).Of("fails"));
        var some = given with { Wrists = given.Wrists with { WishFails = [new(150, 158, true, false), new(180, 184, false, true)] } };
        var boxes = WristCurveSheet.Of(some).Of("fails").Select(m => ((Shape)m.Mark).Outline.Bounds!.Value).ToArray();
        // A frame and its lines for each.
        Assert.Equal(4, boxes.Length);
        Assert.True(boxes[0].WidthMm > 1.5 * boxes[2].WidthMm);
    }

    [Fact]
    public void A_piece_of_one_turn_says_why_it_has_no_curve()
    {
        var picture = WristCurveSheet.Of(DrawnPieces.Reckoned("single"));
        Assert.Empty(picture.Of("curve"));
        Assert.NotEmpty(picture.Texts());
    }

    [Fact]
    public void Every_kind_has_a_card_with_its_letter_and_its_bead_at_true_size()
    {
        var reckoned = DrawnPieces.Reckoned("tidewrack");
        var picture = BeadCardsDrawing.Of(reckoned);
        var cards = picture.Groups("card").Select(g => g.Group).ToArray();
        Assert.Equal(reckoned.Counts.Select(k => k.Letter), cards.Select(c => c.Marks.OfType<Text>().Single(t => t.Class == "key-letter").Content));
        foreach (var (card, kind) in cards.Zip(reckoned.Counts))
        {
            var bead = card.Marks.OfType<Stamp>().Single().Symbol.Marks.OfType<Shape>().Select(s => s.Outline.Bounds!.Value).Aggregate((a, b) => a.With(b));
            // Tolerance: curves are measured along straight pieces, which fall short by their flatness at both sides.
            Assert.Equal(kind.Bead.LengthMm, bead.WidthMm, 2 * Outline.FlatnessMm);
            Assert.Equal(kind.Bead.WidthMm, bead.HeightMm, 2 * Outline.FlatnessMm);
        }
    }

    [Fact]
    public void A_bead_too_large_for_its_card_is_drawn_smaller_and_the_card_says_so()
    {
        var piece = SamplePieces.Piece([SamplePieces.Bead("bar", "tube", 120, 6, bore: 3), SamplePieces.Bead("ball", "round", 8, bore: 1)], [0, 1]);
        var picture = BeadCardsDrawing.Of(DrawnPieces.Reckon(piece), new PictureOptions { WidthMm = 90 });
        var facts = picture.Texts().Where(t => t.Text.Class == "facts").Select(t => t.Text.Content).ToArray();
        Assert.Single(facts, f => f.Contains("drawn at", StringComparison.Ordinal));
    }
}
