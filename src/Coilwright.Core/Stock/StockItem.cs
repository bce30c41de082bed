using System.Collections.Immutable;
using Coilwright.Core.Beads;

namespace Coilwright.Core.Stock;

/// <summary>Something that is kept in drawers: a kind of bead, a wire, a finding. Not how much of it there is.</summary>
/// <param name="Key">Its name here, <c>[a-z][a-z0-9-]*</c>: for a bead the id that pieces call it by.</param>
/// <param name="Name">Name for people.</param>
/// <param name="Unit">What it is counted in. Said once: the same thing counted otherwise is another item.</param>
public sealed record StockItem(string Key, string Name, StockUnit Unit)
{
    /// <summary>The bead that it is, under the same id; null for what is none, or is not described.</summary>
    public BeadDescription? Bead { get; init; }

    /// <summary>With less than this to take, it is time to buy; null when nobody said.</summary>
    public Quantity? Par { get; init; }

    /// <summary>Other names of the same thing.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>The item of a kind of bead, under its id and counted one by one.</summary>
    public static StockItem Of(Bead bead) => new(bead.Id, bead.Name, StockUnit.Each) { Bead = bead.Description, Aliases = bead.Description.Aliases };
}
