using System.Collections.Immutable;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>A page with everything on it, points.</summary>
/// <param name="Width">Its width as it lies.</param>
/// <param name="Height">Its height as it lies.</param>
/// <param name="Marks">What is on it, in reading order; parts may begin here and end on a later page.</param>
internal sealed record ComposedPage(double Width, double Height, ImmutableArray<PageMark> Marks);

/// <summary>Lays a document out on pages: everything is measured first, then put where it fits.</summary>
internal static class Composer
{
    private const double Point = 1 / PageSetup.PointMm;

    /// <summary>The pages; one, with nothing but its foot, for a document of no blocks.</summary>
    public static ImmutableArray<ComposedPage> Compose(PageDocument document, PageSetup setup)
    {
        var typesetter = new Typesetter(setup, document.Words);
        var pages = new List<(bool Turned, ImmutableArray<PageMark> Marks)>();
        foreach (var (turned, blocks) in Sections(document.Blocks))
        {
            var frame = Frame(setup, turned);
            Flow? left = typesetter.Of(blocks);
            while (left is not null)
            {
                // A sequence in its last room always takes something, so every turn of this loop leaves less.
                var taken = left.Take(new Room(frame.Width, frame.Height, true)) ?? throw new InvalidOperationException("A page took nothing.");
                pages.Add((turned, [.. taken.Slab.Marks.Select(m => m.Moved(frame.X, frame.Y))]));
                left = taken.Rest;
            }
        }
        return [.. pages.Select((page, i) => Finished(document, setup, typesetter, page.Turned, page.Marks, i + 1, pages.Count))];
    }

    /// <summary>Where text may stand on a page.</summary>
    public static Area Frame(PageSetup setup, bool turned)
    {
        var (width, height) = Size(setup, turned);
        if (!turned)
            return new Area(setup.SideMm * Point, setup.TopMm * Point, width - 2 * setup.SideMm * Point, height - (setup.TopMm + setup.BottomMm) * Point);
        var edge = setup.TurnedMarginMm * Point;
        return new Area(edge, edge, width - 2 * edge, height - edge - setup.BottomMm * Point);
    }

    private static (double Width, double Height) Size(PageSetup setup, bool turned) => turned
        ? (setup.Paper.HeightMm * Point, setup.Paper.WidthMm * Point)
        : (setup.Paper.WidthMm * Point, setup.Paper.HeightMm * Point);

    /// <summary>The stretches between new pages, each with how its pages lie; empty ones are left out, unless there is nothing else.</summary>
    public static IEnumerable<(bool Turned, ImmutableArray<Block> Blocks)> Sections(ImmutableArray<Block> blocks)
    {
        var turned = false;
        var section = ImmutableArray.CreateBuilder<Block>();
        var any = false;
        foreach (var block in blocks)
        {
            if (block is not Block.NewPage page)
            {
                section.Add(block);
                continue;
            }
            if (section.Count > 0)
            {
                yield return (turned, section.ToImmutable());
                any = true;
            }
            section.Clear();
            turned = page.Turned;
        }
        if (section.Count > 0 || !any) yield return (turned, section.ToImmutable());
    }

    private static ComposedPage Finished(PageDocument document, PageSetup setup, Typesetter typesetter, bool turned, ImmutableArray<PageMark> marks,
        int number, int count)
    {
        var (width, height) = Size(setup, turned);
        var frame = Frame(setup, turned);
        var look = typesetter.Foot;
        var foot = ImmutableArray.CreateBuilder<PageMark>();
        var top = height - setup.BottomMm * Point / 2 - look.Leading / 2;
        var pageWords = LineBreaker.Break(RichText.Quiet(document.Words.PageOf(number, count)), look, double.MaxValue);
        var numberWidth = pageWords.Length > 0 ? pageWords[0].Width : 0;
        var words = LineBreaker.Break(RichText.Quiet(Cut(document.Foot ?? document.Title, look, frame.Width - numberWidth - 2 * look.Size)), look,
            double.MaxValue);
        if (words.Length > 0) TextFlow.Set(foot, words[0], look, CellAlign.Left, frame.X, top, frame.Width, true);
        if (pageWords.Length > 0) TextFlow.Set(foot, pageWords[0], look, CellAlign.Right, frame.X, top, frame.Width, true);
        return new ComposedPage(width, height, [.. marks, .. foot]);
    }

    // A foot is one line: a long title is cut with an ellipsis.
    private static string Cut(string text, TextLook look, double width)
    {
        var face = HouseFaces.Of(look.Face);
        var prepared = PrintableText.Prepared(text);
        if (face.WidthEm(prepared) * look.Size <= width) return prepared;
        var runes = prepared.EnumerateRunes().ToArray();
        var kept = runes.Length;
        var used = face.WidthEm("…") * look.Size + runes.Sum(r => face.WidthEm(r) * look.Size);
        while (kept > 0 && used > width) used -= face.WidthEm(runes[--kept]) * look.Size;
        return kept == 0 ? "" : string.Concat(runes.Take(kept).Select(r => r.ToString())).TrimEnd() + "…";
    }
}
