using Coilwright.Documents.CoilView;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Tests.Pictures;

/// <summary>The bulging figure round points, against its definition: each of its sides has all points on one hand.</summary>
public sealed class BulgingTests
{
    // A corner may be left out that stands 1e-9 mm² off a straight line, and so may each point after it.
    private const double Tolerance = 1e-9;

    [Theory]
    [InlineData(3)]
    [InlineData(40)]
    [InlineData(2_000)]
    public void All_points_lie_within_and_its_corners_are_points(int count)
    {
        var random = new Random(count);
        for (var round = 0; round < 50; round++)
        {
            // In a disc, on a grid (many straight above each other and in one line) and in a slim strip by turns.
            var points = Enumerable.Range(0, count).Select(_ => (round % 3) switch
            {
                0 when Math.Tau * random.NextDouble() is var a && 20 * Math.Sqrt(random.NextDouble()) is var r => new Point(r * Math.Cos(a), r * Math.Sin(a)),
                1 => new Point(random.Next(9), random.Next(9)),
                _ => new Point(30 * random.NextDouble(), 0.01 * random.NextDouble()),
            }).ToArray();
            var figure = Bulging.Round(points);
            Assert.All(figure, corner => Assert.Contains(corner, points));
            Assert.Equal(figure.Length, figure.Distinct().Count());
            for (var i = 0; i < figure.Length; i++)
            {
                var (from, to) = (figure[i], figure[(i + 1) % figure.Length]);
                Assert.DoesNotContain(points, p => Turn(from, to, p) < -Tolerance * Math.Max(1, count));
            }
        }
    }

    [Fact]
    public void What_has_no_width_is_a_line() => Assert.Equal([new Point(0, 0), new Point(3, 3)], Bulging.Round([new(1, 1), new(3, 3), new(0, 0), new(2, 2)]));

    private static double Turn(Point o, Point a, Point b) => (a.XMm - o.XMm) * (b.YMm - o.YMm) - (a.YMm - o.YMm) * (b.XMm - o.XMm);
}
