using System.Runtime.InteropServices;
using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Lies;
using Coilwright.Core.Measures;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

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
        var angle = new List<double>(count);
        var cover = new List<double>(count);
        var relative = new List<double>(count);
        var fits = 0;
        for (var k = 0; k < count; k++)
        {
            cancel.ThrowIfCancellationRequested();
            var shares = new double[lie.Count];
            draws.Shares((ulong)k, shares);
            // The circumference is drawn over its band on a stream of its own, so that the beads' draws keep their numbers.
            var c = worn.CircumferenceMm + worn.BandMm * new SeededDraws(~seed, (ulong)k).Signed(0);
            var drawn = new Lie(ImmutableCollectionsMarshal.AsImmutableArray(shares), turns.WirePerTurnMm(c), c / (2 * Math.PI), lie.StartAngleDeg);
            length[k] = drawn.BeadedMm;
            if (Fits(drawn, wire, lie.BeadedMm)) fits++;
            if (focal is { } f)
                // Told as one band about the mean lie's angle, so that it does not break at the underside.
                angle.Add(lie.AngleDeg(f) + Angles.NormalizedDeg(drawn.AngleDeg(f) - lie.AngleDeg(f)));
            var glance = liningUp.GlanceExact(drawn, worn.PitchMm);
            if (glance.Cover is { } v) cover.Add(v);
            if (glance.Relative is { } r) relative.Add(r);
        }
        var asked = piece.Wishes.Turns is not null || piece.Ends.OverlapMm is not null || piece.Wire.CutMm is not null;
        return new SpreadReport(count, draws.LengthSdMm, Band(length)!.Value, asked ? (double)fits / count : null, Band(cover), Band(relative), Band(angle));
    }

    /// <summary>Whether a draw comes out as she wants it: wire enough, turns as designed, ends meeting as wanted.</summary>
    private bool Fits(Lie drawn, WireReport wire, double meanBeadedMm)
    {
        if (wire.SlackMm is { } slack && drawn.BeadedMm - meanBeadedMm > slack) return false;
        if (piece.Wishes.Turns is { } designed && designed - drawn.Turns >= choices.FewerTurnsFrom) return false;
        if (piece.Ends.OverlapMm is not { } wanted) return true;
        var whole = Math.Max(1, Math.Round(piece.Wishes.Turns ?? drawn.Turns, MidpointRounding.AwayFromZero));
        return Math.Abs(drawn.BeadedMm - whole * drawn.WirePerTurnMm - wanted) <= choices.OverlapToleranceMm;
    }

    /// <summary>The 5th to the 95th percentile by linear interpolation (Hyndman and Fan 1996, type 7); null when there are none.</summary>
    internal static SpreadBand? Band(IReadOnlyCollection<double> values)
    {
        if (values.Count == 0) return null;
        var sorted = values.ToArray();
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
