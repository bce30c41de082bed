using Coilwright.Core.Colour;

namespace Coilwright.Documents.Drawing;

/// <summary>Colours made from colours: mixed, grey, and which ink reads on them. Plain opaque colours only, so that every canvas prints alike.</summary>
public static class Tints
{
    /// <summary>A mix of two colours, channel by channel as they are stored: share 0 is the first, 1 the second.</summary>
    public static Srgb Mixed(this Srgb first, Srgb second, double share)
    {
        byte Channel(byte a, byte b) => (byte)Math.Clamp(Math.Round(a + (b - a) * share, MidpointRounding.AwayFromZero), 0, 255);
        return new Srgb(Channel(first.Red, second.Red), Channel(first.Green, second.Green), Channel(first.Blue, second.Blue));
    }

    /// <summary>The grey of the same luminance.</summary>
    public static Srgb Grey(this Srgb colour)
    {
        var level = Level(colour.Luminance());
        return new Srgb(level, level, level);
    }

    /// <summary>The grey level, 0 to 255, of a luminance from 0 to 1.</summary>
    internal static byte Level(double y) => (byte)Math.Round((y <= 0.0031308 ? 12.92 * y : 1.055 * Math.Pow(y, 1 / 2.4) - 0.055) * 255, MidpointRounding.AwayFromZero);

    /// <summary>Relative luminance, 0 black to 1 white (IEC 61966-2-1 transfer curve, Rec. 709 weights).</summary>
    public static double Luminance(this Srgb colour)
    {
        static double Linear(byte stored)
        {
            var v = stored / 255.0;
            return v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * Linear(colour.Red) + 0.7152 * Linear(colour.Green) + 0.0722 * Linear(colour.Blue);
    }

    /// <summary>Contrast of two colours, 1 to 21 (WCAG 2.2, contrast ratio). 4.5 and more reads well at text sizes.</summary>
    public static double Contrast(this Srgb one, Srgb other)
    {
        double a = one.Luminance(), b = other.Luminance();
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>Of two inks the one that reads better on a ground.</summary>
    public static Srgb Readable(this Srgb ground, Srgb dark, Srgb light) => ground.Contrast(dark) >= ground.Contrast(light) ? dark : light;
}
