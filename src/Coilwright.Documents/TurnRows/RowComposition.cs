using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Findings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.TurnRows;

/// <summary>Where the rows stand on the page.</summary>
/// <param name="LeftMm">Left edge of the rows.</param>
/// <param name="Scale">Millimetres of the page for one of the piece.</param>
/// <param name="RowMm">Length of a row on the page.</param>
/// <param name="PageMm">Width of the page.</param>
/// <param name="MarginMm">Margin at both sides of the page.</param>
/// <param name="TopOfWristMm">Where the top of the wrist lies.</param>
internal sealed record RowFrame(double LeftMm, double Scale, double RowMm, double PageMm, double MarginMm, double TopOfWristMm)
{
    /// <summary>How far a bead that goes on in another row is hinted at beyond the edge, mm of the page.</summary>
    internal const double HintMm = 4;

    internal double X(double alongMm) => LeftMm + alongMm * Scale;

    internal double RightMm => LeftMm + RowMm;
}

/// <summary>A row laid out, with y 0 at its wire.</summary>
/// <param name="Marks">What is drawn.</param>
/// <param name="Extent">From its highest ink to its lowest.</param>
/// <param name="InTheWay">Boxes that the line of the top of the wrist stays out of.</param>
/// <param name="LettersLeftOut">Letters that found no room.</param>
/// <param name="WordsLeftOut">Places that line up whose words found no room.</param>
internal sealed record LaidRow(ImmutableArray<Mark> Marks, Box Extent, ImmutableArray<Box> InTheWay, int LettersLeftOut, int WordsLeftOut);

/// <summary>Lays out one row: wire, beads, letters beneath, group names and what lines up above. Layout only.</summary>
internal sealed class RowComposition
{
    private const double BracketGapMm = 1.3;
    private const double BracketMm = 0.8;
    private readonly Style _style;
    private readonly TurnRowsModel _model;
    private readonly RowFrame _frame;
    private readonly Row _row;
    private readonly bool _isFirst;
    private readonly bool _isLast;
    private readonly bool _hasLongTieWords;
    private readonly LabelPlacer _placer = new();
    private readonly ImmutableArray<DrawnBead> _beads;
    private readonly RowLetters _letters;
    private readonly double _halfMm;
    private readonly List<Mark> _behind = [];
    private readonly List<Mark> _over = [];
    private int _wordsLeftOut;

    internal RowComposition(Style style, TurnRowsModel model, RowFrame frame, int row, IReadOnlyDictionary<int, BeadFigure> figures, bool hasLongTieWords)
    {
        _hasLongTieWords = hasLongTieWords;
        (_style, _model, _frame, _row) = (style, model, frame, model.Rows[row]);
        (_isFirst, _isLast) = (row == 0, row == model.Rows.Length - 1);
        _beads = [.. _row.Beads.Select(b => new DrawnBead(b, figures[b.Kind.KindIndex], frame.X(b.Over.MiddleMm), frame.X(Shown(b).MiddleMm)))];
        _letters = new RowLetters(style, _beads, _placer);
        _halfMm = Math.Max(1.5, _beads.Length == 0 ? 0 : _beads.Max(b => b.Figure.Silhouette.HalfWidthMm));
    }

    internal LaidRow Lay()
    {
        var wire = Wire();
        var beads = Beads();
        var letters = _letters.Place();
        RowNumber();
        Ends();
        var top = Groups();
        top = Focal(top);
        var beneath = _placer.Taken.Where(b => b.TopMm > 0).Select(b => b.BottomMm).Append(_halfMm).Max();
        Ties(Math.Min(top, Highest()));
        Mark[] marks =
        [
            .. _behind,
            new Group(wire) { Class = "wire" },
            new Group(beads) { Class = "beads" },
            new Group(letters) { Class = "letters" },
            .. _over,
        ];
        var extent = new Box(_frame.LeftMm, Math.Min(-_halfMm, Highest()), _frame.RightMm, beneath);
        return new LaidRow([.. marks], extent, [.. _placer.Taken], _letters.LeftOut, _wordsLeftOut);
    }

