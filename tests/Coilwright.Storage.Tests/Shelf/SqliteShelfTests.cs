using Coilwright.Core.Faults;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Sqlite;
using Microsoft.Data.Sqlite;
using static Coilwright.Storage.Tests.Shelf.SqliteShelves;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>The shelf in a file does what every shelf does.</summary>
public sealed class SqliteShelfContractTests : PieceShelfContract, IDisposable
{
    private readonly SqliteShelves _shelves = new();

    // Each step waits for the disk.
    protected override int RandomRuns => 15;

    protected override IPieceShelf Empty() => _shelves.Empty();

    public void Dispose() => _shelves.Dispose();
}

/// <summary>The log in a file does what every trial log does.</summary>
public sealed class SqliteTrialLogTests : TrialLogContract, IDisposable
{
    private readonly SqliteShelves _shelves = new();

    protected override (IPieceShelf Shelf, ITrialLog Log) Empty() => _shelves.Empty() is var shelf ? (shelf, shelf) : default;

    public void Dispose() => _shelves.Dispose();
}

/// <summary>A shelf in a file that several programs open.</summary>
public sealed class SqliteManyProgramsTests : ManyProgramsContract, IDisposable
{
    private readonly SqliteShelves _shelves = new();

    protected override IPieceShelf[] Programs(int howMany)
    {
        var way = _shelves.NewFolder();
        return [.. Enumerable.Range(0, howMany).Select(_ => _shelves.Open(way))];
    }

    public void Dispose() => _shelves.Dispose();
}

/// <summary>What only a shelf in a file does: outlive the program, be shared, and meet trouble.</summary>
public sealed class SqliteShelfTests : IDisposable
{
    private readonly SqliteShelves _shelves = new();

    public void Dispose() => _shelves.Dispose();

    // Keeping -------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public async Task Everything_is_there_when_the_shelf_is_opened_again()
    {
        var folder = _shelves.NewFolder();
        Guid id;
        using (var shelf = _shelves.Open(folder))
        {
            id = Kept(await shelf.AddAsync(Boardwalk)).Id;
            await shelf.ChangeAsync(id, 1, To("one"));
            await shelf.ChangeAsync(id, 2, To("two"));
            await shelf.UndoAsync(id, 3);
            await shelf.NameAsync(id, 2, "as on the mat");
            await shelf.ArchiveAsync(id, true);
        }
        var again = _shelves.Open(folder);
        var piece = (await again.OpenAsync(id))!;
        Assert.Equal(("one", 4L, true, true, true), (piece.Piece.Title, piece.Revision, piece.CanUndo, piece.CanRedo, piece.IsArchived));
        Assert.Equal("as on the mat", (await again.HistoryAsync(id))[1].Name);
        Assert.Equal("two", Kept(await again.RedoAsync(id, 4)).Piece.Title);
    }

    [Fact]
    public async Task Two_programs_on_one_shelf_see_each_other_and_overwrite_nothing()
    {
        var folder = _shelves.NewFolder();
        var (one, other) = (_shelves.Open(folder), _shelves.Open(folder));
        var id = Kept(await one.AddAsync(Boardwalk)).Id;
        Kept(await other.ChangeAsync(id, 1, To("other")));
        var behind = Assert.IsType<ShelfAnswer.Behind>(await one.ChangeAsync(id, 1, To("one")));
        Assert.Equal("other", behind.Now.Piece.Title);
        Assert.Equal(2, Assert.Single(behind.Since).Revision);
    }

