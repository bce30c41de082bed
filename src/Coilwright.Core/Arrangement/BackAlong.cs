using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>Goes from the end of the wire back to its start by every way that could still be better than the best known: what is left when it is done is the best there is.</summary>
/// <remarks>A sweep along the wire tells what the cheapest way to every choice of a turn's counts costs at some prices of length and beads. Going back, a way is left when what it has
/// cost and what is still to come cannot be better, or when no counts of what is to come can keep length and stock; of two ways to the same choice with the same beads after it
/// the dearer is left. Where the prices are good little is left to go through. Ties between gaps are not known here.</remarks>
internal sealed class BackAlong
{
    // What is kept of a sweep, 128 MB of it, and of ways gone back, a like amount.
    private const long MostKept = 1 << 24;
    private const int MostWays = 1 << 21;

    private readonly GapProblem _problem;
    private readonly TurnSweep _sweep;
    private readonly double[] _prices;
    private readonly double _allowance;
    private readonly long[] _radix;
    private readonly long _states;

    /// <summary>Prepares it.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="sweep">Its sweep.</param>
    /// <param name="prices">For each kind the price of one bead more.</param>
    /// <param name="allowance">What the prices allow for what is allowed: the loss of allowed counts is at least what they cost less this.</param>
    public BackAlong(GapProblem problem, TurnSweep sweep, double[] prices, double allowance)
    {
        (_problem, _sweep, _prices, _allowance) = (problem, sweep, prices, allowance);
        // A choice of a turn's counts and the beads of each kind after it make one number.
        _radix = new long[problem.StepMm.Length + 1];
        _states = 1;
        for (var g = 0; g < problem.Count; g++)
        {
            double states = 1;
            for (var i = Math.Max(0, g - sweep.Memory + 1); i <= g; i++) states *= sweep.Ways[i];
            _states = Math.Max(_states, (long)Math.Min(states, MostKept + 1.0));
        }
        _radix[0] = _states;
        double keys = _states;
        for (var k = 0; k < problem.StepMm.Length; k++)
        {
            long most = 1;
            for (var g = 0; g < problem.Count; g++)
                if (problem.Kinds[g] == k) most += sweep.Ways[g] - 1;
            keys *= most;
            _radix[k + 1] = keys < long.MaxValue / 4 ? _radix[k] * most : 0;
        }
    }

    private bool CanRun
    {
        get
        {
            // What counts have to keep beside length and stock is not in what is kept of a way: the dearer of two may be the one that keeps it.
            if (!_sweep.IsExact || !_problem.Also.IsEmpty || _radix[^1] == 0 || _states * _problem.Count > MostKept) return false;
            for (var g = 0; g < _problem.Count; g++)
                if (_problem.TiedTo[g] != g) return false;
            return true;
        }
    }

