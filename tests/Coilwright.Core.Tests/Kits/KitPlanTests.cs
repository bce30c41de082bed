using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Buying;
using Coilwright.Core.Findings;
using Coilwright.Core.Kits;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Core.Stock;
using CsCheck;

namespace Coilwright.Core.Tests.Kits;

/// <summary>From pieces to bags.</summary>
public class KitPlanTests
{
    private static Bead Bead(string id, int? pack = null) => SamplePieces.Bead(id, "round", 6, with: d => d with { Pack = pack is { } beads ? new Pack("strand", beads) : null });

    private static KitPiece Piece(string name, int count, ImmutableArray<Bead> beads, params int[] kinds)
    {
        var piece = SamplePieces.Piece(beads, kinds);
        return new KitPiece(new ShoppingPiece(name, piece, count), Reckoning.Of(piece, SamplePieces.Data));
    }

    private static HomeStock Home(params (string Bead, int Count)[] home) => new(home.ToDictionary(h => h.Bead, h => h.Count, StringComparer.Ordinal), ImmutableDictionary<string, ImmutableArray<string>>.Empty);

    private static KitPlan Plan(IReadOnlyList<KitPiece> pieces, Spares? spares = null, HomeStock? home = null)
    {
        Assert.True(KitPlan.TryMake(pieces, spares ?? Spares.None, home, out var plan, out var faults), string.Join('\n', faults));
        return plan!;
    }

    private static Spares With(decimal percent, int perPiece) => new(new SparesRule(percent, perPiece), Spares.None.ByBead);

    [Fact]
    public void A_bag_has_the_pieces_own_letter_and_its_spares()
    {
        // The bead that nobody strings has no letter and no bag.
        var plan = Plan([Piece("one", 3, [Bead("a"), Bead("idle"), Bead("b")], 0, 2, 0, 0), Piece("two", 2, [Bead("b")], 0, 0)], With(0, 2));
        Assert.Equal([("a", "A", 3, 2, 5), ("b", "B", 1, 2, 3)], plan.Kits[0].Bags.Select(b => (b.Item, b.Letter, b.Use, b.Spare, b.Count)));
        // In another piece the same bead has another letter.
        Assert.Equal([("b", "A", 4)], plan.Kits[1].Bags.Select(b => (b.Item, b.Letter, b.Count)));
        Assert.Equal([("a", 15, 0), ("b", 3 * 3 + 2 * 4, 0)], plan.Picks.Select(p => (p.Item.Id, p.InBags, p.Aside)));
        Assert.Equal([(0, 3), (1, 4)], plan.Picks[1].Shares.Select(s => (s.Kit, s.Bag.Count)));
        Assert.Equal(5, plan.Kits.Sum(k => k.Count));
        Assert.Equal(3 * 2 + 2, plan.Bags);
    }

    [Fact]
    public void Glued_ends_have_a_bag_of_caps_without_a_letter_and_do_not_hold_up_the_kits()
    {
        var piece = SamplePieces.Piece([Bead("a")], [0, 0]);
        piece = piece with { Ends = piece.Ends with { Finish = new WireEnd(EndFinish.GluedCap, 4) } };
        var plan = Plan([new KitPiece(new ShoppingPiece("one", piece, 3), Reckoning.Of(piece, SamplePieces.Data))], home: Home(("a", 9)));
        Assert.Equal((ShoppingItem.GluedCap, "", 1), (plan.Kits[0].Bags[^1].Item, plan.Kits[0].Bags[^1].Letter, plan.Kits[0].Bags[^1].Count));
        Assert.Equal(4, plan.Now[0].Count);
        Assert.Equal(["a"], plan.Now[0].First.Select(i => i.Id));
    }

