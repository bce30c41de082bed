using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Sections;
using Coilwright.Core.Beads.Shapes;
using CsCheck;

namespace Coilwright.Core.Tests.Beads;

/// <summary>What every listed shape promises. A new shape joins by itself; see docs/how-to/add-a-bead-shape.md.</summary>
public class BeadShapeContractTests
{
    [Fact]
    public void No_two_shapes_share_a_name_or_another_name()
    {
        var names = BeadShapes.All.SelectMany(s => s.Aliases.Prepend(s.Name)).ToList();
        Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(names.Order(StringComparer.Ordinal), BeadShapes.Names);
        foreach (var shape in BeadShapes.All)
            foreach (var name in shape.Aliases.Prepend(shape.Name))
            {
                Assert.Matches("^[a-z][a-z0-9-]*$", name);
                Assert.Same(shape, BeadShapes.Find(name));
            }
        Assert.Null(BeadShapes.Find("Round"));
        Assert.Null(BeadShapes.Find("sphere-ish"));
    }

    [Theory]
    [MemberData(nameof(SampleBeads.ShapeNames), MemberType = typeof(SampleBeads))]
    public void What_a_shape_needs_it_also_takes(string name)
    {
        var shape = BeadShapes.Find(name)!;
        var description = SampleBeads.Plain(shape, 6, 8);
        Assert.Empty(shape.Needs(description).Except(shape.Takes));
        Assert.Empty(shape.Takes.Except(["holeOffsetMm", "endFaceMm", "wallMm", "curveRadiusMm", "lengthIs", "seat", "matched"]));
        if (shape.EndFaceMatters) Assert.Contains("endFaceMm", shape.Takes);
    }

    [Theory]
    [MemberData(nameof(SampleBeads.ShapeNames), MemberType = typeof(SampleBeads))]
    public void A_profile_is_whole_in_the_middle_never_rises_away_from_it_and_is_its_own_mirror_image(string name)
    {
        foreach (var bead in SampleBeads.Of(name))
        {
            var profile = bead.Shape.Profile(bead);
            foreach (var share in new[] { profile.Thickness, profile.Width })
            {
                Assert.Equal(1, share(0));
                var last = 1.0;
                for (var u = 0.0; u <= 1; u += 1.0 / 256)
                {
                    var at = share(u);
                    Assert.InRange(at, 0, last);
                    Assert.Equal(at, share(-u));
                    last = at;
                }
            }
            Assert.InRange(profile.AreaFactor, double.Epsilon, 1);
            if (profile.Ends == EndForm.Flat) Assert.True(profile.Thickness(1) > 0, SampleBeads.Tell(bead));
        }
    }

    [Theory]
    [MemberData(nameof(SampleBeads.ShapeNames), MemberType = typeof(SampleBeads))]
    public void A_section_stays_within_the_beads_measures_and_reaches_all_of_them(string name)
    {
        foreach (var bead in SampleBeads.Of(name))
            foreach (var radius in new[] { 25.0, 60 })
            {
                var sections = bead.Shape.Sections(bead, radius);
                Assert.NotEmpty(sections);
                double low = double.PositiveInfinity, high = double.NegativeInfinity, half = 0;
                foreach (var section in sections)
                {
                    foreach (var psi in Directions)
                    {
                        var (x, y) = section.SupportPoint(psi);
                        // Rounding.
                        Assert.InRange(x, -1e-12, bead.LengthMm / 2 + (bead.Shape is CurvedTube ? bead.OuterReachMm : 0) + 1e-9);
                        Assert.True(y <= bead.OuterReachMm + 1e-9, SampleBeads.Tell(bead));
                    }
                    (low, high, half) = (Math.Min(low, section.LowestMm), Math.Max(high, section.HighestMm), Math.Max(half, section.HalfLengthMm));
                }
                var what = $"{SampleBeads.Tell(bead)} at {radius}: {low} {high} {half}";
                Near.Equal(bead.OuterReachMm, high, 1e-9, what);
                // A bent tube's ends hang below its middle, and from end to end it is shorter than its curve.
                if (bead.Shape is CurvedTube)
                {
                    Assert.True(low < -bead.BearingReachMm && half < bead.LengthMm / 2 + bead.OuterReachMm, what);
                    continue;
                }
                Near.Equal(-bead.BearingReachMm, low, 1e-9, what);
                Near.Equal(bead.LengthMm / 2, half, 1e-9, what);
            }
    }

