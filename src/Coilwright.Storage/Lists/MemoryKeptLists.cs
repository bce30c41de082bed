namespace Coilwright.Storage.Lists;

/// <summary>Lists that last as long as the program runs.</summary>
/// <param name="clock">The time.</param>
public sealed class MemoryKeptLists(TimeProvider clock) : IKeptLists
{
    private readonly Lock _gate = new();
    private readonly Dictionary<ListKind, KeptList> _lists = [];

    /// <inheritdoc/>
    public Task<KeptList?> ListAsync(ListKind kind, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_lists.GetValueOrDefault(kind));
    }

    /// <inheritdoc/>
    public Task<ListAnswer> KeepListAsync(ListKind kind, long seen, string content, CancellationToken cancel = default)
    {
        lock (_gate)
        {
            if (_lists.GetValueOrDefault(kind) is { } now && now.Revision != seen) return Task.FromResult<ListAnswer>(new ListAnswer.Behind(now));
            var kept = new KeptList(kind, seen + 1, content, clock.GetUtcNow());
            _lists[kind] = kept;
            return Task.FromResult<ListAnswer>(new ListAnswer.Kept(kept));
        }
    }
}
