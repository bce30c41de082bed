using MathNet.Numerics.Integration;

namespace Coilwright.Core.Beads;

/// <summary>Volume of a bead from its profile, less its hole.</summary>
/// <remarks>
/// <para>Cubic millimetres. The hole takes away what lies inside it, caps at the ends included, so a drilled ball is (pi/6)(D^2 - b^2)^(3/2). An
/// unknown hole takes away nothing. A hollow bead keeps its wall: outside less a cavity of the same shape, less the hole through both walls.</para>
/// <para>Facets, chamfers, a hole off the middle and one that breaks out of the profile's side are not modelled: what they change is a few
/// thousandths. Derived in docs/theory/bead-profile.md.</para>
/// </remarks>
public static class BeadVolume
{
    /// <summary>Volume, mm3.</summary>
    public static double Mm3(Bead bead)
    {
        var bore = bead.BoreMm ?? 0;
        // The hole of a seat runs in the seat alone.
        if (bead.Description.Seat is { } seat)
            return Math.Max(0, Drilled(bead, bead.LengthMm, bead.WidthMm, bead.ThicknessMm, 0) - Math.PI / 4 * bore * bore * seat.LengthMm);
        if (bead.Description.WallMm is not { } wall)
            return Drilled(bead, bead.LengthMm, bead.WidthMm, bead.ThicknessMm, bore);
        // The hole is taken out of both, so that what it takes from the difference is what lies in the walls.
        var length = bead.Shape.HollowRunsThrough ? bead.LengthMm : bead.LengthMm - 2 * wall;
        return Drilled(bead, bead.LengthMm, bead.WidthMm, bead.ThicknessMm, bore)
            - Drilled(bead, length, bead.WidthMm - 2 * wall, bead.ThicknessMm - 2 * wall, bore);
    }

    /// <summary>Volume of the bead as if it were solid: what its outline holds, mm3.</summary>
    public static double OutlineMm3(Bead bead) => Drilled(bead, bead.LengthMm, bead.WidthMm, bead.ThicknessMm, 0);

    private static double Drilled(Bead bead, double lengthMm, double widthMm, double thicknessMm, double boreMm)
    {
        var profile = bead.Shape.Profile(bead);
        var hole = Math.PI / 4 * boreMm * boreMm;
        double Left(double u) => profile.AreaFactor * widthMm * profile.Width(u) * thicknessMm * profile.Thickness(u) - hole;
        if (Left(0) <= 0) return 0;
        // Where the bead is narrower than its hole nothing is left of it; the profile never rises away from the middle, so that is one place.
        double from = 0, to = 1;
        if (Left(1) < 0)
        {
            for (var i = 0; i < 60; i++)
            {
                var u = 0.5 * (from + to);
                if (Left(u) > 0) from = u; else to = u;
            }
            to = from;
        }
        // u = to sin(v) takes the square-root ends out of the integrand, so Gauss-Legendre reaches rounding error.
        return lengthMm * GaussLegendreRule.Integrate(v => Left(to * Math.Sin(v)) * to * Math.Cos(v), 0, Math.PI / 2, 64);
    }
}
