using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Stock;
using Coilwright.Storage.Stock;
using CsCheck;

namespace Coilwright.Storage.Tests.Stock;

/// <summary>What every ledger of stock must do. A new one is held to it by a class of three lines, as at the foot of this file.</summary>
public abstract class StockLedgerContract
{
    private static readonly BeadDescription DotBead = PieceFile.ReadFrom(TestData.ExampleFiles.First(), TestData.Data).Piece!.Beads[0].Description;

    private static readonly StockItem Dot = new("dot", "Dots", StockUnit.Each);
    private static readonly StockItem Wire = new("wire-06", "Wire 0.6", StockUnit.Millimetre);

    /// <summary>An empty ledger.</summary>
    protected abstract IStockLedger Empty();

    /// <summary>How many random histories are tried.</summary>
    protected virtual int RandomRuns => 60;

    /// <summary>How many write at once.</summary>
    protected virtual int Writers => 16;

    private static Guid New() => Guid.CreateVersion7();

    private static Movement.Receive Came(string item, int count, decimal? cost = null, string? currency = null) =>
        new(New(), item, new StockLot(Quantity.Of(count)) { Cost = cost, Currency = currency ?? (cost is null ? null : "EUR") });

    private static Movement.Use Taken(string item, int count) => new(New(), item, Quantity.Of(count));

    private static StockChange Adding(StockItem item, params Movement[] movements) => new() { Items = [new ItemChange(item, 0)], Movements = [.. movements] };

    private static StockAnswer.Kept Kept(StockAnswer answer) => Assert.IsType<StockAnswer.Kept>(answer);

    private static StockAnswer.Refused Refused(StockAnswer answer) => Assert.IsType<StockAnswer.Refused>(answer);

    private static (decimal OnHand, decimal Reserved, decimal Free) Of(StockLine line) => (line.Balance.OnHand.Units, line.Balance.Reserved.Units, line.Balance.Free.Units);

    private async Task<IStockLedger> WithDots(int count)
    {
        var ledger = Empty();
        Kept(await ledger.BookAsync(Adding(Dot, Came("dot", count))));
        return ledger;
    }

    [Fact]
    public async Task An_empty_ledger_has_nothing()
    {
        var ledger = Empty();
        Assert.Empty(await ledger.ListAsync());
        Assert.Empty(await ledger.FreeAsync());
        Assert.Empty(await ledger.HistoryAsync("dot"));
        Assert.Null(await ledger.OpenAsync("dot"));
    }

    [Fact]
    public async Task An_item_and_a_lot_are_given_back_as_they_were_put_there()
    {
        var ledger = Empty();
        var item = new StockItem(DotBead.Id, "Beach pebbles", StockUnit.Each) { Bead = DotBead, Par = Quantity.Of(40), Aliases = ["river \"stones\"", "Kiesel"] };
        var lot = new StockLot(Quantity.Of(120)) { Supplier = "The bead fair", Number = "K-7/2", Drawer = "B 3", Received = new DateOnly(2026, 2, 28), Cost = 12.3456m, Currency = "EUR" };
        var came = new Movement.Receive(New(), item.Key, lot) { For = "spring pieces" };
        Kept(await ledger.BookAsync(Adding(item, came)));
        var line = (await ledger.OpenAsync(item.Key))!;
        Assert.Equal((item.Key, item.Name, item.Unit, item.Par, 1L), (line.Item.Key, line.Item.Name, line.Item.Unit, line.Item.Par, line.Revision));
        Assert.Equal(item.Aliases, line.Item.Aliases);
        Assert.Equal(StockText.OfBead(DotBead), StockText.OfBead(line.Item.Bead));
        Assert.Equal(new LotBalance(came.Id, lot, lot.Quantity, default), Assert.Single(line.Balance.Lots));
        var entry = Assert.Single(await ledger.HistoryAsync(item.Key));
        Assert.Equal(came, entry.Movement);
        Assert.Equal(TimeSpan.Zero, entry.At.Offset);
        Assert.Equal(line.Item.Key, Assert.Single(await ledger.ListAsync()).Item.Key);
    }

