using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Sections;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Geometry;
using CsCheck;

namespace Coilwright.Core.Tests.Beads;

/// <summary>How near neighbours stand on the curve. Derived in docs/theory/curve-true-length.md.</summary>
public class NeighbourContactTests
{
    private static double Angle(Bead left, Bead right, double radius) =>
        NeighbourContact.AngleRad(left.Shape.Sections(left, radius), right.Shape.Sections(right, radius), radius);

    private static Bead Bead(string shape, double length, double? across = null, Func<BeadDescription, BeadDescription>? with = null)
    {
        var description = new BeadDescription { Id = "sample", Shape = shape, Length = new BeadLength.Nominal(length), WidthMm = across, ThicknessMm = across };
        return SampleBeads.Make(with is null ? description : with(description));
    }

    // Worked by hand in the design of this model: flat 5 x 8 at R 30: each takes 5.7515 mm, 32.77 go round (a ruler says 37.7); beside a
    // round 8 it takes 6.552 mm. Half of the last printed digit.
    [Fact]
    public void Flat_5_by_8_takes_5_7515_mm_on_a_coil_of_30_mm_and_6_552_beside_a_round_8()
    {
        var flat = Bead("tube", 5, 8);
        var ball = Bead("round", 8);
        Near.Equal(5.7515, 30 * Angle(flat, flat, 30), 0.00005);
        Near.Equal(32.77, 2 * Math.PI / Angle(flat, flat, 30), 0.005);
        Near.Equal(37.7, 2 * Math.PI * 30 / flat.LengthMm, 0.05);
        Near.Equal(6.552, 30 * Angle(flat, ball, 30), 0.0005);
    }

    // Trade figures from plain geometry (common practice, no source): on a coil of 60 mm, against ruler length, 5 x 8 discs lose 13 %, 1.2 x 4
    // spacers 7 %, 6 mm cubes 10 %, rounds 0.3 %. Printed to whole per cents, rounds to a tenth; half of the last digit.
    [Theory]
    [InlineData("heishi", 5, 8.0, 0.13, 0.005)]
    [InlineData("heishi", 1.2, 4.0, 0.07, 0.005)]
    [InlineData("cube", 6, null, 0.10, 0.005)]
    [InlineData("round", 8, null, 0.003, 0.0005)]
    public void Fewer_go_round_than_a_ruler_says_by_the_trades_figures(string shape, double length, double? across, double lost, double tolerance)
    {
        var bead = Bead(shape, length, across);
        Near.Equal(lost, 1 - length / 30 / Angle(bead, bead, 30), tolerance);
    }

    [Fact]
    public void Closed_forms_hold()
    {
        // 1e-12: rounding. Two unlike balls go through the search for the least sum, whose valley is smooth: its bottom is met to rounding too.
        Gen.Select(Gen.Double[1, 12], Gen.Double[1, 12], Gen.Double[1, 12], Gen.Double[15, 200]).Sample((a, t, other, radius) =>
        {
            var flat = Bead("tube", a, t);
            Near.Equal(2 * Math.Atan(a / (2 * radius - t)), Angle(flat, flat, radius), 1e-12);
            var ball = Bead("round", a);
            Near.Equal(2 * Math.Asin(a / (2 * radius)), Angle(ball, ball, radius), 1e-12);
            var otherBall = Bead("round", other);
            Near.Equal(2 * Math.Asin((a + other) / 2 / (2 * radius)), Angle(ball, otherBall, radius), 1e-12);
            // The ball stands against the flat face where the face is high enough to meet it; at the level of the ball's middle it lies
            // R cos(angle) from the coil's centre.
            if (radius * Math.Cos(Math.Asin((a / 2 + other / 2) / radius)) > radius - t / 2)
                // The bottom of the valley is a kink: the search ends within 1e-9 of both half lengths, times a slope below 1/R.
                Near.Equal(Math.Asin((a / 2 + other / 2) / radius), Angle(flat, otherBall, radius), 1e-9);
            var matched = Bead("curved-tube", a, t, d => d with { Matched = true });
            Near.Equal(a / radius, Angle(matched, matched, radius), 1e-12);
            // Flats of unequal height lean on the inner edge of the lower one: its corner against the other's face.
            var bicone = Bead("bicone", a, t);
            Near.Equal(2 * Math.Max(Math.Atan(a / 2 / radius), 0), Angle(bicone, bicone, radius), 1e-12);
        });
    }

