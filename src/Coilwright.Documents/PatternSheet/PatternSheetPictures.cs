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
using Coilwright.Documents.WristCurve;
using Coilwright.Wording;

namespace Coilwright.Documents.PatternSheet;

/// <summary>The pictures of a pattern sheet, in colour: a canvas makes them grey where that is asked for.</summary>
internal sealed class PatternSheetPictures
{
    private readonly ImmutableDictionary<int, Picture> _beads;
    private readonly Lazy<Picture?> _coil;

    private PatternSheetPictures(ImmutableDictionary<int, Picture> beads, Lazy<Picture?> coil) => (_beads, _coil) = (beads, coil);

    // The coil at the head of the sheet: across the page, and no higher than leaves the page room for what stands on it too: title, size, tools, cautions.
    // Of very many turns it would be a thread: below the least width there is none.
    private const double BesideCoilMm = 223, LargePrintCoilHeightMm = 44, LeastCoilMm = 30;

    // A curve wide and low: it stands under the turns, on what is left of their page.
    private const double CurvePlotMm = 22;

    /// <summary>The piece as a coil; null where it has too many turns to be one on paper. Drawn when it is asked for: it takes longer than all others together, and the written pattern has one of
    /// its own.</summary>
    public Picture? Coil => _coil.Value;

    /// <summary>How its ends are finished, in stages.</summary>
    public required Picture Ends { get; init; }

    /// <summary>The turns apart, with what lines up: in one picture, or in as many as the page's height asks for, each with its first and last row, from 1.</summary>
    public required ImmutableArray<(Picture Picture, int First, int Last)> LaidStraight { get; init; }

    /// <summary>How it lines up from wrist to wrist; null where nothing lies over anything.</summary>
    public required Picture? Curve { get; init; }

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
        var rows = new TurnRowsOptions { Paper = false, RowsAlone = true, MarginMm = 0.5, WidthMm = width, Language = language, Typeface = HouseSans.Instance };
        var beads = new StripDrawing(reckoned);
        var strips = TurnStrip.Of(reckoned, language);
        var plain = new PictureOptions { Paper = false, MarginMm = 0.5, WidthMm = width, Language = language, Typeface = HouseSans.Instance };
        var coil = new Lazy<Picture?>(() => CoilViewDrawing.Within(reckoned, setup.LargePrint ? LargePrintCoilHeightMm : setup.Paper.HeightMm - BesideCoilMm, LeastCoilMm, plain));
        return new PatternSheetPictures(reckoned.Counts.ToImmutableDictionary(k => k.KindIndex, beads.OfKind), coil)
        {
            Ends = EndStagesDrawing.Of(reckoned, plain),
            LaidStraight = [.. Parts(reckoned, rows, setup)],
            Curve = WristCurveSheet.HasCurve(reckoned) ? WristCurveSheet.Of(reckoned, plain, CurvePlotMm) : null,
            CheckRuler = StripsDrawing.Ruler(strips[0].LeadMm, language),
            Strips = strips,
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
        // Rows differ in height: as many as fit if all were like the average, and a little less; then about as many on each page.
        var most = Math.Max(1, (int)(0.92 * rows * room / whole.HeightMm));
        var parts = (rows + most - 1) / most;
        most = (rows + parts - 1) / parts;
        for (var first = 0; first < rows; first += most)
            yield return (TurnRowsDrawing.Of(reckoned, options with { FirstRow = first, MostRows = most }), first + 1, Math.Min(rows, first + most));
    }
}
