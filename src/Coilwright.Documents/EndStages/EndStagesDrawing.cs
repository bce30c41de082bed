using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Findings;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.TurnRows;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.EndStages;

/// <summary>How the ends of the wire are finished, in stages, drawn larger than they are: one new thing in each.</summary>
/// <remarks>The wire's lengths are the piece's own, a practice bend's where one was measured; every stage shows the same length of wire.</remarks>
public static class EndStagesDrawing
{
    private const double OwnWidthMm = 190;
    private const double LeastPanelMm = 36;
    private const double BetweenMm = 5;

    /// <summary>Draws the stages of both ends, or of one where they are alike.</summary>
    public static Picture Of(Reckoned reckoned, PictureOptions? options = null)
    {
        options ??= new PictureOptions();
        var style = new PictureStyle(options);
        var margin = options.MarginMm;
        var width = Math.Max(LeastPanelMm + 2 * margin, options.WidthMm ?? OwnWidthMm);
        var words = style.Language.Pictures;
        var ends = reckoned.Piece.Ends;
        var marks = ImmutableArray.CreateBuilder<Mark>();
        (string Heading, WireEnd End)[] parts = ends.Start == ends.Finish ? [(words.BothEnds, ends.Start)] : [(words.StartEnd, ends.Start), (words.FinishEnd, ends.Finish)];
        var y = margin;
        foreach (var (heading, end) in parts)
        {
            marks.Add(style.Value.Under(style.Face.Shortened(heading, style.Value.SizeMm, TextWeight.Regular, width - 2 * margin), margin, y) with { Class = "heading" });
            y = Stages(style, end, reckoned.Piece.Wire.WireMm, width, margin, y + style.Value.LineMm + 1, marks) + 3;
        }
        y += margin - 3;
        marks.InsertRange(0, style.Paper(options, width, y));
        var said = style.Language.Fill(words.Ends, ("title", reckoned.Piece.Title));
        return new Picture(width, y, reckoned.Piece.Title, said, marks.ToImmutable()) { Language = style.Language.Code };
    }

    // Panels side by side as far as the width goes, each with its number, its figure and its words.
    private static double Stages(PictureStyle style, WireEnd end, double wireMm, double widthMm, double marginMm, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        var figures = end.IsTurned ? LoopFigures.Of(style, end, wireMm) : CapFigures.Of(style, end, wireMm);
        var columns = Math.Clamp((int)((widthMm - 2 * marginMm + BetweenMm) / (LeastPanelMm + BetweenMm)), 1, figures.Length);
        // Two and two rather than three and one.
        if (columns == 3 && figures.Length == 4) columns = 2;
        var panel = (widthMm - 2 * marginMm - (columns - 1) * BetweenMm) / columns;
        var number = new Lettering(style.Face, 3.4, style.Inks.Accent, TextWeight.Bold);
        var y = topMm;
        for (var row = 0; row * columns < figures.Length; row++)
        {
            var tall = 0.0;
            for (var c = 0; c < columns && row * columns + c < figures.Length; c++)
            {
                var (draw, said) = figures[row * columns + c];
                var left = marginMm + c * (panel + BetweenMm);
                marks.Add(number.Under((row * columns + c + 1).ToString(CultureInfo.InvariantCulture), left, y) with { Class = "stage-number" });
                marks.Add(new Group([.. draw(panel)]) { MoveRightMm = left, MoveDownMm = y + StageFigure.WireMm, Class = "stage" });
                var text = y + StageFigure.HeightMm + 1;
                foreach (var line in style.Face.Lines(said, style.Body.SizeMm, TextWeight.Regular, panel))
                {
                    marks.Add(style.Body.Under(line, left, text) with { Class = "stage-words" });
                    text += style.Body.LineMm;
                }
                tall = Math.Max(tall, text - y);
            }
            y += tall + 4;
        }
        return y - 4;
    }
}

/// <summary>Measures that all figures of stages share: the wire lies level, its bead at the left.</summary>
internal static class StageFigure
{
    /// <summary>Height of a figure.</summary>
    internal const double HeightMm = 24;

    /// <summary>Where the wire lies, from the figure's top.</summary>
    internal const double WireMm = 14;

    /// <summary>How far the end bead stands into the figure.</summary>
    internal const double BeadMm = 7;

