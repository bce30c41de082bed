using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Pages.Composition;

namespace Coilwright.Documents.Canvases;

/// <summary>Writes a document as one HTML5 page that needs nothing beside it: typeface, style and pictures are in it, and no script.</summary>
/// <remarks>
/// <para>For the screen, from 360 pixels wide, and for the printer at the paper chosen. Browsers lay the text out, so its lines and pages are not those
/// of the PDF; strips are at true size in both, cut for the same paper.</para>
/// <para>Text may be in any script: letters that the typeface lacks come from the reader's machine. So it has no faults.</para>
/// </remarks>
public sealed class HtmlCanvas : IDocumentCanvas
{
    /// <inheritdoc/>
    public string Ending => ".html";

    /// <inheritdoc/>
    public DrawnDocument Draw(PageDocument document, PageSetup setup)
    {
        var page = new HtmlWriter(Pictured.For(document, setup), setup).Write();
        return new DrawnDocument(Encoding.UTF8.GetBytes(page), []);
    }

    private sealed class HtmlWriter(PageDocument document, PageSetup setup)
    {
        // A picture wider than this is scrolled on a narrow screen rather than shrunk until its letters cannot be read.
        private const double ShrinksToMm = 110;

        // Width that things side by side want together, white between them aside; an upright A4 page has 39 of them.
        private const double BesideRem = 34;

        private readonly StringBuilder _out = new();
        private int _pictures;
        private bool _turned;
        private bool _slanted;

        public string Write()
        {
            var main = new StringBuilder();
            foreach (var (turned, blocks) in Composer.Sections(document.Blocks))
            {
                _turned = turned;
                _out.Append("<div class=\"").Append(turned ? "sheet turned" : "sheet").Append("\">\n");
                Write(blocks);
                _out.Append("</div>\n");
            }
            main.Append(_out);
            _out.Clear();
            _out.Append("<!DOCTYPE html>\n<html lang=\"").Append(Escaped(document.Language)).Append("\">\n<head>\n<meta charset=\"utf-8\">\n")
                .Append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
            if (document.Author is { } author) _out.Append("<meta name=\"author\" content=\"").Append(Escaped(author)).Append("\">\n");
            if (document.Created is { } at)
                _out.Append("<meta name=\"date\" content=\"").Append(at.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture)).Append("\">\n");
            _out.Append("<title>").Append(Escaped(document.Title)).Append("</title>\n<style>\n").Append(HtmlStyle.Of(setup, document, _slanted))
                .Append("</style>\n</head>\n<body>\n<main>\n").Append(main).Append("</main>\n</body>\n</html>\n");
            return _out.ToString();
        }

        private void Write(ImmutableArray<Block> blocks)
        {
            foreach (var block in blocks) Write(block);
        }

        private void Write(Block block)
        {
            switch (block)
            {
                case Block.Heading heading:
                    var level = Math.Clamp(heading.Level, 1, 3).ToString(CultureInfo.InvariantCulture);
                    _out.Append("<h").Append(level).Append('>').Append(Escaped(heading.Text)).Append("</h").Append(level).Append(">\n");
                    break;
                case Block.Paragraph paragraph:
                    var look = paragraph.Look switch { ParagraphLook.Lead => "lead", ParagraphLook.Small => "small", _ => "" };
                    var sort = (look + (paragraph.StaysWithNext ? " stays" : "")).Trim();
                    Element("p", sort.Length == 0 ? null : sort, paragraph.Text);
                    break;
                case Block.List list:
                    Write(list);
                    break;
                case Block.Table table:
                    Write(table);
                    break;
                case Block.Figure figure:
                    Write(figure);
                    break;
                case Block.Strip strip:
                    Write(strip);
                    break;
                case Block.InColumns columns:
                    _out.Append("<div class=\"columns\" style=\"--count: ").Append(Number(Math.Max(1, columns.Count))).Append("\">\n");
                    Write(columns.Blocks);
                    _out.Append("</div>\n");
                    break;
                case Block.Beside beside:
                    _out.Append("<div class=\"beside\">\n");
                    foreach (var cell in beside.Cells)
                    {
                        // One under the other where each would be narrower than half a page on paper.
                        _out.Append("<div style=\"flex: ").Append(Number(cell.Share)).Append(" 1 ").Append(Number(BesideRem / beside.Cells.Length)).Append("rem\">\n");
                        Write(cell.Blocks);
                        _out.Append("</div>\n");
                    }
                    _out.Append("</div>\n");
                    break;
                case Block.KeepTogether together:
                    _out.Append("<div class=\"together\">\n");
                    Write(together.Blocks);
                    _out.Append("</div>\n");
                    break;
                case Block.Note note:
                    _out.Append("<div class=\"note\" role=\"note\">\n");
                    if (note.Title.Length > 0) Element("p", "note-title", note.Title);
                    Write(note.Blocks);
                    _out.Append("</div>\n");
                    break;
                case Block.Spacer spacer:
                    _out.Append("<div style=\"height: ").Append(Number(spacer.Lines * 1.42)).Append("rem\"></div>\n");
                    break;
                case Block.Rule:
                    _out.Append("<hr>\n");
                    break;
            }
        }

