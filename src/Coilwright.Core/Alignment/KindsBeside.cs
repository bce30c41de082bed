using System.Collections.Immutable;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Alignment;

/// <summary>Which kinds of bead lie beside each other, along the wire and on neighbouring turns.</summary>
/// <remarks>Exactly at T. What a focal hides does not count across turns, as nowhere in lining up: docs/theory/lining-up.md.</remarks>
public sealed class KindsBeside
{
    private readonly int[,] _places;
    private readonly double[,] _overMm;

    private KindsBeside(int kinds) => (_places, _overMm) = (new int[kinds, kinds], new double[kinds, kinds]);

    /// <summary>Looks at every bead's neighbours.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="lie">Where its beads lie.</param>
    /// <param name="pitchMm">From turn to turn, mm.</param>
    public static KindsBeside Of(Piece piece, Lie lie, double pitchMm)
    {
        var beside = new KindsBeside(piece.Beads.Length);
        ImmutableArray<int> order = piece.Order.Kinds;
        for (var i = 1; i < order.Length; i++)
        {
            beside._places[order[i - 1], order[i]]++;
            if (order[i - 1] != order[i]) beside._places[order[i], order[i - 1]]++;
        }
        var hidden = new List<(double, double)>();
        new FocalHiding(piece.Beads, lie.RadiusMm).Find(order.AsSpan(), lie.SharesMm.AsSpan(), lie.WirePerTurnMm, pitchMm, hidden);
        var row = new VisibleRow(lie.Count);
        row.Lay(lie.SharesMm.AsSpan(), order.AsSpan(), hidden);
        row.EachOverAt(lie.WirePerTurnMm, (i, j, shared) =>
        {
            beside._overMm[row.Tag[i], row.Tag[j]] += shared;
            if (row.Tag[i] != row.Tag[j]) beside._overMm[row.Tag[j], row.Tag[i]] += shared;
        });
        return beside;
    }

    /// <summary>How often one stands next to the other along the wire, either way round.</summary>
    public int Places(int one, int other) => _places[one, other];

    /// <summary>How much of one lies over or under the other on the next turn, mm of wire.</summary>
    public double OverMm(int one, int other) => _overMm[one, other];
}
