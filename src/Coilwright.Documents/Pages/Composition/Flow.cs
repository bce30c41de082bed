using System.Collections.Immutable;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>Room on a page: so wide and so high, points.</summary>
/// <param name="Width">Width, all of which is used.</param>
/// <param name="Height">Height that must not be passed.</param>
/// <param name="Last">Whether no better room will come: something must be taken, even if it reaches beyond.</param>
internal readonly record struct Room(double Width, double Height, bool Last);

/// <summary>A piece of page as high as it needs, its marks measured from its left top corner.</summary>
internal sealed record Slab(double Height, ImmutableArray<PageMark> Marks);

/// <summary>What went into a room, and what is left for the next one; null when nothing is.</summary>
internal sealed record Taken(Slab Slab, Flow? Rest);

/// <summary>Something that is measured and laid into rooms, one after the other, until nothing of it is left.</summary>
internal abstract class Flow
{
    /// <summary>White before it, unless it begins a page or column. The larger of two neighbours' wishes holds.</summary>
    public double Before { get; init; }

    /// <summary>White after it, unless it ends a page or column.</summary>
    public double After { get; init; }

    /// <summary>Whether it must not end a page while something follows.</summary>
    public bool StaysWithNext { get; init; }

    /// <summary>Takes what fits; null when nothing sensible does, which a last room does not allow.</summary>
    public abstract Taken? Take(Room room);
}

/// <summary>Things one under the other.</summary>
internal sealed class Sequence(ImmutableArray<Flow> flows) : Flow
{
    private readonly ImmutableArray<Flow> _flows = flows;
    private readonly int _start;
    private readonly Flow? _head; // What is left of the flow at _start.

    private Sequence(ImmutableArray<Flow> flows, int start, Flow? head)
        : this(flows)
    {
        _start = start;
        _head = head;
    }

    public override Taken? Take(Room room)
    {
        var marks = ImmutableArray.CreateBuilder<PageMark>();
        double y = 0, after = 0;
        var first = true;
        for (var i = _start; i < _flows.Length; i++)
        {
            var flow = At(i);
            var gap = first ? 0 : Math.Max(after, _flows[i].Before);
            var last = first && room.Last;
            var taken = flow.Take(room with { Height = room.Height - y - gap, Last = last });
            if (taken is { Rest: null } && _flows[i].StaysWithNext && !last && !NextFits(i, room, y + gap + taken.Slab.Height)) taken = null;
            if (taken is null) return first ? null : new Taken(new Slab(y, marks.ToImmutable()), From(i, null));
            foreach (var mark in taken.Slab.Marks) marks.Add(mark.Moved(0, y + gap));
            y += gap + taken.Slab.Height;
            if (taken.Rest is not null) return new Taken(new Slab(y, marks.ToImmutable()), From(i, taken.Rest));
            // What takes no height has not begun the page: what comes next still has it to itself.
            if (first && y <= 0) continue;
            after = _flows[i].After;
            first = false;
        }
        return new Taken(new Slab(y, marks.ToImmutable()), null);
    }

    private Flow At(int i) => i == _start && _head is not null ? _head : _flows[i];

    private Sequence From(int start, Flow? head) =>
        new(_flows, start, head ?? (start == _start ? _head : null)) { Before = Before, After = After };

    // Whether the flow after i, and those it must stay with, find room below y.
    private bool NextFits(int i, Room room, double y)
    {
        if (i + 1 >= _flows.Length) return true;
        var next = _flows[i + 1];
        var gap = Math.Max(_flows[i].After, next.Before);
        var taken = next.Take(room with { Height = room.Height - y - gap, Last = false });
        if (taken is null) return false;
        return taken.Rest is not null || !next.StaysWithNext || NextFits(i + 1, room, y + gap + taken.Slab.Height);
    }
}

/// <summary>A flow that is not parted while a room can come that holds it whole.</summary>
internal sealed class Together(Flow inner) : Flow
{
    public override Taken? Take(Room room)
    {
        var taken = inner.Take(room);
        return taken?.Rest is null || room.Last ? taken : null;
    }
}

/// <summary>A flow that is one part for a reader: the part begins before its first piece and ends after its last, on whatever pages they lie.</summary>
internal sealed class Tagged(PageMark.Open open, Flow inner, bool begun = false) : Flow
{
    public override Taken? Take(Room room)
    {
        if (inner.Take(room) is not { } taken) return null;
        var marks = taken.Slab.Marks;
        if (!begun) marks = marks.Insert(0, open);
        if (taken.Rest is null) return new Taken(taken.Slab with { Marks = marks.Add(PageMark.Close.It) }, null);
        return new Taken(taken.Slab with { Marks = marks }, new Tagged(open, taken.Rest, begun: true));
    }
}

/// <summary>White of a fixed height; none at the top of a page or column, and it never takes a page for itself.</summary>
internal sealed class White(double height) : Flow
{
    public override Taken? Take(Room room) =>
        new(new Slab(room.Last ? 0 : Math.Clamp(room.Height, 0, height), []), null);
}

/// <summary>A fine line across; none at the top of a page or column, where nothing is to be parted.</summary>
internal sealed class RuleFlow(double width) : Flow
{
    public override Taken? Take(Room room) => room.Last ? new(new Slab(0, []), null) : room.Height < width ? null
        : new(new Slab(width, [new PageMark.Stroke(0, width / 2, room.Width, width / 2, width, PageInks.Hairline)]), null);
}
