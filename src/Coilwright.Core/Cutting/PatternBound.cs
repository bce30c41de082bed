namespace Coilwright.Core.Cutting;

/// <summary>A bar's filling as the search keeps it.</summary>
internal sealed record Pattern(int Bar, int[] Counts)
{
    /// <summary>The items in it.</summary>
    public int[] Held { get; } = [.. Enumerable.Range(0, Counts.Length).Where(i => Counts[i] > 0)];
}

/// <summary>What a bound is made of: what each item is worth and how much every bar may be worth beyond its cost, in fractions of a cost.</summary>
/// <param name="Bound">No way to cut what is left costs less, in whole costs; <see cref="long.MaxValue"/> where it cannot come out.</param>
/// <param name="Scaled">The bound in fractions.</param>
/// <param name="Values">Worth of each item, in fractions, 0 or more.</param>
/// <param name="Excess">Of each bar, by how much the worth of its best filling exceeds its cost at most, in fractions, 0 or more.</param>
/// <param name="Chosen">The bars of the relaxed problem, in parts of one.</param>
internal sealed record BoundFound(long Bound, long Scaled, long[] Values, long[] Excess, IReadOnlyList<(Pattern Pattern, double Share)> Chosen);

/// <summary>The bound of the cutting problem in which bars may be begun in parts: its linear programme over all fillings, by column generation.</summary>
/// <remarks>
/// <para>Model: docs/theory/cutting.md (Gilmore and Gomory 1961; Farley 1990). The programme is solved in floating point, and nothing is proven by it: the worths of the
/// items that it finds are rounded down to whole fractions, and the bound is made of them in whole numbers by an exact knapsack for every bar. It holds for any worths.</para>
/// </remarks>
internal sealed class PatternBound
{
    private const double Eps = 1e-9;
    private const int MostPivots = 20_000;

