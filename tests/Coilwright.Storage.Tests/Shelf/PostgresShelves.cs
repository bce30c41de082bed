using Coilwright.Core.Faults;
using Coilwright.OwnDatabase;
using Coilwright.Storage.Shelf.Postgres;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>Shelves in databases of a server of the tests' own.</summary>
internal sealed class PostgresShelves : IDisposable
{
    private readonly List<PostgresShelf> _open = [];
    private readonly List<string> _databases = [];

    /// <summary>A shelf in a new database.</summary>
    public PostgresShelf Empty() => Open(NewDatabase());

    public PostgresShelf Open(string way, TimeSpan? patience = null)
    {
        var opening = OpeningAt(way, patience);
        var shelf = opening is PostgresOpening.Opened opened ? opened.Shelf : throw new InvalidOperationException(Said(((PostgresOpening.NotOpened)opening).Why));
        lock (_open) _open.Add(shelf);
        return shelf;
    }

    private static string Said(Fault why) => $"{why.Code}: {string.Join(", ", why.Values.Values)}";

    /// <summary>A new database of the server that is shared; it goes with these shelves.</summary>
    public string NewDatabase()
    {
        var way = Task.Run(async () => await (await PostgresServer.SharedAsync()).NewDatabaseAsync()).GetAwaiter().GetResult();
        lock (_databases) _databases.Add(way);
        return way;
    }

    public static PostgresAddress Address(string way) => PostgresAddress.TryRead(way, out var address, out var fault) ? address : throw new InvalidOperationException(fault.ToString());

    public static PostgresOpening OpeningAt(string way, TimeSpan? patience = null) =>
        PostgresShelf.Open(new PostgresShelfOptions(Address(way)) { Patience = patience ?? TimeSpan.FromSeconds(5) }, TestData.Data, TimeProvider.System);

    public static Fault WhyShut(string way) => Assert.IsType<PostgresOpening.NotOpened>(OpeningAt(way, TimeSpan.FromMilliseconds(200))).Why;

    public void Dispose()
    {
        foreach (var shelf in _open) shelf.Dispose();
        // Each takes several megabytes, empty as it is.
        Task.Run(async () =>
        {
            foreach (var way in _databases) await (await PostgresServer.SharedAsync()).DropAsync(way);
        }).GetAwaiter().GetResult();
    }
}