    /// <summary>The row without words round it: its wire and beads, what lies above all rows, and the letters that have room on their beads.</summary>
    internal (ImmutableArray<Mark> Row, ImmutableArray<Mark> Above, ImmutableArray<LetterOnBead> Letters) LayClose() =>
    (
        [new Group(Wire()) { Class = "wire" }, new Group([.. _beads.Where(b => !b.IsAbove).Select(Bead)]) { Class = "beads" }],
        [.. _beads.Where(b => b.IsAbove).Select(Bead)],
        _letters.PlaceOnBeads()
    );

    /// <summary>Whether beads of this row, or only those that lie above all rows, reach into a box given from this row's wire.</summary>
    internal bool Covers(Box box, bool onlyAbove) => _beads.Any(b => (b.IsAbove || !onlyAbove)
        && b.Figure.Silhouette.GreatestHalfWidthMm(box.LeftMm - b.MiddleMm, box.RightMm - b.MiddleMm) is var half && half > 0 && box.TopMm < half && box.BottomMm > -half);

    internal double HalfMm => _halfMm;

    // What of a bead is drawn on this row: all of it, unless another row goes on with it.
    private Stretch Shown(RowBead bead) =>
        new(_isFirst ? bead.Over.FromMm : Math.Max(0, bead.Over.FromMm), _isLast ? bead.Over.ToMm : Math.Min(_model.RowMm, bead.Over.ToMm));

    private double Highest() => _placer.Taken.Select(b => b.TopMm).Append(-_halfMm).Min();

