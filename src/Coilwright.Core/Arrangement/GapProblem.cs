using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>What neighbouring gaps decide together: how much lines up between what stands before the first of them and what stands after the last.</summary>
/// <remarks>It depends on the counts of the gaps between by their sums only, one for each kind of bead. <see cref="Loss"/> has an entry for every such
/// sum: for a kind, its beads above the fewest times the kind's <see cref="Strides"/>, all kinds added up.</remarks>
/// <param name="First">The first gap.</param>
/// <param name="End">The gap after the last.</param>
/// <param name="Strides">For each kind, by how much the key grows with one bead more; 0 for a kind that none of its gaps has.</param>
/// <param name="Loss">The loss by key, all wrists together.</param>
public sealed record GapWindow(int First, int End, ImmutableArray<int> Strides, ImmutableArray<double> Loss);

/// <summary>The counts of gaps to be chosen so that the loss is least: numbers only, no beads.</summary>
/// <remarks>
/// <para>The loss of counts c is <c>Fixed + sum over windows of Loss[key(c)]</c>, 0 to 1: the share of the groups' length that lines up against the wish,
/// averaged over the wrists and over the uncertainty of each. What it leaves out of the full reckoning: docs/theory/arrange.md.</para>
/// <para>Counts are allowed when each is in its range, tied ones are equal, the length changes by no more than it may, no kind takes more beads
/// than there are, and what else there is to keep (<see cref="Also"/>) is kept.</para>
/// </remarks>
public sealed class GapProblem
{
    private readonly int[][] _windowsOf;

    /// <summary>Makes one.</summary>
    /// <param name="gaps">Ranges and counts of the gaps.</param>
    /// <param name="kinds">For each gap the index of its kind among those that are free, from 0.</param>
    /// <param name="stepMm">For each kind, the wire that one bead more takes, mm.</param>
    /// <param name="windows">The windows.</param>
    /// <param name="fixedLoss">The loss that no count changes.</param>
    public GapProblem(ImmutableArray<Gap> gaps, ImmutableArray<int> kinds, ImmutableArray<double> stepMm, ImmutableArray<GapWindow> windows, double fixedLoss)
    {
        (Gaps, Kinds, StepMm, Windows, Fixed) = (gaps, kinds, stepMm, windows, fixedLoss);
        Start = [.. gaps.Select(g => g.Count)];
        TiedTo = [.. Enumerable.Range(0, gaps.Length)];
        MostMoreOfKind = [.. stepMm.Select(_ => int.MaxValue)];
        var of = gaps.Select(_ => new List<int>()).ToArray();
        for (var w = 0; w < windows.Length; w++)
            for (var g = windows[w].First; g < windows[w].End; g++)
                of[g].Add(w);
        _windowsOf = [.. of.Select(list => list.ToArray())];
    }

    /// <summary>The gaps.</summary>
    public ImmutableArray<Gap> Gaps { get; }

    /// <summary>For each gap, the index of its kind among those that are free.</summary>
    public ImmutableArray<int> Kinds { get; }

    /// <summary>For each kind that is free, the wire that one bead more takes on the wearer's wrist, mm.</summary>
    public ImmutableArray<double> StepMm { get; }

    /// <summary>What gaps decide together.</summary>
    public ImmutableArray<GapWindow> Windows { get; }

    /// <summary>The loss that no count changes.</summary>
    public double Fixed { get; }

    /// <summary>The counts now.</summary>
    public ImmutableArray<int> Start { get; }

    /// <summary>For each gap the first gap that it must be equal to: itself when it is free.</summary>
    public ImmutableArray<int> TiedTo { get; init; }

    /// <summary>By how much the beads may take less wire, mm; below 0 where they must take more than now.</summary>
    public double ShorterMm { get; init; } = double.PositiveInfinity;

    /// <summary>By how much they may take more, mm; below 0 where they must take less.</summary>
    public double LongerMm { get; init; } = double.PositiveInfinity;

    /// <summary>For each kind, how many beads more there are than are strung.</summary>
    public ImmutableArray<int> MostMoreOfKind { get; init; }

    /// <summary>What else counts have to keep.</summary>
    public ImmutableArray<ICountRule> Also { get; init; } = [];

    /// <summary>The same problem with more to keep.</summary>
    internal GapProblem With(ImmutableArray<ICountRule> also) => new(Gaps, Kinds, StepMm, Windows, Fixed)
    {
        TiedTo = TiedTo,
        ShorterMm = ShorterMm,
        LongerMm = LongerMm,
        MostMoreOfKind = MostMoreOfKind,
        Also = also,
    };

    /// <summary>Whether counts keep what there is beside ranges, ties, length and stock.</summary>
    internal bool KeepsAlso(ReadOnlySpan<int> counts)
    {
        foreach (var rule in Also)
            if (!rule.Keeps(counts)) return false;
        return true;
    }

    /// <summary>How many gaps.</summary>
    public int Count => Gaps.Length;

    /// <summary>How many ways there are to choose the counts within their ranges, length and stock not looked at.</summary>
    public double Ways
    {
        get
        {
            double ways = 1;
            for (var g = 0; g < Count; g++)
                if (TiedTo[g] == g) ways *= Gaps[g].Most - Gaps[g].Least + 1;
            return ways;
        }
    }

    /// <summary>Windows that a gap is in, by index.</summary>
    internal ReadOnlySpan<int> WindowsOf(int gap) => _windowsOf[gap];

    /// <summary>How much more wire the beads take than now, mm.</summary>
    public double LengthChangeMm(ReadOnlySpan<int> counts)
    {
        double change = 0;
        for (var g = 0; g < Count; g++) change += (counts[g] - Start[g]) * StepMm[Kinds[g]];
        return change;
    }

    /// <summary>Beads put in and taken out, all together.</summary>
    public int Changed(ReadOnlySpan<int> counts)
    {
        var changed = 0;
        for (var g = 0; g < Count; g++) changed += Math.Abs(counts[g] - Start[g]);
        return changed;
    }

    /// <summary>Whether counts are allowed.</summary>
    public bool Allows(ReadOnlySpan<int> counts)
    {
        for (var g = 0; g < Count; g++)
            if (counts[g] < Gaps[g].Least || counts[g] > Gaps[g].Most || counts[g] != counts[TiedTo[g]]) return false;
        if (!FitsLength(LengthChangeMm(counts))) return false;
        for (var k = 0; k < StepMm.Length; k++)
        {
            var more = 0;
            for (var g = 0; g < Count; g++)
                if (Kinds[g] == k) more += counts[g] - Start[g];
            if (more > MostMoreOfKind[k]) return false;
        }
        return KeepsAlso(counts);
    }

    // A hair of room, so that a change that is just as long as it may be is not lost to rounding.
    internal bool FitsLength(double changeMm) => changeMm >= -ShorterMm - 1e-9 && changeMm <= LongerMm + 1e-9;

    /// <summary>The key of counts in a window.</summary>
    internal int KeyOf(GapWindow window, ReadOnlySpan<int> counts)
    {
        var key = 0;
        for (var g = window.First; g < window.End; g++) key += (counts[g] - Gaps[g].Least) * window.Strides[Kinds[g]];
        return key;
    }

    /// <summary>The loss of counts within their ranges.</summary>
    public double Loss(ReadOnlySpan<int> counts)
    {
        var loss = Fixed;
        foreach (var window in Windows) loss += window.Loss[KeyOf(window, counts)];
        return loss;
    }
}
