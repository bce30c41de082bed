using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Editing.Marking;
using Coilwright.Core.Editing.Rewriting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing;

/// <summary>Does edits of the order, and takes along what hangs on the places of its beads.</summary>
internal static class OrderEditing
{
    /// <summary>Does an edit of the order.</summary>
    public static EditOutcome Apply(Piece piece, OrderEdit edit)
    {
        var ids = IdsOf(piece);
        OrderMap? map = null;
        if (piece.Written is { } written && !OrderMap.TryMake(written, ids, out map, out var faults)) return new EditOutcome.Refused(faults);
        switch (edit)
        {
            case SetOrderText set:
                return SetText(piece, set, ids);
            case ReplaceEverywhere replace:
                return Replace(piece, replace, ids);
            case SetRuns set:
                return RunEditing.Apply(piece, set);
            case Restring restring:
                return RestringEditing.Apply(piece, restring);
        }
        if (OnTheWire(edit, map) is not { } meant) return Refused(Fault.Of(FaultCodes.EditNotStrung, "", ""));
        var marker = new OrderMarker(piece.Order, map, ids);
        marker.Mark(meant);
        if (marker.Faults is { Length: > 0 } refusals) return new EditOutcome.Refused(refusals);
        if (MarkedOrder.Apply(piece.Order, map, marker.Marks) is not { } marked)
            return Refused(Fault.Of(FaultCodes.OrderTooMany, "", "", ("max", OrderLimits.Beads.ToString(CultureInfo.InvariantCulture))));
        if (marked.Order is null) return Refused(Fault.Of(FaultCodes.EditNothingLeft, "", ""));
        return map is null ? InList(piece, meant, marked, ids) : InText(piece, meant, marked, map, marker.Marks, ids);
    }

    /// <summary>The edit with places on the wire; null when the part of the text that it names is not there or strings nothing.</summary>
    private static OrderEdit? OnTheWire(OrderEdit edit, OrderMap? map)
    {
        if (WhereOf(edit) is not BeadPlaces.Part part) return edit;
        var node = map?.Tree.Nodes().FirstOrDefault(node => node.Id == part.Node);
        if (node is null || map!.StringingsOf(node) is not { Length: > 0 } stringings) return null;
        var first = stringings.MinBy(stringing => stringing.First);
        var row = new BeadPlaces.Row(first.First, first.Count);
        return edit switch
        {
            RemoveBeads remove => remove with { Where = row, EveryPass = true },
            MoveBeads move => move with { Where = row },
            ReplaceBeads replace => replace with { Where = row, EveryPass = true },
            DuplicateBeads duplicate => duplicate with { Where = row, EveryPass = true },
            RepeatBeads repeat => repeat with { Where = row, EveryPass = true },
            MirrorBeads mirror => mirror with { Where = row, EveryPass = true },
            PutBetween between => between with { Where = row, EveryPass = true },
            NameGroup name => name with { Where = row, EveryPass = true },
            Ungroup ungroup => ungroup with { Where = row, EveryPass = true },
            _ => edit,
        };
    }

    private static BeadPlaces? WhereOf(OrderEdit edit) => edit switch
    {
        RemoveBeads remove => remove.Where,
        MoveBeads move => move.Where,
        ReplaceBeads replace => replace.Where,
        DuplicateBeads duplicate => duplicate.Where,
        RepeatBeads repeat => repeat.Where,
        MirrorBeads mirror => mirror.Where,
        PutBetween between => between.Where,
        NameGroup name => name.Where,
        Ungroup ungroup => ungroup.Where,
        _ => null,
    };

    // The forms of an order ----------------------------------------------------------------------------------------------------------------

    private static EditOutcome InList(Piece piece, OrderEdit edit, MarkedOutcome marked, ImmutableArray<string> ids)
    {
        var read = OrderList.Read(OrderList.Of(marked.Order!, ids), ids);
        if (read.Order is null) return new EditOutcome.Refused(read.Faults);
        return Done(piece, edit, piece with { Order = read.Order }, marked.CameFrom, marked.Changed);
    }

