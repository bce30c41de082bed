using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Shopping;

/// <summary>What is missing for some pieces, and every way to buy it.</summary>
/// <remarks>Wire is not on it: it is planned by the coil, see <see cref="Cutting.WireCutting"/>. Glue, tools and thread are not either.</remarks>
public sealed record ShoppingList
{
    private ShoppingList(ImmutableArray<ShoppingPiece> pieces, Spares spares, ImmutableArray<ShoppingItem> items, PriceList prices, BuyingList buying)
    {
        (Pieces, Spares, Items, Prices, Buying) = (pieces, spares, items, prices, buying);
        var offered = prices.Offers.Select(o => o.Item).ToHashSet(StringComparer.Ordinal);
        Unpriced = [.. items.Where(i => i.Missing > 0 && !offered.Contains(i.Id) && OwnOffer(i) is null)];
    }

    /// <summary>The pieces.</summary>
    public ImmutableArray<ShoppingPiece> Pieces { get; }

    /// <summary>The spares asked for.</summary>
    public Spares Spares { get; }

    /// <summary>Everything used, bead by bead in the order of the pieces' lists, caps and dangles last.</summary>
    public ImmutableArray<ShoppingItem> Items { get; }

    /// <summary>The prices.</summary>
    public PriceList Prices { get; }

    /// <summary>What is to be bought and has a price, with every way to buy it.</summary>
    public BuyingList Buying { get; }

    /// <summary>What is missing and has no price: it is bought, but not reckoned in.</summary>
    public ImmutableArray<ShoppingItem> Unpriced { get; }

    /// <summary>What all who offer it together have too little of, and by how many.</summary>
    public ImmutableArray<Want> CannotBeHad { get; private init; } = [];

    /// <summary>The list of some pieces.</summary>
    /// <param name="pieces">The pieces, at least one.</param>
    /// <param name="spares">What is to be had beside what is used.</param>
    /// <param name="home">How many of a bead are at home and free; what is not listed is not there.</param>
    /// <param name="prices">Prices. A bead that nobody offers in them is bought at the pack and price that its piece tells, where it tells any.</param>
    /// <param name="list">The list.</param>
    /// <param name="faults">What is wrong with numbers or prices; empty when the list is made.</param>
    public static bool TryMake(IReadOnlyList<ShoppingPiece> pieces, Spares spares, IReadOnlyDictionary<string, int> home, PriceList prices, out ShoppingList? list, out ImmutableArray<Fault> faults)
    {
        list = null;
        if (!TryCount(pieces, spares, home, out var items, out faults)) return false;
        var offered = prices.Offers.Select(o => o.Item).ToHashSet(StringComparer.Ordinal);
        faults = [.. items.Where(i => !offered.Contains(i.Id) && OwnOffer(i)?.Prices[0].Price % BuyingList.Grain > 0)
            .Select(i => Fault.Of(FaultCodes.BuyingTooFine, $"beads.{i.Id}.price", i.Bead!.Description.Price!.Value.ToString(CultureInfo.InvariantCulture)))];
        if (!faults.IsEmpty) return false;
        ImmutableArray<Offer> offers = [.. prices.Offers, .. items.Where(i => !offered.Contains(i.Id)).Select(OwnOffer).OfType<Offer>()];
        var can = offers.Select(o => o.Item).ToHashSet(StringComparer.Ordinal);
        Want[] wants = [.. items.Where(i => i.Missing > 0 && can.Contains(i.Id)).Select(i => new Want(i.Id, i.Missing))];
        if (!BuyingList.TryMake(wants, offers, prices.Suppliers, out var buying, out faults)) return false;
        // What can be had is bought all the same.
        var not = buying!.Missing;
        if (!not.IsEmpty)
            BuyingList.TryMake(wants.Select(w => w with { Amount = w.Amount - (not.FirstOrDefault(n => n.Item == w.Item)?.Amount ?? 0) }).Where(w => w.Amount > 0), offers, prices.Suppliers, out buying, out _);
        list = new ShoppingList([.. pieces], spares, items, prices, buying!) { CannotBeHad = not };
        return true;
    }

