using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.BeadFigures;

/// <summary>A bead seen from outside, lying with its hole along x: its true outline round its own middle, from its profile.</summary>
/// <remarks>Length along the hole runs right, width across it runs down, both in millimetres of the picture (the bead's own times a scale).</remarks>
public sealed class Silhouette
{
    // Points along one side. A quarter of a 40 mm focal strays from its curve by 40/2 (1 - cos(pi/2/24)) = 0.04 mm at the most.
    private const int Samples = 24;

    private readonly Func<double, double> _share;

    /// <summary>The silhouette of a bead at a scale: 1 draws it at its own size.</summary>
    /// <param name="bead">The bead.</param>
    /// <param name="scale">Millimetres of the picture for one of the bead.</param>
    /// <param name="fromTheSide">Whether it is seen along the arm, its thickness upwards, instead of from outside.</param>
    public Silhouette(Bead bead, double scale, bool fromTheSide = false)
    {
        var profile = bead.Shape.Profile(bead);
        _share = fromTheSide ? profile.Thickness : profile.Width;
        Look = profile.Look;
        HalfLengthMm = bead.LengthMm * scale / 2;
        HalfWidthMm = (fromTheSide ? bead.ThicknessMm : bead.WidthMm) * scale / 2;
    }

    /// <summary>How its surface looks.</summary>
    public SurfaceLook Look { get; }

    /// <summary>Half its length along the hole, mm.</summary>
    public double HalfLengthMm { get; }

    /// <summary>Half its greatest width, mm.</summary>
    public double HalfWidthMm { get; }

    /// <summary>Half its width at a place along the hole, mm from its middle; 0 beyond its ends.</summary>
    public double HalfWidthAtMm(double alongMm)
    {
        var u = alongMm / HalfLengthMm;
        return Math.Abs(u) > 1 ? 0 : HalfWidthMm * _share(u);
    }

    /// <summary>Greatest half width between two places along the hole, mm from its middle; 0 where it does not reach. An uneven stone may fill its box.</summary>
    public double GreatestHalfWidthMm(double fromMm, double toMm)
    {
        if (toMm <= -HalfLengthMm || fromMm >= HalfLengthMm) return 0;
        if (Look == SurfaceLook.Uneven) return HalfWidthMm;
        // The profile never rises away from the middle, so the widest place is the one nearest to it.
        return HalfWidthAtMm(fromMm > 0 ? fromMm : toMm < 0 ? toMm : 0);
    }

    /// <summary>Whether a box lies on the bead: so far along from its middle, and of these half measures.</summary>
    public bool Holds(double alongMm, double halfAlongMm, double halfAcrossMm)
    {
        // A stone's corners may be cut off by a sixth and more.
        var sure = Look == SurfaceLook.Uneven ? 0.78 : 1;
        var far = Math.Abs(alongMm) + halfAlongMm;
        return far <= HalfLengthMm * sure && halfAcrossMm <= HalfWidthAtMm(far / sure) * sure;
    }

    /// <summary>The whole outline. Flat ends get softly broken edges, as worn beads have; pointed and curved ones are as they are.</summary>
    public Outline Whole => Part(-1, 1, -1, 1, Look == SurfaceLook.Smooth ? Math.Min(0.5, 0.22 * Math.Min(HalfLengthMm, HalfWidthMm)) : 0);

    /// <summary>A part of it: between two places along the hole (-1 to 1) and between two shares of the half width there (-1 the upper edge, 1 the
    /// lower).</summary>
    public Outline Part(double fromU, double toU, double fromShare, double toShare, double softMm = 0)
    {
        var along = Along(fromU, toU);
        Point At(double u, double share) => new(u * HalfLengthMm, share * HalfWidthMm * _share(u));
        IEnumerable<Point> points = [.. along.Select(u => At(u, fromShare)), .. along.Reverse().Select(u => At(u, toShare))];
        return Softened(Sparse([.. points]), softMm);
    }

