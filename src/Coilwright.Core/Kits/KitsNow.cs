using System.Collections.Immutable;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Kits;

/// <summary>How many kits of one piece what is at home makes, if nothing else is made of it.</summary>
/// <remarks>Beads alone: wire is planned by the coil, and of caps and glue nobody says how many are there.</remarks>
/// <param name="Kit">The kits, by index.</param>
/// <param name="Count">How many can be packed, with their spares.</param>
/// <param name="First">The beads of which there is too little for one more.</param>
/// <param name="Then">The same with one more pack of each of those; null when the pack of one of them is not known.</param>
public sealed record KitsNow(int Kit, int Count, ImmutableArray<ShoppingItem> First, KitsThen? Then)
{
    /// <summary>Reckons it.</summary>
    /// <param name="kit">The kits, by index.</param>
    /// <param name="items">The beads that go into it, at least one.</param>
    /// <param name="spares">Spares.</param>
    internal static KitsNow Of(int kit, ImmutableArray<ShoppingItem> items, Spares spares)
    {
        var (count, first) = Least(kit, items, spares, i => i.Home);
        KitsThen? then = null;
        if (first.All(i => i.Bead?.Description.Pack is not null))
        {
            var more = Least(kit, items, spares, i => i.Home + (first.Contains(i) ? i.Bead!.Description.Pack!.Beads : 0L));
            then = new KitsThen(more.Count, more.First);
        }
        return new KitsNow(kit, count, first, then);
    }

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
public sealed record KitsThen(int Count, ImmutableArray<ShoppingItem> First);
