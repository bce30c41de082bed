using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;

namespace Coilwright.Core.Tests.Beads;

/// <summary>Volumes against outside tables, closed forms and sampling. Derived in docs/theory/bead-profile.md.</summary>
public class BeadVolumeTests
{
    private const int Side = 60;

    private static double Volume(string shape, double length, double? width = null, double? thickness = null, double? bore = null,
        Func<BeadDescription, BeadDescription>? with = null)
    {
        var description = new BeadDescription
        {
            Id = "sample",
            Shape = shape,
            Length = new BeadLength.Nominal(length),
            WidthMm = width,
            ThicknessMm = thickness,
            BoreMm = bore,
        };
        return BeadVolume.Mm3(SampleBeads.Make(with is null ? description : with(description)));
    }

    [Fact]
    public void Drilled_balls_have_the_volume_and_mass_of_the_table()
    {
        foreach (var row in ReferenceTable.Read("drilled-ball.csv").Rows)
        {
            var description = new BeadDescription
            {
                Id = "ball",
                Shape = "round",
                Length = new BeadLength.Nominal(row["D_mm"]),
                BoreMm = row["hole_mm"],
            };
            // Half of the last printed digit.
            Near.Equal(row["volume_mm3"], BeadVolume.Mm3(SampleBeads.Make(description)), 0.000005, row);
            foreach (var (column, density) in new[] { ("mass_quartz_g", 2.65), ("mass_glass_g", 2.50), ("mass_hematite_g", 5.26) })
                Near.Equal(row[column], SampleBeads.Make(description with { DensityGPerCm3 = density }).MassG!.Value, 0.0000005, row);
        }
    }

    // Closed forms of any book; 1e-9 of the volume, because Gauss-Legendre with 64 points reaches rounding on these.
    [Fact]
    public void Closed_forms_hold()
    {
        const double L = 9, W = 7, T = 5, B = 1.2, Face = 3;
        const double Hole = Math.PI / 4 * B * B;
        Is(L * L * L - Hole * L, Volume("cube", L, bore: B));
        Is((Math.PI / 4 * W * W - Hole) * L, Volume("tube", L, W, bore: B));
        Is((Math.PI / 4 * W * W - Hole) * L, Volume("heishi", L, W, bore: B));
        Is(Math.PI / 4 * L * L * T, Volume("coin", L, thickness: T));
        Is(Math.PI / 6 * L * W * T, Volume("nugget", L, W, T));
        Is(Math.PI / 6 * L * W * T, Volume("focal", L, W, T, with: d => d with { HoleOffsetMm = 1 }));
        Is(Math.PI / 12 * L * W * W, Volume("bicone", L, W));
        Is(Math.PI / 12 * L * (W * W + W * Face + Face * Face), Volume("faceted-rondelle", L, W, with: d => d with { EndFaceMm = Face }));
        // Barrel with parabolic staves: pi L (8 D^2 + 4 D d + 3 d^2)/60.
        Is(Math.PI * L * (8 * W * W + 4 * W * Face + 3 * Face * Face) / 60, Volume("barrel", L, W, with: d => d with { EndFaceMm = Face }));
        // Half a ball and a cone along the arm.
        Is(Math.PI / 12 * L * T * T + Math.PI / 12 * L * T * (W - T / 2), Volume("drop", L, W, T));
        // Round-edged wheel: a disc, a quarter circle's ring about it: pi/4 f^2 L + pi^2/4 f L e + pi/6 L (2e)^2, e = (W - f)/2 the edge.
        const double E = (W - Face) / 2;
        Is(Math.PI / 4 * Face * Face * L + Math.PI * Math.PI / 4 * Face * L * E + Math.PI / 6 * L * 4 * E * E,
            Volume("rondelle", L, W, with: d => d with { EndFaceMm = Face }));
        // What is left of two cones, drilled right through their points: each cone less its cylinder and its tip.
        const double Left = 1 - B / W;
        Is(Math.PI / 4 * L * (W * W * (1 - Math.Pow(1 - Left, 3)) / 3 - B * B * Left), Volume("bicone", L, W, bore: B));
        // A hollow ball: what its hole leaves of the outside less what it leaves of the cavity.
        Is(Math.PI / 6 * (Math.Pow(64 - B * B, 1.5) - Math.Pow(7.2 * 7.2 - B * B, 1.5)), Volume("round", 8, bore: B, with: d => d with { WallMm = 0.4 }));
        // A hollow tube is open at both ends.
        Is(Math.PI / 4 * (W * W - (W - 1) * (W - 1)) * L, Volume("tube", L, W, bore: B, with: d => d with { WallMm = 0.5 }));
        // A curved tube: its area times the path of its middle (Pappus).
        Is(Math.PI / 4 * W * W * L, Volume("curved-tube", L, W, with: d => d with { CurveRadiusMm = 20 }));
        // A hole as wide as the bead, but for nothing, leaves nothing but a hair.
        Assert.InRange(Volume("round", 8, bore: 8 - 1e-9), 0, 1e-9);
        Assert.InRange(Volume("bicone", 8, bore: 8 - 1e-9), 0, 1e-9);

        static void Is(double expected, double actual) => Near.Equal(expected, actual, 1e-9 * expected);
    }

