using Coilwright.Storage.Lists;

namespace Coilwright.Storage.Shelf.Postgres;

public sealed partial class PostgresShelf : IKeptLists
{
    // Whoever keeps a list holds this until it is written, so that two who saw the same one come one after the other. "Lists"; chosen by us.
    private const long Lists = 0x4C69737473;

    /// <inheritdoc/>
    public Task<KeptList?> ListAsync(ListKind kind, CancellationToken cancel = default) => ReadAsync(turn => LastListAsync(turn, kind), cancel);

    /// <inheritdoc/>
    public Task<ListAnswer> KeepListAsync(ListKind kind, long seen, string content, CancellationToken cancel = default) => WriteAsync<ListAnswer>(async turn =>
    {
        await turn.DoAsync("SELECT pg_advisory_xact_lock(@lists)", ("lists", Lists));
        if (await LastListAsync(turn, kind) is { } now && now.Revision != seen) return new ListAnswer.Behind(now);
        var kept = new KeptList(kind, seen + 1, content, Now());
        await turn.DoAsync(seen > 0 && ListNames.IsReplaced(kind) ? "UPDATE coilwright.lists SET revision = @revision, at = @at, content = @content WHERE kind = @kind"
            : "INSERT INTO coilwright.lists (kind, revision, at, content) VALUES (@kind, @revision, @at, @content)",
            ("kind", ListNames.Of(kind)), ("revision", kept.Revision), ("at", kept.At.UtcDateTime), ("content", content));
        return new ListAnswer.Kept(kept);
    }, answer => answer is ListAnswer.Kept, fault => new ListAnswer.NotKept(fault), async turn =>
    {
        await turn.DoAsync("SELECT pg_advisory_xact_lock(@lists)", ("lists", Lists));
        return await LastListAsync(turn, kind) is { } last && last.Revision == seen + 1 && last.Content == content;
    }, cancel);

    private static async Task<KeptList?> LastListAsync(PostgresTurn turn, ListKind kind) =>
        await turn.ReadAsync(row => new KeptList(kind, row.GetInt64(0), row.GetString(1), TimeOf(row, 2)),
            "SELECT revision, content, at FROM coilwright.lists WHERE kind = @kind ORDER BY revision DESC LIMIT 1", ("kind", ListNames.Of(kind))) is [var last] ? last : null;
}
