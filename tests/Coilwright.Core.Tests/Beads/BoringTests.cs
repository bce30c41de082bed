using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Geometry;
using CsCheck;

namespace Coilwright.Core.Tests.Beads;

/// <summary>How straight, curved and hollow beads pass a curved wire. Derived in docs/theory/passing.md.</summary>
public class BoringTests
{
    [Fact]
    public void Longest_straight_holes_are_those_of_the_table()
    {
        foreach (var row in ReferenceTable.Read("straight-bore.csv").Rows)
        {
            var (b, d, radius) = (row["b_mm"], row["d_mm"], row["R_mm"]);
            Near.Equal((row["coil_inner_diameter_mm"] + d) / 2, radius, 1e-9, row);
            var longest = Boring.LongestStraightMm(b, d, radius);
            Near.Equal(row["Lmax_mm"], longest, 0.00005, row); // half of the last printed digit
            // The short form that is right for narrow holes is short by the factor sqrt(1 - b/2R).
            Near.Equal(row["approx_small_b_mm"], longest / Math.Sqrt(1 - b / (2 * radius)), 0.00005, row);
        }
    }

    [Fact]
    public void Longest_curved_tubes_are_those_of_the_table()
    {
        foreach (var row in ReferenceTable.Read("curved-bore.csv").Rows)
            // Half of the last printed digit.
            Near.Equal(row["Lmax_arc_mm"], Boring.LongestCurvedMm(row["b_mm"], row["d_mm"], row["R_mm"], row["Rt_mm"])!.Value, 0.00005, row);
    }

    // The trade's figures for the bow of the wire inside a straight tube on a coil of 60 mm (common practice, no source): 6 mm 0.15, 10 mm 0.42, 12 mm 0.61,
    // 15 mm 0.95, 20 mm 1.7, 25 mm 2.7; half of the last digit. "Hole at least wire plus bow" is the straight rule with b - d for the bow.
    [Theory]
    [InlineData(6, 0.15, 0.005)]
    [InlineData(10, 0.42, 0.005)]
    [InlineData(12, 0.61, 0.005)]
    [InlineData(15, 0.95, 0.005)]
    [InlineData(20, 1.7, 0.05)]
    [InlineData(25, 2.7, 0.05)]
    public void The_trades_bow_is_the_sagitta_and_needs_a_hole_of_wire_and_bow(double length, double bow, double tolerance)
    {
        Near.Equal(bow, Arc.SagittaMm(length, 30), tolerance);
        // Exactly, the hole must be a little wider: the wire's inside bends more sharply than its middle, by the share d/2R.
        var bore = 0.62 + Arc.SagittaMm(length, 30 - 0.31);
        Near.Equal(length, Boring.LongestStraightMm(bore, 0.62, 30), 1e-9); // rounding
    }

    public static TheoryData<double, double, double> StraightCases => new() { { 1.0, 0.62, 28.885 }, { 0.8, 0.62, 28.885 }, { 2.0, 0.62, 28.885 }, { 1.0, 0.72, 28.935 }, { 1.5, 0.55, 22.5 } };

    [Theory]
    [MemberData(nameof(StraightCases))]
    public void A_straight_hole_at_its_longest_just_holds_the_wire(double b, double d, double radius)
    {
        var longest = Boring.LongestStraightMm(b, d, radius);
        var wire = new Wire(d, radius);
        // Touching at the middle outside and at both ends inside: no sampled point of the wire lies outside the hole, and some lie on it.
        var axis = radius + d / 2 - b / 2;
        Near.Equal(0, wire.OutOfStraightMm(longest, b, axis), 1e-12); // rounding
        // A fiftieth longer, the wire bows 4 % of the clearance more and however the hole lies over it, half of that sticks out; less a tenth
        // for what the sampled places of the hole miss.
        Assert.True(Places(axis, b - d).Min(y => wire.OutOfStraightMm(1.02 * longest, b, y)) > 0.018 * (b - d));
    }

    public static TheoryData<double, double, double, double> CurvedCases => new()
    {
        { 1.0, 0.62, 28.885, 60 }, { 1.0, 0.62, 28.885, 40 }, { 1.0, 0.62, 28.885, 20 }, { 1.0, 0.62, 28.885, 28 }, { 1.4, 0.8, 35, 25 },
    };

