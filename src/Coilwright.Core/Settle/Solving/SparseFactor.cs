using System.Runtime.Intrinsics;

namespace Coilwright.Core.Settle.Solving;

/// <summary>The factor <c>L D L'</c> of a symmetric sparse matrix: found once where its entries are, then filled as often as they change.</summary>
/// <remarks>
/// <para>Block by block up the tree of elimination: a block's columns and all that its children leave for them are added up in one full matrix, its columns eliminated, and the rest left for its parent (the
/// multifrontal method; I. S. Duff and J. K. Reid 1983, from memory). One thread and one order of summing with numbers by fours whatever the processor, so that the same matrix gives the same bits. No exchange of rows: right for
/// a matrix that rises in every direction, and for others as long as no pivot comes out near nought; such a pivot is replaced and counted.</para>
/// <para>By Sylvester's law as many pivots are negative as the matrix has directions in which it falls.</para>
/// </remarks>
public sealed class SparseFactor
{
    private readonly FactorBlocks _blocks;
    private readonly Front _front;
    private readonly int[] _panelStarts;
    private readonly double[] _factor, _diagonal, _ordered, _left;

    /// <summary>Finds where the factor has entries.</summary>
    /// <param name="columnStarts">Where each column of the upper half starts in <paramref name="rows"/>, and where the last one ends.</param>
    /// <param name="rows">The rows of its entries, each at most its column; the diagonal among them.</param>
    public SparseFactor(int[] columnStarts, int[] rows)
    {
        Size = columnStarts.Length - 1;
        _blocks = new FactorBlocks(columnStarts, rows);
        _panelStarts = new int[_blocks.Count + 1];
        var (mostRows, left, mostLeft) = (0, new Stack<int>(), 0);
        var leaves = 0;
        for (var b = 0; b < _blocks.Count; b++)
        {
            var (columns, below) = (_blocks.Columns(b), _blocks.Rows(b).Length);
            _panelStarts[b + 1] = checked(_panelStarts[b] + columns * (columns + below));
            mostRows = Math.Max(mostRows, columns + below);
            while (left.TryPeek(out var child) && _blocks.Parents[child] == b) leaves -= Packed(_blocks.Rows(left.Pop()).Length);
            if (_blocks.Parents[b] < 0) continue;
            left.Push(b);
            mostLeft = Math.Max(mostLeft, leaves = checked(leaves + Packed(below)));
        }
        _front = new Front(mostRows);
        (_factor, _diagonal, _ordered, _left) = (new double[_panelStarts[^1]], new double[Size], new double[Size], new double[mostLeft + Vector256<double>.Count]);
    }

    /// <summary>Rows.</summary>
    public int Size { get; }

    /// <summary>Entries of the factor, diagonal included.</summary>
    public long Entries => _blocks.Entries;

    /// <summary>Negative pivots: directions in which the matrix falls.</summary>
    public int Negative { get; private set; }

    /// <summary>Pivots too near nought to divide by, which were replaced.</summary>
    public int Replaced { get; private set; }

    /// <summary>Fills it.</summary>
    /// <param name="values">The entries, as the rows were given.</param>
    /// <param name="leastPivot">A pivot nearer to nought than this is replaced by it; 0 or more.</param>
    public void Fill(ReadOnlySpan<double> values, double leastPivot)
    {
        Negative = Replaced = 0;
        var (waiting, leaves) = (new Stack<int>(), 0);
        for (var b = 0; b < _blocks.Count; b++)
        {
            var (columns, below) = (_blocks.Columns(b), _blocks.Rows(b).Length);
            var rows = columns + below;
            _front.Clear(rows);
            var front = _front.Values;
            _blocks.Scatter(b, values, front);
            while (waiting.TryPeek(out var child) && _blocks.Parents[child] == b)
            {
                waiting.Pop();
                var targets = _blocks.Targets(child);
                leaves -= Packed(targets.Length);
                _front.Add(rows, _left.AsSpan(leaves), targets);
            }
            Replaced += _front.Eliminate(rows, columns, leastPivot, _diagonal.AsSpan(_blocks.Firsts[b]));
            var width = Front.Width(rows);
            for (var r = 0; r < rows; r++) front.AsSpan(r * width, columns).CopyTo(_factor.AsSpan(_panelStarts[b] + r * columns));
            if (_blocks.Parents[b] < 0) continue;
            waiting.Push(b);
            for (var r = 0; r < below; r++)
            {
                front.AsSpan((columns + r) * width + columns, r + 1).CopyTo(_left.AsSpan(leaves));
                leaves += r + 1;
            }
        }
        foreach (var pivot in _diagonal)
            if (pivot < 0) Negative++;
    }

    /// <summary>Solves in place.</summary>
    /// <param name="x">The right side; becomes the solution.</param>
    public void Solve(Span<double> x)
    {
        var (ordered, places) = (_ordered, _blocks.Places);
        for (var k = 0; k < Size; k++) ordered[places[k]] = x[k];
        for (var b = 0; b < _blocks.Count; b++)
        {
            var (first, columns) = (_blocks.Firsts[b], _blocks.Columns(b));
            var below = _blocks.Rows(b);
            var panel = _factor.AsSpan(_panelStarts[b]);
            var own = ordered.AsSpan(first, columns);
            for (var r = 1; r < columns; r++) own[r] -= Product(panel.Slice(r * columns, r), own);
            for (var r = 0; r < below.Length; r++) ordered[below[r]] -= Product(panel.Slice((columns + r) * columns, columns), own);
        }
        for (var k = 0; k < Size; k++) ordered[k] /= _diagonal[k];
        for (var b = _blocks.Count - 1; b >= 0; b--)
        {
            var (first, columns) = (_blocks.Firsts[b], _blocks.Columns(b));
            var below = _blocks.Rows(b);
            var panel = _factor.AsSpan(_panelStarts[b]);
            var own = ordered.AsSpan(first, columns);
            for (var r = 0; r < below.Length; r++) Lose(own, panel.Slice((columns + r) * columns, columns), ordered[below[r]]);
            for (var r = columns - 1; r > 0; r--) Lose(own, panel.Slice(r * columns, r), own[r]);
        }
        for (var k = 0; k < Size; k++) x[k] = ordered[places[k]];
    }

    private static int Packed(int rows) => rows * (rows + 1) / 2;

    // The sum of entries times numbers, by fours and then the rest.
    private static double Product(ReadOnlySpan<double> entries, ReadOnlySpan<double> numbers)
    {
        var sums = Vector256<double>.Zero;
        var k = 0;
        for (; k + Vector256<double>.Count <= entries.Length; k += Vector256<double>.Count)
            sums = Vector256.FusedMultiplyAdd(Vector256.Create(entries[k..]), Vector256.Create(numbers[k..]), sums);
        var sum = sums[0] + sums[1] + (sums[2] + sums[3]);
        for (; k < entries.Length; k++) sum += entries[k] * numbers[k];
        return sum;
    }

    private static void Lose(Span<double> numbers, ReadOnlySpan<double> entries, double factor)
    {
        var by = Vector256.Create(-factor);
        var k = 0;
        for (; k + Vector256<double>.Count <= entries.Length; k += Vector256<double>.Count)
            Vector256.FusedMultiplyAdd(by, Vector256.Create(entries[k..]), Vector256.Create<double>(numbers[k..])).CopyTo(numbers[k..]);
        for (; k < entries.Length; k++) numbers[k] -= factor * entries[k];
    }
}
