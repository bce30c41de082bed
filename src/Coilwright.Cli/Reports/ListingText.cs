using Coilwright.Core.Listings;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What is told of a piece to whoever may buy it.</summary>
/// <param name="Name">The piece, by its file.</param>
/// <param name="Listing">The listing.</param>
/// <param name="Fit">Whether it fits a wrist; null when nobody asked.</param>
/// <param name="Cautions">Figures behind the cautions.</param>
internal sealed record Listed(string Name, Listing Listing, FitAnswer? Fit, CautionData Cautions);

/// <summary>A listing as a page of text: the short forms, the text itself as it is copied, and what the maker should know.</summary>
internal static class ListingText
{
    /// <summary>The page.</summary>
    public static string Of(Listed listed, Language language, string? file)
    {
        var (page, sentences, words) = (new TextPage(), new ListingSentences(listed.Listing, language), language.Listing);
        page.Title(words.Heading);
        foreach (var sentence in sentences.ForTheMaker(listed.Cautions.SmallParts)) page.Hanging("! ", sentence);
        if (listed.Fit is { } fit)
        {
            var said = new FitAnswerSentences(fit, language);
            page.Heading(language.FitAnswer.Heading);
            page.Paragraph(said.For() + " " + said.Answer());
            foreach (var sentence in said.More()) page.Hanging("- ", sentence);
        }
        page.Heading(words.TitleHeading);
        page.Paragraph(sentences.TitleLine());
        page.Heading(language.Fill(words.SummaryHeading, ("most", ListingSentences.MostInShort)));
        page.Paragraph(sentences.Summary());
        foreach (var part in sentences.Parts())
        {
            page.Heading(part.Heading);
            foreach (var line in part.Lines)
                if (part.IsList) page.Hanging("- ", line);
                else page.Paragraph(line);
        }
        page.Heading(words.LimitsHeading);
        page.Paragraph(words.LimitsNote);
        foreach (var limit in listed.Cautions.Metals) page.Hanging("- ", sentences.LimitOf(limit));
        if (file is not null)
        {
            page.Blank();
            page.Paragraph(language.Fill(words.Written, ("file", file)));
        }
        return page.ToString();
    }
}
