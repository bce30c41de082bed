using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Core.Stock;
using Coilwright.Documents.Tables;
using Coilwright.Wording;
using CsvHelper;
using MiniExcelLibs;

namespace Coilwright.Documents.Tests.Tables;

/// <summary>The list of stock as a table for other programs and as a workbook.</summary>
public class StockTableTests
{
    private static StockLine Line(string key, string name, StockUnit unit, string? drawer, decimal came, decimal? par, decimal? cost)
    {
        var item = new StockItem(key, name, unit) { Par = par is { } least ? Quantity.Exactly(least) : null };
        var lot = new StockLot(Quantity.Exactly(came)!.Value) { Drawer = drawer, Supplier = "The bead fair", Cost = cost, Currency = cost is null ? null : "EUR" };
        var movement = new Movement.Receive(Guid.CreateVersion7(), key, lot);
        ImmutableArray<StockEntry> entries = [new(1, DateTimeOffset.UnixEpoch, movement, [new LotChange(movement.Id, lot.Quantity)])];
        return new StockLine(item, 1, StockBalance.Of(entries), StockValue.Of(entries));
    }

    private static readonly StockLine[] Lines =
    [
        Line("dot", "Silver, \"round\"\n3 mm", StockUnit.Each, "B 3", 75, 100, 12.6m),
        Line("wire", "Wächter", StockUnit.Millimetre, null, 8011.061m, null, null),
        Line("odd", "=1+2", StockUnit.Gram, "@x", 0.5m, null, 0),
    ];

    // Read back by the same library that programs use, under a locale whose decimal sign is a comma.
    [Fact]
    public void Csv_reads_back_as_it_is_in_any_locale()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo("de-DE");
        try
        {
            using var csv = new CsvReader(new StringReader(Encoding.UTF8.GetString(StockTable.Csv(Lines))), CultureInfo.InvariantCulture);
            var rows = csv.GetRecords<dynamic>().Cast<IDictionary<string, object>>().ToList();
            Assert.Equal(["item", "name", "countedIn", "onHand", "keptBack", "free", "least", "missing", "drawers", "suppliers", "valueAverage", "valueFirstIn", "currency"], rows[0].Keys);
            Assert.Equal(["dot", "Silver, \"round\"\n3 mm", "each", "75", "0", "75", "100", "25", "B 3", "The bead fair", "12.6", "12.6", "EUR"], rows[0].Values.Cast<string>());
            Assert.Equal(["wire", "Wächter", "mm", "8011.061", "0", "8011.061", "", "0", "", "The bead fair", "", "", ""], rows[1].Values.Cast<string>());
            // A program that would reckon a formula is given none.
            Assert.Equal(("'=1+2", "'@x"), (rows[2]["name"], rows[2]["drawers"]));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("en", "On hand")]
    [InlineData("de", "Vorhanden")]
    public void A_workbook_has_numbers_as_numbers_and_names_as_names(string language, string onHand)
    {
        using var bytes = new MemoryStream(StockTable.Xlsx(Lines, Languages.Find(language)!));
        Assert.Equal([Languages.Find(language)!.Bench.Stock.Heading], bytes.GetSheetNames());
        var rows = bytes.Query(useHeaderRow: true).Cast<IDictionary<string, object>>().ToList();
        Assert.Equal(13, rows[0].Count);
        Assert.Equal([75d, 8011.061, 0.5], rows.Select(r => r[onHand]));
        Assert.Equal("=1+2", rows[2].Values.ElementAt(1));
        Assert.Equal(3, rows.Count);
    }

    [Fact]
    public void A_list_of_nothing_is_a_table_of_nothing()
    {
        Assert.StartsWith("item,name,", Encoding.UTF8.GetString(StockTable.Csv([])), StringComparison.Ordinal);
        using var bytes = new MemoryStream(StockTable.Xlsx([], Languages.English));
        Assert.Empty(bytes.Query());
    }
}
