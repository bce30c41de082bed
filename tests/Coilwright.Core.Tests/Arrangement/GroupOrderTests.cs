using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing.Notation;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Arrangement;

public class GroupOrderTests
{
    private static readonly ArrangeRequest Quick = new(Effort: 2);

    private static readonly FreeToChange Groups = new() { GroupOrder = true, LengthWithinMm = 12 };

    private static readonly WeighedWrist[] One = [new(189, 1)];

    private static Piece Ruled(Piece piece, params OrderRule[] rules) => piece with { Wishes = piece.Wishes with { Rules = [.. rules] } };

    // The second way: what the quick loss says of an order, laid out bead by bead and judged in full. Nothing that it leaves out is in these pieces: one width,
    // no focal, no wish for a place.
    [Fact]
    public void The_quick_loss_of_an_order_is_what_laying_every_bead_says() =>
        Gen.Select(ClusterPieces.Any, Gen.ULong[1, 50]).Sample((piece, seed) =>
        {
            piece = piece with { Wishes = piece.Wishes with { Free = Groups, Wrists = [new WeighedWrist(piece.Wearer.WristMm, 1)] } };
            var orders = new GroupOrders(piece, Data);
            var some = new OrderDescent(1, 1, seed).Find(orders.Problem)!.Things;
            var other = new OrderDescent(2, 30, seed).Find(orders.Problem)!.Things;
            foreach (var things in (ImmutableArray<int>[])[orders.Problem.Start, some, other])
            {
                var score = orders.Problem.Loss!.Score();
                foreach (var thing in things) score.Lay(thing);
                var (order, factors) = orders.Strung(things.AsSpan());
                // The whole length of the groups is taken as they are strung: beside other neighbours each takes some hundredths of a millimetre more or less. In
                // millimetres both say the same: what lies over its like, of columns what does not.
                double Mm(double loss, Core.Stringing.StringingOrder strung)
                {
                    var lie = Reckoning.Of(piece with { Order = strung }, Data).Lie;
                    var all = strung.ReadingGroups.Sum(g => (g.End < strung.Count ? lie.StartsMm[g.End] : lie.BeadedMm) - lie.StartsMm[g.First]);
                    return all * (piece.Wishes.LiningUp == LiningUpWish.Columns ? loss - 1 : loss);
                }
                // Sums of some hundred lengths of some ten millimetres. (As a distance: rounded to places, two that differ in the last bit may fall to either side.)
                Assert.Equal(Mm(orders.Judge.Of(order, factors).Loss!.Value, order), Mm(score.Loss, piece.Order), 1e-9);
                Assert.Equal(0, score.LeastMore);
            }
        }, iter: 60);

