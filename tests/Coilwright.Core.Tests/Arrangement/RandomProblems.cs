using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using CsCheck;

namespace Coilwright.Core.Tests.Arrangement;

/// <summary>Small problems of counts with any tables, and every choice of their counts.</summary>
internal static class RandomProblems
{
    /// <param name="ties">Whether some gaps are tied to others.</param>
    public static Gen<GapProblem> Any(bool ties) =>
        from count in Gen.Int[1, 6]
        from kindCount in Gen.Int[1, 2]
        from kinds in Gen.Int[0, kindCount - 1].Array[count]
        from start in Gen.Int[1, 4].Array[count]
        from fewer in Gen.Int[0, 2].Array[count]
        from more in Gen.Int[0, 2].Array[count]
        from steps in Gen.Double[1, 9].Array[kindCount]
        from limited in Gen.Bool
        from shorter in Gen.Double[0, 12]
        from longer in Gen.Double[0, 12]
        from stock in Gen.Int[-2, 4].Array[kindCount]
        from stocked in Gen.Bool.Array[kindCount]
        from spans in Gen.Select(Gen.Int[0, count - 1], Gen.Int[1, 5]).Array[0, 6]
        from tied in Gen.Int[0, 5]
        from seed in Gen.ULong
        select Make(kinds, start, fewer, more, steps, limited ? (shorter, longer) : (double.PositiveInfinity, double.PositiveInfinity),
            [.. stock.Zip(stocked, (s, has) => has ? s : int.MaxValue)], spans, ties ? tied : 0, seed);

    public static IEnumerable<int[]> EveryChoice(GapProblem problem)
    {
        IEnumerable<int[]> all = [[]];
        foreach (var gap in problem.Gaps) all = all.SelectMany(so => Enumerable.Range(gap.Least, gap.Most - gap.Least + 1), (so, c) => (int[])[.. so, c]);
        return all.Where(counts => problem.Allows(counts));
    }

    private static GapProblem Make(int[] kinds, int[] start, int[] fewer, int[] more, double[] steps, (double Shorter, double Longer) length, int[] stock,
        (int First, int Gaps)[] spans, int tied, ulong seed)
    {
        var at = 0;
        var gaps = ImmutableArray.CreateBuilder<Gap>();
        for (var g = 0; g < kinds.Length; g++, at += 10) gaps.Add(new Gap(at, start[g], kinds[g], Math.Max(1, start[g] - fewer[g]), start[g] + more[g]));
        var draws = new Core.Numerics.SeededDraws(seed, 0);
        ulong drawn = 0;
        var windows = ImmutableArray.CreateBuilder<GapWindow>();
        foreach (var (first, length2) in spans.DistinctBy(s => (s.First, Math.Min(kinds.Length, s.First + s.Gaps))))
        {
            var end = Math.Min(kinds.Length, first + length2);
            var strides = new int[steps.Length];
            var size = 1;
            for (var k = 0; k < steps.Length; k++)
            {
                var range = 1 + Enumerable.Range(first, end - first).Where(g => kinds[g] == k).Sum(g => gaps[g].Most - gaps[g].Least);
                if (range == 1) continue;
                strides[k] = size;
                size *= range;
            }
            windows.Add(new GapWindow(first, end, [.. strides], [.. Enumerable.Range(0, size).Select(_ => draws.Unit(drawn++))]));
        }
        var ties = Enumerable.Range(0, kinds.Length).ToArray();
        for (var g = 0; g + 1 < kinds.Length; g++)
            if ((tied >> g & 1) == 1 && gaps[g] with { First = 0 } == gaps[g + 1] with { First = 0 }) ties[g + 1] = ties[g];
        return new GapProblem(gaps.ToImmutable(), [.. kinds], [.. steps], windows.ToImmutable(), 0.25)
        {
            ShorterMm = length.Shorter,
            LongerMm = length.Longer,
            MostMoreOfKind = [.. stock],
            TiedTo = [.. ties],
        };
    }
}
