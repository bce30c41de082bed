using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Geometry;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Scenes;
using Coilwright.Core.Settle;
using Coilwright.Core.Settle.Contacts;

namespace Coilwright.Core.Tests.Scenes;

/// <summary>A piece in space as it settled: the picture against the figures.</summary>
public class SettledSceneTests
{
    // Balls, whose skin is their body's; wheels and a stone on its flat back, whose bodies are balls within their skin.
    private static readonly Piece Balls = SamplePieces.Piece([SamplePieces.Bead("round", "round", 8, with: d => d with { MassG = 0.67 })], Enumerable.Repeat(0, 60));

    private static readonly Piece Wheels = SamplePieces.Piece(
        [SamplePieces.Bead("rondelle", "rondelle", 5, 8), SamplePieces.Bead("stone", "focal", 20, 25, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = 2.5 })],
        Enumerable.Range(0, 61).Select(i => i == 30 ? 1 : 0));

    private static readonly Lazy<CoilScene>[] Made = [.. new[] { Balls, Wheels }.Select(piece => new Lazy<CoilScene>(() => Of(piece, new SettleRequest(165) { Taper = 0.1 })))];

    // By how much a skin may stand out of its body: nothing for a ball, 7 % of its thickness on each side for the others (docs/theory/settle.md).
    private static readonly double[] SkinMm = [0, 0.07 * 8];

    private static CoilScene Of(Piece piece, SettleRequest request) =>
        CoilScene.Of(Reckoning.Of(piece, SamplePieces.Data, new ReckonRequest { WristMm = request.WristMm }), Settling.Of(piece, SamplePieces.Choices, request, TestContext.Current.CancellationToken));

    private static Settled SettledOf(CoilScene scene) => Settling.Of(scene.Reckoned.Piece, SamplePieces.Choices, new SettleRequest(165) { Taper = 0.1 }, TestContext.Current.CancellationToken);

    private static Point3[] InSpace(CoilScene scene, StandingBead b) =>
        [.. scene.Kinds[b.Kind].Meshes[b.Mesh].Places.Select(p => b.Place + b.Along * p.X + b.Outwards * p.Y + b.Along.Cross(b.Outwards) * p.Z)];

    public static TheoryData<int> Pieces => [0, 1];

    [Theory, MemberData(nameof(Pieces))]
    public void Beads_stand_where_they_settled_square_and_right_handed(int piece)
    {
        var scene = Made[piece].Value;
        var settled = SettledOf(scene);
        Assert.Equal(CoilPose.Settled, scene.Pose);
        Assert.Equal(settled.Beads.Select(b => (b.Index, b.Place, b.Along, b.Outwards)), scene.Beads.Select(b => (b.Index, b.Place, b.Along, b.Outwards)));
        foreach (var bead in scene.Beads)
        {
            Near.Equal(1, bead.Along.Length, 1e-9);
            Near.Equal(1, bead.Outwards.Length, 1e-9);
            Near.Equal(0, bead.Along.Dot(bead.Outwards), 1e-9);
            // Angles grow the way the beads run, and away from the arm is outwards; the third way is down the arm, as on the even coil.
            Assert.True(bead.Along.Dot(new Point3(bead.Place.Z, 0, -bead.Place.X)) > 0, $"{bead}");
            Assert.True(bead.Outwards.Dot(bead.Place with { Y = 0 }) > 0, $"{bead}");
            Assert.True(bead.Along.Cross(bead.Outwards).Y < 0, $"{bead}");
        }
    }

    // How deep two convex bodies are in one another is the least overlap of their shadows over all directions (separating axes); over those that are tried here it is not less. A rest without overlap by
    // its bodies' balls leaves skins overlapping no more than what they stand out by.
    [Theory, MemberData(nameof(Pieces))]
    public void Beads_of_two_turns_are_not_in_one_another(int piece)
    {
        var scene = Made[piece].Value;
        var allowed = SettledOf(scene).WorstOverlapMm + 2 * SkinMm[piece] + 1e-6;
        var skins = scene.Beads.Select(b => InSpace(scene, b)).ToArray();
        var turn = scene.Beads.Length / scene.Lie.Turns;
        var near = 0;
        for (var a = 0; a < skins.Length; a++)
            for (var b = a + (int)(turn / 2); b < skins.Length; b++)
            {
                var between = scene.Beads[b].Place - scene.Beads[a].Place;
                if (between.Length > 30) continue;
                near++;
                Point3[] ways = [between.Unit, new(0, -1, 0), scene.Beads[a].Along.Cross(scene.Beads[a].Outwards), scene.Beads[b].Along.Cross(scene.Beads[b].Outwards)];
                var least = ways.Append((Middle(skins[b]) - Middle(skins[a])).Unit).Min(way => skins[a].Max(p => p.Dot(way)) - skins[b].Min(p => p.Dot(way)));
                Assert.True(least <= allowed, $"Beads {a} and {b} are {least} mm in one another.");
            }
        Assert.True(near > 50, $"{near}");

        static Point3 Middle(Point3[] places) => places.Aggregate((a, b) => a + b) * (1.0 / places.Length);
    }

    [Theory, MemberData(nameof(Pieces))]
    public void No_bead_is_in_the_wrist(int piece)
    {
        var scene = Made[piece].Value;
        // Within a wrist that is smaller by what skins stand out by, and a hundredth for the rounding of its girth.
        var wrist = new WristSection(165 - 2 * Math.PI * (SkinMm[piece] + 0.01), SettleRequest.UsualAspect, 0.1);
        foreach (var bead in scene.Beads)
            Assert.All(InSpace(scene, bead), p => Assert.True(wrist.DistanceMm(p) > 0, $"Bead {bead.Index} at {p}"));
    }

    // The wire neither grows nor shrinks when it settles: what stretches it is ten thousand times what bends it. Corners of the tube and loops as on the even coil.
    [Theory, MemberData(nameof(Pieces))]
    public void The_wire_runs_through_every_bead_and_is_as_long_as_it_was_strung(int piece)
    {
        var scene = Made[piece].Value;
        var wire = scene.Reckoned.Piece.Wire.WireMm;
        var loops = new[] { scene.Reckoned.Piece.Ends.Start, scene.Reckoned.Piece.Ends.Finish }.Sum(e => e.Finish == EndFinish.TurnedLoop ? 0.94 * Math.PI * (e.InsideMm + wire) : e.InsideMm);
        var spokes = Math.Max(6, Fineness.For(scene.Beads.Length).Spokes / 3);
        var polygon = spokes * Math.Sin(2 * Math.PI / spokes) / (2 * Math.PI);
        Assert.InRange(scene.Wire.VolumeMm3 / (Math.PI / 4 * wire * wire * polygon * (scene.Lie.BeadedMm + loops)), 0.995, 1.005);
        // Rings of the tube stand 3 degrees apart, so that from a bead's middle a corner of the next one is no further than half of that along the wire and its thickness aside.
        var step = scene.Lie.RadiusMm * 3 * Math.PI / 180;
        foreach (var bead in scene.Beads)
            Assert.InRange(scene.Wire.Places.Min(p => (p - bead.Place).Length), 0.9 * wire / 2, Math.Sqrt(step * step / 4 + wire * wire / 4) + 0.02);
    }

    [Fact]
    public void The_form_is_the_oval_that_it_settled_on()
    {
        var form = Made[0].Value.Form!;
        var wrist = new SettleRequest(165) { Taper = 0.1 }.Wrist;
        Assert.True(form.VolumeMm3 > 0);
        var rim = form.Places.Zip(form.Normals).Where(p => Math.Abs(p.Second.Y) < 0.2).Select(p => p.First).ToArray();
        Assert.NotEmpty(rim);
        // Each on the section as large as it is there.
        Assert.All(rim, p => Near.Equal(1, Math.Pow(p.X / wrist.HalfWidthMm, 2) + Math.Pow(p.Z / wrist.HalfThicknessMm, 2) is var share ? Math.Sqrt(share) / wrist.ScaleAt(p.Y) : 0, 0.01));
        Near.Equal(wrist.HalfThicknessMm / wrist.HalfWidthMm, form.Places.Max(p => p.Z) / form.Places.Max(p => p.X), 1e-6);
    }

    [Fact]
    public void What_found_no_rest_is_not_shown()
    {
        var piece = Balls with { Wire = Balls.Wire with { Steel = null } };
        Assert.Throws<ArgumentException>(() => Of(piece, new SettleRequest(165)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CoilScene.Of(Made[0].Value.Reckoned, CoilPose.Settled));
    }
}
