using System.Collections.Immutable;
using Coilwright.Core.Made;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;

namespace Coilwright.Storage.Made;

/// <summary>A book that lasts as long as the program runs, beside the shelf and the stock that do.</summary>
/// <param name="shelf">The pieces.</param>
/// <param name="stock">The stock.</param>
/// <param name="data">What beads are read with.</param>
/// <param name="clock">The time.</param>
public sealed class MemoryMadeBook(MemoryShelf shelf, MemoryStockLedger stock, ReckoningData data, TimeProvider clock) : IMadeBook
{
    private readonly Lock _gate = new();
    private Rows _rows = new(shelf, clock);

    /// <inheritdoc/>
    public Task<ImmutableArray<MadeRecord>> ListAsync(CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult<ImmutableArray<MadeRecord>>([.. _rows.All().OrderBy(r => r.Number)]);
    }

    /// <inheritdoc/>
    public Task<MadeRecord?> OpenAsync(Guid made, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_rows.Record(made));
    }

    /// <inheritdoc/>
    public Task<MadeAnswer> WriteDownAsync(ImmutableArray<MadeStep> steps, CancellationToken cancel = default)
    {
        lock (_gate)
        {
            var rows = _rows.Copy();
            var answer = stock.Beside(drawers => MadeDesk.WriteDown(rows, drawers, steps, data), answer => answer is MadeAnswer.Kept);
            if (answer is MadeAnswer.Kept) _rows = rows;
            return Task.FromResult(answer);
        }
    }

    /// <summary>Rows that can be written to aside and taken over whole, or dropped.</summary>
    private sealed class Rows(MemoryShelf shelf, TimeProvider clock) : IMadeRows
    {
        private ImmutableDictionary<Guid, MadeRecord> _records = ImmutableDictionary<Guid, MadeRecord>.Empty;
        private ImmutableDictionary<Guid, MadeStep> _done = ImmutableDictionary<Guid, MadeStep>.Empty;

        public Rows Copy() => (Rows)MemberwiseClone();

        public IEnumerable<MadeRecord> All() => _records.Values;

        public MadeRecord? Record(Guid made) => _records.GetValueOrDefault(made);

        public MadeStep? Done(Guid step) => _done.GetValueOrDefault(step);

        public long LastNumber() => _records.Count;

        // Its tasks are done when they are given.
        public bool HasState(Guid piece, long revision) => shelf.OpenAsync(piece, revision).Result is not null;

        public void Add(MadeStep step, long? number)
        {
            _done = _done.Add(step.Id, step);
            var entry = new MadeEntry(_done.Count, clock.GetUtcNow(), step);
            _records = _records.SetItem(step.Made, number is { } first ? new MadeRecord(first, [entry]) : new MadeRecord(_records[step.Made].Number, _records[step.Made].Entries.Add(entry)));
        }

        public void Erase(Guid made)
        {
            var record = _records[made];
            _records = _records.SetItem(made, new MadeRecord(record.Number, [.. record.Entries.Select(e => e with { Step = e.Step with { Who = null, Note = null } })]));
            foreach (var entry in _records[made].Entries) _done = _done.SetItem(entry.Step.Id, entry.Step);
        }
    }
}
