using System.Numerics;

namespace Coilwright.Core.Cutting;

/// <summary>A cutting problem as the search sees it: items longest first, what a cut takes away added to each and to each bar, lengths and costs without their common
/// factor, bars that can hold nothing left out.</summary>
internal sealed class ScaledProblem
{
    private readonly int[] _items, _bars;
    private readonly long _costUnit;

    public ScaledProblem(CuttingProblem problem)
    {
        _items = [.. Enumerable.Range(0, problem.Items.Length).Where(i => Enumerable.Range(0, problem.Bars.Length).Any(b => problem.Bars[b].Count != 0 && problem.Fits(b, i)))
            .OrderByDescending(i => problem.Items[i].Length).ThenBy(i => i)];
        _bars = [.. Enumerable.Range(0, problem.Bars.Length).Where(b => problem.Bars[b].Count != 0 && _items.Any(i => problem.Fits(b, i)))];
        var unit = _items.Aggregate(0, (g, i) => (int)BigInteger.GreatestCommonDivisor(g, problem.Items[i].Length + problem.Loss));
        Length = [.. _items.Select(i => (problem.Items[i].Length + problem.Loss) / unit)];
        Missing = [.. _items.Select(i => (long)problem.Items[i].Length)];
        Demand = [.. _items.Select(i => problem.Items[i].Count)];
        _costUnit = Math.Max(1, _bars.Aggregate(0L, (g, b) => (long)BigInteger.GreatestCommonDivisor(g, problem.Bars[b].Cost)));
        BarLength = [.. _bars.Select(b => (problem.Bars[b].Length + problem.Loss) / Math.Max(1, unit))];
        BarCost = [.. _bars.Select(b => problem.Bars[b].Cost / _costUnit)];
        // A bar holds a piece at least, so more bars than pieces are as many as it takes.
        var pieces = Demand.Sum();
        BarCount = [.. _bars.Select(b => Math.Min(problem.Bars[b].Count ?? pieces, pieces))];
        Unlimited = [.. BarCount.Select(n => n >= pieces)];
        May = [.. _bars.Select(b => _items.Select(i => problem.Fits(b, i)).ToArray())];
    }

    /// <summary>Length of each item with its cut, longest first.</summary>
    public int[] Length { get; }

    /// <summary>What one of each item counts when it is missing: its length.</summary>
    public long[] Missing { get; }

    /// <summary>How many of each are wanted.</summary>
    public int[] Demand { get; }

    public int[] BarLength { get; }

    public long[] BarCost { get; }

    public int[] BarCount { get; }

    /// <summary>Whether there are as many of a bar as there are pieces, so as many as can be of use.</summary>
    public bool[] Unlimited { get; }

    /// <summary>Which item may be cut from which bar.</summary>
    public bool[][] May { get; }

    public int Items => Length.Length;

    public int Bars => BarLength.Length;

    /// <summary>A cost as it was given.</summary>
    public long CostOf(long scaled) => scaled * _costUnit;

    /// <summary>The way to cut in terms of the problem as it was given.</summary>
    public CuttingSolution Unscaled(CuttingProblem problem, FilledBars found, long bound, long missingBound, bool wasStopped, long nodes)
    {
        var patterns = found.Bars.GroupBy(f => (f.Bar, Key: string.Join(',', f.Counts))).Select(g =>
        {
            var counts = new int[problem.Items.Length];
            for (var i = 0; i < _items.Length; i++) counts[_items[i]] = g.First().Counts[i];
            return new CutPattern(_bars[g.Key.Bar], [.. counts], g.Sum(f => f.Times));
        });
        int[] missing = [.. problem.Items.Select(i => i.Count)];
        for (var i = 0; i < _items.Length; i++) missing[_items[i]] = found.Left[i];
        long never = 0, length = 0;
        for (var i = 0; i < missing.Length; i++)
        {
            if (!_items.Contains(i)) never += (long)missing[i] * problem.Items[i].Length;
            length += (long)missing[i] * problem.Items[i].Length;
        }
        return new CuttingSolution([.. patterns], [.. missing], CostOf(found.Cost), CostOf(bound), length, missingBound + never, wasStopped, nodes);
    }
}

/// <summary>A filling of one bar, so many times.</summary>
internal readonly record struct FilledBar(int Bar, int[] Counts, int Times);

/// <summary>A way to cut, perhaps with something left over that is not cut.</summary>
/// <param name="Bars">The bars.</param>
/// <param name="Left">How many of each item are not cut.</param>
/// <param name="Cost">Cost of the bars.</param>
/// <param name="MissingLength">Length of what is not cut.</param>
internal sealed record FilledBars(IReadOnlyList<FilledBar> Bars, int[] Left, long Cost, long MissingLength);
