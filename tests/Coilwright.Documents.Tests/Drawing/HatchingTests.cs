using Coilwright.Documents.Drawing;
using CsCheck;

namespace Coilwright.Documents.Tests.Drawing;

public class HatchingTests
{
    private static IEnumerable<(Point From, Point To)> Pieces(Outline lines) => lines.Steps.Chunk(2).Select(s => (s[0].To, s[1].To));

    // Lines c mm apart over an area A have together the length A / c, short of what the first and last line may miss: a raster of parallel lines
    // is a Riemann sum of the chord length. Tolerance: two chords' worth at most, the error of a Riemann sum of a single-humped function.
    [Fact]
    public void Hatched_length_times_distance_is_the_area_whatever_the_angle() =>
        Gen.Select(Gen.Double[2, 20], Gen.Double[2, 20], Gen.Double[-180, 180], Gen.Double[0.3, 1.5]).Sample((halfWidth, halfHeight, angle, apart) =>
        {
            var lines = Hatching.Lines(Outline.Ellipse(new Point(30, 12), halfWidth, halfHeight), angle, apart);
            var length = Pieces(lines).Sum(p => p.From.DistanceMm(p.To));
            var longest = 2 * Math.Max(halfWidth, halfHeight);
            return Math.Abs(length * apart - Math.PI * halfWidth * halfHeight) <= 2 * longest * apart + 0.02 * 2 * Math.PI * longest;
        });

    // Tolerance: the flattened edge lies inside the true ellipse, so no end stands out of it by more than rounding.
    [Fact]
    public void No_line_leaves_the_area() =>
        Gen.Select(Gen.Double[1, 20], Gen.Double[1, 20], Gen.Double[-180, 180]).Sample((halfWidth, halfHeight, angle) =>
            Pieces(Hatching.Lines(Outline.Ellipse(new Point(5, 5), halfWidth, halfHeight), angle, 0.8))
                .SelectMany(p => new[] { p.From, p.To })
                .All(p => Math.Pow((p.XMm - 5) / halfWidth, 2) + Math.Pow((p.YMm - 5) / halfHeight, 2) <= 1 + 0.002));

    [Fact]
    public void A_hole_in_the_area_stays_open()
    {
        var ring = Outline.Together([Outline.Rectangle(new Box(0, 0, 20, 20)), Outline.Rectangle(new Box(5, 5, 15, 15))]);
        Assert.All(Pieces(Hatching.Lines(ring, 0, 1)), p => Assert.False(p.From.YMm is > 5 and < 15 && p.From.XMm < 5 && p.To.XMm > 15));
        Assert.Equal(300, Pieces(Hatching.Lines(ring, 0, 1)).Sum(p => p.From.DistanceMm(p.To)), 1e-9);
    }

    [Fact]
    public void Lines_at_forty_five_degrees_rise_to_the_right() =>
        Assert.All(Pieces(Hatching.Lines(Outline.Rectangle(new Box(0, 0, 9, 4)), 45, 1)), p =>
        {
            var (left, right) = p.From.XMm < p.To.XMm ? (p.From, p.To) : (p.To, p.From);
            Assert.Equal(right.XMm - left.XMm, left.YMm - right.YMm, 1e-9);
        });

    [Fact]
    public void An_empty_area_has_no_lines() => Assert.Empty(Hatching.Lines(Outline.Through([]), 45, 1).Steps);
}
