using System.Globalization;
using Coilwright.Benchmarks.Running;
using MathNet.Numerics.Statistics;

namespace Coilwright.Benchmarks.Draws;

/// <summary>Our draws against a library's.</summary>
public static class DrawsClaim
{
    public static Claim Claim { get; } = new("draws", "A million draws of a 40-chip piece's length are at least 10 times as fast as with a library's sampler and a list for each, and allocate nothing.", Measure);

    private static Verdict[] Measure(int rounds)
    {
        CheckThatBothAgree();
        var measured = Rounds.Of<DrawBenchmarks>(rounds);
        return
        [
            new Verdict("library / own", measured.Ratio(nameof(DrawBenchmarks.Library), nameof(DrawBenchmarks.Own)), Promise.AtLeast, 10),
            new Verdict("library with its fastest generator / own", measured.Ratio(nameof(DrawBenchmarks.LibraryFastest), nameof(DrawBenchmarks.Own)), Promise.AtLeast, null),
            new Verdict("bytes that a million draws allocate", [measured.AllocatedBytes(nameof(DrawBenchmarks.Own))], Promise.AtMost, 0),
        ];
    }

    // Standard error of a mean is sd / 1000 and that of an sd about sd / 1400; two sides differ by less than five times the square root of two of them.
    private static void CheckThatBothAgree()
    {
        var (library, fastest, own) = new DrawBenchmarks().Moments();
        Tell("library", library);
        Tell("library, fastest generator", fastest);
        Tell("own", own);
        foreach (var other in new[] { library, fastest })
            if (Math.Abs(other.Mean - own.Mean) > 5 * Math.Sqrt(2) * own.StandardDeviation / 1000
                || Math.Abs(other.StandardDeviation - own.StandardDeviation) > 5 * Math.Sqrt(2) * own.StandardDeviation / 1400)
                throw new InvalidOperationException("The two sides do not draw from the same distribution.");

        static void Tell(string who, RunningStatistics s) =>
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"A million lengths, {who}: mean {s.Mean:0.000} mm, sd {s.StandardDeviation:0.000} mm."));
    }
}
