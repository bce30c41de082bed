using System.Globalization;
using System.Text;
using Coilwright.Core.Stock;
using Coilwright.Wording;
using CsvHelper;
using CsvHelper.Configuration;
using MiniExcelLibs;

namespace Coilwright.Documents.Tables;

/// <summary>The list of stock as a table, a line for each item: for other programs, or to look at as a workbook.</summary>
public static class StockTable
{
    // The names of the columns are promised: other programs read them.
    private static readonly string[] Columns =
        ["item", "name", "countedIn", "onHand", "keptBack", "free", "least", "missing", "drawers", "suppliers", "valueAverage", "valueFirstIn", "currency"];

    /// <summary>Comma-separated values (RFC 4180) in UTF-8, with a decimal point and English heads in every language. What a program would take for a formula is escaped with an
    /// apostrophe.</summary>
    public static byte[] Csv(IEnumerable<StockLine> lines)
    {
        using var bytes = new MemoryStream();
        using (var text = new StreamWriter(bytes, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { NewLine = "\r\n" })
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n", InjectionOptions = InjectionOptions.Escape }))
        {
            foreach (var column in Columns) csv.WriteField(column);
            csv.NextRecord();
            foreach (var line in lines)
            {
                foreach (var cell in Cells(line)) csv.WriteField(cell is decimal number ? number.ToString("0.####", CultureInfo.InvariantCulture) : cell as string ?? "");
                csv.NextRecord();
            }
        }
        return bytes.ToArray();
    }

    /// <summary>An Office Open XML workbook of one sheet, its heads in words.</summary>
    /// <param name="lines">The list.</param>
    /// <param name="language">The language of the heads.</param>
    public static byte[] Xlsx(IEnumerable<StockLine> lines, Language language)
    {
        var words = language.Bench.Stock;
        string[] heads = [words.Key, words.Name, words.CountedIn, words.OnHand, words.Reserved, words.Free, words.Par, words.Missing, words.Drawer, words.Supplier,
            $"{words.Value}, {words.Average}", $"{words.Value}, {words.FirstIn}", words.Currency];
        using var bytes = new MemoryStream();
        bytes.SaveAs(lines.Select(line => heads.Zip(Cells(line)).ToDictionary(c => c.First, c => c.Second)), sheetName: words.Heading);
        return bytes.ToArray();
    }

    private static object?[] Cells(StockLine line) =>
    [
        line.Item.Key, line.Item.Name, StockRules.Word(line.Item.Unit), line.Balance.OnHand.Units, line.Balance.Reserved.Units, line.Balance.Free.Units, line.Item.Par?.Units, line.Short.Units,
        string.Join("; ", line.Drawers), string.Join("; ", line.Suppliers), line.Value.Average, line.Value.FirstIn, line.Value.Currency,
    ];
}