    [Fact]
    public async Task Every_kind_of_movement_does_what_it_says()
    {
        var ledger = await WithDots(100);
        var first = (await ledger.OpenAsync("dot"))!.Balance.Lots[0].Id;
        var second = Came("dot", 50);
        Kept(await ledger.BookAsync(StockChange.Of(second)));
        var kept = new Movement.Reserve(New(), "dot", Quantity.Of(30)) { For = "two bracelets" };
        Assert.Equal((150, 30, 120), Of(Kept(await ledger.BookAsync(StockChange.Of(kept)))["dot"]));
        // Of what is free, from the earliest lot.
        Assert.Equal((140, 30, 110), Of(Kept(await ledger.BookAsync(StockChange.Of(Taken("dot", 10))))["dot"]));
        // Under the reservation, from the lot that is named.
        var line = Kept(await ledger.BookAsync(StockChange.Of(Taken("dot", 12) with { Reservation = kept.Id, Lot = second.Id })))["dot"];
        Assert.Equal((128, 18, 110), Of(line));
        Assert.Equal([90, 38], line.Balance.Lots.Select(l => l.OnHand.Whole));
        Assert.Equal((kept.Id, Quantity.Of(18), "two bracelets"), Assert.Single(line.Balance.Reservations) is var r ? (r.Id, r.Left, r.For) : default);
        // What comes back goes to the last lot that something went out of.
        line = Kept(await ledger.BookAsync(StockChange.Of(new Movement.Return(New(), "dot", Quantity.Of(15)))))["dot"];
        Assert.Equal([93, 50], line.Balance.Lots.Select(l => l.OnHand.Whole));
        line = Kept(await ledger.BookAsync(StockChange.Of(new Movement.Release(New(), "dot", kept.Id))))["dot"];
        Assert.Equal((143, 0, 143), Of(line));
        // Counted again: what is missing goes off the earliest lot, what is over is added to the last; or to the lot that was counted.
        Assert.Equal([90, 50], Kept(await ledger.BookAsync(StockChange.Of(new Movement.Recount(New(), "dot", Quantity.Of(140)))))["dot"].Balance.Lots.Select(l => l.OnHand.Whole));
        Assert.Equal([90, 53], Kept(await ledger.BookAsync(StockChange.Of(new Movement.Recount(New(), "dot", Quantity.Of(143)))))["dot"].Balance.Lots.Select(l => l.OnHand.Whole));
        Assert.Equal([8, 53], Kept(await ledger.BookAsync(StockChange.Of(new Movement.Recount(New(), "dot", Quantity.Of(8)) { Lot = first })))["dot"].Balance.Lots.Select(l => l.OnHand.Whole));
        // From both lots where one has not enough.
        Assert.Equal([0, 41], Kept(await ledger.BookAsync(StockChange.Of(Taken("dot", 20))))["dot"].Balance.Lots.Select(l => l.OnHand.Whole));
        Assert.Equal(41, (await ledger.FreeAsync())["dot"].Whole);
    }

