using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using Coilwright.Core.Faults;
using Coilwright.Core.Tray;
using Coilwright.Storage.Tables;
using MiniExcelLibs;

namespace Coilwright.Storage.Tray;

/// <summary>What came of reading a file as a table.</summary>
/// <param name="Table">The table; null where it is none.</param>
/// <param name="Fault">Why it is none; null where it is one.</param>
public sealed record TrayFileReading(TrayTable? Table, Fault? Fault);

/// <summary>Reads lists of beads as files: values with commas, semicolons or tabs between them (RFC 4180) in UTF-8 or UTF-16, or the first sheet of an Office Open XML workbook. Which it is, is seen from
/// its bytes, not from its name.</summary>
/// <remarks>The first line that is not empty has the heads, and what stands between its cells stands between all. Bad input is an answer, never an exception.</remarks>
public static class TrayFile
{
    /// <summary>Largest file, bytes.</summary>
    public const int MaxBytes = 64 * 1024 * 1024;

    // A workbook is packed; what is in it may come to so much, or it is none that a person made.
    private const long MaxUnpackedBytes = 1024L * 1024 * 1024;

    /// <summary>Reads a file where it lies.</summary>
    /// <param name="path">Where.</param>
    /// <param name="cancel">Gives up.</param>
    public static TrayFileReading ReadFrom(string path, CancellationToken cancel = default) =>
        FileReading.Bytes(path, MaxBytes, out var fault) is { } bytes ? Read(bytes, cancel) : No(fault!);

    /// <summary>Reads a file.</summary>
    /// <param name="bytes">Its bytes.</param>
    /// <param name="cancel">Gives up.</param>
    public static TrayFileReading Read(ReadOnlyMemory<byte> bytes, CancellationToken cancel = default)
    {
        if (bytes.Length > MaxBytes)
            return No(Fault.Of(FaultCodes.FileTooLarge, "", "", ("max", string.Create(CultureInfo.InvariantCulture, $"{MaxBytes / 1024 / 1024} MB"))));
        var lines = bytes.Span switch
        {
            [(byte)'P', (byte)'K', 3, 4, ..] => OfWorkbook(bytes, cancel),
            // What was saved in the old binary form of workbooks.
            [0xD0, 0xCF, 0x11, 0xE0, ..] => (null, Fault.Of(FaultCodes.WorkbookBroken, "", "")),
            _ => OfValues(bytes, cancel),
        };
        if (lines.Fault is { } fault) return No(fault);
        if (lines.Lines is not [var heads, .. var rest]) return No(Fault.Of(FaultCodes.TableNoRows, "", ""));
        return new TrayFileReading(new TrayTable([.. heads.Cells.Select(h => h.Trim())], [.. rest]), null);
    }

    private static TrayFileReading No(Fault fault) => new(null, fault);

    private static (List<TrayLine>? Lines, Fault? Fault) OfValues(ReadOnlyMemory<byte> bytes, CancellationToken cancel)
    {
        var read = SeparatedValues.Read(bytes, TrayTable.MostLines, cancel);
        return read.Fault is { } fault ? (null, fault) : ([.. read.Lines.Select(l => new TrayLine(l.Line, l.Cells))], null);
    }

    private static (List<TrayLine>? Lines, Fault? Fault) OfWorkbook(ReadOnlyMemory<byte> bytes, CancellationToken cancel)
    {
        try
        {
            using (var zip = new ZipArchive(new MemoryStream(bytes.ToArray()), ZipArchiveMode.Read))
                if (zip.GetEntry("xl/workbook.xml") is null || zip.Entries.Sum(e => e.Length) > MaxUnpackedBytes) return (null, Fault.Of(FaultCodes.WorkbookBroken, "", ""));
            using var stream = new MemoryStream(bytes.ToArray());
            var lines = new List<TrayLine>();
            var number = 0;
            foreach (IDictionary<string, object?> row in stream.Query(useHeaderRow: false, excelType: ExcelType.XLSX))
            {
                cancel.ThrowIfCancellationRequested();
                number++;
                if (row.Count > SeparatedValues.MostColumns) return (null, SeparatedValues.Broken(number));
                ImmutableArray<string> cells = [.. row.Values.Select(CellOf)];
                if (cells.All(string.IsNullOrWhiteSpace)) continue;
                if (lines.Count > TrayTable.MostLines) return (null, SeparatedValues.TooLong(number, TrayTable.MostLines));
                lines.Add(new TrayLine(number, cells));
            }
            return (lines, null);
        }
        // A workbook that is not as it should be is told by the library in many ways, some of them slips of its own; to her they are one.
        catch (Exception e) when (e is not (OperationCanceledException or OutOfMemoryException))
        {
            return (null, Fault.Of(FaultCodes.WorkbookBroken, "", ""));
        }
    }

    private static string CellOf(object? cell) => cell switch
    {
        null => "",
        string text => text.Length <= SeparatedValues.MostInCell ? text : text[..SeparatedValues.MostInCell],
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        bool yes => yes ? "yes" : "no",
        DateTime day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => cell.ToString() ?? "",
    };
}
