using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Tray;
using Coilwright.Storage.Shelf;
using Coilwright.Storage.Stock;

namespace Coilwright.Storage.Tray;

/// <summary>A kind as a store keeps it.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Content">The bead in JSON; null when it was taken out.</param>
/// <param name="Drawer">Its drawer.</param>
internal readonly record struct TrayContent(string Key, string? Content, string? Drawer);

/// <summary>What every tray does with what a store keeps.</summary>
internal static class TrayRows
{
    /// <summary>The first kind that is not sound; null when all are. Before anything is written: what is written must be readable.</summary>
    public static TrayAnswer.Refused? Check(ImmutableArray<TrayEdit> edits, ReckoningData data)
    {
        foreach (var edit in edits)
            if (edit is TrayEdit.Put(var kind) && TrayKind.Check(kind.Bead.Description, kind.Drawer, data, out _) is [var fault, ..])
                return new TrayAnswer.Refused(edit.Key, fault);
        return null;
    }

    /// <summary>An edit as it is written.</summary>
    public static TrayContent Of(TrayEdit edit) => edit is TrayEdit.Put(var kind) ? new TrayContent(kind.Key, StockText.OfBead(kind.Bead.Description), kind.Drawer) : new TrayContent(edit.Key, null, null);

    /// <summary>What rows say, each key once.</summary>
    /// <exception cref="ShelfUnreadableException">A bead in them is none.</exception>
    public static TrayNews Read(long revision, IReadOnlyCollection<TrayContent> rows, ReckoningData data) => new(revision,
        [.. rows.Where(r => r.Content is not null).Select(r => new TrayKind(StockText.BeadOf(r.Content!, data, why => Fault.Of(FaultCodes.TrayUnreadable, why.Field, why.Value, ("kind", r.Key), ("detail", why.Code))), r.Drawer))],
        [.. rows.Where(r => r.Content is null).Select(r => r.Key)]);
}
