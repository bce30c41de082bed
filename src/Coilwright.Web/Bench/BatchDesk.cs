using System.Collections.Immutable;
using Coilwright.Core.Batches;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Bench;

/// <summary>So many of a piece on the shelf, made together.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Count">How many, 1 to <see cref="Basket.Most"/>.</param>
/// <param name="Tray">The tray.</param>
public sealed record BatchQuestion(Guid Piece, int Count, CountingTray Tray);

/// <summary>What came of it: the plan and how the wire at hand is cut for it, null where none is kept; or what is wrong.</summary>
public sealed record BatchReply(BatchPlan? Plan, CuttingPlan? Wire, ImmutableArray<Fault> Faults);

/// <summary>Several alike of pieces on the shelf, by the timed steps and the wire that are kept beside them.</summary>
public sealed class BatchDesk(IPieceShelf shelf, CostsDesk costs, WireDesk wires, ReckoningData data)
{
    /// <summary>Plans it. Takes as long as it takes: not for the page's own thread.</summary>
    public async Task<BatchReply> PlanAsync(BatchQuestion question, CancellationToken cancel = default)
    {
        if (await shelf.OpenAsync(question.Piece, cancel).ConfigureAwait(false) is not { } shelved) return new BatchReply(null, null, []);
        var kept = await costs.CostsAsync(cancel).ConfigureAwait(false);
        if (kept.Costs is not { } known) return new BatchReply(null, null, kept.Faults);
        var plan = BatchPlan.Of(Reckoning.Of(shelved.Piece, data, null, cancel), question.Count, question.Tray, known.Sheet);
        var wire = (await wires.WireAsync(cancel).ConfigureAwait(false)).Wire;
        return new BatchReply(plan, wire is null ? null : await wires.PlanAsync([(question.Piece, question.Count)], wire, cancel).ConfigureAwait(false), []);
    }
}
