namespace Coilwright.Core.Colour;

/// <summary>Why white paper in a photo tells nothing about its light.</summary>
public enum WhiteTrouble
{
    /// <summary>It tells.</summary>
    None,

    /// <summary>So bright that the camera lost its tint.</summary>
    TooBright,

    /// <summary>So dark that its tint is mostly the camera's noise.</summary>
    TooDark,

    /// <summary>So strongly coloured that it is hardly white paper.</summary>
    NotWhite,
}

/// <summary>Takes the tint and the strength of a photo's light out of its colours, by white paper that lies in it.</summary>
/// <remarks>
/// <para>The paper's light is brought to daylight D65 by scaling the answers of three kinds of cones, by Bradford's matrix (von Kries' rule in the form of the
/// ICC's profiles), and then everything by one factor so that the paper reflects <see cref="PaperReflects"/>. Paper that glows under daylight (optical brightener) makes the rest a touch yellower.</para>
/// <para>Holds where paper and bead lie in the same light. Sources: K. M. Lam, doctoral thesis, University of Bradford (1985); the matrix as printed in the ICC's specification 4.3, annex E.
/// docs/theory/colour-from-a-photo.md.</para>
/// </remarks>
public sealed class WhiteBalance
{
    /// <summary>Share of the light that white office paper sends back: our choice, papers lie between 0.8 and 0.95 (common practice, no source).</summary>
    public const double PaperReflects = 0.88;

    // Below: a shadow. Eight bits keep a few dozen steps there.
    private const double DarkestPaper = 0.05;

    // Chroma beyond which it is no white paper in any lamp's light: a filament bulb's light on paper, taken as daylight, has 54 when its red is at the camera's end.
    private const double MostChroma = 60;

    private static readonly double[] ConesOfXyz = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];
    private static readonly double[] ConesOfLight = Product(ConesOfXyz, LinearLight.XyzRows);
    private static readonly double[] LightOfCones = Inverse(ConesOfLight);

    private readonly double[]? _matrix;

    private WhiteBalance(double[]? matrix) => _matrix = matrix;

    /// <summary>Leaves a photo as its camera balanced it.</summary>
    public static WhiteBalance AsTaken { get; } = new(null);

    /// <summary>By the light of white paper in the photo.</summary>
    /// <param name="paper">What the photo has for it.</param>
    /// <param name="trouble">Why there is none.</param>
    public static WhiteBalance? By(LinearLight paper, out WhiteTrouble trouble)
    {
        var lab = Lab.FromLight(paper);
        trouble = Math.Max(paper.Red, Math.Max(paper.Green, paper.Blue)) > PhotoColour.Blown ? WhiteTrouble.TooBright
            : paper.Luminance < DarkestPaper ? WhiteTrouble.TooDark
            : Math.Sqrt(lab.A * lab.A + lab.B * lab.B) > MostChroma ? WhiteTrouble.NotWhite : WhiteTrouble.None;
        if (trouble != WhiteTrouble.None) return null;
        var (found, should) = (Times(ConesOfLight, paper), Times(ConesOfLight, new LinearLight(1, 1, 1)));
        if (Math.Min(found.Red, Math.Min(found.Green, found.Blue)) <= 0)
        {
            trouble = WhiteTrouble.NotWhite;
            return null;
        }
        double[] scale = [PaperReflects * should.Red / found.Red, 0, 0, 0, PaperReflects * should.Green / found.Green, 0, 0, 0, PaperReflects * should.Blue / found.Blue];
        return new WhiteBalance(Product(LightOfCones, Product(scale, ConesOfLight)));
    }

    /// <summary>A light of the photo as it would be under daylight; may lie outside of what a screen shows.</summary>
    public LinearLight Of(LinearLight light) => _matrix is { } m ? Times(m, light) : light;

    private static LinearLight Times(double[] m, LinearLight l) => new(m[0] * l.Red + m[1] * l.Green + m[2] * l.Blue, m[3] * l.Red + m[4] * l.Green + m[5] * l.Blue, m[6] * l.Red + m[7] * l.Green + m[8] * l.Blue);

    private static double[] Product(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var product = new double[9];
        for (var r = 0; r < 3; r++)
            for (var c = 0; c < 3; c++)
                for (var k = 0; k < 3; k++) product[3 * r + c] += a[3 * r + k] * b[3 * k + c];
        return product;
    }

    // By cofactors; the matrices of three primaries are far from singular.
    private static double[] Inverse(double[] m)
    {
        double Minor(int a, int b, int c, int d) => m[a] * m[d] - m[b] * m[c];
        var whole = m[0] * Minor(4, 5, 7, 8) - m[1] * Minor(3, 5, 6, 8) + m[2] * Minor(3, 4, 6, 7);
        return
        [
            Minor(4, 5, 7, 8) / whole, -Minor(1, 2, 7, 8) / whole, Minor(1, 2, 4, 5) / whole,
            -Minor(3, 5, 6, 8) / whole, Minor(0, 2, 6, 8) / whole, -Minor(0, 2, 3, 5) / whole,
            Minor(3, 4, 6, 7) / whole, -Minor(0, 1, 6, 7) / whole, Minor(0, 1, 3, 4) / whole,
        ];
    }
}
