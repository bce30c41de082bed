using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Kits;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Storage.Lists;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;

namespace Coilwright.Web.Bench;

/// <summary>What came of planning kits: the plan, or what is wrong.</summary>
public sealed record KitReply(KitPlan? Plan, ImmutableArray<Fault> Faults);

/// <summary>The sheet of labels in use, and which list that is.</summary>
/// <param name="Labels">The sheet.</param>
/// <param name="Revision">Its revision; 0 when there is none yet.</param>
public sealed record KeptLabels(LabelsInUse Labels, long Revision);

/// <summary>Kits of pieces on the shelf, from the stock and the prices that are kept beside them.</summary>
public sealed class KitDesk(IPieceShelf shelf, IStockLedger stock, IKeptLists lists, ShopDesk shop, ReckoningData data)
{
    /// <summary>Plans a batch; without a plan and without faults when no piece is chosen. Takes as long as it takes: not for the page's own thread.</summary>
    public async Task<KitReply> PlanAsync(ShopQuestion question, CancellationToken cancel = default)
    {
        var pieces = new List<KitPiece>();
        foreach (var (id, count) in question.Pieces)
            if (await shelf.OpenAsync(id, cancel).ConfigureAwait(false) is { } shelved)
                pieces.Add(new KitPiece(new ShoppingPiece(shelved.Piece.Title, shelved.Piece, count), Reckoning.Of(shelved.Piece, data, null, cancel)) { Version = shelved.Revision });
        if (pieces.Count == 0) return new KitReply(null, []);
        var (prices, faults) = await shop.PricesAsync(cancel).ConfigureAwait(false);
        if (prices is null) return new KitReply(null, faults);
        var home = question.UseStock ? HomeStock.Of(await stock.ListAsync(cancel).ConfigureAwait(false)) : null;
        return KitPlan.TryMake(pieces, question.Spares, home, prices, out var plan, out faults) ? new KitReply(plan, []) : new KitReply(null, faults);
    }

    /// <summary>The sheet of labels in use.</summary>
    public async Task<KeptLabels> LabelsAsync(CancellationToken cancel = default) =>
        await lists.ListAsync(ListKind.Labels, cancel).ConfigureAwait(false) is { } kept ? new KeptLabels(LabelsInUse.Read(kept.Content), kept.Revision) : new KeptLabels(LabelsInUse.None, 0);

    /// <summary>Keeps it.</summary>
    public Task<ListAnswer> KeepAsync(LabelsInUse labels, long seen, CancellationToken cancel = default) => lists.KeepListAsync(ListKind.Labels, seen, labels.Text, cancel);
}
