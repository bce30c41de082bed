using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>Turns blocks into flows: all sizes and white of the pages are set here, in shares of the running text's size.</summary>
internal sealed class Typesetter
{
    private const double Point = 1 / PageSetup.PointMm;

    private readonly PageSetup _setup;
    private readonly PageWords _words;
    private readonly double _base;

    public Typesetter(PageSetup setup, PageWords words)
    {
        (_setup, _words, _base) = (setup, words, setup.BasePoints);
        TextLook Set(double size, double leading, FaceStyle face, Core.Colour.Srgb ink) => new(size * _base, size * leading * _base, face, ink);
        Body = Set(1, 1.42, FaceStyle.Regular, PageInks.Ink);
        Lead = Set(1.2, 1.4, FaceStyle.Regular, PageInks.Quiet);
        Small = Set(0.84, 1.42, FaceStyle.Regular, PageInks.Quiet);
        Foot = Set(0.78, 1.4, FaceStyle.Regular, PageInks.Quiet);
        Cell = Set(0.94, 1.38, FaceStyle.Regular, PageInks.Ink);
        CellHead = Set(0.8, 1.35, FaceStyle.Bold, PageInks.Quiet);
        Headings =
        [
            Set(2.5, 1.16, FaceStyle.Bold, PageInks.Ink), Set(1.34, 1.3, FaceStyle.Bold, PageInks.Accent), Set(1.04, 1.4, FaceStyle.Bold, PageInks.Ink),
        ];
    }

    public TextLook Body { get; }

    public TextLook Lead { get; }

    public TextLook Small { get; }

    public TextLook Foot { get; }

    public TextLook Cell { get; }

    public TextLook CellHead { get; }

    public ImmutableArray<TextLook> Headings { get; }

    /// <summary>Blocks one under the other.</summary>
    public Flow Of(ImmutableArray<Block> blocks) => new Sequence([.. blocks.Where(b => b is not Block.NewPage).Select(Of)]);

