using System.Collections.Immutable;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Marking;

/// <summary>Finds every place on the wire that the same words string.</summary>
/// <remarks>In an order given as a list nothing is written once for several places, so there the other stringings of a group that have the same beads
/// are meant.</remarks>
internal sealed class OrderPasses(StringingOrder order, OrderMap? map)
{
    /// <summary>Whether a bead is strung against the direction of the text.</summary>
    public bool IsBackwards(int bead) => map?.IsBackwards(bead) ?? false;

    /// <summary>Every stringing of what strings some neighbouring beads, them included.</summary>
    public ImmutableArray<OrderStringing> Of(OrderStringing row)
    {
        var passes = map is null ? SameGroups(row) : map.EveryPassOf(row.First, row.Count);
        var own = passes.First(pass => pass.First <= row.First && pass.End >= row.End);
        var offset = row.First - own.First;
        return [.. passes.Select(pass => new OrderStringing(
            pass.Backwards == own.Backwards ? pass.First + offset : pass.End - offset - row.Count, row.Count,
            pass.Backwards == own.Backwards ? row.Backwards : !row.Backwards))];
    }

    /// <summary>Every bead that is strung by the same name as one of some beads, and whether it is strung the other way round than that one.</summary>
    public IEnumerable<(int Bead, bool Turned)> Of(ImmutableSortedSet<int> beads)
    {
        if (map is null) return beads.SelectMany(bead => Of(new OrderStringing(bead, 1, false))).Select(pass => (pass.First, false)).Distinct();
        var names = new Dictionary<OrderNameUse, bool>();
        foreach (var bead in beads) names.TryAdd(map.NameOf(bead), map.IsBackwards(bead));
        return Enumerable.Range(0, order.Count).Where(bead => names.ContainsKey(map.NameOf(bead)))
            .Select(bead => (bead, names[map.NameOf(bead)] != map.IsBackwards(bead)));
    }

    /// <summary>The innermost group around some beads and all others of its name with the same beads; the first is its own.</summary>
    private ImmutableArray<OrderStringing> SameGroups(OrderStringing row)
    {
        var own = order.Groups.LastOrDefault(group => group.First <= row.First && group.End >= row.End);
        if (own is null) return [row];
        return [.. order.Groups.Where(group => group.Name == own.Name && group.Count == own.Count
                && order.Kinds.AsSpan(group.First, group.Count).SequenceEqual(order.Kinds.AsSpan(own.First, own.Count)))
            .OrderByDescending(group => group == own).Select(group => new OrderStringing(group.First, group.Count, false))];
    }
}
