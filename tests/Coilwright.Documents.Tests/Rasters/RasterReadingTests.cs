using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Rasters;
using CsCheck;
using SkiaSharp;
using static Coilwright.Documents.Tests.Rasters.SampleRasters;

namespace Coilwright.Documents.Tests.Rasters;

/// <summary>Pictures as they come from cameras and screens, and files that only look like them.</summary>
public class RasterReadingTests
{
    // What JPEG loses in the middle of an even area: two steps at most at the qualities used here.
    private const int JpegOff = 3;

    private static string Refused(byte[] file) => Assert.IsType<RasterRead.IsNot>(RasterReading.Of(file)).Why.Code;

    // The colour in the middle of each quarter, as another reader of these formats than ours would have it: decoded from the bytes that are kept.
    private static (int R, int G, int B)[] Middles(Raster raster)
    {
        using var pixels = SKBitmap.Decode(raster.Bytes.Span);
        Assert.Equal((raster.WidthPx, raster.HeightPx), (pixels.Width, pixels.Height));
        return [.. new[] { (1, 1), (3, 1), (1, 3), (3, 3) }.Select(at => pixels.GetPixel(pixels.Width * at.Item1 / 4, pixels.Height * at.Item2 / 4)).Select(c => ((int)c.Red, (int)c.Green, (int)c.Blue))];
    }

    private static void Near((int R, int G, int B) expected, (int R, int G, int B) actual, int off) =>
        Assert.True(Math.Max(Math.Abs(expected.R - actual.R), Math.Max(Math.Abs(expected.G - actual.G), Math.Abs(expected.B - actual.B))) <= off, $"{actual} for {expected}");

    private static (int R, int G, int B) Of(SKColor colour) => (colour.Red, colour.Green, colour.Blue);

    [Fact]
    public void A_jpeg_that_is_fit_stays_byte_for_byte_and_a_png_keeps_every_colour()
    {
        var jpeg = Jpeg(640, 480);
        Assert.Equal(jpeg, Read(jpeg).Bytes.ToArray());
        Assert.Equal(ProgressiveJpeg, Read(ProgressiveJpeg).Bytes.ToArray());
        Assert.Equal(Quarters.Select(Of), Middles(Read(Png(640, 480))));
    }

    // Where the first row and the first column of what is stored are seen (Exif 2.32, 4.6.4, tag 0x0112).
    [Theory]
    [InlineData(1, "top", "left"), InlineData(2, "top", "right"), InlineData(3, "bottom", "right"), InlineData(4, "bottom", "left")]
    [InlineData(5, "left", "top"), InlineData(6, "right", "top"), InlineData(7, "right", "bottom"), InlineData(8, "left", "bottom")]
    public void A_photo_taken_with_the_camera_turned_stands_upright(byte orientation, string firstRow, string firstColumn)
    {
        var raster = Read(Turned(Jpeg(640, 480), orientation));
        Assert.Equal(orientation > 4 ? (480, 640) : (640, 480), (raster.WidthPx, raster.HeightPx));
        var seen = Middles(raster);
        for (var stored = 0; stored < 4; stored++)
        {
            string[] sides = [stored < 2 ? firstRow : Opposite(firstRow), stored % 2 == 0 ? firstColumn : Opposite(firstColumn)];
            Near(Of(Quarters[stored]), seen[(sides.Contains("bottom") ? 2 : 0) + (sides.Contains("right") ? 1 : 0)], JpegOff);
        }

        static string Opposite(string side) => side switch { "top" => "bottom", "bottom" => "top", "left" => "right", _ => "left" };
    }

    [Fact]
    public void A_picture_of_a_wider_profile_comes_out_in_sRGB()
    {
        // Display P3 has sRGB's curve; its primaries in linear sRGB (matrix of the two sets of primaries, D65 in both).
        double[,] toSrgb = { { 1.2249, -0.2247, 0 }, { -0.0420, 1.0419, 0 }, { -0.0197, -0.0786, 1.0979 } };
        var seen = Middles(Read(WidePng(400, 300)));
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var colour = Quarters[quarter];
            double[] linear = [.. new[] { colour.Red, colour.Green, colour.Blue }.Select(v => new Srgb(v, v, v).Luminance())];
            int Channel(int row) => (int)Math.Round(255 * Stored(Math.Clamp(Enumerable.Range(0, 3).Sum(c => toSrgb[row, c] * linear[c]), 0, 1)));
            // A step for the profile's numbers, which are kept to a 65,536th, and one for rounding.
            Near((Channel(0), Channel(1), Channel(2)), seen[quarter], 2);
        }

