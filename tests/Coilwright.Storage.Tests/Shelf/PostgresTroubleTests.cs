using Coilwright.Core.Faults;
using Coilwright.OwnDatabase;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Shelf.Postgres;
using static Coilwright.OwnDatabase.PostgresServer;
using static Coilwright.Storage.Tests.Shelf.PostgresShelves;
using static Coilwright.Storage.Tests.Shelf.SqliteShelves;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>A database that cannot be used, brought about for real. Whatever it is, the answer is a fault and never holds the password.</summary>
public sealed class PostgresTroubleTests : IDisposable
{
    private readonly PostgresShelves _shelves = new();

    public void Dispose() => _shelves.Dispose();

    private static Fault NotKept(ShelfAnswer answer) => Assert.IsType<ShelfAnswer.NotKept>(answer).Why;

    private static async Task<Fault> Unreadable(Func<Task> ask) => (await Assert.ThrowsAsync<ShelfUnreadableException>(ask)).Why;

    private static void AssertKeepsSecrets(Fault fault) => Assert.DoesNotContain("clasp", fault.Value + string.Concat(fault.Values.Values) + fault, StringComparison.Ordinal);

    // The address --------------------------------------------------------------------------------------------------------------------------

    [Theory]
    [InlineData("", "", "Host")]
    [InlineData("Username=ada;Database=beads", "", "Host")]
    [InlineData("Host=localhost;Purse=1", "purse", "")]
    [InlineData("Host=localhost;Port=many", "port", "")]
    [InlineData("beads", "", "")]
    [InlineData("postgres://localhost/beads", "", "")]
    [InlineData("Host=localhost;Password=clasp;clasp2;more=1", "", "")] // what follows a semicolon may be of the password
    [InlineData("Host=localhost;Password=clasp;clasp2=1", "", "")]
    public void An_address_that_cannot_be_read_is_told(string text, string named, string missing)
    {
        Assert.False(PostgresAddress.TryRead(text, out _, out var fault));
        Assert.Equal((FaultCodes.DatabaseAddress, named, missing), (fault.Code, fault.Value, fault.Values.GetValueOrDefault("missing", "")));
        AssertKeepsSecrets(fault);
    }

