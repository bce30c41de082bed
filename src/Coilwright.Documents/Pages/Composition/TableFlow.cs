using System.Collections.Immutable;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>Measures of a table's inside, points.</summary>
/// <param name="Head">How headings are set.</param>
/// <param name="Body">How cells are set.</param>
/// <param name="Gap">White between columns.</param>
/// <param name="Padding">White above and below a row's text.</param>
/// <param name="HeadRule">Line under the headings.</param>
/// <param name="RowRule">Line under a row.</param>
/// <param name="Enlarged">How much larger than its own size a cell's picture is, unless it is one at true size.</param>
internal sealed record TableLook(TextLook Head, TextLook Body, double Gap, double Padding, double HeadRule, double RowRule, double Enlarged)
{
    /// <summary>Points to a millimetre of a cell's picture.</summary>
    public double PictureScale(TableCell cell) => (cell.PictureIsTrueSize ? 1 : Enlarged) / PageSetup.PointMm;
}

/// <summary>A table, row by row. Its headings stand again on every page that it runs on to; there they are decoration, so that they are heard once.</summary>
internal sealed class TableFlow : Flow
{
    private readonly Block.Table _table;
    private readonly TableLook _look;
    private readonly Measured? _measured;
    private readonly int _row; // First row not yet laid.
    private readonly int _line; // First line of it not yet laid, where a row is higher than a page.

    public TableFlow(Block.Table table, TableLook look)
        : this(table, look, null, 0, 0)
    {
    }

    private TableFlow(Block.Table table, TableLook look, Measured? measured, int row, int line) =>
        (_table, _look, _measured, _row, _line) = (table, look, measured, row, line);

    private sealed record Measured(double Width, ImmutableArray<double> Lefts, ImmutableArray<double> Widths, ImmutableArray<ImmutableArray<SetLine>> Heads)
    {
        public double HeadHeight { get; init; }
    }

    public override Taken? Take(Room room)
    {
        var measured = _measured is { } known && known.Width == room.Width ? known : Measure(room.Width);
        var begins = _row == 0 && _line == 0;
        var rows = new List<ImmutableArray<ImmutableArray<SetLine>>>();
        var y = measured.HeadHeight;
        for (var r = _row; r < _table.Rows.Length; r++)
        {
            var cells = Lines(measured, r);
            var height = Height(r, cells, r == _row ? _line : 0);
            if (y + height > room.Height + 1e-6) break;
            rows.Add(cells);
            y += height;
        }
        var left = _table.Rows.Length - _row - rows.Count;
        // One row alone at a page's start or end looks lost.
        if (left == 1 && rows.Count > 2) rows.RemoveAt(rows.Count - 1);
        if (left > 0 && rows.Count == 1 && begins && !room.Last) return null;
        if (rows.Count == 0 && left > 0 && !room.Last) return null;
        // Headings without a row need their room as well: all of their lines, not the first alone.
        if (rows.Count == 0 && measured.HeadHeight > room.Height + 1e-6 && !room.Last) return null;

        var marks = ImmutableArray.CreateBuilder<PageMark>();
        if (begins) marks.Add(new PageMark.Open(Tag.Table));
        if (measured.HeadHeight > 0)
        {
            if (begins) marks.Add(new PageMark.Open(Tag.THead));
            Head(marks, measured, room.Width, again: !begins);
            if (begins) marks.Add(PageMark.Close.It);
        }
        if (begins) marks.Add(new PageMark.Open(Tag.TBody));
        y = measured.HeadHeight;
        for (var i = 0; i < rows.Count; i++)
        {
            var from = i == 0 ? _line : 0;
            var height = Height(_row + i, rows[i], from);
            Row(marks, measured, _row + i, rows[i], from, int.MaxValue, y, height, room.Width);
            y += height;
        }
        if (rows.Count == 0 && left > 0)
        {
            // A single row higher than the page: as many of its lines as there is room for, at least one.
            var cells = Lines(measured, _row);
            var most = cells.Max(c => c.Length) - _line;
            var fit = Math.Clamp((int)Math.Floor((room.Height - y - 2 * _look.Padding - _look.RowRule) / _look.Body.Leading), 1, Math.Max(1, most));
            var height = fit * _look.Body.Leading + 2 * _look.Padding + _look.RowRule;
            Row(marks, measured, _row, cells, _line, fit, y, height, room.Width);
            y += height;
            if (fit < most) return new Taken(new Slab(y, marks.ToImmutable()), new TableFlow(_table, _look, measured, _row, _line + fit));
            rows.Add(cells);
        }
        var next = _row + rows.Count;
        if (next < _table.Rows.Length) return new Taken(new Slab(y, marks.ToImmutable()), new TableFlow(_table, _look, measured, next, 0));
        marks.Add(PageMark.Close.It);
        marks.Add(PageMark.Close.It);
        return new Taken(new Slab(y, marks.ToImmutable()), null);
    }

