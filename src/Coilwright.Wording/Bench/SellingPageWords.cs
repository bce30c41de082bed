namespace Coilwright.Wording;

/// <summary>The page of what is told to buyers.</summary>
public sealed record SellingPageWords
{
    /// <summary>Heading, and its link.</summary>
    public required string Heading { get; init; }

    /// <summary>What the page is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Choice of the piece.</summary>
    public required string Piece { get; init; }

    /// <summary>It is being worked out.</summary>
    public required string Working { get; init; }

    /// <summary>Copies a text.</summary>
    public required string Copy { get; init; }

    /// <summary>It is copied.</summary>
    public required string Copied { get; init; }

    /// <summary>It is not copied.</summary>
    public required string NotCopied { get; init; }

    /// <summary>Saves the text as a file.</summary>
    public required string Save { get; init; }

    /// <summary>The buyer's wrist.</summary>
    public required string Wrist { get; init; }

    /// <summary>How to type it.</summary>
    public required string WristHint { get; init; }

    /// <summary>Heading of what is not for the text.</summary>
    public required string ForYou { get; init; }
}
