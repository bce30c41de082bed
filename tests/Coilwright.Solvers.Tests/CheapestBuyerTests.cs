using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Tests.Buying;
using CsCheck;

namespace Coilwright.Solvers.Tests;

/// <summary>The solver's plans, against every plan written out and against published knapsacks.</summary>
public class CheapestBuyerTests
{
    [Fact]
    public void The_cheapest_of_all_plans_is_found_whatever_size_orders_must_be() => RandomLists.Any(sized: true).Sample(list =>
    {
        var cheapest = RandomLists.Cheapest(list);
        var found = new CheapestBuyer().Find(list);
        Assert.Equal(cheapest?.Total, found?.Total);
        Assert.True(found is null || found.IsProven);
    }, iter: 150);

    /// <summary>0-1 knapsacks P01 to P08 (J. Burkardt, Florida State University, knapsack_01; the table's head says where they were read).</summary>
    public static TheoryData<string> Knapsacks => [.. Lines().Select(cells => cells[0])];

    // What a knapsack leaves behind is a cheapest way to buy: each thing is a pack that holds its weight and costs its profit, and at least what does not fit in must be bought.
    [Theory, MemberData(nameof(Knapsacks))]
    public void What_a_knapsack_leaves_behind_is_bought_at_least_cost(string name)
    {
        var cells = Lines().Single(c => c[0] == name);
        int[] weights = [.. Numbers(cells[4])], profits = [.. Numbers(cells[5])];
        var (capacity, optimum) = (int.Parse(cells[1], CultureInfo.InvariantCulture), int.Parse(cells[2], CultureInfo.InvariantCulture));
        Assert.True(BuyingList.TryMake([new Want("weight", weights.Sum() - capacity)],
            weights.Zip(profits, (weight, profit) => new Offer("weight", "sack", "pack", weight, [new PriceStep(1, profit)]) { Most = 1 }), [], out var list, out _));
        var plan = new CheapestBuyer().Find(list!)!;
        Assert.Equal(profits.Sum() - optimum, plan.Total);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void The_same_list_gives_the_same_plan() => RandomLists.Any(sized: true).Sample(list =>
        Assert.Equal(new CheapestBuyer().Find(list)?.Purchases.AsEnumerable(), new CheapestBuyer().Find(list)?.Purchases.AsEnumerable()), iter: 20);

    [Fact]
    public void An_order_is_filled_up_where_that_is_cheaper_than_its_freight()
    {
        // Two strands cost 10 and 6 to send; a third makes 15, from which on goods are sent free.
        Assert.True(BuyingList.TryMake([new Want("disc", 80)], [new Offer("disc", "quay", "strand", 40, [new PriceStep(1, 5)])], [new Supplier("quay", 0, 6, 15)], out var list, out _));
        var plan = new CheapestBuyer().Find(list!)!;
        Assert.Equal((3, 15m, true), (plan.Purchases.Single().Units, plan.Total, plan.IsProven));
    }

    [Fact]
    public void Stopped_at_once_it_says_no_more_than_it_knows()
    {
        Assert.True(BuyingList.TryMake([new Want("disc", 80)], [new Offer("disc", "quay", "strand", 40, [new PriceStep(1, 5)])], [new Supplier("quay", 0, 6, 15)], out var list, out _));
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.True(new CheapestBuyer().Find(list!, cancel: stopped.Token) is null or { Bound: <= 15 });
    }

    private static IEnumerable<string[]> Lines() =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", "knapsack.csv")).Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Split(','));

    private static IEnumerable<int> Numbers(string cell) => cell.Split(' ').Select(n => int.Parse(n, CultureInfo.InvariantCulture));
}
