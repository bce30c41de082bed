using Coilwright.Core.Editing;
using Coilwright.Core.Stringing;
using Coilwright.Core.Tests.Stringing;

namespace Coilwright.Core.Tests.Editing;

/// <summary>The naive second way: does an edit on the plain list of things that are strung, knowing nothing of text, counts or mirrors. Shares no code with
/// the program.</summary>
internal static class NaiveEdits
{
    private static readonly string[] Ids = OrderTexts.BeadIds;

    /// <summary>The things strung after an edit; null where the plain list does not say where groups go (a stretch that cuts one).</summary>
    /// <param name="things">The things before.</param>
    /// <param name="edit">An edit of one place, not of every pass.</param>
    /// <param name="named">What a name strings.</param>
    public static List<Thing>? After(List<Thing> things, OrderEdit edit, Func<string, Thing> named) => edit switch
    {
        InsertBeads insert => InsertAt(things, insert.At, [.. insert.What.Select(named)]),
        RemoveBeads remove => Mapped(things, PlacesOf(remove.Where), _ => []),
        ReplaceBeads replace => Mapped(things, PlacesOf(replace.Where), _ => [named(replace.With)]),
        MoveBeads { Where: BeadPlaces.Row row } move => Moved(things, row, move.To),
        DuplicateBeads { Where: BeadPlaces.Row row } => Multiplied(things, row, 2),
        RepeatBeads { Where: BeadPlaces.Row row } repeat => Multiplied(things, row, repeat.Times),
        MirrorBeads { Where: BeadPlaces.Row row } mirror => Mirrored(things, row, mirror.Centre),
        PutBetween { Where: BeadPlaces.Row row } between => PutBetween(things, row, [.. between.What.Select(named)]),
        NameGroup { Where: BeadPlaces.Row row } name => Grouped(things, row, name.Name),
        _ => throw new ArgumentException("No plain way.", nameof(edit)),
    };

    private static SortedSet<int> PlacesOf(BeadPlaces where) => where switch
    {
        BeadPlaces.Row row => [.. Enumerable.Range(row.First, row.Count)],
        BeadPlaces.Each each => [.. each.Beads],
        _ => throw new ArgumentException("No places.", nameof(where)),
    };

    private static int Beads(Thing thing) => thing is Thing.Group group ? group.Things.Sum(Beads) : 1;

    private static List<Thing> Mapped(List<Thing> things, SortedSet<int> places, Func<Thing, Thing[]> with)
    {
        var at = 0;
        return In(things);

        List<Thing> In(List<Thing> level)
        {
            var after = new List<Thing>();
            foreach (var thing in level)
            {
                if (thing is Thing.Group group)
                {
                    if (In(group.Things) is { Count: > 0 } left) after.Add(group with { Things = left });
                }
                else if (places.Contains(at++))
                {
                    after.AddRange(with(thing));
                }
                else
                {
                    after.Add(thing);
                }
            }
            return after;
        }
    }

    /// <summary>Puts things into a gap, on the outermost level where it is one.</summary>
    private static List<Thing> InsertAt(List<Thing> things, int gap, List<Thing> what)
    {
        var after = new List<Thing>();
        var at = 0;
        foreach (var thing in things)
        {
            if (at == gap) after.AddRange(what);
            var end = at + Beads(thing);
            after.Add(gap > at && gap < end && thing is Thing.Group group ? group with { Things = InsertAt(group.Things, gap - at, what) } : thing);
            at = end;
        }
        if (at == gap) after.AddRange(what);
        return after;
    }

    private static List<Thing>? Moved(List<Thing> things, BeadPlaces.Row row, int to)
    {
        if (to > row.First && to < row.First + row.Count) return null;
        if (Taken(things, row) is not { } taken) return null;
        // Marked first, so that the gap stays where it was while beads are taken off.
        var marker = new Thing.Bead("here");
        var marked = InsertAt(things, to, [marker]);
        var first = row.First >= to ? row.First + 1 : row.First;
        var left = Mapped(marked, [.. Enumerable.Range(first, row.Count)], _ => []);
        return Mapped(left, [.. PlacesWhere(left, thing => thing == marker)], _ => [.. taken]);
    }

    private static IEnumerable<int> PlacesWhere(List<Thing> things, Func<Thing, bool> holds)
    {
        var at = 0;
        foreach (var bead in Flat(things))
        {
            if (holds(bead)) yield return at;
            at++;
        }
    }

    private static IEnumerable<Thing> Flat(List<Thing> things) => things.SelectMany(thing => thing is Thing.Group group ? Flat(group.Things) : [thing]);

    /// <summary>The things of a row; null where it cuts a group.</summary>
    private static List<Thing>? Taken(List<Thing> things, BeadPlaces.Row row) => OnLevel(things, row.First, row.Count, taken => taken) is null ? null : Found(things, row);

