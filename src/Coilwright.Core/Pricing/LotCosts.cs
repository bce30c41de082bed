using System.Collections.Immutable;
using Coilwright.Core.Stock;

namespace Coilwright.Core.Pricing;

/// <summary>How it is reckoned what beads in stock cost, see <see cref="StockValue"/>.</summary>
public enum LotWay
{
    /// <summary>What one costs on average of all that is there.</summary>
    Average,

    /// <summary>What is there is the last that came in.</summary>
    FirstIn,
}

/// <summary>What is in stock of a bead, and what it cost.</summary>
/// <param name="There">How many whole ones are there, 1 or more.</param>
/// <param name="Value">What all of them cost, 0 or more.</param>
/// <param name="Currency">The currency; null when nothing was ever paid.</param>
public sealed record LotCost(int There, decimal Value, string? Currency);

/// <summary>What beads in stock cost: at cost of the lots that are there, not what they would cost today.</summary>
/// <param name="Way">How it is reckoned.</param>
/// <param name="ByBead">For each bead of which some is there and whose cost is known.</param>
public sealed record LotCosts(LotWay Way, ImmutableSortedDictionary<string, LotCost> ByBead)
{
    /// <summary>What the stock says. Only what is counted one by one: a gram of a bead is no bead.</summary>
    public static LotCosts Of(IEnumerable<StockLine> lines, LotWay way) => new(way, lines
        .Where(l => l.Item.Unit == StockUnit.Each && l.Balance.OnHand.Whole > 0)
        .Select(l => (l.Item.Key, Value: way == LotWay.Average ? l.Value.Average : l.Value.FirstIn, l))
        .Where(l => l.Value is not null)
        .ToImmutableSortedDictionary(l => l.Key, l => new LotCost(l.l.Balance.OnHand.Whole, l.Value!.Value, l.l.Value.Currency), StringComparer.Ordinal));
}
