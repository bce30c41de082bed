using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Pieces;
using CsCheck;

namespace Coilwright.Core.Tests.Arrangement;

/// <summary>Orders found under rules, held to problems and counts from outside.</summary>
public class OrderFinderTests
{
    // So many single beads of each kind, named a, b, c.
    private static OrderProblem Beads(int[] counts, params OrderRule[] rules) => new()
    {
        Things = [.. counts.Select((_, kind) => new OrderThing(kind, [kind], []))],
        Demand = [.. counts],
        BeadRules = new KindRules(NamesOf(counts.Length), rules),
    };

    private static ImmutableArray<string> NamesOf(int kinds) => [.. Enumerable.Range(0, kinds).Select(kind => ((char)('a' + kind)).ToString())];

    public static TheoryData<int, int> LowAutocorrelation =>
        [.. ReferenceTable.Read("low-autocorrelation.csv").Rows.Where(r => r["n"] <= 17).Select(r => ((int)r["n"], (int)r["least"]))];

    // CSPLib problem 005, as beads of two kinds of which any may be either.
    [Theory, MemberData(nameof(LowAutocorrelation))]
    public void The_least_autocorrelation_is_the_published_one(int n, int least)
    {
        var signs = new OrderProblem
        {
            Things = [new OrderThing(0, [0], []), new OrderThing(0, [1], [])],
            Demand = [n],
            Loss = new EchoLoss(n, [0, 1], 0.5),
        };
        Assert.Equal(Math.Pow(2, n), signs.Ways);
        var found = new EveryOrder().Find(signs)!;
        Assert.True(found.IsProven);
        // Whole numbers, each of them halves added up.
        Assert.Equal(least, found.Loss, 1e-9);
        Assert.True(new OrderDescent(2, 200).Find(signs)!.Loss >= least - 1e-9);
    }

    // CSPLib problem 001, through the rule of how many stand close together.
    [Fact]
    public void The_ten_cars_can_be_built_in_six_orders_and_in_none_on_a_ring()
    {
        (int UpTo, int OfAny)[] limits = [(1, 2), (2, 3), (1, 3), (2, 5), (1, 5)];
        var classes = ReferenceTable.Read("car-sequencing.csv").Rows;
        var names = NamesOf(classes.Count);
        OrderRule[] rules = [.. limits.Select((limit, option) => new OrderRule.InAnyRow(
            [.. names.Where((_, c) => classes[c][$"option{option + 1}"] == 1)], limit.UpTo, limit.OfAny))];
        var cars = Beads([.. classes.Select(c => (int)c["count"])], rules);
        Assert.Equal(226_800, cars.Ways);
        var all = EveryOrder.All(cars).Select(o => string.Join(' ', o)).ToArray();
        Assert.Equal(6, all.Length);
        Assert.Equal(all.Order(StringComparer.Ordinal), all.Select(o => new string([.. o.Reverse()])).Order(StringComparer.Ordinal));
        Assert.Contains("0 1 5 2 4 3 3 4 2 5", all);

        var ring = new OrderProblem { Things = cars.Things, Demand = cars.Demand, BeadRules = cars.BeadRules, IsClosed = true };
        Assert.Empty(EveryOrder.All(ring));
        Assert.Null(new EveryOrder().Find(ring));
        Assert.Contains(string.Join(' ', new OrderDescent(8, 2000).Find(cars)!.Things), all);
    }

    public static TheoryData<int, int, int> Necklaces =>
        [.. ReferenceTable.Read("necklaces.csv").Rows.Select(r => ((int)r["n"], (int)r["turned"], (int)r["turned-over"]))];

    [Theory, MemberData(nameof(Necklaces))]
    public void Closed_pieces_of_two_kinds_are_as_many_as_the_necklaces_and_bracelets(int n, int turned, int turnedOver)
    {
        // By amounts, all amounts together.
        var (one, other) = (0, 0);
        for (var a = 0; a <= n; a++)
        {
            one += EveryOrder.All(Ring([a, n - a], SameWhen.Turned)).Length;
            other += EveryOrder.All(Ring([a, n - a], SameWhen.TurnedOver)).Length;
        }
        Assert.Equal((turned, turnedOver), (one, other));
    }

    [Fact]
    public void Closed_pieces_of_given_amounts_are_as_many_as_counted()
    {
        foreach (var row in ReferenceTable.Read("necklaces-of-amounts.csv").Rows)
        {
            int[] counts = [.. row.Text("counts").Split(' ').Select(c => int.Parse(c, System.Globalization.CultureInfo.InvariantCulture))];
            Assert.Equal(row["open"], Beads(counts).Ways);
            Assert.Equal((row["open"], row["turned"], row["turned-over"]), (EveryOrder.All(Beads(counts)).Length,
                EveryOrder.All(Ring(counts, SameWhen.Turned)).Length, EveryOrder.All(Ring(counts, SameWhen.TurnedOver)).Length));
        }
    }

