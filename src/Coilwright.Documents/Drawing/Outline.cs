using System.Collections.Immutable;

namespace Coilwright.Documents.Drawing;

/// <summary>What a step of an outline does.</summary>
public enum StepKind
{
    /// <summary>Lifts the pen and sets it down at <see cref="Step.To"/>: starts a new figure.</summary>
    Move,

    /// <summary>A straight line to <see cref="Step.To"/>.</summary>
    Line,

    /// <summary>A cubic Bezier curve to <see cref="Step.To"/>.</summary>
    Curve,

    /// <summary>A straight line back to where the figure started, which closes it.</summary>
    Close,
}

/// <summary>One step of an outline.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="First">First control point; only a curve has one.</param>
/// <param name="Second">Second control point; only a curve has one.</param>
/// <param name="To">Where it ends; for a closing step, where the figure started.</param>
public readonly record struct Step(StepKind Kind, Point First, Point Second, Point To);

/// <summary>A line of straight and curved pieces in one or several figures, mm: the shape of a thing, without ink.</summary>
/// <remarks>
/// <para>Only moves, lines, cubic curves and closings, so that every canvas can draw it; circles and arcs become curves.</para>
/// <para>An area is what an odd number of its figures enclose (even-odd rule).</para>
/// </remarks>
public sealed class Outline
{
    // A quarter circle as one cubic curve: control points at 4/3 (sqrt 2 - 1) of the radius. Off the circle by at most 0.03 % of the radius.
    private const double Quarter = 0.5522847498307936;

    /// <summary>How far straight pieces may stray from a curve when it is measured or hatched, mm: a fifth of the finest line that is printed.</summary>
    public const double FlatnessMm = 0.02;

    internal Outline(ImmutableArray<Step> steps) => Steps = steps;

    /// <summary>Its steps, in order.</summary>
    public ImmutableArray<Step> Steps { get; }

    /// <summary>A straight line.</summary>
    public static Outline Line(Point from, Point to) => new OutlineBuilder().Move(from).Line(to).Make();

    /// <summary>Straight lines through points, closed or left open; empty without points.</summary>
    public static Outline Through(IEnumerable<Point> points, bool closed = true)
    {
        var builder = new OutlineBuilder();
        var first = true;
        foreach (var p in points)
        {
            if (first) builder.Move(p); else builder.Line(p);
            first = false;
        }
        return closed && !first ? builder.Close().Make() : builder.Make();
    }

    /// <summary>An upright rectangle, its corners rounded by a radius, mm, where one is given: never more than half the shorter side.</summary>
    public static Outline Rectangle(Box box, double cornerMm = 0)
    {
        var (l, t, r, b) = box;
        var c = Math.Clamp(cornerMm, 0, Math.Min(box.WidthMm, box.HeightMm) / 2);
        if (c <= 0) return Through([new(l, t), new(r, t), new(r, b), new(l, b)]);
        var k = c * (1 - Quarter);
        return new OutlineBuilder()
            .Move(new(l + c, t)).Line(new(r - c, t)).Curve(new(r - k, t), new(r, t + k), new(r, t + c))
            .Line(new(r, b - c)).Curve(new(r, b - k), new(r - k, b), new(r - c, b))
            .Line(new(l + c, b)).Curve(new(l + k, b), new(l, b - k), new(l, b - c))
            .Line(new(l, t + c)).Curve(new(l, t + k), new(l + k, t), new(l + c, t)).Close().Make();
    }

    /// <summary>An upright ellipse by its middle and half measures, mm.</summary>
    public static Outline Ellipse(Point middle, double halfWidthMm, double halfHeightMm)
    {
        var (x, y) = middle;
        double w = halfWidthMm, h = halfHeightMm, kw = w * Quarter, kh = h * Quarter;
        return new OutlineBuilder().Move(new(x + w, y))
            .Curve(new(x + w, y + kh), new(x + kw, y + h), new(x, y + h))
            .Curve(new(x - kw, y + h), new(x - w, y + kh), new(x - w, y))
            .Curve(new(x - w, y - kh), new(x - kw, y - h), new(x, y - h))
            .Curve(new(x + kw, y - h), new(x + w, y - kh), new(x + w, y)).Close().Make();
    }

    /// <summary>A part of a circle's line, left open.</summary>
    /// <param name="middle">Middle of the circle.</param>
    /// <param name="radiusMm">Radius, mm.</param>
    /// <param name="fromDeg">Where it starts, degrees from pointing right, growing clockwise as seen, since y runs down.</param>
    /// <param name="sweepDeg">How far it goes, degrees; negative goes anticlockwise.</param>
    public static Outline Arc(Point middle, double radiusMm, double fromDeg, double sweepDeg) =>
        new OutlineBuilder().Move(OutlineBuilder.OnCircle(middle, radiusMm, fromDeg)).Arc(middle, radiusMm, fromDeg, sweepDeg).Make();

    /// <summary>The same outline so far to the right and down.</summary>
    public Outline Moved(double rightMm, double downMm) => Mapped(p => p.Moved(rightMm, downMm));

    /// <summary>The outline with every point carried elsewhere.</summary>
    public Outline Mapped(Func<Point, Point> map) =>
        new([.. Steps.Select(s => new Step(s.Kind, map(s.First), map(s.Second), map(s.To)))]);

    /// <summary>The outlines' figures as one.</summary>
    public static Outline Together(IEnumerable<Outline> outlines) => new([.. outlines.SelectMany(o => o.Steps)]);

