namespace Coilwright.Core.Stock;

/// <summary>What all stock that was paid in one currency cost.</summary>
/// <param name="Currency">The currency.</param>
/// <param name="Average">By moving average.</param>
/// <param name="FirstIn">First in, first out.</param>
public sealed record StockTotal(string Currency, decimal Average, decimal FirstIn)
{
    /// <summary>The totals, one for each currency. Items whose cost is not known, either way, are not in them: <see cref="Unvalued"/>.</summary>
    public static IEnumerable<StockTotal> Of(IEnumerable<StockLine> lines) =>
        lines.Where(IsValued).Where(l => l.Value.Currency is not null).GroupBy(l => l.Value.Currency!, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new StockTotal(g.Key, g.Sum(l => l.Value.Average!.Value), g.Sum(l => l.Value.FirstIn!.Value)));

    /// <summary>How many items are not in the totals although some of them is there.</summary>
    public static int Unvalued(IEnumerable<StockLine> lines) => lines.Count(l => l.Balance.OnHand.Thousandths > 0 && !IsValued(l));

    private static bool IsValued(StockLine line) => line.Value is { Average: not null, FirstIn: not null };
}
