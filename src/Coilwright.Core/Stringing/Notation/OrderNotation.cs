using System.Collections.Immutable;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>What came of reading an order.</summary>
/// <param name="Order">The order, or null when there were faults.</param>
/// <param name="Faults">What is wrong, in the order of the text; the first <see cref="OrderLimits.FaultsTold"/> of it.</param>
public sealed record ReadOrder(StringingOrder? Order, ImmutableArray<Fault> Faults)
{
    /// <summary>The text as a tree, with its blanks and comments; there also when there are faults. Null for an order read from a list, and for a
    /// text that is too long to be looked at.</summary>
    public OrderTree? Tree { get; init; }
}

/// <summary>The order notation: a stringing order as a maker's note. Described in docs/order-notation.md.</summary>
/// <remarks>Reading never throws on any text: what is wrong comes back as faults. It takes time in line with the text and the beads strung; an
/// order above the <see cref="OrderLimits"/> is refused before anything is strung.</remarks>
public static class OrderNotation
{
    /// <summary>Reads an order.</summary>
    /// <param name="text">The notation, lines parted by line feeds.</param>
    /// <param name="beadIds">Ids of the piece's beads, in the piece's order.</param>
    public static ReadOrder Read(string text, IReadOnlyList<string> beadIds)
    {
        if (text.Length <= OrderLimits.TextLength) return Read(OrderTree.Of(text), beadIds);
        var fault = Fault.Of(FaultCodes.OrderTooLong, "", OrderFaultList.Number(text.Length), ("max", OrderFaultList.Number(OrderLimits.TextLength)));
        return new ReadOrder(null, [fault.At(1, 1)]);
    }

    /// <summary>Reads an order from its tree.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="beadIds">Ids of the piece's beads, in the piece's order.</param>
    public static ReadOrder Read(OrderTree tree, IReadOnlyList<string> beadIds)
    {
        var groups = new OrderGroups(tree, beadIds);
        var faults = FaultsOf(tree, groups, beadIds);
        var order = faults.IsEmpty ? OrderStringer.String(tree, groups) : null;
        return new ReadOrder(order, faults) { Tree = tree };
    }

    internal static ImmutableArray<Fault> FaultsOf(OrderTree tree, OrderGroups groups, IReadOnlyList<string> beadIds) =>
        OrderFaultList.Told([.. tree.Faults, .. groups.Faults.Faults], tree.Places, beadIds.Concat(groups.Names));
}
