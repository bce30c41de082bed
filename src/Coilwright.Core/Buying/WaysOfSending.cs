using System.Collections.Immutable;

namespace Coilwright.Core.Buying;

/// <summary>Goes through how each supplier's order is sent: not at all, for its freight, or free; each with the size the order must then have.</summary>
/// <remarks>
/// <para>Branch and bound over the suppliers. With the ways decided, the sizes of orders are the only thing in which items meet; they are priced (Lagrange: a supplier whose order is too small gets a discount,
/// which its size pays back), and for any discounts at all the items, each bought at its least discounted cost, give a bound. A supplier not yet decided asks for neither freight nor size.</para>
/// <para>Discounts are whole 4096ths and costs whole ten-thousandths, so nothing about the bound is rounded. Where the discounts settle, items are left that could go either way: the bound stays below the cheapest
/// plan by a part of what one of them costs, so a proof is rare where a size binds, and the gap small. Plans come from what the items choose on the way.</para>
/// </remarks>
public sealed class WaysOfSending
{
    private const int Parts = 4096;
    private const int MostSuppliers = 16, MostSteps = 2_000, MostMissing = 200_000, TriesOfNode = 16;

    // Of one item, before its cost is taken from the cheapest bead alone, which is a bound too.
    private const int MostTried = 100_000;

    // Beyond it sums of discounted costs might not fit.
    private const long MostGrains = 1_000_000_000_000;

    private readonly BuyingList _list;
    private readonly Item[] _items;
    private readonly long[] _least, _freight, _free;
    private readonly IProgress<BuyingPlan>? _progress;
    private BuyingPlan? _best;
    private long _sweeps;

    private enum Way
    {
        Open,
        Not,
        Paid,
        Free,
    }

    private sealed record Node(Way[] Ways, int[] Discounts, long Bound, bool[] Orders);

    private WaysOfSending(BuyingList list, Item[] items, BuyingPlan? first, IProgress<BuyingPlan>? progress)
    {
        (_list, _items, _best, _progress) = (list, items, first, progress);
        _least = [.. list.Suppliers.Select(s => BuyingList.Grains(s.LeastOrder))];
        _freight = [.. list.Suppliers.Select(s => BuyingList.Grains(s.Freight))];
        _free = [.. list.Suppliers.Select(s => s.FreeFrom is { } from ? Math.Max(BuyingList.Grains(from), BuyingList.Grains(s.LeastOrder)) : -1)];
    }

    /// <summary>Looks for a cheaper plan and a better bound.</summary>
    /// <param name="list">What is wanted; nothing is missing.</param>
    /// <param name="first">The cheapest plan so far, with what is known of better ones; null when there is none.</param>
    /// <param name="bound">No plan costs less, for all that is known; what is found to be known.</param>
    /// <param name="sweeps">How often all items are looked at, at most.</param>
    /// <param name="progress">Is told of each cheaper plan.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <returns>The cheapest plan known, with its bound; null when there is none.</returns>
    public static BuyingPlan? Search(BuyingList list, BuyingPlan? first, ref decimal bound, long sweeps, IProgress<BuyingPlan>? progress = null, CancellationToken cancel = default)
    {
        if (ItemsOf(list) is { } items) bound = Math.Max(bound, new WaysOfSending(list, items, first, progress).Run(sweeps, cancel, out first) * BuyingList.Grain);
        return first is null ? null : first with { Bound = Math.Min(first.Total, Math.Max(first.Bound, bound)) };
    }

    private static Item[]? ItemsOf(BuyingList list)
    {
        if (list.Suppliers.Length > MostSuppliers) return null;
        var items = new Item[list.Wants.Length];
        long dearest = 0;
        for (var w = 0; w < items.Length; w++)
        {
            if (list.Wants[w].Amount > MostMissing) return null;
            items[w] = new Item(list, w);
            dearest += items[w].Sellers.Sum(s => s.Costs[^1]);
            if (items[w].Sellers.Sum(s => s.Costs.Length) > MostSteps || dearest > MostGrains) return null;
        }
        return items;
    }

