using Coilwright.Core.Beads;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace Coilwright.Core.Tests.Fit;

public class BenchCorrectionTests
{
    private const double RulerMm = 0.5;

    // A tube made for the coil takes its own length on it whatever its neighbours: the row then answers to it millimetre for millimetre.
    private static Bead Tube(string id, double from, double to) => SamplePieces.Bead(id, "curved-tube", (from + to) / 2, 4,
        with: d => d with { Length = new BeadLength.Range(from, to), Matched = true });

    private static Bead Chip(double from, double to) =>
        SamplePieces.Bead("chip", "chip", 5, 6, 5, with: d => d with { Length = new BeadLength.Range(from, to) });

    private static readonly Bead Round8 = SamplePieces.Bead("round", "round", 8);

    private static Piece Strung(Bead[] beads, IEnumerable<int> kinds, params MeasuredRow[] rows) =>
        SamplePieces.Piece([.. beads], kinds) with { MeasuredRows = [.. rows] };

    private static double RowMm(Piece piece, BenchCorrected bench, MeasuredRow row) =>
        new CurveShares(bench.Kinds, piece.Order, bench.Factors).AtRadius(piece.Wire.RelaxedRadiusMm)
            .Skip(row.FirstBead - 1).Take(row.LastBead - row.FirstBead + 1).Sum();

    [Fact]
    public void A_measured_row_comes_out_exactly() =>
        Gen.Select(Gen.Int[0, 2].Array[6, 40], Gen.Double[-0.2, 0.2], Gen.Int[1, 6], Gen.Int[1, 40]).Sample((kinds, off, first, length) =>
        {
            var beads = new[] { Chip(3, 7), Round8, Tube("tube", 9, 13) };
            var last = Math.Min(kinds.Length, first + length - 1);
            if (first > kinds.Length) return;
            var unmeasured = Strung(beads, kinds);
            var total = (1 + off) * new CurveShares(unmeasured.Beads, unmeasured.Order).AtRadius(unmeasured.Wire.RelaxedRadiusMm).Skip(first - 1).Take(last - first + 1).Sum();
            var row = new MeasuredRow(first, last, total);
            var piece = Strung(beads, kinds, row);
            Near.Equal(total, RowMm(piece, BenchCorrection.Of(piece, RulerMm), row), 1e-9 * total); // rounding
        }, iter: 300);

    [Fact]
    public void Without_rows_nothing_is_corrected()
    {
        var piece = Strung([Round8], [0, 0, 0]);
        var bench = BenchCorrection.Of(piece, RulerMm);
        Assert.Equal(piece.Beads, bench.Kinds);
        Assert.Null(bench.Factors);
        Assert.Empty(bench.Differences);
    }

    [Fact]
    public void A_kind_without_doubt_is_not_moved_and_only_the_measured_beads_are_overruled()
    {
        var row = new MeasuredRow(1, 10, 84);
        var piece = Strung([Round8], Enumerable.Repeat(0, 40), row);
        var bench = BenchCorrection.Of(piece, RulerMm);
        Assert.Equal(8, bench.Kinds[0].LengthMm);
        var before = new CurveShares(piece.Beads, piece.Order).AtRadius(30);
        var after = new CurveShares(bench.Kinds, piece.Order, bench.Factors).AtRadius(30);
        Assert.Equal(before.Skip(10), after.Skip(10));
        Assert.All(before.Zip(after).Take(10), x => Near.Equal(bench.Factors![0], x.Second / x.First, 1e-12));
        Near.Equal(84 / bench.Differences[0].ReckonedMm, bench.Factors![0], 1e-12);
    }

    [Fact]
    public void What_a_row_teaches_of_a_lot_serves_its_beads_further_on()
    {
        // Forty chips said to be 3 to 7 mm measure 6.2 mm each over the first thirty: the last ten are 6.2 mm too, nearly.
        var row = new MeasuredRow(1, 30, 30 * 6.2);
        var piece = Strung([Chip(3, 7)], Enumerable.Repeat(0, 40), row);
        var bench = BenchCorrection.Of(piece, RulerMm);
        var shares = new CurveShares(bench.Kinds, piece.Order, bench.Factors).AtRadius(piece.Wire.RelaxedRadiusMm);
        // The row leaves 1 part in n + 1 of doubt where the lot is half as unsure as a bead: n_eff = n/4; 1/(1 + 30/4) of 1.2 mm is 0.14.
        Near.Equal(6.2, shares.Skip(31).Take(8).Average(), 0.15);
        Near.Equal(6.2, shares.Take(30).Average(), 1e-9);
    }

