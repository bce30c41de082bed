using MathNet.Numerics.Distributions;

namespace Coilwright.Benchmarks.Draws;

/// <summary>The length of a piece of one kind, drawn with a library's distributions: as one would write it who has no draws of her own.</summary>
/// <remarks>The same distribution as the product's: one mean for the lot, normal and cut at three standard deviations, and each bead uniform about it.</remarks>
/// <param name="beads">How many beads.</param>
/// <param name="shareMm">A bead's mean share of the wire, mm.</param>
/// <param name="lotRelativeSd">Standard deviation of the lot's mean, relative.</param>
/// <param name="halfMm">Half width of a bead about it, mm.</param>
/// <param name="random">Where the random numbers come from.</param>
public sealed class LibraryDraws(int beads, double shareMm, double lotRelativeSd, double halfMm, Random random)
{
    private readonly Normal _lot = new(0, 1, random);
    private readonly ContinuousUniform _bead = new(-halfMm, halfMm, random);

    public double LengthMm()
    {
        double shift;
        do shift = _lot.Sample();
        while (Math.Abs(shift) > 3);
        var lengths = new List<double>();
        for (var i = 0; i < beads; i++) lengths.Add(shareMm * (1 + lotRelativeSd * shift) + _bead.Sample());
        return lengths.Sum();
    }
}
