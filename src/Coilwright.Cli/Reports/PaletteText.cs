using Coilwright.Core.Palettes;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>How colours go together, as a page of text.</summary>
internal static class PaletteText
{
    /// <summary>The page.</summary>
    public static string Of(PaletteReport report, Language language)
    {
        var (page, sentences, words) = (new TextPage(), new PaletteSentences(report, language), language.Palette);
        page.Title(sentences.For());
        page.Paragraph(words.Lead);
        foreach (var sentence in sentences.InAll()) page.Hanging("- ", sentence);
        foreach (var sight in Enum.GetValues<Sight>())
        {
            page.Heading(words.Sights[sight]);
            var lost = report.Lost(sight).Any();
            foreach (var sentence in sentences.Lost(sight))
                if (lost) page.Hanging("! ", sentence); else page.Paragraph(sentence);
        }
        if (sentences.WhatToDo() is { } what)
        {
            page.Blank();
            page.Paragraph(what);
        }
        page.Heading(words.KindsHeading);
        page.Table([(words.Letter, false), (words.Bead, false), (words.Colours, false), (words.Lightness, true)],
            report.Kinds.Select(k => new[] { k.Kind.Letter, k.Kind.Bead.Name, string.Join(", ", k.Kind.Bead.Colours), language.Number(k.GreyL, 0) }), 1, 2);
        page.Heading(words.SourcesHeading);
        page.Paragraph(sentences.Sources());
        return page.ToString();
    }
}
