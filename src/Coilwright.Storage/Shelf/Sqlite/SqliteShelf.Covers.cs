using Microsoft.Data.Sqlite;

namespace Coilwright.Storage.Shelf.Sqlite;

public sealed partial class SqliteShelf : ICovers
{
    /// <inheritdoc/>
    public Task<Cover?> CoverAsync(Guid piece, CancellationToken cancel = default) => ReadAsync(connection =>
    {
        using var command = Command(connection, "SELECT id, media_type, bytes, still FROM covers WHERE piece = $piece", ("$piece", NameOf(piece)));
        using var rows = command.ExecuteReader();
        return rows.Read() ? new Cover(Guid.Parse(rows.GetString(0)), new Photo(rows.GetString(1), rows.GetFieldValue<byte[]>(2)), rows.GetBoolean(3)) : null;
    }, cancel);

    /// <inheritdoc/>
    public Task<CoverAnswer> KeepCoverAsync(Guid piece, Photo photo, bool isStill, CancellationToken cancel = default)
    {
        if (CoverRules.Of(photo) is { Length: > 0 } faults) return Task.FromResult<CoverAnswer>(new CoverAnswer.NotKept(faults));
        var cover = new Cover(Guid.CreateVersion7(_clock.GetUtcNow()), PhotoCleaning.Of(photo), isStill);
        return CoverAsync(piece, connection =>
        {
            Execute(connection, "INSERT INTO covers (piece, id, media_type, bytes, still) VALUES ($piece, $id, $type, $bytes, $still) "
                + "ON CONFLICT (piece) DO UPDATE SET id = excluded.id, media_type = excluded.media_type, bytes = excluded.bytes, still = excluded.still",
                ("$piece", NameOf(piece)), ("$id", NameOf(cover.Id)), ("$type", cover.Photo.MediaType), ("$bytes", cover.Photo.Bytes.ToArray()), ("$still", isStill ? 1L : 0L));
            return cover;
        }, cancel);
    }

    /// <inheritdoc/>
    public Task<CoverAnswer> TakeCoverOffAsync(Guid piece, CancellationToken cancel = default) => CoverAsync(piece, connection =>
    {
        Execute(connection, "DELETE FROM covers WHERE piece = $piece", ("$piece", NameOf(piece)));
        return null;
    }, cancel);

    private Task<CoverAnswer> CoverAsync(Guid piece, Func<SqliteConnection, Cover?> change, CancellationToken cancel) => WriteAsync<CoverAnswer>(
        connection => StepOf(connection, piece, 1) is null ? new CoverAnswer.Missing() : new CoverAnswer.Kept(change(connection)),
        answer => answer is CoverAnswer.Kept, fault => new CoverAnswer.NotKept([fault]), cancel);
}
