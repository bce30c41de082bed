namespace Coilwright.Wording;

/// <summary>The page of a piece's pattern sheet.</summary>
public sealed record SheetPageWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is, and the wrist that it is for: {wristMm}.</summary>
    public required string Lead { get; init; }

    /// <summary>Which paper.</summary>
    public required string Paper { get; init; }

    /// <summary>A4.</summary>
    public required string PaperA4 { get; init; }

    /// <summary>US letter.</summary>
    public required string PaperLetter { get; init; }

    /// <summary>How large its letters are.</summary>
    public required string Letters { get; init; }

    /// <summary>As usual.</summary>
    public required string LettersUsual { get; init; }

    /// <summary>Half as large again.</summary>
    public required string LettersLarge { get; init; }

    /// <summary>In colour or not.</summary>
    public required string Ink { get; init; }

    /// <summary>In colour.</summary>
    public required string InkColour { get; init; }

    /// <summary>In greys.</summary>
    public required string InkGrey { get; init; }

    /// <summary>How much ink.</summary>
    public required string Amount { get; init; }

    /// <summary>As drawn.</summary>
    public required string AmountUsual { get; init; }

    /// <summary>Areas hardly tinted.</summary>
    public required string AmountSpared { get; init; }

    /// <summary>Saves it for printing.</summary>
    public required string SavePdf { get; init; }

    /// <summary>Saves it as one page for a browser.</summary>
    public required string SaveHtml { get; init; }

    /// <summary>Name of the sheet in the page, as read aloud.</summary>
    public required string Look { get; init; }

    /// <summary>It is being made.</summary>
    public required string Making { get; init; }

    /// <summary>Some of it cannot be made.</summary>
    public required string NotMade { get; init; }

    /// <summary>Makes the sheet on every paper at once.</summary>
    public required string EveryPaper { get; init; }

    /// <summary>Makes the sheets of all pieces at once, like this one.</summary>
    public required string AllPieces { get; init; }

    /// <summary>So many jobs wait that there is no room for another.</summary>
    public required string TooManyJobs { get; init; }
}
