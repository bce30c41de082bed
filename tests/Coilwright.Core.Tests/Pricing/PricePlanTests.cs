using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing;
using Coilwright.Core.Shopping;
using Coilwright.Core.Stock;
using CsCheck;

namespace Coilwright.Core.Tests.Pricing;

/// <summary>From a sheet of costs to what one costs and what each rule asks.</summary>
public class PricePlanTests
{
    private static readonly ImmutableArray<Sold> All = [Sold.Piece, Sold.Kit, Sold.Pattern];

    private static readonly WireUse Wire = new(600, 172.5m);

    private static Bead Bead(string id, int? pack = null, decimal? price = null) => SamplePieces.Bead(id, "round", 6, with: d => d with { Pack = pack is { } beads ? new Pack("strand", beads) : null, Price = price });

    private static ShoppingList List(int count = 1, PriceList? prices = null, params Bead[] beads)
    {
        if (beads.Length == 0) beads = [Bead("a")];
        var piece = new ShoppingPiece("one", SamplePieces.Piece([.. beads], [.. beads.SelectMany((_, i) => Enumerable.Repeat(i, 10 * (i + 1)))]), count);
        Assert.True(ShoppingList.TryMake([piece], Spares.None, new Dictionary<string, int>(), prices ?? PriceList.Empty, out var list, out var faults), string.Join('\n', faults));
        return list!;
    }

    private static Costs Checked(CostSheet sheet)
    {
        Assert.True(Costs.TryMake(sheet, out var costs, out var faults), string.Join('\n', faults));
        return costs!;
    }

    private static PricePlan Plan(CostSheet sheet, ShoppingList? list = null, decimal? at = null)
    {
        Assert.True(PricePlan.TryMake(Checked(sheet), list ?? List(), Wire, at, out var plan, out var faults), string.Join('\n', faults));
        return plan!;
    }

    private static Fault Slip(CostSheet sheet)
    {
        if (!Costs.TryMake(sheet, out var costs, out var faults)) return Assert.Single(faults);
        Assert.False(PricePlan.TryMake(costs!, List(), Wire, null, out _, out faults));
        return Assert.Single(faults);
    }

    private static PriceRule Rule(string name, string formula, params string[] fees) => new(name, formula, Sold.Piece, [.. fees], null, null);

    // Materials, labour and overhead as they are told, whatever made them so.
    private static CostSheet Told(decimal materials, decimal labour, decimal overhead, params PriceRule[] rules) => new()
    {
        WagePerHour = labour,
        Items = [new CostItem("materials", false, 1, materials, 1, All)],
        Steps = [new TimedStep("work", 60, false, All)],
        Overheads = [new Overhead("overhead", null, null, overhead, 1, All)],
        Rules = [.. rules],
    };

    // Worked examples of makers' pages on pricing: common practice, no source.
    [Theory]
    [InlineData(3.50, 5, 4.60, "(materials + labour + overhead) * 2", 26.20)]
    [InlineData(2, 15, 0, "(labour + materials) * 2", 34)]
    [InlineData(2, 3, 1, "2 * (materials + labour + overhead)", 12)]
    [InlineData(25, 5, 0, "(3 * materials + labour) * (1 + 10%)", 88)]
    [InlineData(6, 10, 0, "(4 * materials + labour) * 1.1", 37.40)]
    public void A_worked_example_of_the_trade_comes_out(double materials, double labour, double overhead, string formula, double price)
    {
        var plan = Plan(Told((decimal)materials, (decimal)labour, (decimal)overhead, Rule("wholesale", formula), Rule("retail", "wholesale * 2")));
        Assert.Equal([(decimal)price, 2 * (decimal)price], plan.Prices.Select(p => p.Outcome.Price));
        Assert.Equal((decimal)(materials + labour + overhead), plan.Products[0].Cost.Amount);
    }

    // Likewise: 230 a month over 50 pieces are 4.60 each, 125 of material over 50 are 2.50, ten minutes at 18 an hour are 3.
    [Fact]
    public void Shares_of_a_month_a_pack_and_an_hour_are_as_in_the_trades_examples()
    {
        var plan = Plan(new CostSheet { WagePerHour = 18, Wire = new WirePack(125, null, 50), Steps = [new TimedStep("work", 10, false, All)], Overheads = [new Overhead("rent", null, null, 230, 50, All)] });
        Assert.Equal([2.50m, 3m, 4.60m], plan.Products[0].Cost.Parts.Select(p => p.Amount!.Value));
    }

