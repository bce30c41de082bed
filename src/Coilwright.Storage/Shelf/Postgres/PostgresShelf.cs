using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Npgsql;

namespace Coilwright.Storage.Shelf.Postgres;

/// <summary>How a shelf in a database is opened.</summary>
/// <param name="Address">Where it is.</param>
public sealed record PostgresShelfOptions(PostgresAddress Address)
{
    /// <summary>How long to wait for another program that is writing, and for a server that went away in the middle of keeping something. Longer than any write takes,
    /// short enough to be told while she looks.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(5);
}

/// <summary>What came of opening a shelf in a database.</summary>
public abstract record PostgresOpening
{
    private PostgresOpening() { }

    /// <summary>It is open.</summary>
    /// <param name="Shelf">The shelf.</param>
    public sealed record Opened(PostgresShelf Shelf) : PostgresOpening;

    /// <summary>It cannot be opened; nothing was changed.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotOpened(Fault Why) : PostgresOpening;
}

/// <summary>A shelf in a PostgreSQL database, in a schema of its own.</summary>
/// <remarks>
/// <para>A step locks its piece's row, so of many who saw the same state one is kept and the others are told what they missed. It is answered with
/// <see cref="ShelfAnswer.Kept"/> once the server has it on the disk (as far as the server itself waits for the disk: <c>fsync</c>).</para>
/// <para>A server that goes away is waited for and asked again where nothing can be done twice by it. Where the answer to a commit was lost, the step is looked
/// for by its mark; while that cannot be done it is told as not kept, and the same step, offered again, is found or taken, never taken twice.</para>
/// <para>Several programs may use one database. The tables are described by the scripts in the folder Migrations.</para>
/// </remarks>
public sealed partial class PostgresShelf : IPieceShelf, IAsyncDisposable, IDisposable
{
    private readonly PostgresDatabase _database;
    private readonly PostgresShelfOptions _options;
    private readonly ReckoningData _data;
    private readonly TimeProvider _clock;

    // The change of each piece that was last offered and not kept, or not heard to be.
    private readonly ConcurrentDictionary<Guid, Offer> _offers = new();

    private PostgresShelf(PostgresDatabase database, PostgresShelfOptions options, ReckoningData data, TimeProvider clock) =>
        (_database, _options, _data, _clock) = (database, options, data, clock);

    /// <summary>The database, as it may be shown.</summary>
    public string Place => _database.Place;

    /// <summary>Opens a shelf; makes its tables where there are none.</summary>
    /// <param name="options">Where it is.</param>
    /// <param name="data">Materials, steels and choices to read pieces with.</param>
    /// <param name="clock">The time.</param>
    public static PostgresOpening Open(PostgresShelfOptions options, ReckoningData data, TimeProvider clock)
    {
        var database = new PostgresDatabase(options.Address, options.Patience);
        if (database.BringUpToDate() is not { } fault) return new PostgresOpening.Opened(new PostgresShelf(database, options, data, clock));
        database.Dispose();
        return new PostgresOpening.NotOpened(fault);
    }

    /// <inheritdoc/>
    public void Dispose() => _database.Dispose();

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _database.DisposeAsync();

    // Looking ------------------------------------------------------------------------------------------------------------------------------

    /// <inheritdoc/>
    public Task<ImmutableArray<ShelfLine>> ListAsync(CancellationToken cancel = default) => ReadAsync<ImmutableArray<ShelfLine>>(async turn =>
        [.. await turn.ReadAsync(row => new ShelfLine(row.GetGuid(0), row.GetString(1), row.GetInt64(2), TimeOf(row, 3), row.GetBoolean(4)), """
            SELECT p.id, s.title, s.revision, s.at, p.archived FROM coilwright.pieces p
            JOIN coilwright.steps s ON s.piece = p.id AND s.revision = (SELECT max(revision) FROM coilwright.steps WHERE piece = p.id)
            ORDER BY s.at DESC, p.id DESC
            """)], cancel);

    /// <inheritdoc/>
    public Task<ShelvedPiece?> OpenAsync(Guid id, CancellationToken cancel = default) =>
        ReadAsync(async turn => await HeadOfAsync(turn, id) is { } head ? await ShelvedAsync(turn, head) : null, cancel);

    /// <inheritdoc/>
    public Task<Piece?> OpenAsync(Guid id, long revision, CancellationToken cancel = default) =>
        ReadAsync(async turn => await StepOfAsync(turn, id, revision) is { } step ? await PieceOfAsync(turn, step) : null, cancel);