    [Fact]
    public async Task Nothing_goes_below_nought_and_a_refusal_says_what_is_there()
    {
        var ledger = await WithDots(10);
        var kept = new Movement.Reserve(New(), "dot", Quantity.Of(4));
        await ledger.BookAsync(StockChange.Of(kept, Taken("dot", 1)));
        var lot = (await ledger.OpenAsync("dot"))!.Balance.Lots[0].Id;
        (Movement, string, string[])[] none =
        [
            (Taken("dot", 6), FaultCodes.StockNotEnough, ["free 5", "onHand 9", "reserved 4"]),
            (new Movement.Reserve(New(), "dot", Quantity.Of(6)), FaultCodes.StockNotEnough, ["free 5"]),
            (Taken("dot", 5) with { Reservation = kept.Id }, FaultCodes.StockReservationLess, ["left 4"]),
            (Taken("dot", 1) with { Lot = New() }, FaultCodes.StockNoLot, []),
            (Taken("dot", 1) with { Reservation = New() }, FaultCodes.StockNoReservation, []),
            (new Movement.Release(New(), "dot", New()), FaultCodes.StockNoReservation, []),
            (new Movement.Recount(New(), "dot", Quantity.Of(3)), FaultCodes.StockReserved, ["left 3", "reserved 4"]),
            (new Movement.Recount(New(), "dot", Quantity.Of(3)) { Lot = New() }, FaultCodes.StockNoLot, []),
            (new Movement.Return(New(), "dot", Quantity.Of(2)), FaultCodes.StockMoreThanOut, ["out 1"]),
            (new Movement.Return(New(), "dot", Quantity.Of(1)) { Lot = New() }, FaultCodes.StockNoLot, []),
            (Taken("dot", 0), FaultCodes.ValueAbove, []),
            (Taken("dot", -3), FaultCodes.ValueAtLeast, []),
            (new Movement.Recount(New(), "dot", Quantity.Of(-1)), FaultCodes.ValueAtLeast, []),
            (new Movement.Use(New(), "dot", new Quantity(500)), FaultCodes.StockWhole, []),
            (Came("dot", -5), FaultCodes.ValueAtLeast, []),
            (Came("dot", Quantity.Most), FaultCodes.ValueAtMost, ["max 9999991"]),
            (Came("dot", 5, -1), FaultCodes.ValueAtLeast, []),
            (Came("dot", 5, 0.00001m), FaultCodes.BuyingTooFine, []),
            (Came("dot", 5, 1, "euro"), FaultCodes.StockCurrencyForm, []),
            (Came("dot", 5, null, "EUR"), FaultCodes.StockCurrencyForm, []),
            (Taken("dots", 1), FaultCodes.StockNoItem, ["nearest dot"]),
        ];
        foreach (var (movement, code, says) in none)
        {
            var refused = Refused(await ledger.BookAsync(StockChange.Of(movement)));
            Assert.Equal(code, refused.Why.Code);
            Assert.All(says, said => Assert.Contains(said, refused.Why.Values.Select(v => $"{v.Key} {v.Value}")));
            if (movement.Item == "dot") Assert.Equal((9, 4, 5), Of(refused.Now!));
        }
        // A lot can run out while others have some.
        Kept(await ledger.BookAsync(StockChange.Of(Came("dot", 20))));
        Assert.Equal("9", Refused(await ledger.BookAsync(StockChange.Of(Taken("dot", 10) with { Lot = lot }))).Why.Values["there"]);
        Assert.Equal(4, (await ledger.HistoryAsync("dot")).Length);
    }

    [Fact]
    public async Task A_currency_is_one_for_all_lots_of_an_item()
    {
        var ledger = Empty();
        Kept(await ledger.BookAsync(Adding(Dot, Came("dot", 5), Came("dot", 10, 4m))));
        var refused = Refused(await ledger.BookAsync(StockChange.Of(Came("dot", 10, 4m, "USD"))));
        Assert.Equal((FaultCodes.StockCurrencyDiffers, "EUR"), (refused.Why.Code, refused.Why.Values["other"]));
    }

    [Fact]
    public async Task Wire_is_counted_to_the_thousandth()
    {
        var ledger = Empty();
        var answer = Kept(await ledger.BookAsync(Adding(Wire, new Movement.Receive(New(), "wire-06", new StockLot(Quantity.Exactly(8011.061m)!.Value)))));
        Assert.Equal(8011.061m, answer["wire-06"].Balance.Free.Units);
        var line = Kept(await ledger.BookAsync(StockChange.Of(new Movement.Use(New(), "wire-06", Quantity.Exactly(612.002m)!.Value), new Movement.Return(New(), "wire-06", Quantity.Exactly(40.5m)!.Value))))["wire-06"];
        Assert.Equal(8011.061m - 612.002m + 40.5m, line.Balance.Free.Units);
    }

    [Fact]
    public async Task A_change_is_done_whole_or_not_at_all()
    {
        var ledger = await WithDots(10);
        var tube = new StockItem("tube", "Tubes", StockUnit.Each);
        var refused = Refused(await ledger.BookAsync(new StockChange { Items = [new ItemChange(tube, 0)], Movements = [Came("tube", 5), Taken("dot", 8), Taken("dot", 3)] }));
        Assert.Equal((2, FaultCodes.StockNotEnough, "2"), (refused.At, refused.Why.Code, refused.Why.Values["free"]));
        // What is there is told as it is, not as it would have been.
        Assert.Equal((10, 0, 10), Of(refused.Now!));
        Assert.Equal((10, 0, 10), Of(Assert.Single(await ledger.ListAsync())));
        Assert.Single(await ledger.HistoryAsync("dot"));
    }

