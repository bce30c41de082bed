using Coilwright.Core.Faults;
using Coilwright.Core.Stock;
using Coilwright.Storage.Stock;
using Coilwright.Storage.Tests.Shelf;
using Npgsql;
using static Coilwright.OwnDatabase.PostgresServer;
using static Coilwright.Storage.Tests.Shelf.SqliteShelves;

namespace Coilwright.Storage.Tests.Stock;

/// <summary>The ledger beside the pieces in one database.</summary>
public sealed class PostgresStockLedgerTests : StockLedgerContract, IDisposable
{
    private readonly PostgresShelves _shelves = new();

    protected override IStockLedger Empty() => _shelves.Empty();

    protected override int RandomRuns => 6;

    public void Dispose() => _shelves.Dispose();

    private static StockChange Strand(int count) => new()
    {
        Items = [new ItemChange(new StockItem("dot", "Dots", StockUnit.Each), 0)],
        Movements = [new Movement.Receive(Guid.CreateVersion7(), "dot", new StockLot(Quantity.Of(count)) { Cost = 6.5m, Currency = "EUR" })],
    };

    private static StockChange Use(int count) => StockChange.Of(new Movement.Use(Guid.CreateVersion7(), "dot", Quantity.Of(count)));

    // Each with connections of its own, as two programs have.
    [Fact]
    public async Task Of_two_programs_that_want_the_last_strand_one_has_it()
    {
        var way = _shelves.NewDatabase();
        IStockLedger[] programs = [_shelves.Open(way), _shelves.Open(way)];
        await programs[0].BookAsync(Strand(10 * 66));
        // Twenty programs' worth of asking, and ten strands.
        var answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(i => Task.Run(() => programs[i % 2].BookAsync(Use(66)))));
        Assert.Equal(10, answers.OfType<StockAnswer.Kept>().Count());
        Assert.All(answers.OfType<StockAnswer.Refused>(), refused => Assert.Equal("0", refused.Why.Values["free"]));
        Assert.Equal(10, answers.OfType<StockAnswer.Refused>().Count());
        Assert.Equal(0, (await programs[1].FreeAsync())["dot"].Whole);
    }

    [Fact]
    public async Task Of_two_programs_that_describe_a_new_item_at_once_one_does()
    {
        var way = _shelves.NewDatabase();
        IStockLedger[] programs = [_shelves.Open(way), _shelves.Open(way)];
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(() => programs[i % 2].BookAsync(Strand(66)))));
        Assert.Single(answers.OfType<StockAnswer.Kept>());
        Assert.DoesNotContain(answers, answer => answer is StockAnswer.NotKept);
        Assert.Equal(66, (await programs[1].FreeAsync())["dot"].Whole);
    }

    [Fact]
    public async Task What_was_kept_is_there_when_it_is_opened_again()
    {
        var way = _shelves.NewDatabase();
        await ((IStockLedger)_shelves.Open(way)).BookAsync(Strand(66));
        var line = (await ((IStockLedger)_shelves.Open(way)).OpenAsync("dot"))!;
        Assert.Equal((66, 6.5m), (line.Balance.OnHand.Whole, line.Value.FirstIn));
    }

    [Fact]
    public async Task What_is_answered_is_what_is_there()
    {
        IStockLedger stock = _shelves.Empty();
        await stock.BookAsync(Strand(66));
        var said = Assert.IsType<StockAnswer.Kept>(await stock.BookAsync(StockChange.Of(new Movement.Reserve(Guid.CreateVersion7(), "dot", Quantity.Of(6)) { For = "two bracelets" })))["dot"];
        var there = (await stock.OpenAsync("dot"))!;
        Assert.Equal(there.Balance.Lots, said.Balance.Lots);
        Assert.Equal(there.Balance.Reservations, said.Balance.Reservations);
        Assert.Equal(there.Value, said.Value);
    }

    [Theory]
    [InlineData("stock_items", "key = key")]
    [InlineData("stock_descriptions", "name = name")]
    [InlineData("stock_movements", "kind = kind")]
    [InlineData("stock_lots", "drawer = drawer")]
    [InlineData("stock_changes", "place = place")]
    public async Task No_row_of_the_ledger_can_be_changed_or_taken_out(string table, string same)
    {
        var way = _shelves.NewDatabase();
        await ((IStockLedger)_shelves.Open(way)).BookAsync(Strand(66));
        Assert.True((long)(await AskAsync(way, $"SELECT count(*) FROM coilwright.{table}"))! > 0);
        foreach (var sql in (string[])[$"DELETE FROM coilwright.{table}", $"UPDATE coilwright.{table} SET {same}", $"TRUNCATE coilwright.{table} CASCADE"])
            Assert.Contains("only ever added", (await Assert.ThrowsAsync<PostgresException>(() => AskAsync(way, sql))).MessageText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_writes_past_the_program_cannot_draw_a_lot_below_nought()
    {
        var way = _shelves.NewDatabase();
        IStockLedger stock = _shelves.Open(way);
        await stock.BookAsync(Strand(66));
        await stock.BookAsync(Use(60));
        Assert.Contains("below nought", (await Assert.ThrowsAsync<PostgresException>(() => AskAsync(way,
            "INSERT INTO coilwright.stock_changes (movement, place, lot, changed_by) SELECT id, 9, (SELECT id FROM coilwright.stock_lots), -6001 FROM coilwright.stock_movements LIMIT 1"))).MessageText,
            StringComparison.Ordinal);
        Assert.Equal(6, (await stock.FreeAsync())["dot"].Whole);
    }

    [Fact]
    public async Task A_database_of_before_there_was_stock_is_brought_up_to_date_with_its_pieces()
    {
        var way = _shelves.NewDatabase();
        Kept(await _shelves.Open(way).AddAsync(Boardwalk));
        await AskAsync(way, """
            DROP TABLE coilwright.stock_changes, coilwright.stock_lots, coilwright.stock_movements, coilwright.stock_descriptions, coilwright.stock_items CASCADE;
            DROP FUNCTION coilwright.never_below_nought; DELETE FROM coilwright.schemaversions WHERE scriptname LIKE '0002%'
            """);
        var open = _shelves.Open(way);
        Assert.IsType<StockAnswer.Kept>(await ((IStockLedger)open).BookAsync(Strand(66)));
        Assert.Equal(Boardwalk.Title, Assert.Single(await open.ListAsync()).Title);
    }

    [Fact]
    public async Task A_movement_that_was_kept_without_anybody_hearing_of_it_is_found_and_not_done_twice()
    {
        var server = await SharedAsync();
        var database = new NpgsqlConnectionStringBuilder(_shelves.NewDatabase()).Database!;
        await using var line = new CutLine(server.Port);
        IStockLedger stock = _shelves.Open(new NpgsqlConnectionStringBuilder(server.ByPort(database)) { Port = line.Port }.ConnectionString, TimeSpan.FromMilliseconds(300));
        await stock.BookAsync(Strand(66));
        line.CutAtAnswerToCommit(stayDown: false);
        Assert.Equal(60, Assert.IsType<StockAnswer.Kept>(await stock.BookAsync(Use(6)))["dot"].Balance.Free.Whole);
        var use = Use(10);
        line.CutAtAnswerToCommit(stayDown: true);
        Assert.IsType<StockAnswer.NotKept>(await stock.BookAsync(use));
        line.Mend();
        Assert.Equal(50, Assert.IsType<StockAnswer.Kept>(await stock.BookAsync(use))["dot"].Balance.Free.Whole);
        Assert.Equal((3, 2), ((await stock.HistoryAsync("dot")).Length, line.Cuts));
    }

    [Fact]
    public async Task While_the_server_is_gone_nothing_is_kept_and_once_it_is_back_the_last_strand_is_still_there()
    {
        await using var server = await StartNewAsync();
        IStockLedger stock = _shelves.Open(await server.NewDatabaseAsync(), TimeSpan.FromMilliseconds(300));
        await stock.BookAsync(Strand(66));
        server.Stop("immediate");
        Assert.Equal(FaultCodes.DatabaseUnreachable, Assert.IsType<StockAnswer.NotKept>(await stock.BookAsync(Use(60))).Why.Code);
        server.Start();
        Assert.Equal(66, (await stock.FreeAsync())["dot"].Whole);
        Assert.Equal(6, Assert.IsType<StockAnswer.Kept>(await stock.BookAsync(Use(60)))["dot"].Balance.Free.Whole);
    }

    [Fact]
    public async Task Signs_that_a_database_cannot_keep_are_replaced_and_a_movement_given_twice_still_counts_once()
    {
        IStockLedger stock = _shelves.Empty();
        await stock.BookAsync(Strand(66));
        var use = StockChange.Of(new Movement.Use(Guid.CreateVersion7(), "dot", Quantity.Of(6)) { For = "a\0b" });
        await stock.BookAsync(use);
        Assert.Equal(60, Assert.IsType<StockAnswer.Kept>(await stock.BookAsync(use))["dot"].Balance.Free.Whole);
        Assert.Equal("a\uFFFDb", (await stock.HistoryAsync("dot"))[1].Movement.For);
    }
}
