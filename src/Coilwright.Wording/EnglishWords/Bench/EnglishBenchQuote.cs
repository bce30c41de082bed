namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="QuotePageWords"/>.</summary>
internal static class EnglishBenchQuote
{
    internal static QuotePageWords Make() => new()
    {
        Heading = "Quote",
        Lead = "Someone asks for a piece of her own: say for which wrist and when, and see what it takes, when the beads are here and what to ask. First stands what goes to her, then what it comes from.",
        AskHeading = "What is ordered",
        For = "Who asks (if you like)",
        Wrist = "The wrist",
        Count = "How many alike",
        Rule = "Priced by",
        Deposit = "Deposit, percent",
        On = "Day of the quote",
        Until = "Stands until",
        Working = "Working it out…",
        NotMade = "It cannot be worked out:",
        SavePdf = "Save the quote as PDF",
        SaveWorkings = "Save the workings as PDF",
        SavePage = "Save the quote as a web page",
        SaveWorkingsPage = "Save the workings as a web page",
        Swaps = "Other beads in place",
        SwapsHint = "For this order alone: beads of the piece, and those in stock. The piece stays as it is.",
        AsItIs = "as it is",
        OpenHint = "Open a figure to see what it comes from.",
    };
}
