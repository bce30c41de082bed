using Coilwright.Core.Grading;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadCards;
using Coilwright.Documents.CoilView;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.EndStages;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Strips;
using Coilwright.Documents.TurnRows;
using Coilwright.Documents.WristCurve;
using Coilwright.Wording;

namespace Coilwright.Documents.PatternSheet;

/// <summary>The pattern sheet: paper that a maker beads from. Title, picture, finished size, materials, tools, cautions, wire to cut, steps, turns laid
/// straight, and a strip of each turn at true size.</summary>
public static class PatternSheetDocument
{
    /// <summary>Describes the sheet of a piece.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="sizes">What the design takes on other wrists; null leaves that out.</param>
    /// <param name="setup">How it is printed.</param>
    /// <param name="language">The language.</param>
    public static PageDocument Of(Reckoned reckoned, Sizes? sizes, PageSetup setup, Language language)
    {
        var model = PatternSheetModel.Of(reckoned);
        return new PatternSheetComposition(model, sizes, PatternSheetPictures.Of(reckoned, setup, language), setup, language).Make();
    }

    /// <summary>Its drawings that are of use by themselves, by name: the turns laid straight, the coil, a card for each kind of bead, how the ends are finished,
    /// how it lines up from wrist to wrist (where anything lies over anything), and the strips. At true size, but for the coil's slant and the ends.</summary>
    public static IEnumerable<(string Name, Picture Picture)> Drawings(Reckoned reckoned, Language language)
    {
        var options = new PictureOptions { Language = language };
        yield return ("turns", TurnRowsDrawing.Of(reckoned, new TurnRowsOptions { Language = language }));
        yield return ("coil", CoilViewDrawing.Of(reckoned, options));
        yield return ("cards", BeadCardsDrawing.Of(reckoned, options));
        yield return ("ends", EndStagesDrawing.Of(reckoned, options));
        if (WristCurveSheet.HasCurve(reckoned)) yield return ("curve", WristCurveSheet.Of(reckoned, options));
        yield return ("strips", StripsDrawing.Of(reckoned, language));
    }
}
