using System.Collections.Immutable;
using Coilwright.Core.Buying;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Pricing;
using Coilwright.Core.Quotes;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Core.Substitutes;
using Coilwright.Core.Tests.Grading;
using Coilwright.Core.Tests.Pricing;
using CsCheck;

namespace Coilwright.Core.Tests.Quotes;

/// <summary>The answer to a custom order: what it is reckoned from is reckoned here a second time.</summary>
public class QuoteTests
{
    private static readonly DateOnly On = new(2026, 3, 31);

    private static readonly Piece Design = GradedPieces.Written("a = 3 ball\nb = 4 chip\n4 (a, 2 dot, b, bar, a, dot, b, bar)");

    private static readonly Supplier Post = new("post") { LeadDays = 9 }, Stall = new("stall") { LeadDays = 0 }, Silent = new("silent");

    private static Offer Offer(string item, string supplier, int holds, decimal price, int? most = null) => new(item, supplier, "bag", holds, [new PriceStep(1, price)]) { Most = most };

    private static Costs Costs(string formula = "cost * 2", params TimedStep[] steps)
    {
        var sheet = new CostSheet { WagePerHour = 15, Steps = [.. steps], Rules = [new PriceRule("retail", formula, Sold.Piece, [], null, null), new PriceRule("kit", "materials", Sold.Kit, [], null, null)] };
        Assert.True(Core.Pricing.Costs.TryMake(sheet, out var costs, out var faults), string.Join('\n', faults));
        return costs!;
    }

    private static readonly QuoteSources Usual = new()
    {
        Prices = new PriceList([Offer("ball", "post", 100, 4), Offer("chip", "stall", 50, 2.10m), Offer("dot", "post", 200, 1.7m), Offer("bar", "stall", 1, 0.35m)], [Post, Stall], "EUR"),
        Costs = Costs(steps: [new TimedStep("string", 26.5m, false, [Sold.Piece]), new TimedStep("lay out", 12, true, [Sold.Piece]), new TimedStep("bag", 5, false, [Sold.Kit])]),
    };

    private static QuoteAsk Ask(double wristMm = 165, int count = 1) => new() { WristMm = wristMm, On = On, Count = count };

    private static Quote Made(QuoteAsk ask, QuoteSources? sources = null, Piece? design = null)
    {
        Assert.True(Quote.TryMake(design ?? Design, SamplePieces.Data, ask, sources ?? Usual, new SupplierSets(), out var quote, out var faults), string.Join('\n', faults));
        return quote!;
    }

    private static ImmutableArray<Fault> Refused(QuoteAsk ask)
    {
        Assert.False(Quote.TryMake(Design, SamplePieces.Data, ask, Usual, new SupplierSets(), out var quote, out var faults));
        Assert.Null(quote);
        return faults;
    }

    // Days from 0000-03-01, by years of 365 days and their leap days: a second way to count days, from no calendar of the runtime.
    private static long DayNumber(int year, int month, int day)
    {
        var y = month <= 2 ? year - 1 : year;
        var m = (month + 9) % 12;
        return 365L * y + y / 4 - y / 100 + y / 400 + (m * 306 + 5) / 10 + day - 1;
    }

    [Fact]
    public void The_beads_are_there_so_many_days_after_the_day_of_the_quote() =>
        Gen.Select(Gen.Int[1900, 2999], Gen.Int[1, 12], Gen.Int[1, 28], Gen.Int[0, Supplier.MostLeadDays]).Sample((year, month, day, lead) =>
        {
            var prices = Usual.Prices with { Suppliers = [Post with { LeadDays = lead }, Stall] };
            var quote = Made(Ask() with { On = new DateOnly(year, month, day) }, Usual with { Prices = prices });
            Assert.Equal(lead, quote.Arrivals.Days);
            var there = quote.BeadsThereOn!.Value;
            Assert.Equal(DayNumber(year, month, day) + lead, DayNumber(there.Year, there.Month, there.Day));
        }, iter: 30, threads: 1);

    [Fact]
    public void All_is_there_when_the_last_of_what_is_bought_is_and_what_is_at_home_takes_no_time()
    {
        var quote = Made(Ask());
        Assert.Equal([("ball", 9), ("chip", 0), ("dot", 9), ("bar", 0)], quote.Arrivals.Lines.Select(l => (l.Line.Item.Id, l.Days!.Value)));
        Assert.Equal(9, quote.Arrivals.Days);
        var home = new Dictionary<string, int> { ["ball"] = 1000, ["dot"] = 1000 };
        Assert.Equal(On, Made(Ask(), Usual with { Home = home }).BeadsThereOn);
        Assert.False(Made(Ask(), Usual with { Home = home }).Arrivals.AllAtHome);
        // One bead too few is bought, and waited for.
        home["ball"] = quote.Size.Reckoned.Counts.First(k => k.Bead.Id == "ball").Count - 1;
        Assert.Equal(On.AddDays(9), Made(Ask(), Usual with { Home = home }).BeadsThereOn);
    }

