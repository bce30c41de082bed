using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Grading;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>The sizes of a design, as a page of text.</summary>
internal static class SizesText
{
    // Sizes side by side in the table of beads: as many as leave room for the beads' names.
    private const int Across = 6;

    /// <summary>The page.</summary>
    /// <param name="sizes">The sizes.</param>
    /// <param name="language">The language.</param>
    /// <param name="written">Where each was written; empty when they were not.</param>
    public static string Of(Sizes sizes, Language language, ImmutableArray<string> written)
    {
        var (page, said, words) = (new TextPage(), new SizesSentences(sizes, language), language.Sizes);
        page.Title(sizes.Base.Piece.Title);
        foreach (var sentence in said.Keeps()) page.Paragraph(sentence);

        page.Heading(words.Heading);
        var (focal, wish) = (sizes.All.Any(s => s.Reckoned.Focal is not null), sizes.All.Any(s => s.Against is not null));
        IEnumerable<(string Heading, bool Right, Func<Size, string> Cell, bool IsThere)> all =
        [
            (words.Wrist, true, s => Mm(s.WristMm, language), true),
            (words.Beads, true, s => Whole(s.Piece.Order.Count), true),
            (words.Turns, true, s => language.Number(s.Reckoned.Fit.TurnsWorn, 2), true),
            (words.Length, false, said.Off, true),
            (words.Coil, false, said.Coil, true),
            (words.ToCut, true, s => Mm(Math.Ceiling(s.Reckoned.Wire.CutMm), language), true),
            (words.Focal, false, said.Focal, focal),
            (words.Against, true, said.Against, wish),
        ];
        var columns = all.Where(c => c.IsThere).ToArray();
        page.Table([.. columns.Select(c => (c.Heading, c.Right))], sizes.All.Select(s => columns.Select(c => c.Cell(s)).ToArray()), [.. Enumerable.Range(3, columns.Length - 3)]);

        page.Heading(words.Changes);
        foreach (var size in sizes.All)
        {
            page.Hanging(Mm(size.WristMm, language) + ": ", said.Change(size));
            foreach (var note in said.Notes(size)) page.Paragraph(note, 2);
        }
        if (said.Gaps().ToArray() is { Length: > 0 } gaps)
        {
            page.Blank();
            page.Paragraph(words.GapsNote);
            foreach (var gap in gaps) page.Hanging("  ", gap);
        }

        page.Heading(words.Materials);
        var materials = sizes.Materials;
        for (var from = 0; from < sizes.All.Length; from += Across)
        {
            if (from > 0) page.Blank();
            Materials(page, sizes, materials, said, language, from, Math.Min(from + Across, sizes.All.Length));
        }
        page.Blank();
        page.Paragraph(words.MostNote + " " + words.MaterialsNote);
        foreach (var file in written) page.Paragraph(language.Sentence(words.Written, ("file", file)));
        return page.ToString();
    }

    private static void Materials(TextPage page, Sizes sizes, SizesMaterials materials, SizesSentences said, Language language, int from, int to)
    {
        var words = language.Sizes;
        var isLast = to == sizes.All.Length;
        List<(string, bool)> columns = [(words.Bead, false), .. sizes.All[from..to].Select(s => (language.Number(s.WristMm, 2), true))];
        if (isLast) columns.AddRange([(words.Most, true), (words.OneOfEach, true), (words.Buy, false)]);
        var rows = materials.Lines.Select(line => (string[])
        [
            said.Bead(line), .. line.Uses[from..to].Select(Whole),
            .. isLast ? [Whole(line.Most), Whole(line.ForOneOfEach.Use), said.Packs(line)] : Array.Empty<string>(),
        ]).ToList();
        rows.Add([words.Together, .. materials.Beads[from..to].Select(Whole), .. isLast ? ["", Whole(materials.Beads.Sum()), ""] : Array.Empty<string>()]);
        rows.Add([words.Wire, .. materials.CutMm[from..to].Select(Millimetres), .. isLast ? ["", Millimetres(materials.CutMm.Sum()), ""] : Array.Empty<string>()]);
        page.Table(columns, rows, 0, columns.Count - 1);
    }

    private static string Mm(double mm, Language language) => language.Number(mm, 2) + " " + language.Terms.Mm;

    private static string Millimetres(double mm) => Whole((int)Math.Ceiling(mm - 1e-6));

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
