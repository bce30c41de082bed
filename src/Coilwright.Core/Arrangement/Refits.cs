using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Arrangement;

/// <summary>The same order worn otherwise: its start elsewhere round the wrist, or on another coil. It costs no bead.</summary>
/// <param name="Edit">The edit that comes to it.</param>
/// <param name="After">The piece afterwards.</param>
/// <param name="TurnedDeg">By how far its start moves, degrees, positive the way the beads run; 0 on another coil.</param>
internal sealed record Refit(PieceEdit Edit, Piece After, double TurnedDeg);

/// <summary>The other ways to wear a piece that its wishes leave free: few enough to judge every one.</summary>
internal static class Refits
{
    /// <summary>Its start at every other place of the grid, from the first to the last. None where the piece is turned so that its focal is on top.</summary>
    public static ImmutableArray<Refit> Starts(Piece piece)
    {
        if (piece.Wishes.Free.StartAngle is not { } range || piece.Wearer.FocalOnTop) return [];
        return [.. range.Places.Select(deg => (Deg: deg, By: Angles.NormalizedDeg(deg - piece.Wearer.StartAngleDeg))).Where(place => Math.Abs(place.By) > 1e-9).Select(place =>
        {
            var wearer = piece.Wearer with { StartAngleDeg = place.Deg };
            return new Refit(new SetWearer(wearer), piece with { Wearer = wearer }, place.By);
        })];
    }

    /// <summary>Every other coil. Wire that is cut is of the piece's own, so another is cut anew.</summary>
    public static ImmutableArray<Refit> Coils(Piece piece)
    {
        if (piece.Wishes.Free.Coils.IsDefaultOrEmpty) return [];
        return [.. piece.Wishes.Free.Coils.Select(coil => piece.Wire with { Datum = coil.Datum, SizeMm = coil.SizeMm, CutMm = null })
            .Where(wire => Math.Abs(wire.LoopMm - piece.Wire.LoopMm) > 1e-9).Select(wire => new Refit(new SetWire(wire), piece with { Wire = wire }, 0))];
    }
}