    private long Total => _best is null ? long.MaxValue : BuyingList.Grains(_best.Total);

    private long Run(long sweeps, CancellationToken cancel, out BuyingPlan? best)
    {
        var open = new PriorityQueue<Node, (long, int)>();
        var (made, lowestLeaf) = (0, long.MaxValue);
        var root = new Node(new Way[_list.Suppliers.Length], new int[_list.Suppliers.Length], 0, []);
        if (Bounded(root, cancel) is { } first) open.Enqueue(first, (first.Bound, made++));
        long bound = 0;
        while (open.TryPeek(out var node, out _))
        {
            bound = Math.Min(lowestLeaf, node.Bound);
            if (bound >= Total || _sweeps >= sweeps || cancel.IsCancellationRequested) break;
            open.Dequeue();
            var s = Undecided(node);
            if (s < 0)
            {
                // No order that is not decided would be placed: this is as far as sizes can be priced.
                lowestLeaf = Math.Min(lowestLeaf, node.Bound);
                continue;
            }
            foreach (var way in new[] { Way.Not, Way.Paid, Way.Free })
            {
                if (way == Way.Free && _free[s] < 0) continue;
                var ways = (Way[])node.Ways.Clone();
                ways[s] = way;
                if (Bounded(node with { Ways = ways }, cancel) is { } child && child.Bound < Total) open.Enqueue(child, (child.Bound, made++));
            }
        }
        if (open.Count == 0) bound = lowestLeaf;
        best = _best;
        return Math.Min(bound, Total == long.MaxValue ? bound == long.MaxValue ? 0 : bound : Total);
    }

    // The order that would be placed without its freight having been counted, the dearest freight first.
    private int Undecided(Node node)
    {
        var most = -1;
        for (var s = 0; s < node.Ways.Length; s++)
            if (node.Ways[s] == Way.Open && node.Orders[s] && _freight[s] + _least[s] > 0 && (most < 0 || _freight[s] + _least[s] > _freight[most] + _least[most])) most = s;
        return most;
    }

    private long SizeOf(Way way, int s) => way switch { Way.Paid => _least[s], Way.Free => _free[s], _ => 0 };

    // Null when something cannot be had so.
    private Node? Bounded(Node node, CancellationToken cancel)
    {
        var suppliers = node.Ways.Length;
        long freight = 0;
        for (var s = 0; s < suppliers; s++)
            if (node.Ways[s] == Way.Paid) freight += _freight[s];
        var discounts = new double[suppliers];
        var sized = false;
        for (var s = 0; s < suppliers; s++)
        {
            if (SizeOf(node.Ways[s], s) == 0) continue;
            discounts[s] = node.Discounts[s];
            sized = true;
        }
        Node? best = null;
        var length = 1.0;
        for (var t = 0; t < (sized ? TriesOfNode : 1); t++)
        {
            int[] whole = [.. discounts.Select(d => (int)Math.Round(Math.Clamp(d, 0, Parts)))];
            if (Sweep(node.Ways, whole) is not var (least, goods, orders)) return null;
            var sum = least + (Int128)freight * Parts;
            for (var s = 0; s < suppliers; s++) sum += (Int128)whole[s] * SizeOf(node.Ways[s], s);
            // A plan costs whole ten-thousandths, so the bound may be rounded up.
            var bound = Math.Max(node.Bound, (long)((sum + Parts - 1) / Parts));
            if (best is null || bound > best.Bound) best = node with { Discounts = whole, Bound = bound, Orders = orders };
            else length /= 2;
            if (best.Bound >= Total || cancel.IsCancellationRequested) break;
            // Polyak's step towards a hair above the best plan known, so that it is reached, or a twentieth above the bound where there is none.
            double slope = 0;
            for (var s = 0; s < suppliers; s++)
            {
                var short_ = SizeOf(node.Ways[s], s) is > 0 and var size ? size - goods[s] : 0;
                if (short_ < 0 && whole[s] == 0) short_ = 0;
                slope += (double)short_ * short_;
            }
            if (slope == 0) break;
            var step = length * ((Total == long.MaxValue ? 1.05 * best.Bound : 1.001 * Total + 1) - bound) / slope;
            for (var s = 0; s < suppliers; s++)
                if (SizeOf(node.Ways[s], s) is > 0 and var size) discounts[s] = Math.Clamp(whole[s] + step * (size - goods[s]) * Parts, 0, Parts);
        }
        return best;
    }

