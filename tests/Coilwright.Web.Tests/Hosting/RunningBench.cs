using Coilwright.Storage.Shelf.Postgres;
using Coilwright.Storage.Shelf.Sqlite;
using Coilwright.Web.Hosting;
using Microsoft.AspNetCore.Builder;

namespace Coilwright.Web.Tests.Hosting;

/// <summary>A bench of its own on a free port, for as long as a test class runs.</summary>
public sealed class RunningBench : IAsyncLifetime
{
    private readonly OwnShelf _shelf = new();
    private WebApplication? _app;

    /// <summary>The folder of its pieces.</summary>
    public string? Folder { get; init; }

    /// <summary>How its shelf is opened.</summary>
    internal Func<SqliteShelfOptions, SqliteShelfOptions> Opening { get; init; } = usual => usual;

    /// <summary>The database of its pieces; null when they are in the folder.</summary>
    public PostgresAddress? Database { get; init; }

    /// <summary>How long it waits for its database.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>The file of its pieces.</summary>
    public string ShelfFile => Path.Combine(Folder ?? _shelf.Folder, SqliteShelfOptions.FileName);

    public Uri Address { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        _app = BenchHost.Build(new BenchOptions
        {
            Port = 0,
            Shelf = Folder ?? _shelf.Folder,
            Opening = Opening,
            Database = Database,
            OpeningDatabase = usual => usual with { Patience = Patience },
        });
        await _app.StartAsync();
        Address = new Uri(Assert.Single(_app.Urls));
    }

    public async ValueTask DisposeAsync()
    {
        if (_app is not null)
        {
            // Stopped first: open connections are closed while what they need is still there.
            await _app.StopAsync();
            await _app.DisposeAsync();
        }
        _shelf.Dispose();
    }
}