    [Fact]
    public void Every_figure_is_the_sum_of_its_lines_and_every_line_says_how()
    {
        var sheet = new CostSheet
        {
            WagePerHour = 15,
            WastePercent = 10,
            Wire = new WirePack(4.80m, 24, null),
            Items = [new CostItem("pin", false, 2, 2.40m, 50, All), new CostItem("box", true, 1, 12, 20, All)],
            Steps = [new TimedStep("string", 30, false, All), new TimedStep("photograph", 20, true, All)],
            Overheads = [new Overhead("a tenth", 10, null, null, null, All), new Overhead("light", null, 2, null, null, All)],
        };
        var plan = Plan(sheet, List(4, null, Bead("a", 65, 3.25m), Bead("b", 40, 8)));
        var cost = plan.Products[0].Cost;
        // Worked by hand: 10 at 3.25/65 are 0.50, 20 at 8/40 are 4.00; a tenth of them 0.45; two pins 0.096; 600 mm of 24 loops of 172.5 mm at 4.80 is 0.6956...; a box 0.60.
        var materials = 4.5m + 0.45m + 0.096m + 4.80m * 600 / (24 * 172.5m) + 0.6m;
        Assert.Equal([4.5m, 0.45m, 0.096m, 4.80m * 600 / (24 * 172.5m), 0.6m], cost.Parts[0].Parts.Select(p => p.Amount!.Value));
        // 35 minutes, 20 of them shared by four: 8.75; overhead a tenth of both, and 35 minutes at 2.
        Assert.Equal([materials, 8.75m, (materials + 8.75m) / 10 + 70m / 60], cost.Parts.Select(p => p.Amount!.Value));
        Assert.Empty(plan.Products[0].Gaps);
        foreach (var line in Lines(cost))
            if (line.How is SumOfParts) Assert.Equal(line.Parts.Sum(p => p.Amount ?? 0), line.Amount);
            else Assert.Empty(line.Parts);
    }

    [Fact]
    public void What_nobody_told_is_not_counted_and_is_named()
    {
        var plan = Plan(new CostSheet { Steps = [new TimedStep("work", 60, false, All)], Rules = [Rule("plain", "cost + labour + overhead + 5")] }, List(1, null, Bead("a", 10, 2), Bead("b")));
        Assert.Equal([CostGap.Wage, CostGap.Waste, CostGap.Wire, CostGap.Overhead], plan.Products[0].Gaps);
        Assert.Equal(2, plan.Products[0].Cost.Amount);
        Assert.Equal(["b"], plan.Products[0].Unpriced.Select(l => l.Name));
        Assert.Equal(7, Assert.Single(plan.Prices).Outcome.Price);
        // Seven less two for beads are left for an hour.
        Assert.Equal(5, plan.Prices[0].Outcome.PayPerHour);
    }

    [Fact]
    public void A_bead_costs_the_least_that_it_can_be_had_for_at_so_many()
    {
        var prices = new PriceList([
            new Offer("a", "near", "strand", 50, [new PriceStep(1, 5)]),
            new Offer("a", "far", "bag", 100, [new PriceStep(1, 12), new PriceStep(3, 6)]),
            new Offer("a", "sold out", "bag", 100, [new PriceStep(1, 1)]) { Most = 0 },
        ], [], "EUR");
        // One piece takes 10 beads, one bag, at 12: the strand is cheaper. Thirty take three bags.
        Assert.Equal(("near", 1m), One(1));
        Assert.Equal(("far", 0.6m), One(30));

        (string, decimal) One(int count)
        {
            var line = Plan(CostSheet.Empty, List(count, prices)).Products[0].Cost.Parts[0].Parts[0].Parts[0];
            return (((PartOfPacks)line.How).Supplier, line.Amount!.Value);
        }
    }

