using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing.Notation;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Editing;

public class RestringTests
{
    private const string Text = "one = 2 a, b   # the first\none, 2 c, two (b, 3 a), c, one, c   # and so on";

    private static Piece Written(string text = Text)
    {
        var beads = System.Collections.Immutable.ImmutableArray.Create(Bead("a", "round", 6), Bead("b", "round", 6, colour: "#aa3355"), Bead("c", "round", 3));
        return ((EditOutcome.Done)PieceEditing.Apply(Piece(beads, [0]) with { Written = OrderTree.Of("a") }, new SetOrderText(text), Data)).Piece;
    }

    private static EditOutcome Do(Piece piece, RowSwap[] swaps, RowStandIn[]? standIns = null, RunCount[]? runs = null) =>
        PieceEditing.Apply(piece, new Restring([.. swaps], [.. standIns ?? []], [.. runs ?? []]), Data);

    private static string Letters(Piece piece) => string.Concat(piece.Order.Kinds.Select(kind => piece.Beads[kind].Id));

    [Fact]
    public void Rows_change_places_beads_stand_in_and_runs_grow_in_one_step_and_remarks_stay()
    {
        var piece = Written();
        Assert.Equal("aabccbaaacaabc", Letters(piece));
        var done = Assert.IsType<EditOutcome.Done>(Do(piece, [new RowSwap(0, 3, 5, 4)], [new RowStandIn(0, 4, "b", "c")], [new RunCount(4, 2, 3)]));
        Assert.Equal("caaacccaabcaabc", Letters(done.Piece));
        Assert.Contains("# and so on", done.Piece.OrderText, StringComparison.Ordinal);
        Assert.Equal([0, 1, 2, 3, 4, 5, 6, 7, 8, 9], done.Beads);
        Assert.Equal([(7, 3), (11, 3)], done.Piece.Order.ReadingGroups.Where(g => g.Name == "one").Select(g => (g.First, g.Count)));
    }

    [Fact]
    public void A_measured_row_that_is_torn_apart_is_told()
    {
        var piece = Written() with { MeasuredRows = [new MeasuredRow(3, 5, 11.5)] };
        var done = Assert.IsType<EditOutcome.Done>(Do(piece, [new RowSwap(0, 3, 5, 4)]));
        Assert.Equal(FaultCodes.EditRowLost, Assert.Single(done.Told).Code);
        Assert.Empty(done.Piece.MeasuredRows);
    }

    [Fact]
    public void A_rule_goes_along_with_a_group_that_gets_another_name()
    {
        var piece = Written();
        piece = piece with { Wishes = new Wishes { Rules = [new OrderRule.Apart("two", "one")] } };
        var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(piece, new NameGroup(new BeadPlaces.Row(5, 4), "crest"), Data));
        Assert.Equal([new OrderRule.Apart("crest", "one")], done.Piece.Wishes.Rules);
    }

    [Theory]
    [InlineData(0, 3, 2, 4)]
    [InlineData(0, 3, 12, 4)]
    [InlineData(-1, 3, 5, 4)]
    [InlineData(0, 0, 5, 4)]
    public void Rows_that_are_not_there_or_lie_over_each_other_are_refused(int first, int count, int otherFirst, int otherCount) =>
        Assert.Equal(FaultCodes.EditNoSuchBead, Assert.Single(Assert.IsType<EditOutcome.Refused>(Do(Written(), [new RowSwap(first, count, otherFirst, otherCount)])).Why).Code);

    [Fact]
    public void Nothing_to_do_and_a_bead_that_is_not_there_are_refused()
    {
        Assert.Equal(FaultCodes.EditNothingChosen, Assert.Single(Assert.IsType<EditOutcome.Refused>(Do(Written(), [])).Why).Code);
        Assert.Equal(FaultCodes.EditChangesNothing, Assert.Single(Assert.IsType<EditOutcome.Refused>(Do(Written(), [], [new RowStandIn(0, 3, "c", "a")])).Why).Code);
    }
}
