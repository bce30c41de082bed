using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Colour;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>How text is set: size and lines in points.</summary>
/// <param name="Size">Type size.</param>
/// <param name="Leading">From base line to base line.</param>
/// <param name="Face">Face of plain pieces.</param>
/// <param name="Ink">Ink of plain pieces.</param>
internal sealed record TextLook(double Size, double Leading, FaceStyle Face, Srgb Ink)
{
    /// <summary>From a line's top to its base line: the letters stand in the middle of their line.</summary>
    public double Drop
    {
        get
        {
            var face = HouseFaces.Of(Face);
            return (Leading - (face.AscentEm + face.DescentEm) * Size) / 2 + face.AscentEm * Size;
        }
    }
}

/// <summary>A piece of a line that is drawn in one go.</summary>
internal sealed record SetRun(string Text, FaceStyle Face, Srgb Ink, double X, double Width, bool Ringed);

/// <summary>A line of text as it is set. Spaces at its end are kept in the last run, for readers that join lines, and not in the width.</summary>
internal sealed record SetLine(ImmutableArray<SetRun> Runs, double Width);

/// <summary>Parts text into lines that fit a width.</summary>
/// <remarks>
/// <para>Greedy: each line takes what it can. Lines part after spaces, after a hyphen or dash between letters and after a slash before a letter; a
/// number stays with the short unit, key letter or fraction behind it ("6 mm", "2 A", "6 1/2"), and what is multiplied with its sign ("9 × 7"), as long as anything else can give way. A word wider than the line is
/// parted between letters.</para>
/// </remarks>
internal static class LineBreaker
{
    private const double Slack = 1e-6; // Widths are sums of doubles; a line that fits exactly must not be lost to the last bit.

    /// <summary>The lines; none for empty text.</summary>
    public static ImmutableArray<SetLine> Break(RichText text, TextLook look, double width)
    {
        var glyphs = Glyphs(text, look);
        var lines = ImmutableArray.CreateBuilder<SetLine>();
        var start = 0;
        while (start < glyphs.Count)
        {
            var end = End(glyphs, start, width);
            lines.Add(Line(glyphs, start, end, look));
            start = end;
        }
        return lines.ToImmutable();
    }

    /// <summary>The text with hard spaces where its lines part only grudgingly: for those who break lines themselves.</summary>
    public static string WithHardSpaces(string text)
    {
        var runes = text.EnumerateRunes().Select(r => (r, SpanStyle.Plain)).ToList();
        var kept = new StringBuilder(text.Length);
        for (var i = 0; i < runes.Count; i++)
            kept.Append(runes[i].r.Value == ' ' && After(runes, i) == Parting.Grudging ? "\u00a0" : runes[i].r.ToString());
        return kept.ToString();
    }

    /// <summary>Width of the text on one endless line.</summary>
    public static double NaturalWidth(RichText text, TextLook look)
    {
        var glyphs = Glyphs(text, look);
        return glyphs.Count == 0 ? 0 : Line(glyphs, 0, glyphs.Count, look).Width;
    }

    /// <summary>Width of its widest piece that is not parted willingly.</summary>
    public static double WidestWord(RichText text, TextLook look)
    {
        var glyphs = Glyphs(text, look);
        double widest = 0, run = 0;
        for (var i = 0; i < glyphs.Count; i++)
        {
            if (!glyphs[i].IsSpace || glyphs[i].After != Parting.Free) run += glyphs[i].Width;
            if (glyphs[i].After != Parting.Free && i + 1 < glyphs.Count) continue;
            widest = Math.Max(widest, run);
            run = 0;
        }
        return widest;
    }

    private enum Parting { Never, Grudging, Free }

    private readonly record struct Glyph(string Text, SpanStyle Style, double Width, bool IsSpace, Parting After);

    private static List<Glyph> Glyphs(RichText text, TextLook look)
    {
        var runes = new List<(Rune Rune, SpanStyle Style)>();
        var glyphs = new List<Glyph>();
        foreach (var span in text.Spans)
        {
            var prepared = PrintableText.Prepared(span.Text);
            foreach (var rune in prepared.EnumerateRunes()) runes.Add((rune, span.Style));
        }
        for (var i = 0; i < runes.Count; i++)
        {
            var (rune, style) = runes[i];
            var face = HouseFaces.Of(FaceOf(style, look));
            if (style == SpanStyle.Key)
            {
                var letters = new StringBuilder().Append(rune.ToString());
                while (i + 1 < runes.Count && runes[i + 1].Style == SpanStyle.Key) letters.Append(runes[++i].Rune.ToString());
                var key = letters.ToString();
                glyphs.Add(new Glyph(key, style, RingWidth(face.WidthEm(key) * look.Size, look.Size), false, Parting.Never));
                continue;
            }
            var space = rune.Value == ' ';
            glyphs.Add(new Glyph(rune.ToString(), style, face.WidthEm(rune) * look.Size, space, After(runes, i)));
        }
        return glyphs;
    }

