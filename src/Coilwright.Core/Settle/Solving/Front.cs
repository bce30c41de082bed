using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Coilwright.Core.Settle.Solving;

/// <summary>A block's columns with all rows that they reach, as one full matrix: where a block is eliminated.</summary>
/// <remarks>The lower half, row by row; what stands above the diagonal means nothing. Numbers go through in fours, added up in one fixed order with a fused multiply and add, which rounds alike on every
/// processor.</remarks>
internal sealed class Front
{
    // Columns that are eliminated at a time: their part of four rows stays in the nearest memory. Our choice.
    private const int Most = 32;
    // A front so small is eliminated by fewer at a time: what is done number by number grows with their cube. Our choice.
    private const int SmallRows = 64, Few = 8;
    private const int Lanes = 4, TileRows = 4, TileColumns = 8;

    private readonly double[] _values, _strip, _above;
    private readonly double[] _pivots = new double[Most], _shares = new double[Most];

    /// <summary>Makes room for fronts of up to so many rows.</summary>
    public Front(int mostRows)
    {
        _values = new double[(mostRows + TileRows) * Width(mostRows)];
        _strip = new double[(mostRows + TileColumns + TileRows) * Most];
        _above = new double[Most * Most];
    }

    /// <summary>How far apart two rows of a front with so many rows stand: tiles may reach over its end.</summary>
    public static int Width(int rows) => (rows + 2 * (TileColumns - 1)) & -TileColumns;

    /// <summary>Its numbers: a row after <see cref="Width"/>.</summary>
    public double[] Values => _values;

    /// <summary>Empties it.</summary>
    public void Clear(int rows)
    {
        var width = Width(rows);
        // Rows are gone through by four: the last four to their end.
        for (var r = 0; r < ((rows + TileRows - 1) & -TileRows); r++) _values.AsSpan(r * width, Math.Min(r + 1, rows)).Clear();
    }

    /// <summary>Adds the rows that an eliminated block leaves.</summary>
    /// <param name="rows">Rows of this front.</param>
    /// <param name="update">The lower half of as many rows and columns as there are targets, packed.</param>
    /// <param name="targets">Where each of them stands here, ascending.</param>
    public void Add(int rows, ReadOnlySpan<double> update, ReadOnlySpan<int> targets)
    {
        var width = Width(rows);
        var at = 0;
        for (var r = 0; r < targets.Length; r++)
        {
            var row = _values.AsSpan(targets[r] * width, width);
            for (var c = 0; c <= r;)
            {
                var target = targets[c];
                // Nodes have four unknowns, so most stand four by four.
                if (c + Lanes <= r + 1 && targets[c + Lanes - 1] == target + Lanes - 1)
                {
                    ref var to = ref row[target];
                    (Vector256.LoadUnsafe(ref to) + Vector256.LoadUnsafe(ref MemoryMarshal.GetReference(update), (nuint)(at + c))).StoreUnsafe(ref to);
                    c += Lanes;
                }
                else
                {
                    row[target] += update[at + c];
                    c++;
                }
            }
            at += r + 1;
        }
    }

    /// <summary>Eliminates the first columns: they become the factor's, and the rest what they leave.</summary>
    /// <param name="rows">Rows.</param>
    /// <param name="columns">Columns to eliminate.</param>
    /// <param name="leastPivot">A pivot nearer to nought than this is replaced by it.</param>
    /// <param name="diagonal">Where the pivots go.</param>
    /// <returns>How many pivots were replaced.</returns>
    public int Eliminate(int rows, int columns, double leastPivot, Span<double> diagonal)
    {
        var replaced = 0;
        var most = rows <= SmallRows ? Few : Most;
        for (var from = 0; from < columns; from += most)
        {
            var count = Math.Min(most, columns - from);
            replaced += EliminateBlock(rows, from, count, leastPivot);
            _pivots.AsSpan(0, count).CopyTo(diagonal[from..]);
        }
        return replaced;
    }

    private int EliminateBlock(int rows, int from, int count, double leastPivot)
    {
        var (width, replaced) = (Width(rows), 0);
        // What stands above the block's diagonal is read by fours: noughts where there is nothing.
        var whole = (count + Lanes - 1) & -Lanes;
        for (var k = 0; k < count; k++) _above.AsSpan(k * Most, whole).Clear();
        // The block's own rows, each from those above it.
        for (var i = 0; i < count; i++)
        {
            var row = _values.AsSpan((from + i) * width + from, count);
            for (var k = 0; k < i; k++)
            {
                var value = row[k];
                var entry = value * _shares[k];
                _above[k * Most + i] = entry;
                for (var j = k + 1; j <= i; j++) row[j] -= value * _above[k * Most + j];
                row[k] = entry;
            }
            if (!(Math.Abs(row[i]) > leastPivot))
            {
                row[i] = leastPivot > 0 ? leastPivot : double.Epsilon;
                replaced++;
            }
            (_pivots[i], _shares[i]) = (row[i], 1 / row[i]);
        }
        var end = from + count;
        if (end == rows) return replaced;
        // The rows below it, four at a time, so that none waits for another.
        for (var i = end; i < rows; i += TileRows) Below(ref _values[i * width + from], width, count, i - end);
        // What the rest loses: tiles of four rows and eight columns.
        var strips = (rows - end + TileColumns - 1) / TileColumns;
        for (var i = end; i < rows; i += TileRows)
        {
            var tiles = Math.Min(strips, (i - end + TileRows - 1) / TileColumns + 1);
            for (var tile = 0; tile < tiles; tile++)
                Take(ref _values[i * width + from], ref _strip[tile * TileColumns * Most], ref _values[i * width + end + tile * TileColumns], width, count);
        }
        return replaced;
    }

