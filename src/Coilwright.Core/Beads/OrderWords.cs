using System.Collections.Immutable;

namespace Coilwright.Core.Beads;

/// <summary>The words that the order notation keeps for itself, so that no bead or group is named by one.</summary>
public static class OrderWords
{
    /// <summary>The words.</summary>
    public static ImmutableSortedSet<string> Reserved { get; } = ImmutableSortedSet.Create(StringComparer.Ordinal,
        "around", "backwards", "between", "mirror", "with", "x");
}
