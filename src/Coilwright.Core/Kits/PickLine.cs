using System.Collections.Immutable;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Kits;

/// <summary>Where some of what is picked goes.</summary>
/// <param name="Kit">The kits, by index.</param>
/// <param name="Bag">The bag in each of them.</param>
public sealed record PickShare(int Kit, KitBag Bag);

/// <summary>One thing to fetch for the whole batch.</summary>
/// <param name="Item">The thing: used, to spare, at home, missing.</param>
/// <param name="Shares">The bags that it goes into.</param>
/// <param name="InBags">How many go into all bags.</param>
/// <param name="Drawers">Where some of it lies; empty when nobody said.</param>
public sealed record PickLine(ShoppingItem Item, ImmutableArray<PickShare> Shares, int InBags, ImmutableArray<string> Drawers)
{
    /// <summary>How many are laid aside for the whole batch, in no bag: the share of all that was asked for.</summary>
    public int Aside => Item.Use + Item.Spare - InBags;

    /// <summary>How many are fetched.</summary>
    public int All => Item.Use + Item.Spare;
}
