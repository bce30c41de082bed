using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Editing;

/// <summary>Gives runs of one kind of bead other counts, as beads put to the end of each run or taken off there.</summary>
internal static class RunEditing
{
    public static EditOutcome Apply(Piece piece, SetRuns set)
    {
        if (Wrong(piece, set.Runs) is { } fault) return new EditOutcome.Refused([fault]);
        var (now, told) = (piece, ImmutableArray<Fault>.Empty);
        // From the finishing end, so that the places of the runs still to come stay as they were counted.
        foreach (var run in set.Runs.Reverse())
        {
            if (run.To == run.Count) continue;
            OrderEdit edit = run.To > run.Count
                ? new InsertBeads(run.First + run.Count, [.. Enumerable.Repeat(piece.Beads[piece.Order.Kinds[run.First]].Id, run.To - run.Count)], Beside.WithPrevious)
                : new RemoveBeads(new BeadPlaces.Row(run.First + run.To, run.Count - run.To));
            switch (OrderEditing.Apply(now, edit))
            {
                case EditOutcome.Refused refused:
                    return refused;
                case EditOutcome.Done done:
                    (now, told) = (done.Piece, told.AddRange(done.Told));
                    break;
            }
        }
        if (ReferenceEquals(now, piece)) return new EditOutcome.Refused([Fault.Of(FaultCodes.EditChangesNothing, "", "")]);
        var beads = ImmutableSortedSet.CreateBuilder<int>();
        var moved = 0;
        foreach (var run in set.Runs)
        {
            if (run.To != run.Count) beads.UnionWith(Enumerable.Range(run.First + moved, run.To));
            moved += run.To - run.Count;
        }
        return new EditOutcome.Done(now, set) { Beads = beads.ToImmutable(), Told = told };
    }

    private static Fault? Wrong(Piece piece, ImmutableArray<RunCount> runs)
    {
        if (runs.IsDefaultOrEmpty) return Fault.Of(FaultCodes.EditNothingChosen, "", "");
        var next = 0;
        foreach (var run in runs)
        {
            if (run.First < next || run.Count < 1 || run.Count > piece.Order.Count - run.First)
                return Fault.Of(FaultCodes.EditNoSuchBead, "", Number(run.First + 1L), ("beads", Number(piece.Order.Count)));
            if (run.To < 1) return Fault.Of(FaultCodes.EditNothingLeft, "", "");
            var kinds = piece.Order.Kinds.AsSpan(run.First, run.Count);
            if (kinds.IndexOfAnyExcept(kinds[0]) >= 0) return Fault.Of(FaultCodes.EditNotTogether, "", "");
            next = run.First + run.Count;
        }
        return null;
    }

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
