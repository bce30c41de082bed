using System.Globalization;
using Coilwright.Core.Stock;
using Coilwright.Storage;
using Coilwright.Storage.Stock;

namespace Coilwright.KillWhileSaving;

/// <summary>A program that takes in one delivery after the other, each of several lots of several items, until someone kills it.</summary>
internal static class Receiver
{
    /// <summary>The items of every delivery. Of each comes as many as its place says, from 1.</summary>
    public static readonly string[] Items = ["dot", "moon", "pebble", "shard", "tube"];

    /// <summary>Runs until it is killed. Says of each delivery that it was kept, after it was told so itself.</summary>
    public static async Task<int> RunAsync(KillPlace place)
    {
        var (shelf, why) = place.Open(DataFiles.LoadDefault().Data!);
        if (shelf is not IStockLedger stock)
        {
            await Console.Error.WriteLineAsync($"The shelf did not open: {why}");
            return 1;
        }
        var there = (await stock.ListAsync()).Select(line => line.Item.Key).ToHashSet(StringComparer.Ordinal);
        if (there.Count == 0) Keep(await stock.BookAsync(new StockChange { Items = [.. Items.Select(key => new ItemChange(new StockItem(key, key, StockUnit.Each), 0))] }));
        while (true)
        {
            var delivery = Guid.CreateVersion7();
            Keep(await stock.BookAsync(new StockChange
            {
                Movements = [.. Items.Select((key, i) => new Movement.Receive(Guid.CreateVersion7(), key,
                    new StockLot(Quantity.Of(i + 1)) { Supplier = "The bead fair", Cost = (i + 1) * 0.25m, Currency = "EUR" }) { For = delivery.ToString() })],
            }));
            Console.Out.WriteLine(delivery.ToString());
            Console.Out.Flush();
        }
    }

    private static void Keep(StockAnswer answer)
    {
        if (answer is not StockAnswer.Kept) throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"{answer}"));
    }
}