    private Flow Of(Block block) => block switch
    {
        Block.Heading heading => Heading(heading),
        Block.Paragraph paragraph => Paragraph(paragraph),
        Block.List list => List(list),
        Block.Table table => new TableFlow(table, new TableLook(CellHead, Cell, 0.75 * _base, 0.34 * _base, 0.085 * _base, 0.05 * _base, _setup.Enlarged))
        {
            Before = 0.7 * _base,
            After = 1.1 * _base,
        },
        Block.Figure figure => new FigureFlow(figure.Picture, figure.Alt, Point * _setup.Enlarged, figure.FullWidth, figure.IsCentred, Caption(figure.Caption), figure.CaptionIsInside ? null : 0.5 * _base)
        {
            Before = 0.9 * _base,
            After = 1.1 * _base,
        },
        Block.Strip strip => Strip(strip),
        Block.InColumns columns => new ColumnsFlow(Math.Max(1, columns.Count), 2 * _base, 0.1 * _base, Of(columns.Blocks))
        {
            Before = 0.6 * _base,
            After = 0.9 * _base,
        },
        Block.Beside beside => new BesideFlow([.. beside.Cells.Select(c => (c.Share, Of(c.Blocks)))], 2 * _base, 0.9 * _base)
        {
            Before = 0.6 * _base,
            After = 0.9 * _base,
        },
        Block.KeepTogether together => Kept(together),
        Block.Note note => new Tagged(new PageMark.Open(Tag.Note), new NoteFlow(NoteInside(note), 0.95 * _base, 0.28 * _base, !_setup.InkSaving))
        {
            Before = _base,
            After = 1.1 * _base,
        },
        Block.Spacer spacer => new White(spacer.Lines * Body.Leading),
        Block.Rule => new RuleFlow(0.06 * _base) { Before = _base, After = _base, StaysWithNext = true },
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "A block that pages do not know."),
    };

    // White round things kept together is that of the first and the last of them.
    private Together Kept(Block.KeepTogether together)
    {
        var flows = together.Blocks.Where(b => b is not Block.NewPage).Select(Of).ToImmutableArray();
        return new Together(new Sequence(flows)) { Before = flows.IsEmpty ? 0 : flows[0].Before, After = flows.IsEmpty ? 0 : flows[^1].After };
    }

    private Together Heading(Block.Heading heading)
    {
        var level = Math.Clamp(heading.Level, 1, 3);
        var look = Headings[level - 1];
        Flow words = new Tagged(new PageMark.Open(level switch { 1 => Tag.H1, 2 => Tag.H2, _ => Tag.H3 }), new TextFlow(heading.Text, look));
        if (level == 1) words = new Together(new Sequence([words, new BarFlow(3.4 * _base, 0.22 * _base) { Before = 0.55 * _base }]));
        return new Together(words)
        {
            Before = level switch { 1 => 1.8, 2 => 1.7, _ => 1.1 } * _base,
            After = level switch { 1 => 1.1, 2 => 0.5, _ => 0.3 } * _base,
            StaysWithNext = true,
        };
    }

    private Tagged Paragraph(Block.Paragraph paragraph)
    {
        var look = paragraph.Look switch { ParagraphLook.Lead => Lead, ParagraphLook.Small => Small, _ => Body };
        var white = (paragraph.Look == ParagraphLook.Lead ? 0.8 : 0.6) * _base;
        return new Tagged(new PageMark.Open(Tag.P), new TextFlow(paragraph.Text, look)) { Before = white, After = white, StaysWithNext = paragraph.StaysWithNext };
    }

    private Tagged? Caption(RichText caption) => caption.IsEmpty ? null : new Tagged(new PageMark.Open(Tag.P), new TextFlow(caption, Small));

    private Together Strip(Block.Strip strip)
    {
        // Ink and white round a strip grow in large print; the strip itself never does.
        var flow = new StripFlow(strip.Picture, strip.Alt, Small, _words.JoinAt);
        if (strip.Caption.IsEmpty) return new Together(flow) { Before = 0.9 * _base, After = 1.2 * _base };
        var words = new Tagged(new PageMark.Open(Tag.P), new TextFlow(strip.Caption, Body)) { After = 0.35 * _base, StaysWithNext = true };
        return new Together(new Sequence([words, flow])) { Before = 0.9 * _base, After = 1.2 * _base };
    }

    private Sequence NoteInside(Block.Note note)
    {
        var flows = ImmutableArray.CreateBuilder<Flow>();
        if (note.Title.Length > 0)
            flows.Add(new Tagged(new PageMark.Open(Tag.P), new TextFlow(RichText.Strong(note.Title), Body)) { After = 0.25 * _base, StaysWithNext = true });
        flows.Add(Of(note.Blocks));
        return new Sequence(flows.ToImmutable());
    }

    private Tagged List(Block.List list)
    {
        var labels = list.Items.Select((_, i) => list.Kind switch
        {
            ListKind.Numbered => (list.First + i).ToString(CultureInfo.InvariantCulture) + ".",
            ListKind.Bulleted => "•",
            _ => "",
        }).ToArray();
        var look = Body with { Face = FaceStyle.Bold, Ink = PageInks.Accent };
        var face = HouseFaces.Of(FaceStyle.Bold);
        var widest = labels.Length == 0 ? 0 : labels.Max(l => face.WidthEm(l)) * _base;
        var indent = list.Kind == ListKind.Ticked ? 1.7 * _base : Math.Max(1.1 * _base, widest + 0.55 * _base);
        var items = list.Items.Select(Flow (item, i) =>
        {
            var body = new Tagged(new PageMark.Open(Tag.LBody), new TextFlow(item, Body));
            var label = list.Kind == ListKind.Ticked ? TickBox() : Label(labels[i], look, list.Kind == ListKind.Numbered ? indent - 0.55 * _base : widest);
            return new Tagged(new PageMark.Open(Tag.LI), new Labelled(label, indent, body)) { Before = 0.28 * _base, After = 0.28 * _base };
        });
        return new Tagged(new PageMark.Open(Tag.L), new Sequence([.. items])) { Before = 0.5 * _base, After = 0.9 * _base, StaysWithNext = list.StaysWithNext };
    }

    // Numbers end on one line, so that their points stand one above the other.
    private static ImmutableArray<PageMark> Label(string text, TextLook look, double width)
    {
        var marks = ImmutableArray.CreateBuilder<PageMark>();
        marks.Add(new PageMark.Open(Tag.Lbl));
        // A space ends it, so that readers who join the two do not run them together.
        var line = LineBreaker.Break(text + " ", look, double.MaxValue)[0];
        TextFlow.Set(marks, line, look, CellAlign.Right, 0, 0, width, false);
        marks.Add(PageMark.Close.It);
        return marks.ToImmutable();
    }

    private ImmutableArray<PageMark> TickBox()
    {
        var side = 0.82 * _base;
        var middle = Body.Drop - HouseFaces.Of(FaceStyle.Regular).CapHeightEm * _base / 2;
        return [new PageMark.Ring(new Area(0.05 * _base, middle - side / 2, side, side), 0.14 * _base, 0.075 * _base, PageInks.Ink)];
    }
}
