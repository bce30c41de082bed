using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Documents.CoilView;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Documents.StepFigures;
using Coilwright.Documents.Strips;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Patterns;

/// <summary>Puts a pattern together: which block comes after which, and nothing reckoned.</summary>
internal sealed class PatternComposition(PatternSheetModel model, PatternSheetComposition sheet, PatternSheetPictures pictures, ImmutableArray<Piece> colourways, CoverPicture? cover, PageSetup setup, Language language)
{
    // What the cover has beside the coil: title and lead above it, what is told at a glance below; and about what each line of hers adds. Where that leaves the coil
    // too little, what is told at a glance goes on to the next page.
    private const double BesideCoverMm = 160, RowMm = 8, LineMm = 5.7, LineLetters = 84, LeastCoilHighMm = 70, LeastCoilMm = 30;

    // A figure's share of the width beside its step's words.
    private const double WordsShare = 9, FigureShare = 10, GutterMm = 6;

    // A line of small text and a little air: the figure's number stands beside its coil, not beneath it.
    private const double NumberMm = 6;

    private readonly SheetWords _sheet = language.Sheet;
    private readonly PatternWords _words = language.Pattern;
    private readonly PatternNotes _notes = model.Reckoned.Piece.Pattern;
    private readonly PatternSentences _sentences = new(model.Reckoned, language, KeyedText.Mark, KeyedText.Own);
    private readonly ImmutableArray<PatternStep> _steps = PatternSteps.Of(model.Reckoned);

    public PageDocument Make()
    {
        var title = KeyedText.Own(model.Reckoned.Piece.Title);
        return new PageDocument
        {
            Title = title,
            Language = language.Code,
            Author = _notes.By is { Length: > 0 } by ? KeyedText.Own(by) : null,
            Foot = Fill(_words.Foot, ("title", title)),
            Words = new PageWords
            {
                PageOf = (page, pages) => Fill(_sheet.PageOf, ("page", page), ("pages", pages)),
                JoinAt = letter => Fill(_sheet.JoinAt, ("letter", letter)),
            },
            Blocks =
            [
                .. Cover(title),
                new Block.NewPage(),
                new Block.KeepTogether([new Block.Heading(2, _sheet.Materials), sheet.Materials(), .. sheet.MaterialsNotes()]),
                new Block.Note(language.Report.Cautions, [new Block.List(ListKind.Bulleted, [.. sheet.Cautions()])]),
                new Block.NewPage(),
                new Block.Heading(2, _sheet.Steps),
                .. Steps(),
                .. sheet.OtherSizes(),
                .. Colourways(),
                .. model.HasSeveralTurns ? sheet.LaidStraight() : [],
                .. Written(_words.Care, _notes.Care),
                .. Written(_words.Usage, _notes.Usage),
                .. sheet.AtTrueSize(),
            ],
        };
    }

    private IEnumerable<Block> Cover(string title)
    {
        yield return new Block.Heading(1, title);
        yield return new Block.Paragraph(sheet.Lead(), ParagraphLook.Lead);
        if (_notes.By is { Length: > 0 } by) yield return new Block.Paragraph(RichText.Quiet(Fill(_words.By, ("by", KeyedText.Own(by)))));
        var options = new PictureOptions { Paper = false, MarginMm = 0.5, WidthMm = (setup.Paper.WidthMm - 2 * setup.SideMm) / setup.Enlarged, Language = language, Typeface = HouseSans.Instance };
        var hers = Lines(_notes.Introduction).Sum(line => Math.Ceiling(line.Length / LineLetters) * LineMm + 2)
            + RowMm * ((_notes.By is null ? 0 : 1) + (_notes.Level is null ? 0 : 1.6) + (_notes.Minutes is null ? 0 : 1));
        var room = Math.Max(LeastCoilHighMm, setup.Paper.HeightMm - BesideCoverMm - hers) / setup.Enlarged;
        if (cover is not null && !setup.InkSaving) yield return Pictured(cover, options.WidthMm.Value, room, title);
        else if (CoilViewDrawing.Within(model.Reckoned, room, LeastCoilMm, options) is { } coil) yield return new Block.Figure(coil, coil.Description) { IsCentred = true, MayShrink = true };
        foreach (var block in Paragraphs(_notes.Introduction)) yield return block;
        foreach (var block in GlanceAndTools()) yield return block;
        foreach (var block in sheet.MendFirst()) yield return block;
    }

