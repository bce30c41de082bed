using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Coilwright.Documents.Typefaces;

/// <summary>Text made to fit a width.</summary>
public static class Fitting
{
    private const string Dots = "…";

    /// <summary>The text, or as much of its start as fits with an ellipsis after it; empty when not even that fits.</summary>
    public static string Shortened(this ITypeface typeface, string text, double sizeMm, TextWeight weight, double widthMm)
    {
        if (typeface.WidthEm(text, weight) * sizeMm <= widthMm) return text;
        var ends = StringInfo.ParseCombiningCharacters(text);
        // The longest start that fits, found by halving: width never falls as the start grows.
        int fits = 0, tooLong = ends.Length;
        while (tooLong - fits > 1)
        {
            var middle = (fits + tooLong) / 2;
            if (typeface.WidthEm(text[..ends[middle]].TrimEnd() + Dots, weight) * sizeMm <= widthMm) fits = middle; else tooLong = middle;
        }
        return fits == 0 ? "" : text[..ends[fits]].TrimEnd() + Dots;
    }

    /// <summary>The text in lines no wider than a width, broken at spaces and, in a word wider than the line, between letters. At most so many lines;
    /// the last one then ends in an ellipsis.</summary>
    public static ImmutableArray<string> Lines(this ITypeface typeface, string text, double sizeMm, TextWeight weight, double widthMm, int most = int.MaxValue)
    {
        bool Fits(string line) => typeface.WidthEm(line, weight) * sizeMm <= widthMm;
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var rest = word;
            if (line.Length > 0 && Fits(line + " " + rest))
            {
                line.Append(' ').Append(rest);
                continue;
            }
            if (line.Length > 0) lines.Add(line.ToString());
            line.Clear();
            while (!Fits(rest) && LongestStart(rest, Fits) is var end && end < rest.Length)
            {
                lines.Add(rest[..end]);
                rest = rest[end..];
            }
            line.Append(rest);
        }
        if (line.Length > 0) lines.Add(line.ToString());
        if (lines.Count <= most) return lines.ToImmutable();
        var last = string.Join(' ', lines.Skip(most - 1));
        return [.. lines.Take(most - 1), typeface.Shortened(last, sizeMm, weight, widthMm)];
    }

    // At least one letter is taken, however narrow the line, so that breaking always ends.
    private static int LongestStart(string word, Func<string, bool> fits)
    {
        var starts = StringInfo.ParseCombiningCharacters(word);
        int End(int letters) => letters < starts.Length ? starts[letters] : word.Length;
        var taken = 1;
        while (taken < starts.Length && fits(word[..End(taken + 1)])) taken++;
        return End(taken);
    }
}
