using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Pieces;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Arrangement;

/// <summary>Wishes that contradict each other: as few as do, each of them needed.</summary>
public class WishConflictTests
{
    private static readonly FreeToChange Groups = new() { GroupOrder = true, LengthWithinMm = 12 };

    private static Piece Wished(string pattern, FreeToChange free, params OrderRule[] rules)
    {
        var piece = ClusterPieces.Piece(pattern, 189, free: free, wrists: new WeighedWrist(189, 1));
        return piece with { Wishes = piece.Wishes with { Rules = [.. rules] } };
    }

    private static WishConflict Of(Piece piece) =>
        new(piece, new OrderSpace(piece, Data), piece.Wishes.Free.GroupOrder ? new GroupOrders(piece, Data) : null);

    [Fact]
    public void Two_rules_that_contradict_are_named_and_the_others_are_not()
    {
        OrderRule start = new OrderRule.StartsWith("a"), apart = new OrderRule.Apart("b", "b"), few = new OrderRule.InAnyRow(["b"], 1, 2), end = new OrderRule.EndsWith("dot");
        // Four b among five groups, none beside another: that alone cannot be.
        Assert.Equal([new CountRule("rule", null, apart)], Of(Wished("a1 b1 b1 b1 b1", Groups, start, apart, end)).Find());
        // Three of five can, but not with a at the start.
        var piece = Wished("b1 a1 b1 a1 b1", Groups, end, apart, start);
        var conflict = Arranging.Of(piece, Data, new ArrangeRequest(1)).Conflict;
        Assert.Equal([new CountRule("rule", null, apart), new CountRule("rule", null, start)], conflict);
        Assert.Equal([new CountRule("rule", null, few), new CountRule("rule", null, start)], Of(Wished("b1 a1 b1 a1 b1", Groups, end, few, start)).Find());
    }

    [Fact]
    public void A_rule_that_the_order_breaks_where_nothing_may_move_cannot_be_kept()
    {
        var arranged = Arranging.Of(Wished("a1 a1 b1 b1", FreeToChange.Usual, new OrderRule.Apart("a", "a")), Data, new ArrangeRequest(1));
        Assert.Equal(NoIdeas.NoneAllowed, arranged.WhyNone);
        Assert.Equal([new CountRule("rule", null, new OrderRule.Apart("a", "a"))], arranged.Conflict);
    }

    [Fact]
    public void Length_and_the_longest_run_contradict_where_the_runs_must_shrink()
    {
        // Runs of four may give two each, but the length may not change; none may be longer than two.
        var piece = Wished("a4 b4 a4 b4", new FreeToChange { LengthWithinMm = 10 }, new OrderRule.LongestRun("dot", 2));
        Assert.Equal(ImmutableHashSet.Create(new CountRule("length", null), new CountRule("rule", null, new OrderRule.LongestRun("dot", 2))),
            Of(piece).Find().ToImmutableHashSet());
        Assert.Empty(Of(Wished("a4 b4 a4 b4", new FreeToChange { LengthWithinMm = 60 }, new OrderRule.LongestRun("dot", 2))).Find());
    }

    // The second way: every order and every count written out. A set that is named cannot be kept; without any one of it the rest can.
    [Fact]
    public void What_is_named_cannot_be_kept_and_without_any_one_of_it_can() =>
        Gen.Select(Gen.Bool.Array[3, 5], Gen.Bool, AnyRule.Array[1, 4], Gen.Int[0, 3]).Sample((clusters, free, rules, hand) =>
        {
            var wishes = new FreeToChange
            {
                GroupOrder = free,
                LengthWithinMm = 7,
                OnHand = hand == 0 ? FreeToChange.Usual.OnHand : FreeToChange.Usual.OnHand.Add("dot", 2 * clusters.Length - 3 + hand),
                Runs = FreeToChange.Usual.Runs.Add("dot", new RunRange(1, 3)),
            };
            var piece = Wished(string.Join(' ', clusters.Select(a => (a ? "a" : "b") + "2")), wishes, rules);
            var of = Of(piece);
            var all = of.Wishes().ToArray();
            var conflict = of.Find();
            Assert.Equal(CanKeep(piece, all), conflict.IsEmpty);
            if (conflict.IsEmpty) return;
            Assert.False(CanKeep(piece, conflict));
            foreach (var one in conflict) Assert.True(CanKeep(piece, [.. conflict.Where(c => c != one)]));
        }, iter: 200);

    private static bool CanKeep(Piece piece, IReadOnlyCollection<CountRule> wishes)
    {
        var orders = piece.Wishes.Free.GroupOrder
            ? EveryOrder.All(new GroupOrders(piece with { Wishes = piece.Wishes with { Rules = [] } }, Data).Problem).Select(things => new GroupOrders(piece, Data).Strung(things.AsSpan()).Order)
            : [piece.Order];
        ImmutableArray<OrderRule> rules = [.. wishes.Where(w => w.Rule is not null).Select(w => w.Rule!)];
        foreach (var order in orders)
        {
            var space = new OrderSpace(piece with { Order = order, Wishes = piece.Wishes with { Rules = [] } }, Data);
            var problem = space.Problem;
            foreach (var counts in Counts(problem, 0, [.. problem.Start]))
            {
                if (wishes.Any(w => w.Code == "length") && !problem.FitsLength(problem.LengthChangeMm(counts))) continue;
                if (wishes.Any(w => w.Code == "on-hand") && counts.Sum() > piece.Wishes.Free.OnHand["dot"]) continue;
                if (RuleBreaks.Keeps(space.Strung(counts), piece.Beads, rules)) return true;
            }
        }
        return false;
    }

    private static IEnumerable<int[]> Counts(GapProblem problem, int gap, int[] counts)
    {
        if (gap == problem.Count)
        {
            yield return counts;
            yield break;
        }
        for (var count = problem.Gaps[gap].Least; count <= problem.Gaps[gap].Most; count++)
        {
            counts[gap] = count;
            foreach (var each in Counts(problem, gap + 1, counts)) yield return each;
        }
    }

    private static readonly OrderRule[] Some =
    [
        new OrderRule.Apart("a", "a"), new OrderRule.Apart("b", "b"), new OrderRule.Apart("a", "b"), new OrderRule.StartsWith("a"), new OrderRule.StartsWith("b"),
        new OrderRule.EndsWith("dot"), new OrderRule.EndsWith("ball"), new OrderRule.LongestRun("dot", 1), new OrderRule.LongestRun("a", 1),
        new OrderRule.InAnyRow(["a"], 1, 3), new OrderRule.InAnyRow(["dot"], 2, 7), new OrderRule.Together("a", "b"),
    ];

    private static readonly Gen<OrderRule> AnyRule = Gen.Int[0, Some.Length - 1].Select(i => Some[i]);
}
