using Coilwright.Core.Findings;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.TurnRows;

/// <summary>An end of the wire beside its last bead, at the scale of the beads: a turned loop seen as the ring that it is, a cap, or a loop with a dangle.</summary>
/// <remarks>How a dangle looks nobody wrote down: it is drawn as a drop on a ring, as long as it hangs but never longer than leaves room for what stands below.</remarks>
internal static class EndFigure
{
    // What hangs, where she does not say how far; and the longest drop drawn.
    private const double UsualDangleMm = 10, MostDropMm = 6;

    /// <summary>Draws it; the wire lies at height 0.</summary>
    /// <param name="end">The end.</param>
    /// <param name="wireMm">Thickness of the wire, mm.</param>
    /// <param name="scale">Millimetres of the picture for one of the piece.</param>
    /// <param name="x">Where the beads end.</param>
    /// <param name="way">Which way it stands out: 1 to the right, -1 to the left.</param>
    /// <param name="pen">The wire's pen.</param>
    /// <param name="inks">The inks.</param>
    internal static IEnumerable<Mark> Of(WireEnd end, double wireMm, double scale, double x, int way, Pen pen, Palette inks)
    {
        if (!end.IsTurned)
        {
            double along = end.InsideMm * scale, half = Math.Max(0.8, 2 * wireMm * scale);
            yield return new Rectangle(new Box(Math.Min(x, x + way * along), -half, Math.Max(x, x + way * along), half),
                new Paint(inks.Steel.Mixed(inks.Light, 0.6), new Pen(inks.Steel, 0.2)))
            { CornerMm = half * 0.6 };
            yield break;
        }
        var radius = (end.InsideMm + wireMm) / 2 * scale;
        var middle = x + way * radius;
        if (end.Finish == EndFinish.Dangle)
            foreach (var mark in Dangle(new Point(middle, radius), DropMm(end, scale), inks)) yield return mark;
        yield return new Circle(new Point(middle, 0), radius, Paint.Lined(pen));
    }

    /// <summary>How deep it reaches below the wire, mm of the picture.</summary>
    internal static double DepthMm(WireEnd end, double wireMm, double scale) => !end.IsTurned ? 1
        : (end.InsideMm / 2 + wireMm) * scale + (end.Finish == EndFinish.Dangle ? DropMm(end, scale) : 0);

    private static double DropMm(WireEnd end, double scale) => Math.Clamp((end.DangleMm ?? UsualDangleMm) * scale, 2, MostDropMm);

    /// <summary>A drop on a ring that goes through the loop at a place.</summary>
    /// <param name="at">The lowest place of the loop's wire.</param>
    /// <param name="longMm">How far it hangs below that, mm of the picture.</param>
    /// <param name="inks">The inks.</param>
    internal static IEnumerable<Mark> Dangle(Point at, double longMm, Palette inks)
    {
        var ring = Math.Min(0.9, longMm / 5);
        double top = at.YMm + ring * 1.6, bottom = at.YMm + longMm, wide = Math.Min(0.34 * (bottom - top), 2.4), belly = bottom - wide;
        yield return new Drawn(new OutlineBuilder().Move(new(at.XMm, top)).Curve(new(at.XMm + wide * 0.25, top + (belly - top) * 0.5), new(at.XMm + wide, belly - wide * 0.5), new(at.XMm + wide, belly))
            .Curve(new(at.XMm + wide, bottom + wide * 0.05), new(at.XMm - wide, bottom + wide * 0.05), new(at.XMm - wide, belly))
            .Curve(new(at.XMm - wide, belly - wide * 0.5), new(at.XMm - wide * 0.25, top + (belly - top) * 0.5), new(at.XMm, top)).Close().Make(),
            new Paint(inks.Plain, new Pen(inks.EdgeOf(inks.Plain), 0.18)))
        { Class = "dangle" };
        yield return new Circle(new Point(at.XMm, at.YMm + ring * 0.6), ring, Paint.Lined(new Pen(inks.Steel, 0.25)));
    }
}