    [Theory]
    [MemberData(nameof(CurvedCases))]
    public void A_curved_tube_at_its_longest_just_holds_the_wire(double b, double d, double radius, double tubeRadius)
    {
        var longest = Boring.LongestCurvedMm(b, d, radius, tubeRadius)!.Value;
        var wire = new Wire(d, radius);
        var centre = tubeRadius > radius ? radius + d / 2 - tubeRadius - b / 2 : radius - d / 2 - tubeRadius + b / 2;
        // The ends lie between sampled places of the wire: what is missed there makes the wire seem to fit, never not to.
        Assert.InRange(wire.OutOfCurvedMm(longest, b, tubeRadius, centre), -1e-9, 1e-9);
        Assert.True(Places(centre, b - d).Min(y => wire.OutOfCurvedMm(1.02 * longest, b, tubeRadius, y)) > 0.005 * (b - d));
    }

    public static TheoryData<double, double, double, double> HollowCases => new()
    {
        { 1.0, 0.62, 28.885, 0.3 }, { 0.8, 0.62, 28.885, 1 }, { 1.5, 0.62, 28.885, 0.5 }, { 1.0, 0.8, 22, 0.25 },
    };

    [Theory]
    [MemberData(nameof(HollowCases))]
    public void A_hollow_bead_at_its_longest_just_holds_the_wire_in_its_walls(double b, double d, double radius, double wall)
    {
        // A cavity so high that only the walls count.
        var longest = Boring.LongestHollowMm(b, d, radius, wall, 100);
        Assert.True(longest > 1.5 * Boring.LongestStraightMm(b, d, radius));
        var wire = new Wire(d, radius);
        var inner = longest / 2 - wall;
        var axis = Math.Sqrt((radius + d / 2) * (radius + d / 2) - inner * inner) - b / 2;
        Near.Equal(0, wire.OutOfStraightMm(longest, b, axis, wall), 1e-12); // rounding
        Assert.True(Places(axis, b).Min(y => wire.OutOfStraightMm(1.02 * longest, b, y, wall)) > 0.005 * (b - d));
    }

    [Fact]
    public void The_cavity_holds_a_long_hollow_bead_back()
    {
        const double B = 1, D = 0.62, R = 28.885, Wall = 0.3, Cavity = 1.7;
        var longest = Boring.LongestHollowMm(B, D, R, Wall, Cavity);
        Assert.InRange(longest, Boring.LongestStraightMm(B, D, R), Boring.LongestHollowMm(B, D, R, Wall, 100) - 1);
        // Lower rims on the wire's inside at both ends, the wire's outside on the cavity's top.
        var axis = Math.Sqrt((R - D / 2) * (R - D / 2) - longest * longest / 4) + B / 2;
        Near.Equal(axis + Cavity, R + D / 2, 1e-9); // rounding
    }

    [Fact]
    public void A_hollow_bead_of_thick_walls_is_a_straight_hole_and_never_passes_less() =>
        Gen.Select(Gen.Double[0.7, 3], Gen.Double[0.05, 20], Gen.Double[20, 60], Gen.Double[0.2, 8]).Sample((b, wall, radius, cavity) =>
        {
            var straight = Boring.LongestStraightMm(b, 0.62, radius);
            var hollow = Boring.LongestHollowMm(b, 0.62, radius, wall, cavity);
            Assert.True(hollow >= straight);
            if (2 * wall >= straight || cavity <= b / 2) Near.Equal(straight, hollow, 1e-9, (b, wall, radius, cavity));
        });

    [Fact]
    public void A_wider_hole_and_a_thinner_wire_never_pass_less()
    {
        Gen.Select(Gen.Double[0.1, 80], Gen.Double[0.1, 20], Gen.Double[0.3, 1], Gen.Double[20, 60], Gen.Double[0.05, 3]).Sample((b, more, d, radius, wall) =>
        {
            Assert.True(Boring.LongestStraightMm(b + more, d, radius) >= Boring.LongestStraightMm(b, d, radius));
            Assert.True(Boring.LongestStraightMm(b, d / 2, radius) >= Boring.LongestStraightMm(b, d, radius));
            Assert.True(Boring.LongestHollowMm(b + more, d, radius, wall, 5) >= Boring.LongestHollowMm(b, d, radius, wall, 5) * (1 - 1e-12));
        });
        Gen.Select(Gen.Double[0.1, 4], Gen.Double[0.1, 2], Gen.Double[0.3, 1], Gen.Double[20, 60], Gen.Double[5, 200]).Sample((b, more, d, radius, tube) =>
        {
            if (b + more > tube) return; // a hole wider than the tube's own curve is no tube
            var narrow = Boring.LongestCurvedMm(b, d, radius, tube);
            var wide = Boring.LongestCurvedMm(b + more, d, radius, tube);
            Assert.True(wide is null || wide >= narrow, FormattableString.Invariant($"{b} {more} {d} {radius} {tube}: {narrow} {wide}"));
        });
    }

