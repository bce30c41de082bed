using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Batches;
using Coilwright.Core.Cutting;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Documents.Strips;
using Coilwright.Wording;

namespace Coilwright.Documents.Batches;

/// <summary>The papers of a batch: what is counted out, cut and fetched, and a sheet to tick off while stringing. Both read in grey: letters say which bead it is.</summary>
public static class BatchDocuments
{
    private const double BoxMm = 4.2, GapMm = 1.4, EdgeMm = 0.35;

    // Boxes beside one another at most: more stand in several rows.
    private const int BoxesAcross = 6;

    /// <summary>The plan as a page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="wire">How the wire at hand is cut for it; null where nobody said what is there.</param>
    /// <param name="language">The language.</param>
    public static PageDocument Plan(BatchPlan plan, CuttingPlan? wire, Language language)
    {
        var (words, said) = (language.Batch, new BatchSentences(plan, language));
        List<Block> blocks = [new Block.Heading(1, KeyedText.Own(said.Heading()))];
        blocks.AddRange(said.Mind().Select(s => (Block)new Block.Paragraph(RichText.Strong(s))));
        blocks.Add(new Block.Heading(2, words.TraysHeading));
        blocks.AddRange(said.Trays().Select(s => (Block)new Block.Paragraph(KeyedText.Own(s))));
        if (!plan.Wells.IsEmpty) blocks.Add(Wells(plan, language));
        blocks.Add(new Block.KeepTogether(
        [
            new Block.Heading(2, words.FetchHeading),
            new Block.Table([new(RichText.Empty, CellAlign.Centre), new(language.Sheet.Key, CellAlign.Centre), new(language.Sheet.Bead), new(language.Sentence(words.AllColumn), CellAlign.Right)],
                [.. plan.Reckoned.Counts.Select(k => (ImmutableArray<TableCell>)[Boxes(1), RichText.Key(k.Letter), KeyedText.Own(k.Bead.Name), RichText.Strong(Count((long)k.Count * plan.Count))])])
            { Name = words.FetchHeading },
        ]));
        blocks.Add(new Block.KeepTogether([new Block.Heading(2, words.WireHeading), new Block.List(ListKind.Ticked, [said.Wire()])]));
        if (wire is not null) blocks.AddRange(Coils(wire, language));
        blocks.Add(new Block.KeepTogether([new Block.Heading(2, words.TimeHeading), new Block.List(ListKind.Bulleted, [.. said.Steps().Select(s => (RichText)KeyedText.Own(s))]), new Block.Paragraph(RichText.Strong(said.Time()))]));
        blocks.Add(new Block.Note(language.Cut.CautionsHeading, [new Block.List(ListKind.Bulleted, [.. said.Cautions().Select(c => (RichText)c)])]));
        return Page(said.Heading(), language, blocks);
    }

    /// <summary>The tick sheet of one piece in its colours: boxes for each group of each turn, and how many beads are on the wire after it.</summary>
    public static PageDocument TickSheet(Reckoned reckoned, Language language)
    {
        var words = language.Batch;
        var model = PatternSheetModel.Of(reckoned);
        var steps = new PatternSentences(reckoned, language, KeyedText.Mark, KeyedText.Own);
        var title = language.Fill(words.TickTitle, ("name", reckoned.Piece.Title));
        List<Block> blocks =
        [
            new Block.Heading(1, KeyedText.Own(title)),
            new Block.Paragraph(language.Fill(words.TickLead, ("beads", model.Materials.Beads)), ParagraphLook.Lead),
            new Block.Table([new(language.Sheet.Key, CellAlign.Centre), new(language.Sheet.TrueSize, CellAlign.Centre), new(language.Sheet.Bead), new(language.Sheet.Use, CellAlign.Right)],
                [.. reckoned.Counts.Select(k => (ImmutableArray<TableCell>)[RichText.Key(k.Letter), Bead(k), KeyedText.Own(k.Bead.Name), Count(k.Count)])])
            { Name = language.Sheet.Materials },
        ];
        foreach (var turn in model.Turns)
        {
            var heading = language.Fill(turn.Last > turn.Turn ? language.Sheet.Turns : language.Sheet.Turn, ("turn", turn.Turn), ("last", turn.Last), ("overlap", turn.HasOverlap ? true : null));
            blocks.Add(new Block.KeepTogether(
            [
                new Block.Heading(2, heading),
                new Block.Table([new(language.Sentence(words.BoxColumn)), new(language.Sentence(words.StepColumn)), new(language.Sentence(words.AfterColumn), CellAlign.Right) { IsWhole = true }],
                    [.. turn.Steps.Select(s => (ImmutableArray<TableCell>)[Boxes(s.Times), KeyedText.Rich(steps.Of(s)), RichText.Strong(Count(s.First + s.Beads))])])
                { Name = heading },
            ]));
        }
        return Page(title, language, blocks);
    }

