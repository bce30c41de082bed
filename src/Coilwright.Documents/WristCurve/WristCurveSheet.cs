using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Measures;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.WristCurve;

/// <summary>The lining-up curve for paper: the same as <see cref="WristCurveDrawing"/>, with its levels in figures, the exact curve beside the averaged one,
/// wrists in millimetres and inches, and the turns that are worn on them.</summary>
/// <remarks>The thick line is averaged over how well a worn turn is known, as the headline is; the thin one is exact and jumps within a millimetre.</remarks>
public static class WristCurveSheet
{
    private const double OwnWidthMm = 170;
    private const double LeastWidthMm = 70;

    /// <summary>Height of the plot alone, mm, where nothing else is asked for.</summary>
    private const double OwnPlotMm = 46;

    /// <summary>Draws the curve.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="options">How it is drawn.</param>
    public static Picture Of(Reckoned reckoned, PictureOptions? options = null) => Of(reckoned, options, OwnPlotMm);

    /// <summary>Whether there is a curve to draw: on two wrists or more something lies over something.</summary>
    internal static bool HasCurve(Reckoned reckoned) => reckoned.Curve.Count(p => p.Cover is not null) > 1;

    /// <summary>Draws the curve with a plot of another height.</summary>
    internal static Picture Of(Reckoned reckoned, PictureOptions? options, double plotMm)
    {
        options ??= new PictureOptions();
        var style = new PictureStyle(options);
        var width = Math.Max(LeastWidthMm, options.WidthMm ?? OwnWidthMm);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var words = style.Language.WristCurve;
        double height;
        var margin = options.MarginMm;
        if (!HasCurve(reckoned))
        {
            var y = margin;
            foreach (var line in style.Face.Lines(words.Nothing, style.Body.SizeMm, TextWeight.Regular, width - 2 * margin))
            {
                marks.Add(style.Body.Under(line, margin, y));
                y += style.Body.LineMm;
            }
            height = y + margin;
        }
        else height = new CurvePlot(style, reckoned, (width, plotMm), margin, marks).Lay();
        marks.InsertRange(0, style.Paper(options, width, height));
        var said = style.Language.Fill(words.OnPaper, ("title", reckoned.Piece.Title), ("wrist", style.Length(reckoned.WristMm)), ("percent", CurveParts.At(reckoned)));
        return new Picture(width, height, words.Title, said, marks.ToImmutable()) { Language = style.Language.Code };
    }

    /// <summary>The plot itself: axes, curves, the wrist, and what is not as wished.</summary>
    private sealed class CurvePlot
    {
        private const double SampleMm = 6, LegendGapMm = 5, LeastLevelMm = 6.5;
        private readonly PictureStyle _style;
        private readonly Reckoned _reckoned;
        private readonly double _margin;
        private readonly double _plotMm;
        private readonly ImmutableArray<Mark>.Builder _marks;
        private readonly ImmutableArray<WristPoint> _curve;
        private readonly string _axis;
        private readonly List<(Func<double, double, Mark[]> Sample, string Words)> _legend;
        private readonly double _legendLeft;
        private readonly double _legendTop;
        private readonly double _left;
        private readonly double _right;
        private readonly double _top;
        private readonly double _foot;
        private readonly double _fromWristMm;
        private readonly double _toWristMm;
        private readonly double _most;

        internal CurvePlot(PictureStyle style, Reckoned reckoned, (double WidthMm, double PlotMm) size, double marginMm, ImmutableArray<Mark>.Builder marks)
        {
            (_style, _reckoned, _margin, _marks, _curve) = (style, reckoned, marginMm, marks, reckoned.Curve);
            _plotMm = size.PlotMm;
            _left = _margin + style.Caption.WidthMm("100 %") + 2;
            _right = size.WidthMm - marginMm;
            (_axis, _legend) = (reckoned.LiningUp.GroupsAreRuns ? style.Language.WristCurve.AxisRuns : style.Language.WristCurve.Axis, Entries());
            // The axis' words and the legend on one line where they have room, then the wrist's words.
            _legendLeft = _margin + style.Caption.WidthMm(_axis) + LegendGapMm;
            var isOneLine = _legendLeft + _legend.Sum(e => WidthMm(e.Words) + LegendGapMm) - LegendGapMm <= _right;
            if (!isOneLine) _legendLeft = _margin;
            _legendTop = isOneLine ? _margin : _margin + style.Caption.LineMm;
            _top = _legendTop + 2 * style.Caption.LineMm + 2.5;
            _foot = _top + _plotMm;
            _fromWristMm = Math.Min(_curve[0].WristMm, reckoned.WristMm);
            _toWristMm = Math.Max(_curve[^1].WristMm, reckoned.WristMm);
            var highest = _curve.Max(p => Math.Max(p.Cover ?? 0, p.CoverExact ?? 0));
            _most = Math.Clamp(Math.Ceiling(highest * 5 + 0.1) / 5, 0.4, 1);
        }

