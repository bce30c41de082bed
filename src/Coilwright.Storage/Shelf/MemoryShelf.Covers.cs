namespace Coilwright.Storage.Shelf;

public sealed partial class MemoryShelf : ICovers
{
    private readonly Dictionary<Guid, Cover> _covers = [];

    /// <inheritdoc/>
    public Task<Cover?> CoverAsync(Guid piece, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_covers.GetValueOrDefault(piece));
    }

    /// <inheritdoc/>
    public Task<CoverAnswer> KeepCoverAsync(Guid piece, Photo photo, bool isStill, CancellationToken cancel = default)
    {
        if (CoverRules.Of(photo) is { Length: > 0 } faults) return Task.FromResult<CoverAnswer>(new CoverAnswer.NotKept(faults));
        // The caller may go on using its buffer.
        var kept = photo with { Bytes = PhotoCleaning.Of(photo.Bytes).ToArray() };
        lock (_gate)
            return Task.FromResult<CoverAnswer>(!_lives.ContainsKey(piece) ? new CoverAnswer.Missing()
                : new CoverAnswer.Kept(_covers[piece] = new Cover(Guid.CreateVersion7(clock.GetUtcNow()), kept, isStill)));
    }

    /// <inheritdoc/>
    public Task<CoverAnswer> TakeCoverOffAsync(Guid piece, CancellationToken cancel = default)
    {
        lock (_gate)
        {
            _covers.Remove(piece);
            return Task.FromResult<CoverAnswer>(_lives.ContainsKey(piece) ? new CoverAnswer.Kept(null) : new CoverAnswer.Missing());
        }
    }
}
