using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Pages;

/// <summary>Every text that a document puts on paper, with its place.</summary>
internal static class DocumentTexts
{
    /// <summary>The texts in reading order. Places read like paths: <c>blocks[2].rows[0][1]</c>.</summary>
    public static IEnumerable<(string Place, string Text)> Of(PageDocument document)
    {
        yield return document.Foot is null ? ("title", document.Title) : ("foot", document.Foot);
        yield return ("words.pageOf", document.Words.PageOf(1, 1));
        foreach (var found in Of(document.Blocks, "blocks")) yield return found;
    }

    private static IEnumerable<(string Place, string Text)> Of(ImmutableArray<Block> blocks, string place) =>
        blocks.SelectMany((block, i) => Of(block, Indexed(place, i)));

    private static IEnumerable<(string Place, string Text)> Of(Block block, string place) => block switch
    {
        Block.Heading heading => [(place, heading.Text)],
        Block.Paragraph paragraph => [(place, paragraph.Text.PlainText)],
        Block.List list => list.Items.Select((item, i) => (Indexed(place + ".items", i), item.PlainText)),
        Block.Table table => table.Columns.Select((column, i) => (Indexed(place + ".columns", i), column.Head.PlainText)).Concat(
            table.Rows.SelectMany((row, r) => row.SelectMany((cell, c) => Of(cell, Indexed(Indexed(place + ".rows", r), c))))),
        Block.Figure figure => Of(figure.Picture, place).Append((place + ".caption", figure.Caption.PlainText)),
        Block.Strip strip => Of(strip.Picture, place).Append((place + ".caption", strip.Caption.PlainText)),
        Block.InColumns columns => Of(columns.Blocks, place + ".blocks"),
        Block.Beside beside => beside.Cells.SelectMany((cell, i) => Of(cell.Blocks, Indexed(place + ".cells", i))),
        Block.KeepTogether together => Of(together.Blocks, place + ".blocks"),
        Block.Note note => Of(note.Blocks, place + ".blocks").Prepend((place + ".title", note.Title)),
        _ => [],
    };

    private static IEnumerable<(string Place, string Text)> Of(TableCell cell, string place)
    {
        yield return (place, cell.Text.PlainText);
        if (cell.Picture is not null)
            foreach (var found in Of(cell.Picture, place)) yield return found;
    }

    private static IEnumerable<(string Place, string Text)> Of(Picture picture, string place) =>
        picture.Inked().Select(p => p.Mark).OfType<Text>().Select(t => (place + ".picture", t.Content));

    private static string Indexed(string place, int index) => place + "[" + index.ToString(CultureInfo.InvariantCulture) + "]";
}
