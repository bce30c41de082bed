using System.Collections.Immutable;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stock;

namespace Coilwright.Storage.Stock;

/// <summary>A ledger that lasts as long as the program runs.</summary>
/// <param name="data">What beads are read with.</param>
/// <param name="clock">The time.</param>
public sealed class MemoryStockLedger(ReckoningData data, TimeProvider clock) : IStockLedger
{
    private readonly Lock _gate = new();
    private Rows _rows = new(clock);

    /// <inheritdoc/>
    public Task<ImmutableArray<StockLine>> ListAsync(CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult<ImmutableArray<StockLine>>([.. _rows.Keys().Select(key => StockDesk.LineOf(_rows, key)!)]);
    }

    /// <inheritdoc/>
    public Task<StockLine?> OpenAsync(string key, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(StockDesk.LineOf(_rows, key));
    }

    /// <inheritdoc/>
    public Task<ImmutableArray<StockEntry>> HistoryAsync(string key, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_rows.Entries(key));
    }

    /// <inheritdoc/>
    public Task<ImmutableSortedDictionary<string, Quantity>> FreeAsync(CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_rows.Keys().ToImmutableSortedDictionary(key => key, key => StockBalance.Of(_rows.Entries(key)).Free, StringComparer.Ordinal));
    }

    /// <inheritdoc/>
    public Task<StockAnswer> BookAsync(StockChange change, CancellationToken cancel = default)
    {
        lock (_gate)
        {
            var rows = _rows.Copy();
            var answer = StockDesk.Book(rows, change, data);
            if (answer is StockAnswer.Kept) _rows = rows;
            return Task.FromResult(answer);
        }
    }

    /// <summary>Does something that also writes here, all of it or nothing.</summary>
    internal T Beside<T>(Func<IStockRows, T> write, Func<T, bool> isKept)
    {
        lock (_gate)
        {
            var rows = _rows.Copy();
            var answer = write(rows);
            if (isKept(answer)) _rows = rows;
            return answer;
        }
    }

    /// <summary>Rows that can be written to aside and taken over whole, or dropped.</summary>
    private sealed class Rows(TimeProvider clock) : IStockRows
    {
        private ImmutableSortedDictionary<string, (StockItem Item, long Revision)> _items = ImmutableSortedDictionary.Create<string, (StockItem, long)>(StringComparer.Ordinal);
        private ImmutableDictionary<string, ImmutableList<StockEntry>> _entries = ImmutableDictionary.Create<string, ImmutableList<StockEntry>>(StringComparer.Ordinal);
        private ImmutableDictionary<Guid, Movement> _done = ImmutableDictionary<Guid, Movement>.Empty;

        public Rows Copy() => (Rows)MemberwiseClone();

        public (StockItem Item, long Revision)? Item(string key) => _items.TryGetValue(key, out var found) ? found : null;

        public IEnumerable<string> Keys() => _items.Keys;

        public ImmutableArray<StockEntry> Entries(string key) => _entries.TryGetValue(key, out var entries) ? [.. entries] : [];

        public Movement? Done(Guid movement) => _done.GetValueOrDefault(movement);

        public void Put(StockItem item, long revision) => _items = _items.SetItem(item.Key, (item, revision));

        public void Add(Movement movement, ImmutableArray<LotChange> changes)
        {
            var before = _entries.GetValueOrDefault(movement.Item) ?? [];
            _done = _done.Add(movement.Id, movement);
            _entries = _entries.SetItem(movement.Item, before.Add(new StockEntry(_done.Count, clock.GetUtcNow(), movement, changes)));
        }
    }
}
