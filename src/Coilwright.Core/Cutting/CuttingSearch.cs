namespace Coilwright.Core.Cutting;

/// <summary>How far a search has come.</summary>
/// <param name="Cost">Cost of the best way to cut so far, or length missing while it does not come out.</param>
/// <param name="Bound">What it cannot be below.</param>
public readonly record struct CuttingProgress(long Cost, long Bound);

/// <summary>Looks for the cheapest way to cut, and proves that it is.</summary>
/// <remarks>
/// <para>Bars are filled one by one first; then the bound by column generation is taken, its whole parts are cut and the rest again, until what is found meets the bound.
/// Where it does not, every filling that holds the longest item left is tried, cheapest beyond its worth first, and left where no better way can have it: that goes on
/// until nothing is untried or the effort is used up. Where prices differ, every choice of bars that costs less is then held against the lengths. Everything is in whole numbers but the choice of what to look at, so the same problem gives the same answer.</para>
/// <para>Where it does not come out, the search is for the least length missing. Model, proof and limits: docs/theory/cutting.md.</para>
/// </remarks>
public static class CuttingSearch
{
    /// <summary>Partly cut states that are looked at, unless said otherwise: some seconds' worth at most for the orders of a studio.</summary>
    public const long UsualEffort = 2_000;

    /// <summary>Looks.</summary>
    /// <param name="problem">What to cut from what.</param>
    /// <param name="effort">How many partly cut states are looked at at most, 1 or more.</param>
    /// <param name="progress">Is told each better way and each better bound.</param>
    /// <param name="cancel">Stops it: what was found till then is the answer.</param>
    public static CuttingSolution Solve(CuttingProblem problem, long effort = UsualEffort, IProgress<CuttingProgress>? progress = null, CancellationToken cancel = default)
    {
        var scaled = new ScaledProblem(problem);
        var first = new FirstCuts(scaled).Of(scaled.Demand, scaled.BarCount);
        long nodes = 0, missingBound = 0;
        if (first.MissingLength > 0)
        {
            // All of it may come out another way; what is looked for is the way with the least missing.
            var fewest = new Search(scaled, mayMiss: true, first, effort, progress, cancel);
            fewest.Run();
            (first, missingBound, nodes) = (fewest.Best, fewest.Bound, fewest.Nodes);
            if (first.MissingLength > 0) return scaled.Unscaled(problem, first, 0, missingBound, cancel.IsCancellationRequested, nodes);
        }
        // Where prices differ, choices of bars prove more than the tree does, so it is left sooner.
        var differ = scaled.BarCost.Where(c => c > 0).Distinct().Count() > 1;
        var cheapest = new Search(scaled, mayMiss: false, first, differ ? Math.Max(1, effort / 10) : effort, progress, cancel);
        cheapest.Run();
        var found = scaled.Unscaled(problem, cheapest.Best, cheapest.Bound, missingBound, cancel.IsCancellationRequested, nodes + cheapest.Nodes);
        return found.IsProven || !differ ? found : ByCounts(problem, found, effort, progress, cancel);
    }

    // Choices of how many bars of each kind that are looked at, and partly cut states for each of them.
    private const int MostChoices = 400, ChoiceEffort = 50;

    // Where prices differ: nothing is cheaper when nothing comes out with any choice of bars that costs less.
    private static CuttingSolution ByCounts(CuttingProblem problem, CuttingSolution found, long effort, IProgress<CuttingProgress>? progress, CancellationToken cancel)
    {
        while (BarCounts.Below(problem, found.Cost, found.Bound, MostChoices) is { } choices)
        {
            var (better, open) = ((CuttingSolution?)null, false);
            foreach (var counts in choices)
            {
                if (cancel.IsCancellationRequested || found.Nodes >= effort) return found;
                var few = BarCounts.With(problem, counts);
                var scaled = new ScaledProblem(few);
                var search = new Search(scaled, mayMiss: true, new FirstCuts(scaled).Of(scaled.Demand, scaled.BarCount), ChoiceEffort, null, cancel);
                search.Run();
                found = found with { Nodes = found.Nodes + search.Nodes };
                var solution = scaled.Unscaled(few, search.Best, 0, search.Bound, false, found.Nodes);
                if (solution.ComesOut)
                {
                    better = solution;
                    break;
                }
                open |= solution.MissingBound == 0;
            }
            if (better is not null) found = better with { Bound = found.Bound };
            else return open ? found : Told(found with { Bound = found.Cost }, progress);
            Told(found, progress);
        }
        return found;
    }

    private static CuttingSolution Told(CuttingSolution found, IProgress<CuttingProgress>? progress)
    {
        progress?.Report(new CuttingProgress(found.Cost, found.Bound));
        return found;
    }

    private sealed class Search
    {
        // Of one state so many fillings are listed; where there are more, nothing is proven by it.
        private const int MostFillings = 20_000;

        private readonly ScaledProblem _p;
        private readonly bool _mayMiss;
        private readonly IProgress<CuttingProgress>? _progress;
        private readonly CancellationToken _cancel;
        private readonly long _effort;
        private readonly PatternBound _bound;
        private readonly FirstCuts _first;
        private readonly Stack<FilledBar> _cut = new();

        public Search(ScaledProblem problem, bool mayMiss, FilledBars first, long effort, IProgress<CuttingProgress>? progress, CancellationToken cancel)
        {
            (_p, _mayMiss, Best, _effort, _progress, _cancel) = (problem, mayMiss, first, effort, progress, cancel);
            _bound = new PatternBound(problem, mayMiss, first.Cost + 1);
            _first = new FirstCuts(problem);
        }

        public FilledBars Best { get; private set; }

