using System.Collections.Immutable;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>What came of reading an order.</summary>
/// <param name="Order">The order, or null when there were faults.</param>
/// <param name="Faults">Everything wrong with the text, in the order of the text.</param>
public sealed record ReadOrder(StringingOrder? Order, ImmutableArray<Fault> Faults);

/// <summary>The order notation: a stringing order as a maker's note. Described in docs/order-notation.md.</summary>
public static class OrderNotation
{
    /// <summary>Reads an order.</summary>
    /// <param name="text">The notation, lines parted by line feeds.</param>
    /// <param name="beadIds">Ids of the piece's beads, in the piece's order.</param>
    public static ReadOrder Read(string text, IReadOnlyList<string> beadIds) => throw new NotSupportedException();
}
