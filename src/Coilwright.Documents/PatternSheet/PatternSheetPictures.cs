using System.Collections.Immutable;
using Coilwright.Core.Readings;
using Coilwright.Documents.CoilView;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.EndStages;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Strips;
using Coilwright.Documents.TurnRows;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.PatternSheet;

/// <summary>The pictures of a pattern sheet, in colour: a canvas makes them grey where that is asked for.</summary>
internal sealed class PatternSheetPictures
{
    /// <summary>Length of the check ruler, mm: the longest whole number of centimetres that every paper takes turned, with room to spare.</summary>
    public const int RulerMm = 100;

    private readonly ImmutableDictionary<int, Picture> _beads;

    private PatternSheetPictures(ImmutableDictionary<int, Picture> beads) => _beads = beads;

    // The coil at the head of the sheet: as wide as its column and no higher than leaves the page room for what must stand on it. Of very many turns
    // it would be a thread: below the least width there is none.
    private const double CoilWidthMm = 71, CoilHeightMm = 74, LargePrintCoilHeightMm = 40, LeastCoilMm = 30;

    /// <summary>The piece as a coil; null where it has too many turns to be one on paper.</summary>
    public required Picture? Coil { get; init; }

    /// <summary>How its ends are finished, in stages.</summary>
    public required Picture Ends { get; init; }

    /// <summary>The turns apart, with what lines up: in one picture, or in as many as the page's height asks for, each with its first and last row, from 1.</summary>
    public required ImmutableArray<(Picture Picture, int First, int Last)> LaidStraight { get; init; }

    /// <summary>A ruler to hold a real one against.</summary>
    public required Picture CheckRuler { get; init; }

    /// <summary>A strip of each turn.</summary>
    public required ImmutableArray<TurnStrip> Strips { get; init; }

    /// <summary>A bead at true size, by its kind's index in the piece's list of beads.</summary>
    public Picture Bead(int kind) => _beads[kind];

    public static PatternSheetPictures Of(Reckoned reckoned, PageSetup setup, Language language)
    {
        // Drawn smaller where the page then enlarges it, so that its letters grow with the text.
        var width = (setup.Paper.WidthMm - 2 * setup.SideMm) / setup.Enlarged;
        var rows = new TurnRowsOptions { Paper = false, RowsAlone = true, MarginMm = 0.5, WidthMm = width, Language = language };
        var beads = new StripDrawing(reckoned);
        return new PatternSheetPictures(reckoned.Counts.ToImmutableDictionary(k => k.KindIndex, beads.OfKind))
        {
            Coil = CoilViewDrawing.Within(reckoned, (CoilWidthMm, setup.LargePrint ? LargePrintCoilHeightMm : CoilHeightMm), LeastCoilMm,
                new PictureOptions { Paper = false, MarginMm = 0.5, Language = language }),
            Ends = EndStagesDrawing.Of(reckoned, new PictureOptions { Paper = false, MarginMm = 0.5, WidthMm = width, Language = language }),
            LaidStraight = [.. Parts(reckoned, rows, setup)],
            CheckRuler = Ruler(language),
            Strips = TurnStrip.Of(reckoned, language),
        };
    }

    private static IEnumerable<(Picture Picture, int First, int Last)> Parts(Reckoned reckoned, TurnRowsOptions options, PageSetup setup)
    {
        // Room for the heading and the words that stand above the first of them.
        const double headingMm = 32;
        var room = (setup.Paper.HeightMm - setup.TopMm - setup.BottomMm) / setup.Enlarged - headingMm;
        var whole = TurnRowsDrawing.Of(reckoned, options);
        var rows = TurnRowsDrawing.RowsOf(reckoned);
        if (whole.HeightMm <= room)
        {
            yield return (whole, 1, rows);
            yield break;
        }
        // Rows differ in height: as many as fit if all were like the average, and a little less.
        var most = Math.Max(1, (int)(0.92 * rows * room / whole.HeightMm));
        for (var first = 0; first < rows; first += most)
            yield return (TurnRowsDrawing.Of(reckoned, options with { FirstRow = first, MostRows = most }), first + 1, Math.Min(rows, first + most));
    }

    /// <summary>The turns laid straight at true size, as a drawing by itself.</summary>
    public static Picture Turns(Reckoned reckoned, Language language) => TurnRowsDrawing.Of(reckoned, new TurnRowsOptions { Language = language });

    private static Picture Ruler(Language language)
    {
        var numbers = new Lettering(CautiousSans.Instance, 2.6, Palette.Colour.Quiet);
        // The first and last numbers stand half over the ends.
        const double airMm = 3;
        var ruler = Layout.CheckRuler.Draw(airMm, 0, RulerMm, 1, numbers, Palette.Colour);
        return new Picture(RulerMm + 2 * airMm, Layout.CheckRuler.HeightMm + 0.3, "", "", [ruler]) { Language = language.Code };
    }
}
