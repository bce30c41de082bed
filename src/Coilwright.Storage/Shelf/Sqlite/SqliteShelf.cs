using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

/// <summary>How a shelf in a file is opened.</summary>
public sealed record SqliteShelfOptions
{
    /// <summary>Name of the shelf's file in its folder.</summary>
    public const string FileName = "pieces.db";

    /// <summary>The folder; made when it is not there.</summary>
    public string Folder { get; init; } = ShelfFolder.Default;

    /// <summary>How long to wait for another program that is writing. Longer than any write takes, short enough to be told while she looks.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>Done to each connection before it is used; for tests, which bring trouble about with it.</summary>
    internal Action<SqliteConnection>? Prepare { get; init; }
}

/// <summary>What came of opening a shelf.</summary>
public abstract record ShelfOpening
{
    private ShelfOpening() { }

    /// <summary>It is open.</summary>
    /// <param name="Shelf">The shelf.</param>
    public sealed record Opened(SqliteShelf Shelf) : ShelfOpening;

    /// <summary>It cannot be opened; nothing was changed.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotOpened(Fault Why) : ShelfOpening;
}

/// <summary>A shelf in one file on this machine.</summary>
/// <remarks>
/// <para>An SQLite database with a write-ahead log. A step is answered with <see cref="ShelfAnswer.Kept"/> once it is on the disk: whatever happens to the
/// program after that, or to the power, it is there. A step that cannot be written leaves everything as it was.</para>
/// <para>Several programs may use one shelf. The file is described by the scripts in the folder Migrations, which bring an older one up to date.</para>
/// <para>A file that is marked as read-only can be looked at; every step is then refused.</para>
/// </remarks>
public sealed partial class SqliteShelf : IPieceShelf, IDisposable
{
    private readonly SqliteShelfFile _file;
    private readonly ReckoningData _data;
    private readonly TimeProvider _clock;

    // Writers of this program take turns here, in the order in which they came, instead of asking the file again and again.
    private readonly SemaphoreSlim _turn = new(1, 1);

    private SqliteShelf(SqliteShelfFile file, ReckoningData data, TimeProvider clock) => (_file, _data, _clock) = (file, data, clock);

    /// <summary>Path of the shelf's file.</summary>
    public string FilePath => _file.Path;

