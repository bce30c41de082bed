using Coilwright.Core.Editing.Marking;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Rewriting;

/// <summary>What one pass of a counted item is.</summary>
internal enum BitKind
{
    /// <summary>The item's part.</summary>
    Part,

    /// <summary>What is between two of it.</summary>
    Separator,

    /// <summary>Something that is put in.</summary>
    Inserted,
}

/// <summary>One thing that a counted item comes to string, once.</summary>
internal sealed record Bit(BitKind Kind, Mark[] Marks, Inserting? Inserted)
{
    public static readonly Bit Part = new(BitKind.Part, [], null);
    public static readonly Bit Separator = new(BitKind.Separator, [], null);

    /// <summary>Whether another is written alike.</summary>
    public bool IsLike(Bit other) => Kind == other.Kind && ReferenceEquals(Inserted, other.Inserted) && Marking.Marks.Same(Marks, other.Marks);
}

/// <summary>A thing so many times, with another between each two or with nothing.</summary>
internal readonly record struct Times(Bit What, Bit? Between, int Count);

/// <summary>Neighbouring passes of a counted item, and what is made of them together; null when nothing is.</summary>
internal sealed record Stretch(List<Times> Passes, Wrapping? Doing);

/// <summary>Marks on a counted item, pass by pass: passes marked alike are counted together again.</summary>
internal sealed class ItemCut
{
    private readonly OrderItem _item;
    private readonly OrderLengths _lengths;
    private readonly int _part;
    private readonly int _separator;

    // Segments are the passes of the part and, where there is one, of the separator, in turn.
    private readonly int _segments;
    private readonly SortedDictionary<int, List<Mark>> _inside = [];
    private readonly SortedDictionary<int, List<Inserting>> _before = [];
    private readonly List<(int From, int To, Wrapping Doing)> _wraps = [];

    private ItemCut(OrderItem item, OrderLengths lengths)
    {
        _item = item;
        _lengths = lengths;
        _part = lengths.Of(item.Part!);
        _separator = lengths.OfSeparator(item);
        _segments = _separator == 0 ? item.Times : 2 * item.Times - 1;
    }

    /// <summary>Parts the marks on an item that is counted more than once.</summary>
    public static List<Stretch> Of(OrderItem item, OrderLengths lengths, Mark[] marks)
    {
        var cut = new ItemCut(item, lengths);
        foreach (var mark in marks) cut.Take(mark);
        return cut.Stretches();
    }

    private void Take(Mark mark)
    {
        var (segment, isEdge) = SegmentAt(mark.First);
        if (mark.Count == 0 && mark.Depth == 0 && isEdge)
        {
            if (!_before.TryGetValue(segment, out var before)) _before.Add(segment, before = []);
            before.Add((Inserting)mark.Doing);
            return;
        }
        if (mark is { Depth: 0, Doing: Wrapping wrapping } && isEdge && SegmentAt(mark.End) is (var end, true))
        {
            _wraps.Add((segment, end, wrapping));
            return;
        }
        if (mark.Count == 0 && isEdge && mark.Side != Side.Next) segment--;
        if (!_inside.TryGetValue(segment, out var own)) _inside.Add(segment, own = []);
        own.Add(mark.From(StartOf(segment)));
    }

    private (int Segment, bool IsEdge) SegmentAt(int place)
    {
        if (_separator == 0) return (place / _part, place % _part == 0);
        var (unit, rest) = Math.DivRem(place, _part + _separator);
        return rest < _part ? (2 * unit, rest == 0) : (2 * unit + 1, rest == _part);
    }

    private int StartOf(int segment) => _separator == 0 ? segment * _part : segment / 2 * (_part + _separator) + segment % 2 * _part;

    private bool IsSeparator(int segment) => _separator > 0 && segment % 2 == 1;

    private List<Stretch> Stretches()
    {
        var stretches = new List<Stretch>();
        var from = 0;
        var open = new List<Times>();
        foreach (var (start, end, doing) in _wraps)
        {
            Segments(from, start, open);
            // What is put in just before them is not one of them.
            if (_before.Remove(start, out var before)) open.AddRange(before.Select(Inserted));
            var inner = new List<Times>();
            Segments(start, end, inner);
            from = end;
            var counted = Counted(inner);
            // So many times what was there already is a larger count.
            if (doing is Repeating repeating && counted is [{ Between: null } passes] && (long)passes.Count * repeating.Times <= OrderLimits.Count)
            {
                open.Add(passes with { Count = passes.Count * repeating.Times });
                continue;
            }
            if (open.Count > 0) stretches.Add(new Stretch(Counted(open), null));
            stretches.Add(new Stretch(counted, doing));
            open = [];
        }
        Segments(from, _segments, open);
        if (open.Count > 0) stretches.Add(new Stretch(Counted(open), null));
        return stretches;
    }

