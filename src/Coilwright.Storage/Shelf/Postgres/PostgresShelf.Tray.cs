using System.Collections.Immutable;
using Coilwright.Core.Tray;
using Coilwright.Storage.Tray;

namespace Coilwright.Storage.Shelf.Postgres;

public sealed partial class PostgresShelf : IBeadTray
{
    // Whoever changes the tray holds this until it is written. "Tray"; chosen by us.
    private const long Tray = 0x54726179;

    /// <inheritdoc/>
    Task<TrayNews> IBeadTray.SinceAsync(long revision, CancellationToken cancel) => ReadAsync(async turn =>
    {
        // Asked with every search, and there is seldom news: then the kinds are not looked at, however many there are.
        var last = await LastTrayChangeAsync(turn);
        if (last <= revision) return TrayRows.Read(last, [], _data);
        var rows = await turn.ReadAsync(row => new TrayContent(row.GetString(0), LineOf(row, 1), LineOf(row, 2)), """
            SELECT k.key, k.content, k.drawer FROM coilwright.tray_kinds k
            WHERE k.revision > @revision AND NOT EXISTS (SELECT 1 FROM coilwright.tray_kinds l WHERE l.key = k.key AND l.revision > k.revision)
            """, ("revision", revision));
        return TrayRows.Read(last, rows, _data);
    }, cancel);

    /// <inheritdoc/>
    Task<TrayAnswer> IBeadTray.ChangeAsync(long seen, ImmutableArray<TrayEdit> edits, CancellationToken cancel)
    {
        if (TrayRows.Check(edits, _data) is { } refused) return Task.FromResult<TrayAnswer>(refused);
        TrayContent[] contents = [.. edits.Select(TrayRows.Of)];
        var mark = Guid.CreateVersion7();
        return WriteAsync<TrayAnswer>(async turn =>
        {
            await turn.DoAsync("SELECT pg_advisory_xact_lock(@tray)", ("tray", Tray));
            var last = await LastTrayChangeAsync(turn);
            if (last != seen)
            {
                var changed = (await turn.ReadAsync(row => row.GetString(0), "SELECT key FROM coilwright.tray_kinds WHERE revision > @seen", ("seen", seen))).ToHashSet(StringComparer.Ordinal);
                if (edits.FirstOrDefault(e => changed.Contains(e.Key)) is { } behind) return new TrayAnswer.Behind(behind.Key);
            }
            if (edits.IsEmpty) return new TrayAnswer.Kept(last);
            await turn.DoAsync("INSERT INTO coilwright.tray_changes (revision, mark, at) VALUES (@revision, @mark, @at)", ("revision", last + 1), ("mark", mark), ("at", Now().UtcDateTime));
            await turn.DoAsync("""
                INSERT INTO coilwright.tray_kinds (key, revision, content, drawer)
                SELECT k.key, @revision, k.content, k.drawer FROM unnest(@keys, @contents, @drawers) AS k (key, content, drawer)
                """, ("revision", last + 1), ("keys", contents.Select(c => c.Key).ToArray()), ("contents", contents.Select(c => c.Content).ToArray()), ("drawers", contents.Select(c => Line(c.Drawer)).ToArray()));
            return new TrayAnswer.Kept(last + 1);
        }, answer => answer is TrayAnswer.Kept, fault => new TrayAnswer.NotKept(fault), async turn =>
        {
            await turn.DoAsync("SELECT pg_advisory_xact_lock(@tray)", ("tray", Tray));
            return await turn.ReadAsync(row => row.GetInt64(0), "SELECT revision FROM coilwright.tray_changes WHERE mark = @mark", ("mark", mark)) is [_];
        }, cancel);
    }

    private static async Task<long> LastTrayChangeAsync(PostgresTurn turn) => (await turn.ReadAsync(row => row.GetInt64(0), "SELECT coalesce(max(revision), 0) FROM coilwright.tray_changes"))[0];
}
