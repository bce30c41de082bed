using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Coilwright.Core.Lies;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Alignment;

/// <summary>Lining up at a glance: what the curve over wrists shows of one wrist.</summary>
/// <param name="Cover">Headline, averaged over the uncertainty of T; null when there is too little to judge.</param>
/// <param name="CoverExact">Headline exactly at T.</param>
/// <param name="RelativeAveraged">By bead against chance, averaged.</param>
/// <param name="FailsMix">Whether it lines up where a mix is wished for.</param>
/// <param name="FailsColumns">Whether the columns wished for do not come.</param>
public readonly record struct LiningUpGlance(double? Cover, double? CoverExact, double? RelativeAveraged, bool FailsMix, bool FailsColumns)
{
    /// <summary>Of the visible length of groups with a wish, the share that lies against it, averaged; null when no group has one. Unlike the headline it
    /// is a share of all their length, also of what lies over nothing: that of a piece does not change when spacers are moved.</summary>
    public double? AgainstWish { get; init; }
}

/// <summary>Room to glance at one lie after another without making it anew. For one thread at a time; what was glanced at before leaves no trace.</summary>
public sealed class GlanceRoom
{
    internal List<(double From, double To)> Hidden { get; } = [];

    internal VisibleRow Beads { get; } = new(0);

    internal VisibleRow Blocks { get; } = new(0);
}

/// <summary>What lies over what on neighbouring turns, of one piece, for any lie of it.</summary>
/// <remarks>
/// <para>Each stretch of the wire is held against what lies one turn's wire (T) further on. Sums are exact: no grid, no sampling. The averaged
/// readings are the sums averaged over shifts spread evenly over T plus or minus the uncertainty, in closed form, and then divided.</para>
/// <para>Model, definitions and limits: docs/theory/lining-up.md. A second way (a fine grid, brute force, Barker and Golomb sequences, three gaps)
/// checks it in the tests.</para>
/// </remarks>
public sealed class LiningUpModel
{
    private readonly Piece _piece;
    private readonly ReckoningChoices _choices;
    private readonly KindLikeness _likeness;
    private readonly double[] _same;
    private readonly int[] _order;
    private readonly GroupStretches _groups;

    /// <summary>Prepares a piece.</summary>
    public LiningUpModel(Piece piece, ReckoningChoices choices)
    {
        _piece = piece;
        _choices = choices;
        _likeness = new KindLikeness(piece.Beads, choices);
        _same = new double[_likeness.Kinds * _likeness.Kinds];
        for (var k = 0; k < _likeness.Kinds; k++) _same[k * _likeness.Kinds + k] = 1;
        _order = ImmutableCollectionsMarshal.AsArray(piece.Order.Kinds)!;
        _groups = new GroupStretches(piece);
    }

    /// <summary>The headline and the judgement of the wish, for one lie.</summary>
    /// <param name="lie">Where the beads lie.</param>
    /// <param name="pitchMm">Distance from turn to turn along the arm, mm.</param>
    /// <param name="averagingMm">Half width of the averaging, mm, above 0 and below the wire of a turn.</param>
    /// <param name="room">Room from an earlier glance, where many lies are looked at; null: new room.</param>
    public LiningUpGlance Glance(Lie lie, double pitchMm, double averagingMm, GlanceRoom? room = null)
    {
        CheckAveraging(lie, averagingMm);
        room ??= new GlanceRoom();
        new FocalHiding(_piece.Beads, lie.RadiusMm).Find(_order, lie.SharesMm.AsSpan(), lie.WirePerTurnMm, pitchMm, room.Hidden);
        var headline = new Headline(_groups, _piece.Wishes, lie, room.Hidden, averagingMm, _choices, room.Blocks);
        room.Beads.Lay(lie.SharesMm.AsSpan(), _order, room.Hidden);
        var (weighted, over) = room.Beads.OverAveraged(lie.WirePerTurnMm, averagingMm, _likeness.Weighted, _likeness.Kinds);
        var chance = Chance(lie, _likeness.Weighted);
        return new LiningUpGlance(headline.Averaged, headline.Exact, TooLittle(over, lie) || chance == 0 ? null : weighted / over / chance,
            headline.FailsMix, headline.FailsColumns)
        {
            AgainstWish = headline.AgainstWish,
        };
    }

