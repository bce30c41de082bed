using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Arrangement;

/// <summary>A gap: a run of one spacer or connector between groups, whose count may change.</summary>
/// <param name="First">Its first bead in the order, from 0.</param>
/// <param name="Count">How many beads it has now.</param>
/// <param name="Kind">Index of their kind in the piece's list of beads.</param>
/// <param name="Least">The fewest it may have; never more than it has now.</param>
/// <param name="Most">The most; never fewer than it has now.</param>
public sealed record Gap(int First, int Count, int Kind, int Least, int Most)
{
    /// <summary>Index after its last bead.</summary>
    public int End => First + Count;
}

/// <summary>Finds the gaps of a piece.</summary>
public static class Gaps
{
    /// <summary>The gaps that are free to change under the piece's wishes, from the starting end.</summary>
    /// <remarks>A run is as long as one kind goes on; beads inside a group that reads as one thing belong to none.</remarks>
    public static ImmutableArray<Gap> Of(Piece piece, ReckoningChoices choices)
    {
        var order = piece.Order;
        var inside = new bool[order.Count];
        foreach (var group in order.ReadingGroups) inside.AsSpan(group.First, group.Count).Fill(true);
        var gaps = ImmutableArray.CreateBuilder<Gap>();
        for (var first = 0; first < order.Count;)
        {
            var end = first + 1;
            while (end < order.Count && order.Kinds[end] == order.Kinds[first] && !inside[end] && !inside[first]) end++;
            if (!inside[first] && RangeOf(piece, choices, order.Kinds[first], end - first) is { } range)
                gaps.Add(new Gap(first, end - first, order.Kinds[first], Math.Min(range.Least, end - first), Math.Max(range.Most, end - first)));
            first = end;
        }
        return gaps.ToImmutable();
    }

    private static RunRange? RangeOf(Piece piece, ReckoningChoices choices, int kind, int count)
    {
        var bead = piece.Beads[kind];
        if (bead.Role is not (Role.Spacer or Role.Connector)) return null;
        var said = piece.Wishes.Free.Runs;
        if (!said.IsEmpty) return said.TryGetValue(bead.Id, out var range) ? range : null;
        return new RunRange(Math.Max(1, count - choices.FreeRunReach), count + choices.FreeRunReach);
    }
}
