using Coilwright.Core.Shopping;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A shopping plan as JSON, <c>coilwright.shop/1</c>: described in docs/shop.schema.json, and promised to outsiders.</summary>
internal static class ShopJson
{
    public const string Schema = "coilwright.shop/1";

    /// <summary>The page.</summary>
    /// <param name="shopped">What came of it.</param>
    /// <param name="language">The language.</param>
    /// <param name="file">Where what to buy was written; null when it was not.</param>
    public static byte[] Of(Shopped shopped, Language language, string? file)
    {
        using var json = new JsonPage(language);
        var (plan, list, sentences) = (shopped.Plan, shopped.Plan.List, new ShopSentences(shopped, language));
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("on", shopped.On is { } on ? QuoteSentences.Day(on) : null);
            using (json.Array("pieces"))
                foreach (var piece in list.Pieces)
                    using (json.Object())
                    {
                        json.Text("name", piece.Name);
                        json.Whole("count", piece.Count);
                    }
            json.Text("currency", list.Prices.Currency);
            Items(json, plan, sentences);
            Orders(json, shopped);
            using (json.Array("unpriced"))
                foreach (var item in list.Unpriced) json.Item(item.Id);
            using (json.Array("cannotBeHad"))
                foreach (var want in list.CannotBeHad)
                    using (json.Object())
                    {
                        json.Text("item", want.Item);
                        json.Whole("missing", want.Amount);
                    }
            json.YesOrNo("comesOut", shopped.ComesOut);
            json.Money("total", plan.Plan?.Total, WhyNotCodes.NoOrderCanBeSent);
            json.Money("leastTotal", plan.Plan?.Bound, WhyNotCodes.NoOrderCanBeSent);
            json.YesOrNo("proven", plan.Plan?.IsProven ?? false);
            json.Money("leftCost", plan.LeftCost);
            Wire(json, shopped);
            More(json, shopped);
            using (json.Array("says"))
                foreach (var sentence in sentences.Mind().Concat(sentences.NotBought()).Concat(sentences.Sum()).Concat(sentences.LeftInAll()).Concat(sentences.More())) json.Item(sentence);
            json.Text("file", file);
        }
        return json.ToBytes();
    }

    private static void Items(JsonPage json, ShoppingPlan plan, ShopSentences sentences)
    {
        using var array = json.Array("items");
        foreach (var line in plan.Lines)
        {
            using var scope = json.Object();
            json.Text("item", line.Item.Id);
            json.Text("name", sentences.NameOf(line.Item));
            json.Whole("use", line.Item.Use);
            json.Whole("spare", line.Item.Spare);
            json.Whole("home", line.Item.Home);
            json.Whole("missing", line.Item.Missing);
            json.Whole("buy", line.Bought);
            json.Money("cost", line.Cost, WhyNotCodes.PriceUnknown);
            json.Whole("left", line.Left);
            json.Money("leftCost", line.LeftCost, WhyNotCodes.PriceUnknown);
            using (json.Array("describedOtherwise"))
                foreach (var p in line.Item.DescribedOtherwise) json.Item(p);
        }
    }

    private static void Orders(JsonPage json, Shopped shopped)
    {
        using var array = json.Array("orders");
        if (shopped.Plan.Plan is not { } buying) return;
        var list = shopped.Plan.List.Buying;
        foreach (var order in buying.Orders)
        {
            using var scope = json.Object();
            json.Text("supplier", list.Suppliers[order.Supplier].Name);
            json.Money("goods", order.Goods);
            json.Money("freight", order.Freight);
            var days = list.Suppliers[order.Supplier].LeadDays;
            json.Whole("leadDays", days);
            json.Text("there", shopped.On is { } on && days is { } later ? QuoteSentences.Day(on.AddDays(later)) : null);
            using var lines = json.Array("lines");
            foreach (var purchase in buying.Purchases.Where(p => list.SupplierOf[p.Offer] == order.Supplier))
            {
                using var line = json.Object();
                var offer = list.Offers[purchase.Offer];
                json.Text("item", offer.Item);
                json.Text("number", offer.Number);
                json.Text("unit", offer.Unit);
                json.Whole("holds", offer.Holds);
                json.Whole("units", purchase.Units);
                json.Money("cost", purchase.Cost);
            }
        }
    }

    private static void Wire(JsonPage json, Shopped shopped)
    {
        using var array = json.Array("wire");
        if (shopped.Wire is not { } wire) return;
        foreach (var lot in wire.Coils.Where(c => !wire.Lots[c.Lot].IsOffcut).GroupBy(c => c.Lot).OrderBy(g => g.Key))
        {
            using var scope = json.Object();
            json.Text("name", wire.Lots[lot.Key].Name);
            json.Whole("buy", lot.Sum(c => c.Times));
            json.Money("cost", wire.Lots[lot.Key].Price * lot.Sum(c => c.Times), WhyNotCodes.PriceUnknown);
        }
    }

    private static void More(JsonPage json, Shopped shopped)
    {
        using (json.Array("moreOfLeftovers"))
            for (var p = 0; p < shopped.Plan.List.Pieces.Length; p++) json.Item(shopped.Plan.MoreOfLeftovers(p));
        using var array = json.Array("breakPoints");
        foreach (var point in shopped.Points)
        {
            using var scope = json.Object();
            json.Whole("piece", point.Piece);
            json.Whole("more", point.More);
            json.Money("extra", point.Extra);
            json.YesOrNo("proven", point.IsProven);
        }
    }
}
