using System.Collections.Immutable;
using Coilwright.Core.Numerics;

namespace Coilwright.Core.Beads.Sections;

/// <summary>How near two neighbours can stand on the curve.</summary>
public static class NeighbourContact
{
    /// <summary>Least angle between the middles of two neighbours on a circle of radius R, radians; 0 or more.</summary>
    /// <remarks>Each bead is tangent to the circle at its middle and takes no play on the wire. A bead of several parts (a seat and the overhang
    /// over it) is kept apart part by part; the largest angle counts. Where a part reaches as far as the coil's centre it fills the coil and
    /// the answer is half a turn. Source: derived in docs/theory/curve-true-length.md.</remarks>
    public static double AngleRad(ImmutableArray<ConvexSection> left, ImmutableArray<ConvexSection> right, double radiusMm)
    {
        var angle = 0.0;
        foreach (var l in left)
            foreach (var r in right)
                angle = Math.Max(angle, AngleRad(l, r, radiusMm));
        return angle;
    }

    private static double AngleRad(ConvexSection left, ConvexSection right, double radiusMm)
    {
        // Between these distances from the coil's centre a line can pass that has each figure wholly on its own side.
        var least = -(radiusMm + left.LowestMm);
        var most = radiusMm + right.LowestMm;
        if (least >= 0 || most <= 0) return Math.PI;
        if (ReferenceEquals(left, right)) return 2 * left.LeanRad(0, radiusMm);
        if (PassesUnder(left, right, radiusMm) || PassesUnder(right, left, radiusMm)) return 0;

        // The sum has one valley (the lines between two convex figures make one family), nearly always between the two half lengths.
        var reach = left.HalfLengthMm + right.HalfLengthMm;
        var from = Math.Max(least, -right.HalfLengthMm - 0.5 * reach);
        var to = Math.Min(most, left.HalfLengthMm + 0.5 * reach);
        var found = Valley(from, to);
        var edge = 1e-6 * reach;
        // Else a small neighbour tucks under an overhang, and the line between them lies nearly along the wire.
        if ((found.At - from < edge && from > least) || (to - found.At < edge && to < most)) found = Valley(least, most);
        return found.Value;

        Minimum Valley(double a, double b) => FlatEndOrSlope(left, right, radiusMm, a, b, 1e-10 * reach)
            ?? BrentMinimum.Of(q => left.LeanRad(q, radiusMm) + right.LeanRad(-q, radiusMm), a, b, 1e-9 * reach);
    }

    /// <summary>The bottom of the valley by its slope, which is far quicker than by its height; null where the slope does not change sign between the
    /// ends.</summary>
    private static Minimum? FlatEndOrSlope(ConvexSection left, ConvexSection right, double radiusMm, double from, double to, double tolerance)
    {
        // The sum of leans falls while the left figure touches nearer to the foot of the coil's centre than the right one does.
        double slopeFrom = Slope(from), slopeTo = Slope(to);
        if (!(slopeFrom < 0 && slopeTo > 0)) return null;

        // Most neighbours touch flat end to something: the line is then the end itself, where the slope jumps.
        Span<double> flats = stackalloc double[8];
        var ofLeft = left.Flats(radiusMm, flats[..4]);
        var ofBoth = ofLeft + right.Flats(radiusMm, flats.Slice(ofLeft, 4));
        for (var f = 0; f < ofBoth; f++)
        {
            var end = f < ofLeft ? flats[f] : -flats[f];
            if (end <= from || end >= to) continue;
            var slope = Slope(end - tolerance);
            if (slope >= 0)
            {
                (to, slopeTo) = (end - tolerance, slope);
                continue;
            }
            slope = Slope(end + tolerance);
            if (slope >= 0) return new Minimum(end, left.LeanRad(end, radiusMm) + right.LeanRad(-end, radiusMm), 0);
            (from, slopeFrom) = (end + tolerance, slope);
        }

        // Elsewhere regula falsi with the Illinois damping (an end that stays twice counts half), halved where it drags: smooth but for corners.
        int steps = 0, stayed = 0;
        for (; to - from > tolerance && steps < 200; steps++)
        {
            var at = steps % 8 == 7 ? 0.5 * (from + to) : from - slopeFrom * (to - from) / (slopeTo - slopeFrom);
            // A step onto an end would never close the other one in: keep a little off both.
            at = Math.Clamp(at, from + 0.4 * tolerance, to - 0.4 * tolerance);
            var slope = Slope(at);
            if (slope == 0)
            {
                from = to = at;
                break;
            }
            if (slope < 0)
            {
                (from, slopeFrom) = (at, slope);
                if (stayed > 0) slopeTo *= 0.5;
                stayed = Math.Max(stayed, 0) + 1;
            }
            else
            {
                (to, slopeTo) = (at, slope);
                if (stayed < 0) slopeFrom *= 0.5;
                stayed = Math.Min(stayed, 0) - 1;
            }
        }
        var bottom = 0.5 * (from + to);
        return new Minimum(bottom, left.LeanRad(bottom, radiusMm) + right.LeanRad(-bottom, radiusMm), steps);

        double Slope(double q) => left.AlongMm(q, radiusMm) - right.AlongMm(-q, radiusMm);
    }

    /// <summary>Whether a neighbour is so low that it would pass under this part and never touch it.</summary>
    private static bool PassesUnder(ConvexSection low, ConvexSection high, double radiusMm) =>
        low.HighestMm <= high.LowestMm && low.FurthestMm(radiusMm) <= radiusMm + high.LowestMm;
}
