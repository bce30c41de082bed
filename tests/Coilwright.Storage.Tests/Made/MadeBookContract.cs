using Coilwright.Core.Faults;
using Coilwright.Core.Made;
using Coilwright.Core.Stock;
using Coilwright.Storage.Made;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;
using Coilwright.Storage.Tests.Shelf;
using CsCheck;

namespace Coilwright.Storage.Tests.Made;

/// <summary>What every book of what was made must do.</summary>
public abstract class MadeBookContract
{
    private protected static readonly DateOnly Monday = new(2026, 3, 2);

    /// <summary>An empty book with the shelf and the stock beside it.</summary>
    private protected abstract (IMadeBook Book, IPieceShelf Shelf, IStockLedger Stock) Empty();

    /// <summary>How many random histories are tried.</summary>
    private protected virtual int RandomRuns => 60;

    private protected static Guid New() => Guid.CreateVersion7();

    private protected static MadeStep.Make Make(int count = 1) => new(New(), Monday, "Tidewrack", count);

    private protected static MadeStep.Sell Sell(MadeStep.Make of, int count = 1, decimal received = 40, string currency = "EUR") => new(New(), of.Id, Monday.AddDays(3), count, new Paid(received, currency));

    private protected static MadeRecord Kept(MadeAnswer answer) => answer is MadeAnswer.Kept kept ? kept.Now[^1] : throw new InvalidOperationException(answer.ToString());

    private static Fault Refused(MadeAnswer answer) => Assert.IsType<MadeAnswer.Refused>(answer).Why;

    private protected static async Task<Guid> StockAsync(IStockLedger stock, int first, int second)
    {
        StockChange change = new() { Items = [new ItemChange(new StockItem("dot", "Dots", StockUnit.Each), 0)], Movements = [Came(first), Came(second)] };
        return Assert.IsType<StockAnswer.Kept>(await stock.BookAsync(change))["dot"].Balance.Lots[1].Id;

        static Movement.Receive Came(int count) => new(New(), "dot", new StockLot(Quantity.Of(count)));
    }

    [Fact]
    public async Task An_empty_book_has_nothing()
    {
        var (book, _, _) = Empty();
        Assert.Empty(await book.ListAsync());
        Assert.Null(await book.OpenAsync(New()));
    }