    /// <inheritdoc/>
    public Task<ImmutableArray<ShelfStep>> HistoryAsync(Guid id, CancellationToken cancel = default) => ReadAsync(turn => StepsAfterAsync(turn, id, 0), cancel);

    // Steps --------------------------------------------------------------------------------------------------------------------------------

    /// <inheritdoc/>
    public Task<ShelfAnswer> AddAsync(Piece piece, CancellationToken cancel = default)
    {
        if (PieceRules.OfTitle(piece.Title) is [var slip, ..]) return Task.FromResult<ShelfAnswer>(new ShelfAnswer.NotKept(slip));
        var (head, mark) = (ShelfHead.First(Guid.CreateVersion7(_clock.GetUtcNow())), Guid.NewGuid());
        return WriteAsync<ShelfAnswer>(async turn =>
        {
            await PutAsync(turn, head, mark, piece);
            return new ShelfAnswer.Kept(Shelved(piece, head));
        }, answer => answer is ShelfAnswer.Kept, fault => new ShelfAnswer.NotKept(fault), turn => IsThereAsync(turn, head.Id, mark), cancel);
    }

    /// <inheritdoc/>
    public Task<FirstAnswer> AddFirstAsync(ImmutableArray<Piece> pieces, CancellationToken cancel = default)
    {
        if (ShelfNames.OfTitles(pieces) is { } slip) return Task.FromResult(new FirstAnswer(false, slip));
        if (pieces.IsEmpty) return Task.FromResult(new FirstAnswer(false, null));
        var first = (Head: ShelfHead.First(Guid.CreateVersion7(_clock.GetUtcNow())), Mark: Guid.NewGuid());
        return WriteAsync(async turn =>
        {
            // Whoever puts a piece there, in whatever program, is waited for and waits for this; looking does not.
            await turn.DoAsync("LOCK TABLE coilwright.pieces IN SHARE ROW EXCLUSIVE MODE");
            if (await turn.ReadAsync(_ => true, "SELECT FROM coilwright.pieces LIMIT 1") is not []) return new FirstAnswer(false, null);
            await PutAsync(turn, first.Head, first.Mark, pieces[0]);
            foreach (var piece in pieces.Skip(1)) await PutAsync(turn, ShelfHead.First(Guid.CreateVersion7(_clock.GetUtcNow())), Guid.NewGuid(), piece);
            return new FirstAnswer(true, null);
        }, answer => answer.ArePut, fault => new FirstAnswer(false, fault), turn => IsThereAsync(turn, first.Head.Id, first.Mark), cancel);
    }

    private async Task PutAsync(PostgresTurn turn, ShelfHead head, Guid mark, Piece piece)
    {
        await turn.DoAsync("INSERT INTO coilwright.pieces (id) VALUES (@id)", ("id", head.Id));
        await AddAsync(turn, head, mark, 0, ShelfSteps.Added, null, piece);
    }

    /// <inheritdoc/>
    public async Task<ShelfAnswer> ChangeAsync(Guid id, long seen, ShelfChange change, CancellationToken cancel = default)
    {
        // Offered again, it has the mark that it had.
        var offer = _offers.TryGetValue(id, out var before) && ReferenceEquals(before.Change, change) ? before : new Offer(change, Guid.NewGuid());
        _offers[id] = offer;
        var answer = await StepAsync(id, seen, offer.Mark, async (turn, now) =>
        {
            await AddAsync(turn, now.Changed, offer.Mark, seen, change.What, change.Edit, change.After);
            return KeptAs(now.Changed);
        }, KeptAs, cancel).ConfigureAwait(false);
        if (answer is not ShelfAnswer.NotKept) _offers.TryRemove(KeyValuePair.Create(id, offer));
        return answer;

        // The piece as it was handed over, so that the parts of its text keep their ids.
        ShelfAnswer.Kept KeptAs(ShelfHead head) => new(Shelved(change.After, head));
    }

    /// <inheritdoc/>
    public Task<ShelfAnswer> UndoAsync(Guid id, long seen, CancellationToken cancel = default) =>
        AgainAsync(id, seen, ShelfSteps.Undone, async (turn, now) => now.UndoTo is { } to ? now.Undone((await StepOfAsync(turn, id, to))!) : null, cancel);

