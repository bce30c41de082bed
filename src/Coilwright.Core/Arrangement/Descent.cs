using Coilwright.Core.Numerics;

namespace Coilwright.Core.Arrangement;

/// <summary>Starts from many orders, changes each as long as it gets better, then shakes it and goes on: good counts soon, without proof.</summary>
/// <remarks>Changes one gap, or two at once so that what one gives the other may take. Each start depends on the seed and its own number alone, so the
/// outcome is the same on any number of threads. Iterated local search: H. R. Lourenço, O. C. Martin, T. Stützle, Handbook of Metaheuristics, 2003
/// (from memory).</remarks>
/// <param name="starts">How many starts.</param>
/// <param name="shakes">How often each is shaken.</param>
/// <param name="seed">Seed of the draws.</param>
/// <param name="firstStart">Number of the first start: 0 is the order as it is strung, every other any order.</param>
public sealed class Descent(int starts = 8, int shakes = 60, ulong seed = 1, int firstStart = 0) : IGapFinder
{
    /// <inheritdoc/>
    public FoundCounts? Find(GapProblem problem, IProgress<FoundCounts>? progress = null, CancellationToken cancel = default)
    {
        var bound = problem.Fixed + problem.Windows.Sum(w => w.Loss.Min());
        var found = new (int[]? Counts, double Loss)[starts];
        long looked = 0;
        var gate = new Lock();
        var best = double.PositiveInfinity;
        SharedWork.Run(starts, (from, to) =>
        {
            for (var start = from; start < to; start++)
            {
                // Start 0 is the order as it is strung: it is judged even when the search is stopped at once.
                if (start > 0 && cancel.IsCancellationRequested) break;
                var climb = new Climb(problem, new SeededDraws(seed, (ulong)(firstStart + start)), firstStart + start > 0, progress is null ? null : Tell, cancel);
                climb.Run(shakes);
                found[start] = (climb.Best, climb.BestLoss);
                Interlocked.Add(ref looked, climb.Looked);
            }
        }, CancellationToken.None);
        // Of equally good ones the earliest start's, so that the outcome does not hang on rounding between threads.
        (int[]? Counts, double Loss) least = (null, double.PositiveInfinity);
        foreach (var one in found)
            if (one.Counts is not null && one.Loss < least.Loss - FoundCounts.Rounding) least = one;
        return least.Counts is null ? null : new FoundCounts([.. least.Counts], least.Loss, Math.Min(bound, least.Loss), looked);

        // As soon as it is found.
        void Tell(Climb climb)
        {
            lock (gate)
            {
                if (climb.BestLoss >= best - FoundCounts.Rounding) return;
                best = climb.BestLoss;
                progress!.Report(new FoundCounts([.. climb.Best!], best, Math.Min(bound, best), Interlocked.Read(ref looked) + climb.Looked));
            }
        }
    }

    private sealed class Climb
    {
        private readonly GapProblem _problem;
        private readonly SeededDraws _draws;
        private readonly Action<Climb>? _better;
        private readonly CancellationToken _cancel;
        private readonly int[][] _together;
        private readonly GapScore _score;
        private readonly bool _stocked;
        private ulong _drawn;

        public Climb(GapProblem problem, SeededDraws draws, bool anywhere, Action<Climb>? better, CancellationToken cancel)
        {
            (_problem, _draws, _better, _cancel) = (problem, draws, better, cancel);
            _together = [.. Enumerable.Range(0, problem.Count).Where(g => problem.TiedTo[g] == g)
                .Select(g => Enumerable.Range(g, problem.Count - g).Where(o => problem.TiedTo[o] == g).ToArray())];
            _score = new GapScore(problem, [.. problem.Start]);
            _stocked = problem.MostMoreOfKind.Any(more => more != int.MaxValue) || !problem.Also.IsEmpty;
            if (!anywhere) return;
            for (var one = 0; one < _together.Length; one++) Set(one, Any(one));
        }

        public int[]? Best { get; private set; }

        public double BestLoss { get; private set; } = double.PositiveInfinity;

        public long Looked { get; private set; }

