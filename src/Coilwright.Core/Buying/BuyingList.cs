using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Buying;

/// <summary>What is to be bought, and every way to buy it.</summary>
/// <remarks>A list is sound: each step costs something that can be counted in ten-thousandths, prices go by rising counts, every offer's supplier is known. That everything can be had is not
/// promised: see <see cref="Missing"/>.</remarks>
public sealed record BuyingList
{
    /// <summary>Most that any count may be: units, beads.</summary>
    public const int MostCount = 10_000_000;

    /// <summary>Money is counted in ten-thousandths of the currency, so that sums are exact.</summary>
    public const decimal Grain = 0.0001m;

    /// <summary>An amount in ten-thousandths.</summary>
    public static long Grains(decimal money) => (long)(money / Grain);

    /// <summary>Most that any price or order may be.</summary>
    public const decimal MostMoney = 10_000_000m;

    private BuyingList(ImmutableArray<Want> wants, ImmutableArray<Offer> offers, ImmutableArray<Supplier> suppliers)
    {
        (Wants, Offers, Suppliers) = (wants, offers, suppliers);
        var supplier = suppliers.Select((s, i) => (s.Name, i)).ToDictionary(s => s.Name, s => s.i, StringComparer.Ordinal);
        SupplierOf = [.. offers.Select(o => supplier[o.Supplier])];
        var of = offers.Select((o, i) => (o.Item, i)).ToLookup(o => o.Item, o => o.i, StringComparer.Ordinal);
        OffersOf = [.. wants.Select(w => of[w.Item].ToImmutableArray())];
    }

    /// <summary>What is wanted, each item once.</summary>
    public ImmutableArray<Want> Wants { get; }

    /// <summary>Every way to buy.</summary>
    public ImmutableArray<Offer> Offers { get; }

    /// <summary>Who sells.</summary>
    public ImmutableArray<Supplier> Suppliers { get; }

    /// <summary>For each offer the index of its supplier.</summary>
    public ImmutableArray<int> SupplierOf { get; }

    /// <summary>For each want the offers that meet it, by index.</summary>
    public ImmutableArray<ImmutableArray<int>> OffersOf { get; }

    /// <summary>Wants that all offers together cannot meet, and by how many.</summary>
    public ImmutableArray<Want> Missing
    {
        get
        {
            var missing = ImmutableArray.CreateBuilder<Want>();
            for (var w = 0; w < Wants.Length; w++)
            {
                long most = 0;
                foreach (var o in OffersOf[w]) most += (long)(Offers[o].Most ?? MostCount) * Offers[o].Holds;
                if (most < Wants[w].Amount) missing.Add(Wants[w] with { Amount = (int)(Wants[w].Amount - most) });
            }
            return missing.ToImmutable();
        }
    }

