using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Lies;
using Coilwright.Core.Measures;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Spread;

/// <summary>How a piece may come out, over the spread of its beads and of the worn circumference. Model: docs/theory/spread.md.</summary>
internal sealed class SpreadModel(Piece piece, ReckoningChoices choices, WornTurnModel turns, LiningUpModel liningUp)
{
    /// <summary>Bands hold nine draws in ten.</summary>
    private const double Low = 0.05, High = 0.95;

    /// <summary>Draws the piece over and over and tells the bands.</summary>
    /// <param name="lie">The lie of mean lengths.</param>
    /// <param name="worn">The worn turn.</param>
    /// <param name="wire">The wire.</param>
    /// <param name="focal">Index of the focal, or null.</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <param name="cancel">Stops it.</param>
    public SpreadReport Of(Lie lie, WornTurn worn, WireReport wire, int? focal, ulong seed, CancellationToken cancel)
    {
        var draws = new LengthDraws(piece.Beads, piece.Order.Kinds, lie.SharesMm, seed);
        var count = choices.SpreadDraws;
        var length = new double[count];
        var angle = new double[count];
        var cover = new double?[count];
        var relative = new double?[count];
        var fits = new bool[count];
        SharedWork.Run(count, (from, to) =>
        {
            var drawn = liningUp.DrawnFrom(lie, worn.PitchMm);
            for (var k = from; k < to; k++)
            {
                cancel.ThrowIfCancellationRequested();
                length[k] = draws.Draw((ulong)k, drawn.Shares, drawn.EndsMm);
                // The circumference is drawn over its band on a stream of its own, so that the beads' draws keep their numbers.
                var c = worn.CircumferenceMm + worn.BandMm * new SeededDraws(~seed, (ulong)k).Signed(0);
                var turn = turns.WirePerTurnMm(c);
                fits[k] = Fits(length[k], lie.WirePerTurnMm, wire, lie.BeadedMm);
                // Told as one band about the mean lie's angle, so that it does not break at the underside.
                if (focal is { } f)
                    angle[k] = lie.AngleDeg(f) + Angles.NormalizedDeg(lie.StartAngleDeg + 360 * (drawn.EndsMm[f] - drawn.Shares[f] / 2) / turn - lie.AngleDeg(f));
                (cover[k], relative[k]) = drawn.At(turn);
            }
        }, cancel);
        var asked = piece.Wishes.Turns is not null || piece.Ends.OverlapMm is not null || piece.Wire.CutMm is not null;
        return new SpreadReport(count, draws.LengthSdMm, Band(length)!.Value, asked ? (double)fits.Count(f => f) / count : null, Band(cover), Band(relative),
            focal is null ? null : Band(angle));
    }

    /// <summary>Whether a draw comes out as she wants it on this wrist: wire enough, turns as designed, ends meeting as wanted.</summary>
    // The wrist's own band is left out on purpose: over four turns it moves the ends further than any bead can, and would drown what the beads do.
    private bool Fits(double beadedMm, double wirePerTurnMm, WireReport wire, double meanBeadedMm)
    {
        if (wire.SlackMm is { } slack && beadedMm - meanBeadedMm > slack) return false;
        var drawnTurns = beadedMm / wirePerTurnMm;
        if (piece.Wishes.Turns is { } designed && designed - drawnTurns >= choices.FewerTurnsFrom) return false;
        if (piece.Ends.OverlapMm is not { } wanted) return true;
        var whole = Math.Max(1, Math.Round(piece.Wishes.Turns ?? drawnTurns, MidpointRounding.AwayFromZero));
        return Math.Abs(beadedMm - whole * wirePerTurnMm - wanted) <= choices.OverlapToleranceMm;
    }

    /// <summary>The 5th to the 95th percentile by linear interpolation (Hyndman and Fan 1996, type 7); null when there are none.</summary>
    internal static SpreadBand? Band(IEnumerable<double?> values) => Band([.. values.OfType<double>()]);

    /// <summary>The 95th percentile, likewise.</summary>
    /// <param name="values">The values, at least one; they are sorted.</param>
    internal static double NineteenInTwenty(double[] values) => Band(values)!.Value.To;

    private static SpreadBand? Band(double[] sorted)
    {
        if (sorted.Length == 0) return null;
        Array.Sort(sorted);
        return new SpreadBand(At(Low), At(High));

        double At(double share)
        {
            var place = share * (sorted.Length - 1);
            var i = Math.Min((int)place, sorted.Length - 2);
            return sorted.Length == 1 ? sorted[0] : sorted[i] + (place - i) * (sorted[i + 1] - sorted[i]);
        }
    }
}