    /// <inheritdoc/>
    public Task<ShelfAnswer> RedoAsync(Guid id, long seen, CancellationToken cancel = default) =>
        AgainAsync(id, seen, ShelfSteps.Redone, async (turn, now) => now.RedoTo is { } to ? now.Redone((await StepOfAsync(turn, id, to))!) : null, cancel);

    /// <inheritdoc/>
    public async Task<ShelfAnswer> GoBackAsync(Guid id, long seen, long revision, CancellationToken cancel = default) =>
        await AgainAsync(id, seen, ShelfSteps.WentBack, async (turn, now) => await StepOfAsync(turn, id, revision) is { } there ? now.WentBack(there) : null, cancel)
            .ConfigureAwait(false) is var answer and not ShelfAnswer.Nothing ? answer : new ShelfAnswer.Missing();

    /// <inheritdoc/>
    public Task<ShelfAnswer> NameAsync(Guid id, long revision, string? name, CancellationToken cancel = default) => StepAsync(id, null, null, async (turn, now) =>
    {
        if (ShelfNames.Of(name) is { } fault) return new ShelfAnswer.NotKept(fault);
        if (await StepOfAsync(turn, id, revision) is null) return new ShelfAnswer.Missing();
        if (name is null) await turn.DoAsync("DELETE FROM coilwright.state_names WHERE piece = @piece AND revision = @revision", ("piece", id), ("revision", revision));
        else
            await turn.DoAsync("""
                INSERT INTO coilwright.state_names (piece, revision, name) VALUES (@piece, @revision, @name)
                ON CONFLICT (piece, revision) DO UPDATE SET name = excluded.name
                """, ("piece", id), ("revision", revision), ("name", TextOf(name)));
        return new ShelfAnswer.Kept(await ShelvedAsync(turn, now));
    }, null, cancel);

    /// <inheritdoc/>
    public Task<ShelfAnswer> ArchiveAsync(Guid id, bool archived, CancellationToken cancel = default) => StepAsync(id, null, null, async (turn, now) =>
    {
        await turn.DoAsync("UPDATE coilwright.pieces SET archived = @archived WHERE id = @id", ("archived", archived), ("id", id));
        return new ShelfAnswer.Kept(await ShelvedAsync(turn, now with { IsArchived = archived }));
    }, null, cancel);

    /// <summary>A step to a state that is there already; <see cref="ShelfAnswer.Nothing"/> where there is none to go to.</summary>
    private Task<ShelfAnswer> AgainAsync(Guid id, long seen, string what, Func<PostgresTurn, ShelfHead, Task<ShelfHead?>> to, CancellationToken cancel)
    {
        var mark = Guid.NewGuid();
        return StepAsync(id, seen, mark, async (turn, now) =>
        {
            if (await to(turn, now) is not { } next) return new ShelfAnswer.Nothing(await ShelvedAsync(turn, now));
            var piece = await PieceOfAsync(turn, next);
            await AddAsync(turn, next, mark, seen, what, null, piece, isThere: true);
            return new ShelfAnswer.Kept(Shelved(piece, next));
        }, null, cancel);
    }

    /// <summary>Does something to a piece while nobody else does.</summary>
    /// <param name="id">The piece.</param>
    /// <param name="seen">The state that must still be the newest; null for any.</param>
    /// <param name="mark">The mark that the step gets; null when it is none.</param>
    /// <param name="step">What is done.</param>
    /// <param name="known">The answer to a step that was kept when it was offered before; null where none is offered twice.</param>
    /// <param name="cancel">Gives up.</param>
    private Task<ShelfAnswer> StepAsync(Guid id, long? seen, Guid? mark, Func<PostgresTurn, ShelfHead, Task<ShelfAnswer>> step, Func<ShelfHead, ShelfAnswer>? known,
        CancellationToken cancel) => WriteAsync(async turn =>
    {
        await LockAsync(turn, id);
        if (await HeadOfAsync(turn, id) is not { } now) return new ShelfAnswer.Missing();
        if (seen is not { } s || s == now.Revision) return await step(turn, now);
        if (known is not null && now.Revision == s + 1 && await IsThereAsync(turn, id, mark!.Value)) return known(now);
        return new ShelfAnswer.Behind(await ShelvedAsync(turn, now), await StepsAfterAsync(turn, id, s));
    }, answer => answer is ShelfAnswer.Kept, fault => new ShelfAnswer.NotKept(fault), async turn => mark is { } m && await IsThereAsync(turn, id, m), cancel);

