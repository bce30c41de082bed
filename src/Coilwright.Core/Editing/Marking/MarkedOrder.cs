using System.Collections.Immutable;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Marking;

/// <summary>What comes of marks on an order.</summary>
/// <param name="Order">The order afterwards; null when no bead is left.</param>
/// <param name="CameFrom">For each bead of it the index it had before; -1 for a bead that was put in.</param>
/// <param name="Changed">Its beads that were put in or were in a stretch that something was made of, ascending.</param>
internal sealed record MarkedOutcome(StringingOrder? Order, ImmutableArray<int> CameFrom, ImmutableArray<int> Changed);

/// <summary>Does on the flat order what marks say, bead by bead, without looking at how the order is written.</summary>
internal sealed class MarkedOrder
{
    private readonly StringingOrder _order;
    private readonly OrderMap? _map;
    private readonly GroupDepths _depths;
    private readonly List<(int First, int End, int Depth, string Name)> _groups = [];
    private readonly Dictionary<int, List<Mark>> _gaps = [];
    private readonly Dictionary<int, Becoming> _beads = [];

    private readonly ImmutableArray<int>.Builder _kinds = ImmutableArray.CreateBuilder<int>();
    private readonly ImmutableArray<int>.Builder _cameFrom = ImmutableArray.CreateBuilder<int>();
    private readonly ImmutableArray<int>.Builder _changed = ImmutableArray.CreateBuilder<int>();
    private readonly List<GroupRun> _made = [];
    private readonly Stack<(int End, int Made)> _open = new();

    private MarkedOrder(StringingOrder order, OrderMap? map) => (_order, _map, _depths) = (order, map, new GroupDepths(order));

    /// <summary>The order afterwards; null when it would string more beads than an order may.</summary>
    /// <param name="order">The order.</param>
    /// <param name="map">Its map; null where it was given as a list.</param>
    /// <param name="marks">Marks on the whole of it, none over another.</param>
    public static MarkedOutcome? Apply(StringingOrder order, OrderMap? map, IReadOnlyList<Mark> marks)
    {
        var marked = new MarkedOrder(order, map);
        var stretches = marks.Where(mark => mark.Doing is Wrapping or Regrouping).ToList();
        marked.TakeGroups(stretches);
        foreach (var mark in marks) marked.Take(mark);
        if (marked.BeadsAfter() > OrderLimits.Beads) return null;
        marked.String(stretches);
        return new MarkedOutcome(marked._kinds.Count == 0 ? null : new StringingOrder(marked._kinds.ToImmutable(), [.. marked._made]),
            marked._cameFrom.ToImmutable(), marked._changed.ToImmutable());
    }

    /// <summary>What a stretch that is repeated or mirrored adds beside itself; null when it adds nothing.</summary>
    public static Mark? Added(StringingOrder order, OrderMap? map, GroupDepths depths, Mark stretch)
    {
        var (first, end) = (stretch.First, stretch.End);
        return stretch.Doing switch
        {
            Repeating repeating => At(end, Side.Previous, new Inserting(Things.Of(order, map, first, end), repeating.Times - 1)),
            Mirroring { Before: true } mirroring => At(first, Side.Next, new Inserting(Things.Reversed(Things.Of(order, map, first + mirroring.Centre, end)))),
            Mirroring mirroring => At(end, Side.Previous, new Inserting(Things.Reversed(Things.Of(order, map, first, end - mirroring.Centre)))),
            _ => null,
        };

        Mark At(int gap, Side side, Inserting inserting) =>
            new(gap, 0, side == Side.Previous ? depths.After(first, end) : depths.Before(first, end), side, inserting);
    }

    private void TakeGroups(List<Mark> stretches)
    {
        var changes = stretches.Where(mark => mark.Doing is Regrouping).ToDictionary(mark => (mark.First, mark.Count, mark.Depth), mark => mark.Doing);
        for (var i = 0; i < _order.Groups.Length; i++)
        {
            var group = _order.Groups[i];
            // Depths doubled, so that a new group finds room around the groups of one depth and inside those of the depth before.
            if (!changes.TryGetValue((group.First, group.Count, _depths.OfGroup(i)), out var doing))
                _groups.Add((group.First, group.End, 2 * _depths.OfGroup(i) + 1, group.Name));
            else if (doing is Renaming renaming)
                _groups.Add((group.First, group.End, 2 * _depths.OfGroup(i) + 1, renaming.Name));
        }
        foreach (var mark in stretches)
            if (mark.Doing is Grouping grouping)
                _groups.Add((mark.First, mark.End, 2 * mark.Depth, grouping.Name));
        _groups.Sort((a, b) => (a.First, a.Depth).CompareTo((b.First, b.Depth)));
    }