    /// <summary>The end bead's last part, with the wire coming out of its hole.</summary>
    internal static IEnumerable<Mark> Bead(PictureStyle style)
    {
        var fill = style.Inks.Plain;
        var edge = new Pen(fill.Mixed(style.Inks.Ink, 0.6), 0.25);
        var body = new OutlineBuilder().Move(new(0, -6.5)).Line(new(2.5, -6.5))
            .Curve(new(5.5, -6.2), new(BeadMm, -3.4), new(BeadMm, 0)).Curve(new(BeadMm, 3.4), new(5.5, 6.2), new(2.5, 6.5)).Line(new(0, 6.5)).Close().Make();
        yield return new Drawn(body, Paint.Filled(fill));
        yield return new Drawn(Outline.Through([new(0, 3.6), new(5.6, 3.6), new(4.2, 5.6), new(2.5, 6.2), new(0, 6.2)]), Paint.Filled(fill.Mixed(style.Inks.Ink, 0.12)));
        // Open at the left, where the row goes on.
        yield return new Drawn(new OutlineBuilder().Move(new(0, -6.5)).Line(new(2.5, -6.5)).Curve(new(5.5, -6.2), new(BeadMm, -3.4), new(BeadMm, 0))
            .Curve(new(BeadMm, 3.4), new(5.5, 6.2), new(2.5, 6.5)).Line(new(0, 6.5)).Make(), Paint.Lined(edge));
    }

    /// <summary>A measure beneath the wire: a line with ends and its words under it.</summary>
    internal static IEnumerable<Mark> Measure(PictureStyle style, double fromMm, double toMm, double atMm, string words)
    {
        yield return new Drawn(Outline.Together([
            Outline.Line(new(fromMm, atMm), new(toMm, atMm)), Outline.Line(new(fromMm, atMm - 0.9), new(fromMm, atMm + 0.9)),
            Outline.Line(new(toMm, atMm - 0.9), new(toMm, atMm + 0.9))]), Paint.Lined(style.Inks.Accent, 0.25))
        { Class = "measure" };
        var lettering = style.Caption with { Ink = style.Inks.Accent };
        var half = lettering.WidthMm(words) / 2;
        yield return lettering.Under(words, Math.Max((fromMm + toMm) / 2, half), atMm + 1, TextAnchor.Middle) with { Class = "measure-words" };
    }

    /// <summary>An arrow's head at a place, pointing a way, degrees from right, clockwise.</summary>
    internal static Polygon Head(Point at, double deg, PictureStyle style)
    {
        var (sin, cos) = Math.SinCos(deg * Math.PI / 180);
        Point Off(double along, double across) => at.Moved(along * cos - across * sin, along * sin + across * cos);
        return new Polygon([Off(0, 0), Off(-2.1, 0.9), Off(-2.1, -0.9)], Paint.Filled(style.Inks.Accent));
    }
}

/// <summary>The stages of a turned loop, with a dangle or without.</summary>
internal static class LoopFigures
{
    internal static ImmutableArray<(Func<double, IEnumerable<Mark>> Draw, string Words)> Of(PictureStyle style, WireEnd end, double wireMm)
    {
        var words = style.Language.Pictures;
        var used = end.WireUsedMm(wireMm);
        string inside = style.Short(end.InsideMm), wire = style.Short(used);
        var fill = style.Language;
        return
        [
            (panel => [.. Wire(style, end, wireMm, panel, 0), .. StageFigure.Measure(style, StageFigure.BeadMm, StageFigure.BeadMm + used * Scale(end, wireMm, panel), 4.2, wire)],
                fill.Fill(words.LoopTrim, ("wire", wire))),
            (panel => [.. Jaws(style, end, wireMm, panel, 0.1), .. Wire(style, end, wireMm, panel, 0.1)], fill.Fill(words.LoopGrip, ("inside", inside))),
            .. end.Finish == EndFinish.Dangle
                ? ((Func<double, IEnumerable<Mark>>, string)[])
                [
                    (panel => [.. Jaws(style, end, wireMm, panel, 0.72), .. Wire(style, end, wireMm, panel, 0.72), .. Arrow(style, end, wireMm, panel, 0.72)], words.DangleRoll),
                    (panel => [.. Hung(style, end, wireMm, panel), .. Wire(style, end, wireMm, panel, 1)], fill.Fill(words.DangleHang, ("inside", inside))),
                ]
                :
                [
                    (panel => [.. Jaws(style, end, wireMm, panel, 0.58), .. Wire(style, end, wireMm, panel, 0.58), .. Arrow(style, end, wireMm, panel, 0.58)], words.LoopRoll),
                    (panel => [.. Wire(style, end, wireMm, panel, 1), .. Inside(style, end, wireMm, panel, inside)], fill.Fill(words.LoopClose, ("inside", inside))),
                ],
        ];
    }

