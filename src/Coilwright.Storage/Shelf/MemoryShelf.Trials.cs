using System.Collections.Immutable;

namespace Coilwright.Storage.Shelf;

public sealed partial class MemoryShelf : ITrialLog
{
    private readonly List<(Guid Piece, Trial Trial, Photo? Photo)> _trials = [];

    /// <inheritdoc/>
    public Task<ImmutableArray<Trial>> TrialsAsync(Guid piece, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_trials.Where(entry => entry.Piece == piece).Select(entry => entry.Trial).ToImmutableArray());
    }

    /// <inheritdoc/>
    public Task<TrialAnswer> AddTrialAsync(Guid piece, long revision, string tried, Photo? photo, CancellationToken cancel = default)
    {
        if (TrialRules.Of(tried, photo) is { Length: > 0 } faults) return Task.FromResult<TrialAnswer>(new TrialAnswer.NotKept(faults));
        lock (_gate)
        {
            if (_lives.GetValueOrDefault(piece)?.StateOf(revision) is null) return Task.FromResult<TrialAnswer>(new TrialAnswer.Missing());
            var now = clock.GetUtcNow();
            var trial = new Trial(Guid.CreateVersion7(now), revision, now, tried, null, photo is not null);
            // The caller may go on using its buffer.
            _trials.Add((piece, trial, photo is null ? null : photo with { Bytes = photo.Bytes.ToArray() }));
            return Task.FromResult<TrialAnswer>(new TrialAnswer.Kept(trial));
        }
    }

    /// <inheritdoc/>
    public Task<TrialAnswer> DropTrialAsync(Guid trial, string? because, CancellationToken cancel = default)
    {
        if (TrialRules.OfReason(because) is { Length: > 0 } faults) return Task.FromResult<TrialAnswer>(new TrialAnswer.NotKept(faults));
        return OnTrial(trial, at => (_trials[at] = (_trials[at].Piece, _trials[at].Trial with { DroppedBecause = because }, _trials[at].Photo)).Trial);
    }

    /// <inheritdoc/>
    public Task<TrialAnswer> RemoveTrialAsync(Guid trial, CancellationToken cancel = default) => OnTrial(trial, at =>
    {
        var removed = _trials[at].Trial;
        _trials.RemoveAt(at);
        return removed;
    });

    /// <inheritdoc/>
    public Task<Photo?> PhotoAsync(Guid trial, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_trials.Find(entry => entry.Trial.Id == trial).Photo);
    }

    private Task<TrialAnswer> OnTrial(Guid trial, Func<int, Trial> change)
    {
        lock (_gate)
        {
            var at = _trials.FindIndex(entry => entry.Trial.Id == trial);
            return Task.FromResult<TrialAnswer>(at < 0 ? new TrialAnswer.Missing() : new TrialAnswer.Kept(change(at)));
        }
    }
}