        public long Bound { get; private set; }

        public long Nodes { get; private set; }

        private long BestValue => ValueOf(Best);

        private long ValueOf(FilledBars bars) => _mayMiss ? bars.MissingLength : bars.Cost;

        public void Run()
        {
            if (BestValue > 0)
            {
                var root = _bound.Of(_p.Demand, _p.BarCount, long.MaxValue, _cancel);
                Bound = Math.Min(root.Bound, BestValue);
                _progress?.Report(new CuttingProgress(BestValue, Bound));
                if (Bound < BestValue) Dive(root);
                if (Bound < BestValue && Walk([.. _p.Demand], [.. _p.BarCount], 0) && !Spent) Bound = BestValue;
            }
            else Bound = BestValue;
        }

        private readonly Dictionary<string, long> _looked = new(StringComparer.Ordinal);

        private bool Spent => Nodes >= _effort || _cancel.IsCancellationRequested;

        // Cuts the whole parts of the relaxed problem, or its largest part where none is whole, and looks at the rest in the same way.
        private void Dive(BoundFound root)
        {
            int[] left = [.. _p.Demand], bars = [.. _p.BarCount];
            var found = root;
            var cut = new List<FilledBar>();
            long cost = 0;
            while (!Spent)
            {
                var before = cut.Count;
                foreach (var (pattern, share) in found.Chosen.OrderByDescending(c => c.Share))
                    Cut(pattern, (int)Math.Floor(share + 1e-6));
                if (cut.Count == before && found.Chosen.Count > 0) Cut(found.Chosen.MaxBy(c => c.Share).Pattern, 1);
                if (cut.Count == before) return;
                Take(cut, _first.Of(left, bars));
                if (BestValue <= Bound || left.All(n => n == 0)) return;
                Nodes++;
                found = _bound.Of(left, bars, BestValue - cost, _cancel);
                if (cost + found.Bound >= BestValue) return;
            }

            void Cut(Pattern pattern, int times)
            {
                times = Math.Min(times, bars[pattern.Bar]);
                foreach (var i in pattern.Held) times = Math.Min(times, left[i] / pattern.Counts[i]);
                if (times <= 0) return;
                foreach (var i in pattern.Held) left[i] -= times * pattern.Counts[i];
                bars[pattern.Bar] -= times;
                cost += times * _bound.CostOf(pattern.Bar);
                cut.Add(new FilledBar(pattern.Bar, pattern.Counts, times));
            }
        }

        // Everything that can still be done with what is left; false when not all of it was looked at.
        private bool Walk(int[] left, int[] bars, long spent)
        {
            if (Spent) return false;
            Nodes++;
            if (left.All(n => n == 0))
            {
                Take([], new FilledBars([], left, 0, 0));
                return true;
            }
            // The same is left by other ways to the same place: what was all looked at for no more need not be again.
            var state = string.Join(',', left) + "/" + string.Join(',', bars);
            if (_looked.TryGetValue(state, out var before) && before <= spent) return true;
            var found = _bound.Of(left, bars, BestValue - spent, _cancel);
            if (spent + found.Bound >= BestValue) return true;
            Take([], _first.Of(left, bars));
            if (spent + found.Bound >= BestValue) return true;
            var item = Array.FindIndex(left, n => n > 0);
            // A better way costs a whole unit less at least.
            var spare = (BestValue - 1 - spent) * _bound.Fractions - found.Scaled;
            var fillings = Fillings.With(_p, item, left, bars, found, b => _bound.CostOf(b) * _bound.Fractions, spare, MostFillings, out var whole);
            foreach (var (pattern, beyond) in fillings)
            {
                // Better ones may have been found meanwhile.
                if (beyond > (BestValue - 1 - spent) * _bound.Fractions - found.Scaled) break;
                foreach (var i in pattern.Held) left[i] -= pattern.Counts[i];
                bars[pattern.Bar]--;
                _cut.Push(new FilledBar(pattern.Bar, pattern.Counts, 1));
                whole &= Walk(left, bars, spent + _bound.CostOf(pattern.Bar));
                _cut.Pop();
                bars[pattern.Bar]++;
                foreach (var i in pattern.Held) left[i] += pattern.Counts[i];
                if (Bound >= BestValue) return true;
                if (Spent) return false;
            }
            if (!_mayMiss)
            {
                if (whole) _looked[state] = spent;
                return whole;
            }
            // Or no more of the item at all.
            var without = (long)left[item] * _p.Missing[item];
            if (spent + without >= BestValue) return whole;
            var kept = left[item];
            left[item] = 0;
            _missed.Push((item, kept));
            whole &= Walk(left, bars, spent + without);
            _missed.Pop();
            left[item] = kept;
            return whole;
        }

        private readonly Stack<(int Item, int Count)> _missed = new();

        // Keeps a way to cut when it is better: what is cut so far, and the rest as it was found.
        private void Take(List<FilledBar> cut, FilledBars rest)
        {
            if (!_mayMiss && rest.MissingLength > 0) return;
            var cost = rest.Cost + cut.Sum(f => f.Times * _p.BarCost[f.Bar]) + _cut.Sum(f => f.Times * _p.BarCost[f.Bar]);
            var missing = rest.MissingLength + _missed.Sum(m => m.Count * _p.Missing[m.Item]);
            if ((_mayMiss ? missing : cost) >= BestValue) return;
            int[] open = [.. rest.Left];
            foreach (var (item, count) in _missed) open[item] += count;
            Best = new FilledBars([.. _cut.Reverse(), .. cut, .. rest.Bars], open, cost, missing);
            _progress?.Report(new CuttingProgress(BestValue, Bound));
        }
    }
}