    // Every item at its least discounted cost: the sum in discounted grains, what each supplier's goods come to, and who has an order at all. Null when something cannot be had.
    private (Int128 Least, long[] Goods, bool[] Orders)? Sweep(Way[] ways, int[] discounts)
    {
        _sweeps++;
        var weights = new long[ways.Length];
        for (var s = 0; s < weights.Length; s++) weights[s] = ways[s] == Way.Not ? -1 : Parts - discounts[s];
        Int128 least = 0;
        var (goods, orders) = (new long[ways.Length], new bool[ways.Length]);
        var isWhole = true;
        foreach (var item in _items)
        {
            if (!item.Choose(weights)) return null;
            least += item.Least;
            if (!item.HasChosen)
            {
                // Nobody knows from whom: anyone may have an order.
                isWhole = false;
                foreach (var seller in item.Sellers) orders[seller.Supplier] |= weights[seller.Supplier] >= 0;
                continue;
            }
            for (var k = 0; k < item.Sellers.Length; k++)
            {
                if (item.Chosen[k] < 0) continue;
                goods[item.Sellers[k].Supplier] += item.Sellers[k].Costs[item.Chosen[k]];
                orders[item.Sellers[k].Supplier] = true;
            }
        }
        if (isWhole) Try(goods, orders);
        return (least, goods, orders);
    }

    // Makes a plan of what the items chose. An order that is a little too small is filled up with more of one thing.
    private void Try(long[] goods, bool[] orders)
    {
        long paid = 0;
        var fill = new long[goods.Length];
        for (var s = 0; s < goods.Length; s++)
        {
            if (!orders[s]) continue;
            var free = _free[s] - goods[s];
            if (goods[s] < _least[s]) fill[s] = _least[s] - goods[s];
            if (_free[s] >= 0 && free > 0 && free < _freight[s] + fill[s]) fill[s] = Math.Max(fill[s], free);
            paid += goods[s] + fill[s] + (_free[s] >= 0 && goods[s] + fill[s] >= _free[s] ? 0 : _freight[s]);
        }
        if (paid >= Total) return;
        var units = new int[_list.Offers.Length];
        foreach (var item in _items) item.Take(units);
        for (var s = 0; s < fill.Length; s++)
            if (fill[s] > 0) FillUp(s, fill[s], units);
        if (BuyingPlan.Of(_list, units) is not { } plan || plan.Total >= _best?.Total) return;
        _best = plan;
        _progress?.Report(plan);
    }

    private void FillUp(int supplier, long missing, int[] units)
    {
        var (best, more, cost) = (-1, 0, long.MaxValue);
        for (var o = 0; o < units.Length; o++)
        {
            if (_list.SupplierOf[o] != supplier) continue;
            var offer = _list.Offers[o];
            var now = BuyingList.Grains(offer.Cost(units[o]));
            for (var u = 1; u <= 100 && units[o] + u <= (offer.Most ?? BuyingList.MostCount); u++)
            {
                var extra = BuyingList.Grains(offer.Cost(units[o] + u)) - now;
                if (extra < missing) continue;
                if (extra < cost) (best, more, cost) = (o, u, extra);
                break;
            }
        }
        if (best >= 0) units[best] += more;
    }

    /// <summary>What one supplier asks for so many of an item and more: counts and costs that rise together, from nothing to all.</summary>
    private sealed record Seller(int Supplier, ImmutableArray<int> Offers, int[] Counts, long[] Costs)
    {
        /// <summary>The least that a bead costs in any of these counts.</summary>
        public double LeastEach { get; } = Counts.Zip(Costs).Min(c => c.First == 0 ? double.MaxValue : (double)c.Second / c.First);
    }

