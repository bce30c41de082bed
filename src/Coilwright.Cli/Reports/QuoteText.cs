using Coilwright.Core.Pricing;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>The answer to a custom order as a page of text: what stands against it, what goes to the customer, and what it comes from.</summary>
internal static class QuoteText
{
    /// <summary>The page.</summary>
    public static string Of(Quoted quoted, Language language)
    {
        var (page, said, words, quote) = (new TextPage(), quoted.Said(language), language.Quote, quoted.Quote);
        page.Title(said.Title);
        foreach (var sentence in said.Head()) page.Paragraph(sentence);
        page.Heading(words.ReasonsHeading);
        foreach (var reason in said.Reasons()) page.Hanging(quote.Reasons.IsEmpty ? "- " : "! ", reason);
        page.Heading(words.PriceHeading);
        foreach (var sentence in said.Price()) page.Paragraph(sentence);
        page.Heading(words.WhenHeading);
        page.Paragraph(said.When());
        page.Heading(words.SizeHeading);
        foreach (var sentence in said.Size()) page.Paragraph(sentence);
        page.Heading(words.BeadsHeading);
        page.Table([(language.Shop.BeadColumn, false), (language.Shop.UseColumn, true), (language.Shop.SpareColumn, true), (language.Shop.HomeColumn, true), (language.Shop.MissingColumn, true), (words.HereColumn, false)], said.Beads(), 0);
        foreach (var line in said.From()) page.Hanging("- ", line);
        foreach (var sentence in said.Buying()) page.Paragraph(sentence);
        if (!quote.StandIns.IsEmpty)
        {
            page.Heading(words.StandInsHeading);
            foreach (var sentence in said.StandIns()) page.Hanging("- ", sentence);
        }
        page.Heading(words.WireHeading);
        foreach (var sentence in said.Wire()) page.Paragraph(sentence);
        page.Heading(words.HowHeading);
        foreach (var sentence in said.How()) page.Hanging("- ", sentence);
        page.Table([("", false), ("", false), ("", true)], new PriceSentences(quote.Prices, language).Lines(quote.Prices.Products.First(p => p.Sold == Sold.Piece)), 0, 1);
        page.Heading(words.TimeHeading);
        foreach (var step in said.Steps()) page.Hanging("- ", step);
        page.Paragraph(said.Time());
        if (!quoted.Written.IsEmpty)
        {
            page.Blank();
            if (!quote.CanBePromised) page.Paragraph(words.NotWritten);
            foreach (var file in quoted.Written) page.Paragraph(language.Fill(words.Written, ("file", file)));
        }
        return page.ToString();
    }
}
