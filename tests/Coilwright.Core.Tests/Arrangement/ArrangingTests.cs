using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Pieces;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Arrangement;

public class ArrangingTests
{
    private static readonly ArrangeRequest Quick = new(Effort: 1);

    private static readonly WeighedWrist[] Three = [new(185, 1), new(189, 2), new(193, 1)];

    // On a wrist of 189 mm just four of these go to a turn, so that all stand in columns.
    private static readonly string Columns = string.Join(' ', Enumerable.Repeat("a1 b2", 9));

    [Fact]
    public void The_smallest_cure_is_the_smallest_there_is()
    {
        var piece = ClusterPieces.Piece(string.Join(' ', Enumerable.Repeat("a1 b2", 6)), 189, free: new FreeToChange { LengthWithinMm = 30 }, wrists: [new WeighedWrist(189, 1)]);
        var space = new OrderSpace(piece, Data);
        Assert.NotEmpty(space.Judge(space.Problem.Start.AsSpan()).FailingMm);
        var arranged = Arranging.Of(piece, Data, Quick);
        var cure = arranged.Ideas.Single(i => i.Kind == IdeaKind.SmallestCure);
        Assert.True(cure.IsProven);
        Assert.Empty(cure.Judged.FailingMm);
        Assert.Empty(cure.After.LiningUp.FailsWish ? ["fails"] : Array.Empty<string>());
        // Every smaller change, judged here one by one in full.
        for (var changed = 1; changed < cure.Changed; changed++)
            Assert.All(SmallChanges.Of(space.Problem, changed, int.MaxValue)!, counts => Assert.NotEmpty(space.Judge(counts).FailingMm));
    }

    [Fact]
    public void An_idea_does_better_and_keeps_the_length()
    {
        var piece = ClusterPieces.Piece(Columns, 189, wrists: Three);
        var arranged = Arranging.Of(piece, Data, Quick);
        Assert.NotEmpty(arranged.Ideas);
        Assert.Equal(NoIdeas.None, arranged.WhyNone);
        var space = new OrderSpace(piece, Data);
        Assert.All(arranged.Ideas, idea =>
        {
            Assert.True(idea.Judged.Loss < arranged.BeforeJudged.Loss);
            Assert.Equal(idea.Changed, idea.Runs.Sum(r => Math.Abs(r.To - r.Count)));
            // The limit is on the wearer's wrist.
            Assert.InRange(idea.After.Lie.BeadedMm - arranged.Before.Lie.BeadedMm, -Choices.OverlapToleranceMm - 1e-6, Choices.OverlapToleranceMm + 1e-6);
        });
        Assert.True(arranged.Best!.Loss <= arranged.TableLoss);
        Assert.True(arranged.Best.Bound <= arranged.Best.Loss);
        // More beads changed can only do as well or better.
        Assert.Equal(arranged.LeastLossByChange.OrderDescending(), arranged.LeastLossByChange);
    }

    [Fact]
    public void The_same_effort_and_seed_give_the_same_ideas()
    {
        var piece = ClusterPieces.Piece(Columns, 189, wrists: Three);
        var (one, other) = (Arranging.Of(piece, Data, new ArrangeRequest(1, 5)), Arranging.Of(piece, Data, new ArrangeRequest(1, 5)));
        Assert.Equal(one.Ideas.Select(i => string.Join(';', i.Runs)), other.Ideas.Select(i => string.Join(';', i.Runs)));
    }

    [Fact]
    public void Without_a_wish_there_is_nothing_to_look_for() =>
        Assert.Equal(NoIdeas.NoWish, Arranging.Of(ClusterPieces.Piece(Columns, wish: LiningUpWish.Any), Data).WhyNone);

    [Fact]
    public void Without_a_gap_there_is_nothing_to_change()
    {
        var none = new FreeToChange { Runs = FreeToChange.Usual.Runs.Add("bar", new RunRange(1, 4)) };
        Assert.Equal(NoIdeas.NoGap, Arranging.Of(ClusterPieces.Piece(Columns, free: none), Data).WhyNone);
    }

    [Fact]
    public void Rules_that_cannot_all_be_kept_are_named()
    {
        // Twenty-seven dots are strung.
        var free = new FreeToChange { OnHand = FreeToChange.Usual.OnHand.Add("dot", 8), LengthWithinMm = 5 };
        var arranged = Arranging.Of(ClusterPieces.Piece(Columns, free: free), Data, Quick);
        Assert.Equal(NoIdeas.NoneAllowed, arranged.WhyNone);
        // Each run keeps one dot at least, so that eight are too few whatever the length.
        Assert.Equal([new CountRule("on-hand", "dot")], arranged.Conflict);

        var twos = string.Join(' ', Enumerable.Repeat("a2 b2", 9));
        var both = Arranging.Of(ClusterPieces.Piece(twos, free: free with { OnHand = free.OnHand.SetItem("dot", 30) }), Data, Quick);
        Assert.Equal(ImmutableHashSet.Create(new CountRule("on-hand", "dot"), new CountRule("length", null)), both.Conflict.ToImmutableHashSet());
    }

    [Fact]
    public void Beads_to_hand_are_not_exceeded()
    {
        var free = new FreeToChange { OnHand = FreeToChange.Usual.OnHand.Add("dot", 27), LengthWithinMm = 40 };
        var arranged = Arranging.Of(ClusterPieces.Piece(Columns, free: free, wrists: Three), Data, Quick);
        Assert.All(arranged.Ideas, idea => Assert.True(idea.After.Counts.Single(c => c.Bead.Id == "dot").Count <= 27));
    }

    [Fact]
    public void Stopped_at_once_it_gives_back_what_it_has()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var arranged = Arranging.Of(ClusterPieces.Piece(Columns, 189, wrists: Three), Data, cancel: stopped.Token);
        Assert.True(arranged.WasStopped);
        Assert.NotNull(arranged.Best);
    }
}
