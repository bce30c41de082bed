using Coilwright.Core.Fit;
using Coilwright.Core.Lies;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Fit;

public class BeadMiddlesTests
{
    private static readonly Gen<int[]> Orders = Gen.Int[0, 3].Array[1, 40];

    private static CurveShares Shares(int[] kinds, double[]? bench = null) => new(
        [
            SamplePieces.Bead("round", "round", 8), SamplePieces.Bead("disc", "heishi", 2, 7), SamplePieces.Bead("tube", "tube", 14, 3),
            SamplePieces.Bead("bicone", "bicone", 4),
        ], new StringingOrder([.. kinds], []), bench);

    // Two neighbours part the wire between their middles evenly, so each boundary of shares lies half way between two middles, a second way to the same
    // places. Tolerance: rounding of a sum of 40 lengths of about 10 mm.
    [Fact]
    public void Neighbours_part_the_wire_between_their_middles_evenly() => Orders.Sample(kinds =>
    {
        var shares = Shares(kinds);
        var lie = new Lie(shares.AtRadius(30), 190, 30, 180).WithBeadMiddles(shares.MiddlesAtRadius(30));
        for (var i = 1; i < lie.Count; i++)
            if (Math.Abs(lie.StartsMm[i] - (lie.BeadMiddleMm(i - 1) + lie.BeadMiddleMm(i)) / 2) > 1e-10) return false;
        return lie.BeadMiddleMm(0) > 0 && lie.BeadMiddleMm(lie.Count - 1) < lie.BeadedMm;
    });

    // The same piece strung from the other end stands the same, mirrored. Tolerance as above.
    [Fact]
    public void Strung_from_the_other_end_every_bead_stands_as_far_from_that_end() => Orders.Sample(kinds =>
    {
        var there = Shares(kinds);
        var back = Shares([.. kinds.Reverse()]);
        var wire = there.AtRadius(28).Sum();
        var mirrored = back.MiddlesAtRadius(28).Reverse().Select(m => wire - m);
        return there.MiddlesAtRadius(28).Zip(mirrored).All(p => Math.Abs(p.First - p.Second) < 1e-10);
    });

    [Fact]
    public void A_measured_row_moves_the_beads_with_their_shares()
    {
        var plain = Shares([0, 2, 1, 0]);
        var measured = Shares([0, 2, 1, 0], [1.1, 1.1, 1.1, 1.1]);
        Assert.All(plain.MiddlesAtRadius(30).Zip(measured.MiddlesAtRadius(30)), p => Assert.Equal(p.First * 1.1, p.Second, 1e-10));
    }

    [Fact]
    public void A_disc_between_a_tube_and_a_ball_stands_nearer_to_the_ball()
    {
        var shares = Shares([2, 1, 0]);
        var lie = new Lie(shares.AtRadius(30), 190, 30, 180).WithBeadMiddles(shares.MiddlesAtRadius(30));
        Assert.True(lie.BeadMiddleMm(1) > lie.MiddleMm(1));
    }
}
