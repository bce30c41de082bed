using Coilwright.Core.Arrangement;
using CsCheck;

namespace Coilwright.Core.Tests.Arrangement;

/// <summary>Every way of looking for counts, against all choices written out.</summary>
public class FindersTests
{
    // Sums of a handful of numbers below 1 in another order.
    private const double Rounding = 1e-12;

    [Fact]
    public void Going_through_all_finds_the_least_of_all() => RandomProblems.Any(ties: true).Sample(problem =>
    {
        var least = LeastOfAll(problem);
        var found = new EveryCount().Find(problem);
        Assert.Equal(double.IsInfinity(least), found is null);
        if (found is null) return;
        Assert.True(problem.Allows(found.Counts.AsSpan()));
        Near.Equal(least, found.Loss, Rounding + FoundCounts.Rounding, problem);
        Near.Equal(problem.Loss(found.Counts.AsSpan()), found.Loss, Rounding, problem);
        Assert.True(found.IsProven);
    }, iter: 400);

    [Fact]
    public void Turn_by_turn_finds_the_least_where_no_rule_binds() => RandomProblems.Any(ties: false).Sample(any =>
    {
        var problem = new GapProblem(any.Gaps, any.Kinds, any.StepMm, any.Windows, any.Fixed);
        var found = new TurnByTurn().Find(problem)!;
        Near.Equal(LeastOfAll(problem), found.Loss, Rounding + FoundCounts.Rounding, problem);
        Assert.True(found.IsProven);
    }, iter: 400);

    [Fact]
    public void Going_back_along_the_wire_proves_the_least_whatever_binds()
    {
        var (all, open) = (0, 0);
        RandomProblems.Any(ties: false).Sample(problem =>
        {
            var choices = RandomProblems.EveryChoice(problem).Select(counts => problem.Loss(counts)).ToArray();
            if (choices.Length == 0) return;
            // Whatever was reached before, the least or the worst, the least is found and known to be it; where it was reached already nothing else is given back.
            foreach (var reached in (double[])[choices.Min(), choices.Max()])
            {
                var found = new TurnByTurn(rounds: 3).Find(problem, reached, null, CancellationToken.None, out var bound);
                Near.Equal(choices.Min(), bound, Rounding + FoundCounts.Rounding, problem);
                Near.Equal(choices.Min(), Math.Min(reached, found?.Loss ?? reached), Rounding + FoundCounts.Rounding, problem);
                Assert.True(found is null || problem.Allows(found.Counts.AsSpan()));
            }
            Interlocked.Increment(ref all);
            // Few rounds of prices leave something to go back for.
            if (problem.MostMoreOfKind.Any(more => more != int.MaxValue) || double.IsFinite(problem.LongerMm)) Interlocked.Increment(ref open);
        }, iter: 400);
        Assert.True(open > all / 4, $"rules bind in {open} of {all} alone");
    }

    [Fact]
    public void A_bound_turn_by_turn_is_never_above_the_least() => Gen.Select(RandomProblems.Any(ties: true), Gen.Int[1, 60]).Sample((problem, states) =>
    {
        var least = LeastOfAll(problem);
        // With few states the bound is weaker, and must hold all the same.
        var found = new TurnByTurn(mostStates: states).Find(problem, double.PositiveInfinity, null, CancellationToken.None, out var bound);
        Assert.True(bound <= least + Rounding, $"{bound} above {least}");
        if (found is null) return;
        Assert.True(problem.Allows(found.Counts.AsSpan()));
        Assert.True(found.Loss >= least - Rounding && found.Bound <= least + Rounding);
        Near.Equal(problem.Loss(found.Counts.AsSpan()), found.Loss, Rounding, problem);
    }, iter: 400);