    /// <summary>Its figures, each an outline of its own.</summary>
    public ImmutableArray<Outline> Figures()
    {
        var figures = ImmutableArray.CreateBuilder<Outline>();
        var from = 0;
        for (var i = 1; i <= Steps.Length; i++)
            if (i == Steps.Length || Steps[i].Kind == StepKind.Move)
            {
                figures.Add(new Outline(Steps[from..i]));
                from = i;
            }
        return figures.ToImmutable();
    }

    /// <summary>Whether its last figure ends where it started.</summary>
    public bool IsClosed => Steps is [.., { Kind: StepKind.Close }];

    /// <summary>Its figures as straight pieces that stray at most <see cref="FlatnessMm"/> from it. A closed figure ends where it started.</summary>
    public ImmutableArray<ImmutableArray<Point>> Flattened()
    {
        var figures = ImmutableArray.CreateBuilder<ImmutableArray<Point>>();
        var figure = ImmutableArray.CreateBuilder<Point>();
        void End()
        {
            if (figure.Count > 1) figures.Add(figure.ToImmutable());
            figure.Clear();
        }
        foreach (var step in Steps)
            switch (step.Kind)
            {
                case StepKind.Move:
                    End();
                    figure.Add(step.To);
                    break;
                case StepKind.Curve:
                    Flatten(figure, figure[^1], step);
                    break;
                default:
                    figure.Add(step.To);
                    break;
            }
        End();
        return figures.ToImmutable();
    }

    /// <summary>The smallest box round it, without its line's thickness; null when it is empty.</summary>
    public Box? Bounds => Box.Round(Flattened().SelectMany(f => f));

    // Over 1/n of its run a curve strays from its chord by at most |B''| / (8 n^2), and |B''| is at most 6 times the larger second difference
    // of its four points.
    private static void Flatten(ImmutableArray<Point>.Builder figure, Point from, Step s)
    {
        double Bend(Point a, Point b, Point c) =>
            Math.Sqrt(Math.Pow(a.XMm - 2 * b.XMm + c.XMm, 2) + Math.Pow(a.YMm - 2 * b.YMm + c.YMm, 2));
        var bend = 6 * Math.Max(Bend(from, s.First, s.Second), Bend(s.First, s.Second, s.To));
        var pieces = Math.Clamp((int)Math.Ceiling(Math.Sqrt(bend / (8 * FlatnessMm))), 1, 500);
        for (var i = 1; i <= pieces; i++)
        {
            double t = (double)i / pieces, n = 1 - t;
            double a = n * n * n, b = 3 * n * n * t, c = 3 * n * t * t, d = t * t * t;
            figure.Add(new(a * from.XMm + b * s.First.XMm + c * s.Second.XMm + d * s.To.XMm,
                a * from.YMm + b * s.First.YMm + c * s.Second.YMm + d * s.To.YMm));
        }
    }
}

/// <summary>Draws an outline step by step. Used once: <see cref="Make"/> hands it over.</summary>
public sealed class OutlineBuilder
{
    private readonly ImmutableArray<Step>.Builder _steps = ImmutableArray.CreateBuilder<Step>();
    private Point _start;

    /// <summary>Starts a figure.</summary>
    public OutlineBuilder Move(Point to)
    {
        _start = to;
        _steps.Add(new Step(StepKind.Move, default, default, to));
        return this;
    }

    /// <summary>A straight line.</summary>
    /// <exception cref="InvalidOperationException">No figure was started.</exception>
    public OutlineBuilder Line(Point to) => Add(new Step(StepKind.Line, default, default, to));

    /// <summary>A cubic Bezier curve.</summary>
    /// <exception cref="InvalidOperationException">No figure was started.</exception>
    public OutlineBuilder Curve(Point first, Point second, Point to) => Add(new Step(StepKind.Curve, first, second, to));

    /// <summary>A part of a circle's line, from where the pen stands. Angles as in <see cref="Outline.Arc"/>.</summary>
    /// <remarks>Curves of at most an eighth turn each: off the circle by at most 0.001 % of the radius.</remarks>
    public OutlineBuilder Arc(Point middle, double radiusMm, double fromDeg, double sweepDeg)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweepDeg) / 45));
        var step = sweepDeg / pieces * Math.PI / 180;
        var reach = 4.0 / 3 * Math.Tan(step / 4) * radiusMm;
        for (var i = 0; i < pieces; i++)
        {
            double from = fromDeg * Math.PI / 180 + i * step, to = from + step;
            var a = OnCircle(middle, radiusMm, from * 180 / Math.PI);
            var b = OnCircle(middle, radiusMm, to * 180 / Math.PI);
            Curve(a.Moved(-reach * Math.Sin(from), reach * Math.Cos(from)), b.Moved(reach * Math.Sin(to), -reach * Math.Cos(to)), b);
        }
        return this;
    }

    /// <summary>Closes the figure.</summary>
    /// <exception cref="InvalidOperationException">No figure was started.</exception>
    public OutlineBuilder Close() => Add(new Step(StepKind.Close, default, default, _start));

    /// <summary>Hands the outline over.</summary>
    public Outline Make() => new(_steps.ToImmutable());

    internal static Point OnCircle(Point middle, double radiusMm, double deg) =>
        middle.Moved(radiusMm * Math.Cos(deg * Math.PI / 180), radiusMm * Math.Sin(deg * Math.PI / 180));

    private OutlineBuilder Add(Step step)
    {
        if (_steps.Count == 0) throw new InvalidOperationException("An outline starts with a move.");
        _steps.Add(step);
        return this;
    }
}
