using System.Collections.Immutable;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Making;

/// <summary>So many beads of one kind, one after the other.</summary>
/// <param name="Kind">Index of the kind in the piece's list of beads.</param>
/// <param name="Count">How many, 1 or more.</param>
public readonly record struct BeadRun(int Kind, int Count);

/// <summary>A part of a step: runs that are strung so many times over.</summary>
/// <param name="Runs">The runs of one time, at least one.</param>
/// <param name="Times">How often, 1 or more.</param>
public sealed record StepPart(ImmutableArray<BeadRun> Runs, int Times)
{
    /// <summary>Beads strung in it, all times together.</summary>
    public int Beads => Runs.Sum(r => r.Count) * Times;
}

/// <summary>One step at the bench: a named group, or a stretch of beads that stand in none.</summary>
/// <param name="Group">The group's name; null for loose beads.</param>
/// <param name="First">Index of its first bead in the order, from 0.</param>
/// <param name="Times">How often it is strung, one after the other, 1 or more.</param>
/// <param name="Parts">What is strung each time.</param>
public sealed record StringingStep(string? Group, int First, int Times, ImmutableArray<StepPart> Parts)
{
    /// <summary>Beads strung in it, all times together.</summary>
    public int Beads => Parts.Sum(p => p.Beads) * Times;
}

/// <summary>The stringing order as steps to work through: by group, with what repeats said once.</summary>
/// <remarks>
/// <para>Every bead of the order is in exactly one step, in its order: the steps' counts add up to the materials list. Only the groups that read as
/// one thing count (<see cref="StringingOrder.ReadingGroups"/>); one group strung several times on end is one step.</para>
/// <para>Inside a step the longest repeat that starts at each place is taken, of at most <see cref="LongestUnit"/> runs: simple, and short of the
/// shortest way to say it.</para>
/// </remarks>
public static class StringingSteps
{
    /// <summary>Runs in a repeated unit at most: more than anyone holds in mind while stringing. Our choice.</summary>
    public const int LongestUnit = 24;

    /// <summary>Parts in a step of loose beads at most; more become several steps, to be ticked off one by one. Our choice.</summary>
    public const int PartsInStep = 8;

    /// <summary>The steps, in stringing order.</summary>
    public static ImmutableArray<StringingStep> Of(StringingOrder order)
    {
        var steps = ImmutableArray.CreateBuilder<StringingStep>();
        var at = 0;
        var groups = order.ReadingGroups;
        for (var g = 0; g < groups.Length; g++)
        {
            var group = groups[g];
            if (group.First > at) Loose(order, at, group.First, steps);
            var times = 1;
            while (g + 1 < groups.Length && Same(order, group, groups[g + 1]) && groups[g + 1].First == groups[g].End)
            {
                times++;
                g++;
            }
            steps.Add(new StringingStep(group.Name, group.First, times, Parts(Runs(order, group.First, group.End))));
            at = groups[g].End;
        }
        if (at < order.Count) Loose(order, at, order.Count, steps);
        return steps.ToImmutable();
    }

    private static bool Same(StringingOrder order, GroupRun one, GroupRun other) => one.Name == other.Name && one.Count == other.Count
        && order.Kinds.AsSpan(one.First, one.Count).SequenceEqual(order.Kinds.AsSpan(other.First, other.Count));

    private static void Loose(StringingOrder order, int from, int to, ImmutableArray<StringingStep>.Builder steps)
    {
        var parts = Parts(Runs(order, from, to));
        for (var p = 0; p < parts.Length; p += PartsInStep)
        {
            ImmutableArray<StepPart> own = [.. parts.AsSpan(p, Math.Min(PartsInStep, parts.Length - p))];
            steps.Add(new StringingStep(null, from, 1, own));
            from += own.Sum(o => o.Beads);
        }
    }

    private static List<BeadRun> Runs(StringingOrder order, int from, int to)
    {
        var runs = new List<BeadRun>();
        for (var i = from; i < to; i++)
            if (runs.Count > 0 && runs[^1].Kind == order.Kinds[i]) runs[^1] = new BeadRun(runs[^1].Kind, runs[^1].Count + 1);
            else runs.Add(new BeadRun(order.Kinds[i], 1));
        return runs;
    }

    private static ImmutableArray<StepPart> Parts(List<BeadRun> runs)
    {
        var parts = ImmutableArray.CreateBuilder<StepPart>();
        for (var i = 0; i < runs.Count;)
        {
            var (unit, times) = LongestRepeat(runs, i);
            parts.Add(new StepPart([.. runs.GetRange(i, unit)], times));
            i += unit * times;
        }
        return parts.ToImmutable();
    }

    // The repeat that covers most from here on; of two that cover alike, the shorter unit.
    private static (int Unit, int Times) LongestRepeat(List<BeadRun> runs, int from)
    {
        (int Unit, int Times) best = (1, 1);
        for (var unit = 2; unit <= Math.Min(LongestUnit, (runs.Count - from) / 2); unit++)
        {
            var same = 0;
            while (from + unit + same < runs.Count && runs[from + same] == runs[from + unit + same]) same++;
            var times = 1 + same / unit;
            if (times > 1 && unit * times > best.Unit * best.Times) best = (unit, times);
        }
        return best;
    }
}
