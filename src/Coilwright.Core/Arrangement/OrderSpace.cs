using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Arrangement;

/// <summary>The orders that a piece may become under its wishes: its gaps, and how well each choice of their counts would do.</summary>
/// <remarks>Two judgements: <see cref="Problem"/> by tables, made once, a few look-ups for a change; and <see cref="Judge"/> in full, by laying every bead.
/// The tables leave out what they cannot hold: see docs/theory/arrange.md.</remarks>
public sealed class OrderSpace
{
    private readonly Piece _piece;
    private readonly double[]? _factors;
    private readonly ReckoningChoices _choices;

    /// <summary>Prepares a piece.</summary>
    public OrderSpace(Piece piece, ReckoningData data)
    {
        _choices = data.Choices;
        var bench = BenchCorrection.Of(piece, _choices.RulerErrorMm);
        (_piece, _factors) = (piece with { Beads = bench.Kinds }, bench.Factors);
        Gaps = Arrangement.Gaps.Of(_piece, _choices);
        var wrists = piece.Wishes.Wrists.IsDefaultOrEmpty ? data.AdultWrists : piece.Wishes.Wrists;
        var all = wrists.Sum(w => w.Weight);
        Wrists = [.. wrists.Select(w => w with { Weight = w.Weight / all })];
        var (problem, hasWish) = new TableMaker(_piece, _factors, _choices, Gaps, Wrists).Make();
        HasWish = hasWish;
        var also = ImmutableArray.CreateBuilder<ICountRule>();
        if (!piece.Wishes.Rules.IsDefaultOrEmpty) also.Add(new StrungRules(this, _piece));
        if (FocalRule.Of(_piece, _factors, _choices, Gaps, problem) is { } focal) also.Add(focal);
        Problem = also.Count == 0 ? problem : problem.With(also.ToImmutable());
    }

    /// <summary>The gaps, from the starting end.</summary>
    public ImmutableArray<Gap> Gaps { get; }

    /// <summary>Ids of the kinds that are free, as the problem numbers them.</summary>
    public ImmutableArray<string> KindIds => [.. Gaps.Select(g => g.Kind).Distinct().Order().Select(kind => _piece.Beads[kind].Id)];

    /// <summary>The wrists that it is to be good on; their weights sum to 1.</summary>
    public ImmutableArray<WeighedWrist> Wrists { get; }

    /// <summary>The counts to be chosen, by tables.</summary>
    public GapProblem Problem { get; }

    /// <summary>Whether any group is wished to mix or to stand in columns: without, no order is better than another.</summary>
    public bool HasWish { get; }

    /// <summary>The order with other counts.</summary>
    public StringingOrder Strung(ReadOnlySpan<int> counts)
    {
        var (kinds, _, at) = Restrung(counts);
        // Groups outside of those that read as one thing may start or end inside a gap: they keep as many of its beads as there are.
        return new StringingOrder(kinds, [.. _piece.Order.Groups.Select(g => new GroupRun(g.Name, at[g.First], Math.Max(1, at[g.End] - at[g.First])))]);
    }

    /// <summary>The edit that comes to other counts; null when nothing changes.</summary>
    public SetRuns? Edit(ReadOnlySpan<int> counts)
    {
        var runs = ImmutableArray.CreateBuilder<RunCount>();
        for (var g = 0; g < Gaps.Length; g++)
            if (counts[g] != Gaps[g].Count) runs.Add(new RunCount(Gaps[g].First, Gaps[g].Count, counts[g]));
        return runs.Count == 0 ? null : new SetRuns(runs.ToImmutable());
    }

    /// <summary>Judges counts in full: on each wrist every bead is laid, and what a focal hides and wishes for places are taken as they then are.</summary>
    /// <param name="counts">The counts.</param>
    /// <param name="stopAtFailure">Whether to stop at the first wrist on which the wish fails; the loss is then null.</param>
    public OrderJudgement Judge(ReadOnlySpan<int> counts, bool stopAtFailure = false)
    {
        var (_, factors, _) = Restrung(counts);
        return new FullJudge(_piece, _choices, Wrists).Of(Strung(counts), factors, stopAtFailure);
    }

    // The beads with other counts, what measured rows scale each by, and where each bead of the old order has come to (one more for its end).
    private (ImmutableArray<int> Kinds, double[]? Factors, int[] At) Restrung(ReadOnlySpan<int> counts)
    {
        var order = _piece.Order;
        var kinds = ImmutableArray.CreateBuilder<int>(order.Count);
        var factors = _factors is null ? null : new List<double>(order.Count);
        var at = new int[order.Count + 1];
        var gap = 0;
        for (var bead = 0; bead < order.Count;)
        {
            if (gap < Gaps.Length && Gaps[gap].First == bead)
            {
                var first = kinds.Count;
                for (var i = 0; i < counts[gap]; i++)
                {
                    kinds.Add(Gaps[gap].Kind);
                    factors?.Add(_factors![bead + Math.Min(i, Gaps[gap].Count - 1)]);
                }
                for (var i = 0; i < Gaps[gap].Count; i++) at[bead + i] = first + Math.Min(i, counts[gap]);
                bead = Gaps[gap++].End;
            }
            else
            {
                at[bead] = kinds.Count;
                kinds.Add(order.Kinds[bead]);
                factors?.Add(_factors![bead]);
                bead++;
            }
        }
        at[order.Count] = kinds.Count;
        return (kinds.ToImmutable(), factors?.ToArray(), at);
    }
}

/// <summary>How an order does under the piece's wishes.</summary>
/// <param name="Loss">Share of the wished groups' length that lies against the wish, averaged over the wrists; null when the judging was stopped.</param>
/// <param name="FailingMm">The wrists among those judged on which the wish fails, mm.</param>
public sealed record OrderJudgement(double? Loss, ImmutableArray<double> FailingMm);
