using System.Globalization;
using System.Text;

namespace Coilwright.Cli.Reports;

/// <summary>A page of plain text, 80 columns wide: paragraphs that wrap, tables whose columns stand under one another.</summary>
internal sealed class TextPage
{
    /// <summary>Columns that a terminal and a printed page in a fixed face both have.</summary>
    public const int Width = 80;

    private readonly StringBuilder _text = new();

    /// <summary>A title, underlined over the whole page.</summary>
    public void Title(string title)
    {
        Wrapped(title, "", "");
        _text.Append('=', Width).Append('\n');
    }

    /// <summary>A heading over a line of its own length, after an empty line.</summary>
    public void Heading(string heading)
    {
        _text.Append('\n').Append(Clean(heading)).Append('\n').Append('-', WidthOf(heading)).Append('\n');
    }

    /// <summary>An empty line.</summary>
    public void Blank() => _text.Append('\n');

    /// <summary>A paragraph; an empty one is left out.</summary>
    public void Paragraph(string text, int indent = 0) => Hanging(new string(' ', indent), text);

    /// <summary>A paragraph whose first line begins with a mark, and whose others hang under its text.</summary>
    public void Hanging(string mark, string text)
    {
        if (text.Length > 0) Wrapped(text, Clean(mark), new string(' ', WidthOf(mark)));
    }

    /// <summary>A table.</summary>
    /// <param name="columns">For each column its heading and whether it is set to the right; a table without headings has empty ones.</param>
    /// <param name="rows">The rows, a text for each column.</param>
    /// <param name="wraps">The columns that wrap when the table is too wide: the widest of them first.</param>
    public void Table(IReadOnlyList<(string Heading, bool Right)> columns, IEnumerable<string[]> rows, params ReadOnlySpan<int> wraps)
    {
        const int indent = 2, gap = 2, least = 8;
        var all = rows.Select(r => r.Select(Clean).ToArray()).ToList();
        if (columns.Any(c => c.Heading.Length > 0)) all.Insert(0, [.. columns.Select(c => c.Heading)]);
        if (all.Count == 0) return;
        var widths = columns.Select((_, c) => all.Max(r => WidthOf(r[c]))).ToArray();
        for (var over = indent + widths.Sum() + gap * (widths.Length - 1) - Width; over > 0; over--)
        {
            var widest = wraps[0];
            foreach (var c in wraps) if (widths[c] > widths[widest]) widest = c;
            if (widths[widest] <= least) break;
            widths[widest]--;
        }

        foreach (var row in all)
        {
            var wrapped = row.Select((cell, c) => Wrap(cell, widths[c]).ToArray()).ToArray();
            for (var line = 0; line < wrapped.Max(w => w.Length); line++)
            {
                var cells = columns.Select((column, c) =>
                {
                    var cell = line < wrapped[c].Length ? wrapped[c][line] : "";
                    var blanks = new string(' ', Math.Max(0, widths[c] - WidthOf(cell)));
                    return column.Right ? blanks + cell : cell + blanks;
                });
                _text.Append((new string(' ', indent) + string.Join(new string(' ', gap), cells)).TrimEnd()).Append('\n');
            }
        }
    }

    public override string ToString() => _text.ToString();

    private void Wrapped(string text, string first, string others)
    {
        var lead = first;
        foreach (var line in Wrap(Clean(text), Width - WidthOf(first)))
        {
            _text.Append((lead + line).TrimEnd()).Append('\n');
            lead = others;
        }
    }

    /// <summary>Breaks between words; a word longer than the line is broken where the line ends.</summary>
    private static IEnumerable<string> Wrap(string text, int width)
    {
        var line = new StringBuilder();
        var used = 0;
        foreach (var word in text.Split(' '))
        {
            var rest = word;
            var long_ = WidthOf(rest);
            if (used > 0 && used + 1 + long_ > width)
            {
                yield return line.ToString();
                line.Clear();
                used = 0;
            }
            while (long_ > width)
            {
                var head = Head(rest, width);
                yield return head;
                rest = rest[head.Length..];
                long_ = WidthOf(rest);
            }
            if (used > 0)
            {
                line.Append(' ');
                used++;
            }
            line.Append(rest);
            used += long_;
        }
        yield return line.ToString();
    }

    private static string Head(string text, int width)
    {
        var used = 0;
        var taken = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            used += WidthOf(rune);
            if (used > width && taken > 0) break;
            taken += rune.Utf16SequenceLength;
        }
        return text[..taken];
    }

    /// <summary>The same text without anything that a terminal would obey rather than show.</summary>
    private static string Clean(string text) => text.Any(char.IsControl) ? string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c)) : text;

    private static int WidthOf(string text) => text.EnumerateRunes().Sum(WidthOf);

    /// <summary>Columns that a sign takes: none for a mark set on another, two for the wide signs of East Asian scripts and pictures.</summary>
    /// <remarks>The blocks of Unicode's East Asian Width "wide", coarsely (from memory): enough to keep columns straight.</remarks>
    private static int WidthOf(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => 0,
        _ => rune.Value is >= 0x1100 and <= 0x115F or >= 0x2E80 and <= 0xA4CF or >= 0xAC00 and <= 0xD7A3 or >= 0xF900 and <= 0xFAFF
            or >= 0xFE30 and <= 0xFE6F or >= 0xFF00 and <= 0xFF60 or >= 0xFFE0 and <= 0xFFE6 or >= 0x1F300 and <= 0x1F64F
            or >= 0x1F900 and <= 0x1F9FF or >= 0x20000 and <= 0x3FFFD ? 2 : 1,
    };
}
