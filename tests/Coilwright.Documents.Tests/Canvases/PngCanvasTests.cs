using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Documents.BeadCards;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.CoilView;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.TurnRows;
using Coilwright.Documents.Typefaces;
using CsCheck;

namespace Coilwright.Documents.Tests.Canvases;

/// <summary>Pictures as pixels, held against the same picture as SVG drawn by librsvg.</summary>
public class PngCanvasTests
{
    private static readonly Srgb Red = new(0xc0, 0x20, 0x10), Blue = new(0x20, 0x40, 0xa0), Ground = new(0xf0, 0xee, 0xe8);

    private static Picture Of(double widthMm, double heightMm, params ImmutableArray<Mark> marks) => new(widthMm, heightMm, "t", "d", marks);

    private static Picture Drawing(string name) => name switch
    {
        "coil" => CoilViewDrawing.Of(DrawnPieces.Reckoned("focal")),
        "cards" => BeadCardsDrawing.Of(DrawnPieces.Reckoned("focal")),
        _ => TurnRowsDrawing.Of(DrawnPieces.Reckoned("focal"), new TurnRowsOptions()),
    };

    private static Picture Wordless(Picture picture)
    {
        return picture with { Marks = Without(picture.Marks) };

        static ImmutableArray<Mark> Without(ImmutableArray<Mark> marks) => [.. marks.Where(m => m is not Text).Select(m => m is Group group ? group with { Marks = Without(group.Marks) } : m)];
    }

    // A sheet of whole millimetres is one of whole pixels: otherwise each would round its height in its own way, and all would lie a part of a pixel apart.
    private static Picture OnWholeMm(Picture picture)
    {
        var sheet = new Box(0, 0, Math.Ceiling(picture.WidthMm), Math.Ceiling(picture.HeightMm));
        return picture with { WidthMm = sheet.WidthMm, HeightMm = sheet.HeightMm, Marks = [new Rectangle(sheet, Paint.Filled(Ground)), .. picture.Marks] };
    }

    // The frame that a picture with a paper fills to its edges: millimetre for millimetre what the SVG is.
    private static (Png Ours, Png Theirs) Both(Picture picture, int pixelsPerMm)
    {
        var theirs = Rsvg.Draw(SvgCanvas.Write(picture), (int)picture.WidthMm * pixelsPerMm);
        Assert.Equal((int)picture.HeightMm * pixelsPerMm, theirs.Height);
        var drawn = PngCanvas.Draw(picture, new PixelFrame(theirs.Width, theirs.Height) { Fit = PixelFit.Filled });
        Assert.Empty(drawn.Faults);
        return (Png.Read(drawn.Bytes.ToArray()), theirs);
    }

    [Theory]
    [InlineData("coil")]
    [InlineData("cards")]
    [InlineData("turns")]
    public void It_is_the_picture_that_another_renderer_draws_of_the_SVG(string drawing)
    {
        // Words are set by the other renderer in the face that the machine has; they have a test of their own.
        var (ours, theirs) = Both(OnWholeMm(Wordless(Drawing(drawing))), 4);
        // Edges fall between pixels: of every place the mean over 8 x 8 pixels is compared. An edge that is known to an eighth of a pixel moves it by at most a 64th of the
        // contrast, 4 steps of 255; in a place full of fine lines a few such come together. A bead in a wrong place or colour changes many places by tens of steps.
        const int cell = 8;
        var off = new List<double>();
        for (var top = 0; top + cell <= ours.Height; top += cell)
            for (var left = 0; left + cell <= ours.Width; left += cell)
            {
                var sum = new double[3];
                for (var y = top; y < top + cell; y++)
                    for (var x = left; x < left + cell; x++)
                    {
                        var (a, b) = (ours[x, y], theirs[x, y]);
                        sum[0] += a.Red - b.Red;
                        sum[1] += a.Green - b.Green;
                        sum[2] += a.Blue - b.Blue;
                    }
                off.Add(sum.Max(s => Math.Abs(s)) / (cell * cell));
            }
        Assert.True(off.Average() < 1, $"mean {off.Average()}");
        Assert.True(off.Max() < 12, $"{off.Max()}");
        Assert.True(ours.Colours > 100);
    }

