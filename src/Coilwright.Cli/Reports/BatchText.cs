using System.Collections.Immutable;
using Coilwright.Core.Batches;
using Coilwright.Core.Cutting;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Making several alike as a page of text.</summary>
internal static class BatchText
{
    /// <summary>The page.</summary>
    public static string Of(BatchPlan plan, CuttingPlan? wire, Language language, ImmutableArray<string> files)
    {
        var (page, said, words) = (new TextPage(), new BatchSentences(plan, language), language.Batch);
        page.Title(words.Title);
        page.Paragraph(said.Heading());
        foreach (var sentence in said.Mind()) page.Hanging("! ", sentence);
        page.Heading(words.TraysHeading);
        foreach (var sentence in said.Trays()) page.Paragraph(sentence);
        (string Heading, bool Right, Func<TrayWell, string> Cell, bool IsThere)[] all =
        [
            (words.TrayColumn, true, w => said.Count(w.Tray), plan.TraysEach > 1),
            (words.WellColumn, true, w => said.Count(w.Well), true),
            (words.TurnColumn, true, w => w.Turn is { } turn ? said.Count(turn) : "", plan.IsByTurn),
            (language.Kit.LetterColumn, false, w => w.Kind.Letter, true),
            (language.Shop.BeadColumn, false, w => w.Kind.Bead.Name, true),
            (words.CountColumn, true, w => said.Count(w.Count), true),
        ];
        var columns = all.Where(c => c.IsThere).ToArray();
        page.Table([.. columns.Select(c => (c.Heading, c.Right))], plan.Wells.Select(w => columns.Select(c => c.Cell(w)).ToArray()), columns.Length - 2);
        page.Heading(words.FetchHeading);
        page.Table([("", false), ("", false), ("", true)], plan.Reckoned.Counts.Select(k => new[] { k.Letter, k.Bead.Name, language.Number((double)k.Count * plan.Count, 0) }), 1);
        page.Heading(words.WireHeading);
        page.Paragraph(said.Wire());
        if (wire is not null)
        {
            var cutting = new CutSentences(wire, language);
            page.Paragraph(language.Bench.Batch.WireAtHand);
            foreach (var coil in wire.Coils) page.Hanging("- ", $"{cutting.Of(coil)} {string.Join("; ", cutting.Cuts(coil))}. {cutting.Left(coil)}");
            foreach (var sentence in cutting.NotCut()) page.Hanging("! ", sentence);
        }
        page.Heading(words.TimeHeading);
        foreach (var step in said.Steps()) page.Hanging("- ", step);
        page.Paragraph(said.Time());
        page.Heading(language.Cut.CautionsHeading);
        foreach (var caution in said.Cautions()) page.Hanging("- ", caution);
        if (!files.IsEmpty) page.Blank();
        foreach (var file in files) page.Paragraph(language.Fill(words.Written, ("file", file)));
        return page.ToString();
    }
}
