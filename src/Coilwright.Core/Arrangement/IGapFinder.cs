using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>The best counts found.</summary>
/// <param name="Counts">The counts, allowed.</param>
/// <param name="Loss">Their loss.</param>
/// <param name="Bound">No allowed counts have a loss below this. At most <paramref name="Loss"/>.</param>
/// <param name="Looked">How many counts were looked at, or steps taken, for those who want to know.</param>
public sealed record FoundCounts(ImmutableArray<int> Counts, double Loss, double Bound, long Looked)
{
    /// <summary>How far the loss of the best may lie below what was found, for all that is known.</summary>
    public double GapToBound => Loss - Bound;

    /// <summary>Whether nothing better exists, but for rounding in the last digits of sums of many small shares.</summary>
    public bool IsProven => GapToBound <= Rounding;

    /// <summary>Losses nearer than this are not told apart: sums of a few thousand doubles below 1.</summary>
    internal const double Rounding = 1e-11;
}

/// <summary>A way to look for the best counts.</summary>
public interface IGapFinder
{
    /// <summary>Looks for them.</summary>
    /// <param name="problem">The problem. Its start need not be allowed.</param>
    /// <param name="progress">Is told of each better one.</param>
    /// <param name="cancel">Stops the search: what was found so far is given back.</param>
    /// <returns>The best found; null when none was found that is allowed.</returns>
    FoundCounts? Find(GapProblem problem, IProgress<FoundCounts>? progress = null, CancellationToken cancel = default);
}