    [Fact]
    public void Areas_and_lines_have_the_colours_that_another_renderer_gives_them_pixel_by_pixel()
    {
        var ring = Outline.Together([Outline.Ellipse(new(20, 20), 15, 15), Outline.Ellipse(new(20, 20), 7, 7)]);
        var picture = Of(80, 40, new Rectangle(new Box(0, 0, 80, 40), Paint.Filled(Ground)),
            new Drawn(ring, Paint.Filled(Red)),
            new Group([new Rectangle(new Box(-30, -30, 30, 30), Paint.Filled(Blue))]) { MoveRightMm = 58, MoveDownMm = 20, Clip = Outline.Ellipse(new(0, 0), 10, 14) },
            new Line(new(2, 38), new(78, 38), new Pen(Red, 2) { DashesMm = [6, 2, 1] }),
            new Stamp(new Symbol("dot", [new Circle(default, 2, Paint.Filled(Red))]), new(58, 20)));
        var (ours, theirs) = Both(picture, 10);
        var far = 0;
        for (var y = 0; y < 400; y++)
            for (var x = 0; x < 800; x++)
                if (Math.Max(Math.Abs(ours[x, y].Red - theirs[x, y].Red), Math.Abs(ours[x, y].Blue - theirs[x, y].Blue)) > 0.125 * 0xe8) far++;
        // Ours know an edge's place to an eighth of a pixel, theirs to a fifteenth: on some of the about 3,000 pixels on edges both together come to more than an eighth.
        Assert.InRange(far, 0, 60);
        foreach (var (x, y, colour) in new[] { (100, 200, Red), (200, 200, Ground), (580, 100, Blue), (580, 200, Red), (690, 200, Ground), (30, 380, Red), (90, 380, Ground), (790, 10, Ground) })
            Assert.Equal((colour.Red, colour.Green, colour.Blue, (byte)255), ours[x, y]);
    }

    [Fact]
    public void A_whole_picture_takes_the_told_share_of_its_frame_in_its_middle() => Gen.Select(Gen.Int[60, 400], Gen.Int[60, 400], Gen.Double[0.3, 1]).Sample((width, height, share) =>
    {
        // A block in a corner of a large white sheet: the sheet's white does not count.
        var picture = Of(100, 90, new Rectangle(new Box(3, 5, 33, 25), Paint.Filled(Red)));
        var png = Png.Read(PngCanvas.Draw(picture, new PixelFrame(width, height) { Share = share, Ground = Ground }).Bytes.ToArray());
        Assert.Equal((width, height), (png.Width, png.Height));
        var across = Enumerable.Range(0, width).Count(x => png[x, height / 2].Blue < 0x80);
        var down = Enumerable.Range(0, height).Count(y => png[width / 2, y].Blue < 0x80);
        var scale = share * Math.Min(width / 30.0, height / 20.0);
        // At each edge a pixel counts when half of it is covered, and the edge is known to an eighth of a pixel.
        const double off = 2 * (0.5 + 0.125);
        Assert.InRange(across, 30 * scale - off, 30 * scale + off);
        Assert.InRange(down, 20 * scale - off, 20 * scale + off);
        // In its middle: as much ground on the left as on the right, to the pixel that both edges share.
        Assert.InRange(Enumerable.Range(0, width).TakeWhile(x => png[x, height / 2].Blue >= 0x80).Count() - (width - across) / 2.0, -1, 1);
    }, iter: 60);