    private void Head(ImmutableArray<PageMark>.Builder marks, Measured measured, double width, bool again)
    {
        if (!again) marks.Add(new PageMark.Open(Tag.TR));
        var lines = measured.Heads.Length == 0 ? 0 : measured.Heads.Max(h => h.Length);
        for (var c = 0; c < _table.Columns.Length; c++)
        {
            if (!again) marks.Add(new PageMark.Open(Tag.TH));
            var head = measured.Heads[c];
            // Headings stand on their line, whatever their number of lines.
            for (var i = 0; i < head.Length; i++)
                TextFlow.Set(marks, head[i], _look.Head, _table.Columns[c].Align, measured.Lefts[c],
                    (lines - head.Length + i) * _look.Head.Leading, measured.Widths[c], again);
            if (!again) marks.Add(PageMark.Close.It);
        }
        if (!again) marks.Add(PageMark.Close.It);
        var y = measured.HeadHeight - _look.HeadRule / 2;
        marks.Add(new PageMark.Stroke(0, y, width, y, _look.HeadRule, PageInks.Ink));
    }

    private void Row(ImmutableArray<PageMark>.Builder marks, Measured measured, int row, ImmutableArray<ImmutableArray<SetLine>> cells, int from,
        int count, double top, double height, double width)
    {
        marks.Add(new PageMark.Open(Tag.TR));
        var pictured = _table.Rows[row].Any(c => c.Picture is not null);
        for (var c = 0; c < cells.Length; c++)
        {
            var heads = c == 0 && _table.RowsHaveHeads;
            marks.Add(new PageMark.Open(heads ? Tag.TH : Tag.TD) { HeadsRow = heads });
            var shown = cells[c].Length > from ? Math.Min(count, cells[c].Length - from) : 0;
            // Beside a picture words stand at its middle; else all cells begin on one line.
            var start = top + (pictured ? (height - _look.RowRule - shown * _look.Body.Leading) / 2 : _look.Padding);
            var inset = PictureInset(_table.Rows[row][c]);
            if (from == 0)
            {
                // A picture alone stands as words would; one with words begins the cell.
                var spare = _table.Rows[row][c].Text.IsEmpty ? measured.Widths[c] - inset : 0;
                var shift = _table.Columns[c].Align switch { CellAlign.Right => spare, CellAlign.Centre => spare / 2, _ => 0 };
                Picture(marks, _table.Rows[row][c], measured.Lefts[c] + shift, top, height);
            }
            for (var i = 0; i < shown; i++)
                TextFlow.Set(marks, cells[c][from + i], _look.Body, _table.Columns[c].Align, measured.Lefts[c] + inset,
                    start + i * _look.Body.Leading, measured.Widths[c] - inset, false);
            marks.Add(PageMark.Close.It);
        }
        marks.Add(PageMark.Close.It);
        var y = top + height - _look.RowRule / 2;
        marks.Add(new PageMark.Stroke(0, y, width, y, _look.RowRule, PageInks.Hairline));
    }

    private void Picture(ImmutableArray<PageMark>.Builder marks, TableCell cell, double left, double top, double height)
    {
        if (cell.Picture is not { } picture) return;
        var scale = _look.PictureScale(cell);
        double wide = picture.WidthMm * scale, high = picture.HeightMm * scale;
        var y = top + (height - _look.RowRule - high) / 2;
        if (cell.PictureAlt is { } alt) marks.Add(new PageMark.Open(Tag.Figure) { Alt = alt, Area = new Area(left, y, wide, high) });
        marks.Add(new PageMark.Drawing(picture, left, y, scale, 0, picture.WidthMm) { Decoration = cell.PictureAlt is null });
        if (cell.PictureAlt is not null) marks.Add(PageMark.Close.It);
    }

