using System.Collections.Immutable;
using Coilwright.Core.Findings;
using Coilwright.Core.Lies;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;

namespace Coilwright.Documents.TurnRows;

/// <summary>A stretch of one row, in the piece's own millimetres from the row's left edge.</summary>
/// <param name="FromMm">Where it begins.</param>
/// <param name="ToMm">Where it ends, not before <paramref name="FromMm"/>. Both may lie outside the row, where something stands over its edge.</param>
public readonly record struct Stretch(double FromMm, double ToMm)
{
    /// <summary>Its length, mm.</summary>
    public double LengthMm => ToMm - FromMm;

    /// <summary>Its middle, mm from the row's left edge.</summary>
    public double MiddleMm => (FromMm + ToMm) / 2;
}

/// <summary>A bead on a row.</summary>
/// <param name="Index">Its place in the order, from 0.</param>
/// <param name="Look">Which drawing it has where its kind has several, from 0, over and over.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Over">What its outline covers, mm from the row's left edge.</param>
/// <param name="Turn">Its turn, as every reading counts it.</param>
/// <param name="IsHome">Whether its middle lies on this row. A bead over the edge stands on two rows, and carries its letter at home.</param>
public sealed record RowBead(int Index, int Look, KindCount Kind, Stretch Over, int Turn, bool IsHome);

/// <summary>A group on a row, or the part of it that lies there.</summary>
/// <param name="Name">Its name.</param>
/// <param name="FirstBead">Its first bead's place in the order, from 0.</param>
/// <param name="Over">Where it lies.</param>
/// <param name="Begins">Whether its first bead lies on this row.</param>
/// <param name="Ends">Whether its last bead lies on this row.</param>
/// <param name="IsHome">Whether the larger part lies on this row: there its name stands.</param>
public sealed record RowGroup(string Name, int FirstBead, Stretch Over, bool Begins, bool Ends, bool IsHome);

/// <summary>A place where like lies over like, between this row and the one above it.</summary>
/// <param name="Name">The group's name, or the bead's key letter where groups are runs of one kind.</param>
/// <param name="Over">Where.</param>
/// <param name="OffSquareMm">How far off square, mm, without sign.</param>
/// <param name="IsWished">Whether columns are wished for there.</param>
/// <param name="IsHome">Whether the larger part lies here: there its words stand.</param>
public sealed record RowTie(string Name, Stretch Over, double OffSquareMm, bool IsWished, bool IsHome);

/// <summary>One trip round the wrist, seen flat.</summary>
/// <param name="Turns">The turns that lie on it: its own, or two where rows are not cut where the piece starts.</param>
/// <param name="Wire">Where the wire runs under beads.</param>
/// <param name="Beads">Its beads, the way they are strung.</param>
/// <param name="Groups">Its groups.</param>
/// <param name="Ties">What lies over its own kind on the row above.</param>
public sealed record Row(ImmutableArray<int> Turns, Stretch Wire, ImmutableArray<RowBead> Beads, ImmutableArray<RowGroup> Groups,
    ImmutableArray<RowTie> Ties);

/// <summary>The turn rows' content: every number final, taken from the readings.</summary>
/// <remarks>Rows are cut where the piece starts, so that row k is turn k as every reading counts it and as a trial wire per turn would lie. A piece that
/// starts far from the underside would bring its top to the rows' edges: then rows are cut at the underside, a turn runs over into the next row, and
/// its beginning is marked. Either way what lies over what on the wrist lies over what on the page.</remarks>
public sealed record TurnRowsModel
{
    /// <summary>The readings.</summary>
    public required Reckoned Reckoned { get; init; }

    /// <summary>Length of a whole row: the wire in one turn, mm.</summary>
    public required double RowMm { get; init; }

    /// <summary>The rows from the starting end.</summary>
    public required ImmutableArray<Row> Rows { get; init; }

