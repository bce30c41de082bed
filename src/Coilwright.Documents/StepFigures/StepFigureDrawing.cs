using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.TurnRows;

namespace Coilwright.Documents.StepFigures;

/// <summary>The figure of a step: its new beads in full on the wire, those before them pale, key letters, and where it is asked for the way she strings, a bar of length and the coil seen end-on.</summary>
/// <remarks>
/// <para>Beads stand straight and as far apart as on the worn wire, from left to right in the order they are strung; before the first of all stands the finished end of the wire, after the last
/// bare wire goes on. What is longer than the figure is wide runs on in further lines.</para>
/// <para>End-on the coil is seen from the side of the starting end, the top of the wrist above, its turns drawn inside one another so that each shows.</para>
/// </remarks>
public sealed class StepFigureDrawing
{
    // Wire with the beads before, to see where one goes on: so much of it, and no more of the width, so that what is new fills most.
    private const double BeforeMm = 20, BeforeShare = 0.3;

    private const double AirMm = 0.8, ArrowMm = 5, EndOnMm = 17, TopWordMm = 3.2, BetweenMm = 3, BarMm = 10, LinesApartMm = 1.2;

    private readonly Reckoned _reckoned;
    private readonly StepFigureOptions _options;
    private readonly Style _style;
    private readonly ImmutableArray<int> _nth;
    private readonly Dictionary<(int Kind, double Scale), (KindCount Kind, BeadFigure Figure)> _figures = [];
    private readonly Dictionary<int, (KindCount Kind, int Nth)> _kinds;
    private readonly ImmutableArray<Pattern> _patterns;

    /// <summary>Makes ready to draw the figures of a piece.</summary>
    public StepFigureDrawing(Reckoned reckoned, StepFigureOptions options)
    {
        (_reckoned, _options) = (reckoned, options);
        _style = new Style(new TurnRowsOptions { Language = options.Language, Typeface = options.Typeface, Greyscale = options.Greyscale }, options.Letters);
        _nth = NthOfKind.Of(reckoned.Piece.Order.Kinds);
        _patterns = Likenesses.Patterns([.. reckoned.Counts.Select(k => k.Bead)]);
        _kinds = reckoned.Counts.Select((k, i) => (k, i)).ToDictionary(k => k.k.KindIndex, k => (k.k, k.i));
    }

    /// <summary>Draws a step that strings beads.</summary>
    /// <param name="strung">The step.</param>
    /// <param name="title">What it is, in words.</param>
    public Picture Of(StringingStep strung, string title = "")
    {
        var room = _options.WidthMm - (_options.EndOn ? EndOnMm + BetweenMm : 0) - ArrowMm - 2 * AirMm;
        var last = strung.End - 1;
        var before = strung.First;
        while (before > 0 && _reckoned.Lie.BeadMiddleMm(strung.First) - _reckoned.Lie.BeadMiddleMm(before - 1) < BeforeMm) before--;
        var scale = _options.Scales.FirstOrDefault(s => LongMm(before, last, s) <= room, _options.Scales[^1]);
        var first = FirstShown(strung, before, scale, room);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        double y = AirMm, right = 0;
        for (var from = first; from <= last;)
        {
            var to = from;
            while (to < last && LongMm(from, to + 1, scale) <= room) to++;
            var (bottom, reach) = Row(from, to, strung, scale, y, to == last, marks);
            (y, right) = (bottom + LinesApartMm, Math.Max(right, reach));
            from = to + 1;
        }
        y = (_options.Bar ? Bar(scale, y, marks) : y - LinesApartMm + AirMm) + _options.FootMm;
        if (_options.EndOn)
        {
            marks.Add(new Group(EndOn(strung)) { MoveRightMm = _options.WidthMm - EndOnMm, MoveDownMm = Math.Max(0, (y - EndOnMm - TopWordMm) / 2), Class = "end-on" });
            y = Math.Max(y, EndOnMm + TopWordMm);
        }
        var said = _style.Language.Fill(_style.Language.Pattern.FigureAlt, ("first", strung.First + 1), ("last", strung.End), ("before", strung.First > 0 ? strung.First : null));
        return new Picture(_options.FillsWidth ? _options.WidthMm : right + AirMm, y, title, said, marks.ToImmutable()) { Language = _style.Language.Code };
    }

