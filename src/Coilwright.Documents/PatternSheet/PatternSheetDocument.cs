using Coilwright.Core.Readings;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Documents.PatternSheet;

/// <summary>The pattern sheet: paper that a maker beads from. Title, picture, finished size, materials, tools, cautions, wire to cut, steps, turns laid
/// straight, and a strip of each turn at true size.</summary>
public static class PatternSheetDocument
{
    /// <summary>Describes the sheet of a piece.</summary>
    public static PageDocument Of(Reckoned reckoned, PageSetup setup, Language language)
    {
        var model = PatternSheetModel.Of(reckoned);
        return new PatternSheetComposition(model, PatternSheetPictures.Of(reckoned, setup, language), setup, language).Make();
    }

    /// <summary>Its drawings that are of use by themselves: the turns laid straight, at true size.</summary>
    public static IEnumerable<(string Name, Picture Picture)> Drawings(Reckoned reckoned, PageSetup setup, Language language) =>
        [("turns", PatternSheetPictures.Turns(reckoned, language))];
}
