using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Editing;

/// <summary>What an edit comes to.</summary>
public abstract record EditOutcome
{
    private EditOutcome() { }

    /// <summary>It was done.</summary>
    /// <param name="Piece">The piece afterwards; the one before is as it was.</param>
    /// <param name="Edit">The edit as it can be kept: with places on the wire where a part of the text was named.</param>
    public sealed record Done(Piece Piece, PieceEdit Edit) : EditOutcome
    {
        /// <summary>Beads to look at now, by their places in the new order, ascending: those that came or changed, else what stands where the first one
        /// went. Empty when the order did not change.</summary>
        public ImmutableSortedSet<int> Beads { get; init; } = [];

        /// <summary>What could not be kept beside it and she should know of: a measured row whose beads are others now.</summary>
        public ImmutableArray<Fault> Told { get; init; } = [];
    }

    /// <summary>It cannot be done; nothing was changed.</summary>
    /// <param name="Why">Why, at least one reason.</param>
    public sealed record Refused(ImmutableArray<Fault> Why) : EditOutcome;
}