    private static IEnumerable<Block> Coils(CuttingPlan wire, Language language)
    {
        var cutting = new CutSentences(wire, language);
        yield return new Block.Paragraph(language.Bench.Batch.WireAtHand);
        if (!wire.Coils.IsEmpty)
            yield return new Block.List(ListKind.Ticked, [.. wire.Coils.Select(c => (RichText)KeyedText.Own($"{cutting.Of(c)} {string.Join("; ", cutting.Cuts(c))}. {cutting.Left(c)}"))]);
        foreach (var sentence in cutting.NotCut()) yield return new Block.Paragraph(RichText.Strong(KeyedText.Own(sentence)));
    }

    private static Block.Table Wells(BatchPlan plan, Language language)
    {
        var words = language.Batch;
        (TableColumn Column, Func<TrayWell, TableCell> Cell, bool IsThere)[] all =
        [
            (new(RichText.Empty, CellAlign.Centre), _ => Boxes(1), true),
            (new(language.Sentence(words.TrayColumn), CellAlign.Right), w => Count(w.Tray), plan.TraysEach > 1),
            (new(language.Sentence(words.WellColumn), CellAlign.Right), w => RichText.Strong(Count(w.Well)), true),
            (new(language.Sentence(words.TurnColumn), CellAlign.Right), w => w.Turn is { } turn ? Count(turn) : "", plan.IsByTurn),
            (new(language.Sheet.Key, CellAlign.Centre), w => RichText.Key(w.Kind.Letter), true),
            (new(language.Sheet.Bead), w => KeyedText.Own(w.Kind.Bead.Name), true),
            (new(language.Sentence(words.CountColumn), CellAlign.Right) { IsWhole = true }, w => RichText.Strong(Count(w.Count)), true),
            (new(language.Sentence(words.AllColumn), CellAlign.Right) { IsWhole = true }, w => Count((long)w.Count * plan.Count), true),
        ];
        var columns = all.Where(c => c.IsThere).ToArray();
        return new Block.Table([.. columns.Select(c => c.Column)], [.. plan.Wells.Select(w => (ImmutableArray<TableCell>)[.. columns.Select(c => c.Cell(w))])]) { Name = words.TraysHeading };
    }

    // Boxes to tick at a pencil's size.
    private static TableCell Boxes(int count)
    {
        var (across, down) = (Math.Min(count, BoxesAcross), (count - 1) / BoxesAcross + 1);
        return new TableCell(RichText.Empty)
        {
            Picture = new Picture(across * (BoxMm + GapMm) - GapMm, down * (BoxMm + GapMm) - GapMm, "", "",
                [.. Enumerable.Range(0, count).Select(i => (Mark)new Rectangle(
                    Box.At(i % BoxesAcross * (BoxMm + GapMm) + EdgeMm, i / BoxesAcross * (BoxMm + GapMm) + EdgeMm, BoxMm - 2 * EdgeMm, BoxMm - 2 * EdgeMm), Paint.Lined(Palette.Colour.Ink, 0.3)) { CornerMm = 0.6 })]),
        };
    }

    // Every picture of a page has symbols of its own names.
    private static TableCell Bead(KindCount kind)
    {
        var picture = StripDrawing.Alone(kind.Bead);
        return new TableCell(RichText.Empty)
        {
            Picture = picture with { Marks = [.. picture.Marks.Select(m => m is Stamp stamp ? stamp with { Symbol = stamp.Symbol with { Name = kind.Bead.Id } } : m)] },
            PictureIsTrueSize = true,
        };
    }

    private static string Count(long count) => count.ToString(CultureInfo.InvariantCulture);

    private static PageDocument Page(string title, Language language, List<Block> blocks) => new()
    {
        Title = KeyedText.Own(title),
        Language = language.Code,
        Words = new PageWords
        {
            PageOf = (page, pages) => language.Fill(language.Sheet.PageOf, ("page", page), ("pages", pages)),
            JoinAt = letter => language.Fill(language.Sheet.JoinAt, ("letter", letter)),
        },
        Blocks = [.. blocks],
    };
}
