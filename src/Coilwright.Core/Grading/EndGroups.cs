using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Grading;

/// <summary>A piece with groups put on or taken off at its ends.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="BaseBead">For each bead the bead of the design that it is; -1 for one that was put on.</param>
/// <param name="AtStart">How many groups were put on at the start; below 0 taken off.</param>
/// <param name="AtFinish">The same at the finish.</param>
internal sealed record Regrouped(Piece Piece, ImmutableArray<int> BaseBead, int AtStart, int AtFinish)
{
    public static Regrouped Unchanged(Piece piece) => new(piece, [.. Enumerable.Range(0, piece.Order.Count)], 0, 0);
}

/// <summary>Puts whole groups on at the ends of a piece, or takes them off, each with what is strung between it and its neighbour; never the focal's.</summary>
/// <remarks>What is put on carries the design on: the group that elsewhere stands outside of one like the outermost; where there is none, the one just inside
/// it. Where nothing is grouped, runs of one kind are the groups; where there is but one such run, or none but of
/// spacers, each bead is.</remarks>
internal static class EndGroups
{
    /// <summary>The groups that a piece is put together from, from the starting end.</summary>
    public static ImmutableArray<GroupRun> Of(Piece piece)
    {
        var groups = new GroupStretches(piece);
        if (!groups.AreRuns || groups.Runs.Length > 1) return groups.Runs;
        var (first, count) = groups.Runs is [var only] ? (only.First, only.Count) : (0, piece.Order.Count);
        return [.. Enumerable.Range(first, count).Select(bead => new GroupRun(piece.Beads[piece.Order.Kinds[bead]].Id, bead, 1))];
    }

    /// <summary>One group more, or one fewer, at an end; null where there is none to put on or to take off.</summary>
    public static Regrouped? Step(Regrouped from, ReckoningData data, bool atStart, bool more)
    {
        var (order, groups) = (from.Piece.Order, Of(from.Piece));
        if ((more ? ToPutOn(from.Piece, groups, atStart) : ToTakeOff(from.Piece, groups, atStart)) is not { } row) return null;
        var at = !more ? row.First : atStart ? groups[0].First : groups[^1].End;
        var meant = more ? order.Kinds.InsertRange(at, order.Kinds.AsSpan(row.First, row.Count)) : order.Kinds.RemoveRange(at, row.Count);
        // However it is put into words, the same beads must come of it, in the same groups; of two ways the shorter text is the one she would write.
        var piece = Ways(row, at, more, atStart ? new BeadPlaces.Row(0, groups[0].End) : new BeadPlaces.Row(groups[^1].First, order.Count - groups[^1].First)).Select(way => All(from.Piece, way, data)).OfType<Piece>()
            .Where(after => after.Order.Kinds.AsSpan().SequenceEqual(meant.AsSpan()) && IsGroupedAs(after, groups, row.Name, atStart, more)).MinBy(TextLength);
        if (piece is null) return null;
        var by = more ? 1 : -1;
        return new Regrouped(piece, more ? from.BaseBead.InsertRange(at, Enumerable.Repeat(-1, row.Count)) : from.BaseBead.RemoveRange(at, row.Count),
            from.AtStart + (atStart ? by : 0), from.AtFinish + (atStart ? 0 : by));
    }

    /// <summary>The same at both ends.</summary>
    public static Regrouped? StepBoth(Regrouped from, ReckoningData data, bool more)
    {
        if (Step(from, data, atStart: false, more) is not { } one || Step(one, data, atStart: true, more) is not { } both) return null;
        // Where one phrase strings both halves it is enough to change the phrase.
        var groups = Of(from.Piece);
        if (from.Piece.Written is null || (more ? ToPutOn(from.Piece, groups, atStart: true) : ToTakeOff(from.Piece, groups, atStart: true)) is not { } row) return both;
        OrderEdit phrase = more ? new InsertBeads(groups[0].First, row.Names) : new RemoveBeads(new BeadPlaces.Row(row.First, row.Count));
        return All(from.Piece, [phrase with { EveryPass = true }], data) is { } piece && piece.Order.Kinds.AsSpan().SequenceEqual(both.Piece.Order.Kinds.AsSpan())
            && piece.Order.ReadingGroups.SequenceEqual(both.Piece.Order.ReadingGroups) && TextLength(piece) < TextLength(both.Piece) ? both with { Piece = piece } : both;
    }

    private static int TextLength(Piece piece) => piece.OrderText?.Length ?? 0;

