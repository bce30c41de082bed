using System.Collections.Immutable;
using Coilwright.Core.Cutting;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A cutting plan as a page of text, to lay beside the shears.</summary>
internal static class CutText
{
    /// <summary>The page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sayStop">Pieces whose report says stop.</param>
    /// <param name="language">The language.</param>
    /// <param name="file">Where the wire that is there afterwards was to be written; null when it was not asked for.</param>
    /// <param name="isWritten">Whether it was.</param>
    public static string Of(CuttingPlan plan, ImmutableArray<int> sayStop, Language language, string? file, bool isWritten)
    {
        var (page, sentences, words) = (new TextPage(), new CutSentences(plan, language), language.Cut);
        page.Title(words.Title);
        foreach (var p in sayStop) page.Hanging("! ", language.Sentence(words.SaysStop, ("name", plan.Pieces[p].Name)));

        page.Heading(words.WhatHeading);
        page.Table([("", false), (words.PieceColumn, false), (words.CountColumn, true), (words.LengthColumn, true)], sentences.What(), 1);

        if (!plan.ComesOut)
        {
            page.Heading(words.NotCutHeading);
            foreach (var sentence in sentences.NotCut()) page.Hanging("! ", sentence);
        }
        if (!plan.Coils.IsEmpty)
        {
            page.Heading(words.CutHeading);
            page.Paragraph(words.HowToCount);
            foreach (var coil in plan.Coils)
            {
                page.Blank();
                page.Paragraph(sentences.Of(coil));
                foreach (var cut in sentences.Cuts(coil)) page.Hanging("  [ ] ", cut);
                page.Paragraph(sentences.Left(coil), 2);
            }
            page.Heading(words.SumHeading);
            foreach (var sentence in sentences.Sum()) page.Paragraph(sentence);
        }
        if (plan.Coils.Any(c => c.IsKept))
        {
            page.Heading(words.KeepHeading);
            foreach (var line in sentences.Keep()) page.Hanging("- ", line);
        }
        page.Heading(words.CautionsHeading);
        foreach (var caution in language.Cautions.OfMemoryWire) page.Hanging("- ", caution);
        if (file is null) return page.ToString();
        page.Blank();
        page.Paragraph(language.Sentence(isWritten ? words.Written : words.NotWritten, ("file", file)));
        return page.ToString();
    }
}
