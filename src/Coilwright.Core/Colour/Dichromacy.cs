using System.Collections.Immutable;

namespace Coilwright.Core.Colour;

/// <summary>An eye that lacks one of the three kinds of cones.</summary>
public enum Dichromacy
{
    /// <summary>Without those for long waves: reds are dark and near to greens.</summary>
    Protan,

    /// <summary>Without those for middle waves: reds and greens are near to each other. The most common.</summary>
    Deutan,

    /// <summary>Without those for short waves: blues and greens, yellows and greys are near to each other. Rare.</summary>
    Tritan,
}

/// <summary>A published way of showing what such an eye sees to one that lacks nothing.</summary>
public enum DichromacyModel
{
    /// <summary>H. Brettel, F. Viénot, J. D. Mollon, Journal of the Optical Society of America A 14(10), 2647-2655 (1997): two half planes, all three eyes.</summary>
    Brettel1997,

    /// <summary>F. Viénot, H. Brettel, J. D. Mollon, Color Research and Application 24(4), 243-252 (1999): one plane, protan and deutan.</summary>
    Vienot1999,

    /// <summary>G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, IEEE Transactions on Visualization and Computer Graphics 15(6), 1291-1298 (2009), severity 1: all three
    /// eyes; by its authors less sure for tritan.</summary>
    Machado2009,
}

/// <summary>What an eye that lacks one kind of cones sees, shown in colours that look the same to it and to one that lacks nothing.</summary>
/// <remarks>
/// <para>Works on light (linear sRGB), where all three models are made. Nobody knows what another sees; the models say which colours look alike, and
/// they differ: ask more than one. Weakened rather than missing cones (anomalous trichromacy), which are more common, are not worked out: what a dichromat
/// tells apart they tell too.</para>
/// <para>Matrices: Brettel and Viénot worked out for sRGB from the cones of Smith and Pokorny as in the papers, white as the neutral, to five digits, as printed
/// in the public domain DaltonLens library; Machado as printed by its authors. docs/theory/colour-vision.md.</para>
/// </remarks>
public static class DichromatSight
{
    // Rows of what red, green and blue of the seen light are made of. With two half planes: the first where the light is on the positive side of the border.
    private static readonly double[] BrettelProtan1 = [0.14510, 1.20165, -0.34675, 0.10447, 0.85316, 0.04237, 0.00429, -0.00603, 1.00174],
        BrettelProtan2 = [0.14115, 1.16782, -0.30897, 0.10495, 0.85730, 0.03776, 0.00431, -0.00586, 1.00155],
        BrettelProtanBorder = [0.00048, 0.00416, -0.00464],
        BrettelDeutan1 = [0.36198, 0.86755, -0.22953, 0.26099, 0.64512, 0.09389, -0.01975, 0.02686, 0.99289],
        BrettelDeutan2 = [0.37009, 0.88540, -0.25549, 0.25767, 0.63782, 0.10451, -0.01950, 0.02741, 0.99209],
        BrettelDeutanBorder = [-0.00293, -0.00645, 0.00938],
        BrettelTritan1 = [1.01354, 0.14268, -0.15622, -0.01181, 0.87561, 0.13619, 0.07707, 0.81208, 0.11085],
        BrettelTritan2 = [0.93337, 0.19999, -0.13336, 0.05809, 0.82565, 0.11626, -0.37923, 1.13825, 0.24098],
        BrettelTritanBorder = [0.03960, -0.02831, -0.01129],
        VienotProtan = [0.10889, 0.89111, 0, 0.10889, 0.89111, 0, 0.00447, -0.00447, 1],
        VienotDeutan = [0.29031, 0.70969, 0, 0.29031, 0.70969, 0, -0.02197, 0.02197, 1],
        MachadoProtan = [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
        MachadoDeutan = [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881],
        MachadoTritan = [1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900];

    /// <summary>The models that hold for an eye. The first is the one that pictures are drawn by.</summary>
    public static ImmutableArray<DichromacyModel> ModelsFor(Dichromacy eye) => eye == Dichromacy.Tritan
        ? [DichromacyModel.Brettel1997, DichromacyModel.Machado2009]
        : [DichromacyModel.Brettel1997, DichromacyModel.Vienot1999, DichromacyModel.Machado2009];

    /// <summary>What is seen, cut to what a screen shows.</summary>
    /// <exception cref="ArgumentException">The model does not hold for the eye.</exception>
    public static LinearLight Seen(LinearLight light, Dichromacy eye, DichromacyModel model) => (model, eye) switch
    {
        (DichromacyModel.Brettel1997, Dichromacy.Protan) => Halved(light, BrettelProtanBorder, BrettelProtan1, BrettelProtan2),
        (DichromacyModel.Brettel1997, Dichromacy.Deutan) => Halved(light, BrettelDeutanBorder, BrettelDeutan1, BrettelDeutan2),
        (DichromacyModel.Brettel1997, Dichromacy.Tritan) => Halved(light, BrettelTritanBorder, BrettelTritan1, BrettelTritan2),
        (DichromacyModel.Vienot1999, Dichromacy.Protan) => Mixed(light, VienotProtan),
        (DichromacyModel.Vienot1999, Dichromacy.Deutan) => Mixed(light, VienotDeutan),
        (DichromacyModel.Machado2009, Dichromacy.Protan) => Mixed(light, MachadoProtan),
        (DichromacyModel.Machado2009, Dichromacy.Deutan) => Mixed(light, MachadoDeutan),
        (DichromacyModel.Machado2009, Dichromacy.Tritan) => Mixed(light, MachadoTritan),
        _ => throw new ArgumentException("The model of 1999 does not hold where the cones for short waves are missing.", nameof(model)),
    };

    private static LinearLight Halved(LinearLight light, double[] border, double[] one, double[] other) =>
        Mixed(light, border[0] * light.Red + border[1] * light.Green + border[2] * light.Blue >= 0 ? one : other);

    private static LinearLight Mixed(LinearLight l, double[] of) => new LinearLight(
        of[0] * l.Red + of[1] * l.Green + of[2] * l.Blue,
        of[3] * l.Red + of[4] * l.Green + of[5] * l.Blue,
        of[6] * l.Red + of[7] * l.Green + of[8] * l.Blue).OnScreen();
}
