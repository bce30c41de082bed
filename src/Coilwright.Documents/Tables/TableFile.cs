using System.Globalization;
using System.Text;
using CsvHelper;
using CsvHelper.Configuration;
using MiniExcelLibs;

namespace Coilwright.Documents.Tables;

/// <summary>A table as a file for other programs. A cell is a text, a number or nothing.</summary>
public static class TableFile
{
    /// <summary>Comma-separated values (RFC 4180) in UTF-8, with a decimal point in every language. What a program would take for a formula is escaped with an apostrophe.</summary>
    /// <param name="columns">The names of the columns.</param>
    /// <param name="rows">The rows, a cell for each column.</param>
    public static byte[] Csv(IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<object?>> rows)
    {
        using var bytes = new MemoryStream();
        using (var text = new StreamWriter(bytes, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { NewLine = "\r\n" })
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n", InjectionOptions = InjectionOptions.Escape }))
        {
            foreach (var column in columns) csv.WriteField(column);
            csv.NextRecord();
            foreach (var row in rows)
            {
                foreach (var cell in row) csv.WriteField(cell switch { decimal number => number.ToString("0.####", CultureInfo.InvariantCulture), int whole => whole.ToString(CultureInfo.InvariantCulture), double read => read.ToString("R", CultureInfo.InvariantCulture), _ => cell as string ?? "" });
                csv.NextRecord();
            }
        }
        return bytes.ToArray();
    }

    /// <summary>An Office Open XML workbook of one sheet.</summary>
    /// <param name="heads">What stands over the columns, each once.</param>
    /// <param name="rows">The rows, a cell for each column.</param>
    /// <param name="sheet">The name of the sheet.</param>
    public static byte[] Xlsx(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<object?>> rows, string sheet)
    {
        using var bytes = new MemoryStream();
        bytes.SaveAs(rows.Select(row => heads.Zip(row).ToDictionary(c => c.First, c => c.Second)), sheetName: sheet);
        return bytes.ToArray();
    }
}
