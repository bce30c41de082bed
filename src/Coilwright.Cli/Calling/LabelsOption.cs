using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Documents.Kits;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of a sheet of labels: pairs of numbers with an x between them, mm.</summary>
internal static class LabelsOption
{
    private const double MostMm = 1_000;

    /// <summary>The usual sheet as it would be typed.</summary>
    public static string Usual { get; } = string.Create(CultureInfo.InvariantCulture, $"{LabelGrid.Usual.Columns}x{LabelGrid.Usual.Rows},{LabelGrid.Usual.WidthMm}x{LabelGrid.Usual.HeightMm}");

    /// <summary>Reads it; the usual sheet where it is not given or is wrong, and then a fault is added.</summary>
    public static LabelGrid Read(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return LabelGrid.Usual;
        var pairs = text.Split(',');
        if (pairs.Length is >= 2 and <= 4 && Whole(pairs[0]) is { } grid && Pair(pairs[1], 1) is { } size)
        {
            (double, double)? margins = pairs.Length > 2 ? Pair(pairs[2], 0) : null, gaps = pairs.Length > 3 ? Pair(pairs[3], 0) : (0, 0);
            if ((pairs.Length < 3 || margins is not null) && gaps is { } gap)
                return new LabelGrid(grid.Columns, grid.Rows, size.First, size.Second) { Margins = margins, AcrossGapMm = gap.Item1, DownGapMm = gap.Item2 };
        }
        faults.Add(Fault.Of(UsageCodes.LabelsForm, option.Name, text));
        return LabelGrid.Usual;
    }

    private static (int Columns, int Rows)? Whole(string pair) =>
        pair.Trim().Split('x') is [var a, var b] && int.TryParse(a, NumberStyles.None, CultureInfo.InvariantCulture, out var columns) && int.TryParse(b, NumberStyles.None, CultureInfo.InvariantCulture, out var rows)
        && columns is >= 1 and <= LabelGrid.MostInLine && rows is >= 1 and <= LabelGrid.MostInLine ? (columns, rows) : null;

    private static (double First, double Second)? Pair(string pair, double leastMm) =>
        pair.Trim().Split('x') is [var a, var b] && Number(a) is { } first && Number(b) is { } second && Math.Min(first, second) >= leastMm && Math.Max(first, second) <= MostMm ? (first, second) : null;

    private static double? Number(string text) => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
}
