namespace Coilwright.Core.Geometry;

/// <summary>Equal balls that touch one another in a closed flat ring.</summary>
/// <remarks>Millimetres. Two balls touch where their middles stand one diameter apart, so n of them sit on the corners of a regular polygon with that side.
/// Exact; what a stretch bracelet of round beads closes to.</remarks>
public static class RingOfBalls
{
    /// <summary>Radius of the circle through the balls' middles, mm: b/(2 sin(pi/n)).</summary>
    /// <param name="ballMm">Diameter of a ball, mm, above 0.</param>
    /// <param name="count">How many, 2 or more; two touch at the ring's own middle.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two.</exception>
    public static double CentreRadiusMm(double ballMm, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 2);
        return ballMm / (2 * Math.Sin(Math.PI / count));
    }

    /// <summary>Circumference of the largest circle that the ring leaves free inside, mm: about the balls' row less pi times one ball.</summary>
    /// <param name="ballMm">Diameter of a ball, mm, above 0.</param>
    /// <param name="count">How many, 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than two.</exception>
    public static double InsideCircumferenceMm(double ballMm, int count) => 2 * Math.PI * (CentreRadiusMm(ballMm, count) - ballMm / 2);
}