    private static EditOutcome InText(Piece piece, OrderEdit edit, MarkedOutcome marked, OrderMap map, ImmutableArray<Mark> marks, ImmutableArray<string> ids)
    {
        var (tree, renamed) = OrderRewriter.Rewrite(map, ids, marks);
        var read = OrderNotation.Read(tree, ids);
        if (read.Order is null)
        {
            // Limits are told as they are; anything else would be notation that this cannot say.
            var limits = read.Faults.Where(fault => fault.Code is FaultCodes.OrderTooDeep or FaultCodes.OrderTooMany or FaultCodes.OrderTooManyGroups).ToImmutableArray();
            return new EditOutcome.Refused(limits.IsEmpty ? [Fault.Of(FaultCodes.EditNotWritten, "", "")] : limits);
        }
        // The words must string what was asked for, bead by bead, whatever way they were found.
        if (!IsStrungAs(marked.Order!, read.Order)) return Refused(Fault.Of(FaultCodes.EditNotWritten, "", ""));
        var wishes = piece.Wishes.Groups;
        foreach (var (name, from) in renamed)
            if (piece.Wishes.Groups.TryGetValue(from, out var wish))
                wishes = wishes.SetItem(name, wish);
        // A rule goes along where all of a group has another name; where only some of it has, it stays with the rest.
        var rules = piece.Wishes.Rules.IsDefault ? [] : piece.Wishes.Rules;
        foreach (var (name, from) in renamed)
            if (!read.Order.ReadingGroups.Any(group => group.Name == from))
                rules = [.. rules.Select(rule => rule.Renamed(from, name))];
        var after = piece with { Order = read.Order, Written = tree, Wishes = piece.Wishes with { Groups = wishes, Rules = rules } };
        return Done(piece, edit, after, marked.CameFrom, marked.Changed);
    }

    private static bool IsStrungAs(StringingOrder meant, StringingOrder strung) =>
        meant.Kinds.AsSpan().SequenceEqual(strung.Kinds.AsSpan()) && meant.Groups.Length == strung.Groups.Length
        && meant.Groups.Zip(strung.Groups, (a, b) => a.First == b.First && a.Count == b.Count).All(same => same);

    private static EditOutcome SetText(Piece piece, SetOrderText set, ImmutableArray<string> ids)
    {
        var text = set.Text.ReplaceLineEndings("\n");
        if (text == piece.OrderText) return Refused(Fault.Of(FaultCodes.EditChangesNothing, "", ""));
        var before = piece.OrderText ?? "";
        if (text.Length > OrderLimits.TextLength) return new EditOutcome.Refused(OrderNotation.Read(text, ids).Faults);
        var (start, end) = SameEnds(before.Length, text.Length, (i, j) => before[i] == text[j]);
        var tree = piece.Written is { } written
            ? written.Replace(TextSpan.Between(start, before.Length - end), text[start..^end])
            : OrderTree.Of(text);
        var read = OrderNotation.Read(tree, ids);
        if (read.Order is null) return new EditOutcome.Refused(read.Faults);
        var (first, last) = SameEnds(piece.Order.Count, read.Order.Count, (i, j) => piece.Order.Kinds[i] == read.Order.Kinds[j]);
        var cameFrom = Enumerable.Range(0, read.Order.Count)
            .Select(bead => bead < first ? bead : bead >= read.Order.Count - last ? bead + piece.Order.Count - read.Order.Count : -1).ToImmutableArray();
        var changed = Enumerable.Range(first, read.Order.Count - first - last).ToImmutableArray();
        return Done(piece, set, piece with { Order = read.Order, Written = tree }, cameFrom, changed);
    }

    /// <summary>How many things two rows share at their start and, after those, at their end.</summary>
    private static (int Start, int End) SameEnds(int before, int after, Func<int, int, bool> same)
    {
        var most = Math.Min(before, after);
        var start = 0;
        while (start < most && same(start, start)) start++;
        var end = 0;
        while (end < most - start && same(before - 1 - end, after - 1 - end)) end++;
        return (start, end);
    }

