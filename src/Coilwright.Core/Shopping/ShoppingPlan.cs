using System.Collections.Immutable;
using Coilwright.Core.Buying;

namespace Coilwright.Core.Shopping;

/// <summary>One item after the shopping.</summary>
/// <param name="Item">The item.</param>
/// <param name="Bought">How many were bought.</param>
/// <param name="Cost">What they cost, without freight; null when nothing tells.</param>
public sealed record ShoppingLine(ShoppingItem Item, int Bought, decimal? Cost)
{
    /// <summary>How many are there when all pieces are made and the spares laid aside; below 0 when some are still missing.</summary>
    public int Left => Item.Home + Bought - Item.Use - Item.Spare;

    /// <summary>How many of those were bought now: what was at home is used first.</summary>
    public int LeftOfBought => Math.Clamp(Left, 0, Bought);

    /// <summary>What the left-over ones of those bought now cost; null when nothing tells.</summary>
    public decimal? LeftCost => Bought == 0 ? 0 : Cost * LeftOfBought / Bought;
}

/// <summary>What to buy for some pieces, and what is left over.</summary>
/// <param name="List">What was missing.</param>
/// <param name="Plan">What to buy of what has a price; null when every order would be too small to be sent.</param>
public sealed record ShoppingPlan(ShoppingList List, BuyingPlan? Plan)
{
    /// <summary>Every item, in the order of the list.</summary>
    public ImmutableArray<ShoppingLine> Lines { get; } = [.. List.Items.Select(i => LineOf(List, Plan, i))];

    /// <summary>Whether everything that is missing can be had, at whatever price.</summary>
    public bool ComesOut => Plan is not null && List.CannotBeHad.IsEmpty;

    /// <summary>What the left-over beads of those bought cost; items without a price are not in it.</summary>
    public decimal LeftCost => Lines.Sum(l => l.LeftCost ?? 0);

    /// <summary>Most more of a piece that could be made of what is left over, spares and all, with nothing bought.</summary>
    /// <param name="piece">The piece, by index.</param>
    public int MoreOfLeftovers(int piece)
    {
        if (!ComesOut) return 0;
        // What is left over falls with every piece more, never grows: halving finds the last one.
        int can = 0, cannot = Lines.Where(l => l.Item.Each[piece] > 0).Select(l => Math.Max(0, l.Left) / l.Item.Each[piece] + 1).DefaultIfEmpty(1).Min();
        while (cannot - can > 1)
        {
            var middle = can + (cannot - can) / 2;
            if (Suffices(piece, middle)) can = middle;
            else cannot = middle;
        }
        return can;
    }

    private bool Suffices(int piece, int more)
    {
        if (List.With(piece, more) is not { } list) return false;
        for (var i = 0; i < Lines.Length; i++)
            if (list.Items[i].Use + list.Items[i].Spare > Lines[i].Item.Home + Lines[i].Bought) return false;
        return true;
    }

    private static ShoppingLine LineOf(ShoppingList list, BuyingPlan? plan, ShoppingItem item)
    {
        if (plan is not null && !list.Unpriced.Contains(item))
        {
            var mine = plan.Purchases.Where(p => list.Buying.Offers[p.Offer].Item == item.Id).ToArray();
            return new ShoppingLine(item, mine.Sum(p => p.Units * list.Buying.Offers[p.Offer].Holds), mine.Sum(p => p.Cost));
        }
        // Without a price, or without a plan: whole packs where a pack is known, else just what is missing.
        var bought = item.Bead?.Description.Pack is { } pack && item.Missing > 0 ? (int)Math.Min(int.MaxValue, ((item.Missing - 1L) / pack.Beads + 1) * pack.Beads) : item.Missing;
        return new ShoppingLine(item, bought, item.Missing == 0 ? 0 : null);
    }
}
