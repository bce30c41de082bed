namespace Coilwright.Wording;

/// <summary>The page of the written pattern as it is printed and sold, and what leads from one page of the pattern to the other. How it is put on paper is said as for the sheet (<see cref="SheetPageWords"/>).</summary>
public sealed record PatternPaperWords
{
    /// <summary>Heading, and the link to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is, and the wrist that it is for: {wristMm}.</summary>
    public required string Lead { get; init; }

    /// <summary>Which language it is in.</summary>
    public required string Language { get; init; }

    /// <summary>Which other pieces it shows as its colourways.</summary>
    public required string Colourways { get; init; }

    /// <summary>Name of the pattern in the page, as read aloud.</summary>
    public required string Look { get; init; }

    /// <summary>It is being made.</summary>
    public required string Making { get; init; }

    /// <summary>Some of it cannot be made.</summary>
    public required string NotMade { get; init; }

    /// <summary>Names the links between the pages of the pattern, as read aloud.</summary>
    public required string Parts { get; init; }

    /// <summary>The link to the page where it is written.</summary>
    public required string Text { get; init; }
}
