using Coilwright.Core.Numerics;

namespace Coilwright.Core.Arrangement;

/// <summary>The best counts by laying every bead, where the tables do not hold what is judged.</summary>
/// <param name="Counts">The counts, allowed.</param>
/// <param name="Judged">How they do.</param>
/// <param name="IsProven">Whether every choice that is allowed was judged, so that none is better.</param>
internal sealed record FoundInFull(int[] Counts, OrderJudgement Judged, bool IsProven);

/// <summary>Looks for counts by judging each in full: every one of them where they are few, else by steps from the best known.</summary>
/// <remarks>Several are judged at once, and of equals the first in order is taken: the outcome does not hang on the number of threads.</remarks>
internal sealed class InFull(OrderSpace space, long judgings, CancellationToken cancel)
{
    // So many are judged before the best of them is looked at.
    private const int AtOnce = 64;

    private readonly GapProblem _problem = space.Problem;
    private long _left = judgings;

    /// <summary>The best counts found; null when the search was stopped before any was judged, or none is allowed.</summary>
    /// <param name="starts">Where steps start from: allowed counts.</param>
    public FoundInFull? Find(IEnumerable<int[]> starts)
    {
        if (_problem.Ways <= _left)
        {
            var all = new List<int[]>();
            AddAll([.. _problem.Start], 0, all);
            var judged = Judge(all);
            if (judged.Length == all.Count) return Best(judged) is { } best ? new FoundInFull(best.Counts, best.Judged, true) : null;
        }
        var at = Best(Judge([.. starts]));
        while (at is { } from && _left > 0)
        {
            // The likeliest first: by the tables, which hold the mean.
            var steps = Steps(from.Counts).OrderBy(step => _problem.Loss(step)).ToArray();
            (int[] Counts, OrderJudgement Judged)? better = null;
            for (var i = 0; i < steps.Length && better is null && _left > 0; i += AtOnce)
                if (Best(Judge(steps[i..Math.Min(steps.Length, i + AtOnce)])) is { } best && best.Judged.Loss < from.Judged.Loss - FoundCounts.Rounding) better = best;
            if (better is null) break;
            at = better;
        }
        return at is { } found ? new FoundInFull(found.Counts, found.Judged, false) : null;
    }

    /// <summary>Judges counts, as many as are left to judge and until it is stopped; the first of them are judged whatever happens.</summary>
    public (int[] Counts, OrderJudgement Judged)[] Judge(IReadOnlyList<int[]> counts)
    {
        var many = (int)Math.Min(counts.Count, _left);
        _left -= many;
        var judged = new OrderJudgement?[many];
        try
        {
            SharedWork.Run(many, (from, to) =>
            {
                for (var i = from; i < to; i++)
                {
                    cancel.ThrowIfCancellationRequested();
                    judged[i] = space.Judge(counts[i]);
                }
            }, cancel);
        }
        catch (OperationCanceledException)
        {
            // What was judged so far counts.
        }
        return [.. judged.Select((j, i) => (Counts: counts[i], Judged: j)).Where(c => c.Judged is not null).Select(c => (c.Counts, c.Judged!))];
    }

    /// <summary>The best of some; null when there are none.</summary>
    public static (int[] Counts, OrderJudgement Judged)? Best((int[] Counts, OrderJudgement Judged)[] judged) =>
        judged.Length == 0 ? null : judged.MinBy(j => j.Judged.Loss);

    private void AddAll(int[] counts, int g, List<int[]> all)
    {
        if (g == _problem.Count)
        {
            if (_problem.Allows(counts)) all.Add([.. counts]);
            return;
        }
        if (_problem.TiedTo[g] != g)
        {
            counts[g] = counts[_problem.TiedTo[g]];
            AddAll(counts, g + 1, all);
            return;
        }
        for (var count = _problem.Gaps[g].Least; count <= _problem.Gaps[g].Most; count++)
        {
            counts[g] = count;
            AddAll(counts, g + 1, all);
        }
    }

    // One bead more or fewer in a gap, or one out of a gap and into another.
    private IEnumerable<int[]> Steps(int[] at)
    {
        for (var from = -1; from < _problem.Count; from++)
            for (var into = -1; into < _problem.Count; into++)
            {
                if (from == into || !IsOwn(from) || !IsOwn(into)) continue;
                var to = at.ToArray();
                Move(to, from, -1);
                Move(to, into, 1);
                if (_problem.Allows(to)) yield return to;
            }

        bool IsOwn(int g) => g < 0 || _problem.TiedTo[g] == g;
    }

    private void Move(int[] counts, int gap, int by)
    {
        if (gap < 0) return;
        for (var g = 0; g < counts.Length; g++)
            if (_problem.TiedTo[g] == gap) counts[g] += by;
    }
}
