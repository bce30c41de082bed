using System.Collections.Immutable;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stock;
using Coilwright.Storage.Stock;
using Npgsql;

namespace Coilwright.Storage.Shelf.Postgres;

/// <summary>The rows of the stock's tables that a change is about, read before it is decided and written after that.</summary>
internal sealed class PostgresStock : IStockRows
{
    private const string ItemColumns = """
        SELECT i.key, i.counted_in, d.revision, d.name, d.aliases, d.bead, d.par FROM coilwright.stock_items i
        JOIN coilwright.stock_descriptions d ON d.item = i.key AND d.revision = (SELECT max(revision) FROM coilwright.stock_descriptions WHERE item = i.key)
        """;

    private const string MovementColumns = """
        SELECT m.number, m.at, m.id, m.item, m.kind, m.quantity, m.lot, m.reservation, m.what_for,
          l.id, l.supplier, l.supplier_number, l.drawer, l.received, l.cost, l.currency, c.lot, c.changed_by FROM coilwright.stock_movements m
        LEFT JOIN coilwright.stock_lots l ON l.id = m.id LEFT JOIN coilwright.stock_changes c ON c.movement = m.id
        """;

    private readonly ImmutableArray<string> _keys;
    private readonly Dictionary<string, (StockItem Item, long Revision)> _items;
    private readonly Dictionary<string, List<StockEntry>> _entries;
    private readonly Dictionary<Guid, Movement> _done;

    // What is to be written, in its order.
    private readonly List<Func<PostgresTurn, Task>> _writes = [];
    private readonly DateTimeOffset _at;

    private PostgresStock(ImmutableArray<string> keys, IEnumerable<(StockItem Item, long Revision)> items, IEnumerable<StockEntry> entries, IEnumerable<Movement> done, DateTimeOffset at)
    {
        _keys = keys;
        _items = items.ToDictionary(i => i.Item.Key, StringComparer.Ordinal);
        _entries = entries.GroupBy(e => e.Movement.Item, StringComparer.Ordinal).ToDictionary(e => e.Key, e => e.ToList(), StringComparer.Ordinal);
        _done = done.ToDictionary(m => m.Id);
        _at = at;
    }

    /// <summary>Reads items with all that happened to them.</summary>
    /// <param name="turn">Where.</param>
    /// <param name="keys">The items; null for all.</param>
    /// <param name="movements">Movements that may have been done, to whatever item.</param>
    /// <param name="data">What beads are read with.</param>
    /// <param name="at">When: the time of what is written.</param>
    public static async Task<PostgresStock> LoadAsync(PostgresTurn turn, string[]? keys, Guid[] movements, ReckoningData data, DateTimeOffset at)
    {
        var all = await turn.ReadAsync(row => row.GetString(0), "SELECT key FROM coilwright.stock_items ORDER BY key COLLATE \"C\"");
        var done = movements.Length == 0 ? [] : EntriesOf(await turn.ReadAsync(EntryOf, MovementColumns + " WHERE m.id = ANY (@ids) ORDER BY m.number, c.place", ("ids", movements)));
        string[] wanted = [.. keys ?? (IEnumerable<string>)all, .. done.Select(e => e.Movement.Item)];
        var items = await turn.ReadAsync(row => ItemOf(row, data), ItemColumns + " WHERE i.key = ANY (@keys)", ("keys", wanted));
        var entries = EntriesOf(await turn.ReadAsync(EntryOf, MovementColumns + " WHERE m.item = ANY (@keys) ORDER BY m.number, c.place", ("keys", wanted)));
        return new PostgresStock([.. all], items, entries, done.Select(e => e.Movement), at);
    }

    public (StockItem Item, long Revision)? Item(string key) => _items.TryGetValue(key, out var found) ? found : null;

    public IEnumerable<string> Keys() => _keys;

    public ImmutableArray<StockEntry> Entries(string key) => _entries.TryGetValue(key, out var entries) ? [.. entries] : [];

    public Movement? Done(Guid movement) => _done.GetValueOrDefault(movement);

    public void Put(StockItem item, long revision)
    {
        _items[item.Key] = (item, revision);
        _writes.Add(async turn =>
        {
            if (revision == 1) await turn.DoAsync("INSERT INTO coilwright.stock_items (key, counted_in) VALUES (@key, @unit)", ("key", item.Key), ("unit", StockRules.Word(item.Unit)));
            await turn.DoAsync("""
                INSERT INTO coilwright.stock_descriptions (item, revision, at, name, aliases, bead, par) VALUES (@key, @revision, @at, @name, @aliases, @bead, @par)
                """,
                ("key", item.Key), ("revision", revision), ("at", _at.UtcDateTime), ("name", item.Name), ("aliases", StockText.OfNames(item.Aliases)),
                ("bead", StockText.OfBead(item.Bead)), ("par", item.Par?.Thousandths));
        });
    }

