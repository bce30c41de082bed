using System.Diagnostics;
using Coilwright.Core.Arrangement;
using Google.OrTools.Sat;

namespace Coilwright.Benchmarks.Ideas;

/// <summary>The best counts by a general solver: OR-Tools' CP-SAT, two workers.</summary>
/// <remarks>Modelled as its makers would: a whole number for each gap, one element constraint for each table of consecutive gaps, whose index is a sum of counts, and the
/// start as a hint. Losses are whole multiples of <see cref="Grain"/>.</remarks>
/// <param name="most">How long it may look.</param>
public sealed class SolverRival(TimeSpan most) : IGapFinder
{
    /// <summary>Losses are rounded to this: far below anything that is told of one.</summary>
    public const double Grain = 1e-9;

    // Lengths in whole nanometres.
    private const double LengthGrainMm = 1e-6;

    /// <summary>When the best was found, from the start.</summary>
    public TimeSpan FoundAfter { get; private set; }

    /// <summary>How long it looked.</summary>
    public TimeSpan Took { get; private set; }

    /// <inheritdoc/>
    public FoundCounts? Find(GapProblem problem, IProgress<FoundCounts>? progress = null, CancellationToken cancel = default)
    {
        var model = new CpModel();
        var counts = new IntVar[problem.Count];
        for (var g = 0; g < counts.Length; g++)
        {
            counts[g] = problem.TiedTo[g] == g ? model.NewIntVar(problem.Gaps[g].Least, problem.Gaps[g].Most, $"gap {g}") : counts[problem.TiedTo[g]];
            if (problem.TiedTo[g] == g) model.AddHint(counts[g], problem.Start[g]);
        }
        var losses = problem.Windows.Select(window => LossOf(model, problem, window, counts)).ToArray();
        long[] steps = [.. problem.StepMm.Select(mm => (long)Math.Round(mm / LengthGrainMm))];
        if (!double.IsInfinity(problem.ShorterMm) || !double.IsInfinity(problem.LongerMm))
            model.AddLinearConstraint(LinearExpr.Sum(counts.Select((c, g) => (c - problem.Start[g]) * steps[problem.Kinds[g]])),
                double.IsInfinity(problem.ShorterMm) ? long.MinValue / 4 : -(long)Math.Ceiling(problem.ShorterMm / LengthGrainMm),
                double.IsInfinity(problem.LongerMm) ? long.MaxValue / 4 : (long)Math.Ceiling(problem.LongerMm / LengthGrainMm));
        for (var k = 0; k < steps.Length; k++)
            if (problem.MostMoreOfKind[k] != int.MaxValue)
                model.Add(LinearExpr.Sum(counts.Where((_, g) => problem.Kinds[g] == k)) <= problem.MostMoreOfKind[k] + problem.Start.Where((_, g) => problem.Kinds[g] == k).Sum());
        model.Minimize(LinearExpr.Sum(losses));

        using var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:2 max_time_in_seconds:{most.TotalSeconds} relative_gap_limit:0") };
        var clock = Stopwatch.StartNew();
        using var stop = cancel.Register(solver.StopSearch);
        var status = solver.Solve(model, new Told(() => FoundAfter = clock.Elapsed));
        Took = clock.Elapsed;
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible)) return null;
        int[] found = [.. counts.Select(c => (int)solver.Value(c))];
        var loss = problem.Loss(found);
        // Each table is off by up to half a grain.
        var bound = problem.Fixed + (solver.BestObjectiveBound - 0.5 * losses.Length) * Grain;
        return new FoundCounts([.. found], loss, Math.Min(bound, loss), solver.NumBranches());
    }

    private static IntVar LossOf(CpModel model, GapProblem problem, GapWindow window, IntVar[] counts)
    {
        long[] table = [.. window.Loss.Select(loss => (long)Math.Round(loss / Grain))];
        var key = LinearExpr.Sum(Enumerable.Range(window.First, window.End - window.First).Select(g => (counts[g] - problem.Gaps[g].Least) * window.Strides[problem.Kinds[g]]));
        var index = model.NewIntVar(0, table.Length - 1, "beads between");
        model.Add(index == key);
        var loss = model.NewIntVar(table.Min(), table.Max(), "loss");
        model.AddElement(index, table, loss);
        return loss;
    }

    private sealed class Told(Action found) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback() => found();
    }
}