    // Where what is new leaves too little of its line, less is shown of what is before it.
    private int FirstShown(StringingStep strung, int before, double scale, double room)
    {
        var alone = LongMm(strung.First, strung.End - 1, scale);
        var most = alone <= room ? room : alone;
        while (before < strung.First && (LongMm(before, strung.End - 1, scale) > most + (alone <= room ? 0 : BeforeShare * room)
            || LongMm(before, strung.First - 1, scale) > BeforeShare * room)) before++;
        return before;
    }

    // How long some beads are as drawn, with the wire's end before the first of all.
    private double LongMm(int from, int to, double scale)
    {
        var (left, right) = Ends(from, to);
        return (right - left) * scale + (from == 0 ? StartMm(scale) : 0);
    }

    private double StartMm(double scale) => RowComposition.EndReachMm(_reckoned.Piece.Ends.Start, _reckoned.Piece.Wire.WireMm) * scale;

    // How far some beads reach, a focal that overhangs the outer two among them, mm of true size.
    private (double Left, double Right) Ends(int from, int to)
    {
        double left = double.MaxValue, right = double.MinValue;
        for (var i = from; i <= to; i++)
        {
            var half = FigureOf(i, 1).Figure.Silhouette.HalfLengthMm;
            (left, right) = (Math.Min(left, _reckoned.Lie.BeadMiddleMm(i) - half), Math.Max(right, _reckoned.Lie.BeadMiddleMm(i) + half));
        }
        return (left, right);
    }

    private (KindCount Kind, BeadFigure Figure) FigureOf(int bead, double scale)
    {
        var kind = _reckoned.Piece.Order.Kinds[bead];
        if (_figures.TryGetValue((kind, scale), out var figure)) return figure;
        var (count, nth) = _kinds[kind];
        var name = string.Create(CultureInfo.InvariantCulture, $"step-{count.Letter.ToLowerInvariant()}-{scale * 100:0}");
        return _figures[(kind, scale)] = (count, new BeadFigure(count.Bead, name, scale, _patterns[nth], _style.Inks));
    }

    // One line of beads; gives where it ends below and at the right.
    private (double BottomMm, double RightMm) Row(int from, int to, StringingStep strung, double scale, double topMm, bool isLast, ImmutableArray<Mark>.Builder marks)
    {
        var ends = Ends(from, to);
        var start = from == 0 ? StartMm(scale) : 0;
        var shift = AirMm + start - ends.Left * scale;
        var (finish, wireMm) = (_reckoned.Piece.Ends.Start, _reckoned.Piece.Wire.WireMm);
        var half = from == 0 ? EndFigure.DepthMm(finish, wireMm, scale) : 0;
        for (var i = from; i <= to; i++) half = Math.Max(half, FigureOf(i, scale).Figure.Silhouette.HalfWidthMm);
        ImmutableArray<DrawnBead> drawn =
        [
            .. Enumerable.Range(from, to - from + 1).Select(i =>
            {
                var (kind, figure) = FigureOf(i, scale);
                var middle = _reckoned.Lie.BeadMiddleMm(i) * scale + shift;
                return new DrawnBead(new RowBead(i, _nth[i], kind, new Stretch(middle - figure.Silhouette.HalfLengthMm, middle + figure.Silhouette.HalfLengthMm), 1, IsHome: i >= strung.First), figure, middle, middle);
            }),
        ];
        var row = ImmutableArray.CreateBuilder<Mark>();
        var wire = new Pen(_style.Inks.Steel, Math.Max(0.3, wireMm * scale));
        double left = ends.Left * scale + shift, right = ends.Right * scale + shift, end = right + (isLast && _options.Arrow ? ArrowMm - 1.2 : ArrowMm);
        row.Add(new Line(new Point(from == 0 ? left : wire.WidthMm / 2, 0), new Point(end, 0), wire) { Class = "wire" });
        if (from == 0) row.Add(new Group([.. EndFigure.Of(finish, wireMm, scale, left, -1, wire, _style.Inks)]) { Class = "start" });
        if (isLast && _options.Arrow)
            row.Add(new Polygon([new(right + ArrowMm, 0), new(right + ArrowMm - 2.6, -1.3), new(right + ArrowMm - 2.6, 1.3)], Paint.Filled(_style.Inks.Accent)) { Class = "arrow" });
        foreach (var bead in drawn.OrderBy(b => b.IsAbove))
            row.Add(bead.Bead.Index < strung.First ? Pale(bead) : new Stamp(bead.Figure.Of(bead.Bead.Look), new Point(bead.MiddleMm, 0)) { Class = "new", OfBead = bead.Bead.Index });
        var placer = new LabelPlacer();
        // What is done carries no letter, but is in the way of those beneath its neighbours.
        row.AddRange(new RowLetters(_style, drawn, placer).Place());
        // Words broader than the first bead may reach out at the left.
        var outside = Math.Max(0, -placer.Taken.Select(b => b.LeftMm).Append(0).Min());
        marks.Add(new Group(row.ToImmutable()) { MoveRightMm = outside, MoveDownMm = topMm + half, Class = "row" });
        return (topMm + half + placer.Taken.Select(b => b.BottomMm).Append(half).Max(), outside + placer.Taken.Select(b => b.RightMm).Append(right + ArrowMm).Max());
    }

