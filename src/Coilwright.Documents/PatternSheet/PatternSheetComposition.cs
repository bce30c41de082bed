using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Costing;
using Coilwright.Core.Findings;
using Coilwright.Core.Grading;
using Coilwright.Core.Making;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Strips;
using Coilwright.Documents.TurnRows;
using Coilwright.Wording;

namespace Coilwright.Documents.PatternSheet;

/// <summary>Puts a pattern sheet together from its model: which block comes after which, and nothing reckoned.</summary>
internal sealed class PatternSheetComposition(PatternSheetModel model, Sizes? sizes, PatternSheetPictures pictures, PageSetup setup, Language language)
{
    private readonly SheetWords _words = language.Sheet;
    private readonly BeadNames _names = new(model.Reckoned);
    private readonly PatternSentences _steps = new(model.Reckoned, language, KeyedText.Mark, KeyedText.Own);

    public PageDocument Make()
    {
        var title = KeyedText.Own(model.Reckoned.Piece.Title);
        return new PageDocument
        {
            Title = title,
            Language = language.Code,
            Foot = Fill(_words.Foot, ("title", title)),
            Words = new PageWords
            {
                PageOf = (page, pages) => Fill(_words.PageOf, ("page", page), ("pages", pages)),
                JoinAt = letter => Fill(_words.JoinAt, ("letter", letter)),
            },
            Blocks =
            [
                new Block.Heading(1, title),
                new Block.Paragraph(Lead(), ParagraphLook.Lead),
                .. MendFirst(),
                .. Head(),
                new Block.Note(language.Report.Cautions, [new Block.List(ListKind.Bulleted, [.. Cautions()])]),
                new Block.KeepTogether([new Block.Heading(2, _words.Materials), Materials(), .. MaterialsNotes()]),
                new Block.Heading(2, _words.Steps),
                .. Steps(),
                .. OtherSizes(),
                .. model.HasSeveralTurns ? LaidStraight() : [],
                .. AtTrueSize(),
            ],
        };
    }

    // The coil across the page, size and tools side by side beneath it; but in large print there is no width for two.
    private IEnumerable<Block> Head()
    {
        if (pictures.Coil is { } coil) yield return new Block.Figure(coil, coil.Description) { IsCentred = true, MayShrink = true };
        Block[] size = [new Block.Heading(2, _words.FinishedSize), FinishedSize()], tools = [new Block.Heading(2, _words.Tools), new Block.List(ListKind.Bulleted, [.. Tools()])];
        if (!setup.LargePrint) yield return new Block.Beside([new BesideCell(11, [.. size]), new BesideCell(8, [.. tools])]);
        else
            foreach (var block in size.Concat(tools)) yield return block;
    }

    // What another wrist changes; where anything lies over anything with how it lines up from wrist to wrist, and what the curve says in words.
    internal IEnumerable<Block> OtherSizes()
    {
        var graded = sizes is { All.IsEmpty: false } all ? new SizesPart(model, all, setup, language) : null;
        Block[] head = [new Block.Heading(2, _words.OtherSizes), .. graded?.Changes() ?? []];
        // On another wrist the same string lies elsewhere: the curve is of the piece as it is strung here.
        var note = graded is null ? _words.OtherSizesNote : _words.SameStringNote;
        Block[] curve = pictures.Curve is not { } picture ? [new Block.Paragraph(note, ParagraphLook.Small)] :
        [
            new Block.Figure(picture, picture.Description) { FullWidth = true },
            new Block.Paragraph(string.Join(' ', (string[])[Fill(_words.CurveNote, ("wristMm", model.Reckoned.WristMm)), .. new ReadingSentences(model.Reckoned, language).OverWrists(), note]), ParagraphLook.Small),
        ];
        return graded is null ? [new Block.KeepTogether([.. head, .. curve])]
            : [.. head, new Block.KeepTogether([.. graded.Beads()]), new Block.KeepTogether([.. curve])];
    }

