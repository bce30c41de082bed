using Coilwright.Core.Beads;

namespace Coilwright.Core.Stock;

/// <summary>How many there are, by weight or by a row, without counting each.</summary>
/// <param name="Count">The likeliest count.</param>
/// <param name="Least">No fewer, as far as the reading tells.</param>
/// <param name="Most">No more.</param>
public sealed record CountingHelp(int Count, int Least, int Most)
{
    // Beads that one would still weigh or lay in a row: beyond, it is a slip.
    private const double MostCount = 1_000_000;

    /// <summary>Counts by weight: a counted sample is weighed, then all of it, on the same scale and without the dish.</summary>
    /// <remarks>Each reading may be off by half a step of the scale; least and most are both readings at their worst. That beads differ from each other is not in it: a larger sample evens it
    /// out, and narrows the scale's share too.</remarks>
    /// <param name="sample">Beads in the sample, 1 or more.</param>
    /// <param name="sampleG">What they weigh, g.</param>
    /// <param name="totalG">What all of them weigh, g.</param>
    /// <param name="stepG">The smallest step that the scale shows, g, 0 or more.</param>
    /// <returns>The count; null when the sample does not weigh more than the scale's error, or a reading is none.</returns>
    public static CountingHelp? ByWeight(int sample, double sampleG, double totalG, double stepG)
    {
        var error = stepG / 2;
        if (sample < 1 || !(error >= 0) || !(sampleG > error) || !(totalG >= 0)) return null;
        return Of(totalG * sample / sampleG, (totalG - error) * sample / (sampleG + error), (totalG + error) * sample / (sampleG - error));
    }

    /// <summary>Counts by a row: the beads are laid or strung close together and the row is measured.</summary>
    /// <remarks>Least and most are two standard deviations of what the bead's length is known to (docs/theory/spread.md), and half a millimetre of the ruler at each end.</remarks>
    /// <param name="rowMm">Length of the row, mm.</param>
    /// <param name="bead">The bead.</param>
    /// <returns>The count; null when the length is none.</returns>
    public static CountingHelp? ByRow(double rowMm, Bead bead)
    {
        const double RulerMm = 1;
        if (!(rowMm >= 0)) return null;
        var count = rowMm / bead.LengthMm;
        var sdMm = Math.Sqrt(count * bead.BeadSdMm * bead.BeadSdMm + count * count * bead.LotMeanSdMm * bead.LotMeanSdMm);
        var off = (2 * sdMm + RulerMm) / bead.LengthMm;
        return Of(count, count - off, count + off);
    }

    private static CountingHelp? Of(double count, double least, double most)
    {
        if (!(count <= MostCount) || !(most <= 2 * MostCount)) return null;
        var nearest = (int)Math.Round(count, MidpointRounding.ToEven);
        return new CountingHelp(nearest, Math.Min(nearest, Math.Max(0, (int)Math.Ceiling(least - 1e-9))), Math.Max(nearest, (int)Math.Floor(most + 1e-9)));
    }
}
