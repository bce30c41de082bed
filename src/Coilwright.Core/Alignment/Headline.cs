using System.Collections.Immutable;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Alignment;

/// <summary>The headline: of the length of groups that lies over anything, the share that lies over a group of its own kind; and the pairs.</summary>
internal sealed class Headline
{
    private readonly GroupStretches _groups;
    private readonly Lie _lie;
    private readonly GroupBlocks _blocks;
    private readonly VisibleRow _row;
    private readonly ReckoningChoices _choices;
    private readonly Sums _exact = new(), _averaged = new();

    public Headline(GroupStretches groups, Wishes wishes, Lie lie, List<(double From, double To)> hidden, double averagingMm, ReckoningChoices choices)
    {
        _groups = groups;
        _lie = lie;
        _choices = choices;
        _blocks = new GroupBlocks(groups, wishes, lie);
        _row = new VisibleRow(_blocks.Lengths.Length + 8);
        _row.Lay(_blocks.Lengths, _blocks.Tags, hidden);

        var own = new double[_blocks.Lengths.Length];
        var over = new double[_blocks.Lengths.Length];
        _row.EachOverAt(lie.WirePerTurnMm, (i, j, shared) =>
        {
            over[_row.Tag[i]] += shared;
            if (OwnKind(_row.Tag[i], _row.Tag[j])) own[_row.Tag[i]] += shared;
        });
        Add(_exact, own, over);
        Array.Clear(own);
        Array.Clear(over);
        _row.OverAveragedByTag(lie.WirePerTurnMm, averagingMm, OwnKind, own, over);
        Add(_averaged, own, over);
    }

    public double? Exact => _exact.Cover(null, LeastMm);

    public double? Averaged => _averaged.Cover(null, LeastMm);

    /// <summary>Whether what should mix lines up, or what should stand in columns does not.</summary>
    public bool FailsWish =>
        _averaged.Cover(LiningUpWish.Mix, LeastMm) >= _choices.LinesUpFrom || _averaged.Cover(LiningUpWish.Columns, LeastMm) < _choices.LinesUpFrom;

    private double LeastMm => _choices.LeastOverShare * _lie.WirePerTurnMm;

    public string WhyNull(Lie lie, bool averaged)
    {
        var sums = averaged ? _averaged : _exact;
        return _groups.Runs.IsEmpty ? "no-groups" : sums.Any == 0 ? "nothing-over" : sums.Any < LeastMm ? "too-little-over" : "no-group-over";
    }

    /// <summary>Groups over their own kind, nearest to square first.</summary>
    public ImmutableArray<LiningUpPair> Pairs()
    {
        var shares = new Dictionary<(int A, int B), (double Shared, double From)>();
        var shift = _lie.WirePerTurnMm;
        _row.EachOverAt(shift, (i, j, shared) =>
        {
            if (!OwnKind(_row.Tag[i], _row.Tag[j])) return;
            var key = (_blocks.RunOf[_row.Tag[i]], _blocks.RunOf[_row.Tag[j]]);
            shares[key] = shares.TryGetValue(key, out var sum)
                ? (sum.Shared + shared, sum.From)
                : (shared, Math.Max(_row.From[i] + shift, _row.From[j]));
        });
        var pairs = new List<LiningUpPair>(shares.Count);
        foreach (var ((a, b), (shared, from)) in shares)
        {
            var (one, other) = (_groups.Runs[a], _groups.Runs[b]);
            double middleA = Middle(one.First, one.End), middleB = Middle(other.First, other.End);
            pairs.Add(new LiningUpPair(one.Name, one.First, one.Count, other.First, other.Count, _lie.TurnAt(middleA), _lie.TurnAt(middleB),
                _lie.AngleDegAt(from + shared / 2), middleB - middleA - shift, shared, from));
        }
        return [.. pairs.OrderBy(p => Math.Abs(p.OffSquareMm)).ThenBy(p => p.FirstA).ThenBy(p => p.FirstB)];
    }

    private double Middle(int first, int end) => (_lie.StartsMm[first] + (end < _lie.Count ? _lie.StartsMm[end] : _lie.BeadedMm)) / 2;

    private bool OwnKind(int a, int b)
    {
        int runA = _blocks.RunOf[a], runB = _blocks.RunOf[b];
        return runA >= 0 && runB >= 0 && _groups.NameOfRun[runA] == _groups.NameOfRun[runB];
    }

    private void Add(Sums sums, double[] own, double[] over)
    {
        for (var b = 0; b < own.Length; b++)
        {
            sums.Any += over[b];
            if (_blocks.RunOf[b] < 0) continue;
            sums.Own[(int)_blocks.WishOf[b]] += own[b];
            sums.Over[(int)_blocks.WishOf[b]] += over[b];
        }
    }

    private sealed class Sums
    {
        public readonly double[] Own = new double[3], Over = new double[3];
        public double Any;

        /// <summary>Cover under one wish or, for null, under all; null when too little lies over anything.</summary>
        public double? Cover(LiningUpWish? wish, double leastMm)
        {
            var over = wish is { } w ? Over[(int)w] : Over.Sum();
            var own = wish is { } v ? Own[(int)v] : Own.Sum();
            return Any < leastMm || over <= 0 ? null : own / over;
        }
    }
}
