using System.Globalization;
using Coilwright.Storage;
using Coilwright.Storage.Made;
using Coilwright.Storage.Stock;

namespace Coilwright.KillWhileSaving;

/// <summary>What came of killing while pieces were written down in the book of what was made.</summary>
/// <param name="Kills">How often the keeper was killed.</param>
/// <param name="Acknowledged">Pieces that it was told were kept, and passed on before it died.</param>
/// <param name="There">Pieces in the book in the end, heard of or not.</param>
/// <param name="Lost">Acknowledged pieces that are not there. Must be none.</param>
/// <param name="Halves">Pieces of which only some steps are there. Must be none.</param>
/// <param name="Problems">What else is wrong: a file that does not open or is not sound, a stock from which another number was taken than the book says, numbers with a gap.</param>
public sealed record MadeKillFigures(int Kills, int Acknowledged, int There, int Lost, int Halves, IReadOnlyList<string> Problems)
{
    /// <summary>Whether nothing was lost and nothing is wrong.</summary>
    public bool IsSound => Lost == 0 && Halves == 0 && Problems.Count == 0;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"made: kills {Kills}, acknowledged {Acknowledged}, there {There}, lost {Lost}, halves {Halves}, problems {Problems.Count}{string.Concat(Problems.Select(p => "\n  " + p))}");
}

/// <summary>Kills a program while it writes down what was made, again and again in one book, and looks whether every piece that it was told was kept is there whole, with its beads out of stock, and no part of another.</summary>
public static class MadeKillCheck
{
    /// <summary>Runs the check.</summary>
    /// <param name="kills">How often to kill.</param>
    /// <param name="place">A place for the shelf, with nothing in its book.</param>
    public static async Task<MadeKillFigures> RunAsync(int kills, KillPlace place)
    {
        var acknowledged = new HashSet<string>(StringComparer.Ordinal);
        for (var kill = 1; kill <= kills; kill++) acknowledged.UnionWith(await KillCheck.KilledAsync("make", place, kill, line => line.Length == 36));

        var problems = new List<string>();
        var (shelf, why) = place.Open(DataFiles.LoadDefault().Data!);
        if (shelf is not (IMadeBook and IStockLedger))
            return new MadeKillFigures(kills, acknowledged.Count, 0, acknowledged.Count, 0, [$"the shelf does not open: {why}"]);
        using var open = shelf as IDisposable;
        var records = await ((IMadeBook)shelf).ListAsync();
        var taken = Keeper.AtFirst - ((await ((IStockLedger)shelf).OpenAsync(Keeper.Item))?.Balance.OnHand.Whole ?? 0);
        if (taken != records.Length * Keeper.Each) problems.Add($"{taken} were taken out of stock for {records.Length} pieces of {Keeper.Each}");
        if (!records.Select(r => r.Number).SequenceEqual(Enumerable.Range(1, records.Length).Select(n => (long)n))) problems.Add("the numbers have a gap");
        if (await place.LookAsync() is { } unsound) problems.Add(unsound);
        var there = records.Select(r => r.Id.ToString()).ToHashSet(StringComparer.Ordinal);
        return new MadeKillFigures(kills, acknowledged.Count, records.Length, acknowledged.Count(m => !there.Contains(m)), records.Count(r => r.Entries.Length != Keeper.Steps || !r.HasNames), problems);
    }
}
