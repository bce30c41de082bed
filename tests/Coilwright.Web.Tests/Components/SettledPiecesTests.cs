using Coilwright.Core.Settle;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;

namespace Coilwright.Web.Tests.Components;

/// <summary>Which answers are kept for which states of a piece.</summary>
public sealed class SettledPiecesTests
{
    private static readonly SettleRequest Asked = new(150);

    [Fact]
    public void A_state_that_sits_as_an_earlier_one_has_its_answer()
    {
        var pieces = new SettledPieces(Examples.Data);
        var before = new ShelvedPiece(Guid.NewGuid(), 3, Examples.PuddleHop);
        var settled = pieces.Settle(before, Asked, TestContext.Current.CancellationToken);
        var recoloured = before with { Revision = 4, Piece = before.Piece with { Title = "Another", Beads = [.. before.Piece.Beads.Select(b => b.WithColours([]))] } };
        Assert.Same(settled, pieces.Known(recoloured, Asked));
    }

    [Fact]
    public void Another_order_wrist_or_piece_has_not()
    {
        var pieces = new SettledPieces(Examples.Data);
        var before = new ShelvedPiece(Guid.NewGuid(), 3, Examples.PuddleHop);
        pieces.Keep(before, new Settled { Outcome = SettleOutcome.DidNotSettle, Request = Asked, Quick = null! });
        Assert.NotNull(pieces.Known(before, Asked));
        Assert.Null(pieces.Known(before, Asked with { WristMm = 151 }));
        Assert.Null(pieces.Known(before, Asked with { Pose = ArmPose.Hanging }));
        Assert.Null(pieces.Known(before with { Id = Guid.NewGuid() }, Asked));
        Assert.Null(pieces.Known(before with { Revision = 4, Piece = before.Piece with { Order = new([.. before.Piece.Order.Kinds.Skip(1)], []) } }, Asked));
    }
}
