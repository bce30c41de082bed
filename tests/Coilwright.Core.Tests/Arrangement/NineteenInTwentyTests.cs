using Coilwright.Core.Arrangement;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Arrangement;

/// <summary>Orders judged by what nineteen of twenty draws do not exceed.</summary>
public class NineteenInTwentyTests
{
    private static Piece Sure(Piece piece) => piece with { Wishes = piece.Wishes with { JudgedBy = JudgedBy.NineteenInTwenty } };

    private static ReckoningData With(int draws) => Data with { Choices = Choices with { JudgedDraws = draws } };

    private static OrderJudgement AsStrung(Piece piece, ReckoningData data)
    {
        var space = new OrderSpace(piece, data);
        return space.Judge(space.Problem.Start.AsSpan());
    }

    [Fact]
    public void It_is_the_quantile_over_the_band_of_the_turn_found_on_a_fine_grid() => ClusterPieces.Any.Sample(piece =>
    {
        piece = Sure(piece) with { Wishes = Sure(piece).Wishes with { Wrists = [new WeighedWrist(piece.Wearer.WristMm, 1)] } };
        // Beads of one length each: what is not known is the turn alone, evenly over its band.
        var worn = new WornTurnModel(piece, Choices).On(piece.Wearer.WristMm);
        var shares = new CurveShares(piece.Beads, piece.Order).AtRadius(worn.RadiusMm);
        var columns = piece.Wishes.LiningUp == LiningUpWish.Columns;
        const int grid = 4001, draws = 2000;
        var losses = new double[grid];
        for (var i = 0; i < grid; i++)
        {
            var c = worn.CircumferenceMm + worn.BandMm * (2.0 * i / (grid - 1) - 1);
            losses[i] = Against(piece, shares, Math.Sqrt(c * c + worn.PitchMm * worn.PitchMm), columns);
        }
        Array.Sort(losses);
        // A quantile of n draws lies between the true ones four standard errors of its rank to either side, but once in ten thousand.
        var ranks = 4 * Math.Sqrt(0.95 * 0.05 / draws);
        double At(double share) => losses[Math.Clamp((int)Math.Round(share * (grid - 1)), 0, grid - 1)];
        Assert.InRange(AsStrung(piece, With(draws)).Loss!.Value, At(0.95 - ranks) - 1e-6, At(0.95 + ranks) + 1e-6);
    }, iter: 40);

    [Fact]
    public void With_one_draw_in_the_middle_of_nothing_in_doubt_it_is_what_the_mean_is()
    {
        // A given circumference has no band; but one of the wrist always has, so the coil is what decides, and its band is data.
        var data = Data with { Choices = Choices with { WornBandWristMm = 0, WornBandLabelMm = 0, WornBandMeasuredMm = 0, LeastAveragingMm = 1e-6, JudgedDraws = 3 } };
        var piece = ClusterPieces.Piece("a1 b2 a3 a1 b1 a2 b3 a1 b2 a1 b1 a2 a2 b1", 165);
        var (mean, sure) = (AsStrung(piece, data), AsStrung(Sure(piece), data));
        Assert.True(mean.Loss > 0);
        // Averaged over a millionth of a millimetre: no share moves by more than that over the length of a group.
        Near.Equal(mean.Loss!.Value, sure.Loss!.Value, 1e-6, "");
        Assert.Equal(mean.FailingMm, sure.FailingMm);
    }

    [Fact]
    public void The_best_of_few_ways_is_the_best_of_all_judged_one_by_one_and_said_to_be() => Gen.Int[0, 1_000_000].Sample(seed =>
    {
        var piece = Small(seed);
        var space = new OrderSpace(piece, With(60));
        var least = double.PositiveInfinity;
        Each(space.Problem, counts =>
        {
            if (space.Problem.Allows(counts)) least = Math.Min(least, space.Judge(counts).Loss!.Value);
        });
        var arranged = Arranging.Of(piece, With(60), new ArrangeRequest(5));
        Assert.Equal(JudgedBy.NineteenInTwenty, arranged.JudgedBy);
        Assert.Equal(AsStrung(piece, With(60)).Loss, arranged.BeforeJudged.Loss);
        // What gains less than half a percent is not offered.
        if (least > arranged.BeforeJudged.Loss - 0.005) return;
        var best = arranged.Ideas.Where(i => i.Kind is IdeaKind.Best or IdeaKind.FewBeads or IdeaKind.SmallestCure).MinBy(i => i.Judged.Loss)!;
        Near.Equal(least, best.Judged.Loss!.Value, 1e-12, "");
        Assert.True(best.IsProven);
    }, iter: 12);

