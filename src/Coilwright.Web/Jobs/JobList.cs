using System.Collections.Immutable;
using System.Threading.Channels;

namespace Coilwright.Web.Jobs;

/// <summary>The jobs of this bench: they belong to the program, not to a page, so they go on when the page is loaded anew, left, or loses the program's
/// connection, and every window sees them.</summary>
/// <remarks>One is done at a time, in the order in which they came, on the <see cref="QuietCores"/>. What came of one is kept until she puts it away or
/// the program ends. May be asked by many at once.</remarks>
public sealed partial class JobList(QuietCores quiet, TimeProvider clock, ILogger<JobList> log) : BackgroundService
{
    /// <summary>How many may wait or lie here at most: what is over goes first, the oldest before others.</summary>
    public const int Most = 20;

    // A page is told so often that it is seen to move, not so often that telling is work.
    private static readonly TimeSpan Told = TimeSpan.FromMilliseconds(200);

    private readonly Lock _gate = new();
    private readonly Channel<Guid> _queue = Channel.CreateUnbounded<Guid>();
    private readonly Dictionary<Guid, CancellationTokenSource> _stops = [];
    private ImmutableList<Job> _jobs = [];

    /// <summary>Something changed. Raised on any thread.</summary>
    public event Action? Changed;

    /// <summary>The jobs, the oldest first.</summary>
    public IReadOnlyList<Job> Now => _jobs;

    /// <summary>A job by its name; null when it was put away.</summary>
    public Job? Find(Guid id) => _jobs.Find(j => j.Id == id);

    /// <summary>Takes a job on; null when so many wait already that it cannot.</summary>
    public Guid? Start(JobOrder order)
    {
        var id = Guid.NewGuid();
        lock (_gate)
        {
            while (_jobs.Count >= Most)
            {
                if (_jobs.Find(j => j.IsOver) is not { } oldest) return null;
                Drop(oldest.Id);
            }
            _jobs = _jobs.Add(new Job(id, order, JobState.Waiting, 0, null, null, TimeSpan.Zero));
            _stops[id] = new CancellationTokenSource();
        }
        _queue.Writer.TryWrite(id);
        Changed?.Invoke();
        return id;
    }

    /// <summary>Stops a job that waits or runs.</summary>
    public void Stop(Guid id)
    {
        lock (_gate)
        {
            if (Find(id) is not { IsOver: false } job) return;
            _stops[id].Cancel();
            // A running one ends by itself, and may have to give the last touch to what it has so far.
            if (job.State == JobState.Waiting) Put(job with { State = JobState.Stopped });
        }
        Changed?.Invoke();
    }

    /// <summary>She has what came of it, or wants it no more: it is forgotten. One that runs is left.</summary>
    public void PutAway(Guid id)
    {
        lock (_gate)
        {
            if (Find(id) is not { IsOver: true }) return;
            Drop(id);
        }
        Changed?.Invoke();
    }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await foreach (var id in _queue.Reader.ReadAllAsync(stoppingToken))
            if (Begin(id) is var (job, stop))
                await RunAsync(job, stop, stoppingToken);
    }

    private (Job, CancellationToken)? Begin(Guid id)
    {
        lock (_gate)
        {
            if (Find(id) is not { State: JobState.Waiting } waiting) return null;
            var job = waiting with { State = JobState.Running };
            Put(job);
            return (job, _stops[id].Token);
        }
    }

    private async Task RunAsync(Job job, CancellationToken stop, CancellationToken end)
    {
        Changed?.Invoke();
        var began = clock.GetTimestamp();
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stop, end);
        long? told = null;
        var hand = new JobHand((share, soFar) =>
        {
            lock (_gate)
            {
                job = job with { Share = Math.Clamp(share, job.Share, 1), SoFar = soFar ?? job.SoFar, Elapsed = clock.GetElapsedTime(began) };
                Put(job);
                if (told is { } last && clock.GetElapsedTime(last) < Told) return;
                told = clock.GetTimestamp();
            }
            Changed?.Invoke();
        }, either.Token);
        JobState state;
        object? result = null;
        try
        {
            result = await quiet.RunAsync(() => job.Order.Run(hand), either.Token);
            state = JobState.Done;
        }
        catch (OperationCanceledException) when (either.IsCancellationRequested)
        {
            state = JobState.Stopped;
        }
        catch (Exception e)
        {
            // Whatever it was: the next job and every page go on.
            LogFailed(job.Order, e);
            state = JobState.Failed;
        }
        lock (_gate) Put(job = job with { State = state, Share = state == JobState.Done ? 1 : job.Share, Result = result, Elapsed = clock.GetElapsedTime(began) });
        Changed?.Invoke();
    }

    private void Put(Job job) => _jobs = _jobs.SetItem(_jobs.FindIndex(j => j.Id == job.Id), job);

    private void Drop(Guid id)
    {
        _jobs = _jobs.RemoveAll(j => j.Id == id);
        if (_stops.Remove(id, out var stop)) stop.Dispose();
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "A job went wrong: {Order}")]
    private partial void LogFailed(JobOrder order, Exception e);
}
