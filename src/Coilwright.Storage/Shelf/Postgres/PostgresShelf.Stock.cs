using System.Collections.Immutable;
using Coilwright.Core.Stock;
using Coilwright.Storage.Stock;

namespace Coilwright.Storage.Shelf.Postgres;

public sealed partial class PostgresShelf : IStockLedger
{
    // Whoever writes stock holds this until it is written: also an item that is new is then nobody else's, and numbers are in the order of time. "Beads"; chosen by us.
    private const long Drawers = 0x4265616473;

    /// <inheritdoc/>
    Task<ImmutableArray<StockLine>> IStockLedger.ListAsync(CancellationToken cancel) => ReadAsync(LinesAsync, cancel);

    /// <inheritdoc/>
    Task<StockLine?> IStockLedger.OpenAsync(string key, CancellationToken cancel) =>
        ReadAsync(async turn => StockDesk.LineOf(await LoadAsync(turn, [key], []), key), cancel);

    /// <inheritdoc/>
    Task<ImmutableArray<StockEntry>> IStockLedger.HistoryAsync(string key, CancellationToken cancel) =>
        ReadAsync(async turn => (await LoadAsync(turn, [key], [])).Entries(key), cancel);

    /// <inheritdoc/>
    Task<ImmutableSortedDictionary<string, Quantity>> IStockLedger.FreeAsync(CancellationToken cancel) => ReadAsync(async turn =>
        (await LinesAsync(turn)).ToImmutableSortedDictionary(l => l.Item.Key, l => l.Balance.Free, StringComparer.Ordinal), cancel);

    /// <inheritdoc/>
    Task<StockAnswer> IStockLedger.BookAsync(StockChange change, CancellationToken cancel)
    {
        var asked = Kept(change);
        return WriteAsync(async turn =>
        {
            await turn.DoAsync("SELECT pg_advisory_xact_lock(@drawers)", ("drawers", Drawers));
            var rows = await LoadAsync(turn, asked);
            var answer = StockDesk.Book(rows, asked, _data);
            if (answer is StockAnswer.Kept) await rows.WriteAsync(turn);
            return answer;
        }, answer => answer is StockAnswer.Kept, fault => new StockAnswer.NotKept(fault), async turn =>
        {
            await turn.DoAsync("SELECT pg_advisory_xact_lock(@drawers)", ("drawers", Drawers));
            var rows = await LoadAsync(turn, asked);
            return asked.Movements.Length > 0 && asked.Movements.All(m => rows.Done(m.Id) == m);
        }, cancel);
    }

    private Task<PostgresStock> LoadAsync(PostgresTurn turn, StockChange change) =>
        LoadAsync(turn, [.. change.Items.Select(i => i.Item.Key), .. change.Movements.Select(m => m.Item)], [.. change.Movements.Select(m => m.Id)]);

    private Task<PostgresStock> LoadAsync(PostgresTurn turn, string[]? keys, Guid[] movements) => PostgresStock.LoadAsync(turn, keys, movements, _data, Now());

    private async Task<ImmutableArray<StockLine>> LinesAsync(PostgresTurn turn)
    {
        var rows = await LoadAsync(turn, null, []);
        return [.. rows.Keys().Select(key => StockDesk.LineOf(rows, key)!)];
    }

    /// <summary>A change with its lines as the database can keep them.</summary>
    private static StockChange Kept(StockChange change) => new()
    {
        Items = [.. change.Items.Select(i => i with { Item = i.Item with { Key = TextOf(i.Item.Key), Name = TextOf(i.Item.Name) } })],
        Movements = [.. change.Movements.Select(Kept)],
    };

    private static Movement Kept(Movement movement) => movement switch
    {
        Movement.Receive { Lot: var lot } receive => receive with
        {
            Item = TextOf(receive.Item),
            For = Line(receive.For),
            Lot = lot with { Supplier = Line(lot.Supplier), Number = Line(lot.Number), Drawer = Line(lot.Drawer) },
        },
        _ => movement with { Item = TextOf(movement.Item), For = Line(movement.For) },
    };

    private static string? Line(string? line) => line is null ? null : TextOf(line);
}
