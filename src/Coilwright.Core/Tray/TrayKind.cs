using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Tray;

/// <summary>A kind of bead in the tray: the bead, and the drawer that it lies in. Not how many of it there are, which is the stock's business.</summary>
/// <param name="Bead">The bead, under the id that the tray and pieces call it by.</param>
/// <param name="Drawer">The drawer as it is marked; null when nobody said.</param>
public sealed record TrayKind(Bead Bead, string? Drawer)
{
    /// <summary>Its name here: the bead's id.</summary>
    public string Key => Bead.Id;

    /// <summary>What is wrong with a kind; empty, with the kind, when nothing is. Fields of faults are named as in a piece file, <c>drawer</c> beside them.</summary>
    /// <param name="description">The bead as it is described.</param>
    /// <param name="drawer">The drawer; null or empty for none.</param>
    /// <param name="data">What beads are read with.</param>
    /// <param name="kind">The kind; null where something is wrong.</param>
    public static ImmutableArray<Fault> Check(BeadDescription description, string? drawer, ReckoningData data, out TrayKind? kind)
    {
        var faults = PieceRules.OfBead(description, data, out var bead);
        if (drawer is { Length: > 0 }) faults = [.. faults, .. PieceRules.OfText("drawer", drawer, mayBeEmpty: true)];
        kind = faults.IsEmpty ? new TrayKind(bead!, drawer is { Length: > 0 } ? drawer : null) : null;
        return faults;
    }
}