    [Fact]
    public async Task Every_kind_of_step_is_given_back_as_it_was_written_down()
    {
        var (book, shelf, _) = Empty();
        var piece = SqliteShelves.Kept(await shelf.AddAsync(SqliteShelves.Boardwalk));
        var make = Make(9) with { Title = "Strandgut \"ü\"", Piece = piece.Id, Revision = 1, WristMm = 162.5, Who = "Ann", Note = "for the <b>shop</b>", Used = [new UsedBeads("dot", Quantity.Of(12)) { Lot = New() }, new UsedBeads("wire", new Quantity(1500))] };
        var sell = Sell(make, 2, 80.1234m) with { Fees = 4.5m, Where = "Harbour market", Who = "Bea" };
        MadeStep[] steps =
        [
            make, new MadeStep.Ask(New(), make.Id, Monday, new Paid(42.5m, "EUR")), sell,
            new MadeStep.ComeBack(New(), make.Id, sell.On, sell.Id, 1) { Refund = new Paid(40, "EUR") },
            new MadeStep.Give(New(), make.Id, Monday, 1) { Who = "Cleo" },
            new MadeStep.Mend(New(), make.Id, Monday, "new end loop") { Fee = new Paid(5, "USD"), WristMm = 150, Used = [new UsedBeads("dot", Quantity.Of(2))] },
            new MadeStep.Pack(New(), make.Id, Monday, 3, "Spring fair"), new MadeStep.Unpack(New(), make.Id, Monday, 1, "Spring fair"),
            new MadeStep.Lose(New(), make.Id, Monday, 1) { Show = "Spring fair" }, new MadeStep.TakeApart(New(), make.Id, Monday, 1) { Back = [new UsedBeads("dot", Quantity.Of(1))] },
        ];
        Kept(await book.WriteDownAsync([.. steps]));
        var record = (await book.OpenAsync(make.Id))!;
        Assert.Equal(steps.Select(Text), record.Entries.Select(e => Text(e.Step)));
        Assert.Equal((1L, 9 - 2 + 1 - 1 - 3 + 1 - 1, 1, 1, 1, 1, 1), (record.Number, record.Now.AtHome, record.Now.AtShows["Spring fair"], record.Now.Sold, record.Now.Given, record.Now.Lost, record.Now.TakenApart));
        Assert.Equal(record.Entries.Select(e => e.Place).Order(), record.Entries.Select(e => e.Place));
        Assert.All(record.Entries, e => Assert.Equal(TimeSpan.Zero, e.At.Offset));
        Assert.Equal(record.Entries.Select(e => Text(e.Step)), Assert.Single(await book.ListAsync()).Entries.Select(e => Text(e.Step)));

        static string Text(MadeStep step) => $"{step with { }} {string.Join("; ", step switch { MadeStep.Make m => m.Used, MadeStep.Mend m => m.Used, MadeStep.TakeApart a => a.Back, _ => [] })}"
            .Replace("System.Collections.Immutable.ImmutableArray`1[Coilwright.Core.Made.UsedBeads]", "", StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_is_refused_with_its_reason_and_nothing_of_it_is_kept()
    {
        var (book, _, _) = Empty();
        var make = Make(2);
        var sell = Sell(make, 1, 40);
        Kept(await book.WriteDownAsync([make, sell]));
        (MadeStep, string)[] none =
        [
            (Sell(make, 2), FaultCodes.MadeTooFew),
            (Sell(make) with { Show = "Spring fair" }, FaultCodes.MadeTooFew),
            (Sell(make) with { Fees = 40.01m }, FaultCodes.MadeFeesAbove),
            (Sell(make) with { Fees = -1 }, FaultCodes.ValueAtLeast),
            (Sell(make, 1, -1), FaultCodes.ValueAtLeast),
            (Sell(make, 1, 1.00001m), FaultCodes.BuyingTooFine),
            (Sell(make, 1, 1, "euro"), FaultCodes.CurrencyForm),
            (Sell(make, 0), FaultCodes.ValueAtLeast),
            (Sell(make) with { On = Monday.AddDays(-1) }, FaultCodes.MadeBefore),
            (Sell(Make()), FaultCodes.MadeNoRecord),
            (sell with { Fees = 1 }, FaultCodes.MadeIdTaken),
            (new MadeStep.ComeBack(New(), make.Id, sell.On, sell.Id, 2), FaultCodes.MadeTooManyBack),
            (new MadeStep.ComeBack(New(), make.Id, sell.On.AddDays(-1), sell.Id, 1), FaultCodes.MadeBefore),
            (new MadeStep.ComeBack(New(), make.Id, sell.On, New(), 1), FaultCodes.MadeNoStep),
            (new MadeStep.ComeBack(New(), make.Id, sell.On, sell.Id, 1) { Refund = new Paid(40, "USD") }, FaultCodes.MadeCurrencyDiffers),
            (new MadeStep.ComeBack(New(), make.Id, sell.On, sell.Id, 1) { Refund = new Paid(41, "EUR") }, FaultCodes.MadeRefundAbove),
            (new MadeStep.TakeBack(New(), make.Id, Monday, make.Id), FaultCodes.MadeRestsOn),
            (new MadeStep.TakeBack(New(), make.Id, Monday, New()), FaultCodes.MadeNoStep),
            (new MadeStep.Mend(New(), make.Id, Monday, " "), FaultCodes.TextEmpty),
            (Make() with { Title = "" }, FaultCodes.TextEmpty),
            (Make() with { WristMm = 5 }, FaultCodes.ValueAtLeast),
            (Make() with { Piece = New(), Revision = 1 }, FaultCodes.MadeNoPiece),
        ];
        foreach (var (step, code) in none) Assert.Equal(code, Refused(await book.WriteDownAsync([step])).Code);
        Assert.Equal(2, Assert.Single(await book.ListAsync()).Entries.Length);
    }

    [Fact]
    public async Task Beads_are_booked_out_of_stock_with_the_piece_from_the_earliest_lots_or_the_one_that_is_named()
    {
        var (book, _, stock) = Empty();
        var second = await StockAsync(stock, 10, 50);
        var make = Make() with { Used = [new UsedBeads("dot", Quantity.Of(15)) { Movement = New() }, new UsedBeads("dot", Quantity.Of(4)) { Movement = New(), Lot = second }] };
        var record = Kept(await book.WriteDownAsync([make]));
        Assert.Equal([10, 5, 4], record.Make.Used.Select(u => u.Quantity.Whole));
        Assert.Equal([true, false, false], record.Make.Used.Select(u => u.Lot != second));
        var line = (await stock.OpenAsync("dot"))!;
        Assert.Equal([0, 41], line.Balance.Lots.Select(l => l.OnHand.Whole));
        Assert.Equal("Tidewrack", (await stock.HistoryAsync("dot"))[^1].Movement.For);
        // Given again it counts once, in the book and in the drawers.
        Assert.Equal(1, Kept(await book.WriteDownAsync([make])).Number);
        Assert.Equal(41, (await stock.FreeAsync())["dot"].Whole);
        // A mistake: all of it goes back to where it came from.
        Assert.True(Kept(await book.WriteDownAsync([new MadeStep.TakeBack(New(), make.Id, Monday, make.Id)])).IsVoid);
        Assert.Equal([10, 50], (await stock.OpenAsync("dot"))!.Balance.Lots.Select(l => l.OnHand.Whole));
    }

    [Fact]
    public async Task What_the_stock_refuses_is_not_in_the_book_and_what_the_book_refuses_takes_nothing_out_of_stock()
    {
        var (book, _, stock) = Empty();
        await StockAsync(stock, 10, 5);
        Assert.Equal(FaultCodes.StockNotEnough, Refused(await book.WriteDownAsync([Make() with { Used = [new UsedBeads("dot", Quantity.Of(16)) { Movement = New() }] }])).Code);
        Assert.Equal(FaultCodes.StockNoItem, Refused(await book.WriteDownAsync([Make() with { Used = [new UsedBeads("none", Quantity.Of(1)) { Movement = New() }] }])).Code);
        var make = Make() with { Used = [new UsedBeads("dot", Quantity.Of(6)) { Movement = New() }] };
        Assert.Equal(FaultCodes.MadeTooFew, Refused(await book.WriteDownAsync([make, Sell(make, 2)])).Code);
        Assert.Equal(15, (await stock.FreeAsync())["dot"].Whole);
        Assert.Empty(await book.ListAsync());
        // What is only written down moves nothing.
        Kept(await book.WriteDownAsync([Make() with { Used = [new UsedBeads("dot", Quantity.Of(900))] }]));
        Assert.Equal(15, (await stock.FreeAsync())["dot"].Whole);
    }

    [Fact]
    public async Task A_repair_takes_beads_and_taking_apart_brings_them_back()
    {
        var (book, _, stock) = Empty();
        await StockAsync(stock, 10, 5);
        var make = Make() with { Used = [new UsedBeads("dot", Quantity.Of(8)) { Movement = New() }] };
        Kept(await book.WriteDownAsync([make, new MadeStep.Mend(New(), make.Id, Monday, "two more for a wider wrist") { WristMm = 170, Used = [new UsedBeads("dot", Quantity.Of(3)) { Movement = New() }] }]));
        Assert.Equal((4, 170.0), ((await stock.FreeAsync())["dot"].Whole, (await book.OpenAsync(make.Id))!.Now.WristMm));
        Kept(await book.WriteDownAsync([new MadeStep.TakeApart(New(), make.Id, Monday, 1) { Back = [new UsedBeads("dot", Quantity.Of(10)) { Movement = New() }] }]));
        Assert.Equal(14, (await stock.FreeAsync())["dot"].Whole);
        Assert.Equal(FaultCodes.MadeNoneLeft, Refused(await book.WriteDownAsync([new MadeStep.Mend(New(), make.Id, Monday, "again")])).Code);
    }

    [Fact]
    public async Task A_mistaken_sale_is_taken_back_by_another_entry_and_both_stay()
    {
        var (book, _, _) = Empty();
        var make = Make();
        var sell = Sell(make);
        Kept(await book.WriteDownAsync([make, sell]));
        var record = Kept(await book.WriteDownAsync([new MadeStep.TakeBack(New(), make.Id, Monday, sell.Id)]));
        Assert.Equal((3, 1, 0), (record.Entries.Length, record.Now.AtHome, record.Now.Sold));
        Assert.Empty(Accounts.Of([record]).Lines);
        Assert.Equal(1, Kept(await book.WriteDownAsync([Sell(make)])).Now.Sold);
    }

    [Fact]
    public async Task Names_are_erased_from_a_record_and_its_amounts_stay()
    {
        var (book, _, _) = Empty();
        var (make, other) = (Make() with { Who = "Ann Mustermann", Note = "her birthday" }, Make() with { Who = "Bea" });
        var sell = Sell(make) with { Who = "Ann Mustermann" };
        Kept(await book.WriteDownAsync([make, other, sell]));
        var record = Kept(await book.WriteDownAsync([new MadeStep.Erase(New(), make.Id, Monday)]));
        Assert.False(record.HasNames);
        record = (await book.OpenAsync(make.Id))!;
        Assert.False(record.HasNames);
        Assert.Equal(40m, Assert.Single(Accounts.Of([record]).Sums).Received);
        Assert.Equal("Bea", (await book.OpenAsync(other.Id))!.Make.Who);
        // Whoever did not hear of the sale and asks again writes no name down again.
        Assert.False(Kept(await book.WriteDownAsync([sell])).HasNames);
    }

    [Fact]
    public async Task Of_many_who_sell_the_same_piece_at_once_one_does()
    {
        var (book, _, _) = Empty();
        var make = Make();
        Kept(await book.WriteDownAsync([make]));
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(() => book.WriteDownAsync([Sell(make, 1, i)]))));
        Assert.Single(answers.OfType<MadeAnswer.Kept>());
        Assert.All(answers.OfType<MadeAnswer.Refused>(), r => Assert.Equal(FaultCodes.MadeTooFew, r.Why.Code));
        Assert.Equal(7, answers.OfType<MadeAnswer.Refused>().Count());
    }

