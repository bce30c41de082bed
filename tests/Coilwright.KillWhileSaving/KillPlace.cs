using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Postgres;
using Coilwright.Storage.Shelf.Sqlite;
using Microsoft.Data.Sqlite;

namespace Coilwright.KillWhileSaving;

/// <summary>Where the writer saves.</summary>
/// <param name="Way">The folder or the database's address.</param>
public abstract record KillPlace(string Way)
{
    /// <summary>What sort of place it is, as it is told to the program that is killed.</summary>
    public abstract string Sort { get; }

    /// <summary>The place that was told.</summary>
    public static KillPlace Of(string sort, string way) => sort == "database" ? new KillDatabase(way) : new KillFolder(way);

    /// <summary>Opens the shelf; or says why it does not open.</summary>
    public abstract (IPieceShelf? Shelf, string? Why) Open(ReckoningData data);

    /// <summary>What is wrong with it as a store, whatever is in it; null when nothing is.</summary>
    public abstract Task<string?> LookAsync();
}

/// <summary>A file in a folder.</summary>
/// <param name="Folder">The folder, empty at first.</param>
public sealed record KillFolder(string Folder) : KillPlace(Folder)
{
    /// <inheritdoc/>
    public override string Sort => "folder";

    /// <inheritdoc/>
    public override (IPieceShelf? Shelf, string? Why) Open(ReckoningData data) => SqliteShelf.Open(new SqliteShelfOptions { Folder = Folder }, data, TimeProvider.System) switch
    {
        ShelfOpening.Opened opened => (opened.Shelf, null),
        var not => (null, not.ToString()),
    };

    /// <inheritdoc/>
    public override async Task<string?> LookAsync()
    {
        await using var connection = new SqliteConnection($"Data Source={Path.Combine(Folder, SqliteShelfOptions.FileName)};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        return await command.ExecuteScalarAsync() is "ok" ? null : "the file is not sound";
    }
}

/// <summary>A database.</summary>
/// <param name="Address">Its address, empty at first; without a password.</param>
public sealed record KillDatabase(string Address) : KillPlace(Address)
{
    /// <inheritdoc/>
    public override string Sort => "database";

    /// <inheritdoc/>
    public override (IPieceShelf? Shelf, string? Why) Open(ReckoningData data)
    {
        if (!PostgresAddress.TryRead(Address, out var address, out var fault)) return (null, fault.ToString());
        return PostgresShelf.Open(new PostgresShelfOptions(address), data, TimeProvider.System) switch
        {
            PostgresOpening.Opened opened => (opened.Shelf, null),
            var not => (null, not.ToString()),
        };
    }

    /// <inheritdoc/>
    public override Task<string?> LookAsync() => Task.FromResult<string?>(null);
}
