using Coilwright.Storage.Lists;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

public sealed partial class SqliteShelf : IKeptLists
{
    /// <inheritdoc/>
    public Task<KeptList?> ListAsync(ListKind kind, CancellationToken cancel = default) => ReadAsync(connection => LastList(connection, kind), cancel);

    /// <inheritdoc/>
    public Task<ListAnswer> KeepListAsync(ListKind kind, long seen, string content, CancellationToken cancel = default) => WriteAsync<ListAnswer>(connection =>
    {
        if (LastList(connection, kind) is { } now && now.Revision != seen) return new ListAnswer.Behind(now);
        var kept = new KeptList(kind, seen + 1, content, _clock.GetUtcNow());
        Execute(connection, seen > 0 && ListNames.IsReplaced(kind) ? "UPDATE lists SET revision = $revision, at = $at, content = $content WHERE kind = $kind"
            : "INSERT INTO lists (kind, revision, at, content) VALUES ($kind, $revision, $at, $content)",
            ("$kind", ListNames.Of(kind)), ("$revision", kept.Revision), ("$at", TextOf(kept.At)), ("$content", content));
        return new ListAnswer.Kept(kept);
    }, answer => answer is ListAnswer.Kept, fault => new ListAnswer.NotKept(fault), cancel);

    private static KeptList? LastList(SqliteConnection connection, ListKind kind)
    {
        using var command = Command(connection, "SELECT revision, content, at FROM lists WHERE kind = $kind ORDER BY revision DESC LIMIT 1", ("$kind", ListNames.Of(kind)));
        using var rows = command.ExecuteReader();
        return rows.Read() ? new KeptList(kind, rows.GetInt64(0), rows.GetString(1), TimeOf(rows.GetString(2))) : null;
    }
}
