using Coilwright.Core.Beads;
using Coilwright.Core.Buying;
using Coilwright.Core.Shopping;

namespace Coilwright.Wording;

/// <summary>What goes to one supplier: a heading, and a line for each thing.</summary>
/// <param name="Heading">The supplier, what the goods cost and what sending them does.</param>
/// <param name="There">When it is there, or that it is not told; empty where no supplier is named.</param>
/// <param name="Lines">Units to order, as they are asked for.</param>
public sealed record SupplierOrder(string Heading, string There, IReadOnlyList<string> Lines);

/// <summary>A shopping plan in a maker's words.</summary>
public sealed class ShopSentences(Shopped shopped, Language language)
{
    private readonly ShopWords _words = language.Shop;
    private readonly ShoppingPlan _plan = shopped.Plan;
    private readonly ShoppingList _list = shopped.Plan.List;

    /// <summary>A bead's name for people; caps and dangles in a word.</summary>
    public string NameOf(ShoppingItem item) => item.Bead?.Name ?? OfEnd(item.Id, language);

    /// <summary>What is bought for an end, in a word.</summary>
    public static string OfEnd(string id, Language language) => id == ShoppingItem.Dangle ? language.Shop.Dangles : language.Shop.Caps;

    /// <summary>What it is for.</summary>
    public string For() => language.Sentence(_words.For, ("pieces", string.Join(", ", _list.Pieces.Select(p => language.Fill(_words.PieceOf, ("count", p.Count), ("name", p.Name))))));

    /// <summary>What to look at before anything is bought.</summary>
    public IEnumerable<string> Mind()
    {
        foreach (var item in _list.Items)
            foreach (var p in item.DescribedOtherwise)
                yield return language.Sentence(_words.DescribedOtherwise, ("bead", NameOf(item)), ("first", _list.Pieces[FirstWith(item)].Name), ("other", _list.Pieces[p].Name));
        if (_list.Spares == Spares.None) yield return _words.NoSpares;
    }

    /// <summary>What is needed: bead, to use, to spare, at home, missing.</summary>
    public IEnumerable<string[]> Needs() => _list.Items.Select(i => new[] { NameOf(i), Count(i.Use), Count(i.Spare), Count(i.Home), Count(i.Missing) });

    /// <summary>What is not bought, and why.</summary>
    public IEnumerable<string> NotBought()
    {
        foreach (var want in _list.CannotBeHad)
            yield return language.Sentence(_words.CannotBeHad, ("bead", NameOf(ItemOf(want.Item))), ("missing", want.Amount));
        if (_plan.Plan is null) yield return _words.OrdersTooSmall;
        if (_list.Items.All(i => i.Missing == 0)) yield return _words.NothingToBuy;
    }

    /// <summary>What goes to which supplier.</summary>
    public IEnumerable<SupplierOrder> Orders()
    {
        if (_plan.Plan is not { } plan) yield break;
        foreach (var order in plan.Orders)
        {
            var supplier = _list.Buying.Suppliers[order.Supplier];
            var heading = language.Sentence(supplier.Name == PriceList.Unnamed ? _words.UnnamedSupplier : _words.Supplier, ("name", supplier.Name), ("goods", Money(order.Goods)),
                ("freight", order.Freight > 0 ? Money(order.Freight) : null), ("free", order.Freight == 0 && supplier.Freight > 0 ? Money(supplier.FreeFrom ?? 0) : null));
            yield return new SupplierOrder(heading, ThereOf(supplier), [.. plan.Purchases.Where(p => _list.Buying.SupplierOf[p.Offer] == order.Supplier).Select(Line)]);
        }
    }

    /// <summary>What has no price: in whole packs where a pack is known.</summary>
    public IEnumerable<string> Unpriced() => _list.Unpriced.Select(item => item.Bead?.Description.Pack is { } pack
        ? language.Fill(_words.Line, ("packs", PackWords.Of((item.Missing - 1) / pack.Beads + 1, pack, language)), ("bead", NameOf(item)))
        : language.Fill(_words.LooseLine, ("count", item.Missing), ("bead", NameOf(item))));

    /// <summary>The wire to buy.</summary>
    public IEnumerable<string> Wire()
    {
        if (shopped.Wire is not { } wire) yield break;
        foreach (var lot in wire.Coils.Where(c => !wire.Lots[c.Lot].IsOffcut).GroupBy(c => c.Lot))
            yield return language.Fill(_words.WireLine, ("count", lot.Sum(c => c.Times)), ("name", wire.Lots[lot.Key].Name),
                ("cost", wire.Lots[lot.Key].Price is { } price ? Money(price * lot.Sum(c => c.Times)) : null));
        if (!wire.ComesOut) yield return _words.WireShort;
        else if (wire.NewCoils == 0) yield return _words.WireNone;
    }

