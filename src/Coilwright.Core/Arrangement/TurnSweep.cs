using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>One pass along the wire at given prices of beads: for every choice of about a turn's counts the cheapest way to come to it.</summary>
internal sealed class TurnSweep
{
    private readonly GapProblem _problem;
    private readonly int[] _ways;
    private readonly int _memory;
    private readonly Cut[][] _ending;
    private readonly byte[]?[] _came;

    public TurnSweep(GapProblem problem, int mostStates)
    {
        _problem = problem;
        _ways = [.. problem.Gaps.Select(g => g.Most - g.Least + 1)];
        var longest = problem.Windows.IsEmpty ? 1 : problem.Windows.Max(w => w.End - w.First);
        _memory = Math.Max(1, longest - 1);
        while (_memory > 1 && MostStates(_memory) > mostStates) _memory--;
        IsExact = _memory >= longest - 1;
        _ending = [.. Enumerable.Range(0, problem.Count).Select(g => problem.Windows.Where(w => w.End == g + 1).Select(w => CutTo(w, _memory + 1)).ToArray())];
        _came = new byte[]?[problem.Count];
    }

    /// <summary>For each gap how many counts it may have.</summary>
    public ReadOnlySpan<int> Ways => _ways;

    /// <summary>How many gaps, the latest one with them, are remembered.</summary>
    public int Memory => _memory;

    /// <summary>Whether as many gaps are remembered as decide anything together, so that nothing is taken at better than it is.</summary>
    public bool IsExact { get; }

    /// <summary>Steps taken by the last run.</summary>
    public long Steps { get; private set; }

    /// <summary>The windows whose last gap is this one.</summary>
    public ReadOnlySpan<Cut> Ending(int gap) => _ending[gap];

    // The most states that so many neighbouring gaps have.
    private double MostStates(int gaps)
    {
        double most = 0;
        for (var g = 0; g < _ways.Length; g++)
        {
            double states = 1;
            for (var i = g; i < Math.Min(_ways.Length, g + gaps); i++) states *= _ways[i];
            most = Math.Max(most, states);
        }
        return most;
    }

    // A window that reaches further back than is remembered: its earliest gaps are taken at their best.
    private Cut CutTo(GapWindow window, int gaps)
    {
        if (window.End - window.First <= gaps) return new Cut(window.First, window.Strides, [.. window.Loss]);
        var first = window.End - gaps;
        var most = new int[window.Strides.Length];
        for (var g = window.First; g < first; g++) most[_problem.Kinds[g]] += _ways[g] - 1;
        double[] loss = [.. window.Loss];
        // One kind after another: the least over a box is the least over its sides in turn. A key beyond the box means counts that no gap can have.
        for (var k = 0; k < most.Length; k++)
        {
            if (most[k] == 0) continue;
            var before = loss.AsSpan().ToArray();
            for (var key = 0; key < loss.Length; key++)
                for (var more = 1; more <= most[k] && key + more * window.Strides[k] < loss.Length; more++)
                    loss[key] = Math.Min(loss[key], before[key + more * window.Strides[k]]);
        }
        return new Cut(first, window.Strides, loss);
    }

    /// <summary>Goes along the wire.</summary>
    /// <param name="prices">For each kind the price of one bead more.</param>
    /// <param name="cancel">Stops it.</param>
    /// <param name="kept">Takes for each gap what the cheapest way to each choice of the remembered gaps costs, prices and all; null when nobody asks.</param>
    /// <returns>The cheapest counts and what they cost; null when it was stopped.</returns>
    public (double Priced, ImmutableArray<int> Counts)? Run(double[] prices, CancellationToken cancel, double[][]? kept = null)
    {
        var (n, kinds) = (_problem.Count, _problem.Kinds);
        double[] before = [_problem.Fixed];
        Steps = 0;
        for (var g = 0; g < n; g++)
        {
            if (cancel.IsCancellationRequested) return null;
            // The state holds the gaps from first on; the oldest is forgotten once as many as are remembered stand after it.
            var first = Math.Max(0, g - _memory);
            var drops = g - first == _memory;
            var (oldest, ways) = (drops ? _ways[first] : 1, _ways[g]);
            var rest = before.Length / oldest;
            var after = new double[rest * ways];
            var came = _came[g] ??= new byte[after.Length];
            Array.Fill(after, double.PositiveInfinity);
            var restFirst = drops ? first + 1 : first;
            var digits = new int[g - restFirst];
            var ending = _ending[g];
            var keys = new int[ending.Length];
            var (strideOld, strideNew) = (new int[ending.Length], new int[ending.Length]);
            for (var w = 0; w < ending.Length; w++)
                (strideOld[w], strideNew[w]) = (drops && ending[w].First <= first ? ending[w].Strides[kinds[first]] : 0, ending[w].Strides[kinds[g]]);
            var losses = Array.ConvertAll(ending, cut => cut.Loss);
            var (own, row) = (new double[ways], new double[ways]);
            for (var c = 0; c < ways; c++) own[c] = prices[kinds[g]] * (_problem.Gaps[g].Least + c - _problem.Start[g]);
            for (var r = 0; r < rest; r++)
            {
                var to = after.AsSpan(r * ways, ways);
                for (var d = 0; d < oldest; d++)
                {
                    own.CopyTo(row, 0);
                    for (var w = 0; w < losses.Length; w++)
                    {
                        var (loss, key, stride) = (losses[w], keys[w] + d * strideOld[w], strideNew[w]);
                        for (var c = 0; c < row.Length; c++, key += stride) row[c] += loss[key];
                    }
                    var so = before[d * rest + r];
                    for (var c = 0; c < row.Length; c++)
                        if (so + row[c] is var loss && loss < to[c]) (to[c], came[r * ways + c]) = (loss, (byte)d);
                }
                Next(digits, restFirst, keys, ending);
            }
            Steps += (long)rest * oldest * ways;
            before = after;
            if (kept is not null) kept[g] = after;
        }
        var best = 0;
        for (var s = 1; s < before.Length; s++)
            if (before[s] < before[best]) best = s;
        var counts = new int[n];
        for (int g = n - 1, state = best; g >= 0; g--)
        {
            counts[g] = _problem.Gaps[g].Least + state % _ways[g];
            var r = state / _ways[g];
            var first = Math.Max(0, g - _memory);
            var rest = 1;
            for (var i = g - first == _memory ? first + 1 : first; i < g; i++) rest *= _ways[i];
            state = _came[g]![state] * rest + r;
        }
        return (before[best], [.. counts]);
    }

    // The next choice of the remembered gaps, the latest running fastest, and the keys that go with it.
    private void Next(int[] digits, int first, int[] keys, Cut[] ending)
    {
        for (var i = digits.Length - 1; i >= 0; i--)
        {
            var kind = _problem.Kinds[first + i];
            var by = digits[i] + 1 < _ways[first + i] ? 1 : -digits[i];
            digits[i] += by;
            for (var w = 0; w < keys.Length; w++)
                if (ending[w].First <= first + i) keys[w] += by * ending[w].Strides[kind];
            if (by == 1) return;
        }
    }

    internal sealed record Cut(int First, ImmutableArray<int> Strides, double[] Loss);
}
