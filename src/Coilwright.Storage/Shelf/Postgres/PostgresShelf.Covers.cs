namespace Coilwright.Storage.Shelf.Postgres;

public sealed partial class PostgresShelf : ICovers
{
    /// <inheritdoc/>
    public Task<Cover?> CoverAsync(Guid piece, CancellationToken cancel = default) => ReadAsync(async turn =>
        await turn.ReadAsync(row => new Cover(row.GetGuid(0), new Photo(row.GetString(1), row.GetFieldValue<byte[]>(2)), row.GetBoolean(3)),
            "SELECT id, media_type, bytes, still FROM coilwright.covers WHERE piece = @piece", ("piece", piece)) is [var cover] ? cover : null, cancel);

    /// <inheritdoc/>
    public Task<CoverAnswer> KeepCoverAsync(Guid piece, Photo photo, bool isStill, CancellationToken cancel = default)
    {
        if (CoverRules.Of(photo) is { Length: > 0 } faults) return Task.FromResult<CoverAnswer>(new CoverAnswer.NotKept(faults));
        var cover = new Cover(Guid.CreateVersion7(Now()), PhotoCleaning.Of(photo), isStill);
        return CoverAsync(piece, cover, turn => turn.DoAsync("INSERT INTO coilwright.covers (piece, id, media_type, bytes, still) VALUES (@piece, @id, @type, @bytes, @still) "
            + "ON CONFLICT (piece) DO UPDATE SET id = excluded.id, media_type = excluded.media_type, bytes = excluded.bytes, still = excluded.still",
            ("piece", piece), ("id", cover.Id), ("type", cover.Photo.MediaType), ("bytes", cover.Photo.Bytes), ("still", isStill)), cancel);
    }

    /// <inheritdoc/>
    public Task<CoverAnswer> TakeCoverOffAsync(Guid piece, CancellationToken cancel = default) =>
        CoverAsync(piece, null, turn => turn.DoAsync("DELETE FROM coilwright.covers WHERE piece = @piece", ("piece", piece)), cancel);

    private Task<CoverAnswer> CoverAsync(Guid piece, Cover? now, Func<PostgresTurn, Task> change, CancellationToken cancel) => WriteAsync<CoverAnswer>(
        async turn =>
        {
            if (await StepOfAsync(turn, piece, 1) is null) return new CoverAnswer.Missing();
            await change(turn);
            return new CoverAnswer.Kept(now);
        },
        answer => answer is CoverAnswer.Kept, fault => new CoverAnswer.NotKept([fault]),
        async turn => (await turn.ReadAsync(row => row.GetGuid(0), "SELECT id FROM coilwright.covers WHERE piece = @piece", ("piece", piece)) is [var there] ? there : (Guid?)null) == now?.Id, cancel);
}
