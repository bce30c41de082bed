using System.Globalization;
using Coilwright.Storage;
using Coilwright.Storage.Tray;

namespace Coilwright.KillWhileSaving;

/// <summary>What came of killing in the middle of lists of beads.</summary>
/// <param name="Kills">How often the filler was killed.</param>
/// <param name="Acknowledged">Lists that it was told were kept, and passed on before it died.</param>
/// <param name="There">Lists in the tray in the end, heard of or not.</param>
/// <param name="Lost">Acknowledged lists that are not there. Must be none.</param>
/// <param name="Halves">Lists of which only a part is there. Must be none.</param>
/// <param name="Problems">What else is wrong: a file that does not open or is not sound, a kind that is not as the last list left it.</param>
public sealed record TrayKillFigures(int Kills, int Acknowledged, int There, int Lost, int Halves, IReadOnlyList<string> Problems)
{
    /// <summary>Whether nothing was lost and nothing is wrong.</summary>
    public bool IsSound => Lost == 0 && Halves == 0 && Problems.Count == 0;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"tray: kills {Kills}, acknowledged {Acknowledged}, there {There}, lost {Lost}, halves {Halves}, problems {Problems.Count}{string.Concat(Problems.Select(p => "\n  " + p))}");
}

/// <summary>Kills a program while it takes lists into a tray, again and again into one, and looks whether every list that it was told was kept is there whole, and no part of another.</summary>
public static class TrayKillCheck
{
    /// <summary>Runs the check.</summary>
    /// <param name="kills">How often to kill.</param>
    /// <param name="place">A place for the shelf, without a tray.</param>
    public static async Task<TrayKillFigures> RunAsync(int kills, KillPlace place)
    {
        var acknowledged = new HashSet<string>(StringComparer.Ordinal);
        for (var kill = 1; kill <= kills; kill++) acknowledged.UnionWith(await KillCheck.KilledAsync("fill", place, kill, line => line.Length == 36));

        var problems = new List<string>();
        var (shelf, why) = place.Open(DataFiles.LoadDefault().Data!);
        if (shelf is not IBeadTray tray)
            return new TrayKillFigures(kills, acknowledged.Count, 0, acknowledged.Count, 0, [$"the shelf does not open: {why}"]);
        using var open = shelf as IDisposable;
        var kinds = (await tray.SinceAsync(0)).Put;
        var lists = kinds.Where(k => k.Key != Filler.Shared).GroupBy(k => k.Drawer!, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        // Names of lists are in the order of their making.
        var last = lists.Keys.Max(StringComparer.Ordinal);
        if (kinds.SingleOrDefault(k => k.Key == Filler.Shared)?.Drawer != last) problems.Add("the kind that every list changes is not as the last one left it");
        if (await place.LookAsync() is { } unsound) problems.Add(unsound);
        return new TrayKillFigures(kills, acknowledged.Count, lists.Count, acknowledged.Count(l => !lists.ContainsKey(l)), lists.Values.Count(n => n != Filler.Each), problems);
    }
}
