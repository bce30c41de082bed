using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Coilwright.Core.Colour;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Tests.Canvases;

public class SvgCanvasTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly Srgb Black = new(0, 0, 0);
    private static readonly Srgb Red = new(200, 30, 30);

    private static Picture Sheet(params Mark[] marks) => new(100, 50, "A sheet", "Some marks", [.. marks]);

    private static XElement Parsed(Picture picture, SvgOptions? options = null) => XDocument.Parse(SvgCanvas.Write(picture, options)).Root!;

    private static Picture OneOfEach()
    {
        var symbol = new Symbol("dot", [new Circle(default, 2, Paint.Filled(Red))]);
        return Sheet(
            new Rectangle(new Box(1, 1, 20, 10), new Paint(Red, new Pen(Black, 0.3))) { CornerMm = 2 },
            new Ellipse(new Point(30, 10), 8, 4, Paint.Lined(Black, 0.5)),
            new Polygon([new(40, 2), new(50, 2), new(45, 12)], Paint.Filled(Black)),
            new Line(new Point(1, 20), new Point(60, 20), new Pen(Black, 0.4) { DashesMm = [1, 1.5], Ends = LineEnds.Round }),
            new Drawn(Outline.Arc(new Point(70, 12), 8, 0, 270), Paint.Lined(Red, 0.6)),
            new Drawn(Hatching.Lines(Outline.Ellipse(new Point(20, 35), 12, 8), 45, 1.2), Paint.Lined(Black, 0.2)),
            new Stamp(symbol, new Point(60, 35)) { Title = "first" },
            new Stamp(symbol, new Point(66, 35)),
            new Group([new Rectangle(new Box(0, 0, 10, 10), Paint.Filled(Red))])
            { MoveRightMm = 80, MoveDownMm = 30, Clip = Outline.Ellipse(new Point(5, 5), 5, 5) },
            new Text("Rondelle 5 x 8", new Point(50, 48), 4, Black) { Anchor = TextAnchor.Middle, Weight = TextWeight.Bold });
    }

    [Fact]
    public void Every_mark_is_drawn_by_an_independent_renderer()
    {
        var png = Rsvg.Draw(SvgCanvas.Write(OneOfEach()), 1000);
        Assert.Equal(1000, png.Width);
        // The renderer turns millimetres into whole pixels of its own and may round the height up.
        Assert.InRange(png.Height, 500, 501);
        // 10 pixels to the millimetre: one place inside each area, and two that the clip must have left open.
        Assert.Equal((200, 30, 30, 255), png[100, 50]);
        Assert.Equal((0, 0, 0, 255), png[450, 50]);
        Assert.Equal((200, 30, 30, 255), png[600, 350]);
        Assert.Equal((200, 30, 30, 255), png[660, 350]);
        Assert.Equal((200, 30, 30, 255), png[850, 350]);
        Assert.Equal((byte)0, png[803, 303].Opacity);
        Assert.Equal((byte)0, png[897, 397].Opacity);
    }

    [Fact]
    public void The_view_box_and_the_size_are_the_sheet_in_millimetres()
    {
        var root = Parsed(new Picture(123.4567, 80, "t", "d", []));
        Assert.Equal("0 0 123.457 80", root.Attribute("viewBox")!.Value);
        Assert.Equal("123.457mm", root.Attribute("width")!.Value);
        Assert.Equal("80mm", root.Attribute("height")!.Value);
        Assert.Null(Parsed(new Picture(100, 80, "t", "d", []), new SvgOptions { Fluid = true }).Attribute("width"));
    }

    [Fact]
    public void For_a_screen_a_move_by_less_than_a_hundredth_of_a_millimetre_changes_nothing()
    {
        static string Drawn(double x, SvgOptions options) => SvgCanvas.Write(new Picture(100, 80, "t", "d", [new Circle(new Point(x, 7), 2, Paint.Filled(Black))]), options);
        var screen = new SvgOptions { ForScreen = true };
        Assert.Equal(Drawn(10, screen), Drawn(10.004, screen));
        Assert.NotEqual(Drawn(10, screen), Drawn(10.006, screen));
        Assert.NotEqual(Drawn(10, new SvgOptions()), Drawn(10.004, new SvgOptions()));
    }

    [Fact]
    public void Marks_written_apart_and_moved_to_their_places_are_the_picture()
    {
        var picture = OneOfEach();
        var parts = string.Concat(picture.Marks.Select(mark =>
        {
            var (at, apart) = mark.Apart();
            return $"<g transform=\"{SvgCanvas.TransformTo(at, new SvgOptions())}\">{SvgCanvas.WriteMarks([apart])}</g>";
        }));
        var whole = SvgCanvas.Write(picture);
        var body = whole.IndexOf("</defs>", StringComparison.Ordinal) + "</defs>".Length;
        var (drawn, put) = (Rsvg.Draw(whole, 1000), Rsvg.Draw(whole[..body] + parts + "</svg>", 1000));
        // Places are rounded to a thousandth, a hundredth of a pixel here, once more in parts than in the whole; the renderer then takes one more or one less
        // of the 15 lines that it samples a pixel by, 17 steps of 255.
        for (var y = 0; y < drawn.Height; y++)
            for (var x = 0; x < drawn.Width; x++)
                Assert.True(Math.Abs(drawn[x, y].Red - put[x, y].Red) <= 17 && Math.Abs(drawn[x, y].Opacity - put[x, y].Opacity) <= 17, $"{x}, {y}: {drawn[x, y]}, {put[x, y]}");
    }

    [Fact]
    public void Title_and_description_name_the_picture_for_a_reader_who_cannot_see_it()
    {
        var root = Parsed(Sheet(), new SvgOptions { IdPrefix = "p1-" });
        Assert.Equal("img", root.Attribute("role")!.Value);
        Assert.Equal("p1-title p1-desc", root.Attribute("aria-labelledby")!.Value);
        Assert.Equal("A sheet", root.Element(Svg + "title")!.Value);
        Assert.Equal("p1-desc", root.Element(Svg + "desc")!.Attribute("id")!.Value);
    }

    [Fact]
    public void Words_of_any_kind_leave_the_file_well_formed()
    {
        const string words = "5 < 8 & \"Tiger's <eye>\" \u0000\u0007 \ud800 \uffff ]]> 珠 🧿 é\u0301";
        var mark = new Text(words, new Point(1, 10), 4, Black)
        {
            Id = "a\"b",
            Class = "x & y",
            Title = words,
            Data = ImmutableSortedDictionary<string, string>.Empty.Add("name", words),
        };
        var root = Parsed(new Picture(100, 50, words, words, [mark]));
        var text = root.Element(Svg + "text")!;
        Assert.Equal("5 < 8 & \"Tiger's <eye>\"  \ufffd  ]]> 珠 🧿 é\u0301", text.Attribute("data-name")!.Value);
        Assert.Equal("x & y", text.Attribute("class")!.Value);
        Assert.Equal(text.Attribute("data-name")!.Value, root.Element(Svg + "title")!.Value);
        Rsvg.Draw(SvgCanvas.Write(new Picture(100, 50, words, words, [mark])), 200);
    }

    [Fact]
    public void Numbers_have_a_decimal_point_where_the_locale_has_a_comma()
    {
        var before = CultureInfo.CurrentCulture;
        var plain = SvgCanvas.Write(OneOfEach());
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(plain, SvgCanvas.Write(OneOfEach()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
        Assert.Contains("stroke-dasharray=\"1 1.5\"", plain, StringComparison.Ordinal);
    }

    [Fact]
    public void A_symbol_is_written_once_and_used_often()
    {
        var root = Parsed(OneOfEach());
        Assert.Single(root.Descendants(Svg + "g"), g => (string?)g.Attribute("id") == "dot");
        Assert.Equal(2, root.Elements(Svg + "use").Count());
    }

    [Fact]
    public void A_tiny_negative_number_is_nought() =>
        Assert.Equal("0", Parsed(Sheet(new Circle(new Point(-0.0001, 0), 1, Paint.Filled(Red)))).Element(Svg + "circle")!.Attribute("cx")!.Value);
}
