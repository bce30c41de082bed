using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;

namespace Coilwright.Core.Tests.Beads;

/// <summary>The second way to a contact: a bead's outline as many points, looked at from the coil's centre.</summary>
/// <remarks>At the distance rho from the coil's centre a bead reaches alpha(rho) round from its own middle; two neighbours stand at the most of
/// alpha_i + alpha_j over rho. Knows nothing of lines, supports or leans, and takes the outline from the profile. The points lie on the outline and
/// are joined by straight lines, so each bead is a little too small and the angle never more than the true one; of two figures with corners one
/// touches with a corner, so looking at the corners' distances misses nothing.</remarks>
public sealed class PolarContact
{
    /// <summary>Points on each rounded quarter of an outline.</summary>
    public const int Points = 250;

    private readonly List<Run> _runs = [];
    private readonly double _bendMm;

    /// <summary>By how much the joined points fall short of the outlines of both, measured square to them, mm.</summary>
    /// <remarks>A line r(v) cut in steps dv falls short of its chords by at most |r''| dv^2/8. Every rounded part here is told by v from 0 to pi/2 with
    /// |r''| at most half the length and the thickness together: an ellipse's is its larger half measure, a dome's may be the whole thickness,
    /// a barrel's parabola has sqrt((a/2)^2 + t^2), the arc of half a circle its radius.</remarks>
    public static double ShortfallMm(PolarContact one, PolarContact other) =>
        (one._bendMm + other._bendMm) * Math.Pow(Math.PI / 2 / Points, 2) / 8;

    public PolarContact(Bead bead, double radiusMm)
    {
        _bendMm = bead.LengthMm / 2 + bead.ThicknessMm;
        foreach (var line in RightSide(bead, radiusMm)) AddRuns(line, radiusMm);
    }

    /// <summary>The bead's outline on its right, as lines of points (x along the hole, y away from the wrist over the hole's centre), mm.</summary>
    public static IEnumerable<List<(double X, double Y)>> RightSide(Bead bead, double radiusMm)
    {
        var (inner, outer, half) = (-bead.BearingReachMm, bead.OuterReachMm, bead.LengthMm / 2);
        switch (bead.Shape)
        {
            case Focal when bead.Description.Seat is { } seat:
                yield return Box(seat.LengthMm / 2, inner, seat.ClearMm);
                yield return Dome(half, seat.ClearMm, outer);
                break;
            case Focal:
                yield return Dome(half, inner, outer);
                break;
            case CurvedTube:
                var curve = bead.Description.Matched ? radiusMm : bead.Description.CurveRadiusMm!.Value;
                var turn = half / curve;
                (double, double) At(double angle, double y) => ((curve + y) * Math.Sin(angle), (curve + y) * Math.Cos(angle) - curve);
                yield return [.. Steps.Select(s => At(s * turn, inner)), .. Steps.Select(s => At(turn, inner + s * (outer - inner))),
                    .. Steps.Reverse().Select(s => At(s * turn, outer))];
                break;
            default:
                var profile = bead.Shape.Profile(bead);
                // u = sin(v) crowds the points where a rounded end is steep.
                var us = Steps.Select(s => Math.Sin(s * Math.PI / 2)).ToArray();
                double Share(double u) => profile.Thickness(u) * bead.ThicknessMm / 2;
                yield return [.. us.Select(u => (half * u, bead.HoleOffsetMm - Share(u))),
                    .. Steps.Select(s => (half, bead.HoleOffsetMm + (2 * s - 1) * Share(1))),
                    .. us.Reverse().Select(u => (half * u, bead.HoleOffsetMm + Share(u)))];
                break;
        }
    }

    /// <summary>Angle between the middles of two neighbours in contact, radians; 0 when they never meet.</summary>
    public static double AngleRad(PolarContact left, PolarContact right)
    {
        var angle = 0.0;
        foreach (var l in left._runs)
            foreach (var r in right._runs)
            {
                for (var i = 0; i < l.Rho.Length; i++) angle = Math.Max(angle, l.ThetaOf(i) + r.ThetaAt(l.Rho[i]));
                for (var i = 0; i < r.Rho.Length; i++) angle = Math.Max(angle, r.ThetaOf(i) + l.ThetaAt(r.Rho[i]));
            }
        return angle;
    }

    private static IEnumerable<double> Steps => Enumerable.Range(0, Points + 1).Select(i => (double)i / Points);

    private static List<(double, double)> Box(double half, double inner, double outer) =>
        [.. Steps.Select(s => (s * half, inner)), .. Steps.Select(s => (half, inner + s * (outer - inner))), .. Steps.Reverse().Select(s => (s * half, outer))];

    private static List<(double, double)> Dome(double half, double back, double top) =>
        [.. Steps.Select(s => (s * half, back)), .. Steps.Select(s => (half * Math.Cos(s * Math.PI / 2), back + (top - back) * Math.Sin(s * Math.PI / 2)))];

    /// <summary>Cuts a line of points into runs along which the distance from the coil's centre only rises.</summary>
    private void AddRuns(List<(double X, double Y)> line, double radiusMm)
    {
        var points = line.Select(p => (p.X, Up: p.Y + radiusMm, Rho: Math.Sqrt(p.X * p.X + (p.Y + radiusMm) * (p.Y + radiusMm)))).ToList();
        var from = 0;
        while (from < points.Count - 1)
        {
            var rising = points[from + 1].Rho >= points[from].Rho;
            var to = from + 1;
            while (to < points.Count - 1 && points[to + 1].Rho >= points[to].Rho == rising) to++;
            var run = points[from..(to + 1)];
            if (!rising) run.Reverse();
            _runs.Add(new Run([.. run.Select(p => p.X)], [.. run.Select(p => p.Up)], [.. run.Select(p => p.Rho)]));
            from = to;
        }
    }

    /// <summary>Joined points, by their place from the coil's centre.</summary>
    private sealed class Run(double[] x, double[] up, double[] rho)
    {
        public double[] Rho { get; } = rho;

        public double ThetaOf(int i) => Math.Atan2(x[i], up[i]);

        /// <summary>How far round it reaches at a distance from the coil's centre, radians; minus infinity where it has nothing.</summary>
        public double ThetaAt(double distance)
        {
            if (distance < Rho[0] || distance > Rho[^1]) return double.NegativeInfinity;
            var at = Array.BinarySearch(Rho, distance);
            if (at >= 0) return ThetaOf(at);
            at = ~at;
            // Where the straight line between two points crosses the circle of that distance.
            double dx = x[at] - x[at - 1], dUp = up[at] - up[at - 1];
            var a = dx * dx + dUp * dUp;
            var b = x[at - 1] * dx + up[at - 1] * dUp;
            var c = Rho[at - 1] * Rho[at - 1] - distance * distance;
            var share = (-b + Math.Sqrt(Math.Max(0, b * b - a * c))) / a;
            return Math.Atan2(x[at - 1] + share * dx, up[at - 1] + share * dUp);
        }
    }
}
