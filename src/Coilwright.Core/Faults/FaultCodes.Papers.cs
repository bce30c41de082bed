namespace Coilwright.Core.Faults;

// Sheets, patterns and labels.
public static partial class FaultCodes
{
    /// <summary>A text to be printed holds characters that the typeface lacks; {characters} lists them, {more} counts those not listed and is empty when all are.</summary>
    public const string DocumentGlyphsMissing = "document.glyphs-missing";

    /// <summary>A sheet of labels is larger than its paper: {acrossMm} and {downMm} on {paperAcrossMm} and {paperDownMm}.</summary>
    public const string LabelsDoNotFit = "labels.do-not-fit";

    /// <summary>A label has no room for what stands on it; {leastAcrossMm} and {leastDownMm} would do.</summary>
    public const string LabelsTooSmall = "labels.too-small";

    /// <summary>More labels than one file holds; {max}.</summary>
    public const string LabelsTooMany = "labels.too-many";

    /// <summary>A colourway strings another order, or its beads stand in another order, than the piece.</summary>
    public const string ColourwayOther = "colourway.other-order";
}
