using System.Collections.Immutable;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Making;
using Coilwright.Core.Measures;
using Coilwright.Core.Pricing;
using Coilwright.Core.Pricing.Formulas;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes costs of a file's values, noting everything wrong with them.</summary>
internal sealed class CostsBinder(FaultList faults)
{
    public static readonly FieldSet File = new("format", "currency", "wagePerHour", "wastePercent", "wire", "findings", "packaging", "steps", "overheads", "fees", "outlays", "rules");
    public static readonly FieldSet WireFields = new("price", "loops", "pieces");
    public static readonly FieldSet ItemFields = new("name", "count", "price", "holds", "for");
    public static readonly FieldSet StepFields = new("name", "minutes", "perBatch", "for", "does", "waitMinutes");
    public static readonly FieldSet OverheadFields = new("name", "percent", "perHour", "perMonth", "pieces", "for");
    public static readonly FieldSet FeeFields = new("name", "percent", "fixed");
    public static readonly FieldSet OutlayFields = new("name", "amount", "for");
    public static readonly FieldSet RuleFields = new("name", "sells", "formula", "fees", "roundUpTo", "endIn");

    /// <summary>Items of one list at most: more than one piece has.</summary>
    public const int MostItems = 200;

    /// <summary>Rules at most: more than anyone would lay side by side.</summary>
    public const int MostRules = 50;

    public static readonly WordSet<Sold> Solds = new(("piece", Sold.Piece), ("kit", Sold.Kit), ("pattern", Sold.Pattern));

    public static readonly WordSet<StepAction> Actions = new(("cutWire", StepAction.CutWire), ("firstEnd", StepAction.FirstEnd), ("stringBeads", StepAction.StringBeads), ("lastEnd", StepAction.LastEnd), ("tryOn", StepAction.TryOn));

    internal static readonly Limits Money = PricesBinder.Money;
    internal static readonly Limits Count = Limits.Between(1, BuyingList.MostCount, "");
    internal static readonly Limits Percent = Limits.Between(0, 1_000, "%");
    internal static readonly Limits Loops = Limits.Between(0.1, 10_000, "");
    internal static readonly Limits Minutes = Limits.Between(0.01, 100_000, "min");
    internal static readonly Limits Step = Limits.Between((double)PriceRounding.LeastStep, (double)BuyingList.MostMoney, "");
    internal static readonly Limits Ending = Limits.Between(0, 99.9999, "");

    private static readonly ImmutableArray<Sold> Goods = [Sold.Piece, Sold.Kit];

    /// <summary>The costs; null, with faults noted, when they cannot be read.</summary>
    public Costs? Bind(JsonValue root)
    {
        if (Fields.Of(root, File, faults) is not { } fields) return null;
        var currency = fields.Currency("currency");
        var sheet = new CostSheet
        {
            Currency = currency,
            WagePerHour = Decimal(fields, "wagePerHour", Money),
            WastePercent = Decimal(fields, "wastePercent", Percent),
            Wire = fields.Inner("wire", WireFields) is { } wire ? WireOf(wire) : null,
            Items = [.. List(fields, "findings", MostItems, i => ItemOf(i, false)), .. List(fields, "packaging", MostItems, i => ItemOf(i, true))],
            Steps = List(fields, "steps", MostItems, StepOf),
            Overheads = List(fields, "overheads", MostItems, OverheadOf),
            Fees = List(fields, "fees", MostItems, FeeOf),
            Outlays = List(fields, "outlays", MostItems, OutlayOf),
            Rules = List(fields, "rules", MostRules, RuleOf),
        };
        if (faults.Count > 0) return null;
        Costs.TryMake(sheet, out var costs, out var unsound);
        foreach (var fault in unsound) faults.Add(CostsFile.Placed(root, fault));
        return costs;
    }

