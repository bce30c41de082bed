namespace Coilwright.Core.Arrangement;

/// <summary>The best order by whichever way suits the problem: all of them where there are few, else a descent.</summary>
/// <param name="effort">How much to try, 1 or more; the outcome depends on it and the seed, not on the machine.</param>
/// <param name="seed">Seed of the draws.</param>
public sealed class BestOrder(int effort, ulong seed) : IOrderFinder
{
    /// <inheritdoc/>
    public FoundOrder? Find(OrderProblem problem, IProgress<FoundOrder>? progress = null, CancellationToken cancel = default)
    {
        IOrderFinder way = problem.Ways > BestCounts.MostWaysToTryAll ? new OrderDescent(effort, seed: seed) : new EveryOrder(new OrderDescent(starts: 2, tries: 500, seed: seed));
        return way.Find(problem, progress, cancel);
    }
}
