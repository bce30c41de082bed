using System.Numerics;

namespace Coilwright.Core.Buying;

/// <summary>Goes through every set of suppliers: what each item costs at least from them alone, and their freight.</summary>
/// <remarks>
/// <para>What an item costs from a set of suppliers is a covering problem, solved to the end by a dynamic programme over the beads still missing (R. Bellman, Dynamic Programming, 1957,
/// from memory). Items meet in nothing but the freight, so the cheapest set is the cheapest plan where no order must be of a certain size. Where it must, or is sent free from a certain size on,
/// the least over the sets, such freight not counted, is a bound that holds, and the plans of the sets are candidates.</para>
/// <para>For a dozen suppliers and counts that beads come in; what is beyond is left to others: see <see cref="CanDo"/>.</para>
/// </remarks>
public sealed class SupplierSets : IBuyer
{
    private const int MostSuppliers = 12;

    // Steps of all dynamic programmes together: a second or two. And what one of them keeps: a few MB for each offer.
    private const double MostSteps = 2e9;
    private const int MostMissing = 200_000;

    /// <summary>What cannot be had costs this, in ten-thousandths: more than any sum on a list.</summary>
    public const long Never = long.MaxValue / 4;

    /// <summary>Whether a list is small enough to be gone through.</summary>
    public static bool CanDo(BuyingList list)
    {
        if (list.Suppliers.Length > MostSuppliers) return false;
        double steps = 0;
        for (var w = 0; w < list.Wants.Length; w++)
        {
            var item = new ItemOfSets(list, w);
            if (item.Missing > MostMissing) return false;
            steps += item.Steps;
        }
        return steps <= MostSteps;
    }

    /// <inheritdoc/>
    public BuyingPlan? Find(BuyingList list, IProgress<BuyingPlan>? progress = null, CancellationToken cancel = default) => Search(list, LeastBySet(list, cancel), progress, cancel, out _);

    /// <summary>Looks for the cheapest plan, and for a bound where no plan is found.</summary>
    /// <param name="list">What is wanted; nothing is missing, and <see cref="CanDo"/> says yes.</param>
    /// <param name="least">What each set costs at least: <see cref="LeastBySet"/>; null when that was stopped.</param>
    /// <param name="progress">Is told of each better one.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <param name="bound">No plan costs less.</param>
    public static BuyingPlan? Search(BuyingList list, long[]? least, IProgress<BuyingPlan>? progress, CancellationToken cancel, out decimal bound)
    {
        bound = 0;
        if (least is null) return null;
        var sets = Enumerable.Range(0, least.Length).Where(s => least[s] < Never).OrderBy(s => least[s]).ThenBy(s => BitOperations.PopCount((uint)s)).ToArray();
        if (sets.Length == 0) return null;
        bound = least[sets[0]] * BuyingList.Grain;
        BuyingPlan? best = null;
        foreach (var set in sets)
        {
            if (cancel.IsCancellationRequested || best is not null && least[set] * BuyingList.Grain >= best.Total) break;
            var units = new int[list.Offers.Length];
            for (var w = 0; w < list.Wants.Length; w++) new ItemOfSets(list, w).Take(set, units);
            if (BuyingPlan.Of(list, units, bound) is not { } plan || plan.Total >= best?.Total) continue;
            best = plan;
            progress?.Report(plan);
        }
        return best;
    }

    /// <summary>For every set of suppliers, each a bit, the least that a plan costs which buys from all of them and nobody else; in ten-thousandths; <see cref="Never"/>
    /// where something cannot be had. Null when it was stopped.</summary>
    public static long[]? LeastBySet(BuyingList list, CancellationToken cancel)
    {
        var least = new long[1 << list.Suppliers.Length];
        for (var set = 0; set < least.Length; set++)
            for (var s = 0; s < list.Suppliers.Length; s++)
                if ((set >> s & 1) == 1) least[set] += LeastSending(list.Suppliers[s]);
        for (var w = 0; w < list.Wants.Length; w++)
        {
            if (cancel.IsCancellationRequested) return null;
            new ItemOfSets(list, w).AddTo(least);
        }
        return least;
    }

    // Who sends free from some size on may send free.
    private static long LeastSending(Supplier supplier) => supplier.FreeFrom is null ? BuyingList.Grains(supplier.Freight) : 0;

    // One item: what it costs at least from a set of suppliers.
    private sealed class ItemOfSets
    {
        private readonly Covering _cover;
        private readonly (int Supplier, int[] Offers)[] _sellers;

        public ItemOfSets(BuyingList list, int want)
        {
            _cover = new Covering(list, want);
            _sellers = [.. list.OffersOf[want].GroupBy(o => list.SupplierOf[o]).OrderBy(g => g.Key).Select(g => (g.Key, g.ToArray()))];
        }

        public int Missing => _cover.Missing;

        public double Steps => _sellers.Select((s, i) => Math.Pow(2, i) * s.Offers.Sum(o => (double)Missing * _cover.MostUnits(o))).Sum();

        public void AddTo(long[] leastBySet)
        {
            var of = new long[1 << _sellers.Length];
            Go(0, 0, _cover.Start());
            for (var set = 0; set < leastBySet.Length; set++)
            {
                var mine = 0;
                for (var s = 0; s < _sellers.Length; s++)
                    if ((set >> _sellers[s].Supplier & 1) == 1) mine |= 1 << s;
                leastBySet[set] = of[mine] >= Never ? Never : Math.Min(Never, leastBySet[set] + of[mine]);
            }

            void Go(int seller, int set, long[] least)
            {
                if (seller == _sellers.Length)
                {
                    of[set] = least[^1];
                    return;
                }
                Go(seller + 1, set, least);
                foreach (var offer in _sellers[seller].Offers) least = _cover.With(least, offer);
                Go(seller + 1, set | 1 << seller, least);
            }
        }

        public void Take(int set, int[] units) => _cover.Take([.. _sellers.Where(s => (set >> s.Supplier & 1) == 1).SelectMany(s => s.Offers)], Missing, units);
    }
}