    [Fact]
    public void Round_beads_close_the_ring_that_touching_balls_make()
    {
        foreach (var row in ReferenceTable.Read("ring-of-balls.csv").Rows)
        {
            var ball = Bead("round", row["b_mm"]);
            // Rounding, of n equal angles.
            Near.Equal(2 * Math.PI, row["n"] * Angle(ball, ball, RingOfBalls.CentreRadiusMm(row["b_mm"], (int)row["n"])), 1e-12, row);
        }
    }

    [Theory]
    [InlineData(22)] // tight for the beads of 20 mm
    [InlineData(29)] // a bracelet coil at rest
    [InlineData(35)] // a large wrist
    [InlineData(60)] // a necklace
    [InlineData(1000)]
    public void Every_pair_of_shapes_stands_where_their_outlines_touch(double radius)
    {
        var beads = SampleBeads.Few.ToList();
        var polars = beads.Select(b => new PolarContact(b, radius)).ToList();
        for (var i = 0; i < beads.Count; i++)
            for (var j = i; j < beads.Count; j++)
                StandWhereOutlinesTouch(beads[i], beads[j], polars[i], polars[j], radius);
    }

    [Fact]
    public void Any_two_beads_stand_where_their_outlines_touch() =>
        Gen.Select(SampleBeads.Any, SampleBeads.Any, Gen.Double[21, 100]).Sample((left, right, radius) =>
            StandWhereOutlinesTouch(left, right, new PolarContact(left, radius), new PolarContact(right, radius), radius),
            iter: 300, print: t => $"{SampleBeads.Tell(t.Item1)} | {SampleBeads.Tell(t.Item2)} | R {t.Item3:R}");

    private static void StandWhereOutlinesTouch(Bead left, Bead right, PolarContact leftPolar, PolarContact rightPolar, double radius)
    {
        var sampled = PolarContact.AngleRad(leftPolar, rightPolar);
        var angle = Angle(left, right, radius);
        var what = FormattableString.Invariant($"{SampleBeads.Tell(left)} | {SampleBeads.Tell(right)} at R {radius}");
        // The sampled figures lie inside the true ones, so they can stand no further apart: 1e-9 is what the search for the least sum may
        // miss of a kink, in mm of both half lengths over a radius, and more.
        Assert.True(angle >= sampled - 1e-9, $"{what}: {angle:R} is nearer than {sampled:R}");
        // What the sampled figures fall short by, square to the outline, over the lever of the touching point about the coil's centre. Side by side
        // that is at least half of what lies inside the beads. Under an overhang the line between them lies nearly along the wire and the
        // lever is the touching point's place along it: from 1 mm up in these samples.
        var inner = radius - Math.Max(left.BearingReachMm, right.BearingReachMm);
        var lever = left.Description.Seat is null && right.Description.Seat is null ? inner / 2 : Math.Min(inner / 2, 1);
        Assert.True(angle <= sampled + PolarContact.ShortfallMm(leftPolar, rightPolar) / lever + 1e-9, $"{what}: {angle:R} is further than {sampled:R}");
    }

    [Fact]
    public void It_does_not_matter_which_neighbour_comes_first() =>
        Gen.Select(SampleBeads.Any, SampleBeads.Any, Gen.Double[21, 100]).Sample((left, right, radius) =>
            // As far as the search for the least sum goes.
            Near.Equal(Angle(left, right, radius), Angle(right, left, radius), 1e-8), iter: 500);

    [Fact]
    public void Two_lots_of_one_make_stand_as_one_lot_does() =>
        Gen.Select(SampleBeads.Any, Gen.Double[21, 100]).Sample((bead, radius) =>
        {
            var sections = bead.Shape.Sections(bead, radius);
            // Once by symmetry, once through the search, which does not know that both are alike.
            Near.Equal(NeighbourContact.AngleRad(sections, sections, radius), Angle(bead, bead, radius), 1e-8);
        }, iter: 500);

    [Fact]
    public void On_a_nearly_straight_wire_a_pair_takes_half_of_both_lengths()
    {
        // Beads of at most 20 mm on a radius of R depart from the ruler by less than (their height + length)^2/R. Left out are
        // curved tubes of their own curve, whose length is an arc, and holes off the middle and flat backs, whose beads are widest at another height.
        foreach (var radius in new[] { 1e4, 1e6, 1e8 })
            Gen.Select(SampleBeads.Any, SampleBeads.Any).Where((l, r) => IsStraight(l) && IsStraight(r)).Sample((left, right) =>
                Near.Equal((left.LengthMm + right.LengthMm) / 2, radius * Angle(left, right, radius), 40 * 40 / radius + 1e-7), iter: 200);
    }

