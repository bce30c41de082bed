using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>How a piece lies, as a page of text.</summary>
internal static class SettleText
{
    // More than a page of them says less.
    private const int PushesShown = 12;

    public static string Of(Settled settled, Piece piece, ReckoningChoices choices, Language language)
    {
        var (page, sentences, words) = (new TextPage(), new SettleSentences(settled, piece, choices, language), language.Settle);
        page.Title(piece.Title);
        page.Heading(words.Heading);
        if (sentences.Trouble() is { } trouble) page.Paragraph(trouble);
        foreach (var sentence in sentences.Says()) page.Paragraph(sentence);
        foreach (var sentence in sentences.Minds()) page.Hanging("! ", sentence);
        if (sentences.Beside() is { } beside) page.Paragraph(beside);
        if (settled.Worn is null) return page.ToString();
        if (!settled.FocalStands.IsEmpty)
        {
            page.Heading(words.Stands);
            page.Table([(words.Arm, false), (words.At, false), (words.Tipped, true)], settled.FocalStands.Select(s => sentences.Of(s)).Select(s => new[] { s.Arm, s.At, s.Tips }), 0);
        }
        page.Heading(language.Report.Details);
        foreach (var sentence in sentences.Details()) page.Paragraph(sentence);
        page.Paragraph(words.LeftOut);
        if (settled.Pushes.IsEmpty) return page.ToString();
        page.Heading(words.Pushes);
        page.Table([(words.Between, false), (words.Beads, false), (words.Force, true)],
            settled.Pushes.OrderByDescending(p => p.ForceN).Take(PushesShown).Select(sentences.Of).Select(p => new[] { p.Kind, p.Beads, p.Force }), 1);
        if (settled.Pushes.Length > PushesShown) page.Paragraph(language.Sentence(words.MorePushes, ("count", settled.Pushes.Length - PushesShown)));
        return page.ToString();
    }
}
