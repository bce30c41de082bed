using Coilwright.Core.Pieces;
using Coilwright.Storage;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Hosting;
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
        services.AddSingleton(_ => ReadData(options));
        services.AddSingleton<IPieceShelf, MemoryShelf>();
        services.AddSingleton<Reckoner>();
        services.AddSingleton<SheetMaker>();
        services.AddSingleton<ExamplePieces>();
        services.AddHostedService<FirstPieceReady>();
        services.AddSingleton<PieceNews>();
        services.AddScoped<BenchSession>();
        services.AddScoped<BenchHands>();
        services.AddScoped<PreferencesKeeper>();
    }

    private static ReckoningData ReadData(BenchOptions options)
    {
        var read = DataFiles.Load(Path.Combine(options.ProgramFolder, "data"));
        return read.Data ?? throw new InvalidDataException(string.Join('\n', read.Faults.Select(f => Languages.English.Say(f).Message)));
    }
}