    [Fact]
    public void A_kit_has_the_materials_and_its_own_work_and_a_pattern_no_materials()
    {
        var sheet = new CostSheet
        {
            WagePerHour = 12,
            Items = [new CostItem("box", true, 1, 1, 1, [Sold.Piece]), new CostItem("bag", true, 1, 0.1m, 1, [Sold.Kit])],
            Steps = [new TimedStep("string", 30, false, [Sold.Piece]), new TimedStep("bag", 5, false, [Sold.Kit]), new TimedStep("write a letter", 10, false, [Sold.Pattern])],
            Rules = [Rule("kit", "cost") with { Sells = Sold.Kit }, Rule("pattern", "cost") with { Sells = Sold.Pattern }, Rule("whole", "cost")],
        };
        var plan = Plan(sheet, List(1, null, Bead("a", 10, 2)));
        Assert.Equal([2 + 0.1m + 1, 2, 2 + 1 + 6], plan.Prices.Select(p => p.Outcome.Price));
    }

    [Fact]
    public void Fees_margin_pay_and_the_outlay_are_as_worked_by_hand()
    {
        // 40 less 25 % and 0.50 leaves 29.50; less 10 + 12 + 2 gains 5.50, of 40 that is 13.75 %; 29.50 - 12 for one hour is 17.50; 60 is back after 11.
        var sheet = Told(10, 12, 2, Rule("asked", "40", "shop", "sale")) with
        {
            Fees = [new Fee("shop", 25, 0), new Fee("sale", 0, 0.5m)],
            Outlays = [new Outlay("table", 60, All)],
        };
        var price = Plan(sheet, at: 30).Prices[0];
        var outcome = price.Outcome;
        Assert.Equal((10.5m, 29.5m, 5.5m, 0.1375m, 17.5m, 11m), (outcome.FeesTotal, outcome.Left, outcome.Gain, outcome.Margin, outcome.PayPerHour, outcome.BreakEven));
        // (24 + 0.50) / 0.75 is 32.666...
        Assert.Equal(32.67m, price.LeastPrice);
        Assert.Equal((22m, -2m, (decimal?)10m, null), (price.At!.Left, price.At.Gain, price.At.PayPerHour, price.At.BreakEven));
    }

    [Fact]
    public void At_the_least_price_nothing_is_lost_and_a_cent_below_it_is() => Gen.Select(Gen.Int[0, 9998], Gen.Int[0, 500], Gen.Int[1, 9999]).Sample((percent, each, cost) =>
    {
        var sheet = Told(cost / 100m, 0, 0, Rule("asked", "cost", "fee")) with { Fees = [new Fee("fee", percent / 100m, each / 100m)] };
        var least = Plan(sheet).Prices[0].LeastPrice;
        Assert.True(Plan(sheet, at: least).Prices[0].At!.Gain >= 0);
        Assert.True(Plan(sheet, at: least - PriceRounding.Cent).Prices[0].At!.Gain < 0);
    }, iter: 200, threads: 1);

