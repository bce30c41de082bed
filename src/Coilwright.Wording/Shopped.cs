using System.Collections.Immutable;
using Coilwright.Core.Cutting;
using Coilwright.Core.Shopping;

namespace Coilwright.Wording;

/// <summary>All that is told of a shopping.</summary>
/// <param name="Plan">What to buy.</param>
/// <param name="Points">Where a little more makes more pieces; empty when nobody asked.</param>
/// <param name="LookedFor">How many more of each piece were looked at; null when nobody asked.</param>
public sealed record Shopped(ShoppingPlan Plan, ImmutableArray<BreakPoint> Points, int? LookedFor)
{
    /// <summary>The wire, planned by the coil; null when no wire was named.</summary>
    public CuttingPlan? Wire { get; init; }

    /// <summary>The day of ordering; null when nobody said.</summary>
    public DateOnly? On { get; init; }

    /// <summary>Whether everything can be had that is missing, at whatever price.</summary>
    public bool ComesOut => Plan.ComesOut && Wire is not { ComesOut: false };
}
