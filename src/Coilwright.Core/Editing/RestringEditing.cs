using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Editing.Rewriting;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Editing;

/// <summary>Strings a piece anew, as rows that are moved, beads that are replaced and runs that are given other counts, one after another.</summary>
internal static class RestringEditing
{
    public static EditOutcome Apply(Piece piece, Restring restring)
    {
        var (swaps, standIns, runs) = Lists(restring);
        if (swaps.IsEmpty && standIns.IsEmpty && runs.IsEmpty)
            return new EditOutcome.Refused([Fault.Of(FaultCodes.EditNothingChosen, "", "")]);
        var (now, told) = (piece, ImmutableArray<Fault>.Empty);
        // For each bead of the order as it now is whether it was moved or replaced.
        var touched = Enumerable.Repeat(false, piece.Order.Count).ToList();
        foreach (var swap in swaps)
        {
            if ((WrongRow(now, swap.First, swap.Count) ?? WrongRow(now, swap.OtherFirst, swap.OtherCount)) is { } wrong) return new EditOutcome.Refused([wrong]);
            // What stands in the one cannot stand in the other.
            if (swap.OtherFirst < swap.First + swap.Count) return new EditOutcome.Refused([NoSuchBead(now, swap.OtherFirst)]);
            var end = swap.OtherFirst + swap.OtherCount;
            if (Do(new MoveBeads(new BeadPlaces.Row(swap.OtherFirst, swap.OtherCount), swap.First)) is { } why) return why;
            if (swap.OtherFirst > swap.First + swap.Count && Do(new MoveBeads(new BeadPlaces.Row(swap.First + swap.OtherCount, swap.Count), end)) is { } whyNot) return whyNot;
            var between = touched.GetRange(swap.First + swap.Count, swap.OtherFirst - swap.First - swap.Count);
            touched.RemoveRange(swap.First, end - swap.First);
            touched.InsertRange(swap.First, [.. Enumerable.Repeat(true, swap.OtherCount), .. between, .. Enumerable.Repeat(true, swap.Count)]);
        }
        for (var i = 0; i < standIns.Length;)
        {
            // Rows that follow each other and take the same bead are done at once, so that what becomes alike goes by one name.
            var (goes, comes) = (standIns[i].Bead, standIns[i].With);
            var beads = ImmutableSortedSet.CreateBuilder<int>();
            for (; i < standIns.Length && standIns[i].Bead == goes && standIns[i].With == comes; i++)
            {
                if (WrongRow(now, standIns[i].First, standIns[i].Count) is { } wrong) return new EditOutcome.Refused([wrong]);
                var row = Enumerable.Range(standIns[i].First, standIns[i].Count).Where(bead => now.Beads[now.Order.Kinds[bead]].Id == goes).ToArray();
                if (row.Length == 0) return new EditOutcome.Refused([Fault.Of(FaultCodes.EditChangesNothing, "", goes)]);
                beads.UnionWith(row);
            }
            var all = beads.ToImmutable();
            if (Do(new ReplaceBeads(new BeadPlaces.Each(all), comes)) is { } why) return why;
            if (now.Written is null) now = InNamesOfTheirOwn(now, all);
            foreach (var bead in beads) touched[bead] = true;
        }
        var changed = Enumerable.Range(0, touched.Count).Where(bead => touched[bead]).ToImmutableSortedSet();
        if (!runs.IsEmpty)
        {
            switch (RunEditing.Apply(now, new SetRuns(runs)))
            {
                case EditOutcome.Refused refused:
                    return refused;
                case EditOutcome.Done done:
                    (now, told) = (done.Piece, told.AddRange(done.Told));
                    // A bead stands further on by what the runs before it grew.
                    changed = [.. changed.Select(bead => bead + runs.Where(run => run.First + run.Count <= bead).Sum(run => run.To - run.Count)), .. done.Beads];
                    break;
            }
        }
        return new EditOutcome.Done(now, restring) { Beads = changed, Told = told };

        EditOutcome.Refused? Do(OrderEdit edit)
        {
            switch (OrderEditing.Apply(now, edit))
            {
                case EditOutcome.Refused refused:
                    return refused;
                case EditOutcome.Done done:
                    (now, told) = (done.Piece, told.AddRange(done.Told));
                    break;
            }
            return null;
        }
    }

    // In a list every group stands by itself. Those that hold other beads now than the rest of their name go by a name of their own, as they do in a text.
    private static Piece InNamesOfTheirOwn(Piece piece, ImmutableSortedSet<int> replaced)
    {
        var order = piece.Order;
        var groups = order.Groups.ToBuilder();
        var taken = order.Groups.Select(group => group.Name).Concat(piece.Beads.Select(bead => bead.Id)).ToHashSet(StringComparer.Ordinal);
        var wishes = piece.Wishes.Groups;
        foreach (var alike in Enumerable.Range(0, groups.Count).GroupBy(g => order.Groups[g].Name, StringComparer.Ordinal).ToList())
        {
            var others = alike.Where(g => Enumerable.Range(order.Groups[g].First, order.Groups[g].Count).Any(replaced.Contains)).GroupBy(g => Beads(order.Groups[g])).ToList();
            // Where none is left as it was, the first sort keeps the name.
            var keeps = others.Sum(sort => sort.Count()) == alike.Count() ? 1 : 0;
            foreach (var sort in others.Skip(keeps))
            {
                var name = GroupSurvey.FreeName(alike.Key, taken);
                foreach (var g in sort) groups[g] = groups[g] with { Name = name };
                if (wishes.TryGetValue(alike.Key, out var wish)) wishes = wishes.SetItem(name, wish);
            }
        }
        return piece with { Order = new StringingOrder(order.Kinds, groups.ToImmutable()), Wishes = piece.Wishes with { Groups = wishes } };

        string Beads(GroupRun group) => string.Join(' ', order.Kinds.Skip(group.First).Take(group.Count));
    }

    private static (ImmutableArray<RowSwap>, ImmutableArray<RowStandIn>, ImmutableArray<RunCount>) Lists(Restring restring) =>
        (restring.Swaps.IsDefault ? [] : restring.Swaps, restring.StandIns.IsDefault ? [] : restring.StandIns, restring.Runs.IsDefault ? [] : restring.Runs);

    private static Fault? WrongRow(Piece piece, int first, int count) => first >= 0 && count >= 1 && count <= piece.Order.Count - first ? null : NoSuchBead(piece, first);

    private static Fault NoSuchBead(Piece piece, int bead) =>
        Fault.Of(FaultCodes.EditNoSuchBead, "", (bead + 1L).ToString(CultureInfo.InvariantCulture), ("beads", piece.Order.Count.ToString(CultureInfo.InvariantCulture)));
}
