using BenchmarkDotNet.Attributes;
using Coilwright.Core.Beads;
using Coilwright.Core.Spread;
using MathNet.Numerics.Random;
using MathNet.Numerics.Statistics;

namespace Coilwright.Benchmarks.Draws;

/// <summary>Are draws of our own worth having beside a library's? A million lengths of a piece of 40 chips.</summary>
/// <remarks>Ours is what the reckoning calls for each draw: every bead's share and where it ends are drawn too, the library sums lengths alone. One thread on all sides. The library is measured with the generator that it gives when none is asked for, and with the fastest that it has.</remarks>
public class DrawBenchmarks
{
    private const int Draws = 1_000_000, Chips = 40;
    private const double ShareMm = 5.5;

    private static readonly Bead Chip = Bead.TryMake(new BeadDescription
    {
        Id = "chip",
        Shape = "chip",
        Length = new BeadLength.Range(4, 7),
        WidthMm = 8,
        ThicknessMm = 6,
        BoreMm = 1,
    }, out var bead, out var faults) ? bead! : throw new InvalidOperationException(string.Join("; ", faults));

    private readonly LengthDraws _draws = new([Chip], [.. Enumerable.Repeat(0, Chips)], [.. Enumerable.Repeat(ShareMm, Chips)], seed: 1);
    private readonly double[] _shares = new double[Chips], _ends = new double[Chips];

    private readonly LibraryDraws _usual = Library(new SystemRandomSource(1)), _fastest = Library(new Xoshiro256StarStar(1, threadSafe: false));

    private static LibraryDraws Library(Random random) =>
        new(Chips, ShareMm, Chip.LotMeanSdMm / Chip.LengthMm, ShareMm / Chip.LengthMm * Math.Sqrt(3) * Chip.BeadSdMm, random);

    [Benchmark(Baseline = true)]
    public double Library()
    {
        double sum = 0;
        for (var k = 0; k < Draws; k++) sum += _usual.LengthMm();
        return sum;
    }

    [Benchmark]
    public double LibraryFastest()
    {
        double sum = 0;
        for (var k = 0; k < Draws; k++) sum += _fastest.LengthMm();
        return sum;
    }

    [Benchmark]
    public double Own()
    {
        double sum = 0;
        for (ulong k = 0; k < Draws; k++) sum += _draws.Draw(k, _shares, _ends);
        return sum;
    }

    /// <summary>Mean and standard deviation of a million lengths of each side, mm.</summary>
    public (RunningStatistics Library, RunningStatistics LibraryFastest, RunningStatistics Own) Moments()
    {
        RunningStatistics usual = new(), fastest = new(), own = new();
        for (ulong k = 0; k < Draws; k++)
        {
            usual.Push(_usual.LengthMm());
            fastest.Push(_fastest.LengthMm());
            own.Push(_draws.Draw(k, _shares, _ends));
        }
        return (usual, fastest, own);
    }
}