    private static OrderProblem Ring(int[] counts, SameWhen same) => new()
    {
        Things = [.. counts.Select((_, kind) => new OrderThing(kind, [kind], []))],
        Demand = [.. counts],
        IsClosed = true,
        Same = same,
    };

    // The second way: every order written out, and each held against the rules as a whole.
    [Fact]
    public void Going_through_all_finds_what_writing_all_out_finds() =>
        Gen.Select(Gen.Int[0, 3].Array[2, 3].Where(c => c.Sum() is >= 2 and <= 7), AnyRule.Array[0, 3], Gen.Bool, Gen.Int[0, 2]).Sample((counts, rules, closed, fix) =>
        {
            var n = counts.Sum();
            var names = NamesOf(counts.Length);
            rules = [.. rules.Where(rule => rule.Named.All(name => names.Contains(name)))];
            var problem = new OrderProblem
            {
                Things = [.. counts.Select((_, kind) => new OrderThing(kind, [kind], []))],
                Demand = [.. counts],
                BeadRules = new KindRules(names, rules),
                IsClosed = closed,
                FamilyAt = fix == 0 ? [] : [.. Enumerable.Range(0, n).Select(p => p == n - 1 && counts[^1] > 0 ? counts.Length - 1 : -1)],
                Loss = new EchoLoss(n, [.. Enumerable.Range(0, counts.Length)], EchoLoss.ChanceOf(counts) is var c && c < 1 ? c : 0),
            };
            var loss = problem.Loss!;
            var allowed = Written(counts).Where(order => (problem.FamilyAt.IsEmpty || problem.FamilyAt[^1] < 0 || order[^1] == problem.FamilyAt[^1]) && Keeps(problem, order)).ToArray();
            Assert.Equal(allowed.Select(o => string.Join(' ', o)).Order(StringComparer.Ordinal),
                EveryOrder.All(problem).Select(o => string.Join(' ', o)).Order(StringComparer.Ordinal));
            var found = new EveryOrder(new OrderDescent(1, 20)).Find(problem);
            Assert.Equal(allowed.Length == 0, found is null);
            if (found is null) return;
            // Sums of a handful of squares of small fractions.
            Assert.Equal(allowed.Min(order => LossOf(loss, order)), found.Loss, 1e-9);
            Assert.Equal(LossOf(loss, found.Things), found.Loss, 1e-9);
            Assert.Contains(allowed, order => order.SequenceEqual(found.Things));
        }, iter: 3000);

