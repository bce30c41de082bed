using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Core.Faults;

namespace Coilwright.Documents.Typefaces;

/// <summary>What can be printed of a text with the house typeface, letter by letter and from left to right.</summary>
public static class PrintableText
{
    // What the face lacks but has a plain equal for. Not a transliteration: the meaning stays exactly the same.
    private static readonly Dictionary<int, string> PlainEquals =
        new()
        {
            [0x2010] = "-",
            [0x2011] = "-",
            [0x2012] = "–",
            [0x2015] = "—",
            [0x2032] = "'",
            [0x2033] = "\"",
            [0x202f] = "\u00a0",
            [0x2007] = "\u00a0",
            [0x2153] = "1⁄3",
            [0x2154] = "2⁄3",
            [0x215b] = "1⁄8",
            [0x215c] = "3⁄8",
            [0x215d] = "5⁄8",
            [0x215e] = "7⁄8",
            [0x00ad] = "",
            [0x200b] = "",
            [0x200c] = "",
            [0x200d] = "",
            [0x2060] = "",
            [0xfeff] = "",
            [0xfe0e] = "",
            [0xfe0f] = "",
        };

    /// <summary>The text as it is set: accents joined to their letters, line breaks and tabs as spaces, invisible characters left out, and signs that
    /// the face lacks written with their plain equals (1/8 for the single character, a straight mark for a prime).</summary>
    public static string Prepared(string text)
    {
        if (IsPlain(text)) return text;
        var builder = new StringBuilder(text.Length);
        // Half of a pair cannot be normalised: it becomes the sign for an unknown character, which the face lacks and the reader is told of.
        var whole = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes()) whole.Append(rune.ToString());
        foreach (var rune in whole.ToString().Normalize(NormalizationForm.FormC).EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)
                builder.Append(' ');
            else if (!Has(rune) && PlainEquals.TryGetValue(rune.Value, out var equal)) builder.Append(equal);
            else builder.Append(rune.ToString());
        }
        return builder.ToString();
    }

    /// <summary>The characters of a text that cannot be printed, each once, in the order they stand.</summary>
    /// <remarks>Besides what the face lacks these are accents that no single character joins to their letter: without shaping they would fall
    /// beside it.</remarks>
    public static ImmutableArray<Rune> Missing(string text)
    {
        if (IsPlain(text)) return [];
        var missing = ImmutableArray.CreateBuilder<Rune>();
        foreach (var rune in Prepared(text).EnumerateRunes())
            if ((!Has(rune) || Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark)
                && !missing.Contains(rune))
                missing.Add(rune);
        return missing.ToImmutable();
    }

    /// <summary>The fault that tells which characters of a text cannot be printed; null when all can.</summary>
    /// <param name="text">The text.</param>
    /// <param name="place">Where it stands, for <see cref="Fault.Field"/>.</param>
    public static Fault? Check(string text, string place)
    {
        var missing = Missing(text);
        if (missing.IsEmpty) return null;
        const int shown = 10;
        var names = missing.Take(shown).Select(r =>
            (Rune.GetUnicodeCategory(r) is UnicodeCategory.NonSpacingMark ? "\u25cc" : "") + r + " (U+" + r.Value.ToString("X4", CultureInfo.InvariantCulture) + ")");
        return Fault.Of(FaultCodes.DocumentGlyphsMissing, place, Shortened(text),
            ("characters", string.Join(", ", names)), ("more", missing.Length > shown ? (missing.Length - shown).ToString(CultureInfo.InvariantCulture) : ""));
    }

    private static string Shortened(string text)
    {
        const int most = 60;
        var info = new StringInfo(text);
        return info.LengthInTextElements <= most ? text : info.SubstringByTextElements(0, most) + "…";
    }

    // Nearly every text: printable ASCII needs no work.
    private static bool IsPlain(string text)
    {
        foreach (var c in text)
            if (c is < ' ' or > '~') return false;
        return true;
    }

    private static bool Has(Rune rune) =>
        HouseFaces.Of(FaceStyle.Regular).Has(rune) && HouseFaces.Of(FaceStyle.Bold).Has(rune) && HouseFaces.Of(FaceStyle.Italic).Has(rune);
}
