namespace Coilwright.Core.Cutting;

/// <summary>Every filling of a bar that a better way to cut could have, of those that hold the longest item that is left.</summary>
/// <remarks>In some best way to cut, the bar that holds a certain item has no room for any other that is still to be cut: it could be moved there. So only full fillings
/// are listed. Of these, one whose cost beyond the worth of its items exceeds what may still be spent is in no better way.</remarks>
internal static class Fillings
{
    /// <summary>Lists them, dearest last.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="first">The longest item left.</param>
    /// <param name="left">What is left of each.</param>
    /// <param name="bars">What is left of each bar.</param>
    /// <param name="bound">Worths of items and bars.</param>
    /// <param name="costOf">Cost of a bar, in fractions.</param>
    /// <param name="spare">What may be spent beyond the bound, in fractions.</param>
    /// <param name="most">So many are listed and no more.</param>
    /// <param name="all">Whether those are all.</param>
    public static List<(Pattern Pattern, long Beyond)> With(ScaledProblem problem, int first, int[] left, int[] bars, BoundFound bound, Func<int, long> costOf, long spare, int most, out bool all)
    {
        var found = new List<(Pattern Pattern, long Beyond)>();
        var counts = new int[problem.Items];
        all = true;
        for (var b = 0; b < problem.Bars; b++)
        {
            if (bars[b] <= 0 || !problem.May[b][first]) continue;
            // The most that one unit of length can still be worth, from each item on.
            var density = new double[problem.Items + 1];
            for (var i = problem.Items - 1; i >= 0; i--)
                density[i] = Math.Max(density[i + 1], left[i] > 0 && problem.May[b][i] ? (double)bound.Values[i] / problem.Length[i] : 0);
            var walk = new Walk(problem, b, left, bound.Values, density, counts, first, most, found);
            walk.From(first, problem.BarLength[b], costOf(b) + bound.Excess[b], spare);
            all &= walk.Whole;
        }
        found.Sort((x, y) => x.Beyond != y.Beyond ? x.Beyond.CompareTo(y.Beyond) : Compare(x.Pattern, y.Pattern));
        return found;
    }

    // Of equal ones, long items first: what is left then is easier.
    private static int Compare(Pattern x, Pattern y)
    {
        for (var i = 0; i < x.Counts.Length; i++)
            if (x.Counts[i] != y.Counts[i])
                return y.Counts[i].CompareTo(x.Counts[i]);
        return x.Bar.CompareTo(y.Bar);
    }

    private sealed class Walk(ScaledProblem problem, int bar, int[] left, long[] values, double[] density, int[] counts, int first, int most, List<(Pattern, long)> found)
    {
        public bool Whole { get; private set; } = true;

        public void From(int item, int room, long beyond, long spare)
        {
            if (found.Count >= most)
            {
                Whole = false;
                return;
            }
            // A hair is added, as densities are rounded.
            if (beyond - density[item] * room * (1 + 1e-12) - 1 > spare) return;
            if (item == problem.Items)
            {
                if (beyond <= spare && IsFull(room)) found.Add((new Pattern(bar, [.. counts]), beyond));
                return;
            }
            var may = left[item] > 0 && problem.May[bar][item] ? Math.Min(left[item], room / problem.Length[item]) : 0;
            var least = item == first ? 1 : 0;
            for (var n = may; n >= least; n--)
            {
                counts[item] = n;
                From(item + 1, room - n * problem.Length[item], beyond - n * values[item], spare);
            }
            counts[item] = 0;
        }

        private bool IsFull(int room)
        {
            for (var i = 0; i < counts.Length; i++)
                if (left[i] > counts[i] && problem.Length[i] <= room && problem.May[bar][i])
                    return false;
            return true;
        }
    }
}
