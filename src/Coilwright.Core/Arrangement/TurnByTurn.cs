using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>Goes along the wire and keeps, for every choice of the last turn's counts, the best way to come to it: finds the best, or a bound on it.</summary>
/// <remarks>
/// <para>A dynamic programme: what a window costs is known as soon as its last gap is chosen, from the counts of about one turn. Length and stock are met
/// by prices on length and on beads (Lagrange multipliers), moved to where the bound is highest; each round gives a bound that holds, and counts that
/// may be allowed. Where a turn holds more counts than <paramref name="mostStates"/> a window's earliest gaps are taken at their best: the bound still
/// holds and is weaker. Ties are left out of the bound, which holds without them.</para>
/// <para>Sources: R. Bellman, Dynamic Programming, 1957; M. L. Fisher, The Lagrangian Relaxation Method, Management Science 27, 1981; step length of
/// B. T. Polyak 1969 (all from memory).</para>
/// </remarks>
/// <param name="mostStates">Most states of a turn kept at once.</param>
/// <param name="rounds">Most rounds of prices.</param>
public sealed class TurnByTurn(int mostStates = 1 << 20, int rounds = 40) : IGapFinder
{
    /// <inheritdoc/>
    public FoundCounts? Find(GapProblem problem, IProgress<FoundCounts>? progress = null, CancellationToken cancel = default) =>
        Find(problem, double.PositiveInfinity, progress, cancel, out _);

    /// <summary>Looks for the best, knowing that a loss was reached already: prices then move by better steps.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="reached">The least loss known to be reached; infinite when none is.</param>
    /// <param name="progress">Is told of each better one.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <param name="bound">A bound that no allowed counts go below, also where none were found.</param>
    public FoundCounts? Find(GapProblem problem, double reached, IProgress<FoundCounts>? progress, CancellationToken cancel, out double bound)
    {
        (var best, bound, var looked) = Search(problem, reached, progress, cancel);
        return best is null ? null : new FoundCounts(best.Value.Counts, best.Value.Loss, Math.Min(bound, best.Value.Loss), looked);
    }

    private ((ImmutableArray<int> Counts, double Loss)? Best, double Bound, long Looked) Search(GapProblem problem, double reached,
        IProgress<FoundCounts>? progress, CancellationToken cancel)
    {
        if (problem.Count == 0) return (problem.Allows([]) ? ([], problem.Fixed) : null, problem.Fixed, 1);
        var hunt = new Hunt(problem, mostStates, rounds, reached, progress, cancel);
        if (problem.MostMoreOfKind.All(more => more == int.MaxValue)) hunt.ByLength();
        else hunt.BySlopes();
        hunt.GoBack();
        return (hunt.Best, Math.Min(hunt.Bound, reached), hunt.Looked);
    }

    // Moves the prices so that the bound rises.
    private sealed class Hunt(GapProblem problem, int mostStates, int rounds, double reached, IProgress<FoundCounts>? progress, CancellationToken cancel)
    {
        private readonly TurnSweep _sweep = new(problem, mostStates);
        private readonly double[] _perBead = new double[problem.StepMm.Length], _prices = new double[problem.StepMm.Length], _bestPrices = new double[problem.StepMm.Length];
        private double _bestAllowance;
        private int _round;

        public (ImmutableArray<int> Counts, double Loss)? Best { get; private set; }

        public double Bound { get; private set; } = problem.Fixed + problem.Windows.Sum(w => w.Loss.Min());

        public long Looked { get; private set; }

        private double Known => Math.Min(reached, Best?.Loss ?? double.PositiveInfinity);

        private bool IsDone => _round >= rounds || cancel.IsCancellationRequested || Known - Bound <= FoundCounts.Rounding;

        // One sweep at these prices: the bound it gives, and its counts; null when it was stopped.
        private (double Held, ImmutableArray<int> Counts)? Try(double perMm)
        {
            _round++;
            for (var k = 0; k < _prices.Length; k++) _prices[k] = perMm * problem.StepMm[k] + _perBead[k];
            if (_sweep.Run(_prices, cancel) is not { } swept) return null;
            Looked += _sweep.Steps;
            // What the prices say of every allowed order: its loss is at least this.
            var allowance = perMm > 0 ? perMm * problem.LongerMm : perMm < 0 ? -perMm * problem.ShorterMm : 0;
            for (var k = 0; k < _perBead.Length; k++)
                if (_perBead[k] > 0) allowance += _perBead[k] * problem.MostMoreOfKind[k];
            var held = swept.Priced - allowance;
            if (held >= Bound)
            {
                (Bound, _bestAllowance) = (held, allowance);
                _prices.CopyTo(_bestPrices, 0);
            }
            if (problem.Allows(swept.Counts.AsSpan()) && problem.Loss(swept.Counts.AsSpan()) is var loss && loss < (Best?.Loss ?? double.PositiveInfinity))
            {
                Best = (swept.Counts, loss);
                progress?.Report(new FoundCounts(swept.Counts, loss, Math.Min(Bound, loss), Looked));
            }
            return (held, swept.Counts);
        }

