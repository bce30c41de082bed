using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Tests.Tray;
using Coilwright.Core.Tray;
using Coilwright.OwnDatabase;
using Coilwright.Storage;
using Coilwright.Storage.Shelf.Postgres;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Storage.Tray;
using Coilwright.Wording;

namespace Coilwright.Benchmarks.Web;

/// <summary>How long it takes to find something in a tray of 50,000 kinds against one of 100, kept in a file and in a database: whether there is news, as a page asks first, and then the search.</summary>
internal static class TraySearch
{
    private const int Few = 100, Many = 50_000, Passes = 40, Shown = 40;

    private static readonly TrayQuestion[] Questions =
    [
        new() { Text = "glass" }, new() { Text = "matt round 6" }, new() { Text = "river stone" }, new() { Text = "best" }, new() { Text = "cab" }, new() { Text = "b 12" }, new() { Text = "g" },
        new() { Text = "türkis" }, new() { Text = "slate drop frosted" }, new() { Text = "zzz" }, new() { Shape = "round" }, new() { Shape = "tube", LeastMm = 4, MostMm = 8 }, new() { LeastMm = 3, MostMm = 3.5, Text = "glossy" }, new(),
    ];

    public static async Task<int> MeasureAsync(int rounds)
    {
        var folders = new List<string>();
        await using var server = await PostgresServer.StartNewAsync();
        try
        {
            var (small, large) = (GeneratedTray.Of(Few), GeneratedTray.Of(Many));
            string NewFolder()
            {
                folders.Add(Directory.CreateTempSubdirectory("coilwright-tray-").FullName);
                return folders[^1];
            }
            var stores = new List<(string Name, Tray Few, Tray Many)>
            {
                ("a file", await Tray.OfAsync(OfFile(NewFolder()), small), await Tray.OfAsync(OfFile(NewFolder()), large)),
                ("a database", await Tray.OfAsync(OfDatabase(await server.NewDatabaseAsync()), small), await Tray.OfAsync(OfDatabase(await server.NewDatabaseAsync()), large)),
            };
            var verdicts = new List<Verdict>();
            foreach (var (name, few, many) in stores)
            {
                await few.PassAsync();
                await many.PassAsync();
                var ratios = new List<double>();
                for (var round = 0; round < rounds; round++)
                {
                    List<double> f = [], m = [];
                    for (var pass = 0; pass < Passes; pass++)
                    {
                        f.Add(await few.PassAsync());
                        m.Add(await many.PassAsync());
                    }
                    ratios.Add(Medians.Of(m) / Medians.Of(f));
                    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"In {name}, {Questions.Length} questions: {Many} kinds {Medians.Of(m):0.00} ms, {Few} kinds {Medians.Of(f):0.00} ms."));
                }
                verdicts.Add(new Verdict($"search in {Many} kinds / in {Few}, kept in {name}", ratios, Promise.AtMost, 2));
            }
            List<double> bare = [];
            var (smallIndex, largeIndex) = (stores[0].Few.Index, stores[0].Many.Index);
            for (var round = 0; round < rounds; round++)
            {
                List<double> f = [], m = [];
                for (var pass = 0; pass < Passes; pass++)
                {
                    f.Add(Find(smallIndex));
                    m.Add(Find(largeIndex));
                }
                bare.Add(Medians.Of(m) / Medians.Of(f));
            }
            verdicts.Add(new Verdict("the search alone, without asking the store for news", bare, Promise.AtMost, 2));
            foreach (var verdict in verdicts) Console.WriteLine(verdict);
            return verdicts.All(v => v.Met) ? 0 : 1;
        }
        finally
        {
            foreach (var folder in folders) Directory.Delete(folder, recursive: true);
        }
    }

    private static double Find(TrayIndex index)
    {
        var clock = Stopwatch.StartNew();
        foreach (var question in Questions) index.Find(question, Shown);
        return clock.Elapsed.TotalMilliseconds;
    }

    private static SqliteShelf OfFile(string folder) => ((ShelfOpening.Opened)SqliteShelf.Open(new SqliteShelfOptions { Folder = folder }, GeneratedPieces.Data, TimeProvider.System)).Shelf;

    private static PostgresShelf OfDatabase(string address) => PostgresAddress.TryRead(address, out var read, out _)
        ? ((PostgresOpening.Opened)PostgresShelf.Open(new PostgresShelfOptions(read), GeneratedPieces.Data, TimeProvider.System)).Shelf
        : throw new InvalidOperationException(address);

    /// <summary>A tray as a page has it.</summary>
    private sealed record Tray(IBeadTray Store, long Revision, TrayIndex Index)
    {
        public static async Task<Tray> OfAsync(IBeadTray store, ImmutableArray<TrayKind> kinds)
        {
            if (await store.ChangeAsync(0, [.. kinds.Select(k => new TrayEdit.Put(k))]) is not TrayAnswer.Kept kept) throw new InvalidOperationException("The tray was not kept.");
            var families = DataFiles.LoadColourFamilies(DataFiles.DefaultFolder).Families!;
            return new Tray(store, kept.Revision, new TrayIndex((await store.SinceAsync(0)).Put, TrayVocabulary.All, families));
        }

        // Every question as a page puts it: first whether there is news.
        public async Task<double> PassAsync()
        {
            var clock = Stopwatch.StartNew();
            foreach (var question in Questions)
            {
                if ((await Store.SinceAsync(Revision)).Revision != Revision) throw new InvalidOperationException("Nobody changed it.");
                Index.Find(question, Shown);
            }
            return clock.Elapsed.TotalMilliseconds;
        }
    }
}