    /// <summary>What it costs, and what is known of better plans.</summary>
    public IEnumerable<string> Sum()
    {
        if (_plan.Plan is not { } plan) yield break;
        var unpriced = _list.Unpriced.Length + (shopped.Wire is { Cost: null } ? 1 : 0);
        if (plan.Purchases.IsEmpty && unpriced > 0)
        {
            yield return _words.NoPrices;
            yield break;
        }
        yield return language.Sentence(_words.Total, ("total", Money(plan.Total + (shopped.Wire?.Cost ?? 0))), ("freight", plan.Orders.Sum(o => o.Freight) is > 0 and var freight ? Money(freight) : null),
            ("wire", shopped.Wire?.Cost is > 0 and var wire ? Money(wire) : null), ("unpriced", unpriced > 0 ? unpriced : null));
        if (!plan.Purchases.IsEmpty)
            yield return plan.IsProven ? _words.Proven : language.Sentence(_words.AtLeast, ("least", Money(plan.Bound)), ("share", plan.GapToBound));
    }

    /// <summary>What is left over: bead, how many, what those of them cost that were bought.</summary>
    public IEnumerable<string[]> Left() => _plan.Lines.Where(l => l.Left > 0)
        .Select(l => new[] { NameOf(l.Item), Count(l.Left), l.LeftOfBought == 0 || l.LeftCost is not { } cost ? "–" : language.Amount(cost) });

    /// <summary>What all that is left over cost.</summary>
    public IEnumerable<string> LeftInAll()
    {
        if (_plan.LeftCost > 0) yield return language.Sentence(_words.LeftInAll, ("cost", Money(_plan.LeftCost)));
    }

    /// <summary>What more can be made, of what is left over and for a little more.</summary>
    public IEnumerable<string> More()
    {
        for (var p = 0; p < _list.Pieces.Length; p++)
        {
            if (_plan.MoreOfLeftovers(p) is > 0 and var free)
                yield return language.Sentence(_words.MoreOfLeftovers, ("count", free), ("name", _list.Pieces[p].Name));
            foreach (var point in shopped.Points.Where(b => b.Piece == p))
                yield return language.Sentence(point.IsProven ? _words.MoreFor : _words.MoreForPerhaps, ("count", point.More), ("name", _list.Pieces[p].Name), ("extra", Money(point.Extra)), ("each", Money(point.ExtraEach)));
        }
        if (shopped.LookedFor is not { } most) yield break;
        if (!_plan.ComesOut) yield return _words.MoreUnknown;
        else if (!shopped.Points.IsEmpty && !_list.Unpriced.IsEmpty) yield return _words.MoreUnpriced;
        else if (shopped.Points.IsEmpty && Enumerable.Range(0, _list.Pieces.Length).All(p => _plan.MoreOfLeftovers(p) < most)) yield return language.Sentence(_words.MoreNone, ("most", most));
    }

    /// <summary>An amount with its currency where that is known.</summary>
    public string Money(decimal amount) => _list.Prices.Currency is { } currency ? $"{language.Amount(amount)}\u00a0{currency}" : language.Amount(amount);

    private string ThereOf(Supplier supplier) => supplier switch
    {
        { Name: PriceList.Unnamed } => "",
        { LeadDays: null } => language.Sentence(_words.ThereUnknown),
        { LeadDays: 0 } => language.Sentence(_words.ThereAtOnce),
        { LeadDays: { } days } => language.Sentence(_words.There, ("days", days), ("day", shopped.On is { } on ? QuoteSentences.Day(on.AddDays(days)) : null), ("on", shopped.On is { } from ? QuoteSentences.Day(from) : null)),
    };

    private string Line(Purchase purchase)
    {
        var offer = _list.Buying.Offers[purchase.Offer];
        return language.Fill(_words.Line, ("packs", PackWords.Of(purchase.Units, new Pack(offer.Unit, offer.Holds), language)), ("bead", NameOf(ItemOf(offer.Item))), ("number", offer.Number), ("cost", Money(purchase.Cost)));
    }

    private ShoppingItem ItemOf(string id) => _list.Items.First(i => i.Id == id);

    private static int FirstWith(ShoppingItem item) => Enumerable.Range(0, item.Each.Length).First(p => item.Each[p] > 0);

    private string Count(int count) => language.Number(count, 0);
}
