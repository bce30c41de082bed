using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Core.Stock;
using Coilwright.Storage.Stock;
using CsCheck;

namespace Coilwright.Storage.Tests.Stock;

/// <summary>Deliveries from a table: looked through line by line, taken in whole or not at all.</summary>
public class DeliveryFileTests
{
    private static readonly StockItem Dot = new("dot", "Dots", StockUnit.Each);

    private static async Task<IStockLedger> Stock()
    {
        var ledger = new MemoryStockLedger(TestData.Data, TimeProvider.System);
        await ledger.BookAsync(new StockChange
        {
            Items = [new ItemChange(Dot, 0)],
            Movements = [new Movement.Receive(Guid.CreateVersion7(), "dot", new StockLot(Quantity.Of(10)) { Cost = 1, Currency = "EUR" })],
        });
        return ledger;
    }

    private static async Task<DeliveryReading> ReadAsync(string text, IStockLedger? ledger = null) =>
        DeliveryFile.Read(Encoding.UTF8.GetBytes(text), await (ledger ?? await Stock()).ListAsync(), TestData.Data);

    private static async Task<(int Line, string Code)[]> FaultsOf(string text)
    {
        var read = await ReadAsync(text);
        Assert.Null(read.Change);
        return [.. read.Faults.Concat(read.Rows.SelectMany(r => r.Faults)).Select(f => (f.Line, f.Code))];
    }

