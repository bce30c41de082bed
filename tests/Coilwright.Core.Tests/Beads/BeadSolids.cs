using Coilwright.Core.Beads;

namespace Coilwright.Core.Tests.Beads;

/// <summary>What every shape is as a solid, told point by point and apart from its profile: the second way to its volume.</summary>
/// <remarks>A point is given from the bead's middle: x along the hole, y away from the wrist, z along the arm, each as a share of the half measure,
/// so that the whole bead lies between -1 and 1.</remarks>
public static class BeadSolids
{
    private delegate bool Solid(Bead bead, double x, double y, double z);

    private static readonly Dictionary<string, Solid> ByShape = new()
    {
        ["round"] = Ellipsoid,
        ["oval"] = Ellipsoid,
        ["chip"] = Ellipsoid,
        ["nugget"] = Ellipsoid,
        ["cube"] = (_, _, _, _) => true,
        ["coin"] = (_, x, _, z) => x * x + z * z <= 1,
        ["tube"] = Cylinder,
        ["heishi"] = Cylinder,
        // Straightened out: a bend neither adds nor takes away (Pappus), and the bent one has its own test.
        ["curved-tube"] = Cylinder,
        ["bicone"] = (bead, x, y, z) => Math.Sqrt(y * y + z * z) <= 1 - (1 - Face(bead, 0)) * Math.Abs(x),
        ["faceted-rondelle"] = (bead, x, y, z) => Math.Sqrt(y * y + z * z) <= 1 - (1 - Face(bead, 1)) * Math.Abs(x),
        ["barrel"] = (bead, x, y, z) => Math.Sqrt(y * y + z * z) <= 1 - (1 - Face(bead, 1)) * x * x,
        ["rondelle"] = (bead, x, y, z) => RoundEdged(Face(bead, 1), x, y, z),
        // The edge is as round as the bead is long; a bead longer than thick is an oval.
        ["seed-bead"] = (bead, x, y, z) => RoundEdged(Math.Max(0, 1 - bead.LengthMm / bead.ThicknessMm), x, y, z),
        ["drop"] = (bead, x, y, z) =>
        {
            // Along the arm: half a ball (of half measure t/2 there, at most half the drop), then a cone to the point.
            var ball = Math.Min(1, bead.ThicknessMm / bead.WidthMm);
            var level = -1 + ball;
            return z < level ? x * x + y * y + (z - level) * (z - level) / (ball * ball) <= 1
                : Math.Sqrt(x * x + y * y) <= (1 - z) / (1 - level);
        },
        ["focal"] = (bead, x, y, z) =>
        {
            if (bead.Description.Seat is not { } seat) return Dome(x, (y + 1) / 2, z);
            var height = y * bead.ThicknessMm / 2 + bead.HoleOffsetMm;
            var seatHigh = bead.BearingReachMm + seat.ClearMm;
            return height > seat.ClearMm
                ? Dome(x, (height - seat.ClearMm) / (bead.OuterReachMm - seat.ClearMm), z)
                : Math.Abs(x) * bead.LengthMm <= seat.LengthMm && Math.Abs(z) * bead.WidthMm <= seatHigh;
        },
    };

    public static IEnumerable<string> Names => ByShape.Keys;

    /// <summary>Whether the bead without its hole has anything at a point.</summary>
    public static bool Holds(Bead bead, double x, double y, double z) => ByShape[bead.Shape.Name](bead, x, y, z);

    private static double Face(Bead bead, double unknown) => bead.Description.EndFaceMm / bead.ThicknessMm ?? unknown;

    private static bool Ellipsoid(Bead bead, double x, double y, double z) => x * x + y * y + z * z <= 1;

    private static bool Cylinder(Bead bead, double x, double y, double z) => y * y + z * z <= 1;

    private static bool Dome(double x, double up, double z) => up >= 0 && x * x + up * up + z * z <= 1;

    private static bool RoundEdged(double flat, double x, double y, double z)
    {
        var beyond = Math.Max(0, Math.Sqrt(y * y + z * z) - flat);
        return beyond == 0 || x * x + beyond * beyond / ((1 - flat) * (1 - flat)) <= 1;
    }
}
