using System.Diagnostics;
using System.Globalization;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Arrangement;

namespace Coilwright.Benchmarks.Ideas;

/// <summary>The search for ideas beside a general solver, on the same 30 pieces, one after the other.</summary>
public static class RivalClaim
{
    private const int Instances = 30;

    // Losses nearer than this are the same: the solver rounds each of some hundred tables to a grain.
    private const double Same = 1000 * SolverRival.Grain;

    private static readonly TimeSpan SolverMay = TimeSpan.FromSeconds(60);

    public static Claim Claim { get; } = new("rival",
        "Ideas beside a general solver with a minute for each of 30 pieces: what it finds is found in a hundredth of its time, and the bounds are no looser. Takes a few minutes.", Measure);

    private static Verdict[] Measure(int rounds)
    {
        // A few times through everything, so that neither side is charged for being compiled.
        for (var i = 5; i < Instances; i += 8) _ = Side(Problem(i), TimeSpan.FromSeconds(1), i);
        Console.WriteLine();
        var sides = Enumerable.Range(0, Instances).Select(i => Side(Problem(i), SolverMay, i)).ToArray();
        var few = sides.Where(s => s.GapsInATurn <= 10).ToArray();
        return
        [
            new Verdict($"of {Instances} pieces, the solver's best reached in a hundredth of the time that it took to find it", [sides.Count(s => s.Reached is { } r && r.Ticks * 100 <= s.SolverFound.Ticks)], Promise.AtLeast, 25),
            new Verdict($"of {Instances} pieces, the solver's best reached in a hundredth of the time that it looked", [sides.Count(s => s.Reached is { } r && r.Ticks * 100 <= s.SolverTook.Ticks)], Promise.AtLeast, null),
            new Verdict($"of {Instances} pieces, worse than the solver in no more time", [sides.Count(s => s.Own > s.Solver + Same)], Promise.AtMost, 0),
            new Verdict($"of {few.Length} pieces with at most 10 gaps in a turn, a looser bound than the solver's", [few.Count(s => s.OwnBound < s.SolverBound - Same)], Promise.AtMost, 0),
            new Verdict("of the pieces with at most ten million ways, not proven best", [sides.Count(s => s.Ways <= BestCounts.MostWaysToTryAll && !s.OwnProven)], Promise.AtMost, 0),
        ];
    }

    private static GapProblem Problem(int i)
    {
        var (gaps, beads) = (4 + 36 * i / (Instances - 1), 20 + 380 * i / (Instances - 1));
        return new OrderSpace(ClusterPieces.Of(gaps, beads, (ulong)i + 1), GeneratedPieces.Data).Problem;
    }

    private static Sides Side(GapProblem problem, TimeSpan solverMay, int i)
    {
        var rival = new SolverRival(solverMay);
        var theirs = rival.Find(problem) ?? throw new InvalidOperationException("The solver found nothing.");
        var reached = new Reached(theirs.Loss + Same);
        var clock = reached.Clock;
        var own = new BestCounts(effort: 10, seed: 1).Find(problem, reached)!;
        var took = clock.Elapsed;
        if (own.Loss <= theirs.Loss + Same) reached.Report(own);
        var sides = new Sides(problem.Ways, problem.Windows.Select(w => w.End - w.First).DefaultIfEmpty(0).Max(), theirs.Loss, theirs.Bound, rival.FoundAfter, rival.Took, own.Loss, own.Bound, took, reached.After, own.IsProven);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{i + 1,2}  {problem.Count,2} gaps ({sides.GapsInATurn,2} in a turn)  10^{Math.Log10(problem.Ways),4:0.0}  solver {theirs.Loss:0.000000} bound {theirs.Bound:0.000000} after {rival.FoundAfter.TotalSeconds,6:0.00} of {rival.Took.TotalSeconds,5:0.0} s  own {own.Loss:0.000000} bound {own.Bound:0.000000} in {took.TotalSeconds,6:0.000} s, as good after {(reached.After is { } r ? r.TotalSeconds.ToString("0.0000", CultureInfo.InvariantCulture) : "never")} s"));
        return sides;
    }

    private sealed record Sides(
        double Ways, int GapsInATurn, double Solver, double SolverBound, TimeSpan SolverFound, TimeSpan SolverTook, double Own, double OwnBound, TimeSpan OwnTook, TimeSpan? Reached, bool OwnProven);

    // Notes when the loss first was as good as asked. Is told at once, on the thread that found it.
    private sealed class Reached(double loss) : IProgress<FoundCounts>
    {
        public Stopwatch Clock { get; } = Stopwatch.StartNew();

        public TimeSpan? After { get; private set; }

        public void Report(FoundCounts value)
        {
            if (value.Loss <= loss) After ??= Clock.Elapsed;
        }
    }
}
