namespace Coilwright.Core.Settle.Solving;

/// <summary>How the columns of a factor are gathered into blocks, each with one list of rows below it.</summary>
/// <remarks>
/// <para>The columns are first put in an order in which each stands right before the next that it reaches where it can (a postorder of the tree of elimination): that changes no entry. Columns that reach the
/// same rows are one block. Blocks that reach all but the same rows become one too, since a few noughts cost less than being apart (supernodes with relaxed amalgamation; C. Ashcraft and
/// R. Grimes 1989, from memory).</para>
/// </remarks>
internal sealed class FactorBlocks
{
    // How large a share of a block may be noughts, by how many columns it has. Our choice.
    private static readonly (int Columns, double Noughts)[] Allowed = [(8, 0.5), (16, 0.3), (32, 0.2), (int.MaxValue, 0.1)];

    private readonly int[] _rowStarts, _rows, _targets;
    private readonly int[] _entryStarts, _entries, _entryOffsets;

    /// <summary>Finds them.</summary>
    /// <param name="columnStarts">Where each column of the upper half starts in <paramref name="rows"/>, and where the last one ends.</param>
    /// <param name="rows">The rows of its entries, each at most its column.</param>
    public FactorBlocks(int[] columnStarts, int[] rows)
    {
        var n = columnStarts.Length - 1;
        var (parents, counts) = Tree(columnStarts, rows);
        Entries = n + counts.Sum(c => (long)c);
        Places = Postorder(parents);
        // Everything below is in the new order.
        var (up, below) = (new int[n], new int[n]);
        for (var k = 0; k < n; k++) (up[Places[k]], below[Places[k]]) = (parents[k] < 0 ? -1 : Places[parents[k]], counts[k]);
        (Firsts, var belows) = Gathered(up, below);
        Count = Firsts.Length - 1;
        var of = new int[n];
        for (var b = 0; b < Count; b++) Array.Fill(of, b, Firsts[b], Firsts[b + 1] - Firsts[b]);

        // Entries of the lower half, column by column.
        var starts = new int[n + 1];
        for (var c = 0; c < n; c++)
            for (var p = columnStarts[c]; p < columnStarts[c + 1]; p++) starts[Places[rows[p]] + 1]++;
        for (var c = 0; c < n; c++) starts[c + 1] += starts[c];
        (_entries, _entryOffsets) = (new int[rows.Length], new int[rows.Length]);
        var (rowOf, filled) = (new int[rows.Length], starts[..n]);
        for (var c = 0; c < n; c++)
            for (var p = columnStarts[c]; p < columnStarts[c + 1]; p++)
            {
                var at = filled[Places[rows[p]]]++;
                (_entries[at], rowOf[at]) = (p, Places[c]);
            }
        _entryStarts = Array.ConvertAll(Firsts, f => starts[f]);

        _rowStarts = new int[Count + 1];
        for (var b = 0; b < Count; b++) _rowStarts[b + 1] = _rowStarts[b] + belows[b];
        (_rows, _targets, Parents) = (new int[_rowStarts[Count]], new int[_rowStarts[Count]], new int[Count]);
        FindRows(of, rowOf, starts);
    }

    /// <summary>How many blocks.</summary>
    public int Count { get; }

    /// <summary>Entries of the factor, diagonal included, noughts that gathering adds not.</summary>
    public long Entries { get; }

    /// <summary>For each column as given its place in the order of the blocks.</summary>
    public int[] Places { get; }

    /// <summary>First column of each block, and one past the last.</summary>
    public int[] Firsts { get; }

    /// <summary>The block that each one's rows are first found in, -1 for none: always a later one, with nothing between that has another.</summary>
    public int[] Parents { get; }

    /// <summary>Columns of a block.</summary>
    public int Columns(int block) => Firsts[block + 1] - Firsts[block];

    /// <summary>Rows below a block, ascending.</summary>
    public ReadOnlySpan<int> Rows(int block) => _rows.AsSpan(_rowStarts[block].._rowStarts[block + 1]);

    /// <summary>Where each of a block's rows stands in its parent's front: the parent's columns first, then its rows.</summary>
    public ReadOnlySpan<int> Targets(int block) => _targets.AsSpan(_rowStarts[block].._rowStarts[block + 1]);

    /// <summary>Puts the entries of the matrix that belong to a block's columns into its empty front.</summary>
    public void Scatter(int block, ReadOnlySpan<double> values, double[] front)
    {
        for (var p = _entryStarts[block]; p < _entryStarts[block + 1]; p++) front[_entryOffsets[p]] = values[_entries[p]];
    }

