using System.Diagnostics;
using System.Globalization;
using Coilwright.Benchmarks.Running;
using Coilwright.Core.Cutting;

namespace Coilwright.Benchmarks.Cutting;

/// <summary>The published cutting problems, each proven by our search and by a general solver, one after the other.</summary>
public static class CutClaim
{
    private static readonly TimeSpan SolverMay = TimeSpan.FromSeconds(15);

    // The quickest of them counts.
    private static readonly string[] Solvers = ["SCIP", "HIGHS", "SAT"];

    // Ours is over in milliseconds, so it is measured so often, and the median counts.
    private const int OwnRuns = 9;

    public static Claim Claim { get; } = new("cut",
        "Each published cutting problem is proven in at most a fifth of the time of the quickest of three general solvers with an arc-flow model. Takes some minutes a round.", Measure);

    private static Verdict[] Measure(int rounds)
    {
        var problems = PublishedCutting.All;
        var ratios = problems.Keys.ToDictionary(name => name, _ => new List<double>());
        // Once through everything, so that neither side is charged for being compiled or loaded.
        foreach (var (problem, _) in problems.Values.Take(2)) _ = (CuttingSearch.Solve(problem), Solvers.Select(s => ArcFlow.Solve(problem, s, TimeSpan.FromSeconds(5))).ToArray());
        for (var round = 0; round < rounds; round++)
        {
            foreach (var (name, (problem, optimum)) in problems)
            {
                var theirs = Solvers.Select(s => (Solver: s, Did: ArcFlow.Solve(problem, s, SolverMay))).ToArray();
                var own = Medians.Of(Enumerable.Range(0, OwnRuns).Select(_ => OwnSeconds(problem, optimum, name)));
                foreach (var (solver, did) in theirs)
                    if (did.IsProven && did.Bars != optimum) throw new InvalidOperationException($"{solver} proves {did.Bars} for {name}, where {optimum} is published.");
                // Where none proves it in its time, that time is what it took at least.
                var best = theirs.Where(t => t.Did.IsProven).Select(t => t.Did.Took.TotalSeconds).Append(SolverMay.TotalSeconds).Min();
                ratios[name].Add(best / own);
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                    $"{name,-9} own {own * 1000,8:0.00} ms  {string.Join("  ", theirs.Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.Solver} {t.Did.Took.TotalMilliseconds,8:0} ms{(t.Did.IsProven ? "" : " (not proven)")}")))}"));
            }
        }
        return [.. problems.Keys.Select(name => new Verdict($"{name}: quickest solver / own", ratios[name], Promise.AtLeast, 5))];
    }

    private static double OwnSeconds(CuttingProblem problem, long optimum, string name)
    {
        var clock = Stopwatch.StartNew();
        var found = CuttingSearch.Solve(problem);
        var took = clock.Elapsed.TotalSeconds;
        if (!found.IsProven || found.Cost != optimum) throw new InvalidOperationException($"{name} comes to {found.Cost}, proven: {found.IsProven}; {optimum} is published.");
        return took;
    }
}
