using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>One stringing of a part of an order's text.</summary>
/// <param name="First">Index of its first bead in the order, from 0.</param>
/// <param name="Count">How many beads it strings there.</param>
/// <param name="Backwards">Whether it is strung from its other end, as in the second half of a mirror.</param>
public readonly record struct OrderStringing(int First, int Count, bool Backwards)
{
    /// <summary>Index after its last bead.</summary>
    public int End => First + Count;
}

/// <summary>Which part of an order's text strings which bead, and where on the wire each part's beads are.</summary>
/// <remarks>Of a sound text only. One part may string many beads (a count, a repeat, a group used again, a mirrored half), or none (a group written
/// down and not used). Immutable, but for what it remembers to answer sooner: to be asked by one at a time.</remarks>
public sealed class OrderMap
{
    private readonly OrderSource[] _beads;
    private readonly List<OrderSource> _groups;

    private OrderMap(OrderTree tree, OrderGroups names)
    {
        Tree = tree;
        Names = names;
        Lengths = new OrderLengths(names);
        (Order, _beads, _groups) = OrderStringer.StringWithSources(tree, names);
    }

    /// <summary>The text.</summary>
    public OrderTree Tree { get; }

    /// <summary>What it strings.</summary>
    public StringingOrder Order { get; }

    internal OrderGroups Names { get; }

    internal OrderLengths Lengths { get; }

    /// <summary>Maps an order's text; false, with what is wrong in it, when it is not sound.</summary>
    /// <param name="tree">The text.</param>
    /// <param name="beadIds">Ids of the piece's beads, in the piece's order.</param>
    /// <param name="map">The map.</param>
    /// <param name="faults">What is wrong, as <see cref="OrderNotation.Read(OrderTree, IReadOnlyList{string})"/> tells it.</param>
    public static bool TryMake(OrderTree tree, IReadOnlyList<string> beadIds, [NotNullWhen(true)] out OrderMap? map, out ImmutableArray<Fault> faults)
    {
        var names = new OrderGroups(tree, beadIds);
        faults = OrderNotation.FaultsOf(tree, names, beadIds);
        map = faults.IsEmpty ? new OrderMap(tree, names) : null;
        return map is not null;
    }

    /// <summary>The name that strings a bead.</summary>
    /// <param name="bead">Index of the bead in the order, from 0.</param>
    public OrderNameUse NameOf(int bead) => (OrderNameUse)_beads[bead].Part;

    /// <summary>Whether a bead's name is strung from its other end there, as in the second half of a mirror.</summary>
    /// <param name="bead">Index of the bead in the order, from 0.</param>
    public bool IsBackwards(int bead) => _beads[bead].Backwards;

    /// <summary>What strings one stringing of a group: the group's name, or the bracket that names it.</summary>
    /// <param name="group">Index in <see cref="StringingOrder.Groups"/>.</param>
    public OrderPart PartOf(int group) => _groups[group].Part;

    /// <summary>Whether a stringing of a group is strung from its other end.</summary>
    /// <param name="group">Index in <see cref="StringingOrder.Groups"/>.</param>
    public bool IsGroupBackwards(int group) => _groups[group].Backwards;

    /// <summary>Where on the wire a part's beads are, every stringing of it; empty when it strings none. A written-down group's are those of its
    /// run.</summary>
    public ImmutableArray<OrderStringing> StringingsOf(OrderNode node)
    {
        var found = ImmutableArray.CreateBuilder<OrderStringing>();
        var target = node is OrderDefinition definition ? definition.Run : node;
        foreach (var stringing in OrderStringings.All(this))
            if (ReferenceEquals(stringing.Node, target))
                found.Add(stringing.Stringing);
        return found.ToImmutable();
    }

    /// <summary>Every stringing of the innermost part that strings certain neighbouring beads together and is itself strung more than once; the one
    /// stringing of the whole when there is no such part.</summary>
    /// <param name="first">Index of the first bead.</param>
    /// <param name="count">How many, 1 or more.</param>
    public ImmutableArray<OrderStringing> EveryPassOf(int first, int count)
    {
        var around = OrderStringings.Around(this, first, count).Select(at => at.Node).Where(node => node is not OrderRun).ToList();
        var stringings = around.ToDictionary(node => node, _ => ImmutableArray.CreateBuilder<OrderStringing>());
        foreach (var (node, stringing) in OrderStringings.All(this))
            if (stringings.TryGetValue(node, out var found))
                found.Add(stringing);
        for (var i = around.Count - 1; i >= 0; i--)
            if (stringings[around[i]].Count > 1)
                return stringings[around[i]].ToImmutable();
        return [new OrderStringing(0, Order.Count, false)];
    }
}
