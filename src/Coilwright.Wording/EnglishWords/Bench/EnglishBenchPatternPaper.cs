namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="PatternPaperWords"/>.</summary>
internal static class EnglishBenchPatternPaper
{
    internal static PatternPaperWords Make() => new()
    {
        Heading = "Pattern on paper",
        Lead = "As buyers get it, for a wrist of {wristMm:length}. Look at it here as one long page; the PDF is set page by page.",
        Language = "Language of the pattern",
        Colourways = "Colourways that it shows",
        Look = "The pattern as it will be saved",
        Making = "The pattern is being set.",
        NotMade = "A part of the pattern cannot be made:",
        Parts = "Pages of the pattern",
        Text = "Words and steps",
    };
}
