using Coilwright.Core.Stock;
using Coilwright.Wording;

namespace Coilwright.Documents.Tables;

/// <summary>The list of stock as a table, a line for each item: for other programs, or to look at as a workbook.</summary>
public static class StockTable
{
    // The names of the columns are promised: other programs read them.
    private static readonly string[] Columns =
        ["item", "name", "countedIn", "onHand", "keptBack", "free", "least", "missing", "drawers", "suppliers", "valueAverage", "valueFirstIn", "currency"];

    /// <summary>Comma-separated values, with English heads in every language: <see cref="TableFile.Csv"/>.</summary>
    public static byte[] Csv(IEnumerable<StockLine> lines) => TableFile.Csv(Columns, lines.Select(Cells));

    /// <summary>An Office Open XML workbook of one sheet, its heads in words.</summary>
    /// <param name="lines">The list.</param>
    /// <param name="language">The language of the heads.</param>
    public static byte[] Xlsx(IEnumerable<StockLine> lines, Language language)
    {
        var words = language.Bench.Stock;
        string[] heads = [words.Key, words.Name, words.CountedIn, words.OnHand, words.Reserved, words.Free, words.Par, words.Missing, words.Drawer, words.Supplier,
            $"{words.Value}, {words.Average}", $"{words.Value}, {words.FirstIn}", words.Currency];
        return TableFile.Xlsx(heads, lines.Select(Cells), words.Heading);
    }

    private static object?[] Cells(StockLine line) =>
    [
        line.Item.Key, line.Item.Name, StockRules.Word(line.Item.Unit), line.Balance.OnHand.Units, line.Balance.Reserved.Units, line.Balance.Free.Units, line.Item.Par?.Units, line.Short.Units,
        string.Join("; ", line.Drawers), string.Join("; ", line.Suppliers), line.Value.Average, line.Value.FirstIn, line.Value.Currency,
    ];
}
