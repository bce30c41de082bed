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
public sealed record QuoteQuestion(Guid Piece, QuoteAsk Ask)
{
    /// <summary>Beads strung in place of others, by their names: a bead of the piece, and one of it or of the stock.</summary>
    public ImmutableArray<(string Bead, string With)> Swaps { get; init; } = [];
}

/// <summary>What came of it: the quote, or what is wrong.</summary>
public sealed record QuoteReply(Quoted? Quoted, ImmutableArray<Fault> Faults)
{
    /// <summary>The beads that the piece is strung of, as it is written.</summary>
    public ImmutableArray<Bead> Strung { get; init; } = [];

    /// <summary>The beads that may be strung in their place: those of the piece, then those in stock.</summary>
    public ImmutableArray<Bead> InPlace { get; init; } = [];
}

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
        var design = shelved.Piece;
        // The first description of a name counts, as when shopping.
        ImmutableArray<Bead> inPlace = [.. design.Beads.Concat(sources.Others.Select(o => o.Bead)).DistinctBy(b => b.Id, StringComparer.Ordinal)];
        var beads = new QuoteReply(null, []) { Strung = [.. design.Order.Kinds.Distinct().Order().Select(k => design.Beads[k])], InPlace = inPlace };
        if (question.Swaps.FirstOrDefault(s => inPlace.All(b => b.Id != s.With)) is { With: { } gone })
            return beads with { Faults = [Fault.Of(FaultCodes.WordUnknown, "swaps", gone, ("known", string.Join(", ", inPlace.Select(b => b.Id))), ("nearest", NearestName.Of(gone, inPlace.Select(b => b.Id)) ?? ""))] };
        var ask = question.Ask with
        {
            WristMm = question.Ask.WristMm == 0 ? design.Wearer.WristMm : question.Ask.WristMm,
            Swaps = [.. question.Swaps.Select(s => new Swap(s.Bead, inPlace.First(b => b.Id == s.With)))],
        };
        return Quote.TryMake(design, data, ask, sources, buyer, out var quote, out faults, cancel)
            ? beads with { Quoted = new Quoted(quote!, Listing.Of(quote!.Size.Reckoned, cautions.SmallParts), []) } : beads with { Faults = faults };
    }
}