    [Fact]
    public void Ends_of_the_range_are_as_one_would_say()
    {
        Assert.Equal(0, Boring.LongestStraightMm(0.62, 0.62, 29));
        Assert.Equal(0, Boring.LongestCurvedMm(0.5, 0.62, 29, 40));
        Assert.Equal(0, Boring.LongestHollowMm(0.62, 0.62, 29, 0.3, 4));
        // A tube of the coil's own curve passes at any length.
        Assert.Null(Boring.LongestCurvedMm(1, 0.62, 29, 29));
        // A nearly straight tube is a straight hole; they differ by the share R/2Rt.
        foreach (var tube in new[] { 1e6, 1e9 })
            Near.Equal(Boring.LongestStraightMm(1, 0.62, 28.885), Boring.LongestCurvedMm(1, 0.62, 28.885, tube)!.Value, 9.3 * 29 / tube);
        // A hole that takes in half the coil passes as much of it as there is.
        Near.Equal(2 * (29 - 0.31), Boring.LongestStraightMm(70, 0.62, 29), 1e-12);
    }

    [Fact]
    public void A_shape_asks_the_rule_that_is_its_own()
    {
        static double? Longest(string shape, Func<BeadDescription, BeadDescription> with) =>
            SampleBeads.Make(with(new BeadDescription { Id = "b", Shape = shape, Length = new BeadLength.Nominal(12), WidthMm = 6, BoreMm = 1 })) is var bead
                ? bead.Shape.LongestPassingMm(bead, 1, 0.62, 28.885) : null;

        var straight = Boring.LongestStraightMm(1, 0.62, 28.885);
        Assert.Equal(straight, Longest("oval", d => d));
        Assert.Equal(Boring.LongestHollowMm(1, 0.62, 28.885, 0.3, 2.7), Longest("oval", d => d with { WallMm = 0.3 }));
        // A hollow tube has no end walls.
        Assert.Equal(straight, Longest("tube", d => d with { WallMm = 0.3 }));
        Assert.Equal(Boring.LongestCurvedMm(1, 0.62, 28.885, 40), Longest("curved-tube", d => d with { CurveRadiusMm = 40 }));
        Assert.Null(Longest("curved-tube", d => d with { Matched = true }));
    }

    /// <summary>Heights at which the hole could lie over the wire, round about the best one.</summary>
    private static IEnumerable<double> Places(double best, double room) => Enumerable.Range(-50, 101).Select(i => best + i * room / 50);

    /// <summary>Bent wire as many points of its surface, in space: the coil's centre at the origin, the bead's middle straight above it.</summary>
    private sealed class Wire(double thickness, double radius)
    {
        private const int Along = 800;
        private const int About = 48;

        /// <summary>How far the wire sticks out of a straight hole at a height, at most, mm; of walls of a thickness at both ends, or all along.</summary>
        public double OutOfStraightMm(double length, double bore, double axis, double? wall = null)
        {
            var most = double.NegativeInfinity;
            for (var i = 0; i <= Along; i++)
            {
                // Places along the bead, both rims of each wall among them.
                var x = wall is { } w ? length / 2 - w * i / Along : length * i / (2.0 * Along);
                for (var a = 0; a < About; a++)
                {
                    var (sin, cos) = Math.SinCos(2 * Math.PI * a / About);
                    var ring = radius + thickness / 2 * cos;
                    if (ring < x) continue;
                    var y = Math.Sqrt(ring * ring - x * x) - axis;
                    var z = thickness / 2 * sin;
                    most = Math.Max(most, Math.Sqrt(y * y + z * z) - bore / 2);
                }
            }
            return most;
        }

        /// <summary>The same of a curved tube whose curve has its centre at a height, mm.</summary>
        public double OutOfCurvedMm(double arc, double bore, double tubeRadius, double centre)
        {
            var most = double.NegativeInfinity;
            for (var i = 0; i <= 4 * Along; i++)
            {
                var angle = Math.PI / 2 * i / (4.0 * Along);
                for (var a = 0; a < About; a++)
                {
                    var (sin, cos) = Math.SinCos(2 * Math.PI * a / About);
                    var ring = radius + thickness / 2 * cos;
                    var (x, y) = (ring * Math.Sin(angle), ring * Math.Cos(angle) - centre);
                    if (Math.Atan2(x, y) > arc / (2 * tubeRadius)) continue;
                    var off = Math.Sqrt(x * x + y * y) - tubeRadius;
                    var z = thickness / 2 * sin;
                    most = Math.Max(most, Math.Sqrt(off * off + z * z) - bore / 2);
                }
            }
            return most;
        }
    }
}
