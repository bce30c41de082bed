namespace Coilwright.Core.Arrangement;

/// <summary>All allowed choices of counts that put in and take out a certain number of beads.</summary>
public static class SmallChanges
{
    /// <summary>Lists them.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="changed">Beads put in and taken out, all together; beads of tied gaps each count.</param>
    /// <param name="most">Stops when there are more than so many.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The choices, in no order that means anything; null when there are more than asked for.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static List<int[]>? Of(GapProblem problem, int changed, int most, CancellationToken cancel = default)
    {
        int[] counts = [.. problem.Start];
        var found = new List<int[]>();
        var tied = Enumerable.Range(0, problem.Count).Select(g => Enumerable.Range(0, problem.Count).Where(o => problem.TiedTo[o] == g).ToArray()).ToArray();
        // The most that the gaps from here on can still change.
        var after = new long[problem.Count + 1];
        for (var g = problem.Count - 1; g >= 0; g--)
            after[g] = after[g + 1] + (long)tied[g].Length * Math.Max(problem.Gaps[g].Most - problem.Start[g], problem.Start[g] - problem.Gaps[g].Least);
        return Go(0, changed) ? found : null;

        bool Go(int g, int left)
        {
            if (left > after[g]) return true;
            if (left == 0)
            {
                cancel.ThrowIfCancellationRequested();
                if (!problem.Allows(counts)) return true;
                found.Add([.. counts]);
                return found.Count <= most;
            }
            if (!Go(g + 1, left)) return false;
            if (tied[g].Length == 0) return true;
            for (var by = 1; by * tied[g].Length <= left; by++)
                foreach (var count in (ReadOnlySpan<int>)[problem.Start[g] - by, problem.Start[g] + by])
                {
                    if (count < problem.Gaps[g].Least || count > problem.Gaps[g].Most) continue;
                    foreach (var one in tied[g]) counts[one] = count;
                    var goOn = Go(g + 1, left - by * tied[g].Length);
                    foreach (var one in tied[g]) counts[one] = problem.Start[one];
                    if (!goOn) return false;
                }
            return true;
        }
    }
}