    private ImmutableArray<T> List<T>(Fields fields, string name, int most, Func<JsonValue, T?> read) where T : class
    {
        var list = ImmutableArray.CreateBuilder<T>();
        var n = 0;
        foreach (var item in fields.List(name) ?? [])
        {
            if (faults.Full) break;
            if (++n > most)
            {
                fields.ItemFault(name, item, FaultCodes.ValueAtMost, ("max", most.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("unit", ""));
                break;
            }
            if (read(item) is { } one) list.Add(one);
        }
        return list.ToImmutable();
    }

    private static WirePack? WireOf(Fields fields)
    {
        var price = fields.Require("price") ? Decimal(fields, "price", Money) : null;
        var by = fields.OneOf("loops", "pieces");
        var (loops, pieces) = (by == "loops" ? Decimal(fields, "loops", Loops) : null, by == "pieces" ? fields.Whole("pieces", Count) : null);
        return price is { } money && (loops is not null || pieces is not null) ? new WirePack(money, loops, pieces) : null;
    }

    private CostItem? ItemOf(JsonValue item, bool packaging)
    {
        if (Fields.Of(item, ItemFields, faults) is not { } fields) return null;
        var name = Name(fields);
        var count = fields.Require("count") ? fields.Whole("count", Count) : null;
        var price = fields.Require("price") ? Decimal(fields, "price", Money) : null;
        var holds = fields.Require("holds") ? fields.Whole("holds", Count) : null;
        var sold = For(fields, Goods);
        return name is not null && count is { } n && price is { } money && holds is { } each ? new CostItem(name, packaging, n, money, each, sold) : null;
    }

    private TimedStep? StepOf(JsonValue item)
    {
        if (Fields.Of(item, StepFields, faults) is not { } fields) return null;
        var name = Name(fields);
        var minutes = fields.Require("minutes") ? Decimal(fields, "minutes", Minutes) : null;
        var batch = fields.YesOrNo("perBatch") ?? false;
        var sold = For(fields, [Sold.Piece]);
        ImmutableArray<StepAction> does = [.. Listed(fields, "does", Actions, []).Distinct()];
        var wait = Decimal(fields, "waitMinutes", Minutes);
        return name is not null && minutes is { } time ? new TimedStep(name, time, batch, sold) { Does = does, WaitMinutes = wait } : null;
    }

    private Overhead? OverheadOf(JsonValue item)
    {
        if (Fields.Of(item, OverheadFields, faults) is not { } fields) return null;
        var name = Name(fields);
        var by = fields.OneOf("percent", "perHour", "perMonth");
        var percent = by == "percent" ? Decimal(fields, "percent", Percent) : null;
        var hour = by == "perHour" ? Decimal(fields, "perHour", Money) : null;
        var month = by == "perMonth" ? Decimal(fields, "perMonth", Money) : null;
        int? pieces = null;
        if (by == "perMonth") pieces = fields.Require("pieces") ? fields.Whole("pieces", Count) : null;
        else if (by is not null) fields.NotWith("pieces", by, by);
        var sold = For(fields, Goods);
        return name is not null && (percent is not null || hour is not null || month is not null && pieces is not null) ? new Overhead(name, percent, hour, month, pieces, sold) : null;
    }

    private Fee? FeeOf(JsonValue item)
    {
        if (Fields.Of(item, FeeFields, faults) is not { } fields) return null;
        var name = Name(fields);
        if (!fields.Has("percent") && !fields.Has("fixed")) fields.Missing("percent");
        var (percent, each) = (Decimal(fields, "percent", Percent), Decimal(fields, "fixed", Money));
        return name is null ? null : new Fee(name, percent ?? 0, each ?? 0);
    }

    private Outlay? OutlayOf(JsonValue item)
    {
        if (Fields.Of(item, OutlayFields, faults) is not { } fields) return null;
        var name = Name(fields);
        var amount = fields.Require("amount") ? Decimal(fields, "amount", Money) : null;
        var sold = For(fields, Goods);
        return name is not null && amount is { } money ? new Outlay(name, money, sold) : null;
    }

    private PriceRule? RuleOf(JsonValue item)
    {
        if (Fields.Of(item, RuleFields, faults) is not { } fields) return null;
        var name = Name(fields);
        var sells = fields.Require("sells") ? fields.Word("sells", Solds) : null;
        var formula = fields.Require("formula") ? fields.Text("formula", Formula.MostLength, mayBeEmpty: false) : null;
        var fees = fields.Texts("fees");
        var (step, ending) = (Decimal(fields, "roundUpTo", Step), Decimal(fields, "endIn", Ending));
        if (fields.Has("roundUpTo")) fields.NotWith("endIn", "roundUpTo", "roundUpTo");
        return name is not null && sells is { } sold && formula is not null ? new PriceRule(name, formula, sold, fees, step, ending) : null;
    }

    private static string? Name(Fields fields) => fields.Require("name") ? fields.Text("name", mayBeEmpty: false) : null;

    private static ImmutableArray<Sold> For(Fields fields, ImmutableArray<Sold> usual) => Listed(fields, "for", Solds, usual);

    private static ImmutableArray<T> Listed<T>(Fields fields, string name, WordSet<T> words, ImmutableArray<T> usual) where T : struct, Enum
    {
        if (fields.List(name) is not { } items) return usual;
        var listed = ImmutableArray.CreateBuilder<T>();
        foreach (var item in items)
            if (item.Kind != JsonKind.Text) fields.ItemFault(name, item, FaultCodes.FieldType, ("expected", FaultTypes.Text), ("found", item.KindWord));
            else if (words.Find(item.Text) is { } one) listed.Add(one);
            else fields.ItemFault(name, item, FaultCodes.WordUnknown, ("known", words.Listed), ("nearest", words.Nearest(item.Text)));
        return listed.ToImmutable();
    }

    // As it is written, to the last digit.
    private static decimal? Decimal(Fields fields, string name, Limits limits) => fields.Number(name, limits) is null ? null : fields[name]!.Value.Money;
}
