using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Sqlite;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>Shelves in files, each in a folder of its own that goes with them.</summary>
internal sealed class SqliteShelves : IDisposable
{
    private readonly List<IDisposable> _open = [];

    public static Piece Boardwalk { get; } = PieceFile.ReadFrom(TestData.ExampleFiles.First(), TestData.Data).Piece!;

    public string NewFolder()
    {
        var folder = new TempFolder();
        _open.Add(folder);
        return folder.Path;
    }

    public SqliteShelf Empty() => Open(NewFolder());

    public SqliteShelf Open(string folder, TimeSpan? patience = null, Action<SqliteConnection>? prepare = null)
    {
        var opening = Opening(folder, patience, prepare);
        var shelf = opening is ShelfOpening.Opened opened ? opened.Shelf : throw new InvalidOperationException(((ShelfOpening.NotOpened)opening).Why.ToString());
        _open.Insert(0, shelf); // before its folder
        return shelf;
    }

    public static ShelfOpening Opening(string folder, TimeSpan? patience = null, Action<SqliteConnection>? prepare = null) =>
        SqliteShelf.Open(new SqliteShelfOptions { Folder = folder, Patience = patience ?? TimeSpan.FromSeconds(5), Prepare = prepare }, TestData.Data, TimeProvider.System);

    public static Fault NotOpened(string folder) => Assert.IsType<ShelfOpening.NotOpened>(Opening(folder, TimeSpan.FromMilliseconds(200))).Why;

    /// <summary>A connection of another program.</summary>
    public static SqliteConnection Other(string file, SqliteOpenMode mode = SqliteOpenMode.ReadWriteCreate)
    {
        var other = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false, Mode = mode }.ToString());
        other.Open();
        return other;
    }

    public static object? Ask(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    public static ShelvedPiece Kept(ShelfAnswer answer) => answer is ShelfAnswer.Kept kept ? kept.Now : throw new InvalidOperationException(answer.ToString());

    public static ShelfChange To(string title) => new("set-title", Boardwalk with { Title = title });

    public void Dispose()
    {
        foreach (var one in _open) one.Dispose();
    }
}
