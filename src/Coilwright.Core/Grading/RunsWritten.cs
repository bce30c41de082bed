using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Grading;

/// <summary>Gives the runs of a piece other counts, in her own words as far as they can say it.</summary>
/// <remarks>Where one phrase strings several runs and all are to have the same count, the phrase is changed and stays a repeat. What no edit can say is
/// written anew as notation, or as a list.</remarks>
internal static class RunsWritten
{
    /// <summary>The piece with other counts; it strings exactly <paramref name="strung"/>.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="gaps">Its runs.</param>
    /// <param name="counts">What each is to have.</param>
    /// <param name="strung">The order that is to come of it.</param>
    /// <param name="data">Materials, steels and choices.</param>
    public static Piece Apply(Piece piece, ImmutableArray<Gap> gaps, ReadOnlySpan<int> counts, StringingOrder strung, ReckoningData data)
    {
        var now = piece;
        var has = gaps.Select(g => g.Count).ToArray();
        var wants = counts.ToArray();
        for (var g = gaps.Length - 1; g >= 0; g--)
        {
            if (has[g] == wants[g]) continue;
            if (Everywhere(now, gaps, has, wants, g, data) is var (all, then))
            {
                (now, has) = (all, then);
                continue;
            }
            if (PieceEditing.Apply(now, new SetRuns([new RunCount(FirstOf(gaps, has, g), has[g], wants[g])]), data) is not EditOutcome.Done done) break;
            (now, has[g]) = (done.Piece, wants[g]);
        }
        return Same(now.Order, strung) ? now : Anew(piece, strung);
    }

    // What the words of a run string, changed everywhere; null where some run would then not be as wanted.
    private static (Piece, int[])? Everywhere(Piece piece, ImmutableArray<Gap> gaps, int[] has, int[] wants, int gap, ReckoningData data)
    {
        if (piece.Written is null) return null;
        var (first, by) = (FirstOf(gaps, has, gap), wants[gap] - has[gap]);
        OrderEdit edit = by > 0
            ? new InsertBeads(first + has[gap], [.. Enumerable.Repeat(piece.Beads[gaps[gap].Kind].Id, by)], Beside.WithPrevious) { EveryPass = true }
            : new RemoveBeads(new BeadPlaces.Row(first + wants[gap], -by)) { EveryPass = true };
        if (PieceEditing.Apply(piece, edit, data) is not EditOutcome.Done done || done.Piece.Order.Count == piece.Order.Count + by) return null;
        // Which runs were changed shows in the order, bead by bead: each has as many as it had, or as it is to have.
        var (kinds, were) = (done.Piece.Order.Kinds, piece.Order.Kinds);
        var (then, at, was) = ((int[])has.Clone(), 0, 0);
        for (var g = 0; g <= gaps.Length; g++)
        {
            var (start, end) = g == gaps.Length ? (were.Length, were.Length) : (FirstOf(gaps, has, g), FirstOf(gaps, has, g) + has[g]);
            for (; was < start; was++, at++)
                if (at >= kinds.Length || kinds[at] != were[was]) return null;
            if (g == gaps.Length) break;
            var run = 0;
            var next = end < were.Length ? were[end] : -1;
            while (at + run < kinds.Length && kinds[at + run] == gaps[g].Kind && (run < Math.Max(has[g], wants[g]) || next != gaps[g].Kind)) run++;
            if (run != has[g] && run != wants[g]) return null;
            (then[g], at, was) = (run, at + run, end);
        }
        return at == kinds.Length ? (done.Piece, then) : null;
    }

    private static int FirstOf(ImmutableArray<Gap> gaps, int[] has, int gap)
    {
        var first = gaps[gap].First;
        for (var g = 0; g < gap; g++) first += has[g] - gaps[g].Count;
        return first;
    }

    private static bool Same(StringingOrder one, StringingOrder other) => one.Kinds.AsSpan().SequenceEqual(other.Kinds.AsSpan())
        && one.ReadingGroups.SequenceEqual(other.ReadingGroups);

    private static Piece Anew(Piece piece, StringingOrder strung)
    {
        var (first, last) = SameEnds(piece.Order, strung);
        return piece with
        {
            Order = strung,
            Written = piece.Written is not null && OrderPrinter.TryPrint(strung, [.. piece.Beads.Select(b => b.Id)], out var text) ? OrderTree.Of(text) : null,
            // A measured row stays where all of its beads stand before or after everything that changed.
            MeasuredRows = [.. piece.MeasuredRows.Where(r => r.LastBead <= first || r.FirstBead > piece.Order.Count - last)
                .Select(r => r.LastBead <= first ? r : r with { FirstBead = r.FirstBead + strung.Count - piece.Order.Count, LastBead = r.LastBead + strung.Count - piece.Order.Count })],
        };
    }

    private static (int First, int Last) SameEnds(StringingOrder before, StringingOrder after)
    {
        var most = Math.Min(before.Count, after.Count);
        var (first, last) = (0, 0);
        while (first < most && before.Kinds[first] == after.Kinds[first]) first++;
        while (last < most - first && before.Kinds[^(last + 1)] == after.Kinds[^(last + 1)]) last++;
        return (first, last);
    }
}