    // Every part once more in fractions of whole numbers, which round nothing at all.
    [Fact]
    public void A_random_sheet_comes_to_what_fractions_come_to() => Gen.Select(Gen.Int[1, 99_999].Array[9], Gen.Int[1, 300].Array[6]).Sample((money, whole) =>
    {
        decimal M(int i) => money[i] / 100m;
        var sheet = new CostSheet
        {
            WagePerHour = M(0),
            WastePercent = whole[0] / 10m,
            Wire = new WirePack(M(1), whole[1], null),
            Items = [new CostItem("pin", false, whole[2], M(2), whole[3], All)],
            Steps = [new TimedStep("string", M(3), false, All), new TimedStep("once", M(4), true, All)],
            Overheads = [new Overhead("part", whole[4] / 10m, null, null, null, All), new Overhead("hour", null, M(5), null, null, All), new Overhead("month", null, null, M(6), whole[5], All)],
            Rules = [Rule("asked", "(materials * 2 + labour) / 3 + overhead") with { RoundUpTo = 0.05m }],
        };
        var plan = Plan(sheet, List(7, null, Bead("a", whole[5], M(7)), Bead("b", whole[4], M(8))));

        var beads = Fraction.Of(10m) * M(7) / whole[5] + Fraction.Of(20m) * M(8) / whole[4];
        var materials = beads + beads * (whole[0] / 10m) / 100m + Fraction.Of(whole[2]) * M(2) / whole[3] + Fraction.Of(M(1)) * 600m / (Fraction.Of(whole[1]) * 172.5m);
        var minutes = Fraction.Of(M(3)) + Fraction.Of(M(4)) / 7m;
        var labour = minutes * M(0) / 60m;
        var overhead = (materials + labour) * (whole[4] / 10m) / 100m + minutes * M(5) / 60m + Fraction.Of(M(6)) / whole[5];
        // Two dozen steps of 28 digits on amounts below a million: 10^-20 is ten thousand times what they can be off.
        foreach (var (exact, line) in new[] { materials, labour, overhead }.Zip(plan.Products[0].Cost.Parts))
            Assert.True((exact - line.Amount!.Value).Abs < new Fraction(1, System.Numerics.BigInteger.Pow(10, 20)), $"{exact} {line.Amount}");
        var asked = ((materials * 2m + labour) / 3m + overhead).Up(0.05m);
        Assert.True((asked - plan.Prices[0].Outcome.Price).IsZero, $"{asked} {plan.Prices[0].Outcome.Price}");
    }, iter: 500, threads: 1);

    [Fact]
    public void A_rule_takes_the_rounded_price_of_another_wherever_that_stands()
    {
        var plan = Plan(Told(10.2m, 0, 0, Rule("retail", "wholesale * 2"), Rule("wholesale", "cost * 2") with { RoundUpTo = 0.5m }));
        Assert.Equal([41m, 20.5m], plan.Prices.Select(p => p.Outcome.Price));
        Assert.Equal([("wholesale", 20.5m)], plan.Prices[0].Uses);
    }

    [Theory]
    [InlineData("b", "a * 2", "rules[1].formula", FaultCodes.FormulaCycle)]
    [InlineData("b", "b", "rules[1].formula", FaultCodes.FormulaCycle)]
    [InlineData("b", "costs", "rules[1].formula", FaultCodes.FormulaNameUnknown)]
    [InlineData("b", "cost /", "rules[1].formula", FaultCodes.FormulaValueExpected)]
    [InlineData("b", "cost / labour", "rules[1].formula", FaultCodes.FormulaDividesByZero)]
    [InlineData("b", "cost - 11", "rules[1].formula", FaultCodes.PriceBelowZero)]
    [InlineData("b", "cost * 10000000", "rules[1].formula", FaultCodes.FormulaTooLarge)]
    [InlineData("b-c", "cost", "rules[1].name", FaultCodes.PriceRuleNameForm)]
    [InlineData("wage", "cost", "rules[1].name", FaultCodes.PriceRuleNameTaken)]
    [InlineData("up", "cost", "rules[1].name", FaultCodes.PriceRuleNameTaken)]
    [InlineData("a", "cost", "rules[1].name", FaultCodes.NameTwice)]
    public void A_rule_that_cannot_be_worked_out_is_told_with_its_place(string name, string formula, string field, string code)
    {
        var first = code == FaultCodes.FormulaCycle && formula != "b" ? "b + 1" : "cost";
        var fault = Slip(Told(10, 0, 0, Rule("a", first), Rule(name, formula)));
        // A cycle is told where it closes.
        Assert.Equal((code, field), (fault.Code, fault.Field));
    }

    [Fact]
    public void A_cycle_names_the_way_round()
    {
        var fault = Slip(Told(10, 0, 0, Rule("lead", "a"), Rule("a", "b + 1"), Rule("b", "1 + c"), Rule("c", "2 * a")));
        Assert.Equal((FaultCodes.FormulaCycle, "a, b, c, a", "rules[3].formula", "5"), (fault.Code, fault.Values["way"], fault.Field, fault.Values["at"]));
    }

