using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;
using static Coilwright.Core.Tests.Stringing.OrderTexts;

namespace Coilwright.Core.Tests.Stringing;

/// <summary>Orders as flat lists.</summary>
public class OrderListTests
{
    private static OrderListItem.Bead Bead(string id) => new(id);

    private static OrderListItem.Group Group(string name, params OrderListItem[] of) => new(name, [.. of]);

    private static string[] FaultsOf(params OrderListItem[] items)
    {
        var read = OrderList.Read(items, BeadIds);
        Assert.Equal(read.Faults.IsEmpty, read.Order is not null);
        return [.. read.Faults.Select(Shown)];
    }

    [Fact]
    public void Beads_and_groups_are_strung_as_they_come()
    {
        var read = OrderList.Read([Bead("round"), Group("g", Bead("disc"), Group("h", Bead("chip")), Bead("bar")), Bead("stone")], BeadIds);
        Assert.Empty(read.Faults);
        Assert.Equal("round g[disc h[chip] bar] stone", Shown(read.Order!, BeadIds));
        Assert.Null(read.Tree);
    }

    [Fact]
    public void A_name_may_come_again_with_other_beads()
    {
        var read = OrderList.Read([Group("g", Bead("disc")), Group("g", Bead("disc"), Bead("chip"))], BeadIds);
        Assert.Equal("g[disc] g[disc chip]", Shown(read.Order!, BeadIds));
    }

    [Fact]
    public void Every_fault_has_its_path()
    {
        Assert.Equal(["0:0 order.empty ''"], FaultsOf());
        Assert.Equal(
            [
                "[1] order.unknown-name 'rond' nearest=round",
                "[2].of[0] order.name-form 'Disc' lower=disc nearest=disc",
                "[2].of[1].of[1] order.unknown-name 'turquoise'",
                "[3].of order.empty 'h'",
            ],
            FaultsOf(Bead("round"), Bead("rond"), Group("g", Bead("Disc"), Group("h", Bead("chip"), Bead("turquoise"))), Group("h")));
        Assert.Equal(
            [
                "[0].group order.group-is-bead 'chip'",
                "[1].group order.name-form 'Cluster' lower=cluster",
                "[2].group order.name-reserved 'mirror' known=around, backwards, between, mirror, with, x",
                "[3].group text.empty ''",
                "[4] text.empty ''",
            ],
            FaultsOf(Group("chip", Bead("disc")), Group("Cluster", Bead("disc")), Group("mirror", Bead("disc")), Group("", Bead("disc")), Bead("")));
    }

    [Fact]
    public void A_group_may_not_stand_in_itself()
    {
        Assert.Equal(["[0].of[0] order.group-in-itself 'g' path=g > g"], FaultsOf(Group("g", Group("g", Bead("chip")))));
        Assert.Equal(["[1].of[1].of[0] order.group-in-itself 'g' path=g > h > g"],
            FaultsOf(Bead("chip"), Group("g", Bead("chip"), Group("h", Group("g", Bead("chip"))))));
    }

    [Fact]
    public void Limits_hold()
    {
        OrderListItem Deep(int depth) => Enumerable.Range(1, depth).Aggregate((OrderListItem)Bead("chip"), (inner, i) => Group($"g{i}", inner));
        Assert.Empty(FaultsOf(Deep(50)));
        Assert.Equal([$"{string.Join(".of", Enumerable.Repeat("[0]", 51))} order.too-deep 'g1' max=50"], FaultsOf(Deep(51)));
        Assert.Equal([$"{string.Join(".of", Enumerable.Repeat("[0]", 51))} order.too-deep 'g49950' max=50"], FaultsOf(Deep(50_000)));
        Assert.Empty(FaultsOf([.. Enumerable.Repeat(Bead("chip"), 200_000)]));
        Assert.Equal(["[200000] order.too-many '' max=200000"], FaultsOf([.. Enumerable.Repeat(Bead("chip"), 300_000)]));
        Assert.Equal(["[1].of[199999] order.too-many '' max=200000"], FaultsOf(Bead("disc"), Group("g", [.. Enumerable.Repeat(Bead("chip"), 300_000)])));
        Assert.Equal(["[100000] order.too-many-groups '' max=200000"],
            FaultsOf([.. Enumerable.Repeat(Group("g", Group("h", Bead("chip"))), 100_001)]));
        Assert.Equal(OrderLimits.FaultsTold, FaultsOf([.. Enumerable.Repeat(Bead("rond"), 1000)]).Length);
    }

    [Fact]
    public void An_order_whose_groups_overlap_has_no_list() =>
        Assert.Throws<ArgumentException>(() => OrderList.Of(new StringingOrder([0, 1, 2], [new("g", 0, 2), new("h", 1, 2)]), BeadIds));
}