    private sealed class Item
    {
        private readonly Covering _cover;
        private readonly double[] _leastEach;
        private readonly int[] _trying;
        private int _tried;

        public Item(BuyingList list, int want)
        {
            _cover = new Covering(list, want);
            Sellers = [.. list.OffersOf[want].GroupBy(o => list.SupplierOf[o]).OrderBy(g => g.Key).Select(g => Steps(g.Key, [.. g], g.Aggregate(_cover.Start(), (least, offer) => _cover.With(least, offer))))];
            _leastEach = new double[Sellers.Length + 1];
            _trying = new int[Sellers.Length];
            Chosen = new int[Sellers.Length];
        }

        public Seller[] Sellers { get; }

        /// <summary>For each seller the step that was chosen, -1 for none.</summary>
        public int[] Chosen { get; }

        /// <summary>Its cost in discounted grains, or a bound on it.</summary>
        public long Least { get; private set; }

        /// <summary>Whether that cost was met.</summary>
        public bool HasChosen { get; private set; }

        private static Seller Steps(int supplier, ImmutableArray<int> offers, long[] least)
        {
            var (counts, costs) = (new List<int>(), new List<long>());
            for (var q = 1; q < least.Length && least[q] < SupplierSets.Never; q++)
                if (q + 1 == least.Length || least[q + 1] > least[q])
                {
                    counts.Add(q);
                    costs.Add(least[q]);
                }
            // Nobody sells nothing: a seller without a single unit has one step that is never wide enough.
            if (counts.Count == 0) (counts, costs) = ([0], [0]);
            return new Seller(supplier, offers, [.. counts], [.. costs]);
        }

        /// <summary>Chooses the least discounted cost. False when the item cannot be had from those who are asked.</summary>
        public bool Choose(long[] weights)
        {
            _leastEach[Sellers.Length] = double.MaxValue;
            for (var k = Sellers.Length - 1; k >= 0; k--)
            {
                var weight = weights[Sellers[k].Supplier];
                _leastEach[k] = weight < 0 || Sellers[k].Counts[0] == 0 ? _leastEach[k + 1] : Math.Min(_leastEach[k + 1], Sellers[k].LeastEach * weight);
            }
            (Least, _tried) = (long.MaxValue, 0);
            Array.Fill(Chosen, -1);
            Array.Fill(_trying, -1);
            Go(0, _cover.Missing, 0, weights);
            HasChosen = _tried < MostTried && Least < long.MaxValue;
            if (_tried >= MostTried) Least = Math.Min(Least, (long)(_leastEach[0] * _cover.Missing * (1 - 1e-12)));
            return Least < long.MaxValue;
        }

        private void Go(int k, int missing, long cost, long[] weights)
        {
            if (missing <= 0)
            {
                if (cost >= Least) return;
                Least = cost;
                Array.Copy(_trying, Chosen, Chosen.Length);
                return;
            }
            // Doubles: a hair below, so that nothing is passed over that is as cheap.
            if (k == Sellers.Length || _tried++ >= MostTried || cost + missing * _leastEach[k] * (1 - 1e-12) >= Least) return;
            var seller = Sellers[k];
            var weight = weights[seller.Supplier];
            if (weight >= 0 && seller.Counts[0] > 0)
            {
                var enough = Array.BinarySearch(seller.Counts, missing);
                if (enough < 0) enough = ~enough;
                for (var i = Math.Min(enough, seller.Counts.Length - 1); i >= 0; i--)
                {
                    _trying[k] = i;
                    Go(k + 1, missing - seller.Counts[i], cost + seller.Costs[i] * weight, weights);
                }
                _trying[k] = -1;
            }
            Go(k + 1, missing, cost, weights);
        }

        /// <summary>Puts down the units that were chosen.</summary>
        public void Take(int[] units)
        {
            for (var k = 0; k < Sellers.Length; k++)
                if (Chosen[k] >= 0) _cover.Take(Sellers[k].Offers, Sellers[k].Counts[Chosen[k]], units);
        }
    }
}
