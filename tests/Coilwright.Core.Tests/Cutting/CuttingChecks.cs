using Coilwright.Core.Cutting;

namespace Coilwright.Core.Tests.Cutting;

/// <summary>Whether a way to cut is one: nothing cut twice, nothing longer than its bar, no more bars than there are, sums as told.</summary>
internal static class CuttingChecks
{
    public static void Holds(CuttingProblem problem, CuttingSolution found)
    {
        var cut = new int[problem.Items.Length];
        var begun = new int[problem.Bars.Length];
        long cost = 0;
        foreach (var pattern in found.Patterns)
        {
            Assert.True(pattern.Times > 0);
            var pieces = pattern.Counts.Sum();
            Assert.True(pieces > 0);
            var length = pattern.Counts.Select((n, i) => n * problem.Items[i].Length).Sum();
            // Every piece takes a cut, save a last one that comes out exactly at the bar's end.
            Assert.True(length + (pieces - 1) * problem.Loss <= problem.Bars[pattern.Bar].Length, $"{length} of {problem.Bars[pattern.Bar].Length}");
            for (var i = 0; i < cut.Length; i++)
            {
                cut[i] += pattern.Counts[i] * pattern.Times;
                Assert.True(pattern.Counts[i] == 0 || problem.Fits(pattern.Bar, i));
            }
            begun[pattern.Bar] += pattern.Times;
            cost += problem.Bars[pattern.Bar].Cost * pattern.Times;
        }
        for (var b = 0; b < begun.Length; b++) Assert.True(problem.Bars[b].Count is not { } there || begun[b] <= there);
        for (var i = 0; i < cut.Length; i++) Assert.Equal(problem.Items[i].Count, cut[i] + found.Missing[i]);
        Assert.Equal(cost, found.Cost);
        Assert.Equal(found.Missing.Select((n, i) => (long)n * problem.Items[i].Length).Sum(), found.MissingLength);
        if (found.ComesOut) Assert.True(found.Bound <= found.Cost);
        else Assert.True(found.MissingBound <= found.MissingLength);
    }
}