    // What goes into bags and what is laid aside is what the shopping list of the same pieces has as used and to spare.
    [Fact]
    public void Counts_of_all_kits_are_those_of_the_shopping_list() => Cases.Sample(c =>
    {
        var plan = Plan(c.Pieces, c.Spares, Home(c.Home));
        Assert.True(ShoppingList.TryMake([.. c.Pieces.Select(p => p.Of)], c.Spares, c.Home.ToDictionary(h => h.Bead, h => h.Count), PriceList.Empty, out var list, out _));
        Assert.Equal(list!.Items.Select(i => (i.Id, i.Use, i.Spare, i.Missing)), plan.Picks.Select(p => (p.Item.Id, p.Item.Use, p.Item.Spare, p.Item.Missing)));
        foreach (var pick in plan.Picks)
        {
            var bags = plan.Kits.SelectMany(k => k.Bags.Where(b => b.Item == pick.Item.Id).Select(b => (k.Count, Bag: b))).ToArray();
            Assert.Equal(pick.Item.Use, bags.Sum(b => b.Count * b.Bag.Use));
            Assert.Equal(pick.Item.Spare, bags.Sum(b => b.Count * b.Bag.Spare) + pick.Aside);
            Assert.Equal((long)Math.Ceiling(pick.Item.Use * c.Spares.Usual.Percent / 100), pick.Aside);
        }
    }, iter: 300);

    [Fact]
    public void Each_bead_tells_how_many_kits_it_alone_makes_and_one_more_pack_is_that_of_the_prices_where_they_have_one()
    {
        KitPiece[] pieces = [Piece("one", 1, [Bead("a", 10), Bead("b", 10)], 0, 0, 1)];
        PriceList prices = new([new Offer("a", "near", "bag", 100, [new PriceStep(1, 9)]), new Offer("a", "far", "strand", 40, [new PriceStep(1, 2)]), new Offer("a", "gone", "strand", 4, [new PriceStep(1, 0)]) { Most = 0 }], [], null);
        Assert.True(KitPlan.TryMake(pieces, Spares.None, Home(("a", 7), ("b", 30)), prices, out var plan, out _));
        var now = Assert.Single(plan!.Now);
        Assert.Equal([("a", 3), ("b", 30)], now.Each.Select(e => (e.Item.Id, e.Count)));
        // A strand of forty at 2.00 costs least for each; seven and forty are enough for twenty-three.
        Assert.Equal((new Pack("strand", 40), 23), (Assert.Single(now.Then!.Packs), now.Then.Count));
        Assert.Equal((new Pack("strand", 10), 8), (Assert.Single(Plan(pieces, home: Home(("a", 7), ("b", 30))).Now[0].Then!.Packs), Plan(pieces, home: Home(("a", 7), ("b", 30))).Now[0].Then!.Count));
    }

    // Kits packed one after the other until the shopping list of them is more than is at home.
    [Fact]
    public void How_many_kits_there_are_now_is_what_counting_up_gives_with_one_more_pack_too() => Cases.Sample(c =>
    {
        var plan = Plan(c.Pieces, c.Spares, Home(c.Home));
        for (var k = 0; k < c.Pieces.Length; k++)
        {
            var home = c.Home.ToDictionary(h => h.Bead, h => h.Count);
            var (count, first) = CountUp(c.Pieces[k], c.Spares, home);
            Assert.Equal(count, plan.Now[k].Count);
            Assert.Equal(first.Order(), plan.Now[k].First.Select(i => i.Id).Order());
            foreach (var bead in first) home[bead] = home.GetValueOrDefault(bead) + Packs[bead];
            var then = CountUp(c.Pieces[k], c.Spares, home);
            Assert.Equal(then.Count, plan.Now[k].Then!.Count);
            Assert.Equal(then.First.Order(), plan.Now[k].Then!.First.Select(i => i.Id).Order());
        }
    }, iter: 150);

    [Fact]
    public void Without_a_pack_nothing_is_said_of_one_more()
    {
        var plan = Plan([Piece("one", 1, [Bead("a", 10), Bead("b")], 0, 0, 1)], home: Home(("a", 20), ("b", 3)));
        Assert.Equal((3, "b"), (plan.Now[0].Count, Assert.Single(plan.Now[0].First).Id));
        Assert.Null(plan.Now[0].Then);
        plan = Plan([Piece("one", 1, [Bead("a", 10), Bead("b")], 0, 0, 1)], home: Home(("a", 5), ("b", 30)));
        Assert.Equal((2, 7), (plan.Now[0].Count, plan.Now[0].Then!.Count));
        Assert.Empty(Plan([Piece("one", 1, [Bead("a")], 0)]).Now);
    }

