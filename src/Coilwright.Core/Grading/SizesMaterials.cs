using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Costing;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Grading;

/// <summary>One kind of bead over all sizes.</summary>
/// <param name="Bead">The kind.</param>
/// <param name="KindIndex">Its index in the piece's list of beads.</param>
/// <param name="Uses">How many go into each size, in their order.</param>
/// <param name="ForOneOfEach">What one of each size takes, and the packs to buy for it.</param>
public sealed record SizesLine(Bead Bead, int KindIndex, ImmutableArray<int> Uses, MaterialLine ForOneOfEach)
{
    /// <summary>The most that any size takes: with so many to hand she can string whichever is asked for.</summary>
    public int Most => Uses.Max();
}

/// <summary>Beads by size, the most of any size, and the sum for one of each.</summary>
/// <param name="Lines">The kinds that any size uses, in the order the piece lists them.</param>
/// <param name="Beads">Beads of each size.</param>
/// <param name="CutMm">Wire to cut for each size, mm.</param>
public sealed record SizesMaterials(ImmutableArray<SizesLine> Lines, ImmutableArray<int> Beads, ImmutableArray<double> CutMm)
{
    /// <summary>Combines sizes of one design: the same kinds of bead, in the same order.</summary>
    public static SizesMaterials Of(ImmutableArray<Piece> sizes, ImmutableArray<WireReport> wires)
    {
        if (sizes.IsEmpty) return new SizesMaterials([], [], []);
        var lines = ImmutableArray.CreateBuilder<SizesLine>();
        for (var kind = 0; kind < sizes[0].Beads.Length; kind++)
        {
            var uses = sizes.Select(s => s.Order.Kinds.Count(k => k == kind)).ToImmutableArray();
            if (uses.Sum() > 0) lines.Add(new SizesLine(sizes[0].Beads[kind], kind, uses, MaterialsList.LineOf(kind, sizes[0].Beads[kind], uses.Sum())));
        }
        return new SizesMaterials(lines.ToImmutable(), [.. sizes.Select(s => s.Order.Count)], [.. wires.Select(w => w.CutMm)]);
    }
}
