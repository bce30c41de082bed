using System.Collections.Concurrent;
using System.Runtime.InteropServices;

namespace Coilwright.Web.Jobs;

/// <summary>Threads for work that can wait: all cores but one, and behind everything that she waits for.</summary>
/// <remarks>Work that shares itself out over the cores stays on these threads (<see cref="Core.Numerics.SharedWork"/> follows its scheduler).</remarks>
public sealed class QuietCores : TaskScheduler, IDisposable
{
    // Of Linux's steps from 0 to 19: far enough back that a page is never kept waiting, not so far that work starves.
    private const int Niceness = 10;

    [ThreadStatic]
    private static QuietCores? t_mine;

    private readonly BlockingCollection<Task> _tasks = [];

    /// <summary>Starts the threads.</summary>
    public QuietCores()
    {
        for (var i = 0; i < MaximumConcurrencyLevel; i++)
            new Thread(Work) { IsBackground = true, Priority = ThreadPriority.BelowNormal, Name = "quiet" }.Start();
    }

    /// <inheritdoc/>
    public override int MaximumConcurrencyLevel { get; } = Math.Max(1, Environment.ProcessorCount - 1);

    /// <summary>Runs work on these threads.</summary>
    public Task<T> RunAsync<T>(Func<T> work, CancellationToken cancel) => Task.Factory.StartNew(work, cancel, TaskCreationOptions.None, this);

    private void Work()
    {
        t_mine = this;
        // A thread's priority means nothing to .NET on Linux, and everything to Linux.
        if (OperatingSystem.IsLinux()) _ = SetPriority(0, 0, Niceness);
        foreach (var task in _tasks.GetConsumingEnumerable()) TryExecuteTask(task);
    }

    [DllImport("libc", EntryPoint = "setpriority"), DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int SetPriority(int which, int who, int niceness);

    /// <inheritdoc/>
    protected override void QueueTask(Task task)
    {
        try
        {
            _tasks.Add(task);
        }
        catch (InvalidOperationException)
        {
            // The program ends: what still runs is on its way out, and may ask for helping hands a last time.
            ThreadPool.UnsafeQueueUserWorkItem(t => TryExecuteTask(t), task, preferLocal: false);
        }
    }

    /// <inheritdoc/>
    protected override bool TryExecuteTaskInline(Task task, bool taskWasPreviouslyQueued) => t_mine == this && TryExecuteTask(task);

    /// <inheritdoc/>
    protected override IEnumerable<Task> GetScheduledTasks() => _tasks.ToArray();

    /// <inheritdoc/>
    public void Dispose() => _tasks.CompleteAdding();
}
