using System.Collections.Immutable;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;

namespace Coilwright.Web.Bench;

/// <summary>What is to be priced.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Count">How many are made together.</param>
/// <param name="Lots">How beads in stock are reckoned; null for what the prices say.</param>
/// <param name="At">Another price to look at.</param>
public sealed record PriceQuestion(Guid Piece, int Count, LotWay? Lots, decimal? At);

/// <summary>What came of it: the plan, or what is wrong.</summary>
public sealed record PriceReply(PricePlan? Plan, ImmutableArray<Fault> Faults);

/// <summary>Prices of pieces on the shelf, from the costs, prices and stock that are kept beside them.</summary>
public sealed class PriceDesk(IPieceShelf shelf, IStockLedger stock, ShopDesk shop, CostsDesk costs, ReckoningData data)
{
    /// <summary>Works it out. Takes as long as it takes: not for the page's own thread.</summary>
    public async Task<PriceReply> PlanAsync(PriceQuestion question, CancellationToken cancel = default)
    {
        if (await shelf.OpenAsync(question.Piece, cancel).ConfigureAwait(false) is not { } shelved) return new PriceReply(null, []);
        var piece = shelved.Piece;
        var (prices, faults) = await shop.PricesAsync(cancel).ConfigureAwait(false);
        if (prices is null) return new PriceReply(null, faults);
        var kept = await costs.CostsAsync(cancel).ConfigureAwait(false);
        if (kept.Costs is not { } known) return new PriceReply(null, kept.Faults);
        var lots = question.Lots is { } way ? LotCosts.Of(await stock.ListAsync(cancel).ConfigureAwait(false), way) : null;
        if (!ShoppingList.TryMake([new ShoppingPiece(piece.Title, piece, question.Count)], Spares.None, ImmutableDictionary<string, int>.Empty, prices, out var list, out faults)) return new PriceReply(null, faults);
        var wire = WireUse.Of(WireDemand.Of(Reckoning.Of(piece, data, null, cancel), question.Count));
        return PricePlan.TryMake(known, list!, wire, lots, question.At, out var plan, out faults) ? new PriceReply(plan, []) : new PriceReply(null, faults);
    }
}