    /// <summary>Goes back.</summary>
    /// <param name="known">A loss that is reached.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>The best counts and their loss, null counts where nothing is better than what is known; null as a whole when it was not gone through to the end.</returns>
    public (ImmutableArray<int>? Counts, double Loss, long Looked)? Run(double known, CancellationToken cancel)
    {
        if (!CanRun) return null;
        var (n, kinds) = (_problem.Count, _problem.StepMm.Length);
        var kept = new double[n][];
        if (_sweep.Run(_prices, cancel, kept) is null) return null;
        var (leastMm, mostMm) = (new double[n + 1], new double[n + 1]);
        var leastOfKind = new int[n + 1][];
        leastOfKind[0] = new int[kinds];
        for (var g = 0; g < n; g++)
        {
            var gap = _problem.Gaps[g];
            var step = _problem.StepMm[_problem.Kinds[g]];
            (leastMm[g + 1], mostMm[g + 1]) = (leastMm[g] + (gap.Least - gap.Count) * step, mostMm[g] + (gap.Most - gap.Count) * step);
            leastOfKind[g + 1] = [.. leastOfKind[g]];
            leastOfKind[g + 1][_problem.Kinds[g]] += gap.Least - gap.Count;
        }

        var ways = new List<Way>();
        var (best, bestLoss, looked) = ((ImmutableArray<int>?)null, known, (long)kept.Sum(k => k.Length));
        var (from, at) = (0, new Dictionary<long, int>());
        for (var s = 0; s < kept[n - 1].Length; s++)
            if (kept[n - 1][s] - _allowance < bestLoss - FoundCounts.Rounding) ways.Add(new Way(s, 0, 0, -1));
        for (var g = n - 1; ; g--)
        {
            if (g < _sweep.Memory)
            {
                // Every gap up to here is in the choice itself.
                for (var w = from; w < ways.Count; w++)
                {
                    if (kept[g][ways[w].State] + ways[w].Cost - _allowance >= bestLoss - FoundCounts.Rounding) continue;
                    var counts = CountsOf(ways, w, g);
                    if (_problem.Allows(counts) && _problem.Loss(counts) is var loss && loss < bestLoss - FoundCounts.Rounding) (best, bestLoss) = ([.. counts], loss);
                }
                return (best, bestLoss, looked + ways.Count);
            }
            var (first, to) = (g - _sweep.Memory, ways.Count);
            var (oldest, rest, kind) = (_sweep.Ways[first], kept[g].Length / _sweep.Ways[g], _problem.Kinds[g]);
            var ending = _sweep.Ending(g);
            double leastEnding = 0;
            foreach (var cut in ending) leastEnding += cut.Loss.Min();
            at.Clear();
            for (var w = from; w < to; w++)
            {
                if ((w & 0xFFF) == 0 && cancel.IsCancellationRequested) return null;
                var way = ways[w];
                var (newest, r) = (way.State % _sweep.Ways[g], way.State / _sweep.Ways[g]);
                var beads = way.Beads + newest * _radix[kind];
                if (!CanKeep(beads, leastMm[g], mostMm[g], leastOfKind[g], leastOfKind[n])) continue;
                var cost = way.Cost + _prices[kind] * (_problem.Gaps[g].Least + newest - _problem.Start[g]);
                for (var d = 0; d < oldest; d++)
                {
                    var state = d * rest + r;
                    var before = kept[g - 1][state];
                    // First with the windows at their best.
                    if (before + cost + leastEnding - _allowance >= bestLoss - FoundCounts.Rounding) continue;
                    var so = cost;
                    foreach (var cut in ending) so += cut.Loss[KeyOf(cut, g, d, r, newest)];
                    if (before + so - _allowance >= bestLoss - FoundCounts.Rounding) continue;
                    var next = new Way(state, beads, so, w);
                    if (!at.TryGetValue(beads + state, out var same))
                    {
                        if (ways.Count == MostWays) return null;
                        at[beads + state] = ways.Count;
                        ways.Add(next);
                    }
                    else if (so < ways[same].Cost)
                    {
                        ways[same] = next;
                    }
                }
            }
            from = to;
        }
    }

    // Whether gaps before this one can still make length and stock come out.
    private bool CanKeep(long beads, double leastMm, double mostMm, int[] leastBefore, int[] leastOfAll)
    {
        double mm = 0;
        for (var k = 0; k < leastBefore.Length; k++)
        {
            var more = (int)(beads % _radix[k + 1] / _radix[k]) + leastOfAll[k] - leastBefore[k];
            mm += more * _problem.StepMm[k];
            if (_problem.MostMoreOfKind[k] != int.MaxValue && more + leastBefore[k] > _problem.MostMoreOfKind[k]) return false;
        }
        // A hair of room for rounding; whoever comes through is asked in full.
        return mm + mostMm >= -_problem.ShorterMm - 1e-6 && mm + leastMm <= _problem.LongerMm + 1e-6;
    }

    private int KeyOf(TurnSweep.Cut cut, int g, int oldest, int rest, int newest)
    {
        var key = newest * cut.Strides[_problem.Kinds[g]];
        for (var i = g - 1; i > g - _sweep.Memory; i--)
        {
            if (i < cut.First) return key;
            key += rest % _sweep.Ways[i] * cut.Strides[_problem.Kinds[i]];
            rest /= _sweep.Ways[i];
        }
        return g - _sweep.Memory >= cut.First ? key + oldest * cut.Strides[_problem.Kinds[g - _sweep.Memory]] : key;
    }

    private int[] CountsOf(List<Way> ways, int w, int g)
    {
        var counts = new int[_problem.Count];
        for (var (i, state) = (g, ways[w].State); i >= 0; state /= _sweep.Ways[i], i--) counts[i] = _problem.Gaps[i].Least + state % _sweep.Ways[i];
        for (var later = ways[w].Came; later >= 0; later = ways[later].Came)
        {
            g++;
            counts[g] = _problem.Gaps[g].Least + ways[later].State % _sweep.Ways[g];
        }
        return counts;
    }

    // A way from the end: the choice of the remembered gaps that it stands at, the beads of each kind after them above the fewest (times their radix), what it has cost, and the way it
    // came from.
    private readonly record struct Way(int State, long Beads, double Cost, int Came);
}
