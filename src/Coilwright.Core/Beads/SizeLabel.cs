using System.Globalization;

namespace Coilwright.Core.Beads;

/// <summary>A size as it stands on a label: two numbers that do not say which of them runs along the hole.</summary>
/// <remarks>Is what was read, not a bead's measures: for rondelles the trade lets the hole run along the smaller number, for tubes and ovals along the
/// larger (common practice, no source), so the maker is always asked, and <see cref="Along"/> only proposes.</remarks>
/// <param name="SmallerMm">The smaller number, mm, above 0.</param>
/// <param name="LargerMm">The larger number, mm, not below the smaller.</param>
public readonly record struct SizeLabel(double SmallerMm, double LargerMm)
{
    /// <summary>Reads a label as <c>4 x 6</c>, <c>4x6 mm</c>, <c>4*6</c> or <c>4 by 6</c>; millimetres. False when it is not two numbers above 0.</summary>
    public static bool TryParse(string? text, out SizeLabel label)
    {
        label = default;
        if (text is not { Length: <= 64 }) return false;
        var plain = text.Trim().ToLowerInvariant();
        if (plain.EndsWith("mm", StringComparison.Ordinal)) plain = plain[..^2];
        var parts = plain.Replace("by", "x", StringComparison.Ordinal).Replace('×', 'x').Replace('*', 'x').Split('x', StringSplitOptions.TrimEntries);
        if (parts.Length != 2 || !TryRead(parts[0], out var one) || !TryRead(parts[1], out var other)) return false;
        label = new SizeLabel(Math.Min(one, other), Math.Max(one, other));
        return true;
    }

    /// <summary>Length along the hole and the measure across it when a shape reads the label the usual way.</summary>
    /// <param name="alongLarger">Whether the hole runs along the larger number.</param>
    public (double AlongMm, double AcrossMm) Along(bool alongLarger) => alongLarger ? (LargerMm, SmallerMm) : (SmallerMm, LargerMm);

    private static bool TryRead(string text, out double mm) =>
        double.TryParse(text.Replace("mm", "", StringComparison.Ordinal).Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out mm) && mm > 0 && mm <= Bead.MaxSizeMm;
}
