namespace Coilwright.Wording;

/// <summary>The page that stands where the pieces cannot be read.</summary>
public sealed record ShelfTroubleWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>Where the pieces lie: {file}.</summary>
    public required string Where { get; init; }

    /// <summary>The same where they are in a database: {database}.</summary>
    public required string WhereDatabase { get; init; }

    /// <summary>What the program does and does not do about it.</summary>
    public required string Untouched { get; init; }

    /// <summary>What she does where it passes by itself.</summary>
    public required string TryAgain { get; init; }

    /// <summary>Where it does not: heading.</summary>
    public required string IfItStays { get; init; }

    /// <summary>First: closing the program.</summary>
    public required string First { get; init; }

    /// <summary>Then: putting the file aside: {file}.</summary>
    public required string Second { get; init; }

    /// <summary>Then: starting again and bringing a backup back.</summary>
    public required string Third { get; init; }

    /// <summary>One piece alone cannot be read: the others can be opened.</summary>
    public required string OthersAreThere { get; init; }
}
