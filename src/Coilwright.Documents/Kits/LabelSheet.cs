using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Kits;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Pages.Composition;
using Coilwright.Wording;

namespace Coilwright.Documents.Kits;

/// <summary>Labels for a batch of kits, as PDF for a sheet of labels: print it at 100 %, without fitting it to the page.</summary>
/// <remarks>Piece by piece: as many labels of the whole kit as there are kits, then as many of each bag, by key letter. Labels that are alike lie one after the other, as bags are filled.</remarks>
public static class LabelSheet
{
    /// <summary>Most labels in one file.</summary>
    public const int MostLabels = 3_000;

    private const double Point = 1 / PageSetup.PointMm;

    /// <summary>What stands in the way of labels: the sheet and its paper, the size of a label, how many there are; null when nothing does.</summary>
    public static Fault? Check(KitPlan plan, LabelGrid grid, Paper paper, Language language)
    {
        if (grid.Check(paper) is { } fault) return fault;
        if (Count(plan) is var count and > MostLabels)
            return Fault.Of(FaultCodes.LabelsTooMany, "", count.ToString(CultureInfo.InvariantCulture), ("max", MostLabels.ToString(CultureInfo.InvariantCulture)));
        return Drawings(plan, grid, language, false).Select(d => d.Check()).FirstOrDefault(f => f is not null);
    }

    /// <summary>How many labels a batch takes.</summary>
    public static long Count(KitPlan plan) => plan.Bags + plan.Kits.Sum(k => (long)k.Count);

    /// <summary>Draws them; what <see cref="Check"/> says is a fault.</summary>
    public static DrawnDocument Pdf(KitPlan plan, LabelGrid grid, PageSetup setup, Language language)
    {
        if (Check(plan, grid, setup.Paper, language) is { } fault) return new DrawnDocument(default, [fault]);
        return Pdf([.. Labels(plan, grid, language, setup.Greyscale)], grid, setup, language.Kit.LabelsTitle, language);
    }

    /// <summary>Lays labels on their sheets, one after the other.</summary>
    internal static DrawnDocument Pdf(Picture[] labels, LabelGrid grid, PageSetup setup, string title, Language language)
    {
        var document = new PageDocument
        {
            Title = title,
            Language = language.Code,
            Blocks = [],
            Words = new PageWords { PageOf = (_, _) => "", JoinAt = _ => "" },
        };
        var texts = labels.Distinct().SelectMany(l => l.Inked().Select(p => p.Mark).OfType<Text>().Select(t => t.Content)).Distinct().Select(t => ("", t));
        return PdfCanvas.Draw(document, texts, () => [.. labels.Chunk(grid.OnSheet).Select(sheet => Page(sheet, grid, setup.Paper))], setup.Greyscale);
    }

    private static ImmutableArray<LabelDrawing> Drawings(KitPlan plan, LabelGrid grid, Language language, bool greyscale) =>
        [.. plan.Kits.Select((_, k) => new LabelDrawing(plan, k, grid, language, greyscale))];

    private static IEnumerable<Picture> Labels(KitPlan plan, LabelGrid grid, Language language, bool greyscale) =>
        Drawings(plan, grid, language, greyscale).SelectMany((drawing, k) => plan.Kits[k].Bags.Select(drawing.OfBag).Prepend(drawing.OfKit()).SelectMany(label => Enumerable.Repeat(label, plan.Kits[k].Count)));

    private static ComposedPage Page(Picture[] labels, LabelGrid grid, Paper paper)
    {
        var marks = ImmutableArray.CreateBuilder<PageMark>();
        for (var i = 0; i < labels.Length; i++)
        {
            var place = grid.Place(i, paper);
            double x = place.LeftMm * Point, y = place.TopMm * Point;
            marks.Add(new PageMark.Open(Tag.Figure) { Alt = labels[i].Description, Area = new Area(x, y, place.WidthMm * Point, place.HeightMm * Point) });
            marks.Add(new PageMark.Drawing(labels[i], x, y, Point, 0, labels[i].WidthMm));
            marks.Add(PageMark.Close.It);
        }
        return new ComposedPage(paper.WidthMm * Point, paper.HeightMm * Point, marks.ToImmutable());
    }
}
