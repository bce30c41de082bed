using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Fit;

/// <summary>What a measured row said beside what the beads' lengths said.</summary>
/// <param name="Row">The row.</param>
/// <param name="ReckonedMm">What its beads were reckoned to take at rest before the correction, mm.</param>
public sealed record RowDifference(MeasuredRow Row, double ReckonedMm);

/// <summary>A piece corrected from the bench.</summary>
/// <param name="Kinds">The kinds of bead with the mean lengths that the rows taught.</param>
/// <param name="Factors">For each bead, what its share is scaled by so that each measured row has its measured length; null with no rows.</param>
/// <param name="Differences">Each row beside what was reckoned.</param>
public sealed record BenchCorrected(ImmutableArray<Bead> Kinds, double[]? Factors, ImmutableArray<RowDifference> Differences);

/// <summary>Corrects the beads' lengths from rows measured on the wire: measured rows overrule formulas, and what they teach serves the rest.</summary>
/// <remarks>
/// <para>A row is read along the coil at rest. Its difference to what was reckoned is laid on the kinds by how unsure their lot's mean is:
/// kind k takes <c>n_k beta_k^2 / (sum n^2 beta^2 + sum n sigma^2 + reading^2)</c> of it a bead (the linear least-squares update of the means). What
/// the means do not take stays with the measured beads as a common factor, so that the row comes out at its measured length exactly.</para>
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
        var lotVariances = kinds.Select(k => k.LotMeanSdMm * k.LotMeanSdMm).ToArray();
        var differences = ImmutableArray.CreateBuilder<RowDifference>();
        var counts = new int[kinds.Length];
        foreach (var row in piece.MeasuredRows)
        {
            var reckoned = RowMm(piece, [.. kinds], row);
            differences.Add(new RowDifference(row, reckoned));
            Array.Clear(counts);
            for (var i = row.FirstBead - 1; i < row.LastBead; i++) counts[piece.Order.Kinds[i]]++;
            var doubt = readingSdMm * readingSdMm;
            for (var k = 0; k < kinds.Length; k++)
                doubt += (double)counts[k] * counts[k] * lotVariances[k] + counts[k] * kinds[k].BeadSdMm * kinds[k].BeadSdMm;
            if (doubt == 0) continue;
            for (var k = 0; k < kinds.Length; k++)
            {
                var gain = counts[k] * lotVariances[k] / doubt;
                if (gain == 0) continue;
                // A slip of the pen must not turn a length negative; rows far off are refused where they are read.
                var length = Math.Max(kinds[k].LengthMm / 2, kinds[k].LengthMm + gain * (row.TotalMm - reckoned));
                lotVariances[k] *= 1 - gain * counts[k];
                kinds[k] = kinds[k].WithLengthMm(length);
            }
        }
        var factors = new double[piece.Order.Count];
        Array.Fill(factors, 1);
        var corrected = kinds.ToImmutableArray();
        foreach (var row in piece.MeasuredRows)
        {
            var factor = row.TotalMm / RowMm(piece, corrected, row);
            for (var i = row.FirstBead - 1; i < row.LastBead; i++) factors[i] = factor;
        }
        return new BenchCorrected(corrected, factors, differences.ToImmutable());
    }

    private static double RowMm(Piece piece, ImmutableArray<Bead> kinds, MeasuredRow row)
    {
        var shares = new CurveShares(kinds, piece.Order).AtRadius(piece.Wire.RelaxedRadiusMm);
        double sum = 0;
        for (var i = row.FirstBead - 1; i < row.LastBead; i++) sum += shares[i];
        return sum;
    }
}
