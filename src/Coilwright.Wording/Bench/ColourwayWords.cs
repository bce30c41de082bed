namespace Coilwright.Wording;

/// <summary>The piece again in other colours.</summary>
public sealed record ColourwayWords
{
    /// <summary>Opens it.</summary>
    public required string Open { get; init; }

    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What it does.</summary>
    public required string Hint { get; init; }

    /// <summary>The bead as it is.</summary>
    public required string Before { get; init; }

    /// <summary>The bead as it becomes.</summary>
    public required string After { get; init; }

    /// <summary>A colour of a bead: {name}; {number} where it has several.</summary>
    public required string ColourOf { get; init; }

    /// <summary>The drawing of the rows in the new colours.</summary>
    public required string Rows { get; init; }

    /// <summary>Title of the new piece.</summary>
    public required string Title { get; init; }

    /// <summary>A title to begin with: {title}.</summary>
    public required string TitleOf { get; init; }

    /// <summary>Makes the new piece.</summary>
    public required string Make { get; init; }

    /// <summary>Leaves it.</summary>
    public required string Leave { get; init; }
}