    /// <summary>The strips, with a ruler to check the print by.</summary>
    internal IEnumerable<Block> AtTrueSize() =>
    [
        .. StripsFitUpright ? Array.Empty<Block>() : [new Block.NewPage(Turned: true)],
        new Block.KeepTogether(
        [
            new Block.Heading(2, _words.Strips),
            new Block.Paragraph(_words.StripsNote),
            new Block.Strip(pictures.CheckRuler, StripsDrawing.RulerWords(language)) { Caption = StripsDrawing.RulerWords(language) },
        ]),
        .. Strips(),
    ];

    // The last two stay together: a page with one strip on it is a page for nothing.
    private Block[] Strips()
    {
        Block[] strips = [.. pictures.Strips.Select(s => new Block.Strip(s.Picture, StripsDrawing.Alt(s, language)) { Caption = StripsDrawing.Caption(s, language) })];
        return strips.Length < 3 ? strips : [.. strips[..^2], new Block.KeepTogether([.. strips[^2..]])];
    }

    // Upright the strips go on where there is room; only longer ones need the paper's long side.
    private bool StripsFitUpright => pictures.Strips.Max(s => s.Picture.WidthMm) <= setup.Paper.WidthMm - 2 * setup.SideMm;

    internal IEnumerable<Block> LaidStraight() =>
    [
        new Block.KeepTogether(
        [
            new Block.Heading(2, _words.TurnRows),
            new Block.Paragraph(TurnRowsNote()),
            new Block.Figure(pictures.LaidStraight[0].Picture, pictures.LaidStraight[0].Picture.Description) { FullWidth = true },
        ]),
        .. pictures.LaidStraight.Skip(1).Select(part => new Block.Figure(part.Picture, Fill(_words.RowsAlt, ("first", part.First), ("last", part.Last))) { FullWidth = true }),
    ];

    // What the bars mean stands there for those that are drawn.
    private string TurnRowsNote()
    {
        var ties = TurnRowsModel.Of(model.Reckoned).Rows.SelectMany(r => r.Ties).ToArray();
        List<string> says = [_words.TurnRowsNote];
        if (ties.Any(t => !t.IsWished)) says.Add(language.TurnRows.Hatched);
        if (ties.Any(t => t.IsWished)) says.Add(language.TurnRows.Open);
        return string.Join(' ', says);
    }

    internal string Lead()
    {
        var fit = model.Reckoned.Fit;
        return Fill(_words.Lead, ("turns", fit.TurnsDesigned ?? fit.OverlapTurns), ("wristMm", model.Reckoned.WristMm));
    }

    internal IEnumerable<Block> MendFirst()
    {
        if (model.MendFirst.IsEmpty) yield break;
        yield return new Block.Note(_words.MendFirst, [new Block.List(ListKind.Bulleted, [.. model.MendFirst.Select(notice =>
        {
            var said = language.Say(notice, _names.Of);
            return RichText.FromString(said.Message + " ") + RichText.Quiet(said.WhatToDo);
        })])]);
    }

    internal Block.Table FinishedSize()
    {
        var (fit, mass) = (model.Reckoned.Fit, model.Reckoned.Mass);
        var ends = fit.EndsMeet ? Fill(_words.EndsMeet)
            : Fill(fit.EndsOverlapMm > 0 ? _words.EndsOverlap : _words.EndsApart, ("mm", Math.Abs(fit.EndsOverlapMm)));
        List<ImmutableArray<TableCell>> rows =
        [
            [_words.SizeTurns, language.Number(fit.TurnsWorn, 1)],
            [_words.SizeBeads, model.Materials.Beads.ToString(CultureInfo.InvariantCulture)],
            [_words.SizeInside, language.Length(fit.InsideRelaxedMm)],
            [_words.SizeEnds, ends],
        ];
        if (mass.TotalG is { } grams) rows.Add([_words.SizeWeight, Fill(_words.Grams, ("grams", language.Number(grams, 0)))]);
        rows.Add([_words.SizeSuits, Suits()]);
        return new Block.Table([new TableColumn(RichText.Empty) { IsWhole = true }, new TableColumn(RichText.Empty)], [.. rows]) { Name = _words.FinishedSize, RowsHaveHeads = true };
    }

    private string Suits()
    {
        var wrists = model.Reckoned.Wrists;
        return Fill(_words.Suits.Of(wrists), ("fromMm", wrists.FromMm), ("toMm", wrists.ToMm));
    }

