using Coilwright.Core.Arrangement;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>An order without a visible repeat, as a page of text.</summary>
internal static class ScatterText
{
    /// <summary>The page.</summary>
    /// <param name="scattered">What came of it.</param>
    /// <param name="language">The language.</param>
    /// <param name="file">Where it was written; null when there was nothing to write.</param>
    public static string Of(Scattered scattered, Language language, string? file)
    {
        var (page, sentences, words) = (new TextPage(), new ScatterSentences(scattered, language), language.Scatter);
        page.Title(scattered.Before.Piece.Title);
        page.Heading(words.Heading);
        foreach (var sentence in sentences.Says()) page.Paragraph(sentence);
        foreach (var line in scattered.Edit?.Text.Split('\n') ?? []) page.Hanging("  ", line);
        page.Blank();
        foreach (var detail in sentences.Details()) page.Paragraph(detail);
        if (file is not null) page.Paragraph(language.Sentence(words.Written, ("file", file)));
        return page.ToString();
    }
}