    [Fact]
    public void What_two_sell_together_is_there_when_the_slower_one_sent()
    {
        // 24 balls: one bag from each is cheaper than two from the post.
        var prices = new PriceList([Offer("ball", "post", 20, 4), Offer("ball", "slow", 10, 0.1m, 1), .. Usual.Prices.Offers.Skip(1)], [Post, Stall, new Supplier("slow") { LeadDays = 30 }], "EUR");
        var line = Made(Ask(), Usual with { Prices = prices }).Arrivals.Lines[0];
        Assert.Equal(["post", "slow"], line.From.Select(f => f.Supplier.Name).Order(StringComparer.Ordinal));
        Assert.Equal(30, line.Days);
    }

    [Fact]
    public void A_supplier_who_told_no_days_leaves_the_whole_without_a_day_and_is_named()
    {
        var quote = Made(Ask(), Usual with { Prices = Usual.Prices with { Suppliers = [Silent with { Name = "post" }, Stall] } });
        Assert.Equal((null, WhyNoDay.DaysNotTold), (quote.Arrivals.Lines[0].Days, quote.Arrivals.Lines[0].Why));
        Assert.Null(quote.BeadsThereOn);
        Assert.Contains(QuoteReason.DayNotTold, quote.Reasons);
        Assert.True(quote.CanBePromised);
        // Nobody sells anything: nothing is guessed of that either.
        Assert.All(Made(Ask(), Usual with { Prices = PriceList.Empty }).Arrivals.Lines, l => Assert.Equal((null, WhyNoDay.NobodySells), (l.Days, l.Why)));
    }

