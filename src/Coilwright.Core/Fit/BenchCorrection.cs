using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Fit;

/// <summary>What a measured row said beside what the beads' lengths said.</summary>
/// <param name="Row">The row.</param>
/// <param name="ReckonedMm">What its beads were reckoned to take at rest before the correction, from the first one's outer end to the last one's, mm.</param>
public sealed record RowDifference(MeasuredRow Row, double ReckonedMm);

/// <summary>A piece corrected from the bench.</summary>
/// <param name="Kinds">The kinds of bead with the mean lengths that the rows taught, and what doubt of them is left.</param>
/// <param name="Factors">For each bead, what its share is scaled by so that each measured row has its measured length; null with no rows.</param>
/// <param name="Differences">Each row beside what was reckoned.</param>
public sealed record BenchCorrected(ImmutableArray<Bead> Kinds, double[]? Factors, ImmutableArray<RowDifference> Differences);

/// <summary>Corrects the beads' lengths from rows measured on the wire: measured rows overrule formulas, and what they teach serves the rest.</summary>
/// <remarks>
/// <para>A row is read along the coil at rest, from the outer end of its first bead to that of its last. Its difference to what was reckoned is laid on the lot means by how unsure they are: the linear
/// least-squares update, row after row, with what the rows leave in common doubt between kinds kept. How far the row answers to a kind's length
/// (a flat bead hinges, so a millimetre of it takes more than a millimetre of wire) is found by trying. What the means do not take stays with
/// the measured beads as a common factor, so that the row comes out at its measured length exactly.</para>
/// <para>Kinds with a length that is not in doubt are not moved; with none in doubt only the measured row itself is overruled. Rows that overlap:
/// the later one has the last word on its beads. Derived in docs/theory/bench-correction.md.</para>
/// </remarks>
public static class BenchCorrection
{
    /// <summary>Corrects a piece.</summary>
    /// <param name="piece">The piece, its rows sound.</param>
    /// <param name="readingSdMm">Standard deviation of one reading of the ruler, mm.</param>
    public static BenchCorrected Of(Piece piece, double readingSdMm)
    {
        if (piece.MeasuredRows.IsEmpty) return new BenchCorrected(piece.Beads, null, []);
        var kinds = piece.Beads.ToArray();
        var doubt = new double[kinds.Length, kinds.Length];
        // The wire that a seated focal takes is its seat's, which the lot's outline says nothing about.
        for (var k = 0; k < kinds.Length; k++) doubt[k, k] = kinds[k].Description.Seat is null ? kinds[k].LotMeanSdMm * kinds[k].LotMeanSdMm : 0;
        var differences = ImmutableArray.CreateBuilder<RowDifference>();
        foreach (var row in piece.MeasuredRows)
        {
            var strung = new StrungRow(piece, row);
            var reckoned = strung.LengthMm(kinds);
            differences.Add(new RowDifference(row, reckoned));
            Learn(kinds, doubt, strung, row.TotalMm - reckoned, readingSdMm);
        }
        for (var k = 0; k < kinds.Length; k++)
            if (kinds[k].Description.Seat is null) kinds[k] = kinds[k].WithLengthMm(kinds[k].LengthMm, Math.Sqrt(Math.Max(0, doubt[k, k])));
        var factors = new double[piece.Order.Count];
        Array.Fill(factors, 1);
        var shares = new CurveShares([.. kinds], piece.Order).AtRadius(piece.Wire.RelaxedRadiusMm);
        foreach (var row in piece.MeasuredRows)
        {
            var factor = row.TotalMm / shares[(row.FirstBead - 1)..row.LastBead].Sum();
            for (var i = row.FirstBead - 1; i < row.LastBead; i++) factors[i] = factor;
        }
        return new BenchCorrected([.. kinds], factors, differences.ToImmutable());
    }

    // One step of linear least squares: gain = P h / (h' P h + the row's own variance), means move by gain times difference, P loses gain (P h)'.
    private static void Learn(Bead[] kinds, double[,] doubt, StrungRow row, double differenceMm, double readingSdMm)
    {
        var n = kinds.Length;
        var answers = new double[n];
        var variance = readingSdMm * readingSdMm;
        for (var k = 0; k < n; k++)
        {
            if (row.Counts[k] == 0) continue;
            answers[k] = doubt[k, k] > 0 || kinds[k].BeadSdMm > 0 ? row.AnswersTo(kinds, k) : 0;
            // Each of n beads answers for an nth of that to its own length, and their variances add.
            variance += answers[k] * answers[k] / row.Counts[k] * kinds[k].BeadSdMm * kinds[k].BeadSdMm;
        }
        var shared = new double[n];
        for (var k = 0; k < n; k++)
            for (var l = 0; l < n; l++) shared[k] += doubt[k, l] * answers[l];
        for (var k = 0; k < n; k++) variance += answers[k] * shared[k];
        if (variance == 0) return;
        for (var k = 0; k < n; k++)
        {
            if (shared[k] == 0) continue;
            // A slip of the pen must not turn a length negative; rows far off are refused where they are read.
            kinds[k] = kinds[k].WithLengthMm(Math.Max(kinds[k].LengthMm / 2, kinds[k].LengthMm + shared[k] / variance * differenceMm));
            for (var l = 0; l < n; l++) doubt[k, l] -= shared[k] * shared[l] / variance;
        }
    }

    /// <summary>A measured row by itself: where it ends its own end beads' faces are, whatever stands beside them.</summary>
    private sealed class StrungRow
    {
        private readonly StringingOrder _order;
        private readonly double _radiusMm;

        public StrungRow(Piece piece, MeasuredRow row)
        {
            _order = new StringingOrder(piece.Order.Kinds[(row.FirstBead - 1)..row.LastBead], []);
            _radiusMm = piece.Wire.RelaxedRadiusMm;
            Counts = new int[piece.Beads.Length];
            foreach (var kind in _order.Kinds) Counts[kind]++;
        }

        /// <summary>Beads of each kind in the row.</summary>
        public int[] Counts { get; }

        /// <summary>Wire that the row takes at rest, mm.</summary>
        public double LengthMm(Bead[] kinds) => new CurveShares([.. kinds], _order).AtRadius(_radiusMm).Sum();

        /// <summary>Millimetres that the row grows for each millimetre of a kind's length.</summary>
        public double AnswersTo(Bead[] kinds, int kind)
        {
            // A hundredth of the bead: small against it, large against the last digits of the contact.
            var step = kinds[kind].LengthMm * 0.01;
            var (shorter, longer) = (kinds.ToArray(), kinds.ToArray());
            shorter[kind] = kinds[kind].WithLengthMm(kinds[kind].LengthMm - step);
            longer[kind] = kinds[kind].WithLengthMm(kinds[kind].LengthMm + step);
            return (LengthMm(longer) - LengthMm(shorter)) / (2 * step);
        }
    }
}
