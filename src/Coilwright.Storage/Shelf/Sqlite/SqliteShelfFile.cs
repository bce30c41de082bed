using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using DbUp;
using DbUp.Engine;
using DbUp.Sqlite.Helpers;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

/// <summary>The file of a shelf: how it is opened, what form it has, and how an older form is brought up to date.</summary>
/// <param name="Path">Path of the file.</param>
/// <param name="Patience">How long to wait for another program to let go.</param>
/// <param name="ReadOnly">Whether it is only read.</param>
internal sealed record SqliteShelfFile(string Path, TimeSpan Patience, bool ReadOnly)
{
    /// <summary>The mark by which a file is known as a shelf: "Coil".</summary>
    public const long ApplicationId = 0x436F696C;

    private static readonly ImmutableArray<SqlScript> Scripts = ShelfScripts.Of("sqlite");

    /// <summary>The newest form that this program knows: the number of the last script.</summary>
    public static long NewestForm => Scripts.Length;

    /// <summary>Done to each connection before it is used; for tests, which bring trouble about with it.</summary>
    public Action<SqliteConnection>? Prepare { get; init; }

    private string ConnectionString => new SqliteConnectionStringBuilder
    {
        DataSource = Path,
        Mode = ReadOnly ? SqliteOpenMode.ReadOnly : SqliteOpenMode.ReadWriteCreate,
        ForeignKeys = true,
        Pooling = true,
        // SQLite itself waits, as it is told in Connect; this is how long the driver goes on asking after that, and 0 would be forever.
        DefaultTimeout = 1,
    }.ToString();

    /// <summary>A connection, open.</summary>
    public SqliteConnection Connect()
    {
        var connection = new SqliteConnection(ConnectionString);
        try
        {
            connection.Open();
            // FULL: what was committed is on the disk, a power cut included (https://www.sqlite.org/pragma.html#pragma_synchronous).
            Execute(connection, string.Create(CultureInfo.InvariantCulture, $"PRAGMA busy_timeout = {(long)Patience.TotalMilliseconds}; PRAGMA synchronous = FULL; PRAGMA trusted_schema = OFF;"));
            Prepare?.Invoke(connection);
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Makes the file where there is none, and brings it to the newest form. Null when it can be used; otherwise why not, and then nothing was
    /// changed.</summary>
    public Fault? BringUpToDate()
    {
        try
        {
            using (var connection = Connect())
            {
                if (FormOf(connection, out var form) is { } fault) return fault;
                if (form == NewestForm && (ReadOnly || (string)Scalar(connection, "PRAGMA journal_mode")! == "wal")) return null;
                if (ReadOnly) return Fault.Of(FaultCodes.ShelfReadOnly, "", Path);
            }
            // One at a time: two programs that start together would both find an old form.
            using var door = OpenDoor();
            using (var connection = Connect())
            {
                if (FormOf(connection, out var form) is { } fault) return fault;
                if (form < NewestForm && Migrate(connection) is { } broken) return broken;
                // Readers do not wait for a writer, nor it for them; remembered in the file.
                Execute(connection, "PRAGMA journal_mode = WAL;");
            }
            return null;
        }
        catch (Exception e) when (SqliteTrouble.Is(e))
        {
            return SqliteTrouble.Fault(Path, e);
        }
    }

    /// <summary>What form the file has, 0 when nothing is in it; or a fault when it is no shelf or of a newer program.</summary>
    public Fault? FormOf(SqliteConnection connection, out long form)
    {
        form = (long)Scalar(connection, "PRAGMA user_version")!;
        var mark = (long)Scalar(connection, "PRAGMA application_id")!;
        var isEmpty = (long)Scalar(connection, "SELECT count(*) FROM sqlite_schema")! == 0;
        if (mark != ApplicationId && (!isEmpty || form != 0 || mark != 0)) return Fault.Of(FaultCodes.ShelfNotOne, "", Path);
        if (form <= NewestForm) return null;
        return Fault.Of(FaultCodes.ShelfNewer, "", Path, ("found", form.ToString(CultureInfo.InvariantCulture)), ("known", NewestForm.ToString(CultureInfo.InvariantCulture)));
    }

    /// <summary>Gives the file back to the system: connections that were kept for later are closed.</summary>
    public void Release()
    {
        using var connection = new SqliteConnection(ConnectionString);
        SqliteConnection.ClearPool(connection);
    }

    public static object? Scalar(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar();
    }

    public static void Execute(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private Fault? Migrate(SqliteConnection connection)
    {
        using var shared = new SharedConnection(connection);
        var result = DeployChanges.To.SqliteDatabase(shared)
            .WithScripts(Scripts)
            .WithTransaction()
            .LogToNowhere()
            .Build().PerformUpgrade();
        if (result.Successful) return null;
        return SqliteTrouble.Is(result.Error) ? SqliteTrouble.Fault(Path, result.Error)
            : Fault.Of(FaultCodes.ShelfOther, "", Path, ("reason", result.Error.Message));
    }

    private FileStream OpenDoor()
    {
        var door = Path + ".opening";
        var until = Environment.TickCount64 + (long)Patience.TotalMilliseconds;
        while (true)
        {
            try
            {
                return new FileStream(door, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (Environment.TickCount64 < until && Directory.Exists(System.IO.Path.GetDirectoryName(door)))
            {
                Thread.Sleep(20);
            }
        }
    }
}
