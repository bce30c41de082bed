using System.Globalization;

namespace Coilwright.Core.Measures;

/// <summary>Reads a length as a maker writes it: <c>190 mm</c>, <c>19 cm</c>, <c>7.5in</c>, <c>7 1/2 in</c>, <c>7 1/2"</c>.</summary>
/// <remarks>
/// <para>The unit must be there: a bare number has none, and guessing between 7.5 and 190 is how pieces get made too small. A decimal point is a
/// point in every locale; <c>7,5</c> is refused, not read as 75. No sign, no exponent: a length is what a ruler shows.</para>
/// <para>A fraction stands alone (<c>3/4 in</c>), after a space or a hyphen (<c>7 1/2</c>, <c>7-1/2</c>) or as one sign (<c>7½</c>); its top is
/// less than its bottom, and its bottom at most 64.</para>
/// </remarks>
public static class LengthText
{
    private static readonly (string Word, double Mm)[] Units =
    [
        ("mm", 1), ("cm", 10), ("inches", InchFraction.MmPerInch), ("inch", InchFraction.MmPerInch), ("in", InchFraction.MmPerInch), ("zoll", InchFraction.MmPerInch),
        ("\"", InchFraction.MmPerInch), ("\u2033", InchFraction.MmPerInch), ("\u201d", InchFraction.MmPerInch), // double prime, curly quote
    ];

    private static readonly (char Sign, string Text)[] FractionSigns =
    [
        ('½', "1/2"), ('¼', "1/4"), ('¾', "3/4"), ('⅛', "1/8"), ('⅜', "3/8"), ('⅝', "5/8"), ('⅞', "7/8"),
    ];

    /// <summary>Reads it into millimetres; false, and 0, when it is not a length with its unit.</summary>
    public static bool TryParse(string? text, out double mm)
    {
        mm = 0;
        if (text is not { Length: <= 64 }) return false;
        var rest = text.Trim();
        foreach (var (word, unitMm) in Units)
        {
            if (!rest.EndsWith(word, StringComparison.OrdinalIgnoreCase)) continue;
            if (!TryReadNumber(rest[..^word.Length].TrimEnd(), out var number)) return false;
            mm = number * unitMm;
            return true;
        }
        return false;
    }

    private static bool TryReadNumber(string text, out double number)
    {
        number = 0;
        foreach (var (sign, written) in FractionSigns)
            if (text.EndsWith(sign)) text = text[..^1].TrimEnd() is { Length: > 0 } whole ? whole + " " + written : written;
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0) return double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);

        var gap = text.AsSpan(0, slash).LastIndexOfAny(' ', '-');
        var wholes = 0;
        if (gap >= 0 && !TryReadWhole(text.AsSpan(0, gap).TrimEnd(), out wholes)) return false;
        if (!TryReadWhole(text.AsSpan(gap + 1, slash - gap - 1), out var top) || !TryReadWhole(text.AsSpan(slash + 1), out var bottom)) return false;
        if (top >= bottom || bottom > 64) return false;
        number = wholes + (double)top / bottom;
        return true;
    }

    private static bool TryReadWhole(ReadOnlySpan<char> text, out int whole) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out whole);
}