    internal IEnumerable<RichText> Tools()
    {
        yield return _words.ToolShears;
        if (model.HasTurnedLoop) yield return _words.ToolPliers;
        if (model.HasGluedCap) yield return _words.ToolGlue;
        yield return _words.ToolFile;
        yield return _words.ToolRuler;
        yield return _words.ToolGoggles;
    }

    internal IEnumerable<RichText> Cautions()
    {
        foreach (var caution in language.Cautions.OfMemoryWire) yield return caution;
        yield return language.Cautions.SmallParts;
    }

    // In large print and on a phone there is no width for seven columns: a bead's size and packs then stand behind its name, and on a phone its cost.
    private const int NameColumn = 2;

    internal Block.Table Materials()
    {
        var priced = model.Materials.KnownCost is not null;
        IEnumerable<(TableColumn Column, Func<MaterialLine, TableCell> Cell, bool IsWide)> all =
        [
            (new(_words.Key, CellAlign.Centre), line => RichText.Key(model.Letter(line.KindIndex)), false),
            (new(_words.TrueSize, CellAlign.Centre), line => new TableCell(RichText.Empty) { Picture = pictures.Bead(line.KindIndex), PictureIsTrueSize = true }, false),
            (new(_words.Bead), line => setup.LargePrint ? NameSizeAndBuy(line) : Name(line), false),
            (new(_words.Size) { IsWhole = true, Folded = new(NameColumn, ", ") }, line => Size(line), true),
            (new(_words.Use, CellAlign.Right) { IsWhole = true }, line => line.Use.ToString(CultureInfo.InvariantCulture), false),
            (new(_words.Buy) { IsWhole = true, Folded = new(NameColumn, "; " + _words.Buy + ": ") }, line => Buy(line), true),
            (new(_words.Cost, CellAlign.Right) { IsWhole = true, Folded = setup.LargePrint ? null : new(NameColumn, "; " + _words.Cost + ":\u00a0") }, line => line.Cost is { } cost ? language.Amount(cost) : "", false),
        ];
        var columns = all.Where(c => !(c.IsWide && setup.LargePrint)).SkipLast(priced ? 0 : 1).ToArray();
        var wire = model.Reckoned.Piece.Wire;
        RichText name = Fill(_words.Wire, ("wireMm", wire.WireMm), ("gauge", wire.GaugeName));
        string coil = Fill(_words.WireSize, ("insideMm", wire.By(CoilDatum.Inside).SizeMm)), loops = Fill(_words.WireUse, ("loops", model.Reckoned.Wire.LoopsToCut));
        TableCell[] ofWire = setup.LargePrint ? [name + RichText.Quiet(", " + coil + "; " + _words.Buy + ": " + loops)] : [name, coil, RichText.Empty, loops];
        ImmutableArray<TableCell> last = [RichText.Empty, RichText.Empty, .. ofWire, .. Enumerable.Repeat((TableCell)RichText.Empty, columns.Length - 2 - ofWire.Length)];
        return new Block.Table([.. columns.Select(c => c.Column)],
            [.. model.Materials.Lines.Select(line => (ImmutableArray<TableCell>)[.. columns.Select(c => c.Cell(line))]), last, .. model.Reckoned.Piece.Ends.Bought.Select(b => OfEnd(b.End, b.Count, columns.Length))])
        { Name = _words.Materials };
    }

    // Without letter and picture: a cap or a dangle is no bead of the order.
    private ImmutableArray<TableCell> OfEnd(WireEnd end, int count, int columns)
    {
        RichText name = end.IsTurned ? Fill(_words.DangleItem, ("dangle", end.Dangle is { } dangle ? KeyedText.Own(dangle) : null)) : _words.CapItem;
        var size = end.IsTurned ? end.DangleMm is { } hangs ? Fill(_words.DangleSize, ("mm", hangs)) : "" : Fill(_words.CapSize, ("mm", end.InsideMm));
        string use = count.ToString(CultureInfo.InvariantCulture);
        TableCell[] cells = setup.LargePrint ? [size.Length > 0 ? name + RichText.Quiet(", " + size) : name, use] : [name, size, use];
        return [RichText.Empty, RichText.Empty, .. cells, .. Enumerable.Repeat((TableCell)RichText.Empty, columns - 2 - cells.Length)];
    }