        private void Write(Block.List list)
        {
            if (list.Items.IsEmpty) return;
            var sort = string.Join(' ', new[] { list.Kind == ListKind.Ticked ? "ticks" : "", list.StaysWithNext ? "stays" : "" }.Where(s => s.Length > 0));
            _out.Append(list.Kind == ListKind.Numbered ? "<ol" : "<ul");
            if (list.Kind == ListKind.Numbered && list.First != 1) _out.Append(" start=\"").Append(Number(list.First)).Append('"');
            if (sort.Length > 0) _out.Append(" class=\"").Append(sort).Append('"');
            _out.Append(">\n");
            foreach (var item in list.Items)
            {
                _out.Append("<li>");
                if (list.Kind == ListKind.Ticked) _out.Append("<label><input type=\"checkbox\"> <span>");
                Write(item);
                if (list.Kind == ListKind.Ticked) _out.Append("</span></label>");
                _out.Append("</li>\n");
            }
            _out.Append(list.Kind == ListKind.Numbered ? "</ol>\n" : "</ul>\n");
        }

        private void Write(Block.Table table)
        {
            if (table.Columns.IsEmpty) return;
            Scroll(table.Name);
            _out.Append("<table>\n<caption>").Append(Escaped(table.Name)).Append("</caption>\n");
            if (table.Columns.Any(c => !c.Head.IsEmpty)) Heads(table);
            _out.Append("<tbody>\n");
            foreach (var row in table.Rows)
            {
                _out.Append("<tr>");
                for (var c = 0; c < row.Length; c++)
                {
                    var heads = c == 0 && table.RowsHaveHeads && !row[c].Text.IsEmpty;
                    _out.Append(heads ? "<th scope=\"row\"" : "<td").Append(Aligned(table.Columns[c])).Append('>');
                    if (row[c].Picture is { } picture)
                    {
                        _out.Append("<span class=\"inset").Append(row[c].Text.IsEmpty ? " alone" : "").Append("\" style=\"width: ").Append(Number(picture.WidthMm * (row[c].PictureIsTrueSize ? 1 : setup.Enlarged))).Append("mm\"")
                            .Append(row[c].PictureAlt is null ? " aria-hidden=\"true\">" : ">");
                        Svg(picture, row[c].PictureAlt, fluid: true);
                        _out.Append("</span>");
                    }
                    Write(row[c].Text);
                    WriteFolded(table, row, c);
                    _out.Append(heads ? "</th>" : "</td>");
                }
                _out.Append("</tr>\n");
            }
            _out.Append("</tbody>\n</table>\n</div>\n");
        }

        private void WriteFolded(Block.Table table, ImmutableArray<TableCell> row, int into)
        {
            for (var c = 0; c < row.Length; c++)
            {
                if (table.Columns[c].Folded is not { } folded || folded.Into != into || row[c].Text.IsEmpty) continue;
                _out.Append("<span class=\"quiet narrow\">").Append(Escaped(folded.Join));
                Write(row[c].Text);
                _out.Append("</span>");
            }
        }

        private void Heads(Block.Table table)
        {
            _out.Append("<thead>\n<tr>");
            foreach (var column in table.Columns)
            {
                // A heading cell must not be empty; an unnamed column is headed by a plain cell.
                var element = column.Head.IsEmpty ? "td" : "th";
                _out.Append('<').Append(element).Append(column.Head.IsEmpty ? "" : " scope=\"col\"").Append(Aligned(column)).Append('>');
                Write(column.Head);
                _out.Append("</").Append(element).Append('>');
            }
            _out.Append("</tr>\n</thead>\n");
        }

        private void Write(Block.Figure figure)
        {
            var width = figure.Picture.WidthMm * setup.Enlarged;
            var scrolls = width > ShrinksToMm && !figure.MayShrink;
            // Where a picture may shrink its foot may become too low for words.
            _out.Append(figure.CaptionIsInside && !scrolls ? "<figure class=\"footed\">\n" : "<figure>\n");
            if (scrolls) Scroll(figure.Alt);
            _out.Append("<div class=\"picture").Append(figure.IsCentred ? " centred" : "").Append("\" style=\"width: ").Append(figure.FullWidth ? "100%" : Number(width) + "mm");
            if (scrolls) _out.Append("; min-width: ").Append(Number(ShrinksToMm)).Append("mm");
            _out.Append("\">\n");
            Svg(figure.Picture, figure.Alt, fluid: true);
            _out.Append("</div>\n");
            if (scrolls) _out.Append("</div>\n");
            if (!figure.Caption.IsEmpty) Element("figcaption", null, figure.Caption);
            _out.Append("</figure>\n");
        }

