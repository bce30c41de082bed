using System.Collections.Immutable;
using Npgsql;

namespace Coilwright.Storage.Shelf.Postgres;

public sealed partial class PostgresShelf : ITrialLog
{
    private const string TrialColumns =
        "SELECT t.id, t.revision, t.at, t.tried, t.dropped_because, p.trial IS NOT NULL FROM coilwright.trials t LEFT JOIN coilwright.photos p ON p.trial = t.id ";

    /// <inheritdoc/>
    public Task<ImmutableArray<Trial>> TrialsAsync(Guid piece, CancellationToken cancel = default) => ReadAsync<ImmutableArray<Trial>>(async turn =>
        [.. await turn.ReadAsync(TrialOf, TrialColumns + "WHERE t.piece = @piece ORDER BY t.at, t.id", ("piece", piece))], cancel);

    /// <inheritdoc/>
    public Task<Photo?> PhotoAsync(Guid trial, CancellationToken cancel = default) => ReadAsync(async turn =>
        await turn.ReadAsync(row => new Photo(row.GetString(0), row.GetFieldValue<byte[]>(1)),
            "SELECT media_type, bytes FROM coilwright.photos WHERE trial = @trial", ("trial", trial)) is [var photo] ? photo : null, cancel);

    /// <inheritdoc/>
    public Task<TrialAnswer> AddTrialAsync(Guid piece, long revision, string tried, Photo? photo, CancellationToken cancel = default)
    {
        if (TrialRules.Of(tried, photo) is { Length: > 0 } faults) return Task.FromResult<TrialAnswer>(new TrialAnswer.NotKept(faults));
        var now = Now();
        var trial = new Trial(Guid.CreateVersion7(now), revision, now, TextOf(tried), null, photo is not null);
        return TrialAsync(async turn =>
        {
            if (await StepOfAsync(turn, piece, revision) is null) return null;
            await turn.DoAsync("INSERT INTO coilwright.trials (id, piece, revision, at, tried) VALUES (@id, @piece, @revision, @at, @tried)",
                ("id", trial.Id), ("piece", piece), ("revision", revision), ("at", now.UtcDateTime), ("tried", trial.Tried));
            if (photo is not null)
                await turn.DoAsync("INSERT INTO coilwright.photos (trial, media_type, bytes) VALUES (@trial, @type, @bytes)",
                    ("trial", trial.Id), ("type", photo.MediaType), ("bytes", photo.Bytes));
            return trial;
        }, async turn => await TrialOfAsync(turn, trial.Id) is not null, cancel);
    }

    /// <inheritdoc/>
    public Task<TrialAnswer> DropTrialAsync(Guid trial, string? because, CancellationToken cancel = default)
    {
        if (TrialRules.OfReason(because) is { Length: > 0 } faults) return Task.FromResult<TrialAnswer>(new TrialAnswer.NotKept(faults));
        var reason = because is null ? null : TextOf(because);
        return TrialAsync(async turn =>
        {
            await turn.DoAsync("UPDATE coilwright.trials SET dropped_because = @because WHERE id = @id", ("because", reason), ("id", trial));
            return await TrialOfAsync(turn, trial);
        }, async turn => await TrialOfAsync(turn, trial) is { } there && there.DroppedBecause == reason, cancel);
    }

    /// <inheritdoc/>
    public Task<TrialAnswer> RemoveTrialAsync(Guid trial, CancellationToken cancel = default) => TrialAsync(async turn =>
    {
        var removed = await TrialOfAsync(turn, trial);
        await turn.DoAsync("DELETE FROM coilwright.trials WHERE id = @id", ("id", trial));
        return removed;
    }, async turn => await TrialOfAsync(turn, trial) is null, cancel);

    private Task<TrialAnswer> TrialAsync(Func<PostgresTurn, Task<Trial?>> change, Func<PostgresTurn, Task<bool>> isThere, CancellationToken cancel) => WriteAsync<TrialAnswer>(
        async turn => await change(turn) is { } trial ? new TrialAnswer.Kept(trial) : new TrialAnswer.Missing(),
        answer => answer is TrialAnswer.Kept, fault => new TrialAnswer.NotKept([fault]), isThere, cancel);

    private static async Task<Trial?> TrialOfAsync(PostgresTurn turn, Guid trial) =>
        await turn.ReadAsync(TrialOf, TrialColumns + "WHERE t.id = @id", ("id", trial)) is [var found] ? found : null;

    private static Trial TrialOf(NpgsqlDataReader row) => new(row.GetGuid(0), row.GetInt64(1), TimeOf(row, 2), row.GetString(3), LineOf(row, 4), row.GetBoolean(5));
}
