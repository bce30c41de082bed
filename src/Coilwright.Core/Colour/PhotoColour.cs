namespace Coilwright.Core.Colour;

/// <summary>A colour read off a photo: the mean of a small disc, without glare and shadow.</summary>
/// <remarks>
/// <para>The disc's pixels are sorted by luminance; the darkest quarter and the lightest third are left out, and of the rest every pixel with a channel at the camera's end
/// (<see cref="Blown"/>), as long as any is left. What is kept is averaged as light, not as screen values, which would come out darker. More is left out at the light end,
/// because on a shiny bead the glare is larger than the shadow: our choice.</para>
/// <para>Is the colour of that part of the bead in that light, no more: lustre is not in it.</para>
/// </remarks>
/// <param name="Light">The mean, as light; may lie outside of what a screen shows where white paper was too dark.</param>
/// <param name="Pixels">How many pixels the disc has.</param>
/// <param name="Counted">How many of them count.</param>
/// <param name="Spread">How far the pixels that count lie from the mean, on average (CIEDE2000).</param>
public sealed record PhotoColour(LinearLight Light, int Pixels, int Counted, double Spread)
{
    /// <summary>Least pixels of a disc.</summary>
    public const int LeastPixels = 5;

    /// <summary>Most pixels of a disc: far more than any that is drawn.</summary>
    public const int MostPixels = 40_000;

    /// <summary>From here on a channel is at its end, as light: 252 of 255.</summary>
    public const double Blown = 0.974;

    // Left out of the disc at either end: our choice.
    private const double ShadowShare = 0.25, GlareShare = 1.0 / 3;

    // Beyond this the pixels are no longer one colour to the eye: our choice.
    private const double MixedFrom = 10;

    /// <summary>Whether the disc lies on an edge or on a pattern, so that the mean is nobody's colour.</summary>
    public bool IsMixed => Spread > MixedFrom;

    /// <summary>The nearest screen colour.</summary>
    public Srgb Colour => Light.ToSrgb();

    /// <summary>Its Lab, before it is rounded to a screen colour.</summary>
    public Lab Lab => Lab.FromLight(Light);

    /// <summary>Whether a screen can show it.</summary>
    public bool IsOnScreen => Inside(Light.Red) && Inside(Light.Green) && Inside(Light.Blue);

    /// <summary>Reads a disc.</summary>
    /// <param name="disc">Its pixels, <see cref="LeastPixels"/> to <see cref="MostPixels"/>.</param>
    /// <param name="white">The photo's white.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too few pixels, or too many.</exception>
    public static PhotoColour Of(ReadOnlySpan<Srgb> disc, WhiteBalance white)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(disc.Length, LeastPixels, nameof(disc));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(disc.Length, MostPixels, nameof(disc));
        var lights = new LinearLight[disc.Length];
        for (var i = 0; i < disc.Length; i++) lights[i] = LinearLight.FromSrgb(disc[i]);
        Array.Sort(lights, (a, b) => a.Luminance.CompareTo(b.Luminance));
        var (from, to) = ((int)(ShadowShare * lights.Length), lights.Length - (int)(GlareShare * lights.Length));
        var between = lights[from..to];
        var sound = Array.FindAll(between, l => l.Red <= Blown && l.Green <= Blown && l.Blue <= Blown);
        var counted = sound.Length > 0 ? sound : between;
        var mean = Mean(counted, white);
        var lab = Lab.FromLight(mean);
        return new PhotoColour(mean, disc.Length, counted.Length, counted.Average(l => ColourDifference.Ciede2000(lab, Lab.FromLight(white.Of(l)))));
    }

    /// <summary>Reads a disc on white paper, whose light it is then.</summary>
    /// <param name="disc">Its pixels.</param>
    /// <param name="trouble">Why it tells nothing.</param>
    public static WhiteBalance? White(ReadOnlySpan<Srgb> disc, out WhiteTrouble trouble) => WhiteBalance.By(Of(disc, WhiteBalance.AsTaken).Light, out trouble);

    private static LinearLight Mean(LinearLight[] lights, WhiteBalance white) =>
        white.Of(new LinearLight(lights.Average(l => l.Red), lights.Average(l => l.Green), lights.Average(l => l.Blue)));

    // Half a step of the screen's own is no matter.
    private static bool Inside(double channel) => channel is > -0.0002 and < 1.005;
}
