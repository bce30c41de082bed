using Coilwright.Core.Alignment;
using Coilwright.Core.Lies;
using CsCheck;

namespace Coilwright.Core.Tests.Alignment;

/// <summary>Lining up of two kinds of equal balls, each taking the same share of the wire, is counting in sequences of signs.</summary>
/// <remarks>At a turn of k balls, bead i lies on bead i + k. With a +-1 sequence of aperiodic autocorrelation A(k), of the n - k pairs
/// (n - k + A(k))/2 are alike: docs/theory/lining-up.md, section "Sequences".</remarks>
public class PublishedSequencesTests
{
    private const double BallMm = 8;

    private static LiningUpReport AtOffset(bool[] signs, int offset)
    {
        var kinds = LatticePieces.Kinds;
        var piece = SamplePieces.Piece(kinds, signs.Select(s => s ? 0 : 5));
        var lie = new Lie([.. signs.Select(_ => BallMm)], offset * BallMm, offset * BallMm / (2 * Math.PI), 180);
        // Short overlaps are judged too: the sequence is finite and its last offsets share one ball.
        return new LiningUpModel(piece, SamplePieces.Choices with { Shuffles = 1, LeastOverShare = 0 }).Measure(lie, 8, BallMm / 4, 1);
    }

    private static int Autocorrelation(bool[] signs, int offset) =>
        Enumerable.Range(0, signs.Length - offset).Sum(i => signs[i] == signs[i + offset] ? 1 : -1);

    // Reference: all known Barker codes up to negation and reversal, as listed in Wikipedia, "Barker code" (read in a copy), and in the
    // documentation of a public communications library up to negation. R. H. Barker 1953 (from memory).
    [Theory]
    [InlineData("++")]
    [InlineData("+-")]
    [InlineData("++-")]
    [InlineData("+-++")]
    [InlineData("+---")]
    [InlineData("+++-+")]
    [InlineData("+++--+-")]
    [InlineData("+++---+--+-")]
    [InlineData("+++++--++-+-+")]
    public void Barker_codes_line_up_as_near_to_a_half_as_can_be(string code)
    {
        var signs = code.Select(c => c == '+').ToArray();
        for (var k = 1; k < signs.Length; k++)
        {
            var left = signs.Length - k;
            var a = Autocorrelation(signs, k);
            Assert.InRange(a, -1, 1);
            var report = AtOffset(signs, k);
            Near.Equal(left * BallMm, report.OverMm, 1e-9, code); // rounding
            Near.Equal((left + a) / (2.0 * left), report.StrictShare!.Value, 1e-12, (code, k)); // rounding
            Assert.InRange(report.StrictShare!.Value, 0.5 - 0.5 / left - 1e-12, 0.5 + 0.5 / left + 1e-12);
        }
    }

    [Fact]
    public void Any_sequence_of_signs_lines_up_by_its_autocorrelation() =>
        Gen.Int[0, 1].Select(bit => bit == 1).Array[2, 40].Sample(signs =>
        {
            for (var k = 1; k < signs.Length; k++)
                Near.Equal((signs.Length - k + Autocorrelation(signs, k)) / (2.0 * (signs.Length - k)), AtOffset(signs, k).StrictShare!.Value, 1e-12, k);
        }, iter: 40);

    // Reference: Golomb rulers, problem 006 of CSPLib (csplib/csplib, Problems/prob006/specification.md): all differences of two marks are distinct.
    // The rulers are optimal ones of order 4 to 8 as listed in OEIS (A079423 for order 8) and other public lists; that they are the shortest
    // is not used here, that their differences are distinct is checked before they are.
    [Theory]
    [InlineData(0, 1, 4, 6)]
    [InlineData(0, 1, 4, 9, 11)]
    [InlineData(0, 1, 4, 10, 12, 17)]
    [InlineData(0, 1, 4, 10, 18, 23, 25)]
    [InlineData(0, 1, 4, 9, 15, 22, 32, 34)]
    public void Beads_on_the_marks_of_a_Golomb_ruler_meet_their_own_kind_once_at_most(params int[] marks)
    {
        var differences = marks.SelectMany(a => marks.Where(b => b > a).Select(b => b - a)).ToArray();
        Assert.Equal(differences.Length, differences.Distinct().Count());
        var signs = Enumerable.Range(0, marks[^1] + 1).Select(marks.Contains).ToArray();
        for (var k = 1; k < signs.Length; k++)
        {
            var own = AtOffset(signs, k).Kinds.Single(x => x.BeadId == "ball").OverOwnMm;
            Near.Equal(differences.Contains(k) ? BallMm : 0, own, 1e-9, (marks.Length, k)); // rounding
        }
    }
}