    // Fractions of whole numbers of any length against decimals.
    [Fact]
    public void Price_deposit_and_rest_are_what_whole_numbers_make_of_them() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[0, 10_000], Gen.Int[140, 185], Gen.Int[100, 400]).Sample((count, hundredths, wrist, factor) =>
        {
            var (percent, times) = (hundredths / 100m, factor / 100m);
            var steps = new[] { new TimedStep("string", 26.5m, false, [Sold.Piece]), new TimedStep("lay out", 12, true, [Sold.Piece]) };
            var quote = Made(Ask(wrist, count) with { DepositPercent = percent }, Usual with { Costs = Costs($"cost * {times.ToString(System.Globalization.CultureInfo.InvariantCulture)}", steps) });
            Fraction beads = 0m;
            foreach (var offer in Usual.Prices.Offers)
                beads += (Fraction)quote.Size.Piece.Order.Kinds.Count(k => quote.Size.Piece.Beads[k].Id == offer.Item) * offer.Prices[0].Price / offer.Holds;
            var cost = beads + ((Fraction)26.5m + (Fraction)12 / count) * 15m / 60m;
            var price = (cost * times).Up(0.01m);
            Assert.True(((Fraction)quote.Price!.Outcome.Price - price).IsZero, $"{quote.Price.Outcome.Price} against {price}");
            var total = price * count;
            var deposit = (total * percent / 100m).Up(0.01m);
            if (deposit > total) deposit = total;
            Assert.True(((Fraction)quote.Deposit!.Value - deposit).IsZero);
            Assert.True(((Fraction)quote.Rest!.Value - (total - deposit)).IsZero);
            Assert.Equal(26.5m * count + 12, quote.Minutes);
        }, iter: 40, threads: 1);

    [Fact]
    public void It_is_made_for_the_wrist_and_a_larger_one_takes_more()
    {
        var (small, large) = (Made(Ask(150)), Made(Ask(180)));
        Assert.Equal([150, 180], new[] { small, large }.Select(q => q.Size.WristMm));
        Assert.True(large.Size.Piece.Order.Count > small.Size.Piece.Order.Count);
        Assert.True(large.Price!.Outcome.Price > small.Price!.Outcome.Price);
        Assert.True(Made(Ask()).Size.IsUnchanged);
    }

    [Fact]
    public void What_is_at_home_changes_what_is_bought_and_never_the_price()
    {
        var home = new Dictionary<string, int> { ["ball"] = 1000, ["chip"] = 1000, ["dot"] = 1000, ["bar"] = 1000 };
        var (bought, there) = (Made(Ask()), Made(Ask(), Usual with { Home = home }));
        Assert.True(there.Arrivals.AllAtHome);
        Assert.Equal(0, there.Supplies.Plan!.Total);
        Assert.Equal(bought.Price!.Outcome.Price, there.Price!.Outcome.Price);
    }

    [Fact]
    public void Only_what_is_there_for_all_that_are_ordered_may_stand_in()
    {
        var need = Design.Order.Kinds.Count(k => Design.Beads[k].Id == "ball");
        var pearl = SamplePieces.Bead("pearl", "round", Design.Beads.First(b => b.Id == "ball").LengthMm);
        QuoteSources With(int have) => Usual with { Others = [new Candidate(pearl, have)] };
        Assert.Equal("pearl", Assert.Single(Made(Ask(count: 3), With(3 * need)).StandIns.First(s => s.Item.Id == "ball").Found).Bead.Id);
        Assert.Empty(Made(Ask(count: 3), With(3 * need - 1)).StandIns.First(s => s.Item.Id == "ball").Found);
        Assert.Empty(Made(Ask(), Usual with { Others = [new Candidate(pearl)] }).StandIns.First(s => s.Item.Id == "ball").Found);
    }

    [Fact]
    public void A_swapped_bead_is_strung_graded_and_bought_and_the_order_stays_written()
    {
        var pearl = SamplePieces.Bead("pearl", "round", 7.3, colour: "#e8e0d0");
        var quote = Made(Ask(172) with { Swaps = [new Swap("ball", pearl)] });
        Assert.DoesNotContain(quote.Supplies.List.Items, i => i.Id == "ball");
        Assert.Equal(quote.Size.Piece.Order.Kinds.Count(k => quote.Size.Piece.Beads[k].Id == "pearl"), quote.Supplies.List.Items.First(i => i.Id == "pearl").Use);
        Assert.NotNull(quote.Size.Piece.Written);
        Assert.Equal(Design.Beads.First(b => b.Id == "ball").Name, quote.Swapped["ball"]);
        // The other way to exchange a bead, on the design's own wrist where nothing is graded.
        var kind = Design.Beads.Index().First(b => b.Item.Id == "ball").Index;
        var otherwise = Reckoning.Of(Substituting.With(Design, kind, pearl), SamplePieces.Data);
        Assert.Equal(otherwise.Lie.BeadedMm, quote.Sizes.Base.Lie.BeadedMm, 9);
        Assert.Equal(FaultCodes.WordUnknown, Assert.Single(Refused(Ask() with { Swaps = [new Swap("bal", pearl)] })).Code);
    }

    [Fact]
    public void What_hinders_comes_first_and_what_is_only_to_be_known_hinders_nothing()
    {
        Assert.Empty(Made(Ask()).Reasons);
        (QuoteReason, Quote)[] all =
        [
            (QuoteReason.CannotBeHad, Made(Ask(), Usual with { Prices = Usual.Prices with { Offers = [Offer("ball", "post", 1, 1, 3), .. Usual.Prices.Offers.Skip(1)] } })),
            (QuoteReason.NoOrderCanBeSent, Made(Ask(), Usual with { Prices = Usual.Prices with { Suppliers = [Post with { LeastOrder = 100_000, Freight = 0 }, Stall] }, Home = new Dictionary<string, int>() })),
            (QuoteReason.NoRule, Made(Ask(), Usual with { Costs = Core.Pricing.Costs.Empty })),
            (QuoteReason.Loses, Made(Ask(), Usual with { Costs = Costs("cost / 2") })),
            (QuoteReason.SizeDoesNotComeOut, Made(Ask(190), design: GradedPieces.Written("16 moon"))),
        ];
        foreach (var (reason, quote) in all)
        {
            Assert.Contains(reason, quote.Reasons);
            Assert.False(quote.CanBePromised);
            Assert.Equal(quote.Reasons.Order(), quote.Reasons);
        }
        var untimed = Made(Ask(), Usual with { Costs = Costs() });
        Assert.Equal([QuoteReason.NotTimed], untimed.Reasons);
        Assert.Null(untimed.Minutes);
        var lot = new WireLot("end", Design.Wire, 50, 1, null, true);
        Assert.Equal([QuoteReason.WireShort], Made(Ask(), Usual with { Wire = [lot] }).Reasons);
        Assert.Empty(Made(Ask(), Usual with { Wire = [lot with { LengthMm = 10_000 }] }).Reasons);
    }

    [Fact]
    public void Terms_that_cannot_be_are_refused()
    {
        Assert.Equal(FaultCodes.QuoteEndsBefore, Assert.Single(Refused(Ask() with { Until = On.AddDays(-1) })).Code);
        Assert.Equal((FaultCodes.ValueAtMost, "deposit"), (Refused(Ask() with { DepositPercent = 100.5m })[0].Code, Refused(Ask() with { DepositPercent = 100.5m })[0].Field));
        // A rule that is there and sells kits prices no piece.
        Assert.Equal(["retail"], Refused(Ask() with { Rule = "kit" }).Select(f => f.Values["known"]));
        Assert.Equal(On, Made(Ask() with { Until = On }).Ask.Until);
    }
}