    [Fact]
    public void A_filled_frame_has_no_ground_left_and_keeps_the_picture_round()
    {
        var picture = Of(60, 20, new Rectangle(new Box(0, 0, 60, 20), Paint.Filled(Blue)), new Circle(new(30, 10), 5, Paint.Filled(Red)));
        var png = Png.Read(PngCanvas.Draw(picture, new PixelFrame(200, 300) { Fit = PixelFit.Filled, Ground = Ground }).Bytes.ToArray());
        foreach (var (x, y) in new[] { (0, 0), (199, 0), (0, 299), (199, 299) }) Assert.Equal((Blue.Red, Blue.Green, Blue.Blue, (byte)255), png[x, y]);
        // 20 mm fill 300 pixels, so the circle is 150 pixels both ways.
        Assert.InRange(Enumerable.Range(0, 200).Count(x => png[x, 150].Red > 0x70), 149, 151);
        Assert.InRange(Enumerable.Range(0, 300).Count(y => png[100, y].Red > 0x70), 149, 151);
    }

    [Fact]
    public void Words_stand_where_the_house_typeface_sets_them()
    {
        const string words = "Hamburg 123";
        var picture = Of(100, 20, new Rectangle(new Box(0, 0, 100, 20), Paint.Filled(Ground)), new Text(words, new(98, 14), 10, Blue) { Anchor = TextAnchor.End, Weight = TextWeight.Bold });
        var png = Png.Read(PngCanvas.Draw(picture, new PixelFrame(1000, 200) { Fit = PixelFit.Filled }).Bytes.ToArray());
        var inked = Enumerable.Range(0, 1000).Where(x => Enumerable.Range(0, 200).Any(y => png[x, y].Red < 0x80)).ToArray();
        var left = 980 - HouseFaces.Of(FaceStyle.Bold).WidthEm(words) * 100;
        // A letter's own white at both ends is less than a tenth of its size.
        Assert.InRange(inked[0], left, left + 10);
        Assert.InRange(inked[^1], 970, 980);
        // Capitals stand on the base line and end at their height.
        var rows = Enumerable.Range(0, 200).Where(y => Enumerable.Range(inked[0], 60).Any(x => png[x, y].Red < 0x80)).ToArray();
        Assert.InRange(rows[^1], 138, 140);
        Assert.InRange(rows[0], 140 - HouseFaces.Of(FaceStyle.Bold).CapHeightEm * 100 - 1, 140 - HouseFaces.Of(FaceStyle.Bold).CapHeightEm * 100 + 1);
    }

    [Fact]
    public void The_same_picture_gives_the_same_bytes_in_any_locale()
    {
        byte[] Bytes() => PngCanvas.Draw(Drawing("coil"), new PixelFrame(600, 450)).Bytes.ToArray();
        var first = Bytes();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(first, Bytes());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(15, 100)]
    [InlineData(100, 10_001)]
    [InlineData(-1, 100)]
    [InlineData(int.MaxValue, int.MaxValue)]
    [InlineData(10_000, 4_001)]
    public void A_frame_that_is_too_small_or_too_large_is_refused_before_room_is_made_for_it(int width, int height)
    {
        var frame = new PixelFrame(width, height);
        Assert.False(frame.IsAllowed);
        Assert.Throws<ArgumentOutOfRangeException>(() => PngCanvas.Draw(Of(10, 10), frame));
    }

    [Fact]
    public void Letters_that_the_typeface_lacks_are_told()
    {
        var drawn = PngCanvas.Draw(Of(10, 10, new Text("珠", new(1, 9), 4, Blue)), new PixelFrame(100, 100));
        Assert.Equal(FaultCodes.DocumentGlyphsMissing, Assert.Single(drawn.Faults).Code);
        Assert.True(drawn.Bytes.IsEmpty);
    }

    [Fact]
    public void A_picture_of_nothing_is_its_ground()
    {
        var png = Png.Read(PngCanvas.Draw(Of(10, 10), new PixelFrame(20, 30) { Ground = Ground }).Bytes.ToArray());
        Assert.Equal((20, 30, 1), (png.Width, png.Height, png.Colours));
    }
}