    [Fact]
    public void Every_shape_has_its_solid_told_in_another_way() =>
        Assert.Equal(BeadShapes.All.Select(s => s.Name).Order(), BeadSolids.Names.Order());

    [Theory]
    [MemberData(nameof(SampleBeads.ShapeNames), MemberType = typeof(SampleBeads))]
    public void Volume_is_what_sampling_the_solid_finds(string shape)
    {
        foreach (var bead in SampleBeads.Of(shape))
        {
            var box = bead.LengthMm * bead.WidthMm * bead.ThicknessMm;
            // One point at random in each of n^3 equal cells: an answer is in doubt only in the cells that a surface cuts. A closed convex surface
            // cuts at most about 3 x 2 n^2 of them, a hole or a cavity half as many again; each adds a variance of at most 1/4 of its cell
            // squared. Five standard deviations.
            var tolerance = 5 * box * Math.Sqrt(9.0 * Side * Side / 4) / Math.Pow(Side, 3);
            // The model drills all beads through the middle. Holes off the middle are left out, and so are the seat's and the drop's, which is
            // drilled across its top.
            var centred = bead.HoleOffsetMm == 0 && bead.Description.Seat is null && bead.Shape is not Drop;
            var described = centred ? bead.Description : bead.Description with { BoreMm = null };
            Near.Equal(Sampled(SampleBeads.Make(described)), BeadVolume.Mm3(SampleBeads.Make(described)), tolerance, SampleBeads.Tell(bead));
        }
    }

    // The limit that the sampling above leaves out: a hole off the middle is shorter than the model's, never longer, on shapes that taper.
    [Theory]
    [InlineData("round", 8, 1, 1.5)]
    [InlineData("oval", 12, 1, 1.5)]
    public void Taking_the_hole_through_the_middle_costs_less_than_two_parts_in_a_thousand(string shape, double length, double bore, double offset)
    {
        var description = new BeadDescription { Id = "b", Shape = shape, Length = new BeadLength.Nominal(length), WidthMm = 8, BoreMm = bore };
        var centred = BeadVolume.Mm3(SampleBeads.Make(description));
        // Removed by a thin hole: its area times the chord it runs through.
        var chordLost = length * (1 - Math.Sqrt(1 - Math.Pow(offset / 4, 2)));
        Assert.InRange(Math.PI / 4 * bore * bore * chordLost / centred, 0, 0.002);
    }

    [Fact]
    public void A_bent_tube_holds_what_a_straight_one_does()
    {
        // Cells of a ring's piece: radius, height; x-axis along the curve is exact, so count in the plane square to it, weighted by the radius.
        const double Curve = 12, Length = 20, Across = 8;
        double sum = 0;
        const int N = 400;
        for (var i = 0; i < N; i++)
            for (var j = 0; j < N; j++)
            {
                var y = Across * ((i + 0.5) / N - 0.5);
                var z = Across * ((j + 0.5) / N - 0.5);
                if (y * y + z * z <= Across * Across / 4) sum += (Curve + y) * (Length / Curve);
            }
        sum *= Across / N * Across / N;
        // Midpoint cells along a circle: about sqrt(cells cut) = sqrt(4 N) in doubt by half a cell each, five-fold.
        Near.Equal(sum, Volume("curved-tube", Length, Across, with: d => d with { CurveRadiusMm = Curve }), 5 * Math.Sqrt(4 * N) / 2 / N / N * Across * Across * Length);
    }