    private ImmutableArray<Mark> Wire()
    {
        var pen = new Pen(_style.Inks.Steel, Math.Max(0.3, _model.Reckoned.Piece.Wire.WireMm * _frame.Scale));
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new Line(new Point(_frame.X(_row.Wire.FromMm), 0), new Point(_frame.X(_row.Wire.ToMm), 0), pen));
        if (_isFirst) marks.AddRange(End(_model.Ends.Start, _frame.X(_model.StartMm), -1, pen));
        if (_isLast) marks.AddRange(End(_model.Ends.Finish, _frame.X(_model.FinishMm), 1, pen));
        return marks.ToImmutable();
    }

    private IEnumerable<Mark> End(WireEnd end, double x, int way, Pen pen) =>
        EndFigure.Of(end, _model.Reckoned.Piece.Wire.WireMm, _frame.Scale, x, way, pen, _style.Inks);

    internal static double EndReachMm(WireEnd end, double wireMm) => end.OutsideMm(wireMm) ?? end.InsideMm;

    private ImmutableArray<Mark> Beads()
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        foreach (var bead in _beads.Where(b => !b.IsAbove)) marks.Add(Bead(bead));
        foreach (var bead in _beads.Where(b => b.IsAbove)) marks.Add(Bead(bead));
        return marks.ToImmutable();
    }

    private Group Bead(DrawnBead drawn)
    {
        var (bead, figure, x, _) = drawn;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var at = new Point(x, 0);
        marks.Add(new Stamp(figure.Of(bead.Look), at));
        if (figure.Bead.Description.Seat is { } seat) marks.Add(Seat(figure, seat.LengthMm * _frame.Scale / 2, at));
        if (bead.Index == _model.FocalIndex)
            marks.Add(new Drawn(figure.OutlineOf(bead.Look).Moved(x, 0), Paint.Lined(_style.Inks.Accent, 0.5)));
        var whole = marks.ToImmutable();

        // What stands over an edge where the next row goes on is drawn there; here it is only hinted at.
        var (left, right) = (bead.Over.FromMm < 0 && !_isFirst, bead.Over.ToMm > _model.RowMm && !_isLast);
        if (left || right)
        {
            var tall = figure.Silhouette.HalfWidthMm + 1;
            double from = left ? _frame.LeftMm : -_frame.PageMm, to = right ? _frame.RightMm : 2 * _frame.PageMm;
            var hint = new Drawn(figure.OutlineOf(bead.Look).Moved(x, 0), Paint.Lined(figure.EdgePen with { WidthMm = 0.14, DashesMm = [0.7, 0.6] }));
            whole =
            [
                new Group([hint]) { Clip = Outline.Together(Outside(left, right, tall)) },
                new Group(whole) { Clip = Outline.Rectangle(new Box(from, -tall, to, tall)) },
            ];
        }
        var number = (bead.Index + 1).ToString(CultureInfo.InvariantCulture);
        var turn = bead.Turn.ToString(CultureInfo.InvariantCulture);
        return new Group(whole)
        {
            Id = bead.IsHome ? "bead-" + number : null,
            OfBead = bead.Index,
            Class = "bead kind-" + bead.Kind.Letter.ToLowerInvariant(),
            Title = _style.Language.Fill(_style.Words.BeadTitle, ("number", number), ("turn", turn), ("name", bead.Kind.Bead.Name)),
            Data = ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal,
                [KeyValuePair.Create("bead", bead.Kind.Bead.Id), KeyValuePair.Create("index", bead.Index.ToString(CultureInfo.InvariantCulture)), KeyValuePair.Create("turn", turn)]),
        };
    }

    private IEnumerable<Outline> Outside(bool left, bool right, double tall)
    {
        if (left) yield return Outline.Rectangle(new Box(_frame.LeftMm - RowFrame.HintMm, -tall, _frame.LeftMm, tall));
        if (right) yield return Outline.Rectangle(new Box(_frame.RightMm, -tall, _frame.RightMm + RowFrame.HintMm, tall));
    }

    // Where the drilled back meets the wire, under an outline that stands over its neighbours.
    private static Drawn Seat(BeadFigure figure, double halfMm, Point at)
    {
        var half = figure.Silhouette.HalfWidthAtMm(halfMm) * 0.8;
        var pen = figure.EdgePen with { DashesMm = [0.5, 0.6], WidthMm = 0.2 };
        return new Drawn(Outline.Together([
            Outline.Line(at.Moved(-halfMm, -half), at.Moved(-halfMm, half)), Outline.Line(at.Moved(halfMm, -half), at.Moved(halfMm, half))]), Paint.Lined(pen));
    }

    internal static string NumberOf(Row row)
    {
        var first = row.Turns[0].ToString(CultureInfo.InvariantCulture);
        return row.Turns.Length == 1 ? first : first + "–" + row.Turns[^1].ToString(CultureInfo.InvariantCulture);
    }

    private void RowNumber()
    {
        var words = NumberOf(_row);
        var text = _style.Number.Centred(words, new Point(_frame.MarginMm, 0), TextAnchor.Start);
        _placer.Take(text.Box(_style.Face));
        _over.Add(text with { Class = "turn-number", Title = _style.Language.Fill(_style.Words.Turn, ("turn", words)) });
    }

    private void Ends()
    {
        var wireMm = _model.Reckoned.Piece.Wire.WireMm;
        if (_isFirst) EndWord(_style.Words.Start, _model.Ends.Start, _frame.X(_model.StartMm), -1);
        if (!_isLast) return;
        var x = _frame.X(_model.FinishMm);
        EndWord(_style.Words.Finish, _model.Ends.Finish, x, 1);
        if (_model.BareMm * _frame.Scale < 1) return;
        // Wire that is left over runs on past the end loop, as far as the row does.
        var from = x + EndReachMm(_model.Ends.Finish, wireMm) * _frame.Scale;
        var to = Math.Min(from + _model.BareMm * _frame.Scale, _frame.PageMm - _frame.MarginMm);
        if (to - from < 1) return;
        _behind.Add(new Line(new Point(from, 0), new Point(to, 0), new Pen(_style.Inks.Steel, 0.3) { DashesMm = [1.2, 0.9] }));
        var words = _style.Language.Fill(_style.Words.BareWire, ("length", _style.Short(_model.BareMm)));
        Words(words, _style.Small, (from + to) / 2, -0.6, upwards: true, _halfMm + 6, "bare-wire");
    }

    private void EndWord(string words, WireEnd end, double x, int way)
    {
        var reach = EndReachMm(end, _model.Reckoned.Piece.Wire.WireMm) * _frame.Scale;
        var half = end.IsTurned ? reach / 2 : 1;
        var deep = EndFigure.DepthMm(end, _model.Reckoned.Piece.Wire.WireMm, _frame.Scale);
        _placer.Take(new Box(Math.Min(x, x + way * reach), -half, Math.Max(x, x + way * reach), deep));
        double middle = x + way * reach / 2, width = _style.Small.WidthMm(words) / 2;
        var near = Math.Max(deep, _letters.DepthMm(middle - width, middle + width)) + 0.5;
        // Beside letters that name beads it needs more air than they among themselves, where there is room for it.
        const double airMm = 0.8;
        if (Words(words, _style.Small, middle, near, upwards: false, near + 12, "wire-end", airMm) is null) Words(words, _style.Small, middle, near, upwards: false, near + 12, "wire-end");
    }

    // Names of groups over their beads; gives the height that is then in use.
    private double Groups()
    {
        if (_row.Groups.IsEmpty) return -_halfMm;
        var line = -_halfMm - BracketGapMm;
        var pen = new Pen(_style.Inks.Quiet, 0.2);
        foreach (var group in _row.Groups)
        {
            double from = _frame.X(group.Over.FromMm) + 0.3, to = Math.Max(_frame.X(group.Over.FromMm) + 0.4, _frame.X(group.Over.ToMm) - 0.3);
            var bracket = new OutlineBuilder();
            if (group.Begins) bracket.Move(new(from, line + BracketMm)).Line(new(from, line)); else bracket.Move(new(from, line));
            bracket.Line(new(to, line));
            if (group.Ends) bracket.Line(new(to, line + BracketMm));
            _over.Add(new Drawn(bracket.Make(), Paint.Lined(pen)) { Class = "group-bracket", Title = group.Name, OfBead = group.FirstBead });
            _placer.Take(new Box(from, line, to, line + 0.1));
        }
        foreach (var group in _row.Groups.Where(g => g.IsHome))
        {
            double from = _frame.X(group.Over.FromMm), to = _frame.X(group.Over.ToMm);
            var name = _style.Face.Shortened(group.Name, _style.Small.SizeMm, _style.Small.Weight, Math.Max(to - from, 26));
            Words(name, _style.Small, (from + to) / 2, line - 0.5, upwards: true, -line + 8, "group-name", ofBead: group.FirstBead);
        }
        return Highest();
    }

    // How far the focal lies from the top of the wrist, drawn as a measure.
    private double Focal(double top)
    {
        if (_model.Reckoned.Focal is not { } focal || !_row.Beads.Any(b => b.Index == focal.Index && b.IsHome)) return top;
        var off = _style.Short(Math.Abs(focal.OffMm));
        if (Math.Abs(focal.OffMm) < 0.5) return top;
        var x = _frame.X(_row.Beads.First(b => b.Index == focal.Index).Over.MiddleMm);
        var line = top - 1.6;
        var (from, to) = (Math.Min(x, _frame.TopOfWristMm), Math.Max(x, _frame.TopOfWristMm));
        _over.Add(new Drawn(Outline.Together([
            Outline.Line(new(from, line), new(to, line)), Outline.Line(new(from, line - 0.8), new(from, line + 0.8)),
            Outline.Line(new(to, line - 0.8), new(to, line + 0.8))]), Paint.Lined(_style.Inks.Accent, 0.25))
        { Class = "focal-off" });
        _placer.Take(new Box(from - 0.2, line - 0.8, to + 0.2, line + 0.8));
        Words(_style.Language.Fill(focal.OffMm > 0 ? _style.Words.PastTop : _style.Words.BeforeTop, ("off", off)), _style.Tie, (from + to) / 2,
            line - 1.2, upwards: true, -line + 8, "focal-off");
        return Highest();
    }

    // Bars between this row and the one above it, where like lies over like.
    private void Ties(double top)
    {
        if (_row.Ties.IsEmpty) return;
        var bottom = top - 1.5;
        var bars = new List<(RowTie Tie, Box Box)>();
        // What of a bar goes on over the edge and is no longer than it is high is a speck or reads as a nought, not as a bar.
        foreach (var tie in _row.Ties.Where(t => t.IsHome || t.Over.LengthMm * _frame.Scale > TieBar.HeightMm))
        {
            var box = new Box(_frame.X(tie.Over.FromMm), bottom - TieBar.HeightMm, Math.Max(_frame.X(tie.Over.ToMm), _frame.X(tie.Over.FromMm) + 0.4), bottom);
            bars.Add((tie, box));
            _placer.Take(box);
            _over.Add(TieBar.Draw(_style, box, tie.IsWished) with { Title = TieText(_style, tie, isLong: true) });
        }
        foreach (var (tie, box) in bars)
            if (tie.IsHome && !TieWords(tie, box)) _wordsLeftOut++;
    }

    private bool TieWords(RowTie tie, Box bar)
    {
        var lettering = tie.IsWished ? _style.CalmTie : _style.Tie;
        var far = -bar.TopMm + 0.8 + 3 * (lettering.BoxMm + 0.4);
        foreach (var words in new[] { TieText(_style, tie, _hasLongTieWords), _style.Short(tie.OffSquareMm) })
            if (Words(words, lettering, bar.Middle.XMm, bar.TopMm - 0.4, upwards: true, far, "tie-words") is not null) return true;
        return false;
    }

    private static string TieText(Style style, RowTie tie, bool isLong)
    {
        var name = style.Face.Shortened(tie.Name, style.Tie.SizeMm, style.Tie.Weight, 30);
        return tie.OffSquareMm < 0.5
            ? style.Language.Fill(style.Words.Square, ("name", name))
            : style.Language.Fill(isLong ? style.Words.OffSquare : style.Words.OffShort, ("name", name), ("off", style.Short(tie.OffSquareMm)));
    }

    /// <summary>Whether the longer words of every place that lines up stand side by side over their bars. If not, all of the picture has the shorter ones.</summary>
    internal static bool HasRoomForLongTieWords(Style style, TurnRowsModel model, RowFrame frame)
    {
        const double betweenMm = 2;
        foreach (var row in model.Rows)
        {
            var taken = double.MinValue;
            foreach (var tie in row.Ties.Where(t => t.IsHome))
            {
                var width = style.Tie.WidthMm(TieText(style, tie, isLong: true));
                var left = Math.Max(frame.MarginMm, Math.Min(frame.X(tie.Over.MiddleMm) - width / 2, frame.PageMm - frame.MarginMm - width));
                if (left < taken) return false;
                taken = left + width + betweenMm;
            }
        }
        return true;
    }

    // Places words and draws them with their leader; how far they may go is counted from the wire. Gives their box, or null when there was no room.
    private Box? Words(string words, Lettering lettering, double middle, double near, bool upwards, double farFromWireMm, string sort, double airMm = 0, int? ofBead = null)
    {
        if (words.Length == 0) return null;
        var wish = new LabelWish(middle, lettering.WidthMm(words) + 2 * airMm, lettering.BoxMm, near, upwards ? -farFromWireMm : farFromWireMm, upwards)
        { LeastMm = _frame.MarginMm - airMm, MostMm = _frame.PageMm - _frame.MarginMm + airMm };
        if (_placer.Place(wish) is not { } place) return null;
        if (place.Leader is { } leader) _over.Add(new Line(leader.From, leader.To, new Pen(lettering.Ink, 0.14)) { OfBead = ofBead });
        _over.Add(lettering.In(words, place.Box) with { Class = sort, OfBead = ofBead });
        return place.Box;
    }
}
