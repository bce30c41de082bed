using Coilwright.Core.Stock;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Storage.Stock;
using Coilwright.Storage.Tests.Shelf;
using Microsoft.Data.Sqlite;
using static Coilwright.Storage.Tests.Shelf.SqliteShelves;

namespace Coilwright.Storage.Tests.Stock;

/// <summary>The ledger beside the pieces in one file.</summary>
public sealed class SqliteStockLedgerTests : StockLedgerContract, IDisposable
{
    private readonly SqliteShelves _shelves = new();

    protected override IStockLedger Empty() => _shelves.Empty();

    protected override int RandomRuns => 6;

    public void Dispose() => _shelves.Dispose();

    private static StockChange Strand(int count) => new()
    {
        Items = [new ItemChange(new StockItem("dot", "Dots", StockUnit.Each), 0)],
        Movements = [new Movement.Receive(Guid.CreateVersion7(), "dot", new StockLot(Quantity.Of(count)) { Cost = 6.5m, Currency = "EUR" })],
    };

    private static StockChange Use(int count) => StockChange.Of(new Movement.Use(Guid.CreateVersion7(), "dot", Quantity.Of(count)));

    // Each with a door of its own to the file, as two programs have.
    [Fact]
    public async Task Of_two_programs_that_want_the_last_strand_one_has_it()
    {
        var folder = _shelves.NewFolder();
        IStockLedger[] programs = [_shelves.Open(folder), _shelves.Open(folder)];
        await programs[0].BookAsync(Strand(10 * 66));
        // Twenty programs' worth of asking, and ten strands.
        var answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(i => Task.Run(() => programs[i % 2].BookAsync(Use(66)))));
        Assert.Equal(10, answers.OfType<StockAnswer.Kept>().Count());
        Assert.All(answers.OfType<StockAnswer.Refused>(), refused => Assert.Equal("0", refused.Why.Values["free"]));
        Assert.Equal(10, answers.OfType<StockAnswer.Refused>().Count());
        Assert.Equal(0, (await programs[1].FreeAsync())["dot"].Whole);
    }

    [Fact]
    public async Task What_was_kept_is_there_when_the_file_is_opened_again()
    {
        var folder = _shelves.NewFolder();
        using (var shelf = ((ShelfOpening.Opened)Opening(folder)).Shelf) await ((IStockLedger)shelf).BookAsync(Strand(66));
        var line = (await ((IStockLedger)_shelves.Open(folder)).OpenAsync("dot"))!;
        Assert.Equal((66, 6.5m), (line.Balance.OnHand.Whole, line.Value.FirstIn));
    }

    [Theory]
    [InlineData("stock_items")]
    [InlineData("stock_descriptions")]
    [InlineData("stock_movements")]
    [InlineData("stock_lots")]
    [InlineData("stock_changes")]
    public async Task No_row_of_the_ledger_can_be_changed_or_taken_out(string table)
    {
        var shelf = _shelves.Empty();
        await ((IStockLedger)shelf).BookAsync(Strand(66));
        using var other = Other(shelf.FilePath);
        Assert.True((long)Ask(other, $"SELECT count(*) FROM {table}")! > 0);
        foreach (var sql in (string[])[$"DELETE FROM {table}", $"UPDATE {table} SET rowid = rowid"])
            Assert.Contains("only ever added to", Assert.Throws<SqliteException>(() => Ask(other, sql)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_writes_past_the_program_cannot_draw_a_lot_below_nought()
    {
        var shelf = _shelves.Empty();
        await ((IStockLedger)shelf).BookAsync(Strand(66));
        await ((IStockLedger)shelf).BookAsync(Use(60));
        using var other = Other(shelf.FilePath);
        Assert.Contains("below nought", Assert.Throws<SqliteException>(() => Ask(other,
            "INSERT INTO stock_changes (movement, place, lot, changed_by) SELECT id, 9, (SELECT id FROM stock_lots), -6001 FROM stock_movements LIMIT 1")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_backup_carries_the_stock_and_brings_it_back()
    {
        var shelf = _shelves.Empty();
        IStockLedger stock = shelf;
        await shelf.AddAsync(Boardwalk);
        await stock.BookAsync(Strand(66));
        var backup = Path.Combine(_shelves.NewFolder(), "all.db");
        Assert.IsType<BackupAnswer.Made>(await shelf.BackUpAsync(backup));
        await stock.BookAsync(Use(60));
        var elsewhere = _shelves.Empty();
        Assert.IsType<RestoreAnswer.Restored>(await elsewhere.RestoreAsync(backup));
        Assert.Equal(66, (await ((IStockLedger)elsewhere).FreeAsync())["dot"].Whole);
        Assert.IsType<RestoreAnswer.Restored>(await shelf.RestoreAsync(backup));
        Assert.Equal(66, (await stock.FreeAsync())["dot"].Whole);
        Assert.Single(await shelf.ListAsync());
    }

    [Theory]
    [InlineData("[]", """{"id":"dot"}""")]
    [InlineData("[1]", null)]
    [InlineData("none", null)]
    public async Task A_backup_whose_stock_cannot_be_read_is_not_restored(string aliases, string? bead)
    {
        var shelf = _shelves.Empty();
        await ((IStockLedger)shelf).BookAsync(Strand(66));
        var backup = Path.Combine(_shelves.NewFolder(), "all.db");
        await shelf.BackUpAsync(backup);
        using (var other = Other(backup)) Ask(other,
            $"INSERT INTO stock_descriptions (item, revision, at, name, aliases, bead) VALUES ('dot', 2, '2026-01-01T00:00:00.0000000Z', 'Dots', '{aliases}', {(bead is null ? "NULL" : $"'{bead}'")})");
        Assert.Equal(Core.Faults.FaultCodes.StockItemUnreadable, Assert.IsType<RestoreAnswer.NotRestored>(await shelf.RestoreAsync(backup)).Why.Code);
        Assert.Equal(66, (await ((IStockLedger)shelf).FreeAsync())["dot"].Whole);
    }

    [Fact]
    public async Task A_shelf_of_before_there_was_stock_is_brought_up_to_date_with_its_pieces()
    {
        var folder = _shelves.NewFolder();
        using (var shelf = ((ShelfOpening.Opened)Opening(folder)).Shelf) Kept(await shelf.AddAsync(Boardwalk));
        var file = Path.Combine(folder, SqliteShelfOptions.FileName);
        using (var other = Other(file))
            Ask(other, """
                DROP TABLE stock_changes; DROP TABLE stock_lots; DROP TABLE stock_movements; DROP TABLE stock_descriptions; DROP TABLE stock_items;
                DELETE FROM SchemaVersions WHERE ScriptName LIKE '0002%'; PRAGMA user_version = 1
                """);
        var open = _shelves.Open(folder);
        Assert.IsType<StockAnswer.Kept>(await ((IStockLedger)open).BookAsync(Strand(66)));
        Assert.Equal(Boardwalk.Title, Assert.Single(await open.ListAsync()).Title);
    }

    [Fact]
    public async Task A_file_that_is_only_read_shows_its_stock_and_takes_nothing()
    {
        var folder = _shelves.NewFolder();
        using (var shelf = ((ShelfOpening.Opened)Opening(folder)).Shelf) await ((IStockLedger)shelf).BookAsync(Strand(66));
        File.SetAttributes(Path.Combine(folder, SqliteShelfOptions.FileName), FileAttributes.ReadOnly);
        IStockLedger stock = _shelves.Open(folder);
        Assert.Equal(Core.Faults.FaultCodes.ShelfReadOnly, Assert.IsType<StockAnswer.NotKept>(await stock.BookAsync(Use(1))).Why.Code);
        Assert.Equal(66, (await stock.FreeAsync())["dot"].Whole);
    }
}
