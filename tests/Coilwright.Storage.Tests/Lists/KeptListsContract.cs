using Coilwright.Storage.Lists;
using Coilwright.Storage.Tests.Shelf;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Tests.Lists;

/// <summary>What every keeper of lists must do.</summary>
public abstract class KeptListsContract
{
    /// <summary>A keeper without any list.</summary>
    protected abstract IKeptLists Empty();

    private static KeptList Kept(ListAnswer answer) => Assert.IsType<ListAnswer.Kept>(answer).Now;

    [Fact]
    public async Task The_last_list_of_a_kind_counts_and_kinds_do_not_meet()
    {
        var lists = Empty();
        Assert.Null(await lists.ListAsync(ListKind.Prices));
        Kept(await lists.KeepListAsync(ListKind.Prices, 0, "one 'quoted' ü"));
        Kept(await lists.KeepListAsync(ListKind.Wire, 0, "wire"));
        Assert.Equal(2, Kept(await lists.KeepListAsync(ListKind.Prices, 1, "two")).Revision);
        Assert.Equal(("two", 2L), ((await lists.ListAsync(ListKind.Prices))!.Content, (await lists.ListAsync(ListKind.Prices))!.Revision));
        Assert.Null(await lists.ListAsync(ListKind.Costs));
        Kept(await lists.KeepListAsync(ListKind.Costs, 0, "costs"));
        Assert.Equal(("wire", "costs"), ((await lists.ListAsync(ListKind.Wire))!.Content, (await lists.ListAsync(ListKind.Costs))!.Content));
    }

    [Fact]
    public async Task Who_has_not_seen_the_last_one_is_told_and_nothing_is_lost()
    {
        var lists = Empty();
        Kept(await lists.KeepListAsync(ListKind.Prices, 0, "one"));
        foreach (var seen in new[] { 0L, 2L })
            Assert.Equal("one", Assert.IsType<ListAnswer.Behind>(await lists.KeepListAsync(ListKind.Prices, seen, "late")).Now.Content);
        Assert.Equal("one", (await lists.ListAsync(ListKind.Prices))!.Content);
    }

    [Fact]
    public async Task Places_take_the_place_of_the_last_ones_and_who_has_not_seen_those_is_told()
    {
        var lists = Empty();
        for (var moves = 0; moves < 5; moves++) Assert.Equal(moves + 1, Kept(await lists.KeepListAsync(ListKind.Places, moves, $"step {moves}")).Revision);
        Assert.Equal("step 4", Assert.IsType<ListAnswer.Behind>(await lists.KeepListAsync(ListKind.Places, 4, "late")).Now.Content);
        Assert.Equal(("step 4", 5L), ((await lists.ListAsync(ListKind.Places))!.Content, (await lists.ListAsync(ListKind.Places))!.Revision));
        Assert.True(await RowsAsync(lists) is null or 1);
    }

    /// <summary>How many lists lie in the store, of all kinds; null where that cannot be counted.</summary>
    protected virtual Task<long?> RowsAsync(IKeptLists lists) => Task.FromResult<long?>(null);

    [Fact]
    public async Task Of_many_who_saw_the_same_one_is_kept()
    {
        var lists = Empty();
        var answers = await Task.WhenAll(Enumerable.Range(0, 12).Select(i => Task.Run(() => lists.KeepListAsync(ListKind.Wire, 0, $"list {i}"))));
        var kept = Assert.Single(answers.OfType<ListAnswer.Kept>());
        Assert.All(answers.OfType<ListAnswer.Behind>(), b => Assert.Equal(kept.Now.Content, b.Now.Content));
        Assert.Equal(kept.Now.Content, (await lists.ListAsync(ListKind.Wire))!.Content);
    }
}

/// <summary>Lists in memory.</summary>
public sealed class MemoryKeptListsTests : KeptListsContract
{
    protected override IKeptLists Empty() => new MemoryKeptLists(TimeProvider.System);
}

/// <summary>Lists beside the pieces in one file.</summary>
public sealed class SqliteKeptListsTests : KeptListsContract, IDisposable
{
    private readonly SqliteShelves _shelves = new();

    protected override IKeptLists Empty() => _shelves.Empty();

    protected override Task<long?> RowsAsync(IKeptLists lists)
    {
        using var other = SqliteShelves.Other(((Storage.Shelf.Sqlite.SqliteShelf)lists).FilePath);
        return Task.FromResult<long?>((long)SqliteShelves.Ask(other, "SELECT count(*) FROM lists")!);
    }

    public void Dispose() => _shelves.Dispose();

    [Fact]
    public async Task No_list_that_was_kept_can_be_changed_or_taken_out()
    {
        var folder = _shelves.NewFolder();
        var shelf = _shelves.Open(folder);
        await shelf.KeepListAsync(ListKind.Prices, 0, "one");
        using var other = SqliteShelves.Other(shelf.FilePath);
        foreach (var sql in new[] { "UPDATE lists SET content = ''", "DELETE FROM lists" })
        {
            using var command = other.CreateCommand();
            command.CommandText = sql;
            Assert.Contains("only ever added", Assert.Throws<SqliteException>(() => command.ExecuteNonQuery()).Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Lists_of_before_there_were_costs_are_still_there_and_costs_can_be_kept_beside_them()
    {
        var folder = _shelves.NewFolder();
        string file;
        using (var shelf = _shelves.Open(folder)) file = shelf.FilePath;
        using (var other = SqliteShelves.Other(file))
        {
            using var command = other.CreateCommand();
            command.CommandText = """
                DROP TABLE lists;
                CREATE TABLE lists (kind TEXT NOT NULL CHECK (kind IN ('prices', 'wire')), revision INTEGER NOT NULL, at TEXT NOT NULL, content TEXT NOT NULL, PRIMARY KEY (kind, revision)) STRICT;
                CREATE TRIGGER lists_are_not_changed BEFORE UPDATE ON lists BEGIN SELECT RAISE(ABORT, 'x'); END;
                CREATE TRIGGER lists_are_not_deleted BEFORE DELETE ON lists BEGIN SELECT RAISE(ABORT, 'x'); END;
                INSERT INTO lists VALUES ('prices', 1, '2026-01-31T09:30:00.0000000Z', 'one'), ('prices', 2, '2026-01-31T09:31:00.0000000Z', 'two');
                DELETE FROM SchemaVersions WHERE ScriptName LIKE '0004%'; PRAGMA user_version = 3
                """;
            command.ExecuteNonQuery();
        }
        var lists = _shelves.Open(folder);
        Assert.Equal(("two", 2L), ((await lists.ListAsync(ListKind.Prices))!.Content, (await lists.ListAsync(ListKind.Prices))!.Revision));
        Assert.IsType<ListAnswer.Kept>(await lists.KeepListAsync(ListKind.Costs, 0, "costs"));
    }
}

/// <summary>Lists beside the pieces in one database.</summary>
public sealed class PostgresKeptListsTests : KeptListsContract, IDisposable
{
    private readonly PostgresShelves _shelves = new();

    protected override IKeptLists Empty() => _shelves.Empty();

    public void Dispose() => _shelves.Dispose();
}
