using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using CsCheck;

namespace Coilwright.Documents.Tests.Drawing;

public class TintsTests
{
    private static readonly Gen<Srgb> Colours = Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte, (r, g, b) => new Srgb(r, g, b));

    // Reference: WCAG 2.2, "contrast ratio" and "relative luminance" (W3C Recommendation): black on white is 21:1, a colour on itself 1:1.
    [Fact]
    public void Black_on_white_has_the_greatest_contrast()
    {
        Assert.Equal(21, new Srgb(0, 0, 0).Contrast(new Srgb(255, 255, 255)), 1e-12);
        Assert.Equal(1, new Srgb(12, 34, 56).Contrast(new Srgb(12, 34, 56)), 1e-12);
    }

    // Tolerance: half a step of the stored grey is at most 0.5/255 of the encoded range, where the curve is at most 2.4 / 1.055 steep.
    [Fact]
    public void A_grey_is_as_light_as_its_colour() => Colours.Sample(c =>
    {
        var grey = c.Grey();
        return grey.Red == grey.Green && grey.Green == grey.Blue && Math.Abs(grey.Luminance() - c.Luminance()) <= 0.5 / 255 * 2.4 / 1.055;
    });

    [Fact]
    public void A_mix_begins_at_one_colour_and_ends_at_the_other() =>
        Gen.Select(Colours, Colours).Sample((a, b) => a.Mixed(b, 0) == a && a.Mixed(b, 1) == b);

    [Fact]
    public void The_readable_ink_is_the_one_with_more_contrast() => Colours.Sample(ground =>
    {
        Srgb dark = new(0, 0, 0), light = new(255, 255, 255);
        // Black or white always reaches 4.58:1, the square root of 21.
        return ground.Contrast(ground.Readable(dark, light)) >= 4.58;
    });
}
