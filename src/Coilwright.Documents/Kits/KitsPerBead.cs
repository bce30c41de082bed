using System.Collections.Immutable;
using Coilwright.Core.Kits;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Prices;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Kits;

/// <summary>How many kits of one piece each bead at home makes: a bar for each under its key letter, the shortest first.</summary>
/// <remarks>Bars that end at the fewest are hatched: those beads run out first. A stroke marks that number through all of them.</remarks>
public static class KitsPerBead
{
    /// <summary>Most beads that are drawn: what is far from running out is not what is asked.</summary>
    public const int Most = 12;

    private const double BarMm = 4.6, RowMm = 6.6, LetterMm = 6;

    /// <summary>Draws it.</summary>
    /// <param name="plan">The plan; what is at home is known in it.</param>
    /// <param name="now">The kits of one piece.</param>
    /// <param name="options">How it is drawn.</param>
    public static Picture Of(KitPlan plan, KitsNow now, PricePictureOptions? options = null)
    {
        options ??= new PricePictureOptions();
        var (inks, language, said, kit) = (options.Inks, options.Language, new KitSentences(plan, options.Language), plan.Kits[now.Kit]);
        Lettering bold = new(options.Typeface, 3.1, inks.Ink, TextWeight.Bold), small = new(options.Typeface, 2.8, inks.Ink);
        var shown = now.Each.Take(Most).ToArray();
        string LetterOf(string item) => kit.Bags.First(b => b.Item == item).Letter;
        var names = Math.Min(options.WidthMm * 0.4, shown.Max(s => small.WidthMm(said.NameOf(s.Item))) + 2);
        var counts = shown.Max(s => bold.WidthMm(said.Count(s.Count))) + 2;
        double left = LetterMm + names, room = options.WidthMm - left - counts - 0.5, most = Math.Max(1, shown.Max(s => s.Count));
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var y = 1.0;
        foreach (var (item, count) in shown)
        {
            var middle = y + BarMm / 2;
            marks.Add(bold.Centred(LetterOf(item.Id), new Point(0, middle), TextAnchor.Start) with { Class = "bead-letter" });
            marks.Add(small.Centred(options.Typeface.Shortened(said.NameOf(item), small.SizeMm, small.Weight, names - 1.5), new Point(LetterMm, middle), TextAnchor.Start) with { Class = "name" });
            var box = Box.At(left, y, count / most * room, BarMm);
            var first = count == now.Count;
            marks.Add(new Rectangle(box, new Paint(first ? inks.Paper : inks.Paper.Mixed(inks.Ink, 0.2), first ? new Pen(inks.Accent, 0.5) : new Pen(inks.Ink, 0.25))) { Class = first ? "bar first" : "bar" });
            if (first) marks.Add(new Drawn(Hatching.Lines(Outline.Rectangle(box), 45, 1.1), Paint.Lined(inks.Accent, 0.22)) { Class = "hatch" });
            marks.Add(bold.Centred(said.Count(count), new Point(box.RightMm + 1.2, middle), TextAnchor.Start) with { Class = "count" });
            y += RowMm;
        }
        var at = left + now.Count / most * room;
        marks.Add(new Line(new(at, 0.4), new(at, y - RowMm + BarMm + 0.8), new Pen(inks.Accent, 0.5) { DashesMm = [1.2, 0.8] }) { Class = "fewest" });
        var beads = string.Join("; ", shown.Select(s => language.Fill(language.Kit.EachBead, ("letter", LetterOf(s.Item.Id)), ("bead", said.NameOf(s.Item)), ("count", said.Count(s.Count)))));
        return new Picture(options.WidthMm, y, language.Kit.EachHeading, language.Fill(language.Kit.EachSays, ("name", kit.Name), ("beads", beads)), marks.ToImmutable()) { Language = language.Code };
    }
}