    [Fact]
    public async Task A_movement_given_twice_counts_once()
    {
        var ledger = Empty();
        var change = Adding(Dot, Came("dot", 10, 3m));
        var use = Taken("dot", 4);
        Kept(await ledger.BookAsync(change));
        Kept(await ledger.BookAsync(StockChange.Of(use)));
        Assert.Equal((6, 0, 6), Of(Kept(await ledger.BookAsync(change))["dot"]));
        Assert.Equal((6, 0, 6), Of(Kept(await ledger.BookAsync(StockChange.Of(use, use)))["dot"]));
        // Together with something new.
        Assert.Equal((5, 0, 5), Of(Kept(await ledger.BookAsync(StockChange.Of(use, Taken("dot", 1))))["dot"]));
        // The same id for something else is a slip of the caller.
        Assert.Equal(FaultCodes.StockIdTaken, Refused(await ledger.BookAsync(StockChange.Of(use with { Quantity = Quantity.Of(5) }))).Why.Code);
        Assert.Equal(3, (await ledger.HistoryAsync("dot")).Length);
    }

    [Fact]
    public async Task An_item_is_described_anew_by_whoever_saw_it_as_it_is()
    {
        var ledger = await WithDots(3);
        Kept(await ledger.BookAsync(new StockChange { Items = [new ItemChange(Dot with { Par = Quantity.Of(20) }, 1)] }));
        var behind = Assert.IsType<StockAnswer.Behind>(await ledger.BookAsync(new StockChange { Items = [new ItemChange(Dot with { Name = "Points" }, 1)] }));
        Assert.Equal((2L, Quantity.Of(20)), (behind.Now.Revision, behind.Now.Item.Par));
        Assert.Equal((FaultCodes.StockThere, "Dots"), Refused(await ledger.BookAsync(Adding(Dot))).Why is var why ? (why.Code, why.Values["item"]) : default);
        Assert.Equal(FaultCodes.StockNoItem, Refused(await ledger.BookAsync(new StockChange { Items = [new ItemChange(Wire, 1)] })).Why.Code);
        var line = (await ledger.OpenAsync("dot"))!;
        Assert.Equal(("Dots", 2L, Quantity.Of(17), true), (line.Item.Name, line.Revision, line.Short, line.IsLow));
        Assert.Equal((3, 0, 3), Of(line));
    }

    [Fact]
    public async Task What_is_no_item_is_not_kept()
    {
        var ledger = await WithDots(3);
        (StockItem, long, string)[] none =
        [
            (Dot with { Key = "Dot one" }, 0, FaultCodes.IdForm),
            (Wire with { Name = " " }, 0, FaultCodes.TextEmpty),
            (Wire with { Name = new string('n', 500) }, 0, FaultCodes.TextTooLong),
            (Wire with { Par = Quantity.Of(-1) }, 0, FaultCodes.ValueAtLeast),
            (Wire with { Bead = DotBead }, 0, FaultCodes.StockBeadId),
            (new StockItem(DotBead.Id, "x", StockUnit.Each) { Bead = DotBead with { WidthMm = -1 } }, 0, FaultCodes.ValueAbove),
            (Dot with { Unit = StockUnit.Gram }, 1, FaultCodes.StockUnitDiffers),
        ];
        foreach (var (item, seen, code) in none) Assert.Equal(code, Refused(await ledger.BookAsync(new StockChange { Items = [new ItemChange(item, seen)] })).Why.Code);
        Assert.Single(await ledger.ListAsync());
    }

