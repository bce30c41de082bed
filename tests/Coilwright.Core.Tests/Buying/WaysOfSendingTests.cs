using Coilwright.Core.Buying;
using CsCheck;

namespace Coilwright.Core.Tests.Buying;

/// <summary>How each order is sent, against every plan written out.</summary>
public class WaysOfSendingTests
{
    private const long Sweeps = 3_000;

    [Fact]
    public void The_bound_holds_and_what_is_found_can_be_bought() => RandomLists.Any(sized: true).Where(l => l.Missing.IsEmpty).Sample(list =>
    {
        var cheapest = RandomLists.Cheapest(list);
        decimal bound = 0;
        var found = WaysOfSending.Search(list, null, ref bound, Sweeps);
        if (cheapest is null)
        {
            Assert.Null(found);
            return;
        }
        Assert.True(bound <= cheapest.Total);
        if (found is null) return;
        Assert.True(found.Total >= cheapest.Total && found.Bound <= cheapest.Total);
        Assert.Equal(found.Total, found.Orders.Sum(o => o.Goods + o.Freight));
    }, iter: 2000);

    [Fact]
    public void Where_no_order_must_be_of_a_size_nothing_is_left_open() => RandomLists.Any(sized: false).Where(l => l.Missing.IsEmpty).Sample(list =>
    {
        decimal bound = 0;
        var found = WaysOfSending.Search(list, null, ref bound, Sweeps)!;
        Assert.Equal((RandomLists.Cheapest(list)!.Total, true), (found.Total, found.IsProven));
    }, iter: 2000);

    // Worked by hand: 12 beads at 1.00 near, with a least order of 20.00; far they cost 1.30 each and 3.00 freight. Near alone is too small an order; filled up to 20 beads it costs 20.00; far 18.60.
    [Fact]
    public void An_order_that_must_be_filled_up_is_held_against_the_dearer_shop()
    {
        Assert.True(BuyingList.TryMake([new Want("bead", 12)], [new Offer("bead", "near", "piece", 1, [new PriceStep(1, 1m)]), new Offer("bead", "far", "piece", 1, [new PriceStep(1, 1.30m)])],
            [new Supplier("near", 20), new Supplier("far", 0, 3)], out var list, out _));
        decimal bound = 0;
        var found = WaysOfSending.Search(list!, null, ref bound, Sweeps)!;
        Assert.Equal((18.60m, true), (found.Total, found.IsProven));
    }

    [Fact]
    public void The_same_list_gives_the_same_plan_and_a_plan_that_was_there_is_not_lost() => RandomLists.Any(sized: true).Where(l => l.Missing.IsEmpty).Sample(list =>
    {
        decimal one = 0, two = 0;
        var (first, second) = (WaysOfSending.Search(list, null, ref one, Sweeps), WaysOfSending.Search(list, null, ref two, Sweeps));
        Assert.Equal((first?.Total, one), (second?.Total, two));
        decimal three = 0;
        if (RandomLists.Cheapest(list) is { } cheapest) Assert.Equal(cheapest.Total, WaysOfSending.Search(list, cheapest, ref three, Sweeps)!.Total);
    }, iter: 300);

    [Fact]
    public void Stopped_at_once_it_says_no_more_than_it_knows()
    {
        Assert.True(BuyingList.TryMake([new Want("bead", 12)], [new Offer("bead", "near", "piece", 1, [new PriceStep(1, 1m)])], [new Supplier("near", 20)], out var list, out _));
        decimal bound = 0;
        WaysOfSending.Search(list!, null, ref bound, Sweeps, null, new CancellationToken(true));
        Assert.InRange(bound, 0, 20);
    }
}
