using Coilwright.Core.Buying;

namespace Coilwright.Core.Stock;

/// <summary>What the stock of one item cost, reckoned in the two usual ways. At cost, not what it would fetch.</summary>
/// <remarks>
/// <para><see cref="Average"/>: every delivery goes into one pot, and what is taken leaves it at what a unit there costs on average at that time; what comes back or is found comes in
/// at that same average.</para>
/// <para><see cref="FirstIn"/>: the first that came in is taken to have gone out first, so what is on hand is the last that came in, whichever drawer was opened. What is found beyond
/// all that ever came in costs nothing.</para>
/// <para>In ten-thousandths of the currency, parts of a lot rounded to the nearest, half to even. Null when a delivery whose cost is not known counts in it. Formulas: docs/theory/stock.md.</para>
/// </remarks>
/// <param name="Average">By moving average.</param>
/// <param name="FirstIn">First in, first out.</param>
/// <param name="Currency">The currency of both; null when nothing was ever paid.</param>
public sealed record StockValue(decimal? Average, decimal? FirstIn, string? Currency)
{
    /// <summary>The value of an item's stock from its entries, the earliest first.</summary>
    public static StockValue Of(IReadOnlyList<StockEntry> entries) =>
        new(AverageOf(entries), FirstInOf(entries), entries.Select(e => (e.Movement as Movement.Receive)?.Lot.Currency).FirstOrDefault(c => c is not null));

    private static decimal? AverageOf(IReadOnlyList<StockEntry> entries)
    {
        // The pot, and what a unit cost when there was last something in it.
        long there = 0, cost = 0, lastThere = 0, lastCost = 0;
        var isKnown = true;
        foreach (var entry in entries)
        {
            var by = entry.Changes.Sum(c => c.By.Thousandths);
            if (by == 0) continue;
            if (entry.Movement is Movement.Receive { Lot: var lot })
            {
                // An empty pot forgets what was not known.
                isKnown = lot.Cost is not null && (isKnown || there == 0);
                cost += BuyingList.Grains(lot.Cost ?? 0);
            }
            else if (there > 0) cost += Part(cost, by, there);
            else if (lastThere > 0) cost += Part(lastCost, by, lastThere);
            there += by;
            if (there > 0) (lastThere, lastCost) = (there, cost);
        }
        return there == 0 ? 0 : isKnown ? cost * BuyingList.Grain : null;
    }

    private static decimal? FirstInOf(IReadOnlyList<StockEntry> entries)
    {
        var left = entries.Sum(e => e.Changes.Sum(c => c.By.Thousandths));
        long cost = 0;
        foreach (var lot in entries.Reverse().Select(e => e.Movement).OfType<Movement.Receive>().Select(r => r.Lot))
        {
            if (left == 0) break;
            var part = Math.Min(left, lot.Quantity.Thousandths);
            if (lot.Cost is not { } whole) return null;
            cost += Part(BuyingList.Grains(whole), part, lot.Quantity.Thousandths);
            left -= part;
        }
        return cost * BuyingList.Grain;
    }

    /// <summary>The part of a cost that falls on a part of what it is for, in whole ten-thousandths.</summary>
    private static long Part(long cost, long part, long whole) => (long)decimal.Round((decimal)cost * part / whole, MidpointRounding.ToEven);
}
