using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>Goes through every order, place by place from the beginning, and leaves out only branches in which no allowed order, or none better, can be.</summary>
/// <remarks>
/// <para>Depth first. A branch is left when a rule is broken, when what is left of some kinds has no room any more under a rule, or when what is laid has
/// lost, with the least that the rest must, no less than the best so far. Proves the best; the time grows with the orders there are.</para>
/// <para>Orders of a closed piece that are the same when turned are met once: only those are gone on with that could be the least of their turns by
/// number (H. Fredricksen, J. Maiorana, Necklaces of beads in k colors and k-ary de Bruijn sequences, Discrete Mathematics 23, 1978, from
/// memory).</para>
/// </remarks>
/// <param name="first">A way to look that is asked first: what it finds lets more branches be left. Null for none.</param>
public sealed class EveryOrder(IOrderFinder? first = null) : IOrderFinder
{
    /// <inheritdoc/>
    public FoundOrder? Find(OrderProblem problem, IProgress<FoundOrder>? progress = null, CancellationToken cancel = default)
    {
        var walk = new Walk(problem, cancel);
        FoundOrder? best = null;
        if (Kept(problem, problem.Start.AsSpan()) is { } strung) Take(problem.Start, strung);
        if (first?.Find(problem, progress, cancel) is { } soon) Take(soon.Things, soon.Loss);
        walk.Go((order, loss) =>
        {
            Take([.. order], loss);
            return true;
        });
        return best is null ? null : best with { Bound = walk.WasStopped ? Math.Min(walk.Bound, best.Loss) : best.Loss, Looked = walk.Looked };

        void Take(ImmutableArray<int> order, double loss)
        {
            if (best is not null && loss >= best.Loss - FoundCounts.Rounding) return;
            best = new FoundOrder(order, loss, Math.Min(walk.Bound, loss), walk.Looked);
            walk.MustBeat = problem.Loss is null ? double.NegativeInfinity : loss;
            progress?.Report(best);
        }
    }

    /// <summary>Every allowed order, by number, whatever it loses.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="most">Stops after so many.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImmutableArray<ImmutableArray<int>> All(OrderProblem problem, int most = int.MaxValue, CancellationToken cancel = default)
    {
        var all = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        var walk = new Walk(problem, cancel);
        walk.Go((order, _) =>
        {
            all.Add([.. order]);
            return all.Count < most;
        });
        cancel.ThrowIfCancellationRequested();
        return all.ToImmutable();
    }

    /// <summary>The loss of an order; null when it is not allowed.</summary>
    internal static double? Kept(OrderProblem problem, ReadOnlySpan<int> order)
    {
        if (order.IsEmpty) return null;
        var laying = new OrderLaying(problem);
        for (var place = 0; place < order.Length; place++)
        {
            if (laying.Left(problem.Things[order[place]].Family) == 0) return null;
            if (!problem.MayStand(problem.Things[order[place]].Family, place)) return null;
            if (problem.IsMirrored && order[place] != order[^(place + 1)]) return null;
            laying.Lay(order[place]);
        }
        return laying.Broken == 0 && laying.IsWhole() ? laying.Loss : null;
    }

    private delegate bool Met(ReadOnlySpan<int> order, double loss);

    private sealed class Walk(OrderProblem problem, CancellationToken cancel)
    {
        private readonly OrderLaying _laying = new(problem);
        private readonly int _places = problem.Places;
        private Met _met = null!;
        private bool _enough;

        public long Looked { get; private set; }

        public bool WasStopped { get; private set; }

        /// <summary>Only what loses less than this is gone on with; minus infinity: after the first there is nothing to beat.</summary>
        public double MustBeat { get; set; } = double.PositiveInfinity;

        public double Bound { get; } = new OrderLaying(problem).Least;

        public void Go(Met met)
        {
            _met = met;
            WasStopped = cancel.IsCancellationRequested;
            if (!WasStopped && _laying.Broken == 0 && _laying.HasRoom()) Go(1);
        }

        // Period: the laid order repeats itself after so many places, as far as it goes.
        private void Go(int period)
        {
            var place = _laying.Count;
            if (place == _places)
            {
                if (_laying.IsWhole() && IsFirstOfItsLike(period)) _enough |= !_met(_laying.Order, _laying.Loss);
                return;
            }
            if ((++Looked & 0x3FF) == 0 && cancel.IsCancellationRequested) WasStopped = true;
            var only = problem.IsMirrored && place >= (_places + 1) / 2 ? _laying.Order[_places - 1 - place] : -1;
            var least = only;
            if (only < 0) least = problem.Same != SameWhen.Equal && place > 0 ? _laying.Order[place - period] : 0;
            for (var thing = least; thing < (only < 0 ? problem.Things.Length : only + 1) && !WasStopped && !_enough; thing++)
            {
                var family = problem.Things[thing].Family;
                if (_laying.Left(family) == 0 || !problem.MayStand(family, place)) continue;
                _laying.Lay(thing);
                if (_laying.Broken == 0 && _laying.Least < MustBeat - FoundCounts.Rounding && _laying.HasRoom())
                    Go(place == 0 || thing == _laying.Order[place - period] ? period : place + 1);
                _laying.TakeOff();
            }
        }

        private bool IsFirstOfItsLike(int period)
        {
            if (problem.Same == SameWhen.Equal) return true;
            if (_places % period != 0) return false;
            if (problem.Same == SameWhen.Turned) return true;
            var order = _laying.Order;
            for (var from = 0; from < _places; from++)
                for (var i = 0; i < _places; i++)
                {
                    var back = order[(from + _places - i) % _places];
                    if (back > order[i]) break;
                    if (back < order[i]) return false;
                }
            return true;
        }
    }
}
