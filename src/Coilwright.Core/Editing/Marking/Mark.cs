namespace Coilwright.Core.Editing.Marking;

/// <summary>What a gap at the edge of a group belongs with.</summary>
internal enum Side
{
    /// <summary>What is before it.</summary>
    Previous,

    /// <summary>Neither side: it lies outside the group.</summary>
    Neither,

    /// <summary>What is after it.</summary>
    Next,
}

/// <summary>What is done where on a stretch of beads.</summary>
/// <remarks>Places count from the stretch's own first bead as it is written. A mark of no beads is a gap, the one before bead <paramref name="First"/>;
/// a mark of one or more is what is done to those beads.</remarks>
/// <param name="First">Index of the first bead, or of the bead after the gap.</param>
/// <param name="Count">How many beads; 0 for a gap.</param>
/// <param name="Depth">How many named groups, counted from the stretch inwards, it lies in. It tells where a gap at a group's edge belongs.</param>
/// <param name="Side">What a gap belongs with where that makes a difference.</param>
/// <param name="Doing">What is done.</param>
internal readonly record struct Mark(int First, int Count, int Depth, Side Side, Doing Doing) : IComparable<Mark>
{
    public int End => First + Count;

    /// <summary>By place; the gap before a bead comes before the bead, and what belongs with what is before a gap comes before the rest.</summary>
    public int CompareTo(Mark other) => (First, Math.Min(Count, 1), Side).CompareTo((other.First, Math.Min(other.Count, 1), other.Side));

    /// <summary>The mark on a stretch that starts so many beads further on.</summary>
    public Mark From(int start) => this with { First = First - start };

    /// <summary>The mark as seen inside a group that it lies in.</summary>
    public Mark Inside() => this with { Depth = Depth - 1 };

    /// <summary>The mark on the same stretch from its other end.</summary>
    public Mark Turned(int length) => new(length - End, Count, Depth, Opposite, Doing.Reversed);

    private Side Opposite => Side switch { Side.Previous => Side.Next, Side.Next => Side.Previous, _ => Side.Neither };
}

/// <summary>Marks on one stretch, by place.</summary>
internal static class Marks
{
    /// <summary>Those that belong to a part of the stretch, on the part's own places.</summary>
    public static Mark[] In(ReadOnlySpan<Mark> marks, int start, int end)
    {
        if (marks.IsEmpty) return [];
        var from = 0;
        while (from < marks.Length && marks[from].First < start) from++;
        var found = new List<Mark>();
        for (var i = from; i < marks.Length && marks[i].First <= end; i++)
            if (BelongsTo(marks[i], start, end))
                found.Add(marks[i].From(start));
        return found.Count == 0 ? [] : [.. found];
    }

    /// <summary>Whether a mark is inside a part: its beads are, or its gap is, or lies at the part's edge and belongs to a group that ends there.</summary>
    public static bool BelongsTo(Mark mark, int start, int end)
    {
        if (mark.Count > 0) return mark.First >= start && mark.End <= end;
        if (mark.First > start && mark.First < end) return true;
        return mark.Depth > 0 && mark.First == (mark.Side == Side.Next ? start : end);
    }

    /// <summary>The marks on the same stretch from its other end.</summary>
    public static Mark[] Turned(Mark[] marks, int length)
    {
        if (marks.Length == 0) return marks;
        var turned = new Mark[marks.Length];
        for (var i = 0; i < marks.Length; i++) turned[^(i + 1)] = marks[i].Turned(length);
        Array.Sort(turned); // a gap and the bead after it have changed places
        return turned;
    }

    /// <summary>Whether two stretches are marked alike.</summary>
    public static bool Same(Mark[] some, Mark[] others) => some.AsSpan().SequenceEqual(others);

    /// <summary>Whether nothing is left of a stretch of so many beads.</summary>
    public static bool Empty(Mark[] marks, int length)
    {
        var gone = 0;
        foreach (var mark in marks)
        {
            if (mark.Doing is Becoming { IsGone: true }) gone++;
            else if (mark.Doing is Inserting or Becoming) return false;
        }
        return gone == length;
    }
}

/// <summary>Compares marks as a whole.</summary>
internal sealed class MarksComparer : IEqualityComparer<Mark[]>
{
    public bool Equals(Mark[]? x, Mark[]? y) => x is not null && y is not null && Marks.Same(x, y);

    public int GetHashCode(Mark[] obj)
    {
        var hash = new HashCode();
        foreach (var mark in obj) hash.Add(mark);
        return hash.ToHashCode();
    }
}
