using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>Goes through every choice of counts, gap by gap, and leaves out only branches in which nothing better can be.</summary>
/// <remarks>Depth first. A branch is left when what its windows have cost, with the least that each window still open can cost, is no better than
/// the best so far, or when length or stock cannot be met any more. Proves the best; the time grows with the ways there are.</remarks>
public sealed class EveryCount : IGapFinder
{
    /// <inheritdoc/>
    public FoundCounts? Find(GapProblem problem, IProgress<FoundCounts>? progress = null, CancellationToken cancel = default) =>
        new Walk(problem, progress, cancel).Run();

    private sealed class Walk(GapProblem problem, IProgress<FoundCounts>? progress, CancellationToken cancel)
    {
        private readonly int[] _counts = [.. problem.Start];
        private readonly int[] _more = new int[problem.StepMm.Length];
        private readonly int[][] _ending = [.. Enumerable.Range(0, problem.Count).Select(g => Enumerable.Range(0, problem.Windows.Length).Where(w => problem.Windows[w].End == g + 1).ToArray())];
        private readonly double[] _leastAfter = new double[problem.Count + 1];
        private readonly (double Least, double Most)[] _lengthAfter = new (double, double)[problem.Count + 1];
        private FoundCounts? _best;
        private double _bestLoss = double.PositiveInfinity;
        private long _looked;
        private bool _stopped;

        public FoundCounts? Run()
        {
            for (var g = problem.Count - 1; g >= 0; g--)
            {
                _leastAfter[g] = _leastAfter[g + 1] + _ending[g].Sum(w => problem.Windows[w].Loss.Min());
                var step = problem.StepMm[problem.Kinds[g]];
                var gap = problem.Gaps[g];
                _lengthAfter[g] = (_lengthAfter[g + 1].Least + (gap.Least - gap.Count) * step, _lengthAfter[g + 1].Most + (gap.Most - gap.Count) * step);
            }
            if (problem.Allows([.. problem.Start])) Take([.. problem.Start], problem.Loss([.. problem.Start]));
            Go(0, problem.Fixed, 0);
            var bound = _stopped ? problem.Fixed + _leastAfter[0] : _bestLoss;
            return _best is null ? null : _best with { Bound = Math.Min(bound, _bestLoss), Looked = _looked };
        }

        private void Go(int g, double loss, double lengthMm)
        {
            if (g == problem.Count)
            {
                _looked++;
                if (loss < _bestLoss - FoundCounts.Rounding && problem.Allows(_counts)) Take([.. _counts], loss);
                return;
            }
            if ((_looked & 0xFFF) == 0 && cancel.IsCancellationRequested) _stopped = true;
            if (_stopped) return;
            var (gap, kind, tied) = (problem.Gaps[g], problem.Kinds[g], problem.TiedTo[g]);
            var (least, most) = tied == g ? (gap.Least, gap.Most) : (_counts[tied], _counts[tied]);
            for (var count = least; count <= most; count++)
            {
                var length = lengthMm + (count - gap.Count) * problem.StepMm[kind];
                if (length + _lengthAfter[g + 1].Most < -problem.ShorterMm - 1e-9 || length + _lengthAfter[g + 1].Least > problem.LongerMm + 1e-9) continue;
                _counts[g] = count;
                _more[kind] += count - gap.Count;
                if (_more[kind] - FewerLater(g, kind) <= problem.MostMoreOfKind[kind])
                {
                    var so = loss;
                    foreach (var w in _ending[g]) so += problem.Windows[w].Loss[problem.KeyOf(problem.Windows[w], _counts)];
                    if (so + _leastAfter[g + 1] < _bestLoss - FoundCounts.Rounding) Go(g + 1, so, length);
                }
                _more[kind] -= count - gap.Count;
            }
        }

        // How many beads of a kind later gaps could still give back.
        private int FewerLater(int g, int kind)
        {
            if (problem.MostMoreOfKind[kind] == int.MaxValue) return 0;
            var fewer = 0;
            for (var later = g + 1; later < problem.Count; later++)
                if (problem.Kinds[later] == kind) fewer += problem.Gaps[later].Count - problem.Gaps[later].Least;
            return fewer;
        }

        private void Take(ImmutableArray<int> counts, double loss)
        {
            _bestLoss = loss;
            _best = new FoundCounts(counts, loss, problem.Fixed + _leastAfter[0], _looked);
            progress?.Report(_best);
        }
    }
}