    /// <summary>How one draw of the piece does under the wish, exactly at its T.</summary>
    /// <param name="lie">Where its beads lie.</param>
    /// <param name="pitchMm">Distance from turn to turn along the arm, mm.</param>
    /// <param name="room">Room from an earlier glance.</param>
    /// <returns>Of the visible length of groups with a wish, the share that lies against it, null when no group has one; and whether the wish fails.</returns>
    internal (double? AgainstWish, bool Fails) DrawnWish(Lie lie, double pitchMm, GlanceRoom room)
    {
        new FocalHiding(_piece.Beads, lie.RadiusMm).Find(_order, lie.SharesMm.AsSpan(), lie.WirePerTurnMm, pitchMm, room.Hidden);
        var headline = new Headline(_groups, _piece.Wishes, lie, room.Hidden, null, _choices, room.Blocks);
        return (headline.AgainstWish, headline.FailsMix || headline.FailsColumns);
    }

    /// <summary>Headline and lining up by bead against chance for many draws of the same order: what the spread asks.</summary>
    /// <param name="lie">The lie of mean lengths: chance is taken from it.</param>
    /// <param name="pitchMm">Distance from turn to turn along the arm, mm.</param>
    internal DrawnGlance DrawnFrom(Lie lie, double pitchMm) =>
        new(new OverlayScratch(lie.Count, _likeness.Weighted, _likeness.Kinds, new FocalHiding(_piece.Beads, lie.RadiusMm), pitchMm), _order, _groups,
            Chance(lie, _likeness.Weighted), _choices.LeastOverShare);

    /// <summary>Every reading of lining up, for one lie.</summary>
    /// <param name="lie">Where the beads lie.</param>
    /// <param name="pitchMm">Distance from turn to turn along the arm, mm.</param>
    /// <param name="averagingMm">Half width of the averaging, mm, above 0 and below the wire of a turn.</param>
    /// <param name="seed">Seed of the shuffles behind the rank.</param>
    /// <param name="cancel">Stops the shuffles.</param>
    public LiningUpReport Measure(Lie lie, double pitchMm, double averagingMm, ulong seed, CancellationToken cancel = default)
    {
        CheckAveraging(lie, averagingMm);
        var kinds = _likeness.Kinds;
        var shift = lie.WirePerTurnMm;
        var hidden = new List<(double, double)>();
        var hiding = new FocalHiding(_piece.Beads, lie.RadiusMm);
        hiding.Find(_order, lie.SharesMm.AsSpan(), shift, pitchMm, hidden);
        var row = new VisibleRow(lie.Count);
        row.Lay(lie.SharesMm.AsSpan(), _order, hidden);

        var headline = new Headline(_groups, _piece.Wishes, lie, hidden, averagingMm, _choices, new VisibleRow(0));
        var (weighted, over) = row.OverAt(shift, _likeness.Weighted, kinds);
        var (same, _) = row.OverAt(shift, _same, kinds);
        var (weightedAveraged, overAveraged) = row.OverAveraged(shift, averagingMm, _likeness.Weighted, kinds);
        var chance = Chance(lie, _likeness.Weighted);
        var chanceSame = Chance(lie, _same);

        var why = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var tooLittle = TooLittle(over, lie);
        var share = Unless(tooLittle, over < Headline.NoLengthMm ? "nothing-over" : "too-little-over", () => weighted / over, "share");
        var relative = Unless(tooLittle, why.GetValueOrDefault("share", ""), () => share!.Value / chance, "relative", chance == 0);
        var relativeAveraged = Unless(TooLittle(overAveraged, lie), "too-little-over", () => weightedAveraged / overAveraged / chance,
            "relativeAveraged", chance == 0);
        var strict = Unless(tooLittle, why.GetValueOrDefault("share", ""), () => same / over, "strictShare");
        var strictRelative = Unless(tooLittle, why.GetValueOrDefault("share", ""), () => strict!.Value / chanceSame, "strictRelative", chanceSame == 0);
        var rank = Unless(tooLittle, why.GetValueOrDefault("share", ""),
            () => Rank(lie, hiding, pitchMm, weighted / over, seed, cancel), "rank");
        if (headline.Averaged is null) why["cover"] = headline.WhyNull(averaged: true);
        if (headline.Exact is null) why["coverExact"] = headline.WhyNull(averaged: false);

        return new LiningUpReport
        {
            Cover = headline.Averaged,
            CoverExact = headline.Exact,
            Word = headline.Averaged switch
            {
                null => LiningUpWord.TooLittle,
                { } c when c >= _choices.LinesUpFrom => LiningUpWord.LinesUp,
                { } c when c <= _choices.MixedUpTo => LiningUpWord.Mixed,
                _ => LiningUpWord.Between,
            },
            GroupsAreRuns = _groups.AreRuns,
            Share = share,
            Chance = chance,
            Relative = relative,
            RelativeAveraged = relativeAveraged,
            Rank = rank,
            StrictRelative = strictRelative,
            StrictShare = strict,
            OverMm = over,
            HiddenMm = row.HiddenMm,
            Pairs = headline.Pairs(),
            Kinds = KindByKind(lie, row, shift),
            WhyNull = why.ToImmutable(),
            MixCover = headline.Under(LiningUpWish.Mix),
            ColumnsCover = headline.Under(LiningUpWish.Columns),
            FailsMix = headline.FailsMix,
            FailsColumns = headline.FailsColumns,
        };

        double? Unless(bool none, string reason, Func<double> value, string name, bool chanceNought = false)
        {
            if (!none && !chanceNought) return value();
            why[name] = none ? reason : "chance-nought";
            return null;
        }
    }

