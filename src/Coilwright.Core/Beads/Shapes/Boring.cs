namespace Coilwright.Core.Beads.Shapes;

/// <summary>How straight, curved and hollow beads pass a curved wire.</summary>
/// <remarks>Rigid round wire bent to a circle, sharp rims, no pitch; the tight places then lie in the plane of the coil. Millimetres. Derived, with
/// tables and limits, in docs/theory/passing.md.</remarks>
public static class Boring
{
    /// <summary>Longest straight hole of diameter b that slides over wire of thickness d bent to radius R, mm: 2 sqrt((b-d)(2R-b)); 0 when b is
    /// not more than d.</summary>
    /// <param name="boreMm">Diameter of the hole, mm (b).</param>
    /// <param name="wireMm">Thickness of the wire, mm (d).</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm (R).</param>
    public static double LongestStraightMm(double boreMm, double wireMm, double radiusMm)
    {
        if (boreMm <= wireMm) return 0;
        // A hole that takes in the whole height of half the coil gains nothing by being wider.
        var bore = Math.Min(boreMm, radiusMm + wireMm / 2);
        return 2 * Math.Sqrt((bore - wireMm) * (2 * radiusMm - bore));
    }

    /// <summary>Longest tube curved to radius Rt, along its arc, that slides over the wire, mm; null when any length does.</summary>
    /// <param name="boreMm">Diameter of the hole, mm.</param>
    /// <param name="wireMm">Thickness of the wire, mm.</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm.</param>
    /// <param name="tubeRadiusMm">Radius of the tube's centre line, mm; more than half the hole.</param>
    public static double? LongestCurvedMm(double boreMm, double wireMm, double radiusMm, double tubeRadiusMm)
    {
        if (boreMm <= wireMm) return 0;
        // A straighter tube touches the wire's outside at its middle and the inside at its ends; a more curved one the other way round.
        var s = tubeRadiusMm >= radiusMm ? 1 : -1;
        // How far the two centres lie apart when they touch in the middle; never nought, since the hole is wider than the wire.
        var off = tubeRadiusMm - radiusMm + s * (boreMm - wireMm) / 2;
        // sin^2 of half the angle from the middle to where the circles cross. Written so that two near-equal squares are not taken from each other.
        var square = s * (boreMm - wireMm) * (2 * radiusMm - s * boreMm) / (4 * off * (tubeRadiusMm - s * boreMm / 2));
        return square is > 0 and < 1 ? 4 * tubeRadiusMm * Math.Asin(Math.Sqrt(square)) : null;
    }

    /// <summary>Longest hollow bead whose two end holes of diameter b in walls of thickness w slide over the wire, mm: between its walls the wire
    /// is free to bow further than the hole is wide, as far as the cavity lets it.</summary>
    /// <remarks>As the wall grows to half the bead this is the straight hole. The cavity is taken as high at the wire's bow as in its middle: true of
    /// rounds, ovals and boxes; a long hollow bicone is tighter than said.</remarks>
    /// <param name="boreMm">Diameter of the holes, mm.</param>
    /// <param name="wireMm">Thickness of the wire, mm.</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm.</param>
    /// <param name="wallMm">Thickness of the end walls, mm.</param>
    /// <param name="cavityReachMm">Height of the cavity's outer side over the holes' centre, mm.</param>
    public static double LongestHollowMm(double boreMm, double wireMm, double radiusMm, double wallMm, double cavityReachMm)
    {
        if (boreMm <= wireMm) return 0;
        // The wire's inside touches the hole's lower rim on the outer face; its outside touches the upper rim on the inner face, the wall's
        // thickness nearer the middle and a bore higher. Shifted by that much, the two points are one: where two circles cross.
        var inside = radiusMm - wireMm / 2;
        var across = Math.Sqrt(wallMm * wallMm + boreMm * boreMm);
        var sin = (across * across - 2 * radiusMm * wireMm) / (2 * inside * across);
        var angle = Math.Atan2(boreMm, wallMm) + Math.Asin(Math.Clamp(sin, -1, 1));
        var half = angle >= Math.PI / 2 ? inside : inside * Math.Sin(angle);
        // Shorter than both walls together there is no cavity.
        if (half <= wallMm) return LongestStraightMm(boreMm, wireMm, radiusMm);
        // Pushed as far out as the lower rims allow, the bead is to the bow what a straight hole from those rims to the cavity's top would be.
        var bow = LongestStraightMm(boreMm / 2 + cavityReachMm, wireMm, radiusMm);
        return Math.Max(LongestStraightMm(boreMm, wireMm, radiusMm), Math.Min(2 * half, bow));
    }
}