    /// <summary>Opens a shelf; makes it where there is none.</summary>
    /// <param name="options">Where it is.</param>
    /// <param name="data">Materials, steels and choices to read pieces with.</param>
    /// <param name="clock">The time.</param>
    public static ShelfOpening Open(SqliteShelfOptions options, ReckoningData data, TimeProvider clock)
    {
        var path = Path.Combine(Path.GetFullPath(options.Folder), SqliteShelfOptions.FileName);
        try
        {
            MakeFolder(Path.GetDirectoryName(path)!);
            var file = new SqliteShelfFile(path, options.Patience, IsReadOnly(path)) { Prepare = options.Prepare };
            if (file.BringUpToDate() is { } fault)
            {
                file.Release();
                return new ShelfOpening.NotOpened(fault);
            }
            return new ShelfOpening.Opened(new SqliteShelf(file, data, clock));
        }
        catch (Exception e) when (FileTrouble.Is(e))
        {
            return new ShelfOpening.NotOpened(SqliteTrouble.Fault(path, e));
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _file.Release();
        _turn.Dispose();
    }

    // Looking ------------------------------------------------------------------------------------------------------------------------------

    /// <inheritdoc/>
    public Task<ImmutableArray<ShelfLine>> ListAsync(CancellationToken cancel = default) => ReadAsync(connection =>
    {
        using var command = Command(connection, """
            SELECT p.id, s.title, s.revision, s.at, p.archived FROM pieces p
            JOIN steps s ON s.piece = p.id AND s.revision = (SELECT max(revision) FROM steps WHERE piece = p.id)
            ORDER BY s.at DESC, p.id DESC
            """);
        using var rows = command.ExecuteReader();
        var lines = ImmutableArray.CreateBuilder<ShelfLine>();
        while (rows.Read()) lines.Add(new ShelfLine(Guid.Parse(rows.GetString(0)), rows.GetString(1), rows.GetInt64(2), TimeOf(rows.GetString(3)), rows.GetInt64(4) != 0));
        return lines.ToImmutable();
    }, cancel);

    /// <inheritdoc/>
    public Task<ShelvedPiece?> OpenAsync(Guid id, CancellationToken cancel = default) =>
        ReadAsync(connection => HeadOf(connection, id) is { } head ? Shelved(connection, head) : null, cancel);

    /// <inheritdoc/>
    public Task<Piece?> OpenAsync(Guid id, long revision, CancellationToken cancel = default) =>
        ReadAsync(connection => StepOf(connection, id, revision) is { } step ? PieceOf(connection, step) : null, cancel);

    /// <inheritdoc/>
    public Task<ImmutableArray<ShelfStep>> HistoryAsync(Guid id, CancellationToken cancel = default) => ReadAsync(connection => StepsAfter(connection, id, 0), cancel);

    // Steps --------------------------------------------------------------------------------------------------------------------------------

    /// <inheritdoc/>
    public Task<ShelfAnswer> AddAsync(Piece piece, CancellationToken cancel = default) => WriteAsync<ShelfAnswer>(connection =>
    {
        if (PieceRules.OfTitle(piece.Title) is [var slip, ..]) return new ShelfAnswer.NotKept(slip);
        return new ShelfAnswer.Kept(Shelved(piece, Put(connection, piece)));
    }, answer => answer is ShelfAnswer.Kept, fault => new ShelfAnswer.NotKept(fault), cancel);

    /// <inheritdoc/>
    public Task<FirstAnswer> AddFirstAsync(ImmutableArray<Piece> pieces, CancellationToken cancel = default) => WriteAsync(connection =>
    {
        if (ShelfNames.OfTitles(pieces) is { } slip) return new FirstAnswer(false, slip);
        // Nobody else writes from here on.
        using (var command = Command(connection, "SELECT 1 FROM pieces LIMIT 1"))
            if (command.ExecuteScalar() is not null) return new FirstAnswer(false, null);
        foreach (var piece in pieces) Put(connection, piece);
        return new FirstAnswer(true, null);
    }, answer => answer.ArePut, fault => new FirstAnswer(false, fault), cancel);

    private ShelfHead Put(SqliteConnection connection, Piece piece)
    {
        var id = Guid.CreateVersion7(_clock.GetUtcNow());
        Execute(connection, "INSERT INTO pieces (id) VALUES ($id)", ("$id", NameOf(id)));
        var head = ShelfHead.First(id);
        Add(connection, head, 0, ShelfSteps.Added, null, piece);
        return head;
    }

    /// <inheritdoc/>
    public Task<ShelfAnswer> ChangeAsync(Guid id, long seen, ShelfChange change, CancellationToken cancel = default) => StepAsync(id, seen, (connection, now) =>
    {
        var next = now.Changed;
        Add(connection, next, seen, change.What, change.Edit, change.After);
        // The piece as it was handed over, so that the parts of its text keep their ids.
        return new ShelfAnswer.Kept(Shelved(change.After, next));
    }, cancel);

    /// <inheritdoc/>
    public Task<ShelfAnswer> UndoAsync(Guid id, long seen, CancellationToken cancel = default) => StepAsync(id, seen, (connection, now) =>
    {
        if (now.UndoTo is not { } to) return new ShelfAnswer.Nothing(Shelved(connection, now));
        return Again(connection, now.Undone(StepOf(connection, id, to)!), seen, ShelfSteps.Undone);
    }, cancel);

    /// <inheritdoc/>
    public Task<ShelfAnswer> RedoAsync(Guid id, long seen, CancellationToken cancel = default) => StepAsync(id, seen, (connection, now) =>
    {
        if (now.RedoTo is not { } to) return new ShelfAnswer.Nothing(Shelved(connection, now));
        return Again(connection, now.Redone(StepOf(connection, id, to)!), seen, ShelfSteps.Redone);
    }, cancel);

    /// <inheritdoc/>
    public Task<ShelfAnswer> GoBackAsync(Guid id, long seen, long revision, CancellationToken cancel = default) => StepAsync(id, seen, (connection, now) =>
    {
        if (StepOf(connection, id, revision) is not { } there) return new ShelfAnswer.Missing();
        return Again(connection, now.WentBack(there), seen, ShelfSteps.WentBack);
    }, cancel);

    /// <inheritdoc/>
    public Task<ShelfAnswer> NameAsync(Guid id, long revision, string? name, CancellationToken cancel = default) => StepAsync(id, null, (connection, now) =>
    {
        if (ShelfNames.Of(name) is { } fault) return new ShelfAnswer.NotKept(fault);
        if (StepOf(connection, id, revision) is null) return new ShelfAnswer.Missing();
        if (name is null) Execute(connection, "DELETE FROM state_names WHERE piece = $piece AND revision = $revision", ("$piece", NameOf(id)), ("$revision", revision));
        else
            Execute(connection, "INSERT INTO state_names (piece, revision, name) VALUES ($piece, $revision, $name) ON CONFLICT DO UPDATE SET name = excluded.name",
                ("$piece", NameOf(id)), ("$revision", revision), ("$name", name));
        return new ShelfAnswer.Kept(Shelved(connection, now));
    }, cancel);

    /// <inheritdoc/>
    public Task<ShelfAnswer> ArchiveAsync(Guid id, bool archived, CancellationToken cancel = default) => StepAsync(id, null, (connection, now) =>
    {
        Execute(connection, "UPDATE pieces SET archived = $archived WHERE id = $id", ("$archived", archived ? 1 : 0), ("$id", NameOf(id)));
        return new ShelfAnswer.Kept(Shelved(connection, now with { IsArchived = archived }));
    }, cancel);

    private Task<ShelfAnswer> StepAsync(Guid id, long? seen, Func<SqliteConnection, ShelfHead, ShelfAnswer> step, CancellationToken cancel) => WriteAsync(connection =>
    {
        if (HeadOf(connection, id) is not { } now) return new ShelfAnswer.Missing();
        if (seen is { } s && s != now.Revision) return new ShelfAnswer.Behind(Shelved(connection, now), StepsAfter(connection, id, s));
        return step(connection, now);
    }, answer => answer is ShelfAnswer.Kept, fault => new ShelfAnswer.NotKept(fault), cancel);

    /// <summary>A step to a state that is there already.</summary>
    private ShelfAnswer.Kept Again(SqliteConnection connection, ShelfHead next, long seen, string what)
    {
        var piece = PieceOf(connection, next);
        Add(connection, next, seen, what, null, piece, isThere: true);
        return new ShelfAnswer.Kept(Shelved(piece, next));
    }

    private void Add(SqliteConnection connection, ShelfHead step, long seen, string what, PieceEdit? edit, Piece piece, bool isThere = false) =>
        Execute(connection, """
            INSERT INTO steps (piece, revision, seen, what, edit, at, title, content, content_of, undo_to, redo_to)
            VALUES ($piece, $revision, $seen, $what, $edit, $at, $title, $content, $content_of, $undo_to, $redo_to)
            """,
            ("$piece", NameOf(step.Id)), ("$revision", step.Revision), ("$seen", seen), ("$what", what),
            ("$edit", edit is null ? null : Encoding.UTF8.GetString(EditJson.Write(edit))), ("$at", TextOf(_clock.GetUtcNow())), ("$title", piece.Title),
            ("$content", isThere ? null : Encoding.UTF8.GetString(PieceFile.Write(piece))), ("$content_of", step.ContentOf), ("$undo_to", step.UndoTo), ("$redo_to", step.RedoTo));

    // Rows ---------------------------------------------------------------------------------------------------------------------------------

    private static ShelfHead? HeadOf(SqliteConnection connection, Guid id)
    {
        using var command = Command(connection, StepColumns + "WHERE s.piece = $piece ORDER BY s.revision DESC LIMIT 1", ("$piece", NameOf(id)));
        return HeadOf(command, id);
    }

    private static ShelfHead? StepOf(SqliteConnection connection, Guid id, long revision)
    {
        using var command = Command(connection, StepColumns + "WHERE s.piece = $piece AND s.revision = $revision", ("$piece", NameOf(id)), ("$revision", revision));
        return HeadOf(command, id);
    }

    private const string StepColumns = "SELECT s.revision, s.content_of, s.undo_to, s.redo_to, p.archived FROM steps s JOIN pieces p ON p.id = s.piece ";

    private static ShelfHead? HeadOf(SqliteCommand command, Guid id)
    {
        using var rows = command.ExecuteReader();
        return rows.Read()
            ? new ShelfHead(id, rows.GetInt64(0), rows.GetInt64(1), rows.IsDBNull(2) ? null : rows.GetInt64(2), rows.IsDBNull(3) ? null : rows.GetInt64(3), rows.GetInt64(4) != 0)
            : null;
    }

    private ImmutableArray<ShelfStep> StepsAfter(SqliteConnection connection, Guid id, long revision)
    {
        using var command = Command(connection, """
            SELECT s.revision, s.seen, s.what, s.at, n.name, s.edit, s.content_of FROM steps s
            LEFT JOIN state_names n ON n.piece = s.piece AND n.revision = s.revision
            WHERE s.piece = $piece AND s.revision > $revision ORDER BY s.revision
            """, ("$piece", NameOf(id)), ("$revision", revision));
        using var rows = command.ExecuteReader();
        var steps = ImmutableArray.CreateBuilder<ShelfStep>();
        while (rows.Read())
            steps.Add(new ShelfStep(rows.GetInt64(0), rows.GetInt64(1), rows.GetString(2), TimeOf(rows.GetString(3)), rows.IsDBNull(4) ? null : rows.GetString(4))
            {
                // An edit that this program does not know (a newer one wrote it) is history that cannot be told in full; the state is there all the same.
                Edit = rows.IsDBNull(5) ? null : EditJson.Read(Encoding.UTF8.GetBytes(rows.GetString(5)), _data).Edit,
                Same = rows.GetInt64(6),
            });
        return steps.ToImmutable();
    }

    private ShelvedPiece Shelved(SqliteConnection connection, ShelfHead head) => Shelved(PieceOf(connection, head), head);

    private static ShelvedPiece Shelved(Piece piece, ShelfHead head) =>
        new(head.Id, head.Revision, piece) { CanUndo = head.UndoTo is not null, CanRedo = head.RedoTo is not null, IsArchived = head.IsArchived };

    private Piece PieceOf(SqliteConnection connection, ShelfHead step)
    {
        using var command = Command(connection, "SELECT content, title FROM steps WHERE piece = $piece AND revision = $revision", ("$piece", NameOf(step.Id)), ("$revision", step.ContentOf));
        using var rows = command.ExecuteReader();
        rows.Read();
        var read = PieceFile.Read(Encoding.UTF8.GetBytes(rows.GetString(0)), null, _data);
        return read.Piece ?? throw new ShelfUnreadableException(Fault.Of(FaultCodes.ShelfPieceUnreadable, read.Faults[0].Field, read.Faults[0].Value,
            ("title", rows.GetString(1)), ("revision", step.ContentOf.ToString(CultureInfo.InvariantCulture)), ("detail", read.Faults[0].Code)));
    }

    // The file -----------------------------------------------------------------------------------------------------------------------------

    private Task<T> ReadAsync<T>(Func<SqliteConnection, T> read, CancellationToken cancel) => Task.Run(() =>
    {
        try
        {
            using var connection = _file.Connect();
            // One view of the file for all that is read.
            using var transaction = connection.BeginTransaction(deferred: true);
            return read(connection);
        }
        catch (Exception e) when (SqliteTrouble.Is(e))
        {
            // Whoever mends the file does it behind SQLite's back: the next try opens it anew and remembers nothing of it.
            if (SqliteTrouble.IsDamage(e)) _file.Release();
            throw new ShelfUnreadableException(SqliteTrouble.Fault(_file.Path, e));
        }
    }, cancel);

    private async Task<T> WriteAsync<T>(Func<SqliteConnection, T> write, Func<T, bool> isKept, Func<Fault, T> notKept, CancellationToken cancel)
    {
        await _turn.WaitAsync(cancel).ConfigureAwait(false);
        try
        {
            return await Task.Run(() =>
            {
                try
                {
                    if (_file.ReadOnly) return notKept(Fault.Of(FaultCodes.ShelfReadOnly, "", _file.Path));
                    using var connection = _file.Connect();
                    // The right to write is taken at once: what is read in it is then still so when it is written.
                    using var transaction = connection.BeginTransaction(deferred: false);
                    var answer = write(connection);
                    if (isKept(answer)) transaction.Commit();
                    return answer;
                }
                catch (ShelfUnreadableException e)
                {
                    return notKept(e.Why);
                }
                catch (Exception e) when (SqliteTrouble.Is(e))
                {
                    return notKept(SqliteTrouble.Fault(_file.Path, e));
                }
            }, cancel).ConfigureAwait(false);
        }
        finally
        {
            _turn.Release();
        }
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        foreach (var (name, value) in values) command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        return command;
    }

    private static void Execute(SqliteConnection connection, string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using var command = Command(connection, sql, values);
        command.ExecuteNonQuery();
    }

    private static string NameOf(Guid id) => id.ToString("D");

    private static string TextOf(DateTimeOffset time) => time.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss.fffffff'Z'", CultureInfo.InvariantCulture);

    private static DateTimeOffset TimeOf(string text) =>
        DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal);

    private static void MakeFolder(string folder)
    {
        if (Directory.Exists(folder)) return;
        // Her pieces are her own business.
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        else Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    // Someone who marked the file meant it, for an administrator too, whom the system would let write.
    private static bool IsReadOnly(string path) => File.Exists(path) && (OperatingSystem.IsWindows()
        ? File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly)
        : (File.GetUnixFileMode(path) & (UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite)) == 0);
}
