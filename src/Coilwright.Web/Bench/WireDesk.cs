using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Storage;
using Coilwright.Storage.Lists;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Bench;

/// <summary>The wire at hand as it is kept, and which list that is.</summary>
/// <param name="Wire">The wire; null when the list cannot be read.</param>
/// <param name="Revision">Its revision; 0 when there is none yet.</param>
/// <param name="Faults">Why it cannot be read.</param>
public sealed record KeptWire(WireAtHand? Wire, long Revision, ImmutableArray<Fault> Faults);

/// <summary>Cutting for the pieces on the shelf, from the wire at hand that is kept beside them.</summary>
public sealed class WireDesk(IPieceShelf shelf, IKeptLists lists, ReckoningData data)
{
    /// <summary>The wire at hand; none when there is no list yet.</summary>
    public async Task<KeptWire> WireAsync(CancellationToken cancel = default)
    {
        if (await lists.ListAsync(ListKind.Wire, cancel).ConfigureAwait(false) is not { } kept) return new KeptWire(new WireAtHand([], new CuttingRules()), 0, []);
        var (wire, faults) = WireFile.Read(Encoding.UTF8.GetBytes(kept.Content), data);
        // A list without any wire is none to the reader of files; here it is a drawer that was emptied.
        return kept.Content.Length == 0 ? new KeptWire(new WireAtHand([], new CuttingRules()), kept.Revision, []) : new KeptWire(wire, kept.Revision, faults);
    }

    /// <summary>Keeps the wire at hand.</summary>
    public Task<ListAnswer> KeepAsync(WireAtHand wire, long seen, CancellationToken cancel = default) =>
        lists.KeepListAsync(ListKind.Wire, seen, wire.Lots.IsEmpty ? "" : Encoding.UTF8.GetString(WireFile.Write(wire)), cancel);

    /// <summary>Plans the cuts; null when no piece is chosen or there is no wire. Takes as long as it takes: not for the page's own thread.</summary>
    public async Task<CuttingPlan?> PlanAsync(ImmutableArray<(Guid Piece, int Count)> pieces, WireAtHand wire, CancellationToken cancel = default)
    {
        var demands = new List<WireDemand>();
        foreach (var (id, count) in pieces)
            if (await shelf.OpenAsync(id, cancel).ConfigureAwait(false) is { } shelved)
                demands.Add(WireDemand.Of(Reckoning.Of(shelved.Piece, data, null, cancel), count));
        if (demands.Count == 0 || wire.Lots.IsEmpty || demands.Sum(d => (long)d.Count) > CuttingRules.MostPieces) return null;
        return WireCutting.Of(demands, wire.Lots, wire.Rules, data.Choices, cancel: cancel);
    }

    /// <summary>Packs of loops of a piece's wire, joined in one coil.</summary>
    public static WireLot Packs(CoilWire wire, string name, int loops, int? count, decimal? price) => new(name, wire, WireLot.LengthOfLoopsMm(wire, loops), count, price, false);

    /// <summary>What was left of a piece's wire.</summary>
    public static WireLot Offcut(CoilWire wire, string name, double lengthMm, int count) => new(name, wire, lengthMm, count, null, true);
}