    // Two who want the last strand at once: one has it, the other is told what is left.
    [Fact]
    public async Task Of_two_who_want_the_last_strand_one_has_it_and_the_other_is_told()
    {
        var ledger = await WithDots(66);
        var answers = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => Task.Run(() => ledger.BookAsync(StockChange.Of(Taken("dot", 65))))));
        Assert.Single(answers.OfType<StockAnswer.Kept>());
        var refused = Assert.Single(answers.OfType<StockAnswer.Refused>());
        Assert.Equal(("1", 1m), (refused.Why.Values["free"], refused.Now!.Balance.Free.Units));
    }

    [Fact]
    public async Task Of_many_who_take_at_once_each_is_served_in_turn_until_nothing_is_left()
    {
        var ledger = await WithDots(100);
        var answers = await Task.WhenAll(Enumerable.Range(0, Writers).Select(i => Task.Run(() => ledger.BookAsync(StockChange.Of(i % 2 == 0 ? Taken("dot", 9) : new Movement.Reserve(New(), "dot", Quantity.Of(9)))))));
        var served = Math.Min(Writers, 11);
        Assert.Equal(served, answers.OfType<StockAnswer.Kept>().Count());
        Assert.All(answers.OfType<StockAnswer.Refused>(), r => Assert.Equal(FaultCodes.StockNotEnough, r.Why.Code));
        Assert.Equal(100 - 9 * served, (await ledger.FreeAsync())["dot"].Whole);
        var history = await ledger.HistoryAsync("dot");
        Assert.Equal(served + 1, history.Length);
        Assert.Equal(history.Select(e => e.Number).Order(), history.Select(e => e.Number));
    }

    // Model: three numbers.
    [Fact]
    public async Task Random_histories_come_out_as_three_numbers_would() =>
        await Gen.Select(Gen.Int[0, 5], Gen.Int[1, 12]).List[0, 40].SampleAsync(async steps =>
        {
            var ledger = await WithDots(20);
            var (onHand, reserved, wentOut) = (20, 0, 0);
            List<(Guid Id, int Left)> kept = [];
            foreach (var (kind, n) in steps)
            {
                var oldest = kept.FirstOrDefault();
                Movement movement = kind switch
                {
                    0 => Came("dot", n),
                    1 => Taken("dot", n),
                    2 => new Movement.Reserve(New(), "dot", Quantity.Of(n)),
                    3 => Taken("dot", n) with { Reservation = oldest.Id },
                    4 => new Movement.Recount(New(), "dot", Quantity.Of(n * 3)),
                    _ => new Movement.Return(New(), "dot", Quantity.Of(n)),
                };
                var can = kind switch { 0 => true, 1 or 2 => n <= onHand - reserved, 3 => n <= oldest.Left, 4 => n * 3 >= reserved, _ => n <= wentOut };
                var answer = await ledger.BookAsync(StockChange.Of(movement));
                Assert.Equal(can, answer is StockAnswer.Kept);
                if (!can) continue;
                onHand = kind switch { 0 or 5 => onHand + n, 1 or 3 => onHand - n, 4 => n * 3, _ => onHand };
                wentOut += kind switch { 1 or 3 => n, 5 => -n, _ => 0 };
                reserved += kind switch { 2 => n, 3 => -n, _ => 0 };
                if (kind == 2) kept.Add((movement.Id, n));
                if (kind == 3) kept[0] = (oldest.Id, oldest.Left - n);
                kept.RemoveAll(r => r.Left == 0);
                var line = Kept(answer)["dot"];
                Assert.Equal((onHand, reserved, onHand - reserved), Of(line));
                Assert.All(line.Balance.Lots, lot => Assert.True(lot.OnHand.Thousandths >= 0));
                Assert.Equal(wentOut, line.Balance.Lots.Sum(lot => lot.Out.Whole));
            }
            // The list, one item and the entries say the same.
            var open = (await ledger.OpenAsync("dot"))!;
            Assert.Equal(Of(open), Of(Assert.Single(await ledger.ListAsync())));
            Assert.Equal(open.Balance.OnHand, StockBalance.Of(await ledger.HistoryAsync("dot")).OnHand);
        }, iter: RandomRuns);
}

/// <summary>The ledger that lasts as long as the program runs.</summary>
public sealed class MemoryStockLedgerTests : StockLedgerContract
{
    protected override IStockLedger Empty() => new MemoryStockLedger(TestData.Data, TimeProvider.System);
}
