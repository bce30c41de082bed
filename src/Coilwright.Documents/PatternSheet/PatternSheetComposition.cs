using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Costing;
using Coilwright.Core.Findings;
using Coilwright.Core.Making;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Documents.PatternSheet;

/// <summary>Puts a pattern sheet together from its model: which block comes after which, and nothing reckoned.</summary>
internal sealed class PatternSheetComposition(PatternSheetModel model, PatternSheetPictures pictures, PageSetup setup, Language language)
{
    private readonly SheetWords _words = language.Sheet;
    private readonly BeadNames _names = new(model.Reckoned);

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
                new Block.Figure(pictures.AsWorn, pictures.AsWorn.Description) { FullWidth = true, Caption = _words.PictureCaption },
                .. SizeAndTools(),
                new Block.Note(language.Report.Cautions, [new Block.List(ListKind.Bulleted, [.. Cautions()])]),
                new Block.KeepTogether([new Block.Heading(2, _words.Materials), Materials(), .. MaterialsNotes()]),
                new Block.Heading(2, _words.Steps),
                .. Steps(),
                new Block.KeepTogether([new Block.Heading(2, _words.OtherSizes), new Block.Paragraph(_words.OtherSizesNote)]),
                .. model.HasSeveralTurns ? LaidStraight() : [],
                new Block.NewPage(Turned: true),
                new Block.Heading(2, _words.Strips),
                new Block.Paragraph(_words.StripsNote),
                new Block.Strip(pictures.CheckRuler, Fill(_words.CheckRuler, ("mm", PatternSheetPictures.RulerMm)))
                {
                    Caption = Fill(_words.CheckRuler, ("mm", PatternSheetPictures.RulerMm)),
                },
                .. pictures.Strips.Select(strip => new Block.Strip(strip.Picture, Fill(_words.StripAlt, ("turn", strip.Turn), ("beads", strip.Beads)))
                {
                    Caption = Fill(_words.StripCaption, ("turn", strip.Turn), ("last", strip.Last == strip.Turn ? null : strip.Last), ("beads", strip.Beads),
                        ("wireMm", strip.WireMm)),
                }),
            ],
        };
    }

    // Side by side, but in large print there is no width for two.
    private IEnumerable<Block> SizeAndTools()
    {
        Block[] size = [new Block.Heading(2, _words.FinishedSize), FinishedSize()],
            tools = [new Block.Heading(2, _words.Tools), new Block.List(ListKind.Bulleted, [.. Tools()])];
        return setup.LargePrint ? [.. size, .. tools] : [new Block.Beside([new BesideCell(3, [.. size]), new BesideCell(2, [.. tools])])];
    }

    private IEnumerable<Block> LaidStraight() =>
    [
        new Block.KeepTogether(
        [
            new Block.Heading(2, _words.TurnRows),
            new Block.Paragraph(_words.TurnRowsNote),
            new Block.Figure(pictures.LaidStraight, pictures.LaidStraight.Description) { FullWidth = true },
        ]),
    ];

    private string Lead()
    {
        var fit = model.Reckoned.Fit;
        return Fill(_words.Lead, ("turns", fit.TurnsDesigned ?? fit.OverlapTurns), ("wristMm", model.Reckoned.WristMm));
    }

    private IEnumerable<Block> MendFirst()
    {
        if (model.MendFirst.IsEmpty) yield break;
        yield return new Block.Note(_words.MendFirst, [new Block.List(ListKind.Bulleted, [.. model.MendFirst.Select(notice =>
        {
            var said = language.Say(notice, _names.Of);
            return RichText.FromString(said.Message + " ") + RichText.Quiet(said.WhatToDo);
        })])]);
    }

    private Block.Table FinishedSize()
    {
        var (fit, mass) = (model.Reckoned.Fit, model.Reckoned.Mass);
        // Half a millimetre is nothing that a maker sees between two ends.
        var ends = Math.Abs(fit.EndsOverlapMm) < 0.5 ? Fill(_words.EndsMeet)
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
        return Fill((wrists.FromMm, wrists.ToMm) switch
        {
            (null, null) => _words.SuitsNone,
            (null, _) => _words.SuitsTo,
            (_, null) => _words.SuitsFrom,
            _ => _words.SuitsFromTo,
        }, ("fromMm", wrists.FromMm), ("toMm", wrists.ToMm));
    }

    private IEnumerable<RichText> Tools()
    {
        yield return _words.ToolShears;
        if (model.HasTurnedLoop) yield return _words.ToolPliers;
        if (model.HasGluedCap) yield return _words.ToolGlue;
        yield return _words.ToolFile;
        yield return _words.ToolRuler;
        yield return _words.ToolGoggles;
    }

    private IEnumerable<RichText> Cautions()
    {
        foreach (var caution in language.Cautions.OfMemoryWire) yield return caution;
        yield return language.Cautions.SmallParts;
    }

    private Block.Table Materials()
    {
        var priced = model.Materials.KnownCost is not null;
        List<TableColumn> columns =
        [
            new(_words.Key, CellAlign.Centre), new(_words.TrueSize, CellAlign.Centre), new(_words.Bead), new(_words.Size) { IsWhole = true },
            new(_words.Use, CellAlign.Right) { IsWhole = true }, new(_words.Buy) { IsWhole = true },
        ];
        if (priced) columns.Add(new(_words.Cost, CellAlign.Right) { IsWhole = true });
        var rows = model.Materials.Lines.Select(line => Row(line, priced)).ToList();
        var wire = model.Reckoned.Piece.Wire;
        List<TableCell> last =
        [
            RichText.Empty, RichText.Empty, Fill(_words.Wire, ("wireMm", wire.WireMm), ("gauge", wire.GaugeName)),
            Fill(_words.WireUse, ("loops", Loops())), RichText.Empty, RichText.Empty,
        ];
        if (priced) last.Add(RichText.Empty);
        rows.Add([.. last]);
        return new Block.Table([.. columns], [.. rows]) { Name = _words.Materials };
    }

    private ImmutableArray<TableCell> Row(MaterialLine line, bool priced)
    {
        var bead = line.Bead;
        // Less than a twentieth of a millimetre apart, the two measures are one on a ruler.
        var size = Math.Abs(bead.LengthMm - bead.WidthMm) < 0.05 ? Fill(_words.OneSize, ("alongMm", bead.LengthMm))
            : Fill(_words.TwoSizes, ("alongMm", language.Number(bead.LengthMm, 1)), ("acrossMm", bead.WidthMm));
        var name = RichText.FromString(KeyedText.Own(bead.Name));
        if (bead.Description.Coating is { Length: > 0 } coating) name += RichText.Quiet(", " + KeyedText.Own(coating));
        List<TableCell> cells =
        [
            RichText.Key(model.Letter(line.KindIndex)),
            new TableCell(RichText.Empty) { Picture = pictures.Bead(line.KindIndex), PictureIsTrueSize = true },
            name, size, line.Use.ToString(CultureInfo.InvariantCulture), Buy(line),
        ];
        if (priced) cells.Add(line.Cost is { } cost ? language.Amount(cost) : "");
        return [.. cells];
    }

    private string Buy(MaterialLine line) => line.Packs is not { } packs ? ""
        : Fill(line.Bead.Description.Pack!.Beads == 1 ? _words.SinglePacks : _words.Packs, ("packs", packs),
            ("unit", KeyedText.Own(line.Bead.Description.Pack.Unit)), ("beads", line.Bead.Description.Pack.Beads));

    private IEnumerable<Block> MaterialsNotes()
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
        var (wire, ends) = (model.Reckoned.Wire, model.Reckoned.Piece.Ends);
        var wireMm = model.Reckoned.Piece.Wire.WireMm;
        yield return new Block.Heading(3, _words.ToBegin);
        yield return new Block.List(ListKind.Ticked,
        [
            RichText.Strong(Fill(_words.CutWire, ("loops", Loops()), ("cutMm", wire.CutMm))) + " "
                + RichText.Quiet(Fill(_words.CutMadeOf, ("beadedMm", wire.BeadedMm), ("endsMm", wire.EndsMm), ("otherMm", wire.GripMm + wire.SpareMm))),
            ends.Start.Finish == EndFinish.TurnedLoop
                ? Fill(_words.TurnFirstLoop, ("insideMm", ends.Start.InsideMm), ("usesMm", ends.Start.WireUsedMm(wireMm)))
                : Fill(_words.GlueFirstCap, ("depthMm", ends.Start.InsideMm)),
        ]);
        // Steps are short: two columns of them fit a page, unless they are in large print.
        yield return new Block.InColumns(setup.LargePrint ? 1 : 2, [.. model.Turns.Select(turn => new Block.KeepTogether(
        [
            new Block.Heading(3, turn.Last > turn.Turn ? Fill(_words.Turns, ("turn", turn.Turn), ("last", turn.Last)) : Fill(_words.Turn, ("turn", turn.Turn))),
            new Block.List(ListKind.Ticked, [.. turn.Steps.Select(Step)]),
            new Block.Paragraph(Fill(_words.SoFar, ("beads", turn.BeadsSoFar)), ParagraphLook.Small),
        ]))]);
        yield return new Block.KeepTogether(
        [
            new Block.Heading(3, _words.ToFinish),
            new Block.List(ListKind.Ticked,
            [
                ends.Finish.Finish == EndFinish.TurnedLoop
                    ? Fill(_words.TurnLastLoop, ("trimMm", wire.TrimFinishMm), ("insideMm", ends.Finish.InsideMm))
                    : Fill(_words.GlueLastCap, ("trimMm", wire.TrimFinishMm), ("depthMm", ends.Finish.InsideMm)),
                _words.TryOn,
            ]),
        ]);
    }

    private RichText Step(StringingStep step)
    {
        var beads = string.Join(_words.RunJoin, step.Parts.Select(Part));
        var group = step.Group is { } name ? KeyedText.Own(name) : null;
        return KeyedText.Rich(language.Sentence(group is null ? _words.String : step.Times > 1 ? _words.StringGroupTimes : _words.StringGroup,
            ("group", group), ("times", step.Times), ("beads", beads)));
    }

    private string Part(StepPart part)
    {
        var runs = string.Join(_words.RunJoin, part.Runs.Select(r => Fill(_words.Run, ("count", r.Count), ("key", KeyedText.Mark(model.Letter(r.Kind))))));
        return part.Times == 1 ? runs : Fill(_words.Repeat, ("times", part.Times), ("beads", runs));
    }

    // A loop is cut by eye: a tenth of one is as near as that comes, and never too little.
    private string Loops() => language.NumberUp(model.Reckoned.Wire.Loops, 1);

    private string Fill(string template, params ReadOnlySpan<(string Name, object? Value)> values) => language.Fill(template, values);
}