        public void Run(int shakes)
        {
            for (var shake = 0; shake <= shakes; shake++)
            {
                if (_together.Length > 0) Down();
                if (_score.Fits && _score.Loss < BestLoss - FoundCounts.Rounding && _problem.KeepsAlso(_score.Counts))
                {
                    (Best, BestLoss) = (_score.Counts.ToArray(), _score.Loss);
                    _better?.Invoke(this);
                }
                if (_cancel.IsCancellationRequested || _together.Length == 0) return;
                if (Best is not null)
                    for (var one = 0; one < _together.Length; one++) Set(one, Best[_together[one][0]]);
                for (var times = 0; times < 3; times++) Set(Below(_together.Length), null);
            }
        }

        // Counts that length and stock do not allow are worse than any that they do, by as much as they break them.
        private double Cost => _score.Loss + Broken();

        private double Broken()
        {
            // Rules that are kept or not, with nothing between, weigh less than length and stock: those show the way.
            var also = _problem.Also.IsEmpty || _problem.KeepsAlso(_score.Counts) ? 0 : 5;
            if (_score.Fits) return also;
            var change = _score.LengthChangeMm;
            var over = Math.Max(0, change - _problem.LongerMm) + Math.Max(0, -_problem.ShorterMm - change);
            for (var k = 0; k < _problem.StepMm.Length; k++)
            {
                if (_problem.MostMoreOfKind[k] == int.MaxValue) continue;
                var more = 0;
                for (var g = 0; g < _problem.Count; g++)
                    if (_problem.Kinds[g] == k) more += _score.Counts[g] - _problem.Start[g];
                over += Math.Max(0, more - _problem.MostMoreOfKind[k]) * _problem.StepMm[k];
            }
            return 10 + over + also;
        }

        // Takes the first change that makes it better, till none does.
        private void Down()
        {
            var cost = Cost;
            for (var better = true; better && !_cancel.IsCancellationRequested;)
            {
                better = false;
                for (var one = 0; one < _together.Length; one++) better |= TryOne(one, ref cost);
                if (!better)
                    for (var one = 0; one < _together.Length && !_cancel.IsCancellationRequested; one++)
                        better |= TryTwo(one, ref cost);
            }
        }

        private bool TryOne(int one, ref double cost)
        {
            var (gap, was) = (_problem.Gaps[_together[one][0]], CountOf(one));
            var (best, bestCost) = (was, cost - FoundCounts.Rounding);
            for (var to = gap.Least; to <= gap.Most; to++)
            {
                if (to == was) continue;
                var so = CostWith(one, to);
                if (so < bestCost) (best, bestCost) = (to, so);
            }
            if (best == was) return false;
            Set(one, best);
            cost = Cost;
            return true;
        }

        private bool TryTwo(int one, ref double cost)
        {
            var was = CountOf(one);
            for (var by = -1; by <= 1; by += 2)
            {
                var to = was + by;
                if (to < _problem.Gaps[_together[one][0]].Least || to > _problem.Gaps[_together[one][0]].Most) continue;
                Set(one, to);
                for (var other = 0; other < _together.Length; other++)
                {
                    if (other == one) continue;
                    var gap = _problem.Gaps[_together[other][0]];
                    for (var step = -1; step <= 1; step += 2)
                    {
                        var count = CountOf(other) + step;
                        if (count < gap.Least || count > gap.Most || CostWith(other, count) is var so && so >= cost - FoundCounts.Rounding) continue;
                        Set(other, count);
                        cost = Cost;
                        return true;
                    }
                }
                Set(one, was);
            }
            return false;
        }

        private double CostWith(int one, int to)
        {
            Looked++;
            // Where one gap stands for itself and only the length is to be kept, the change alone is looked up.
            if (_together[one].Length == 1 && !_stocked)
            {
                var gap = _together[one][0];
                var change = _score.LengthChangeMm + (to - _score.Counts[gap]) * _problem.StepMm[_problem.Kinds[gap]];
                return _score.Loss + _score.Change(gap, to) + (_problem.FitsLength(change) ? 0
                    : 10 + Math.Max(0, change - _problem.LongerMm) + Math.Max(0, -_problem.ShorterMm - change));
            }
            var was = CountOf(one);
            Set(one, to);
            var cost = Cost;
            Set(one, was);
            return cost;
        }

        private int CountOf(int one) => _score.Counts[_together[one][0]];

        private int Below(int below) => _draws.Below(_drawn++, below);

        private int Any(int one)
        {
            var gap = _problem.Gaps[_together[one][0]];
            return gap.Least + Below(gap.Most - gap.Least + 1);
        }

        private void Set(int one, int? to)
        {
            var count = to ?? Any(one);
            foreach (var gap in _together[one]) _score.Set(gap, count);
        }
    }
}
