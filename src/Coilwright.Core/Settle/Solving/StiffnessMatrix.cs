namespace Coilwright.Core.Settle.Solving;

/// <summary>The second slopes of a sum of energy terms as one sparse matrix over the unknowns that are free, in the best order of elimination.</summary>
public sealed class StiffnessMatrix
{
    // How much larger than when it was chosen the factor may become before another order is looked for, which costs as much as several factors. Our choice.
    private const double MostGrowth = 1.3;

    private readonly int[] _place;
    private readonly int[][] _slots;
    private readonly int[] _columnStarts, _rows, _diagonal;
    private readonly double[] _values, _ordered;

    /// <summary>Finds where its entries are.</summary>
    /// <param name="terms">For each term the unknowns that its elements tie together.</param>
    /// <param name="isFixed">For each unknown whether it is held.</param>
    /// <param name="groupOf">For each unknown the group that it is eliminated with.</param>
    /// <param name="angles">Where each group stands round the arm, radians; null when there is no arm.</param>
    /// <param name="order">The order; null: the one with the smallest factor.</param>
    /// <param name="before">What was chosen for much the same ties; taken again unless the factor has grown by too much since. Null: chosen anew.</param>
    public StiffnessMatrix(IReadOnlyList<IReadOnlyList<int[]>> terms, bool[] isFixed, int[] groupOf, double[]? angles, EliminationOrder? order = null, Elimination? before = null)
    {
        var groups = groupOf.Length == 0 ? 0 : groupOf.Max() + 1;
        var members = new List<int>[groups];
        for (var g = 0; g < groups; g++) members[g] = [];
        for (var u = 0; u < groupOf.Length; u++)
            if (!isFixed[u]) members[groupOf[u]].Add(u);
        var neighbours = Neighbours(terms, isFixed, groupOf, groups);
        int[] sizes = [.. members.Select(m => m.Count)];
        if (before is not null && Eliminations.Again(before, neighbours, sizes) is var again && again.Entries <= MostGrowth * before.Entries) (Elimination, Chosen) = (again, before);
        else Chosen = Elimination = order is { } asked ? Eliminations.Of(asked, neighbours, sizes, angles) : Eliminations.Best(neighbours, sizes, angles);

        _place = new int[groupOf.Length];
        Array.Fill(_place, -1);
        var free = 0;
        foreach (var g in Elimination.Sequence)
            foreach (var u in members[g]) _place[u] = free++;
        Size = free;
        (_slots, _columnStarts, _rows) = Slots(terms, free);
        _diagonal = new int[free];
        for (var c = 0; c < free; c++)
            for (var p = _columnStarts[c]; p < _columnStarts[c + 1]; p++)
                if (_rows[p] == c) _diagonal[c] = p;
        _values = new double[_rows.Length];
        _ordered = new double[free];
        Factor = new SparseFactor(_columnStarts, _rows);
    }

    /// <summary>The order of elimination.</summary>
    public Elimination Elimination { get; }

    /// <summary>The order as it was chosen: for these ties or for some before.</summary>
    public Elimination Chosen { get; }

    /// <summary>Unknowns that are free.</summary>
    public int Size { get; }

    /// <summary>Its factor.</summary>
    public SparseFactor Factor { get; }

    /// <summary>Empties it.</summary>
    public void Clear() => Array.Clear(_values);

    /// <summary>Where one term's second slopes go.</summary>
    public IHessianSink SinkOf(int term, IReadOnlyList<int[]> elements) => new Sink(this, term, elements);

    /// <summary>Adds to every entry of the diagonal.</summary>
    public void AddToDiagonal(double value)
    {
        foreach (var p in _diagonal) _values[p] += value;
    }

    /// <summary>Mean size of its diagonal: what a pivot is small against.</summary>
    public double MeanDiagonal()
    {
        double sum = 0;
        foreach (var p in _diagonal) sum += Math.Abs(_values[p]);
        return Size == 0 ? 0 : sum / Size;
    }

    /// <summary>Factors it.</summary>
    public void Fill(double leastPivot) => Factor.Fill(_values, leastPivot);

    /// <summary>Solves for all unknowns; those held come out as 0.</summary>
    /// <param name="right">The right side, over all unknowns.</param>
    /// <param name="solution">The solution, over all unknowns.</param>
    public void Solve(ReadOnlySpan<double> right, Span<double> solution)
    {
        for (var u = 0; u < _place.Length; u++)
            if (_place[u] >= 0) _ordered[_place[u]] = right[u];
        Factor.Solve(_ordered);
        for (var u = 0; u < _place.Length; u++) solution[u] = _place[u] >= 0 ? _ordered[_place[u]] : 0;
    }

