using System.Collections.Immutable;
using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

public sealed partial class SqliteShelf : ITrialLog
{
    private const string TrialColumns = "SELECT t.id, t.revision, t.at, t.tried, t.dropped_because, p.trial IS NOT NULL FROM trials t LEFT JOIN photos p ON p.trial = t.id ";

    /// <inheritdoc/>
    public Task<ImmutableArray<Trial>> TrialsAsync(Guid piece, CancellationToken cancel = default) => ReadAsync(connection =>
    {
        using var command = Command(connection, TrialColumns + "WHERE t.piece = $piece ORDER BY t.at, t.id", ("$piece", NameOf(piece)));
        return TrialsOf(command);
    }, cancel);

    /// <inheritdoc/>
    public Task<Photo?> PhotoAsync(Guid trial, CancellationToken cancel = default) => ReadAsync(connection =>
    {
        using var command = Command(connection, "SELECT media_type, bytes FROM photos WHERE trial = $trial", ("$trial", NameOf(trial)));
        using var rows = command.ExecuteReader();
        return rows.Read() ? new Photo(rows.GetString(0), rows.GetFieldValue<byte[]>(1)) : null;
    }, cancel);

    /// <inheritdoc/>
    public Task<TrialAnswer> AddTrialAsync(Guid piece, long revision, string tried, Photo? photo, CancellationToken cancel = default)
    {
        if (TrialRules.Of(tried, photo) is { Length: > 0 } faults) return Task.FromResult<TrialAnswer>(new TrialAnswer.NotKept(faults));
        return TrialAsync(connection =>
        {
            if (StepOf(connection, piece, revision) is null) return null;
            var now = _clock.GetUtcNow();
            var trial = new Trial(Guid.CreateVersion7(now), revision, now, tried, null, photo is not null);
            Execute(connection, "INSERT INTO trials (id, piece, revision, at, tried) VALUES ($id, $piece, $revision, $at, $tried)",
                ("$id", NameOf(trial.Id)), ("$piece", NameOf(piece)), ("$revision", revision), ("$at", TextOf(now)), ("$tried", tried));
            if (photo is not null)
                Execute(connection, "INSERT INTO photos (trial, media_type, bytes) VALUES ($trial, $type, $bytes)",
                    ("$trial", NameOf(trial.Id)), ("$type", photo.MediaType), ("$bytes", photo.Bytes.ToArray()));
            return trial;
        }, cancel);
    }

    /// <inheritdoc/>
    public Task<TrialAnswer> DropTrialAsync(Guid trial, string? because, CancellationToken cancel = default)
    {
        if (TrialRules.OfReason(because) is { Length: > 0 } faults) return Task.FromResult<TrialAnswer>(new TrialAnswer.NotKept(faults));
        return TrialAsync(connection =>
        {
            Execute(connection, "UPDATE trials SET dropped_because = $because WHERE id = $id", ("$because", because), ("$id", NameOf(trial)));
            return TrialOf(connection, trial);
        }, cancel);
    }

    /// <inheritdoc/>
    public Task<TrialAnswer> RemoveTrialAsync(Guid trial, CancellationToken cancel = default) => TrialAsync(connection =>
    {
        var removed = TrialOf(connection, trial);
        Execute(connection, "DELETE FROM trials WHERE id = $id", ("$id", NameOf(trial)));
        return removed;
    }, cancel);

    private Task<TrialAnswer> TrialAsync(Func<SqliteConnection, Trial?> change, CancellationToken cancel) => WriteAsync<TrialAnswer>(
        connection => change(connection) is { } trial ? new TrialAnswer.Kept(trial) : new TrialAnswer.Missing(),
        answer => answer is TrialAnswer.Kept, fault => new TrialAnswer.NotKept([fault]), cancel);

    private static Trial? TrialOf(SqliteConnection connection, Guid trial)
    {
        using var command = Command(connection, TrialColumns + "WHERE t.id = $id", ("$id", NameOf(trial)));
        return TrialsOf(command) is [var found] ? found : null;
    }

    private static ImmutableArray<Trial> TrialsOf(SqliteCommand command)
    {
        using var rows = command.ExecuteReader();
        var trials = ImmutableArray.CreateBuilder<Trial>();
        while (rows.Read())
            trials.Add(new Trial(Guid.Parse(rows.GetString(0)), rows.GetInt64(1), TimeOf(rows.GetString(2)), rows.GetString(3), rows.IsDBNull(4) ? null : rows.GetString(4), rows.GetBoolean(5)));
        return trials.ToImmutable();
    }
}
