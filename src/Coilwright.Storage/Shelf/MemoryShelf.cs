using System.Collections.Concurrent;
using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Shelf;

/// <summary>A shelf that lasts as long as the program runs.</summary>
public sealed class MemoryShelf(TimeProvider clock) : IPieceShelf
{
    private readonly ConcurrentDictionary<Guid, (ShelvedPiece Piece, DateTimeOffset ChangedAt)> _pieces = new();

    /// <inheritdoc/>
    public Task<ImmutableArray<ShelfLine>> ListAsync(CancellationToken cancel = default) => Task.FromResult(_pieces.Values
        .OrderByDescending(p => p.ChangedAt)
        .Select(p => new ShelfLine(p.Piece.Id, p.Piece.Piece.Title, p.Piece.Revision, p.ChangedAt))
        .ToImmutableArray());

    /// <inheritdoc/>
    public Task<ShelvedPiece?> OpenAsync(Guid id, CancellationToken cancel = default) =>
        Task.FromResult(_pieces.TryGetValue(id, out var found) ? found.Piece : null);

    /// <inheritdoc/>
    public Task<ShelvedPiece> AddAsync(Piece piece, CancellationToken cancel = default)
    {
        var shelved = new ShelvedPiece(Guid.CreateVersion7(clock.GetUtcNow()), 1, piece);
        _pieces[shelved.Id] = (shelved, clock.GetUtcNow());
        return Task.FromResult(shelved);
    }
}
