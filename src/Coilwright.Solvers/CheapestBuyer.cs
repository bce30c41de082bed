using Coilwright.Core.Buying;
using Google.OrTools.Sat;

namespace Coilwright.Solvers;

/// <summary>The cheapest plan by a general solver, where going through the sets of suppliers leaves something open: orders too small to be sent, freight that falls away, many suppliers.</summary>
/// <remarks>
/// <para>A whole number of units for each price step of each offer, at most one step of an offer at once; an order is sent or not, and sent free or not. What every set of suppliers
/// costs at least (<see cref="SupplierSets"/>) is told to the solver where it is known, and the cheapest plan of those and of <see cref="WaysOfSending"/> as a hint.</para>
/// <para>OR-Tools' CP-SAT. It stops after so much work, not after so much time, so that the same list gives the same plan; <see cref="BuyingPlan.Bound"/> tells how near it is.</para>
/// </remarks>
/// <param name="effort">How much work, 1 or more, in the solver's own measure: each takes some five seconds of one core.</param>
public sealed class CheapestBuyer(int effort = 1) : IBuyer
{
    // One worker: several of them race, and then the outcome is no longer the same every time.
    private const int Workers = 1;

    // A second or two for some hundred items.
    private const int SweepsOfEffort = 3_000;

    // On a long list that is known to be so near to the cheapest the solver was seen to find nothing in its first round (benchmarks). It takes its five seconds where the maker asks for more.
    private const int Long = 500;
    private const double NearEnough = 0.005;

    /// <inheritdoc/>
    public BuyingPlan? Find(BuyingList list, IProgress<BuyingPlan>? progress = null, CancellationToken cancel = default)
    {
        if (!list.Missing.IsEmpty) return null;
        var least = SupplierSets.CanDo(list) ? SupplierSets.LeastBySet(list, cancel) : null;
        var first = SupplierSets.Search(list, least, progress, cancel, out var bound);
        if (first is { IsProven: true } || cancel.IsCancellationRequested) return first;
        first = WaysOfSending.Search(list, first, ref bound, effort * SweepsOfEffort, progress, cancel);
        if (first is { IsProven: true } || cancel.IsCancellationRequested) return first;
        if (effort == 1 && list.Offers.Length > Long && first?.GapToBound <= NearEnough) return first;
        return new Model(list, least, first).Solve(effort, bound, progress, cancel);
    }

    private sealed class Model
    {
        private readonly BuyingList _list;
        private readonly BuyingPlan? _first;
        private readonly CpModel _model = new();
        private readonly IntVar[] _units;

        public Model(BuyingList list, long[]? leastBySet, BuyingPlan? first)
        {
            (_list, _first) = (list, first);
            var hinted = new int[list.Offers.Length];
            foreach (var purchase in first?.Purchases ?? []) hinted[purchase.Offer] = purchase.Units;
            var goods = list.Suppliers.Select(_ => new List<LinearExpr>()).ToArray();
            var sends = list.Suppliers.Select(s => _model.NewBoolVar($"sends {s.Name}")).ToArray();
            _units = new IntVar[list.Offers.Length];
            for (var o = 0; o < _units.Length; o++) goods[list.SupplierOf[o]].Add(Buy(o, hinted[o], sends[list.SupplierOf[o]]));
            for (var w = 0; w < list.Wants.Length; w++)
                _model.Add(LinearExpr.Sum(list.OffersOf[w].Select(o => _units[o] * list.Offers[o].Holds)) >= list.Wants[w].Amount);
            var all = new List<LinearExpr>();
            for (var s = 0; s < sends.Length; s++)
            {
                var sum = LinearExpr.Sum(goods[s]);
                all.Add(sum);
                all.Add(Freight(s, sum, sends[s]));
                _model.AddHint(sends[s], first?.Orders.Any(order => order.Supplier == s) == true ? 1 : 0);
            }
            var total = LinearExpr.Sum(all);
            if (leastBySet is not null) AtLeastAsItsSet(total, sends, leastBySet);
            _model.Minimize(total);
        }

        public BuyingPlan? Solve(int effort, decimal bound, IProgress<BuyingPlan>? progress, CancellationToken cancel)
        {
            using var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:{Workers} max_deterministic_time:{effort} random_seed:1") };
            using var stop = cancel.Register(solver.StopSearch);
            var status = solver.Solve(_model, progress is null ? null : new Told(this, bound, progress));
            var held = status == CpSolverStatus.Infeasible ? bound : Math.Max(bound, Math.Ceiling((decimal)Math.Max(0, solver.BestObjectiveBound) - 0.5m) * BuyingList.Grain);
            var found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? BuyingPlan.Of(_list, [.. _units.Select(u => (int)solver.Value(u))], held) : null;
            if (found is null || _first?.Total <= found.Total) return _first is null ? null : _first with { Bound = Math.Min(_first.Total, Math.Max(_first.Bound, held)) };
            return found;
        }