        // What lies between the bound and the best known, gone through from the end of the wire back to its start.
        public void GoBack()
        {
            if (cancel.IsCancellationRequested || double.IsInfinity(Known) || Known - Bound <= FoundCounts.Rounding) return;
            var back = new BackAlong(problem, _sweep, _bestPrices, _bestAllowance);
            if (back.Run(Known, cancel) is not { } gone) return;
            Looked += gone.Looked;
            if (gone.Counts is { } counts)
            {
                Best = (counts, gone.Loss);
                progress?.Report(new FoundCounts(counts, gone.Loss, gone.Loss, Looked));
            }
            Bound = Math.Max(Bound, Known);
        }

        // With length alone to keep, the bound is a roof of straight pieces over one price: where the pieces found on either side of its top would meet
        // is tried next, until they meet on the roof.
        public void ByLength()
        {
            if (Try(0) is not { } free) return;
            var change = problem.LengthChangeMm(free.Counts.AsSpan());
            if (problem.FitsLength(change) || IsDone) return;
            var sign = change > problem.LongerMm ? 1 : -1;
            double Over(ImmutableArray<int> counts) =>
                sign > 0 ? problem.LengthChangeMm(counts.AsSpan()) - problem.LongerMm : -problem.LengthChangeMm(counts.AsSpan()) - problem.ShorterMm;
            var (low, lowHeld, lowSlope) = (0.0, free.Held, Over(free.Counts));
            (double At, double Held, double Slope)? high = null;
            var next = (double.IsFinite(Known) ? Math.Max(Known - free.Held, 1e-6) : 0.01) / lowSlope;
            while (!IsDone)
            {
                if (Try(sign * next) is not { } tried) return;
                var slope = Over(tried.Counts);
                if (slope > 0) (low, lowHeld, lowSlope) = (next, tried.Held, slope);
                else high = (next, tried.Held, slope);
                if (Math.Abs(slope) < 1e-12) return;
                if (high is not { } h)
                {
                    // Too dear is never reached where no counts are short enough.
                    if (next > 1e6) return;
                    next *= 4;
                    continue;
                }
                var meet = (h.Held - lowHeld + lowSlope * low - h.Slope * h.At) / (lowSlope - h.Slope);
                if (lowHeld + lowSlope * (meet - low) <= Bound + FoundCounts.Rounding) return;
                next = meet;
            }
        }

        // With stock to keep too: steps along the slope of the bound in every price.
        public void BySlopes()
        {
            var (perMm, damping, since) = (0.0, 1.0, 0);
            while (!IsDone)
            {
                var before = Bound;
                if (Try(perMm) is not { } tried) return;
                if (Bound > before + FoundCounts.Rounding) since = 0;
                else if (++since == 4) (damping, since) = (damping / 2, 0);

                // How far the counts break each rule: the slope of the bound in its price.
                var change = problem.LengthChangeMm(tried.Counts.AsSpan());
                var slopeMm = perMm > 0 ? change - problem.LongerMm : perMm < 0 ? change + problem.ShorterMm
                    : change > problem.LongerMm ? change - problem.LongerMm : Math.Min(0, change + problem.ShorterMm);
                var slopes = new double[_perBead.Length];
                var squares = slopeMm * slopeMm;
                for (var k = 0; k < slopes.Length; k++)
                {
                    if (problem.MostMoreOfKind[k] == int.MaxValue) continue;
                    for (var g = 0; g < problem.Count; g++)
                        if (problem.Kinds[g] == k) slopes[k] += tried.Counts[g] - problem.Start[g];
                    slopes[k] -= problem.MostMoreOfKind[k];
                    if (_perBead[k] <= 0 && slopes[k] < 0) slopes[k] = 0;
                    squares += slopes[k] * slopes[k] * problem.StepMm[k] * problem.StepMm[k];
                }
                if (squares < 1e-18) return;
                var step = damping * (double.IsFinite(Known) ? Math.Max(Known - tried.Held, 1e-9) : 0.01) / squares;
                var next = perMm + step * slopeMm;
                // The price of length changes its sign by way of nought: on either side another limit holds.
                perMm = perMm != 0 && Math.Sign(next) == -Math.Sign(perMm) ? 0 : next;
                for (var k = 0; k < _perBead.Length; k++)
                    _perBead[k] = Math.Max(0, _perBead[k] + step * slopes[k] * problem.StepMm[k] * problem.StepMm[k]);
            }
        }
    }
}
