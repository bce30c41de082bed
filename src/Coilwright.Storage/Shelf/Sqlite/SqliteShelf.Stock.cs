using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stock;
using Coilwright.Storage.Stock;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

public sealed partial class SqliteShelf : IStockLedger
{
    /// <inheritdoc/>
    Task<ImmutableArray<StockLine>> IStockLedger.ListAsync(CancellationToken cancel) => ReadAsync(connection => new StockRows(connection, _data, _clock).Lines(), cancel);

    /// <inheritdoc/>
    Task<StockLine?> IStockLedger.OpenAsync(string key, CancellationToken cancel) => ReadAsync(connection => StockDesk.LineOf(new StockRows(connection, _data, _clock), key), cancel);

    /// <inheritdoc/>
    Task<ImmutableArray<StockEntry>> IStockLedger.HistoryAsync(string key, CancellationToken cancel) => ReadAsync(connection => new StockRows(connection, _data, _clock).Entries(key), cancel);

    /// <inheritdoc/>
    Task<ImmutableSortedDictionary<string, Quantity>> IStockLedger.FreeAsync(CancellationToken cancel) => ReadAsync(connection =>
        new StockRows(connection, _data, _clock).Lines().ToImmutableSortedDictionary(l => l.Item.Key, l => l.Balance.Free, StringComparer.Ordinal), cancel);

    /// <inheritdoc/>
    Task<StockAnswer> IStockLedger.BookAsync(StockChange change, CancellationToken cancel) => WriteAsync(
        connection => StockDesk.Book(new StockRows(connection, _data, _clock), change, _data),
        answer => answer is StockAnswer.Kept, fault => new StockAnswer.NotKept(fault), cancel);

    /// <summary>Reads all of the stock: a backup that this program cannot read is no use to her.</summary>
    private void ReadAllStock(SqliteConnection backup) => new StockRows(backup, _data, _clock).Lines();

    /// <summary>The rows of the stock's tables.</summary>
    private sealed class StockRows(SqliteConnection connection, ReckoningData data, TimeProvider clock) : IStockRows
    {
        private const string ItemColumns = """
            SELECT i.key, i.counted_in, d.revision, d.name, d.aliases, d.bead, d.par FROM stock_items i
            JOIN stock_descriptions d ON d.item = i.key AND d.revision = (SELECT max(revision) FROM stock_descriptions WHERE item = i.key)
            """;

        private const string MovementColumns = """
            SELECT m.number, m.id, m.item, m.kind, m.at, m.quantity, m.lot, m.reservation, m.what_for,
              l.supplier, l.supplier_number, l.drawer, l.received, l.cost, l.currency, c.lot, c.changed_by FROM stock_movements m
            LEFT JOIN stock_lots l ON l.id = m.id LEFT JOIN stock_changes c ON c.movement = m.id
            """;

        public ImmutableArray<StockLine> Lines()
        {
            using var all = Command(connection, MovementColumns + " ORDER BY m.number, c.place");
            var entries = EntriesOf(all).ToLookup(e => e.Movement.Item, StringComparer.Ordinal);
            using var command = Command(connection, ItemColumns + " ORDER BY i.key");
            return [.. ItemsOf(command).Select(i => StockDesk.LineOf(i.Item, i.Revision, [.. entries[i.Item.Key]]))];
        }

        public (StockItem Item, long Revision)? Item(string key)
        {
            using var command = Command(connection, ItemColumns + " WHERE i.key = $key", ("$key", key));
            return ItemsOf(command) is [var found] ? found : null;
        }

        public IEnumerable<string> Keys()
        {
            using var command = Command(connection, "SELECT key FROM stock_items ORDER BY key");
            using var rows = command.ExecuteReader();
            while (rows.Read()) yield return rows.GetString(0);
        }

        public ImmutableArray<StockEntry> Entries(string key)
        {
            using var command = Command(connection, MovementColumns + " WHERE m.item = $key ORDER BY m.number, c.place", ("$key", key));
            return EntriesOf(command);
        }

        public Movement? Done(Guid movement)
        {
            using var command = Command(connection, MovementColumns + " WHERE m.id = $id ORDER BY c.place", ("$id", NameOf(movement)));
            return EntriesOf(command) is [var entry] ? entry.Movement : null;
        }