    // For each column the next one that it reaches, -1 for none, and how many it reaches.
    private static (int[] Parents, int[] Counts) Tree(int[] columnStarts, int[] rows)
    {
        var n = columnStarts.Length - 1;
        var (parents, counts, seen) = (new int[n], new int[n], new int[n]);
        for (var k = 0; k < n; k++)
        {
            (parents[k], seen[k]) = (-1, k);
            for (var p = columnStarts[k]; p < columnStarts[k + 1]; p++)
                for (var i = rows[p]; seen[i] != k; i = parents[i])
                {
                    if (parents[i] == -1) parents[i] = k;
                    counts[i]++;
                    seen[i] = k;
                }
        }
        return (parents, counts);
    }

    private static int[] Postorder(int[] parents)
    {
        var n = parents.Length;
        var (child, sibling, places, path) = (new int[n], new int[n], new int[n], new int[n]);
        Array.Fill(child, -1);
        for (var k = n - 1; k >= 0; k--)
            if (parents[k] >= 0) (sibling[k], child[parents[k]]) = (child[parents[k]], k);
        var next = 0;
        for (var root = 0; root < n; root++)
        {
            if (parents[root] >= 0) continue;
            var depth = 0;
            path[0] = root;
            while (depth >= 0)
            {
                var k = path[depth];
                if (child[k] >= 0)
                {
                    path[++depth] = child[k];
                    child[k] = sibling[child[k]];
                }
                else
                {
                    places[k] = next++;
                    depth--;
                }
            }
        }
        return places;
    }

    // First column of each block and one past the last, and how many rows it has below.
    private static (int[] Firsts, int[] Belows) Gathered(int[] up, int[] below)
    {
        var blocks = new List<(int First, int End, int Below, long Noughts)>();
        for (var first = 0; first < up.Length;)
        {
            var end = first + 1;
            while (end < up.Length && up[end - 1] == end && below[end - 1] == below[end] + 1) end++;
            var top = (First: first, End: end, Below: below[end - 1], Noughts: 0L);
            while (blocks.Count > 0)
            {
                var last = blocks[^1];
                // The one before is its child or it has none.
                if (up[last.End - 1] < top.First || up[last.End - 1] >= top.End) break;
                int columns = top.End - last.First, own = last.End - last.First;
                var noughts = last.Noughts + top.Noughts + (long)own * (top.End - top.First + top.Below - last.Below);
                var all = columns * (columns + 1L) / 2 + (long)columns * top.Below;
                if (noughts > Array.Find(Allowed, a => columns <= a.Columns).Noughts * all) break;
                blocks.RemoveAt(blocks.Count - 1);
                top = (last.First, top.End, top.Below, noughts);
            }
            blocks.Add(top);
            first = end;
        }
        return ([.. blocks.Select(b => b.First), up.Length], [.. blocks.Select(b => b.Below)]);
    }

    private void FindRows(int[] of, int[] rowOf, int[] starts)
    {
        var n = of.Length;
        // Blocks whose rows are first found in one, last to first.
        var (child, sibling) = (new int[Count], new int[Count]);
        Array.Fill(child, -1);
        var (seen, at) = (new int[n], new int[n]);
        Array.Fill(seen, -1);
        for (var b = 0; b < Count; b++)
        {
            var (first, end) = (Firsts[b], Firsts[b + 1]);
            var rows = _rows.AsSpan(_rowStarts[b].._rowStarts[b + 1]);
            var found = 0;
            for (var p = _entryStarts[b]; p < _entryStarts[b + 1]; p++)
                if (rowOf[p] >= end && seen[rowOf[p]] != b) (seen[rowOf[p]], rows[found++]) = (b, rowOf[p]);
            for (var c = child[b]; c >= 0; c = sibling[c])
                foreach (var row in Rows(c))
                    if (row >= end && seen[row] != b) (seen[row], rows[found++]) = (b, row);
            rows.Sort();
            Parents[b] = found == 0 ? -1 : of[rows[0]];
            if (found > 0) (sibling[b], child[Parents[b]]) = (child[Parents[b]], b);
            for (var r = 0; r < found; r++) at[rows[r]] = end - first + r;
            int Place(int row) => row < end ? row - first : at[row];
            for (var c = child[b]; c >= 0; c = sibling[c])
                for (var r = _rowStarts[c]; r < _rowStarts[c + 1]; r++) _targets[r] = Place(_rows[r]);
            var width = Front.Width(end - first + found);
            for (var column = first; column < end; column++)
                for (var p = starts[column]; p < starts[column + 1]; p++) _entryOffsets[p] = Place(rowOf[p]) * width + column - first;
        }
    }
}
