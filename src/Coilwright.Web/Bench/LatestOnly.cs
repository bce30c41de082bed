namespace Coilwright.Web.Bench;

/// <summary>Runs work away from the page, one at a time, and of what piles up meanwhile only the newest.</summary>
/// <remarks>A slider asks faster than anything can be reckoned. Cancelling on every move would starve the picture until she lets go; this way it
/// follows her hand as fast as it can. Used from one dispatcher.</remarks>
internal sealed class LatestOnly
{
    private Task _running = Task.CompletedTask;
    private long _asked;

    /// <summary>Runs the work when its turn comes. Null when something newer was asked for before it began.</summary>
    public async Task<T?> RunAsync<T>(Func<T> work) where T : class
    {
        var mine = ++_asked;
        while (!_running.IsCompleted)
        {
            await _running.ConfigureAwait(ConfigureAwaitOptions.ContinueOnCapturedContext | ConfigureAwaitOptions.SuppressThrowing);
            if (mine != _asked) return null;
        }
        var run = Task.Run(work);
        _running = run;
        return await run;
    }
}
