using Coilwright.Core.Arrangement;
using Coilwright.Core.Grading;
using Coilwright.Core.Tests.Arrangement;
using CsCheck;

namespace Coilwright.Core.Tests.Grading;

public class EvenCountsTests
{
    private const double Within = 4;

    [Fact]
    public void No_counts_of_the_length_are_more_even() => Gen.Select(RandomProblems.Any(ties: true), Gen.Double[-20, 20]).Sample((any, more) =>
    {
        // Runs are tied in pairs, as halves that mirror each other are.
        if (any.TiedTo.GroupBy(t => t).Any(tied => tied.Count() > 2)) return;
        var problem = new GapProblem(any.Gaps, any.Kinds, any.StepMm, [], 0) { TiedTo = any.TiedTo, MostMoreOfKind = any.MostMoreOfKind };
        var every = RandomProblems.EveryChoice(problem).ToArray();
        var found = EvenCounts.Of(problem, more, Within);
        if (every.Length == 0)
        {
            Assert.Null(found);
            return;
        }
        Assert.True(problem.Allows(found));
        // Lengths are told apart by a twentieth of a millimetre, so that one may stand for another as near; the cost of both is then nearly the same.
        var least = every.Min(counts => Cost(problem, counts, more));
        Assert.InRange(Cost(problem, found!, more), least - 1e-9, least + 0.05 * (1 + Math.Sqrt(least % 1e6)));
    }, iter: 2000);

    [Fact]
    public void What_may_go_anywhere_is_spread_along_the_piece()
    {
        var problem = new GapProblem([.. Enumerable.Range(0, 40).Select(g => new Gap(10 * g, 1, 0, 1, 3))], [.. new int[40]], [3], [], 0);
        var counts = EvenCounts.Of(problem, 30, Within)!;
        Assert.Equal(10, counts.Count(c => c == 2));
        Assert.Equal(30, counts.Count(c => c == 1));
        // A quarter of the runs have one more: of any ten neighbours one to four.
        for (var from = 0; from <= 30; from++) Assert.InRange(counts.Skip(from).Take(10).Count(c => c == 2), 1, 4);
    }

    private static double Cost(GapProblem problem, int[] counts, double more)
    {
        var off = Math.Abs(problem.LengthChangeMm(counts) - more);
        if (off > Within) return 1e6 + off;
        return off * off + Enumerable.Range(0, problem.Count).Sum(g => Math.Pow((counts[g] - problem.Start[g]) * problem.StepMm[problem.Kinds[g]] - more / problem.Count, 2));
    }
}
