namespace Coilwright.Core.Settle.Solving;

/// <summary>The factor <c>L D L'</c> of a symmetric sparse matrix: found once where its entries are, then filled as often as they change.</summary>
/// <remarks>
/// <para>Row by row from above, each row from those that it reaches in the tree of elimination (the up-looking method; J. W. H. Liu 1986, T. A. Davis 2005,
/// from memory). One thread and one order of summing, so that the same matrix gives the same bits. No exchange of rows: right for a matrix that rises in every
/// direction, and for others as long as no pivot comes out near nought; such a pivot is replaced and counted.</para>
/// <para>By Sylvester's law as many pivots are negative as the matrix has directions in which it falls.</para>
/// </remarks>
public sealed class SparseFactor
{
    private readonly int[] _columnStarts, _rows, _parents, _starts, _factorRows, _filled, _seen, _path;
    private readonly double[] _factor, _diagonal, _work;

    /// <summary>Finds where the factor has entries.</summary>
    /// <param name="columnStarts">Where each column of the upper half starts in <paramref name="rows"/>, and where the last one ends.</param>
    /// <param name="rows">The rows of its entries, each at most its column; the diagonal among them.</param>
    public SparseFactor(int[] columnStarts, int[] rows)
    {
        var n = columnStarts.Length - 1;
        (_columnStarts, _rows, Size) = (columnStarts, rows, n);
        (_parents, _seen, _path, _filled) = (new int[n], new int[n], new int[n], new int[n]);
        for (var k = 0; k < n; k++)
        {
            (_parents[k], _seen[k]) = (-1, k);
            for (var p = columnStarts[k]; p < columnStarts[k + 1]; p++)
                for (var i = rows[p]; _seen[i] != k; i = _parents[i])
                {
                    if (_parents[i] == -1) _parents[i] = k;
                    _filled[i]++;
                    _seen[i] = k;
                }
        }
        _starts = new int[n + 1];
        for (var k = 0; k < n; k++) _starts[k + 1] = _starts[k] + _filled[k];
        (_factorRows, _factor) = (new int[_starts[n]], new double[_starts[n]]);
        (_diagonal, _work) = (new double[n], new double[n]);
    }

    /// <summary>Rows.</summary>
    public int Size { get; }

    /// <summary>Entries of the factor, diagonal included.</summary>
    public long Entries => (long)_starts[Size] + Size;

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
        int[] starts = _starts, factorRows = _factorRows;
        double[] factor = _factor, work = _work;
        Array.Clear(_filled);
        Array.Clear(work);
        Array.Fill(_seen, -1);
        var n = Size;
        for (var k = 0; k < n; k++)
        {
            var top = n;
            _seen[k] = k;
            for (var p = _columnStarts[k]; p < _columnStarts[k + 1]; p++)
            {
                var i = _rows[p];
                work[i] += values[p];
                var length = 0;
                for (; _seen[i] != k; i = _parents[i])
                {
                    _path[length++] = i;
                    _seen[i] = k;
                }
                while (length > 0) _path[--top] = _path[--length];
            }
            var pivot = work[k];
            work[k] = 0;
            for (; top < n; top++)
            {
                var i = _path[top];
                var value = work[i];
                work[i] = 0;
                int from = starts[i], to = from + _filled[i];
                var rowsOfColumn = factorRows.AsSpan(from, to - from);
                var column = factor.AsSpan(from, to - from);
                for (var p = 0; p < rowsOfColumn.Length; p++) work[rowsOfColumn[p]] -= column[p] * value;
                var entry = value / _diagonal[i];
                pivot -= entry * value;
                factorRows[to] = k;
                factor[to] = entry;
                _filled[i]++;
            }
            if (!(Math.Abs(pivot) > leastPivot))
            {
                pivot = leastPivot > 0 ? leastPivot : double.Epsilon;
                Replaced++;
            }
            if (pivot < 0) Negative++;
            _diagonal[k] = pivot;
        }
    }

    /// <summary>Solves in place.</summary>
    /// <param name="x">The right side; becomes the solution.</param>
    public void Solve(Span<double> x)
    {
        for (var k = 0; k < Size; k++)
        {
            var xk = x[k];
            for (var p = _starts[k]; p < _starts[k + 1]; p++) x[_factorRows[p]] -= _factor[p] * xk;
        }
        for (var k = 0; k < Size; k++) x[k] /= _diagonal[k];
        for (var k = Size - 1; k >= 0; k--)
        {
            var xk = x[k];
            for (var p = _starts[k]; p < _starts[k + 1]; p++) xk -= _factor[p] * x[_factorRows[p]];
            x[k] = xk;
        }
    }
}
