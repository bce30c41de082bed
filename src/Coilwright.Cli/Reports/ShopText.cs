using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A shopping plan as a page of text, to take to the shop.</summary>
internal static class ShopText
{
    /// <summary>The page.</summary>
    /// <param name="shopped">What came of it.</param>
    /// <param name="language">The language.</param>
    /// <param name="file">Where what to buy was written; null when it was not.</param>
    public static string Of(Shopped shopped, Language language, string? file)
    {
        var (page, sentences, words) = (new TextPage(), new ShopSentences(shopped, language), language.Shop);
        page.Title(words.Title);
        page.Paragraph(sentences.For());
        foreach (var sentence in sentences.Mind()) page.Hanging("! ", sentence);

        page.Heading(words.NeedHeading);
        page.Table([(words.BeadColumn, false), (words.UseColumn, true), (words.SpareColumn, true), (words.HomeColumn, true), (words.MissingColumn, true)], sentences.Needs(), 0);

        page.Heading(words.BuyHeading);
        foreach (var sentence in sentences.NotBought()) page.Hanging("! ", sentence);
        foreach (var order in sentences.Orders())
        {
            page.Blank();
            page.Paragraph(order.Heading);
            if (order.There.Length > 0) page.Paragraph(order.There, 2);
            foreach (var line in order.Lines) page.Hanging("  [ ] ", line);
        }
        var loose = sentences.Unpriced().ToList();
        if (loose.Count > 0)
        {
            page.Blank();
            page.Paragraph(words.UnpricedHeading);
            foreach (var line in loose) page.Hanging("  [ ] ", line);
        }
        if (shopped.Wire is not null)
        {
            page.Blank();
            page.Paragraph(words.WireHeading);
            foreach (var line in sentences.Wire()) page.Hanging("  [ ] ", line);
        }

        page.Heading(words.SumHeading);
        foreach (var sentence in sentences.Sum()) page.Paragraph(sentence);

        var left = sentences.Left().ToList();
        if (left.Count > 0)
        {
            page.Heading(words.LeftHeading);
            page.Table([(words.BeadColumn, false), (words.LeftColumn, true), (words.LeftCostColumn, true)], left, 0);
            foreach (var sentence in sentences.LeftInAll()) page.Paragraph(sentence);
        }
        var more = sentences.More().ToList();
        if (more.Count > 0) page.Heading(words.MoreHeading);
        foreach (var sentence in more) page.Hanging("- ", sentence);
        if (file is null) return page.ToString();
        page.Blank();
        page.Paragraph(language.Sentence(words.Written, ("file", file)));
        return page.ToString();
    }
}