    public void Add(Movement movement, ImmutableArray<LotChange> changes)
    {
        if (!_entries.TryGetValue(movement.Item, out var entries)) _entries[movement.Item] = entries = [];
        // Its number is given when it is written; until then it is only the last.
        entries.Add(new StockEntry(long.MaxValue, _at, movement, changes));
        _done.Add(movement.Id, movement);
        _writes.Add(turn => AddAsync(turn, MovementParts.Of(movement), changes));
    }

    /// <summary>Writes down what was put and added.</summary>
    /// <param name="turn">Where.</param>
    public async Task WriteAsync(PostgresTurn turn)
    {
        foreach (var write in _writes) await write(turn);
    }

    private async Task AddAsync(PostgresTurn turn, MovementParts parts, ImmutableArray<LotChange> changes)
    {
        await turn.DoAsync("""
            INSERT INTO coilwright.stock_movements (id, item, kind, at, quantity, lot, reservation, what_for)
            VALUES (@id, @item, @kind, @at, @quantity, @lot, @reservation, @for)
            """,
            ("id", parts.Id), ("item", parts.Item), ("kind", parts.Kind), ("at", _at.UtcDateTime), ("quantity", parts.Quantity), ("lot", parts.Lot), ("reservation", parts.Reservation), ("for", parts.For));
        if (parts.Came is { } came)
            await turn.DoAsync("""
                INSERT INTO coilwright.stock_lots (id, supplier, supplier_number, drawer, received, cost, currency)
                VALUES (@id, @supplier, @number, @drawer, @received, @cost, @currency)
                """,
                ("id", parts.Id), ("supplier", came.Supplier), ("number", came.Number), ("drawer", came.Drawer), ("received", came.Received), ("cost", came.Cost), ("currency", came.Currency));
        for (var i = 0; i < changes.Length; i++)
            await turn.DoAsync("INSERT INTO coilwright.stock_changes (movement, place, lot, changed_by) VALUES (@movement, @place, @lot, @by)",
                ("movement", parts.Id), ("place", i), ("lot", changes[i].Lot), ("by", changes[i].By.Thousandths));
    }

    private static (StockItem Item, long Revision) ItemOf(NpgsqlDataReader row, ReckoningData data) => (new StockItem(row.GetString(0), row.GetString(3), StockWords.Unit(row.GetString(1)))
    {
        Aliases = StockText.Names(row.GetString(4), row.GetString(3)),
        Bead = StockText.Bead(Line(row, 5), row.GetString(3), data),
        Par = row.IsDBNull(6) ? null : new Quantity(row.GetInt64(6)),
    }, row.GetInt64(2));

    private static StockEntry EntryOf(NpgsqlDataReader row)
    {
        var came = row.IsDBNull(9) ? null : new LotParts(Line(row, 10), Line(row, 11), Line(row, 12), row.IsDBNull(13) ? null : row.GetFieldValue<DateOnly>(13), Number(row, 14), Line(row, 15));
        var parts = new MovementParts(row.GetGuid(2), row.GetString(3), row.GetString(4), Number(row, 5), Name(row, 6), Name(row, 7), Line(row, 8), came);
        return new StockEntry(row.GetInt64(0), new DateTimeOffset(row.GetDateTime(1)), parts.Whole(), row.IsDBNull(16) ? [] : [new LotChange(row.GetGuid(16), new Quantity(row.GetInt64(17)))]);
    }

    // A movement that changed several lots comes in several rows, one after the other.
    private static ImmutableArray<StockEntry> EntriesOf(List<StockEntry> rows)
    {
        var entries = ImmutableArray.CreateBuilder<StockEntry>();
        foreach (var row in rows)
        {
            if (entries.Count > 0 && entries[^1].Number == row.Number) entries[^1] = entries[^1] with { Changes = [.. entries[^1].Changes, .. row.Changes] };
            else entries.Add(row);
        }
        return entries.ToImmutable();
    }

    private static string? Line(NpgsqlDataReader row, int column) => row.IsDBNull(column) ? null : row.GetString(column);

    private static long? Number(NpgsqlDataReader row, int column) => row.IsDBNull(column) ? null : row.GetInt64(column);

    private static Guid? Name(NpgsqlDataReader row, int column) => row.IsDBNull(column) ? null : row.GetGuid(column);
}
