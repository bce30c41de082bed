namespace Coilwright.Core.Stock;

/// <summary>An item with what is there of it: a line in the list of stock.</summary>
/// <param name="Item">The item as it was last described.</param>
/// <param name="Revision">Which description that is, from 1.</param>
/// <param name="Balance">What is there.</param>
/// <param name="Value">What it cost.</param>
public sealed record StockLine(StockItem Item, long Revision, StockBalance Balance, StockValue Value)
{
    /// <summary>What is missing to the least that she wants to have, of what is free; nothing when enough is there or nobody said.</summary>
    public Quantity Short => Item.Par is { } par && Balance.Free < par ? par - Balance.Free : default;

    /// <summary>Whether it is time to buy.</summary>
    public bool IsLow => Short.Thousandths > 0;

    /// <summary>The drawers that some of it lies in.</summary>
    public IEnumerable<string> Drawers => Balance.Lots.Where(l => l.OnHand.Thousandths > 0).Select(l => l.What.Drawer).OfType<string>().Distinct(StringComparer.Ordinal);

    /// <summary>Who sold what is there.</summary>
    public IEnumerable<string> Suppliers => Balance.Lots.Where(l => l.OnHand.Thousandths > 0).Select(l => l.What.Supplier).OfType<string>().Distinct(StringComparer.Ordinal);

    /// <summary>The list in the order that asks for her attention: what is low first, then by name.</summary>
    public static IEnumerable<StockLine> LowFirst(IEnumerable<StockLine> lines) =>
        lines.OrderByDescending(l => l.IsLow).ThenBy(l => l.Item.Name, StringComparer.OrdinalIgnoreCase).ThenBy(l => l.Item.Key, StringComparer.Ordinal);

    /// <summary>Whether every word of a text is somewhere in its key, names, suppliers, numbers or drawers; upper and lower case are the same.</summary>
    public bool Matches(string text)
    {
        string?[] said = [Item.Key, Item.Name, .. Item.Aliases, .. Balance.Lots.SelectMany(l => new[] { l.What.Supplier, l.What.Number, l.What.Drawer })];
        return text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).All(word => said.Any(s => s?.Contains(word, StringComparison.OrdinalIgnoreCase) == true));
    }
}
