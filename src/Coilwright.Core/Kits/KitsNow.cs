using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Kits;

/// <summary>How many kits of one piece what is at home makes, if nothing else is made of it.</summary>
/// <remarks>Beads alone: wire is planned by the coil, and of caps, dangles and glue nobody says how many are there.</remarks>
/// <param name="Kit">The kits, by index.</param>
/// <param name="Count">How many can be packed, with their spares.</param>
/// <param name="First">The beads of which there is too little for one more.</param>
/// <param name="Then">The same with one more pack of each of those; null when the pack of one of them is not known.</param>
public sealed record KitsNow(int Kit, int Count, ImmutableArray<ShoppingItem> First, KitsThen? Then)
{
    /// <summary>For each bead of the piece how many kits it alone is enough for, the shortest first.</summary>
    public ImmutableArray<(ShoppingItem Item, int Count)> Each { get; private init; } = [];

    /// <summary>Reckons it.</summary>
    /// <param name="kit">The kits, by index.</param>
    /// <param name="items">The beads that go into it, at least one.</param>
    /// <param name="spares">Spares.</param>
    /// <param name="prices">Prices whose packs are meant, where they offer a bead.</param>
    internal static KitsNow Of(int kit, ImmutableArray<ShoppingItem> items, Spares spares, PriceList prices)
    {
        var (count, first) = Least(kit, items, spares, i => i.Home);
        KitsThen? then = null;
        Pack?[] packs = [.. first.Select(i => PackOf(i, prices))];
        if (packs.All(p => p is not null))
        {
            var more = Least(kit, items, spares, i => i.Home + (first.IndexOf(i) is >= 0 and var f ? packs[f]!.Beads : 0L));
            then = new KitsThen(more.Count, more.First, [.. packs.Select(p => p!)]);
        }
        return new KitsNow(kit, count, first, then) { Each = [.. items.Select(i => (i, Most(i.Each[kit], spares.For(i.Id), i.Home))).OrderBy(i => i.Item2)] };
    }

    // That of the prices at which one bead costs least, else that of the piece.
    private static Pack? PackOf(ShoppingItem item, PriceList prices) =>
        prices.Offers.Where(o => o.Item == item.Id && o.Most != 0).OrderBy(o => o.Cost(1) / o.Holds).Select(o => new Pack(o.Unit, o.Holds)).FirstOrDefault() ?? item.Bead?.Description.Pack;

    private static (int Count, ImmutableArray<ShoppingItem> First) Least(int kit, ImmutableArray<ShoppingItem> items, Spares spares, Func<ShoppingItem, long> home)
    {
        int[] counts = [.. items.Select(i => Most(i.Each[kit], spares.For(i.Id), home(i)))];
        var least = counts.Min();
        return (least, [.. items.Where((_, n) => counts[n] == least)]);
    }

    // What is needed never falls as kits are added, and each takes at least one: halving finds the last that home is enough for.
    private static int Most(int each, SparesRule spares, long home)
    {
        long can = 0, cannot = home / each + 1;
        while (cannot - can > 1)
        {
            var middle = can + (cannot - can) / 2;
            if (middle * each + spares.Of(middle * each, middle) <= home) can = middle;
            else cannot = middle;
        }
        return (int)Math.Min(can, int.MaxValue);
    }
}

/// <summary>How many kits there are with a little more bought.</summary>
/// <param name="Count">How many can be packed then.</param>
/// <param name="First">The beads of which there is then too little for one more.</param>
/// <param name="Packs">The pack of each bead that ran out first.</param>
public sealed record KitsThen(int Count, ImmutableArray<ShoppingItem> First, ImmutableArray<Pack> Packs);
