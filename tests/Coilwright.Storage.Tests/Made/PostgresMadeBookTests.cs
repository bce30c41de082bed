using Coilwright.Core.Made;
using Coilwright.Core.Stock;
using Coilwright.OwnDatabase;
using Coilwright.Storage.Made;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;
using Coilwright.Storage.Tests.Shelf;
using Npgsql;

namespace Coilwright.Storage.Tests.Made;

/// <summary>The book beside the pieces in one database.</summary>
public sealed class PostgresMadeBookTests : MadeBookContract, IDisposable
{
    private readonly PostgresShelves _shelves = new();

    // Each history needs a database of its own.
    private protected override int RandomRuns => 4;

    private protected override (IMadeBook, IPieceShelf, IStockLedger) Empty()
    {
        var shelf = _shelves.Empty();
        return (shelf, shelf, shelf);
    }

    public void Dispose() => _shelves.Dispose();

    [Theory]
    [InlineData("UPDATE coilwright.made_steps SET content = ''")]
    [InlineData("DELETE FROM coilwright.made_steps")]
    [InlineData("TRUNCATE coilwright.made_steps CASCADE")]
    [InlineData("UPDATE coilwright.made_people SET who = 'Bea'")]
    public async Task No_step_that_was_written_down_can_be_changed_or_taken_out(string sql)
    {
        var way = _shelves.NewDatabase();
        Kept(await ((IMadeBook)_shelves.Open(way)).WriteDownAsync([Make() with { Who = "Ann" }]));
        await using var connection = new NpgsqlConnection(way);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        Assert.Contains("only ever added", (await Assert.ThrowsAsync<PostgresException>(() => command.ExecuteNonQueryAsync())).MessageText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_piece_that_was_made_without_anybody_hearing_of_it_is_found_and_takes_its_beads_once()
    {
        var server = await PostgresServer.SharedAsync();
        var database = new NpgsqlConnectionStringBuilder(_shelves.NewDatabase()).Database!;
        await using var line = new CutLine(server.Port);
        var shelf = _shelves.Open(new NpgsqlConnectionStringBuilder(server.ByPort(database)) { Port = line.Port }.ConnectionString, TimeSpan.FromMilliseconds(300));
        await StockAsync(shelf, 10, 5);
        line.CutAtAnswerToCommit(stayDown: false);
        Kept(await ((IMadeBook)shelf).WriteDownAsync([Make() with { Used = [new UsedBeads("dot", Quantity.Of(6)) { Movement = New() }] }]));
        Assert.Equal((9, 1), ((await ((IStockLedger)shelf).FreeAsync())["dot"].Whole, (await ((IMadeBook)shelf).ListAsync()).Length));
        Assert.Equal(1, line.Cuts);
    }
}
