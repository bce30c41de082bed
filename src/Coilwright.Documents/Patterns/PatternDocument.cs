using System.Collections.Immutable;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Wording;

namespace Coilwright.Documents.Patterns;

/// <summary>The written pattern, fit to be sold: cover, at a glance, materials and tools, each step with its figure beside it, sizes, colourways, care, what may be done with it, cautions, and
/// the turns laid straight and at true size.</summary>
/// <remarks>Where the <see cref="PatternSheetDocument">pattern sheet</see> is for the maker's own bench, this is for someone who has nothing else. The maker's own words stand in place of a step's sentence
/// where she wrote some; whether they are true is for the proof-reader to tell her.</remarks>
public static class PatternDocument
{
    /// <summary>Describes the pattern of a piece.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="sizes">What the design takes on other wrists; null leaves that out.</param>
    /// <param name="colourways">The same order in other colours; may be empty.</param>
    /// <param name="setup">How it is printed.</param>
    /// <param name="language">The language.</param>
    /// <param name="cover">A picture for the cover; null has the coil drawn there.</param>
    public static PageDocument Of(Reckoned reckoned, Sizes? sizes, ImmutableArray<Piece> colourways, PageSetup setup, Language language, CoverPicture? cover = null)
    {
        var model = PatternSheetModel.Of(reckoned);
        var pictures = PatternSheetPictures.Of(reckoned, setup, language);
        var sheet = new PatternSheetComposition(model, sizes, pictures, setup, language);
        return new PatternComposition(model, sheet, pictures, colourways, cover, setup, language).Make();
    }
}