    private static PieceEdit[][] Ways(Row row, int at, bool more, BeadPlaces outermost)
    {
        var beads = new BeadPlaces.Row(row.First, row.Count);
        var (end, again) = (row.First + row.Count, new DuplicateBeads(beads));
        return !more ? [[new RemoveBeads(beads)], [new RemoveBeads(outermost)]]
            // In a repeat the outermost group with what stands outside of it may come to the same, and is written as one time more.
            : [[new InsertBeads(at, row.Names)], [new DuplicateBeads(outermost)], at == row.First || at == end ? [again] : [again, new MoveBeads(new BeadPlaces.Row(end, row.Count), at < end ? at : at + row.Count)]];
    }

    private static bool IsGroupedAs(Piece after, ImmutableArray<GroupRun> before, string name, bool atStart, bool more)
    {
        var now = Of(after);
        if (now.Length != before.Length + (more ? 1 : -1)) return false;
        if (more && now[atStart ? 0 : ^1].Name != name) return false;
        var (longer, shorter) = more ? (now, before) : (before, now);
        return longer.Skip(atStart ? 1 : 0).Take(shorter.Length).Zip(shorter, (a, b) => a.Name == b.Name && a.Count == b.Count).All(same => same);
    }

    private static Piece? All(Piece piece, PieceEdit[] edits, ReckoningData data)
    {
        var now = piece;
        foreach (var edit in edits)
        {
            if (PieceEditing.Apply(now, edit, data) is not EditOutcome.Done done) return null;
            now = done.Piece;
        }
        return now;
    }

    private static Row? ToTakeOff(Piece piece, ImmutableArray<GroupRun> groups, bool atStart)
    {
        // Two groups at least are left: with one there is no design.
        if (groups.Length < 3) return null;
        return RowOf(piece, atStart ? groups[0].First : groups[^2].End, atStart ? groups[1].First : groups[^1].End, atStart ? groups[0] : groups[^1]);
    }

    private static Row? ToPutOn(Piece piece, ImmutableArray<GroupRun> groups, bool atStart)
    {
        if (groups.Length < 2) return groups.IsEmpty ? null : RowOf(piece, groups[0].First, groups[0].End, groups[0]);
        // Seen from this end: the group that stands outside of one like the outermost. None is like it: the one just inside, so that like does not come
        // to stand beside like; else the outermost itself.
        var seen = atStart ? groups : [.. groups.Reverse()];
        for (var i = 1; i < seen.Length; i++)
            if (seen[i].Name == seen[0].Name && Outer(seen[i - 1], seen[i]) is { } carriesOn) return carriesOn;
        return (seen.Length > 2 ? Outer(seen[1], seen[2]) : null) ?? Outer(seen[0], seen[1]) ?? UpToFocal(piece, seen[0], seen[1], atStart);

        Row? Outer(GroupRun outer, GroupRun inner) => atStart ? RowOf(piece, outer.First, inner.First, outer) : RowOf(piece, inner.End, outer.End, outer);
    }

    // Next to the focal there is no other group: what stands between the two of them goes with it.
    private static Row? UpToFocal(Piece piece, GroupRun outer, GroupRun inner, bool atStart)
    {
        var (first, end) = (outer.First, outer.End);
        if (atStart)
            while (end < inner.First && piece.Beads[piece.Order.Kinds[end]].Role != Role.Focal) end++;
        else
            while (first > inner.End && piece.Beads[piece.Order.Kinds[first - 1]].Role != Role.Focal) first--;
        return RowOf(piece, first, end, outer);
    }

    // The beads from one to before another, a group among them; null where a focal is.
    private static Row? RowOf(Piece piece, int first, int end, GroupRun group)
    {
        var names = ImmutableArray.CreateBuilder<string>();
        var isNamed = piece.Order.ReadingGroups.Contains(group);
        for (var bead = first; bead < end; bead++)
        {
            var kind = piece.Beads[piece.Order.Kinds[bead]];
            if (kind.Role == Role.Focal) return null;
            if (!isNamed || bead < group.First || bead >= group.End) names.Add(kind.Id);
            else if (bead == group.First) names.Add(group.Name);
        }
        return new Row(first, end - first, group.Name, names.ToImmutable());
    }

    /// <summary>A group with what stands beside it.</summary>
    /// <param name="First">The first bead.</param>
    /// <param name="Count">How many beads.</param>
    /// <param name="Name">The group's name.</param>
    /// <param name="Names">The group by its name where it has one in the order, and the other beads.</param>
    private sealed record Row(int First, int Count, string Name, ImmutableArray<string> Names);
}