    private Block.Figure Pictured(CoverPicture picture, double widthMm, double roomMm, string title)
    {
        var alt = Fill(_words.CoverAlt, ("title", title), ("beads", model.Reckoned.Lie.Count), ("turns", language.Number(model.Reckoned.Fit.TurnsWorn, 1)));
        return new Block.Figure(picture.Within(widthMm, roomMm - NumberMm, setup.Enlarged, title, alt, language.Code), alt)
        {
            IsCentred = true,
            MayShrink = true,
            Caption = RichText.Quiet(Fill(picture.IsStill ? _words.CoverStill : _words.CoverPhoto, ("title", title))),
        };
    }

    // The finished size with what she judges of level and time before it.
    private Block.Table AtAGlance()
    {
        var size = sheet.FinishedSize();
        var own = ImmutableArray.CreateBuilder<ImmutableArray<TableCell>>();
        if (_notes.Level is { } level) own.Add([_words.Level, _words.Levels[level]]);
        if (_notes.Minutes is { } minutes)
            own.Add([_words.Time, Fill(_words.TimeIs, ("hours", minutes >= 60 ? minutes / 60 : null), ("minutes", minutes % 60 > 0 ? minutes % 60 : null))]);
        return size with { Name = _words.AtAGlance, Rows = [.. own, .. size.Rows] };
    }

    // Side by side, as on the sheet; in large print there is no width for two.
    private Block[] GlanceAndTools()
    {
        Block[] glance = [new Block.Heading(2, _words.AtAGlance), AtAGlance()];
        Block[] tools =
        [
            new Block.Heading(2, _sheet.Tools), new Block.List(ListKind.Bulleted, [.. sheet.Tools()]),
            .. _notes.Techniques.IsEmpty ? Array.Empty<Block>()
                : [new Block.Heading(2, _words.Techniques), new Block.List(ListKind.Bulleted, [.. _notes.Techniques.Select(t => (RichText)KeyedText.Own(t))])],
        ];
        return setup.LargePrint ? [.. glance, .. tools] : [new Block.Beside([new BesideCell(11, [.. glance]), new BesideCell(8, [.. tools])])];
    }

    private IEnumerable<Block> Steps()
    {
        yield return new Block.Paragraph(_words.FiguresNote, ParagraphLook.Small);
        var own = StepTexts.Match(_steps, _notes.Words, model.Reckoned.Piece).OfStep;
        var width = (setup.Paper.WidthMm - 2 * setup.SideMm) / setup.Enlarged;
        var drawing = new StepFigureDrawing(model.Reckoned, new StepFigureOptions
        {
            WidthMm = setup.LargePrint ? width : (width - GutterMm) * FigureShare / (WordsShare + FigureShare),
            FootMm = NumberMm,
            Language = language,
            Typeface = HouseSans.Instance,
        });
        var figure = 1;
        var (ends, turn) = (0, 0);
        for (var s = 0; s < _steps.Length; s++)
        {
            var step = _steps[s];
            if (s == 0) yield return new Block.Heading(3, _sheet.ToBegin);
            if (step.Turn is { } begins && begins != turn)
            {
                turn = begins;
                yield return new Block.Heading(3, Fill(_sheet.Turn, ("turn", turn), ("overlap", null)));
            }
            if (step.Action == StepAction.LastEnd) yield return new Block.Heading(3, _sheet.ToFinish);
            switch (step.Action)
            {
                case StepAction.StringBeads:
                    var picture = drawing.Of(step.Strung!);
                    var beside = new Block.Figure(picture, picture.Description) { Caption = Fill(_words.Figure, ("number", figure++)), CaptionIsInside = true };
                    yield return setup.LargePrint ? new Block.KeepTogether([.. Words(step, own[s], null), beside])
                        : new Block.Beside([new BesideCell(WordsShare, [.. Words(step, own[s], null)]), new BesideCell(FigureShare, [beside])]);
                    break;
                case StepAction.FirstEnd:
                    ends = figure++;
                    yield return new Block.KeepTogether([.. Words(step, own[s], ends), new Block.Figure(pictures.Ends, pictures.Ends.Description) { FullWidth = true, Caption = Fill(_words.Figure, ("number", ends)) }]);
                    break;
                default:
                    yield return new Block.KeepTogether([.. Words(step, own[s], step.Action == StepAction.LastEnd ? ends : null)]);
                    break;
            }
        }
    }

