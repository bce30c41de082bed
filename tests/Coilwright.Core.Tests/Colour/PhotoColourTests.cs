using Coilwright.Core.Colour;
using CsCheck;

namespace Coilwright.Core.Tests.Colour;

public class PhotoColourTests
{
    private static readonly Gen<Srgb> AnyColour = Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte, (r, g, b) => new Srgb(r, g, b));

    private static Srgb[] Disc(params (Srgb Colour, int Count)[] parts) => [.. parts.SelectMany(p => Enumerable.Repeat(p.Colour, p.Count))];

    [Fact]
    public void A_plain_disc_is_its_own_colour() => AnyColour.Sample(c =>
    {
        var read = PhotoColour.Of(Disc((c, 80)), WhiteBalance.AsTaken);
        Assert.Equal(c, read.Colour);
        Assert.Equal(Lab.FromSrgb(c), read.Lab, (a, b) => Math.Abs(a.L - b.L) + Math.Abs(a.A - b.A) + Math.Abs(a.B - b.B) < 1e-9);
        Near.Equal(0, read.Spread, 1e-4); // rounding of a mean of equal numbers, under a root
    });

    // Half black and half white light is a luminance of a half: sRGB 188 (0.5 = ((v + 0.055)/1.055)^2.4), where the mean of the screen values would be 128.
    // Twelve pixels: three dark and four light ones are left out, two and three of what is between count.
    [Fact]
    public void What_counts_is_averaged_as_light()
    {
        var read = PhotoColour.Of(Disc((new Srgb(0, 0, 0), 6), (new Srgb(250, 250, 250), 6)), WhiteBalance.AsTaken);
        Assert.Equal((12, 5), (read.Pixels, read.Counted));
        var light = 2 * LinearLight.FromSrgb(new Srgb(250, 250, 250)).Red / 5;
        Near.Equal(light, read.Light.Red, 1e-12); // rounding
    }

    // A bead in the sun: a third of the disc is the lamp in it, a fifth lies in the shade.
    [Fact]
    public void Glare_and_shadow_leave_the_colour_as_it_is()
    {
        var own = new Srgb(0x2a, 0x7f, 0x77);
        var read = PhotoColour.Of(Disc((own, 150), (new Srgb(255, 255, 255), 90), (new Srgb(0x08, 0x16, 0x15), 60)), WhiteBalance.AsTaken);
        Assert.Equal(own, read.Colour);
        Assert.Equal(300, read.Pixels);
    }

    [Fact]
    public void Blown_pixels_count_only_where_there_are_no_others()
    {
        var blown = new Srgb(255, 210, 40);
        Assert.Equal(blown, PhotoColour.Of(Disc((blown, 60)), WhiteBalance.AsTaken).Colour);
        // Of the same luminance as what is sound, so that they are not left out as the lightest.
        var read = PhotoColour.Of(Disc((blown, 60), (new Srgb(0xd0, 0xd0, 0xd0), 60)), WhiteBalance.AsTaken);
        Assert.True(read.Counted < 70);
        Assert.Equal(new Srgb(0xd0, 0xd0, 0xd0), read.Colour);
    }

    [Fact]
    public void The_order_of_the_pixels_does_not_matter_and_a_pattern_shows_in_the_spread() => AnyColour.Array[5, 200].Sample(disc =>
    {
        var read = PhotoColour.Of(disc, WhiteBalance.AsTaken);
        Srgb[] back = [.. disc.Reverse()];
        // Equal luminances may change places at the border of what counts: compared where there are none.
        if (disc.Select(c => LinearLight.FromSrgb(c).Luminance).Distinct().Count() == disc.Length) Near.Equal(read.Light.Green, PhotoColour.Of(back, WhiteBalance.AsTaken).Light.Green, 1e-12);
        Assert.True(read.Spread >= 0 && read.Counted <= read.Pixels);
    });

    [Theory, InlineData(4), InlineData(40_001)]
    public void Too_few_pixels_and_too_many_are_refused(int count) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PhotoColour.Of(new Srgb[count], WhiteBalance.AsTaken));

    // The Bradford transform from illuminant A to D65, as B. Lindbloom prints it: rows 0.8446965 -0.1179225 0.3948108; -0.1366303 1.1041226 0.1291718; 0.0798489 -0.1348999 3.1924009
    // (read in public code that quotes it). A matt red under a filament lamp is put through it in XYZ, as an outside way.
    [Fact]
    public void Paper_in_lamp_light_brings_colours_to_daylight_as_the_printed_matrix_does()
    {
        double[] lamp = [1.09850, 1, 0.35585];
        double[] xyz = [0.30, 0.22, 0.05];
        double[] expected =
        [
            0.8446965 * xyz[0] - 0.1179225 * xyz[1] + 0.3948108 * xyz[2],
            -0.1366303 * xyz[0] + 1.1041226 * xyz[1] + 0.1291718 * xyz[2],
            0.0798489 * xyz[0] - 0.1348999 * xyz[1] + 3.1924009 * xyz[2],
        ];
        // Half as bright as the camera's white: the strength is taken out as well.
        var paper = OfXyz([.. lamp.Select(v => 0.5 * v)]);
        var white = WhiteBalance.By(paper, out var trouble);
        Assert.Equal(WhiteTrouble.None, trouble);
        var seen = ToXyz(white!.Of(OfXyz([.. xyz.Select(v => 0.5 * v)])));
        // Whites and matrix of five to seven digits.
        for (var i = 0; i < 3; i++) Near.Equal(WhiteBalance.PaperReflects * expected[i], seen[i], 5e-5, i);
    }

    [Fact]
    public void Paper_comes_out_as_grey_of_its_own_reflectance() => Gen.Select(Gen.Double[0.3, 0.9], Gen.Double[0.3, 0.9], Gen.Double[0.3, 0.9]).Sample((r, g, b) =>
    {
        var paper = new LinearLight(r, g, b);
        if (WhiteBalance.By(paper, out _) is not { } white) return;
        var seen = white.Of(paper);
        foreach (var channel in new[] { seen.Red, seen.Green, seen.Blue }) Near.Equal(WhiteBalance.PaperReflects, channel, 1e-9, paper); // rounding of two products with 3 x 3 matrices
        // Light twice as strong, in paper and bead alike, changes nothing.
        var half = WhiteBalance.By(new LinearLight(r / 2, g / 2, b / 2), out _);
        if (half is not null) Near.Equal(white.Of(new LinearLight(0.1, 0.2, 0.3)).Green, half.Of(new LinearLight(0.05, 0.1, 0.15)).Green, 1e-9);
    });

    [Theory]
    [InlineData(255, 255, 250, WhiteTrouble.TooBright), InlineData(40, 38, 36, WhiteTrouble.TooDark), InlineData(230, 40, 40, WhiteTrouble.NotWhite), InlineData(0, 0, 0, WhiteTrouble.TooDark)]
    [InlineData(200, 190, 170, WhiteTrouble.None)]
    public void Paper_that_tells_nothing_is_refused_with_its_reason(byte r, byte g, byte b, WhiteTrouble trouble)
    {
        var white = PhotoColour.White(Disc((new Srgb(r, g, b), 50)), out var why);
        Assert.Equal(trouble, why);
        Assert.Equal(trouble == WhiteTrouble.None, white is not null);
    }

    private static readonly double[][] XyzOfLight = [[0.4124564, 0.3575761, 0.1804375], [0.2126729, 0.7151522, 0.0721750], [0.0193339, 0.1191920, 0.9503041]];

    private static double[] ToXyz(LinearLight l) => [.. XyzOfLight.Select(r => r[0] * l.Red + r[1] * l.Green + r[2] * l.Blue)];

    // The inverse as B. Lindbloom prints it, seven digits.
    private static LinearLight OfXyz(double[] v) => new(3.2404542 * v[0] - 1.5371385 * v[1] - 0.4985314 * v[2], -0.9692660 * v[0] + 1.8760108 * v[1] + 0.0415560 * v[2], 0.0556434 * v[0] - 0.2040259 * v[1] + 1.0572252 * v[2]);
}