    [Fact]
    public void Fees_that_take_all_are_told_and_so_are_unknown_and_double_ones()
    {
        var sheet = Told(10, 0, 0) with { Fees = [new Fee("gallery", 60, 0), new Fee("guild", 40, 0)] };
        var fault = Slip(sheet with { Rules = [Rule("a", "cost", "gallery", "guild")] });
        Assert.Equal((FaultCodes.FeesTakeAll, "rules[0].fees", "100"), (fault.Code, fault.Field, fault.Values["percent"]));
        Assert.Equal((FaultCodes.WordUnknown, "gallery"), (Slip(sheet with { Rules = [Rule("a", "cost", "galery")] }) is var f ? (f.Code, f.Values["nearest"]) : default));
        Assert.Equal(FaultCodes.NameTwice, Slip(sheet with { Rules = [Rule("a", "cost", "guild", "guild")] }).Code);
        // Apart they leave something.
        Assert.Equal(2, Plan(sheet with { Rules = [Rule("a", "cost", "gallery"), Rule("b", "cost", "guild")] }).Prices.Length);
    }

    [Fact]
    public void Two_currencies_are_not_added_up()
    {
        var list = List(1, new PriceList([], [], "CHF"));
        Assert.False(PricePlan.TryMake(Checked(new CostSheet { Currency = "EUR" }), list, Wire, null, out _, out var faults));
        Assert.Equal((FaultCodes.CurrenciesDiffer, "EUR", "CHF"), (faults[0].Code, faults[0].Value, faults[0].Values["other"]));
        Assert.Equal("CHF", Plan(CostSheet.Empty, list).Currency);
    }

    [Fact]
    public void Without_rules_another_price_is_looked_at_without_fees()
    {
        var plan = Plan(Told(4, 6, 0), at: 15);
        Assert.Equal((5m, (decimal?)11m), (plan.At!.Gain, plan.At.PayPerHour));
        Assert.Null(Plan(Told(4, 6, 0, Rule("a", "cost")), at: 15).At);
    }

    private static IEnumerable<CostLine> Lines(CostLine line) => line.Parts.SelectMany(Lines).Prepend(line);

    private static PricePlan Stocked(LotCosts lots, ShoppingList list, CostSheet? sheet = null)
    {
        Assert.True(PricePlan.TryMake(Checked(sheet ?? CostSheet.Empty), list, Wire, lots, null, out var plan, out var faults), string.Join('\n', faults));
        return plan!;
    }

    private static CostLine[] BeadsOf(PricePlan plan) => [.. plan.Products[0].Cost.Parts[0].Parts[0].Parts];

    // Forty came for 2.00 and sixty for 6.00, and thirty of them went: the pot holds seventy at 0.08; first in, first out leaves ten of 0.05 and sixty of 0.10.
    private static StockLine Bought(string key, string? currency, params (int Count, decimal Cost)[] lots)
    {
        var time = DateTimeOffset.UnixEpoch;
        var entries = lots.Select((l, n) => (l, Id: Guid.CreateVersion7(), n)).ToList();
        StockEntry[] all =
        [
            .. entries.Select(e => new StockEntry(e.n + 1, time, new Movement.Receive(e.Id, key, new StockLot(Quantity.Of(e.l.Count)) { Cost = e.l.Cost, Currency = currency }), [new LotChange(e.Id, Quantity.Of(e.l.Count))])),
            new StockEntry(99, time, new Movement.Use(Guid.CreateVersion7(), key, Quantity.Of(30)), [new LotChange(entries[0].Id, new Quantity(-30_000))]),
        ];
        return new StockLine(new StockItem(key, key, StockUnit.Each), 1, StockBalance.Of(all), StockValue.Of(all));
    }

    [Theory]
    [InlineData(LotWay.Average, 0.80)]
    [InlineData(LotWay.FirstIn, 0.93)]
    public void Beads_in_stock_cost_what_they_cost_and_the_line_says_so(LotWay way, double ten)
    {
        var line = Assert.Single(BeadsOf(Stocked(LotCosts.Of([Bought("a", "EUR", (40, 2), (60, 6))], way), List(beads: Bead("a", 50, 9)))));
        var how = Assert.IsType<PartOfStock>(line.How);
        Assert.Equal((10, 70, way), (how.Count, how.There, how.Way));
        // (10 * 0.05 + 60 * 0.10) / 70 each is 0.92857...; to the cent.
        Assert.Equal((decimal)ten, Math.Round(line.Amount!.Value, 2));
    }

