using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Core.Faults;
using Coilwright.Storage.Json;
using CsvHelper;
using CsvHelper.Configuration;

namespace Coilwright.Storage.Tables;

/// <summary>A line of a table as it is written.</summary>
/// <param name="Line">Where it begins in its file, from 1; a cell may run over several.</param>
/// <param name="Cells">Its cells, as many as it has, without the spaces around them.</param>
internal sealed record TableLine(int Line, ImmutableArray<string> Cells);

/// <summary>What came of reading a file as lines of cells.</summary>
/// <param name="Lines">Its lines without empty ones; empty where it is broken.</param>
/// <param name="Fault">What keeps it from being read, with its line; null when it can be.</param>
internal sealed record TableLines(ImmutableArray<TableLine> Lines, Fault? Fault);

/// <summary>Reads a table of values with commas, semicolons or tabs between them (RFC 4180) in UTF-8 or, as spreadsheets save it with a byte order mark, UTF-16. The one reader of all such lists.</summary>
/// <remarks>
/// <para>The first line that is not empty is the heads, which are lines as all others here, and what stands between its cells stands between all. Other than the standard (section 2, rule 4) has it, spaces around a cell are none
/// of it: lists written by hand have them after each comma; those within quotes stay.</para>
/// <para>A quote that stands where none may, or opens a cell that nothing closes, makes the whole file unread: what follows cannot be told apart. Bad input is an answer, never an exception.</para>
/// </remarks>
internal static class SeparatedValues
{
    /// <summary>Letters in one cell at most: a quote left open is found before it took a whole file for its text.</summary>
    public const int MostInCell = 10_000;

    /// <summary>Columns in one table at most: what is beyond is no list that a person keeps.</summary>
    public const int MostColumns = 500;

    private const string Signs = ",;\t";

    /// <summary>Reads a file.</summary>
    /// <param name="bytes">Its bytes; how many may be is for the caller to say beforehand.</param>
    /// <param name="mostLines">Lines under the heads at most.</param>
    /// <param name="cancel">Gives up.</param>
    public static TableLines Read(ReadOnlyMemory<byte> bytes, int mostLines, CancellationToken cancel = default)
    {
        var encoding = bytes.Span switch
        {
            [0xFF, 0xFE, ..] => Encoding.Unicode,
            [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode,
            _ => Encoding.UTF8,
        };
        if (encoding == Encoding.UTF8 && !System.Text.Unicode.Utf8.IsValid(bytes.Span)) return No(JsonText.NotUtf8(bytes));
        var text = encoding.GetString(bytes.Span).TrimStart('\uFEFF');
        var isBad = false;
        using var csv = new CsvParser(new StringReader(text), new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = DelimiterOf(text),
            TrimOptions = TrimOptions.Trim,
            // A quote where none may stand.
            BadDataFound = _ => isBad = true,
            MaxFieldSize = MostInCell,
        });
        var lines = ImmutableArray.CreateBuilder<TableLine>();
        var (read, begin) = (0, 1);
        try
        {
            for (; csv.Read(); read = csv.RawRow)
            {
                cancel.ThrowIfCancellationRequested();
                begin = read + 1;
                // Looked at before it is asked what was bad: the cells are taken apart only then.
                var cells = csv.Record!;
                if (isBad) return No(Broken(Written(text, begin)));
                if (cells.All(string.IsNullOrWhiteSpace)) continue;
                var line = csv.RawRow - csv.RawRecord.TrimEnd('\r', '\n').Count(c => c == '\n');
                if (lines.Count > mostLines) return No(TooLong(line, mostLines));
                if (cells.Length > MostColumns) return No(Broken(line));
                lines.Add(new TableLine(line, [.. cells]));
            }
            // Each quote has its other: one that is left over opened a cell that nothing closes, and took all that follows for its text.
            return text.Count(c => c == '"') % 2 == 0 ? new TableLines(lines.DrainToImmutable(), null) : No(Broken(Written(text, begin)));
        }
        catch (CsvHelperException)
        {
            // A cell beyond the most.
            return No(Broken(Written(text, read + 1)));
        }
    }

    /// <summary>A line that cannot be taken apart.</summary>
    public static Fault Broken(int line) => Fault.Of(FaultCodes.TableBroken, "", "").At(line, 0);

    /// <summary>More lines than are taken.</summary>
    public static Fault TooLong(int line, int mostLines) => Fault.Of(FaultCodes.TableTooLong, "", "", ("max", mostLines.ToString(CultureInfo.InvariantCulture))).At(line, 0);

    // The line itself: empty ones before it were read with it.
    private static int Written(string text, int line)
    {
        var lines = text.Split('\n');
        while (line < lines.Length && string.IsNullOrWhiteSpace(lines[line - 1])) line++;
        return line;
    }

    private static TableLines No(Fault fault) => new([], fault);

    /// <summary>What stands between the cells: the sign that the first line has most often outside quotes; of two as often, the semicolon, since a comma may be a decimal sign.</summary>
    private static string DelimiterOf(string text)
    {
        Span<int> seen = stackalloc int[Signs.Length];
        var isQuoted = false;
        foreach (var sign in text.AsSpan().TrimStart())
        {
            if (sign == '"') isQuoted = !isQuoted;
            else if (isQuoted) continue;
            else if (sign is '\r' or '\n') break;
            else if (Signs.IndexOf(sign, StringComparison.Ordinal) is var at and >= 0) seen[at]++;
        }
        var most = seen[1] >= seen[0] ? 1 : 0;
        if (seen[2] > seen[most]) most = 2;
        return seen[most] == 0 ? "," : Signs[most].ToString();
    }
}
