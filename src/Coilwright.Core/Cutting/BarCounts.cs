using System.Collections.Immutable;

namespace Coilwright.Core.Cutting;

/// <summary>Every choice of how many bars of each priced kind could be begun for less than a cost, as far as none of them has another with more bars beside it.</summary>
/// <remarks>Whatever is cut with fewer bars is cut with more as well. So when nothing comes out with any of these, nothing is cheaper: with several prices that proves more than the
/// bound of bars begun in parts, which mixes kinds as no purse can.</remarks>
internal static class BarCounts
{
    /// <summary>The choices; null when there are more than are looked at.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="below">They cost less than this.</param>
    /// <param name="from">And no less than this: it is known that nothing comes out for less.</param>
    /// <param name="most">So many are listed at most.</param>
    public static List<int[]>? Below(CuttingProblem problem, long below, long from, int most)
    {
        int[] priced = [.. Enumerable.Range(0, problem.Bars.Length).Where(b => problem.Bars[b].Cost > 0 && problem.Bars[b].Count != 0).OrderByDescending(b => problem.Bars[b].Cost).ThenBy(b => b)];
        var found = new List<int[]>();
        var counts = new int[problem.Bars.Length];
        return priced.Length > 0 && Choose(0, below - 1) ? found : null;

        bool Choose(int n, long left)
        {
            if (found.Count > most) return false;
            var bar = problem.Bars[priced[n]];
            var can = (int)Math.Min(bar.Count ?? int.MaxValue, left / bar.Cost);
            if (n == priced.Length - 1)
            {
                counts[priced[n]] = can;
                if (below - 1 - left + can * bar.Cost >= from && IsFull(left - can * bar.Cost)) found.Add([.. counts]);
                return true;
            }
            for (var here = can; here >= 0; here--)
            {
                counts[priced[n]] = here;
                if (!Choose(n + 1, left - here * bar.Cost)) return false;
            }
            return true;
        }

        bool IsFull(long left) => priced.All(b => problem.Bars[b].Cost > left || counts[b] >= (problem.Bars[b].Count ?? int.MaxValue));
    }

    /// <summary>The problem with so many bars of each priced kind and no more.</summary>
    public static CuttingProblem With(CuttingProblem problem, int[] counts) =>
        problem with { Bars = [.. problem.Bars.Select((bar, b) => bar.Cost > 0 ? bar with { Count = counts[b] } : bar).ToImmutableArray()] };
}
