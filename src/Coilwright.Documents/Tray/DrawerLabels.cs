using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Tray;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Kits;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Tray;

/// <summary>Labels for the drawers of a tray, as PDF for a sheet of labels: the drawer large, and what lies in it. Print it at 100 %, without fitting it to the page.</summary>
public static class DrawerLabels
{
    // White inside a label, so that a sheet fed a little askew loses nothing. Our choice.
    private const double PadMm = 2;

    // A drawer's name is read from where one sits; what is in it from where one stands.
    private const double MostNameMm = 8, LeastNameMm = 3.5;

    // So that the largest bead of a drawer does not touch the line under it.
    private const double BeadGapMm = 1.2;

    private const double LeastAcrossMm = 20, LeastDownMm = 10;

    /// <summary>The drawers in order, each with its kinds by name.</summary>
    public static ImmutableArray<(string Drawer, ImmutableArray<TrayKind> Kinds)> DrawersOf(IEnumerable<TrayKind> kinds) =>
        [.. kinds.Where(k => k.Drawer is not null).GroupBy(k => k.Drawer!, StringComparer.Ordinal).OrderBy(g => g.Key, TrayIndex.NameOrder)
            .Select(g => (g.Key, g.OrderBy(k => k.Bead.Name, TrayIndex.NameOrder).ThenBy(k => k.Key, StringComparer.Ordinal).ToImmutableArray()))];

    /// <summary>What stands in the way of labels: the sheet and its paper, the size of a label, how many there are; null when nothing does.</summary>
    public static Fault? Check(int drawers, LabelGrid grid, Paper paper)
    {
        if (grid.Check(paper) is { } fault) return fault;
        if (drawers > LabelSheet.MostLabels)
            return Fault.Of(FaultCodes.LabelsTooMany, "", drawers.ToString(CultureInfo.InvariantCulture), ("max", LabelSheet.MostLabels.ToString(CultureInfo.InvariantCulture)));
        return grid.WidthMm >= LeastAcrossMm && grid.HeightMm >= LeastDownMm ? null
            : Fault.Of(FaultCodes.LabelsTooSmall, "", $"{LabelGrid.Written(grid.WidthMm)} x {LabelGrid.Written(grid.HeightMm)}",
                ("leastAcrossMm", LabelGrid.Written(LeastAcrossMm)), ("leastDownMm", LabelGrid.Written(LeastDownMm)));
    }

    /// <summary>Draws them; what <see cref="Check"/> says is a fault.</summary>
    public static DrawnDocument Pdf(IEnumerable<TrayKind> kinds, LabelGrid grid, PageSetup setup, Language language)
    {
        var drawers = DrawersOf(kinds);
        if (Check(drawers.Length, grid, setup.Paper) is { } fault) return new DrawnDocument(default, [fault]);
        return LabelSheet.Pdf([.. drawers.Select((d, i) => Label(d.Drawer, d.Kinds, i, grid, language, setup.Greyscale))], grid, setup, language.Bench.Tray.LabelsTitle, language);
    }

    private static Picture Label(string drawer, ImmutableArray<TrayKind> kinds, int number, LabelGrid grid, Language language, bool greyscale)
    {
        var inks = greyscale ? Palette.Grey : Palette.Colour;
        var small = new Lettering(HouseSans.Instance, 2.5, inks.Ink);
        double inside = grid.WidthMm - 2 * PadMm, bottom = grid.HeightMm - PadMm, y = PadMm;
        var marks = ImmutableArray.CreateBuilder<Mark>();

        // The drawer at the left, as large as goes; where there is room, a few of its beads at the right of it, at one scale.
        var name = new Lettering(HouseSans.Instance, Math.Min(MostNameMm, (grid.HeightMm - 2 * PadMm) / 2), inks.Ink, TextWeight.Bold);
        if (name.WidthMm(drawer) > inside) name = name with { SizeMm = Math.Max(LeastNameMm, name.SizeMm * inside / name.WidthMm(drawer)) };
        var lines = name.Face.Lines(drawer, name.SizeMm, name.Weight, inside, 2);
        foreach (var line in lines)
        {
            marks.Add(name.Under(line, PadMm, y) with { Class = "drawer" });
            y += name.LineMm;
        }
        if (lines is [var only]) Beads(marks, kinds, number, PadMm + name.WidthMm(only) + 3, PadMm + inside, PadMm + name.LineMm / 2, name.LineMm - BeadGapMm, inks);

        var room = Math.Max(0, (int)((bottom - y) / small.LineMm));
        var shown = kinds.Length <= room ? kinds.Length : Math.Max(0, room - 1);
        string[] rest = [.. kinds.Take(shown).Select(k => k.Bead.Name), .. shown < kinds.Length && room > 0 ? [language.Fill(language.Bench.Tray.LabelMore, ("more", kinds.Length - shown))] : Array.Empty<string>()];
        foreach (var text in rest)
        {
            marks.Add(small.Under(small.Face.Shortened(text, small.SizeMm, small.Weight, inside), PadMm, y) with { Class = "facts" });
            y += small.LineMm;
        }
        var alt = language.Fill(language.Bench.Tray.LabelAlt, ("drawer", drawer), ("kinds", kinds.Length));
        return new Picture(grid.WidthMm, grid.HeightMm, alt, alt, marks.ToImmutable()) { Language = language.Code };
    }

    private static void Beads(ImmutableArray<Mark>.Builder marks, ImmutableArray<TrayKind> kinds, int number, double fromMm, double toMm, double middleMm, double highMm, Palette inks)
    {
        var beads = kinds.Take(6).Select(k => k.Bead).ToArray();
        // True size where that goes, else all of them as much smaller.
        var scale = Math.Min(1, Math.Min(highMm / beads.Max(b => b.WidthMm), (toMm - fromMm - 0.8 * (beads.Length - 1)) / beads.Sum(b => b.LengthMm)));
        if (scale < 0.15) return;
        var patterns = Likenesses.Patterns([.. beads]);
        var x = toMm - beads.Sum(b => b.LengthMm * scale) - 0.8 * (beads.Length - 1);
        for (var i = 0; i < beads.Length; i++)
        {
            var figure = new BeadFigure(beads[i], string.Create(CultureInfo.InvariantCulture, $"drawer-{number}-{i}"), scale, patterns[i], inks);
            marks.Add(new Stamp(figure.Of(0), new Point(x + beads[i].LengthMm * scale / 2, middleMm)) { Class = "bead" });
            x += beads[i].LengthMm * scale + 0.8;
        }
    }
}
