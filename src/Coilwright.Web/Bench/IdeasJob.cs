using Coilwright.Core.Arrangement;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Jobs;

namespace Coilwright.Web.Bench;

/// <summary>Better orders looked for. Stopped, it gives what was found so far.</summary>
/// <param name="Data">Materials, steels, choices and adults' wrists.</param>
/// <param name="Piece">The piece as it was when they were asked for.</param>
/// <param name="Request">How much to try.</param>
public sealed record IdeasJob(ReckoningData Data, ShelvedPiece Piece, ArrangeRequest Request) : JobOrder
{
    /// <inheritdoc/>
    public override object Run(JobHand hand) => Arranging.Of(Piece.Piece, Data, Request, new Teller(hand), hand.Cancel);

    // Told at once and in order, not by way of a page's own thread.
    private sealed class Teller(JobHand hand) : IProgress<FoundCounts>
    {
        public void Report(FoundCounts value) => hand.Report(0, value);
    }
}
