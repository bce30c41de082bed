using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing;

/// <summary>The one place where edits are done to pieces.</summary>
/// <remarks>
/// <para>Pure: the same piece and edit give the same outcome, and the piece before stays as it was. A sound piece stays sound: what comes of an edit can
/// be written to a piece file and read back.</para>
/// <para>Of the order's text only what the edit touches is changed; comments and spacing elsewhere stay, byte for byte, and what is written there keeps
/// its ids. An order given as a list stays a list.</para>
/// <para>There is no inverse of an edit: to take one back, go back to the piece before it. A new edit may be made with what was seen then.</para>
/// </remarks>
public static class PieceEditing
{
    /// <summary>Does an edit.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="edit">The edit.</param>
    /// <param name="data">Materials, steels and choices that the piece is judged by.</param>
    public static EditOutcome Apply(Piece piece, PieceEdit edit, ReckoningData data) => edit switch
    {
        OrderEdit order => OrderEditing.Apply(piece, order),
        SetTitle set => Set(PieceRules.OfTitle(set.Title), edit, piece, piece with { Title = set.Title }),
        SetWire set => Set(PieceRules.OfWire(set.Wire, data), edit, piece, piece with { Wire = set.Wire }),
        SetEnds set => Set(PieceRules.OfEnds(set.Ends), edit, piece, piece with { Ends = set.Ends }),
        SetWearer set => Set(PieceRules.OfWearer(set.Wearer), edit, piece, piece with { Wearer = set.Wearer }),
        SetWishes set => Set(PieceRules.OfWishes(set.Wishes, piece.Order, piece.Beads), edit, piece, piece with { Wishes = set.Wishes }),
        SetPattern set => Set(PieceRules.OfPattern(set.Pattern), edit, piece, piece with { Pattern = set.Pattern }),
        AddMeasuredRow add => Set(PieceRules.OfRow(add.Row, piece.Order, piece.Beads, data), edit, piece,
            piece with { MeasuredRows = [.. RowsOf(piece), add.Row] }),
        RemoveMeasuredRow remove => Remove(piece, remove),
        AddBead add => Add(piece, add, data),
        ChangeBead change => Change(piece, change, data),
        RemoveBead remove => Remove(piece, remove),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    internal static Fault UnknownBead(string id, IReadOnlyList<string> known) =>
        OrderFaultList.WithNearest(Fault.Of(FaultCodes.EditBeadUnknown, "", OrderFaultList.Clipped(id)), id, known);

    private static EditOutcome Set(ImmutableArray<Fault> faults, PieceEdit edit, Piece before, Piece after)
    {
        if (!faults.IsEmpty) return new EditOutcome.Refused(faults);
        return before == after ? Refused(FaultCodes.EditChangesNothing, "") : new EditOutcome.Done(after, edit);
    }

    private static EditOutcome Remove(Piece piece, RemoveMeasuredRow remove)
    {
        var rows = RowsOf(piece);
        if (remove.Index < 0 || remove.Index >= rows.Length)
            return Refused(FaultCodes.EditNoSuchRow, (remove.Index + 1L).ToString(CultureInfo.InvariantCulture));
        return new EditOutcome.Done(piece with { MeasuredRows = rows.RemoveAt(remove.Index) }, remove);
    }

    // Kinds of bead ------------------------------------------------------------------------------------------------------------------------

    private static EditOutcome Add(Piece piece, AddBead add, ReckoningData data)
    {
        var faults = PieceRules.OfBead(add.Bead, data, out var bead).AddRange(IdFaults(piece, add.Bead.Id, except: -1));
        if (bead is null || !faults.IsEmpty) return new EditOutcome.Refused(faults);
        return new EditOutcome.Done(piece with { Beads = piece.Beads.Add(bead) }, add);
    }

    private static EditOutcome Change(Piece piece, ChangeBead change, ReckoningData data)
    {
        var kind = KindOf(piece, change.Id);
        if (kind < 0) return new EditOutcome.Refused([UnknownBead(change.Id, [.. piece.Beads.Select(b => b.Id)])]);
        var faults = PieceRules.OfBead(change.Bead, data, out var bead).AddRange(IdFaults(piece, change.Bead.Id, except: kind));
        if (bead is null || !faults.IsEmpty) return new EditOutcome.Refused(faults);
        if (bead.Description == piece.Beads[kind].Description) return Refused(FaultCodes.EditChangesNothing, change.Id);
        var after = piece with { Beads = piece.Beads.SetItem(kind, bead) };
        if (bead.Id != change.Id) after = Renamed(after, change.Id, bead.Id);
        // A row that was measured with the bead may now be absurd against its length, and then could not be read back.
        var rows = RowsOf(after);
        var lost = rows.Where(row => !MeasuredRowCheck.Of(row, after.Order, after.Beads, data.Choices.MeasuredAbsurdShare).IsEmpty).ToImmutableArray();
        return new EditOutcome.Done(after with { MeasuredRows = rows.RemoveRange(lost) }, change) { Told = [.. lost.Select(OrderEditing.RowLost)] };
    }

    private static Piece Renamed(Piece piece, string from, string to)
    {
        var wishes = piece.Wishes.Groups;
        if (wishes.TryGetValue(from, out var wish)) wishes = wishes.Remove(from).SetItem(to, wish);
        return piece with
        {
            Written = piece.Written is null ? null : OrderEditing.Renamed(piece.Written, from, to),
            Pattern = piece.Pattern.Renamed(from, to),
            Wishes = piece.Wishes with { Groups = wishes, Free = piece.Wishes.Free.Renamed(from, to), Rules = [.. piece.Wishes.Rules.Select(rule => rule.Renamed(from, to))] },
        };
    }

    private static EditOutcome Remove(Piece piece, RemoveBead remove)
    {
        var kind = KindOf(piece, remove.Id);
        if (kind < 0) return new EditOutcome.Refused([UnknownBead(remove.Id, [.. piece.Beads.Select(b => b.Id)])]);
        if (piece.Order.Kinds.Count(k => k == kind) is var times and > 0)
            return Refused(FaultCodes.EditBeadInUse, remove.Id, ("times", times.ToString(CultureInfo.InvariantCulture)));
        if (piece.Written is { } written && NamedIn(written, remove.Id) is { } group) return Refused(FaultCodes.EditBeadInGroup, remove.Id, ("group", group));
        var order = new StringingOrder([.. piece.Order.Kinds.Select(k => k > kind ? k - 1 : k)], piece.Order.Groups);
        return new EditOutcome.Done(piece with
        {
            Beads = piece.Beads.RemoveAt(kind),
            Order = order,
            Wishes = piece.Wishes with
            {
                Groups = piece.Wishes.Groups.Remove(remove.Id),
                Free = piece.Wishes.Free.Renamed(remove.Id, null),
                Rules = [.. piece.Wishes.Rules.Select(rule => rule.OnlyOf(name => name != remove.Id)).OfType<OrderRule>()],
            },
        }, remove);
    }

    /// <summary>The group in whose text a bead is named, although nothing strings it; null when none is.</summary>
    private static string? NamedIn(OrderTree tree, string id)
    {
        if (tree.Nodes().OfType<OrderNameUse>().FirstOrDefault(use => use.Name.Text == id) is not { } use) return null;
        return tree.Entries.OfType<OrderDefinition>().FirstOrDefault(group => group.Span.Start <= use.Span.Start && group.Span.End >= use.Span.End)?.Name.Text ?? "";
    }

    private static IEnumerable<Fault> IdFaults(Piece piece, string id, int except)
    {
        if (KindOf(piece, id) is var kind and >= 0 && kind != except)
            yield return Fault.Of(FaultCodes.IdTwice, "id", id, ("first", string.Create(CultureInfo.InvariantCulture, $"beads[{kind}].id")));
        if (piece.Order.Groups.Any(group => group.Name == id) || (piece.Written?.Nodes().Any(node => Names(node, id)) ?? false))
            yield return Fault.Of(FaultCodes.OrderGroupIsBead, "id", id);
    }

    private static bool Names(OrderNode node, string id) =>
        node is OrderDefinition definition ? definition.Name.Text == id : node is OrderBracket bracket && bracket.Name?.Text == id;

    private static int KindOf(Piece piece, string id)
    {
        for (var kind = 0; kind < piece.Beads.Length; kind++)
            if (piece.Beads[kind].Id == id)
                return kind;
        return -1;
    }

    private static ImmutableArray<MeasuredRow> RowsOf(Piece piece) => piece.MeasuredRows.IsDefault ? [] : piece.MeasuredRows;

    private static EditOutcome.Refused Refused(string code, string value, params ReadOnlySpan<(string Name, string Value)> values) =>
        new([Fault.Of(code, "", value, values)]);
}