    [Fact]
    public void Of_too_many_ways_nothing_is_claimed()
    {
        var piece = Sure(ClusterPieces.Piece(string.Join(' ', Enumerable.Repeat("a1 b2", 9)), 189, free: new FreeToChange { LengthWithinMm = 30 }, wrists: [new(187, 1), new(191, 1)]));
        var arranged = Arranging.Of(piece, With(20), new ArrangeRequest(1));
        Assert.True(arranged.Ways > 200);
        var best = Assert.Single(arranged.Ideas, i => i.Kind == IdeaKind.Best);
        Assert.False(best.IsProven);
        Assert.True(best.Judged.Loss < arranged.BeforeJudged.Loss);
        // By steps it comes at least as far as the best by the mean.
        Assert.True(best.Judged.Loss <= new OrderSpace(piece, With(20)).Judge(arranged.Best!.Counts.AsSpan()).Loss);
    }

    [Fact]
    public void What_is_best_on_average_is_not_always_what_nineteen_in_twenty_do_best_with()
    {
        // Of a few small pieces: were it always the same, the wish would say nothing.
        Assert.Contains(Enumerable.Range(0, 12), seed =>
        {
            var piece = Small(seed);
            var space = new OrderSpace(piece, With(60));
            var mean = new BestCounts(5, 1).Find(space.Problem)!.Counts;
            var least = double.PositiveInfinity;
            Each(space.Problem, counts =>
            {
                if (space.Problem.Allows(counts)) least = Math.Min(least, space.Judge(counts).Loss!.Value);
            });
            return space.Judge(mean.AsSpan()).Loss > least + 0.005;
        });
    }

    [Fact]
    public void The_same_ideas_come_on_one_thread()
    {
        var piece = Small(3);
        string Told(Arranged arranged) => string.Join('|', arranged.Ideas.Select(i => $"{i.Kind} {string.Join(';', i.Runs)} {i.Judged.Loss}"));
        Assert.Equal(Told(Arranging.Of(piece, With(40), new ArrangeRequest(1))), OnOneThread.Run(() => Told(Arranging.Of(piece, With(40), new ArrangeRequest(1)))));
    }

    // Ten clusters; every second gap holds one to three bars: few enough to write out all 243 ways.
    private static Piece Small(int seed)
    {
        var pattern = string.Join(' ', Enumerable.Range(0, 10).Select(i => (((seed >> i) & 1) == 0 ? "a" : "b") + (1 + (seed / 7 + i * i) % 3) + (i % 2 == 0 ? "|" : "")));
        return Sure(ClusterPieces.Piece(pattern, 150 + seed % 35, (seed & 1) == 0 ? LiningUpWish.Mix : LiningUpWish.Columns,
            new FreeToChange { Runs = FreeToChange.Usual.Runs.Add("bar", new RunRange(1, 3)), LengthWithinMm = 25 }, [new(150 + seed % 35, 1), new(156 + seed % 35, 2)]));
    }

    private static void Each(GapProblem problem, Action<int[]> each)
    {
        int[] counts = [.. problem.Gaps.Select(g => g.Least)];
        while (true)
        {
            each(counts);
            var g = 0;
            while (g < counts.Length && counts[g] == problem.Gaps[g].Most)
            {
                counts[g] = problem.Gaps[g].Least;
                g++;
            }
            if (g == counts.Length) return;
            counts[g]++;
        }
    }

    // Of the groups' length, what lies over its own kind one turn on, or does not: every two groups held against each other.
    private static double Against(Piece piece, System.Collections.Immutable.ImmutableArray<double> shares, double turnMm, bool columns)
    {
        var groups = piece.Order.Groups.Select(g => (g.Name, From: shares.Take(g.First).Sum(), To: shares.Take(g.End).Sum())).ToArray();
        double own = 0;
        foreach (var a in groups)
            foreach (var b in groups)
                if (a.Name == b.Name) own += Math.Max(0, Math.Min(a.To + turnMm, b.To) - Math.Max(a.From + turnMm, b.From));
        var all = groups.Sum(g => g.To - g.From);
        return columns ? (all - own) / all : own / all;
    }
}