    // Averaged over a turn or more, a bead would come to lie over itself.
    private static void CheckAveraging(Lie lie, double averagingMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(averagingMm);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(averagingMm, lie.WirePerTurnMm);
    }

    // Also where the data ask for nothing: then something must lie over something all the same.
    private bool TooLittle(double overMm, Lie lie) => overMm < Math.Max(_choices.LeastOverShare * lie.WirePerTurnMm, Headline.NoLengthMm);

    /// <summary>What chance would give: the mean weight of two different beads of the piece, each counted by its length.</summary>
    private double Chance(Lie lie, double[] weights)
    {
        var kinds = _likeness.Kinds;
        var length = new double[kinds];
        var squares = new double[kinds];
        var shares = lie.SharesMm.AsSpan();
        for (var i = 0; i < _order.Length; i++)
        {
            var share = shares[i];
            length[_order[i]] += share;
            squares[_order[i]] += share * share;
        }
        double sum = 0, all = 0, own = 0;
        for (var k = 0; k < kinds; k++)
        {
            all += length[k];
            own += squares[k];
            sum -= squares[k] * weights[k * kinds + k];
            for (var l = 0; l < kinds; l++) sum += length[k] * length[l] * weights[k * kinds + l];
        }
        var pairs = all * all - own;
        return pairs > 1e-12 * all * all ? sum / pairs : 0;
    }

    private double Rank(Lie lie, FocalHiding hiding, double pitchMm, double share, ulong seed, CancellationToken cancel)
    {
        var less = 0;
        SharedWork.Run(_choices.Shuffles, (from, to) =>
        {
            var scratch = new OverlayScratch(lie.Count, _likeness.Weighted, _likeness.Kinds, hiding, pitchMm);
            var here = 0;
            for (var s = from; s < to; s++)
            {
                cancel.ThrowIfCancellationRequested();
                scratch.Shuffle(_order, lie.SharesMm.AsSpan(), new SeededDraws(seed, (ulong)s));
                var (weighted, over) = scratch.Weigh(lie.WirePerTurnMm);
                // Equal in exact arithmetic may differ in the last digits: that is no less.
                if (over > 0 && weighted / over < share - 1e-12) here++;
            }
            Interlocked.Add(ref less, here);
        }, cancel);
        return (double)less / _choices.Shuffles;
    }

    private ImmutableArray<KindOverKind> KindByKind(Lie lie, VisibleRow row, double shift)
    {
        var kinds = _likeness.Kinds;
        var over = new double[kinds];
        var own = new double[kinds];
        row.EachOverAt(shift, (i, j, shared) =>
        {
            over[row.Tag[i]] += shared;
            if (row.Tag[i] == row.Tag[j]) own[row.Tag[i]] += shared;
        });
        var length = new double[kinds];
        var squares = new double[kinds];
        var used = new bool[kinds];
        for (var i = 0; i < _order.Length; i++)
        {
            used[_order[i]] = true;
            length[_order[i]] += lie.SharesMm[i];
            squares[_order[i]] += lie.SharesMm[i] * lie.SharesMm[i];
        }
        var report = ImmutableArray.CreateBuilder<KindOverKind>();
        for (var k = 0; k < kinds; k++)
        {
            if (!used[k]) continue;
            var pairs = length[k] * lie.BeadedMm - squares[k];
            report.Add(new KindOverKind(_piece.Beads[k].Id, over[k], own[k], over[k] > 0 ? own[k] / over[k] : null,
                pairs > 1e-12 * lie.BeadedMm * lie.BeadedMm ? (length[k] * length[k] - squares[k]) / pairs : null));
        }
        return report.ToImmutable();
    }
}
