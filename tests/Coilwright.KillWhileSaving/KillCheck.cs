using System.Diagnostics;
using System.Globalization;
using Coilwright.Storage;

namespace Coilwright.KillWhileSaving;

/// <summary>What came of killing.</summary>
/// <param name="Kills">How often the writer was killed.</param>
/// <param name="Acknowledged">States that it was told were kept, and passed on before it died.</param>
/// <param name="Steps">Steps on the shelf in the end.</param>
/// <param name="Unheard">Steps that are kept although nobody heard of it: the kill came between.</param>
/// <param name="Lost">Acknowledged states that are not on the shelf, or are others there. Must be none.</param>
/// <param name="Problems">What else is wrong: a shelf that does not open or is not sound, a gap between steps.</param>
public sealed record KillFigures(int Kills, int Acknowledged, long Steps, long Unheard, int Lost, IReadOnlyList<string> Problems)
{
    /// <summary>Whether nothing was lost and nothing is wrong.</summary>
    public bool IsSound => Lost == 0 && Problems.Count == 0;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"kills {Kills}, acknowledged {Acknowledged}, steps {Steps}, kept but unheard {Unheard}, lost {Lost}, problems {Problems.Count}{string.Concat(Problems.Select(p => "\n  " + p))}");
}

/// <summary>Kills a program while it saves, again and again on one shelf, and looks afterwards whether all is there that it was told was kept.</summary>
/// <remarks>Shows what a killed program loses (nothing that was acknowledged), not what a power cut does: for that
/// <c>synchronous = FULL</c> stands, and in a database <c>synchronous_commit</c>.</remarks>
public static class KillCheck
{
    /// <summary>Runs the check.</summary>
    /// <param name="kills">How often to kill.</param>
    /// <param name="place">An empty place for the shelf.</param>
    /// <param name="progress">Told now and then; null for silence.</param>
    public static async Task<KillFigures> RunAsync(int kills, KillPlace place, TextWriter? progress = null)
    {
        var acknowledged = new HashSet<string>(StringComparer.Ordinal);
        var problems = new List<string>();
        long unheard = 0;
        for (var kill = 1; kill <= kills; kill++)
        {
            var heard = await KilledAsync("write", place, kill, line => line.Split(' ') is [_, _, { Length: 64 }]);
            acknowledged.UnionWith(heard);
            var (shelf, why) = place.Open(DataFiles.LoadDefault().Data!);
            if (shelf is null)
            {
                problems.Add($"kill {kill}: {why}");
                break;
            }
            using (shelf as IDisposable)
            {
                var newest = (await shelf.ListAsync()).Select(line => line.Revision).DefaultIfEmpty(0).Max();
                if (heard.Count > 0) unheard += newest - RevisionOf(heard[^1]);
            }
            if (kill % 20 == 0 && progress is not null) await progress.WriteLineAsync($"{kill} kills, {acknowledged.Count} acknowledged");
        }
        return await LookAsync(place, kills, acknowledged, unheard, problems);
    }

    /// <summary>Starts a writer, kills it at some time, and gives what it told before.</summary>
    internal static async Task<List<string>> KilledAsync(string verb, KillPlace place, int kill, Func<string, bool> isWhole)
    {
        using var writer = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Coilwright.KillWhileSaving.dll"), verb, place.Sort, place.Way])
        {
            RedirectStandardOutput = true,
            // Killed, it would leave what it could be debugged by in the machine's temporary folder, three files for each.
            Environment = { ["DOTNET_EnableDiagnostics"] = "0" },
        })!;
        var heard = new List<string>();
        var chance = new Random(kill);
        // Most die while saving, some steps on and then at any point of the next few; every tenth at any time, while starting or opening the shelf too.
        var isAnyTime = kill % 10 == 0;
        for (var steps = isAnyTime ? 0 : chance.Next(1, 25); steps > 0 && await writer.StandardOutput.ReadLineAsync() is { } line; steps--) heard.Add(line);
        var reading = Task.Run(async () =>
        {
            while (await writer.StandardOutput.ReadLineAsync() is { } line) heard.Add(line);
        });
        await Task.Delay(chance.Next(isAnyTime ? 500 : 20));
        writer.Kill(); // SIGKILL
        await writer.WaitForExitAsync();
        await reading;
        // A last line that was cut off was not told.
        if (heard.Count > 0 && !isWhole(heard[^1])) heard.RemoveAt(heard.Count - 1);
        return heard;
    }

    private static async Task<KillFigures> LookAsync(KillPlace place, int kills, HashSet<string> acknowledged, long unheard, List<string> problems)
    {
        if (problems.Count > 0) return new KillFigures(kills, acknowledged.Count, 0, unheard, acknowledged.Count, problems);
        var shelf = place.Open(DataFiles.LoadDefault().Data!).Shelf!;
        using var closed = shelf as IDisposable;
        var there = new HashSet<string>(StringComparer.Ordinal);
        long steps = 0;
        foreach (var line in await shelf.ListAsync())
        {
            var history = await shelf.HistoryAsync(line.Id);
            steps += history.Length;
            if (!history.Select(step => step.Revision).SequenceEqual(Enumerable.Range(1, history.Length).Select(n => (long)n))) problems.Add($"{line.Id}: a step is missing");
            foreach (var step in history)
                if (await shelf.OpenAsync(line.Id, step.Revision) is { } piece)
                    there.Add(Writer.Line(line.Id, step.Revision, piece));
        }
        if (await place.LookAsync() is { } unsound) problems.Add(unsound);
        return new KillFigures(kills, acknowledged.Count, steps, unheard, acknowledged.Count(state => !there.Contains(state)), problems);
    }

    private static long RevisionOf(string line) => long.Parse(line.Split(' ')[1], CultureInfo.InvariantCulture);
}
