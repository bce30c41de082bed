using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Kits;

/// <summary>A batch of kits: what lies in which bag, what to fetch from which drawer, and how many kits what is at home makes.</summary>
/// <remarks>
/// <para>Counts are those of the <see cref="ShoppingList"/> of the same pieces: what goes into all bags and what is laid aside are together what is used and to spare there.</para>
/// <para>Spares asked for with each piece lie in its bags. A share of all (5 %) does not divide into bags; it is laid aside for the batch, to make good what breaks while packing.</para>
/// <para>Wire is told by the piece and not counted against what is at home: <see cref="Cutting.WireCutting"/> plans it.</para>
/// </remarks>
public sealed record KitPlan
{
    private KitPlan(ImmutableArray<Kit> kits, Spares spares, ImmutableArray<PickLine> picks, ImmutableArray<KitsNow> now) => (Kits, Spares, Picks, Now) = (kits, spares, picks, now);

    /// <summary>The kits, piece by piece.</summary>
    public ImmutableArray<Kit> Kits { get; }

    /// <summary>The spares asked for.</summary>
    public Spares Spares { get; }

    /// <summary>What to fetch: drawer by drawer, then what lies in none that is known, in the order of the pieces' lists, caps and dangles last.</summary>
    public ImmutableArray<PickLine> Picks { get; }

    /// <summary>For each piece how many kits what is at home makes; empty when nobody said what is.</summary>
    public ImmutableArray<KitsNow> Now { get; }

    /// <summary>Whether it was said what is at home.</summary>
    public bool HomeIsKnown => !Now.IsEmpty;

    /// <summary>Whether it is known of anything in which drawer it lies.</summary>
    public bool HasDrawers => Picks.Any(p => !p.Drawers.IsEmpty);

    /// <summary>Bags in all kits together.</summary>
    public long Bags => Kits.Sum(k => (long)k.Count * k.Bags.Length);

    /// <summary>Plans a batch.</summary>
    /// <param name="pieces">The pieces, at least one.</param>
    /// <param name="spares">What is to be there beside what is used.</param>
    /// <param name="home">What is at home; null when nobody said.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="faults">Which numbers are more than can be counted; empty when the plan is made.</param>
    public static bool TryMake(IReadOnlyList<KitPiece> pieces, Spares spares, HomeStock? home, out KitPlan? plan, out ImmutableArray<Fault> faults) =>
        TryMake(pieces, spares, home, PriceList.Empty, out plan, out faults);

    /// <summary>Plans a batch, one more pack being one that prices tell of.</summary>
    /// <param name="pieces">The pieces, at least one.</param>
    /// <param name="spares">What is to be there beside what is used.</param>
    /// <param name="home">What is at home; null when nobody said.</param>
    /// <param name="prices">The prices; a bead that they do not offer is sold as its piece tells.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="faults">Which numbers are more than can be counted; empty when the plan is made.</param>
    public static bool TryMake(IReadOnlyList<KitPiece> pieces, Spares spares, HomeStock? home, PriceList prices, out KitPlan? plan, out ImmutableArray<Fault> faults)
    {
        plan = null;
        if (!ShoppingList.TryCount([.. pieces.Select(p => p.Of)], spares, home?.Free ?? ImmutableDictionary<string, int>.Empty, out var items, out faults)) return false;
        ImmutableArray<Kit> kits = [.. pieces.Select((piece, p) => new Kit(piece.Of.Name, piece.Reckoned, piece.Of.Count, BagsOf(piece, p, items, spares)) { Version = piece.Version })];
        var picks = items.Select(item =>
        {
            ImmutableArray<PickShare> shares = [.. kits.SelectMany((kit, k) => kit.Bags.Where(b => b.Item == item.Id).Select(b => new PickShare(k, b)))];
            return new PickLine(item, shares, shares.Sum(s => s.Bag.Count * kits[s.Kit].Count), home is not null && home.Drawers.TryGetValue(item.Id, out var drawers) ? drawers : []);
        });
        var beads = items.Where(i => i.Bead is not null).ToArray();
        plan = new KitPlan(kits, spares, [.. picks.OrderBy(p => p.Drawers.IsEmpty).ThenBy(p => p.Drawers.FirstOrDefault(), DrawerOrder.It)],
            home is null ? [] : [.. kits.Select((_, k) => KitsNow.Of(k, [.. beads.Where(i => i.Each[k] > 0)], spares, prices))]);
        return true;
    }

    private static ImmutableArray<KitBag> BagsOf(KitPiece piece, int index, ImmutableArray<ShoppingItem> items, Spares spares)
    {
        var bags = piece.Reckoned.Counts.Select(kind => new KitBag(kind.Bead.Id, kind, kind.Count, spares.For(kind.Bead.Id).PerPiece));
        var ends = items.Where(i => i.Bead is null && i.Each[index] > 0).Select(i => new KitBag(i.Id, null, i.Each[index], spares.For(i.Id).PerPiece));
        return [.. bags, .. ends];
    }
}
