using System.Collections.Immutable;
using Coilwright.Core.Editing.Marking;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Rewriting;

/// <summary>Finds out whether beads that something is made of are whole items side by side in the text, so that a bracket can be put round them.</summary>
internal sealed class WholeItems(OrderMap map)
{
    /// <summary>The marks with those on beads that are no whole items said in other words: the beads are put in anew, or what is added is written out.</summary>
    public Mark[] Sayable(ImmutableArray<Mark> marks)
    {
        if (!marks.Any(mark => mark.Doing is Wrapping)) return [.. marks];
        var sayable = new List<Mark>(marks.Length);
        var depths = new GroupDepths(map.Order);
        var gone = new Becoming([], false, []);
        var others = new List<(Doing Said, Inserting Made)>();
        foreach (var mark in marks)
        {
            if (mark.Doing is not Wrapping || AreWhole(mark)) sayable.Add(mark);
            else if (mark.Doing is Grouping grouping)
            {
                var group = new Inserting([new Thing.Group(grouping.Name, false, Things.Of(map.Order, map, mark.First, mark.End))]);
                sayable.Add(new Mark(mark.First, 0, mark.Depth, Side.Next, Shared(mark.Doing, group)));
                for (var bead = mark.First; bead < mark.End; bead++) sayable.Add(new Mark(bead, 1, depths.OfBead(bead), Side.Neither, gone));
            }
            else
            {
                var added = MarkedOrder.Added(map.Order, map, depths, mark)!.Value;
                sayable.Add(added with { Doing = Shared(mark.Doing, (Inserting)added.Doing) });
            }
        }
        return [.. sayable.Order()];

        // What was one doing on like beads in several places stays one.
        Inserting Shared(Doing said, Inserting made)
        {
            foreach (var (known, inserting) in others)
            {
                if (known != said && known != said.Reversed) continue;
                var same = known == said ? inserting : (Inserting)inserting.Reversed;
                if (Things.Same(same.Things, made.Things)) return same;
            }
            others.Add((said, made));
            return made;
        }
    }

    private bool AreWhole(Mark mark)
    {
        ImmutableArray<OrderItem> items = [.. map.Tree.Entries.OfType<OrderItem>()];
        if (!AreWhole(items, mark)) return false;
        // A group written down on a line of its own cannot stand in a bracket.
        var inside = map.Tree.Entries.OfType<OrderDefinition>().Select(definition => definition.Span.Start).ToList();
        if (inside.Count == 0) return true;
        var cut = RunCut.Of(items, map.Lengths, [mark]);
        return cut.Wraps is not [var (from, to, _)]
            || !inside.Exists(line => line > items[from].Span.Start && line < items[to].Span.Start);
    }

    private bool AreWhole(ImmutableArray<OrderItem> items, Mark mark)
    {
        var cut = RunCut.Of(items, map.Lengths, Fitting(items, mark));
        if (cut.Wraps is [var (from, to, doing)]) return doing is not Mirroring mirroring || CentreOf(items, map.Lengths, from, to, mirroring) is not null;
        var item = Array.FindIndex(cut.Inside, marks => marks.Length > 0);
        return item >= 0 && AreWhole(items[item], cut.Inside[item][0]);
    }

    /// <summary>The mark, if it lies in one item or on whole ones; none otherwise.</summary>
    private Mark[] Fitting(ImmutableArray<OrderItem> items, Mark mark)
    {
        var start = 0;
        var startsItem = false;
        foreach (var item in items)
        {
            var end = start + map.Lengths.Of(item);
            if (mark.First >= start && mark.End <= end) return [mark];
            startsItem |= mark.First == start;
            if (mark.End == end) return startsItem && mark.Depth == 0 ? [mark] : [];
            start = end;
        }
        return [];
    }

    /// <summary>The items that stand in the middle of a mirror: from one to another, none when <c>From</c> is after <c>To</c>; null when they are no whole
    /// items.</summary>
    public static (int From, int To)? CentreOf(ImmutableArray<OrderItem> items, OrderLengths lengths, int from, int to, Mirroring mirroring)
    {
        var left = mirroring.Centre;
        if (mirroring.Before)
        {
            var item = from;
            while (left > 0) left -= lengths.Of(items[item++]);
            return left == 0 ? (from, item - 1) : null;
        }
        var last = to;
        while (left > 0) left -= lengths.Of(items[last--]);
        return left == 0 ? (last + 1, to) : null;
    }

    private bool AreWhole(OrderItem item, Mark mark)
    {
        if (item.Times == 1) return AreWhole(item.Part!, mark);
        var part = map.Lengths.Of(item.Part!);
        var unit = part + map.Lengths.OfSeparator(item);
        var isWhole = IsEdge(mark.First) && IsEdge(mark.End) && mark.Depth == 0;
        if (isWhole) return mark.Doing is not Mirroring { Centre: > 0 };
        var start = mark.First / unit * unit;
        if (mark.First < start + part) return mark.End <= start + part && AreWhole(item.Part!, mark.From(start));
        return mark.End <= start + unit && AreWhole(item.Separator!, mark.From(start + part));

        bool IsEdge(int place) => place % unit == 0 || place % unit == part;
    }

    private bool AreWhole(OrderPart part, Mark mark)
    {
        switch (part)
        {
            case OrderNameUse use when map.Lengths.KindOf(use) < 0:
                return mark.Depth > 0 && AreWhole(map.Names.Run(use.Name.Text).Items, mark.Inside());
            case OrderBracket { Name: not null } bracket:
                return mark.Depth > 0 && AreWhole(bracket.Run.Items, mark.Inside());
            case OrderBracket bracket:
                return AreWhole(bracket.Run.Items, mark);
            case OrderBackwards backwards:
                return AreWhole(backwards.Part, mark.Turned(map.Lengths.Of(backwards.Part)));
            case OrderMirror mirror:
                return AreWhole(mirror, mark);
            default:
                return false;
        }
    }

    private bool AreWhole(OrderMirror mirror, Mark mark)
    {
        var half = map.Lengths.Of(mirror.Half);
        var centre = mirror.Centre is null ? 0 : map.Lengths.Of(mirror.Centre);
        if (mark.End <= half) return AreWhole(mirror.Half.Items, mark);
        if (mark.First >= half + centre) return AreWhole(mirror.Half.Items, mark.From(half + centre).Turned(half));
        if (mark.First < half || mark.End > half + centre) return false;
        if (mark.Count == centre && mark.Depth == 0) return mark.Doing is not Mirroring { Centre: > 0 };
        return AreWhole(mirror.Centre!, mark.From(half));
    }
}
