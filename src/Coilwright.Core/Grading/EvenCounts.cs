using Coilwright.Core.Arrangement;

namespace Coilwright.Core.Grading;

/// <summary>Counts that change the length by so much and spread what is added or taken over all runs as evenly as can be.</summary>
/// <remarks>Least is the sum of squares of what each run changes by, in mm, less its even part. Exact but for lengths, which are told apart by
/// <see cref="BinMm"/>: within a kind the cost is convex in each run, so beads go one by one to where the next costs least; kinds are then put together
/// by a table over lengths.</remarks>
internal static class EvenCounts
{
    // A twentieth of what the ends may differ by, and less than any bead.
    private const double BinMm = 0.05;

    // Multiples of this, less whole ones, lie far apart however many are taken: beads that may go anywhere are spread along the piece.
    private const double GoldenShare = 0.6180339887498949;

    /// <summary>The counts.</summary>
    /// <param name="problem">Runs, ranges, ties and stock; its length limits are not looked at.</param>
    /// <param name="moreMm">By how much the length is to change, mm.</param>
    /// <param name="withinMm">How far off that is as good, mm.</param>
    /// <returns>The most even within that; where there are none, the nearest in length; null when stock allows none at all.</returns>
    public static int[]? Of(GapProblem problem, double moreMm, double withinMm)
    {
        if (problem.Count == 0) return [];
        var share = moreMm / problem.Count;
        var kinds = Enumerable.Range(0, problem.StepMm.Length).Select(k => new Kind(problem, k, share)).ToArray();
        var states = new Dictionary<long, (double LengthMm, double Cost, int[] Totals)> { [0] = (0, 0, []) };
        foreach (var kind in kinds)
        {
            var next = new Dictionary<long, (double LengthMm, double Cost, int[] Totals)>();
            foreach (var state in states.Values)
                for (var total = 0; total < kind.Costs.Length; total++)
                {
                    if (kind.More(total) > problem.MostMoreOfKind[kind.Index] || double.IsPositiveInfinity(kind.Costs[total])) continue;
                    var length = state.LengthMm + kind.More(total) * problem.StepMm[kind.Index];
                    var cost = state.Cost + kind.Costs[total];
                    var bin = (long)Math.Round(length / BinMm);
                    if (!next.TryGetValue(bin, out var there) || cost < there.Cost - 1e-9) next[bin] = (length, cost, [.. state.Totals, total]);
                }
            states = next;
        }
        if (states.Count == 0) return null;
        var best = states.Values.MinBy(s => Math.Abs(s.LengthMm - moreMm) is var off && off <= withinMm ? (0, s.Cost + off * off, s.LengthMm) : (1, off, s.LengthMm));
        var counts = new int[problem.Count];
        for (var k = 0; k < kinds.Length; k++) kinds[k].Write(best.Totals[k], counts);
        return counts;
    }

    // The runs of one kind, those tied to each other as one: for each number of beads above the fewest, the best way to place them and what it costs.
    private sealed class Kind
    {
        private readonly GapProblem _problem;
        private readonly int[][] _classes;
        private readonly List<int[]?> _placed = [];
        private readonly int _fewest;

        public Kind(GapProblem problem, int index, double shareMm)
        {
            (_problem, Index) = (problem, index);
            _classes = [.. Enumerable.Range(0, problem.Count).Where(g => problem.Kinds[g] == index && problem.TiedTo[g] == g)
                .Select(g => Enumerable.Range(g, problem.Count - g).Where(o => problem.TiedTo[o] == g).ToArray())];
            _fewest = _classes.Sum(c => c.Length * (problem.Gaps[c[0]].Least - problem.Start[c[0]]));
            var tables = _classes.Select((c, i) => (Class: c, Index: i)).GroupBy(c => c.Class.Length).OrderBy(g => g.Key)
                .Select(g => Placings([.. g.Select(c => c.Index)], g.Key, problem.StepMm[index], shareMm)).ToArray();
            // Runs that stand alone and pairs of runs are placed each by themselves; then every sum of both.
            var (costs, placed) = (new double[] { 0 }, new int[]?[] { new int[_classes.Length] });
            foreach (var (width, table) in tables)
            {
                var sums = Enumerable.Repeat(double.PositiveInfinity, costs.Length + width * (table.Count - 1)).ToArray();
                var ways = new int[]?[sums.Length];
                for (var one = 0; one < costs.Length; one++)
                    for (var other = 0; other < table.Count; other++)
                        if (costs[one] + table[other].Cost < sums[one + width * other] && placed[one] is { } so)
                        {
                            sums[one + width * other] = costs[one] + table[other].Cost;
                            ways[one + width * other] = [.. so.Zip(table[other].Above, (a, b) => a + b)];
                        }
                (costs, placed) = (sums, ways);
            }
            Costs = costs;
            _placed.AddRange(placed);
        }

        public int Index { get; }

        /// <summary>The cost by beads above the fewest; infinite where so many cannot be placed.</summary>
        public double[] Costs { get; }

        public int More(int total) => _fewest + total;

        public void Write(int total, int[] counts)
        {
            for (var c = 0; c < _classes.Length; c++)
                foreach (var gap in _classes[c]) counts[gap] = _problem.Gaps[gap].Least + _placed[total]![c];
        }

        private (int Width, List<(double Cost, int[] Above)> Table) Placings(int[] members, int width, double stepMm, double shareMm)
        {
            var above = new int[_classes.Length];
            var cost = members.Sum(m => width * Square(m, 0));
            List<(double, int[])> table = [(cost, [.. above])];
            while (true)
            {
                var free = members.Where(m => _problem.Gaps[_classes[m][0]].Least + above[m] < _problem.Gaps[_classes[m][0]].Most).ToArray();
                if (free.Length == 0) return (width, table);
                var next = free.MinBy(m => (Math.Round(Square(m, above[m] + 1) - Square(m, above[m]), 9), (m + 1) * GoldenShare % 1));
                cost += width * (Square(next, above[next] + 1) - Square(next, above[next]));
                above[next]++;
                table.Add((cost, [.. above]));
            }

            double Square(int member, int beads)
            {
                var gap = _problem.Gaps[_classes[member][0]];
                var off = (gap.Least + beads - gap.Count) * stepMm - shareMm;
                return off * off;
            }
        }
    }
}
