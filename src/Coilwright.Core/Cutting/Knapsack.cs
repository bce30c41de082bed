namespace Coilwright.Core.Cutting;

/// <summary>The most valuable filling of a bar, for every length of bar at once, in whole numbers, so exactly.</summary>
/// <remarks>Dynamic programme over lengths; an item that may be taken n times is split into 1, 2, 4 ... and the rest (both from memory, textbook).</remarks>
internal sealed class Knapsack
{
    private readonly List<(int Item, int Times)> _chunks = [];
    private long[] _best = [];
    private bool[] _taken = [];
    private int _width;

    /// <summary>Fills the tables for bars up to a length.</summary>
    /// <param name="lengths">Length of each item, 1 or more.</param>
    /// <param name="values">Value of each, 0 or more; one of 0 is never taken.</param>
    /// <param name="most">How often each may be taken.</param>
    /// <param name="longest">The longest bar.</param>
    public void Fill(ReadOnlySpan<int> lengths, ReadOnlySpan<long> values, ReadOnlySpan<int> most, int longest)
    {
        _width = longest + 1;
        _chunks.Clear();
        for (var i = 0; i < lengths.Length; i++)
        {
            if (values[i] <= 0 || lengths[i] > longest) continue;
            var left = Math.Min(most[i], longest / lengths[i]);
            for (var times = 1; left > 0; times *= 2)
            {
                _chunks.Add((i, Math.Min(times, left)));
                left -= times;
            }
        }
        if (_best.Length < _width) _best = new long[_width];
        Array.Clear(_best, 0, _width);
        if (_taken.Length < (long)_width * _chunks.Count) _taken = new bool[_width * _chunks.Count];
        for (var n = 0; n < _chunks.Count; n++)
        {
            var (item, times) = _chunks[n];
            var (length, value) = (lengths[item] * times, values[item] * times);
            var taken = _taken.AsSpan(n * _width, _width);
            taken.Clear();
            var best = _best.AsSpan(0, _width);
            for (var at = longest; at >= length; at--)
            {
                if (best[at - length] + value is var with && with > best[at])
                {
                    best[at] = with;
                    taken[at] = true;
                }
            }
        }
        _lengths = lengths.ToArray();
    }

    private int[] _lengths = [];

    /// <summary>The most that a bar of a length can hold.</summary>
    public long ValueAt(int length) => _best[length];

    /// <summary>How often each item is taken for that.</summary>
    public int[] CountsAt(int length)
    {
        var counts = new int[_lengths.Length];
        for (var n = _chunks.Count - 1; n >= 0; n--)
        {
            if (!_taken[n * _width + length]) continue;
            var (item, times) = _chunks[n];
            counts[item] += times;
            length -= _lengths[item] * times;
        }
        return counts;
    }
}
