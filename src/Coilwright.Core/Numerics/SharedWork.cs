namespace Coilwright.Core.Numerics;

/// <summary>Shares numbered work out over the cores.</summary>
/// <remarks>Each number's outcome must depend on the number alone; then the result does not depend on how many cores there are.</remarks>
public static class SharedWork
{
    /// <summary>Runs it in a few stretches at once and waits.</summary>
    /// <param name="count">How much work there is: numbers 0 to count - 1.</param>
    /// <param name="work">Does the numbers from the first up to, and without, the second.</param>
    /// <param name="cancel">Stops it.</param>
    /// <remarks>Stays with the scheduler that it is called on, so that work which a client runs behind other work stays behind it in all its parts.</remarks>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Run(int count, Action<int, int> work, CancellationToken cancel)
    {
        var stretches = Math.Min(count, 2 * Environment.ProcessorCount);
        try
        {
            Parallel.For(0, stretches, new ParallelOptions { CancellationToken = cancel, TaskScheduler = null },
                s => work((int)((long)count * s / stretches), (int)((long)count * (s + 1) / stretches)));
        }
        catch (AggregateException e) when (e.InnerExceptions.All(inner => inner is OperationCanceledException))
        {
            throw new OperationCanceledException(cancel);
        }
    }
}