    [Theory]
    [MemberData(nameof(SampleBeads.ShapeNames), MemberType = typeof(SampleBeads))]
    public void Twice_as_large_holds_eight_times_as_much(string shape)
    {
        foreach (var bead in SampleBeads.Of(shape))
            // Rounding.
            Near.Equal(8 * BeadVolume.Mm3(bead), BeadVolume.Mm3(NeighbourContactTests.Twice(bead)), 1e-9 * 8 * BeadVolume.Mm3(bead), SampleBeads.Tell(bead));
    }

    [Theory]
    [MemberData(nameof(SampleBeads.ShapeNames), MemberType = typeof(SampleBeads))]
    public void A_hole_takes_something_away_and_never_everything(string shape)
    {
        foreach (var bead in SampleBeads.Of(shape))
        {
            var whole = BeadVolume.Mm3(SampleBeads.Make(bead.Description with { BoreMm = null }));
            var last = whole;
            for (var share = 0.1; share < 1; share += 0.2)
            {
                if (Math.Abs(bead.HoleOffsetMm) + share * Math.Min(bead.WidthMm, bead.ThicknessMm) / 2 > bead.ThicknessMm / 2) break;
                var drilled = BeadVolume.Mm3(SampleBeads.Make(bead.Description with { BoreMm = share * Math.Min(bead.WidthMm, bead.ThicknessMm) }));
                // A tube's hole lies in its cavity, until it is wider than that.
                if (bead.Description.WallMm is not null && bead.Shape.HollowRunsThrough) Assert.InRange(drilled, 0, last * (1 + 1e-12)); // rounding
                else Assert.True(drilled < last && drilled > 0, $"{SampleBeads.Tell(bead)}, hole {share}: {drilled} of {last}");
                last = drilled;
            }
        }
    }

    [Fact]
    public void Mass_is_the_weighed_one_then_the_densitys_and_unknown_without_either()
    {
        var ball = new BeadDescription
        {
            Id = "ball",
            Shape = "round",
            Length = new BeadLength.Nominal(8),
            BoreMm = 1,
            Material = new BeadMaterial("quartz", 2.65, false, "test"),
        };
        var volume = BeadVolume.Mm3(SampleBeads.Make(ball));
        Near.Equal(volume * 2.65 / 1000, SampleBeads.Make(ball).MassG!.Value, 1e-12); // rounding
        Near.Equal(volume * 3 / 1000, SampleBeads.Make(ball with { DensityGPerCm3 = 3 }).MassG!.Value, 1e-12);
        Assert.Equal(0.7, SampleBeads.Make(ball with { DensityGPerCm3 = 3, MassG = 0.7 }).MassG);
        Assert.Null(SampleBeads.Make(ball with { Material = null }).MassG);
    }

    private static double Sampled(Bead bead)
    {
        var random = new Random(1);
        var (half, halfT, halfW) = (bead.LengthMm / 2, bead.ThicknessMm / 2, bead.WidthMm / 2);
        var boreRadius = (bead.BoreMm ?? 0) / 2;
        long inside = 0;
        for (var i = 0; i < Side; i++)
            for (var j = 0; j < Side; j++)
                for (var k = 0; k < Side; k++)
                {
                    var x = 2 * (i + random.NextDouble()) / Side - 1;
                    var y = 2 * (j + random.NextDouble()) / Side - 1;
                    var z = 2 * (k + random.NextDouble()) / Side - 1;
                    var (up, along) = (y * halfT, z * halfW);
                    if (up * up + along * along < boreRadius * boreRadius) continue;
                    if (!BeadSolids.Holds(bead, x, y, z)) continue;
                    if (bead.Description.WallMm is { } wall)
                    {
                        // A cavity of the same shape, smaller by the wall all round; a tube's runs through.
                        var (cx, cy, cz) = (bead.Shape.HollowRunsThrough ? x : x * half / (half - wall), up / (halfT - wall), along / (halfW - wall));
                        if (Math.Abs(cx) <= 1 && Math.Abs(cy) <= 1 && Math.Abs(cz) <= 1 && BeadSolids.Holds(bead, cx, cy, cz)) continue;
                    }
                    inside++;
                }
        return inside * bead.LengthMm * bead.WidthMm * bead.ThicknessMm / Math.Pow(Side, 3);
    }
}
