using System.Collections.Immutable;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Pages;

/// <summary>A document with each of its pictures made another.</summary>
internal static class Pictured
{
    /// <summary>The document with its pictures as a setup wants them: of its own where ink is spared.</summary>
    internal static PageDocument For(PageDocument document, PageSetup setup) => setup.InkSaving ? With(document, picture => picture.Spared()) : document;

    /// <summary>The document with its pictures changed, at the same places and sizes.</summary>
    internal static PageDocument With(PageDocument document, Func<Picture, Picture> change) => document with { Blocks = [.. document.Blocks.Select(b => With(b, change))] };

    private static Block With(Block block, Func<Picture, Picture> change) => block switch
    {
        Block.Figure figure => figure with { Picture = change(figure.Picture) },
        Block.Strip strip => strip with { Picture = change(strip.Picture) },
        Block.Table table => table with { Rows = [.. table.Rows.Select(row => (ImmutableArray<TableCell>)[.. row.Select(cell => cell.Picture is { } picture ? cell with { Picture = change(picture) } : cell)])] },
        Block.Beside beside => beside with { Cells = [.. beside.Cells.Select(cell => cell with { Blocks = [.. cell.Blocks.Select(b => With(b, change))] })] },
        Block.InColumns columns => columns with { Blocks = [.. columns.Blocks.Select(b => With(b, change))] },
        Block.KeepTogether together => together with { Blocks = [.. together.Blocks.Select(b => With(b, change))] },
        Block.Note note => note with { Blocks = [.. note.Blocks.Select(b => With(b, change))] },
        _ => block,
    };
}
