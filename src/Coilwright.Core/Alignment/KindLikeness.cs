using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Alignment;

/// <summary>How alike two kinds of bead look, and how much each shows.</summary>
/// <remarks>
/// <para>Likeness is 1 for the same kind, else <c>exp(-(dE00/8)^2) exp(-(ln(A_i/A_j)/0.4)^2)</c> with A = length x width and several colours taken by
/// area-mean Lab; below 0.05 it counts 0. A kind without a colour is like no other. The constants are our choice and come from the data.
/// Model: docs/theory/colour-likeness.md.</para>
/// </remarks>
public sealed class KindLikeness
{
    private readonly double[] _weighted;
    private readonly double[] _likeness;

    /// <summary>Makes the table for a piece's kinds.</summary>
    public KindLikeness(ImmutableArray<Bead> kinds, ReckoningChoices choices)
    {
        Kinds = kinds.Length;
        _weighted = new double[Kinds * Kinds];
        _likeness = new double[Kinds * Kinds];
        var labs = kinds.Select(k => k.Colours.IsDefaultOrEmpty ? (Lab?)null : Lab.MeanOf(k.Colours)).ToArray();
        var shows = kinds.Select(k => k.Description.Shows ?? choices.ShowsByRole[k.Role]).ToArray();
        for (var i = 0; i < Kinds; i++)
            for (var j = 0; j <= i; j++)
            {
                var likeness = i == j ? 1 : Likeness(kinds[i], labs[i], kinds[j], labs[j], choices);
                _likeness[i * Kinds + j] = _likeness[j * Kinds + i] = likeness;
                _weighted[i * Kinds + j] = _weighted[j * Kinds + i] = likeness * Math.Sqrt(shows[i] * shows[j]);
            }
    }

    /// <summary>How many kinds.</summary>
    public int Kinds { get; }

    /// <summary>Likeness of two kinds, 0 to 1.</summary>
    public double this[int i, int j] => _likeness[i * Kinds + j];

    /// <summary>Likeness times the geometric mean of how much each shows, row by row.</summary>
    internal double[] Weighted => _weighted;

    private static double Likeness(Bead a, Lab? labA, Bead b, Lab? labB, ReckoningChoices choices)
    {
        if (labA is not { } la || labB is not { } lb) return 0;
        var colour = ColourDifference.Ciede2000(la, lb) / choices.LikenessColourWidth;
        var area = Math.Log(a.LengthMm * a.WidthMm / (b.LengthMm * b.WidthMm)) / choices.LikenessAreaWidth;
        var likeness = Math.Exp(-colour * colour - area * area);
        return likeness < choices.LikenessFloor ? 0 : likeness;
    }
}
