using Coilwright.Core.Faults;

namespace Coilwright.Storage.Shelf;

/// <summary>What came of backing up.</summary>
public abstract record BackupAnswer
{
    private BackupAnswer() { }

    /// <summary>It is there, whole.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Pieces">How many pieces are in it.</param>
    public sealed record Made(string File, int Pieces) : BackupAnswer;

    /// <summary>It could not be made; what was there under its name is still there.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotMade(Fault Why) : BackupAnswer;
}

/// <summary>What came of restoring.</summary>
public abstract record RestoreAnswer
{
    private RestoreAnswer() { }

    /// <summary>What was in the backup is on the shelf now, and nothing else.</summary>
    /// <param name="Pieces">How many pieces.</param>
    /// <param name="Before">A backup of what was on the shelf until then.</param>
    public sealed record Restored(int Pieces, string Before) : RestoreAnswer;

    /// <summary>The shelf is as it was.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotRestored(Fault Why) : RestoreAnswer;
}

/// <summary>Everything on a shelf in one file, and back.</summary>
public interface IShelfBackup
{
    /// <summary>Backs up everything: pieces with all their states, names, trials and photos. Others may go on working meanwhile.</summary>
    /// <param name="file">The file to make; one that is there is replaced once the new one is whole. Never the
    /// shelf's own.</param>
    /// <param name="cancel">Gives up before it is made.</param>
    Task<BackupAnswer> BackUpAsync(string file, CancellationToken cancel = default);

    /// <summary>Puts everything of a backup on the shelf in place of what is there. The backup is looked through first, every piece of it read; what was there
    /// is backed up beside the shelf.</summary>
    /// <param name="file">The backup; it stays as it is. A write-ahead log beside it, with its name and <c>-wal</c>, belongs to it.</param>
    /// <param name="cancel">Gives up before anything is replaced.</param>
    Task<RestoreAnswer> RestoreAsync(string file, CancellationToken cancel = default);
}
