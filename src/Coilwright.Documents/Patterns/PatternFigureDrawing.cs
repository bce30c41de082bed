using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.TurnRows;

namespace Coilwright.Documents.Patterns;

/// <summary>The figure of a step: its new beads in full on the wire, those before them pale, which way she strings, key letters, a bar of length, and where on the coil she is, seen end-on.</summary>
/// <remarks>
/// <para>Beads stand straight and as far apart as on the worn wire, from left to right in the order they are strung; what goes on after them is bare wire with an arrow. Drawn as large as
/// the width lets it, never larger than true size; what is longer runs on in further lines.</para>
/// <para>End-on the coil is seen from the side of the starting end, the top of the wrist above, its turns drawn inside one another so that each shows.</para>
/// </remarks>
public sealed class PatternFigureDrawing
{
    // Wire with the beads before, to see where one goes on.
    private const double BeforeMm = 20;

    // Sizes that beads are drawn at, of true size: few, so that a document's figures share their symbols. A step that is longer at the least of them goes on in a second line.
    private static readonly double[] Scales = [1, 0.85, 0.7, 0.6, 0.5, 0.42];

    private const double AirMm = 0.8, ArrowMm = 5, EndOnMm = 19, BetweenMm = 3, BarMm = 10;

    private readonly Reckoned _reckoned;
    private readonly Style _style;
    private readonly double _widthMm;
    private readonly ImmutableArray<int> _nth;
    private readonly Dictionary<(int Kind, double Scale), (KindCount Kind, BeadFigure Figure)> _figures = [];
    private readonly Dictionary<int, (KindCount Kind, int Nth)> _kinds;
    private readonly ImmutableArray<Pattern> _patterns;

    /// <summary>Makes ready to draw the figures of a piece.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="options">How they are drawn; its width is the figures' width, 90 mm when it has none.</param>
    public PatternFigureDrawing(Reckoned reckoned, PictureOptions options)
    {
        _reckoned = reckoned;
        _widthMm = options.WidthMm ?? 90;
        _style = new Style(new TurnRowsOptions { Language = options.Language, Typeface = options.Typeface, Greyscale = options.Greyscale });
        _nth = NthOfKind.Of(reckoned.Piece.Order.Kinds);
        _patterns = Likenesses.Patterns([.. reckoned.Counts.Select(k => k.Bead)]);
        _kinds = reckoned.Counts.Select((k, i) => (k, i)).ToDictionary(k => k.k.KindIndex, k => (k.k, k.i));
    }

    /// <summary>Draws a step that strings beads.</summary>
    /// <param name="strung">The step.</param>
    public Picture Of(StringingStep strung)
    {
        var lie = _reckoned.Lie;
        var room = _widthMm - EndOnMm - BetweenMm - ArrowMm - 2 * AirMm;
        var before = strung.First;
        while (before > 0 && lie.BeadMiddleMm(strung.First) - lie.BeadMiddleMm(before - 1) < BeforeMm) before--;
        var (first, last) = (before, strung.End - 1);
        double Long(int from, int to) => Ends(from, to) is var (left, right) ? right - left : 0;
        var scale = Scales.FirstOrDefault(s => Long(first, last) * s <= room, Scales[^1]);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var y = AirMm;
        for (var from = first; from <= last;)
        {
            var to = from;
            while (to < last && Long(from, to + 1) * scale <= room) to++;
            y = Row(from, to, strung, scale, y, to == last, marks) + 1.2;
            from = to + 1;
        }
        y = Bar(scale, y, marks);
        var endOn = EndOn(strung);
        var high = Math.Max(y, EndOnMm + 3.2);
        marks.Add(new Group(endOn) { MoveRightMm = _widthMm - EndOnMm, MoveDownMm = Math.Max(0, (y - EndOnMm - 3.2) / 2), Class = "end-on" });
        return new Picture(_widthMm, high, "", _style.Language.Fill(_style.Language.Pattern.FigureAlt, ("first", strung.First + 1), ("last", strung.End), ("before", strung.First > 0 ? strung.First : null)),
            marks.ToImmutable())
        { Language = _style.Language.Code };
    }

    // How far some beads reach: not the outer two's ends, where a focal overhangs them.
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

    // One line of beads; gives where it ends.
    private double Row(int from, int to, StringingStep strung, double scale, double topMm, bool isLast, ImmutableArray<Mark>.Builder marks)
    {
        var ends = Ends(from, to);
        var shift = AirMm - ends.Left * scale;
        double half = 0;
        for (var i = from; i <= to; i++) half = Math.Max(half, FigureOf(i, scale).Figure.Silhouette.HalfWidthMm);
        ImmutableArray<DrawnBead> drawn =
        [
            .. Enumerable.Range(from, to - from + 1).Select(i =>
            {
                var (kind, figure) = FigureOf(i, scale);
                var middle = _reckoned.Lie.BeadMiddleMm(i) * scale + shift;
                return new DrawnBead(new RowBead(i, _nth[i], kind, new Stretch(middle - figure.Silhouette.HalfLengthMm, middle + figure.Silhouette.HalfLengthMm), 1, true), figure, middle, middle);
            }),
        ];
        var row = ImmutableArray.CreateBuilder<Mark>();
        var wire = new Pen(_style.Inks.Steel, Math.Max(0.3, _reckoned.Piece.Wire.WireMm * scale));
        double left = ends.Left * scale + shift, right = ends.Right * scale + shift;
        row.Add(new Line(new Point(from == 0 ? left : 0, 0), new Point(right + (isLast ? ArrowMm - 1.2 : ArrowMm), 0), wire));
        if (from == 0) row.Add(new Line(new Point(left, -2.2), new Point(left, 2.2), new Pen(_style.Inks.Accent, 0.5)) { Class = "start" });
        if (isLast)
            row.Add(new Polygon([new(right + ArrowMm, 0), new(right + ArrowMm - 2.6, -1.3), new(right + ArrowMm - 2.6, 1.3)], Paint.Filled(_style.Inks.Accent)) { Class = "arrow" });
        foreach (var bead in drawn.OrderBy(b => b.IsAbove))
            row.Add(bead.Bead.Index < strung.First ? Pale(bead) : new Stamp(bead.Figure.Of(bead.Bead.Look), new Point(bead.MiddleMm, 0)) { Class = "new" });
        var placer = new LabelPlacer();
        row.AddRange(new RowLetters(_style, [.. drawn.Where(b => b.Bead.Index >= strung.First)], placer).Place());
        var bottom = placer.Taken.Select(b => b.BottomMm).Append(half).Max();
        marks.Add(new Group(row.ToImmutable()) { MoveDownMm = topMm + half });
        return topMm + half + bottom;
    }

    // What is there already: its outline alone, hardly inked.
    private static Group Pale(DrawnBead bead)
    {
        var paper = new Core.Colour.Srgb(255, 255, 255);
        var paint = new Paint(bead.Figure.Ground.Mixed(paper, 0.78), bead.Figure.EdgePen with { Ink = bead.Figure.EdgePen.Ink.Mixed(paper, 0.6) });
        return new Group([new Drawn(bead.Figure.OutlineOf(bead.Bead.Look), paint)]) { MoveRightMm = bead.MiddleMm, Class = "done" };
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
            return new Point(middle + radius * Math.Sin(angle), 3.2 + middle - radius * Math.Cos(angle));
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