        private void Write(Block.Strip strip)
        {
            var longest = Composer.Frame(setup, _turned).Width * PageSetup.PointMm;
            var lengths = StripFlow.Lengths(strip.Picture, longest);
            _out.Append("<figure class=\"strip\">\n");
            if (!strip.Caption.IsEmpty) Element("figcaption", null, strip.Caption);
            Scroll(strip.Alt);
            for (var i = 0; i < lengths; i++)
            {
                double start = i * longest, end = Math.Min(strip.Picture.WidthMm, start + longest);
                if (lengths > 1)
                {
                    _out.Append("<p class=\"joint\" style=\"width: ").Append(Number(end - start)).Append("mm\"><span>");
                    if (i > 0) _out.Append(Escaped(document.Words.JoinAt(StripFlow.JointLetter(i))));
                    _out.Append("</span> <span>");
                    if (i < lengths - 1) _out.Append(Escaped(document.Words.JoinAt(StripFlow.JointLetter(i + 1))));
                    _out.Append("</span></p>\n");
                }
                Svg(lengths == 1 ? strip.Picture : Window(strip.Picture, start, end), strip.Alt, fluid: false);
            }
            _out.Append("</div>\n</figure>\n");
        }

        private static Picture Window(Picture picture, double startMm, double endMm)
        {
            var window = new Group(picture.Marks)
            {
                MoveRightMm = -startMm,
                Clip = Outline.Rectangle(new Box(startMm, 0, endMm, picture.HeightMm)),
            };
            return picture with { WidthMm = endMm - startMm, Marks = [window] };
        }

        private void Svg(Picture picture, string? alt, bool fluid)
        {
            if (setup.Greyscale) picture = picture.Greyed();
            if (alt is not null) picture = picture with { Description = alt };
            var prefix = "p" + (++_pictures).ToString(CultureInfo.InvariantCulture) + "-";
            _out.Append(SvgCanvas.Write(picture, new SvgOptions { IdPrefix = prefix, Fluid = fluid }));
        }

        // What may be wider than the screen is scrolled within itself, by keyboard too.
        private void Scroll(string name) =>
            _out.Append("<div class=\"scroll\" role=\"region\" tabindex=\"0\" aria-label=\"").Append(Escaped(name)).Append("\">\n");

        private void Element(string name, string? sort, RichText text)
        {
            _out.Append('<').Append(name);
            if (sort is not null) _out.Append(" class=\"").Append(sort).Append('"');
            _out.Append('>');
            Write(text);
            _out.Append("</").Append(name).Append(">\n");
        }

        private void Write(RichText text)
        {
            for (var i = 0; i < text.Spans.Length; i++)
            {
                var span = text.Spans[i];
                // A count and its key letter stay on one line, as on paper.
                var words = LineBreaker.WithHardSpaces(span.Text);
                if (i + 1 < text.Spans.Length && text.Spans[i + 1].Style == SpanStyle.Key && words.Length > 1 && words[^1] == ' ' && char.IsAsciiDigit(words[^2])) words = words[..^1] + '\u00a0';
                _slanted |= span.Style == SpanStyle.Emphasis;
                var (open, close) = span.Style switch
                {
                    SpanStyle.Strong => ("<strong>", "</strong>"),
                    SpanStyle.Emphasis => ("<em>", "</em>"),
                    SpanStyle.Quiet => ("<span class=\"quiet\">", "</span>"),
                    SpanStyle.Key => ("<b class=\"key\">", "</b>"),
                    _ => ("", ""),
                };
                _out.Append(open).Append(Escaped(words)).Append(close);
            }
        }

        private static string Aligned(TableColumn column)
        {
            var align = column.Align switch { CellAlign.Right => "right", CellAlign.Centre => "centre", _ => "" };
            var sort = (align + (column.IsWhole ? " whole" : "") + (column.Folded is null ? "" : " wide")).Trim();
            return sort.Length == 0 ? "" : " class=\"" + sort + "\"";
        }
    }

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Escaped(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var rune in Allowed(text))
            switch (rune.Value)
            {
                case '&':
                    safe.Append("&amp;");
                    break;
                case '<':
                    safe.Append("&lt;");
                    break;
                case '>':
                    safe.Append("&gt;");
                    break;
                case '"':
                    safe.Append("&quot;");
                    break;
                default:
                    safe.Append(rune.ToString());
                    break;
            }
        return safe.ToString();
    }

    /// <summary>The characters of a text that HTML has a place for: control characters become spaces, and those that Unicode keeps for no letter are
    /// left out.</summary>
    internal static IEnumerable<Rune> Allowed(string text)
    {
        foreach (var rune in text.EnumerateRunes())
            if (rune.Value is < 0x20 or (>= 0x7f and < 0xa0)) yield return new Rune(' ');
            else if (rune.Value is not (>= 0xfdd0 and <= 0xfdef) && (rune.Value & 0xfffe) != 0xfffe) yield return rune;
    }
}
