using Coilwright.Core.Buying;
using Coilwright.Core.Listings;
using Coilwright.Core.Pieces;
using Coilwright.Solvers;
using Coilwright.Storage;
using Coilwright.Storage.Lists;
using Coilwright.Storage.Made;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Postgres;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Storage.Stock;
using Coilwright.Storage.Tray;
using Coilwright.Web.Hosting;
using Coilwright.Web.Jobs;
using Coilwright.Web.Papers;
using Coilwright.Wording;

namespace Coilwright.Web.Bench;

/// <summary>What the bench's pages need, put together once.</summary>
internal static class BenchServices
{
    /// <summary>Adds the program's data, the shelf and each visitor's bench.</summary>
    public static void AddBench(this IServiceCollection services, BenchOptions options)
    {
        services.AddSingleton(options);
        services.AddSingleton(TimeProvider.System);
        var data = ReadData(options);
        services.AddSingleton(data);
        services.AddSingleton(ReadCautions(options));
        // Opened before anything else, so that what keeps it shut is told where the program was started. Made by a factory, the shelf is closed with the host.
        if (options.Database is { } address)
        {
            services.AddSingleton<ShelfPlace>(new ShelfPlace.Database(address.Place, address.ToolOptions));
            services.AddShelf(OpenDatabase(options.OpeningDatabase(new PostgresShelfOptions(address)), data));
        }
        else
        {
            var shelf = OpenFile(options, data);
            services.AddSingleton<ShelfPlace>(new ShelfPlace.File(shelf.FilePath));
            services.AddShelf(shelf);
        }
        services.AddSingleton<IBuyer>(_ => new CheapestBuyer());
        services.AddSingleton<ShopDesk>();
        services.AddSingleton<WireDesk>();
        services.AddSingleton<CostsDesk>();
        services.AddSingleton<PriceDesk>();
        services.AddSingleton<KitDesk>();
        services.AddSingleton<QuoteDesk>();
        services.AddSingleton<ClassDesk>();
        services.AddSingleton<BatchDesk>();
        services.AddSingleton<TrayDesk>();
        services.AddSingleton<StringingPlaces>();
        services.AddSingleton<QuietCores>();
        services.AddSingleton<Reckoner>();
        services.AddSingleton<SettledPieces>();
        services.AddSingleton<ArmsInMind>();
        services.AddSingleton<JobList>();
        services.AddHostedService(s => s.GetRequiredService<JobList>());
        services.AddSingleton<SheetMaker>();
        services.AddSingleton<CoverDesk>();
        services.AddSingleton<ErrataMaker>();
        services.AddSingleton<Colourways>();
        services.AddSingleton<ExamplePieces>();
        services.AddSingleton<Catalogue>();
        services.AddHostedService<FirstPieceReady>();
        services.AddSingleton<PieceNews>();
        services.AddScoped<BenchSession>();
        services.AddScoped<BenchHands>();
        services.AddScoped<Basket>();
        services.AddScoped<PreferencesKeeper>();
    }

    private static void AddShelf<T>(this IServiceCollection services, T shelf) where T : class, IPieceShelf, ITrialLog, ICovers, IStockLedger, IKeptLists, IMadeBook, IBeadTray, IShelfBackup
    {
        services.AddSingleton(_ => shelf);
        services.AddSingleton<IPieceShelf>(s => s.GetRequiredService<T>());
        services.AddSingleton<ITrialLog>(s => s.GetRequiredService<T>());
        services.AddSingleton<ICovers>(s => s.GetRequiredService<T>());
        services.AddSingleton<IStockLedger>(s => s.GetRequiredService<T>());
        services.AddSingleton<IMadeBook>(s => s.GetRequiredService<T>());
        services.AddSingleton<IBeadTray>(s => s.GetRequiredService<T>());
        services.AddSingleton<IKeptLists>(s => s.GetRequiredService<T>());
        services.AddSingleton<IShelfBackup>(s => s.GetRequiredService<T>());
    }

    private static PostgresShelf OpenDatabase(PostgresShelfOptions options, ReckoningData data) => PostgresShelf.Open(options, data, TimeProvider.System) switch
    {
        PostgresOpening.Opened opened => opened.Shelf,
        PostgresOpening.NotOpened not => throw new ShelfShutException(not.Why),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static SqliteShelf OpenFile(BenchOptions options, ReckoningData data) =>
        SqliteShelf.Open(options.Opening(new SqliteShelfOptions { Folder = options.Shelf }), data, TimeProvider.System) switch
        {
            ShelfOpening.Opened opened => opened.Shelf,
            ShelfOpening.NotOpened not => throw new ShelfShutException(not.Why),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static CautionData ReadCautions(BenchOptions options)
    {
        var (cautions, faults) = DataFiles.LoadCautions(Path.Combine(options.ProgramFolder, "data"));
        return cautions ?? throw new InvalidDataException(string.Join('\n', faults.Select(f => Languages.English.Say(f).Message)));
    }

    private static ReckoningData ReadData(BenchOptions options)
    {
        var read = DataFiles.Load(Path.Combine(options.ProgramFolder, "data"));
        return read.Data ?? throw new InvalidDataException(string.Join('\n', read.Faults.Select(f => Languages.English.Say(f).Message)));
    }
}
