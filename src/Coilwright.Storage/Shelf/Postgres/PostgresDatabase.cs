using System.Collections.Immutable;
using System.Data;
using System.Globalization;
using Coilwright.Core.Faults;
using DbUp;
using DbUp.Engine;
using DbUp.Postgresql;
using Npgsql;

namespace Coilwright.Storage.Shelf.Postgres;

/// <summary>The database of a shelf: how it is asked, what form it has, and how an older form is brought up to date.</summary>
internal sealed class PostgresDatabase : IAsyncDisposable, IDisposable
{
    private const string Schema = "coilwright", Journal = "schemaversions";

    // Whoever brings the form up to date holds this: "Coil", as a file of ours is marked. Chosen by us; a database has one space for such numbers.
    private const long Door = 0x436F696C;

    private static readonly ImmutableArray<SqlScript> Scripts = ShelfScripts.Of("postgres");

    private readonly PostgresAddress _address;
    private readonly NpgsqlDataSource _source;
    private readonly TimeSpan _patience;

    /// <summary>Asks nothing yet.</summary>
    /// <param name="address">Where it is.</param>
    /// <param name="patience">How long to wait for another program to let go.</param>
    public PostgresDatabase(PostgresAddress address, TimeSpan patience) => (_address, _source, _patience) = (address, NpgsqlDataSource.Create(address.ConnectionString), patience);

    /// <summary>The newest form that this program knows: the number of the last script.</summary>
    public static int NewestForm => Scripts.Length;

    /// <summary>The database, as it may be shown.</summary>
    public string Place => _address.Place;

    /// <summary>A turn that sees one state of the database throughout.</summary>
    public Task<PostgresTurn> BeginReadingAsync(CancellationToken cancel) => BeginAsync(IsolationLevel.RepeatableRead, "SET TRANSACTION READ ONLY", cancel);

    /// <summary>A turn to write in. Each statement sees what was committed before it: after a lock, what the one who held it left.</summary>
    public Task<PostgresTurn> BeginWritingAsync(CancellationToken cancel) =>
        // What is committed is on the disk, also where the server is set to answer before.
        BeginAsync(IsolationLevel.ReadCommitted, string.Create(CultureInfo.InvariantCulture,
            $"SET LOCAL lock_timeout = {Math.Max(1, (long)_patience.TotalMilliseconds)}; SELECT set_config('synchronous_commit', 'on', true) WHERE current_setting('synchronous_commit') = 'off'"),
            cancel);

    /// <summary>Makes the tables where there are none, and brings them to the newest form. Null when they can be used; otherwise why not, and then nothing was
    /// changed.</summary>
    public Fault? BringUpToDate()
    {
        try
        {
            using (var connection = _source.OpenConnection())
            {
                if (FormOf(connection, out var form) is { } fault) return fault;
                if (form == NewestForm) return null;
            }
            // One at a time: two programs that start together would both find an old form. The lock goes with this connection.
            using var door = new NpgsqlConnection(new NpgsqlConnectionStringBuilder(_address.ConnectionString) { Pooling = false }.ConnectionString);
            door.Open();
            Execute(door, string.Create(CultureInfo.InvariantCulture, $"SET lock_timeout = {Math.Max(1, (long)_patience.TotalMilliseconds)}; SELECT pg_advisory_lock({Door})"));
            return FormOf(door, out var found) is { } late ? late : found == NewestForm ? null : Migrate(door);
        }
        catch (Exception e) when (PostgresTrouble.Is(e))
        {
            return PostgresTrouble.Fault(Place, e);
        }
    }

    /// <summary>Connections that are kept for later are closed.</summary>
    public void Forget() => _source.Clear();

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _source.DisposeAsync();

    /// <inheritdoc/>
    public void Dispose() => _source.Dispose();

    private async Task<PostgresTurn> BeginAsync(IsolationLevel level, string settings, CancellationToken cancel)
    {
        var connection = await _source.OpenConnectionAsync(cancel);
        try
        {
            var transaction = await connection.BeginTransactionAsync(level, cancel);
            await using var command = new NpgsqlCommand(settings, connection);
            await command.ExecuteNonQueryAsync(cancel);
            return new PostgresTurn(connection, transaction, cancel);
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    /// <summary>What form the tables have, 0 when there are none; or a fault when they are none of ours or of a newer program.</summary>
    private Fault? FormOf(NpgsqlConnection connection, out int form)
    {
        form = 0;
        var names = TextsOf(connection, $"SELECT c.relname::text FROM pg_catalog.pg_class c JOIN pg_catalog.pg_namespace n ON n.oid = c.relnamespace WHERE n.nspname = '{Schema}'");
        if (names.Count == 0) return null;
        if (!names.Contains(Journal)) return Fault.Of(FaultCodes.DatabaseNotOurs, "", Place);
        var run = TextsOf(connection, $"SELECT scriptname::text FROM {Schema}.{Journal}");
        form = run.Count;
        if (run.IsSubsetOf(Scripts.Select(script => script.Name))) return null;
        return Fault.Of(FaultCodes.ShelfNewer, "", Place, ("found", form.ToString(CultureInfo.InvariantCulture)), ("known", NewestForm.ToString(CultureInfo.InvariantCulture)));
    }

    private Fault? Migrate(NpgsqlConnection door)
    {
        // The journal lies in the schema too, so the schema comes first; one that somebody with more rights made is used as it is.
        var isNew = TextsOf(door, $"SELECT nspname::text FROM pg_catalog.pg_namespace WHERE nspname = '{Schema}'").Count == 0;
        if (isNew) Execute(door, $"CREATE SCHEMA {Schema}");
        var result = DeployChanges.To.PostgresqlDatabase(new PostgresqlConnectionManager(_source))
            .JournalToPostgresqlTable(Schema, Journal)
            .WithScripts(Scripts)
            .WithVariablesDisabled()
            .WithTransaction()
            .LogToNowhere()
            .Build().PerformUpgrade();
        if (result.Successful) return null;
        if (isNew) Execute(door, $"DROP SCHEMA {Schema}");
        return PostgresTrouble.Is(result.Error) ? PostgresTrouble.Fault(Place, result.Error)
            : Fault.Of(FaultCodes.DatabaseOther, "", Place, ("reason", result.Error.Message));
    }

    private static HashSet<string> TextsOf(NpgsqlConnection connection, string sql)
    {
        using var command = new NpgsqlCommand(sql, connection);
        using var rows = command.ExecuteReader();
        var texts = new HashSet<string>(StringComparer.Ordinal);
        while (rows.Read()) texts.Add(rows.GetString(0));
        return texts;
    }

    private static void Execute(NpgsqlConnection connection, string sql)
    {
        using var command = new NpgsqlCommand(sql, connection);
        command.ExecuteNonQuery();
    }
}
