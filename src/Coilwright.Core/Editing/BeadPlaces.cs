using System.Collections.Immutable;

namespace Coilwright.Core.Editing;

/// <summary>Which beads of an order are meant. Places count from 0 at the starting end.</summary>
public abstract record BeadPlaces
{
    private BeadPlaces() { }

    /// <summary>Neighbouring beads.</summary>
    /// <param name="First">The first.</param>
    /// <param name="Count">How many, 1 or more.</param>
    public sealed record Row(int First, int Count) : BeadPlaces;

    /// <summary>Beads here and there.</summary>
    /// <param name="Beads">Their places, at least one.</param>
    public sealed record Each(ImmutableSortedSet<int> Beads) : BeadPlaces;

    /// <summary>What a part of the order's text strings: an item, a group, a bracket. Means every stringing of it, as with
    /// <see cref="OrderEdit.EveryPass"/>.</summary>
    /// <param name="Node">Id of the part in the piece's own tree (<see cref="Pieces.Piece.Written"/>); good until that tree is read anew from text.</param>
    public sealed record Part(int Node) : BeadPlaces;

    /// <summary>One bead.</summary>
    public static BeadPlaces One(int bead) => new Row(bead, 1);
}
