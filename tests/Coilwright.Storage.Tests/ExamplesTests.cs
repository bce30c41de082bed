using Coilwright.Core.Alignment;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Storage.Tests;

/// <summary>The example pieces are real: they read, they fit, and they are what their makers wanted.</summary>
public class ExamplesTests
{
    public static TheoryData<string> Files => [.. TestData.ExampleFiles.Select(f => Path.GetFileName(f)!)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_example_reads_without_a_fault(string file)
    {
        var read = PieceFile.ReadFrom(Path.Combine(TestData.Examples, file), TestData.Data);
        Assert.Empty(read.Faults);
        Assert.NotNull(read.Piece);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_example_can_be_made_and_worn_and_comes_out_at_its_turns(string file)
    {
        var reckoned = Reckoned(file);
        Assert.True(reckoned.Fit.Fits);
        Assert.DoesNotContain(reckoned.Notices, n => n.Severity == Severity.Stop);
        // Ends within what the data calls as wanted of their overlap, so that the example needs no excuse.
        Assert.Equal(reckoned.Piece.Ends.OverlapMm!.Value, reckoned.Fit.EndsOverlapMm, TestData.Data.Choices.OverlapToleranceMm);
        Assert.Equal(reckoned.Piece.Wishes.Turns!.Value, reckoned.Fit.OverlapTurns);
    }

    [Fact]
    public void Boardwalk_is_a_plain_repeat_that_lines_up_as_wished()
    {
        var reckoned = Reckoned("boardwalk.piece.json");
        Assert.Equal((5, LiningUpWish.Columns), (reckoned.Fit.OverlapTurns, reckoned.Piece.Wishes.LiningUp));
        Assert.Equal(4, reckoned.Repeat!.Beads);
        Assert.Equal(LiningUpWord.LinesUp, reckoned.LiningUp.Word);
    }

    [Fact]
    public void Tidewrack_is_mixed_as_wished_with_its_focal_on_top()
    {
        var reckoned = Reckoned("tidewrack.piece.json");
        Assert.Equal((4, LiningUpWish.Mix), (reckoned.Fit.OverlapTurns, reckoned.Piece.Wishes.LiningUp));
        Assert.Equal(LiningUpWord.Mixed, reckoned.LiningUp.Word);
        Assert.False(reckoned.LiningUp.GroupsAreRuns);
        // The piece is turned until the focal is on top, so only rounding is left.
        Assert.Equal(0, reckoned.Focal!.AngleDeg, 1e-6);
        Assert.Null(reckoned.Repeat);
        var kinds = reckoned.Piece.Order.Kinds;
        Assert.NotEqual(kinds, kinds.Reverse());
    }

    [Fact]
    public void Puddle_Hop_is_a_childs_single_turn_and_the_same_from_either_end()
    {
        var reckoned = Reckoned("puddle-hop.piece.json");
        Assert.Equal((1, 130, true), (reckoned.Fit.OverlapTurns, reckoned.WristMm, reckoned.Piece.Wearer.IsChild));
        Assert.Contains(reckoned.Notices, n => n.Code == NoticeCodes.ChildCautions);
        var kinds = reckoned.Piece.Order.Kinds;
        Assert.Equal(kinds, kinds.Reverse());
        Assert.Equal("drop", reckoned.Piece.Beads[kinds[kinds.Length / 2]].Id);
    }

    private static Reckoned Reckoned(string file) =>
        Reckoning.Of(PieceFile.ReadFrom(Path.Combine(TestData.Examples, file), TestData.Data).Piece!, TestData.Data);
}
