using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Shopping;
using Coilwright.Core.Stock;
using Coilwright.Storage;
using Coilwright.Storage.Lists;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;
using Coilwright.Wording;

namespace Coilwright.Web.Bench;

/// <summary>What is to be shopped for.</summary>
/// <param name="Pieces">Pieces and how many of each.</param>
/// <param name="Spares">Spares.</param>
/// <param name="UseStock">Whether what is in stock is used first.</param>
public sealed record ShopQuestion(ImmutableArray<(Guid Piece, int Count)> Pieces, Spares Spares, bool UseStock);

/// <summary>What came of it: all that is told, or what is wrong.</summary>
public sealed record ShopReply(Shopped? Shopped, ImmutableArray<Fault> Faults);

/// <summary>Shopping for the pieces on the shelf, from the prices that are kept beside them, less what is in stock.</summary>
public sealed class ShopDesk(IPieceShelf shelf, IStockLedger stock, IKeptLists lists, IBuyer buyer)
{
    /// <summary>Plans it. Takes as long as it takes: not for the page's own thread.</summary>
    public async Task<ShopReply> PlanAsync(ShopQuestion question, CancellationToken cancel = default)
    {
        var pieces = new List<ShoppingPiece>();
        foreach (var (id, count) in question.Pieces)
            if (await shelf.OpenAsync(id, cancel).ConfigureAwait(false) is { } shelved) pieces.Add(new ShoppingPiece(shelved.Piece.Title, shelved.Piece, count));
        if (pieces.Count == 0) return new ShopReply(null, []);
        var (prices, faults) = await PricesAsync(cancel).ConfigureAwait(false);
        if (prices is null) return new ShopReply(null, faults);
        var home = new Dictionary<string, int>(StringComparer.Ordinal);
        if (question.UseStock)
            foreach (var (key, free) in await stock.FreeAsync(cancel).ConfigureAwait(false)) home[key] = free.ToHand;
        if (!ShoppingList.TryMake(pieces, question.Spares, home, prices, out var list, out faults)) return new ShopReply(null, faults);
        return new ShopReply(new Shopped(new ShoppingPlan(list!, buyer.Find(list!.Buying, null, cancel)), [], null), []);
    }

    /// <summary>The same with where a little more makes more.</summary>
    public Shopped WithPoints(Shopped shopped, int most, CancellationToken cancel = default) => shopped with
    {
        Points = [.. Enumerable.Range(0, shopped.Plan.List.Pieces.Length).SelectMany(p => BreakPoints.Of(shopped.Plan, p, most, buyer, cancel))],
        LookedFor = most,
    };

    /// <summary>The prices that are kept; empty ones where there are none yet. Null with the reasons when they cannot be read.</summary>
    public async Task<(PriceList? Prices, ImmutableArray<Fault> Faults)> PricesAsync(CancellationToken cancel = default) =>
        await lists.ListAsync(ListKind.Prices, cancel).ConfigureAwait(false) is { } kept ? PricesFile.Read(Encoding.UTF8.GetBytes(kept.Content)) : (PriceList.Empty, []);

    /// <summary>What has come of a plan as movements of stock: each purchase a lot of its own, described first where the stock does not know it yet.</summary>
    /// <param name="shopped">The plan.</param>
    /// <param name="there">Keys that the stock knows.</param>
    /// <param name="today">The day it came.</param>
    public static StockChange Received(Shopped shopped, IReadOnlySet<string> there, DateOnly today)
    {
        var list = shopped.Plan.List;
        var bought = shopped.Plan.Plan?.Purchases.Select(p => (Offer: list.Buying.Offers[p.Offer], p.Units, p.Cost)).Where(p => !ShoppingItem.OfEnds.Any(e => e.Id == p.Offer.Item)).ToList() ?? [];
        return new StockChange
        {
            Items = [.. bought.Select(p => p.Offer.Item).Distinct(StringComparer.Ordinal).Where(key => !there.Contains(key))
                .Select(key => new ItemChange(StockItem.Of(list.Items.First(i => i.Id == key).Bead!), 0))],
            Movements = [.. bought.Select(p => new Movement.Receive(Guid.CreateVersion7(), p.Offer.Item, new StockLot(Quantity.Of(p.Units * p.Offer.Holds))
            {
                Supplier = p.Offer.Supplier == PriceList.Unnamed ? null : p.Offer.Supplier,
                Number = p.Offer.Number,
                Received = today,
                // A cost without its currency would be no cost.
                Cost = list.Prices.Currency is null ? null : p.Cost,
                Currency = list.Prices.Currency,
            }))],
        };
    }
}
