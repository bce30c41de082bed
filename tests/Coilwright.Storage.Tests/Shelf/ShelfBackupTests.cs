using Coilwright.Core.Faults;
using Coilwright.Storage.Shelf;
using static Coilwright.Storage.Tests.Shelf.SqliteShelves;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>Everything in one file, and back.</summary>
public sealed class ShelfBackupTests : IDisposable
{
    private readonly SqliteShelves _shelves = new();

    public void Dispose() => _shelves.Dispose();

    private static Fault NotRestored(RestoreAnswer answer) => Assert.IsType<RestoreAnswer.NotRestored>(answer).Why;

    [Fact]
    public async Task What_was_backed_up_comes_back_with_every_state_name_trial_photo_and_cover()
    {
        var shelf = _shelves.Empty();
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        await shelf.ChangeAsync(id, 1, To("second"));
        await shelf.NameAsync(id, 1, "first on the mat");
        byte[] jpeg = [0xFF, 0xD8, 0xFF, 1, 2, 3];
        var trial = Assert.IsType<TrialAnswer.Kept>(await shelf.AddTrialAsync(id, 1, "as it was", new Photo("image/jpeg", jpeg))).Now;
        var cover = Assert.IsType<CoverAnswer.Kept>(await shelf.KeepCoverAsync(id, new Photo("image/jpeg", jpeg), isStill: true)).Now!;
        var file = Path.Combine(_shelves.NewFolder(), "everything.coilwright");
        Assert.Equal(1, Assert.IsType<BackupAnswer.Made>(await shelf.BackUpAsync(file)).Pieces);
        Assert.Single(Directory.GetFileSystemEntries(Path.GetDirectoryName(file)!)); // one file, nothing beside it

        // Onto another shelf, with other things on it.
        var other = _shelves.Empty();
        var gone = Kept(await other.AddAsync(Boardwalk with { Title = "only here" })).Id;
        var restored = Assert.IsType<RestoreAnswer.Restored>(await other.RestoreAsync(file));
        Assert.Equal(1, restored.Pieces);
        Assert.Null(await other.OpenAsync(gone));
        var back = (await other.OpenAsync(id))!;
        Assert.Equal(("second", 2L, true), (back.Piece.Title, back.Revision, back.CanUndo));
        Assert.Equal(["first on the mat", null], (await other.HistoryAsync(id)).Select(step => step.Name));
        Assert.Equal(trial, Assert.Single(await other.TrialsAsync(id)));
        Assert.Equal(jpeg, (await other.PhotoAsync(trial.Id))!.Bytes.ToArray());
        var there = (await other.CoverAsync(id))!;
        Assert.Equal((cover.Id, true), (there.Id, there.IsStill));
        Assert.Equal(jpeg, there.Photo.Bytes.ToArray());
        Assert.Equal(Boardwalk.Title, Kept(await other.UndoAsync(id, 2)).Piece.Title);

        // And what was there is not lost either.
        Assert.IsType<RestoreAnswer.Restored>(await other.RestoreAsync(restored.Before));
        Assert.Equal("only here", (await other.OpenAsync(gone))!.Piece.Title);
    }

