using System.Collections.Immutable;

namespace Coilwright.Core.Making;

/// <summary>Says a row of beads in the fewest words: what repeats is said once.</summary>
/// <remarks>
/// <para>The cost of a saying is what there is to read and hold in mind: a count and a letter are two, each join one, "n times ( )" two and "with ... between"
/// two, both of them one more inside another repeat. Repeats stand in repeats at most once: deeper is shorter and no longer clear. Our choice.</para>
/// <para>Among rows of at most <see cref="WholeRuns"/> runs no saying of these forms is cheaper (a table over all stretches of the row, every way to part them and every period); of
/// equal ones the one with fewer parts, then that which parts earliest. Longer rows are first parted where their longest repeats begin and end, each then said as said here:
/// short of the shortest, never wrong.</para>
/// </remarks>
internal static class ShortestSaying
{
    /// <summary>Runs up to which the shortest saying is found: a row of one turn in small beads that repeat nowhere. Our choice: the table grows as its cube.</summary>
    public const int WholeRuns = 160;

    private const int RunCost = 2, JoinCost = 1, RepeatCost = 2, BetweenCost = 2, InnerCost = 1, Depths = 3, MostBetween = 3;

    /// <summary>The parts that say a row.</summary>
    public static ImmutableArray<StepPart> Of(ReadOnlySpan<int> kinds)
    {
        var runs = Runs(kinds);
        return runs.Length <= WholeRuns ? new Table(runs).Parts() : Long(runs);
    }

    private static RunPart[] Runs(ReadOnlySpan<int> kinds)
    {
        var runs = new List<RunPart>();
        foreach (var kind in kinds)
            if (runs.Count > 0 && runs[^1].Kind == kind) runs[^1] = new RunPart(kind, runs[^1].Count + 1);
            else runs.Add(new RunPart(kind, 1));
        return [.. runs];
    }

    private static ImmutableArray<StepPart> Long(RunPart[] runs)
    {
        var parts = ImmutableArray.CreateBuilder<StepPart>();
        var plain = 0;
        for (var at = 0; at < runs.Length;)
        {
            var (unit, times) = LongestRepeat(runs, at);
            if (times > 1 && unit * times > 2)
            {
                Plain(plain, at);
                parts.Add(new RepeatPart(new Table(runs[at..(at + unit)], deepest: Depths - 1).Parts(), times));
                at = plain = at + unit * times;
            }
            else at++;
        }
        Plain(plain, runs.Length);
        return parts.ToImmutable();

        void Plain(int from, int to)
        {
            for (; from < to; from += WholeRuns) parts.AddRange(new Table(runs[from..Math.Min(to, from + WholeRuns)]).Parts());
        }
    }

    // The repeat that covers most from here on; of two that cover alike, the shorter unit.
    private static (int Unit, int Times) LongestRepeat(RunPart[] runs, int from)
    {
        (int Unit, int Times) best = (1, 1);
        for (var unit = 2; unit <= Math.Min(WholeRuns, (runs.Length - from) / 2); unit++)
        {
            var same = 0;
            while (from + unit + same < runs.Length && runs[from + same] == runs[from + unit + same]) same++;
            var times = 1 + same / unit;
            if (times > 1 && unit * times > best.Unit * best.Times) best = (unit, times);
        }
        return best;
    }

    // How a stretch is best said: as one part (Period runs each time; or beads with Period - 1 runs between) or parted in two.
    private enum How : byte { Run, Parted, Repeat, Between }

    private readonly record struct Best(int Cost, int Parts, How How, int By);

    // best[depth, from, to): depth repeats may still be opened inside.
    private sealed class Table
    {
        private readonly RunPart[] _runs;
        private readonly int _n, _deepest;
        private readonly int[,] _alike;
        private readonly Best[,,] _best;

        public Table(RunPart[] runs, int deepest = Depths)
        {
            (_runs, _n, _deepest) = (runs, runs.Length, deepest - 1);
            _alike = new int[_n + 1, _n + 1];
            for (var i = _n - 1; i >= 0; i--)
                for (var j = _n - 1; j > i; j--)
                    _alike[i, j] = runs[i] == runs[j] ? 1 + _alike[i + 1, j + 1] : 0;
            _best = new Best[deepest, _n, _n + 1];
            for (var depth = 0; depth < deepest; depth++)
                for (var length = 1; length <= _n; length++)
                    for (var from = 0; from + length <= _n; from++) _best[depth, from, from + length] = Cheapest(depth, from, from + length);
        }

        public ImmutableArray<StepPart> Parts()
        {
            var parts = ImmutableArray.CreateBuilder<StepPart>();
            Say(_deepest, 0, _n, parts);
            return parts.ToImmutable();
        }

        private Best Cheapest(int depth, int from, int to)
        {
            var length = to - from;
            if (length == 1) return new Best(RunCost, 1, How.Run, 0);
            var best = new Best(int.MaxValue, int.MaxValue, How.Parted, 0);
            if (depth > 0)
            {
                var inner = depth < _deepest ? InnerCost : 0;
                for (var period = 2; period <= length / 2; period++)
                {
                    var alike = _alike[from, from + period];
                    if (length % period == 0 && alike >= length - period)
                        best = Lesser(best, new Best(_best[depth - 1, from, from + period].Cost + RepeatCost + inner, 1, How.Repeat, period));
                    if (length % period == 1 && period - 1 <= MostBetween && alike >= length - period && _runs[from].Count == 1)
                        best = Lesser(best, new Best(RunCost + BetweenCost + inner + (period - 1) * (RunCost + JoinCost) - JoinCost, 1, How.Between, period));
                }
                // Three runs are the least that "with ... between" can say: two beads and what is between them, no shorter than said plainly.
            }
            for (var part = from + 1; part < to; part++)
            {
                var (first, rest) = (_best[depth, from, part], _best[depth, part, to]);
                best = Lesser(best, new Best(first.Cost + JoinCost + rest.Cost, first.Parts + rest.Parts, How.Parted, part));
            }
            return best;
        }

        private static Best Lesser(Best one, Best other) => (other.Cost, other.Parts).CompareTo((one.Cost, one.Parts)) < 0 ? other : one;

        private void Say(int depth, int from, int to, ImmutableArray<StepPart>.Builder parts)
        {
            var best = _best[depth, from, to];
            switch (best.How)
            {
                case How.Run:
                    parts.Add(_runs[from]);
                    break;
                case How.Parted:
                    Say(depth, from, best.By, parts);
                    Say(depth, best.By, to, parts);
                    break;
                case How.Repeat:
                    var once = ImmutableArray.CreateBuilder<StepPart>();
                    Say(depth - 1, from, from + best.By, once);
                    parts.Add(new RepeatPart(once.ToImmutable(), (to - from) / best.By));
                    break;
                case How.Between:
                    parts.Add(new BetweenPart(_runs[from].Kind, (to - from) / best.By + 1, [.. _runs[(from + 1)..(from + best.By)]]));
                    break;
            }
        }
    }
}
