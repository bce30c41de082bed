using System.Text;
using Coilwright.Core.Made;
using Coilwright.Storage.Made;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;
using Coilwright.Storage.Tests.Shelf;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Tests.Made;

/// <summary>The book beside the pieces in one file.</summary>
public sealed class SqliteMadeBookTests : MadeBookContract, IDisposable
{
    private readonly SqliteShelves _shelves = new();

    // Each history needs a file of its own.
    private protected override int RandomRuns => 15;

    private protected override (IMadeBook, IPieceShelf, IStockLedger) Empty()
    {
        var shelf = _shelves.Empty();
        return (shelf, shelf, shelf);
    }

    public void Dispose() => _shelves.Dispose();

    [Fact]
    public async Task A_name_that_was_erased_is_in_no_byte_of_the_files()
    {
        var shelf = _shelves.Empty();
        IMadeBook book = shelf;
        var make = Make() with { Who = "Annabel Mustermann-Ohnesorge", Note = "a birthday in Blankenese" };
        Kept(await book.WriteDownAsync([make, Sell(make) with { Who = "Annabel Mustermann-Ohnesorge" }]));
        for (var i = 0; i < 40; i++) Kept(await book.WriteDownAsync([Make() with { Who = $"somebody else {i}" }]));
        Assert.True(IsInFiles("Mustermann-Ohnesorge") && IsInFiles("Blankenese"));
        Kept(await book.WriteDownAsync([new MadeStep.Erase(New(), make.Id, Monday)]));
        Assert.False(IsInFiles("Mustermann-Ohnesorge") || IsInFiles("Blankenese"));
        Assert.True(IsInFiles("somebody else 7"));

        bool IsInFiles(string text) => Directory.GetFiles(Path.GetDirectoryName(shelf.FilePath)!).Any(file =>
        {
            using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            return bytes.ToArray().AsSpan().IndexOf(Encoding.UTF8.GetBytes(text)) >= 0;
        });
    }

    [Fact]
    public async Task A_backup_brings_the_book_back_whole()
    {
        var shelf = _shelves.Empty();
        var piece = SqliteShelves.Kept(await shelf.AddAsync(SqliteShelves.Boardwalk));
        var make = Make(2) with { Piece = piece.Id, Revision = 1, Who = "Ann" };
        Kept(await ((IMadeBook)shelf).WriteDownAsync([make, Sell(make)]));
        var file = Path.Combine(_shelves.NewFolder(), "all.db");
        Assert.IsType<BackupAnswer.Made>(await shelf.BackUpAsync(file));
        var other = _shelves.Empty();
        Kept(await ((IMadeBook)other).WriteDownAsync([Make()]));
        Assert.IsType<RestoreAnswer.Restored>(await other.RestoreAsync(file));
        var back = Assert.Single(await ((IMadeBook)other).ListAsync());
        Assert.Equal((make.Id, "Ann", 1, 1), (back.Id, back.Make.Who, back.Now.AtHome, back.Now.Sold));
    }

    [Fact]
    public async Task A_backup_with_a_record_that_cannot_be_read_is_not_brought_back()
    {
        var shelf = _shelves.Empty();
        Kept(await ((IMadeBook)shelf).WriteDownAsync([Make()]));
        var file = Path.Combine(_shelves.NewFolder(), "all.db");
        Assert.IsType<BackupAnswer.Made>(await shelf.BackUpAsync(file));
        foreach (var content in new[] { "{}", "{", """{"title":"x","count":1,"more":2}""" })
        {
            using (var other = SqliteShelves.Other(file))
            {
                SqliteShelves.Ask(other, "DROP TRIGGER IF EXISTS made_steps_are_not_changed");
                SqliteShelves.Ask(other, $"UPDATE made_steps SET content = '{content}'");
            }
            Assert.Equal(Core.Faults.FaultCodes.MadeUnreadable, Assert.IsType<RestoreAnswer.NotRestored>(await shelf.RestoreAsync(file)).Why.Code);
        }
    }

    [Fact]
    public async Task A_file_of_before_there_was_a_book_is_brought_up_to_date()
    {
        var folder = _shelves.NewFolder();
        using (var shelf = _shelves.Open(folder)) await StockAsync(shelf, 10, 5);
        using (var other = SqliteShelves.Other(Path.Combine(folder, "pieces.db")))
            SqliteShelves.Ask(other, "DROP TABLE made_people; DROP TABLE made_steps; DELETE FROM SchemaVersions WHERE ScriptName LIKE '0005%'; PRAGMA user_version = 4;");
        var again = _shelves.Open(folder);
        Kept(await ((IMadeBook)again).WriteDownAsync([Make()]));
        Assert.Equal(15, (await ((IStockLedger)again).FreeAsync())["dot"].Whole);
    }

    [Fact]
    public async Task No_step_that_was_written_down_can_be_changed_or_taken_out()
    {
        var shelf = _shelves.Empty();
        Kept(await ((IMadeBook)shelf).WriteDownAsync([Make() with { Who = "Ann" }]));
        using var other = SqliteShelves.Other(shelf.FilePath);
        foreach (var sql in new[] { "UPDATE made_steps SET content = ''", "DELETE FROM made_steps", "UPDATE made_people SET who = 'Bea'" })
            Assert.Contains("only", Assert.Throws<SqliteException>(() => SqliteShelves.Ask(other, sql)).Message, StringComparison.Ordinal);
    }
}
