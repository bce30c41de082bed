using System.Globalization;
using Coilwright.Core.Faults;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

public sealed partial class SqliteShelf : IShelfBackup
{
    /// <inheritdoc/>
    public async Task<BackupAnswer> BackUpAsync(string file, CancellationToken cancel = default)
    {
        try
        {
            return await Task.Run<BackupAnswer>(() =>
            {
                var target = Path.GetFullPath(file);
                if (Directory.Exists(target)) return NotMade(target, FaultDetails.IsFolder);
                if (!Directory.Exists(Path.GetDirectoryName(target))) return NotMade(target, FaultDetails.NotFound);
                if (IsOwn(target)) return new BackupAnswer.NotMade(Fault.Of(FaultCodes.ShelfOwnFile, "", target));
                return new BackupAnswer.Made(target, CopyTo(target));
            }, cancel).ConfigureAwait(false);
        }
        catch (Exception e) when (SqliteTrouble.Is(e))
        {
            return new BackupAnswer.NotMade(SqliteTrouble.Fault(SqliteTrouble.IsDamage(e) ? _file.Path : file, e));
        }
    }

    /// <inheritdoc/>
    public async Task<RestoreAnswer> RestoreAsync(string file, CancellationToken cancel = default)
    {
        if (_file.ReadOnly) return new RestoreAnswer.NotRestored(Fault.Of(FaultCodes.ShelfReadOnly, "", _file.Path));
        await _turn.WaitAsync(cancel).ConfigureAwait(false);
        var copy = Path.Combine(Path.GetDirectoryName(_file.Path)!, $".{Guid.NewGuid():N}.restoring");
        try
        {
            return await Task.Run(() => Restore(file, copy), cancel).ConfigureAwait(false);
        }
        catch (ShelfUnreadableException e)
        {
            return new RestoreAnswer.NotRestored(e.Why);
        }
        catch (Exception e) when (SqliteTrouble.Is(e))
        {
            return new RestoreAnswer.NotRestored(SqliteTrouble.Fault(File.Exists(copy) ? _file.Path : file, e));
        }
        finally
        {
            RemoveWithLog(copy);
            _turn.Release();
        }
    }

    /// <summary>Whether a path is the shelf's own file or one that SQLite keeps beside it, by whatever way it is reached.</summary>
    private bool IsOwn(string path)
    {
        var (name, folder) = (Path.GetFileName(path), Path.GetDirectoryName(path)!);
        // In either case of letters: some systems tell them apart, some do not.
        if (!OwnNames(Path.GetFileName(_file.Path)).Contains(name, StringComparer.OrdinalIgnoreCase)) return false;
        // A folder may be reached by a link or be mounted twice: what is put in it by one way is then there by the other.
        var probe = $".{Guid.NewGuid():N}.part";
        try
        {
            using (new FileStream(Path.Combine(folder, probe), FileMode.CreateNew, FileAccess.Write, FileShare.None, 1, FileOptions.DeleteOnClose))
                return File.Exists(Path.Combine(Path.GetDirectoryName(_file.Path)!, probe));
        }
        catch (UnauthorizedAccessException)
        {
            // Nothing can be written there, so nothing of ours be written over.
            return string.Equals(path, _file.Path, StringComparison.OrdinalIgnoreCase);
        }
    }

    private static string[] OwnNames(string file) => [file, file + "-wal", file + "-shm", file + "-journal"];

    private static BackupAnswer.NotMade NotMade(string target, string detail) => new(Fault.Of(FaultCodes.ShelfUnreachable, "", target, ("detail", detail)));

    /// <summary>Writes everything to a file of its own, which takes the target's name once it is whole and on the disk.</summary>
    private int CopyTo(string target)
    {
        var beside = Path.Combine(Path.GetDirectoryName(target)!, $".{Guid.NewGuid():N}.part");
        try
        {
            int pieces;
            using (var connection = _file.Connect())
            {
                // One file, closely packed, without a log beside it (https://www.sqlite.org/lang_vacuum.html).
                Execute(connection, "VACUUM INTO $file", ("$file", beside));
                pieces = Convert.ToInt32(SqliteShelfFile.Scalar(connection, "SELECT count(*) FROM pieces"), CultureInfo.InvariantCulture);
            }
            using (var written = new FileStream(beside, FileMode.Open, FileAccess.ReadWrite)) written.Flush(flushToDisk: true);
            File.Move(beside, target, overwrite: true);
            return pieces;
        }
        finally
        {
            RemoveWithLog(beside);
        }
    }

    private RestoreAnswer Restore(string file, string copy)
    {
        var source = Path.GetFullPath(file);
        if (File.Exists(source) && IsOwn(source)) return new RestoreAnswer.NotRestored(Fault.Of(FaultCodes.ShelfOwnFile, "", file));
        // On a copy: an older backup is brought up to date, and hers stays as it is. A log beside it holds what was last kept: a shelf's file that was
        // copied by hand while the program ran has one, and without it would be older than it looks.
        foreach (var (from, to) in (IEnumerable<(string, string)>)[(source, copy), (source + "-wal", copy + "-wal")])
        {
            if (from != source && !File.Exists(from)) continue;
            File.Copy(from, to);
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(to, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }
        var backup = new SqliteShelfFile(copy, _file.Patience, ReadOnly: false);
        try
        {
            if (new FileInfo(copy).Length == 0) return new RestoreAnswer.NotRestored(Fault.Of(FaultCodes.ShelfNotOne, "", file));
            if (backup.BringUpToDate() is { } fault) return new RestoreAnswer.NotRestored(fault with { Value = file });
            using var restored = backup.Connect();
            if ((string)SqliteShelfFile.Scalar(restored, "PRAGMA integrity_check(1)")! is not "ok" and var found)
                return new RestoreAnswer.NotRestored(Fault.Of(FaultCodes.ShelfDamaged, "", file, ("reason", found)));
            var pieces = ReadEveryPiece(restored);
            ReadAllStock(restored);
            _ = new MadeRows(restored, _clock).All();
            TraySince(restored, 0);
            var before = Path.Combine(Path.GetDirectoryName(_file.Path)!,
                $"before-restoring-{_clock.GetUtcNow().UtcDateTime.ToString("yyyyMMdd-HHmmss-fff", CultureInfo.InvariantCulture)}.db");
            CopyTo(before);
            using var target = _file.Connect();
            // All or nothing, and readers see the old until it is all there (https://www.sqlite.org/backup.html).
            restored.BackupDatabase(target);
            return new RestoreAnswer.Restored(pieces, before);
        }
        finally
        {
            backup.Release();
        }
    }

    /// <summary>Reads the newest state of every piece: a backup that this program cannot read is no use to her.</summary>
    private int ReadEveryPiece(SqliteConnection backup)
    {
        var ids = new List<Guid>();
        using (var command = Command(backup, "SELECT id FROM pieces"))
        using (var rows = command.ExecuteReader())
            while (rows.Read()) ids.Add(Guid.Parse(rows.GetString(0)));
        foreach (var id in ids) PieceOf(backup, HeadOf(backup, id)!);
        return ids.Count;
    }

    private static void RemoveWithLog(string file)
    {
        foreach (var name in OwnNames(file).Append(file + ".opening"))
        {
            try
            {
                File.Delete(name);
            }
            catch (Exception e) when (FileTrouble.Is(e))
            {
                // What is left over can be removed by hand; why the work itself failed is the thing to tell.
            }
        }
    }
}