    // Numbers end where the words behind them would begin: without more white the two read as one.
    private double GapBefore(int column) =>
        _look.Gap * (_table.Columns[column - 1].Align == CellAlign.Right && _table.Columns[column].Align == CellAlign.Left ? 1.5 : 1);

    private double PictureInset(TableCell cell) =>
        cell.Picture is not { } picture ? 0 : picture.WidthMm * _look.PictureScale(cell) + (cell.Text.IsEmpty ? 0 : _look.Gap / 2);

    private ImmutableArray<ImmutableArray<SetLine>> Lines(Measured measured, int row) =>
        [.. _table.Rows[row].Select((cell, c) => LineBreaker.Break(cell.Text, _look.Body, measured.Widths[c] - PictureInset(cell)))];

    private double Height(int row, ImmutableArray<ImmutableArray<SetLine>> cells, int from)
    {
        var lines = Math.Max(1, (cells.IsEmpty ? 0 : cells.Max(c => c.Length)) - from);
        var pictures = from > 0 ? 0 : _table.Rows[row].Max(c => c.Picture?.HeightMm * _look.PictureScale(c) ?? 0);
        return Math.Max(lines * _look.Body.Leading, pictures) + 2 * _look.Padding + _look.RowRule;
    }

    private Measured Measure(double width)
    {
        var columns = _table.Columns.Length;
        double[] natural = new double[columns], least = new double[columns];
        void Count(RichText text, TextLook look, int c, double inset)
        {
            var wanted = LineBreaker.NaturalWidth(text, look) + inset;
            natural[c] = Math.Max(natural[c], wanted);
            least[c] = Math.Max(least[c], _table.Columns[c].IsWhole ? wanted : LineBreaker.WidestWord(text, look) + inset);
        }
        for (var c = 0; c < columns; c++) Count(_table.Columns[c].Head, _look.Head, c, 0);
        foreach (var row in _table.Rows)
            for (var c = 0; c < columns; c++) Count(row[c].Text, _look.Body, c, PictureInset(row[c]));
        var widths = Shared(natural, least, [.. _table.Columns.Select(c => c.Align == CellAlign.Left)], width - Enumerable.Range(1, Math.Max(0, columns - 1)).Sum(GapBefore));
        var lefts = new double[columns];
        for (var c = 1; c < columns; c++) lefts[c] = lefts[c - 1] + widths[c - 1] + GapBefore(c);
        ImmutableArray<ImmutableArray<SetLine>> heads = [.. _table.Columns.Select((column, c) => LineBreaker.Break(column.Head, _look.Head, widths[c]))];
        var lines = heads.Length == 0 ? 0 : heads.Max(h => h.Length);
        return new Measured(width, [.. lefts], widths, heads)
        {
            HeadHeight = lines == 0 ? 0 : lines * _look.Head.Leading + _look.Padding + _look.HeadRule,
        };
    }

    /// <summary>Shares a width among columns: what each wants on one line while there is room, and the rest to columns of words; else each its widest
    /// word and what is left by what they want; else the widest columns are cut to one width.</summary>
    internal static ImmutableArray<double> Shared(double[] natural, double[] least, bool[] words, double width)
    {
        double wanted = natural.Sum(), needed = least.Sum();
        if (wanted <= width)
        {
            var growing = natural.Where((_, c) => words[c]).Sum();
            return growing > 0
                ? [.. natural.Select((n, c) => words[c] ? n + (width - wanted) * n / growing : n)]
                : [.. natural.Select(n => n + (width - wanted) / natural.Length)];
        }
        if (needed <= width)
        {
            var share = (width - needed) / (wanted - needed);
            return [.. natural.Select((n, c) => least[c] + (n - least[c]) * share)];
        }
        double low = 0, high = least.Max();
        for (var i = 0; i < 60; i++)
        {
            var cap = (low + high) / 2;
            if (least.Sum(l => Math.Min(l, cap)) > width) high = cap;
            else low = cap;
        }
        return [.. least.Select(l => Math.Min(l, low))];
    }
}
