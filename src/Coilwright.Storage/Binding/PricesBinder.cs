using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Measures;
using Coilwright.Core.Shopping;
using Coilwright.Core.Stock;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes a list of prices of a file's values, noting everything wrong with them.</summary>
internal sealed class PricesBinder(FaultList faults)
{
    public static readonly FieldSet File = new("format", "currency", "suppliers", "offers");
    public static readonly FieldSet SupplierFields = new("name", "leastOrder", "freight", "freeFrom", "leadDays");
    public static readonly FieldSet OfferFields = new("bead", "end", "supplier", "number", "unit", "holds", "price", "prices", "has");
    public static readonly FieldSet StepFields = new("from", "price");

    /// <summary>Offers in one file at most: every bead of a large drawer from every supplier of a town.</summary>
    public const int MostOffers = 20_000;

    /// <summary>Ends that are bought, by the word they have in a piece file.</summary>
    public static readonly WordSet<EndFinish> Ends = new(("gluedCap", EndFinish.GluedCap), ("dangle", EndFinish.Dangle));

    internal static readonly Limits Count = Limits.Between(1, BuyingList.MostCount, "");
    internal static readonly Limits LeadDays = Limits.Between(0, Supplier.MostLeadDays, "");
    internal static readonly Limits Has = Limits.Between(0, BuyingList.MostCount, "");
    internal static readonly Limits Money = Limits.Between(0, (double)BuyingList.MostMoney, "");

    /// <summary>The prices; null, with faults noted, when they cannot be read.</summary>
    public PriceList? Bind(JsonValue root)
    {
        if (Fields.Of(root, File, faults) is not { } fields) return null;
        var currency = fields.Currency("currency");
        var suppliers = ImmutableArray.CreateBuilder<Supplier>();
        foreach (var item in fields.List("suppliers") ?? [])
        {
            if (faults.Full) return null;
            if (SupplierOf(item) is { } supplier) suppliers.Add(supplier);
        }
        if (!fields.Require("offers") || fields.List("offers") is not { } items) return null;
        var offers = ImmutableArray.CreateBuilder<Offer>();
        foreach (var item in items)
        {
            if (faults.Full) return null;
            if (offers.Count == MostOffers)
            {
                fields.ItemFault("offers", item, FaultCodes.ValueAtMost, ("max", MostOffers.ToString(CultureInfo.InvariantCulture)), ("unit", ""));
                return null;
            }
            if (OfferOf(item) is { } offer) offers.Add(offer);
        }
        if (faults.Count > 0) return null;
        BuyingList.TryMake([], offers, suppliers, out _, out var unsound);
        foreach (var fault in unsound) faults.AddFrom(root, fault);
        return faults.Count > 0 ? null : new PriceList(offers.ToImmutable(), suppliers.ToImmutable(), currency);
    }

    private Supplier? SupplierOf(JsonValue item)
    {
        if (Fields.Of(item, SupplierFields, faults) is not { } fields) return null;
        var name = fields.Require("name") ? fields.Text("name", mayBeEmpty: false) : null;
        var (least, freight, free) = (MoneyOf(fields, "leastOrder"), MoneyOf(fields, "freight"), MoneyOf(fields, "freeFrom"));
        if (fields.Has("freeFrom") && !fields.Has("freight")) fields.Missing("freight");
        var days = fields.Whole("leadDays", LeadDays);
        return name is null ? null : new Supplier(name, least ?? 0, freight ?? 0, free) { LeadDays = days };
    }

    private Offer? OfferOf(JsonValue item)
    {
        if (Fields.Of(item, OfferFields, faults) is not { } fields) return null;
        var what = fields.OneOf("bead", "end") switch
        {
            "bead" => fields.Text("bead", mayBeEmpty: false),
            "end" => fields.Word("end", Ends) is { } end ? ShoppingItem.OfEnds.First(e => e.Finish == end).Id : null,
            _ => null,
        };
        var supplier = fields.Require("supplier") ? fields.Text("supplier", mayBeEmpty: false) : null;
        var number = fields.Text("number");
        var unit = fields.Require("unit") ? fields.Text("unit", mayBeEmpty: false) : null;
        var holds = unit is null ? null : HoldsOf(fields, unit);
        var has = fields.Whole("has", Has);
        var prices = fields.OneOf("price", "prices") switch
        {
            "price" => MoneyOf(fields, "price") is { } price ? [new PriceStep(1, price)] : [],
            "prices" => Steps(fields),
            _ => ImmutableArray<PriceStep>.Empty,
        };
        if (what is null || supplier is null || unit is null || holds is not { } each || prices.IsEmpty) return null;
        return new Offer(what, supplier, unit, each, prices) { Number = number, Most = has };
    }

    // A dozen is twelve whatever is written; GR is asked about, never guessed. A word of her own is taken as it stands.
    private static int? HoldsOf(Fields fields, string unit)
    {
        var reading = SaleUnits.Read(unit);
        if (reading is SaleUnitReading.Ambiguous { Why: var unclear }) fields.Fault("unit", unclear.Code, [.. unclear.Values.Select(v => (v.Key, v.Value))]);
        var always = reading is SaleUnitReading.Known known ? SaleUnits.CountIn(known.Unit) : null;
        if (always is { } count) return fields.Has("holds") ? fields.Whole("holds", Limits.Between(count, count, "")) : count;
        return fields.Require("holds") ? fields.Whole("holds", Count) : null;
    }

    private ImmutableArray<PriceStep> Steps(Fields fields)
    {
        var steps = ImmutableArray.CreateBuilder<PriceStep>();
        var any = false;
        foreach (var item in fields.List("prices") ?? [])
        {
            any = true;
            if (faults.Full || Fields.Of(item, StepFields, faults) is not { } step) continue;
            var from = step.Require("from") ? step.Whole("from", Count) : null;
            var price = step.Require("price") ? MoneyOf(step, "price") : null;
            if (from is { } units && price is { } money) steps.Add(new PriceStep(units, money));
        }
        if (!any && !fields.Wrong("prices")) fields.Fault("prices", FaultCodes.BuyingNoPrice);
        return steps.ToImmutable();
    }

    // As it is written, to the last digit.
    private static decimal? MoneyOf(Fields fields, string name) => fields.Number(name, Money) is null ? null : fields[name]!.Value.Money;
}