    /// <summary>The matrix times a vector over all unknowns; those held count as 0.</summary>
    public void Times(ReadOnlySpan<double> vector, Span<double> product)
    {
        var (x, y) = (new double[Size], new double[Size]);
        for (var u = 0; u < _place.Length; u++)
            if (_place[u] >= 0) x[_place[u]] = vector[u];
        for (var c = 0; c < Size; c++)
            for (var p = _columnStarts[c]; p < _columnStarts[c + 1]; p++)
            {
                y[_rows[p]] += _values[p] * x[c];
                if (_rows[p] != c) y[c] += _values[p] * x[_rows[p]];
            }
        for (var u = 0; u < _place.Length; u++) product[u] = _place[u] >= 0 ? y[_place[u]] : 0;
    }

    private static int[][] Neighbours(IReadOnlyList<IReadOnlyList<int[]>> terms, bool[] isFixed, int[] groupOf, int groups)
    {
        var ties = new List<int>[groups];
        for (var g = 0; g < groups; g++) ties[g] = [];
        var near = new List<int>();
        foreach (var elements in terms)
            foreach (var element in elements)
            {
                near.Clear();
                foreach (var u in element)
                    if (!isFixed[u] && !near.Contains(groupOf[u])) near.Add(groupOf[u]);
                foreach (var a in near)
                    foreach (var b in near)
                        if (a != b) ties[a].Add(b);
            }
        return Array.ConvertAll(ties, list => list.Distinct().Order().ToArray());
    }

    private (int[][] Slots, int[] ColumnStarts, int[] Rows) Slots(IReadOnlyList<IReadOnlyList<int[]>> terms, int free)
    {
        // Column by column: first how many each may have at most, then each row once.
        var most = new int[free + 1];
        for (var c = 0; c < free; c++) most[c + 1] = 1;
        void ForEach(Action<int, int> take)
        {
            foreach (var elements in terms)
                foreach (var element in elements)
                    for (var a = 0; a < element.Length; a++)
                        for (var b = a; b < element.Length; b++)
                        {
                            int pa = _place[element[a]], pb = _place[element[b]];
                            if (pa < 0 || pb < 0) take(-1, -1);
                            else take(Math.Min(pa, pb), Math.Max(pa, pb));
                        }
        }
        var pairs = 0;
        ForEach((_, c) =>
        {
            pairs++;
            if (c >= 0) most[c + 1]++;
        });
        for (var c = 0; c < free; c++) most[c + 1] += most[c];
        var rows = new int[most[free]];
        var slotOf = new int[pairs];
        var filled = new int[free];
        Array.Copy(most, filled, free);
        for (var c = 0; c < free; c++) rows[filled[c]++] = c;
        var at = 0;
        ForEach((r, c) =>
        {
            if (c < 0)
            {
                slotOf[at++] = -1;
                return;
            }
            var slot = -1;
            for (var p = most[c]; p < filled[c]; p++)
                if (rows[p] == r)
                {
                    slot = p;
                    break;
                }
            if (slot < 0)
            {
                slot = filled[c]++;
                rows[slot] = r;
            }
            slotOf[at++] = slot;
        });
        // Close the gaps.
        var starts = new int[free + 1];
        for (var c = 0; c < free; c++) starts[c + 1] = starts[c] + filled[c] - most[c];
        var closed = new int[starts[free]];
        var moved = new int[rows.Length];
        for (var c = 0; c < free; c++)
            for (var p = most[c]; p < filled[c]; p++)
            {
                moved[p] = starts[c] + p - most[c];
                closed[moved[p]] = rows[p];
            }
        for (var i = 0; i < slotOf.Length; i++)
            if (slotOf[i] >= 0) slotOf[i] = moved[slotOf[i]];

        var slots = new int[terms.Count][];
        at = 0;
        for (var t = 0; t < terms.Count; t++)
        {
            var count = terms[t].Sum(e => e.Length * (e.Length + 1) / 2);
            slots[t] = slotOf[at..(at + count)];
            at += count;
        }
        return (slots, starts, closed);
    }

    private sealed class Sink : IHessianSink
    {
        private readonly double[] _values;
        private readonly int[] _slots, _starts, _sizes;

        public Sink(StiffnessMatrix matrix, int term, IReadOnlyList<int[]> elements)
        {
            (_values, _slots) = (matrix._values, matrix._slots[term]);
            _sizes = [.. elements.Select(e => e.Length)];
            _starts = new int[elements.Count + 1];
            for (var e = 0; e < elements.Count; e++) _starts[e + 1] = _starts[e] + _sizes[e] * (_sizes[e] + 1) / 2;
        }

        public void Add(int element, ReadOnlySpan<double> matrix)
        {
            var size = _sizes[element];
            var at = _starts[element];
            for (var a = 0; a < size; a++)
                for (var b = a; b < size; b++)
                {
                    var slot = _slots[at++];
                    if (slot >= 0) _values[slot] += matrix[a * size + b];
                }
        }
    }
}
