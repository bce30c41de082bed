using System.Collections.Immutable;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.CoilView;

/// <summary>The smallest bulging figure round points (their convex hull), clockwise as seen.</summary>
/// <remarks>Andrew's monotone chain, after the points are left out that lie within the octagon of the outermost ones (Akl and Toussaint's way): of a round
/// body's points few are on its outline. Both from memory.</remarks>
internal static class Bulging
{
    // A corner this far off a straight line, mm², is none.
    private const double Straight = 1e-9;

    internal static ImmutableArray<Point> Round(ReadOnlySpan<Point> points)
    {
        var outer = Outer(points);
        var kept = new Point[points.Length];
        var across = new double[points.Length];
        var count = 0;
        foreach (var point in points)
            if (!IsWithin(point, outer))
            {
                across[count] = point.XMm;
                kept[count++] = point;
            }
        Array.Sort(across, kept, 0, count);
        Downwards(kept.AsSpan(0, count));
        return Chain(kept.AsSpan(0, count));
    }

    // The outermost point each way, clockwise as seen; two ways may have the same one.
    private static Point[] Outer(ReadOnlySpan<Point> points)
    {
        var outer = new Point[8];
        var most = new double[8];
        Array.Fill(most, double.NegativeInfinity);
        foreach (var point in points)
        {
            double x = point.XMm, y = point.YMm;
            Farther(0, x);
            Farther(1, x + y);
            Farther(2, y);
            Farther(3, y - x);
            Farther(4, -x);
            Farther(5, -x - y);
            Farther(6, -y);
            Farther(7, x - y);

            void Farther(int way, double by)
            {
                if (by <= most[way]) return;
                (most[way], outer[way]) = (by, point);
            }
        }
        return outer;
    }

    private static bool IsWithin(Point point, Point[] outer)
    {
        var isWithin = false;
        for (var i = 0; i < outer.Length; i++)
        {
            var (from, to) = (outer[i], outer[(i + 1) % outer.Length]);
            if (from == to) continue;
            if (Turn(from, to, point) <= Straight) return false;
            isWithin = true;
        }
        return isWithin;
    }

    // Points straight above each other, by their height.
    private static void Downwards(Span<Point> points)
    {
        for (var i = 1; i < points.Length; i++)
            for (var j = i; j > 0 && points[j].XMm == points[j - 1].XMm && points[j].YMm < points[j - 1].YMm; j--)
                (points[j], points[j - 1]) = (points[j - 1], points[j]);
    }

    private static ImmutableArray<Point> Chain(ReadOnlySpan<Point> points)
    {
        var hull = new List<Point>(points.Length);
        for (var pass = 0; pass < 2; pass++)
        {
            var start = hull.Count;
            for (var i = 0; i < points.Length; i++)
            {
                var p = points[pass == 0 ? i : points.Length - 1 - i];
                while (hull.Count >= start + 2 && Turn(hull[^2], hull[^1], p) <= Straight) hull.RemoveAt(hull.Count - 1);
                hull.Add(p);
            }
            hull.RemoveAt(hull.Count - 1);
        }
        return [.. hull];
    }

    private static double Turn(Point o, Point a, Point b) => (a.XMm - o.XMm) * (b.YMm - o.YMm) - (a.YMm - o.YMm) * (b.XMm - o.XMm);
}