    /// <summary>Checks and makes a list.</summary>
    /// <param name="wants">What is wanted; the same item may stand there several times, and counts together.</param>
    /// <param name="offers">Every way to buy; those of items that nobody wants are left out.</param>
    /// <param name="suppliers">What suppliers ask; one that offers and is not listed asks for nothing beside the prices.</param>
    /// <param name="list">The list.</param>
    /// <param name="faults">What is wrong; empty when the list is made.</param>
    public static bool TryMake(IEnumerable<Want> wants, IEnumerable<Offer> offers, IEnumerable<Supplier> suppliers, out BuyingList? list, out ImmutableArray<Fault> faults)
    {
        var found = ImmutableArray.CreateBuilder<Fault>();
        ImmutableArray<Want> wanted = [.. wants];
        ImmutableArray<Offer> offered = [.. offers];
        ImmutableArray<Supplier> sellers = [.. suppliers];
        for (var w = 0; w < wanted.Length; w++) Count(wanted[w].Amount, $"wants[{w}].amount");
        for (var o = 0; o < offered.Length; o++) CheckOffer(offered[o], $"offers[{o}]");
        for (var s = 0; s < sellers.Length; s++) CheckSupplier(sellers, s);
        faults = found.ToImmutable();
        list = null;
        if (!faults.IsEmpty) return false;
        wanted = [.. wanted.GroupBy(w => w.Item, StringComparer.Ordinal).Select(g => new Want(g.Key, (int)Math.Min(MostCount, g.Sum(w => (long)w.Amount))))];
        var asked = wanted.Select(w => w.Item).ToHashSet(StringComparer.Ordinal);
        offered = [.. offered.Where(o => asked.Contains(o.Item))];
        var known = sellers.Select(s => s.Name).ToHashSet(StringComparer.Ordinal);
        sellers = [.. sellers, .. offered.Select(o => o.Supplier).Distinct(StringComparer.Ordinal).Where(s => !known.Contains(s)).Select(s => new Supplier(s))];
        var selling = offered.Select(o => o.Supplier).ToHashSet(StringComparer.Ordinal);
        list = new BuyingList(wanted, offered, [.. sellers.Where(s => selling.Contains(s.Name))]);
        return true;

        void CheckOffer(Offer offer, string at)
        {
            Count(offer.Holds, at + ".holds");
            if (offer.Most is { } most && most is < 0 or > MostCount) Count(most, at + ".most");
            if (offer.Prices.IsEmpty) found.Add(Fault.Of(FaultCodes.BuyingNoPrice, at + ".prices", ""));
            for (var p = 0; p < offer.Prices.Length; p++)
            {
                var (step, before) = (offer.Prices[p], p == 0 ? 0 : offer.Prices[p - 1].From);
                Money(step.Price, $"{at}.prices[{p}].price");
                if (p == 0 && step.From != 1) found.Add(Fault.Of(FaultCodes.BuyingFirstStep, $"{at}.prices[0].from", Text(step.From)));
                else if (step.From <= before) found.Add(Fault.Of(FaultCodes.BuyingStepsOverlap, $"{at}.prices[{p}].from", Text(step.From), ("before", Text(before))));
                else Count(step.From, $"{at}.prices[{p}].from");
            }
        }

        void CheckSupplier(ImmutableArray<Supplier> all, int s)
        {
            var at = $"suppliers[{s}]";
            Money(all[s].LeastOrder, at + ".leastOrder");
            Money(all[s].Freight, at + ".freight");
            if (all[s].FreeFrom is { } from) Money(from, at + ".freeFrom");
            if (all[s].LeadDays is { } days && days is < 0 or > Supplier.MostLeadDays)
                found.Add(Fault.Of(days < 0 ? FaultCodes.ValueAtLeast : FaultCodes.ValueAtMost, at + ".leadDays", Text(days), (days < 0 ? "min" : "max", Text(days < 0 ? 0 : Supplier.MostLeadDays)), ("unit", "")));
            if (all.Take(s).Any(other => other.Name == all[s].Name)) found.Add(Fault.Of(FaultCodes.BuyingSupplierTwice, at + ".name", all[s].Name));
        }

        void Count(int count, string field)
        {
            if (count < 1) found.Add(Fault.Of(FaultCodes.ValueAtLeast, field, Text(count), ("min", "1"), ("unit", "")));
            if (count > MostCount) found.Add(Fault.Of(FaultCodes.ValueAtMost, field, Text(count), ("max", Text(MostCount)), ("unit", "")));
        }

        void Money(decimal money, string field)
        {
            if (money < 0) found.Add(Fault.Of(FaultCodes.ValueAtLeast, field, Text(money), ("min", "0"), ("unit", "")));
            else if (money > MostMoney) found.Add(Fault.Of(FaultCodes.ValueAtMost, field, Text(money), ("max", Text(MostMoney)), ("unit", "")));
            else if (money % Grain != 0) found.Add(Fault.Of(FaultCodes.BuyingTooFine, field, Text(money)));
        }
    }

    private static string Text(IFormattable value) => value.ToString(null, CultureInfo.InvariantCulture);
}