    private Task AddAsync(PostgresTurn turn, ShelfHead step, Guid mark, long seen, string what, PieceEdit? edit, Piece piece, bool isThere = false) => turn.DoAsync("""
        INSERT INTO coilwright.steps (piece, revision, mark, seen, what, edit, at, title, content, content_of, undo_to, redo_to)
        VALUES (@piece, @revision, @mark, @seen, @what, @edit, @at, @title, @content, @content_of, @undo_to, @redo_to)
        """,
        ("piece", step.Id), ("revision", step.Revision), ("mark", mark), ("seen", seen), ("what", what),
        ("edit", edit is null ? null : Encoding.UTF8.GetString(EditJson.Write(edit))), ("at", Now().UtcDateTime), ("title", TextOf(piece.Title)),
        ("content", isThere ? null : Encoding.UTF8.GetString(PieceFile.Write(piece))), ("content_of", step.ContentOf), ("undo_to", step.UndoTo), ("redo_to", step.RedoTo));

    // Rows ---------------------------------------------------------------------------------------------------------------------------------

    private const string StepColumns = "SELECT s.revision, s.content_of, s.undo_to, s.redo_to, p.archived FROM coilwright.steps s JOIN coilwright.pieces p ON p.id = s.piece ";

    private static Task LockAsync(PostgresTurn turn, Guid id) => turn.DoAsync("SELECT FROM coilwright.pieces WHERE id = @id FOR UPDATE", ("id", id));

    /// <summary>Whether a step is there. Whoever may still be keeping it is waited for.</summary>
    private static async Task<bool> IsThereAsync(PostgresTurn turn, Guid id, Guid mark)
    {
        await LockAsync(turn, id);
        return await turn.ReadAsync(_ => true, "SELECT FROM coilwright.steps WHERE mark = @mark", ("mark", mark)) is [true];
    }

    private static async Task<ShelfHead?> HeadOfAsync(PostgresTurn turn, Guid id) =>
        await turn.ReadAsync(row => HeadOf(row, id), StepColumns + "WHERE s.piece = @piece ORDER BY s.revision DESC LIMIT 1", ("piece", id)) is [var head] ? head : null;

    private static async Task<ShelfHead?> StepOfAsync(PostgresTurn turn, Guid id, long revision) =>
        await turn.ReadAsync(row => HeadOf(row, id), StepColumns + "WHERE s.piece = @piece AND s.revision = @revision", ("piece", id), ("revision", revision))
            is [var step] ? step : null;

    private static ShelfHead HeadOf(NpgsqlDataReader row, Guid id) => new(id, row.GetInt64(0), row.GetInt64(1), NumberOf(row, 2), NumberOf(row, 3), row.GetBoolean(4));

    private async Task<ImmutableArray<ShelfStep>> StepsAfterAsync(PostgresTurn turn, Guid id, long revision) =>
        [.. await turn.ReadAsync(row => new ShelfStep(row.GetInt64(0), row.GetInt64(1), row.GetString(2), TimeOf(row, 3), LineOf(row, 4))
        {
            // An edit that this program does not know (a newer one wrote it) is history that cannot be told in full; the state is there all the same.
            Edit = LineOf(row, 5) is { } edit ? EditJson.Read(Encoding.UTF8.GetBytes(edit), _data).Edit : null,
            Same = row.GetInt64(6),
        }, """
            SELECT s.revision, s.seen, s.what, s.at, n.name, s.edit, s.content_of FROM coilwright.steps s
            LEFT JOIN coilwright.state_names n ON n.piece = s.piece AND n.revision = s.revision
            WHERE s.piece = @piece AND s.revision > @revision ORDER BY s.revision
            """, ("piece", id), ("revision", revision))];

    private async Task<ShelvedPiece> ShelvedAsync(PostgresTurn turn, ShelfHead head) => Shelved(await PieceOfAsync(turn, head), head);

    private static ShelvedPiece Shelved(Piece piece, ShelfHead head) =>
        new(head.Id, head.Revision, piece) { CanUndo = head.UndoTo is not null, CanRedo = head.RedoTo is not null, IsArchived = head.IsArchived };

