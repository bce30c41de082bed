using System.Globalization;
using Coilwright.Benchmarks.Running;

namespace Coilwright.Benchmarks.LiningUp;

/// <summary>Exact lining up against a grid.</summary>
public static class LiningUpClaim
{
    public static Claim Claim { get; } = new("lining-up", "Exact lining up over 121 wrists is at least 10 times as fast as a walk in steps of 0.1 mm.", Measure);

    private static Verdict[] Measure(int rounds)
    {
        CheckThatBothAgree();
        var measured = Rounds.Of<LiningUpBenchmarks>(rounds);
        return [new Verdict("grid of 0.1 mm / exact", measured.Ratio(nameof(LiningUpBenchmarks.Grid), nameof(LiningUpBenchmarks.Exact)), Promise.AtLeast, 10)];
    }

    // A grid shifts and cuts in whole steps, so it is off by about a step at every border that lies over a border; a finer one must come nearer in
    // proportion. The exact reading is the one that they come near to.
    private static void CheckThatBothAgree()
    {
        var benchmarks = new LiningUpBenchmarks();
        double coarse = benchmarks.LargestDifference(0.1), fine = benchmarks.LargestDifference(0.01);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Largest difference over 121 wrists: {coarse:0.#####} with steps of 0.1 mm, {fine:0.#####} with 0.01 mm."));
        if (coarse > 0.03 || fine > 0.003) throw new InvalidOperationException("Grid and exact lining up do not agree.");
    }
}
