using System.Collections.Immutable;
using Coilwright.Core.Stock;
using CsCheck;

namespace Coilwright.Core.Tests.Stock;

/// <summary>Stock at what it cost, by moving average and first in, first out.</summary>
public class StockValueTests
{
    private static readonly StockItem Dot = new("dot", "Dots", StockUnit.Each);

    /// <summary>Entries as a ledger would keep them.</summary>
    private static ImmutableArray<StockEntry> Entries(params ReadOnlySpan<Movement> movements)
    {
        ImmutableArray<StockEntry> entries = [];
        foreach (var movement in movements)
            entries = entries.Add(new StockEntry(entries.Length + 1, DateTimeOffset.UnixEpoch, movement,
                Assert.IsType<Booking.Accepted>(StockBooking.Of(Dot, StockBalance.Of(entries), movement)).Changes));
        return entries;
    }

    private static Movement.Receive Came(int count, decimal? cost) =>
        new Movement.Receive(Guid.CreateVersion7(), "dot", new StockLot(Quantity.Of(count)) { Cost = cost, Currency = cost is null ? null : "EUR" });

    private static Movement.Use Taken(int count) => new Movement.Use(Guid.CreateVersion7(), "dot", Quantity.Of(count));

    private static Movement.Return Back(int count) => new Movement.Return(Guid.CreateVersion7(), "dot", Quantity.Of(count));

    private static Movement.Recount Counted(int count) => new Movement.Recount(Guid.CreateVersion7(), "dot", Quantity.Of(count));

    // Worked by hand. 100 for 5.00 (0.05 each), 40 taken, 60 for 6.00 (0.10 each), 50 taken, 20 back, counted again as 85.
    //   average: 5.00; -40 at 0.05 = 3.00; + 6.00 = 9.00 for 120, 0.075 each; -50 = 5.25; +20 at 0.075 = 6.75; -5 = 6.375.
    //   first in: the last of what came: 100 at 0.05; 60 at 0.05; all of both but 40; 60 at 0.10 and 10 at 0.05; and 30 at 0.05; and 25 at 0.05.
    [Fact]
    public void Hand_worked_example_by_average_and_first_in()
    {
        Movement[] movements = [Came(100, 5m), Taken(40), Came(60, 6m), Taken(50), Back(20), Counted(85)];
        (decimal, decimal)[] values = [(5m, 5m), (3m, 3m), (9m, 9m), (5.25m, 6.5m), (6.75m, 7.5m), (6.375m, 7.25m)];
        for (var i = 0; i < movements.Length; i++)
        {
            var value = StockValue.Of(Entries(movements.AsSpan(0, i + 1)));
            Assert.Equal((values[i].Item1, values[i].Item2, "EUR"), (value.Average, value.FirstIn, value.Currency));
        }
    }

    // Worked by hand: a third of 1.00 is 0.3333, two thirds 0.6667, and what is used up costs nothing to the last ten-thousandth.
    [Fact]
    public void Thirds_are_rounded_and_leave_nothing_behind()
    {
        Assert.Equal((0.6667m, 0.6667m), StockValue.Of(Entries(Came(3, 1m), Taken(1))) is var two ? (two.Average, two.FirstIn) : default);
        Assert.Equal((0m, 0m), StockValue.Of(Entries(Came(3, 1m), Taken(1), Taken(1), Taken(1))) is var none ? (none.Average, none.FirstIn) : default);
        // What comes back to an empty drawer costs what it did: 0.6667 for two less half of it, 0.33335 to the even ten-thousandth, leaves 0.3333; a third of 1.00 is 0.3333 too.
        Assert.Equal((0.3333m, 0.3333m), StockValue.Of(Entries(Came(3, 1m), Taken(1), Taken(1), Taken(1), Back(1))) is var one ? (one.Average, one.FirstIn) : default);
    }

    [Fact]
    public void A_delivery_of_unknown_cost_makes_the_value_unknown_until_it_is_used_up()
    {
        Assert.Equal((null, null), StockValue.Of(Entries(Came(10, null), Came(10, 2m))) is var both ? (both.Average, both.FirstIn) : default);
        // First in, first out: only the second is left. The average was mixed with what nobody knows.
        Assert.Equal((null, 1.8m), StockValue.Of(Entries(Came(10, null), Came(10, 2m), Taken(11))) is var late ? (late.Average, late.FirstIn) : default);
        Assert.Equal((2m, 2m), StockValue.Of(Entries(Came(10, null), Taken(10), Came(10, 2m))) is var known ? (known.Average, known.FirstIn) : default);
        Assert.Equal((0m, 0m, null), StockValue.Of([]) is var nothing ? (nothing.Average, nothing.FirstIn, nothing.Currency) : default);
    }

    // A second way: every bead is a thing of its own with its price; they stand in a queue, and what comes back goes to its head again. The average is kept in fractions.
    [Fact]
    public void Random_histories_cost_what_single_beads_in_a_queue_cost() => Gen.Select(Gen.Int[0, 3], Gen.Int[1, 9], Gen.Int[0, 50]).List[1, 30].Sample(steps =>
    {
        List<Movement> movements = [];
        var queue = new List<decimal>();
        var gone = new Stack<decimal>();
        var (pot, last) = (0m, 0m);
        foreach (var (kind, n, cents) in steps)
        {
            var before = queue.Count;
            switch (kind)
            {
                case 0 or 1:
                    movements.Add(Came(n, n * cents / 100m));
                    queue.AddRange(Enumerable.Repeat(cents / 100m, n));
                    pot += n * cents / 100m;
                    break;
                case 2 when n <= queue.Count:
                    movements.Add(Taken(n));
                    pot -= pot * n / before;
                    for (var i = 0; i < n; i++) gone.Push(queue[i]);
                    queue.RemoveRange(0, n);
                    break;
                case 3 when n <= gone.Count:
                    movements.Add(Back(n));
                    pot += before > 0 ? pot * n / before : last * n;
                    for (var i = 0; i < n; i++) queue.Insert(0, gone.Pop());
                    break;
            }
            if (queue.Count > 0) last = pot / queue.Count;
        }
        var value = StockValue.Of(Entries([.. movements]));
        Assert.Equal(queue.Sum(), value.FirstIn);
        // Each step rounds to half a ten-thousandth, and a rounding before a return is multiplied by at most the nine that come back.
        Assert.InRange(value.Average!.Value - pot, -0.00005m * 10 * steps.Count, 0.00005m * 10 * steps.Count);
    });
}