    private static RichText Name(MaterialLine line)
    {
        var name = KeyedText.Own(line.Bead.Name);
        // A frosted pebble is called so once.
        return line.Bead.Description.Coating is { Length: > 0 } coating && !name.Contains(coating, StringComparison.OrdinalIgnoreCase)
            ? name + RichText.Quiet(", " + KeyedText.Own(coating)) : name;
    }

    private RichText NameSizeAndBuy(MaterialLine line)
    {
        var text = Name(line) + RichText.Quiet(", " + Size(line));
        return Buy(line) is { Length: > 0 } buy ? text + RichText.Quiet("; " + _words.Buy + ": " + buy) : text;
    }

    // Less than a twentieth of a millimetre apart, the two measures are one on a ruler.
    private string Size(MaterialLine line) => Math.Abs(line.Bead.LengthMm - line.Bead.WidthMm) < 0.05 ? Fill(_words.OneSize, ("alongMm", line.Bead.LengthMm))
        : Fill(_words.TwoSizes, ("alongMm", language.Number(line.Bead.LengthMm, 1)), ("acrossMm", line.Bead.WidthMm));

    private string Buy(MaterialLine line) => line.Packs is { } packs ? PackWords.Of(packs, line.Bead.Description.Pack!, language, KeyedText.Own) : "";

    internal IEnumerable<Block> MaterialsNotes()
    {
        var note = _words.MaterialsNote;
        if (model.Materials.KnownCost is { } cost)
            note += " " + Fill(_words.CostInAll, ("cost", language.Amount(cost)),
                ("unpriced", model.Materials.Unpriced == 0 ? null : model.Materials.Unpriced));
        yield return new Block.Paragraph(note, ParagraphLook.Small);
        if (model.HasMetal) yield return new Block.Paragraph(language.Cautions.Metals, ParagraphLook.Small);
    }

    private IEnumerable<Block> Steps()
    {
        yield return new Block.Heading(3, _words.ToBegin);
        yield return new Block.List(ListKind.Ticked, [RichText.Strong(_steps.OfWire(StepAction.CutWire)) + " " + RichText.Quiet(_steps.CutMadeOf()), _steps.OfWire(StepAction.FirstEnd)]);
        yield return new Block.Figure(pictures.Ends, pictures.Ends.Description) { FullWidth = true };
        // Steps are short: two columns of them fit a page, unless they are in large print or all of one turn.
        yield return new Block.InColumns(setup.LargePrint || model.Turns.Length == 1 ? 1 : 2, [.. model.Turns.SelectMany(Turn)]);
        yield return new Block.KeepTogether(
        [
            new Block.Heading(3, _words.ToFinish),
            new Block.List(ListKind.Ticked, [_steps.OfWire(StepAction.LastEnd), _steps.OfWire(StepAction.TryOn)]),
        ]);
    }

    // Kept whole, unless in large print, where few turns share a page: there its steps run on to the next.
    private Block[] Turn(TurnOfSteps turn)
    {
        Block[] blocks =
        [
            new Block.Heading(3, Fill(turn.Last > turn.Turn ? _words.Turns : _words.Turn, ("turn", turn.Turn), ("last", turn.Last), ("overlap", turn.HasOverlap ? true : null))),
            new Block.List(ListKind.Ticked, [.. turn.Steps.Select(Step)]) { StaysWithNext = true },
            new Block.Paragraph(Fill(turn.BeadsSoFar == model.Materials.Beads ? _words.InAll : _words.SoFar, ("beads", turn.BeadsSoFar)), ParagraphLook.Small),
        ];
        return setup.LargePrint ? blocks : [new Block.KeepTogether([.. blocks])];
    }

    private RichText Step(StringingStep step) => KeyedText.Rich(_steps.Of(step));

    private string Fill(string template, params ReadOnlySpan<(string Name, object? Value)> values) => language.Fill(template, values);
}
