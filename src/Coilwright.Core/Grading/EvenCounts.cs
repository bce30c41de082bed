using Coilwright.Core.Arrangement;

namespace Coilwright.Core.Grading;

/// <summary>Counts that change the length by so much and spread what is added or taken over all runs as evenly as can be.</summary>
/// <remarks>Least is the sum of squares of what each run changes by, in mm, less its even part. Within a kind the cost is convex in each run, so beads go one by
/// one to where the next costs least; kinds are then put together by a table over lengths, which are told apart by a twentieth of a millimetre (more only
/// where runs may change by metres).</remarks>
internal static class EvenCounts
{
    // A hundredth of what the ends may differ by, and less than any bead.
    private const double BinMm = 0.05;

    private const int MostBins = 20_000;

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
        var bin = Math.Max(BinMm, kinds.Sum(k => (k.Costs.Length - 1) * problem.StepMm[k.Index]) / MostBins);
        var states = new Dictionary<long, State> { [0] = new(0, 0, null, 0) };
        foreach (var kind in kinds)
        {
            var next = new Dictionary<long, State>();
            foreach (var state in states.Values)
                for (var total = 0; total < kind.Costs.Length && kind.More(total) <= problem.MostMoreOfKind[kind.Index]; total++)
                {
                    if (double.IsPositiveInfinity(kind.Costs[total])) continue;
                    var (length, cost) = (state.LengthMm + kind.More(total) * problem.StepMm[kind.Index], state.Cost + kind.Costs[total]);
                    var at = (long)Math.Round(length / bin);
                    if (!next.TryGetValue(at, out var there) || cost < there.Cost - 1e-9) next[at] = new State(length, cost, state, total);
                }
            states = next;
        }
        if (states.Count == 0) return null;
        var best = states.Values.MinBy(s => Math.Abs(s.LengthMm - moreMm) is var off && off <= withinMm ? (0, s.Cost + off * off, s.LengthMm) : (1, off, s.LengthMm));
        var counts = new int[problem.Count];
        for (var k = kinds.Length - 1; k >= 0; k--)
        {
            kinds[k].Write(best!.Total, counts);
            best = best.Before;
        }
        return counts;
    }

    // So many beads of the kinds so far.
    private sealed record State(double LengthMm, double Cost, State? Before, int Total);

    // The runs of one kind, those tied to each other as one: for each number of beads above the fewest, the least that it costs to place them.
    private sealed class Kind
    {
        // A run stands alone, or is tied to the one that mirrors it; then each bead more is one in both.
        private const int Pair = 2;

        private readonly int _fewest;
        private readonly Placing _alone, _tied;
        private readonly int[] _tiedOfTotal;

        public Kind(GapProblem problem, int index, double shareMm)
        {
            Index = index;
            var classes = Enumerable.Range(0, problem.Count).Where(g => problem.Kinds[g] == index && problem.TiedTo[g] == g)
                .Select(g => Enumerable.Range(g, problem.Count - g).Where(o => problem.TiedTo[o] == g).ToArray()).ToArray();
            _fewest = classes.Sum(c => c.Length * (problem.Gaps[c[0]].Least - problem.Start[c[0]]));
            _alone = new Placing(problem, [.. classes.Where(c => c.Length < Pair)], problem.StepMm[index], shareMm);
            _tied = new Placing(problem, [.. classes.Where(c => c.Length == Pair)], problem.StepMm[index], shareMm);
            Costs = new double[_alone.Costs.Count + Pair * (_tied.Costs.Count - 1)];
            _tiedOfTotal = new int[Costs.Length];
            Array.Fill(Costs, double.PositiveInfinity);
            for (var tied = 0; tied < _tied.Costs.Count; tied++)
                for (var alone = 0; alone < _alone.Costs.Count; alone++)
                    if (_alone.Costs[alone] + _tied.Costs[tied] is var cost && cost < Costs[alone + Pair * tied])
                        (Costs[alone + Pair * tied], _tiedOfTotal[alone + Pair * tied]) = (cost, tied);
        }

        public int Index { get; }

        /// <summary>The cost by beads above the fewest; infinite where so many cannot be placed.</summary>
        public double[] Costs { get; }

        public int More(int total) => _fewest + total;

        public void Write(int total, int[] counts)
        {
            _tied.Write(_tiedOfTotal[total], counts);
            _alone.Write(total - Pair * _tiedOfTotal[total], counts);
        }
    }

    // Beads put one by one to where the next costs least.
    private sealed class Placing
    {
        private readonly GapProblem _problem;
        private readonly int[][] _classes;
        private readonly List<int> _placed = [];

        public Placing(GapProblem problem, int[][] classes, double stepMm, double shareMm)
        {
            (_problem, _classes) = (problem, classes);
            var waiting = new PriorityQueue<(int Class, int Beads), (double, double)>();
            for (var c = 0; c < classes.Length; c++) Wait(c, 1);
            var cost = classes.Select((_, c) => classes[c].Length * Square(c, 0)).Sum();
            Costs.Add(cost);
            while (waiting.TryDequeue(out var next, out _))
            {
                cost += classes[next.Class].Length * (Square(next.Class, next.Beads) - Square(next.Class, next.Beads - 1));
                Costs.Add(cost);
                _placed.Add(next.Class);
                Wait(next.Class, next.Beads + 1);
            }

            void Wait(int c, int beads)
            {
                var gap = problem.Gaps[classes[c][0]];
                if (gap.Least + beads <= gap.Most) waiting.Enqueue((c, beads), (Math.Round(Square(c, beads) - Square(c, beads - 1), 9), (c + 1) * GoldenShare % 1));
            }

            double Square(int c, int beads)
            {
                var gap = problem.Gaps[classes[c][0]];
                var off = (gap.Least + beads - gap.Count) * stepMm - shareMm;
                return off * off;
            }
        }

        /// <summary>The cost by how many were placed.</summary>
        public List<double> Costs { get; } = [];

        public void Write(int total, int[] counts)
        {
            foreach (var members in _classes)
                foreach (var gap in members) counts[gap] = _problem.Gaps[gap].Least;
            foreach (var placed in _placed.Take(total))
                foreach (var gap in _classes[placed]) counts[gap]++;
        }
    }
}