        static double Stored(double y) => y <= 0.0031308 ? 12.92 * y : 1.055 * Math.Pow(y, 1 / 2.4) - 0.055;
    }

    [Fact]
    public void A_picture_for_a_press_becomes_one_for_a_screen()
    {
        var raster = Read(CmykJpeg);
        Assert.NotEqual(CmykJpeg, raster.Bytes.ToArray());
        // Without a profile what its inks look like is a convention; the common one multiplies, and gives back what it was made from. JPEG twice, at a low quality first.
        foreach (var middle in Middles(raster)) Near((200, 60, 40), middle, 6);
    }

    [Theory]
    [InlineData(6000, 4000, 2400, 1600), InlineData(400, 5000, 200, 2400)]
    public void A_large_picture_is_scaled_down_and_keeps_its_shape(int width, int height, int wide, int high)
    {
        var raster = Read(Jpeg(width, height));
        Assert.Equal(high, raster.HeightPx);
        Assert.InRange(raster.WidthPx, wide - 8, wide);
        var seen = Middles(raster);
        for (var quarter = 0; quarter < 4; quarter++) Near(Of(Quarters[quarter]), seen[quarter], JpegOff);
    }

    [Fact]
    public void What_can_be_seen_through_stays_so()
    {
        using var pixels = SKBitmap.Decode(Read(Png(300, 300, opacity: 0x80)).Bytes.Span);
        Assert.Equal(0x80, pixels.GetPixel(20, 20).Alpha);
    }

    [Fact]
    public void Grey_is_the_grey_that_inks_become()
    {
        foreach (var file in new[] { Png(300, 300), Jpeg(300, 300) })
        {
            var grey = Middles(Read(file).Greyed());
            for (var quarter = 0; quarter < 4; quarter++)
            {
                var (r, g, b) = Of(Quarters[quarter]);
                var level = new Srgb((byte)r, (byte)g, (byte)b).Grey().Red;
                Near((level, level, level), grey[quarter], JpegOff);
                Assert.True(grey[quarter].R == grey[quarter].G && grey[quarter].G == grey[quarter].B);
            }
        }
    }

    [Fact]
    public void What_is_too_large_too_small_broken_or_foreign_is_refused_and_says_why()
    {
        Assert.Equal(FaultCodes.PhotoTooManyPixels, Refused(BlackPng(10_000, 10_000)));
        Assert.Equal(FaultCodes.PhotoTooSmall, Refused(BlackPng(1, 1)));
        Assert.Equal(FaultCodes.PhotoTooSmall, Refused(BlackPng(199, 4000)));
        Assert.Equal(FaultCodes.PhotoTooLarge, Refused(new byte[PhotoSize.MostBytes + 1]));
        Assert.Equal(FaultCodes.PhotoKind, Refused([]));
        Assert.Equal(FaultCodes.PhotoKind, Refused("<svg xmlns=\"http://www.w3.org/2000/svg\"><script/></svg>"u8.ToArray()));
        Assert.Equal(FaultCodes.PhotoKind, Refused("GIF89a"u8.ToArray()));
        Assert.Equal((200, 200), Read(BlackPng(200, 200)) is var least ? (least.WidthPx, least.HeightPx) : default);
    }

    [Theory]
    [InlineData(false), InlineData(true)]
    public void A_file_cut_short_is_refused_wherever_it_is_cut(bool isJpeg)
    {
        var whole = isJpeg ? Jpeg(400, 300) : Png(400, 300);
        for (var share = 1; share < 10; share++)
            Assert.Equal(FaultCodes.PhotoBroken, Refused(whole[..Math.Max(12, whole.Length * share / 10)]));
    }

    [Fact]
    public void Spoilt_bytes_give_a_picture_or_a_reason_and_nothing_else() =>
        Gen.Select(Gen.Bool, Gen.Int[8, 500], Gen.Byte, Gen.Int[8, 500], Gen.Byte).Sample((isJpeg, first, a, second, b) =>
        {
            byte[] file = [.. isJpeg ? ProgressiveJpeg : Png(240, 200)];
            file[first % file.Length] = a;
            file[second % file.Length] = b;
            if (RasterReading.Of(file) is RasterRead.Is { Raster: var raster }) Assert.InRange(Math.Max(raster.WidthPx, raster.HeightPx), 1, RasterReading.MostSidePx);
        }, iter: 300, threads: 1);
}