    private void Take(Mark mark)
    {
        if (mark.Doing is Becoming becoming) _beads.Add(mark.First, becoming);
        else if (mark.Doing is Inserting) AddToGap(mark);
        else if (Added(_order, _map, _depths, mark) is { } added) AddToGap(added);
    }

    private void AddToGap(Mark mark)
    {
        if (!_gaps.TryGetValue(mark.First, out var marks)) _gaps.Add(mark.First, marks = []);
        marks.Add(mark);
    }

    private long BeadsAfter()
    {
        long beads = _order.Count;
        foreach (var becoming in _beads.Values) beads += Things.Beads(becoming.Before) + Things.Beads(becoming.After) - (becoming.Stays ? 0 : 1);
        foreach (var inserting in _gaps.Values.SelectMany(marks => marks).Select(mark => (Inserting)mark.Doing))
            beads += Math.Min(Things.Beads(inserting.Things), OrderLimits.Beads + 1) * inserting.Times;
        return beads;
    }

    private void String(List<Mark> stretches)
    {
        var next = 0;
        var inside = new bool[_order.Count];
        foreach (var mark in stretches) inside.AsSpan(mark.First, mark.Count).Fill(true);
        for (var gap = 0; gap <= _order.Count; gap++)
        {
            var marks = _gaps.GetValueOrDefault(gap);
            while (_open.TryPeek(out var group) && group.End == gap)
            {
                Insert(marks, withNext: false);
                Close();
            }
            Insert(marks, withNext: false);
            while (next < _groups.Count && _groups[next].First == gap)
            {
                Insert(marks, withNext: true);
                Open(_groups[next].Name, _groups[next].End);
                next++;
            }
            Insert(marks, withNext: true);
            if (gap < _order.Count) StringBead(gap, inside[gap]);
        }
        var firstGone = FirstGone();
        if (_changed.Count == 0 && firstGone >= 0 && _kinds.Count > 0) _changed.Add(Math.Min(firstGone, _kinds.Count - 1));
    }

    /// <summary>Where the first bead that went left its place, so that what stands there now can be looked at; -1 when none went.</summary>
    private int FirstGone()
    {
        if (_beads.Count == 0) return -1;
        var first = _beads.Keys.Min();
        var after = 0;
        while (after < _cameFrom.Count && _cameFrom[after] < first) after++;
        return after;
    }

    private void StringBead(int bead, bool inside)
    {
        var becoming = _beads.GetValueOrDefault(bead);
        if (becoming is not null) Add(becoming.Before);
        if (becoming is null or { Stays: true })
        {
            if (inside) _changed.Add(_kinds.Count);
            _kinds.Add(_order.Kinds[bead]);
            _cameFrom.Add(bead);
        }
        if (becoming is not null) Add(becoming.After);
    }

    /// <summary>Puts in what is to stand just here: as deep in groups as this, and on this side of the group that ends or starts here.</summary>
    private void Insert(List<Mark>? marks, bool withNext)
    {
        if (marks is null) return;
        for (var i = 0; i < marks.Count; i++)
        {
            if ((marks[i].Side == Side.Next) != withNext || marks[i].Depth != _open.Count) continue;
            var inserting = (Inserting)marks[i].Doing;
            for (var time = 0; time < inserting.Times; time++) Add(inserting.Things);
            marks.RemoveAt(i--);
        }
    }

    private void Add(ImmutableArray<Thing> things)
    {
        foreach (var thing in things)
        {
            if (thing is Thing.Bead bead)
            {
                _changed.Add(_kinds.Count);
                _kinds.Add(bead.Kind);
                _cameFrom.Add(-1);
            }
            else if (thing is Thing.Group group)
            {
                Open(group.Name, -1);
                Add(group.Of);
                Close();
            }
        }
    }

    private void Open(string name, int end)
    {
        _open.Push((end, _made.Count));
        _made.Add(new GroupRun(name, _kinds.Count, 0));
    }

    /// <summary>Ends a group; one with no bead left goes.</summary>
    private void Close()
    {
        var (_, index) = _open.Pop();
        var count = _kinds.Count - _made[index].First;
        // Whatever was inside a group without beads has none either, and went before it.
        if (count == 0) _made.RemoveAt(index);
        else _made[index] = _made[index] with { Count = count };
    }
}
