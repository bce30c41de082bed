using Coilwright.Documents.Drawing;
using CsCheck;

namespace Coilwright.Documents.Tests.Drawing;

public class OutlineTests
{
    private static double AreaMm2(Outline outline) => outline.Flattened().Sum(f =>
    {
        var twice = 0.0;
        for (var i = 0; i < f.Length; i++)
        {
            Point a = f[i], b = f[(i + 1) % f.Length];
            twice += a.XMm * b.YMm - b.XMm * a.YMm;
        }
        return Math.Abs(twice) / 2;
    });

    // Tolerance: straight pieces stray at most FlatnessMm from the curve, so the area is off by at most that times the way round; the curve
    // itself is off its circle by 0.03 % of the radius (0.06 % of the area).
    [Theory]
    [InlineData(4, 4)]
    [InlineData(20, 3)]
    public void An_ellipse_has_its_area(double halfWidth, double halfHeight)
    {
        var outline = Outline.Ellipse(new Point(7, -3), halfWidth, halfHeight);
        var exact = Math.PI * halfWidth * halfHeight;
        Assert.Equal(exact, AreaMm2(outline), Outline.FlatnessMm * 2 * Math.PI * Math.Max(halfWidth, halfHeight) + 0.0006 * exact);
    }

    // Tolerance: FlatnessMm, plus 0.001 % of the radius for the curves.
    [Fact]
    public void Every_place_on_an_arc_is_its_radius_from_its_middle() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[-360, 360], Gen.Double[-360, 360]).Sample((radius, from, sweep) =>
        {
            var middle = new Point(3, 4);
            var points = Outline.Arc(middle, radius, from, sweep).Flattened().SelectMany(f => f).ToArray();
            return points.All(p => Math.Abs(p.DistanceMm(middle) - radius) <= Outline.FlatnessMm + 1e-5 * radius);
        });

    [Fact]
    public void A_rounded_rectangle_keeps_its_box() =>
        Gen.Select(Gen.Double[1, 50], Gen.Double[1, 50], Gen.Double[0, 40]).Sample((w, h, corner) =>
        {
            var bounds = Outline.Rectangle(Box.At(5, 6, w, h), corner).Bounds!.Value;
            return Math.Abs(bounds.LeftMm - 5) < 1e-9 && Math.Abs(bounds.TopMm - 6) < 1e-9
                && Math.Abs(bounds.WidthMm - w) < 1e-9 && Math.Abs(bounds.HeightMm - h) < 1e-9;
        });

    [Fact]
    public void A_line_without_a_start_is_refused() =>
        Assert.Throws<InvalidOperationException>(() => new OutlineBuilder().Line(new Point(1, 1)));
}
