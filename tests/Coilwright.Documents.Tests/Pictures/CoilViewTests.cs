using Coilwright.Core.Lies;
using Coilwright.Core.Readings;
using Coilwright.Core.Tests;
using Coilwright.Documents.CoilView;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Tests.Pictures;

public class CoilViewTests
{
    // Twelve equal balls to a turn of 120 mm: every bead's place in space is known without reckoning.
    private const double RadiusMm = 120 / (2 * Math.PI);

    private static readonly Reckoned Twelve = DrawnPieces.Reckon(SamplePieces.Piece([SamplePieces.Bead("ball", "round", 8, bore: 1, colour: "#b04040")], Enumerable.Repeat(0, 24)))
        with
    { Lie = new Lie([.. Enumerable.Repeat(10.0, 24)], 120, RadiusMm, 180 - 15) };

    private static Box BoxOf(Picture picture, int number)
    {
        var (group, right, down) = Groups(picture.Marks, 0, 0).Single(g => g.Group.Id == $"coil-bead-{number}");
        return group.Marks.OfType<Shape>().Select(s => s.Outline.Bounds!.Value).Aggregate((a, b) => a.With(b)).Moved(right, down);
    }

    private static IEnumerable<(Group Group, double Right, double Down)> Groups(IEnumerable<Mark> marks, double right, double down) => marks.OfType<Group>()
        .SelectMany(g => Groups(g.Marks, right + g.MoveRightMm, down + g.MoveDownMm).Prepend((g, right + g.MoveRightMm, down + g.MoveDownMm)));

    // Tolerance: a ball drawn with straight pieces falls short of its circle by at most 1 - cos(pi / 24) of its radius, 0.04 mm.
    private const double RoughMm = 0.08;

    [Fact]
    public void Every_ball_is_seen_as_large_as_it_is()
    {
        var picture = CoilViewDrawing.Of(Twelve);
        for (var i = 1; i <= 24; i++)
        {
            Assert.Equal(8, BoxOf(picture, i).WidthMm, RoughMm);
            Assert.Equal(8, BoxOf(picture, i).HeightMm, RoughMm);
        }
    }

    [Fact]
    public void Beads_lie_on_a_circle_seen_at_a_slant_and_run_to_the_right_in_front()
    {
        var picture = CoilViewDrawing.Of(Twelve);
        // The start is turned by half a share, so bead 7 stands on the top, in front, and beads 1 and 13 at the back.
        var front = BoxOf(picture, 7).Middle;
        for (var i = 0; i < 24; i++)
        {
            var angle = Twelve.Lie.AngleDeg(i) * Math.PI / 180;
            var at = BoxOf(picture, i + 1).Middle;
            Assert.Equal(RadiusMm * Math.Sin(angle), at.XMm - front.XMm, RoughMm);
            // From 24 degrees above: depth shows by its sine, height by its cosine.
            var (sin, cos) = Math.SinCos(24 * Math.PI / 180);
            var down = RadiusMm * (Math.Cos(angle) - 1) * sin + Twelve.Worn.PitchMm * (i - 6) / 12.0 * cos;
            Assert.Equal(down, at.YMm - front.YMm, RoughMm);
        }
        Assert.True(BoxOf(picture, 8).Middle.XMm > front.XMm);
    }

    [Fact]
    public void What_lies_behind_is_painted_first_and_paler()
    {
        var picture = CoilViewDrawing.Of(Twelve);
        var painted = Groups(picture.Marks, 0, 0).Select(g => g.Group.Id).ToList();
        Assert.True(painted.IndexOf("coil-bead-1") < painted.IndexOf("coil-bead-7"));
        double Lightness(string id) => Groups(picture.Marks, 0, 0).Single(g => g.Group.Id == id).Group.Marks.OfType<Polygon>().First().Paint.Fill!.Value.Luminance();
        Assert.True(Lightness("coil-bead-1") > 2 * Lightness("coil-bead-7"));
    }

    [Fact]
    public void A_focal_on_top_is_painted_over_the_turns_that_it_covers()
    {
        var reckoned = DrawnPieces.Reckoned("tidewrack");
        var picture = CoilViewDrawing.Of(reckoned);
        var focal = reckoned.Focal!.Index;
        var painted = Groups(picture.Marks, 0, 0).Select(g => g.Group.Id).ToList();
        var box = BoxOf(picture, focal + 1).Grown(-2);
        for (var i = 0; i < reckoned.Lie.Count; i++)
            if (i != focal && Math.Abs(reckoned.Lie.Turn(i) - reckoned.Focal.Turn) <= 1 && BoxOf(picture, i + 1).Overlaps(box) && Math.Abs(reckoned.Lie.AngleDeg(i)) < 30)
                Assert.True(painted.IndexOf($"coil-bead-{i + 1}") < painted.IndexOf($"coil-bead-{focal + 1}"), $"bead {i + 1}");
    }

    [Fact]
    public void A_width_that_is_asked_for_is_filled()
    {
        foreach (var width in new[] { 50.0, 90, 150 })
        {
            var picture = CoilViewDrawing.Of(Twelve, new PictureOptions { WidthMm = width });
            Assert.Equal(width, picture.WidthMm, 1e-9);
            var ink = picture.Of("coil").Select(m => m.Box(CautiousSans.Instance)!.Value).Aggregate((a, b) => a.With(b));
            // A margin of 6 mm at both sides. Room for lines, 0.2 mm at either side, is taken before the scale, which is at most 2 here.
            Assert.InRange(ink.WidthMm, width - 12 - 2 * 2 * 0.2 - 0.2, width - 12);
        }
    }
}