    [Fact]
    public async Task A_backup_replaces_an_older_one_only_when_it_is_whole()
    {
        var shelf = _shelves.Empty();
        await shelf.AddAsync(Boardwalk);
        var folder = _shelves.NewFolder();
        var file = Path.Combine(folder, "backup.db");
        File.WriteAllText(file, "an older one");
        Assert.IsType<BackupAnswer.Made>(await shelf.BackUpAsync(file));
        Assert.True(new FileInfo(file).Length > 4096);
        Assert.Equal(FaultCodes.ShelfUnreachable, Assert.IsType<BackupAnswer.NotMade>(await shelf.BackUpAsync(folder)).Why.Code);
        Assert.Equal(FaultCodes.ShelfUnreachable, Assert.IsType<BackupAnswer.NotMade>(await shelf.BackUpAsync(Path.Combine(folder, "no", "such", "folder.db"))).Why.Code);
        Assert.Single(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public async Task While_she_works_on_a_backup_holds_a_moment_of_it()
    {
        var shelf = _shelves.Empty();
        var now = Kept(await shelf.AddAsync(Boardwalk));
        var folder = _shelves.NewFolder();
        var working = Task.Run(async () =>
        {
            for (var i = 0; i < 60; i++) now = Kept(await shelf.ChangeAsync(now.Id, now.Revision, To($"{i}")));
        });
        var made = 0;
        while (!working.IsCompleted && made < 5) Assert.IsType<BackupAnswer.Made>(await shelf.BackUpAsync(Path.Combine(folder, $"{made++}.db")));
        await working;
        foreach (var file in Directory.GetFiles(folder))
        {
            var other = _shelves.Empty();
            Assert.IsType<RestoreAnswer.Restored>(await other.RestoreAsync(file));
            var there = (await other.OpenAsync(now.Id))!;
            Assert.Equal(there.Revision, (await other.HistoryAsync(now.Id)).Length);
        }
    }

    [Fact]
    public async Task What_is_no_sound_backup_is_told_and_the_shelf_stays_as_it_is()
    {
        var shelf = _shelves.Empty();
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        var folder = _shelves.NewFolder();
        var sound = Path.Combine(folder, "sound.db");
        await shelf.BackUpAsync(sound);

        string Spoilt(string name, Action<string> spoil)
        {
            var file = Path.Combine(folder, name);
            File.Copy(sound, file);
            spoil(file);
            return file;
        }

        Assert.Equal(FaultCodes.ShelfUnreachable, NotRestored(await shelf.RestoreAsync(Path.Combine(folder, "not there.db"))).Code);
        Assert.Equal(FaultCodes.ShelfNotOne, NotRestored(await shelf.RestoreAsync(Spoilt("empty", file => File.WriteAllText(file, "")))).Code);
        Assert.Equal(FaultCodes.ShelfNotOne, NotRestored(await shelf.RestoreAsync(Spoilt("text", file => File.WriteAllText(file, new string('x', 5000))))).Code);
        var newer = NotRestored(await shelf.RestoreAsync(Spoilt("newer", file =>
        {
            using var other = Other(file);
            Ask(other, "PRAGMA user_version = 99");
        })));
        Assert.Equal((FaultCodes.ShelfNewer, Path.Combine(folder, "newer")), (newer.Code, newer.Value));
        Assert.Equal(FaultCodes.ShelfDamaged, NotRestored(await shelf.RestoreAsync(Spoilt("damaged", file =>
        {
            var bytes = File.ReadAllBytes(file);
            bytes.AsSpan(bytes.Length - 9000).Fill(0xA5);
            File.WriteAllBytes(file, bytes);
        }))).Code);
        Assert.Equal(FaultCodes.ShelfPieceUnreadable, NotRestored(await shelf.RestoreAsync(Spoilt("from tomorrow", file =>
        {
            using var other = Other(file);
            Ask(other, "DROP TRIGGER steps_are_not_changed");
            Ask(other, """UPDATE steps SET content = '{"format":"coilwright.piece/9"}'""");
        }))).Code);

        Assert.Equal(Boardwalk.Title, (await shelf.OpenAsync(id))!.Piece.Title);
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(shelf.FilePath)!, "*.db")); // nothing was put aside either
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(shelf.FilePath)!, "*.restoring*"));
    }

    [Fact]
    public async Task A_backup_never_takes_the_place_of_the_shelfs_own_files_by_whatever_way_they_are_reached()
    {
        var shelf = _shelves.Empty();
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        var link = Path.Combine(_shelves.NewFolder(), "link");
        Directory.CreateSymbolicLink(link, Path.GetDirectoryName(shelf.FilePath)!);
        foreach (var folder in (string[])[Path.GetDirectoryName(shelf.FilePath)!, Path.Combine(Path.GetDirectoryName(shelf.FilePath)!, "."), link])
            foreach (var name in (string[])["pieces.db", "PIECES.db", "pieces.db-wal", "pieces.db-shm"])
                Assert.Equal(FaultCodes.ShelfOwnFile, Assert.IsType<BackupAnswer.NotMade>(await shelf.BackUpAsync(Path.Combine(folder, name))).Why.Code);
        foreach (var file in (string[])[shelf.FilePath, Path.Combine(link, "pieces.db")]) Assert.Equal(FaultCodes.ShelfOwnFile, NotRestored(await shelf.RestoreAsync(file)).Code);
        Assert.Equal("after", Kept(await shelf.ChangeAsync(id, 1, To("after"))).Piece.Title);
        Assert.Equal("after", (await _shelves.Open(Path.GetDirectoryName(shelf.FilePath)!).OpenAsync(id))!.Piece.Title);
        // A file of that name elsewhere is a backup like any other.
        Assert.IsType<BackupAnswer.Made>(await shelf.BackUpAsync(Path.Combine(_shelves.NewFolder(), "pieces.db")));
    }

    [Fact]
    public async Task A_shelf_that_was_copied_by_hand_with_its_log_comes_back_with_what_was_last_kept()
    {
        var shelf = _shelves.Empty();
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        await shelf.ChangeAsync(id, 1, To("still in the log"));
        var copy = Path.Combine(_shelves.NewFolder(), "copied by hand.db");
        File.Copy(shelf.FilePath, copy);
        File.Copy(shelf.FilePath + "-wal", copy + "-wal");
        var (bytes, log) = (File.ReadAllBytes(copy), File.ReadAllBytes(copy + "-wal"));
        // The log is what it is about: the file alone has less in it.
        Assert.True(log.Length > 0);
        var other = _shelves.Empty();
        Assert.IsType<RestoreAnswer.Restored>(await other.RestoreAsync(copy));
        Assert.Equal(("still in the log", 2L), ((await other.OpenAsync(id))!.Piece.Title, (await other.OpenAsync(id))!.Revision));
        Assert.Equal(bytes, File.ReadAllBytes(copy));
        Assert.Equal(log, File.ReadAllBytes(copy + "-wal"));
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(other.FilePath)!, "*.restoring*"));
    }

    [Fact]
    public async Task A_step_that_saw_a_state_from_before_restoring_is_told()
    {
        var shelf = _shelves.Empty();
        var now = Kept(await shelf.AddAsync(Boardwalk));
        var file = Path.Combine(_shelves.NewFolder(), "backup.db");
        await shelf.BackUpAsync(file);
        now = Kept(await shelf.ChangeAsync(now.Id, 1, To("later")));
        await shelf.RestoreAsync(file);
        Assert.IsType<ShelfAnswer.Behind>(await shelf.ChangeAsync(now.Id, now.Revision, To("on top of it")));
        Assert.Equal(Boardwalk.Title, (await shelf.OpenAsync(now.Id))!.Piece.Title);
    }
}