    [Fact]
    public void A_descent_finds_what_is_allowed_and_claims_no_more_than_it_knows() => RandomProblems.Any(ties: true).Sample(problem =>
    {
        var least = LeastOfAll(problem);
        if (new Descent(starts: 4, shakes: 20).Find(problem) is not { } found) return;
        Assert.True(problem.Allows(found.Counts.AsSpan()));
        Assert.True(found.Loss >= least - Rounding && found.Bound <= least + Rounding);
        // Running sums of many changes.
        Near.Equal(problem.Loss(found.Counts.AsSpan()), found.Loss, 1e-9, problem);
    }, iter: 200);

    [Fact]
    public void A_descent_finds_the_least_of_a_small_problem_nearly_always()
    {
        var (met, all) = (0, 0);
        RandomProblems.Any(ties: false).Sample(problem =>
        {
            var least = LeastOfAll(problem);
            if (double.IsInfinity(least)) return;
            Interlocked.Increment(ref all);
            if (new Descent(starts: 6, shakes: 40).Find(problem) is { } found && found.Loss <= least + 1e-9) Interlocked.Increment(ref met);
        }, iter: 200, seed: "0000KOIPNdJ1");
        // It promises nothing; one that missed the least of so few choices more than once in twenty would not be worth having.
        Assert.True(met >= 0.95 * all, $"{met} of {all}");
    }

    [Fact]
    public void The_same_seed_finds_the_same() => RandomProblems.Any(ties: true).Sample(problem =>
    {
        var (one, other) = (new Descent(seed: 7).Find(problem), new Descent(seed: 7).Find(problem));
        Assert.Equal(one?.Counts.AsEnumerable(), other?.Counts.AsEnumerable());
    }, iter: 30);

    [Fact]
    public void A_change_costs_what_the_whole_says() => Gen.Select(RandomProblems.Any(ties: false), Gen.Int[0, 1000].Array[12]).Sample((problem, draws) =>
    {
        var score = new GapScore(problem, [.. problem.Start]);
        foreach (var draw in draws)
        {
            var gap = draw % problem.Count;
            var to = problem.Gaps[gap].Least + draw / 7 % (problem.Gaps[gap].Most - problem.Gaps[gap].Least + 1);
            int[] after = [.. score.Counts];
            after[gap] = to;
            Near.Equal(problem.Loss(after) - score.Loss, score.Change(gap, to), Rounding, problem);
            score.Set(gap, to);
            Assert.Equal(after, score.Counts.ToArray());
            Near.Equal(problem.LengthChangeMm(after), score.LengthChangeMm, 1e-9, problem);
            Assert.Equal(problem.Allows(after), score.Fits);
        }
    }, iter: 200);

    [Fact]
    public void Small_changes_are_all_that_change_so_many() => Gen.Select(RandomProblems.Any(ties: true), Gen.Int[1, 4]).Sample((problem, changed) =>
    {
        var all = RandomProblems.EveryChoice(problem).Where(counts => problem.Changed(counts) == changed).Select(c => string.Join(',', c)).Order();
        Assert.Equal(all, SmallChanges.Of(problem, changed, int.MaxValue)!.Select(c => string.Join(',', c)).Order());
    }, iter: 200);

    [Fact]
    public void Stopped_at_once_a_search_gives_back_what_it_has()
    {
        var problem = RandomProblems.Any(ties: false).Where(p => p.Allows([.. p.Start])).Single(p => p.Count > 3, "0000KOIPNdJ1");
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        foreach (IGapFinder finder in (IGapFinder[])[new EveryCount(), new Descent(), new BestCounts(4, 1)])
        {
            var found = finder.Find(problem, cancel: stopped.Token)!;
            Assert.True(problem.Allows(found.Counts.AsSpan()));
            Assert.True(found.Bound <= LeastOfAll(problem) + Rounding);
        }
    }

    private static double LeastOfAll(GapProblem problem) =>
        RandomProblems.EveryChoice(problem).Select(counts => problem.Loss(counts)).DefaultIfEmpty(double.PositiveInfinity).Min();
}