    [Fact]
    public async Task Steps_can_only_be_added_whoever_asks()
    {
        var shelf = _shelves.Empty();
        await shelf.AddAsync(Boardwalk);
        using var other = Other(shelf.FilePath);
        Assert.Contains("only ever added", Assert.Throws<SqliteException>(() => Ask(other, "UPDATE steps SET title = 'x'")).Message, StringComparison.Ordinal);
        Assert.Contains("only ever added", Assert.Throws<SqliteException>(() => Ask(other, "DELETE FROM steps")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Names_are_in_the_order_of_time_and_times_are_universal()
    {
        var shelf = _shelves.Empty();
        var ids = new List<Guid>();
        for (var i = 0; i < 3; i++) ids.Add(Kept(await shelf.AddAsync(Boardwalk)).Id);
        Assert.All(ids, id => Assert.Equal(7, id.Version));
        using var other = Other(shelf.FilePath);
        Assert.EndsWith("Z", (string)Ask(other, "SELECT at FROM steps")!, StringComparison.Ordinal);
        var line = (await shelf.ListAsync())[0];
        Assert.Equal(TimeSpan.Zero, line.ChangedAt.Offset);
        Assert.InRange(DateTimeOffset.UtcNow - line.ChangedAt, TimeSpan.Zero, TimeSpan.FromMinutes(1)); // the test itself takes seconds
    }

    [Fact]
    public async Task What_is_answered_as_kept_waits_for_the_disk_and_readers_do_not_wait_for_writers()
    {
        var shelf = _shelves.Empty();
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        using var other = Other(shelf.FilePath);
        Assert.Equal("wal", Ask(other, "PRAGMA journal_mode"));
        var prepared = new List<object?>();
        var seen = _shelves.Open(Path.GetDirectoryName(shelf.FilePath)!, prepare: connection => prepared.Add(Ask(connection, "PRAGMA synchronous")));
        await seen.OpenAsync(id);
        Assert.All(prepared, level => Assert.Equal(2L, level)); // FULL
        Ask(other, "BEGIN IMMEDIATE");
        Assert.NotNull(await shelf.OpenAsync(id));
        Ask(other, "ROLLBACK");
    }

    [Fact]
    public async Task Hostile_names_and_titles_are_text_like_any_other()
    {
        var shelf = _shelves.Empty();
        foreach (var title in (string[])["'); DROP TABLE steps; --", "<script>alert(1)</script>", "\u202Eesrever", "💍 ring", new string('x', 200)])
        {
            var id = Kept(await shelf.AddAsync(Boardwalk with { Title = title })).Id;
            Kept(await shelf.NameAsync(id, 1, title));
            Assert.Equal(title, (await shelf.OpenAsync(id))!.Piece.Title);
            Assert.Equal(title, (await shelf.HistoryAsync(id))[0].Name);
        }
        Assert.Equal(5, (await shelf.ListAsync()).Length);
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

    // Trouble ------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public async Task While_another_program_writes_a_step_is_not_kept_and_can_be_tried_again()
    {
        var folder = _shelves.NewFolder();
        var shelf = _shelves.Open(folder, patience: TimeSpan.FromMilliseconds(100));
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        using var other = Other(shelf.FilePath);
        Ask(other, "BEGIN IMMEDIATE");
        Assert.Equal(FaultCodes.ShelfLocked, NotKept(await shelf.ChangeAsync(id, 1, To("x"))).Code);
        Assert.Equal(FaultCodes.ShelfLocked, NotKept(await shelf.UndoAsync(id, 1)).Code);
        Assert.Equal(FaultCodes.ShelfLocked, NotKept(await shelf.AddAsync(Boardwalk)).Code);
        Assert.Equal(1, (await shelf.OpenAsync(id))!.Revision);
        Ask(other, "ROLLBACK");
        Assert.Equal("x", Kept(await shelf.ChangeAsync(id, 1, To("x"))).Piece.Title);
    }

    [Fact]
    public async Task On_a_full_disk_a_step_is_not_kept_everything_else_stays_and_with_room_it_goes_on()
    {
        var folder = _shelves.NewFolder();
        var pages = 0L;
        // A limit on the file's pages answers as a full disk does: SQLITE_FULL.
        var shelf = _shelves.Open(folder, prepare: connection => Ask(connection, $"PRAGMA max_page_count = {(pages == 0 ? 1_000_000 : pages)}"));
        var now = Kept(await shelf.AddAsync(Boardwalk));
        using (var other = Other(shelf.FilePath)) pages = (long)Ask(other, "PRAGMA page_count")! + 2;
        Fault? why = null;
        for (var i = 0; i < 1000 && why is null; i++)
        {
            var answer = await shelf.ChangeAsync(now.Id, now.Revision, To($"{i}"));
            if (answer is ShelfAnswer.Kept kept) now = kept.Now;
            else why = NotKept(answer);
        }
        Assert.Equal(FaultCodes.ShelfDiskFull, why!.Code);
        Assert.Equal(shelf.FilePath, why.Value);
        Assert.Equal(now.Piece.Title, (await shelf.OpenAsync(now.Id))!.Piece.Title);
        Assert.Equal(now.Revision, (await shelf.HistoryAsync(now.Id)).Length);
        pages = 1_000_000;
        Assert.Equal("room again", Kept(await shelf.ChangeAsync(now.Id, now.Revision, To("room again"))).Piece.Title);
    }

    [Fact]
    public async Task A_file_marked_as_read_only_can_be_looked_at_and_no_step_is_kept()
    {
        var folder = _shelves.NewFolder();
        Guid id;
        string file;
        using (var shelf = _shelves.Open(folder))
        {
            id = Kept(await shelf.AddAsync(Boardwalk)).Id;
            file = shelf.FilePath;
        }
        File.SetAttributes(file, FileAttributes.ReadOnly);
        try
        {
            using var shelf = _shelves.Open(folder);
            Assert.Equal(Boardwalk.Title, (await shelf.OpenAsync(id))!.Piece.Title);
            Assert.Single(await shelf.ListAsync());
            Assert.Equal(FaultCodes.ShelfReadOnly, NotKept(await shelf.ChangeAsync(id, 1, To("x"))).Code);
            Assert.Equal(FaultCodes.ShelfReadOnly, Assert.IsType<RestoreAnswer.NotRestored>(await shelf.RestoreAsync(file)).Why.Code);
        }
        finally
        {
            File.SetAttributes(file, FileAttributes.Normal);
        }
    }

    [Fact]
    public async Task When_writing_is_forbidden_later_on_a_step_is_not_kept()
    {
        var forbidden = false;
        var shelf = _shelves.Open(_shelves.NewFolder(), prepare: connection => Ask(connection, $"PRAGMA query_only = {(forbidden ? 1 : 0)}"));
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        forbidden = true;
        Assert.Equal(FaultCodes.ShelfReadOnly, NotKept(await shelf.ChangeAsync(id, 1, To("x"))).Code);
        Assert.Equal(1, (await shelf.OpenAsync(id))!.Revision);
    }

    [Theory]
    [InlineData("This is a shopping list, not a shelf. It is longer than a hundred characters, as the header of such a file is.")]
    [InlineData("SQLite format 3\0 and then nothing that follows from it, for more than a hundred characters so that it counts as a header")]
    public void A_file_that_is_no_shelf_is_told_and_stays_as_it_is(string text)
    {
        var folder = _shelves.NewFolder();
        var file = Path.Combine(folder, SqliteShelfOptions.FileName);
        File.WriteAllText(file, text);
        Assert.Equal(FaultCodes.ShelfNotOne, NotOpened(folder).Code);
        Assert.Equal(text, File.ReadAllText(file));
    }

    [Fact]
    public void The_database_of_another_program_is_told_and_stays_as_it_is()
    {
        var folder = _shelves.NewFolder();
        using var other = Other(Path.Combine(folder, SqliteShelfOptions.FileName));
        Ask(other, "CREATE TABLE recipes (id INTEGER)");
        Assert.Equal(FaultCodes.ShelfNotOne, NotOpened(folder).Code);
        Assert.Equal(1L, Ask(other, "SELECT count(*) FROM sqlite_schema"));
    }

    [Fact]
    public void A_shelf_of_a_newer_program_is_told_and_stays_as_it_is()
    {
        var folder = _shelves.NewFolder();
        string file;
        using (var shelf = _shelves.Open(folder)) file = shelf.FilePath;
        using (var other = Other(file)) Ask(other, "PRAGMA user_version = 99");
        var why = NotOpened(folder);
        Assert.Equal((FaultCodes.ShelfNewer, "99", "8"), (why.Code, why.Values["found"], why.Values["known"]));
        using var after = Other(file);
        Assert.Equal(99L, Ask(after, "PRAGMA user_version"));
    }

    [Fact]
    public async Task A_damaged_file_is_told()
    {
        var folder = _shelves.NewFolder();
        string file;
        using (var shelf = _shelves.Open(folder))
        {
            for (var i = 0; i < 5; i++) await shelf.AddAsync(Boardwalk);
            file = shelf.FilePath;
        }
        var bytes = File.ReadAllBytes(file);
        bytes.AsSpan(4096).Fill(0xA5); // everything after the first page
        File.WriteAllBytes(file, bytes);
        var opening = Opening(folder);
        if (opening is ShelfOpening.Opened opened)
        {
            using var shelf = opened.Shelf;
            Assert.Equal(FaultCodes.ShelfDamaged, (await Assert.ThrowsAsync<ShelfUnreadableException>(() => shelf.ListAsync())).Why.Code);
            Assert.Equal(FaultCodes.ShelfDamaged, NotKept(await shelf.AddAsync(Boardwalk)).Code);
        }
        else
        {
            Assert.Equal(FaultCodes.ShelfDamaged, ((ShelfOpening.NotOpened)opening).Why.Code);
        }
    }

    [Fact]
    public async Task A_piece_that_cannot_be_read_is_told_and_the_others_are_there()
    {
        var shelf = _shelves.Empty();
        var (sound, broken) = (Kept(await shelf.AddAsync(Boardwalk)).Id, Guid.CreateVersion7());
        using (var other = Other(shelf.FilePath))
            Ask(other, $"""
                INSERT INTO pieces (id) VALUES ('{broken}');
                INSERT INTO steps (piece, revision, seen, what, at, title, content, content_of)
                VALUES ('{broken}', 1, 0, 'added', '2026-01-31T09:30:00.0000000Z', 'From tomorrow', '{"{"}"format":"coilwright.piece/9"{"}"}', 1)
                """);
        var why = (await Assert.ThrowsAsync<ShelfUnreadableException>(() => shelf.OpenAsync(broken))).Why;
        Assert.Equal((FaultCodes.ShelfPieceUnreadable, "From tomorrow", FaultCodes.FormatUnknown), (why.Code, why.Values["title"], why.Values["detail"]));
        Assert.NotNull(await shelf.OpenAsync(sound));
        Assert.Equal(2, (await shelf.ListAsync()).Length);
        Assert.Equal(FaultCodes.ShelfPieceUnreadable, NotKept(await shelf.ArchiveAsync(broken, true)).Code);
    }

    [Fact]
    public void A_folder_that_cannot_be_is_told()
    {
        var file = Path.Combine(_shelves.NewFolder(), "a file");
        File.WriteAllText(file, "");
        Assert.Equal(FaultCodes.ShelfUnreachable, NotOpened(Path.Combine(file, "shelf")).Code);
    }

    // Opening ------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public async Task Many_programs_that_start_at_once_make_one_shelf()
    {
        var folder = _shelves.NewFolder();
        var openings = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => Opening(folder))));
        foreach (var opening in openings)
        {
            using var shelf = Assert.IsType<ShelfOpening.Opened>(opening).Shelf;
            Assert.Empty(await shelf.ListAsync());
        }
        using var other = Other(Path.Combine(folder, SqliteShelfOptions.FileName));
        Assert.Equal(SqliteShelfFile.NewestForm, Ask(other, "SELECT count(*) FROM SchemaVersions"));
    }

    [Theory]
    [InlineData("/home/ada/data", "/home/ada", "/home/ada/data")]
    [InlineData(null, "/home/ada", "/home/ada/.local/share")]
    [InlineData("", "/home/ada", "/home/ada/.local/share")]
    [InlineData("data", "/home/ada", "/home/ada/.local/share")] // not absolute: the specification tells to pass over it
    public void On_Linux_the_shelf_lies_where_the_XDG_specification_says(string? dataHome, string home, string folder)
    {
        if (OperatingSystem.IsWindows()) return;
        Assert.Equal(folder, ShelfFolder.Xdg(dataHome, home));
    }

    [Fact]
    public void A_new_folder_is_hers_alone()
    {
        if (OperatingSystem.IsWindows()) return;
        var folder = Path.Combine(_shelves.NewFolder(), "in", "there");
        _shelves.Open(folder);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(folder));
    }

    private static Fault NotKept(ShelfAnswer answer) => Assert.IsType<ShelfAnswer.NotKept>(answer).Why;
}