    // What is there already: its outline alone, hardly inked.
    private static Group Pale(DrawnBead bead)
    {
        var paper = new Core.Colour.Srgb(255, 255, 255);
        var paint = new Paint(bead.Figure.Ground.Mixed(paper, 0.78), bead.Figure.EdgePen with { Ink = bead.Figure.EdgePen.Ink.Mixed(paper, 0.6) });
        return new Group([new Drawn(bead.Figure.OutlineOf(bead.Bead.Look), paint)]) { MoveRightMm = bead.MiddleMm, Class = "done", OfBead = bead.Bead.Index };
    }

    private double Bar(double scale, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        var (left, right, line) = (AirMm, AirMm + BarMm * scale, topMm + 1.4);
        marks.Add(new Drawn(Outline.Together([Outline.Line(new(left, line), new(right, line)), Outline.Line(new(left, line - 0.8), new(left, line + 0.8)),
            Outline.Line(new(right, line - 0.8), new(right, line + 0.8))]), Paint.Lined(new Pen(_style.Inks.Quiet, 0.22)))
        { Class = "bar" });
        var said = _style.Caption.Centred(_style.Short(BarMm), new Point(right + 1.2, line), TextAnchor.Start);
        marks.Add(said with { Class = "bar-length" });
        return line + _style.Caption.BoxMm / 2 + 0.4;
    }

    // The coil from the side of its starting end: wire to come fine, wire that is strung stronger, this step's strongest.
    private ImmutableArray<Mark> EndOn(StringingStep strung)
    {
        var lie = _reckoned.Lie;
        const double middle = EndOnMm / 2, most = EndOnMm / 2 - 1;
        var turns = Math.Max(1, lie.Turns);
        // Turns apart by a line and a half, closer where there are many.
        var apart = Math.Min(1.5, most / 2 / turns);
        Point At(double along)
        {
            var angle = lie.AngleDegAt(along) * Math.PI / 180;
            var radius = most - apart * lie.TurnsAt(along);
            return new Point(middle + radius * Math.Sin(angle), TopWordMm + middle - radius * Math.Cos(angle));
        }
        Drawn Stretch(double from, double to, Pen pen, string sort)
        {
            var steps = Math.Max(2, (int)Math.Ceiling((to - from) / 3));
            return new Drawn(Outline.Through(Enumerable.Range(0, steps + 1).Select(s => At(from + (to - from) * s / steps)), closed: false), Paint.Lined(pen with { Ends = LineEnds.Round })) { Class = sort };
        }
        double from = lie.StartsMm[strung.First], to = lie.StartsMm[strung.End - 1] + lie.SharesMm[strung.End - 1];
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(_style.Caption.Under(_style.Language.Pattern.Top, middle, -0.4, TextAnchor.Middle));
        if (to < lie.BeadedMm) marks.Add(Stretch(to, lie.BeadedMm, new Pen(_style.Inks.Hairline, 0.3), "to-come"));
        if (from > 0) marks.Add(Stretch(0, from, new Pen(_style.Inks.Steel, 0.45), "strung"));
        marks.Add(Stretch(from, to, new Pen(_style.Inks.Accent, Math.Min(1.1, apart * 0.8)), "here"));
        marks.Add(new Circle(At(0), 0.8, Paint.Filled(_style.Inks.Ink)) { Class = "start-dot" });
        return marks.ToImmutable();
    }
}
