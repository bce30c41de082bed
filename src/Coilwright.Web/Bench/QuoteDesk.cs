using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Listings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Quotes;
using Coilwright.Core.Substitutes;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;
using Coilwright.Wording;

namespace Coilwright.Web.Bench;

/// <summary>A custom order of a piece on the shelf.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Ask">What is ordered; a wrist of 0 is the piece's own.</param>
public sealed record QuoteQuestion(Guid Piece, QuoteAsk Ask);

/// <summary>What came of it: the quote, or what is wrong.</summary>
public sealed record QuoteReply(Quoted? Quoted, ImmutableArray<Fault> Faults);

/// <summary>Quotes for pieces on the shelf, from the stock, prices, costs and wire that are kept beside them.</summary>
public sealed class QuoteDesk(IPieceShelf shelf, IStockLedger stock, ShopDesk shop, CostsDesk costs, WireDesk wires, IBuyer buyer, CautionData cautions, ReckoningData data)
{
    /// <summary>Works it out. Takes as long as it takes: not for the page's own thread.</summary>
    public async Task<QuoteReply> MakeAsync(QuoteQuestion question, CancellationToken cancel = default)
    {
        if (await shelf.OpenAsync(question.Piece, cancel).ConfigureAwait(false) is not { } shelved) return new QuoteReply(null, []);
        var (prices, faults) = await shop.PricesAsync(cancel).ConfigureAwait(false);
        if (prices is null) return new QuoteReply(null, faults);
        var kept = await costs.CostsAsync(cancel).ConfigureAwait(false);
        if (kept.Costs is not { } known) return new QuoteReply(null, kept.Faults);
        var wire = await wires.WireAsync(cancel).ConfigureAwait(false);
        var home = new Dictionary<string, int>(StringComparer.Ordinal);
        var others = ImmutableArray.CreateBuilder<Candidate>();
        foreach (var (key, free) in await stock.FreeAsync(cancel).ConfigureAwait(false)) home[key] = free.ToHand;
        foreach (var line in await stock.ListAsync(cancel).ConfigureAwait(false))
            if (line.Item.Bead is { } described && Bead.TryMake(described, out var bead, out _)) others.Add(new Candidate(bead!, home.GetValueOrDefault(line.Item.Key)));
        var sources = new QuoteSources
        {
            Home = home,
            Others = others.ToImmutable(),
            Prices = prices,
            Costs = known,
            Wire = wire.Wire is { Lots.IsEmpty: false } there ? there.Lots : null,
            Cutting = wire.Wire?.Rules ?? new(),
        };
        var ask = question.Ask.WristMm == 0 ? question.Ask with { WristMm = shelved.Piece.Wearer.WristMm } : question.Ask;
        return Quote.TryMake(shelved.Piece, data, ask, sources, buyer, out var quote, out faults, cancel)
            ? new QuoteReply(new Quoted(quote!, Listing.Of(quote!.Size.Reckoned, cautions.SmallParts), []), []) : new QuoteReply(null, faults);
    }
}
