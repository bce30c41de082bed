using Coilwright.Core.Cures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Jobs;

namespace Coilwright.Web.Bench;

/// <summary>Asks the core for readings, and keeps the last few.</summary>
/// <remarks>A page is drawn twice when it is opened: once to be sent and once when it comes to life. What the first drawing asked for is there at once
/// for the second, so that nothing flickers. May be asked by many at once.</remarks>
public sealed class Reckoner(ReckoningData data) : IDisposable
{
    private const int Kept = 24;
    private readonly QuietCores _quiet = new();
    private readonly Lock _gate = new();
    private readonly LinkedList<((Guid, long, double) Key, Reckoned Reckoned)> _last = [];

    /// <summary>Materials, steels and choices that are reckoned with.</summary>
    public ReckoningData Data => data;

    /// <summary>The readings if they were asked for lately; null otherwise.</summary>
    public Reckoned? Known(ShelvedPiece piece, double wristMm)
    {
        lock (_gate)
            for (var node = _last.First; node is not null; node = node.Next)
                if (node.Value.Key == (piece.Id, piece.Revision, wristMm))
                {
                    _last.Remove(node);
                    _last.AddFirst(node);
                    return node.Value.Reckoned;
                }
        return null;
    }

    /// <summary>Forgets all: what is on the shelf is no longer what it was.</summary>
    public void Forget()
    {
        lock (_gate) _last.Clear();
    }

    /// <summary>The readings of a piece on a wrist, mm. Takes as long as it takes: not for the page's own thread.</summary>
    public Reckoned Reckon(ShelvedPiece piece, double wristMm)
    {
        if (Known(piece, wristMm) is { } known) return known;
        var reckoned = Reckon(piece.Piece, wristMm);
        lock (_gate)
        {
            _last.AddFirst(((piece.Id, piece.Revision, wristMm), reckoned));
            if (_last.Count > Kept) _last.RemoveLast();
        }
        return reckoned;
    }

    /// <summary>The edit that ends a notice of a piece; null when none was found. Looked for behind all that she waits for, and not behind a long job.</summary>
    public Task<Cure?> CureOfAsync(Notice notice, Piece piece, Reckoned reckoned, CancellationToken cancel) =>
        _quiet.RunAsync(() => CureFinder.Of(notice, piece, reckoned, data, new ReckonRequest { WristMm = reckoned.WristMm }, cancel), cancel);

    /// <summary>The readings of a piece that is not on the shelf as it is. Nothing of it is kept.</summary>
    public Reckoned Reckon(Piece piece, double wristMm) => Reckoning.Of(piece, data, new ReckonRequest { WristMm = wristMm });

    /// <inheritdoc/>
    public void Dispose() => _quiet.Dispose();
}