        // The units of an offer, and what they cost.
        private LinearExpr Buy(int o, int hinted, BoolVar sends)
        {
            var offer = _list.Offers[o];
            var most = MostUnits(o);
            _units[o] = _model.NewIntVar(0, most, $"units of {o}");
            _model.AddHint(_units[o], hinted);
            _model.Add(_units[o] <= most * (LinearExpr)sends);
            if (offer.Prices.Length == 1) return _units[o] * BuyingList.Grains(offer.Prices[0].Price);
            var (steps, chosen, costs) = (new List<LinearExpr>(), new List<LinearExpr>(), new List<LinearExpr>());
            for (var p = 0; p < offer.Prices.Length && offer.Prices[p].From <= most; p++)
            {
                var upTo = p + 1 < offer.Prices.Length ? Math.Min(most, offer.Prices[p + 1].From - 1) : most;
                var (at, units) = (_model.NewBoolVar($"step {p} of {o}"), _model.NewIntVar(0, upTo, $"units of {o} at step {p}"));
                _model.Add(units <= upTo * (LinearExpr)at);
                _model.Add(units >= offer.Prices[p].From * (LinearExpr)at);
                var here = hinted >= offer.Prices[p].From && hinted <= upTo;
                _model.AddHint(at, here ? 1 : 0);
                _model.AddHint(units, here ? hinted : 0);
                steps.Add(units);
                chosen.Add(at);
                costs.Add(units * BuyingList.Grains(offer.Prices[p].Price));
            }
            _model.Add(LinearExpr.Sum(chosen) <= 1);
            _model.Add(LinearExpr.Sum(steps) == _units[o]);
            return LinearExpr.Sum(costs);
        }

        // As many as are wanted, or as make a later step's price; and as many more as fill an order up to a size that is asked for.
        private int MostUnits(int o)
        {
            var (offer, supplier) = (_list.Offers[o], _list.Suppliers[_list.SupplierOf[o]]);
            var wanted = _list.Wants.First(w => w.Item == offer.Item).Amount;
            var most = (long)(wanted - 1) / offer.Holds + 1;
            foreach (var step in offer.Prices) most = Math.Max(most, step.From);
            var toFill = Math.Max(supplier.LeastOrder, supplier.FreeFrom ?? 0);
            if (toFill > 0 && offer.Prices.Min(p => p.Price) is > 0 and var cheapest) most += (long)Math.Ceiling(toFill / cheapest);
            return (int)Math.Min(most, offer.Most ?? BuyingList.MostCount);
        }

        private LinearExpr Freight(int s, LinearExpr goods, BoolVar sends)
        {
            var supplier = _list.Suppliers[s];
            if (supplier.LeastOrder > 0) _model.Add(goods >= BuyingList.Grains(supplier.LeastOrder) * (LinearExpr)sends);
            if (supplier.FreeFrom is not { } from) return BuyingList.Grains(supplier.Freight) * (LinearExpr)sends;
            var free = _model.NewBoolVar($"{supplier.Name} sends free");
            _model.Add(goods >= BuyingList.Grains(from) * (LinearExpr)free);
            _model.AddImplication(free, sends);
            _model.AddHint(free, _first?.Orders.Any(order => order.Supplier == s && order.Freight == 0) == true ? 1 : 0);
            return BuyingList.Grains(supplier.Freight) * (sends - (LinearExpr)free);
        }

        // A set from which not everything can be had is forbidden by a sum that no plan reaches.
        private void AtLeastAsItsSet(LinearExpr total, BoolVar[] sends, long[] leastBySet)
        {
            var dearest = leastBySet.Where(l => l < SupplierSets.Never).Max();
            var set = _model.NewIntVar(0, leastBySet.Length - 1, "set");
            _model.Add(set == LinearExpr.Sum(sends.Select((s, i) => s * (1L << i))));
            _model.AddAllowedAssignments([set]).AddTuples(Tuples(leastBySet));
            var least = _model.NewIntVar(0, dearest, "least of the set");
            _model.AddElement(set, [.. leastBySet.Select(l => Math.Min(l, dearest))], least);
            _model.Add(total >= least);
        }

        private static long[,] Tuples(long[] leastBySet)
        {
            var sets = Enumerable.Range(0, leastBySet.Length).Where(s => leastBySet[s] < SupplierSets.Never).ToArray();
            var tuples = new long[sets.Length, 1];
            for (var i = 0; i < sets.Length; i++) tuples[i, 0] = sets[i];
            return tuples;
        }

        private sealed class Told(Model model, decimal bound, IProgress<BuyingPlan> progress) : CpSolverSolutionCallback
        {
            public override void OnSolutionCallback()
            {
                if (BuyingPlan.Of(model._list, [.. model._units.Select(u => (int)Value(u))], bound) is { } plan) progress.Report(plan);
            }
        }
    }
}
