using Coilwright.Core.Fit;
using Coilwright.Core.Lies;
using Coilwright.Core.Measures;
using Coilwright.Core.Stringing;
using Coilwright.Core.Tests.Alignment;
using CsCheck;

namespace Coilwright.Core.Tests.Lies;

public class LieGuardTests
{
    private static readonly Gen<Lie> Lies = Gen.Select(Gen.Double[0.5, 30].Array[1, 120], Gen.Double[40, 400], Gen.Double[-180, 180])
        .Select((shares, turn, start) => new Lie([.. shares], turn, turn / (2 * Math.PI), start));

    [Fact]
    public void Shares_tile_the_wire() => Lies.Sample(lie =>
    {
        Assert.Equal(0, lie.StartsMm[0]);
        for (var i = 0; i + 1 < lie.Count; i++) Assert.Equal(lie.StartsMm[i + 1], lie.StartsMm[i] + lie.SharesMm[i]);
        Assert.Equal(lie.BeadedMm, lie.StartsMm[^1] + lie.SharesMm[^1]);
        Assert.Equal(lie.BeadedMm / lie.WirePerTurnMm, lie.Turns);
    });

    // angle = start + 360 s_mid / T in (-180, 180], turn = 1 + floor(s_mid / T).
    [Fact]
    public void Turn_and_angle_are_those_of_the_beads_middle() => Lies.Sample(lie =>
    {
        for (var i = 0; i < lie.Count; i++)
        {
            var middle = lie.SharesMm.Take(i).Sum() + lie.SharesMm[i] / 2;
            var turns = middle / lie.WirePerTurnMm;
            // At the very seam of two turns rounding decides.
            if (Math.Abs(turns - Math.Round(turns)) > 1e-9) Assert.Equal(1 + (int)Math.Floor(turns), lie.Turn(i));
            Assert.True(lie.AngleDeg(i) is > -180 and <= 180);
            // The same direction: a whole number of turns apart, but for rounding.
            Near.Equal(0, Math.IEEERemainder(lie.StartAngleDeg + 360 * turns - lie.AngleDeg(i), 360), 1e-8);
        }
    }, iter: 300);

    [Fact]
    public void An_angle_told_again_within_half_a_turn_either_way_is_the_same_direction() => Gen.Double[-1e6, 1e6].Sample(deg =>
    {
        var turned = Angles.NormalizedDeg(deg);
        Assert.True(turned is > -180 and <= 180);
        Near.Equal(0, Math.IEEERemainder(deg - turned, 360), 1e-9 * Math.Max(1, Math.Abs(deg))); // rounding
    });

    [Theory]
    [InlineData(180, 180)]
    [InlineData(-180, 180)]
    [InlineData(540, 180)]
    [InlineData(360, 0)]
    [InlineData(-190, 170)]
    public void The_underside_is_told_as_plus_180(double deg, double told) => Assert.Equal(told, Angles.NormalizedDeg(deg));

    [Fact]
    public void Turning_the_piece_round_the_wrist_turns_every_angle_alike_and_moves_no_bead() => Gen.Select(Lies, Gen.Double[-720, 720]).Sample((lie, by) =>
    {
        var turned = lie.StartingAt(lie.StartAngleDeg + by);
        Assert.Equal(lie.StartsMm, turned.StartsMm);
        for (var i = 0; i < lie.Count; i++)
        {
            Assert.Equal(lie.Turn(i), turned.Turn(i));
            Near.Equal(0, Math.IEEERemainder(turned.AngleDeg(i) - lie.AngleDeg(i) - by, 360), 1e-8); // rounding
        }
    }, iter: 300);

    [Fact]
    public void A_turn_of_no_wire_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new Lie([8], 0, 30, 180));

    private static readonly Gen<int[]> Orders = Gen.Int[0, LatticePieces.Kinds.Length - 1].Array[1, 40];

    private static CurveShares Shares(IEnumerable<int> order) => new(LatticePieces.Kinds, new StringingOrder([.. order], []));

    [Fact]
    public void A_row_strung_the_other_way_round_has_its_shares_the_other_way_round() => Gen.Select(Orders, Gen.Double[25, 60]).Sample((order, radius) =>
    {
        var there = Shares(order).AtRadius(radius);
        var back = Shares(order.Reverse()).AtRadius(radius);
        for (var i = 0; i < order.Length; i++) Near.Equal(there[i], back[order.Length - 1 - i], 1e-9); // rounding
    }, iter: 200);

    // Of kinds that are none of them so small that their neighbours could meet over their heads, nor reach over them.
    [Fact]
    public void A_bead_more_at_the_end_changes_only_the_share_of_the_one_before_it() =>
        Gen.Select(Gen.OneOf(Gen.Int[0, 2], Gen.Int[4, 5]).Array[1, 40], Gen.Int[0, 2], Gen.Double[25, 60]).Sample((order, more, radius) =>
        {
            var shorter = Shares(order).AtRadius(radius);
            var longer = Shares([.. order, more]).AtRadius(radius);
            Assert.Equal(shorter.Take(order.Length - 1), longer.Take(order.Length - 1));
        }, iter: 200);

    [Fact]
    public void Everything_twice_as_large_takes_twice_the_wire() => Gen.Select(Gen.Int[0, 3].Array[1, 30], Gen.Double[25, 60]).Sample((order, radius) =>
    {
        var once = new CurveShares(Scaled(1), new StringingOrder([.. order], [])).AtRadius(radius);
        var twice = new CurveShares(Scaled(2), new StringingOrder([.. order], [])).AtRadius(2 * radius);
        for (var i = 0; i < order.Length; i++) Near.Equal(2 * once[i], twice[i], 1e-7); // the contact is found to about 1e-8 mm

        static System.Collections.Immutable.ImmutableArray<Core.Beads.Bead> Scaled(double by) =>
        [
            SamplePieces.Bead("ball", "round", 8 * by), SamplePieces.Bead("disc", "heishi", 1.2 * by, 4 * by),
            SamplePieces.Bead("tube", "tube", 12 * by, 4 * by), SamplePieces.Bead("cone", "bicone", 6 * by, 6 * by),
        ];
    }, iter: 200);

    // Reference: worked in the design of the model. Flat beads 5 by 8 mm at R 30: 5.7515 mm each, printed to four decimals. phi = 2 atan(a / (2R - t)).
    [Fact]
    public void Flat_beads_take_the_wire_that_their_hinge_takes()
    {
        var flat = SamplePieces.Bead("flat", "tube", 5, 8);
        var shares = new CurveShares([flat], new StringingOrder([.. Enumerable.Repeat(0, 10)], [])).AtRadius(30);
        Assert.All(shares, s => Near.Equal(5.7515, s, 0.00005));
        Near.Equal(32.77, 2 * Math.PI * 30 / shares[4], 0.005);
    }

    [Fact]
    public void A_lone_bead_takes_its_own_two_halves()
    {
        var share = Shares([0]).AtRadius(30)[0];
        Near.Equal(2 * 30 * Math.Asin(4.0 / 30), share, 1e-9);
        // A ball beside its like takes as much as a ball alone: both touch on the line between them.
        Near.Equal(share, Shares([0, 0]).AtRadius(30)[0], 1e-9);
    }

    [Fact]
    public void A_coil_too_small_for_its_beads_is_answered_with_finite_shares() => Gen.Select(Orders, Gen.Double[0.1, 10]).Sample((order, radius) =>
        Assert.All(Shares(order).AtRadius(radius), s => Assert.True(s is > 0 and < 1000)), iter: 200);
}