    [Fact]
    public async Task Records_are_numbered_in_the_order_in_which_they_were_written_down()
    {
        var (book, _, _) = Empty();
        await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => book.WriteDownAsync([Make()]))));
        Assert.Equal([1L, 2, 3, 4, 5, 6], (await book.ListAsync()).Select(r => r.Number));
    }

    // Model: a number for each place, and a sum of money.
    [Fact]
    public async Task Random_histories_come_out_as_a_few_numbers_would() =>
        await Gen.Select(Gen.Int[0, 7], Gen.Int[1, 4]).List[0, 30].SampleAsync(async asked =>
        {
            var (book, _, _) = Empty();
            var make = Make(6);
            Kept(await book.WriteDownAsync([make]));
            var (home, show, lost, apart, money) = (6, 0, 0, 0, 0);
            List<(Guid Id, int Left, int Money)> sold = [];
            foreach (var (kind, n) in asked)
            {
                var last = sold.LastOrDefault();
                MadeStep step = kind switch
                {
                    0 => Sell(make, n, 10 * n),
                    1 => Sell(make, n, 10 * n) with { Show = "Spring fair" },
                    2 => new MadeStep.Pack(New(), make.Id, Monday, n, "Spring fair"),
                    3 => new MadeStep.Unpack(New(), make.Id, Monday, n, "Spring fair"),
                    4 => new MadeStep.ComeBack(New(), make.Id, Monday.AddDays(5), last.Id, n) { Refund = new Paid(7 * n, "EUR") },
                    5 => new MadeStep.Lose(New(), make.Id, Monday, n) { Show = "Spring fair" },
                    6 => new MadeStep.TakeApart(New(), make.Id, Monday, n),
                    _ => new MadeStep.TakeBack(New(), make.Id, Monday, last.Id),
                };
                var can = kind switch
                {
                    0 or 2 or 6 => n <= home,
                    1 or 3 or 5 => n <= show,
                    4 => n <= last.Left && 7 * n <= last.Money,
                    // Nothing rests on a sale that nothing came back of.
                    _ => last.Left > 0 && last.Left * 10 == last.Money,
                };
                var answer = await book.WriteDownAsync([step]);
                Assert.Equal(can, answer is MadeAnswer.Kept);
                if (!can) continue;
                switch (kind)
                {
                    case 0: home -= n; sold.Add((step.Id, n, 10 * n)); money += 10 * n; break;
                    case 1: show -= n; sold.Add((step.Id, n, 10 * n)); money += 10 * n; break;
                    case 2: home -= n; show += n; break;
                    case 3: home += n; show -= n; break;
                    case 4: home += n; sold[^1] = (last.Id, last.Left - n, last.Money - 7 * n); money -= 7 * n; break;
                    case 5: show -= n; lost += n; break;
                    case 6: home -= n; apart += n; break;
                    default:
                        var atShow = (await book.OpenAsync(make.Id))!.Entries.Select(e => e.Step).OfType<MadeStep.Sell>().Single(s => s.Id == last.Id).Show is not null;
                        (home, show) = atShow ? (home, show + last.Left) : (home + last.Left, show);
                        money -= last.Money;
                        sold.RemoveAt(sold.Count - 1);
                        break;
                }
                var now = Kept(answer).Now;
                Assert.Equal((home, show, sold.Sum(s => s.Left), lost, apart), (now.AtHome, now.AtShows.Values.Sum(), now.Sold, now.Lost, now.TakenApart));
                Assert.Equal(6, now.InHand + now.Sold + now.Given + now.Lost + now.TakenApart);
            }
            var record = (await book.OpenAsync(make.Id))!;
            Assert.Equal(money, Accounts.Of([record]).Sums.Sum(s => s.Received));
            var tally = ShowTally.Of([record], "Spring fair");
            Assert.Equal(show, tally.Still);
        }, iter: RandomRuns);
}

/// <summary>The book that lasts as long as the program runs.</summary>
public sealed class MemoryMadeBookTests : MadeBookContract
{
    private protected override (IMadeBook, IPieceShelf, IStockLedger) Empty()
    {
        var (shelf, stock) = (new MemoryShelf(TimeProvider.System), new MemoryStockLedger(TestData.Data, TimeProvider.System));
        return (new MemoryMadeBook(shelf, stock, TestData.Data, TimeProvider.System), shelf, stock);
    }
}
