using System.Collections.Immutable;
using Coilwright.Core.Buying;

namespace Coilwright.Core.Shopping;

/// <summary>Some units of one offer that are bought for an item.</summary>
/// <param name="Offer">The offer.</param>
/// <param name="Supplier">Who sells it.</param>
/// <param name="Units">How many units.</param>
/// <param name="Cost">What they cost, without freight.</param>
public sealed record UnitsFrom(Offer Offer, Supplier Supplier, int Units, decimal Cost);

/// <summary>Why it is not told when an item is there.</summary>
public enum WhyNoDay
{
    /// <summary>Nobody is named who sells it.</summary>
    NobodySells,

    /// <summary>Of one who sells it nobody told how long it takes.</summary>
    DaysNotTold,

    /// <summary>All who sell it have too little, or no order is large enough to be sent.</summary>
    CannotBeHad,
}

/// <summary>One item: where it comes from, and after how many days it is there.</summary>
/// <param name="Line">The item after the shopping.</param>
/// <param name="From">What is bought of it from whom.</param>
/// <param name="Days">Days from ordering until all of it is there, 0 when it is at home; null when that is not known.</param>
/// <param name="Why">Why it is not known; null when it is.</param>
public sealed record Arrival(ShoppingLine Line, ImmutableArray<UnitsFrom> From, int? Days, WhyNoDay? Why);

/// <summary>When everything that is needed is there, if it is ordered in one go. Nothing is guessed: one supplier without its days leaves the whole without a day.</summary>
/// <param name="Lines">Every item, in the order of the list.</param>
public sealed record Arrivals(ImmutableArray<Arrival> Lines)
{
    /// <summary>Whether nothing must be bought.</summary>
    public bool AllAtHome => Lines.All(l => l.Line.Item.Missing == 0);

    /// <summary>Days from ordering until everything is there; null when that is not known.</summary>
    public int? Days => Lines.Any(l => l.Days is null) ? null : Lines.Select(l => l.Days!.Value).DefaultIfEmpty(0).Max();

    /// <summary>Suppliers of something that is bought, in the order of the items, each once.</summary>
    public ImmutableArray<Supplier> Suppliers => [.. Lines.SelectMany(l => l.From).Select(f => f.Supplier).DistinctBy(s => s.Name, StringComparer.Ordinal)];

    /// <summary>Looks when what a plan buys is there.</summary>
    public static Arrivals Of(ShoppingPlan plan)
    {
        var (list, cannot) = (plan.List, plan.List.CannotBeHad.Select(w => w.Item).ToHashSet(StringComparer.Ordinal));
        return new Arrivals([.. plan.Lines.Select(line =>
        {
            if (line.Item.Missing == 0) return new Arrival(line, [], 0, null);
            ImmutableArray<UnitsFrom> from = [.. (plan.Plan?.Purchases ?? []).Where(p => list.Buying.Offers[p.Offer].Item == line.Item.Id)
                .Select(p => new UnitsFrom(list.Buying.Offers[p.Offer], list.Buying.Suppliers[list.Buying.SupplierOf[p.Offer]], p.Units, p.Cost))];
            WhyNoDay? why = list.Unpriced.Contains(line.Item) || from.Any(f => f.Supplier.Name == PriceList.Unnamed) ? WhyNoDay.NobodySells
                : cannot.Contains(line.Item.Id) || from.IsEmpty ? WhyNoDay.CannotBeHad
                : from.Any(f => f.Supplier.LeadDays is null) ? WhyNoDay.DaysNotTold : null;
            return new Arrival(line, from, why is null ? from.Max(f => f.Supplier.LeadDays) : null, why);
        })]);
    }
}
