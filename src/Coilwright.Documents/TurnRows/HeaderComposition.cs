using System.Collections.Immutable;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.TurnRows;

/// <summary>The head of the picture: its title, its figures, and how it lines up in words. Layout only.</summary>
internal static class HeaderComposition
{
    /// <summary>Lays it out from a height down and gives the height below it.</summary>
    internal static double Lay(Style style, TurnRowsModel model, bool hasTies, double leftMm, double rightMm, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        var width = rightMm - leftMm;
        var y = topMm;
        var title = style.Title(width);
        foreach (var line in style.Face.Lines(model.Reckoned.Piece.Title, title.SizeMm, TextWeight.Regular, width, 3))
        {
            marks.Add(title.Under(line, leftMm, y) with { Class = "title" });
            y += title.LineMm;
        }
        y = Figures(style, model, leftMm, rightMm, y + 1.2, marks);
        return LiningUp(style, model, hasTies, leftMm, rightMm, y + 1.6, marks);
    }

    // Caption over value, side by side as far as the width goes.
    private static double Figures(Style style, TurnRowsModel model, double leftMm, double rightMm, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        double x = leftMm, y = topMm;
        var line = style.Caption.LineMm + style.Value.LineMm;
        foreach (var (caption, value) in FiguresOf(style, model))
        {
            var shown = style.Face.Shortened(value, style.Value.SizeMm, style.Value.Weight, rightMm - leftMm);
            var width = Math.Max(style.Caption.WidthMm(caption), style.Value.WidthMm(shown));
            if (x > leftMm && x + width > rightMm)
            {
                x = leftMm;
                y += line + 1.4;
            }
            marks.Add(style.Caption.Under(caption, x, y) with { Class = "caption" });
            marks.Add(style.Value.Under(shown, x, y + style.Caption.LineMm) with { Class = "value" });
            x += width + 7;
        }
        return y + line;
    }

    private static IEnumerable<(string Caption, string Value)> FiguresOf(Style style, TurnRowsModel model)
    {
        var (words, reckoned) = (style.Words, model.Reckoned);
        yield return (words.Wrist, style.Length(reckoned.WristMm));
        yield return (words.WirePerTurn, style.Length(model.RowMm));
        yield return (words.TurnsWorn, style.Language.Number(reckoned.Fit.TurnsWorn, 1));
        yield return (words.Beads, style.Language.Number(reckoned.Lie.Count, 0));
        if (reckoned.Focal is { } focal)
        {
            var template = Math.Abs(focal.OffMm) < 0.5 ? words.FocalOnTop : focal.OffMm > 0 ? words.FocalPast : words.FocalBefore;
            yield return (words.Focal, style.Language.Fill(template, ("turn", focal.Turn), ("off", style.Short(Math.Abs(focal.OffMm)))));
        }
    }

    private static double LiningUp(Style style, TurnRowsModel model, bool hasTies, double leftMm, double rightMm, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        var y = topMm;
        var report = model.Reckoned.LiningUp;
        var said = style.Language.Terms.LiningUp[report.Word];
        if (report.Cover is { } cover)
            said += " " + style.Language.Fill(report.GroupsAreRuns ? style.Words.CoverRuns : style.Words.Cover, ("percent", cover));
        foreach (var line in style.Face.Lines(said, style.Body.SizeMm, TextWeight.Regular, rightMm - leftMm))
        {
            marks.Add(style.Body.Under(line, leftMm, y) with { Class = "lining-up" });
            y += style.Body.LineMm;
        }
        var ties = hasTies ? model.Rows.SelectMany(r => r.Ties).ToArray() : [];
        y += 0.5;
        if (ties.Any(t => !t.IsWished)) y = Legend(style, style.Words.Hatched, isWished: false, leftMm, rightMm, y, marks);
        if (ties.Any(t => t.IsWished)) y = Legend(style, style.Words.Open, isWished: true, leftMm, rightMm, y, marks);
        return y;
    }

    private static double Legend(Style style, string words, bool isWished, double leftMm, double rightMm, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        const double swatchMm = 7;
        var y = topMm;
        var box = Box.At(leftMm, y + (style.Caption.LineMm - 2.2) / 2 - 0.2, swatchMm, 2.2);
        marks.Add(TieBar.Draw(style, box, isWished));
        foreach (var line in style.Face.Lines(words, style.Caption.SizeMm, TextWeight.Regular, rightMm - leftMm - swatchMm - 2))
        {
            marks.Add(style.Caption.Under(line, leftMm + swatchMm + 2, y) with { Class = "legend" });
            y += style.Caption.LineMm;
        }
        return y;
    }
}