    [Fact]
    public void What_a_rule_says_of_groups_and_of_the_beads_between_binds_the_order()
    {
        // Two groups, one of two a and one of two b, three of each; a single c stands between neighbours, but not between the second and the third.
        var problem = new OrderProblem
        {
            Things = [new OrderThing(0, [0, 0], [0]), new OrderThing(1, [1, 1], [1])],
            Demand = [3, 3],
            Between = [[], [2], [], [2], [2], [2], []],
            BeadRules = new KindRules(["a", "b", "c"], [new OrderRule.LongestRun("a", 2)]),
            GroupRules = new KindRules(["one", "two"], [new OrderRule.Apart("two", "two")]),
        };
        // Of twenty four have no two of the second together; of those one has two of the first where their beads would run together.
        var all = EveryOrder.All(problem).Select(o => string.Join("", o)).ToArray();
        Assert.Equal(["010101", "101001", "101010"], all.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Beads_to_hand_bind_stand_ins()
    {
        var problem = new OrderProblem
        {
            Things = [new OrderThing(0, [0, 0], []), new OrderThing(0, [1, 1], [])],
            Demand = [5],
            BeadRules = new KindRules(["a", "b"], []),
            MostOfBead = [6, 4],
        };
        // Three of the one and two of the other; five places.
        Assert.Equal(10, EveryOrder.All(problem).Length);
    }

    [Fact]
    public void Mirrored_orders_read_the_same_from_both_ends()
    {
        var problem = new OrderProblem
        {
            Things = [new OrderThing(0, [0], []), new OrderThing(1, [1], [])],
            Demand = [4, 3],
            IsMirrored = true,
            Start = [0, 0, 1, 1, 1, 0, 0],
            Loss = new EchoLoss(7, [0, 1], EchoLoss.ChanceOf([4, 3])),
        };
        var all = EveryOrder.All(problem);
        Assert.Equal(3, all.Length);
        Assert.All(all, order => Assert.Equal(order, order.Reverse()));
        var found = new OrderDescent(4, 100).Find(problem)!;
        Assert.Equal(found.Things, found.Things.Reverse());
        Assert.Equal(new EveryOrder().Find(problem)!.Loss, found.Loss, 1e-9);
    }

    [Fact]
    public void The_descent_is_the_same_for_one_seed_and_comes_to_the_least_of_small_ones()
    {
        int[] counts = [6, 4, 3];
        var problem = new OrderProblem
        {
            Things = [.. counts.Select((_, kind) => new OrderThing(kind, [kind], []))],
            Demand = [.. counts],
            BeadRules = new KindRules(["a", "b", "c"], [new OrderRule.LongestRun("a", 2)]),
            Loss = new EchoLoss(13, [0, 1, 2], EchoLoss.ChanceOf(counts)),
        };
        var descent = new OrderDescent(6, 1500, 7);
        var (one, other) = (descent.Find(problem)!, descent.Find(problem)!);
        Assert.Equal(one.Things, other.Things);
        Assert.Equal(new EveryOrder().Find(problem)!.Loss, one.Loss, 1e-9);
        // One start after the other, as on a machine with one core.
        Assert.Equal(one.Things, OnOneThread.Run(() => descent.Find(problem)!).Things);
    }

    [Fact]
    public void Stopped_at_once_the_order_as_it_is_strung_is_given_back()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        int[] counts = [20, 20, 20];
        var problem = new OrderProblem
        {
            Things = [.. counts.Select((_, kind) => new OrderThing(kind, [kind], []))],
            Demand = [.. counts],
            Start = [.. Enumerable.Range(0, 60).Select(i => i % 3)],
            Loss = new EchoLoss(60, [0, 1, 2], EchoLoss.ChanceOf(counts)),
        };
        Assert.Equal(problem.Start, new BestOrder(5, 1).Find(problem, null, stopped.Token)!.Things);
        Assert.Equal(problem.Start, new EveryOrder().Find(problem, null, stopped.Token)!.Things);
    }

    [Fact]
    public void The_bound_of_a_descent_is_never_above_the_least() =>
        Gen.Select(Gen.Int[1, 4].Array[2, 3], Gen.ULong[0, 99]).Sample((counts, seed) =>
        {
            var problem = new OrderProblem
            {
                Things = [.. counts.Select((_, kind) => new OrderThing(kind, [kind], []))],
                Demand = [.. counts],
                Loss = new EchoLoss(counts.Sum(), [.. Enumerable.Range(0, counts.Length)], EchoLoss.ChanceOf(counts)),
            };
            var (least, found) = (new EveryOrder().Find(problem)!, new OrderDescent(1, 50, seed).Find(problem)!);
            Assert.InRange(least.Loss, found.Bound - 1e-9, found.Loss + 1e-9);
        }, iter: 200);

    private static IEnumerable<int[]> Written(int[] counts)
    {
        if (counts.All(c => c == 0))
        {
            yield return [];
            yield break;
        }
        for (var kind = 0; kind < counts.Length; kind++)
        {
            if (counts[kind] == 0) continue;
            int[] rest = [.. counts];
            rest[kind]--;
            foreach (var order in Written(rest)) yield return [kind, .. order];
        }
    }

    private static bool Keeps(OrderProblem problem, int[] order)
    {
        var watch = new KindRules.Watch(problem.BeadRules!) { WrapsRound = problem.IsClosed };
        var kept = true;
        foreach (var kind in order) kept &= watch.Lay(kind);
        return kept && watch.IsWhole();
    }

    // Straight from the definition.
    private static double LossOf(IOrderLoss loss, IReadOnlyList<int> order)
    {
        var score = loss.Score();
        foreach (var thing in order) score.Lay(thing);
        Assert.Equal(0, score.LeastMore);
        var n = order.Count;
        var counts = order.GroupBy(kind => kind).Select(g => g.Count()).ToArray();
        var chance = EchoLoss.ChanceOf(counts) is var c && c < 1 ? c : 0;
        var sum = Enumerable.Range(1, n - 1).Sum(k =>
            Math.Pow((Enumerable.Range(0, n - k).Count(i => order[i] == order[i + k]) - chance * (n - k)) / (1 - chance), 2));
        Assert.Equal(sum, score.Loss, 1e-9);
        return sum;
    }

    private static readonly Gen<string> Letter = Gen.Int[0, 2].Select(i => "abc".Substring(i, 1));

    private static readonly Gen<OrderRule> AnyRule = Gen.OneOf<OrderRule>(
        from name in Letter from most in Gen.Int[1, 3] select (OrderRule)new OrderRule.LongestRun(name, most),
        from names in Letter.Array[1, 2] from upTo in Gen.Int[0, 2] from more in Gen.Int[1, 3] select (OrderRule)new OrderRule.InAnyRow([.. names], upTo, upTo + more),
        from name in Letter from beside in Letter select (OrderRule)new OrderRule.Apart(name, beside),
        from name in Letter from beside in Letter select (OrderRule)new OrderRule.Together(name, beside),
        from name in Letter select (OrderRule)new OrderRule.StartsWith(name),
        from name in Letter select (OrderRule)new OrderRule.EndsWith(name));
}
