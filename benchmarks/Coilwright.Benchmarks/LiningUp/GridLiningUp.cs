using Coilwright.Core.Alignment;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Benchmarks.LiningUp;

/// <summary>Lining up of one lie as a grid reads it.</summary>
/// <param name="CoverExact">Headline at T.</param>
/// <param name="Cover">Headline averaged over shifts about T.</param>
/// <param name="ShareAveraged">By bead, averaged; not yet divided by chance.</param>
public readonly record struct GridReadings(double CoverExact, double Cover, double ShareAveraged);

/// <summary>Lining up by walking the wire in equal steps: the plain way to do it, done well.</summary>
/// <remarks>Its cells are laid out once for a lie, in one pass. What is averaged is not walked again for each shift: two windows, of kinds and of
/// groups, slide along with the cell, so a cell costs the same however wide the averaging is. Nothing is allocated after the first lie. Serves
/// pieces of which nothing is hidden and whose wish is one for all.</remarks>
public sealed class GridLiningUp
{
    private readonly double _stepMm;
    private readonly int[] _order;
    private readonly int _kinds, _names;
    private readonly double[] _weights;
    private readonly (int First, int End, int Name)[] _runs;
    private readonly int[] _inWindow, _namesInWindow;
    private int[] _kindAt = [], _nameAt = [];

    /// <summary>Prepares a piece.</summary>
    /// <param name="piece">The piece, with named groups.</param>
    /// <param name="choices">Our choices.</param>
    /// <param name="stepMm">The step, mm.</param>
    public GridLiningUp(Piece piece, ReckoningChoices choices, double stepMm)
    {
        _stepMm = stepMm;
        _order = [.. piece.Order.Kinds];
        var likeness = new KindLikeness(piece.Beads, choices);
        _kinds = likeness.Kinds;
        _weights = new double[_kinds * _kinds];
        for (var i = 0; i < _kinds; i++)
            for (var j = 0; j < _kinds; j++)
                _weights[i * _kinds + j] = likeness[i, j] * Math.Sqrt(choices.ShowsByRole[piece.Beads[i].Role] * choices.ShowsByRole[piece.Beads[j].Role]);
        var names = piece.Order.ReadingGroups.Select(g => g.Name).Distinct().ToList();
        _names = names.Count;
        _runs = [.. piece.Order.ReadingGroups.Select(g => (g.First, g.End, names.IndexOf(g.Name)))];
        _inWindow = new int[_kinds];
        _namesInWindow = new int[_names + 1];
    }

    /// <summary>The readings of a lie.</summary>
    /// <param name="lie">Where the beads lie.</param>
    /// <param name="averagingMm">Half width of the averaging, mm.</param>
    public GridReadings Of(Lie lie, double averagingMm)
    {
        var cells = Lay(lie);
        var shift = (int)Math.Round(lie.WirePerTurnMm / _stepMm);
        var half = (int)Math.Round(averagingMm / _stepMm);
        var coverExact = CoverAt(cells, shift);
        var (cover, share) = Averaged(cells, shift, half);
        return new GridReadings(coverExact, cover, share);
    }

    private int Lay(Lie lie)
    {
        var cells = (int)(lie.BeadedMm / _stepMm);
        if (_kindAt.Length < cells) (_kindAt, _nameAt) = (new int[cells], new int[cells]);
        // A cell is what its middle lies in.
        int Cell(int bead) => bead == lie.Count ? cells : Math.Min(cells, (int)Math.Ceiling(lie.StartsMm[bead] / _stepMm - 0.5));
        for (var i = 0; i < _order.Length; i++) _kindAt.AsSpan(Cell(i)..Cell(i + 1)).Fill(_order[i]);
        var done = 0;
        foreach (var (first, end, name) in _runs)
        {
            _nameAt.AsSpan(done..Cell(first)).Fill(_names);
            done = Cell(end);
            _nameAt.AsSpan(Cell(first)..done).Fill(name);
        }
        _nameAt.AsSpan(done..cells).Fill(_names);
        return cells;
    }

    private double CoverAt(int cells, int shift)
    {
        int own = 0, grouped = 0;
        var under = _nameAt.AsSpan(0, cells - shift);
        var over = _nameAt.AsSpan(shift, cells - shift);
        for (var c = 0; c < under.Length; c++)
        {
            if (under[c] == _names) continue;
            grouped++;
            if (under[c] == over[c]) own++;
        }
        return (double)own / grouped;
    }

    private (double Cover, double Share) Averaged(int cells, int shift, int half)
    {
        Array.Clear(_inWindow);
        Array.Clear(_namesInWindow);
        double weighted = 0, here = 0;
        long over = 0, own = 0, grouped = 0;
        int from = Math.Min(cells, shift - half), to = from, kind = -1, row = 0;
        for (var c = 0; c + shift - half < cells; c++)
        {
            // The window holds the cells from c + shift - half to c + shift + half.
            for (var enters = Math.Min(cells, c + shift + half + 1); to < enters; to++)
            {
                _inWindow[_kindAt[to]]++;
                _namesInWindow[_nameAt[to]]++;
                if (kind >= 0) here += _weights[row + _kindAt[to]];
            }
            for (; from < c + shift - half; from++)
            {
                _inWindow[_kindAt[from]]--;
                _namesInWindow[_nameAt[from]]--;
                here -= _weights[row + _kindAt[from]];
            }
            if (_kindAt[c] != kind)
            {
                kind = _kindAt[c];
                row = kind * _kinds;
                here = 0;
                for (var k = 0; k < _kinds; k++) here += _inWindow[k] * _weights[row + k];
            }
            weighted += here;
            over += to - from;
            if (_nameAt[c] == _names) continue;
            grouped += to - from;
            own += _namesInWindow[_nameAt[c]];
        }
        return ((double)own / grouped, weighted / over);
    }
}
