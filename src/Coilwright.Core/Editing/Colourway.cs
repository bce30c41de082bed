using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Editing;

/// <summary>A piece again in other colours: another piece of the same order.</summary>
public static class Colourway
{
    /// <summary>Whether a piece is another one again: it strings the same order, and lists its beads in the same order, so that place by place they stand for each other.</summary>
    /// <remarks>Colours may be alike, and sizes may differ: that is for its maker to judge.</remarks>
    public static bool Is(Piece other, Piece piece) => other.Beads.Length == piece.Beads.Length && other.Order.Kinds.SequenceEqual(piece.Order.Kinds);

    /// <summary>The piece with some kinds in other colours.</summary>
    /// <remarks>Sizes stay as they are described. What is of the very beads and wire in the maker's hand stays behind: the lots of the kinds that change
    /// colour, the rows that were measured with such beads, and the wire that was cut.</remarks>
    /// <param name="piece">The piece.</param>
    /// <param name="colours">New colours by the id of the kind; a kind that is not named, or whose colours are the same, stays as it is.</param>
    /// <exception cref="ArgumentException">The piece has no bead of such an id.</exception>
    public static Piece Of(Piece piece, ImmutableSortedDictionary<string, ImmutableArray<Srgb>> colours)
    {
        foreach (var id in colours.Keys)
            if (piece.Beads.All(b => b.Id != id))
                throw new ArgumentException($"No bead is called {id}.", nameof(colours));
        var changed = new HashSet<int>();
        var beads = piece.Beads.ToBuilder();
        for (var k = 0; k < beads.Count; k++)
        {
            if (!colours.TryGetValue(beads[k].Id, out var wanted) || wanted.SequenceEqual(beads[k].Colours)) continue;
            // Only its colour differs, so it is as sound as it was.
            Bead.TryMake(beads[k].Description with { Colours = wanted, Lot = null }, out var recoloured, out _);
            beads[k] = recoloured!;
            changed.Add(k);
        }
        return piece with
        {
            Beads = beads.ToImmutable(),
            Wire = piece.Wire with { CutMm = null },
            MeasuredRows = [.. piece.MeasuredRows.Where(row =>
                !Enumerable.Range(row.FirstBead - 1, row.LastBead - row.FirstBead + 1).Any(i => changed.Contains(piece.Order.Kinds[i])))],
        };
    }
}