    private static Parting After(List<(Rune Rune, SpanStyle Style)> runes, int i)
    {
        if (i + 1 >= runes.Count) return Parting.Free;
        int here = runes[i].Rune.Value, next = runes[i + 1].Rune.Value;
        if (here == ' ')
        {
            if (next == ' ') return Parting.Never;
            if (next == '×' || i > 0 && runes[i - 1].Rune.Value == '×') return Parting.Grudging;
            return i > 0 && IsFigure(runes[i - 1].Rune.Value) && (ShortWordFollows(runes, i + 1) || FractionFollows(runes, i + 1)) ? Parting.Grudging : Parting.Free;
        }
        if (here is '-' or '–' or '—' && i > 0 && Rune.IsLetter(runes[i - 1].Rune) && Rune.IsLetter(runes[i + 1].Rune)) return Parting.Free;
        return here == '/' && Rune.IsLetter(runes[i + 1].Rune) ? Parting.Free : Parting.Never;
    }

    private static bool IsFigure(int c) => c is >= '0' and <= '9' or '½' or '¼' or '¾';

    private static bool ShortWordFollows(List<(Rune Rune, SpanStyle Style)> runes, int start)
    {
        var letters = 0;
        for (var i = start; i < runes.Count && Rune.IsLetter(runes[i].Rune); i++) letters++;
        return letters is > 0 and <= 4;
    }

    private static bool FractionFollows(List<(Rune Rune, SpanStyle Style)> runes, int start)
    {
        var i = start;
        while (i < runes.Count && IsFigure(runes[i].Rune.Value)) i++;
        return i > start && i < runes.Count && runes[i].Rune.Value is '/' or '⁄';
    }

    // One past the last glyph of the line that starts at start.
    private static int End(List<Glyph> glyphs, int start, double width)
    {
        double used = 0;
        int free = -1, grudging = -1;
        for (var i = start; i < glyphs.Count; i++)
        {
            used += glyphs[i].Width;
            // Spaces may hang over the edge: they are not seen.
            if (!glyphs[i].IsSpace && used > width + Slack)
                return free > 0 ? free : grudging > 0 ? grudging : Math.Max(i, start + 1);
            if (glyphs[i].After == Parting.Free) free = i + 1;
            else if (glyphs[i].After == Parting.Grudging) grudging = i + 1;
        }
        return glyphs.Count;
    }

    private static SetLine Line(List<Glyph> glyphs, int start, int end, TextLook look)
    {
        var runs = ImmutableArray.CreateBuilder<SetRun>();
        double x = 0, inked = 0;
        var builder = new StringBuilder();
        for (var i = start; i < end;)
        {
            var style = glyphs[i].Style;
            var face = FaceOf(style, look);
            var ink = InkOf(style, look);
            if (style == SpanStyle.Key)
            {
                runs.Add(new SetRun(glyphs[i].Text, face, ink, x, glyphs[i].Width, true));
                x += glyphs[i].Width;
                inked = x;
                i++;
                continue;
            }
            builder.Clear();
            var from = x;
            for (; i < end && glyphs[i].Style == style; i++)
            {
                builder.Append(glyphs[i].Text);
                x += glyphs[i].Width;
                if (!glyphs[i].IsSpace) inked = x;
            }
            runs.Add(new SetRun(builder.ToString(), face, ink, from, x - from, false));
        }
        return new SetLine(runs.ToImmutable(), inked);
    }

    /// <summary>Height of a ring round a key letter, in type sizes.</summary>
    public const double RingHeight = 1.3;

    /// <summary>White at either side of a ring, in type sizes.</summary>
    public const double RingGap = 0.09;

    /// <summary>Width of a ring round a key letter: a circle for one letter, longer for two.</summary>
    private static double RingWidth(double letters, double size) => Math.Max(RingHeight * size, letters + 0.62 * size) + 2 * RingGap * size;

    private static FaceStyle FaceOf(SpanStyle style, TextLook look) => style switch
    {
        SpanStyle.Strong or SpanStyle.Key => FaceStyle.Bold,
        SpanStyle.Emphasis => FaceStyle.Italic,
        _ => look.Face,
    };

    private static Srgb InkOf(SpanStyle style, TextLook look) => style == SpanStyle.Quiet ? PageInks.Quiet : look.Ink;
}