    [Fact]
    public async Task A_file_is_taken_in_whole_and_once_although_it_is_given_twice()
    {
        var ledger = await Stock();
        var read = await ReadAsync(""""
            item,name,countedIn,unit,howMany,holds,lengthMm,strands,beadMm,massG,beadsPerG,supplier,number,drawer,received,cost,currency,par,for
            dot,,,gross,2,,,,,,,The bead fair,K-7/2,B 3,2026-02-28,12.60,EUR,,spring
            moon,"Moon, ""silver""",,strand,1.5,65,,,,,,,,,,,,40,
            round-4,,each,strands,2,,406.4,,4,,,,,,,,,,
            wire,Wire,mm,pack,1,,8011.061,,,,,,,,,,,,

            dot,,,each,1,,,,,,,,,,,,,,
            """", ledger);
        Assert.Empty(read.Faults);
        Assert.Equal([(2, "dot", 288m, false), (3, "moon", 97m, true), (4, "round-4", 202m, true), (5, "wire", 8011.061m, true), (7, "dot", 1m, false)],
            read.Rows.Select(r => (r.Line, r.Item, r.Lot!.Quantity.Units, r.IsNew)));
        for (var i = 0; i < 2; i++) Assert.IsType<StockAnswer.Kept>(await ledger.BookAsync(read.Change!));
        Assert.Equal(["dot 299", "moon 97", "round-4 202", "wire 8011.061"], (await ledger.FreeAsync()).Select(f => $"{f.Key} {f.Value}"));
        var lot = (await ledger.OpenAsync("dot"))!.Balance.Lots[1].What;
        Assert.Equal(new StockLot(Quantity.Of(288)) { Supplier = "The bead fair", Number = "K-7/2", Drawer = "B 3", Received = new DateOnly(2026, 2, 28), Cost = 12.6m, Currency = "EUR" }, lot);
        var moon = (await ledger.OpenAsync("moon"))!.Item;
        Assert.Equal(("Moon, \"silver\"", Quantity.Of(40)), (moon.Name, moon.Par));
        Assert.Equal("spring", (await ledger.HistoryAsync("dot"))[1].Movement.For);
    }

    // As spreadsheets save it where the comma is a decimal sign, with a byte order mark and heads in another order and case.
    [Fact]
    public async Task Semicolons_a_byte_order_mark_and_other_heads_are_read()
    {
        var read = await ReadAsync("\uFEFFHowMany;UNIT;item\r\n3;Dutzend;dot\r\n");
        Assert.Equal(36, Assert.Single(read.Rows).Lot!.Quantity.Whole);
    }

    [Fact]
    public async Task Every_slip_is_told_with_its_line_and_nothing_is_taken_in() => Assert.Equal(
        [
            (2, FaultCodes.SaleUnitUnclear), // GR may be gram or gross
            (3, FaultCodes.WordUnknown),
            (4, FaultCodes.TableNumber),
            (5, FaultCodes.ValueAbove),
            (6, FaultCodes.TableDay),
            (7, FaultCodes.StockCurrencyDiffers),
            (8, FaultCodes.StockCurrencyForm),
            (9, FaultCodes.IdForm),
            (10, FaultCodes.SaleUnitNeeds),
            (11, FaultCodes.FieldMissing),
            (11, FaultCodes.FieldMissing),
            (12, FaultCodes.StockUnitDiffers),
            (14, FaultCodes.StockCurrencyDiffers), // against a line above, not against the stock
        ],
        (await FaultsOf("""
            item,unit,howMany,received,cost,currency,countedIn
            dot,GR,3,,,,
            dot,strnd,3,,,,
            dot,each,"1,5",,,,
            dot,each,-3,,,,
            dot,each,3,28.2.2026,,,
            dot,each,3,,2,USD,
            dot,each,3,,2,,
            Dot one,each,3,,,,
            dot,strand,3,,,,
            dot,,,,,,
            dot,each,3,,,,g
            new,each,3,,1,EUR,
            new,each,3,,1,USD,
            """)).OrderBy(f => f.Line));

    [Theory]
    [InlineData("", FaultCodes.FieldMissing)]
    [InlineData("item,unit\ndot,each\n", FaultCodes.FieldMissing)]
    [InlineData("item,unit,howMany,colour\ndot,each,1,red\n", FaultCodes.FieldUnknown)]
    [InlineData("item,unit,howMany,item\ndot,each,1,dot\n", FaultCodes.FieldTwice)]
    [InlineData("item,unit,howMany\n", FaultCodes.TableNoRows)]
    public async Task A_file_that_is_no_such_table_is_told(string text, string code) => Assert.Contains(code, (await FaultsOf(text)).Select(f => f.Code));

    // Where else one may stand wrong, SeparatedValuesTests say.
    [Theory]
    [InlineData("item,unit,howMany,supplier\ndot,each,1,\"open\ndot,each,2,\n", 2)]
    [InlineData("item;unit;howMany;\"supplier\ndot;each;1;a\n", 1)]
    public async Task A_quote_without_its_other_is_told_with_its_line(string text, int line) => Assert.Equal([(line, FaultCodes.TableBroken)], await FaultsOf(text));

    [Fact]
    public async Task Heads_under_empty_lines_are_told_where_they_stand() =>
        Assert.Equal([(3, FaultCodes.FieldUnknown)], await FaultsOf("\n,,\nitem,unit,howMany,colour\ndot,each,1,red\n"));

    // What a spreadsheet calls Unicode text.
    [Fact]
    public async Task Tabs_in_UTF_16_are_read()
    {
        var there = await (await Stock()).ListAsync();
        byte[] file = [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("item\tunit\thowMany\tsupplier\r\ndot\tDutzend\t3\tGrößenhandel\r\n")];
        Assert.Equal("Größenhandel", Assert.Single(DeliveryFile.Read(file, there, TestData.Data).Rows).Lot!.Supplier);
    }

    [Fact]
    public async Task What_is_no_text_or_too_much_of_it_is_told()
    {
        var there = await (await Stock()).ListAsync();
        Assert.Equal(FaultCodes.FileNotUtf8, Assert.Single(DeliveryFile.Read(new byte[] { (byte)'i', 0xFF }, there, TestData.Data).Faults).Code);
        Assert.Equal(FaultCodes.FileTooLarge, Assert.Single(DeliveryFile.Read(new byte[PieceFile.MaxBytes + 1], there, TestData.Data).Faults).Code);
        var many = "item,unit,howMany\n" + string.Concat(Enumerable.Repeat("dot,each,1\n", DeliveryFile.MostRows + 1));
        Assert.Equal([(DeliveryFile.MostRows + 2, FaultCodes.TableTooLong)], await FaultsOf(many));
        Assert.Contains(FaultCodes.TableBroken, (await FaultsOf("item,unit,howMany\ndot,each,\"" + new string('x', 20_000))).Select(f => f.Code));
    }

    // Whatever is in a file, it is read to an answer, and what is called sound can be taken in.
    [Fact]
    public void Any_text_comes_to_an_answer() =>
        Gen.OneOf(Gen.String[Gen.Char["\",;\n\r\tdote1.-5 äGR"], 0, 80], Gen.String).Select(rest => "item,unit,howMany,holds,cost,currency\n" + rest).Sample(text =>
        {
            var ledger = Stock().GetAwaiter().GetResult();
            var read = ReadAsync(text, ledger).GetAwaiter().GetResult();
            Assert.Equal(read.Change is null, !read.Faults.IsEmpty || read.Rows.Any(r => !r.Faults.IsEmpty));
            if (read.Change is { } change) Assert.IsType<StockAnswer.Kept>(ledger.BookAsync(change).GetAwaiter().GetResult());
        }, iter: 400);
}