    [Fact]
    public void The_pick_list_goes_from_drawer_to_drawer()
    {
        StockLine Line(string bead, StockUnit unit, params (int Count, string? Drawer)[] lots)
        {
            var item = new StockItem(bead, bead, unit);
            StockEntry[] entries = [.. lots.Select((l, n) => new StockEntry(n + 1, DateTimeOffset.UnixEpoch,
                new Movement.Receive(new Guid(n + 1, 0, 0, new byte[8]), bead, new StockLot(Quantity.Of(l.Count)) { Drawer = l.Drawer }), [new LotChange(new Guid(n + 1, 0, 0, new byte[8]), Quantity.Of(l.Count))]))];
            return new StockLine(item, 1, StockBalance.Of(entries), StockValue.Of(entries));
        }
        var home = HomeStock.Of([Line("a", StockUnit.Each, (5, "B10"), (2, "B2")), Line("b", StockUnit.Each, (4, null)), Line("c", StockUnit.Each, (7, "b1")), Line("d", StockUnit.Each, (1, "A3")), Line("e", StockUnit.Gram, (900, "A1"))]);
        var plan = Plan([Piece("one", 1, [Bead("a"), Bead("b"), Bead("c"), Bead("d"), Bead("e")], 0, 1, 2, 3, 4)], home: home);
        Assert.Equal(["d", "c", "a", "b", "e"], plan.Picks.Select(p => p.Item.Id));
        Assert.Equal(["B2", "B10"], plan.Picks[2].Drawers);
        // Grams of a bead are no beads.
        Assert.Equal([1, 7, 7, 4, 0], plan.Picks.Select(p => p.Item.Home));
    }

    [Theory]
    [InlineData("2", "10", -1)]
    [InlineData("A2", "A10", -1)]
    [InlineData("A2", "b1", -1)]
    [InlineData("B", "a", 1)]
    [InlineData("A", "A1", -1)]
    [InlineData("A02", "A2", -1)]
    [InlineData("A2-9", "A2-10", -1)]
    [InlineData("A2", "A2", 0)]
    public void Drawers_stand_as_on_the_wall(string one, string other, int by)
    {
        Assert.Equal(by, Math.Sign(DrawerOrder.It.Compare(one, other)));
        Assert.Equal(-by, Math.Sign(DrawerOrder.It.Compare(other, one)));
    }

    private static readonly Dictionary<string, int> Packs = new(StringComparer.Ordinal) { ["a"] = 5, ["b"] = 12, ["c"] = 40 };

    private static readonly ImmutableArray<Bead> Beads = [.. Packs.Select(p => Bead(p.Key, p.Value))];

    private static readonly KitPiece[] Orders = [.. new[] { "a", "ab", "aab", "cccab", "bcbcbcb", "aaaaaaaaab", "ccccccc", "abcabcabca", "ba" }.Select(o => Piece(o, 1, Beads, [.. o.Select(b => b - 'a')]))];

    private static readonly Gen<(KitPiece[] Pieces, Spares Spares, (string Bead, int Count)[] Home)> Cases =
        Gen.Select(Gen.Int[0, Orders.Length - 1].Array[1, 3], Gen.Int[1, 7].Array[3], Gen.Int[0, 60].Array[3], Gen.Int[0, 3].Select(i => new[] { 0m, 2.5m, 5m, 33m }[i]), Gen.Int[0, 3], (orders, counts, home, percent, each) =>
            (orders.Select((o, p) => Orders[o] with { Of = Orders[o].Of with { Count = counts[p] } }).ToArray(), With(percent, each), home.Select((n, b) => (Beads[b].Id, n)).ToArray()));

    private static (int Count, string[] First) CountUp(KitPiece piece, Spares spares, Dictionary<string, int> home)
    {
        for (var n = 1; ; n++)
        {
            Assert.True(ShoppingList.TryMake([piece.Of with { Count = n }], spares, home, PriceList.Empty, out var list, out _));
            string[] tooFew = [.. list!.Items.Where(i => i.Missing > 0).Select(i => i.Id)];
            if (tooFew.Length > 0) return (n - 1, tooFew);
        }
    }
}
