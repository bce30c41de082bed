using Coilwright.Core.Beads;
using Coilwright.Core.Geometry;
using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;
using Coilwright.Core.Settle.Contacts;
using Coilwright.Core.Settle.Loads;

namespace Coilwright.Core.Tests.Settle;

/// <summary>Whole pieces: what comes of them.</summary>
public class SettlingTests
{
    private static Settled Of(Piece piece, SettleRequest request) => Settling.Of(piece, SamplePieces.Choices, request, TestContext.Current.CancellationToken);

    // Balls of 8 mm on a loop of 188.5 mm: the quick model's own check beads.
    private static Piece Balls(int count = 48, double massOfOne = 0.67) =>
        SamplePieces.Piece([SamplePieces.Bead("round", "round", 8, with: d => d with { MassG = massOfOne })], Enumerable.Repeat(0, count));

    private static Piece WithFocal(Func<BeadDescription, BeadDescription>? with = null) => SamplePieces.Piece(
        [SamplePieces.Bead("rondelle", "rondelle", 5, 8), SamplePieces.Bead("stone", "focal", 20, 25, 8, role: Role.Focal, with: d => (with ?? (x => x))(d with { HoleOffsetMm = 2.5 }))],
        Enumerable.Range(0, 41).Select(i => i == 20 ? 1 : 0));

    // A coil that is larger than it needs to be lies at its own size, turn on turn; balls of neighbouring turns stand in each other's gaps, no nearer than three that touch:
    // a turn rises by between sqrt(3)/2 and 1 of a ball (plane geometry). Tolerance: no wire is longer or shorter than the coil's but for its rise.
    [Fact]
    public void A_coil_at_rest_has_its_own_size_and_its_turns_touch()
    {
        var settled = Of(Balls(72), new SettleRequest(140));
        Assert.Equal(SettleOutcome.Settled, settled.Outcome);
        var rest = settled.Relaxed!.Value;
        Near.Equal(188.5, rest.CircumferenceMm, 0.3);
        Assert.InRange(rest.PitchMm, 8 * Math.Sqrt(3) / 2 - 1e-2, 8 + 1e-2);
        Near.Equal(188.5 - Math.PI * 8, rest.InsideMm, 0.3);
    }

    // A round wrist that is larger than the coil leaves free, all of the wire as far off it as the beads are thick: C = wrist + 2 pi e, e = 4. Near its ends the wire stands off a little.
    [Fact]
    public void A_round_wrist_opens_the_coil_to_its_own_size_and_its_beads() => Near.Equal(175 + 2 * Math.PI * 4, Of(Balls(72), new SettleRequest(175) { Aspect = 1 }).Worn!.Value.CircumferenceMm, 0.3);

    // What pulls down is what is held up (I. Newton): all pushes of the wrist, each straight off it, and what holds the coil against turning and sliding make up the weight of beads and wire.
    // Tolerance: pushes below a thousandth of a newton are not told, here at most a dozen; a chord's middle differs from its bead's by nothing.
    [Theory]
    [InlineData(ArmPose.TopUp)]
    [InlineData(ArmPose.UndersideUp)]
    [InlineData(ArmPose.OnItsSide)]
    [InlineData(ArmPose.Hanging)]
    public void What_holds_it_up_is_what_it_weighs(ArmPose pose)
    {
        var request = new SettleRequest(150) { Pose = pose, Taper = 0.05 };
        var settled = Of(Balls(massOfOne: 2), request);
        Assert.Equal(SettleOutcome.Settled, settled.Outcome);
        Assert.InRange(settled.ResidualN, 0, 1e-6);
        Assert.Equal(0, settled.WorstOverlapMm);
        var wrist = new WristSection(request.WristMm, request.Aspect, request.Taper);
        Point3 sum = default;
        Span<double> second = stackalloc double[6];
        foreach (var push in settled.Pushes.Where(p => p.Kind == PushKind.Wrist))
        {
            wrist.Distance(settled.Beads[push.First].Place, out var away, second);
            sum += push.ForceN * away;
        }
        // Held where its middle is, which is half of an edge's length from the bead that is told: the angle between is small.
        var held = settled.Beads[settled.Beads.Length / 2].Place;
        var radius = Math.Sqrt(held.X * held.X + held.Z * held.Z);
        sum -= settled.Held.TurningNmm / radius * new Point3(held.Z, 0, -held.X).Unit + settled.Held.SlidingN * new Point3(0, 1, 0);
        var mass = 48 * 2 + Math.PI / 4 * 0.62 * 0.62 * 7.916e-3 * settled.Lie!.BeadedMm;
        var weight = mass * WeightTerm.NPerG * SettleRequest.Down(pose);
        Near.Equal(0, (sum + weight).Length, 0.02 * weight.Length, $"{sum} holds {weight}");
    }

