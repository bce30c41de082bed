using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Tests.Tray;
using Coilwright.Core.Tray;
using Coilwright.OwnDatabase;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Tests.Shelf;
using Coilwright.Storage.Tray;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace Coilwright.Storage.Tests.Tray;

/// <summary>What every tray must do.</summary>
public abstract class BeadTrayContract
{
    /// <summary>A tray without a kind.</summary>
    protected abstract IBeadTray Empty();

    private protected static ImmutableArray<TrayEdit> Put(IEnumerable<TrayKind> kinds) => [.. kinds.Select(k => new TrayEdit.Put(k))];

    private protected static long Kept(TrayAnswer answer) => Assert.IsType<TrayAnswer.Kept>(answer).Revision;

    private static string[] Cells(IEnumerable<TrayKind> kinds) => [.. kinds.OrderBy(k => k.Key, StringComparer.Ordinal).Select(k => string.Join('\u0001', TrayColumns.All.Select(c => c.TextOf(k))))];

    [Fact]
    public async Task A_tray_comes_back_as_it_was_put_in_to_the_last_digit()
    {
        var tray = Empty();
        Assert.Equal((0L, 0, 0), await tray.SinceAsync(0) is var none ? (none.Revision, none.Put.Length, none.TakenOut.Length) : default);
        var kinds = GeneratedTray.Of(500);
        Assert.Equal(1, Kept(await tray.ChangeAsync(0, Put(kinds))));
        var news = await tray.SinceAsync(0);
        Assert.Equal(1, news.Revision);
        Assert.Equal(Cells(kinds), Cells(news.Put));
    }

    [Fact]
    public async Task Only_what_is_new_is_told_and_what_was_taken_out_too()
    {
        var tray = Empty();
        var kinds = GeneratedTray.Of(5);
        Kept(await tray.ChangeAsync(0, Put(kinds)));
        Kept(await tray.ChangeAsync(1, [new TrayEdit.Put(kinds[1] with { Drawer = "new" }), new TrayEdit.TakeOut(kinds[2].Key)]));
        Kept(await tray.ChangeAsync(2, [new TrayEdit.Put(kinds[1] with { Drawer = "newer" })]));
        var news = await tray.SinceAsync(1);
        Assert.Equal((3L, "newer", kinds[2].Key), (news.Revision, Assert.Single(news.Put).Drawer, Assert.Single(news.TakenOut)));
        Assert.Equal((3L, 0, 0), await tray.SinceAsync(3) is var none ? (none.Revision, none.Put.Length, none.TakenOut.Length) : default);
        Assert.Equal([kinds[0].Key, kinds[1].Key, kinds[3].Key, kinds[4].Key], (await tray.SinceAsync(0)).Put.Select(k => k.Key).Order(StringComparer.Ordinal));
        Kept(await tray.ChangeAsync(3, [new TrayEdit.Put(kinds[2])]));
        Assert.Equal((1, 0), await tray.SinceAsync(3) is var again ? (again.Put.Length, again.TakenOut.Length) : default);
    }

    [Fact]
    public async Task Who_has_not_seen_a_kind_as_it_is_does_not_write_over_it_and_others_are_free()
    {
        var tray = Empty();
        var kinds = GeneratedTray.Of(3);
        Kept(await tray.ChangeAsync(0, Put(kinds)));
        Kept(await tray.ChangeAsync(1, Put([kinds[0] with { Drawer = "hers" }])));
        Assert.Equal(kinds[0].Key, Assert.IsType<TrayAnswer.Behind>(await tray.ChangeAsync(1, Put([kinds[1] with { Drawer = "late" }, kinds[0] with { Drawer = "late" }]))).Key);
        Assert.DoesNotContain((await tray.SinceAsync(0)).Put, k => k.Drawer == "late");
        Assert.Equal(3, Kept(await tray.ChangeAsync(1, Put([kinds[1] with { Drawer = "in time" }]))));
    }

    [Fact]
    public async Task Of_many_who_saw_the_same_one_is_kept_whole()
    {
        var tray = Empty();
        var kinds = GeneratedTray.Of(20);
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(() => tray.ChangeAsync(0, Put(kinds.Select(k => k with { Drawer = $"{i}" }))))));
        Assert.Single(answers.OfType<TrayAnswer.Kept>());
        Assert.Equal(7, answers.OfType<TrayAnswer.Behind>().Count());
        Assert.Single((await tray.SinceAsync(0)).Put.Select(k => k.Drawer).Distinct());
    }

    [Fact]
    public async Task A_kind_that_could_not_be_read_again_is_refused_and_with_it_all_the_others()
    {
        var tray = Empty();
        var kinds = GeneratedTray.Of(3);
        Assert.True(Bead.TryMake(kinds[1].Bead.Description with { Name = new string('x', 300) }, out var bead, out _));
        var refused = Assert.IsType<TrayAnswer.Refused>(await tray.ChangeAsync(0, Put([kinds[0], new TrayKind(bead!, null), kinds[2]])));
        Assert.Equal((kinds[1].Key, FaultCodes.TextTooLong, "name"), (refused.Key, refused.Why.Code, refused.Why.Field));
        Assert.Empty((await tray.SinceAsync(0)).Put);
    }
}

