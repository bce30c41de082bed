using Coilwright.Core.Faults;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Postgres;
using Npgsql;
using static Coilwright.OwnDatabase.PostgresServer;
using static Coilwright.Storage.Tests.Shelf.PostgresShelves;
using static Coilwright.Storage.Tests.Shelf.SqliteShelves;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>The shelf in a database does what every shelf does.</summary>
public sealed class PostgresShelfContractTests : PieceShelfContract, IDisposable
{
    private readonly PostgresShelves _shelves = new();

    // Each history has a database of its own.
    protected override int RandomRuns => 15;

    protected override IPieceShelf Empty() => _shelves.Empty();

    public void Dispose() => _shelves.Dispose();
}

/// <summary>The log in a database does what every trial log does.</summary>
public sealed class PostgresTrialLogTests : TrialLogContract, IDisposable
{
    private readonly PostgresShelves _shelves = new();

    protected override (IPieceShelf Shelf, ITrialLog Log) Empty() => _shelves.Empty() is var shelf ? (shelf, shelf) : default;

    public void Dispose() => _shelves.Dispose();
}

/// <summary>A shelf in a database that several programs open.</summary>
public sealed class PostgresManyProgramsTests : ManyProgramsContract, IDisposable
{
    private readonly PostgresShelves _shelves = new();

    protected override IPieceShelf[] Programs(int howMany)
    {
        var way = _shelves.NewDatabase();
        return [.. Enumerable.Range(0, howMany).Select(_ => _shelves.Open(way))];
    }

    public void Dispose() => _shelves.Dispose();
}

/// <summary>What only a shelf in a database does: be shared over a network, and guard what is in it whoever asks.</summary>
public sealed class PostgresShelfTests : IDisposable
{
    private readonly PostgresShelves _shelves = new();

    public void Dispose() => _shelves.Dispose();

    [Fact]
    public async Task Everything_is_there_when_the_shelf_is_opened_again()
    {
        var way = _shelves.NewDatabase();
        var shelf = _shelves.Open(way);
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        await shelf.ChangeAsync(id, 1, To("one"));
        await shelf.ChangeAsync(id, 2, To("two"));
        await shelf.UndoAsync(id, 3);
        await shelf.NameAsync(id, 2, "as on the mat");
        await shelf.ArchiveAsync(id, true);
        var again = _shelves.Open(way);
        var piece = (await again.OpenAsync(id))!;
        Assert.Equal(("one", 4L, true, true, true), (piece.Piece.Title, piece.Revision, piece.CanUndo, piece.CanRedo, piece.IsArchived));
        Assert.Equal("as on the mat", (await again.HistoryAsync(id))[1].Name);
        Assert.Equal("two", Kept(await again.RedoAsync(id, 4)).Piece.Title);
    }

