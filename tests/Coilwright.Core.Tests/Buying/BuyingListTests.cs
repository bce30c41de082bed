using Coilwright.Core.Buying;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Tests.Buying;

public class BuyingListTests
{
    [Fact]
    public void All_units_take_the_price_of_the_step_that_they_reach()
    {
        var offer = new Offer("disc", "quay", "strand", 40, [new PriceStep(1, 5), new PriceStep(3, 4.5m), new PriceStep(10, 3)]);
        Assert.Equal([0, 5, 10, 13.5m, 40.5m, 30], new[] { 0, 1, 2, 3, 9, 10 }.Select(offer.Cost));
    }

    [Fact]
    public void Goods_are_sent_free_from_the_size_on_that_the_supplier_says()
    {
        var supplier = new Supplier("quay", 10, 4.5m, 30);
        Assert.Equal([4.5m, 4.5m, 0], new[] { 10m, 29.9999m, 30 }.Select(supplier.FreightFor));
        Assert.Equal(4.5m, (supplier with { FreeFrom = null }).FreightFor(1000));
    }

    [Fact]
    public void The_same_item_wanted_twice_counts_together_and_what_nobody_wants_is_left_out()
    {
        Assert.True(BuyingList.TryMake([new Want("disc", 30), new Want("disc", 12)], [Offer("disc"), Offer("tube")], [new Supplier("nobody's")], out var list, out _));
        Assert.Equal([new Want("disc", 42)], list!.Wants);
        Assert.Equal(["disc"], list.Offers.Select(o => o.Item));
        Assert.Equal(["quay"], list.Suppliers.Select(s => s.Name));
    }

    [Fact]
    public void What_cannot_be_had_is_told_with_how_many()
    {
        Assert.True(BuyingList.TryMake([new Want("disc", 90), new Want("tube", 5)], [Offer("disc") with { Most = 2 }], [], out var list, out _));
        Assert.Equal([new Want("disc", 10), new Want("tube", 5)], list!.Missing);
    }

    public static TheoryData<string, string, string> Wrong => new()
    {
        { FaultCodes.BuyingNoPrice, "offers[0].prices", "none" },
        { FaultCodes.BuyingFirstStep, "offers[0].prices[0].from", "2" },
        { FaultCodes.BuyingStepsOverlap, "offers[0].prices[1].from", "1 5 5" },
        { FaultCodes.ValueAtLeast, "offers[0].prices[0].price", "negative" },
        { FaultCodes.BuyingTooFine, "offers[0].prices[0].price", "fine" },
        { FaultCodes.ValueAtLeast, "offers[0].holds", "empty" },
    };

    [Theory, MemberData(nameof(Wrong))]
    public void An_offer_that_makes_no_sense_is_told_with_its_field(string code, string field, string what)
    {
        var offer = what switch
        {
            "none" => Offer("disc") with { Prices = [] },
            "2" => Offer("disc") with { Prices = [new PriceStep(2, 1)] },
            "1 5 5" => Offer("disc") with { Prices = [new PriceStep(1, 3), new PriceStep(1, 2)] },
            "negative" => Offer("disc") with { Prices = [new PriceStep(1, -3)] },
            "fine" => Offer("disc") with { Prices = [new PriceStep(1, 0.00005m)] },
            _ => Offer("disc") with { Holds = 0 },
        };
        Assert.False(BuyingList.TryMake([new Want("disc", 1)], [offer], [], out _, out var faults));
        Assert.Equal([(code, field)], faults.Select(f => (f.Code, f.Field)));
    }

    [Fact]
    public void A_supplier_is_listed_once()
    {
        Assert.False(BuyingList.TryMake([], [], [new Supplier("quay"), new Supplier("mill"), new Supplier("quay")], out _, out var faults));
        Assert.Equal([(FaultCodes.BuyingSupplierTwice, "suppliers[2].name")], faults.Select(f => (f.Code, f.Field)));
    }

    [Fact]
    public void A_plan_that_leaves_something_out_or_sends_too_little_is_none()
    {
        Assert.True(BuyingList.TryMake([new Want("disc", 50)], [Offer("disc")], [new Supplier("quay", LeastOrder: 12)], out var list, out _));
        Assert.Null(BuyingPlan.Of(list!, [1]));
        Assert.Null(BuyingPlan.Of(list!, [2]));
        Assert.Equal(15, BuyingPlan.Of(list!, [3])!.Total);
    }

    private static Offer Offer(string item) => new(item, "quay", "strand", 40, [new PriceStep(1, 5)]);
}
