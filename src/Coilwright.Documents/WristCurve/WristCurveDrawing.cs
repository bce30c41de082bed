using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Measures;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.WristCurve;

/// <summary>How the lining-up curve is drawn.</summary>
public sealed record WristCurveOptions
{
    /// <summary>Width of the picture, mm, its gutter included. The last wrist stands at its right edge, so that it can lie under a slider.</summary>
    public double WidthMm { get; init; } = 150;

    /// <summary>Room at the left for words, mm: the first wrist stands at its end.</summary>
    public double GutterMm { get; init; } = 12;

    /// <summary>Language of its words, and the units of its lengths.</summary>
    public Language Language { get; init; } = Languages.English;

    /// <summary>The inks.</summary>
    public Palette Inks { get; init; } = Palette.Colour;

    /// <summary>What the words are measured with.</summary>
    public ITypeface Typeface { get; init; } = CautiousSans.Instance;
}

/// <summary>The lining-up curve: how much of what lies over anything lies over its own kind, wrist by wrist, and where that is not as wished.</summary>
/// <remarks>Up the page runs the headline from nothing to everything; the two words beside it stand where the data's choices put them. Wrists that fail the
/// wish carry a hatched bar under the curve, so that it shows without colour. A wrist on which too little lies over anything leaves a gap.</remarks>
public static class WristCurveDrawing
{
    private const double HeightMm = 26, TopMm = 1.5;

    /// <summary>Draws the curve of a piece from its readings.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="options">How it is drawn.</param>
    public static Picture Of(Reckoned reckoned, WristCurveOptions? options = null)
    {
        options ??= new WristCurveOptions();
        var inks = options.Inks;
        var words = options.Language.WristCurve;
        var small = new Lettering(options.Typeface, 2.5, inks.Quiet);
        var curve = reckoned.Curve;
        double first = curve[0].WristMm, last = curve[^1].WristMm, left = options.GutterMm;
        double X(double wristMm) => options.GutterMm + (wristMm - first) / (last - first) * (options.WidthMm - options.GutterMm);
        double Y(double cover) => TopMm + (1 - cover) * HeightMm;
        var marks = ImmutableArray.CreateBuilder<Mark>();

        // The ground: everything, where it lines up, where it is mixed, nothing.
        var dashed = new Pen(inks.Hairline, 0.25) { DashesMm = [1, 1] };
        foreach (var level in (double[])[0, 1]) marks.Add(new Line(new(left, Y(level)), new(options.WidthMm, Y(level)), new Pen(inks.Hairline, 0.25)));
        foreach (var level in (double[])[reckoned.Choices.LinesUpFrom, reckoned.Choices.MixedUpTo]) marks.Add(new Line(new(left, Y(level)), new(options.WidthMm, Y(level)), dashed));
        marks.Add(small.On(words.LinesUp, left - 1.2, Y(reckoned.Choices.LinesUpFrom), TextAnchor.End) with { Class = "word" });
        marks.Add(small.Under(words.Mixed, left - 1.2, Y(reckoned.Choices.MixedUpTo), TextAnchor.End) with { Class = "word" });

        foreach (var run in CurveParts.Runs(curve, p => p.Cover, p => new Point(X(p.WristMm), Y(p.Cover!.Value))))
            marks.Add(new Drawn(run, Paint.Lined(new Pen(inks.Ink, 0.5) { Ends = LineEnds.Round })) { Class = "curve" });

        var y = TopMm + HeightMm + 1;
        marks.AddRange(CurveParts.Fails(reckoned, X, left, options.WidthMm, y, inks));
        y += CurveParts.BarMm + 0.8;
        y = Scale(reckoned, options, small, X, y, marks);

        var here = X(reckoned.WristMm);
        marks.Add(new Line(new(here, TopMm), new(here, TopMm + HeightMm + 1 + CurveParts.BarMm), new Pen(inks.Accent, 0.4)) { Class = "here" });
        if (CurveParts.At(reckoned) is { } cover) marks.Add(new Circle(new(here, Y(cover)), 1.1, new Paint(inks.Accent, new Pen(inks.Paper, 0.4))) { Class = "here" });
        return new Picture(options.WidthMm, y, words.Title, Described(reckoned, options), marks.ToImmutable()) { Language = options.Language.Code };
    }

    private static double Scale(Reckoned reckoned, WristCurveOptions options, Lettering small, Func<double, double> x, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        double first = reckoned.Curve[0].WristMm, last = reckoned.Curve[^1].WristMm;
        var inks = options.Inks;
        var inches = options.Language.Units == LengthUnits.Inches;
        var step = inches ? InchFraction.MmPerInch / 4 : 10;
        var labels = new LabelPlacer();
        for (var k = Math.Ceiling(first / step); k * step <= last; k++)
        {
            var at = x(k * step);
            marks.Add(new Line(new(at, topMm), new(at, topMm + 1), new Pen(inks.Quiet, 0.2)));
            var text = inches ? InchFraction.FromMm(k * step).ToString() : (k * step).ToString("0", CultureInfo.InvariantCulture);
            var label = small.Under(text, at, topMm + 1.3, TextAnchor.Middle);
            var box = label.Box(options.Typeface);
            if (box.LeftMm < options.GutterMm - 3 || box.RightMm > options.WidthMm || !labels.IsFree(box.Grown(0.6))) continue;
            labels.Take(box);
            marks.Add(label with { Class = "scale" });
        }
        return topMm + 1.3 + small.LineMm;
    }

    private static string Described(Reckoned reckoned, WristCurveOptions options)
    {
        var (language, words) = (options.Language, options.Language.WristCurve);
        var sentences = new List<string>
        {
            language.Fill(words.Shows, ("from", language.Length(reckoned.Curve[0].WristMm)), ("to", language.Length(reckoned.Curve[^1].WristMm))),
        };
        foreach (var stretch in reckoned.Wrists.WishFails.Take(6))
            sentences.Add(language.Fill(words.Fails, ("from", language.Length(stretch.FromMm)), ("to", language.Length(stretch.ToMm))));
        return string.Join(' ', sentences);
    }
}
