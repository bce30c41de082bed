using System.Runtime.Intrinsics;

namespace Coilwright.Core.Alignment;

/// <summary>The wire as stretches that are seen, each with a tag (a kind of bead, or a group), in order and not overlapping.</summary>
/// <remarks>All questions of lining up are sums over pairs of stretches of what the one, moved on by one turn, shares with the other. Two fingers
/// walk along the row, so a sum takes time in proportion to the stretches. Model: docs/theory/lining-up.md.</remarks>
internal sealed class VisibleRow(int capacity)
{
    // How many stretches are looked at in one go, and where those lie that make the last go full: further than any row reaches.
    private static readonly int AtOnce = Vector256<double>.Count;
    private const double NowhereMm = 1e100;

    public double[] From = new double[capacity];
    public double[] To = new double[capacity];
    public int[] Tag = new int[capacity];

    public int Count { get; private set; }

    public double HiddenMm { get; private set; }

    /// <summary>Lays stretches of the given lengths end to end, leaving out what is hidden.</summary>
    /// <param name="lengths">The lengths, mm.</param>
    /// <param name="tags">A tag for each; empty: its own number.</param>
    /// <param name="hidden">What is hidden, in order and not overlapping.</param>
    public void Lay(ReadOnlySpan<double> lengths, ReadOnlySpan<int> tags, List<(double From, double To)> hidden)
    {
        // Each stretch is cut at most once where something hidden starts and once where it ends.
        MakeRoom(lengths.Length + 2 * hidden.Count + AtOnce);
        Count = 0;
        HiddenMm = 0;
        double along = 0;
        for (int i = 0, next = 0; i < lengths.Length; i++)
        {
            var end = along + lengths[i];
            var tag = tags.IsEmpty ? i : tags[i];
            var from = along;
            while (next < hidden.Count && hidden[next].To <= from) next++;
            for (var h = next; h < hidden.Count && hidden[h].From < end; h++)
            {
                if (hidden[h].From > from) Add(from, hidden[h].From, tag);
                var to = Math.Min(end, hidden[h].To);
                HiddenMm += to - Math.Max(from, hidden[h].From);
                from = Math.Max(from, to);
            }
            if (from < end) Add(from, end, tag);
            along = end;
        }
        for (var k = Count; k < Count + AtOnce; k++) (From[k], To[k], Tag[k]) = (NowhereMm, NowhereMm, 0);
    }

    private void MakeRoom(int stretches)
    {
        if (stretches <= From.Length) return;
        (From, To, Tag) = (new double[stretches], new double[stretches], new int[stretches]);
    }

    private void Add(double from, double to, int tag)
    {
        From[Count] = from;
        To[Count] = to;
        Tag[Count++] = tag;
    }

    /// <summary>Sum of what pairs share times their weight, and of what they share, when the row is moved on by <paramref name="shift"/>.</summary>
    /// <param name="shift">Wire per turn, mm.</param>
    /// <param name="weights">Weight of tag over tag, row by row.</param>
    /// <param name="tags">How many tags there are.</param>
    public (double Weighted, double Over) OverAt(double shift, double[] weights, int tags)
    {
        double weighted = 0, over = 0;
        var from = From;
        var to = To;
        var tag = Tag;
        int i = 0, j = 0, n = Count;
        while (j < n && to[j] <= shift) j++;
        while (i < n && j < n)
        {
            var endI = to[i] + shift;
            var shared = Math.Min(endI, to[j]) - Math.Max(from[i] + shift, from[j]);
            if (shared > 0)
            {
                over += shared;
                weighted += shared * weights[tag[i] * tags + tag[j]];
            }
            if (endI < to[j]) i++; else j++;
        }
        return (weighted, over);
    }

    /// <summary>With names for tags and -1 for none: length of the named stretches, mm.</summary>
    public double NamedMm()
    {
        double named = 0;
        for (var i = 0; i < Count; i++)
            if (Tag[i] >= 0) named += To[i] - From[i];
        return named;
    }

    /// <summary>With names for tags and -1 for none: what named stretches share with anything, and with their own name, when the row is moved on.</summary>
    public (double Own, double Named) OwnAt(double shift)
    {
        double own = 0, named = 0;
        int i = 0, j = 0;
        while (i < Count && j < Count)
        {
            var endI = To[i] + shift;
            var shared = Math.Min(endI, To[j]) - Math.Max(From[i] + shift, From[j]);
            if (shared > 0 && Tag[i] >= 0)
            {
                named += shared;
                if (Tag[i] == Tag[j]) own += shared;
            }
            if (endI < To[j]) i++; else j++;
        }
        return (own, named);
    }