    // As large as the panel holds the straight wire with the pliers at its tip, but the loop no taller than the figure.
    private static double Scale(WireEnd end, double wireMm, double panelMm) =>
        Math.Min((panelMm - StageFigure.BeadMm - 1) / Math.Max(end.WireUsedMm(wireMm) + 0.75 * end.InsideMm + wireMm, 1), 10 / (end.InsideMm + 2 * wireMm));

    private static (double Scale, double RadiusMm, double LengthMm) Sizes(WireEnd end, double wireMm, double panelMm)
    {
        var scale = Scale(end, wireMm, panelMm);
        return (scale, (end.InsideMm + wireMm) / 2 * scale, end.WireUsedMm(wireMm) * scale);
    }

    // So much of the wire rolled up, from its tip; closed, the loop is set straight over the hole.
    private static IEnumerable<Mark> Wire(PictureStyle style, WireEnd end, double wireMm, double panelMm, double rolled)
    {
        var (scale, radius, length) = Sizes(end, wireMm, panelMm);
        var pen = new Pen(style.Inks.Steel, Math.Max(0.5, wireMm * scale)) { Ends = LineEnds.Round };
        var builder = new OutlineBuilder();
        if (rolled >= 1)
            builder.Move(new(StageFigure.BeadMm, 0)).Arc(new(StageFigure.BeadMm + radius, 0), radius, 180, 352);
        else
        {
            var turn = rolled * 360;
            var straight = Math.Max(0, length - 2 * Math.PI * radius * rolled);
            builder.Move(new(StageFigure.BeadMm, 0)).Line(new(StageFigure.BeadMm + straight, 0));
            if (turn > 0) builder.Arc(new(StageFigure.BeadMm + straight, -radius), radius, 90, -turn);
        }
        yield return new Drawn(builder.Make(), Paint.Lined(pen)) { Class = "stage-wire" };
        foreach (var mark in StageFigure.Bead(style)) yield return mark;
    }

    private static Point JawMiddle(WireEnd end, double wireMm, double panelMm, double rolled)
    {
        var (_, radius, length) = Sizes(end, wireMm, panelMm);
        return new Point(StageFigure.BeadMm + Math.Max(0, length - 2 * Math.PI * radius * rolled), -radius);
    }

    // Both jaws seen from their tips: one inside the loop to be, the other holding the tip against it.
    private static IEnumerable<Mark> Jaws(PictureStyle style, WireEnd end, double wireMm, double panelMm, double rolled)
    {
        var (scale, radius, _) = Sizes(end, wireMm, panelMm);
        var middle = JawMiddle(end, wireMm, panelMm, rolled);
        var jaw = new Paint(style.Inks.Steel.Mixed(style.Inks.Paper, 0.6), new Pen(style.Inks.Steel, 0.2));
        var tip = (90 - rolled * 360) * Math.PI / 180;
        double inner = end.InsideMm / 2 * scale, outer = radius + wireMm / 2 * scale + inner * 0.85;
        yield return new Circle(middle, inner, jaw) { Class = "jaw" };
        yield return new Circle(middle.Moved(outer * Math.Cos(tip), outer * Math.Sin(tip)), inner * 0.85, jaw) { Class = "jaw" };
    }

    private static IEnumerable<Mark> Arrow(PictureStyle style, WireEnd end, double wireMm, double panelMm, double rolled)
    {
        var (scale, radius, _) = Sizes(end, wireMm, panelMm);
        var middle = JawMiddle(end, wireMm, panelMm, rolled);
        var round = radius + wireMm * scale + 2;
        // Over the right shoulder of the loop, the way it is rolled: anticlockwise as seen.
        yield return new Drawn(Outline.Arc(middle, round, 55, -75), Paint.Lined(style.Inks.Accent, 0.35)) { Class = "arrow" };
        var head = middle.Moved(round * Math.Cos(-22 * Math.PI / 180), round * Math.Sin(-22 * Math.PI / 180));
        yield return StageFigure.Head(head, -112, style);
    }

    // What hangs reaches to the figure's foot, however long it is.
    private static IEnumerable<Mark> Hung(PictureStyle style, WireEnd end, double wireMm, double panelMm)
    {
        var (scale, radius, _) = Sizes(end, wireMm, panelMm);
        return EndFigure.Dangle(new Point(StageFigure.BeadMm + radius, radius), Math.Min((end.DangleMm ?? 10) * scale, StageFigure.HeightMm - StageFigure.WireMm - radius - 0.5), style.Inks);
    }