    /// <summary>The same list with more of one piece.</summary>
    /// <param name="piece">The piece, by index.</param>
    /// <param name="more">How many more, 1 or more.</param>
    /// <returns>Null when that is more than can be counted.</returns>
    public ShoppingList? With(int piece, int more)
    {
        var home = Items.Where(i => i.Home > 0).ToDictionary(i => i.Id, i => i.Home, StringComparer.Ordinal);
        var pieces = Pieces.SetItem(piece, Pieces[piece] with { Count = Pieces[piece].Count + more });
        return TryMake(pieces, Spares, home, Prices, out var list, out _) ? list : null;
    }

    /// <summary>Counts what some pieces take, with nothing bought.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="spares">What is to be had beside what is used.</param>
    /// <param name="home">How many of a bead are at home and free.</param>
    /// <param name="items">Everything used, bead by bead in the order of the pieces' lists, caps and dangles last.</param>
    /// <param name="faults">Which numbers are more than can be counted.</param>
    internal static bool TryCount(IReadOnlyList<ShoppingPiece> pieces, Spares spares, IReadOnlyDictionary<string, int> home, out ImmutableArray<ShoppingItem> items, out ImmutableArray<Fault> faults)
    {
        var found = ImmutableArray.CreateBuilder<Fault>();
        var order = new List<string>();
        var each = new Dictionary<string, int[]>(StringComparer.Ordinal);
        var beads = new Dictionary<string, Bead>(StringComparer.Ordinal);
        var otherwise = new HashSet<(string, int)>();
        for (var p = 0; p < pieces.Count; p++)
        {
            var piece = pieces[p].Piece;
            var uses = new int[piece.Beads.Length];
            foreach (var kind in piece.Order.Kinds) uses[kind]++;
            for (var kind = 0; kind < uses.Length; kind++)
            {
                if (uses[kind] == 0) continue;
                var bead = piece.Beads[kind];
                Use(bead.Id)[p] += uses[kind];
                if (!beads.TryAdd(bead.Id, bead) && !LooksTheSame(beads[bead.Id], bead)) otherwise.Add((bead.Id, p));
            }
        }
        for (var p = 0; p < pieces.Count; p++)
        {
            var ends = pieces[p].Piece.Ends;
            foreach (var (id, finish) in ShoppingItem.OfEnds)
                if (ends.Of(finish) is var count and > 0) Use(id)[p] = count;
        }

        var list = ImmutableArray.CreateBuilder<ShoppingItem>();
        foreach (var id in order)
        {
            long use = 0, with = 0;
            for (var p = 0; p < pieces.Count; p++)
            {
                use += (long)each[id][p] * pieces[p].Count;
                if (each[id][p] > 0) with += pieces[p].Count;
            }
            var spare = spares.For(id).Of(use, with);
            if (use + spare > BuyingList.MostCount)
                found.Add(Fault.Of(FaultCodes.ValueAtMost, id, (use + spare).ToString(CultureInfo.InvariantCulture),
                    ("max", BuyingList.MostCount.ToString(CultureInfo.InvariantCulture)), ("unit", "")));
            else
                list.Add(new ShoppingItem(id, beads.GetValueOrDefault(id), [.. each[id]], (int)use, (int)spare, Math.Max(0, home.GetValueOrDefault(id)))
                {
                    DescribedOtherwise = [.. Enumerable.Range(0, pieces.Count).Where(p => otherwise.Contains((id, p)))],
                });
        }
        (items, faults) = (list.ToImmutable(), found.ToImmutable());
        return faults.IsEmpty;

        int[] Use(string id)
        {
            if (each.TryGetValue(id, out var uses)) return uses;
            order.Add(id);
            return each[id] = new int[pieces.Count];
        }
    }

    private static Offer? OwnOffer(ShoppingItem item) => item.Bead?.Description is { Pack: { } pack, Price: { } price }
        ? new Offer(item.Id, PriceList.Unnamed, pack.Unit, pack.Beads, [new PriceStep(1, price)]) : null;

    // Sizes by a tenth: two rows of ten, measured twice with a rule, differ by less; one size of bead and the next by more. Common practice, no source.
    private static bool LooksTheSame(Bead a, Bead b) =>
        a.Shape == b.Shape && a.Description.Material == b.Description.Material && a.Description.OtherMaterial == b.Description.OtherMaterial
        && a.Description.Colours.SequenceEqual(b.Description.Colours) && Near(a.LengthMm, b.LengthMm) && Near(a.WidthMm, b.WidthMm) && Near(a.ThicknessMm, b.ThicknessMm);

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 0.1 * Math.Max(a, b);
}
