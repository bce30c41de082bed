using System.Collections.Immutable;
using Coilwright.Core.Buying;

namespace Coilwright.Core.Shopping;

/// <summary>What can be had where and for how much.</summary>
/// <param name="Offers">Every way to buy.</param>
/// <param name="Suppliers">What suppliers ask beside their prices; one that is not listed asks for nothing.</param>
/// <param name="Currency">Three letters of ISO 4217, or null when nobody said; nothing is changed from one into another.</param>
public sealed record PriceList(ImmutableArray<Offer> Offers, ImmutableArray<Supplier> Suppliers, string? Currency)
{
    /// <summary>Nothing is known: each bead's own pack and price are then what there is.</summary>
    public static readonly PriceList Empty = new([], [], null);

    /// <summary>The supplier of whom nothing is known but the price that stands in the piece.</summary>
    public const string Unnamed = "";
}