        public void Put(StockItem item, long revision)
        {
            if (revision == 1) Execute(connection, "INSERT INTO stock_items (key, counted_in) VALUES ($key, $unit)", ("$key", item.Key), ("$unit", StockRules.Word(item.Unit)));
            Execute(connection, "INSERT INTO stock_descriptions (item, revision, at, name, aliases, bead, par) VALUES ($key, $revision, $at, $name, $aliases, $bead, $par)",
                ("$key", item.Key), ("$revision", revision), ("$at", TextOf(clock.GetUtcNow())), ("$name", item.Name), ("$aliases", StockText.OfNames(item.Aliases)),
                ("$bead", StockText.OfBead(item.Bead)), ("$par", item.Par?.Thousandths));
        }

        public void Add(Movement movement, ImmutableArray<LotChange> changes)
        {
            var parts = MovementParts.Of(movement);
            Execute(connection, """
                INSERT INTO stock_movements (id, item, kind, at, quantity, lot, reservation, what_for)
                VALUES ($id, $item, $kind, $at, $quantity, $lot, $reservation, $for)
                """,
                ("$id", NameOf(parts.Id)), ("$item", parts.Item), ("$kind", parts.Kind), ("$at", TextOf(clock.GetUtcNow())), ("$quantity", parts.Quantity),
                ("$lot", parts.Lot is { } l ? NameOf(l) : null), ("$reservation", parts.Reservation is { } r ? NameOf(r) : null), ("$for", parts.For));
            if (parts.Came is { } came)
                Execute(connection, """
                    INSERT INTO stock_lots (id, supplier, supplier_number, drawer, received, cost, currency)
                    VALUES ($id, $supplier, $number, $drawer, $received, $cost, $currency)
                    """,
                    ("$id", NameOf(parts.Id)), ("$supplier", came.Supplier), ("$number", came.Number), ("$drawer", came.Drawer),
                    ("$received", came.Received?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), ("$cost", came.Cost), ("$currency", came.Currency));
            for (var i = 0; i < changes.Length; i++)
                Execute(connection, "INSERT INTO stock_changes (movement, place, lot, changed_by) VALUES ($movement, $place, $lot, $by)",
                    ("$movement", NameOf(movement.Id)), ("$place", i), ("$lot", NameOf(changes[i].Lot)), ("$by", changes[i].By.Thousandths));
        }

        private ImmutableArray<(StockItem Item, long Revision)> ItemsOf(SqliteCommand command)
        {
            using var rows = command.ExecuteReader();
            var items = ImmutableArray.CreateBuilder<(StockItem, long)>();
            while (rows.Read())
                items.Add((new StockItem(rows.GetString(0), rows.GetString(3), StockWords.Unit(rows.GetString(1)))
                {
                    Aliases = StockText.Names(rows.GetString(4), rows.GetString(3)),
                    Bead = StockText.Bead(Text(rows, 5), rows.GetString(3), data),
                    Par = rows.IsDBNull(6) ? null : new Quantity(rows.GetInt64(6)),
                }, rows.GetInt64(2)));
            return items.ToImmutable();
        }

        // A movement that changed several lots comes in several rows, one after the other.
        private static ImmutableArray<StockEntry> EntriesOf(SqliteCommand command)
        {
            using var rows = command.ExecuteReader();
            var entries = ImmutableArray.CreateBuilder<StockEntry>();
            while (rows.Read())
            {
                ImmutableArray<LotChange> change = rows.IsDBNull(15) ? [] : [new LotChange(Guid.Parse(rows.GetString(15)), new Quantity(rows.GetInt64(16)))];
                var number = rows.GetInt64(0);
                if (entries.Count > 0 && entries[^1].Number == number) entries[^1] = entries[^1] with { Changes = [.. entries[^1].Changes, .. change] };
                else entries.Add(new StockEntry(number, TimeOf(rows.GetString(4)), MovementOf(rows), change));
            }
            return entries.ToImmutable();
        }

        private static Movement MovementOf(SqliteDataReader rows)
        {
            var day = Text(rows, 12) is { } text ? DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture) : (DateOnly?)null;
            var came = new LotParts(Text(rows, 9), Text(rows, 10), Text(rows, 11), day, Number(rows, 13), Text(rows, 14));
            return new MovementParts(Guid.Parse(rows.GetString(1)), rows.GetString(2), rows.GetString(3), Number(rows, 5), Name(rows, 6), Name(rows, 7), Text(rows, 8), came).Whole();
        }

        private static Guid? Name(SqliteDataReader rows, int column) => Text(rows, column) is { } name ? Guid.Parse(name) : null;

        private static long? Number(SqliteDataReader rows, int column) => rows.IsDBNull(column) ? null : rows.GetInt64(column);

        private static string? Text(SqliteDataReader rows, int column) => rows.IsDBNull(column) ? null : rows.GetString(column);
    }
}
