using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Shelf;

/// <summary>A piece as it lies on the shelf: its newest state, and which one that is.</summary>
/// <param name="Id">The shelf's own name for it; never shown.</param>
/// <param name="Revision">Which state this is: 1 when it was put there, one more with every accepted change.</param>
/// <param name="Piece">The piece.</param>
public sealed record ShelvedPiece(Guid Id, long Revision, Piece Piece);

/// <summary>A line in the list of pieces.</summary>
/// <param name="Id">The shelf's own name for it.</param>
/// <param name="Title">Its title.</param>
/// <param name="Revision">Its newest state.</param>
/// <param name="ChangedAt">When that was made.</param>
public sealed record ShelfLine(Guid Id, string Title, long Revision, DateTimeOffset ChangedAt);

/// <summary>Where a maker's pieces are kept.</summary>
/// <remarks>Many may ask at once. What is answered is kept: a piece that was put on the shelf is there after a crash, where the shelf says that it
/// outlives the program at all.</remarks>
public interface IPieceShelf
{
    /// <summary>All pieces, the last changed first.</summary>
    Task<ImmutableArray<ShelfLine>> ListAsync(CancellationToken cancel = default);

    /// <summary>A piece in its newest state; null when there is none of this name.</summary>
    Task<ShelvedPiece?> OpenAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Puts a new piece on the shelf.</summary>
    Task<ShelvedPiece> AddAsync(Piece piece, CancellationToken cancel = default);
}
