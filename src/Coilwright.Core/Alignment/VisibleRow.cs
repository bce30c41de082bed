namespace Coilwright.Core.Alignment;

/// <summary>The wire as stretches that are seen, each with a tag (a kind of bead, or a group), in order and not overlapping.</summary>
/// <remarks>All questions of lining up are sums over pairs of stretches of what the one, moved on by one turn, shares with the other. Two fingers
/// walk along the row, so a sum takes time in proportion to the stretches. Model: docs/theory/lining-up.md.</remarks>
internal sealed class VisibleRow(int capacity)
{
    public double[] From = new double[capacity];
    public double[] To = new double[capacity];
    public int[] Tag = new int[capacity];

    public int Count { get; private set; }

    public double HiddenMm { get; private set; }

    /// <summary>Lays stretches of the given lengths end to end, leaving out what is hidden.</summary>
    public void Lay(ReadOnlySpan<double> lengths, ReadOnlySpan<int> tags, List<(double From, double To)> hidden)
    {
        Count = 0;
        HiddenMm = 0;
        double along = 0;
        var next = 0;
        for (var i = 0; i < lengths.Length; i++)
        {
            var end = along + lengths[i];
            var from = along;
            while (next < hidden.Count && hidden[next].To <= from) next++;
            for (var h = next; h < hidden.Count && hidden[h].From < end; h++)
            {
                if (hidden[h].From > from) Add(from, hidden[h].From, tags[i]);
                var to = Math.Min(end, hidden[h].To);
                HiddenMm += to - Math.Max(from, hidden[h].From);
                from = Math.Max(from, to);
            }
            if (from < end) Add(from, end, tags[i]);
            along = end;
        }
    }

    private void Add(double from, double to, int tag)
    {
        if (Count == From.Length)
        {
            Array.Resize(ref From, 2 * Count);
            Array.Resize(ref To, 2 * Count);
            Array.Resize(ref Tag, 2 * Count);
        }
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

    /// <summary>The sums of <see cref="OverAt"/> averaged over shifts spread evenly over shift plus or minus half, in closed form.</summary>
    public (double Weighted, double Over) OverAveraged(double shift, double half, double[] weights, int tags)
    {
        double weighted = 0, over = 0;
        double low = shift - half, high = shift + half;
        var first = 0;
        for (var i = 0; i < Count; i++)
        {
            while (first < Count && To[first] <= From[i] + low) first++;
            for (var j = first; j < Count && From[j] < To[i] + high; j++)
            {
                var shared = SharedBetween(i, j, low, high);
                over += shared;
                weighted += shared * weights[Tag[i] * tags + Tag[j]];
            }
        }
        return (weighted / (2 * half), over / (2 * half));
    }

    /// <summary>The same by tag of the earlier stretch: what tag k shares with anything, and its weighted part.</summary>
    public void OverAveragedByTag(double shift, double half, Func<int, int, bool> counts, double[] ownByTag, double[] overByTag)
    {
        double low = shift - half, high = shift + half;
        var first = 0;
        for (var i = 0; i < Count; i++)
        {
            while (first < Count && To[first] <= From[i] + low) first++;
            for (var j = first; j < Count && From[j] < To[i] + high; j++)
            {
                var shared = SharedBetween(i, j, low, high) / (2 * half);
                overByTag[Tag[i]] += shared;
                if (counts(Tag[i], Tag[j])) ownByTag[Tag[i]] += shared;
            }
        }
    }

    // What i moved on by t shares with j is a trapezoid in t; this is its integral from low to high, a sum of four half parabolas.
    private double SharedBetween(int i, int j, double low, double high)
    {
        double rise = From[j] - To[i], top = From[j] - From[i], fall = To[j] - To[i], end = To[j] - From[i];
        return Ramp(high - rise) - Ramp(low - rise) - Ramp(high - top) + Ramp(low - top)
            - Ramp(high - fall) + Ramp(low - fall) + Ramp(high - end) - Ramp(low - end);
    }

    private static double Ramp(double x) => x > 0 ? 0.5 * x * x : 0;
}