    // Solves four rows against the block above them. What they were goes into the strips, what they become stays.
    private void Below(ref double first, int width, int count, int below)
    {
        ref var above = ref MemoryMarshal.GetArrayDataReference(_above);
        ref var strip = ref _strip[below / TileColumns * TileColumns * Most + below % TileColumns];
        ref var second = ref Unsafe.Add(ref first, width);
        ref var third = ref Unsafe.Add(ref second, width);
        ref var fourth = ref Unsafe.Add(ref third, width);
        for (var k = 0; k < count; k++)
        {
            var (a, b, c, d) = (Unsafe.Add(ref first, k), Unsafe.Add(ref second, k), Unsafe.Add(ref third, k), Unsafe.Add(ref fourth, k));
            Vector256.Create(a, b, c, d).StoreUnsafe(ref strip, (nuint)(k * TileColumns));
            var (va, vb, vc, vd) = (Vector256.Create(-a), Vector256.Create(-b), Vector256.Create(-c), Vector256.Create(-d));
            // Up to the column itself nothing stands above it.
            for (var j = (nuint)(k + 1) & ~(nuint)(Lanes - 1); j < (nuint)count; j += Lanes)
            {
                var entries = Vector256.LoadUnsafe(ref above, (nuint)(k * Most) + j);
                Vector256.FusedMultiplyAdd(va, entries, Vector256.LoadUnsafe(ref first, j)).StoreUnsafe(ref first, j);
                Vector256.FusedMultiplyAdd(vb, entries, Vector256.LoadUnsafe(ref second, j)).StoreUnsafe(ref second, j);
                Vector256.FusedMultiplyAdd(vc, entries, Vector256.LoadUnsafe(ref third, j)).StoreUnsafe(ref third, j);
                Vector256.FusedMultiplyAdd(vd, entries, Vector256.LoadUnsafe(ref fourth, j)).StoreUnsafe(ref fourth, j);
            }
        }
        for (var k = 0; k < count; k++)
        {
            var share = _shares[k];
            Unsafe.Add(ref first, k) *= share;
            Unsafe.Add(ref second, k) *= share;
            Unsafe.Add(ref third, k) *= share;
            Unsafe.Add(ref fourth, k) *= share;
        }
    }

    private static void Take(ref double left, ref double strip, ref double to, int width, int count)
    {
        ref var second = ref Unsafe.Add(ref left, width);
        ref var third = ref Unsafe.Add(ref second, width);
        ref var fourth = ref Unsafe.Add(ref third, width);
        Vector256<double> a0 = default, a1 = default, b0 = default, b1 = default, c0 = default, c1 = default, d0 = default, d1 = default;
        for (var k = 0; k < count; k++)
        {
            var (s0, s1) = (Vector256.LoadUnsafe(ref strip, (nuint)(k * TileColumns)), Vector256.LoadUnsafe(ref strip, (nuint)(k * TileColumns + Lanes)));
            var value = Vector256.Create(Unsafe.Add(ref left, k));
            a0 = Vector256.FusedMultiplyAdd(value, s0, a0);
            a1 = Vector256.FusedMultiplyAdd(value, s1, a1);
            value = Vector256.Create(Unsafe.Add(ref second, k));
            b0 = Vector256.FusedMultiplyAdd(value, s0, b0);
            b1 = Vector256.FusedMultiplyAdd(value, s1, b1);
            value = Vector256.Create(Unsafe.Add(ref third, k));
            c0 = Vector256.FusedMultiplyAdd(value, s0, c0);
            c1 = Vector256.FusedMultiplyAdd(value, s1, c1);
            value = Vector256.Create(Unsafe.Add(ref fourth, k));
            d0 = Vector256.FusedMultiplyAdd(value, s0, d0);
            d1 = Vector256.FusedMultiplyAdd(value, s1, d1);
        }
        Lose(ref to, a0, a1);
        to = ref Unsafe.Add(ref to, width);
        Lose(ref to, b0, b1);
        to = ref Unsafe.Add(ref to, width);
        Lose(ref to, c0, c1);
        to = ref Unsafe.Add(ref to, width);
        Lose(ref to, d0, d1);
    }

    private static void Lose(ref double to, Vector256<double> low, Vector256<double> high)
    {
        (Vector256.LoadUnsafe(ref to) - low).StoreUnsafe(ref to);
        (Vector256.LoadUnsafe(ref to, Lanes) - high).StoreUnsafe(ref to, Lanes);
    }
}
