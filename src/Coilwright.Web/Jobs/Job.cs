namespace Coilwright.Web.Jobs;

/// <summary>Work that takes longer than a page may be kept waiting.</summary>
/// <remarks>Says what is to be done and for whom; doing it is <see cref="Run"/>, away from any page.</remarks>
public abstract record JobOrder
{
    /// <summary>Does it and gives what came of it.</summary>
    /// <param name="hand">How it is stopped, and where it tells how far it is.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public abstract object Run(JobHand hand);
}

/// <summary>What a job holds on to while it runs.</summary>
/// <param name="report">Takes how far it is.</param>
/// <param name="cancel">Stops it.</param>
public sealed class JobHand(Action<double, object?> report, CancellationToken cancel)
{
    /// <summary>Stops it: to be asked often.</summary>
    public CancellationToken Cancel { get; } = cancel;

    /// <summary>Tells how far it is.</summary>
    /// <param name="share">From 0 to 1.</param>
    /// <param name="soFar">The best that has come of it so far, as useful as a result if it is stopped now; null when there is nothing yet.</param>
    public void Report(double share, object? soFar) => report(share, soFar);
}

/// <summary>How a job stands.</summary>
public enum JobState
{
    /// <summary>Another is done first.</summary>
    Waiting,

    /// <summary>It is being done.</summary>
    Running,

    /// <summary>It is done.</summary>
    Done,

    /// <summary>She stopped it.</summary>
    Stopped,

    /// <summary>It went wrong.</summary>
    Failed,
}

/// <summary>One job as it stands. Does not change: the list has a new one each time.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Order">What is to be done.</param>
/// <param name="State">How it stands.</param>
/// <param name="Share">How far it is, from 0 to 1.</param>
/// <param name="SoFar">The best so far; kept when it is stopped.</param>
/// <param name="Result">What came of it; null before it is done.</param>
/// <param name="Elapsed">How long it has run.</param>
public sealed record Job(Guid Id, JobOrder Order, JobState State, double Share, object? SoFar, object? Result, TimeSpan Elapsed)
{
    /// <summary>Whether it is over, one way or another.</summary>
    public bool IsOver => State is JobState.Done or JobState.Stopped or JobState.Failed;
}
