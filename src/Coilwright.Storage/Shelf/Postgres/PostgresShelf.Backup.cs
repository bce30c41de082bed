using Coilwright.Core.Faults;

namespace Coilwright.Storage.Shelf.Postgres;

/// <remarks>A database is backed up with the server's own means, <c>pg_dump</c> and <c>pg_restore</c>; both answers say so.</remarks>
public sealed partial class PostgresShelf : IShelfBackup
{
    /// <inheritdoc/>
    public Task<BackupAnswer> BackUpAsync(string file, CancellationToken cancel = default) => Task.FromResult<BackupAnswer>(new BackupAnswer.NotMade(Elsewhere));

    /// <inheritdoc/>
    public Task<RestoreAnswer> RestoreAsync(string file, CancellationToken cancel = default) => Task.FromResult<RestoreAnswer>(new RestoreAnswer.NotRestored(Elsewhere));

    private Fault Elsewhere => Fault.Of(FaultCodes.DatabaseBackup, "", Place);
}