    [Fact]
    public void Two_kinds_share_a_difference_by_how_unsure_they_are()
    {
        // Ten of each, one lot twice as unsure as the other: it takes four times as much a bead.
        var row = new MeasuredRow(1, 20, 218);
        var piece = Strung([Tube("a", 8, 12), Tube("b", 9, 11)], Enumerable.Range(0, 20).Select(i => i % 2), row);
        var bench = BenchCorrection.Of(piece, RulerMm);
        Near.Equal(4, (bench.Kinds[0].LengthMm - 10) / (bench.Kinds[1].LengthMm - 10), 1e-6); // rounding of the trial step
        Assert.True(bench.Kinds[1].LengthMm > 10);
    }

    // Second way: all rows at once. With prior means mu_k of variance beta_k^2 and rows y_r = sum h_rk m_k + error of variance s_r^2, the means that
    // lie nearest solve (diag(1/beta^2) + H' diag(1/s^2) H) (m - mu) = H' diag(1/s^2) (y - H mu); the inverse holds what stays in doubt.
    [Fact]
    public void Rows_one_after_another_teach_what_least_squares_over_all_of_them_teaches() =>
        Gen.Select(Gen.Select(Gen.Double[4, 9], Gen.Double[0.2, 3]).Array[2, 4], Gen.Int[0, 3].Array[12, 60], Gen.Int[1, 8].Array[1, 5], Gen.Double[-0.08, 0.08].Array[5])
            .Sample((lots, picks, cuts, off) =>
            {
                var beads = lots.Select((l, i) => Tube($"k{i}", l.Item1, l.Item1 + l.Item2)).ToArray();
                var order = picks.Select(p => p % beads.Length).ToArray();
                var rows = new List<MeasuredRow>();
                for (int r = 0, at = 1; r < cuts.Length && at + cuts[r] - 1 <= order.Length; at += cuts[r++])
                    rows.Add(new MeasuredRow(at, at + cuts[r] - 1, (1 + off[r]) * Enumerable.Range(at - 1, cuts[r]).Sum(i => beads[order[i]].LengthMm)));
                if (rows.Count == 0) return;
                var bench = BenchCorrection.Of(Strung(beads, order, [.. rows]), RulerMm);

                var h = Matrix<double>.Build.Dense(rows.Count, beads.Length, (r, k) =>
                    Enumerable.Range(rows[r].FirstBead - 1, rows[r].LastBead - rows[r].FirstBead + 1).Count(i => order[i] == k));
                var precision = Matrix<double>.Build.DenseDiagonal(rows.Count, rows.Count, r =>
                    1 / (RulerMm * RulerMm + beads.Select((b, k) => h[r, k] * b.BeadSdMm * b.BeadSdMm).Sum()));
                var prior = Matrix<double>.Build.DenseDiagonal(beads.Length, beads.Length, k => 1 / (beads[k].LotMeanSdMm * beads[k].LotMeanSdMm));
                var mu = Vector<double>.Build.Dense(beads.Length, k => beads[k].LengthMm);
                var y = Vector<double>.Build.Dense(rows.Count, r => rows[r].TotalMm);
                var normal = prior + h.Transpose() * precision * h;
                var moved = normal.Solve(h.Transpose() * precision * (y - h * mu));
                var doubt = normal.Inverse();
                for (var k = 0; k < beads.Length; k++)
                {
                    // Two neighbours' contact is found to about 1e-8 mm, over a trial step of 0.1 mm: the row's answer is known to 1e-7, the rest follows.
                    Near.Equal(mu[k] + moved[k], bench.Kinds[k].LengthMm, 1e-6);
                    Near.Equal(Math.Sqrt(doubt[k, k]), bench.Kinds[k].LotMeanSdMm, 1e-6);
                }
            }, iter: 200);

