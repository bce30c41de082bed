namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="SheetPageWords"/>.</summary>
internal static class EnglishBenchSheet
{
    internal static SheetPageWords Make() => new()
    {
        Heading = "Pattern sheet",
        Lead = "To print and bead from, for a wrist of {wristMm:length}. Look at it here as one long page; the PDF is set page by page.",
        Paper = "Paper",
        PaperA4 = "A4",
        PaperLetter = "US letter",
        Letters = "Letters",
        LettersUsual = "usual",
        LettersLarge = "large print",
        Ink = "Ink",
        InkColour = "colour",
        InkGrey = "greys",
        Amount = "Amount of ink",
        AmountUsual = "full",
        AmountSpared = "sparing",
        SavePdf = "Save the PDF to print",
        SaveHtml = "Save as a web page",
        Look = "The sheet as it will be saved",
        Making = "The sheet is being set.",
        NotMade = "A part of the sheet cannot be made:",
        EveryPaper = "Every paper at once",
        AllPieces = "All my pieces, like this",
        TooManyJobs = "Too much is in hand already. Wait until some of it is done, or stop it.",
    };
}
