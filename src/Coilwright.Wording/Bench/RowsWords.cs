namespace Coilwright.Wording;

/// <summary>The turn rows and what is selected on them.</summary>
public sealed record RowsWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>The beads as a list to move through, as read aloud.</summary>
    public required string BeadList { get; init; }

    /// <summary>One bead as read aloud: {number}, {name}, {letter}, {turn}, {angleDeg}.</summary>
    public required string Bead { get; init; }

    /// <summary>How to move among the beads.</summary>
    public required string Keys { get; init; }

    /// <summary>What is selected and its buttons, as read aloud.</summary>
    public required string SelectionName { get; init; }

    /// <summary>Nothing is selected.</summary>
    public required string NoneSelected { get; init; }

    /// <summary>One bead is selected: {number}, {name}, {letter}, {turn}, {angleDeg}.</summary>
    public required string OneSelected { get; init; }

    /// <summary>Several are: {beads}, {mm}: the wire that they take.</summary>
    public required string SomeSelected { get; init; }

    /// <summary>Goes to the bead before.</summary>
    public required string Before { get; init; }

    /// <summary>Goes to the bead after.</summary>
    public required string After { get; init; }

    /// <summary>Whether each tap adds to what is selected.</summary>
    public required string Several { get; init; }

    /// <summary>Selects nothing.</summary>
    public required string Clear { get; init; }

    /// <summary>Draws the rows larger.</summary>
    public required string Larger { get; init; }

    /// <summary>Draws the rows smaller.</summary>
    public required string Smaller { get; init; }

    /// <summary>Draws the rows as wide as the page.</summary>
    public required string WholeWidth { get; init; }
}
