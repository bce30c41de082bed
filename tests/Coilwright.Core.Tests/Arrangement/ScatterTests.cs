using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Arrangement;

public class ScatterTests
{
    private static readonly ImmutableArray<Bead> Kinds =
    [
        Bead("ball", "round", 6, colour: "#6fa3a8"), Bead("chip", "tube", 4, 6, colour: "#7d5a7d"), Bead("leaf", "round", 6, colour: "#55aa33"),
        Bead("dot", "round", 3, role: Role.Spacer), Bead("star", "round", 10, role: Role.Focal),
    ];

    // So many of each of the first three kinds, one after another, a dot after each third bead, the focal in the middle.
    private static Piece Amounts(params int[] counts)
    {
        var kinds = new List<int>();
        var beads = counts.SelectMany((count, kind) => Enumerable.Repeat(kind, count)).ToArray();
        for (var i = 0; i < beads.Length; i++)
        {
            if (i == beads.Length / 2) kinds.Add(4);
            kinds.Add(beads[i]);
            if (i % 3 == 2) kinds.Add(3);
        }
        return Piece(Kinds, kinds);
    }

    [Fact]
    public void A_plain_repeat_shows_and_is_named_by_its_distance()
    {
        var measure = RepeatMeasure.Of([.. Enumerable.Range(0, 60).Select(i => i % 5)]);
        Assert.False(measure.NoneShows);
        Assert.Equal((0, 1.0), (measure.Period % 5, measure.Alike));
        // Thirty, and once more.
        Assert.Equal(30, measure.LongestRepeat);
        // Blocks of one kind show too.
        Assert.False(RepeatMeasure.Of([.. Enumerable.Range(0, 60).Select(i => i / 12)]).NoneShows);
    }

    [Fact]
    public void The_longest_stretch_that_comes_again_is_the_longest_there_is() => Gen.Int[0, 2].Array[2, 14].Sample(kinds =>
    {
        // Straight from the definition.
        var n = kinds.Length;
        var longest = Enumerable.Range(0, n / 2 + 1).Last(length => length == 0 || Enumerable.Range(0, n - 2 * length + 1).Any(i =>
            Enumerable.Range(i + length, n - length - (i + length) + 1).Any(j => kinds.AsSpan(i, length).SequenceEqual(kinds.AsSpan(j, length)))));
        Assert.Equal(longest, RepeatMeasure.Of(kinds).LongestRepeat);
    }, iter: 3000);

    // What random rows do by themselves is the measure of what shows: most of them have some such chance likeness, an order that is looked for has none.
    [Fact]
    public void At_one_distance_hardly_a_random_row_exceeds_the_margin()
    {
        var draws = new Core.Numerics.SeededDraws(3, 0);
        var over = 0;
        for (var row = 0; row < 400; row++)
        {
            int[] kinds = [.. Enumerable.Range(0, 80).Select(i => i % 4)];
            for (var i = kinds.Length - 1; i > 0; i--)
            {
                var j = draws.Below((ulong)(row * 100 + i), i + 1);
                (kinds[i], kinds[j]) = (kinds[j], kinds[i]);
            }
            var (matches, chance) = (Enumerable.Range(0, 73).Count(i => kinds[i] == kinds[i + 7]), 19.0 / 79);
            if (matches > chance * 73 + RepeatMeasure.Margin * Math.Sqrt(chance * (1 - chance) * 73)) over++;
        }
        // One in 160 of a normal row; a share of three in a hundred is four standard deviations away.
        Assert.InRange(over, 0, 12);
    }

    [Fact]
    public void A_scattered_piece_has_the_same_beads_without_a_repeat_and_its_spacers_and_focal_where_they_were() =>
        Gen.Select(Gen.Int[4, 24], Gen.Int[4, 24], Gen.Int[0, 24], Gen.ULong[0, 1000]).Sample((a, b, c, seed) =>
        {
            var piece = Amounts(a, b, c);
            var scattered = Scatter.Of(piece, Data, seed);
            Assert.Equal(NoScatter.None, scattered.Why);
            var (was, now) = (piece.Order.Kinds, scattered.After!.Piece.Order.Kinds);
            Assert.Equal(was.Order(), now.Order());
            Assert.All(Enumerable.Range(0, was.Length).Where(i => was[i] >= 3), i => Assert.Equal(was[i], now[i]));
            // Where one kind is most of all, what is left must come at even distances.
            Assert.True(scattered.Repeats!.NoneShows || Math.Max(a, Math.Max(b, c)) > 0.6 * (a + b + c), $"{a} {b} {c} {seed}: {scattered.Repeats}");
            Assert.Equal(RepeatMeasure.Of([.. now.Where(kind => kind < 3)]).Excess, scattered.Repeats.Excess);
        }, iter: 40, threads: 1);

    [Fact]
    public void Every_seed_gives_an_order_of_its_own_and_the_same_again()
    {
        var piece = Amounts(20, 15, 12);
        var orders = Enumerable.Range(0, 20).Select(seed => Scatter.Of(piece, Data, (ulong)seed).Edit!.Text).ToArray();
        Assert.Equal(20, orders.Distinct().Count());
        Assert.Equal(orders[7], Scatter.Of(piece, Data, 7).Edit!.Text);
        Assert.Equal(orders[7], OnOneThread.Run(() => Scatter.Of(piece, Data, 7).Edit!.Text));
    }

    [Fact]
    public void Rules_are_kept_and_groups_stay_whole()
    {
        var piece = ClusterPieces.Piece(string.Join(' ', Enumerable.Repeat("a1 b2", 9)), 189, wrists: new WeighedWrist(189, 1));
        var ruled = piece with { Wishes = piece.Wishes with { Rules = [new OrderRule.LongestRun("a", 2), new OrderRule.StartsWith("b")] } };
        var scattered = Scatter.Of(ruled, Data, 5);
        var after = scattered.After!.Piece;
        Assert.Empty(RuleBreaks.Of(after.Order, after.Beads, ruled.Wishes.Rules));
        Assert.Equal(9, after.Order.ReadingGroups.Count(g => g.Name == "a" && g.Count == 3));
        Assert.True(scattered.Judged!.Loss < new OrderSpace(piece, Data).Judge([.. new OrderSpace(piece, Data).Problem.Start]).Loss);
        Assert.Equal(scattered.After.Piece.Order.Kinds, ((EditOutcome.Done)PieceEditing.Apply(ruled, scattered.Edit!, Data)).Piece.Order.Kinds);
    }

    [Fact]
    public void Without_two_kinds_or_an_allowed_order_it_says_why()
    {
        Assert.Equal(NoScatter.OneKind, Scatter.Of(Amounts(12), Data, 1).Why);
        var never = Amounts(5, 5) with { Wishes = new Wishes { Rules = [new OrderRule.StartsWith("leaf")] } };
        Assert.Equal(NoScatter.NoneAllowed, Scatter.Of(never, Data, 1).Why);
    }

    [Fact]
    public void Stopped_it_stops()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(() => Scatter.Of(Amounts(9, 9), Data, 1, stopped.Token));
    }
}
