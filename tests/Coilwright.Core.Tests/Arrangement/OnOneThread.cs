namespace Coilwright.Core.Tests.Arrangement;

/// <summary>Runs work whose parts would be shared over the cores, one part after another.</summary>
internal static class OnOneThread
{
    public static T Run<T>(Func<T> work)
    {
        // Shared work stays with the scheduler that it is called on, and this one lets no two run at once.
        var one = new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, 1).ConcurrentScheduler;
        return Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.None, one).GetAwaiter().GetResult();
    }
}
