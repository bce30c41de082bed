using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Prices;

/// <summary>What each price is made of: a bar for each rule, all to one scale, its parts told apart by number and hatch.</summary>
/// <remarks>A bar is as long as its price. Where a price loses, what it costs runs beyond it: the part beyond is framed in dashes after a thick stroke at the price.</remarks>
public static class PriceBars
{
    private const double BarMm = 7, AfterBarMm = 3.2, UnderWordsMm = 0.7, NumberMm = 3.4, SwatchMm = 4.2;

    // Beside the bars, for half of their widest line.
    private const double EdgeMm = 0.5;

    /// <summary>Draws the bars.</summary>
    /// <param name="plan">The plan; at least one rule.</param>
    /// <param name="options">How they are drawn.</param>
    public static Picture Of(PricePlan plan, PricePictureOptions? options = null)
    {
        options ??= new PricePictureOptions();
        var (inks, language, said) = (options.Inks, options.Language, new PriceSentences(plan, options.Language));
        Lettering name = new(options.Typeface, 3.1, inks.Ink, TextWeight.Bold), small = new(options.Typeface, 2.9, inks.Ink);
        PriceMake[] makes = [.. plan.Prices.Select(p => PriceMake.Of(plan, p))];
        var longest = (double)makes.Max(m => Math.Max(m.Asked.Outcome.Price, m.Asked.Outcome.Price - m.Asked.Outcome.Gain));
        double Wide(decimal amount) => longest == 0 ? 0 : (double)amount / longest * (options.WidthMm - 2 * EdgeMm);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var y = 0.5;
        foreach (var (make, r) in makes.Select((m, r) => (m, r)))
        {
            var price = said.Money(make.Asked.Outcome.Price);
            var room = options.WidthMm - name.WidthMm(price) - 2;
            marks.Add(name.Under(options.Typeface.Shortened($"{KeyLetters.Of(r)}  {make.Asked.Rule.Name}", name.SizeMm, name.Weight, room), 0, y) with { Class = "rule" });
            marks.Add(name.Under(price, options.WidthMm, y, TextAnchor.End) with { Class = "price" });
            y += name.LineMm + UnderWordsMm;
            var x = EdgeMm;
            foreach (var (part, amount) in make.Parts.Where(p => p.Amount > 0))
            {
                var box = Box.At(x, y, Wide(amount), BarMm);
                marks.AddRange(Part(part, box, inks, small));
                x += Wide(amount);
            }
            if (make.Asked.Outcome.Gain < 0)
            {
                var at = EdgeMm + Wide(make.Asked.Outcome.Price);
                marks.Add(new Rectangle(new Box(at, y, x, y + BarMm), Paint.Lined(new Pen(inks.Accent, 0.6) { DashesMm = [1.2, 0.8] })) { Class = "loss" });
                marks.Add(new Line(new(at, y - 0.6), new(at, y + BarMm + 0.6), new Pen(inks.Accent, 0.9)) { Class = "at-price" });
            }
            y += BarMm + AfterBarMm;
        }
        y = Key(makes, options, small, y, marks);
        var prices = string.Join("; ", makes.Select(m => $"{m.Asked.Rule.Name} {said.Money(m.Asked.Outcome.Price)}, {string.Join(", ", m.Parts.Where(p => p.Amount != 0).Select(p => $"{NameOf(p.Part, p.Amount, language)} {language.Amount(Math.Abs(p.Amount))}"))}"));
        return new Picture(options.WidthMm, y, language.Price.MadeOf, language.Fill(language.Price.MadeOfSays, ("prices", prices)), marks.ToImmutable()) { Language = language.Code };
    }

    private static double Key(PriceMake[] makes, PricePictureOptions options, Lettering small, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        var parts = makes.SelectMany(m => m.Parts).Where(p => p.Amount > 0).Select(p => p.Part).Distinct().Order().ToArray();
        double x = 0, y = topMm;
        foreach (var part in parts)
        {
            var words = NameOf(part, 1, options.Language);
            var wide = 2 * SwatchMm + 1.2 + small.WidthMm(words);
            if (x > 0 && x + wide > options.WidthMm) (x, y) = (0, y + SwatchMm + 1.6);
            marks.AddRange(Part(part, Box.At(x + EdgeMm, y, 2 * SwatchMm - 2 * EdgeMm, SwatchMm), options.Inks, small));
            marks.Add(small.Centred(words, new Point(x + 2 * SwatchMm + 1.2, y + SwatchMm / 2), TextAnchor.Start) with { Class = "key" });
            x += wide + 4;
        }
        return y + SwatchMm + 0.6;
    }

    // Number and hatch tell the parts apart without colour; what is left is blank in a thick frame, since it is what is looked for.
    private static IEnumerable<Mark> Part(PricePart part, Box box, Palette inks, Lettering small)
    {
        var area = Outline.Rectangle(box);
        var ground = part switch { PricePart.Materials => inks.Paper.Mixed(inks.Ink, 0.26), PricePart.Gain => inks.Paper, _ => inks.Paper.Mixed(inks.Ink, 0.07) };
        yield return new Rectangle(box, Paint.Filled(ground)) { Class = $"part {part.ToString().ToLowerInvariant()}" };
        (double Deg, double Apart)[] lines = part switch { PricePart.Labour => [(45, 1.3)], PricePart.Overhead => [(135, 0.9)], PricePart.Fees => [(45, 1.1), (135, 1.1)], _ => [] };
        foreach (var (deg, apart) in lines) yield return new Drawn(Hatching.Lines(area, deg, apart), Paint.Lined(inks.Quiet, 0.22)) { Class = "hatch" };
        yield return new Rectangle(box, Paint.Lined(part == PricePart.Gain ? new Pen(inks.Accent, 0.7) : new Pen(inks.Ink, 0.25)));
        var number = ((int)part + 1).ToString(CultureInfo.InvariantCulture);
        if (box.WidthMm < NumberMm + 0.6) yield break;
        var middle = box.Middle;
        yield return new Circle(middle, NumberMm / 2, Paint.Filled(inks.Paper)) { Class = "under-number" };
        yield return (small with { Weight = TextWeight.Bold }).Centred(number, middle) with { Class = "number" };
    }

    private static string NameOf(PricePart part, decimal amount, Language language) => language.Price.PriceParts[amount < 0 ? "loss" : part.ToString().ToLowerInvariant()];
}
