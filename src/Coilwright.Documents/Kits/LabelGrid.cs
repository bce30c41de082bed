using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;

namespace Coilwright.Documents.Kits;

/// <summary>A sheet of labels as it is bought: where each lies on the paper, mm from its left top corner.</summary>
/// <param name="Columns">Labels side by side, 1 or more.</param>
/// <param name="Rows">Labels one under the other, 1 or more.</param>
/// <param name="WidthMm">Width of a label, above 0.</param>
/// <param name="HeightMm">Height of a label, above 0.</param>
public sealed record LabelGrid(int Columns, int Rows, double WidthMm, double HeightMm)
{
    /// <summary>Most labels side by side, and one under the other.</summary>
    public const int MostInLine = 50;

    /// <summary>Labels that go on both papers and have room for all that stands on them. Our choice.</summary>
    public static LabelGrid Usual { get; } = new(3, 7, 64, 36);

    // A label that ends a hair beyond the paper by rounding ends on it.
    private const double HairMm = 1e-6;

    /// <summary>Most that any measure of a sheet may be, mm.</summary>
    public const double MostMm = 1_000;

    /// <summary>As it is typed: pairs of numbers with an x between them, <c>3x7,64x36</c>, then margins and gaps where they are told.</summary>
    public string Text => $"{Columns.ToString(CultureInfo.InvariantCulture)}x{Rows.ToString(CultureInfo.InvariantCulture)},{Plain(WidthMm)}x{Plain(HeightMm)}"
        + (Margins is var (left, top) ? $",{Plain(left)}x{Plain(top)}" + (AcrossGapMm != 0 || DownGapMm != 0 ? $",{Plain(AcrossGapMm)}x{Plain(DownGapMm)}" : "") : "");

    /// <summary>Reads a sheet as it is typed; null when it is none.</summary>
    public static LabelGrid? Read(string text)
    {
        var pairs = text.Split(',');
        if (pairs.Length is < 2 or > 4 || Whole(pairs[0]) is not var (columns, rows) || Pair(pairs[1], 1) is not var (width, height)) return null;
        (double Left, double Top)? margins = pairs.Length > 2 ? Pair(pairs[2], 0) : null, gaps = pairs.Length > 3 ? Pair(pairs[3], 0) : (0, 0);
        if (pairs.Length > 2 && margins is null || gaps is not var (across, down)) return null;
        return new LabelGrid(columns, rows, width, height) { Margins = margins, AcrossGapMm = across, DownGapMm = down };
    }

    private static (int, int)? Whole(string pair) =>
        pair.Trim().Split('x') is [var a, var b] && int.TryParse(a, NumberStyles.None, CultureInfo.InvariantCulture, out var columns) && int.TryParse(b, NumberStyles.None, CultureInfo.InvariantCulture, out var rows)
        && columns is >= 1 and <= MostInLine && rows is >= 1 and <= MostInLine ? (columns, rows) : null;

    private static (double, double)? Pair(string pair, double leastMm) =>
        pair.Trim().Split('x') is [var a, var b] && Number(a) is { } first && Number(b) is { } second && Math.Min(first, second) >= leastMm && Math.Max(first, second) <= MostMm ? (first, second) : null;

    private static double? Number(string text) => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static string Plain(double mm) => mm.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>White at the left and above; null when the labels lie in the middle of the paper.</summary>
    public (double LeftMm, double TopMm)? Margins { get; init; }

    /// <summary>White between labels side by side.</summary>
    public double AcrossGapMm { get; init; }

    /// <summary>White between labels one under the other.</summary>
    public double DownGapMm { get; init; }

    /// <summary>Labels on a sheet.</summary>
    public int OnSheet => Columns * Rows;

    private double AcrossMm => Columns * WidthMm + (Columns - 1) * AcrossGapMm;

    private double DownMm => Rows * HeightMm + (Rows - 1) * DownGapMm;

    /// <summary>Why it does not go on a paper; null when it does.</summary>
    public Fault? Check(Paper paper)
    {
        double across = AcrossMm + (Margins?.LeftMm ?? 0), down = DownMm + (Margins?.TopMm ?? 0);
        if (across <= paper.WidthMm + HairMm && down <= paper.HeightMm + HairMm) return null;
        return Fault.Of(FaultCodes.LabelsDoNotFit, "", "", ("acrossMm", Written(across)), ("downMm", Written(down)), ("paperAcrossMm", Written(paper.WidthMm)), ("paperDownMm", Written(paper.HeightMm)));
    }

    /// <summary>Where a label lies on its sheet: along the rows, the first at the left top.</summary>
    /// <param name="number">Which label of the sheet, from 0.</param>
    /// <param name="paper">The paper.</param>
    public Box Place(int number, Paper paper)
    {
        var (left, top) = Margins ?? ((paper.WidthMm - AcrossMm) / 2, (paper.HeightMm - DownMm) / 2);
        return Box.At(left + number % Columns * (WidthMm + AcrossGapMm), top + number / Columns * (HeightMm + DownGapMm), WidthMm, HeightMm);
    }

    /// <summary>A measure as a fault has it.</summary>
    internal static string Written(double mm) => mm.ToString("0.##", CultureInfo.InvariantCulture);
}
