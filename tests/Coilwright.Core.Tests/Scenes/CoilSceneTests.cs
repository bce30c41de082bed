using Coilwright.Core.Findings;
using Coilwright.Core.Geometry;
using Coilwright.Core.Readings;
using Coilwright.Core.Scenes;

namespace Coilwright.Core.Tests.Scenes;

/// <summary>Where beads and wire stand in space.</summary>
public class CoilSceneTests
{
    private static readonly Reckoned Sample = Reckoning.Of(SamplePieces.Piece(
        [SamplePieces.Bead("ball", "round", 6, colour: "#7f1f2f"), SamplePieces.Bead("tube", "tube", 10, 3), SamplePieces.Bead("stone", "chip", 5, 7, 6)],
        Enumerable.Range(0, 90).Select(i => i % 3)), SamplePieces.Data, new ReckonRequest());

    public static TheoryData<CoilPose> Poses => [CoilPose.Worn, CoilPose.AtRest];

    [Theory, MemberData(nameof(Poses))]
    public void Beads_stand_on_the_wires_circle_at_their_angle(CoilPose pose)
    {
        var scene = CoilScene.Of(Sample, pose);
        var radius = pose == CoilPose.Worn ? Sample.Worn.RadiusMm : Sample.Piece.Wire.RelaxedRadiusMm;
        Assert.Equal(90, scene.Beads.Length);
        foreach (var bead in scene.Beads)
        {
            Near.Equal(radius, Math.Sqrt(bead.Place.X * bead.Place.X + bead.Place.Z * bead.Place.Z), 1e-9);
            // Angle 0, the top, faces whoever looks (z), and angles grow to the right (x).
            var angle = scene.Lie.AngleDegAt(scene.Lie.BeadMiddleMm(bead.Index)) * Math.PI / 180;
            Near.Equal(Math.Sin(angle), bead.Outwards.X, 1e-9);
            Near.Equal(Math.Cos(angle), bead.Outwards.Z, 1e-9);
            Near.Equal(0, bead.Along.Dot(bead.Outwards), 1e-12);
        }
        // Down the arm by the pitch for each turn.
        var (first, last) = (scene.Beads[0], scene.Beads[^1]);
        Near.Equal(scene.PitchMm * scene.Lie.TurnsAt(scene.Lie.BeadMiddleMm(89) - scene.Lie.BeadMiddleMm(0)), first.Place.Y - last.Place.Y, 1e-9);
    }

    [Theory, MemberData(nameof(Poses))]
    public void Neighbours_of_a_kind_of_flat_beads_touch_and_do_not_overlap(CoilPose pose)
    {
        var discs = Reckoning.Of(SamplePieces.Piece([SamplePieces.Bead("disc", "heishi", 3, 8)], Enumerable.Repeat(0, 60)), SamplePieces.Data, new ReckonRequest());
        var scene = CoilScene.Of(discs, pose);
        var kind = scene.Kinds[0];
        Point3 InSpace(StandingBead b, Point3 p) => b.Place + b.Along * p.X + b.Outwards * p.Y + b.Along.Cross(b.Outwards) * p.Z;
        var next = scene.Beads[31];
        // How deep the one reaches into the other along the other's hole: at their inner edges they touch. The lie reckons in the plane of the coil; the rise of a turn tilts both by the same angle, which
        // moves an edge by less than a hundredth of a millimetre.
        var deepest = kind.Meshes[0].Places.Max(p => (InSpace(scene.Beads[30], p) - next.Place).Dot(next.Along) + 1.5);
        Assert.InRange(deepest, -0.35, 0.01);
        var inner = new Point3(1.5, -4, 0);
        var apart = InSpace(scene.Beads[30], inner) - InSpace(next, inner with { X = -1.5 });
        // In the plane of the coil; along the arm the one slides down the other by what the turn sinks there.
        Near.Equal(0, apart.Dot(next.Along), 0.01);
        Near.Equal(0, apart.Dot(next.Outwards), 0.01);
    }

    [Fact]
    public void The_wire_is_as_thick_and_long_as_it_is_with_both_loops()
    {
        var scene = CoilScene.Of(Sample, CoilPose.Worn, Fineness.Fine);
        var wire = Sample.Piece.Wire.WireMm;
        var loops = new[] { Sample.Piece.Ends.Start, Sample.Piece.Ends.Finish }.Sum(e => e.Finish == EndFinish.TurnedLoop ? 0.94 * Math.PI * (e.InsideMm + wire) : e.InsideMm);
        var meant = Math.PI / 4 * wire * wire * (Sample.Lie.BeadedMm + loops);
        // Ten corners round leave out 1 - 10 sin(36 deg)/(2 pi), 6.5 %; chords of 3 degrees round the wrist and 15 degrees round a loop, under a hundredth of the loops, which also run aside.
        var spokes = Fineness.Fine.Spokes / 3;
        var polygon = spokes * Math.Sin(2 * Math.PI / spokes) / (2 * Math.PI);
        Assert.InRange(scene.Wire.VolumeMm3 / (meant * polygon), 0.995, 1.005);
    }

    [Fact]
    public void The_form_is_as_far_round_as_the_wrist_and_leaves_the_beads_alone()
    {
        var scene = CoilScene.Of(Sample, CoilPose.Worn);
        var form = scene.Form!;
        Near.Equal(Sample.WristMm, 2 * Math.PI * form.Places.Max(p => Math.Sqrt(p.X * p.X + p.Z * p.Z)), 1e-9);
        Assert.True(form.VolumeMm3 > 0);
        Assert.Null(CoilScene.Of(Sample, CoilPose.AtRest).Form);
    }

    [Fact]
    public void Stones_of_a_rough_kind_follow_each_other_and_even_kinds_have_one_mesh()
    {
        var scene = CoilScene.Of(Sample, CoilPose.Worn);
        Assert.Equal([1, 1, BeadMesher.Stones], scene.Kinds.Select(k => k.Meshes.Length));
        Assert.Equal(Enumerable.Range(0, 30).Select(i => i % BeadMesher.Stones), scene.Beads.Where(b => b.Kind == 2).Select(b => b.Mesh));
    }

    [Theory]
    [InlineData("matt", 0.5, 1)]
    [InlineData("AB, frosted", 0.5, 1)]
    [InlineData("silver plated", 0, 0.4)]
    [InlineData(null, 0, 0.4)]
    public void What_a_coating_says_of_its_shine_is_heeded(string? coating, double from, double to)
    {
        var bead = SamplePieces.Bead("ball", "round", 6, with: d => d with { Coating = coating });
        Assert.InRange(SurfaceFinish.Of(bead).Roughness, from, to);
        Assert.Equal(coating == "silver plated", SurfaceFinish.Of(bead).IsMetal);
    }
}
