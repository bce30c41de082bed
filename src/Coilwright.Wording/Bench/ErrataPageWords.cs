namespace Coilwright.Wording;

/// <summary>The page of what is wrong in an earlier version of a pattern. What stands in the note itself is said by <see cref="ErrataWords"/>.</summary>
public sealed record ErrataPageWords
{
    /// <summary>Heading, and the link to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is.</summary>
    public required string Lead { get; init; }

    /// <summary>Chooses the version that people have.</summary>
    public required string Old { get; init; }

    /// <summary>Chooses the version that is right.</summary>
    public required string New { get; init; }

    /// <summary>Name of the note in the page, as read aloud.</summary>
    public required string Look { get; init; }

    /// <summary>It is being made.</summary>
    public required string Making { get; init; }

    /// <summary>It cannot be made.</summary>
    public required string NotMade { get; init; }

    /// <summary>The piece has one state only.</summary>
    public required string OneAlone { get; init; }

    /// <summary>Leads there from a version in the history.</summary>
    public required string Since { get; init; }
}
