using System.Globalization;
using Coilwright.Storage;
using Coilwright.Storage.Stock;

namespace Coilwright.KillWhileSaving;

/// <summary>What came of killing in the middle of deliveries.</summary>
/// <param name="Kills">How often the receiver was killed.</param>
/// <param name="Acknowledged">Deliveries that it was told were kept, and passed on before it died.</param>
/// <param name="There">Deliveries in the ledger in the end, heard of or not.</param>
/// <param name="Lost">Acknowledged deliveries that are not there. Must be none.</param>
/// <param name="Halves">Deliveries of which only a part is there. Must be none.</param>
/// <param name="Problems">What else is wrong: a file that does not open or is not sound, a balance that is not the sum of its deliveries.</param>
public sealed record StockKillFigures(int Kills, int Acknowledged, int There, int Lost, int Halves, IReadOnlyList<string> Problems)
{
    /// <summary>Whether nothing was lost and nothing is wrong.</summary>
    public bool IsSound => Lost == 0 && Halves == 0 && Problems.Count == 0;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"deliveries: kills {Kills}, acknowledged {Acknowledged}, there {There}, lost {Lost}, halves {Halves}, problems {Problems.Count}{string.Concat(Problems.Select(p => "\n  " + p))}");
}

/// <summary>Kills a program while it takes in deliveries, again and again on one shelf, and looks whether every one that it was told was kept is there whole, and no part of another.</summary>
public static class StockKillCheck
{
    /// <summary>Runs the check.</summary>
    /// <param name="kills">How often to kill.</param>
    /// <param name="place">A place for the shelf, without stock.</param>
    public static async Task<StockKillFigures> RunAsync(int kills, KillPlace place)
    {
        var acknowledged = new HashSet<string>(StringComparer.Ordinal);
        for (var kill = 1; kill <= kills; kill++) acknowledged.UnionWith(await KillCheck.KilledAsync("receive", place, kill, line => line.Length == 36));

        var problems = new List<string>();
        var (shelf, why) = place.Open(DataFiles.LoadDefault().Data!);
        if (shelf is not IStockLedger stock)
            return new StockKillFigures(kills, acknowledged.Count, 0, acknowledged.Count, 0, [$"the shelf does not open: {why}"]);
        using var open = shelf as IDisposable;
        var parts = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < Receiver.Items.Length; i++)
        {
            var history = await stock.HistoryAsync(Receiver.Items[i]);
            foreach (var entry in history) parts[entry.Movement.For!] = parts.GetValueOrDefault(entry.Movement.For!) + 1;
            var onHand = (await stock.OpenAsync(Receiver.Items[i]))?.Balance.OnHand.Whole ?? 0;
            if (onHand != history.Length * (i + 1)) problems.Add($"{Receiver.Items[i]}: {onHand} on hand from {history.Length} deliveries of {i + 1}");
        }
        if (await place.LookAsync() is { } unsound) problems.Add(unsound);
        return new StockKillFigures(kills, acknowledged.Count, parts.Count, acknowledged.Count(d => !parts.ContainsKey(d)), parts.Values.Count(n => n != Receiver.Items.Length), problems);
    }
}
