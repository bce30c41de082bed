namespace Coilwright.Core.Colour;

/// <summary>How far apart two colours look.</summary>
public static class ColourDifference
{
    private const double TwentyFiveToThe7 = 6103515625;

    /// <summary>CIEDE2000 with all three weights 1: 0 for the same colour, about 1 just to be seen side by side, 100 from black to white.</summary>
    /// <remarks>
    /// <para>Symmetric. Made for small differences between plain patches; a large value says "different" and its size means little. Jumps slightly
    /// where the two hues are opposite, which the formula itself does.</para>
    /// <para>Source: G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30(1), 21-30 (2005), whose notes settle how the mean hue is taken; checked
    /// against its 34 pairs. docs/theory/colour-likeness.md.</para>
    /// </remarks>
    public static double Ciede2000(Lab one, Lab other)
    {
        var meanC = (Math.Sqrt(one.A * one.A + one.B * one.B) + Math.Sqrt(other.A * other.A + other.B * other.B)) / 2;
        var g = 0.5 * (1 - Saturation(meanC));
        var (c1, h1) = ChromaAndHueDeg((1 + g) * one.A, one.B);
        var (c2, h2) = ChromaAndHueDeg((1 + g) * other.A, other.B);

        var grey = c1 * c2 == 0;
        var turn = h2 - h1;
        // A grey has no hue: the difference is 0 and the mean is the other's.
        var dh = grey ? 0 : turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
        var meanH = grey ? h1 + h2
            : Math.Abs(turn) <= 180 ? (h1 + h2) / 2
            : h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;

        var dL = other.L - one.L;
        var dC = c2 - c1;
        var dH = 2 * Math.Sqrt(c1 * c2) * SinDeg(dh / 2);
        var meanL = (one.L + other.L) / 2;
        meanC = (c1 + c2) / 2;

        var t = 1 - 0.17 * CosDeg(meanH - 30) + 0.24 * CosDeg(2 * meanH) + 0.32 * CosDeg(3 * meanH + 6) - 0.20 * CosDeg(4 * meanH - 63);
        var offMid = (meanL - 50) * (meanL - 50);
        var sL = 1 + 0.015 * offMid / Math.Sqrt(20 + offMid);
        var sC = 1 + 0.045 * meanC;
        var sH = 1 + 0.015 * meanC * t;
        var blue = (meanH - 275) / 25;
        var rT = -SinDeg(60 * Math.Exp(-blue * blue)) * 2 * Saturation(meanC);

        double l = dL / sL, c = dC / sC, h = dH / sH;
        return Math.Sqrt(Math.Max(0, l * l + c * c + h * h + rT * c * h));
    }

    private static double Saturation(double chroma)
    {
        var seventh = Math.Pow(chroma, 7);
        return Math.Sqrt(seventh / (seventh + TwentyFiveToThe7));
    }

    private static (double Chroma, double HueDeg) ChromaAndHueDeg(double a, double b)
    {
        if (a == 0 && b == 0) return (0, 0);
        var hue = Math.Atan2(b, a) * (180 / Math.PI);
        return (Math.Sqrt(a * a + b * b), hue < 0 ? hue + 360 : hue);
    }

    private static double SinDeg(double deg) => Math.Sin(deg * (Math.PI / 180));

    private static double CosDeg(double deg) => Math.Cos(deg * (Math.PI / 180));
}
