using Coilwright.Core.Stringing;

namespace Coilwright.Core.Editing;

/// <summary>Rows that change places, bead by bead: what comes of it, without the text that says so.</summary>
public static class RowSwaps
{
    /// <summary>The order after some exchanges, one after the other.</summary>
    /// <param name="order">The order before.</param>
    /// <param name="swaps">The exchanges, as in <see cref="Restring"/>; their rows must be in the order and not overlap.</param>
    public static StringingOrder Done(StringingOrder order, IEnumerable<RowSwap> swaps) => swaps.Aggregate(order, Done);

    private static StringingOrder Done(StringingOrder order, RowSwap swap)
    {
        var (end, otherEnd) = (swap.First + swap.Count, swap.OtherFirst + swap.OtherCount);
        var kinds = order.Kinds;
        // A group in one of the rows or between them goes where its beads go; one that holds both rows stays.
        GroupRun Moved(GroupRun group) =>
            group.First >= swap.First && group.End <= end ? group with { First = group.First + otherEnd - end }
            : group.First >= swap.OtherFirst && group.End <= otherEnd ? group with { First = group.First - swap.OtherFirst + swap.First }
            : group.First >= end && group.End <= swap.OtherFirst ? group with { First = group.First + swap.OtherCount - swap.Count }
            : group;
        return new StringingOrder([.. kinds[..swap.First], .. kinds[swap.OtherFirst..otherEnd], .. kinds[end..swap.OtherFirst], .. kinds[swap.First..end], .. kinds[otherEnd..]],
            [.. order.Groups.Select(Moved).OrderBy(group => group.First).ThenByDescending(group => group.Count)]);
    }
}
