using System.Diagnostics;
using Coilwright.Core.Cutting;
using Google.OrTools.LinearSolver;

namespace Coilwright.Benchmarks.Cutting;

/// <summary>Bars of one length cut by a general solver of OR-Tools, as an arc-flow integer model (Valério de Carvalho 1999).</summary>
/// <remarks>A node for each length that can be filled, an arc for each item from each node that longer items lead to, arcs for what is left over; a bar is a path. Items longest first, so
/// that one filling is one path, and no more of an item in a row than are wanted. Lengths without their common factor, as a careful modeller would have them.</remarks>
public static class ArcFlow
{
    /// <summary>Solves it.</summary>
    /// <param name="problem">Bars of one kind, each as dear as the other.</param>
    /// <param name="solver">The solver, by OR-Tools' name for it.</param>
    /// <param name="most">How long it may look.</param>
    /// <returns>The bars it takes, whether it is proven, and how long it took, from the problem to the end.</returns>
    public static (long? Bars, bool IsProven, TimeSpan Took) Solve(CuttingProblem problem, string solver, TimeSpan most)
    {
        var clock = Stopwatch.StartNew();
        var unit = problem.Items.Aggregate(0, (g, i) => Gcd(g, i.Length));
        var length = problem.Bars[0].Length / unit;
        (int Length, int Count)[] items = [.. problem.Items.OrderByDescending(i => i.Length).Select(i => (i.Length / unit, i.Count))];

        using var model = Solver.CreateSolver(solver) ?? throw new InvalidOperationException($"This OR-Tools has no {solver}.");
        model.SetTimeLimit((long)most.TotalMilliseconds);
        if (solver != "HIGHS") model.SetNumThreads(2);
        var into = new List<Variable>[length + 1];
        var outOf = new List<Variable>[length + 1];
        for (var at = 0; at <= length; at++) (into[at], outOf[at]) = ([], []);
        var reached = new bool[length + 1];
        reached[0] = true;
        foreach (var (item, count) in items)
        {
            var cut = model.MakeConstraint(count, double.PositiveInfinity);
            // How many of this item stand before a node at least; -1 where none of the longer ones or of it lead there.
            var before = new int[length + 1];
            Array.Fill(before, -1);
            for (var at = 0; at <= length; at++)
            {
                if (reached[at]) before[at] = 0;
                if (before[at] < 0 || before[at] >= count || at + item > length) continue;
                var arc = model.MakeIntVar(0, count, "");
                cut.SetCoefficient(arc, 1);
                outOf[at].Add(arc);
                into[at + item].Add(arc);
                if (before[at + item] < 0) before[at + item] = before[at] + 1;
            }
            for (var at = 0; at <= length; at++) reached[at] |= before[at] >= 0;
        }
        var bars = model.MakeIntVar(0, problem.Items.Sum(i => i.Count), "");
        int[] nodes = [.. Enumerable.Range(0, length + 1).Where(at => reached[at] || at == length)];
        foreach (var (from, to) in nodes.Zip(nodes.Skip(1)))
        {
            var left = model.MakeIntVar(0, double.PositiveInfinity, "");
            outOf[from].Add(left);
            into[to].Add(left);
        }
        foreach (var at in nodes)
        {
            var flow = model.MakeConstraint(0, 0);
            foreach (var arc in into[at]) flow.SetCoefficient(arc, 1);
            foreach (var arc in outOf[at]) flow.SetCoefficient(arc, -1);
            if (at == 0) flow.SetCoefficient(bars, 1);
            if (at == length) flow.SetCoefficient(bars, -1);
        }
        model.Minimize(bars);
        var status = model.Solve();
        var found = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE ? (long?)Math.Round(model.Objective().Value()) : null;
        return (found, status == Solver.ResultStatus.OPTIMAL, clock.Elapsed);
    }

    private static int Gcd(int a, int b) => b == 0 ? a : Gcd(b, a % b);
}
