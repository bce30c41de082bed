using System.Collections.Immutable;

namespace Coilwright.Core.Cutting;

/// <summary>Pieces of one length that are to be cut.</summary>
/// <param name="Length">Length in whole units, above 0.</param>
/// <param name="Count">How many, 1 or more.</param>
public readonly record struct CutItem(int Length, int Count);

/// <summary>Bars of one length to cut from: here a bar is a pack's coil, a coil by weight or an offcut, taken as straight.</summary>
/// <param name="Length">Length in whole units, above 0.</param>
/// <param name="Count">How many there are, 0 or more; null for as many as it takes.</param>
/// <param name="Cost">What one costs when it is begun, in whole units, 0 or more; above 0 where there are as many as it takes.</param>
public readonly record struct BarKind(int Length, int? Count, long Cost);

/// <summary>One-dimensional cutting in whole numbers: all items out of bars, at the least cost of the bars that are begun.</summary>
/// <remarks>Knows nothing of wire. Model and proof: docs/theory/cutting.md.</remarks>
/// <param name="Items">What is to be cut.</param>
/// <param name="Bars">What there is to cut it from.</param>
/// <param name="Loss">What one cut takes away, in the same units, 0 or more. The last cut of a bar that comes out exactly is none.</param>
public sealed record CuttingProblem(ImmutableArray<CutItem> Items, ImmutableArray<BarKind> Bars, int Loss = 0)
{
    /// <summary>Which item may be cut from which bar, as <c>[bar][item]</c>; every one from every one when it is default.</summary>
    public ImmutableArray<ImmutableArray<bool>> May { get; init; }

    /// <summary>Whether an item may be cut from a bar and is no longer than it.</summary>
    public bool Fits(int bar, int item) => Items[item].Length <= Bars[bar].Length && (May.IsDefault || May[bar][item]);
}

/// <summary>Bars that are cut alike.</summary>
/// <param name="Bar">Which kind of bar.</param>
/// <param name="Counts">How many of each item one gives.</param>
/// <param name="Times">How many bars, 1 or more.</param>
public sealed record CutPattern(int Bar, ImmutableArray<int> Counts, int Times);

/// <summary>What came of looking for a way to cut.</summary>
/// <param name="Patterns">The bars that are begun.</param>
/// <param name="Missing">How many of each item could not be cut; all 0 when everything comes out.</param>
/// <param name="Cost">Cost of the bars begun.</param>
/// <param name="Bound">No way to cut everything costs less; meaningless while something is missing.</param>
/// <param name="MissingLength">Length of what is missing.</param>
/// <param name="MissingBound">No way to cut leaves less missing.</param>
/// <param name="WasStopped">Whether the search was stopped from outside.</param>
/// <param name="Nodes">How many partly cut states were looked at.</param>
public sealed record CuttingSolution(ImmutableArray<CutPattern> Patterns, ImmutableArray<int> Missing, long Cost, long Bound, long MissingLength, long MissingBound,
    bool WasStopped, long Nodes)
{
    /// <summary>Whether everything comes out.</summary>
    public bool ComesOut => MissingLength == 0;

    /// <summary>Whether nothing better is possible: nothing cheaper, or while something is missing, nothing that leaves less missing.</summary>
    public bool IsProven => ComesOut ? Cost <= Bound : MissingLength <= MissingBound;

    /// <summary>How many bars are begun.</summary>
    public int BarsBegun => Patterns.Sum(p => p.Times);
}
