using Coilwright.Core.Cutting;

namespace Coilwright.Core.Tests.Cutting;

/// <summary>The best way to cut by trying every one: each piece in each bar, or in none. Shares no code with the search.</summary>
internal static class EveryWay
{
    /// <summary>Least length missing, and the least cost with that.</summary>
    public static (long Missing, long Cost) Best(CuttingProblem problem)
    {
        int[] pieces = [.. problem.Items.SelectMany((item, i) => Enumerable.Repeat(i, item.Count))];
        int[] bars = [.. problem.Bars.SelectMany((bar, b) => Enumerable.Repeat(b, Math.Min(bar.Count ?? pieces.Length, pieces.Length)))];
        var used = new (int Length, int Pieces)[bars.Length];
        var best = (Missing: long.MaxValue, Cost: long.MaxValue);
        Place(0, 0);
        return best;

        void Place(int n, long missing)
        {
            if (missing > best.Missing) return;
            if (n == pieces.Length)
            {
                var cost = bars.Select((b, at) => used[at].Pieces > 0 ? problem.Bars[b].Cost : 0).Sum();
                if ((missing, cost).CompareTo(best) < 0) best = (missing, cost);
                return;
            }
            var length = problem.Items[pieces[n]].Length;
            var seen = new HashSet<(int, int, int)>();
            for (var at = 0; at < bars.Length; at++)
            {
                var (full, held) = used[at];
                if (!problem.Fits(bars[at], pieces[n]) || !seen.Add((bars[at], full, held))) continue;
                if (full + length + held * problem.Loss > problem.Bars[bars[at]].Length) continue;
                used[at] = (full + length, held + 1);
                Place(n + 1, missing);
                used[at] = (full, held);
            }
            Place(n + 1, missing + length);
        }
    }
}