    private static EditOutcome Replace(Piece piece, ReplaceEverywhere replace, ImmutableArray<string> ids)
    {
        var (from, to) = (ids.IndexOf(replace.Bead), ids.IndexOf(replace.With));
        foreach (var (kind, id) in ((int, string)[])[(from, replace.Bead), (to, replace.With)])
            if (kind < 0)
                return Refused(PieceEditing.UnknownBead(id, ids));
        var order = new StringingOrder([.. piece.Order.Kinds.Select(kind => kind == from ? to : kind)], piece.Order.Groups);
        var written = piece.Written is null ? null : Renamed(piece.Written, replace.Bead, replace.With);
        if (from == to || (written?.Text == piece.OrderText && !piece.Order.Kinds.Contains(from))) return Refused(Fault.Of(FaultCodes.EditChangesNothing, "", replace.Bead));
        var cameFrom = Enumerable.Range(0, order.Count).Select(bead => piece.Order.Kinds[bead] == from ? -1 : bead).ToImmutableArray();
        var changed = Enumerable.Range(0, order.Count).Where(bead => piece.Order.Kinds[bead] == from).ToImmutableArray();
        return Done(piece, replace, piece with { Order = order, Written = written }, cameFrom, changed);
    }

    /// <summary>A text with one name in place of another wherever it is used.</summary>
    internal static OrderTree Renamed(OrderTree tree, string from, string to) =>
        tree.Replace([.. tree.Nodes().OfType<OrderNameUse>().Where(use => use.Name.Text == from).Select(use => new TextChange(use.Span, to)).OrderBy(change => change.Span.Start)]);

    // What hangs on the order --------------------------------------------------------------------------------------------------------------

    private static EditOutcome.Done Done(Piece before, PieceEdit edit, Piece after, ImmutableArray<int> cameFrom, ImmutableArray<int> changed)
    {
        var (rows, lost) = RowsAfter(before, cameFrom);
        var named = after.Order.Groups.Select(group => group.Name).Concat(IdsOf(after)).ToHashSet(StringComparer.Ordinal);
        // A wish for a group that is strung no more has nothing to judge.
        var wishes = after.Wishes.Groups.RemoveRange(after.Wishes.Groups.Keys.Where(name => !named.Contains(name)));
        // Nor has a rule for one that reads as one thing no more.
        var ruled = PieceRules.NamesForRules(after.Order, IdsOf(after));
        var rules = after.Wishes.Rules.IsDefaultOrEmpty ? after.Wishes.Rules : [.. after.Wishes.Rules.Select(rule => rule.OnlyOf(ruled.Contains)).OfType<OrderRule>()];
        return new EditOutcome.Done(after with { MeasuredRows = rows, Wishes = after.Wishes with { Groups = wishes, Rules = rules } }, edit)
        {
            Beads = [.. changed],
            Told = lost,
        };
    }

    /// <summary>Measured rows on the new places of their beads. A row with a bead more, less, other or elsewhere was measured of something that is no
    /// more.</summary>
    private static (ImmutableArray<MeasuredRow> Rows, ImmutableArray<Fault> Lost) RowsAfter(Piece before, ImmutableArray<int> cameFrom)
    {
        if (before.MeasuredRows.IsDefaultOrEmpty) return (before.MeasuredRows, []);
        var nowAt = new int[before.Order.Count];
        Array.Fill(nowAt, -1);
        for (var bead = 0; bead < cameFrom.Length; bead++)
            if (cameFrom[bead] >= 0)
                nowAt[cameFrom[bead]] = bead;
        var rows = ImmutableArray.CreateBuilder<MeasuredRow>();
        var lost = ImmutableArray.CreateBuilder<Fault>();
        foreach (var row in before.MeasuredRows)
        {
            var first = row.FirstBead >= 1 && row.LastBead <= nowAt.Length ? nowAt[row.FirstBead - 1] : -1;
            var stays = first >= 0;
            for (var bead = row.FirstBead; stays && bead < row.LastBead; bead++) stays = nowAt[bead] == nowAt[bead - 1] + 1;
            if (stays) rows.Add(row with { FirstBead = first + 1, LastBead = first + 1 + row.LastBead - row.FirstBead });
            else lost.Add(RowLost(row));
        }
        return (rows.ToImmutable(), lost.ToImmutable());
    }

    internal static Fault RowLost(MeasuredRow row) => Fault.Of(FaultCodes.EditRowLost, "", "",
        ("first", row.FirstBead.ToString(CultureInfo.InvariantCulture)), ("last", row.LastBead.ToString(CultureInfo.InvariantCulture)),
        ("total", row.TotalMm.ToString("0.##", CultureInfo.InvariantCulture)));

    private static ImmutableArray<string> IdsOf(Piece piece) => [.. piece.Beads.Select(bead => bead.Id)];

    private static EditOutcome.Refused Refused(Fault why) => new([why]);
}
