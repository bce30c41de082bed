using System.Collections.Immutable;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Prices;

/// <summary>What is left of one over a span of prices: a line for each rule that sells the same, its price as a letter on it, a stroke where nothing is gained and nothing lost.</summary>
/// <remarks>Lines are told apart by their dashes and letters. What loses lies under the level line, hatched.</remarks>
public static class GainOverPrices
{
    private const double HeightMm = 46, TopMm = 3, LetterMm = 2.5, EvenMm = 1.8;

    private static readonly ImmutableArray<double>[] Dashes = [[], [2.4, 1.2], [0.8, 0.9], [3.2, 1, 0.8, 1]];

    private static readonly decimal[] Steps = [1, 2, 5, 10];

    /// <summary>Draws it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sold">What is sold.</param>
    /// <param name="options">How it is drawn.</param>
    /// <returns>Null where there is nothing to draw: see <see cref="GainSpan.Of"/>.</returns>
    public static Picture? Of(PricePlan plan, Sold sold, PricePictureOptions? options = null)
    {
        options ??= new PricePictureOptions();
        if (GainSpan.Of(plan, sold) is not { } span) return null;
        var (inks, language, said) = (options.Inks, options.Language, new PriceSentences(plan, options.Language));
        Lettering small = new(options.Typeface, 2.7, inks.Quiet), letter = new(options.Typeface, 3, inks.Paper, TextWeight.Bold);
        double most = Math.Max(0, (double)span.Lines.Max(l => l.GainTo)), least = Math.Min(0, (double)span.Lines.Min(l => l.GainFrom)), left = 0.5, right = options.WidthMm - 0.5;
        double X(decimal price) => left + (double)((price - span.From) / (span.To - span.From)) * (right - left);
        double Y(double gain) => TopMm + (most - gain) / (most - least) * HeightMm;
        var marks = ImmutableArray.CreateBuilder<Mark>();

        var loses = Outline.Rectangle(new Box(left, Y(0), right, TopMm + HeightMm));
        marks.Add(new Drawn(Hatching.Lines(loses, 45, 2.2), Paint.Lined(inks.Hairline, 0.2)) { Class = "loses" });
        marks.Add(new Line(new(left, Y(0)), new(right, Y(0)), new Pen(inks.Ink, 0.35)) { Class = "level" });
        var words = small.Under(language.Price.SpanGain, left + 1, TopMm);
        marks.Add(words with { Class = "word" });

        foreach (var (line, n) in span.Lines.Select((l, n) => (l, n)))
        {
            marks.Add(new Line(new(X(span.From), Y((double)line.GainFrom)), new(X(span.To), Y((double)line.GainTo)), new Pen(inks.Ink, 0.5) { DashesMm = Dashes[n % Dashes.Length] }) { Class = "gain" });
            if (line.Even >= span.From && line.Even <= span.To)
                marks.Add(new Line(new(X(line.Even), Y(0) - EvenMm), new(X(line.Even), Y(0) + EvenMm), new Pen(inks.Accent, 0.8)) { Class = "even" });
        }
        var taken = new List<Point>();
        foreach (var line in span.Lines)
        {
            var asked = line.Asked.Outcome;
            var at = new Point(X(asked.Price), Y((double)asked.Gain));
            // Two rules that ask and leave the same have their letters side by side.
            while (taken.Any(t => Math.Abs(t.XMm - at.XMm) < 2 * LetterMm && Math.Abs(t.YMm - at.YMm) < 2 * LetterMm)) at = at with { XMm = at.XMm + 2 * LetterMm };
            taken.Add(at);
            marks.Add(new Circle(at, LetterMm, new Paint(inks.Ink, new Pen(inks.Paper, 0.4))) { Class = "asked" });
            marks.Add(letter.Centred(KeyLetters.Of(plan.Prices.IndexOf(line.Asked)), at) with { Class = "letter" });
        }
        var y = Scale(span, options, small, X, TopMm + HeightMm, marks);
        var rules = string.Join(' ', span.Lines.Select(l => language.Fill(language.Price.SpanRule, ("letter", KeyLetters.Of(plan.Prices.IndexOf(l.Asked))), ("rule", l.Asked.Rule.Name), ("price", said.Money(l.Asked.Outcome.Price)),
            ("gain", said.Money(l.Asked.Outcome.Gain)), ("even", said.Money(l.Asked.LeastPrice)))));
        return new Picture(options.WidthMm, y, language.Price.Span, language.Fill(language.Price.SpanSays, ("from", said.Money(span.From)), ("to", said.Money(span.To)), ("rules", rules)), marks.ToImmutable()) { Language = language.Code };
    }

    private static double Scale(GainSpan span, PricePictureOptions options, Lettering small, Func<decimal, double> x, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        marks.Add(new Line(new(x(span.From), topMm), new(x(span.To), topMm), new Pen(options.Inks.Quiet, 0.25)));
        var step = Step(span.To / 6);
        var labels = new LabelPlacer();
        var word = small.Under(options.Language.Price.SpanPrice, x(span.To), topMm + 1.6, TextAnchor.End);
        labels.Take(word.Box(options.Typeface));
        marks.Add(word with { Class = "word" });
        for (var price = 0m; price <= span.To; price += step)
        {
            marks.Add(new Line(new(x(price), topMm), new(x(price), topMm + 1.1), new Pen(options.Inks.Quiet, 0.25)));
            var text = options.Language.Number((double)price, step < 1 ? 2 : 0);
            var label = small.Under(text, Math.Max(x(price), small.WidthMm(text) / 2), topMm + 1.6, TextAnchor.Middle);
            var box = label.Box(options.Typeface).Grown(0.6);
            if (!labels.IsFree(box) || box.RightMm > options.WidthMm + 0.6) continue;
            labels.Take(box);
            marks.Add(label with { Class = "scale" });
        }
        return topMm + 1.6 + small.LineMm;
    }

    // The next of 1, 2, 5, 10, ... that is no less.
    private static decimal Step(decimal least)
    {
        var power = 0.01m;
        while (power * 10 < least) power *= 10;
        return Steps.Select(m => m * power).FirstOrDefault(s => s >= least, 10 * power);
    }
}
