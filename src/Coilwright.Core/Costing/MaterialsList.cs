using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Costing;

/// <summary>One kind of bead to use and to buy.</summary>
/// <param name="KindIndex">Index of the kind in the piece's list of beads.</param>
/// <param name="Bead">The kind.</param>
/// <param name="Use">How many go in the piece.</param>
/// <param name="Packs">How many packs must be bought to have them, with none at home; null when the bead says nothing of packs.</param>
/// <param name="Bought">Beads in those packs; null likewise.</param>
/// <param name="Cost">What those packs cost; null when the pack or its price is unknown. One currency, the piece's own.</param>
public sealed record MaterialLine(int KindIndex, Bead Bead, int Use, int? Packs, int? Bought, decimal? Cost)
{
    /// <summary>Beads left over of what was bought; null when packs are unknown.</summary>
    public int? Left => Bought - Use;
}

/// <summary>What goes into a piece and what must be bought for it: whole packs, with nothing at home.</summary>
/// <remarks>Use and buy quantities are different things. Stock at home, broken beads and the best way to buy are not counted here. A price is of one
/// unit of sale; the wire has none in a piece's file, so its cost is not in it.</remarks>
/// <param name="Lines">The kinds that are used, in the order the piece lists them.</param>
public sealed record MaterialsList(ImmutableArray<MaterialLine> Lines)
{
    /// <summary>Beads in the piece.</summary>
    public int Beads => Lines.Sum(l => l.Use);

    /// <summary>What all packs cost whose cost is known; null when none is.</summary>
    public decimal? KnownCost => Lines.Any(l => l.Cost is not null) ? Lines.Sum(l => l.Cost ?? 0) : null;

    /// <summary>How many kinds have no known cost.</summary>
    public int Unpriced => Lines.Count(l => l.Cost is null);

    /// <summary>The list of a piece.</summary>
    public static MaterialsList Of(Piece piece)
    {
        var uses = new int[piece.Beads.Length];
        foreach (var kind in piece.Order.Kinds) uses[kind]++;
        return new MaterialsList([.. uses.Select((use, kind) => (use, kind)).Where(u => u.use > 0).Select(u => LineOf(u.kind, piece.Beads[u.kind], u.use))]);
    }

    /// <summary>What so many beads of a kind take in packs.</summary>
    internal static MaterialLine LineOf(int kind, Bead bead, int use)
    {
        if (bead.Description.Pack is not { } pack) return new MaterialLine(kind, bead, use, null, null, null);
        var packs = (use - 1) / pack.Beads + 1;
        // A pack may be absurdly large; what is bought is then told as no more than can be counted.
        var bought = (int)Math.Min((long)packs * pack.Beads, int.MaxValue);
        return new MaterialLine(kind, bead, use, packs, bought, packs * bead.Description.Price);
    }
}