    [Fact]
    public void Where_too_little_is_in_stock_beads_cost_what_is_asked_today_and_without_a_price_what_is_there_tells()
    {
        var lots = LotCosts.Of([Bought("a", "EUR", (40, 2), (60, 6)), Bought("b", "EUR", (40, 2), (60, 6))], LotWay.Average);
        // Eight of ten a and of twenty b each: eighty a and a hundred and sixty b, and seventy of each are there.
        var lines = BeadsOf(Stocked(lots, List(8, null, Bead("a", 50, 9), Bead("b"), Bead("c"))));
        Assert.Equal((typeof(PartOfPacks), 1.80m), (lines[0].How.GetType(), lines[0].Amount));
        Assert.Equal((typeof(PartOfStock), 1.60m), (lines[1].How.GetType(), lines[1].Amount));
        Assert.IsType<WithoutPrice>(lines[2].How);
        // Seven of ten are seventy: just enough.
        Assert.IsType<PartOfStock>(BeadsOf(Stocked(lots, List(7, null, Bead("a", 50, 9))))[0].How);
    }

    [Fact]
    public void Stock_that_was_paid_for_in_another_currency_is_refused_only_where_it_is_used()
    {
        var lots = LotCosts.Of([Bought("a", "USD", (40, 2), (60, 6)), Bought("b", "EUR", (40, 2), (60, 6))], LotWay.Average);
        Assert.False(PricePlan.TryMake(Checked(new CostSheet { Currency = "EUR" }), List(), Wire, lots, null, out _, out var faults));
        var fault = Assert.Single(faults);
        Assert.Equal((FaultCodes.LotCurrencyDiffers, "USD", "EUR"), (fault.Code, fault.Value, fault.Values["other"]));
        Assert.False(PricePlan.TryMake(Costs.Empty, List(1, null, Bead("a"), Bead("b")), Wire, lots, null, out _, out faults));
        Assert.Equal(FaultCodes.LotCurrencyDiffers, Assert.Single(faults).Code);
        Assert.Equal("USD", Stocked(lots, List()).Currency);
        Assert.Equal("EUR", Stocked(lots, List(9, null, Bead("a", 50, 9)), new CostSheet { Currency = "EUR" }).Currency);
    }

    [Fact]
    public void A_price_is_the_sum_of_its_parts_and_its_line_of_gains_goes_through_what_it_asks_and_through_nought_where_nothing_is_lost() => Gen.Select(Gen.Int[0, 4_000], Gen.Int[0, 90], Gen.Int[0, 300], Gen.Int[1, 5_000]).Sample((cost, percent, each, asks) =>
    {
        var sheet = Told(cost / 100m, 0, 0, Rule("one", (asks / 100m).ToString(System.Globalization.CultureInfo.InvariantCulture), "fee")) with { Fees = [new Fee("fee", percent, each / 100m)] };
        var plan = Plan(sheet);
        var price = plan.Prices[0];
        Assert.Equal(price.Outcome.Price, PriceMake.Of(plan, price).Parts.Sum(p => p.Amount));
        var span = GainSpan.Of(plan, Sold.Piece)!;
        var line = Assert.Single(span.Lines);
        decimal At(decimal p) => line.GainFrom + (line.GainTo - line.GainFrom) * (p - span.From) / (span.To - span.From);
        // A division leaves a hair at the 28th digit.
        Assert.Equal(price.Outcome.Gain, At(price.Outcome.Price), 18);
        Assert.Equal(0, At(line.Even), 18);
        Assert.True(price.LeastPrice >= line.Even - 1e-10m && price.LeastPrice < line.Even + 0.01m);
        Assert.True(span.To >= line.Even && span.To >= price.Outcome.Price);
    }, iter: 300);

    [Fact]
    public void There_is_no_span_where_no_rule_sells_it_or_all_is_free()
    {
        Assert.Null(GainSpan.Of(Plan(Told(1, 1, 1, Rule("one", "cost"))), Sold.Kit));
        Assert.Null(GainSpan.Of(Plan(new CostSheet { Rules = [Rule("one", "0")] }), Sold.Piece));
    }
}