        internal double Lay()
        {
            Levels();
            _marks.AddRange(CurveParts.Fails(_reckoned, X, _left, _right, _foot - CurveParts.BarMm, _style.Inks));
            foreach (var run in Runs(p => p.CoverExact)) _marks.Add(new Drawn(run, Paint.Lined(ThinPen)) { Class = "curve-exact" });
            foreach (var run in Runs(p => p.Cover)) _marks.Add(new Drawn(run, Paint.Lined(ThickPen)) { Class = "curve" });
            Wrist();
            Legend();
            return Foot();
        }

        private Pen ThinPen => new(_style.Inks.Quiet.Mixed(_style.Inks.Paper, 0.35), 0.18);

        private Pen ThickPen => new(_style.Inks.Ink, 0.6) { Ends = LineEnds.Round };

        private IEnumerable<Outline> Runs(Func<WristPoint, double?> reading) =>
            CurveParts.Runs(_curve, reading, p => new Point(X(p.WristMm), Y(Math.Min(reading(p)!.Value, _most))));

        private double X(double wristMm) => _left + (_right - _left) * (wristMm - _fromWristMm) / Math.Max(1, _toWristMm - _fromWristMm);

        private double Y(double share) => _foot - _plotMm * share / _most;

        // A level line for every fifth, or half where those would stand too close for words between them; and where lining up and being mixed begin.
        private void Levels()
        {
            var placer = new LabelPlacer();
            foreach (var (level, word, isAbove) in new[] { (_reckoned.Choices.LinesUpFrom, _style.Language.WristCurve.LinesUp, true), (_reckoned.Choices.MixedUpTo, _style.Language.WristCurve.Mixed, false) })
            {
                if (level > _most) continue;
                _marks.Add(new Line(new Point(_left, Y(level)), new Point(_right, Y(level)), new Pen(_style.Inks.Quiet, 0.2) { DashesMm = [1.2, 1.2] }));
                var text = Word(word, level, isAbove);
                // Where the two lie close the second word gives way.
                if (!placer.IsFree(text.Box(_style.Face))) continue;
                placer.Take(text.Box(_style.Face));
                _marks.Add(text with { Class = "word" });
            }
            var step = _plotMm / (_most * 5) >= LeastLevelMm ? 20 : 50;
            for (var percent = 0; percent <= (int)Math.Round(_most * 100); percent += step)
            {
                var y = Y(percent / 100.0);
                _marks.Add(new Line(new Point(_left, y), new Point(_right, y), new Pen(percent == 0 ? _style.Inks.Quiet : _style.Inks.Hairline, percent == 0 ? 0.3 : 0.2)));
                _marks.Add(_style.Caption.Centred(percent.ToString(CultureInfo.InvariantCulture) + " %", new Point(_left - 1.5, y), TextAnchor.End));
            }
        }

        // As far to the right as neither a curve nor the wrist's line runs through it; at the right end where there is no such place.
        private Text Word(string word, double level, bool isAbove)
        {
            Text At(double x) => isAbove ? _style.Caption.On(word, x, Y(level) - 0.9, TextAnchor.End) : _style.Caption.Under(word, x, Y(level) + 0.5, TextAnchor.End);
            bool IsCrossed(Text text)
            {
                var box = text.Box(_style.Face).Grown(0.6);
                if (X(_reckoned.WristMm) >= box.LeftMm && X(_reckoned.WristMm) <= box.RightMm) return true;
                return _curve.Where(p => X(p.WristMm) >= box.LeftMm - 2 && X(p.WristMm) <= box.RightMm + 2).SelectMany(p => new[] { p.Cover, p.CoverExact })
                    .Any(c => c is { } share && Y(share) >= box.TopMm && Y(share) <= box.BottomMm);
            }
            for (var x = _right - 0.5; x - _style.Caption.WidthMm(word) > _left; x -= 2)
                if (!IsCrossed(At(x))) return At(x);
            return At(_right - 0.5);
        }

        private void Wrist()
        {
            var x = X(_reckoned.WristMm);
            var wrist = _style.Language.Fill(_style.Language.WristCurve.ThisWrist, ("wrist", _style.Length(_reckoned.WristMm)));
            var lettering = _style.Caption with { Ink = _style.Inks.Accent };
            var half = lettering.WidthMm(wrist) / 2;
            var words = lettering.On(wrist, Math.Clamp(x, _margin + half, _right - half), _top - 1.8, TextAnchor.Middle) with { Class = "wrist-words" };
            _marks.Add(new Line(new Point(x, _top - 0.8), new Point(x, _foot), new Pen(_style.Inks.Accent, 0.4) { DashesMm = [0.01, 1.3], Ends = LineEnds.Round }) { Class = "wrist-line" });
            _marks.Add(words);
            if (CurveParts.At(_reckoned) is { } cover)
                _marks.Add(new Circle(new Point(x, Y(Math.Min(cover, _most))), 1.1, new Paint(_style.Inks.Paper, new Pen(_style.Inks.Accent, 0.5))) { Class = "here" });
        }