    [Fact]
    public void The_same_piece_gives_the_same_bits()
    {
        var (one, other) = (Of(WithFocal(), new SettleRequest(165)), Of(WithFocal(), new SettleRequest(165)));
        Assert.Equal(one.Beads.AsSpan(), other.Beads.AsSpan());
        Assert.Equal(one.Pushes.AsSpan(), other.Pushes.AsSpan());
        Assert.Equal(one.FocalStands.AsSpan(), other.FocalStands.AsSpan());
        Assert.Equal(one.ResidualN, other.ResidualN);
    }

    // A stone whose weight stands off the wire on a wire that it can roll about goes down on the side that is down: with the arm on its one side and on its other it stands mirrored ways from
    // level, and it tips further the heavier it is.
    [Fact]
    public void A_focal_tips_to_where_down_is()
    {
        var settled = Of(WithFocal(), new SettleRequest(165));
        Assert.All(settled.FocalStands, s => Assert.True(s.Rests, $"{s}"));
        double Tips(ArmPose pose) => settled.FocalStands.Single(s => s.Pose == pose).TipsDeg;
        // The way down the arm is along crossed with outwards: hanging, the stone's weight turns it that way.
        Assert.True(Tips(ArmPose.Hanging) < Tips(ArmPose.HeldUp), $"{Tips(ArmPose.Hanging)} {Tips(ArmPose.HeldUp)}");
        Assert.Equal(20, settled.Focal);
    }

    [Fact]
    public void Nothing_overlaps_and_every_bead_is_off_the_wrist()
    {
        var settled = Of(WithFocal(), new SettleRequest(165));
        Assert.Equal(SettleOutcome.Settled, settled.Outcome);
        Assert.Equal(0, settled.WorstOverlapMm);
        Assert.All(settled.Beads, b => Assert.True(b.OffWristMm > 0));
        Assert.All(settled.Gaps, g => Assert.True(g.GapMm > 0));
        Assert.NotEmpty(settled.Pushes);
        Assert.Contains(settled.Beads, b => b.OffWristMm < Settling.TouchMm);
    }

    [Fact]
    public void The_settled_lie_has_the_turns_that_were_found_and_the_held_bead_at_its_place()
    {
        var settled = Of(WithFocal(), new SettleRequest(165));
        Near.Equal(settled.Worn!.Value.Turns, settled.Lie!.Turns, 1e-9);
        Near.Equal(0, Math.IEEERemainder(settled.Lie.AngleDegAt(settled.Lie.BeadMiddleMm(20)) - settled.Beads[20].AngleDeg, 360), 1e-9);
    }

    [Fact]
    public void What_cannot_be_settled_says_why()
    {
        var piece = Balls();
        Assert.Equal(SettleReason.SteelUnknown, Of(piece with { Wire = piece.Wire with { Steel = null } }, new SettleRequest(165)).Reason);
        Assert.Equal(SettleReason.TooFewBeads, Of(Balls(2), new SettleRequest(165)).Reason);
        Assert.Equal(SettleReason.FallsOff, Of(Balls(8), new SettleRequest(165)).Reason);
        Assert.Equal(SettleReason.BeadsTooLong, Of(SamplePieces.Piece([SamplePieces.Bead("tube", "tube", 60, 4, 4)], Enumerable.Repeat(0, 4)), new SettleRequest(165)).Reason);
        Assert.All(new[] { Of(Balls(2), new SettleRequest(165)), Of(Balls(8), new SettleRequest(165)) }, s => Assert.Equal(SettleOutcome.DidNotSettle, s.Outcome));
    }

