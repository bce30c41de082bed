using System.Globalization;
using System.Text;

namespace Coilwright.Core.Tray;

/// <summary>Texts as they are compared: without capitals and accents.</summary>
internal static class Folded
{
    /// <summary>A text without capitals and accents; a German sharp s is ss.</summary>
    public static string Of(string text)
    {
        if (IsPlain(text)) return text;
        var folded = new StringBuilder(text.Length);
        foreach (var sign in text.Normalize(NormalizationForm.FormKD))
            if (sign is 'ß' or 'ẞ') folded.Append("ss");
            else if (CharUnicodeInfo.GetUnicodeCategory(sign) != UnicodeCategory.NonSpacingMark) folded.Append(char.ToLowerInvariant(sign));
        return folded.ToString();
    }

    /// <summary>The words of a text, folded: runs of letters and digits. A size is one word too, and its decimal comma a point: <c>4,5 x 6 mm</c> has <c>4.5</c>,
    /// <c>6</c> and <c>4.5x6</c>.</summary>
    public static IEnumerable<string> Words(string text)
    {
        var folded = Of(text).Replace('×', 'x');
        string? before = null, cross = null;
        for (var at = 0; at < folded.Length;)
        {
            if (!char.IsLetterOrDigit(folded[at]))
            {
                at++;
                continue;
            }
            var from = at;
            while (at < folded.Length && (char.IsLetterOrDigit(folded[at]) || IsPoint(folded, at))) at++;
            var word = folded[from..at].Replace(',', '.');
            yield return word;
            if (cross is not null && IsNumber(word)) yield return $"{cross}x{word}";
            cross = word == "x" && before is not null && IsNumber(before) ? before : null;
            before = word;
        }
    }

    private static bool IsNumber(string word) => char.IsAsciiDigit(word[0]);

    private static bool IsPoint(string text, int at) =>
        text[at] is '.' or ',' && at > 0 && at + 1 < text.Length && char.IsAsciiDigit(text[at - 1]) && char.IsAsciiDigit(text[at + 1]);

    private static bool IsPlain(string text)
    {
        foreach (var sign in text)
            if (sign >= 0x80 || char.IsAsciiLetterUpper(sign)) return false;
        return true;
    }
}