    [Theory]
    [InlineData("UPDATE coilwright.steps SET title = 'x'")]
    [InlineData("DELETE FROM coilwright.steps")]
    [InlineData("TRUNCATE coilwright.steps CASCADE")]
    public async Task Steps_can_only_be_added_whoever_asks(string sql)
    {
        var way = _shelves.NewDatabase();
        await _shelves.Open(way).AddAsync(Boardwalk);
        Assert.Contains("only ever added", (await Assert.ThrowsAsync<PostgresException>(() => AskAsync(way, sql))).MessageText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_are_in_the_order_of_time_and_times_are_universal()
    {
        var shelf = _shelves.Empty();
        var ids = new List<Guid>();
        for (var i = 0; i < 3; i++) ids.Add(Kept(await shelf.AddAsync(Boardwalk)).Id);
        Assert.All(ids, id => Assert.Equal(7, id.Version));
        var line = (await shelf.ListAsync())[0];
        Assert.Equal(TimeSpan.Zero, line.ChangedAt.Offset);
        Assert.InRange(DateTimeOffset.UtcNow - line.ChangedAt, TimeSpan.Zero, TimeSpan.FromMinutes(1)); // the test itself takes seconds
    }

    [Fact]
    public async Task What_is_answered_as_kept_waits_for_the_disk_also_where_the_server_is_set_to_answer_before()
    {
        var way = _shelves.NewDatabase();
        await AskAsync(way, "DO $$ BEGIN EXECUTE format('ALTER DATABASE %I SET synchronous_commit = off', current_database()); END $$");
        var shelf = _shelves.Open(way);
        // As each step finds it, told by a step's own trigger.
        await AskAsync(way, """
            CREATE TABLE public.found (level text);
            CREATE FUNCTION public.look() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN INSERT INTO public.found VALUES (current_setting('synchronous_commit')); RETURN NEW; END $$;
            CREATE TRIGGER look BEFORE INSERT ON coilwright.steps FOR EACH ROW EXECUTE FUNCTION public.look()
            """);
        Kept(await shelf.AddAsync(Boardwalk));
        Assert.Equal("off", await AskAsync(way, "SHOW synchronous_commit"));
        Assert.Equal("on", await AskAsync(way, "SELECT level FROM public.found"));
    }

    [Fact]
    public async Task Hostile_names_and_titles_are_text_like_any_other()
    {
        var shelf = _shelves.Empty();
        foreach (var title in (string[])["'); DROP TABLE coilwright.steps; --", "<script>alert(1)</script>", "\u202Eesrever", "💍 ring", "$$ @id :id", new string('x', 200)])
        {
            var id = Kept(await shelf.AddAsync(Boardwalk with { Title = title })).Id;
            Kept(await shelf.NameAsync(id, 1, title));
            Assert.Equal(title, (await shelf.OpenAsync(id))!.Piece.Title);
            Assert.Equal(title, (await shelf.HistoryAsync(id))[0].Name);
        }
        Assert.Equal(6, (await shelf.ListAsync()).Length);
    }

    [Fact]
    public async Task Signs_that_a_database_cannot_keep_are_replaced_and_nothing_fails_for_them()
    {
        var shelf = _shelves.Empty();
        var id = Kept(await shelf.AddAsync(Boardwalk with { Title = "before\0after \uD83D" })).Id;
        Assert.Equal("before\uFFFDafter \uFFFD", (await shelf.ListAsync())[0].Title);
        Kept(await shelf.NameAsync(id, 1, "\0"));
        Assert.Equal("\uFFFD", (await shelf.HistoryAsync(id))[0].Name);
    }

    [Fact]
    public async Task A_step_that_is_called_off_is_not_kept()
    {
        var shelf = _shelves.Empty();
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        using var off = new CancellationTokenSource();
        await off.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => shelf.ChangeAsync(id, 1, To("x"), off.Token));
        Assert.Equal(1, (await shelf.OpenAsync(id))!.Revision);
    }

    [Fact]
    public async Task Many_programs_that_start_at_once_make_one_shelf()
    {
        var way = _shelves.NewDatabase();
        var openings = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => OpeningAt(way))));
        foreach (var opening in openings)
        {
            await using var shelf = Assert.IsType<PostgresOpening.Opened>(opening).Shelf;
            Assert.Empty(await shelf.ListAsync());
        }
        Assert.Equal((long)PostgresDatabase.NewestForm, await AskAsync(way, "SELECT count(*) FROM coilwright.schemaversions"));
    }

    [Fact]
    public async Task It_lies_in_a_schema_of_its_own_and_leaves_the_rest_of_the_database_alone()
    {
        var way = _shelves.NewDatabase();
        await AskAsync(way, "CREATE TABLE public.steps (recipe text)");
        Kept(await _shelves.Open(way).AddAsync(Boardwalk));
        Assert.Equal("steps", await AskAsync(way, "SELECT string_agg(relname, ',') FROM pg_class WHERE relnamespace = 'public'::regnamespace"));
    }

    [Fact]
    public async Task A_backup_is_told_to_be_made_with_the_servers_own_means()
    {
        var shelf = _shelves.Empty();
        using var folder = new TempFolder();
        Assert.Equal(FaultCodes.DatabaseBackup, Assert.IsType<BackupAnswer.NotMade>(await shelf.BackUpAsync(folder.File("all.db"))).Why.Code);
        Assert.Equal(FaultCodes.DatabaseBackup, Assert.IsType<RestoreAnswer.NotRestored>(await shelf.RestoreAsync(folder.File("all.db"))).Why.Code);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Path));
    }
}
