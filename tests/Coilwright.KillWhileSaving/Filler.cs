using System.Globalization;
using System.Text;
using Coilwright.Core.Tray;
using Coilwright.Storage;
using Coilwright.Storage.Tray;

namespace Coilwright.KillWhileSaving;

/// <summary>A program that takes one list of beads after the other into the tray, until someone kills it.</summary>
internal static class Filler
{
    /// <summary>New kinds of every list.</summary>
    public const int Each = 100;

    /// <summary>The kind that every list changes: its drawer is the list's own name.</summary>
    public const string Shared = "shared";

    /// <summary>Runs until it is killed. Says of each list that it was kept, after it was told so itself.</summary>
    public static async Task<int> RunAsync(KillPlace place)
    {
        var data = DataFiles.LoadDefault().Data!;
        var (shelf, why) = place.Open(data);
        if (shelf is not IBeadTray tray)
        {
            await Console.Error.WriteLineAsync($"The shelf did not open: {why}");
            return 1;
        }
        var words = new TrayWords([], [], [], []);
        var there = new Dictionary<string, TrayKind>(StringComparer.Ordinal);
        long seen = 0;
        while (true)
        {
            var list = Guid.CreateVersion7();
            var text = new StringBuilder("id,name,shape,lengthMm,drawer\n");
            for (var i = 0; i < Each; i++) text.Append(CultureInfo.InvariantCulture, $"k{list:N}-{i},Bead {i},round,{2 + i % 10},{list}\n");
            text.Append(CultureInfo.InvariantCulture, $"{Shared},Shared,round,4,{list}\n");
            var table = TrayFile.Read(Encoding.UTF8.GetBytes(text.ToString())).Table!;
            var news = await tray.SinceAsync(seen);
            seen = news.Revision;
            foreach (var kind in news.Put) there[kind.Key] = kind;
            var import = TrayReading.Read(table, TrayMatching.Of(table.Heads, words), there, words, data);
            if (await tray.ChangeAsync(seen, import.Edits) is not TrayAnswer.Kept) throw new InvalidOperationException($"{import.Faults.Length} faults");
            Console.Out.WriteLine(list.ToString());
            Console.Out.Flush();
        }
    }
}