    private static bool IsStraight(Bead bead) => bead.HoleOffsetMm == 0 && bead.Shape is not Focal && (bead.Description.CurveRadiusMm is null || bead.Description.Matched);

    [Fact]
    public void Everything_twice_as_large_stands_at_the_same_angle() =>
        Gen.Select(SampleBeads.Any, SampleBeads.Any, Gen.Double[21, 100]).Sample((left, right, radius) =>
            // As far as the search for the least sum goes.
            Near.Equal(Angle(left, right, radius), Angle(Twice(left), Twice(right), 2 * radius), 1e-8), iter: 500);

    internal static Bead Twice(Bead bead)
    {
        var d = bead.Description;
        return SampleBeads.Make(d with
        {
            Length = new BeadLength.Nominal(2 * bead.LengthMm),
            WidthMm = 2 * bead.WidthMm,
            ThicknessMm = 2 * bead.ThicknessMm,
            BoreMm = 2 * d.BoreMm,
            HoleOffsetMm = 2 * d.HoleOffsetMm,
            EndFaceMm = 2 * d.EndFaceMm,
            WallMm = 2 * d.WallMm,
            CurveRadiusMm = 2 * d.CurveRadiusMm,
            Seat = d.Seat is { } seat ? new Seat(2 * seat.LengthMm, 2 * seat.ClearMm) : null,
        });
    }

    // A broad focal on a foot of 6 mm, its underside 3.2 mm over the hole: a ball of 6 mm goes right under and stops at the foot, one of 12 mm
    // goes part of the way, one of 20 mm stays outside.
    [Fact]
    public void A_small_neighbour_tucks_under_the_overhang_as_far_as_it_fits()
    {
        const double Radius = 33;
        var focal = Bead("focal", 30, 20, d => d with { ThicknessMm = 9, HoleOffsetMm = 2, Seat = new Seat(6, 3.2) });
        // Ball against the foot's face: (a/2 + r)/R; a kink, as above.
        Near.Equal(Math.Asin((3 + 3) / Radius), Angle(focal, Bead("round", 6), Radius), 1e-9);
        var part = Angle(focal, Bead("round", 12), Radius);
        Assert.InRange(part, Math.Asin((3 + 6) / Radius) + 0.01, Math.Asin((15 + 6) / Radius) - 0.01);
        Assert.True(Angle(focal, Bead("round", 20), Radius) > part + 0.1);
    }

    // Story: the search once looked only between the two half lengths and left a neighbour standing 10 mm clear of the foot it tucks up to.
    [Fact]
    public void A_neighbour_under_a_high_plate_meets_only_the_foot()
    {
        var focal = Bead("focal", 30, 6, d => d with { ThicknessMm = 7, HoleOffsetMm = 0, Seat = new Seat(1.5, 3) });
        Near.Equal(Math.Asin((0.75 + 2) / 29), Angle(focal, Bead("round", 4), 29), 1e-9);
        Near.Equal(Math.Asin((0.75 + 2) / 29), Angle(Bead("round", 4), focal, 29), 1e-9);
    }

    [Fact]
    public void A_bead_that_reaches_the_coils_centre_fills_the_coil_and_gives_a_number()
    {
        foreach (var bead in SampleBeads.All.Where(b => b.BearingReachMm >= 8))
            foreach (var other in SampleBeads.Few)
                Assert.Equal(Math.PI, Angle(bead, other, bead.BearingReachMm));
    }

    [Fact]
    public void Every_touching_line_touches()
    {
        Gen.Select(SampleBeads.Any, Gen.Double[21, 100], Gen.Double[0, 0.999]).Sample((bead, radius, share) =>
        {
            foreach (var section in bead.Shape.Sections(bead, radius))
            {
                // Any distance at which a line has the figure wholly on its inner side.
                var least = -(radius + section.LowestMm);
                var q = least + share * (section.FurthestMm(radius) - least);
                var psi = -section.LeanRad(q, radius);
                var (sin, cos) = Math.SinCos(psi);
                var (x, y) = section.SupportPoint(psi);
                // 1e-10 mm: rounding of R sin(psi), with the slope near nought at both ends.
                Near.Equal(q, x * cos + (y + radius) * sin, 1e-10 * radius, (SampleBeads.Tell(bead), radius, share));
            }
        });
    }
}
