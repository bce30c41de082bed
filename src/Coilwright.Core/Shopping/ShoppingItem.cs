using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Shopping;

/// <summary>So many of a piece, as a piece or as a kit for it.</summary>
/// <param name="Name">What it is called in lists.</param>
/// <param name="Piece">The piece.</param>
/// <param name="Count">How many, 1 or more.</param>
public sealed record ShoppingPiece(string Name, Piece Piece, int Count);

/// <summary>Something to have at hand for all pieces together: a bead, or what finishes the ends: caps, dangles.</summary>
/// <remarks>Beads of the same name in several pieces are one bead.</remarks>
/// <param name="Id">The bead's name; <see cref="GluedCap"/> for caps, <see cref="Dangle"/> for dangles.</param>
/// <param name="Bead">The bead as the first piece describes it; null for caps and dangles.</param>
/// <param name="Each">For each piece how many go into one of it.</param>
/// <param name="Use">How many go into all.</param>
/// <param name="Spare">How many are to be had beside them.</param>
/// <param name="Home">How many are at home and free.</param>
public sealed record ShoppingItem(string Id, Bead? Bead, ImmutableArray<int> Each, int Use, int Spare, int Home)
{
    /// <summary>By this name caps of glued ends are bought. No bead can be called so.</summary>
    public const string GluedCap = "ends.gluedCap";

    /// <summary>By this name dangles are bought, whatever hangs in which end. No bead can be called so.</summary>
    public const string Dangle = "ends.dangle";

    /// <summary>What is bought for each finish of an end that takes more than wire.</summary>
    public static ImmutableArray<(string Id, EndFinish Finish)> OfEnds { get; } = [(GluedCap, EndFinish.GluedCap), (Dangle, EndFinish.Dangle)];

    /// <summary>How many must be bought at least.</summary>
    public int Missing => Math.Max(0, Use + Spare - Home);

    /// <summary>Pieces, by index, whose description of the bead is another than the first one's in what a shop would ask: shape, material, colour, or a size by a tenth or more.</summary>
    public ImmutableArray<int> DescribedOtherwise { get; init; } = [];
}
