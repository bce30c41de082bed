namespace Coilwright.Core.Colour;

/// <summary>Light in the primaries of sRGB (IEC 61966-2-1): what adds up where colours mix, which the eight-bit values of a screen do not.</summary>
/// <remarks>1 is the screen's full primary; white is (1, 1, 1). What a calculation brings may lie outside of 0 to 1: no screen shows that.
/// <c>default</c> is black.</remarks>
/// <param name="Red">Red primary.</param>
/// <param name="Green">Green primary.</param>
/// <param name="Blue">Blue primary.</param>
public readonly record struct LinearLight(double Red, double Green, double Blue)
{
    /// <summary>The light of a screen colour.</summary>
    public static LinearLight FromSrgb(Srgb colour) => new(Of(colour.Red), Of(colour.Green), Of(colour.Blue));

    /// <summary>From this light to the CIE's X, Y and Z (2 degree observer), row by row, with seven digits: the four-digit matrix of the standard moves pure red by 0.02 in Lab.</summary>
    internal static ReadOnlySpan<double> XyzRows => [0.4124564, 0.3575761, 0.1804375, 0.2126729, 0.7151522, 0.0721750, 0.0193339, 0.1191920, 0.9503041];

    /// <summary>How bright it is to the eye: the CIE's Y, 1 for white.</summary>
    public double Luminance => Row(1);

    /// <summary>The CIE's X, Y and Z, Y being 1 for white.</summary>
    public (double X, double Y, double Z) ToXyz() => (Row(0), Row(1), Row(2));

    /// <summary>The nearest that a screen shows, channel by channel.</summary>
    public LinearLight OnScreen() => new(Math.Clamp(Red, 0, 1), Math.Clamp(Green, 0, 1), Math.Clamp(Blue, 0, 1));

    /// <summary>The screen colour of it, each channel cut to the screen's range and rounded to the nearest of its 256 steps.</summary>
    public Srgb ToSrgb() => new(Step(Red), Step(Green), Step(Blue));

    /// <summary>The grey of the same luminance.</summary>
    public LinearLight InGrey() => new(Luminance, Luminance, Luminance);

    private double Row(int row) => XyzRows[3 * row] * Red + XyzRows[3 * row + 1] * Green + XyzRows[3 * row + 2] * Blue;

    // One channel of sRGB as light.
    private static double Of(byte value)
    {
        var v = value / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);
    }

    private static byte Step(double light)
    {
        var v = Math.Clamp(light, 0, 1);
        return (byte)Math.Round(255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.Pow(v, 1 / 2.4) - 0.055), MidpointRounding.AwayFromZero);
    }
}
