namespace Coilwright.Core.Arrangement;

/// <summary>The best counts by whichever ways suit the problem: all of them where there are few, else a descent and a bound.</summary>
/// <param name="effort">How much to try, 1 or more; the outcome depends on it and the seed, not on the machine.</param>
/// <param name="seed">Seed of the draws.</param>
/// <param name="mostStates">Most states of a turn that the bound keeps at once: fewer are sooner gone through and prove less.</param>
public sealed class BestCounts(int effort, ulong seed, int mostStates = 1 << 20) : IGapFinder
{
    /// <summary>Up to so many ways every one is gone through.</summary>
    public const double MostWaysToTryAll = 1e7;

    private const int FirstStarts = 8, RoundsPerStart = 4;

    /// <inheritdoc/>
    public FoundCounts? Find(GapProblem problem, IProgress<FoundCounts>? progress = null, CancellationToken cancel = default)
    {
        if (problem.Ways <= MostWaysToTryAll) return new EveryCount().Find(problem, progress, cancel);
        FoundCounts? best = null;
        var (bound, looked) = (double.NegativeInfinity, 0L);
        // A little first and then twice as much, so that whoever stops it has something; what is asked for in all is the effort.
        for (int from = 0, upTo = Math.Min(effort, FirstStarts); ; from = upTo, upTo = Math.Min(effort, 2 * upTo))
        {
            Take(new Descent(upTo - from, seed: seed, firstStart: from).Find(problem, progress, cancel));
            if (cancel.IsCancellationRequested) break;
            var turns = new TurnByTurn(mostStates, rounds: RoundsPerStart * upTo);
            Take(turns.Find(problem, best?.Loss ?? double.PositiveInfinity, progress, cancel, out var held));
            bound = Math.Max(bound, held);
            if (upTo == effort || cancel.IsCancellationRequested || best?.Loss - bound <= FoundCounts.Rounding) break;
        }
        return best is null ? null : best with { Bound = Math.Min(Math.Max(bound, best.Bound), best.Loss), Looked = looked };

        void Take(FoundCounts? found)
        {
            looked += found?.Looked ?? 0;
            bound = Math.Max(bound, found?.Bound ?? double.NegativeInfinity);
            if (found is not null && (best is null || found.Loss < best.Loss - FoundCounts.Rounding)) best = found;
        }
    }
}