    private static List<Thing> Found(List<Thing> things, BeadPlaces.Row row)
    {
        List<Thing>? found = null;
        OnLevel(things, row.First, row.Count, taken => found = taken);
        return found!;
    }

    /// <summary>Changes the things of a row on the outermost level where they are whole; null where there is none.</summary>
    private static List<Thing>? OnLevel(List<Thing> things, int first, int count, Func<List<Thing>, List<Thing>> change)
    {
        var starts = new List<int> { 0 };
        foreach (var thing in things) starts.Add(starts[^1] + Beads(thing));
        var (from, to) = (starts.IndexOf(first), starts.IndexOf(first + count));
        if (from >= 0 && to >= 0) return [.. things[..from], .. change(things[from..to]), .. things[to..]];
        for (var i = 0; i < things.Count; i++)
            if (starts[i] <= first && starts[i + 1] >= first + count && things[i] is Thing.Group group)
                return OnLevel(group.Things, first - starts[i], count, change) is { } inner ? [.. things[..i], group with { Things = inner }, .. things[(i + 1)..]] : null;
        return null;
    }

    private static List<Thing>? Multiplied(List<Thing> things, BeadPlaces.Row row, int times) =>
        OnLevel(things, row.First, row.Count, taken => [.. Enumerable.Repeat(taken, times).SelectMany(t => t)]);

    private static List<Thing>? Mirrored(List<Thing> things, BeadPlaces.Row row, int centre)
    {
        if (Taken(things, new BeadPlaces.Row(row.First, row.Count - centre)) is not { } half) return null;
        return OnLevel(things, row.First, row.Count, taken => [.. taken, .. NaiveStringing.Reversed(half)]);
    }

    private static List<Thing> PutBetween(List<Thing> things, BeadPlaces.Row row, List<Thing> what)
    {
        for (var gap = row.First + row.Count - 1; gap > row.First; gap--) things = InsertAt(things, gap, what);
        return things;
    }

    private static List<Thing>? Grouped(List<Thing> things, BeadPlaces.Row row, string name) =>
        OnLevel(things, row.First, row.Count, taken => [new Thing.Group(name, taken is [Thing.Group only] ? only.Things : taken)]);

    /// <summary>Only the beads after an edit, as one would count them off on the mat.</summary>
    public static List<string> BeadsAfter(List<string> beads, OrderEdit edit, Func<string, List<string>> named)
    {
        switch (edit)
        {
            case InsertBeads insert:
                return [.. beads[..insert.At], .. insert.What.SelectMany(named), .. beads[insert.At..]];
            case RemoveBeads remove:
                return [.. beads.Where((_, at) => !PlacesOf(remove.Where).Contains(at))];
            case ReplaceBeads replace:
                return [.. beads.SelectMany((bead, at) => PlacesOf(replace.Where).Contains(at) ? named(replace.With) : [bead])];
            case MoveBeads move:
                var places = PlacesOf(move.Where);
                var moved = places.Select(at => beads[at]);
                var to = places.Contains(move.To) && places.Contains(move.To - 1) ? RunStart(places, move.To) : move.To;
                return [.. beads.Where((_, at) => at < to && !places.Contains(at)), .. moved, .. beads.Where((_, at) => at >= to && !places.Contains(at))];
            case DuplicateBeads duplicate:
                return Repeated(beads, PlacesOf(duplicate.Where), 2);
            case RepeatBeads repeat:
                return Repeated(beads, PlacesOf(repeat.Where), repeat.Times);
            case MirrorBeads { Where: BeadPlaces.Row row } mirror:
                var end = row.First + row.Count;
                return [.. beads[..end], .. beads[row.First..(end - mirror.Centre)].AsEnumerable().Reverse(), .. beads[end..]];
            case PutBetween between:
                var chosen = PlacesOf(between.Where);
                return [.. beads.SelectMany((bead, at) => chosen.Contains(at) && chosen.Contains(at - 1) ? [.. between.What.SelectMany(named), bead] : new[] { bead })];
            case NameGroup or Ungroup:
                return beads;
            default:
                throw new ArgumentException("No plain way.", nameof(edit));
        }
    }

    private static int RunStart(SortedSet<int> places, int at)
    {
        while (places.Contains(at - 1)) at--;
        return at;
    }

    private static List<string> Repeated(List<string> beads, SortedSet<int> places, int times)
    {
        var after = new List<string>();
        for (var at = 0; at < beads.Count; at++)
        {
            if (!places.Contains(at))
            {
                after.Add(beads[at]);
                continue;
            }
            var end = at;
            while (places.Contains(end)) end++;
            for (var time = 0; time < times; time++) after.AddRange(beads[at..end]);
            at = end - 1;
        }
        return after;
    }

    public static List<string> BeadsOf(StringingOrder order) => [.. order.Kinds.Select(kind => Ids[kind])];
}
