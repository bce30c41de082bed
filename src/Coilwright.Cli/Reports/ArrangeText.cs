using Coilwright.Core.Arrangement;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>The ideas for a better order, as a page of text.</summary>
internal static class ArrangeText
{
    /// <summary>The page.</summary>
    /// <param name="arranged">What was found.</param>
    /// <param name="language">The language.</param>
    /// <param name="file">Where the best was to be written.</param>
    public static string Of(Arranged arranged, Language language, string file)
    {
        var (page, sentences, words) = (new TextPage(), new IdeaSentences(arranged, language), language.Ideas);
        page.Title(arranged.Before.Piece.Title);
        foreach (var sentence in sentences.Now()) page.Paragraph(sentence);
        foreach (var idea in arranged.Ideas)
        {
            page.Heading(sentences.Heading(idea));
            foreach (var change in sentences.Changes(idea)) page.Hanging("- ", change);
            foreach (var effect in sentences.Effects(idea)) page.Paragraph(effect);
            page.Paragraph(sentences.Proof(idea));
        }
        page.Blank();
        foreach (var detail in sentences.Details()) page.Paragraph(detail);
        if (sentences.Front().ToList() is { Count: > 0 } front)
        {
            page.Paragraph(words.Front);
            page.Table([(words.FrontBeads, false), (words.FrontLoss, true)], [.. front.Select(f => (string[])[f.Beads, f.Loss])], 0, 1);
        }
        page.Paragraph(language.Sentence(arranged.Ideas.IsEmpty ? words.NotWritten : words.Written, ("file", file)));
        return page.ToString();
    }
}
