using System.Collections.Immutable;

namespace Coilwright.Core.Buying;

/// <summary>So many units of an offer.</summary>
/// <param name="Offer">The offer, by its index in the list.</param>
/// <param name="Units">How many, 1 or more.</param>
/// <param name="Cost">What they cost, without freight.</param>
public sealed record Purchase(int Offer, int Units, decimal Cost);

/// <summary>One supplier's part of a plan.</summary>
/// <param name="Supplier">The supplier, by index.</param>
/// <param name="Goods">What the goods cost.</param>
/// <param name="Freight">What sending them costs.</param>
public sealed record Order(int Supplier, decimal Goods, decimal Freight);

/// <summary>What to buy, from whom, and what it costs in all.</summary>
public sealed record BuyingPlan
{
    private BuyingPlan(ImmutableArray<Purchase> purchases, ImmutableArray<Order> orders) => (Purchases, Orders) = (purchases, orders);

    /// <summary>What to buy, in the order of the offers.</summary>
    public ImmutableArray<Purchase> Purchases { get; }

    /// <summary>What goes to each supplier of whom something is bought.</summary>
    public ImmutableArray<Order> Orders { get; }

    /// <summary>What it costs, freight and all.</summary>
    public decimal Total => Orders.Sum(o => o.Goods + o.Freight);

    /// <summary>No plan that meets every want costs less. At most <see cref="Total"/>.</summary>
    public decimal Bound { get; init; }

    /// <summary>Whether nothing cheaper exists.</summary>
    public bool IsProven => Bound >= Total;

    /// <summary>How far the cheapest may lie below, as a share of the total; 0 when proven.</summary>
    public double GapToBound => Total == 0 ? 0 : (double)((Total - Bound) / Total);

    /// <summary>Reckons a plan from units, or says why it is none.</summary>
    /// <param name="list">The list.</param>
    /// <param name="units">For each offer how many units.</param>
    /// <param name="bound">No plan costs less than this, for all that is known.</param>
    /// <returns>The plan; null when a want is not met, a supplier has not so many, or an order is too small to be sent.</returns>
    public static BuyingPlan? Of(BuyingList list, ReadOnlySpan<int> units, decimal bound = 0)
    {
        for (var w = 0; w < list.Wants.Length; w++)
        {
            long got = 0;
            foreach (var o in list.OffersOf[w]) got += (long)units[o] * list.Offers[o].Holds;
            if (got < list.Wants[w].Amount) return null;
        }
        var purchases = ImmutableArray.CreateBuilder<Purchase>();
        var goods = new decimal[list.Suppliers.Length];
        var sends = new bool[list.Suppliers.Length];
        for (var o = 0; o < units.Length; o++)
        {
            if (units[o] < 0 || units[o] > (list.Offers[o].Most ?? BuyingList.MostCount)) return null;
            if (units[o] == 0) continue;
            var cost = list.Offers[o].Cost(units[o]);
            purchases.Add(new Purchase(o, units[o], cost));
            goods[list.SupplierOf[o]] += cost;
            sends[list.SupplierOf[o]] = true;
        }
        var orders = ImmutableArray.CreateBuilder<Order>();
        for (var s = 0; s < goods.Length; s++)
        {
            if (!sends[s]) continue;
            if (goods[s] < list.Suppliers[s].LeastOrder) return null;
            orders.Add(new Order(s, goods[s], list.Suppliers[s].FreightFor(goods[s])));
        }
        var plan = new BuyingPlan(purchases.ToImmutable(), orders.ToImmutable());
        return plan with { Bound = Math.Min(bound, plan.Total) };
    }
}

/// <summary>A way to look for the cheapest plan.</summary>
public interface IBuyer
{
    /// <summary>Looks for it.</summary>
    /// <param name="list">What is wanted.</param>
    /// <param name="progress">Is told of each better one.</param>
    /// <param name="cancel">Stops the search: the best so far is given back.</param>
    /// <returns>The cheapest found; null when none was found: something is missing, or every order would be too small to be sent.</returns>
    BuyingPlan? Find(BuyingList list, IProgress<BuyingPlan>? progress = null, CancellationToken cancel = default);
}
