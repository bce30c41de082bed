using System.Collections.Immutable;
using Coilwright.Core.Buying;
using Coilwright.Core.Classes;
using Coilwright.Core.Faults;
using Coilwright.Core.Kits;
using Coilwright.Core.Pieces;
using Coilwright.Core.Shopping;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;

namespace Coilwright.Web.Bench;

/// <summary>A class on a piece on the shelf.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Ask">The class.</param>
/// <param name="SpareBeads">How many of each bead lie in each bag to spare, 0 to <see cref="SparesRule.MostPerPiece"/>.</param>
public sealed record ClassQuestion(Guid Piece, ClassAsk Ask, int SpareBeads);

/// <summary>What came of it: the plan, or what is wrong.</summary>
public sealed record ClassReply(ClassPlan? Plan, ImmutableArray<Fault> Faults);

/// <summary>Classes on pieces on the shelf, from the stock, prices and costs that are kept beside them.</summary>
public sealed class ClassDesk(IPieceShelf shelf, IStockLedger stock, ShopDesk shop, CostsDesk costs, IBuyer buyer, ReckoningData data)
{
    /// <summary>Plans it. Takes as long as it takes: not for the page's own thread.</summary>
    public async Task<ClassReply> PlanAsync(ClassQuestion question, CancellationToken cancel = default)
    {
        if (await shelf.OpenAsync(question.Piece, cancel).ConfigureAwait(false) is not { } shelved) return new ClassReply(null, []);
        var (prices, faults) = await shop.PricesAsync(cancel).ConfigureAwait(false);
        if (prices is null) return new ClassReply(null, faults);
        var kept = await costs.CostsAsync(cancel).ConfigureAwait(false);
        if (kept.Costs is not { } known) return new ClassReply(null, kept.Faults);
        var sources = new ClassSources
        {
            Home = HomeStock.Of(await stock.ListAsync(cancel).ConfigureAwait(false)),
            Spares = new Spares(new SparesRule(0, question.SpareBeads), ImmutableSortedDictionary<string, SparesRule>.Empty),
            Prices = prices,
            Costs = known,
        };
        return ClassPlan.TryMake(shelved.Piece, data, question.Ask, sources, buyer, out var plan, out faults, cancel) ? new ClassReply(plan, []) : new ClassReply(null, faults);
    }
}
