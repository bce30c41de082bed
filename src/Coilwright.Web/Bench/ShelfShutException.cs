using Coilwright.Core.Faults;

namespace Coilwright.Web.Bench;

/// <summary>The shelf that pieces are kept on cannot be opened; the bench is not started, as nothing could be kept.</summary>
/// <param name="why">Why.</param>
public sealed class ShelfShutException(Fault why) : Exception(why.Code)
{
    /// <summary>Why.</summary>
    public Fault Why { get; } = why;
}