    [Fact]
    public void The_edit_strings_the_order_that_was_found_as_a_list_and_as_text() =>
        Gen.Select(ClusterPieces.Any, Gen.ULong[1, 1000], Gen.Bool).Sample((piece, seed, asText) =>
        {
            piece = piece with { Wishes = piece.Wishes with { Free = Groups } };
            if (asText)
            {
                var text = OrderPrinter.Print(piece.Order, [.. piece.Beads.Select(b => b.Id)]);
                piece = ((EditOutcome.Done)PieceEditing.Apply(piece with { Order = new([0], []), Written = OrderTree.Of("ball") }, new SetOrderText(text), Data)).Piece;
            }
            var orders = new GroupOrders(piece, Data);
            var problem = orders.Problem;
            var draws = new Core.Numerics.SeededDraws(seed, 0);
            int[] things = [.. problem.Start];
            for (var i = things.Length - 1; i > 0; i--)
            {
                var j = draws.Below((ulong)i, i + 1);
                (things[i], things[j]) = (things[j], things[i]);
            }
            var meant = orders.Strung(things).Order;
            if (orders.Edit(things) is not { } edit)
            {
                Assert.Equal(problem.Start, things);
                return;
            }
            var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(piece, edit, Data));
            Assert.Equal(meant.Kinds, done.Piece.Order.Kinds);
            Assert.Equal(meant.ReadingGroups, done.Piece.Order.ReadingGroups);
            Assert.Equal(meant.Kinds, RowSwaps.Done(piece.Order, edit.Swaps).Kinds);
            Assert.Equal(meant.ReadingGroups, RowSwaps.Done(piece.Order, edit.Swaps).ReadingGroups);
            // What stands elsewhere is what the edit says to look at: beads of other kinds are among them.
            Assert.All(Enumerable.Range(0, meant.Count).Where(i => meant.Kinds[i] != piece.Order.Kinds[i] && meant.ReadingGroups.SequenceEqual(piece.Order.ReadingGroups)),
                i => Assert.Contains(i, done.Beads));
        }, iter: 200);

    [Fact]
    public void Ideas_with_groups_free_do_better_in_full_and_can_be_strung()
    {
        // Eight to a turn: like stands over like, and so does every order of the same halves.
        var piece = ClusterPieces.Piece("a1 a1 b2 b2 a1 a1 b2 b2 a1 a1 b2 b2", 189, free: Groups, wrists: One);
        var arranged = Arranging.Of(piece, Data, Quick);
        Assert.Equal((12, 924.0), (arranged.FreeGroups, arranged.GroupWays));
        Assert.True(arranged.BestOrder!.IsProven);
        var moved = arranged.Ideas.Where(i => i.Edit is Restring).ToArray();
        Assert.NotEmpty(moved);
        Assert.All(moved, idea =>
        {
            var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(piece, idea.Edit, Data));
            Assert.Equal(idea.After.Piece.Order.Kinds, done.Piece.Order.Kinds);
            Assert.True(idea.Judged.Loss < arranged.BeforeJudged.Loss);
            Assert.Equal(new OrderSpace(done.Piece, Data).Judge([.. new OrderSpace(done.Piece, Data).Problem.Start]).Loss!.Value, idea.Judged.Loss!.Value, 1e-9);
            Assert.InRange(idea.After.Lie.BeadedMm - arranged.Before.Lie.BeadedMm, -13, 13);
        });
        // The best order is the least of all orders by the quick loss.
        var orders = new GroupOrders(piece, Data);
        var least = EveryOrder.All(orders.Problem).Min(order => EveryOrder.Kept(orders.Problem, order.AsSpan())!.Value);
        Assert.Equal(least, arranged.BestOrder.Loss, 1e-12);
    }

    [Fact]
    public void Rules_bind_every_idea()
    {
        var piece = Ruled(ClusterPieces.Piece(string.Join(' ', Enumerable.Repeat("a1 b2", 9)), 189, free: Groups, wrists: One),
            new OrderRule.Apart("a", "a"), new OrderRule.Apart("b", "b"), new OrderRule.LongestRun("dot", 2), new OrderRule.StartsWith("a"));
        var arranged = Arranging.Of(piece, Data, Quick);
        Assert.All(arranged.Ideas, idea => Assert.True(RuleBreaks.Keeps(idea.After.Piece.Order, piece.Beads, piece.Wishes.Rules)));
        Assert.NotEmpty(arranged.Ideas);
        // Only one order of the groups keeps them.
        Assert.Single(EveryOrder.All(new GroupOrders(piece, Data).Problem));
        Assert.DoesNotContain(arranged.Ideas, idea => idea.Edit is Restring);
        // Without the rule of the run some idea would have three or more.
        var free = Arranging.Of(Ruled(piece), Data, Quick);
        Assert.Contains(free.Ideas, idea => !RuleBreaks.Keeps(idea.After.Piece.Order, piece.Beads, [new OrderRule.LongestRun("dot", 2)]));
    }

    [Fact]
    public void A_group_with_the_focal_stays()
    {
        ImmutableArray<Bead> kinds = [.. ClusterPieces.Kinds, Bead("star", "round", 6, 6, 6, role: Role.Focal)];
        var piece = ClusterPieces.Piece("a1 b2 a1 b2 a1 b2", 189, free: Groups, wrists: One);
        var focal = piece with { Beads = kinds, Order = new([.. piece.Order.Kinds.SetItem(5, 4)], piece.Order.Groups) };
        Assert.Equal(4, focal.Order.Kinds[piece.Order.Groups[1].First + 1]);
        var problem = new GroupOrders(focal, Data).Problem;
        Assert.All(EveryOrder.All(problem), order => Assert.Equal(problem.Start[1], order[1]));
        Assert.Equal(10, problem.Ways);
    }

    [Fact]
    public void The_focal_stays_within_what_the_piece_says()
    {
        ImmutableArray<Bead> kinds = [.. ClusterPieces.Kinds, Bead("star", "round", 6, 6, 6, role: Role.Focal)];
        var piece = ClusterPieces.Piece(string.Join(' ', Enumerable.Repeat("a1 b2", 9)), 189, wrists: One);
        var middle = piece.Order.Groups[10].First - 1;
        piece = piece with { Beads = kinds, Order = new([.. piece.Order.Kinds.SetItem(middle, 4)], piece.Order.Groups) };
        var now = Reckoning.Of(piece, Data).Focal!.AngleDeg;
        // Turned so that it lies on the top, and then may leave it by no more than half a bead.
        piece = piece with
        {
            Wearer = piece.Wearer with { StartAngleDeg = piece.Wearer.StartAngleDeg - now },
            Wishes = piece.Wishes with { FocalWithinDeg = 5, Free = new FreeToChange { LengthWithinMm = 30 } },
        };
        var bound = Arranging.Of(piece, Data, Quick);
        Assert.All(bound.Ideas, idea => Assert.InRange(Math.Abs(idea.After.Focal!.AngleDeg), 0, 5.5));
        var free = Arranging.Of(piece with { Wishes = piece.Wishes with { FocalWithinDeg = null } }, Data, Quick);
        Assert.Contains(free.Ideas, idea => Math.Abs(idea.After.Focal!.AngleDeg) > 5.5);
    }

    [Fact]
    public void A_bead_may_stand_in_group_by_group_or_everywhere()
    {
        // Runs of one kind are the groups where none is named.
        ImmutableArray<Bead> kinds = [.. ClusterPieces.Kinds, Bead("pearl", "round", 6, 6, 6, colour: "#eeeeee")];
        var kindsStrung = Enumerable.Range(0, 14).SelectMany(_ => new[] { ClusterPieces.Ball, ClusterPieces.Ball, ClusterPieces.Ball, ClusterPieces.Dot }).ToArray();
        var piece = Piece(kinds, kindsStrung, 189) with
        {
            Wishes = new Wishes { LiningUp = LiningUpWish.Mix, Wrists = [.. One], Free = new FreeToChange { StandIns = [new StandIn("ball", "pearl", false)] } },
        };
        var arranged = Arranging.Of(piece, Data, Quick);
        Assert.Equal((14, Math.Pow(2, 14)), (arranged.FreeGroups, arranged.GroupWays));
        var other = arranged.Ideas.Single(i => i.Kind == IdeaKind.OtherOrder);
        Assert.True(other.Judged.Loss < arranged.BeforeJudged.Loss / 2);
        var pearls = other.After.Counts.Single(c => c.Bead.Id == "pearl").Count;
        Assert.True(pearls > 0 && pearls % 3 == 0);

        // Six to hand are two groups.
        var few = Arranging.Of(piece with { Wishes = piece.Wishes with { Free = piece.Wishes.Free with { OnHand = piece.Wishes.Free.OnHand.Add("pearl", 6) } } }, Data, Quick);
        Assert.All(few.Ideas, idea => Assert.True(idea.After.Counts.Where(c => c.Bead.Id == "pearl").Sum(c => c.Count) <= 6));
        Assert.Contains(few.Ideas, idea => idea.After.Counts.Any(c => c.Bead.Id == "pearl" && c.Count == 6));
    }

    [Theory]
    [InlineData("a1 b2 a1 b2 a1 b2 a1 b2 a1 b2 a1 b2", false)]
    [InlineData("a1 a2 a1 b1 b2 a2 a1 b1 a2 a1 a1 b2", false)]
    [InlineData("a1 a2 a1 b1 b2 a2 a1 b1 a2 a1 a1 b2", true)]
    public void Of_named_groups_those_that_take_the_other_bead_are_the_best_of_all_ways_to_choose_them(string pattern, bool written)
    {
        ImmutableArray<Bead> kinds = [.. ClusterPieces.Kinds, Bead("pearl", "round", 6, 6, 6, colour: "#eeeeee")];
        var piece = ClusterPieces.Piece(pattern, 189, wrists: One, free: new FreeToChange
        {
            // No run may change.
            Runs = FreeToChange.Usual.Runs.Add("bar", new RunRange(1, 1)),
            StandIns = [new StandIn("ball", "pearl", false)],
        }) with
        { Beads = kinds };
        if (written)
        {
            var text = "a = 3 ball\nb = 4 chip\n" + string.Join(", ", pattern.Split(' ').Select(part => $"{part[..1]}, {part[1..]} dot"));
            piece = ((EditOutcome.Done)PieceEditing.Apply(piece with { Order = new([0], []), Written = OrderTree.Of("ball") }, new SetOrderText(text), Data)).Piece;
        }
        int[] balls = [.. Enumerable.Range(0, piece.Order.Groups.Length).Where(g => piece.Order.Groups[g].Name == "a")];
        var least = double.PositiveInfinity;
        for (var chosen = 0; chosen < 1 << balls.Length; chosen++)
        {
            // A group with other beads is another sort of group, and is called so.
            var (strung, groups) = (piece.Order.Kinds.ToBuilder(), piece.Order.Groups.ToBuilder());
            for (var i = 0; i < balls.Length; i++)
            {
                if (((chosen >> i) & 1) == 0) continue;
                var group = groups[balls[i]];
                groups[balls[i]] = group with { Name = "p" };
                for (var bead = group.First; bead < group.End; bead++) strung[bead] = kinds.Length - 1;
            }
            var space = new OrderSpace(piece with { Order = new(strung.ToImmutable(), groups.ToImmutable()) }, Data);
            least = Math.Min(least, space.Judge(space.Problem.Start.AsSpan()).Loss!.Value);
        }
        var arranged = Arranging.Of(piece, Data, Quick);
        var other = arranged.Ideas.Single(i => i.Kind == IdeaKind.OtherOrder);
        Assert.Equal(least, other.Judged.Loss!.Value, 1e-9);
        Assert.Equal(least, arranged.BestOrder!.Loss, 1e-9);
        Assert.True(arranged.BestOrder.IsProven);
        // Whole groups, each in a name of its own sort.
        Assert.All(other.After.Piece.Order.Groups, group => Assert.Single(Enumerable.Range(group.First, group.Count).Select(bead => other.After.Piece.Order.Kinds[bead]).Distinct()));
        Assert.Equal(["a", "a-2", "b"], other.After.Piece.Order.Groups.Select(group => group.Name).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_spacer_that_stands_in_everywhere_moves_clusters_off_each_other()
    {
        // Four pairs to a turn with these dots; with ones two millimetres shorter they no longer land over each other.
        ImmutableArray<Bead> kinds = [.. ClusterPieces.Kinds, Bead("bit", "tube", 4, 6, role: Role.Spacer, colour: "#c0c4c8")];
        var piece = ClusterPieces.Piece(string.Join(' ', Enumerable.Repeat("a1 b2", 9)), 189, wrists: One, free: new FreeToChange
        {
            LengthWithinMm = 60,
            StandIns = [new StandIn("dot", "bit", true), new StandIn("dot", "bar", true)],
        }) with
        { Beads = kinds };
        var idea = Arranging.Of(piece, Data, Quick).Ideas.Single(i => i.Kind == IdeaKind.StandIn);
        Assert.Equal(new ReplaceEverywhere("dot", "bit"), idea.Edit);
        Assert.Equal(27, idea.Changed);
        Assert.DoesNotContain(idea.After.Counts, c => c.Bead.Id == "dot");
        var few = piece with { Wishes = piece.Wishes with { Free = piece.Wishes.Free with { OnHand = piece.Wishes.Free.OnHand.Add("bit", 26) } } };
        Assert.DoesNotContain(Arranging.Of(few, Data, Quick).Ideas, i => i.Kind == IdeaKind.StandIn);
    }

    [Fact]
    public void Mirrored_halves_stay_mirrored()
    {
        var piece = ClusterPieces.Piece("a1 b2 a1 a1 b2 b2 a1 a1 b2 a0", 189, free: Groups with { MirroredHalves = true }, wrists: One);
        var problem = new GroupOrders(piece, Data).Problem;
        Assert.True(problem.IsMirrored);
        foreach (var idea in Arranging.Of(piece, Data, Quick).Ideas.Where(i => i.Edit is Restring))
            Assert.Equal(idea.After.Piece.Order.ReadingGroups.Select(g => g.Name), idea.After.Piece.Order.ReadingGroups.Select(g => g.Name).Reverse());
    }

    [Fact]
    public void The_same_effort_and_seed_give_the_same_ideas_and_a_stop_gives_back_what_there_is()
    {
        var piece = ClusterPieces.Piece(string.Join(' ', Enumerable.Repeat("a1 b2 b1", 8)), 189, free: Groups, wrists: One);
        string Found() => string.Join(" / ", Arranging.Of(piece, Data, new ArrangeRequest(1, 4)).Ideas.Select(i => $"{i.Kind} {string.Join(',', i.After.Piece.Order.Kinds)}"));
        Assert.Equal(Found(), Found());
        Assert.Equal(Found(), OnOneThread.Run(Found));
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var arranged = Arranging.Of(piece, Data, Quick, cancel: stopped.Token);
        Assert.True(arranged.WasStopped);
        Assert.Equal(new GroupOrders(piece, Data).Problem.Start, arranged.BestOrder!.Things);
    }
}
