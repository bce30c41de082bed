using System.Collections.Immutable;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Alignment;

/// <summary>The headline: of the length of groups that lies over anything, the share that lies over a group of its own kind; and the pairs.</summary>
internal sealed class Headline
{
    /// <summary>Less than this lies over each other only by rounding: no maker sees a thousandth of a hair.</summary>
    public const double NoLengthMm = 1e-6;

    private readonly GroupStretches _groups;
    private readonly Lie _lie;
    private readonly GroupBlocks _blocks;
    private readonly VisibleRow _row;
    private readonly ReckoningChoices _choices;
    private readonly double[] _seenMm = new double[GroupBlocks.NoGroup + 1];
    private readonly Sums _exact = new(), _averaged;

    /// <param name="groups">The groups.</param>
    /// <param name="wishes">The wishes.</param>
    /// <param name="lie">Where the beads lie.</param>
    /// <param name="hidden">What is hidden.</param>
    /// <param name="averagingMm">Half width of the averaging, mm; null where T is known, as of one draw: then what is averaged is what is exact.</param>
    /// <param name="choices">Our choices.</param>
    /// <param name="room">Room to lay blocks in.</param>
    public Headline(GroupStretches groups, Wishes wishes, Lie lie, List<(double From, double To)> hidden, double? averagingMm, ReckoningChoices choices,
        VisibleRow room)
    {
        _groups = groups;
        _lie = lie;
        _choices = choices;
        _blocks = new GroupBlocks(groups, wishes, lie);
        _row = room;
        _row.Lay(_blocks.Lengths.AsSpan(0, _blocks.Count), [], hidden);
        for (var i = 0; i < _row.Count; i++) _seenMm[_blocks.BinOf[_row.Tag[i]]] += _row.To[i] - _row.From[i];
        _row.OverAtByBin(lie.WirePerTurnMm, _blocks.NameOf, _blocks.BinOf, _exact.Own, _exact.Over);
        _averaged = averagingMm is null ? _exact : new Sums();
        if (averagingMm is { } half) _row.OverAveragedByBin(lie.WirePerTurnMm, half, _blocks.NameOf, _blocks.BinOf, _averaged.Own, _averaged.Over);
    }

    public double? Exact => Cover(_exact, null);

    public double? Averaged => Cover(_averaged, null);

    /// <summary>Averaged cover of the groups under one wish; null when none is, or too little of them lies over anything.</summary>
    public double? Under(LiningUpWish wish) => Cover(_averaged, wish);

    /// <summary>Whether what should mix lines up. What cannot be judged does not fail.</summary>
    public bool FailsMix => Under(LiningUpWish.Mix) >= _choices.LinesUpFrom;

    /// <summary>Whether what should stand in columns does not. What cannot be judged does not fail.</summary>
    public bool FailsColumns => Under(LiningUpWish.Columns) < _choices.LinesUpFrom;

    /// <summary>Of the visible length of groups with a wish, the share that lies against it, averaged: what should mix and lies over its own kind, and what
    /// should stand in columns and does not. Null when no group has a wish.</summary>
    public double? AgainstWish
    {
        get
        {
            var (mix, columns) = ((int)LiningUpWish.Mix, (int)LiningUpWish.Columns);
            var wished = _seenMm[mix] + _seenMm[columns];
            return wished < NoLengthMm ? null : (_averaged.Own[mix] + _seenMm[columns] - _averaged.Own[columns]) / wished;
        }
    }

    private double LeastMm => _choices.LeastOverShare * _lie.WirePerTurnMm;

    public string WhyNull(bool averaged)
    {
        var sums = averaged ? _averaged : _exact;
        return _groups.Runs.IsEmpty ? "no-groups" : sums.Any < NoLengthMm ? "nothing-over"
            : sums.Any < LeastMm || OfGroups(sums.Over) >= NoLengthMm ? "too-little-over" : "no-group-over";
    }

    /// <summary>Groups over their own kind, nearest to square first.</summary>
    public ImmutableArray<LiningUpPair> Pairs()
    {
        var found = new Dictionary<(int A, int B), (double[] ByWish, double From, double To)>();
        var shift = _lie.WirePerTurnMm;
        _row.EachOverAt(shift, (i, j, shared) =>
        {
            // What only touches, but for rounding, neither makes a pair nor stretches one.
            var name = _blocks.NameOf[_row.Tag[i]];
            if (shared < NoLengthMm || name < 0 || name != _blocks.NameOf[_row.Tag[j]]) return;
            var key = (_blocks.RunOf[_row.Tag[i]], _blocks.RunOf[_row.Tag[j]]);
            var to = Math.Min(_row.To[i] + shift, _row.To[j]);
            found[key] = found.TryGetValue(key, out var so)
                ? so with { To = to }
                : so = (new double[GroupBlocks.NoGroup], Math.Max(_row.From[i] + shift, _row.From[j]), to);
            so.ByWish[_blocks.BinOf[_row.Tag[i]]] += shared;
        });
        var pairs = new List<LiningUpPair>(found.Count);
        foreach (var ((a, b), (byWish, from, to)) in found)
        {
            var shared = byWish.Sum();
            var (one, other) = (_groups.Runs[a], _groups.Runs[b]);
            double middle = (from + to) / 2, middleA = Middle(one.First, one.End), middleB = Middle(other.First, other.End);
            // The turn of the place where they meet, not of their middles: two groups near the end of a row may have both middles on one turn.
            var turn = _lie.TurnAt(middle);
            // A group longer than a turn lies over itself: it has no other to be off square from.
            pairs.Add(new LiningUpPair(one.Name, one.First, one.Count, other.First, other.Count, turn - 1, turn,
                _lie.AngleDegAt(middle), a == b ? 0 : middleB - middleA - shift, shared, from, to)
            {
                Wish = (LiningUpWish)Array.IndexOf(byWish, byWish.Max()),
            });
        }
        // In a plain repeat all are equally far off but for rounding noise; what cannot be told apart stands in the order of the piece.
        return [.. pairs.OrderBy(p => Math.Round(Math.Abs(p.OffSquareMm), 6)).ThenBy(p => p.FirstA).ThenBy(p => p.FirstB)];
    }

    private double Middle(int first, int end) => (_lie.StartsMm[first] + (end < _lie.Count ? _lie.StartsMm[end] : _lie.BeadedMm)) / 2;

    // Null when too little lies over anything: of the piece, or of the groups asked about (a tenth of a turn, or of them where they are shorter).
    private double? Cover(Sums sums, LiningUpWish? wish)
    {
        double Of(double[] bins) => wish is { } w ? bins[(int)w] : OfGroups(bins);
        var over = Of(sums.Over);
        var least = _choices.LeastOverShare * Math.Min(_lie.WirePerTurnMm, Of(_seenMm));
        return sums.Any < LeastMm || over < Math.Max(least, NoLengthMm) ? null : Math.Min(1, Of(sums.Own) / over);
    }

    private static double OfGroups(double[] bins)
    {
        double sum = 0;
        for (var b = 0; b < GroupBlocks.NoGroup; b++) sum += bins[b];
        return sum;
    }

    // What lies over its own kind, and over anything, by bin.
    private sealed class Sums
    {
        public readonly double[] Own = new double[GroupBlocks.NoGroup + 1], Over = new double[GroupBlocks.NoGroup + 1];

        public double Any => OfGroups(Over) + Over[GroupBlocks.NoGroup];
    }
}
