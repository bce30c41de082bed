using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
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
    private const double MarginMm = 6;
    private const double OwnWidthMm = 170;
    private const double LeastWidthMm = 70;
    private const double PlotMm = 46;

    /// <summary>Draws the curve.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="choices">Our choices: where lining up and being mixed begin.</param>
    /// <param name="options">How it is drawn.</param>
    public static Picture Of(Reckoned reckoned, ReckoningChoices choices, PictureOptions? options = null)
    {
        options ??= new PictureOptions();
        var style = new PictureStyle(options);
        var width = Math.Max(LeastWidthMm, options.WidthMm ?? OwnWidthMm);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var words = style.Language.WristCurve;
        double height;
        var points = reckoned.Curve.Where(p => p.Cover is not null).ToImmutableArray();
        if (points.Length < 2)
        {
            var y = MarginMm;
            foreach (var line in style.Face.Lines(words.Nothing, style.Body.SizeMm, TextWeight.Regular, width - 2 * MarginMm))
            {
                marks.Add(style.Body.Under(line, MarginMm, y));
                y += style.Body.LineMm;
            }
            height = y + MarginMm;
        }
        else height = new CurvePlot(style, reckoned, choices, width, marks).Lay();
        marks.InsertRange(0, style.Paper(options, width, height));
        var said = style.Language.Fill(words.OnPaper, ("title", reckoned.Piece.Title), ("wrist", style.Length(reckoned.WristMm)), ("percent", CurveParts.At(reckoned)));
        return new Picture(width, height, words.Title, said, marks.ToImmutable()) { Language = style.Language.Code };
    }

    /// <summary>The plot itself: axes, curves, the wrist, and what is not as wished.</summary>
    private sealed class CurvePlot
    {
        private readonly PictureStyle _style;
        private readonly Reckoned _reckoned;
        private readonly ReckoningChoices _choices;
        private readonly ImmutableArray<Mark>.Builder _marks;
        private readonly ImmutableArray<WristPoint> _curve;
        private readonly double _left;
        private readonly double _right;
        private readonly double _top;
        private readonly double _foot;
        private readonly double _fromWristMm;
        private readonly double _toWristMm;
        private readonly double _most;

        internal CurvePlot(PictureStyle style, Reckoned reckoned, ReckoningChoices choices, double widthMm, ImmutableArray<Mark>.Builder marks)
        {
            (_style, _reckoned, _choices, _marks, _curve) = (style, reckoned, choices, marks, reckoned.Curve);
            _left = MarginMm + style.Caption.WidthMm("100 %") + 2;
            _right = widthMm - MarginMm;
            // Room above for the axis' words, the legend and the wrist's words.
            _top = MarginMm + 3 * style.Caption.LineMm + 2.5;
            _foot = _top + PlotMm;
            _fromWristMm = Math.Min(_curve[0].WristMm, reckoned.WristMm);
            _toWristMm = Math.Max(_curve[^1].WristMm, reckoned.WristMm);
            var highest = _curve.Max(p => Math.Max(p.Cover ?? 0, p.CoverExact ?? 0));
            _most = Math.Clamp(Math.Ceiling(highest * 5 + 0.1) / 5, 0.4, 1);
        }

        internal double Lay()
        {
            Levels();
            _marks.AddRange(CurveParts.Fails(_reckoned, _choices, X, _left, _right, _foot - CurveParts.BarMm, _style.Inks));
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

        private double Y(double share) => _foot - PlotMm * share / _most;

        // A level line for every fifth, and where lining up and being mixed begin.
        private void Levels()
        {
            var placer = new LabelPlacer();
            foreach (var (level, word, isAbove) in new[] { (_choices.LinesUpFrom, _style.Language.WristCurve.LinesUp, true), (_choices.MixedUpTo, _style.Language.WristCurve.Mixed, false) })
            {
                if (level > _most) continue;
                _marks.Add(new Line(new Point(_left, Y(level)), new Point(_right, Y(level)), new Pen(_style.Inks.Quiet, 0.2) { DashesMm = [1.2, 1.2] }));
                var text = Word(word, level, isAbove);
                // Where the two lie close the second word gives way.
                if (!placer.IsFree(text.Box(_style.Face))) continue;
                placer.Take(text.Box(_style.Face));
                _marks.Add(text with { Class = "word" });
            }
            for (var i = 0; i <= (int)Math.Round(_most * 5); i++)
            {
                var y = Y(i / 5.0);
                _marks.Add(new Line(new Point(_left, y), new Point(_right, y), new Pen(i == 0 ? _style.Inks.Quiet : _style.Inks.Hairline, i == 0 ? 0.3 : 0.2)));
                _marks.Add(_style.Caption.Centred((i * 20).ToString(CultureInfo.InvariantCulture) + " %", new Point(_left - 1.5, y), TextAnchor.End));
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
            var words = lettering.On(wrist, Math.Clamp(x, MarginMm + half, _right - half), _top - 1.8, TextAnchor.Middle) with { Class = "wrist-words" };
            _marks.Add(new Line(new Point(x, _top - 0.8), new Point(x, _foot), new Pen(_style.Inks.Accent, 0.4) { DashesMm = [0.01, 1.3], Ends = LineEnds.Round }) { Class = "wrist-line" });
            _marks.Add(words);
            if (CurveParts.At(_reckoned) is { } cover)
                _marks.Add(new Circle(new Point(x, Y(Math.Min(cover, _most))), 1.1, new Paint(_style.Inks.Paper, new Pen(_style.Inks.Accent, 0.5))) { Class = "here" });
        }

        private void Legend()
        {
            var words = _style.Language.WristCurve;
            var axis = _reckoned.LiningUp.GroupsAreRuns ? words.AxisRuns : words.Axis;
            _marks.Add(_style.Caption.Under(_style.Face.Shortened(axis, _style.Caption.SizeMm, TextWeight.Regular, _right - MarginMm), MarginMm, MarginMm) with { Class = "axis-words" });
            var (x, y) = (MarginMm, MarginMm + _style.Caption.LineMm);
            var middle = y + _style.Caption.BoxMm / 2;
            List<(Func<double, Mark[]> Sample, string Words)> all =
            [
                (at => [new Line(new Point(at, middle), new Point(at + 6, middle), ThickPen)], words.Averaged),
                (at => [new Line(new Point(at, middle), new Point(at + 6, middle), ThinPen)], words.Exact),
            ];
            if (!_reckoned.Wrists.WishFailsMm.IsEmpty)
                all.Add((at => [.. CurveParts.Bar(Box.At(at, middle - CurveParts.BarMm / 2, 6, CurveParts.BarMm), _style.Inks, "legend-swatch")], words.NotAsWished));
            foreach (var (sample, said) in all)
            {
                var width = 6 + 1.5 + _style.Caption.WidthMm(said);
                if (x + width > _right) break;
                _marks.AddRange(sample(x));
                _marks.Add(_style.Caption.Under(said, x + 7.5, y) with { Class = "legend" });
                x += width + 5;
            }
        }

        // Wrists beneath the axis in the units asked for, and the turns worn on them.
        private double Foot()
        {
            var y = _foot + 1.6;
            var words = _style.Language.WristCurve;
            if (_style.Units != LengthUnits.Inches) y = Row(y, words.WristRow, _style.Language.Terms.Mm, Ticks(10), mm => _style.Language.Number(mm, 0), hasTicks: true);
            if (_style.Units != LengthUnits.Mm)
                y = Row(y, _style.Units == LengthUnits.Inches ? words.WristRow : "", _style.Language.Terms.Inch, Ticks(InchFraction.MmPerInch / 2), mm => InchFraction.FromMm(mm).ToString(), hasTicks: _style.Units == LengthUnits.Inches);
            y = Row(y, words.TurnsRow, "", Ticks(_style.Units == LengthUnits.Inches ? InchFraction.MmPerInch / 2 : 10),
                mm => _style.Language.Number(_curve.MinBy(p => Math.Abs(p.WristMm - mm))!.TurnsWorn, 1));
            return y + MarginMm - 2;
        }

        private IEnumerable<double> Ticks(double everyMm)
        {
            for (var k = Math.Ceiling(_fromWristMm / everyMm - 1e-9); k * everyMm <= _toWristMm + 1e-9; k++) yield return k * everyMm;
        }

        // The row's name before it, its unit after its last figure; figures that would crowd are left out.
        private double Row(double topMm, string name, string unit, IEnumerable<double> ticks, Func<double, string> figure, bool hasTicks = false)
        {
            var taken = MarginMm + (name.Length == 0 ? -2 : _style.Caption.WidthMm(name) + 1.5);
            if (name.Length > 0) _marks.Add(_style.Caption.Under(name, MarginMm, topMm) with { Class = "row-name" });
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