    private readonly ScaledProblem _p;
    private readonly bool _mayMiss;
    private readonly long _dear;
    private readonly Knapsack _knapsack = new();
    private readonly List<Pattern> _pool = [];
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);
    private readonly int[][] _sameMay;

    /// <param name="problem">The problem.</param>
    /// <param name="mayMiss">Whether items may be left out at their length, and bars cost nothing; else everything must be cut and bars cost what they cost.</param>
    /// <param name="dear">A cost above that of the best way known.</param>
    public PatternBound(ScaledProblem problem, bool mayMiss, long dear)
    {
        (_p, _mayMiss, _dear) = (problem, mayMiss, dear);
        _sameMay = [.. Enumerable.Range(0, problem.Bars).GroupBy(b => string.Concat(problem.May[b].Select(m => m ? '1' : '0'))).Select(g => g.ToArray())];
        var most = Math.Max((double)problem.Demand.Sum() * (mayMiss ? problem.Missing.DefaultIfEmpty(1).Max() : dear), problem.BarCost.DefaultIfEmpty(0).Max()) + 1;
        var fractions = 40;
        while (fractions > 0 && most * Math.Pow(2, fractions) > long.MaxValue / 8.0) fractions--;
        Fractions = 1L << fractions;
    }

    /// <summary>How many fractions one cost has.</summary>
    public long Fractions { get; }

    // Whether there are always enough of a bar. One that costs nothing is counted all the same: it must not be worth nothing without end.
    private bool Endless(int bar) => _p.Unlimited[bar] && CostOf(bar) > 0;

    /// <summary>Cost of one bar.</summary>
    public long CostOf(int bar) => _mayMiss ? 0 : _p.BarCost[bar];

    /// <summary>The bound for what is left.</summary>
    /// <param name="left">How many of each item are still to be cut.</param>
    /// <param name="bars">How many of each bar are still there.</param>
    /// <param name="enough">A bound from which on it need not be looked further, in whole costs.</param>
    /// <param name="cancel">Ends it early, with a bound that holds and may be weaker.</param>
    public BoundFound Of(int[] left, int[] bars, long enough, CancellationToken cancel)
    {
        int[] items = [.. Enumerable.Range(0, _p.Items).Where(i => left[i] > 0)];
        int[] limited = [.. Enumerable.Range(0, _p.Bars).Where(b => bars[b] > 0 && !Endless(b))];
        var master = new Master(_p, this, items, limited, left, bars);
        foreach (var pattern in _pool) master.Offer(pattern);
        BoundFound? best = null;
        for (var pivots = 0; pivots < MostPivots; pivots++)
        {
            if (!master.Improve())
            {
                var (found, better) = Price(master, left, bars);
                if (best is null || found.Scaled > best.Scaled) best = found;
                if (!better || best.Bound >= enough || best.Bound >= Math.Ceiling(master.Value - 1e-6) || cancel.IsCancellationRequested) break;
            }
        }
        best ??= Price(master, left, bars).Found;
        return best with { Chosen = master.Chosen() };
    }

    // The best filling of each bar for the worths as they are: what is better than its cost goes into the pool, and worths and fillings together give a bound.
    private (BoundFound Found, bool Better) Price(Master master, int[] left, int[] bars)
    {
        var values = new long[_p.Items];
        for (var i = 0; i < values.Length; i++)
        {
            if (left[i] == 0) continue;
            values[i] = (long)Math.Floor(Math.Clamp(master.WorthOf(i), 0, _mayMiss ? _p.Missing[i] : _dear) * Fractions);
        }
        var worth = new long[_p.Bars];
        var better = false;
        foreach (var alike in _sameMay)
        {
            var there = alike.Where(b => bars[b] > 0).ToArray();
            if (there.Length == 0) continue;
            long[] here = [.. values.Select((v, i) => _p.May[alike[0]][i] ? v : 0)];
            _knapsack.Fill(_p.Length, here, left, there.Max(b => _p.BarLength[b]));
            foreach (var b in there)
            {
                worth[b] = _knapsack.ValueAt(_p.BarLength[b]);
                if (worth[b] <= (CostOf(b) + master.PriceOf(b)) * Fractions + Fractions * 1e-7) continue;
                var pattern = new Pattern(b, _knapsack.CountsAt(_p.BarLength[b]));
                if (!_known.Add(b + ":" + string.Join(',', pattern.Counts))) continue;
                _pool.Add(pattern);
                master.Offer(pattern);
                better = true;
            }
        }
        return (Bound(values, worth, left, bars), better);
    }

    private BoundFound Bound(long[] values, long[] worth, int[] left, int[] bars)
    {
        // Where there are as many bars as it takes none may be worth more than it costs: all worths go down by one factor (Farley).
        Int128 top = 1, bottom = 1;
        for (var b = 0; b < _p.Bars; b++)
            if (bars[b] > 0 && Endless(b) && CostOf(b) * Fractions * bottom < top * worth[b])
                (top, bottom) = ((Int128)CostOf(b) * Fractions, worth[b]);
        Int128 sum = 0;
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (long)(values[i] * top / bottom);
            sum += (Int128)values[i] * left[i];
        }
        var excess = new long[_p.Bars];
        for (var b = 0; b < _p.Bars; b++)
        {
            if (bars[b] <= 0) continue;
            var over = (worth[b] * top + bottom - 1) / bottom - (Int128)CostOf(b) * Fractions;
            if (over <= 0 || Endless(b)) continue;
            excess[b] = (long)over;
            sum -= over * bars[b];
        }
        var scaled = (long)Int128.Max(0, sum);
        return new BoundFound((scaled + Fractions - 1) / Fractions, scaled, values, excess, []);
    }

    /// <summary>The linear programme over the fillings known so far: primal simplex with the inverse of its basis written out.</summary>
    private sealed class Master
    {
        private readonly ScaledProblem _p;
        private readonly PatternBound _of;
        private readonly int[] _items, _limited, _rowOfItem, _rowOfBar, _left;
        private readonly int _rows;
        private readonly double[,] _inverse;
        private readonly double[] _at, _worths;
        private readonly (Kind Kind, int Index)[] _basis;
        private readonly double[] _basisCost;
        private readonly List<Pattern> _offered = [];

        private enum Kind
        {
            Filling,
            Missing,
            Surplus,
            Unused,
        }

        public Master(ScaledProblem problem, PatternBound of, int[] items, int[] limited, int[] left, int[] bars)
        {
            (_p, _of, _items, _limited, _left) = (problem, of, items, limited, left);
            _rows = items.Length + limited.Length;
            _rowOfItem = new int[problem.Items];
            _rowOfBar = new int[problem.Bars];
            Array.Fill(_rowOfItem, -1);
            Array.Fill(_rowOfBar, -1);
            _inverse = new double[_rows, _rows];
            (_at, _worths, _basis, _basisCost) = (new double[_rows], new double[_rows], new (Kind, int)[_rows], new double[_rows]);
            for (var r = 0; r < _rows; r++)
            {
                _inverse[r, r] = 1;
                if (r < items.Length)
                {
                    _rowOfItem[items[r]] = r;
                    (_at[r], _basis[r], _basisCost[r]) = (left[items[r]], (Kind.Missing, items[r]), MissCost(items[r]));
                }
                else
                {
                    var bar = limited[r - items.Length];
                    _rowOfBar[bar] = r;
                    (_at[r], _basis[r], _basisCost[r]) = (bars[bar], (Kind.Unused, bar), 0);
                }
            }
            SetWorths();
        }

        public double Value { get; private set; }

        private double MissCost(int item) => _of._mayMiss ? _p.Missing[item] : _of._dear;

        /// <summary>What one more of an item would cost.</summary>
        public double WorthOf(int item) => _rowOfItem[item] < 0 ? 0 : _worths[_rowOfItem[item]];

        /// <summary>What one more bar would save.</summary>
        public double PriceOf(int bar) => _rowOfBar[bar] < 0 ? 0 : Math.Max(0, -_worths[_rowOfBar[bar]]);

        public void Offer(Pattern pattern)
        {
            if (_of.Endless(pattern.Bar) || _rowOfBar[pattern.Bar] >= 0)
            {
                foreach (var i in pattern.Held)
                    if (pattern.Counts[i] > _left[i])
                        return;
                _offered.Add(pattern);
            }
        }

        /// <summary>One step; false when none of what is known is better.</summary>
        public bool Improve()
        {
            var least = -1e-7;
            (Kind Kind, int Index) enters = default;
            for (var n = 0; n < _offered.Count; n++)
            {
                var pattern = _offered[n];
                var reduced = (double)_of.CostOf(pattern.Bar);
                if (_rowOfBar[pattern.Bar] is var row and >= 0) reduced -= _worths[row];
                foreach (var i in pattern.Held) reduced -= pattern.Counts[i] * _worths[_rowOfItem[i]];
                if (reduced < least) (least, enters) = (reduced, (Kind.Filling, n));
            }
            for (var r = 0; r < _rows; r++)
            {
                if (r < _items.Length)
                {
                    if (_worths[r] < least) (least, enters) = (_worths[r], (Kind.Surplus, _items[r]));
                    if (MissCost(_items[r]) - _worths[r] < least) (least, enters) = (MissCost(_items[r]) - _worths[r], (Kind.Missing, _items[r]));
                }
                else if (-_worths[r] < least) (least, enters) = (-_worths[r], (Kind.Unused, _limited[r - _items.Length]));
            }
            if (least >= -1e-7) return false;
            return Enter(enters);
        }

        /// <summary>The fillings in the solution, and how much of each.</summary>
        public IReadOnlyList<(Pattern Pattern, double Share)> Chosen() =>
            [.. Enumerable.Range(0, _rows).Where(r => _basis[r].Kind == Kind.Filling && _at[r] > 1e-7).Select(r => (_offered[_basis[r].Index], _at[r]))];

        private bool Enter((Kind Kind, int Index) what)
        {
            var column = new double[_rows];
            switch (what.Kind)
            {
                case Kind.Filling:
                    var pattern = _offered[what.Index];
                    foreach (var i in pattern.Held) AddColumn(column, _rowOfItem[i], pattern.Counts[i]);
                    if (_rowOfBar[pattern.Bar] is var bar and >= 0) AddColumn(column, bar, 1);
                    break;
                case Kind.Missing:
                    AddColumn(column, _rowOfItem[what.Index], 1);
                    break;
                case Kind.Surplus:
                    AddColumn(column, _rowOfItem[what.Index], -1);
                    break;
                default:
                    AddColumn(column, _rowOfBar[what.Index], 1);
                    break;
            }
            var leaves = -1;
            var ratio = double.PositiveInfinity;
            for (var r = 0; r < _rows; r++)
            {
                if (column[r] <= Eps) continue;
                var here = Math.Max(0, _at[r]) / column[r];
                // Of equals the one with the larger pivot: steadier.
                if (here < ratio - Eps || (here < ratio + Eps && leaves >= 0 && column[r] > column[leaves])) (ratio, leaves) = (Math.Min(here, ratio), r);
            }
            if (leaves < 0) return false;
            var pivot = column[leaves];
            for (var c = 0; c < _rows; c++) _inverse[leaves, c] /= pivot;
            _at[leaves] /= pivot;
            for (var r = 0; r < _rows; r++)
            {
                if (r == leaves || Math.Abs(column[r]) < 1e-14) continue;
                var factor = column[r];
                for (var c = 0; c < _rows; c++) _inverse[r, c] -= factor * _inverse[leaves, c];
                _at[r] -= factor * _at[leaves];
            }
            _basis[leaves] = what;
            _basisCost[leaves] = what.Kind switch
            {
                Kind.Filling => _of.CostOf(_offered[what.Index].Bar),
                Kind.Missing => MissCost(what.Index),
                _ => 0,
            };
            SetWorths();
            return true;
        }

        private void AddColumn(double[] column, int row, double factor)
        {
            for (var r = 0; r < _rows; r++) column[r] += factor * _inverse[r, row];
        }

        private void SetWorths()
        {
            Array.Clear(_worths);
            Value = 0;
            for (var r = 0; r < _rows; r++)
            {
                if (_basisCost[r] == 0) continue;
                Value += _basisCost[r] * _at[r];
                for (var c = 0; c < _rows; c++) _worths[c] += _basisCost[r] * _inverse[r, c];
            }
        }
    }
}
