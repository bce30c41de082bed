using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Made;
using Coilwright.Core.Stock;
using Coilwright.Storage;
using Coilwright.Storage.Made;
using Coilwright.Storage.Stock;

namespace Coilwright.KillWhileSaving;

/// <summary>A program that writes down one piece after the other in the book of what was made, each with its beads out of stock and with what became of it, until someone kills it.</summary>
internal static class Keeper
{
    /// <summary>The item that every piece takes from.</summary>
    public const string Item = "grain";

    /// <summary>How many are in stock at first: more than is used before the last kill.</summary>
    public const int AtFirst = 1_000_000;

    /// <summary>How many every piece takes.</summary>
    public const int Each = 7;

    /// <summary>Steps of every piece, written down together: made, asked for, packed, sold.</summary>
    public const int Steps = 4;

    private static readonly DateOnly Day = new(2026, 3, 31);

    /// <summary>Runs until it is killed. Says of each piece that it was kept, after it was told so itself.</summary>
    public static async Task<int> RunAsync(KillPlace place)
    {
        var (shelf, why) = place.Open(DataFiles.LoadDefault().Data!);
        if (shelf is not (IMadeBook and IStockLedger))
        {
            await Console.Error.WriteLineAsync($"The shelf did not open: {why}");
            return 1;
        }
        var (book, stock) = ((IMadeBook)shelf, (IStockLedger)shelf);
        // In one booking, so that no kill leaves the item without its beads.
        if (await stock.OpenAsync(Item) is null)
            await stock.BookAsync(new StockChange { Items = [new ItemChange(new StockItem(Item, Item, StockUnit.Each), 0)], Movements = [new Movement.Receive(Guid.CreateVersion7(), Item, new StockLot(Quantity.Of(AtFirst)))] });
        while (true)
        {
            var made = Guid.CreateVersion7();
            ImmutableArray<MadeStep> steps =
            [
                new MadeStep.Make(made, Day, "Grains", 2) { Used = [new UsedBeads(Item, Quantity.Of(Each)) { Movement = Guid.CreateVersion7() }], Who = "Oda", Note = "for the fair" },
                new MadeStep.Ask(Guid.CreateVersion7(), made, Day, new Paid(24.50m, "EUR")),
                new MadeStep.Pack(Guid.CreateVersion7(), made, Day, 2, "Spring fair"),
                new MadeStep.Sell(Guid.CreateVersion7(), made, Day, 1, new Paid(24.50m, "EUR")) { Show = "Spring fair" },
            ];
            if (await book.WriteDownAsync(steps) is not MadeAnswer.Kept) throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"{made} was not kept"));
            Console.Out.WriteLine(made.ToString());
            Console.Out.Flush();
        }
    }
}
