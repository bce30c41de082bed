using Coilwright.Core.Stock;
using Coilwright.Storage;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Storage.Stock;

namespace Coilwright.Cli.Tests;

/// <summary>A bench's shelf with beads in its drawers.</summary>
internal static class StockedShelf
{
    /// <summary>A hundred rounds for 2 EUR, then a hundred for 6, of which sixty are used: 140 are left.</summary>
    public static async Task WithTwoLotsOfRoundsAsync(string folder)
    {
        using var shelf = ((ShelfOpening.Opened)SqliteShelf.Open(new SqliteShelfOptions { Folder = folder }, DataFiles.LoadDefault().Data!, TimeProvider.System)).Shelf;
        IStockLedger ledger = shelf;
        Assert.IsType<StockAnswer.Kept>(await ledger.BookAsync(new StockChange
        {
            Items = [new ItemChange(new StockItem("round", "Rounds", StockUnit.Each), 0)],
            Movements =
            [
                new Movement.Receive(Guid.CreateVersion7(), "round", new StockLot(Quantity.Of(100)) { Cost = 2, Currency = "EUR" }),
                new Movement.Receive(Guid.CreateVersion7(), "round", new StockLot(Quantity.Of(100)) { Cost = 6, Currency = "EUR" }),
                new Movement.Use(Guid.CreateVersion7(), "round", Quantity.Of(60)),
            ],
        }));
    }
}