    private static IEnumerable<Mark> Inside(PictureStyle style, WireEnd end, double wireMm, double panelMm, string words)
    {
        var (scale, radius, _) = Sizes(end, wireMm, panelMm);
        double x = StageFigure.BeadMm + radius, half = end.InsideMm / 2 * scale;
        var below = radius + wireMm / 2 * scale + 1.4;
        foreach (var mark in StageFigure.Measure(style, x - half, x + half, below, words)) yield return mark;
    }
}

/// <summary>The stages of a glued cap.</summary>
internal static class CapFigures
{
    internal static ImmutableArray<(Func<double, IEnumerable<Mark>> Draw, string Words)> Of(PictureStyle style, WireEnd end, double wireMm)
    {
        var words = style.Language.Pictures;
        var used = end.WireUsedMm(wireMm);
        var depth = style.Short(used);
        return
        [
            (panel => [.. Wire(style, used, wireMm, panel, roughened: true), .. StageFigure.Measure(style, StageFigure.BeadMm, StageFigure.BeadMm + used * Scale(used, panel), 4.2, depth)],
                style.Language.Fill(words.CapRoughen, ("depth", depth))),
            (panel => [.. Wire(style, used, wireMm, panel, roughened: true), .. Cap(style, used, wireMm, panel, Reach(used, panel) + 5, glue: true)], words.CapGlue),
            (panel => [.. Wire(style, used, wireMm, panel, roughened: false), .. Cap(style, used, wireMm, panel, StageFigure.BeadMm, glue: false)], words.CapPush),
        ];
    }

    private static double Scale(double usedMm, double panelMm) => Math.Min(5, (panelMm - StageFigure.BeadMm - 6) / 2 / Math.Max(usedMm, 1));

    private static double Reach(double usedMm, double panelMm) => StageFigure.BeadMm + usedMm * Scale(usedMm, panelMm);

    private static IEnumerable<Mark> Wire(PictureStyle style, double usedMm, double wireMm, double panelMm, bool roughened)
    {
        var thick = Math.Max(0.6, wireMm * Scale(usedMm, panelMm));
        double from = StageFigure.BeadMm, to = Reach(usedMm, panelMm);
        yield return new Line(new Point(from, 0), new Point(to, 0), new Pen(style.Inks.Steel, thick)) { Class = "stage-wire" };
        if (roughened)
            yield return new Drawn(Hatching.Lines(Outline.Rectangle(new Box(from + 0.4, -thick / 2 - 0.4, to, thick / 2 + 0.4)), 60, 0.7), Paint.Lined(style.Inks.Ink, 0.14));
        foreach (var mark in StageFigure.Bead(style)) yield return mark;
    }

    private static IEnumerable<Mark> Cap(PictureStyle style, double usedMm, double wireMm, double panelMm, double atMm, bool glue)
    {
        var scale = Scale(usedMm, panelMm);
        double deep = usedMm * scale, half = Math.Max(2.4, 1.9 * wireMm * scale), right = Math.Min(atMm + deep + 2, panelMm - 0.5);
        var body = new OutlineBuilder().Move(new(atMm, -half)).Line(new(right - half, -half)).Curve(new(right, -half), new(right, half), new(right - half, half))
            .Line(new(atMm, half)).Close().Make();
        yield return new Drawn(body, new Paint(style.Inks.Plain, new Pen(style.Inks.Plain.Mixed(style.Inks.Ink, 0.6), 0.25))) { Class = "cap" };
        var hole = Math.Max(0.5, wireMm * scale / 2 + 0.25);
        yield return new Drawn(new OutlineBuilder().Move(new(atMm, -hole)).Line(new(Math.Min(atMm + deep, right - 1), -hole)).Line(new(Math.Min(atMm + deep, right - 1), hole))
            .Line(new(atMm, hole)).Make(), Paint.Lined(new Pen(style.Inks.Quiet, 0.2) { DashesMm = [0.7, 0.5] }));
        if (!glue) yield break;
        yield return new Ellipse(new Point(atMm + 1.4, 0), 1.5, hole + 0.3, new Paint(style.Inks.Accent.Mixed(style.Inks.Paper, 0.55), new Pen(style.Inks.Accent, 0.2))) { Class = "glue" };
        yield return new Line(new Point(atMm - 1, half + 2), new Point(atMm - 4.2, half + 2), new Pen(style.Inks.Accent, 0.35));
        yield return StageFigure.Head(new Point(atMm - 4.6, half + 2), 180, style);
    }
}
