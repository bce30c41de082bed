using System.Collections.Immutable;
using Coilwright.Core.Numerics;

namespace Coilwright.Core.Arrangement;

/// <summary>Starts from many orders and changes each a little again and again, keeping what is no worse, and shakes it when nothing gets better: good orders
/// soon, without proof.</summary>
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
        // So many changes for each place without one that is better, then it is shaken.
        private const int ShakenAfter = 6;

        private readonly OrderProblem _problem;
        private readonly OrderLaying _laying;
        private readonly SeededDraws _draws;
        private readonly CancellationToken _cancel;
        private readonly int[] _order, _free, _varied;
        private readonly int[][] _standIns;
        private ulong _drawn;

        public Climb(OrderProblem problem, SeededDraws draws, bool anywhere, CancellationToken cancel)
        {
            (_problem, _draws, _cancel) = (problem, draws, cancel);
            _laying = new OrderLaying(problem);
            _order = [.. problem.Start.IsEmpty ? Anyhow(problem) : problem.Start];
            var places = problem.IsMirrored ? _order.Length / 2 : _order.Length;
            _free = [.. Enumerable.Range(0, places).Where(p => !problem.IsHeld(p))];
            _standIns = [.. problem.Things.Select(thing => Enumerable.Range(0, problem.Things.Length).Where(t => problem.Things[t].Family == thing.Family).ToArray())];
            _varied = _standIns.Any(of => of.Length > 1) ? [.. Enumerable.Range(0, problem.IsMirrored ? (_order.Length + 1) / 2 : _order.Length)] : [];
            if (!anywhere) return;
            for (var i = _free.Length - 1; i > 0; i--) Swap(i, Below(i + 1));
            foreach (var place in _varied) Put(place, StandIn(place));
        }

        public int[]? Best { get; private set; }

        public double BestLoss { get; private set; } = double.PositiveInfinity;

        public long Looked { get; private set; }

        public void Run(int tries)
        {
            var cost = Judge();
            if (_free.Length + _varied.Length == 0) return;
            var before = new int[_order.Length];
            var since = 0;
            for (var go = 0; go < tries && !(BestLoss <= _problem.GoodEnough) && !_cancel.IsCancellationRequested; go++)
            {
                if (since > ShakenAfter * _order.Length)
                {
                    Best?.CopyTo(_order, 0);
                    for (var times = 0; times < 3; times++) Change();
                    (cost, since) = (Judge(), 0);
                }
                _order.CopyTo(before, 0);
                if (!Change()) continue;
                var now = Judge();
                since = now.CompareTo(cost) < 0 ? 0 : since + 1;
                if (now.CompareTo(cost) <= 0) cost = now;
                else before.CopyTo(_order, 0);
            }
        }

        // Each family's first thing, family by family.
        private static ImmutableArray<int> Anyhow(OrderProblem problem)
        {
            var order = Enumerable.Repeat(-1, problem.Places).ToArray();
            int[] left = [.. problem.Demand];
            for (var p = 0; p < order.Length; p++)
                if (problem.IsHeld(p)) left[problem.FamilyAt[p]]--;
            for (int p = 0, family = 0; p < order.Length; p++)
            {
                while (!problem.IsHeld(p) && left[family] == 0) family++;
                var its = problem.IsHeld(p) ? problem.FamilyAt[p] : family;
                if (!problem.IsHeld(p)) left[family]--;
                order[p] = Enumerable.Range(0, problem.Things.Length).First(t => problem.Things[t].Family == its);
            }
            return [.. order];
        }

        private bool Change()
        {
            var way = _free.Length < 2 ? 3 : Below(_varied.Length > 0 ? 4 : 3);
            if (way == 3)
            {
                if (_varied.Length == 0) return false;
                var place = _varied[Below(_varied.Length)];
                var other = StandIn(place);
                if (other == _order[place]) return false;
                Put(place, other);
                return true;
            }
            var (a, b) = (Below(_free.Length), Below(_free.Length));
            if (a > b) (a, b) = (b, a);
            switch (way)
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
                default:
                    if (b - a < 2) return false;
                    for (var (i, j) = (a, b); i < j; i++, j--) Swap(i, j);
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

        private int StandIn(int place) => _standIns[_order[place]] is var of && of.Length > 1 ? of[Below(of.Length)] : _order[place];

        private int Below(int below) => _draws.Below(_drawn++, below);

        private int Get(int i) => _order[_free[i]];

        private void Put(int place, int thing)
        {
            _order[place] = thing;
            if (_problem.IsMirrored) _order[^(place + 1)] = thing;
        }

        private void Swap(int i, int j)
        {
            var one = Get(i);
            Put(_free[i], Get(j));
            Put(_free[j], one);
        }
    }
}