    /// <summary>Where the starting end lies on the first row, mm from its left edge; above 0, every turn begins there, within a row.</summary>
    public required double StartMm { get; init; }

    /// <summary>Where the last bead's share ends on the last row, mm from its left edge.</summary>
    public required double FinishMm { get; init; }

    /// <summary>Where the top of the wrist lies on every row, mm from its left edge.</summary>
    public required double TopMm { get; init; }

    /// <summary>Where the underside lies on every row, mm from its left edge; 0 when it lies at both edges.</summary>
    public required double UndersideMm { get; init; }

    /// <summary>Bare wire beyond the last bead, mm; 0 when none is known of.</summary>
    public required double BareMm { get; init; }

    /// <summary>The focal's place in the order; null when there is none.</summary>
    public int? FocalIndex => Reckoned.Focal?.Index;

    /// <summary>The ends of the wire.</summary>
    public WireEnds Ends => Reckoned.Piece.Ends;

    /// <summary>Takes the content from the readings.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="looks">Which drawing each bead has where its kind has several; null: by turns along each kind.</param>
    public static TurnRowsModel Of(Reckoned reckoned, ImmutableArray<int>? looks = null)
    {
        var cutter = new RowCutter(reckoned, looks ?? NthOfKind.Of(reckoned.Piece.Order.Kinds));
        return new TurnRowsModel
        {
            Reckoned = reckoned,
            RowMm = reckoned.Lie.WirePerTurnMm,
            Rows = cutter.Cut(),
            StartMm = cutter.StartMm,
            FinishMm = cutter.FinishMm,
            TopMm = cutter.AtMm(0),
            UndersideMm = cutter.AtMm(180),
            BareMm = Math.Max(0, reckoned.Wire.SlackMm ?? 0),
        };
    }
}

/// <summary>Cuts the wire into rows.</summary>
internal sealed class RowCutter
{
    // Where rounding alone carries a bead over an edge, it does not stand over it.
    private const double HairMm = 1e-6;
    // How far from the underside a piece may start for its rows to be cut there: the top then stays a third of a row from either edge. Our choice.
    private const double NearUndersideDeg = 60;
    private readonly double _edgeDeg;
    private readonly Reckoned _reckoned;
    private readonly Lie _lie;
    private readonly ImmutableArray<int> _looks;
    private readonly double _rowMm;
    private readonly double _startMm;
    private readonly int _rows;

    internal RowCutter(Reckoned reckoned, ImmutableArray<int> looks)
    {
        _looks = looks;
        _reckoned = reckoned;
        _lie = reckoned.Lie;
        _rowMm = _lie.WirePerTurnMm;
        var start = Angles.NormalizedDeg(_lie.StartAngleDeg);
        _edgeDeg = Math.Abs(Angles.NormalizedDeg(start - 180)) <= NearUndersideDeg ? start : 180;
        _startMm = AtMm(start);
        _rows = Math.Max(1, RowOf(_startMm + _lie.BeadedMm - HairMm) + 1);
    }

    internal double StartMm => _startMm;

    internal double FinishMm => _startMm + _lie.BeadedMm - (_rows - 1) * _rowMm;

    /// <summary>Where an angle lies on every row, mm from its left edge.</summary>
    internal double AtMm(double angleDeg)
    {
        var turns = (angleDeg - _edgeDeg) / 360;
        var mm = (turns - Math.Floor(turns)) * _rowMm;
        return mm < HairMm || mm > _rowMm - HairMm ? 0 : mm;
    }

    internal ImmutableArray<Row> Cut()
    {
        var beads = Beads();
        var groups = Groups();
        var ties = Ties();
        var rows = ImmutableArray.CreateBuilder<Row>(_rows);
        for (var r = 0; r < _rows; r++)
        {
            double from = r * _rowMm, to = from + _rowMm;
            var wire = new Stretch(Math.Max(0, _startMm - from), Math.Min(_rowMm, _startMm + _lie.BeadedMm - from));
            var first = _lie.TurnAt(Math.Max(0, from - _startMm) + HairMm);
            var last = _lie.TurnAt(Math.Max(0, Math.Min(to - _startMm, _lie.BeadedMm) - HairMm));
            rows.Add(new Row([.. Enumerable.Range(first, Math.Max(1, last - first + 1))], wire, [.. beads[r]], [.. groups[r]], [.. ties[r]]));
        }
        return rows.MoveToImmutable();
    }