    [Fact]
    public void Where_beads_hinge_a_row_is_learnt_at_the_rate_at_which_it_answers()
    {
        // Discs 5 mm long and 8 mm thick take 5.75 mm of wire each on this coil and answer 1.15 mm for a millimetre. Taken for one, the lot would be
        // moved too far, and the measured beads would have to be scaled back.
        var disc = SamplePieces.Bead("disc", "rondelle", 5, 8, with: d => d with { Length = new BeadLength.Range(4, 6), EndFaceMm = 8 });
        var plain = Strung([disc], Enumerable.Repeat(0, 60));
        var reckoned = new CurveShares(plain.Beads, plain.Order).AtRadius(plain.Wire.RelaxedRadiusMm).Take(50).Sum();
        var bench = BenchCorrection.Of(Strung([disc], Enumerable.Repeat(0, 60), new MeasuredRow(1, 50, reckoned + 25)), RulerMm);
        // Half a millimetre a bead over 50: the row is taken over but for the part that 50 beads' own spread may be to blame for, 1/(1 + 50/4).
        var taken = (bench.Kinds[0].LengthMm - 5) * 1.15 / 0.5;
        Near.Equal(1 - 1 / (1 + 50.0 / 4), taken, 0.02); // the rate is printed to three digits, and the ruler has its own small part
        Assert.InRange(bench.Factors![0], 1, 1.01);
    }

    [Fact]
    public void Of_rows_that_overlap_the_later_one_has_the_last_word_and_others_stand()
    {
        MeasuredRow first = new(1, 12, 100), second = new(9, 20, 94), third = new(25, 30, 50);
        var piece = Strung([Round8], Enumerable.Repeat(0, 40), first, second, third);
        var bench = BenchCorrection.Of(piece, RulerMm);
        Near.Equal(94, RowMm(piece, bench, second), 1e-9);
        Near.Equal(50, RowMm(piece, bench, third), 1e-9);
        Assert.NotEqual(100, RowMm(piece, bench, first), 3);
    }

    [Fact]
    public void A_row_leaves_the_lot_less_in_doubt_and_never_more()
    {
        var chip = Chip(3, 7);
        var bench = BenchCorrection.Of(Strung([chip, Round8], Enumerable.Range(0, 60).Select(i => i % 2), new MeasuredRow(1, 40, 262)), RulerMm);
        Assert.InRange(bench.Kinds[0].LotMeanSdMm, 0.01, chip.LotMeanSdMm * 0.6);
        Assert.Equal(0, bench.Kinds[1].LotMeanSdMm);
        Assert.Equal(chip.BeadSdMm, bench.Kinds[0].BeadSdMm);
    }

    [Fact]
    public void The_outline_of_a_seated_focal_learns_nothing_from_its_seat()
    {
        var focal = SamplePieces.Bead("star", "focal", 26, 14, 8, role: Role.Focal,
            with: d => d with { HoleOffsetMm = 2, Seat = new Seat(9, 2.5), Length = new BeadLength.Range(24, 28) });
        var bench = BenchCorrection.Of(Strung([Chip(3, 7), focal], [0, 0, 0, 0, 1, 0, 0, 0, 0], new MeasuredRow(1, 9, 60)), RulerMm);
        Assert.Equal(26, bench.Kinds[1].LengthMm);
        Assert.True(bench.Kinds[0].LengthMm > 5);
    }

    [Fact]
    public void The_whole_reckoning_uses_what_was_measured()
    {
        var kinds = Enumerable.Repeat(0, 100).ToArray();
        var piece = Strung([Chip(3, 7)], kinds, new MeasuredRow(1, 100, 610));
        var reckoned = Reckoning.Of(piece, SamplePieces.Data);
        Near.Equal(610, reckoned.RelaxedBeadedMm, 1e-9);
        Near.Equal(100 * reckoned.Piece.Beads[0].LengthMm, reckoned.RuledMm, 1e-9);
        Assert.InRange(reckoned.Worn.AveragingMm, 4, Reckoning.Of(Strung([Chip(3, 7)], kinds), SamplePieces.Data).Worn.AveragingMm * 0.95);
    }
}
