using System.Collections.Immutable;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.WristCurve;

/// <summary>What the lining-up curve is made of, wherever it is drawn.</summary>
internal static class CurveParts
{
    /// <summary>Height of the bar that marks wrists which fail the wish, mm.</summary>
    internal const double BarMm = 2.4;

    /// <summary>Least length of such a bar, mm.</summary>
    internal const double LeastBarMm = 1.2;

    /// <summary>Stretches of neighbouring wrists that have a reading, each as a line; one wrist alone makes none.</summary>
    internal static IEnumerable<Outline> Runs(ImmutableArray<WristPoint> curve, Func<WristPoint, double?> reading, Func<WristPoint, Point> at)
    {
        var run = new List<Point>();
        foreach (var point in curve)
        {
            if (reading(point) is not null)
            {
                run.Add(at(point));
                continue;
            }
            if (run.Count > 1) yield return Outline.Through([.. run], closed: false);
            run.Clear();
        }
        if (run.Count > 1) yield return Outline.Through(run, closed: false);
    }

    /// <summary>Hatched bars for the wrists that fail the wish.</summary>
    internal static IEnumerable<Mark> Fails(Reckoned reckoned, Func<double, double> x, double leftMm, double rightMm, double topMm, Palette inks)
    {
        foreach (var stretch in reckoned.Wrists.WishFails)
        {
            // A place can be seen, a line cannot.
            var (from, to) = (x(stretch.FromMm), x(stretch.ToMm));
            var more = Math.Max(0, LeastBarMm - (to - from)) / 2;
            foreach (var mark in Bar(new Box(Math.Max(leftMm, from - more), topMm, Math.Min(rightMm, to + more), topMm + BarMm), inks, "fails")) yield return mark;
        }
    }

    /// <summary>One such bar.</summary>
    internal static IEnumerable<Mark> Bar(Box box, Palette inks, string sort)
    {
        var bar = Outline.Rectangle(box, 0.4);
        yield return new Drawn(bar, Paint.Lined(inks.Accent, 0.25)) { Class = sort };
        yield return new Drawn(Hatching.Lines(bar, 45, 0.9), Paint.Lined(inks.Accent, 0.22)) { Class = sort };
    }

    /// <summary>The headline itself where the wrist is the curve's, so that the dot lies on the line.</summary>
    internal static double? At(Reckoned reckoned) => reckoned.Curve.FirstOrDefault(p => p.WristMm == reckoned.WristMm)?.Cover ?? reckoned.LiningUp.Cover;
}
