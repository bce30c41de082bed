using Coilwright.Web.Jobs;
using Microsoft.Extensions.Logging.Abstractions;

namespace Coilwright.Web.Tests.Jobs;

/// <summary>Jobs are done one after another, tell how far they are, are stopped, and go wrong without harm to others.</summary>
public sealed class JobListTests : IAsyncLifetime
{
    // Long enough for a machine that does other things; a job that is not over by then never will be.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly QuietCores _quiet = new();
    private readonly JobList _jobs;

    public JobListTests() => _jobs = new JobList(_quiet, TimeProvider.System, NullLogger<JobList>.Instance);

    public async ValueTask InitializeAsync() => await _jobs.StartAsync(TestContext.Current.CancellationToken);

    public async ValueTask DisposeAsync()
    {
        await _jobs.StopAsync(CancellationToken.None);
        _jobs.Dispose();
        _quiet.Dispose();
    }

    private sealed record Work(Func<JobHand, object> Does) : JobOrder
    {
        public override object Run(JobHand hand) => Does(hand);
    }

    // A job that waits for a sign, and can be stopped while it does.
    private sealed class Gate
    {
        private readonly TaskCompletionSource _open = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Work Work(object result) => new(hand =>
        {
            hand.Report(0.5, "half of it");
            _open.Task.Wait(hand.Cancel);
            return result;
        });

        public void Open() => _open.SetResult();
    }

    private async Task<Job> Until(Guid id, Func<Job, bool> so)
    {
        using var patience = new CancellationTokenSource(Patience);
        while (true)
        {
            if (_jobs.Find(id) is { } job && so(job)) return job;
            await Task.Delay(5, patience.Token);
        }
    }

    [Fact]
    public async Task What_came_of_a_job_is_kept_until_it_is_put_away()
    {
        var told = 0;
        _jobs.Changed += () => Interlocked.Increment(ref told);
        var id = _jobs.Start(new Work(_ => 42))!.Value;
        var done = await Until(id, j => j.IsOver);
        Assert.Equal((JobState.Done, 1.0, (object)42), (done.State, done.Share, done.Result));
        Assert.Equal(id, Assert.Single(_jobs.Now).Id);
        Assert.True(told >= 3, $"Told {told} times.");
        _jobs.PutAway(id);
        Assert.Empty(_jobs.Now);
        Assert.Null(_jobs.Find(id));
    }

    [Fact]
    public async Task Of_two_jobs_the_second_waits_and_the_first_tells_how_far_it_is()
    {
        var (one, two) = (new Gate(), new Gate());
        var first = _jobs.Start(one.Work("one"))!.Value;
        var second = _jobs.Start(two.Work("two"))!.Value;
        var half = await Until(first, j => j.Share > 0);
        Assert.Equal((JobState.Running, 0.5, (object)"half of it"), (half.State, half.Share, half.SoFar));
        Assert.Equal(JobState.Waiting, _jobs.Find(second)!.State);
        // One that runs is not put away from under its own hands.
        _jobs.PutAway(first);
        Assert.NotNull(_jobs.Find(first));
        one.Open();
        Assert.Equal("one", (await Until(first, j => j.IsOver)).Result);
        await Until(second, j => j.State == JobState.Running);
        two.Open();
        Assert.Equal("two", (await Until(second, j => j.IsOver)).Result);
        Assert.Equal([first, second], _jobs.Now.Select(j => j.Id));
    }

    [Fact]
    public async Task A_job_is_stopped_while_it_runs_and_keeps_the_best_it_had()
    {
        var gate = new Gate();
        var id = _jobs.Start(gate.Work("never"))!.Value;
        await Until(id, j => j.SoFar is not null);
        _jobs.Stop(id);
        var stopped = await Until(id, j => j.IsOver);
        Assert.Equal((JobState.Stopped, (object)"half of it", (object?)null), (stopped.State, stopped.SoFar!, stopped.Result));
        // The next is not held up by it.
        Assert.Equal(JobState.Done, (await Until(_jobs.Start(new Work(_ => 1))!.Value, j => j.IsOver)).State);
    }

    [Fact]
    public async Task A_job_that_waits_is_stopped_before_it_begins()
    {
        var (gate, ran) = (new Gate(), false);
        var first = _jobs.Start(gate.Work("one"))!.Value;
        await Until(first, j => j.State == JobState.Running);
        var second = _jobs.Start(new Work(_ => ran = true))!.Value;
        _jobs.Stop(second);
        Assert.Equal(JobState.Stopped, _jobs.Find(second)!.State);
        gate.Open();
        await Until(first, j => j.IsOver);
        await Until(_jobs.Start(new Work(_ => 1))!.Value, j => j.IsOver);
        Assert.False(ran);
    }

    [Fact]
    public async Task A_job_that_goes_wrong_is_told_and_the_next_goes_on()
    {
        var wrong = _jobs.Start(new Work(_ => throw new InvalidOperationException("no")))!.Value;
        var next = _jobs.Start(new Work(_ => 1))!.Value;
        Assert.Equal(JobState.Failed, (await Until(wrong, j => j.IsOver)).State);
        Assert.Equal(JobState.Done, (await Until(next, j => j.IsOver)).State);
    }

    [Fact]
    public async Task Only_so_many_lie_here_and_what_is_over_makes_room_first()
    {
        var gate = new Gate();
        var done = _jobs.Start(new Work(_ => 1))!.Value;
        await Until(done, j => j.IsOver);
        for (var i = 0; i < JobList.Most; i++) Assert.NotNull(_jobs.Start(gate.Work(i)));
        Assert.Null(_jobs.Find(done));
        Assert.Equal(JobList.Most, _jobs.Now.Count);
        Assert.Null(_jobs.Start(gate.Work("one too many")));
        gate.Open();
    }

    [Fact]
    public async Task Work_that_is_shared_out_stays_on_the_quiet_threads()
    {
        var names = new System.Collections.Concurrent.ConcurrentBag<string?>();
        await Until(_jobs.Start(new Work(hand =>
        {
            Core.Numerics.SharedWork.Run(200, (_, _) => names.Add(Thread.CurrentThread.Name), hand.Cancel);
            return 1;
        }))!.Value, j => j.IsOver);
        Assert.NotEmpty(names);
        Assert.All(names, n => Assert.Equal("quiet", n));
    }
}
