using System.Collections.Immutable;
using Coilwright.Core.Tray;
using Coilwright.Storage.Tray;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

public sealed partial class SqliteShelf : IBeadTray
{
    /// <inheritdoc/>
    Task<TrayNews> IBeadTray.SinceAsync(long revision, CancellationToken cancel) => ReadAsync(connection => TraySince(connection, revision), cancel);

    /// <inheritdoc/>
    Task<TrayAnswer> IBeadTray.ChangeAsync(long seen, ImmutableArray<TrayEdit> edits, CancellationToken cancel)
    {
        if (TrayRows.Check(edits, _data) is { } refused) return Task.FromResult<TrayAnswer>(refused);
        return WriteAsync<TrayAnswer>(connection =>
        {
            var last = LastTrayChange(connection);
            if (last != seen)
            {
                var changed = TrayKeysSince(connection, seen);
                if (edits.FirstOrDefault(e => changed.Contains(e.Key)) is { } behind) return new TrayAnswer.Behind(behind.Key);
            }
            if (edits.IsEmpty) return new TrayAnswer.Kept(last);
            Execute(connection, "INSERT INTO tray_changes (revision, at) VALUES ($revision, $at)", ("$revision", last + 1), ("$at", TextOf(_clock.GetUtcNow())));
            using var command = Command(connection, "INSERT INTO tray_kinds (key, revision, content, drawer) VALUES ($key, $revision, $content, $drawer)",
                ("$key", ""), ("$revision", last + 1), ("$content", ""), ("$drawer", ""));
            // Read once, for a hundred thousand of them.
            command.Prepare();
            foreach (var row in edits.Select(TrayRows.Of))
            {
                cancel.ThrowIfCancellationRequested();
                command.Parameters["$key"].Value = row.Key;
                command.Parameters["$content"].Value = row.Content ?? (object)DBNull.Value;
                command.Parameters["$drawer"].Value = row.Drawer ?? (object)DBNull.Value;
                command.ExecuteNonQuery();
            }
            return new TrayAnswer.Kept(last + 1);
        }, answer => answer is TrayAnswer.Kept, fault => new TrayAnswer.NotKept(fault), cancel);
    }

    private TrayNews TraySince(SqliteConnection connection, long revision)
    {
        using var command = Command(connection, """
            SELECT k.key, k.content, k.drawer FROM tray_kinds k
            WHERE k.revision > $revision AND k.revision = (SELECT max(revision) FROM tray_kinds WHERE key = k.key)
            """, ("$revision", revision));
        using var rows = command.ExecuteReader();
        var contents = new List<TrayContent>();
        while (rows.Read()) contents.Add(new TrayContent(rows.GetString(0), rows.IsDBNull(1) ? null : rows.GetString(1), rows.IsDBNull(2) ? null : rows.GetString(2)));
        return TrayRows.Read(LastTrayChange(connection), contents, _data);
    }

    private static HashSet<string> TrayKeysSince(SqliteConnection connection, long revision)
    {
        using var command = Command(connection, "SELECT key FROM tray_kinds WHERE revision > $revision", ("$revision", revision));
        using var rows = command.ExecuteReader();
        var keys = new HashSet<string>(StringComparer.Ordinal);
        while (rows.Read()) keys.Add(rows.GetString(0));
        return keys;
    }

    private static long LastTrayChange(SqliteConnection connection) => (long)SqliteShelfFile.Scalar(connection, "SELECT coalesce(max(revision), 0) FROM tray_changes")!;
}