    // A coil of 48 mm radius on a wrist of 10, and one that the wrist opens to less than a turn: nothing rubs, so nothing keeps them on.
    [Fact]
    public void What_nothing_keeps_on_falls_off()
    {
        var wheel = SamplePieces.Bead("rondelle", "rondelle", 5, 8);
        Assert.Equal(SettleReason.FallsOff, Of(SamplePieces.Piece([wheel], Enumerable.Repeat(0, 40), loopMm: 100), new SettleRequest(200)).Reason);
        Assert.Equal(SettleReason.FallsOff, Of(SamplePieces.Piece([wheel], Enumerable.Repeat(0, 100), loopMm: 300), new SettleRequest(60)).Reason);
    }

    // A stone of 120 g on a wire of 0.3 mm: it hangs where it falls, or falls off, and either is said; all that is told is a number.
    [Fact]
    public void A_heavy_focal_on_thin_wire_has_an_outcome()
    {
        var piece = WithFocal(d => d with { MassG = 120 });
        var settled = Of(piece with { Wire = piece.Wire with { WireMm = 0.3 } }, new SettleRequest(150));
        Assert.True(settled.Worn is not null || settled.Reason is not null);
        Assert.NotEqual(SettleOutcome.CannotClose, settled.Outcome);
        Assert.All(settled.Beads, b => Assert.True(double.IsFinite(b.Place.Length) && double.IsFinite(b.Outwards.Length)));
        Assert.True(double.IsFinite(settled.StressMPa) && double.IsFinite(settled.WristN));
    }

    [Theory]
    [InlineData(49.9, 0.75, 0)]
    [InlineData(400.1, 0.75, 0)]
    [InlineData(double.NaN, 0.75, 0)]
    [InlineData(165, 0.2, 0)]
    [InlineData(165, 1.1, 0)]
    [InlineData(165, 0.75, 0.6)]
    [InlineData(165, 0.75, double.NaN)]
    public void A_wrist_that_is_none_is_refused(double wrist, double aspect, double taper) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(Balls(), new SettleRequest(wrist) { Aspect = aspect, Taper = taper }));

    // Wheels of 64 mm on a coil of 60 mm reach beyond its middle.
    [Fact]
    public void Beads_thicker_than_the_coil_cannot_close()
    {
        var settled = Of(SamplePieces.Piece([SamplePieces.Bead("wheel", "rondelle", 1.5, 64)], Enumerable.Repeat(0, 15)), new SettleRequest(60) { Aspect = 1 });
        Assert.Equal(SettleOutcome.CannotClose, settled.Outcome);
        Assert.Equal(SettleReason.BeadsTooThick, settled.Reason);
        Assert.Empty(settled.Beads);
    }

    // Round wire of 0.62 mm opened from a radius of 30 mm to one of 80: E d/2 (1/30 - 1/80) = 1250 MPa, and a strength of 1000.
    [Fact]
    public void A_wrist_beyond_the_wires_strength_is_told()
    {
        var piece = Balls(72);
        piece = piece with { Wire = piece.Wire with { Steel = SamplePieces.Stainless with { Strengths = [new(0.5, 0.7, 1000, null)] } } };
        Assert.Equal(SettleOutcome.WristBeyondYield, Of(piece, new SettleRequest(400)).Outcome);
        Assert.Equal(SettleOutcome.Settled, Of(piece, new SettleRequest(150)).Outcome);
    }

    [Fact]
    public void It_can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => Settling.Of(Balls(), SamplePieces.Choices, new SettleRequest(165), stop.Token));
    }
}
