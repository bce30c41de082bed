using Coilwright.Core.Faults;
using Coilwright.Core.Kits;
using Coilwright.Core.Pieces;
using Coilwright.Core.Pricing;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Storage.Stock;

namespace Coilwright.Cli.Calling;

/// <summary>The stock that the bench keeps in a folder.</summary>
internal static class ShelfStock
{
    /// <summary>What is free of every item, in whole ones; or why it cannot be told. Makes no shelf where there is none.</summary>
    public static Task<(Dictionary<string, int>? Free, Fault? Why)> FreeAsync(string folder, ReckoningData data, CancellationToken cancel) => AskAsync(folder, data, async ledger =>
        (await ledger.FreeAsync(cancel).ConfigureAwait(false)).ToDictionary(f => f.Key, f => f.Value.ToHand, StringComparer.Ordinal));

    /// <summary>What is free and in which drawers it lies; or why it cannot be told. Makes no shelf where there is none.</summary>
    public static Task<(HomeStock? Home, Fault? Why)> DrawersAsync(string folder, ReckoningData data, CancellationToken cancel) =>
        AskAsync(folder, data, async ledger => HomeStock.Of(await ledger.ListAsync(cancel).ConfigureAwait(false)));

    /// <summary>What is there and what it cost; or why it cannot be told. Makes no shelf where there is none.</summary>
    public static Task<(LotCosts? Costs, Fault? Why)> LotCostsAsync(string folder, LotWay way, ReckoningData data, CancellationToken cancel) =>
        AskAsync(folder, data, async ledger => LotCosts.Of(await ledger.ListAsync(cancel).ConfigureAwait(false), way));

    /// <summary>That there is no shelf in a folder; null when there is one.</summary>
    public static Fault? Missing(string folder, string file) =>
        File.Exists(file) ? null : Fault.Of(FaultCodes.FileUnreadable, "", file, ("detail", File.Exists(folder) ? FaultDetails.IsFile : FaultDetails.NotFound));

    private static async Task<(T? Answer, Fault? Why)> AskAsync<T>(string folder, ReckoningData data, Func<IStockLedger, Task<T>> ask) where T : class
    {
        var file = Path.Combine(folder, SqliteShelfOptions.FileName);
        if (Missing(folder, file) is { } missing) return (null, missing);
        var opening = SqliteShelf.Open(new SqliteShelfOptions { Folder = folder }, data, TimeProvider.System);
        if (opening is not ShelfOpening.Opened { Shelf: var shelf }) return (null, ((ShelfOpening.NotOpened)opening).Why);
        using (shelf)
        {
            try
            {
                return (await ask(shelf).ConfigureAwait(false), null);
            }
            catch (ShelfUnreadableException e)
            {
                return (null, e.Why);
            }
        }
    }
}
