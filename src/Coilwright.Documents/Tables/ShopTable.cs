using Coilwright.Core.Shopping;
using Coilwright.Wording;

namespace Coilwright.Documents.Tables;

/// <summary>A shopping list as a table: a line for each thing to buy, by supplier, and for what has no price.</summary>
public static class ShopTable
{
    // The names of the columns are promised: other programs read them.
    private static readonly string[] Columns = ["supplier", "number", "item", "name", "unit", "holds", "units", "beads", "cost", "currency"];

    /// <summary>Comma-separated values, with English heads in every language: <see cref="TableFile.Csv"/>.</summary>
    public static byte[] Csv(ShoppingPlan plan, Language language) => TableFile.Csv(Columns, Rows(plan, language));

    /// <summary>An Office Open XML workbook of one sheet, its heads in words.</summary>
    public static byte[] Xlsx(ShoppingPlan plan, Language language)
    {
        var words = language.Shop;
        string[] heads = [words.SupplierColumn, words.NumberColumn, words.ItemColumn, words.BeadColumn, words.UnitColumn, words.HoldsColumn, words.UnitsColumn, words.BeadsColumn, words.CostColumn, words.CurrencyColumn];
        return TableFile.Xlsx(heads, Rows(plan, language), words.Title);
    }

    private static IEnumerable<IReadOnlyList<object?>> Rows(ShoppingPlan plan, Language language)
    {
        var list = plan.List;
        foreach (var purchase in plan.Plan?.Purchases.OrderBy(p => list.Buying.SupplierOf[p.Offer]).ThenBy(p => p.Offer) ?? Enumerable.Empty<Core.Buying.Purchase>())
        {
            var offer = list.Buying.Offers[purchase.Offer];
            yield return [offer.Supplier, offer.Number, offer.Item, NameOf(list.Items.First(i => i.Id == offer.Item), language), offer.Unit, offer.Holds, purchase.Units, purchase.Units * offer.Holds, purchase.Cost, list.Prices.Currency];
        }
        foreach (var item in list.Unpriced)
        {
            var pack = item.Bead?.Description.Pack;
            var line = plan.Lines.First(l => l.Item.Id == item.Id);
            yield return ["", null, item.Id, NameOf(item, language), pack?.Unit, pack?.Beads, pack is null ? null : line.Bought / pack.Beads, line.Bought, null, null];
        }
    }

    private static string NameOf(ShoppingItem item, Language language) => item.Bead?.Name ?? ShopSentences.OfEnd(item.Id, language);
}
