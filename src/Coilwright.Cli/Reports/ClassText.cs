using System.Collections.Immutable;
using Coilwright.Core.Classes;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A class on a piece as a page of text.</summary>
internal static class ClassText
{
    /// <summary>The page.</summary>
    public static string Of(ClassPlan plan, Language language, ImmutableArray<string> files)
    {
        var (page, said, words) = (new TextPage(), new ClassSentences(plan, language), language.Class);
        page.Title(said.Title);
        foreach (var sentence in said.Head()) page.Paragraph(sentence);
        page.Heading(words.ReasonsHeading);
        foreach (var reason in said.Reasons()) page.Hanging(plan.Reasons.IsEmpty ? "- " : "! ", reason);
        page.Heading(words.TimetableHeading);
        page.Table([(words.TimeColumn, true), (words.MinutesColumn, true), (words.StepColumn, false)], said.Timetable().Select(s => new[] { s.Time, s.Minutes, s.What }), 2);
        page.Paragraph(said.Takes());
        page.Paragraph(words.Evenly);
        page.Heading(words.BeforehandHeading);
        foreach (var sentence in said.Beforehand()) page.Hanging("- ", sentence);
        foreach (var sentence in said.CouldBeBeforehand()) page.Paragraph(sentence);
        page.Heading(words.KitsHeading);
        foreach (var sentence in said.Kits()) page.Paragraph(sentence);
        page.Table([(language.Kit.LetterColumn, false), (language.Shop.BeadColumn, false), (words.EachColumn, true), (words.AllColumn, true), (language.Shop.HomeColumn, true), (words.BuyColumn, true)], said.Bags(), 1);
        foreach (var sentence in said.Buying().Append(said.Wire())) page.Paragraph(sentence);
        foreach (var sentence in said.Drawers()) page.Hanging("- ", sentence);
        page.Heading(words.ToolsHeading);
        page.Table([(words.ToolColumn, false), (words.ShareColumn, true), (words.ToolsColumn, true)], said.Tools(), 0);
        page.Paragraph(words.ToolsNote);
        page.Heading(words.CostHeading);
        page.Table([("", false), ("", true)], said.Cost().Select(l => new[] { l.For, l.Amount }), 0);
        foreach (var sentence in said.Gaps()) page.Hanging("- ", sentence);
        page.Heading(words.PriceHeading);
        foreach (var sentence in said.Price()) page.Paragraph(sentence);
        page.Heading(language.Cut.CautionsHeading);
        foreach (var caution in said.Cautions()) page.Hanging("- ", caution);
        if (!files.IsEmpty) page.Blank();
        foreach (var file in files) page.Paragraph(language.Fill(words.Written, ("file", file)));
        return page.ToString();
    }
}
