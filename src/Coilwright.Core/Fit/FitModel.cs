using System.Collections.Immutable;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Fit;

/// <summary>How the piece sits: turns, how its ends meet, what the end beads hide. Model: docs/theory/fit.md.</summary>
public static class FitModel
{
    /// <summary>Judges it; whether it fits follows from the notices that stop it.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="lie">As worn.</param>
    /// <param name="narrow">At the narrow end of the band of C.</param>
    /// <param name="wide">At the wide end.</param>
    /// <param name="worn">The worn turn.</param>
    /// <param name="relaxedBeadedMm">Wire under the beads at rest, mm.</param>
    /// <param name="stops">Codes of the notices that stop it.</param>
    public static FitReport Of(Piece piece, Lie lie, Lie narrow, Lie wide, WornTurn worn, double relaxedBeadedMm, ImmutableArray<string> stops)
    {
        var designed = piece.Wishes.Turns;
        var turns = Math.Max(1, (int)Math.Round(designed ?? lie.Turns, MidpointRounding.AwayFromZero));
        var relaxedTurn = Math.Sqrt(piece.Wire.LoopMm * piece.Wire.LoopMm + worn.PitchMm * worn.PitchMm);
        return new FitReport(lie.Turns, wide.Turns, narrow.Turns, relaxedBeadedMm / relaxedTurn, designed, stops.IsEmpty, stops,
            lie.BeadedMm - turns * lie.WirePerTurnMm, turns, piece.Wire.LoopMm - 2 * Math.PI * worn.BearingReachMm,
            [Hidden(piece.Ends.Start, 0), Hidden(piece.Ends.Finish, piece.Order.Count - 1)]);

        bool? Hidden(Findings.WireEnd end, int bead)
        {
            if (end.OutsideMm(piece.Wire.WireMm) is not { } loop) return null;
            var kind = piece.Beads[piece.Order.Kinds[bead]];
            return Math.Min(kind.WidthMm, kind.ThicknessMm) >= loop;
        }
    }
}