        private double WidthMm(string legend) => SampleMm + 1.5 + _style.Caption.WidthMm(legend);

        // What the lines are, each with its sample from a place on, in the middle of a line of words.
        private List<(Func<double, double, Mark[]> Sample, string Words)> Entries()
        {
            var words = _style.Language.WristCurve;
            List<(Func<double, double, Mark[]> Sample, string Words)> all =
            [
                ((at, middle) => [new Line(new Point(at, middle), new Point(at + SampleMm, middle), ThickPen)], words.Averaged),
                ((at, middle) => [new Line(new Point(at, middle), new Point(at + SampleMm, middle), ThinPen)], words.Exact),
            ];
            if (!_reckoned.Wrists.WishFails.IsEmpty)
                all.Add(((at, middle) => [.. CurveParts.Bar(Box.At(at, middle - CurveParts.BarMm / 2, SampleMm, CurveParts.BarMm), _style.Inks, "legend-swatch")], words.NotAsWished));
            return all;
        }

        private void Legend()
        {
            _marks.Add(_style.Caption.Under(_style.Face.Shortened(_axis, _style.Caption.SizeMm, TextWeight.Regular, _right - _margin), _margin, _margin) with { Class = "axis-words" });
            var x = _legendLeft;
            foreach (var (sample, said) in _legend)
            {
                if (x + WidthMm(said) > _right) break;
                _marks.AddRange(sample(x, _legendTop + _style.Caption.BoxMm / 2));
                _marks.Add(_style.Caption.Under(said, x + SampleMm + 1.5, _legendTop) with { Class = "legend" });
                x += WidthMm(said) + LegendGapMm;
            }
        }

        // Wrists beneath the axis in the units asked for, and the turns worn on them.
        private double Foot()
        {
            var y = _foot + 1.6;
            var words = _style.Language.WristCurve;
            if (_style.Language.Units != LengthUnits.Inches) y = Row(y, words.WristRow, _style.Language.Terms.Mm, Ticks(10), mm => _style.Language.Number(mm, 0), hasTicks: true);
            if (_style.Language.Units != LengthUnits.Mm)
                y = Row(y, _style.Language.Units == LengthUnits.Inches ? words.WristRow : "", _style.Language.Terms.Inch, Ticks(InchFraction.MmPerInch / 2), mm => InchFraction.FromMm(mm).ToString(), hasTicks: _style.Language.Units == LengthUnits.Inches);
            y = Row(y, words.TurnsRow, "", Ticks(_style.Language.Units == LengthUnits.Inches ? InchFraction.MmPerInch / 2 : 10),
                mm => _style.Language.Number(_curve.MinBy(p => Math.Abs(p.WristMm - mm))!.TurnsWorn, 1));
            return y + _margin * 2 / 3;
        }

        private IEnumerable<double> Ticks(double everyMm)
        {
            for (var k = Math.Ceiling(_fromWristMm / everyMm - 1e-9); k * everyMm <= _toWristMm + 1e-9; k++) yield return k * everyMm;
        }

        // The row's name before it, its unit after its last figure; figures that would crowd are left out.
        private double Row(double topMm, string name, string unit, IEnumerable<double> ticks, Func<double, string> figure, bool hasTicks = false)
        {
            var taken = _margin + (name.Length == 0 ? -2 : _style.Caption.WidthMm(name) + 1.5);
            if (name.Length > 0) _marks.Add(_style.Caption.Under(name, _margin, topMm) with { Class = "row-name" });
            var all = ticks.ToArray();
            for (var i = 0; i < all.Length; i++)
            {
                var words = i == all.Length - 1 && unit.Length > 0 ? figure(all[i]) + " " + unit : figure(all[i]);
                var half = _style.Caption.WidthMm(words) / 2;
                var x = Math.Min(X(all[i]), _right - half);
                if (x - half < taken) continue;
                _marks.Add(_style.Caption.Under(words, x, topMm, TextAnchor.Middle) with { Class = "figure" });
                if (hasTicks) _marks.Add(new Line(new Point(X(all[i]), _foot), new Point(X(all[i]), _foot + 1), new Pen(_style.Inks.Quiet, 0.2)));
                taken = x + half + 1.5;
            }
            return topMm + _style.Caption.LineMm;
        }
    }
}
