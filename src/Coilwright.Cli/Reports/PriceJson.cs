using Coilwright.Core.Pricing;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What a piece costs and what to ask for it as JSON, <c>coilwright.price/1</c>: described in docs/price.schema.json, and promised to outsiders.</summary>
/// <remarks>Amounts to four decimals, a half away from nought; they are reckoned with all their digits.</remarks>
internal static class PriceJson
{
    public const string Schema = "coilwright.price/1";

    /// <summary>The page.</summary>
    public static byte[] Of(PricePlan plan, Language language)
    {
        using var json = new JsonPage(language);
        var sentences = new PriceSentences(plan, language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("piece", plan.List.Pieces[0].Name);
            json.Whole("count", plan.List.Pieces[0].Count);
            json.Text("currency", plan.Currency);
            using (json.Array("products"))
                foreach (var product in plan.Products)
                    using (json.Object())
                    {
                        json.Text("sells", Words.Of(product.Sold));
                        json.Money("minutes", Four(product.Minutes));
                        using (json.Array("gaps"))
                            foreach (var gap in product.Gaps) json.Item(Words.Of(gap));
                        Line(json, "cost", product.Cost);
                    }
            using (json.Array("prices"))
                foreach (var price in plan.Prices)
                    using (json.Object())
                        Price(json, price);
            if (plan.At is { } at) Outcome(json, "at", at); else json.Null("at", null);
            json.YesOrNo("nothingIsLost", plan.NothingIsLost);
            using (json.Array("says"))
                foreach (var sentence in sentences.Mind().Concat(sentences.Rules()).Concat(sentences.Notes())) json.Item(sentence);
        }
        return json.ToBytes();
    }

    /// <summary>A line of costs with all its parts.</summary>
    internal static void Line(JsonPage json, string? field, CostLine line)
    {
        using var scope = json.Object(field);
        json.Text("figure", line.Figure.Length > 0 ? line.Figure : null);
        json.Text("name", line.Name.Length > 0 ? line.Name : null);
        json.Money("amount", Four(line.Amount), line.How is ByTheHour ? WhyNotCodes.NoWage : WhyNotCodes.PriceUnknown);
        using (json.Object("how")) How(json, line.How);
        using var parts = json.Array("parts");
        foreach (var part in line.Parts) Line(json, null, part);
    }

    private static void How(JsonPage json, CostHow how)
    {
        switch (how)
        {
            case SumOfParts: json.Text("kind", "sum"); break;
            case PartOfPacks part:
                json.Text("kind", "partOfPacks");
                json.Whole("count", part.Count);
                json.Money("price", Four(part.Price));
                json.Whole("holds", part.Holds);
                json.Text("unit", part.Unit);
                json.Text("supplier", part.Supplier);
                break;
            case PartOfStock part:
                json.Text("kind", "partOfStock");
                json.Whole("count", part.Count);
                json.Money("value", Four(part.Value));
                json.Whole("there", part.There);
                json.Text("way", Words.Of(part.Way));
                break;
            case WithoutPrice without:
                json.Text("kind", "withoutPrice");
                json.Whole("count", without.Count);
                break;
            case InHundred hundred:
                json.Text("kind", "percent");
                json.Money("percent", Four(hundred.Percent));
                json.Money("of", Four(hundred.Of));
                break;
            case LengthOfPack length:
                json.Text("kind", "lengthOfPack");
                json.Money("price", Four(length.Price));
                json.Whole("cutMm", length.CutMm);
                json.Money("packMm", Four(length.PackMm));
                break;
            case SharedBy shared:
                json.Text("kind", "sharedBy");
                json.Money("price", Four(shared.Price));
                json.Whole("pieces", shared.Pieces);
                break;
            case ByTheHour work:
                json.Text("kind", "byTheHour");
                json.Money("minutes", Four(work.Minutes));
                json.Money("perHour", Four(work.PerHour), WhyNotCodes.NoWage);
                json.Whole("batch", work.Batch);
                break;
            default: throw new InvalidOperationException($"Nothing is written of a {how.GetType().Name}.");
        }
    }

    /// <summary>What a rule asks and how it came to it.</summary>
    internal static void Price(JsonPage json, AskedPrice price)
    {
        json.Text("rule", price.Rule.Name);
        json.Text("sells", Words.Of(price.Rule.Sells));
        json.Text("formula", price.Rule.Formula);
        json.Money("worked", Four(price.Worked));
        using (json.Array("uses"))
            foreach (var (name, value) in price.Uses)
                using (json.Object())
                {
                    json.Text("name", name);
                    json.Money("value", Four(value));
                }
        Outcome(json, "asked", price.Outcome);
        json.Money("leastPrice", Four(price.LeastPrice));
        if (price.At is { } at) Outcome(json, "at", at); else json.Null("at", null);
    }

    private static void Outcome(JsonPage json, string field, PriceOutcome outcome)
    {
        using var scope = json.Object(field);
        json.Money("price", Four(outcome.Price));
        using (json.Array("fees"))
            foreach (var taken in outcome.Fees)
                using (json.Object())
                {
                    json.Text("fee", taken.Fee.Name);
                    json.Money("amount", Four(taken.Amount));
                }
        json.Money("left", Four(outcome.Left));
        json.Money("cost", Four(outcome.Cost));
        json.Money("gain", Four(outcome.Gain));
        json.Ratio("margin", (double?)outcome.Margin, WhyNotCodes.PriceIsNothing);
        json.Money("payPerHour", Four(outcome.PayPerHour), WhyNotCodes.NoTime);
        json.Money("outlay", Four(outcome.OutlayTotal));
        json.Money("breakEven", outcome.BreakEven, outcome.OutlayTotal == 0 ? WhyNotCodes.NoOutlay : WhyNotCodes.NoGain);
    }

    /// <summary>To four decimals without noughts at the end, so that 3.40 and 3.4 are the same bytes.</summary>
    internal static decimal? Four(decimal? amount) => amount is { } known ? Math.Round(known, 4, MidpointRounding.AwayFromZero) / 1.0000000000000000000000000000m : null;
}
