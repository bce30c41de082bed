using Coilwright.Core.Arrangement;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Arrangement;

public class OrderSpaceTests
{
    [Fact]
    public void The_tables_say_what_laying_every_bead_says() => Gen.Select(ClusterPieces.Any, Gen.Int[0, 4].Array[24]).Sample((piece, draws) =>
    {
        var space = new OrderSpace(piece, Data);
        int[] counts = [.. space.Gaps.Select((gap, g) => gap.Least + draws[g % draws.Length] % (gap.Most - gap.Least + 1))];
        // The first and the last bead's share of the wire is measured to its own end, and the mean width of all beads is the same: nothing is left out here.
        Near.Equal(space.Judge(counts).Loss!.Value, space.Problem.Loss(counts), 1e-9, string.Join(',', counts));
    }, iter: 100);

    [Fact]
    public void The_edit_strings_what_the_space_says() => Gen.Select(ClusterPieces.Any, Gen.Int[0, 4].Array[24]).Sample((piece, draws) =>
    {
        var space = new OrderSpace(piece, Data);
        int[] counts = [.. space.Gaps.Select((gap, g) => gap.Least + draws[g % draws.Length] % (gap.Most - gap.Least + 1))];
        if (space.Edit(counts) is not { } edit)
        {
            Assert.Equal(0, space.Problem.Changed(counts));
            return;
        }
        var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(piece, edit, Data));
        var strung = space.Strung(counts);
        Assert.Equal(strung.Kinds.AsEnumerable(), done.Piece.Order.Kinds);
        Assert.Equal(strung.Groups.AsEnumerable(), done.Piece.Order.Groups);
        Assert.Equal(edit.Runs.Sum(r => r.To), done.Beads.Count - edit.Runs.Count(r => r.To == r.Count));
        Assert.All(done.Beads, bead => Assert.True(done.Piece.Order.Kinds[bead] >= ClusterPieces.Dot));
    }, iter: 100);

    [Fact]
    public void Gaps_are_runs_of_one_spacer_or_connector_outside_groups()
    {
        var piece = Piece(ClusterPieces.Kinds, [2, 2, 0, 2, 0, 2, 3, 3, 1, 3], groups: [new GroupRun("g", 2, 3)]);
        Assert.Equal([new Gap(0, 2, 2, 1, 4), new Gap(5, 1, 2, 1, 3), new Gap(6, 2, 3, 1, 4), new Gap(9, 1, 3, 1, 3)], Gaps.Of(piece, Choices));
    }

    [Fact]
    public void Only_kinds_that_are_named_are_free_within_their_range()
    {
        var free = new FreeToChange { Runs = FreeToChange.Usual.Runs.Add("dot", new RunRange(2, 5)) };
        Assert.Equal([new Gap(3, 1, 2, 1, 5), new Gap(12, 6, 2, 2, 6)], Gaps.Of(ClusterPieces.Piece("a1 b1| a6", free: free) with { }, Choices).Where(g => g.Kind == 2));
        Assert.DoesNotContain(Gaps.Of(ClusterPieces.Piece("a1 b1| a6", free: free), Choices), g => g.Kind == ClusterPieces.Bar);
    }

    [Fact]
    public void Mirrored_runs_are_tied()
    {
        Assert.Equal([0, 1, 1, 0], TiesOf("a1 b2 a2 b1"));
        Assert.Equal([0, 1, 2, 1, 4], TiesOf("a1 b2 a1 b2 a3")); // the outermost two are not alike
        static IEnumerable<int> TiesOf(string pattern) =>
            new OrderSpace(ClusterPieces.Piece(pattern, free: new FreeToChange { MirroredHalves = true }), Data).Problem.TiedTo;
    }

    [Fact]
    public void Nothing_wished_is_told()
    {
        Assert.False(new OrderSpace(ClusterPieces.Piece("a1 b1 a1", wish: LiningUpWish.Any), Data).HasWish);
        Assert.True(new OrderSpace(ClusterPieces.Piece("a1 b1 a1", wish: LiningUpWish.Columns), Data).HasWish);
    }
}
