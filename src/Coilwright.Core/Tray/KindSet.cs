using System.Collections.Immutable;
using System.Numerics;

namespace Coilwright.Core.Tray;

/// <summary>Some of the kinds of a tray, by their places in it: a bit for each, so that two sets meet in a few steps however many are in them.</summary>
internal sealed class KindSet
{
    private readonly ulong[] _bits;

    /// <summary>An empty set of a tray of so many kinds.</summary>
    public KindSet(int kinds) => _bits = new ulong[(kinds + 63) / 64];

    private KindSet(ulong[] bits) => _bits = bits;

    /// <summary>How many are in it.</summary>
    public int Count
    {
        get
        {
            var count = 0;
            foreach (var bits in _bits) count += BitOperations.PopCount(bits);
            return count;
        }
    }

    /// <summary>Puts one in.</summary>
    public void Add(int place) => _bits[place >> 6] |= 1UL << (place & 63);

    /// <summary>Puts several in.</summary>
    public void Add(ReadOnlySpan<int> places)
    {
        foreach (var place in places) Add(place);
    }

    /// <summary>Takes one out.</summary>
    public void Remove(int place) => _bits[place >> 6] &= ~(1UL << (place & 63));

    /// <summary>Another set of the same.</summary>
    public KindSet Copy() => new([.. _bits]);

    /// <summary>Leaves what is in the other too.</summary>
    public void And(KindSet other) => Meet(other, without: false);

    /// <summary>Leaves what is not in the other.</summary>
    public void Without(KindSet other) => Meet(other, without: true);

    /// <summary>The first of them in the order of their places.</summary>
    /// <param name="most">How many at most.</param>
    /// <param name="from">How many to leave out before them.</param>
    public ImmutableArray<int> First(int most, int from = 0)
    {
        var places = ImmutableArray.CreateBuilder<int>(Math.Min(most, 64));
        for (var word = 0; word < _bits.Length && places.Count < most; word++)
        {
            var bits = _bits[word];
            if (from > 0 && BitOperations.PopCount(bits) is var here && here <= from)
            {
                from -= here;
                continue;
            }
            for (; bits != 0 && places.Count < most; bits &= bits - 1)
                if (from > 0) from--;
                else places.Add(word * 64 + BitOperations.TrailingZeroCount(bits));
        }
        return places.ToImmutable();
    }

    private void Meet(KindSet other, bool without)
    {
        var (mine, theirs) = (_bits, other._bits);
        var at = 0;
        for (; at <= mine.Length - Vector<ulong>.Count; at += Vector<ulong>.Count)
        {
            var (a, b) = (new Vector<ulong>(mine, at), new Vector<ulong>(theirs, at));
            (without ? Vector.AndNot(a, b) : a & b).CopyTo(mine, at);
        }
        for (; at < mine.Length; at++) mine[at] &= without ? ~theirs[at] : theirs[at];
    }
}
