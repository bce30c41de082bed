using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Beads that may stand in for another, as a page of text.</summary>
internal static class SubstituteText
{
    /// <summary>The page.</summary>
    public static string Of(SubstitutesFound found, Language language)
    {
        var (page, sentences, words) = (new TextPage(), new SubstituteSentences(found, language), language.Substitutes);
        page.Title(words.Title);
        page.Paragraph(sentences.For());
        foreach (var sentence in sentences.None()) page.Hanging("! ", sentence);
        foreach (var substitute in found.All)
        {
            page.Heading(sentences.Heading(substitute));
            foreach (var sentence in sentences.Against(substitute)) page.Hanging("! ", sentence);
            page.Paragraph(sentences.Differs(substitute));
            page.Table([("", false), (words.NowColumn, false), (words.ThenColumn, false)], sentences.Piece(substitute).Select(d => new[] { d.What, d.One, d.Other }), 0, 1, 2);
        }
        return page.ToString();
    }
}