    private int RowOf(double alongMm) => (int)Math.Floor(alongMm / _rowMm);

    private List<RowBead>[] Beads()
    {
        var rows = Empty<RowBead>();
        var kinds = _reckoned.Counts.ToDictionary(k => k.KindIndex);
        for (var i = 0; i < _lie.Count; i++)
        {
            var kind = kinds[_reckoned.Piece.Order.Kinds[i]];
            var middle = _startMm + _lie.BeadMiddleMm(i);
            var half = kind.Bead.LengthMm / 2;
            var home = Math.Clamp(RowOf(middle), 0, _rows - 1);
            for (var r = Math.Max(0, RowOf(middle - half + HairMm)); r <= Math.Min(_rows - 1, RowOf(middle + half - HairMm)); r++)
                rows[r].Add(new RowBead(i, _looks[i], kind, new Stretch(middle - half - r * _rowMm, middle + half - r * _rowMm), _lie.Turn(i), r == home));
        }
        return rows;
    }

    private List<RowGroup>[] Groups()
    {
        var rows = Empty<RowGroup>();
        double HalfMm(int bead) => _reckoned.Piece.Beads[_reckoned.Piece.Order.Kinds[bead]].LengthMm / 2;
        foreach (var group in _reckoned.Piece.Order.ReadingGroups)
            Lay(_lie.BeadMiddleMm(group.First) - HalfMm(group.First), _lie.BeadMiddleMm(group.End - 1) + HalfMm(group.End - 1), (r, over, begins, ends, home) =>
                rows[r].Add(new RowGroup(group.Name, group.First, over, begins, ends, home)));
        return rows;
    }

    private List<RowTie>[] Ties()
    {
        var rows = Empty<RowTie>();
        var report = _reckoned.LiningUp;
        var letters = _reckoned.Counts.ToDictionary(k => k.Bead.Id, k => k.Letter, StringComparer.Ordinal);
        foreach (var pair in report.Pairs)
        {
            var name = report.GroupsAreRuns ? letters.GetValueOrDefault(pair.Name, pair.Name) : pair.Name;
            var wished = pair.Wish == LiningUpWish.Columns;
            Lay(pair.OverlapFromMm, pair.OverlapToMm, (r, over, _, _, home) =>
            {
                if (r > 0) rows[r].Add(new RowTie(name, over, Math.Abs(pair.OffSquareMm), wished, home));
            });
        }
        foreach (var row in rows) row.Sort((a, b) => a.Over.FromMm.CompareTo(b.Over.FromMm));
        return rows;
    }

    // Lays a stretch of wire on the rows that it crosses; home is where most of it lies.
    private void Lay(double fromMm, double toMm, Action<int, Stretch, bool, bool, bool> onRow)
    {
        double from = _startMm + fromMm, to = _startMm + toMm;
        int first = Math.Clamp(RowOf(from + HairMm), 0, _rows - 1), last = Math.Clamp(RowOf(to - HairMm), first, _rows - 1);
        Stretch On(int r) => new(Math.Max(from, r * _rowMm) - r * _rowMm, Math.Min(to, (r + 1) * _rowMm) - r * _rowMm);
        var home = Enumerable.Range(first, last - first + 1).MaxBy(r => On(r).LengthMm);
        for (var r = first; r <= last; r++) onRow(r, On(r), r == first, r == last, r == home);
    }

    private List<T>[] Empty<T>() => [.. Enumerable.Range(0, _rows).Select(_ => new List<T>())];
}
