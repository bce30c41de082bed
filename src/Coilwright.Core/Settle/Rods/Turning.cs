using Coilwright.Core.Geometry;

namespace Coilwright.Core.Settle.Rods;

/// <summary>Directions turned into one another.</summary>
internal static class Turning
{
    /// <summary>Carries a direction square to <paramref name="from"/> over to <paramref name="to"/> by the smallest turn that takes one into the other.</summary>
    /// <param name="v">The direction.</param>
    /// <param name="from">Of length 1.</param>
    /// <param name="to">Of length 1, not opposite to <paramref name="from"/>.</param>
    public static Point3 Carried(Point3 v, Point3 from, Point3 to)
    {
        // Turning about from x to by their angle: v - (v.to)/(1 + from.to) (from + to), for v square to from.
        var along = v.Dot(to) / (1 + from.Dot(to));
        return v - along * (from + to);
    }

    /// <summary>The angle from <paramref name="a"/> to <paramref name="b"/> as seen against <paramref name="axis"/>, radians in (-pi, pi].</summary>
    public static double SignedAngle(Point3 a, Point3 b, Point3 axis) => Math.Atan2(a.Cross(b).Dot(axis), a.Dot(b));
}