    // The sentence, hers where she wrote one; what it is made of, what to check it against, and cautions, more quietly.
    private IEnumerable<Block> Words(PatternStep step, StepText? own, int? seeFigure)
    {
        var number = RichText.Strong(step.Number.ToString(CultureInfo.InvariantCulture) + ".\u00a0 ");
        var see = seeFigure is { } there ? RichText.Quiet(" " + Fill(_words.SeeFigure, ("number", there))) : RichText.Empty;
        if (own is null) yield return new Block.Paragraph(number + KeyedText.Rich(_sentences.Of(step)) + see);
        else
        {
            var lines = Lines(own.Text).ToArray();
            for (var i = 0; i < lines.Length; i++)
                yield return new Block.Paragraph((i == 0 ? number : RichText.Empty) + lines[i] + (i == lines.Length - 1 ? see : RichText.Empty));
        }
        if (step.Action == StepAction.CutWire) yield return new Block.Paragraph(RichText.Quiet(_sentences.CutMadeOf()), ParagraphLook.Small);
        if (step.Action == StepAction.StringBeads) yield return new Block.Paragraph(RichText.Quiet(_sentences.Check(step)), ParagraphLook.Small);
        if (!step.Cautions.IsEmpty) yield return new Block.Paragraph(RichText.Emphasis(string.Join(' ', step.Cautions.Select(_sentences.Of))), ParagraphLook.Small);
    }

    private IEnumerable<Block> Colourways()
    {
        if (colourways.IsDefaultOrEmpty) yield break;
        var kinds = model.Reckoned.Counts;
        var all = colourways.Prepend(model.Reckoned.Piece).ToArray();
        TableColumn[] columns = [new(_words.Colourway), .. kinds.Select(k => new TableColumn(RichText.Key(k.Letter), CellAlign.Centre))];
        yield return new Block.KeepTogether(
        [
            new Block.Heading(2, _words.Colourways),
            new Block.Paragraph(_words.ColourwaysNote),
            new Block.Table([.. columns], [.. all.Select(piece => (ImmutableArray<TableCell>)
                [KeyedText.Own(piece.Title), .. kinds.Select(k => new TableCell(RichText.Empty) { Picture = StripDrawing.Alone(piece.Beads[k.KindIndex]), PictureAlt = KeyedText.Own(piece.Beads[k.KindIndex].Name) })])])
            { Name = _words.Colourways, RowsHaveHeads = true },
        ]);
    }

    private static IEnumerable<Block> Written(string heading, string? text) =>
        Paragraphs(text).ToArray() is { Length: > 0 } paragraphs ? [new Block.KeepTogether([new Block.Heading(2, heading), paragraphs[0]]), .. paragraphs[1..]] : [];

    private static IEnumerable<Block> Paragraphs(string? text) => Lines(text).Select(line => new Block.Paragraph(line));

    private static IEnumerable<string> Lines(string? text) =>
        (text ?? "").Split('\n').Select(line => KeyedText.Own(line).Trim()).Where(line => line.Length > 0);

    private string Fill(string template, params ReadOnlySpan<(string Name, object? Value)> values) => language.Fill(template, values);
}
