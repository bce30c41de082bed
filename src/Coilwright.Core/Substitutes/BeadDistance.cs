using Coilwright.Core.Beads;
using Coilwright.Core.Colour;

namespace Coilwright.Core.Substitutes;

/// <summary>How far one bead is from another, as a maker looks for the next best: each part 1 where she would begin to hesitate.</summary>
/// <remarks>The sizes of 1 are our choice (common practice, no source): a length off by a tenth, a width or thickness by a fifth, a hole by a third, a colour by CIEDE2000 of 10, another shape
/// or material by itself. What is not known of one of the two counts as half a hesitation.</remarks>
/// <param name="Length">Along the hole: how much it changes the length of the piece.</param>
/// <param name="Across">Width and thickness, whichever differs more.</param>
/// <param name="Bore">The hole. A wider one counts as well: the bead then hangs loose.</param>
/// <param name="Colour">The mean colour.</param>
/// <param name="Shape">0 for the same shape, else 1.</param>
/// <param name="Material">0 for the same material, else 1.</param>
public sealed record BeadDistance(double Length, double Across, double Bore, double Colour, double Shape, double Material)
{
    private const double LengthStep = 0.1, AcrossStep = 0.2, BoreStep = 1 / 3.0, ColourStep = 10, Unknown = 0.5;

    /// <summary>All parts together: the root of the sum of their squares.</summary>
    public double Total => Math.Sqrt(Length * Length + Across * Across + Bore * Bore + Colour * Colour + Shape * Shape + Material * Material);

    /// <summary>The distance of two beads; the same either way round.</summary>
    public static BeadDistance Of(Bead a, Bead b)
    {
        var (da, db) = (a.Description, b.Description);
        return new BeadDistance(
            Ratio(a.LengthMm, b.LengthMm, LengthStep),
            Math.Max(Ratio(a.WidthMm, b.WidthMm, AcrossStep), Ratio(a.ThicknessMm, b.ThicknessMm, AcrossStep)),
            da.BoreMm is { } one && db.BoreMm is { } other ? Ratio(one, other, BoreStep) : Unknown,
            Lab.MeanOf(a.Colours) is { } here && Lab.MeanOf(b.Colours) is { } there ? ColourDifference.Ciede2000(here, there) / ColourStep : Unknown,
            a.Shape == b.Shape ? 0 : 1,
            MaterialOf(da) is { } of && MaterialOf(db) is { } to ? of == to ? 0 : 1 : Unknown);
    }

    // As a ratio, so that it is the same either way round; a step up and the same step down are as far.
    private static double Ratio(double a, double b, double step) => Math.Abs(Math.Log(a / b)) / Math.Log(1 + step);

    private static string? MaterialOf(BeadDescription bead) => bead.Material?.Key ?? bead.OtherMaterial;
}
