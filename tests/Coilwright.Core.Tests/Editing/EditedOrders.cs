using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Core.Tests.Stringing;

namespace Coilwright.Core.Tests.Editing;

/// <summary>Short ways to edit an order and see what became of it.</summary>
internal static class EditedOrders
{
    private static readonly ImmutableArray<Bead> Beads = [.. OrderTexts.BeadIds.Select(id => SamplePieces.Bead(id, "round", 6))];

    public static Piece Written(string text)
    {
        var tree = OrderTree.Of(text);
        var read = OrderNotation.Read(tree, OrderTexts.BeadIds);
        Assert.Empty(read.Faults.Select(OrderTexts.Shown));
        return SamplePieces.Piece(Beads, read.Order!.Kinds, groups: read.Order.Groups) with { Written = tree };
    }

    public static Piece Listed(StringingOrder order) => SamplePieces.Piece(Beads, order.Kinds, groups: order.Groups);

    public static EditOutcome.Done Done(Piece piece, PieceEdit edit)
    {
        var outcome = PieceEditing.Apply(piece, edit, SamplePieces.Data);
        return outcome is EditOutcome.Done done ? done
            : throw new InvalidOperationException(string.Join("; ", ((EditOutcome.Refused)outcome).Why.Select(OrderTexts.Shown)));
    }

    /// <summary>The text after an edit. Fails when the edit was refused, or when the order and its text part.</summary>
    public static string Text(string before, PieceEdit edit)
    {
        var done = Done(Written(before), edit).Piece;
        OrderTexts.AssertSame(OrderTexts.Order(done.OrderText!), done.Order);
        return done.OrderText!;
    }

    public static string Strung(Piece piece) => OrderTexts.Shown(piece.Order, OrderTexts.BeadIds);

    /// <summary>Why an edit is refused, as <c>edit.no-such-bead '9' beads=3</c>.</summary>
    public static string[] Refused(Piece piece, PieceEdit edit) =>
        [.. Assert.IsType<EditOutcome.Refused>(PieceEditing.Apply(piece, edit, SamplePieces.Data)).Why.Select(fault => OrderTexts.Shown(fault).Replace("0:0 ", "", StringComparison.Ordinal))];

    public static string[] Refused(string text, PieceEdit edit) => Refused(Written(text), edit);

    public static BeadPlaces Each(params int[] beads) => new BeadPlaces.Each([.. beads]);

    public static BeadPlaces Row(int first, int count) => new BeadPlaces.Row(first, count);

    public static BeadPlaces One(int bead) => BeadPlaces.One(bead);
}
