using Coilwright.Core.Pricing;
using Coilwright.Core.Quotes;
using Coilwright.Core.Shopping;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>The answer to a custom order as JSON, <c>coilwright.quote/1</c>: described in docs/quote.schema.json, and promised to outsiders.</summary>
internal static class QuoteJson
{
    public const string Schema = "coilwright.quote/1";

    /// <summary>The page.</summary>
    public static byte[] Of(Quoted quoted, Language language)
    {
        using var json = new JsonPage(language);
        var (quote, said) = (quoted.Quote, quoted.Said(language));
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", quote.Size.Piece.Title);
            json.Text("for", quote.Ask.For.Length > 0 ? quote.Ask.For : null);
            json.Text("on", QuoteSentences.Day(quote.Ask.On));
            json.Text("until", quote.Ask.Until is { } until ? QuoteSentences.Day(until) : null);
            json.Whole("count", quote.Ask.Count);
            using (json.Array("swaps"))
                foreach (var swap in quote.Ask.Swaps)
                    using (json.Object())
                    {
                        json.Text("bead", swap.Bead);
                        json.Text("with", swap.With.Id);
                    }
            json.YesOrNo("canBePromised", quote.CanBePromised);
            using (json.Array("reasons"))
                foreach (var reason in quote.Reasons) json.Item(Words.Of(reason));
            Size(json, quote);
            Beads(json, quote);
            using (json.Object("beadsThere"))
            {
                json.YesOrNo("allAtHome", quote.Arrivals.AllAtHome);
                json.Whole("days", quote.Arrivals.Days, WhyNotCodes.DaysNotTold);
                json.Text("on", quote.BeadsThereOn is { } day ? QuoteSentences.Day(day) : null);
            }
            json.Money("buyingTotal", quote.Supplies.Plan?.Total, WhyNotCodes.NoOrderCanBeSent);
            using (json.Object("wire"))
            {
                json.Mm("cutMm", quote.Size.Reckoned.Wire.CutMm);
                json.Ratio("loopsToCut", quote.Size.Reckoned.Wire.LoopsToCut);
                json.Money("cutAllMm", quote.CutMm);
                json.YesOrNo("isEnough", quote.Wire?.ComesOut);
            }
            json.Text("currency", quote.Currency);
            if (quote.Price is { } price) using (json.Object("price")) PriceJson.Price(json, price); else json.Null("price", null);
            json.Money("total", PriceJson.Four(quote.Total), WhyNotCodes.NoPriceRule);
            json.Money("depositPercent", PriceJson.Four(quote.Ask.DepositPercent));
            json.Money("deposit", PriceJson.Four(quote.Deposit));
            json.Money("rest", PriceJson.Four(quote.Rest));
            PriceJson.Line(json, "cost", quote.Prices.Products.First(p => p.Sold == Sold.Piece).Cost);
            using (json.Array("steps"))
                foreach (var step in quote.Steps)
                    using (json.Object())
                    {
                        json.Text("name", step.Step.Name);
                        json.YesOrNo("once", step.Step.PerBatch);
                        json.Money("minutes", PriceJson.Four(step.Minutes));
                    }
            json.Money("minutes", PriceJson.Four(quote.Minutes), WhyNotCodes.NoTime);
            using (json.Array("says"))
                foreach (var sentence in said.Reasons().Concat(said.Size()).Concat(said.Wire()).Concat(said.How()).Append(said.Time())) json.Item(sentence);
            json.Text("text", quote.CanBePromised ? said.Text() : null);
            using (json.Array("written"))
                foreach (var file in quoted.Written) json.Item(file);
        }
        return json.ToBytes();
    }

    private static void Size(JsonPage json, Quote quote)
    {
        using var scope = json.Object("size");
        json.Mm("wristMm", quote.Size.WristMm);
        json.YesOrNo("isBase", quote.Size.IsBase);
        json.YesOrNo("comesOut", quote.Size.ComesOut);
        json.Mm("offMm", quote.Size.OffMm);
        json.Whole("beads", quote.Size.Piece.Order.Count);
        json.Mm("beadedMm", quote.Size.Reckoned.Lie.BeadedMm);
        json.Ratio("turnsWorn", quote.Size.Reckoned.Fit.TurnsWorn);
        json.YesOrNo("fits", quote.Size.Reckoned.Fit.Fits);
        json.Text("coil", Words.Of(quote.Size.Coil.Answer));
    }

    private static void Beads(JsonPage json, Quote quote)
    {
        using var array = json.Array("beads");
        foreach (var line in quote.Arrivals.Lines)
        {
            using var scope = json.Object();
            var item = line.Line.Item;
            json.Text("item", item.Id);
            json.Text("name", item.Bead?.Name);
            json.Whole("use", item.Use);
            json.Whole("spare", item.Spare);
            json.Whole("home", item.Home);
            json.Whole("missing", item.Missing);
            json.Whole("buy", line.Line.Bought);
            json.Money("cost", line.Line.Cost, WhyNotCodes.PriceUnknown);
            using (json.Array("from"))
                foreach (var from in line.From)
                    using (json.Object())
                    {
                        json.Text("supplier", from.Supplier.Name);
                        json.Text("unit", from.Offer.Unit);
                        json.Whole("holds", from.Offer.Holds);
                        json.Whole("units", from.Units);
                        json.Money("cost", from.Cost);
                        json.Whole("leadDays", from.Supplier.LeadDays);
                    }
            json.Whole("days", line.Days, line.Why switch { WhyNoDay.NobodySells => WhyNotCodes.NobodySells, WhyNoDay.CannotBeHad => WhyNotCodes.CannotBeHad, _ => WhyNotCodes.DaysNotTold });
            json.Text("there", line.Days is { } days ? QuoteSentences.Day(quote.Ask.On.AddDays(days)) : null);
            using (json.Array("standIns"))
                foreach (var found in quote.StandIns.Where(s => s.Item.Id == item.Id).SelectMany(s => s.Found))
                    using (json.Object())
                    {
                        json.Text("bead", found.Bead.Id);
                        json.Text("name", found.Bead.Name);
                        json.Whole("have", found.Have);
                        json.Ratio("distance", found.Likeness.Total);
                        json.YesOrNo("bringsStop", found.BringsStop);
                    }
        }
    }
}