    [Theory]
    [InlineData("Host=db.example;Username=ada;Password=clasp;Database=beads", "beads @ db.example:5432")]
    [InlineData("Server=db.example;Port=5433;User Id=ada;Pwd=\"a;clasp\"", "ada @ db.example:5433")]
    [InlineData("Host=/run/postgresql;Database=beads;Persist Security Info=true;Password=clasp", "beads @ /run/postgresql")]
    public void An_address_shows_its_place_and_nothing_else(string text, string place)
    {
        Assert.True(PostgresAddress.TryRead(text, out var address, out _));
        Assert.Equal(place, address.Place);
        Assert.DoesNotContain("clasp", $"{address} {new PostgresShelfOptions(address)}", StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Host=localhost", "Timeout=5")]
    [InlineData("Host=localhost;Timeout=40", "Timeout=40")]
    public void How_long_a_server_is_waited_for_is_short_unless_the_address_says_otherwise(string text, string says) =>
        Assert.Contains(says, Address(text).ConnectionString.Split(';'));

    // Opening ------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public async Task A_password_in_the_address_opens_and_a_wrong_one_or_none_is_told()
    {
        var server = await SharedAsync();
        var database = Named();
        await _shelves.Open(server.ByPort(database)).ListAsync();
        foreach (var way in (string[])[server.ByPort(database, password: "clasp!"), server.ByPort(database, password: null), server.ByPort(database, user: "nobody", password: "clasp")])
        {
            var why = WhyShut(way);
            Assert.Equal(FaultCodes.DatabaseRefused, why.Code);
            AssertKeepsSecrets(why);
        }
    }

    [Fact]
    public async Task A_password_file_opens_too()
    {
        var server = await SharedAsync();
        using var folder = new TempFolder();
        var file = folder.File("secrets");
        File.WriteAllText(file, $"127.0.0.1:{server.Port}:*:{PostgresServer.Owner}:{Password.Replace("\\", "\\\\", StringComparison.Ordinal).Replace(":", "\\:", StringComparison.Ordinal)}\n");
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        await _shelves.Open(server.ByPort(Named(), password: null) + $";Passfile={file}").ListAsync();
    }

    [Fact]
    public async Task Where_no_server_answers_it_is_told()
    {
        var server = await SharedAsync();
        using var folder = new TempFolder();
        Assert.Equal((FaultCodes.DatabaseUnreachable, "beads @ 127.0.0.1:1"), (WhyShut("Host=127.0.0.1;Port=1;Database=beads;Password=clasp") is var why ? (why.Code, why.Value) : default));
        Assert.Equal(FaultCodes.DatabaseUnreachable, WhyShut($"Host={folder.Path};Database=beads").Code);
        Assert.Equal(FaultCodes.DatabaseUnreachable, WhyShut("Host=no-such-name.invalid;Database=beads").Code);
        Assert.Equal(FaultCodes.DatabaseMissing, WhyShut(server.By("no_such_database")).Code);
    }

    [Fact]
    public async Task Without_the_right_to_make_tables_it_is_told_and_nothing_is_made()
    {
        var server = await SharedAsync();
        var way = _shelves.NewDatabase();
        await AskAsync(way, "DROP ROLE IF EXISTS visitor; CREATE ROLE visitor LOGIN");
        var why = WhyShut(server.By(new Npgsql.NpgsqlConnectionStringBuilder(way).Database!, "visitor"));
        Assert.Equal(FaultCodes.DatabaseNoRights, why.Code);
        Assert.Equal(0L, await AskAsync(way, "SELECT count(*) FROM pg_namespace WHERE nspname = 'coilwright'"));
    }

    [Fact]
    public async Task Who_may_look_and_not_write_looks_and_is_told_that_nothing_is_kept()
    {
        var server = await SharedAsync();
        var way = _shelves.NewDatabase();
        var id = Kept(await _shelves.Open(way).AddAsync(Boardwalk)).Id;
        await AskAsync(way, "CREATE ROLE looker LOGIN; GRANT USAGE ON SCHEMA coilwright TO looker; GRANT SELECT ON ALL TABLES IN SCHEMA coilwright TO looker");
        var looker = _shelves.Open(server.By(new Npgsql.NpgsqlConnectionStringBuilder(way).Database!, "looker"));
        Assert.Equal(Boardwalk.Title, (await looker.OpenAsync(id))!.Piece.Title);
        Assert.Equal(FaultCodes.DatabaseNoRights, NotKept(await looker.ChangeAsync(id, 1, To("x"))).Code);
        Assert.Equal(FaultCodes.DatabaseNoRights, Assert.Single(Assert.IsType<TrialAnswer.NotKept>(await looker.AddTrialAsync(id, 1, "x", null)).Why).Code);
    }

    [Fact]
    public async Task Something_else_under_our_name_is_told_and_stays_as_it_is()
    {
        var way = _shelves.NewDatabase();
        await AskAsync(way, "CREATE SCHEMA coilwright; CREATE TABLE coilwright.recipes (id integer)");
        Assert.Equal(FaultCodes.DatabaseNotOurs, WhyShut(way).Code);
        Assert.Equal("recipes", await AskAsync(way, "SELECT string_agg(relname, ',') FROM pg_class WHERE relnamespace = 'coilwright'::regnamespace"));
    }

    [Fact]
    public async Task An_empty_schema_that_somebody_made_for_her_is_used()
    {
        var server = await SharedAsync();
        var way = _shelves.NewDatabase();
        await AskAsync(way, "CREATE ROLE maker LOGIN; CREATE SCHEMA coilwright AUTHORIZATION maker");
        Kept(await _shelves.Open(server.By(new Npgsql.NpgsqlConnectionStringBuilder(way).Database!, "maker")).AddAsync(Boardwalk));
    }

    [Fact]
    public async Task A_shelf_of_a_newer_program_is_told_and_stays_as_it_is()
    {
        var way = _shelves.NewDatabase();
        await _shelves.Open(way).ListAsync();
        var known = (long)(await AskAsync(way, "SELECT count(*) FROM coilwright.schemaversions"))!;
        await AskAsync(way, "INSERT INTO coilwright.schemaversions (scriptname, applied) VALUES ('9999-from-tomorrow.sql', now())");
        var why = WhyShut(way);
        Assert.Equal((FaultCodes.ShelfNewer, $"{known + 1}", $"{known}"), (why.Code, why.Values["found"], why.Values["known"]));
    }

    [Fact]
    public async Task While_another_program_makes_the_tables_it_is_waited_for_and_then_told()
    {
        var way = _shelves.NewDatabase();
        await using var other = new Npgsql.NpgsqlConnection(way);
        await other.OpenAsync();
        await using (var hold = new Npgsql.NpgsqlCommand($"SELECT pg_advisory_lock({0x436F696C})", other)) await hold.ExecuteNonQueryAsync();
        Assert.Equal(FaultCodes.ShelfLocked, WhyShut(way).Code);
    }

    // Writing ------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public async Task While_another_program_holds_a_piece_a_step_is_not_kept_and_can_be_tried_again()
    {
        var way = _shelves.NewDatabase();
        var shelf = _shelves.Open(way, patience: TimeSpan.FromMilliseconds(100));
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        await using var other = new Npgsql.NpgsqlConnection(way);
        await other.OpenAsync();
        await using (var transaction = await other.BeginTransactionAsync())
        {
            await using var hold = new Npgsql.NpgsqlCommand("SELECT FROM coilwright.pieces FOR UPDATE", other);
            await hold.ExecuteNonQueryAsync();
            Assert.Equal(FaultCodes.ShelfLocked, NotKept(await shelf.ChangeAsync(id, 1, To("x"))).Code);
            // Readers do not wait for writers.
            Assert.Equal(1, (await shelf.OpenAsync(id))!.Revision);
        }
        Assert.Equal("x", Kept(await shelf.ChangeAsync(id, 1, To("x"))).Piece.Title);
    }

    [Theory]
    [InlineData("53100", FaultCodes.DatabaseFull)]
    [InlineData("25006", FaultCodes.DatabaseReadOnly)]
    [InlineData("57014", FaultCodes.DatabaseSlow)]
    [InlineData("40P01", FaultCodes.ShelfLocked)]
    [InlineData("XX001", FaultCodes.DatabaseOther)]
    public async Task What_the_server_refuses_is_not_kept_everything_else_stays_and_without_it_goes_on(string state, string code)
    {
        var way = _shelves.NewDatabase();
        var shelf = _shelves.Open(way);
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        // A trigger that answers with the server's own code, as a full disk and the others do.
        await AskAsync(way, $$"""
            CREATE FUNCTION public.refuse() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION 'the lid is stuck' USING ERRCODE = '{{state}}'; END $$;
            CREATE TRIGGER refuse AFTER INSERT ON coilwright.steps FOR EACH ROW EXECUTE FUNCTION public.refuse()
            """);
        var why = NotKept(await shelf.ChangeAsync(id, 1, To("x")));
        Assert.Equal(code, why.Code);
        if (code == FaultCodes.DatabaseOther) Assert.Equal("the lid is stuck", why.Values["reason"]);
        Assert.Equal(1, (await shelf.OpenAsync(id))!.Revision);
        await AskAsync(way, "DROP FUNCTION public.refuse CASCADE");
        Assert.Equal("x", Kept(await shelf.ChangeAsync(id, 1, To("x"))).Piece.Title);
    }

    [Fact]
    public async Task A_database_that_was_set_to_be_read_only_is_told()
    {
        var way = _shelves.NewDatabase();
        var shelf = _shelves.Open(way);
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        await AskAsync(way, "DO $$ BEGIN EXECUTE format('ALTER DATABASE %I SET default_transaction_read_only = on', current_database()); END $$");
        var again = _shelves.Open(way);
        Assert.NotNull(await again.OpenAsync(id));
        Assert.Equal(FaultCodes.DatabaseReadOnly, NotKept(await again.ChangeAsync(id, 1, To("x"))).Code);
    }

    [Fact]
    public async Task A_piece_that_cannot_be_read_is_told_and_the_others_are_there()
    {
        var way = _shelves.NewDatabase();
        var shelf = _shelves.Open(way);
        var (sound, broken) = (Kept(await shelf.AddAsync(Boardwalk)).Id, Guid.CreateVersion7());
        await AskAsync(way, $$"""
            INSERT INTO coilwright.pieces (id) VALUES ('{{broken}}');
            INSERT INTO coilwright.steps (piece, revision, mark, seen, what, at, title, content, content_of)
            VALUES ('{{broken}}', 1, gen_random_uuid(), 0, 'added', now(), 'From tomorrow', '{"format":"coilwright.piece/9"}', 1)
            """);
        var why = await Unreadable(() => shelf.OpenAsync(broken));
        Assert.Equal((FaultCodes.ShelfPieceUnreadable, "From tomorrow", FaultCodes.FormatUnknown), (why.Code, why.Values["title"], why.Values["detail"]));
        Assert.NotNull(await shelf.OpenAsync(sound));
        Assert.Equal(2, (await shelf.ListAsync()).Length);
        Assert.Equal(FaultCodes.ShelfPieceUnreadable, NotKept(await shelf.ArchiveAsync(broken, true)).Code);
    }

    // Gone and back ------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public async Task While_the_server_is_gone_nothing_is_kept_and_once_it_is_back_everything_goes_on()
    {
        await using var server = await StartNewAsync();
        var shelf = _shelves.Open(await server.NewDatabaseAsync(), patience: TimeSpan.FromMilliseconds(300));
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        var change = To("while it was gone");
        server.Stop();
        var why = NotKept(await shelf.ChangeAsync(id, 1, change));
        Assert.Equal(FaultCodes.DatabaseUnreachable, why.Code);
        Assert.Equal(FaultCodes.DatabaseUnreachable, (await Unreadable(() => shelf.ListAsync())).Code);
        server.Start();
        // At the first try, although the connections that are kept are of the server that went.
        Assert.Equal("while it was gone", Kept(await shelf.ChangeAsync(id, 1, change)).Piece.Title);
        Assert.Equal(2, (await shelf.HistoryAsync(id)).Length);
        server.Stop("immediate");
        server.Start();
        Assert.Single(await shelf.ListAsync());
    }

    [Fact]
    public async Task A_step_that_was_kept_without_anybody_hearing_of_it_is_found_and_not_taken_twice()
    {
        var server = await SharedAsync();
        var database = Named();
        await using var line = new CutLine(server.Port);
        var shelf = _shelves.Open(server.ByPort(database).Replace($"Port={server.Port}", $"Port={line.Port}", StringComparison.Ordinal), patience: TimeSpan.FromMilliseconds(300));
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;

        // The answer to the commit is lost, and the next connection is good again: found at once.
        line.CutAtAnswerToCommit(stayDown: false);
        var now = Kept(await shelf.ChangeAsync(id, 1, To("one")));
        Assert.Equal(("one", 2L), (now.Piece.Title, now.Revision));

        // The line stays down: told as not kept, offered again once it is up.
        var change = To("two");
        line.CutAtAnswerToCommit(stayDown: true);
        AssertKeepsSecrets(NotKept(await shelf.ChangeAsync(id, 2, change)));
        line.Mend();
        now = Kept(await shelf.ChangeAsync(id, 2, change));
        Assert.Equal(("two", 3L), (now.Piece.Title, now.Revision));
        Assert.Equal(3, (await shelf.HistoryAsync(id)).Length);
        Assert.Equal(2, line.Cuts);

        // Somebody else's step of the same number is no step of ours.
        Kept(await _shelves.Open(server.By(database)).ChangeAsync(id, 3, To("theirs")));
        Assert.IsType<ShelfAnswer.Behind>(await shelf.ChangeAsync(id, 3, change));
    }

    private string Named() => new Npgsql.NpgsqlConnectionStringBuilder(_shelves.NewDatabase()).Database!;
}
