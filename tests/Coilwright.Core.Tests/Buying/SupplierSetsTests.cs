using Coilwright.Core.Buying;
using CsCheck;

namespace Coilwright.Core.Tests.Buying;

/// <summary>The sets of suppliers, against every plan written out.</summary>
public class SupplierSetsTests
{
    [Fact]
    public void Where_no_order_must_be_of_a_size_the_cheapest_of_all_plans_is_found_and_proven() => RandomLists.Any(sized: false).Sample(list =>
    {
        var cheapest = RandomLists.Cheapest(list);
        var found = new SupplierSets().Find(list);
        Assert.Equal(cheapest?.Total, found?.Total);
        Assert.True(found is null || found.IsProven);
        Assert.Equal(found is null, !list.Missing.IsEmpty);
    }, iter: 2000);

    [Fact]
    public void Where_orders_must_be_of_a_size_the_bound_holds_and_what_is_found_can_be_bought() => RandomLists.Any(sized: true).Sample(list =>
    {
        var cheapest = RandomLists.Cheapest(list);
        var found = SupplierSets.Search(list, SupplierSets.LeastBySet(list, CancellationToken.None), null, CancellationToken.None, out var bound);
        if (cheapest is not null) Assert.True(bound <= cheapest.Total);
        if (found is null) return;
        Assert.True(found.Total >= cheapest!.Total && found.Bound <= cheapest.Total);
        Assert.Equal(found.Total, found.Orders.Sum(o => o.Goods + o.Freight));
        if (found.IsProven) Assert.Equal(cheapest.Total, found.Total);
    }, iter: 2000);
}
