using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Bench;

/// <summary>How pieces sit, and the last few that were worked out: what was settled on one page need not be settled again on another.</summary>
/// <remarks>Kept by the state of the piece and by what it was settled with, so that an answer is never an older piece's; but a state that sits as an earlier one did, after other colours, another title or a
/// step taken back, has that one's answer. May be asked by many at once.</remarks>
public sealed class SettledPieces(ReckoningData data)
{
    // One is a few hundred kilobytes for the longest piece. Our choice.
    private const int Kept = 12;
    private readonly Lock _gate = new();
    private readonly LinkedList<((Guid Id, long Revision, SettleRequest Request) Key, Piece Piece, Settled Settled)> _last = [];

    /// <summary>What was found lately; null otherwise.</summary>
    public Settled? Known(ShelvedPiece piece, SettleRequest request)
    {
        lock (_gate)
        {
            for (var node = _last.First; node is not null; node = node.Next)
                if (node.Value.Key == (piece.Id, piece.Revision, request)) return node.Value.Settled;
            foreach (var (key, before, settled) in _last)
                if (key.Id == piece.Id && key.Request == request && SitAlike.Are(before, piece.Piece)) return settled;
        }
        return null;
    }

    /// <summary>Keeps what was found.</summary>
    public void Keep(ShelvedPiece piece, Settled settled)
    {
        lock (_gate)
        {
            _last.AddFirst(((piece.Id, piece.Revision, settled.Request), piece.Piece, settled));
            if (_last.Count > Kept) _last.RemoveLast();
        }
    }

    /// <summary>Forgets all: what is on the shelf is no longer what it was.</summary>
    public void Forget()
    {
        lock (_gate) _last.Clear();
    }

    /// <summary>How a piece sits. Takes as long as it takes: not for the page's own thread.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Settled Settle(ShelvedPiece piece, SettleRequest request, CancellationToken cancel)
    {
        if (Known(piece, request) is { } known) return known;
        var settled = Settling.Of(piece.Piece, data.Choices, request, cancel);
        Keep(piece, settled);
        return settled;
    }
}
