namespace Coilwright.Core.Colour;

/// <summary>A colour as CIE 1976 L*a*b* under daylight D65, 2 degree observer: near enough even steps to the eye.</summary>
/// <remarks>
/// <para>Is not the Lab of printing and style sheets, which is worked out for D50 and differs by several units. <see cref="L"/> runs from 0 (black)
/// to 100 (white); <see cref="A"/> from green to red and <see cref="B"/> from blue to yellow, about -110 to 110 for screen colours.
/// <c>default</c> is black.</para>
/// <para>The sRGB matrix with seven digits is used: the four-digit one of IEC 61966-2-1 moves pure red by 0.02. Model, sources and limits:
/// docs/theory/colour-likeness.md.</para>
/// </remarks>
/// <param name="L">Lightness, L*.</param>
/// <param name="A">Green to red, a*.</param>
/// <param name="B">Blue to yellow, b*.</param>
public readonly record struct Lab(double L, double A, double B)
{
    // D65 white of the 2 degree observer, as the rows of the matrix add up to.
    private const double WhiteX = 0.95047, WhiteY = 1, WhiteZ = 1.08883;

    // CIE 15: where the cube root gives way to a straight line, and the line's slope.
    private const double Threshold = 216.0 / 24389, Slope = 24389.0 / 27;

    /// <summary>The Lab of a screen colour.</summary>
    public static Lab FromSrgb(Srgb colour) => FromLight(LinearLight.FromSrgb(colour));

    /// <summary>The Lab of light in the primaries of sRGB.</summary>
    public static Lab FromLight(LinearLight light)
    {
        var seen = light.ToXyz();
        var (x, y, z) = (Bend(seen.X / WhiteX), Bend(seen.Y / WhiteY), Bend(seen.Z / WhiteZ));
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    /// <summary>The mean of a bead's colours, each taken to cover the same area; null when there is none.</summary>
    /// <remarks>Is what the bead adds up to as a patch on the wrist, not a colour that is to be seen on it: black and white stripes count as grey.</remarks>
    public static Lab? MeanOf(IReadOnlyCollection<Srgb> colours) => Mean([.. colours.Select(FromSrgb)]);

    /// <summary>The mean of colours that cover the same area each; null when there is none.</summary>
    public static Lab? Mean(IReadOnlyCollection<Lab> colours) =>
        colours.Count == 0 ? null : new Lab(colours.Average(c => c.L), colours.Average(c => c.A), colours.Average(c => c.B));

    private static double Bend(double t) => t > Threshold ? Math.Cbrt(t) : (Slope * t + 16) / 116;
}