    /// <summary>Adds the segments from one to another, those without marks counted together.</summary>
    private void Segments(int from, int end, List<Times> to)
    {
        var marked = _inside.Keys.Concat(_before.Keys).Where(segment => segment >= from && segment < end).Distinct().Order();
        foreach (var segment in marked)
        {
            Unmarked(from, segment, to);
            if (_before.TryGetValue(segment, out var before)) to.AddRange(before.Select(Inserted));
            from = segment;
            if (!_inside.TryGetValue(segment, out var own)) continue;
            from++;
            var length = IsSeparator(segment) ? _separator : _part;
            Mark[] marks = [.. own];
            if (!Marks.Empty(marks, length)) to.Add(new Times(new Bit(IsSeparator(segment) ? BitKind.Separator : BitKind.Part, marks, null), null, 1));
        }
        Unmarked(from, end, to);
    }

    private void Unmarked(int from, int end, List<Times> to)
    {
        if (from < end && IsSeparator(from))
        {
            to.Add(new Times(Bit.Separator, null, 1));
            from++;
        }
        if (from >= end) return;
        var parts = _separator == 0 ? end - from : (end - from + 1) / 2;
        to.Add(new Times(Bit.Part, _separator > 0 && parts > 1 ? Bit.Separator : null, parts));
        if (_separator > 0 && IsSeparator(end - 1)) to.Add(new Times(Bit.Separator, null, 1));
    }

    /// <summary>What is put in; more of the item's own bead where it is that.</summary>
    private Times Inserted(Inserting inserting)
    {
        if (_item.Part is OrderNameUse use && _lengths.KindOf(use) is var kind and >= 0 && inserting.Things.All(thing => thing is Thing.Bead bead && bead.Kind == kind)
            && (long)inserting.Things.Length * inserting.Times <= OrderLimits.Count)
            return new Times(Bit.Part, null, inserting.Things.Length * inserting.Times);
        return new Times(new Bit(BitKind.Inserted, [], inserting), null, 1);
    }

    /// <summary>The same with like passes counted together, and with what is between each two of them.</summary>
    private static List<Times> Counted(List<Times> passes)
    {
        var rows = new List<Times>();
        foreach (var next in passes)
            if (rows.Count > 0 && rows[^1] is { Between: null } last && next.Between is null && last.What.IsLike(next.What)) rows[^1] = last with { Count = last.Count + next.Count };
            else rows.Add(next);
        var counted = new List<Times>();
        for (var i = 0; i < rows.Count; i++)
        {
            var between = BetweenFrom(rows, i);
            if (between == 0)
            {
                counted.Add(rows[i]);
                continue;
            }
            // Of a row at either end only the one that stands beside the others belongs to them.
            var (first, last) = (rows[i], rows[i + 2 * between]);
            var count = Enumerable.Range(0, between + 1).Sum(row => rows[i + 2 * row].Between is null ? 1 : rows[i + 2 * row].Count);
            if (first is { Between: null, Count: > 1 }) counted.Add(first with { Count = first.Count - 1 });
            counted.Add(new Times(first.What, rows[i + 1].What, count));
            i += 2 * between;
            if (last is not { Between: null, Count: > 1 }) continue;
            rows[i] = last with { Count = last.Count - 1 };
            i--;
        }
        return counted;
    }

    /// <summary>How many times the same stands between like rows from one on; 0 where that is better written one after another.</summary>
    private static int BetweenFrom(List<Times> rows, int at)
    {
        if (rows[at].What.Kind != BitKind.Part || at + 2 >= rows.Count) return 0;
        var middle = rows[at + 1];
        if (middle is not { Between: null, Count: 1, What.Kind: not BitKind.Part }) return 0;
        // What is put in reads as something between from three on; what was between already stays so.
        var isOld = middle.What.Kind == BitKind.Separator;
        var between = 0;
        while (at + 2 * between + 2 < rows.Count && rows[at + 2 * between + 1] is { Between: null, Count: 1 } next && next.What.IsLike(middle.What)
            && Fits(rows[at + 2 * between], isLast: between == 0) && Fits(rows[at + 2 * between + 2], isLast: true))
            between++;
        return between >= (isOld ? 1 : 2) ? between : 0;

        bool Fits(Times row, bool isLast) => row.What.IsLike(rows[at].What)
            && (row.Between is null ? row.Count == 1 || (isLast && !isOld) : row.Between.IsLike(middle.What));
    }
}
