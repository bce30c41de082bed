using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Jobs;

namespace Coilwright.Web.Bench;

/// <summary>Sizes of a design made. Stopped, it gives those that are made so far.</summary>
/// <param name="Data">Materials, steels and choices.</param>
/// <param name="Piece">The piece as it was when they were asked for.</param>
/// <param name="Request">For which wrists.</param>
public sealed record SizesJob(ReckoningData Data, ShelvedPiece Piece, SizesRequest Request) : JobOrder
{
    /// <inheritdoc/>
    public override object Run(JobHand hand) => Grader.Of(Piece.Piece, Data, Request, new Teller(hand, Request.WristsMm.Length), hand.Cancel);

    // Told at once and in order, not by way of a page's own thread.
    private sealed class Teller(JobHand hand, int of) : IProgress<Size>
    {
        private int _made;

        public void Report(Size value) => hand.Report((double)++_made / of, new SizesSoFar(_made, of));
    }
}

/// <summary>How many are made so far, of how many.</summary>
public sealed record SizesSoFar(int Made, int Of);