    /// <summary>A sickle of light: between two places along the hole, from a share of the half width, at its middle so much of it broad and pointed at
    /// both ends.</summary>
    public Outline Sickle(double fromU, double toU, double share, double broad)
    {
        var along = Along(fromU, toU);
        Point At(double u, double s) => new(u * HalfLengthMm, s * HalfWidthMm * _share(u));
        double Breadth(double u)
        {
            var v = (2 * u - fromU - toU) / (toU - fromU);
            return broad * (1 - v * v);
        }
        return Outline.Through(Sparse([.. along.Select(u => At(u, share)), .. along.Reverse().Select(u => At(u, share + Breadth(u)))]));
    }

    /// <summary>A line along it at a share of its half width.</summary>
    public Outline Lengthwise(double share, double fromU = -1, double toU = 1) =>
        Outline.Through(Sparse([.. Along(fromU, toU).Select(u => new Point(u * HalfLengthMm, share * HalfWidthMm * _share(u)))], closed: false), closed: false);

    /// <summary>Places along the hole, closer together towards the ends, where a ball's edge turns; the middle is always one of them.</summary>
    private static ImmutableArray<double> Along(double fromU, double toU)
    {
        var places = new SortedSet<double> { fromU, toU };
        for (var i = -Samples; i <= Samples; i++)
        {
            var u = Math.Sin(Math.PI / 2 * i / Samples);
            if (u > fromU && u < toU) places.Add(u);
        }
        return [.. places];
    }

    // Points in the middle of a straight stretch say nothing: they go.
    private static ImmutableArray<Point> Sparse(ImmutableArray<Point> points, bool closed = true)
    {
        const double straightMm = 1e-4;
        var kept = ImmutableArray.CreateBuilder<Point>();
        for (var i = 0; i < points.Length; i++)
        {
            var p = points[i];
            if (kept.Count > 0 && kept[^1].DistanceMm(p) < straightMm) continue;
            if (kept.Count > 1 && OffLineMm(kept[^2], kept[^1], p) < straightMm) kept.RemoveAt(kept.Count - 1);
            kept.Add(p);
        }
        if (closed && kept.Count > 1 && kept[^1].DistanceMm(kept[0]) < straightMm) kept.RemoveAt(kept.Count - 1);
        return kept.ToImmutable();
    }

    private static double OffLineMm(Point a, Point b, Point c)
    {
        var length = a.DistanceMm(c);
        return length == 0 ? 0 : Math.Abs((b.XMm - a.XMm) * (c.YMm - a.YMm) - (b.YMm - a.YMm) * (c.XMm - a.XMm)) / length;
    }

    /// <summary>Straight lines through points, closed, with corners of more than a seventh of a right turn rounded so far back, mm.</summary>
    internal static Outline Softened(ImmutableArray<Point> points, double softMm)
    {
        if (softMm <= 0 || points.Length < 3) return Outline.Through(points);
        var builder = new OutlineBuilder();
        var started = false;
        for (var i = 0; i < points.Length; i++)
        {
            Point before = points[(i + points.Length - 1) % points.Length], at = points[i], after = points[(i + 1) % points.Length];
            double into = Math.Atan2(at.YMm - before.YMm, at.XMm - before.XMm), outOf = Math.Atan2(after.YMm - at.YMm, after.XMm - at.XMm);
            var turn = Math.Abs(Math.IEEERemainder(outOf - into, 2 * Math.PI));
            var soft = turn < Math.PI / 14 ? 0 : Math.Min(softMm, Math.Min(before.DistanceMm(at), at.DistanceMm(after)) * 0.45);
            if (soft == 0)
            {
                Go(at);
                continue;
            }
            Point from = at.Towards(before, soft / at.DistanceMm(before)), to = at.Towards(after, soft / at.DistanceMm(after));
            Go(from);
            builder.Curve(from.Towards(at, 0.6), to.Towards(at, 0.6), to);
        }
        return builder.Close().Make();

        void Go(Point p)
        {
            if (started) builder.Line(p); else builder.Move(p);
            started = true;
        }
    }
}
