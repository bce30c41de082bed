using System.Collections.Immutable;
using Coilwright.Core.Kits;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A batch of kits as a page of text, to lay beside the trays.</summary>
internal static class KitText
{
    /// <summary>The page.</summary>
    /// <param name="plan">The batch.</param>
    /// <param name="language">The language.</param>
    /// <param name="files">The files that were written.</param>
    public static string Of(KitPlan plan, Language language, ImmutableArray<string> files)
    {
        var (page, sentences, words) = (new TextPage(), new KitSentences(plan, language), language.Kit);
        page.Title(words.Title);
        page.Paragraph(sentences.For());
        foreach (var sentence in sentences.Mind()) page.Hanging("! ", sentence);

        foreach (var kit in plan.Kits)
        {
            page.Heading(sentences.Heading(kit));
            page.Table([(words.LetterColumn, false), (language.Shop.BeadColumn, false), (language.Shop.UseColumn, true), (language.Shop.SpareColumn, true), (words.BagColumn, true)], sentences.Bags(kit), 1);
            page.Paragraph(sentences.Wire(kit), 2);
        }

        page.Heading(words.PickHeading);
        foreach (var note in sentences.PickNotes()) page.Paragraph(note);
        (string Heading, bool Right, Func<PickLine, string> Cell, bool IsThere)[] all =
        [
            ("", false, _ => "[ ]", true),
            (words.DrawerColumn, false, KitSentences.Drawers, plan.HasDrawers),
            (words.TakeColumn, true, p => sentences.Count(p.All), true),
            (language.Shop.BeadColumn, false, p => sentences.NameOf(p.Item), true),
            (language.Shop.HomeColumn, true, p => sentences.Count(p.Item.Home), plan.HomeIsKnown),
            (words.ShortColumn, true, p => sentences.Count(p.Item.Missing), plan.HomeIsKnown),
            (words.IntoColumn, false, sentences.Into, true),
        ];
        var columns = all.Where(c => c.IsThere).ToArray();
        page.Table([.. columns.Select(c => (c.Heading, c.Right))], plan.Picks.Select(p => columns.Select(c => c.Cell(p)).ToArray()), Array.FindIndex(columns, c => c.Heading == language.Shop.BeadColumn), columns.Length - 1);
        foreach (var line in sentences.CutAll()) page.Hanging("  [ ]  ", line);

        if (plan.HomeIsKnown) page.Heading(words.NowHeading);
        foreach (var sentence in sentences.Now()) page.Paragraph(sentence);

        page.Heading(language.Cut.CautionsHeading);
        foreach (var caution in sentences.Cautions()) page.Hanging("- ", caution);
        if (files.IsEmpty) return page.ToString();
        page.Blank();
        foreach (var file in files) page.Paragraph(language.Sentence(words.Written, ("file", file)));
        return page.ToString();
    }
}