    /// <summary>Calls back for every pair that shares something when the row is moved on: earlier stretch, later stretch, what they share, mm.</summary>
    public void EachOverAt(double shift, Action<int, int, double> pair)
    {
        int i = 0, j = 0;
        while (i < Count && j < Count)
        {
            var endI = To[i] + shift;
            var shared = Math.Min(endI, To[j]) - Math.Max(From[i] + shift, From[j]);
            if (shared > 0) pair(i, j, shared);
            if (endI < To[j]) i++; else j++;
        }
    }

    /// <summary>What stretches share with anything, and with stretches of their own name, when the row is moved on, sorted into bins.</summary>
    /// <param name="shift">Wire per turn, mm.</param>
    /// <param name="names">The name each tag goes by, or -1 for none.</param>
    /// <param name="bins">The bin that each tag's sums go into, that of the earlier stretch.</param>
    /// <param name="own">Takes what is shared with the own name, mm; added to what is there.</param>
    /// <param name="over">Takes what is shared with anything, mm; likewise.</param>
    public void OverAtByBin(double shift, int[] names, int[] bins, double[] own, double[] over)
    {
        int i = 0, j = 0;
        while (i < Count && j < Count)
        {
            var endI = To[i] + shift;
            var shared = Math.Min(endI, To[j]) - Math.Max(From[i] + shift, From[j]);
            if (shared > 0)
            {
                over[bins[Tag[i]]] += shared;
                if (names[Tag[i]] >= 0 && names[Tag[i]] == names[Tag[j]]) own[bins[Tag[i]]] += shared;
            }
            if (endI < To[j]) i++; else j++;
        }
    }

    /// <summary>The sums of <see cref="OverAt"/> averaged over shifts spread evenly over shift plus or minus half, in closed form.</summary>
    public (double Weighted, double Over) OverAveraged(double shift, double half, double[] weights, int tags)
    {
        var (from, to, tag, n) = (From, To, Tag, Count);
        Vector256<double> weighted = default, over = default;
        for (int i = 0, first = 0; i < n; i++)
        {
            double length = to[i] - from[i], nearest = to[i] + shift - half, furthest = to[i] + shift + half;
            while (to[first] <= nearest - length) first++;
            var row = weights.AsSpan(tag[i] * tags, tags);
            // Several at once: what comes after the last one that is reached shares nothing.
            for (var j = first; from[j] < furthest; j += AtOnce)
            {
                var shared = Beyond(Vector256.LoadUnsafe(ref from[j]), nearest, furthest, length) - Beyond(Vector256.LoadUnsafe(ref to[j]), nearest, furthest, length);
                over += shared;
                weighted += shared * Vector256.Create(row[tag[j]], row[tag[j + 1]], row[tag[j + 2]], row[tag[j + 3]]);
            }
        }
        return (Vector256.Sum(weighted) / (2 * half), Vector256.Sum(over) / (2 * half));
    }

    /// <summary>The sums of <see cref="OverAtByBin"/> averaged over shifts spread evenly over shift plus or minus half, in closed form.</summary>
    public void OverAveragedByBin(double shift, double half, int[] names, int[] bins, double[] own, double[] over)
    {
        var (from, to, tag, n) = (From, To, Tag, Count);
        for (int i = 0, first = 0; i < n; i++)
        {
            double length = to[i] - from[i], nearest = to[i] + shift - half, furthest = to[i] + shift + half;
            while (to[first] <= nearest - length) first++;
            var name = names[tag[i]];
            Vector256<double> ownShared = default, allShared = default;
            for (var j = first; from[j] < furthest; j += AtOnce)
            {
                var shared = Beyond(Vector256.LoadUnsafe(ref from[j]), nearest, furthest, length) - Beyond(Vector256.LoadUnsafe(ref to[j]), nearest, furthest, length);
                allShared += shared;
                ownShared += shared * Vector256.Create(Is(j), Is(j + 1), Is(j + 2), Is(j + 3));
            }
            over[bins[tag[i]]] += Vector256.Sum(allShared) / (2 * half);
            own[bins[tag[i]]] += Vector256.Sum(ownShared) / (2 * half);

            double Is(int j) => name >= 0 && name == names[tag[j]] ? 1 : 0;
        }
    }

    // A stretch is moved on, so that its end goes from the nearest to the furthest: how much of it lies beyond a place, summed up over the way; mm2.
    private static Vector256<double> Beyond(Vector256<double> place, double nearest, double furthest, double length) =>
        Passed(Vector256.Create(furthest) - place, length) - Passed(Vector256.Create(nearest) - place, length);

    // When its end has passed the place by u, then 0, u or all of it lies beyond; this is the integral of that up to u.
    private static Vector256<double> Passed(Vector256<double> u, double length)
    {
        var beyond = Vector256.MinNative(Vector256.MaxNative(u, default), Vector256.Create(length));
        return beyond * (u - 0.5 * beyond);
    }
}