/// <summary>A tray beside the pieces in one file.</summary>
public sealed class SqliteBeadTrayTests : BeadTrayContract, IDisposable
{
    private readonly SqliteShelves _shelves = new();

    protected override IBeadTray Empty() => _shelves.Empty();

    public void Dispose() => _shelves.Dispose();

    [Fact]
    public async Task Nothing_that_was_kept_can_be_changed_or_taken_out()
    {
        var shelf = _shelves.Empty();
        Kept(await ((IBeadTray)shelf).ChangeAsync(0, Put(GeneratedTray.Of(2))));
        using var other = SqliteShelves.Other(shelf.FilePath);
        foreach (var sql in new[] { "UPDATE tray_kinds SET content = ''", "DELETE FROM tray_kinds", "UPDATE tray_changes SET at = ''", "DELETE FROM tray_changes" })
            Assert.Contains("only ever added", Assert.Throws<SqliteException>(() => SqliteShelves.Ask(other, sql)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_backup_brings_the_tray_back_and_one_with_a_broken_kind_is_refused()
    {
        var shelf = _shelves.Empty();
        IBeadTray tray = shelf;
        Kept(await tray.ChangeAsync(0, Put(GeneratedTray.Of(4))));
        var file = Path.Combine(_shelves.NewFolder(), "all.db");
        Assert.IsType<BackupAnswer.Made>(await shelf.BackUpAsync(file));
        Kept(await tray.ChangeAsync(1, [new TrayEdit.TakeOut("k00001")]));
        Assert.IsType<RestoreAnswer.Restored>(await shelf.RestoreAsync(file));
        Assert.Equal(4, (await tray.SinceAsync(0)).Put.Length);
        using (var other = SqliteShelves.Other(file))
        {
            SqliteShelves.Ask(other, "DROP TRIGGER tray_kinds_are_not_changed");
            SqliteShelves.Ask(other, "UPDATE tray_kinds SET content = '{}' WHERE key = 'k00002'");
        }
        var why = Assert.IsType<RestoreAnswer.NotRestored>(await shelf.RestoreAsync(file)).Why;
        Assert.Equal((FaultCodes.TrayUnreadable, "k00002"), (why.Code, why.Values["kind"]));
    }

    [Fact]
    public async Task A_file_of_before_there_was_a_tray_is_brought_up_to_date()
    {
        var folder = _shelves.NewFolder();
        _shelves.Open(folder).Dispose();
        using (var other = SqliteShelves.Other(Path.Combine(folder, "pieces.db")))
            SqliteShelves.Ask(other, "DROP TABLE tray_kinds; DROP TABLE tray_changes; DELETE FROM SchemaVersions WHERE ScriptName LIKE '0006%' OR ScriptName LIKE '0007%'; PRAGMA user_version = 5;");
        Assert.Equal(1, Kept(await ((IBeadTray)_shelves.Open(folder)).ChangeAsync(0, Put(GeneratedTray.Of(1)))));
    }
}

/// <summary>A tray beside the pieces in one database.</summary>
public sealed class PostgresBeadTrayTests : BeadTrayContract, IDisposable
{
    private readonly PostgresShelves _shelves = new();

    protected override IBeadTray Empty() => _shelves.Empty();

    public void Dispose() => _shelves.Dispose();

    [Theory]
    [InlineData("UPDATE coilwright.tray_kinds SET content = ''")]
    [InlineData("DELETE FROM coilwright.tray_kinds")]
    [InlineData("TRUNCATE coilwright.tray_changes CASCADE")]
    public async Task Nothing_that_was_kept_can_be_changed_or_taken_out(string sql)
    {
        var way = _shelves.NewDatabase();
        Kept(await ((IBeadTray)_shelves.Open(way)).ChangeAsync(0, Put(GeneratedTray.Of(2))));
        await using var connection = new NpgsqlConnection(way);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        Assert.Contains("only ever added", (await Assert.ThrowsAsync<PostgresException>(() => command.ExecuteNonQueryAsync())).MessageText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_list_that_was_kept_without_anybody_hearing_of_it_is_found_and_not_taken_in_twice()
    {
        var server = await PostgresServer.SharedAsync();
        var database = new NpgsqlConnectionStringBuilder(_shelves.NewDatabase()).Database!;
        await using var line = new CutLine(server.Port);
        IBeadTray tray = _shelves.Open(new NpgsqlConnectionStringBuilder(server.ByPort(database)) { Port = line.Port }.ConnectionString, TimeSpan.FromMilliseconds(300));
        line.CutAtAnswerToCommit(stayDown: false);
        Kept(await tray.ChangeAsync(0, Put(GeneratedTray.Of(50))));
        Assert.Equal((1L, 50, 1), await tray.SinceAsync(0) is var news ? (news.Revision, news.Put.Length, line.Cuts) : default);
    }
}