    private async Task<Piece> PieceOfAsync(PostgresTurn turn, ShelfHead step)
    {
        var (content, title) = (await turn.ReadAsync(row => (row.GetString(0), row.GetString(1)),
            "SELECT content, title FROM coilwright.steps WHERE piece = @piece AND revision = @revision", ("piece", step.Id), ("revision", step.ContentOf)))[0];
        var read = PieceFile.Read(Encoding.UTF8.GetBytes(content), null, _data);
        return read.Piece ?? throw new ShelfUnreadableException(Fault.Of(FaultCodes.ShelfPieceUnreadable, read.Faults[0].Field, read.Faults[0].Value,
            ("title", title), ("revision", step.ContentOf.ToString(CultureInfo.InvariantCulture)), ("detail", read.Faults[0].Code)));
    }

    private static long? NumberOf(NpgsqlDataReader row, int column) => row.IsDBNull(column) ? null : row.GetInt64(column);

    private static string? LineOf(NpgsqlDataReader row, int column) => row.IsDBNull(column) ? null : row.GetString(column);

    private static DateTimeOffset TimeOf(NpgsqlDataReader row, int column) => new(row.GetDateTime(column));

    /// <summary>The time, no finer than the database keeps it: to a millionth of a second.</summary>
    private DateTimeOffset Now() => _clock.GetUtcNow() is var now ? now.AddTicks(-(now.Ticks % TimeSpan.TicksPerMicrosecond)) : default;

    /// <summary>A line as the database can keep it: without the sign of number 0, and without halves of signs.</summary>
    private static string TextOf(string line) => Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(line)).Replace('\0', '\uFFFD');

    // The database -------------------------------------------------------------------------------------------------------------------------

    private Task<T> ReadAsync<T>(Func<PostgresTurn, Task<T>> read, CancellationToken cancel) => Task.Run(async () =>
    {
        for (var isFirst = true; ; isFirst = false)
        {
            try
            {
                await using var turn = await _database.BeginReadingAsync(cancel);
                return await read(turn);
            }
            catch (Exception e) when (isFirst && PostgresTrouble.IsLost(e))
            {
                // A connection that was kept from before the server went away: on a new one it may answer again.
                _database.Forget();
            }
            catch (Exception e) when (PostgresTrouble.Is(e))
            {
                throw new ShelfUnreadableException(PostgresTrouble.Fault(Place, e));
            }
        }
    }, cancel);

    /// <summary>Writes all of something or nothing.</summary>
    /// <param name="write">What is written, and the answer to it.</param>
    /// <param name="isKept">Whether what an answer tells is to be committed.</param>
    /// <param name="notKept">The answer when it cannot be.</param>
    /// <param name="isThere">Whether it is there: asked when it was committed and the connection was lost before the answer came.</param>
    /// <param name="cancel">Gives up before it is committed.</param>
    private Task<T> WriteAsync<T>(Func<PostgresTurn, Task<T>> write, Func<T, bool> isKept, Func<Fault, T> notKept, Func<PostgresTurn, Task<bool>> isThere,
        CancellationToken cancel) where T : class => Task.Run(async () =>
    {
        for (var isFirst = true; ; isFirst = false)
        {
            T? committing = null;
            try
            {
                await using var turn = await _database.BeginWritingAsync(cancel);
                var answer = await write(turn);
                if (!isKept(answer)) return answer;
                committing = answer;
                await turn.CommitAsync();
                return answer;
            }
            catch (ShelfUnreadableException e)
            {
                return notKept(e.Why);
            }
            catch (Exception e) when (isFirst && committing is null && PostgresTrouble.IsLost(e))
            {
                // As in reading; what was not committed was not done.
                _database.Forget();
            }
            catch (Exception e) when (PostgresTrouble.Is(e))
            {
                if (committing is not null && await WasKeptAsync(isThere)) return committing;
                return notKept(PostgresTrouble.Fault(Place, e));
            }
        }
    }, cancel);

    /// <summary>Whether something was kept although nobody heard of it; asked until somebody answers or patience ends.</summary>
    private async Task<bool> WasKeptAsync(Func<PostgresTurn, Task<bool>> isThere)
    {
        var since = Environment.TickCount64;
        while (true)
        {
            _database.Forget();
            try
            {
                await using var turn = await _database.BeginWritingAsync(CancellationToken.None);
                return await isThere(turn);
            }
            catch (Exception e) when (PostgresTrouble.Is(e))
            {
                if (Environment.TickCount64 - since > _options.Patience.TotalMilliseconds) return false;
                await Task.Delay(100);
            }
        }
    }

    /// <summary>A change that was offered, with the mark that its step has or would have.</summary>
    private sealed class Offer(ShelfChange change, Guid mark)
    {
        public ShelfChange Change => change;

        public Guid Mark => mark;
    }
}
