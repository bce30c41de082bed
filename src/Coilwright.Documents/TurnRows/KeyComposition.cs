using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Measures;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.TurnRows;

/// <summary>The key: every kind at the picture's scale, its letter, name, count and size. Layout only.</summary>
internal static class KeyComposition
{
    private const double GapMm = 2.5;
    private const double BetweenMm = 6;
    private const double LeastTextMm = 36;

    /// <summary>Lays it out from a height down and gives the height below it.</summary>
    internal static double Lay(Style style, ImmutableArray<KindCount> kinds, IReadOnlyDictionary<int, BeadFigure> figures, double leftMm, double rightMm,
        double topMm, ImmutableArray<Mark>.Builder marks)
    {
        var y = topMm;
        marks.Add(style.Body.Under(style.Words.Key, leftMm, y) with { Class = "key-heading" });
        var sizes = style.Small.On(style.Words.KeySizes, rightMm, y + style.Face.AscentEm * style.Body.SizeMm, TextAnchor.End);
        if (style.Small.WidthMm(style.Words.KeySizes) + style.Body.WidthMm(style.Words.Key) + 6 < rightMm - leftMm) marks.Add(sizes);
        y += style.Body.LineMm + 2;

        var columns = Columns(style, kinds, figures, rightMm - leftMm);
        var all = kinds.Chunk(columns.Length).ToArray();
        foreach (var row in all)
        {
            var lines = row.Select((k, i) => Lines(style, k, columns[i].TextMm)).ToArray();
            var height = 0.0;
            for (var i = 0; i < row.Length; i++)
                height = Math.Max(height, Math.Max(2 * figures[row[i].KindIndex].Silhouette.HalfWidthMm, TextMm(style, lines[i])));
            for (var i = 0; i < row.Length; i++)
                marks.Add(Entry(style, row[i], lines[i], figures[row[i].KindIndex], leftMm + columns[i].LeftMm, columns[i], y, height));
            y += height + 3.2;
        }
        return y;
    }

    // As many columns as fit with each as wide as its own beads, letters and a fair width of words ask for; what is left over goes between them.
    private static ImmutableArray<Column> Columns(Style style, ImmutableArray<KindCount> kinds, IReadOnlyDictionary<int, BeadFigure> figures, double widthMm)
    {
        for (var count = Math.Min(4, kinds.Length); ; count--)
        {
            double[] art = new double[count], letter = new double[count];
            for (var i = 0; i < kinds.Length; i++)
            {
                art[i % count] = Math.Max(art[i % count], 2 * figures[kinds[i].KindIndex].Silhouette.HalfLengthMm);
                letter[i % count] = Math.Max(letter[i % count], style.KeyLetter.WidthMm(kinds[i].Letter));
            }
            var text = (widthMm - art.Sum() - letter.Sum() - count * 2 * GapMm - (count - 1) * BetweenMm) / count;
            if (text < LeastTextMm && count > 1) continue;
            text = Math.Max(8, text);
            var columns = ImmutableArray.CreateBuilder<Column>(count);
            var left = 0.0;
            for (var c = 0; c < count; c++)
            {
                columns.Add(new Column(left, art[c], letter[c], text));
                left += art[c] + letter[c] + 2 * GapMm + text + BetweenMm;
            }
            return columns.MoveToImmutable();
        }
    }

    private readonly record struct Column(double LeftMm, double ArtMm, double LetterMm, double TextMm);

    /// <summary>Width that the key needs at the least.</summary>
    internal static double LeastMm(Style style, ImmutableArray<KindCount> kinds, double scale) =>
        kinds.Max(k => k.Bead.LengthMm) * scale + kinds.Max(k => style.KeyLetter.WidthMm(k.Letter)) + 2 * GapMm + 24;

    private static ImmutableArray<(string Words, bool IsName)> Lines(Style style, KindCount kind, double widthMm)
    {
        var use = style.Language.Fill(kind.Bead.Role == Role.Focal ? style.Words.UseFocal : style.Words.Use, ("count", kind.Count), ("size", Size(style, kind.Bead)));
        return
        [
            .. style.Face.Lines(kind.Bead.Name, style.Body.SizeMm, TextWeight.Regular, widthMm, 3).Select(l => (l, true)),
            .. style.Face.Lines(use, style.Caption.SizeMm, TextWeight.Regular, widthMm, 2).Select(l => (l, false)),
        ];
    }

    private static string Size(Style style, Bead bead)
    {
        string Pair(string along, string across, string unit) =>
            style.Language.Fill(style.Words.Size, ("along", along), ("across", across)) + " " + unit;
        var mm = Pair(style.Language.Number(bead.LengthMm, 1), style.Language.Number(bead.WidthMm, 1), style.Language.Terms.Mm);
        return style.Language.Units == LengthUnits.Inches
            ? Pair(InchFraction.FromMm(bead.LengthMm).ToString(), InchFraction.FromMm(bead.WidthMm).ToString(), style.Language.Terms.Inch)
            : mm;
    }

    private static double TextMm(Style style, ImmutableArray<(string Words, bool IsName)> lines) =>
        lines.Sum(l => l.IsName ? style.Body.LineMm : style.Caption.LineMm);

    private static Group Entry(Style style, KindCount kind, ImmutableArray<(string Words, bool IsName)> lines, BeadFigure figure, double leftMm,
        Column column, double topMm, double heightMm)
    {
        var middle = topMm + heightMm / 2;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new Stamp(figure.Of(0), new Point(leftMm + column.ArtMm / 2, middle)));
        marks.Add(style.KeyLetter.Centred(kind.Letter, new Point(leftMm + column.ArtMm + GapMm + column.LetterMm / 2, middle)) with { Class = "key-letter" });
        var x = leftMm + column.ArtMm + column.LetterMm + 2 * GapMm;
        var y = middle - TextMm(style, lines) / 2;
        foreach (var (words, isName) in lines)
        {
            var lettering = isName ? style.Body : style.Caption;
            marks.Add(lettering.Under(words, x, y + (lettering.LineMm - lettering.BoxMm) / 2));
            y += lettering.LineMm;
        }
        return new Group(marks.ToImmutable())
        {
            Class = "key-entry",
            Id = "key-" + kind.Letter.ToLowerInvariant(),
            Title = kind.Bead.Name,
            Data = ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal,
                [KeyValuePair.Create("bead", kind.Bead.Id), KeyValuePair.Create("count", kind.Count.ToString(CultureInfo.InvariantCulture))]),
        };
    }
}
