using System.Collections.Immutable;

namespace Coilwright.Documents.Drawing;

/// <summary>Areas filled with parallel lines.</summary>
/// <remarks>The lines are worked out here as plain pieces that end at the area's edge, so that every canvas draws the same ones: no patterns and
/// no clipping are asked of it.</remarks>
public static class Hatching
{
    /// <summary>The pieces of parallel lines that lie in an area, as one outline of separate lines.</summary>
    /// <param name="area">The area; curves are taken as straight pieces (<see cref="Outline.FlatnessMm"/>).</param>
    /// <param name="angleDeg">Direction of the lines, degrees: 0 runs level, 45 rises to the right.</param>
    /// <param name="apartMm">Distance from line to line, mm, above 0.</param>
    /// <param name="insetMm">How far the lines stay off the edge along themselves, mm.</param>
    public static Outline Lines(Outline area, double angleDeg, double apartMm, double insetMm = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(apartMm);
        // Turned so that the lines are level, each line meets the edges at places that are entries and exits by turns (even-odd).
        var (sin, cos) = Math.SinCos(angleDeg * Math.PI / 180);
        var figures = area.Flattened().Select(f => f.Select(p => new Point(p.XMm * cos - p.YMm * sin, p.XMm * sin + p.YMm * cos)).ToArray()).ToArray();
        if (Box.Round(figures.SelectMany(f => f)) is not { } box) return new Outline([]);
        var steps = ImmutableArray.CreateBuilder<Step>();
        var meets = new List<double>();
        // The lines stand on a raster through the origin, not through the area, so that neighbouring areas hatch alike; the small offset keeps
        // them off corners, where a line would meet two edges at once.
        for (var k = Math.Floor(box.TopMm / apartMm); k * apartMm <= box.BottomMm; k++)
        {
            var y = (k + 0.37) * apartMm;
            meets.Clear();
            foreach (var figure in figures)
                for (var i = 0; i < figure.Length; i++)
                {
                    Point a = figure[i], b = figure[(i + 1) % figure.Length];
                    if (a.YMm > y != b.YMm > y) meets.Add(a.XMm + (y - a.YMm) / (b.YMm - a.YMm) * (b.XMm - a.XMm));
                }
            meets.Sort();
            for (var i = 0; i + 1 < meets.Count; i += 2)
            {
                double from = meets[i] + insetMm, to = meets[i + 1] - insetMm;
                if (to - from <= 1e-6) continue;
                steps.Add(new Step(StepKind.Move, default, default, Back(from, y)));
                steps.Add(new Step(StepKind.Line, default, default, Back(to, y)));
            }
        }
        return new Outline(steps.ToImmutable());

        Point Back(double x, double y) => new(x * cos + y * sin, y * cos - x * sin);
    }
}