    [Theory]
    [MemberData(nameof(SampleBeads.ShapeNames), MemberType = typeof(SampleBeads))]
    public void A_section_is_the_outline_of_the_profile(string name)
    {
        foreach (var bead in SampleBeads.Of(name))
            foreach (var radius in new[] { 25.0, 60 })
            {
                var outline = PolarContact.RightSide(bead, radius).SelectMany(line => line).ToList();
                var sections = bead.Shape.Sections(bead, radius);
                // The points fall short of a rounded outline by this much: see PolarContact.
                var shortfall = PolarContact.ShortfallMm(new PolarContact(bead, radius), new PolarContact(bead, radius)) / 2;
                foreach (var psi in Directions)
                {
                    var (sin, cos) = Math.SinCos(psi);
                    double Reach((double X, double Y) p) => p.X * cos + p.Y * sin;
                    var sampled = outline.Max(Reach);
                    var reach = sections.Max(s => Reach(s.SupportPoint(psi)));
                    var what = FormattableString.Invariant($"{SampleBeads.Tell(bead)} at {radius}, psi {psi}: {reach:R} {sampled:R}");
                    // A matched tube is told by its end faces, and its outer side by them and its top: its arc lies further out in between, where no
                    // neighbour is.
                    if (bead.Description.Matched && psi > -bead.LengthMm / 2 / radius) Assert.True(reach <= sampled + 1e-9, what);
                    else Assert.True(reach >= sampled - 1e-9 && reach <= sampled + shortfall + 1e-9, what);
                }
            }
    }

    [Theory]
    [MemberData(nameof(SampleBeads.ShapeNames), MemberType = typeof(SampleBeads))]
    public void A_support_point_is_the_furthest_there_is(string name)
    {
        foreach (var bead in SampleBeads.Of(name))
            foreach (var section in bead.Shape.Sections(bead, 30))
                foreach (var psi in Directions)
                {
                    var (sin, cos) = Math.SinCos(psi);
                    double Reach((double X, double Y) p) => p.X * cos + p.Y * sin;
                    var own = Reach(section.SupportPoint(psi));
                    foreach (var other in Directions)
                        Assert.True(Reach(section.SupportPoint(other)) <= own + 1e-9, FormattableString.Invariant($"{SampleBeads.Tell(bead)}: psi {psi} is outreached by {other}"));
                }
    }

    [Fact]
    public void Any_sound_bead_has_a_volume_a_contact_and_a_longest_length_that_are_numbers() =>
        Gen.Select(SampleBeads.Any, Gen.Double[21, 100], Gen.Double[0.3, 3]).Sample((bead, radius, bore) =>
        {
            var angle = NeighbourContact.AngleRad(bead.Shape.Sections(bead, radius), bead.Shape.Sections(bead, radius), radius);
            Assert.InRange(angle, double.Epsilon, Math.PI);
            Assert.InRange(BeadVolume.Mm3(bead), double.Epsilon, bead.LengthMm * bead.WidthMm * bead.ThicknessMm * (1 + 1e-12));
            Assert.True(bead.Shape.LongestPassingMm(bead, bore, 0.62, radius) is null or >= 0);
        });

    /// <summary>Every third degree from straight in to straight out.</summary>
    private static IEnumerable<double> Directions => Enumerable.Range(-30, 61).Select(d => d * Math.PI / 60);
}
