using System.Collections.Immutable;
using Coilwright.Core.Numerics;

namespace Coilwright.Core.Arrangement;

/// <summary>Starts from many orders and changes each a little again and again, keeping what is no worse: good orders soon, without proof.</summary>
/// <remarks>A change swaps two things, moves one, turns a stretch round, or lets one of a family stand in for another. An order that breaks rules is worse
/// than any that does not, by how many it breaks. Each start depends on the seed and its own number alone, so the outcome is the same on any
/// number of threads.</remarks>
/// <param name="starts">How many starts.</param>
/// <param name="tries">How many changes each tries.</param>
/// <param name="seed">Seed of the draws.</param>
public sealed class OrderDescent(int starts = 8, int tries = 3000, ulong seed = 1) : IOrderFinder
{
    /// <inheritdoc/>
    public FoundOrder? Find(OrderProblem problem, IProgress<FoundOrder>? progress = null, CancellationToken cancel = default)
    {
        var bound = new OrderLaying(problem).Least;
        var found = new (int[]? Order, double Loss)[starts];
        long looked = 0;
        var gate = new Lock();
        var best = double.PositiveInfinity;
        SharedWork.Run(starts, (from, to) =>
        {
            for (var start = from; start < to; start++)
            {
                // Start 0 is the order as it is strung: it is judged even when the search is stopped at once.
                if (start > 0 && cancel.IsCancellationRequested) break;
                var climb = new Climb(problem, new SeededDraws(seed, (ulong)start), anywhere: start > 0 || problem.Start.IsEmpty, cancel);
                climb.Run(tries);
                found[start] = (climb.Best, climb.BestLoss);
                Interlocked.Add(ref looked, climb.Looked);
                if (progress is null || climb.Best is null) continue;
                lock (gate)
                {
                    if (climb.BestLoss >= best - FoundCounts.Rounding) continue;
                    best = climb.BestLoss;
                    progress.Report(new FoundOrder([.. climb.Best], best, Math.Min(bound, best), looked));
                }
            }
        }, CancellationToken.None);
        // Of equally good ones the earliest start's, so that the outcome does not hang on rounding between threads.
        (int[]? Order, double Loss) least = (null, double.PositiveInfinity);
        foreach (var one in found)
            if (one.Order is not null && one.Loss < least.Loss - FoundCounts.Rounding) least = one;
        return least.Order is null ? null : new FoundOrder([.. least.Order], least.Loss, Math.Min(bound, least.Loss), looked);
    }

    private sealed class Climb
    {
        private readonly OrderProblem _problem;
        private readonly OrderLaying _laying;
        private readonly SeededDraws _draws;
        private readonly CancellationToken _cancel;
        private readonly int[] _order, _free;
        private readonly int[][] _standIns;
        private ulong _drawn;

        public Climb(OrderProblem problem, SeededDraws draws, bool anywhere, CancellationToken cancel)
        {
            (_problem, _draws, _cancel) = (problem, draws, cancel);
            _laying = new OrderLaying(problem);
            _order = [.. problem.Start.IsEmpty ? Anyhow(problem) : problem.Start];
            var places = problem.IsMirrored ? _order.Length / 2 : _order.Length;
            _free = [.. Enumerable.Range(0, places).Where(p => problem.At.IsEmpty || problem.At[p] < 0)];
            _standIns = [.. problem.Things.Select(thing => Enumerable.Range(0, problem.Things.Length).Where(t => problem.Things[t].Family == thing.Family).ToArray())];
            if (!anywhere) return;
            for (var i = _free.Length - 1; i > 0; i--) Swap(i, Below(i + 1));
            for (var i = 0; i < _free.Length; i++) Set(i, StandIn(i));
        }

        public int[]? Best { get; private set; }

        public double BestLoss { get; private set; } = double.PositiveInfinity;

        public long Looked { get; private set; }

        public void Run(int tries)
        {
            var cost = Judge();
            if (_free.Length == 0) return;
            var before = new int[_free.Length];
            for (var go = 0; go < tries && !_cancel.IsCancellationRequested; go++)
            {
                for (var i = 0; i < before.Length; i++) before[i] = Get(i);
                if (!Change()) continue;
                var now = Judge();
                if (now.CompareTo(cost) <= 0) cost = now;
                else
                    for (var i = 0; i < before.Length; i++) Set(i, before[i]);
            }
        }

        // Each family's first thing, family by family.
        private static ImmutableArray<int> Anyhow(OrderProblem problem)
        {
            var order = Enumerable.Repeat(-1, problem.Places).ToArray();
            int[] left = [.. problem.Demand];
            for (var p = 0; p < order.Length; p++)
                if (!problem.At.IsEmpty && problem.At[p] >= 0) left[problem.Things[order[p] = problem.At[p]].Family]--;
            for (int p = 0, family = 0; p < order.Length; p++)
            {
                if (order[p] >= 0) continue;
                while (left[family] == 0) family++;
                left[family]--;
                order[p] = Enumerable.Range(0, problem.Things.Length).First(t => problem.Things[t].Family == family);
            }
            return [.. order];
        }

        private bool Change()
        {
            var kinds = _standIns.Any(of => of.Length > 1) ? 4 : 3;
            var (a, b) = (Below(_free.Length), Below(_free.Length));
            if (a > b) (a, b) = (b, a);
            switch (Below(kinds))
            {
                case 0:
                    if (Get(a) == Get(b)) return false;
                    Swap(a, b);
                    return true;
                case 1:
                    if (a == b) return false;
                    // The last of the stretch comes before it, or the first after it.
                    if (Below(2) == 0)
                        for (var i = b; i > a; i--) Swap(i, i - 1);
                    else
                        for (var i = a; i < b; i++) Swap(i, i + 1);
                    return true;
                case 2:
                    if (b - a < 2) return false;
                    for (var (i, j) = (a, b); i < j; i++, j--) Swap(i, j);
                    return true;
                default:
                    var other = StandIn(a);
                    if (other == Get(a)) return false;
                    Set(a, other);
                    return true;
            }
        }

        // Rules broken first, then the loss. What is laid already is laid anew from the first place that differs.
        private (int Broken, double Loss) Judge()
        {
            var same = _laying.Order.CommonPrefixLength(_order);
            while (_laying.Count > same) _laying.TakeOff();
            while (_laying.Count < _order.Length)
            {
                Looked++;
                _laying.Lay(_order[_laying.Count]);
            }
            var broken = _laying.Broken + (_laying.IsWhole() ? 0 : 1);
            if (broken == 0 && _laying.Loss < BestLoss - FoundCounts.Rounding) (Best, BestLoss) = ([.. _order], _laying.Loss);
            return (broken, _laying.Loss);
        }

        private int StandIn(int i) => _standIns[Get(i)] is var of && of.Length > 1 ? of[Below(of.Length)] : Get(i);

        private int Below(int below) => _draws.Below(_drawn++, below);

        private int Get(int i) => _order[_free[i]];

        private void Set(int i, int thing)
        {
            _order[_free[i]] = thing;
            if (_problem.IsMirrored) _order[^(_free[i] + 1)] = thing;
        }

        private void Swap(int i, int j)
        {
            var one = Get(i);
            Set(i, Get(j));
            Set(j, one);
        }
    }
}
