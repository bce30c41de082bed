using System.Collections.Immutable;

namespace Coilwright.Documents.BeadFigures;

/// <summary>Which bead of its kind each strung bead is, from 0.</summary>
/// <remarks>Uneven kinds take their drawings by it in turn: neighbours of a kind are then never twins, whatever stands between them, and an edit leaves
/// the looks of all other kinds alone.</remarks>
public static class NthOfKind
{
    /// <summary>Counts them.</summary>
    /// <param name="kinds">The kind of each bead, from the starting end.</param>
    public static ImmutableArray<int> Of(ImmutableArray<int> kinds)
    {
        var counts = new int[kinds.IsEmpty ? 0 : kinds.Max() + 1];
        return [.. kinds.Select(k => counts[k]++)];
    }
}
