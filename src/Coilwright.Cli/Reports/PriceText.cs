using Coilwright.Core.Pricing;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What a piece costs and what to ask for it as a page of text.</summary>
internal static class PriceText
{
    /// <summary>The page.</summary>
    public static string Of(PricePlan plan, Language language)
    {
        var (page, sentences, words) = (new TextPage(), new PriceSentences(plan, language), language.Price);
        page.Title(words.Title);
        page.Paragraph(sentences.For());
        foreach (var sentence in sentences.Mind()) page.Hanging("! ", sentence);
        foreach (var product in plan.Products)
        {
            page.Heading(sentences.HeadingOf(product.Sold));
            page.Table([("", false), ("", false), ("", true)], sentences.Lines(product), 0, 1);
        }

        page.Heading(words.AskHeading);
        if (!plan.Prices.IsEmpty)
        {
            page.Table(Columns(words), sentences.Prices(), 0);
            page.Blank();
        }
        foreach (var sentence in sentences.Rules()) page.Hanging("- ", sentence);
        if (sentences.AtHeading() is { } heading)
        {
            page.Heading(heading);
            page.Table(Columns(words), sentences.At(), 0);
        }
        page.Blank();
        foreach (var sentence in sentences.Notes()) page.Paragraph(sentence);
        return page.ToString();
    }

    private static (string, bool)[] Columns(PriceWords words) =>
        [(words.RuleColumn, false), (words.PriceColumn, true), (words.LeftColumn, true), (words.GainColumn, true), (words.MarginColumn, true), (words.HourColumn, true)];
}
