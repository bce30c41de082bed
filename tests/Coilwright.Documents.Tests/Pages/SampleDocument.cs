using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;

namespace Coilwright.Documents.Tests.Pages;

/// <summary>A document with every block there is, as a maker would meet them: looked at by eye and read back by the tests.</summary>
internal static class SampleDocument
{
    public static PageWords Words { get; } = new()
    {
        PageOf = (page, of) => string.Create(CultureInfo.InvariantCulture, $"Page {page} of {of}"),
        JoinAt = letter => "joins at " + letter,
    };

    public static PageDocument Of(params ReadOnlySpan<Block> blocks) =>
        new() { Title = "Heron, a sample", Language = "en", Words = Words, Blocks = [.. blocks] };

    public static Picture Beads(double widthMm, string letters = "ABAC")
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new Line(new(0, 8), new(widthMm, 8), new Pen(new Srgb(0x8a, 0x80, 0x74), 0.5)));
        Srgb[] colours = [new(0x6f, 0xa3, 0xa8), new(0xd9, 0x78, 0x5a), new(0xb0, 0x8d, 0x62)];
        var x = 0.0;
        for (var i = 0; x + 8 <= widthMm; i++, x += 8)
        {
            var letter = letters[i % letters.Length];
            marks.Add(new Ellipse(new(x + 4, 8), 3.9, letter == 'C' ? 2.6 : 3.9, new Paint(colours[letter - 'A'], new Pen(PageInks.Ink, 0.2))));
            marks.Add(new Text(letter.ToString(), new(x + 4, 9), 2.8, PageInks.Ink) { Anchor = TextAnchor.Middle });
        }
        return new Picture(widthMm, 16, "Beads in a row", "Beads in a row", marks.ToImmutable());
    }

    /// <summary>A bar of an exact length between two upright ends, black: what the true-size tests measure.</summary>
    public static Picture CheckBar(double mm) => new(mm, 10, "Check bar", "A bar to measure",
    [
        new Rectangle(Box.At(0, 3, mm, 4), Paint.Filled(default)),
    ]);

    public static PageDocument Everything { get; } = new()
    {
        Title = "Heron, a bracelet in three turns",
        Language = "en",
        Words = Words,
        Foot = "Heron · three turns",
        Blocks =
        [
            new Block.Heading(1, "Heron"),
            new Block.Paragraph("A bracelet in three turns for a wrist of 165 mm (6 1/2 in), with sea glass on the top of the wrist.", ParagraphLook.Lead),
            new Block.Figure(Beads(168), "A row of round beads, A and B by turns, with an oval C after each pair") { FullWidth = true, Caption = "One turn, laid straight. The letters are those of the materials." },
            new Block.Beside(
            [
                new BesideCell(3,
                [
                    new Block.Heading(2, "Before you begin"),
                    new Block.Paragraph("Sort the beads into bags by key letter. " + RichText.Strong("Cut 3 1/4 loops of wire") + ", which is 612 mm or 24 1/8 in, and " + RichText.Emphasis("keep the offcut") + " for a practice bend."),
                    new Block.List(ListKind.Bulleted, ["round-nose pliers", "memory-wire shears, never fine cutters", "a file for the cut ends"]),
                ]),
                new BesideCell(2,
                [
                    new Block.Note("Mind your eyes",
                    [
                        new Block.Paragraph("Hold both ends when you cut: cut pieces fly. Wear eye protection."),
                    ]),
                ]),
            ]),
            new Block.Heading(2, "Materials"),
            new Block.Table(
            [
                new TableColumn("Key", CellAlign.Centre), new TableColumn("Bead"), new TableColumn("Use", CellAlign.Right), new TableColumn("Buy", CellAlign.Right) { Folded = new FoldedColumn(1, "; ") },
            ],
            [
                [RichText.Key("A"), "Sea glass round, 8 mm", "48", "1 strand of 50"],
                [RichText.Key("B"), "Coral nugget, about 7 mm along the hole, drilled at random", "30", "2 strands of 16"],
                [RichText.Key("AB"), "", "6", ""],
            ])
            {
                Name = "Materials",
            },
            new Block.Heading(2, "Steps"),
            new Block.Paragraph("Tick each step as you go."),
            new Block.List(ListKind.Ticked,
            [
                "Turn a loop of 3 mm at the starting end and file it smooth.",
                RichText.FromString("String 12 ") + RichText.Key("A") + ", 1 " + RichText.Key("B") + ", 12 " + RichText.Key("A") + ": this is the first cluster, and it should lie from the underside of the wrist to a little before the top.",
                RichText.FromString("String 1 ") + RichText.Key("AB") + ". It is the middle.",
            ]),
            new Block.Heading(3, "If it does not close"),
            new Block.List(ListKind.Numbered, ["Take off the last cluster.", "Measure from the first bead to the last, along the wire.", "Write the length into the piece and reckon it again."]) { First = 9 },
            new Block.Rule(),
            new Block.InColumns(2,
            [
                new Block.Paragraph("Notes run in two columns when there are many of them and each is short. The columns end about level, so that the page stays calm."),
                new Block.Paragraph("A long word such as " + new string('m', 60) + " is parted between letters, since nothing else can give way."),
                new Block.Paragraph("The wire per turn is known to within 10 mm or so: it depends on how the bracelet is worn, and no two wrists are alike."),
            ]),
            new Block.KeepTogether([new Block.Heading(3, "Care"), new Block.Paragraph("Keep it dry. Wipe it with a soft cloth.")]),
            new Block.Spacer(1),
            new Block.Paragraph("Łódź, Ångström, œuvre, naïve, 1⁄8 in, 6 × 8 mm, 20 °C, ± 4 mm: “all” of it ‘prints’ – as it should.", ParagraphLook.Small),
            new Block.NewPage(Turned: true),
            new Block.Heading(2, "Strips at true size"),
            new Block.Strip(CheckBar(100), "A bar 100 mm long") { Caption = "Measure this bar first: it is 100 mm long. If it is not, print again at 100 %." },
            new Block.Strip(Beads(240), "Turn 1 at true size") { Caption = "Turn 1" },
            new Block.Strip(Beads(400), "Turn 2 at true size, in two lengths") { Caption = "Turn 2" },
        ],
    };
}
